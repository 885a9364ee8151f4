#include "viewer/panels/card.h"

#include <imgui_stdlib.h>

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace gapwise {

namespace {

/// Where the index is, or where it is drawn while nobody set it.
Clock clockOrDrawn(const Job& job, const SeatId& seat) {
    for (const Side side : {Side::Compressor, Side::Turbine})
        for (const DialRing& ring : endDialOf(job, side).rings)
            if (ring.seat == seat)
                return Clock::seenFrom(side, ring.drawnAt);
    return housingClockOf(job.frame, job.state.build, seat)
        .index.value_or(Clock::seenFrom(Side::Compressor, Degrees{0.0}));
}

std::string capital(std::string_view words) {
    std::string text{words};
    if (!text.empty() && text.front() >= 'a' && text.front() <= 'z')
        text.front() = static_cast<char>(text.front() - 'a' + 'A');
    return text;
}

/// Where the index points, in words; a direction takes a line of its own, and a second one before it is cut.
/// Returns the height used.
double drawWords(const Job& job, const SeatId& seat, const Area& area, const Surface& surface) {
    const Seating* seating = job.state.build.in(seat);
    const PartType* type = job.frame.typeOf(seating->part);
    const std::string index = capital(wordOf(type->index));
    const Type small{surface.fonts().small, palette::kSoftInk};
    const double upper = surface.px(21.0);
    Area lower{area.x, area.y + upper, area.width, area.height - upper};
    const std::optional<GapWords> words = gapWordsOf(job, seat);
    if (!words) {
        writeLine({area.x, area.y, area.width, upper}, index + " not set",
                  {surface.fonts().strong, palette::kUnknown});
        return upper + writeLines(lower, "drag it round the dial, press a clock, or type one", small);
    }
    writeLine({area.x, area.y, area.width, upper}, index + " at " + words->own, {surface.fonts().strong});
    const std::string from = words->from.empty() ? std::string{} : " · " + words->from;
    for (const std::string& line : {words->other + from, words->bench}) {
        const double used = writeLines(lower, line, small);
        lower = {lower.x, lower.y + used, lower.width, lower.height - used};
    }
    return lower.y - area.y;
}

void chooseMeant(const Job& job, const Area& area, const Surface& surface) {
    constexpr std::array<std::pair<ClockMeant, const char*>, 3> kChoices{
        {{ClockMeant::AsISeeIt, "as I stand"},
         {ClockMeant::FromTurbine, "from turbine"},
         {ClockMeant::FromCompressor, "from compressor"}}};
    const double gap = surface.px(4.0);
    const double wide = area.width * 0.38;
    const Area others{area.x + wide + gap, area.y, area.width - wide - gap, area.height};
    const std::string drain =
        "drain " +
        directionIn(wide - surface.px(8.0) - static_cast<double>(sizeOf(surface.fonts().small, "drain ").x),
                    job, wrapped(job.standingView().top + Degrees{180.0}), surface.fonts().small);
    for (int i = 0; i < 3; ++i) {
        const auto& [meant, label] = kChoices.at(static_cast<std::size_t>(i));
        const bool own = meant == ClockMeant::AsISeeIt;
        const Area place = own ? Area{area.x, area.y, wide, area.height} : columnOf(others, 2, i - 1, gap);
        if (button(surface, place, label,
                   {.chosen = surface.drafts().meant == meant,
                    .font = surface.fonts().small,
                    .second = own ? std::string_view{drain} : std::string_view{"inlet on top"}}))
            surface.drafts().meant = meant;
    }
}

std::optional<Wish> quarters(const Job& job, const SeatId& seat, const Area& area, const Surface& surface) {
    constexpr std::array<const char*, 4> kHours{"12", "3", "6", "9"};
    const ClockMeant meant = surface.drafts().meant;
    const View view = viewMeant(job, meant);
    std::optional<Wish> wish;
    for (int i = 0; i < 4; ++i) {
        const Degrees seen{90.0 * i};
        const std::string_view word = benchWord(seen, job.attitude().up);
        const std::string_view second = meant == ClockMeant::AsISeeIt ? word : std::string_view{":00"};
        if (button(surface, columnOf(area, 4, i, surface.px(4.0)), kHours.at(static_cast<std::size_t>(i)),
                   {.second = second}))
            wish = pointTo(job, seat, view, seen);
    }
    return wish;
}

std::optional<Wish> smallTurns(const Job& job, const SeatId& seat, const Area& area, const Surface& surface) {
    constexpr std::array<std::pair<double, const char*>, 4> kTurns{
        {{-5.0, "↺ 5°"}, {-1.0, "↺ 1°"}, {1.0, "↻ 1°"}, {5.0, "↻ 5°"}}};
    const View view = viewMeant(job, surface.drafts().meant);
    std::optional<Wish> wish;
    for (int i = 0; i < 4; ++i) {
        const auto& [degrees, label] = kTurns.at(static_cast<std::size_t>(i));
        if (button(surface, columnOf(area, 4, i, surface.px(4.0)), label))
            wish = turnOn(job, seat, view, Degrees{degrees});
    }
    return wish;
}

std::string_view trimmed(std::string_view text) {
    while (text.starts_with(' '))
        text.remove_prefix(1);
    while (text.ends_with(' '))
        text.remove_suffix(1);
    return text;
}

/// What is typed after a clock.
struct SideWords {
    bool understood = true;
    std::optional<Side> side{};
};

SideWords typedSide(std::string_view words) {
    if (words.starts_with("from "))
        words = trimmed(words.substr(5));
    if (words.empty())
        return {};
    for (const Side side : {Side::Compressor, Side::Turbine})
        if (nameOf(side).starts_with(words))
            return {.side = side};
    return {.understood = false};
}

} // namespace

std::string directionIn(double width, const Job& job, Degrees seen, ImFont* font) {
    std::string words = benchPhrase(seen, job.attitude().up);
    if (static_cast<double>(sizeOf(font, words).x) > width)
        words = benchWord(seen, job.attitude().up);
    return words;
}

View viewMeant(const Job& job, ClockMeant meant) {
    switch (meant) {
    case ClockMeant::FromCompressor: return inletOnTop(Side::Compressor);
    case ClockMeant::FromTurbine: return inletOnTop(Side::Turbine);
    case ClockMeant::AsISeeIt: break;
    }
    return job.standingView();
}

Wish pointTo(const Job& job, const SeatId& seat, const View& view, Degrees seen) {
    return Act{IndexTurned{seat, indexFor(job, seat, clockSeenIn(view, seen)), view}};
}

Wish turnOn(const Job& job, const SeatId& seat, const View& view, Degrees degrees) {
    const Clock turned = clockOrDrawn(job, seat).turned(view.side, degrees);
    return Act{IndexTurned{seat, indexFor(job, seat, turned), view}};
}

std::optional<TypedClock> typedClock(std::string_view text) {
    text = trimmed(text);
    const std::size_t end = text.find(' ');
    const std::string number{text.substr(0, end)};
    const SideWords after =
        typedSide(end == std::string_view::npos ? std::string_view{} : trimmed(text.substr(end)));
    const bool hourOnly =
        !number.empty() && number.size() <= 2 && number.find_first_not_of("0123456789") == std::string::npos;
    const Result<Degrees> clock = parseClockwise(hourOnly ? number + ":00" : number, "clock");
    if (!clock || !after.understood)
        return std::nullopt;
    return TypedClock{*clock, after.side};
}

std::optional<TypedClock> clockField(const Area& area, const Surface& surface) {
    std::string& text = surface.drafts().clock;
    const double width = surface.px(88.0);
    ImGui::SetCursorScreenPos(
        point(area.x, area.y + (area.height - static_cast<double>(ImGui::GetFrameHeight())) / 2.0));
    ImGui::SetNextItemWidth(static_cast<float>(width));
    surface.frame.targets.push_back({surface.frame.scope + "clock", {area.x, area.y, width, area.height}});
    const bool enter =
        ImGui::InputTextWithHint("##clock", "h:mm", &text, ImGuiInputTextFlags_EnterReturnsTrue);
    const std::optional<TypedClock> clock = typedClock(text);
    const double pressWidth = std::max(surface.px(52.0), surface.bench ? surface.target : 0.0);
    const Area set{area.x + width + surface.px(6.0), area.y, pressWidth, area.height};
    const bool pressed = button(surface, set, "Set", {.enabled = clock.has_value()});
    const Area words{set.right() + surface.px(8.0), area.y, area.right() - set.right() - surface.px(8.0),
                     area.height};
    const bool wrong = !text.empty() && !clock;
    writeLine(words,
              wrong           ? "not a clock: 3:00, 90deg, 3:00 turbine"
              : surface.bench ? "or type it as you stand"
                              : "or type it: 3:00, 3:00 turbine",
              {surface.fonts().small, wrong ? palette::kBroken : palette::kSoftInk});
    if (!clock || !(enter || pressed))
        return std::nullopt;
    text.clear();
    return clock;
}

std::optional<Wish> clockColumn(const Job& job, const SeatId& seat, const Area& area,
                                const Surface& surface) {
    const Seating* seating = job.state.build.in(seat);
    if (!indexIsSet(job.frame, seating->part, seat)) {
        writeLines(area, "No clock to set: it has no gap, notch or mark, or its hole sets it.",
                   {surface.fonts().body, palette::kSoftInk});
        return std::nullopt;
    }
    const double gap = surface.px(5.0);
    const double words = std::max(surface.px(40.0), drawWords(job, seat, area, surface));
    const double row = (area.height - words - 4.0 * gap) / 4.0;
    const auto at = [&](int index) {
        return Area{area.x, area.y + words + gap + index * (row + gap), area.width, row};
    };
    chooseMeant(job, at(0), surface);
    std::optional<Wish> wish = quarters(job, seat, at(1), surface);
    if (const auto turned = smallTurns(job, seat, at(2), surface))
        wish = turned;
    if (const auto typed = clockField(at(3), surface)) {
        const View view = typed->side ? inletOnTop(*typed->side) : viewMeant(job, surface.drafts().meant);
        wish = pointTo(job, seat, view, typed->clock);
    }
    return wish;
}

} // namespace gapwise
