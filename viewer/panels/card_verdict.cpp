#include "viewer/panels/card.h"

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

/// At the bench the demanded clock is read from far.
double drawDemanded(const Job& job, const SeatId& seat, const Area& area, const Surface& surface) {
    const Verdict* verdict = printedVerdict(job, seat);
    if (!surface.bench || !verdict || !demandShown(job, seat))
        return 0.0;
    const PrintedClock& printed = *printedClockOf(*verdict->rule);
    const double height = surface.px(50.0);
    const std::string clock = hoursAndMinutes(printed.clock);
    writeLine({area.x, area.y, area.width, height}, clock, {surface.fonts().bench});
    const double left =
        area.x + static_cast<double>(sizeOf(surface.fonts().bench, clock).x) + surface.px(12.0);
    writeLines({left, area.y + surface.px(8.0), area.right() - left, height},
               "demanded: " + verdict->rule->printed, {surface.fonts().body});
    return height;
}

/// A finding with its question; when there are several, a button to the next.
void drawFinding(const std::vector<const Finding*>& findings, const Area& area, const Surface& surface) {
    std::size_t& index = surface.drafts().cardFinding;
    index = index % findings.size();
    const Finding& finding = *findings[index];
    double bottom = area.bottom();
    if (findings.size() > 1) {
        const double height = surface.bench ? surface.target : surface.px(26.0);
        const Area more{area.right() - surface.px(150.0), area.bottom() - height, surface.px(150.0), height};
        if (button(surface, more, fmt::format("finding {} of {} →", index + 1, findings.size()),
                   {.font = surface.fonts().small}))
            ++index;
        bottom = more.y - surface.px(2.0);
    }
    const bool fits = heightOf(area.width, finding.words, surface.fonts().body) <= bottom - area.y + 1.0;
    ImFont* font = fits ? surface.fonts().body : surface.fonts().small;
    const double used = writeLines({area.x, area.y, area.width, bottom - area.y}, finding.words, {font});
    const double y = area.y + used + surface.px(4.0);
    if (!finding.question.empty() && y < bottom)
        writeLines({area.x, y, area.width, bottom - y}, finding.question,
                   {surface.fonts().strong, palette::kAccent});
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

/// What to do before anything is told; the gap may be typed too.
void askToSay(const Job& job, const SeatId& seat, const Area& area, const Surface& surface) {
    const bool hasGap = indexIsSet(job.frame, job.state.build.in(seat)->part, seat);
    const double used = writeLines(area,
                                   "Tap where you see the gap, then the face that you see. What is demanded "
                                   "comes after that.",
                                   {surface.fonts().body});
    const double top = area.y + used + surface.px(10.0);
    const double height = surface.px(46.0);
    if (!hasGap || top + height > area.bottom() || !bareDialOf(job, seat).unseen.empty())
        return;
    if (const auto typed = clockField({area.x, top, area.width, height}, surface))
        surface.drafts().gapSeen = typed;
}

/// What the left button offers: to look first, to confirm, or all findings.
std::optional<Wish> leftButton(const Job& job, const Seating& seating, const Area& area,
                               const Surface& surface) {
    if (surface.bench && !demandShown(job, seating.seat)) {
        if (button(surface, area, "Look first", {.second = "it is recorded so"}))
            return LookFirst{seating.seat};
        return std::nullopt;
    }
    if (surface.bench) {
        Drafts& drafts = surface.drafts();
        const bool open = drafts.box == Drafts::Box::Findings;
        if (button(surface, area, "All findings", {.chosen = open}))
            drafts.box = open ? Drafts::Box::None : Drafts::Box::Findings;
        return std::nullopt;
    }
    const bool ready = !seating.confirmed && dialStateOf(job, seating.seat).sign == DialSign::Holds;
    const char* label = seating.confirmed ? "Confirmed" : "I looked: it is so";
    if (button(surface, area, label, {.enabled = ready, .leading = ready}))
        return Act{SeatingConfirmed{seating.seat, {surface.drafts().by, Confirmation::Said::After}}};
    return std::nullopt;
}

std::optional<Wish> bottomButtons(const Job& job, const Seating& seating, const Area& area,
                                  const Surface& surface) {
    const double gap = surface.px(6.0);
    std::optional<Wish> wish = leftButton(job, seating, columnOf(area, 2, 0, gap), surface);
    const std::vector<PartId> tray = partsOnTray(job);
    if (!tray.empty() && button(surface, columnOf(area, 2, 1, gap), "Next: " + tray.front().text,
                                {.leading = seating.confirmed.has_value()}))
        wish = TakeInHand{tray.front()};
    return wish;
}

} // namespace

std::optional<Wish> verdictColumn(const Job& job, const SeatId& seat, const Area& area,
                                  const Surface& surface) {
    const DialState state = dialStateOf(job, seat);
    const double heading = surface.px(30.0);
    drawState(state, fmt::format("{} {}", job.state.build.in(seat)->part.text, state.word),
              {area.x, area.y, area.width, heading}, surface);
    const double buttons = std::max(surface.target, surface.px(36.0));
    Area body{area.x, area.y + heading + surface.px(4.0), area.width, 0.0};
    body.height = area.bottom() - buttons - surface.px(6.0) - body.y;
    const double demanded = drawDemanded(job, seat, body, surface);
    body = {body.x, body.y + demanded, body.width, body.height - demanded};
    const std::vector<const Finding*> findings = toldFindingsOf(job, seat);
    if (!findings.empty())
        drawFinding(findings, body, surface);
    else if (state.sign == DialSign::Holds)
        writeLines(body, holdsWords(job, seat), {surface.fonts().body});
    else if (state.sign == DialSign::Unsaid)
        askToSay(job, seat, body, surface);
    else if (state.sign == DialSign::NotSet)
        writeLines(body, "It is judged when it is set down.", {surface.fonts().body, palette::kSoftInk});
    return bottomButtons(job, *job.state.build.in(seat),
                         {area.x, area.bottom() - buttons, area.width, buttons}, surface);
}

} // namespace gapwise
