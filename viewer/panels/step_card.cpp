#include "viewer/panels/step_card.h"

#include "viewer/panels/banner_words.h"
#include "viewer/panels/bench_question.h"
#include "viewer/panels/card_frame.h"
#include "viewer/panels/step_cautions.h"
#include "viewer/panels/step_marks.h"
#include "viewer/panels/step_measure.h"
#include "viewer/panels/step_page.h"
#include "viewer/panels/step_question_pages.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

using Asks = StepDrafts::Asks;

/// A page of the card that can be chosen.
struct Tab {
    std::string id{};
    std::string label{};
    std::string second{};
};

std::string openWords(std::size_t open) {
    return open == 0 ? "all said" : fmt::format("{} open", open);
}

/// How many of the questions of a page nobody answered.
std::size_t unanswered(const Job& job, const Step& step, std::string_view tab) {
    const std::vector<Question> questions = questionsOf(job.frame, step);
    return static_cast<std::size_t>(std::ranges::count_if(questions, [&](const Question& each) {
        return tabOfQuestion(each.name) == tab && !isAnswered(job.state, step.id, each);
    }));
}

std::vector<Tab> tabsOf(const Job& job, const Step& step) {
    std::vector<Tab> tabs;
    if (!cautionsOf(job.frame, step.id).empty()) {
        const std::size_t unread = unreadOf(job, step.id);
        tabs.push_back({"cautions", "Cautions", unread == 0 ? "read" : fmt::format("{} to read", unread)});
    }
    tabs.push_back({"do", "Do", "acts, parts"});
    if (!measurementsOf(job.frame, step.id).empty())
        tabs.push_back({"measure", "Measure", measuredWords(job, step.id)});
    if (!step.witness.empty())
        tabs.push_back({"look", "Check", openWords(unanswered(job, step, "look"))});
    for (const StepQuestion question : step.asks) {
        const std::string id{nameOf(question)};
        tabs.push_back({id, std::string{labelOf(question)}, openWords(unanswered(job, step, id))});
    }
    if (step.holdPoint)
        tabs.push_back({"hold", "Hold point", job.state.build.done(step.id) ? "passed" : "not passed"});
    const std::size_t open = job.state.build.done(step.id) ? 0 : openPointsOf(job, step.id);
    tabs.push_back({"open", "Open points", open == 0 ? "none" : fmt::format("{}", open)});
    return tabs;
}

void addTab(StepPage& page, const std::string& tab) {
    if (page.drafts().asks == Asks::Skip)
        return addSkipping(page);
    if (page.drafts().asks == Asks::Reopen)
        return addReopening(page);
    if (tab == "cautions")
        return addCautions(page);
    if (tab == "measure")
        return addMeasurements(page);
    if (tab == "look")
        return addWitness(page);
    if (tab == "hold")
        return addHoldPoint(page);
    if (tab == "open")
        return addOpenPoints(page);
    for (const StepQuestion question : page.step.asks)
        if (tab == nameOf(question))
            return addQuestion(page, question);
    addActs(page);
}

/// Another step's card is read from its beginning: from its cautions while one was not read.
void beginReading(const Job& job, const Step& step, StepDrafts& drafts) {
    const std::string state = job.state.build.done(step.id) ? "done" : "open";
    if (drafts.step == step.id && drafts.state == state)
        return;
    drafts =
        StepDrafts{.step = step.id, .tab = unreadOf(job, step.id) > 0 ? "cautions" : "do", .state = state};
}

/// How the piece must lie for the step and how it lies now.
struct Lying {
    std::string wanted{};
    std::string now{};
    bool fits = true;
};

Lying lyingFor(const Job& job, const Step& step) {
    Lying lying{.wanted = howOf(step)};
    const std::vector<Missing> missing = missingFrom(job.frame, job.state, step.id);
    lying.fits = job.state.build.done(step.id) || std::ranges::none_of(missing, [](const Missing& each) {
                     return each.kind == Missing::Kind::Attitude;
                 });
    if (asksHowItLies(job)) {
        lying.now = "How it lies is not said yet.";
        return lying;
    }
    const bool upright = job.attitude().up != EndUp::Level;
    lying.now = fmt::format("It lies {}: drain {}.", lyingPhrase(job), drainPhrase(job));
    if (step.view == StepView::Beside && upright)
        lying.now += fmt::format(" A gap at 12:00, the inlet, points {}: walk round to see it.",
                                 benchPhrase(job.standingView().top, job.attitude().up));
    return lying;
}

