#include "viewer/panels/bench_question.h"
#include "viewer/panels/card.h"
#include "viewer/panels/card_telling.h"
#include "viewer/panels/show_me.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

/// The printed clock rule of the seat; null when none prints one.
const Verdict* printedVerdict(const Job& job, const SeatId& seat) {
    const PartId meant = meantFor(job.frame, seat);
    const auto found = std::ranges::find_if(job.checked.verdicts, [&](const Verdict& verdict) {
        return printedClockOf(*verdict.rule) && partsOf(*verdict.rule).front() == meant;
    });
    return found == job.checked.verdicts.end() ? nullptr : &*found;
}

void drawState(const DialState& state, const std::string& words, const Area& area, const Surface& surface) {
    const double radius = area.height * 0.36;
    drawSign(state.sign, point(area.x + radius + 2.0, area.middleY()), radius);
    writeLine({area.x + 2.0 * radius + surface.px(12.0), area.y, area.width - 2.0 * radius - surface.px(12.0),
               area.height},
              words, {surface.fonts().title, colourOf(state.sign)});
}

/// At the bench the demanded clock is read from far, as he stands: the printed one is not where he sets it.
double drawDemanded(const Job& job, const SeatId& seat, const Area& area, const Surface& surface) {
    const std::optional<DemandWords> demand =
        surface.bench ? demandWordsOf(job, seat) : std::optional<DemandWords>{};
    if (!demand)
        return 0.0;
    const Fonts& fonts = surface.fonts();
    const double left = area.x + static_cast<double>(sizeOf(fonts.bench, demand->clock).x) + surface.px(12.0);
    Area beside{left, area.y + surface.px(3.0), area.right() - left, area.height - surface.px(3.0)};
    writeLine({area.x, area.y, left - area.x, surface.px(50.0)}, demand->clock, {fonts.bench});
    for (const auto& [words, type] : {std::pair{&demand->stands, Type{fonts.strong}},
                                      std::pair{&demand->printed, Type{fonts.small, palette::kSoftInk}}}) {
        const double used = writeLines(beside, *words, type);
        beside = {beside.x, beside.y + used, beside.width, beside.height - used};
    }
    return std::max(surface.px(50.0), beside.y - area.y + surface.px(4.0));
}

std::string holdsWords(const Job& job, const SeatId& seat) {
    const Verdict* verdict = printedVerdict(job, seat);
    const Seating* seating = job.state.build.in(seat);
    std::string words = "Consistent with the loaded rules";
    if (verdict)
        words += fmt::format(": {}", verdict->rule->printed);
    return words + (seating && seating->confirmed ? ". Confirmed."
                                                  : ". Look at it and confirm, before it goes out of sight.");
}

/// What was tapped so far; the gap may be typed too.
void askToSay(const Job& job, const SeatId& seat, const Area& area, const Surface& surface) {
    const bool hasGap = indexIsSet(job.frame, job.state.build.in(seat)->part, seat);
    const double used = writeLines(area, saidWords(job, seat, surface.drafts()), {surface.fonts().body});
    const double height = std::max(surface.target, surface.px(40.0));
    const double top = std::min(area.y + used + surface.px(10.0), area.bottom() - height);
    if (!hasGap || top < area.y + used || !bareDialOf(job, seat).unseen.empty())
        return;
    if (const auto typed = clockField({area.x, top, area.width, height}, surface))
        surface.drafts().gapSeen =
            typed->side ? seenIn(job.standingView(), Clock::seenFrom(*typed->side, typed->clock))
                        : typed->clock;
}

/// What stands below the words, from left to right; only what can be done now.
class Buttons {
public:
    Buttons(const Job& job, const Seating& seating, const Surface& surface)
        : job_{job},
          seating_{seating},
          surface_{surface},
          shown_{demandShown(job, seating.seat)},
          saying_{surface.bench && !asksHowItLies(job)} {}

