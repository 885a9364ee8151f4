#include "viewer/command/check_json.h"

#include "geometry/base/overloaded.h"

#include <nlohmann/json.hpp>

#include <utility>

namespace gapwise {

namespace {

using Json = nlohmann::ordered_json;

/// The two sides of a comparison; null where the actual one is not known.
struct Sides {
    Json expected{};
    Json actual{};
    Json deviation{};
};

Json degreesOrNull(const std::optional<Degrees>& angle) {
    return angle ? Json(angle->value) : Json(nullptr);
}

Sides sidesOf(const FactCompared& compared) {
    return {{{"fact", compared.expected}},
            compared.actual.empty() ? Json(nullptr) : Json{{"fact", compared.actual}},
            nullptr};
}

Sides sidesOf(const DirectionCompared& compared) {
    Sides sides{{{"clock_deg", compared.expected.value},
                 {"seen_from", nameOf(compared.seenFrom)},
                 {"tolerance_deg", compared.tolerance.value}},
                nullptr,
                degreesOrNull(compared.deviation)};
    if (compared.actual)
        sides.actual = {{"clock_deg", compared.actual->value}, {"seen_from", nameOf(compared.seenFrom)}};
    return sides;
}

Json apartOrNull(const std::optional<Degrees>& angle) {
    return angle ? Json{{"apart_deg", angle->value}} : Json(nullptr);
}

Sides sidesOf(const ApartCompared& compared) {
    return {{{"apart_deg", compared.expected.value}, {"tolerance_deg", compared.tolerance.value}},
            apartOrNull(compared.actual),
            degreesOrNull(compared.deviation)};
}

Sides sidesOf(const ClearCompared& compared) {
    return {{{"feature", compared.feature.text}, {"at_least_apart_deg", compared.needed.value}},
            apartOrNull(compared.actual),
            degreesOrNull(compared.deviation)};
}

Sides sidesOf(const FaceCompared& compared) {
    Sides sides{{{"face", compared.face}, {"looks", nameOf(compared.expected)}}, nullptr, nullptr};
    if (compared.referenceFaceVisible)
        sides.expected["visible"] = *compared.referenceFaceVisible;
    if (compared.actual)
        sides.actual = {{"face", compared.face}, {"looks", nameOf(*compared.actual)}};
    return sides;
}

Json partsOf(const Verdict& verdict) {
    Json parts = Json::array();
    for (const PartId& part : verdict.parts)
        parts.push_back(part.text);
    return parts;
}

Json seenOf(const std::optional<Finding::AsSeen>& seen) {
    if (!seen)
        return nullptr;
    return {{"clock_deg", seen->clock.value},
            {"side", nameOf(seen->view.side)},
            {"top_deg", seen->view.top.value}};
}

Json turnOf(const std::optional<TurnHint>& turn) {
    if (!turn)
        return nullptr;
    return {{"deg", turn->size.value},
            {"sense", turn->clockwise ? "clockwise" : "counter_clockwise"},
            {"side", nameOf(turn->side)}};
}

Json mistakesOf(const Finding& finding) {
    Json mistakes = Json::array();
    for (const Mistake mistake : finding.mistakes)
        mistakes.push_back(nameOf(mistake));
    return mistakes;
}

Json findingOf(const Finding& finding) {
    const Verdict& verdict = finding.verdict;
    Sides sides = std::visit([](const auto& compared) { return sidesOf(compared); }, verdict.compared);
    Json document{{"rule", verdict.rule->id.text},
                  {"parts", partsOf(verdict)},
                  {"kind", kindOf(*verdict.rule)},
                  {"severity", verdict.rule->severity},
                  {"verdict", verdict.state == RuleState::Broken ? "broken" : "open"},
                  {"expected", std::move(sides.expected)},
                  {"actual", std::move(sides.actual)},
                  {"deviation_deg", std::move(sides.deviation)},
                  {"as_seen", seenOf(finding.asSeen)},
                  {"as_printed", finding.asPrinted ? Json(*finding.asPrinted) : Json(nullptr)},
                  {"mistakes", mistakesOf(finding)},
                  {"turn", turnOf(finding.turn)},
                  {"words", finding.words}};
    if (!finding.question.empty())
        document["question"] = finding.question;
    return document;
}

} // namespace

std::string checkAsJson(const Frame& frame, const Checked& checked) {
    Json findings = Json::array();
    for (const Finding& finding : checked.findings)
        findings.push_back(findingOf(finding));
    const Json document{{"frame", frame.id.text},
                        {"holds", checked.holds},
                        {"counts",
                         {{"holds", checked.count(RuleState::Holds)},
                          {"broken", checked.count(RuleState::Broken)},
                          {"open", checked.count(RuleState::Open)},
                          {"not_due", checked.count(RuleState::NotDue)}}},
                        {"findings", std::move(findings)}};
    return document.dump(2) + "\n";
}

} // namespace gapwise