/// The look from which the step is done, with the piece as it lies where that fits.
Standpoint lookOf(const Job& job, const Step& step) {
    Standpoint look = job.standpoint;
    look.pulledApart = 0.0;
    const EndUp up = job.attitude().up;
    const auto from = [&](Side side) {
        const bool there = up == (side == Side::Turbine ? EndUp::Turbine : EndUp::Compressor);
        if (up == EndUp::Level)
            look.observer.levelSide = side;
        const bool stands = there || up == EndUp::Level;
        look.kind = stands ? LookKind::WhereIStand
                           : (side == Side::Turbine ? LookKind::FromTurbine : LookKind::FromCompressor);
    };
    switch (step.view) {
    case StepView::Compressor: from(Side::Compressor); break;
    case StepView::Turbine: from(Side::Turbine); break;
    case StepView::Beside: look.kind = LookKind::Beside; break;
    case StepView::Any: look.kind = LookKind::WhereIStand; break;
    }
    return look;
}

void openLying(Drafts& drafts) {
    drafts.lies.reset();
    drafts.box = Drafts::Box::Lying;
}

std::string standingWords(const StepStatus& status, bool reopened) {
    switch (status.standing) {
    case StepStanding::Done: return "done";
    case StepStanding::Skipped: return "skipped";
    case StepStanding::NotNeeded: return "not needed";
    case StepStanding::Possible: return reopened ? "open again, possible now" : "possible now";
    case StepStanding::Blocked: break;
    }
    return reopened ? "open again, waits" : "waits for others";
}

/// Paragraphs below each other; in smaller type where they do not fit otherwise.
void drawFitting(std::vector<std::pair<std::string, Type>> lines, Area area, const Surface& surface) {
    const auto height = [&] {
        double all = 0.0;
        for (const auto& [words, type] : lines)
            all += heightOf(area.width, words, type.font) + surface.px(2.0);
        return all;
    };
    if (height() > area.height)
        lines[1].second.font = surface.fonts().strong;
    if (height() > area.height)
        for (std::size_t i = 2; i < lines.size(); ++i)
            lines[i].second.font = surface.fonts().small;
    for (const auto& [words, type] : lines) {
        const double used = writeLines(area, words, type) + (words.empty() ? 0.0 : surface.px(2.0));
        area = {area.x, area.y + used, area.width, area.height - used};
    }
}

/// Who it is and how the piece lies; below it what changes the look.
std::optional<Wish> identity(const Job& job, const Step& step, const Area& area, const Surface& surface) {
    const Fonts& fonts = surface.fonts();
    const StepStatus status = statusOf(job, step.id);
    const Lying lying = lyingFor(job, step);
    const double row = std::max(surface.target, surface.px(36.0));
    const Area words{area.x, area.y, area.width, area.height - row - surface.px(6.0)};
    std::vector<std::pair<std::string, Type>> lines{
        {fmt::format("{} · {}", step.id.text, standingWords(status, status.reopenedBy.has_value())),
         {fonts.strong, palette::kAccent}},
        {step.title, {fonts.title}},
        {lying.wanted.empty() ? std::string{} : "Wanted: " + lying.wanted + ".", {fonts.body}},
        {(lying.fits ? "" : "! ") + lying.now,
         {fonts.body, lying.fits ? palette::kSoftInk : palette::kBroken}}};
    drawFitting(lines, words, surface);
    const double gap = surface.px(6.0);
    const Area buttons{area.x, area.bottom() - row, area.width, row};
    std::optional<Wish> wish;
    if (button(surface, columnOf(buttons, 3, 0, gap), "Close", {.font = fonts.small}))
        wish = OpenStep{};
    if (button(surface, columnOf(buttons, 3, 1, gap), "Look so",
               {.font = fonts.small, .second = "as it says"}))
        wish = LookAgain{lookOf(job, step)};
    if (button(surface, columnOf(buttons, 3, 2, gap), "Turn …",
               {.leading = !lying.fits, .font = fonts.small, .second = "the piece"}))
        openLying(surface.drafts());
    return wish;
}

/// What stands at the right end of the buttons: leave out or open again, and done.
class Deeds {
public:
    Deeds(const Job& job, const Step& step, const Surface& surface)
        : job_{job}, step_{step}, surface_{surface} {}

    bool canSkip() const {
        const StepStanding standing = statusOf(job_, step_.id).standing;
        return step_.maySkip && (standing == StepStanding::Possible || standing == StepStanding::Blocked);
    }
    bool canReopen() const { return job_.state.build.done(step_.id); }
    int count() const { return 1 + (canSkip() || canReopen() ? 1 : 0); }