    std::optional<Wish> draw(const std::vector<ToldPage>& pages, const ToldPage* page, const Area& area) {
        const std::vector<const Finding*> findings = toldFindingsOf(job_, seating_.seat);
        const std::optional<ShowMe> show = page ? showMeOf(job_, *findings[page->finding]) : std::nullopt;
        const PartId next = nextPart();
        count_ = (saying_ && !shown_) + findingsButton() + show.has_value() + (pages.size() > 1) +
                 confirmButton() + doneButton() + !next.empty();
        area_ = area;
        std::optional<Wish> wish;
        if (saying_ && !shown_ && place("Show the demand", {.second = "it is noted"}))
            wish = LookFirst{seating_.seat};
        if (findingsButton())
            findingsBox();
        if (show && place("Show me", {.second = show->words}))
            wish = LookAgain{show->standpoint};
        if (pages.size() > 1)
            turnPages(pages);
        if (confirmButton() && place("I looked: it is so", {.leading = true}))
            wish = Act{SeatingConfirmed{seating_.seat, {whoWorks(job_), Confirmation::Said::After}}};
        if (doneButton() && place("Done", {.enabled = ready(), .leading = ready(), .second = "I see it so"}))
            wish = said(job_, seating_.seat, surface_.drafts());
        if (!next.empty() && place("Next: " + next.text, {.leading = nextLeads()}))
            wish = TakeInHand{next};
        return wish;
    }

private:
    bool place(const std::string& label, ButtonLook look) {
        if (count_ > 2)
            look.font = surface_.fonts().small;
        return button(surface_, columnOf(area_, count_, index_++, surface_.px(6.0)), label, look);
    }

    bool ready() const { return saidAll(job_, seating_.seat, surface_.drafts()); }
    bool begun() const {
        return surface_.drafts().saying == seating_.seat &&
               (surface_.drafts().gapSeen || surface_.drafts().referenceFaceVisible);
    }
    bool sayable() const {
        return indexIsSet(job_.frame, seating_.part, seating_.seat) || facesOf(job_, seating_.seat);
    }
    bool doneButton() const { return saying_ && sayable() && (!seating_.confirmed || begun()); }
    bool findingsButton() const { return surface_.bench && shown_; }
    bool confirmButton() const {
        return !surface_.bench && !seating_.confirmed &&
               dialStateOf(job_, seating_.seat).sign == DialSign::Holds;
    }
    /// Going on is what one most likely wants only where all holds and is said.
    bool nextLeads() const {
        return seating_.confirmed && !doneButton() &&
               dialStateOf(job_, seating_.seat).sign == DialSign::Holds;
    }
    /// The next part of the tray; at the bench only once this one is said.
    PartId nextPart() const {
        const std::vector<PartId> tray = partsOnTray(job_);
        return tray.empty() || (surface_.bench && doneButton()) ? PartId{} : tray.front();
    }

    void findingsBox() {
        Drafts& drafts = surface_.drafts();
        const bool open = drafts.box == Drafts::Box::Findings;
        if (place("All findings", {.chosen = open}))
            drafts.box = open ? Drafts::Box::None : Drafts::Box::Findings;
    }

    void turnPages(const std::vector<ToldPage>& pages) {
        std::size_t& index = surface_.drafts().cardPage;
        const ToldPage& now = pages[index];
        const bool goesOn = index + 1 < pages.size() && pages[index + 1].finding == now.finding;
        const std::string label =
            goesOn ? "more" : (index + 1 < pages.size() ? "next finding" : "from the top");
        if (place(label, {.second = pageWords(index, pages.size())}))
            index = (index + 1) % pages.size();
    }

    std::string_view pageWords(std::size_t index, std::size_t count) {
        page_ = fmt::format("page {} of {}", index + 1, count);
        return page_;
    }

    const Job& job_;
    const Seating& seating_;
    const Surface& surface_;
    bool shown_;
    bool saying_;
    int count_ = 0;
    int index_ = 0;
    Area area_{};
    std::string page_{};
};

