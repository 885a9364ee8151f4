#include "compare.h"

#include "models/frame/read_frame.h"

#include <fmt/format.h>

#include <cmath>
#include <stdexcept>

namespace gapwise::oracle {

namespace {

constexpr std::size_t kShown = 8;
constexpr double kSameDegrees = 1e-7;

std::string_view nameOf(RuleState state) {
    switch (state) {
    case RuleState::Holds: return "holds";
    case RuleState::Broken: return "broken";
    case RuleState::Open: return "open";
    case RuleState::NotDue: break;
    }
    return "not due";
}

std::string yesNo(const std::optional<bool>& said) {
    return said ? (*said ? "true" : "false") : "null";
}

/// Equal on the circle.
bool sameClock(double a, double b) {
    return std::abs(std::remainder(a - b, 360.0)) < kSameDegrees;
}

std::string describe(const Placed& placed) {
    std::string text = placed.part;
    if (placed.index)
        text += fmt::format(" at {} from {}", placed.index->degrees, nameOf(placed.index->side));
    if (placed.setIn)
        text += fmt::format(", set in {} top {}", nameOf(placed.setIn->side), placed.setIn->topDegrees);
    return text;
}

Frame readOrThrow(const std::string& idOrPath) {
    const Result<Frame> frame = readFrame(DataFolder{GAPWISE_TEST_SHARE}, idOrPath);
    if (frame)
        return *frame;
    std::string errors;
    for (const Error& error : frame.errors())
        errors += '\n' + gapwise::describe(error);
    throw std::runtime_error{errors};
}

} // namespace

std::string namesOf(const std::vector<Mistake>& mistakes) {
    std::string names;
    for (const Mistake mistake : mistakes)
        names += (names.empty() ? "" : " ") + std::string{gapwise::nameOf(mistake)};
    return names.empty() ? "-" : names;
}

std::vector<std::optional<Shown>> viewsToTry() {
    std::vector<std::optional<Shown>> all{std::nullopt};
    for (const Side side : {Side::Compressor, Side::Turbine})
        for (const double top : {0.0, 90.0, 180.0, 270.0, 105.0, 106.0, 165.0, 196.0, 37.0, 350.0})
            all.push_back(Shown{side, top});
    return all;
}

Frame bundledFrame(const std::string& id) {
    return readOrThrow(id);
}

Frame testFrame(const std::string& id) {
    return readOrThrow(std::string{GAPWISE_TEST_FRAMES} + "/" + id + ".json");
}

void Disagreements::note(const Case& asked, const Rule& rule, const std::string& what) {
    ++count_;
    if (first_.size() >= kShown)
        return;
    const Placed* placed = asked.bench.in(seatOf(partsOf(rule).front()).text);
    std::string text = fmt::format("{} {}: {} ({})", asked.frame.id.text, rule.id.text, what,
                                   placed ? describe(*placed) : "empty seat");
    if (asked.bench.lying)
        text += fmt::format(", lying {} drain {} from {}", static_cast<int>(asked.bench.lying->up),
                            asked.bench.lying->drainDegrees, nameOf(asked.bench.lying->seenFrom));
    first_.push_back(text);
}

void Disagreements::compareStates(const Case& asked, const Checked& checked) {
    ++builds_;
    if (checked.verdicts.size() != asked.frame.rules.size())
        return note(asked, asked.frame.rules.front(), "not one verdict a rule");
    for (std::size_t i = 0; i < checked.verdicts.size(); ++i) {
        const Rule& rule = asked.frame.rules[i];
        const RuleState expected = stateOf(asked, rule);
        if (checked.verdicts[i].state != expected)
            note(asked, rule,
                 fmt::format("{}, the oracle says {}", nameOf(checked.verdicts[i].state), nameOf(expected)));
    }
}

void Disagreements::compareStates(const Case& asked) {
    const Build build = buildOf(asked.bench);
    compareStates(asked, checkBuild(asked.frame, build, CheckOptions{.sister = asked.sister}));
}

void Disagreements::compareExplanation(const Case& asked, const Finding& finding) {
    ++explained_;
    const Rule& rule = *finding.verdict.rule;
    const Explanation expected = explanationOf(asked, rule);
    if (finding.mistakes != expected.mistakes)
        note(asked, rule,
             fmt::format("{}, the oracle says {}", namesOf(finding.mistakes), namesOf(expected.mistakes)));
    if (finding.asPrinted != expected.asPrinted)
        note(asked, rule,
             fmt::format("as printed {}, the oracle says {}", yesNo(finding.asPrinted),
                         yesNo(expected.asPrinted)));
    const bool turned =
        finding.turn && std::abs(finding.turn->size.value - expected.turn.degrees) < kSameDegrees &&
        finding.turn->clockwise == expected.turn.clockwise && finding.turn->side == expected.turn.side;
    if (!turned)
        note(asked, rule,
             fmt::format("turn {} {}, the oracle says {} {} from {}",
                         finding.turn ? finding.turn->size.value : 0.0,
                         finding.turn && finding.turn->clockwise ? "cw" : "ccw", expected.turn.degrees,
                         expected.turn.clockwise ? "cw" : "ccw", nameOf(expected.turn.side)));
    const auto* compared = std::get_if<DirectionCompared>(&finding.verdict.compared);
    if (!compared || !compared->actual || !compared->deviation ||
        !sameClock(compared->actual->value, expected.actual) ||
        !sameClock(compared->deviation->value, expected.deviation))
        note(asked, rule, fmt::format("the oracle reads {}, off by {}", expected.actual, expected.deviation));
    const bool sameSight = finding.asSeen && expected.asSeen
                               ? sameClock(finding.asSeen->clock.value, *expected.asSeen)
                               : finding.asSeen.has_value() == expected.asSeen.has_value();
    if (!sameSight)
        note(asked, rule, fmt::format("the oracle sees it at {}", expected.asSeen.value_or(-1.0)));
}

void Disagreements::compare(const Case& asked) {
    const Build build = buildOf(asked.bench);
    const Checked checked = checkBuild(asked.frame, build, CheckOptions{.sister = asked.sister});
    compareStates(asked, checked);
    compareOrder(asked, checked);
    for (const Finding& finding : checked.findings)
        if (finding.verdict.state == RuleState::Broken && printedClockOf(*finding.verdict.rule))
            compareExplanation(asked, finding);
        else if (finding.verdict.state == RuleState::Broken &&
                 std::holds_alternative<FaceRule>(finding.verdict.rule->demand))
            compareFace(asked, finding);
}

void Disagreements::compareFace(const Case& asked, const Finding& finding) {
    const Rule& rule = *finding.verdict.rule;
    const auto& compared = std::get<FaceCompared>(finding.verdict.compared);
    if (finding.mistakes != std::vector{Mistake::Reversed})
        note(asked, rule,
             fmt::format("{} for a face that is the wrong way round", namesOf(finding.mistakes)));
    const double normal =
        *asked.bench.in(seatOf(partsOf(rule).front()).text)->referenceFaceLooks == Side::Turbine
            ? 1.0
            : -1.0; // The demanded one: opposite to how it sits.
    const double observer =
        currentPicture(asked.bench, Side::Compressor).side == Side::Compressor ? 1.0 : -1.0;
    if (compared.referenceFaceVisible != (normal * observer > 0.0))
        note(asked, rule,
             fmt::format("the reference face must be visible: {}", yesNo(normal * observer > 0.0)));
}

/// Broken before open, severe before light, soon out of sight before late, then by id.
void Disagreements::compareOrder(const Case& asked, const Checked& checked) {
    const auto goesBefore = [&](const Finding& a, const Finding& b) {
        const Rule& first = *a.verdict.rule;
        const Rule& second = *b.verdict.rule;
        if (a.verdict.state != b.verdict.state)
            return a.verdict.state == RuleState::Broken;
        if (first.severity != second.severity)
            return first.severity > second.severity;
        if (first.lastLook != second.lastLook)
            return asked.frame.stepIndex(first.lastLook) < asked.frame.stepIndex(second.lastLook);
        return first.id < second.id;
    };
    for (std::size_t i = 1; i < checked.findings.size(); ++i)
        if (!goesBefore(checked.findings[i - 1], checked.findings[i]))
            note(asked, *checked.findings[i].verdict.rule, "not in the order of findings");
}

::testing::AssertionResult Disagreements::none() const {
    if (count_ == 0)
        return ::testing::AssertionSuccess();
    auto failure = ::testing::AssertionFailure()
                   << count_ << " disagreements in " << builds_ << " builds, the first:";
    for (const std::string& line : first_)
        failure << "\n  " << line;
    return failure;
}

} // namespace gapwise::oracle