    std::optional<Wish> draw(const Area& beside, const Area& last) const {
        Drafts& drafts = surface_.drafts();
        StepDrafts& card = drafts.stepCard;
        if (canSkip() && button(surface_, beside, "Skip …",
                                {.chosen = card.asks == Asks::Skip,
                                 .font = surface_.fonts().small,
                                 .second = "with a reason"}))
            card.asks = card.asks == Asks::Skip ? Asks::Nothing : Asks::Skip;
        if (canReopen() && button(surface_, beside, "Open again …",
                                  {.chosen = card.asks == Asks::Reopen,
                                   .font = surface_.fonts().small,
                                   .second = "asks first"}))
            card.asks = card.asks == Asks::Reopen ? Asks::Nothing : Asks::Reopen;
        return done(last);
    }

private:
    std::optional<Wish> done(const Area& area) const {
        const bool isDone = job_.state.build.done(step_.id);
        const StepStanding standing = statusOf(job_, step_.id).standing;
        const bool settled =
            isDone || standing == StepStanding::Skipped || standing == StepStanding::NotNeeded;
        ButtonLook look{.leading = true, .font = surface_.fonts().title, .id = "Done"};
        std::string label = "Done";
        std::string second;
        const std::size_t open = openPointsOf(job_, step_.id);
        if (settled) {
            label = "Next";
            second = job_.procedure.leading ? job_.procedure.leading->text : "nothing is open";
            look.enabled = job_.procedure.leading.has_value();
            look.leading = look.enabled;
        } else if (step_.holdPoint && open <= 1 && job_.use != Use::Show) {
            const bool there = surface_.drafts().stepCard.tab == "hold";
            label = there ? "Pass it" : "Hold point";
            second = there ? "by name" : "passed by name";
            look.id = there ? "pass" : look.id;
        } else if (open > 0) {
            second = fmt::format("{} open", open);
            look.leading = job_.use == Use::Show && !stopsDoing(job_, step_.id);
        } else if (step_.closesRecord && job_.frame.purpose == Purpose::Practice) {
            second = "as a practice record";
        }
        look.second = second;
        if (!button(surface_, area, label, look))
            return std::nullopt;
        if (look.id != "pass")
            return stepOn(job_, surface_.drafts());
        std::optional<Wish> wish;
        CardFlow flow{area, {.surface = surface_}};
        passHoldPoint({job_, step_, surface_, flow, wish});
        return wish;
    }

    const Job& job_;
    const Step& step_;
    const Surface& surface_;
};

/// The row of buttons: the pages of the card, leafing, the deeds.
std::optional<Wish> buttonRow(const Job& job, const Step& step, std::size_t pages, const Area& area,
                              const Surface& surface) {
    StepDrafts& drafts = surface.drafts().stepCard;
    const std::vector<Tab> tabs = tabsOf(job, step);
    const Deeds deeds{job, step, surface};
    const double gap = surface.px(6.0);
    const double big = surface.px(140.0);
    const int small = static_cast<int>(tabs.size()) + (pages > 1 ? 1 : 0) + deeds.count() - 1;
    const Area rest{area.x, area.y, area.width - big - gap, area.height};
    int index = 0;
    const auto next = [&] { return columnOf(rest, std::max(small, 6), index++, gap); };
    for (const Tab& tab : tabs) {
        const bool chosen = tab.id == drafts.tab && drafts.asks == Asks::Nothing;
        if (button(surface, next(), tab.label,
                   {.chosen = chosen,
                    .font = surface.fonts().small,
                    .second = tab.second,
                    .id = "tab " + tab.id})) {
            drafts.tab = tab.id;
            drafts.page = 0;
            drafts.asks = Asks::Nothing;
        }
    }
    const std::string page = fmt::format("page {} of {}", drafts.page + 1, pages);
    if (pages > 1 &&
        button(surface, next(), "Read on",
               {.leading = drafts.page + 1 < pages, .font = surface.fonts().small, .second = page}))
        drafts.page = (drafts.page + 1) % pages;
    return deeds.draw(deeds.count() > 1 ? next() : Area{}, {area.right() - big, area.y, big, area.height});
}

void keepLast(std::optional<Wish>& wish, std::optional<Wish> other) {
    if (other)
        wish = std::move(other);
}

/// Where what is open stands: cautions that were not read first; a hold point when nothing else is open.
std::string pageOfOpen(const Job& job, const Step& step) {
    if (unreadOf(job, step.id) > 0)
        return "cautions";
    return step.holdPoint && openPointsOf(job, step.id) == 1 ? "hold" : "open";
}

} // namespace

std::string tabOfQuestion(std::string_view question) {
    if (question.starts_with("witness-"))
        return "look";
    if (question.starts_with("pick"))
        return "pick_list";
    if (question.starts_with("gauge"))
        return "gauges";
    return std::string{question};
}

