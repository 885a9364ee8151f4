#include "models/procedure/tightening_card.h"

#include <fmt/format.h>

#include <cmath>

namespace gapwise {

namespace {

std::string threadWords(const TorquePlan& plan) {
    const Result<MetricThread> thread = parseThread(plan.thread, "thread");
    std::string words = thread ? nameOf(*thread) : plan.thread;
    if (thread)
        words += fmt::format(", {}", nameOf(thread->hand));
    if (plan.lengthMm > 0.0)
        words += fmt::format(", {:g} mm long", plan.lengthMm);
    return words;
}

std::string kilonewtons(double value) {
    return withFigures(value, 3) + " kN";
}

/// What the plan's thread and class come to; nothing where one of them cannot be read.
struct Screwed {
    ScrewJoint joint{};
    PropertyClass property = PropertyClass::P88;
};

std::optional<Screwed> screwedOf(const TorquePlan& plan) {
    const Result<MetricThread> thread = parseThread(plan.thread, "thread");
    const Result<PropertyClass> property = parsePropertyClass(plan.propertyClass, "class");
    if (!thread || !property || plan.headDiameterMm <= 0.0 || plan.torqueNm <= 0.0)
        return std::nullopt;
    return Screwed{.joint = {.thread = *thread,
                             .bearingDiameterMm = plan.headDiameterMm,
                             .friction = {.thread = plan.frictionThread, .head = plan.frictionHead}},
                   .property = *property};
}

} // namespace

std::string_view wordsOf(Locking locking) {
    switch (locking) {
    case Locking::None: return "none";
    case Locking::SpringWasher: return "spring washer, a new one each time";
    case Locking::Tab: return "tab plate, a new one each time";
    case Locking::ThreadLock: return "thread-lock, fresh each time";
    case Locking::ThreadLockAndTab: return "thread-lock, fresh, and a new tab plate each time";
    }
    return "";
}

std::vector<FactLine> valueLines(const TorquePlan& plan) {
    std::vector<FactLine> lines{
        {"thread", threadWords(plan)},
        {"class", plan.propertyClass},
        {"stated for",
         plan.lubrication +
             (plan.lubricatedValue ? ": the value is already that of the lubricated thread" : "")},
        {"locking", std::string{wordsOf(plan.locking)}}};
    if (!plan.check.empty())
        lines.push_back({"look at", plan.check});
    lines.push_back({"source", plan.source});
    return lines;
}

std::optional<PreloadFacts> preloadFactsOf(const TorquePlan& plan) {
    const std::optional<Screwed> screwed = screwedOf(plan);
    if (!screwed)
        return std::nullopt;
    const ScrewJoint& joint = screwed->joint;
    PreloadFacts facts{.torqueNm = plan.torqueNm, .forceKn = clampForceKn(joint, plan.torqueNm)};
    facts.shares = torqueShares(joint, facts.forceKn);
    facts.vdiTorqueNm = vdiTorqueNm(joint, facts.forceKn);
    facts.vdiMostKn = vdiPreloadKn(screwed->property, joint.thread, joint.friction.thread);
    facts.stressMpa = stressMpa(facts.forceKn, joint.thread);
    facts.proofLoadKn = proofLoadKn(screwed->property, joint.thread);
    facts.proofUse = proofLoadUse(facts.forceKn, screwed->property, joint.thread);
    return facts;
}

std::vector<FactLine> preloadLines(const TorquePlan& plan, TorqueUnit unit) {
    const std::optional<PreloadFacts> facts = preloadFactsOf(plan);
    if (!facts)
        return {};
    const auto share = [&](double torqueNm) {
        return fmt::format("{} ({:.0f} %)", torqueWords(torqueNm, unit), torqueNm / facts->torqueNm * 100.0);
    };
    std::vector<FactLine> lines{
        {"clamp force", fmt::format("{} at {}, long form, friction {:g} thread, {:g} {}",
                                    kilonewtons(facts->forceKn), torqueWords(facts->torqueNm, unit),
                                    plan.frictionThread, plan.frictionHead, plan.runDown ? "nut" : "head")},
        {"of the torque", fmt::format("{} stretches, {} rubs in the thread, {} under the {}",
                                      share(facts->shares.pitchNm), share(facts->shares.threadNm),
                                      share(facts->shares.headNm), plan.runDown ? "nut" : "head")},
        {"VDI 2230", fmt::format("{} for the same force; at 90 % of the yield stress it holds {}",
                                 torqueWords(facts->vdiTorqueNm, unit), kilonewtons(facts->vdiMostKn))},
        {"stress", fmt::format("{} MPa in the stress area", withFigures(facts->stressMpa, 3))},
        {"proof load", fmt::format("{:.0f} % of {} used, class {} (ISO 898-1)", facts->proofUse * 100.0,
                                   kilonewtons(facts->proofLoadKn), plan.propertyClass)}};
    if (const std::optional<AngleFacts> angle = angleFactsOf(plan))
        lines.push_back({"as a spring",
                         fmt::format("{} with K {:g}, {} MPa in the stem", kilonewtons(angle->springForceKn),
                                     plan.runDown->torqueFactor, withFigures(angle->stemStressMpa, 3))});
    return lines;
}

std::optional<AngleFacts> angleFactsOf(const TorquePlan& plan) {
    const Result<MetricThread> thread = parseThread(plan.thread, "thread");
    if (!plan.runDown || !thread || plan.runDown->torqueFactor <= 0.0 ||
        plan.runDown->stiffnessKnPerMm <= 0.0 || plan.runDown->stemDiameterMm <= 0.0)
        return std::nullopt;
    const RunDown& run = *plan.runDown;
    const ClampSpring spring{.torqueFactor = run.torqueFactor,
                             .diameterMm = thread->diameterMm,
                             .pitchMm = thread->pitchMm,
                             .stiffnessKnPerMm = run.stiffnessKnPerMm};
    AngleFacts facts{.window = {.least = run.leastAngle, .most = run.mostAngle}};
    facts.expected = expectedAngle(spring, run.snugNm, plan.torqueNm);
    facts.springForceKn = springForceKn(spring, plan.torqueNm);
    facts.stemStressMpa = stemStressMpa(facts.springForceKn, run.stemDiameterMm);
    return facts;
}

std::string expectedAngleWords(const AngleFacts& facts) {
    return fmt::format("expected {:.0f}° from snug to final, window {:g}° to {:g}°", facts.expected.value,
                       facts.window.least.value, facts.window.most.value);
}

Result<WrenchFacts> wrenchFactsOf(double targetNm, const Adapter& adapter, const WrenchRange& range) {
    Adapter used = adapter;
    if (used.adapterMm == 0.0 && used.wrenchMm == 0.0)
        used.wrenchMm = 1.0; // Without an adapter the length of the wrench changes nothing.
    Errors errors = rangeErrors(range);
    const Result<double> setting = wrenchSettingNm(targetNm, used);
    if (!setting)
        errors.insert(errors.end(), setting.errors().begin(), setting.errors().end());
    if (!errors.empty())
        return errors;
    WrenchFacts facts{.targetNm = targetNm, .settingNm = *setting};
    facts.uncorrectedNm = *appliedTorqueNm(targetNm, used);
    if (!range.mostNm)
        return facts;
    const Result<WrenchUse> use = useOfWrench(*setting, range);
    if (!use)
        return use.errors();
    facts.use = *use;
    return facts;
}

std::vector<std::string> wrenchLines(const WrenchFacts& facts, const WrenchRange& range, TorqueUnit unit) {
    const auto words = [&](double torqueNm) { return torqueWords(torqueNm, unit); };
    std::vector<std::string> lines{
        fmt::format("set {}: it gets {}", words(facts.settingNm), words(facts.targetNm))};
    const double more = facts.uncorrectedNm / facts.targetNm - 1.0;
    constexpr double kNothing = 0.0005;
    lines.push_back(std::abs(more) < kNothing
                        ? "nothing to correct: no adapter, one square to the wrench, or a coaxial extension"
                        : fmt::format("set to {} uncorrected it would get {} ({:+.1f} %)",
                                      words(facts.targetNm), words(facts.uncorrectedNm), more * 100.0));
    if (!facts.use)
        return lines;
    lines.push_back(fmt::format("the tool may be off by ±{:.0f} %, ±{} here (ISO 6789)",
                                permissibleDeviation(*range.mostNm) * 100.0, words(facts.use->deviationNm)));
    if (facts.use->belowCheckPoints)
        lines.push_back(fmt::format("below {}, 20 % of its maximum, it is not checked: take a smaller one",
                                    words(checkPointsNm(*range.mostNm).front())));
    return lines;
}

Result<NutLineShift> nutLineOf(const Fastener& fastener, Degrees read, double stackNewMinusOldMm) {
    if (!fastener.plan || !fastener.plan->nutLine)
        return Error{
            .where = fastener.id.text, .found = "no nut line", .allowed = "a shaft nut with its limits"};
    const Result<MetricThread> thread = parseThread(fastener.plan->thread, "thread");
    if (!thread)
        return thread.errors();
    constexpr double kMostStackMm = 10.0;
    constexpr double kMostTurn = 360.0;
    Errors errors;
    if (!(std::abs(read.value) <= kMostTurn))
        errors.push_back({"read", fmt::format("{}°", read.value), "degrees from -360 to 360"});
    if (!(std::abs(stackNewMinusOldMm) <= kMostStackMm))
        errors.push_back({"stack", fmt::format("{} mm", stackNewMinusOldMm), "from -10 to 10 mm"});
    if (!errors.empty())
        return errors;
    return judgeNutLine(read, expectedNutShift(stackNewMinusOldMm, thread->pitchMm),
                        {.agrees = fastener.plan->nutLine->agrees, .small = fastener.plan->nutLine->small});
}

std::vector<FactLine> nutLineLines(const NutLineShift& shift, const NutLineLimits& limits) {
    return {{"read", fmt::format("{:+.1f}°, tightening positive", shift.read.value)},
            {"expected", fmt::format("{:+.1f}° from the changed stack", shift.expected.value)},
            {"corrected", fmt::format("{:+.1f}°: {} (agrees to {:g}°, small to {:g}°)", shift.corrected.value,
                                      nameOf(shift.outcome), limits.agrees.value, limits.small.value)},
            {"then", std::string{adviceFor(shift.outcome)}}};
}

} // namespace gapwise
