#include "models/torque/figures.h"
#include "models/torque/preload.h"
#include "models/torque/turning.h"
#include "models/torque/units.h"
#include "viewer/command/number.h"
#include "viewer/command/text_layout.h"
#include "viewer/command/torque_command.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <array>
#include <utility>

namespace gapwise {

namespace {

constexpr NumberRange kForce{0.0, 1e5, true, "a force above 0 kN, up to 100000 kN"};
constexpr NumberRange kFriction{0.0, 1.0, true, "a coefficient of friction above 0, up to 1"};
constexpr NumberRange kDiameter{0.0, 1e3, true,
                                "the mean diameter under head or nut, above 0 mm, up to 1000 mm"};
constexpr NumberRange kFactor{1.0, 10.0, false, "a tightening factor from 1 to 10"};

struct Question {
    ScrewJoint joint{};
    bool ownHead = false; ///< The diameter under the head was not said: a hexagon head's.
    std::optional<double> torqueNm{};
    std::optional<double> forceKn{};
    std::optional<PropertyClass> property{};
    std::optional<double> tighteningFactor{};
};

struct Answer {
    double forceKn = 0.0;
    double torqueNm = 0.0;
    TorqueShares shares{};
    double vdiTorqueNm = 0.0; ///< For the same force.
    bool overloaded = false;  ///< More than the proof load.
};

std::optional<double> numberOption(const std::optional<std::string>& text, const char* where,
                                   const NumberRange& range, Errors& errors) {
    if (!text)
        return std::nullopt;
    return valueOr(parseNumber(*text, where, range), range.most, errors);
}

/// Exactly one thing decides the force.
void refuseContradictions(const PreloadRequest& request, Errors& errors) {
    if (request.torque && request.force)
        errors.push_back({"--force", "--torque as well", "either --torque or --force"});
    if (!request.torque && !request.force && !request.property)
        errors.push_back(
            {"--torque", "nothing", "--torque, --force, or --class for 90 % of its yield stress"});
    if (request.tighteningFactor && !request.property)
        errors.push_back({"--tightening-factor", "no --class", "only with --class"});
}

void readClass(const std::string& text, Question& question, Errors& errors) {
    const PropertyClass property = valueOr(parsePropertyClass(text, "--class"), PropertyClass::P88, errors);
    question.property = property;
    if (!isMade(property, question.joint.thread.diameterMm))
        errors.push_back({"--class", fmt::format("\"{}\"", text), "8.8, 10.9 or 12.9: 9.8 ends at M16"});
}

void readHead(const PreloadRequest& request, Question& question, Errors& errors) {
    const std::optional<double> own = hexagonHeadDiameterMm(question.joint.thread.diameterMm);
    question.ownHead = !request.bearingDiameter;
    question.joint.bearingDiameterMm =
        numberOption(request.bearingDiameter, "--bearing-diameter", kDiameter, errors)
            .value_or(own.value_or(1.0));
    if (question.ownHead && !own && errors.empty())
        errors.push_back({"--bearing-diameter", "nothing",
                          fmt::format("{}; only from M5 to M24 a hexagon head is assumed", kDiameter.words)});
}

Result<Question> questionOf(const PreloadRequest& request) {
    Errors errors;
    Question question;
    question.joint.thread = valueOr(parseThread(request.thread, "THREAD"), {8.0, 1.25}, errors);
    const auto friction = [&](const std::optional<std::string>& text, const char* where) {
        return numberOption(text, where, kFriction, errors).value_or(0.12);
    };
    question.joint.friction = {.thread = friction(request.frictionThread, "--friction-thread"),
                               .head = friction(request.frictionHead, "--friction-head")};
    readHead(request, question, errors);
    if (request.torque)
        question.torqueNm =
            valueOr(parseTorqueOrNewtonMetres(*request.torque, "--torque"), {1.0}, errors).newtonMetres();
    question.forceKn = numberOption(request.force, "--force", kForce, errors);
    if (request.property)
        readClass(*request.property, question, errors);
    question.tighteningFactor =
        numberOption(request.tighteningFactor, "--tightening-factor", kFactor, errors);
    refuseContradictions(request, errors);
    if (!errors.empty())
        return errors;
    return question;
}

double forceOf(const Question& question) {
    if (question.torqueNm)
        return clampForceKn(question.joint, *question.torqueNm);
    if (question.forceKn)
        return *question.forceKn;
    return vdiPreloadKn(question.property.value_or(PropertyClass::P88), question.joint.thread,
                        question.joint.friction.thread);
}

Answer answerTo(const Question& question) {
    Answer answer;
    answer.forceKn = forceOf(question);
    answer.shares = torqueShares(question.joint, answer.forceKn);
    answer.torqueNm = question.torqueNm.value_or(answer.shares.total());
    answer.vdiTorqueNm = vdiTorqueNm(question.joint, answer.forceKn);
    answer.overloaded =
        question.property && proofLoadUse(answer.forceKn, *question.property, question.joint.thread) > 1.0;
    return answer;
}

using NamedShare = std::pair<const char*, double>;

std::array<NamedShare, 3> namedShares(const TorqueShares& shares) {
    return {NamedShare{"pitch", shares.pitchNm}, NamedShare{"thread friction", shares.threadNm},
            NamedShare{"head friction", shares.headNm}};
}

std::string kilonewtons(double forceKn) {
    return withFigures(forceKn, 3) + " kN";
}

std::string sharesText(const Answer& answer) {
    std::vector<std::vector<std::string>> rows;
    for (const auto& [name, torqueNm] : namedShares(answer.shares))
        rows.push_back(
            {name, torqueWords(torqueNm), fmt::format("{:.1f} %", 100.0 * torqueNm / answer.shares.total())});
    return table(rows, "  ");
}

std::string classText(const Question& question, PropertyClass property, const Answer& answer) {
    const MetricThread& thread = question.joint.thread;
    const double preloadKn = vdiPreloadKn(property, thread, question.joint.friction.thread);
    std::string text = fmt::format("Class {}: {:.0f} % of the proof load, {} (ISO 898-1){}.\n",
                                   nameOf(property), 100.0 * proofLoadUse(answer.forceKn, property, thread),
                                   kilonewtons(proofLoadKn(property, thread)),
                                   answer.overloaded ? ": more than it must bear" : "");
    text += fmt::format("90 % of its yield stress: {} at {} (VDI 2230).\n", kilonewtons(preloadKn),
                        torqueWords(vdiTorqueNm(question.joint, preloadKn)));
    if (const std::optional<double> factor = question.tighteningFactor)
        text +=
            fmt::format("With a tightening factor of {} at least {} of {} are there (VDI 2230).\n", *factor,
                        kilonewtons(leastPreloadKn(answer.forceKn, *factor)), kilonewtons(answer.forceKn));
    return text;
}

std::string asText(const Question& question, const Answer& answer) {
    const ScrewJoint& joint = question.joint;
    std::string text = fmt::format("{}: {} clamps with {}.\n", nameOf(joint.thread),
                                   torqueWords(answer.torqueNm), kilonewtons(answer.forceKn));
    text += sharesText(answer);
    text += fmt::format("Friction {} in the thread and {} under the head, mean diameter there {} mm{}.\n",
                        joint.friction.thread, joint.friction.head, withFigures(joint.bearingDiameterMm, 3),
                        question.ownHead ? " (hexagon head)" : "");
    text += fmt::format("For the same force VDI 2230 gives {}; nut factor K {}.\n",
                        torqueWords(answer.vdiTorqueNm),
                        withFigures(nutFactor(joint.thread.diameterMm, answer.torqueNm, answer.forceKn), 3));
    text += fmt::format("Tension {} MPa in the stress area of {} mm².\n",
                        withFigures(stressMpa(answer.forceKn, joint.thread), 3),
                        withFigures(sizesOf(joint.thread).stressAreaMm2, 3));
    if (question.property)
        text += classText(question, *question.property, answer);
    text += fmt::format("The thread is {}: it tightens {} as you face the nut or head.\n",
                        nameOf(joint.thread.hand), nameOf(tighteningAsFaced(joint.thread.hand)));
    return text;
}

nlohmann::ordered_json threadJson(const MetricThread& thread) {
    const ThreadSizes sizes = sizesOf(thread);
    return {{"name", nameOf(thread)},
            {"diameter_mm", thread.diameterMm},
            {"pitch_mm", thread.pitchMm},
            {"hand", thread.hand == ThreadHand::Left ? "left" : "right"},
            {"tightens_as_faced", keyOf(tighteningAsFaced(thread.hand))},
            {"flank_diameter_mm", sizes.flankDiameterMm},
            {"root_diameter_mm", sizes.rootDiameterMm},
            {"stress_area_mm2", sizes.stressAreaMm2},
            {"lead_deg", sizes.lead.value}};
}

nlohmann::ordered_json classJson(const Question& question, PropertyClass property, const Answer& answer) {
    const MetricThread& thread = question.joint.thread;
    const double preloadKn = vdiPreloadKn(property, thread, question.joint.friction.thread);
    nlohmann::ordered_json object{{"name", nameOf(property)},
                                  {"proof_stress_MPa", proofStressMpa(property, thread.diameterMm)},
                                  {"proof_load_kN", proofLoadKn(property, thread)},
                                  {"proof_load_use", proofLoadUse(answer.forceKn, property, thread)},
                                  {"preload_at_90_percent_yield_kN", preloadKn},
                                  {"torque_at_90_percent_yield_Nm", vdiTorqueNm(question.joint, preloadKn)}};
    if (question.tighteningFactor)
        object["least_preload_kN"] = leastPreloadKn(answer.forceKn, *question.tighteningFactor);
    return object;
}

std::string asJson(const Question& question, const Answer& answer) {
    nlohmann::ordered_json document{
        {"thread", threadJson(question.joint.thread)},
        {"friction_thread", question.joint.friction.thread},
        {"friction_head", question.joint.friction.head},
        {"bearing_diameter_mm", question.joint.bearingDiameterMm},
        {"torque_Nm", answer.torqueNm},
        {"force_kN", answer.forceKn},
        {"shares", nlohmann::ordered_json::array()},
        {"vdi_torque_Nm", answer.vdiTorqueNm},
        {"nut_factor", nutFactor(question.joint.thread.diameterMm, answer.torqueNm, answer.forceKn)},
        {"stress_MPa", stressMpa(answer.forceKn, question.joint.thread)}};
    for (const auto& [name, torqueNm] : namedShares(answer.shares))
        document["shares"].push_back(
            {{"of", name}, {"torque_Nm", torqueNm}, {"share", torqueNm / answer.shares.total()}});
    if (question.property)
        document["class"] = classJson(question, *question.property, answer);
    return document.dump(2) + "\n";
}

} // namespace

Outcome torquePreload(const PreloadRequest& request, Format format) {
    const Result<Question> question = questionOf(request);
    if (!question)
        return misused("gapwise torque preload", question.errors());
    const Answer answer = answerTo(*question);
    return Outcome{.status = answer.overloaded ? ExitStatus::Broken : ExitStatus::Holds,
                   .text = format == Format::Json ? asJson(*question, answer) : asText(*question, answer)};
}

} // namespace gapwise