std::string notSetWords(const Job& job, const SeatId& seat) {
    const Seating* seating = job.state.build.in(seat);
    const bool clockMissing = !seating->index && indexIsSet(job.frame, seating->part, seat);
    const PartType* type = job.frame.typeOf(seating->part);
    if (clockMissing)
        return fmt::format("Set its {} first. It is judged when it is set down, not while it turns.",
                           wordOf(type->index));
    return "Now choose the face that you see. Then it is judged.";
}

/// Another judgement is told from its first page.
void beginTelling(const SeatId& seat, const std::vector<const Finding*>& findings, Drafts& drafts) {
    std::string told = seat.text;
    for (const Finding* finding : findings)
        told += "\n" + finding->words;
    if (told == drafts.cardTold)
        return;
    drafts.cardTold = std::move(told);
    drafts.cardPage = 0;
}

/// What is told where nothing is broken or open.
void drawElse(const Job& job, const SeatId& seat, const Area& area, const Surface& surface) {
    switch (dialStateOf(job, seat).sign) {
    case DialSign::Holds: writeLines(area, holdsWords(job, seat), {surface.fonts().body}); break;
    case DialSign::Unsaid: askToSay(job, seat, area, surface); break;
    case DialSign::NotSet:
        writeLines(area, notSetWords(job, seat), {surface.fonts().body, palette::kSoftInk});
        break;
    default: break;
    }
}

} // namespace

std::optional<DemandWords> demandWordsOf(const Job& job, const SeatId& seat) {
    const Verdict* verdict = printedVerdict(job, seat);
    if (!verdict || !demandShown(job, seat))
        return std::nullopt;
    const PrintedClock& printed = *printedClockOf(*verdict->rule);
    const BareDial dial = bareDialOf(job, seat);
    const Degrees seen = seenIn(dial.view, targetOf(printed));
    const std::string from = printed.seenFrom ? fmt::format(" from the {} side", nameOf(*printed.seenFrom))
                                              : std::string{" from either side"};
    return DemandWords{.clock = hoursAndMinutes(seen),
                       .stands = fmt::format("as you {}: {}", dial.heldOn.empty() ? "stand" : "hold it",
                                             benchPhrase(seen, job.attitude().up)),
                       .printed =
                           fmt::format("printed: {}{}, inlet on top", hoursAndMinutes(printed.clock), from)};
}

std::optional<Wish> verdictColumn(const Job& job, const SeatId& seat, const Area& area,
                                  const Surface& surface) {
    const DialState state = dialStateOf(job, seat);
    const double heading = surface.px(30.0);
    drawState(state,
              fmt::format("{}: {}", job.state.build.in(seat)->part.text,
                          state.sign == DialSign::Broken ? "rule broken" : state.word),
              {area.x, area.y, area.width, heading}, surface);
    const double buttons = std::max(surface.target, surface.px(40.0));
    Area body{area.x, area.y + heading + surface.px(4.0), area.width, 0.0};
    body.height = area.bottom() - buttons - surface.px(6.0) - body.y;
    const double demanded = drawDemanded(job, seat, body, surface);
    body = {body.x, body.y + demanded, body.width, body.height - demanded};
    const std::vector<const Finding*> findings = toldFindingsOf(job, seat);
    const std::vector<ToldPage> pages = pagesOf(findings, body, surface);
    beginTelling(seat, findings, surface.drafts());
    std::size_t& index = surface.drafts().cardPage;
    index = index < pages.size() ? index : 0;
    if (pages.empty())
        drawElse(job, seat, body, surface);
    else
        drawPage(pages[index], body);
    return Buttons{job, *job.state.build.in(seat), surface}.draw(
        pages, pages.empty() ? nullptr : &pages[index],
        {area.x, area.bottom() - buttons, area.width, buttons});
}

} // namespace gapwise