bool stops(const Job& job, const Missing& missing) {
    return missing.stops && (job.use != Use::Show || missing.kind == Missing::Kind::Part);
}

std::size_t openPointsOf(const Job& job, const StepId& step) {
    const StepGraph graph{job.frame};
    const StepStatus status = statusOf(job, step);
    const std::vector<Missing> missing = missingFrom(job.frame, job.state, step);
    const auto counts = [&](const Missing& each) {
        return each.kind != Missing::Kind::Caution && (job.use != Use::Show || stops(job, each));
    };
    const std::size_t cautions = job.use != Use::Show && unreadOf(job, step) > 0 ? 1 : 0;
    return (status.standing == StepStanding::Blocked ? status.waitsFor.size() : 0) +
           static_cast<std::size_t>(std::ranges::count_if(missing, counts)) + cautions +
           hiddenUnfinished(graph, job.state, job.checked, step).size();
}

bool stopsDoing(const Job& job, const StepId& step) {
    const std::vector<Missing> missing = missingFrom(job.frame, job.state, step);
    return statusOf(job, step).standing == StepStanding::Blocked ||
           std::ranges::any_of(missing, [&](const Missing& each) { return stops(job, each); });
}

std::optional<Wish> stepOn(const Job& job, Drafts& drafts) {
    const Step* step = job.step ? job.frame.step(*job.step) : nullptr;
    drafts.lineScroll = -1.0;
    if (step && job.handFull())
        return OpenStep{step->id};
    const StepStanding standing = step ? statusOf(job, step->id).standing : StepStanding::Done;
    const bool open = standing == StepStanding::Possible || standing == StepStanding::Blocked;
    if (!step || !open)
        return job.procedure.leading ? std::optional<Wish>{OpenStep{job.procedure.leading}} : std::nullopt;
    StepDrafts& card = drafts.stepCard;
    const bool showing = job.use == Use::Show;
    if (showing ? !stopsDoing(job, step->id) : openPointsOf(job, step->id) == 0) {
        if (job.use != Use::Bench || job.state.person)
            return Act{StepDone{step->id, whoWorks(job)}};
        drafts.box = Drafts::Box::Who;
        return std::nullopt;
    }
    card.page = 0;
    card.asks = Asks::Nothing;
    card.tab = pageOfOpen(job, *step);
    return std::nullopt;
}

std::optional<Wish> stepBack(const Job& job, Drafts& drafts) {
    drafts.lineScroll = -1.0;
    if (job.step && job.handFull())
        return OpenStep{job.step};
    if (!job.step) {
        const std::vector<StepId>& done = job.state.build.stepsDone;
        return done.empty() ? std::nullopt : std::optional<Wish>{OpenStep{done.back()}};
    }
    const std::size_t index = job.frame.stepIndex(*job.step).value_or(0);
    return index == 0 ? std::nullopt : std::optional<Wish>{OpenStep{job.frame.steps[index - 1].id}};
}

std::optional<Wish> stepCard(const Job& job, const Area& area, const Surface& surface) {
    const Step* step = job.step ? job.frame.step(*job.step) : nullptr;
    if (!step || area.empty())
        return std::nullopt;
    const Scope scope{surface, "step"};
    StepDrafts& drafts = surface.drafts().stepCard;
    beginReading(job, *step, drafts);
    const Area inner = drawCardFrame(area, surface);
    const double left = std::max(surface.px(270.0), 3.0 * surface.target + surface.px(12.0));
    const double row = std::max(surface.target, surface.px(40.0));
    std::optional<Wish> wish = identity(job, *step, {inner.x, inner.y, left, inner.height}, surface);
    const Area right{inner.x + left + surface.px(18.0), inner.y, inner.width - left - surface.px(18.0),
                     inner.height};
    ink().AddLine(point(right.x - surface.px(9.0), right.y), point(right.x - surface.px(9.0), right.bottom()),
                  palette::kHairline, 1.0F);
    const Area body{right.x, right.y, right.width, right.height - row - surface.px(8.0)};
    const SheetPaper paper{.surface = surface, .large = surface.bench};
    CardFlow flow{body, paper};
    StepPage page{job, *step, surface, flow, wish};
    addTab(page, drafts.tab);
    drafts.page = std::min(drafts.page, flow.pages() - 1);
    flow.draw(drafts.page);
    keepLast(wish,
             buttonRow(job, *step, flow.pages(), {right.x, right.bottom() - row, right.width, row}, surface));
    return wish;
}

} // namespace gapwise
