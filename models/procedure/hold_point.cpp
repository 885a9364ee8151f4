#include "models/procedure/hold_point.h"

#include "models/procedure/order_misses.h"
#include "models/procedure/person_name.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

constexpr int kHolds = 3; ///< From this severity on a finding holds a hold point.
constexpr int kNeedsInspector = 4;

HeldBy held(const JobState& state, std::string finding, int severity, std::string words) {
    return {.finding = std::move(finding),
            .severity = severity,
            .words = std::move(words),
            .mayOverride = !state.rehearsal,
            .needsInspector = severity >= kNeedsInspector};
}

/// An order rule whose step only waits for a signature that is asked for again holds nothing: that signature
/// could never be given.
bool isOnlyReopened(const std::vector<OrderMiss>& misses, const Rule& rule) {
    const auto* order = std::get_if<OrderRule>(&rule.demand);
    return order &&
           std::ranges::none_of(misses, [&](const OrderMiss& miss) { return miss.step->id == order->step; });
}

/// The checks of one passing, each complaint at its place.
class Passing {
public:
    Passing(const HoldPointPassed& passing, Errors& errors) : passing_{passing}, errors_{errors} {}

    void checkNames() {
        if (isBlank(passing_.by))
            add("by", "no name", "the name of the person who did the work");
        const bool witnessed = !isBlank(passing_.witness);
        if (!witnessed && !passing_.loneWorker)
            add("witness", "no name", "another person who saw it, or that nobody else was there");
        else if (witnessed && passing_.loneWorker)
            add("witness", fmt::format("\"{}\", and that nobody else was there", passing_.witness),
                "one of the two");
        else if (witnessed && isSamePerson(passing_.witness, passing_.by))
            add("witness", fmt::format("\"{}\", who did the work", passing_.witness), "another person");
    }

    void checkFinding(const HeldBy& held) {
        const auto found = std::ranges::find(passing_.overrides, held.finding, &Override::finding);
        const bool given = found != passing_.overrides.end();
        const std::string place = fmt::format("overrides/{}", held.finding);
        if (!held.mayOverride)
            return add(place, held.words, "that it is put right: in a rehearsal nothing is overridden");
        if (!given)
            return add(place, held.words,
                       held.needsInspector ? "that it is put right, or an inspector with a concession number"
                                           : "that it is put right, or a named person with a reason");
        checkOverride(place, *found, held.needsInspector);
    }

    void checkSpare(const std::vector<HeldBy>& held) {
        for (const Override& over : passing_.overrides)
            if (std::ranges::find(held, over.finding, &HeldBy::finding) == held.end())
                add(fmt::format("overrides/{}", over.finding), "an override", "a finding that stands");
    }

private:
    void checkOverride(const std::string& place, const Override& over, bool needsInspector) {
        if (isBlank(over.by))
            add(place + "/by", "no name", "the name of the person who answers for it");
        if (isBlank(over.reason))
            add(place + "/reason", "no reason", "why the work goes on all the same");
        if (!needsInspector)
            return;
        if (over.role != Role::Inspector)
            add(place + "/role", std::string{nameOf(over.role)}, "inspector");
        if (!isBlank(over.by) && isSamePerson(over.by, passing_.by))
            add(place + "/by", fmt::format("\"{}\", who did the work", over.by), "a second person");
        if (isBlank(over.concession))
            add(place + "/concession", "no number", "the number of the concession");
    }

    void add(std::string where, std::string found, std::string allowed) {
        errors_.push_back({std::move(where), std::move(found), std::move(allowed)});
    }

    const HoldPointPassed& passing_;
    Errors& errors_;
};

} // namespace

std::vector<HeldBy> heldBy(const Frame& frame, const JobState& state, const Checked& checked) {
    std::vector<HeldBy> all;
    const StepGraph graph{frame};
    const std::vector<OrderMiss> misses = orderMisses(graph, state);
    for (const Finding& finding : checked.findings) {
        const Rule& rule = *finding.verdict.rule;
        if (rule.severity >= kHolds && !isOnlyReopened(misses, rule))
            all.push_back(held(state, rule.id.text, rule.severity, finding.words));
    }
    for (const ProcedureFinding& finding : procedureFindings(frame, state))
        if (finding.severity >= kHolds)
            all.push_back(held(state, finding.id, finding.severity, finding.words));
    return all;
}

Errors refusalOfPassing(const Frame& frame, const JobState& state, const Checked& checked,
                        const HoldPointPassed& passing) {
    Errors errors;
    const Step* step = frame.step(passing.step);
    if (!step || !step->holdPoint)
        return {{"step",
                 step ? fmt::format("{}, where work does not stop", passing.step.text)
                      : fmt::format("\"{}\"", passing.step.text),
                 fmt::format("a hold point of {}", frame.id.text)}};
    Passing checks{passing, errors};
    checks.checkNames();
    const std::vector<HeldBy> all = heldBy(frame, state, checked);
    for (const HeldBy& each : all)
        checks.checkFinding(each);
    checks.checkSpare(all);
    return errors;
}

} // namespace gapwise
