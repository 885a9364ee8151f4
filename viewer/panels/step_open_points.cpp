#include "viewer/panels/step_page.h"

#include "viewer/dial/dial_state.h"
#include "viewer/panels/step_card.h"
#include "viewer/panels/step_cautions.h"
#include "viewer/panels/step_marks.h"

#include "models/procedure/procedure.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

using Kind = SheetParagraph::Kind;

MeasurementId measurementOf(const Frame& frame, const QuantityId& quantity) {
    for (const Measurement& measurement : frame.measurements)
        if (measurement.quantity(quantity))
            return measurement.id;
    return {};
}

/// Where a tap on what is missing leads.
void leadTo(const StepPage& page, const Missing& missing) {
    StepDrafts& drafts = page.drafts();
    drafts.page = 0;
    switch (missing.kind) {
    case Missing::Kind::Part: page.wish = TakeInHand{PartId{missing.id}}; break;
    case Missing::Kind::Fastener: page.wish = OpenFastener{FastenerId{missing.id}}; break;
    case Missing::Kind::Reading:
        page.wish = OpenMeasurement{measurementOf(page.job.frame, QuantityId{missing.id})};
        break;
    case Missing::Kind::Question: drafts.tab = tabOfQuestion(missing.id); break;
    case Missing::Kind::Caution: drafts.tab = "cautions"; break;
    case Missing::Kind::HoldPoint: drafts.tab = "hold"; break;
    case Missing::Kind::Attitude:
        page.surface.drafts().lies.reset();
        page.surface.drafts().box = Drafts::Box::Lying;
        break;
    }
}

/// A line that can be tapped, its words broken into as many lines as they need.
void addLine(StepPage& page, const std::string& id, const std::string& words, std::function<void()> pressed) {
    const Surface& surface = page.surface;
    ImFont* font = surface.bench ? surface.fonts().large : surface.fonts().body;
    const double inset = surface.px(10.0);
    const double height = heightOf(page.flow.width() - 2.0 * inset - surface.px(14.0), words, font);
    page.flow.row(
        std::max(page.rowHeight(), height + surface.px(10.0)),
        [s = &surface, id, words, font, height, inset, pressed = std::move(pressed)](const Area& area) {
            const Pressed hit = pressable(*s, id.c_str(), area);
            fillArea(area, hit.hovered ? palette::kShade : palette::kSheet, s->px(4.0));
            frameArea(area, palette::kHairline, s->px(4.0));
            writeLines({area.x + inset, area.middleY() - height / 2.0, area.width - 2.0 * inset - s->px(14.0),
                        area.height},
                       words, {font});
            writeLine({area.right() - s->px(20.0), area.y, s->px(14.0), area.height}, "→",
                      {s->fonts().strong, palette::kAccent});
            if (hit.done)
                pressed();
        });
}

void addWaits(StepPage& page) {
    const StepStatus status = statusOf(page.job, page.step.id);
    if (status.reopenedBy)
        page.flow.text(Kind::Strong, fmt::format("It was done, and is open again since {} was opened again.",
                                                 status.reopenedBy->text));
    if (status.standing == StepStanding::NotNeeded)
        page.flow.text(Kind::Strong, "It is not needed in this job.");
    if (status.waitsFor.empty() || status.standing == StepStanding::NotNeeded)
        return;
    page.flow.text(Kind::Heading, "It waits for");
    for (const Precedence* before : status.waitsFor)
        addLine(page, before->step.text, fmt::format("{}: {}", before->step.text, before->why),
                [p = page, step = before->step] { p.wish = OpenStep{step}; });
}

void addMissing(StepPage& page) {
    const std::vector<Missing> missing = missingFrom(page.job.frame, page.job.state, page.step.id);
    if (missing.empty())
        return;
    page.flow.text(Kind::Heading, "Still open");
    if (const std::size_t unread = unreadOf(page.job, page.step.id))
        addLine(page, "open cautions",
                unread == 1 ? "1 caution is not read" : fmt::format("{} cautions are not read", unread),
                [p = page] { leadTo(p, {.kind = Missing::Kind::Caution}); });
    for (const Missing& each : missing)
        if (each.kind != Missing::Kind::Caution)
            addLine(page, "open " + each.id,
                    each.words + (stops(page.job, each) ? "" : " (does not stop you)"),
                    [p = page, each] { leadTo(p, each); });
}

