#include "viewer/panels/step_page.h"
#include "viewer/panels/telling.h"
#include "viewer/panels/typed_number.h"

#include "models/procedure/hold_point.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

using Kind = SheetParagraph::Kind;

std::string typed(const StepPage& page, const std::string& name) {
    const auto found = page.drafts().fields.find(name);
    return found == page.drafts().fields.end() ? std::string{} : trimmedWords(found->second);
}

std::string placeOf(const HeldBy& held) {
    return "overrides/" + held.finding;
}

/// What was typed, as the event that is asked for.
HoldPointPassed passingOf(const StepPage& page, const std::vector<HeldBy>& all) {
    HoldPointPassed passing{.step = page.step.id, .by = typed(page, "by"), .witness = typed(page, "witness")};
    passing.loneWorker = page.drafts().alone;
    if (passing.loneWorker)
        passing.witness.clear();
    for (const HeldBy& held : all) {
        const std::string place = placeOf(held);
        Override over{.finding = held.finding,
                      .by = typed(page, place + "/by"),
                      .reason = typed(page, place + "/reason"),
                      .role = held.needsInspector ? Role::Inspector : Role::Technician,
                      .concession = typed(page, place + "/concession")};
        if (held.mayOverride && !(over.by.empty() && over.reason.empty() && over.concession.empty()))
            passing.overrides.push_back(std::move(over));
    }
    return passing;
}

/// Whether something else than the names is open.
bool stopsBefore(const StepPage& page) {
    const std::vector<Missing> missing = missingFrom(page.job.frame, page.job.state, page.step.id);
    return statusOf(page.job, page.step.id).standing == StepStanding::Blocked ||
           std::ranges::any_of(missing, [](const Missing& each) {
               return each.stops && each.kind != Missing::Kind::HoldPoint;
           });
}

/// Names to tap instead of typing them.
void addNames(StepPage& page, const std::string& field, const std::string& but) {
    std::vector<std::string> names = peopleOf(page.job);
    std::erase(names, but);
    std::erase(names, page.drafts().fields[field]);
    if (names.empty())
        return;
    constexpr std::size_t kMost = 3;
    names.resize(std::min(names.size(), kMost));
    page.flow.row(page.rowHeight(), [p = page, names, field](const Area& area) {
        for (std::size_t i = 0; i < names.size(); ++i)
            if (button(p.surface,
                       columnOf(area, static_cast<int>(names.size()), static_cast<int>(i), p.surface.px(6.0)),
                       names[i], {.id = field + " " + names[i]})) {
                p.drafts().fields[field] = names[i];
                p.drafts().faults.erase(field);
            }
    });
}

/// The part of which must be said first what is seen; nothing where the finding may be told.
std::optional<PartId> keptBack(const Job& job, const HeldBy& held) {
    for (const Finding& finding : job.checked.findings)
        if (finding.verdict.rule->id.text == held.finding && !mayTell(job, finding.verdict))
            return finding.verdict.parts.front();
    return std::nullopt;
}

void addOverride(StepPage& page, const HeldBy& held) {
    const std::string place = placeOf(held);
    const Rule* rule = page.job.frame.rule(RuleId{held.finding});
    if (rule && std::holds_alternative<ConditionRule>(rule->demand)) {
        addButton(page, fmt::format("Say of {}: {}", partsOf(*rule).front().text, rule->printed),
                  {.second = "on the card of " + rule->lastLook.text, .id = "say first " + held.finding},
                  [p = page, step = rule->lastLook] { p.wish = OpenStep{step}; });
        return;
    }
    if (const auto part = keptBack(page.job, held)) {
        addButton(page, "Say first how it sits: " + part->text, {.id = "say first " + held.finding},
                  [p = page, id = *part] { p.wish = TakeInHand{id}; });
        return;
    }
    page.flow.paragraph({.kind = Kind::Severity,
                         .words = fmt::format("Severity {}: {}", held.severity, held.words),
                         .severity = held.severity});
    const auto fault = page.drafts().faults.find(place);
    if (!held.mayOverride) {
        page.flow.text(Kind::Strong, "Put it right: in a rehearsal nothing is overridden.");
        return;
    }
    page.flow.text(Kind::Body, held.needsInspector ? "Put it right, or an inspector answers for it:"
                                                   : "Put it right, or somebody answers for it:");
    if (fault != page.drafts().faults.end())
        addWarning(page, held.needsInspector ? "Not put right, and no inspector named."
                                             : "Not put right, and nobody named.");
    addField(page,
             {.name = place + "/by", .hint = held.needsInspector ? "inspector, another person" : "name"});
    addField(page, {.name = place + "/reason", .hint = "reason"});
    if (held.needsInspector)
        addField(page, {.name = place + "/concession", .hint = "number of the concession"});
}

void addPassed(StepPage& page) {
    for (const HoldPointPassed& passed : page.job.state.passed)
        if (passed.step == page.step.id)
            page.flow.text(Kind::Strong,
                           passed.loneWorker
                               ? fmt::format("Passed: {}, who worked alone.", passed.by)
                               : fmt::format("Passed: {}; seen by {}.", passed.by, passed.witness));
}

} // namespace

void addHoldPoint(StepPage& page) {
    if (page.job.state.build.done(page.step.id))
        return addPassed(page);
    if (stopsBefore(page))
        page.flow.text(Kind::Strong, "First what stands under Open points.");
    for (const HeldBy& held : heldBy(page.job.frame, page.job.state, page.job.checked))
        addOverride(page, held);
    StepDrafts& drafts = page.drafts();
    if (!drafts.fields.contains("by"))
        drafts.fields["by"] = whoWorks(page.job);
    addField(page, {.name = "by", .label = "Who did the work", .hint = "name"});
    addNames(page, "by", {});
    addField(page, {.name = "witness", .label = "Who saw it: another person", .hint = "name"});
    addNames(page, "witness", drafts.fields["by"]);
    addTick(page,
            {.id = "alone",
             .words = "I work alone",
             .ticked = drafts.alone,
             .second = drafts.alone ? "the record says so" : "say so on the record"},
            [p = page] { p.drafts().alone = true; });
    if (drafts.alone)
        addButton(page, "Somebody saw it after all", {}, [p = page] { p.drafts().alone = false; });
}

void passHoldPoint(const StepPage& page) {
    const Job& job = page.job;
    const HoldPointPassed passing = passingOf(page, heldBy(job.frame, job.state, job.checked));
    page.drafts().faults.clear();
    if (stopsBefore(page)) {
        page.drafts().tab = "open";
        page.drafts().page = 0;
        return;
    }
    for (const Error& error : refusalOfPassing(job.frame, job.state, job.checked, passing))
        page.drafts().faults[error.where] =
            error.found == "no name" || error.found == "no reason" || error.found == "no number"
                ? "Wanted: " + error.allowed
                : fmt::format("Found: {}. Wanted: {}", error.found, error.allowed);
    if (page.drafts().faults.empty())
        page.wish = Act{passing};
}

} // namespace gapwise