void addHidden(StepPage& page) {
    const StepGraph graph{page.job.frame};
    const std::vector<LookLeft> hidden =
        hiddenUnfinished(graph, page.job.state, page.job.checked, page.step.id);
    if (hidden.empty())
        return;
    page.flow.text(Kind::Heading, "It hides what is not finished");
    for (const LookLeft& look : hidden) {
        const DialState state = dialStateOf(page.job, look.seat);
        addLine(page, "look " + look.part.text,
                fmt::format("{}: {}. Look at it", look.part.text, unfinishedWord(page.job, look.seat, state)),
                [p = page, part = look.part] { p.wish = TakeInHand{part}; });
    }
}

void addAttempts(StepPage& page) {
    const std::vector<Attempt> attempts = attemptsOf(page.job.frame, page.job.log, page.step.id);
    if (attempts.empty())
        return;
    page.flow.text(Kind::Heading, "Done so far");
    for (const Attempt& attempt : attempts)
        page.flow.text(attempt.stands ? Kind::Body : Kind::Soft,
                       attempt.words + (attempt.stands ? "" : " (does not stand any more)"));
}

/// What the program only says does not stop anybody.
void addAllTheSame(StepPage& page) {
    if (page.step.holdPoint || page.job.state.build.done(page.step.id) ||
        stopsDoing(page.job, page.step.id) || openPointsOf(page.job, page.step.id) == 0)
        return;
    addButton(page, "Done all the same", {.second = "the record keeps what was open"},
              [p = page] { sign(p, StepDone{p.step.id, whoWorks(p.job)}); });
}

} // namespace

void addOpenPoints(StepPage& page) {
    if (openPointsOf(page.job, page.step.id) == 0 && !page.job.state.build.done(page.step.id))
        page.flow.text(Kind::Strong, "Nothing is open: it can be called done.");
    addWaits(page);
    addMissing(page);
    addHidden(page);
    addAllTheSame(page);
    addAttempts(page);
}

void addSkipping(StepPage& page) {
    page.flow.text(Kind::Strong,
                   fmt::format("Why is {} left out? The reason stays in the record.", page.step.id.text));
    addField(page, {.name = "reason", .hint = "reason", .button = "Skip it"},
             [p = page](const std::string& typed) {
                 if (typed.find_first_not_of(' ') == std::string::npos)
                     p.drafts().faults["reason"] = "A reason in a few words.";
                 else
                     sign(p, StepSkipped{p.step.id, typed, whoWorks(p.job)});
             });
    addButton(page, "No, do it", {}, [p = page] { p.drafts().asks = StepDrafts::Asks::Nothing; });
}

void addReopening(StepPage& page) {
    const StepGraph graph{page.job.frame};
    const Reopened reopened = reopenedBy(graph, page.job.state.build, page.step.id);
    page.flow.text(Kind::Strong, fmt::format("Open {} again?", page.step.id.text));
    const auto list = [&](const char* heading, const std::vector<StepId>& steps) {
        bool begun = false;
        for (const StepId& id : steps) {
            if (id == page.step.id)
                continue;
            if (!std::exchange(begun, true))
                page.flow.text(Kind::Heading, heading);
            const Step* step = page.job.frame.step(id);
            page.flow.text(Kind::Body, fmt::format("{} {}", id.text, step ? step->title : std::string{}));
        }
    };
    list("Open again with it", reopened.steps);
    list("Signed again", reopened.lapsed);
    if (reopened.steps.size() + reopened.lapsed.size() <= 1)
        page.flow.text(Kind::Body, "Nothing that was done depends on it.");
    addField(page, {.name = "why", .label = "Why (it stays in the record)", .hint = "reason"});
    addButton(page, "No, it stays done", {.leading = true},
              [p = page] { p.drafts().asks = StepDrafts::Asks::Nothing; });
    addButton(page, "Yes, open it again", {},
              [p = page] { sign(p, StepUndone{p.step.id, p.drafts().fields["why"], whoWorks(p.job)}); });
}

} // namespace gapwise
