#include "viewer/panels/bench_question.h"
#include "viewer/panels/draw.h"
#include "viewer/panels/parts.h"
#include "viewer/panels/tip_word.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <string>

namespace gapwise {

namespace {

/// Where the circles of a dial lie.
struct DialPlan {
    Round face{};       ///< The rim.
    double first = 0.0; ///< Radius of the outermost ring.
    double pitch = 0.0;

    Round ring(std::size_t index) const {
        return face.withRadius(first - pitch * static_cast<double>(index));
    }
};

DialPlan planOf(const Area& area, std::size_t rings) {
    const double radius = std::min(area.width, area.height) / 2.0;
    DialPlan plan{.face = {area.middleX(), area.middleY(), radius}, .first = radius * 0.76};
    const double span = radius * 0.50;
    plan.pitch = rings > 1 ? std::min(radius * 0.14, span / static_cast<double>(rings - 1)) : 0.0;
    return plan;
}

void drawFace(const DialPlan& plan, const Surface& surface) {
    const Round& face = plan.face;
    ink().AddCircleFilled(point(face.x, face.y), static_cast<float>(face.radius), palette::kSheet, 96);
    drawCircle(face, {palette::kHairline, 1.5});
    for (int hour = 1; hour <= 12; ++hour) {
        const Degrees clock{30.0 * hour};
        const bool quarter = hour % 3 == 0;
        ink().AddLine(face.at(clock), face.at(clock, quarter ? 0.955 : 0.975), palette::kSoftInk,
                      quarter ? 2.0F : 1.0F);
        const ImVec2 at = face.at(clock, 0.885);
        const double half = surface.px(14.0);
        const Area words{static_cast<double>(at.x) - half, static_cast<double>(at.y) - half, 2.0 * half,
                         2.0 * half};
        writeLine(words, std::to_string(hour),
                  {quarter ? surface.fonts().strong : surface.fonts().small,
                   quarter ? palette::kInk : palette::kSoftInk, Align::Middle});
    }
}

/// What lies at the index: the opening of a gap is left free, all else is drawn.
void drawIndex(const Round& round, const DialRing& ring, const Stroke& stroke) {
    const Degrees at = ring.drawnAt;
    switch (ring.index) {
    case IndexKind::Notch:
        drawInwardPointer(round.withRadius(round.radius + stroke.thickness), at, stroke.thickness * 2.0,
                          palette::kSheet);
        break;
    case IndexKind::Arrow: drawPointer(round, at, stroke.thickness * 1.6, stroke.colour); break;
    case IndexKind::TopMark:
        ink().AddLine(round.withRadius(round.radius - stroke.thickness).at(at),
                      round.withRadius(round.radius + stroke.thickness).at(at), palette::kInk, 3.0F);
        break;
    case IndexKind::Gap:
    case IndexKind::Opening:
    case IndexKind::MatchMark:
    case IndexKind::None: break;
    }
}

/// How thick a ring is drawn.
double thicknessOf(const DialPlan& plan, bool inHand) {
    return std::max(3.0, plan.face.radius * (inHand ? 0.055 : 0.042));
}

void drawRing(const DialPlan& plan, std::size_t index, const DialRing& ring, bool inHand) {
    const Round round = plan.ring(index);
    const double thickness = thicknessOf(plan, inHand);
    if (!ring.filled) {
        drawCircle(round, {inHand ? palette::kAccent : palette::kHairline, inHand ? 2.0 : 1.0});
        return;
    }
    const ImU32 colour =
        inHand ? palette::kAccent : (ring.sight == Sight::Hidden ? palette::kSteelLight : palette::kSteel);
    if (!ring.at) {
        drawDashedCircle(round, {colour, thickness});
        return;
    }
    const bool open = ring.index == IndexKind::Gap || ring.index == IndexKind::Opening;
    const Degrees half = open ? ring.halfWidth : Degrees{0.0};
    drawArc(round, Arc{ring.drawnAt + half, Degrees{360.0 - 2.0 * half.value}}, {colour, thickness});
    drawIndex(round, ring, {colour, thickness});
}

void drawWindows(const DialPlan& plan, std::size_t index, const DialRing& ring, bool inHand) {
    const Round round = plan.ring(index);
    const double width = std::max(2.0, plan.face.radius * 0.018);
    const Round outside = round.withRadius(round.radius + thicknessOf(plan, inHand) / 2.0 + width);
    for (const Arc& window : ring.windows) {
        drawArc(outside, window, {palette::kAccent, width});
        for (const Degrees end : {window.start, window.start + window.sweep})
            ink().AddLine(outside.withRadius(round.radius - width * 1.5).at(end),
                          outside.withRadius(outside.radius + width).at(end), palette::kAccent, 2.0F);
    }
}

/// Where the person stands, or the bench: a tip outside the rim, its word beside it.
void drawArrow(const EndDial& dial, const DialPlan& plan, const Area& area, const Surface& surface) {
    const double size = surface.px(12.0);
    const Round outside = plan.face.withRadius(plan.face.radius + surface.px(3.0));
    drawPointer(outside, dial.arrowAt, size, palette::kInk);
    const ImVec2 tip = outside.withRadius(outside.radius + size * 0.5).at(dial.arrowAt);
    writeTipWord({static_cast<double>(tip.x), static_cast<double>(tip.y), size, dial.arrowAt},
                 std::string{dial.arrowWord} + (dial.arrowBelieved ? " ?" : ""), area, surface);
}

void drawDial(const EndDial& dial, const Job& job, const DialPlan& plan, const Surface& surface) {
    drawFace(plan, surface);
    for (std::size_t i = 0; i < dial.rings.size(); ++i)
        drawRing(plan, i, dial.rings[i], job.inHand == dial.rings[i].part);
    for (std::size_t i = 0; i < dial.rings.size(); ++i)
        drawWindows(plan, i, dial.rings[i], job.inHand == dial.rings[i].part);
    const double badge = std::min(surface.px(9.0), std::max(plan.pitch * 0.55, surface.px(6.5)));
    for (std::size_t i = 0; i < dial.rings.size(); ++i)
        if (const DialRing& ring = dial.rings[i]; ring.filled)
            drawSign(signAtIndex(ring), plan.ring(i).at(ring.drawnAt), badge);
}

/// The ring under a point: by its gap first, else by the nearest circle.
std::optional<std::size_t> ringAt(const EndDial& dial, const DialPlan& plan, ImVec2 at, double reach) {
    std::optional<std::size_t> found;
    double nearest = reach;
    for (std::size_t i = 0; i < dial.rings.size(); ++i) {
        const ImVec2 gap = plan.ring(i).at(dial.rings[i].drawnAt);
        const double away = std::hypot(static_cast<double>(gap.x - at.x), static_cast<double>(gap.y - at.y));
        if (dial.rings[i].filled && away < nearest) {
            nearest = away;
            found = i;
        }
    }
    if (found)
        return found;
    const double radius =
        std::hypot(static_cast<double>(at.x) - plan.face.x, static_cast<double>(at.y) - plan.face.y);
    nearest = std::max(plan.pitch * 0.6, reach);
    for (std::size_t i = 0; i < dial.rings.size(); ++i)
        if (const double away = std::abs(plan.ring(i).radius - radius); away < nearest) {
            nearest = away;
            found = i;
        }
    return found;
}

const DialRing* ringOf(const EndDial& dial, const SeatId& seat) {
    const auto found = std::ranges::find(dial.rings, seat, &DialRing::seat);
    return found == dial.rings.end() ? nullptr : &*found;
}

/// A place was tapped: what lies on the tray goes in, what is there comes in hand.
Wish tapped(const Job& job, const DialRing& ring) {
    const bool free = job.inHand && !job.state.build.of(*job.inHand) && !ring.filled;
    if (free)
        return Act{PartPlaced{.part = *job.inHand, .seat = ring.seat}};
    return TakeInHand{ring.part};
}

/// Dragging a gap round the dial, from the press to letting go.
class DialDragging {
public:
    DialDragging(const Job& job, const EndDial& dial, const DialPlan& plan, const Surface& surface)
        : job_{job}, dial_{dial}, plan_{plan}, surface_{surface}, mouse_{ImGui::GetIO().MousePos} {}

    std::optional<Wish> follow(const Pressed& pressed) const {
        std::optional<DialDrag>& drag = surface_.drafts().drag;
        if (ImGui::IsItemActivated())
            begin();
        if (!drag || drag->side != dial_.side)
            return std::nullopt;
        if (pressed.held)
            return goOn(*drag);
        const DialDrag ended = *drag;
        drag.reset();
        return end(ended);
    }

private:
    Degrees pointer() const {
        return clockOf(plan_.face, static_cast<double>(mouse_.x), static_cast<double>(mouse_.y));
    }

    void begin() const {
        const auto index = ringAt(dial_, plan_, mouse_, surface_.px(14.0));
        if (!index)
            return;
        const DialRing& ring = dial_.rings[*index];
        const Degrees grabbed = ring.at ? wrappedHalf(*ring.at - pointer()) : Degrees{0.0};
        // A far grip would make the gap jump: the gap comes to the pointer then.
        constexpr double kNearDegrees = 20.0;
        const bool near = std::abs(grabbed.value) < kNearDegrees;
        surface_.drafts().drag = DialDrag{.side = dial_.side,
                                          .seat = ring.seat,
                                          .grip = near ? grabbed : Degrees{0.0},
                                          .fromX = static_cast<double>(mouse_.x),
                                          .fromY = static_cast<double>(mouse_.y)};
    }

    std::optional<Wish> goOn(DialDrag& drag) const {
        const DialRing* ring = ringOf(dial_, drag.seat);
        const double way = std::hypot(static_cast<double>(mouse_.x) - drag.fromX,
                                      static_cast<double>(mouse_.y) - drag.fromY);
        drag.moved = drag.moved || way > surface_.px(5.0);
        if (!drag.moved || !ring || !ring->filled || !indexIsSet(job_.frame, ring->part, ring->seat))
            return std::nullopt;
        if (job_.inHand != ring->part)
            return TakeInHand{ring->part};
        const Degrees seen{std::round((pointer() + drag.grip).value)};
        const Clock index = indexFor(job_, drag.seat, Clock::seenFrom(dial_.side, seen));
        if (job_.turning && apart(job_.turning->index, index).value < 0.5)
            return std::nullopt;
        return Turning{drag.seat, index};
    }

    std::optional<Wish> end(const DialDrag& drag) const {
        const DialRing* ring = ringOf(dial_, drag.seat);
        if (drag.moved && job_.turning && job_.turning->seat == drag.seat)
            return Act{IndexTurned{drag.seat, job_.turning->index, inletOnTop(dial_.side)}};
        if (drag.moved || !ring)
            return std::nullopt;
        return tapped(job_, *ring);
    }

    const Job& job_;
    const EndDial& dial_;
    const DialPlan& plan_;
    const Surface& surface_;
    ImVec2 mouse_;
};

std::string legendNote(const DialRing& ring) {
    if (!ring.filled)
        return {};
    if (!ring.readFrom.empty())
        return "from the mark of " + ring.readFrom.text;
    return ring.sight == Sight::Plain ? std::string{} : std::string{wordOf(ring.sight)};
}

/// One ring in words: sign, name, how it is seen, where its index points, state.
std::optional<Wish> legendEntry(const Job& job, const DialRing& ring, const Area& area,
                                const Surface& surface) {
    const Pressed pressed = pressable(surface, ring.seat.text.c_str(), area);
    if (pressed.hovered)
        surface.frame.pointedAt = ring.part;
    if (job.inHand == ring.part || pressed.hovered)
        fillArea(area, job.inHand == ring.part ? palette::kAccentLight : palette::kShade, surface.px(4.0));
    const double sign = surface.px(7.5);
    drawSign(ring.state.sign, point(area.x + surface.px(12.0), area.middleY()), sign);
    const double left = area.x + surface.px(26.0);
    const bool tall = area.height > surface.px(40.0);
    const double half = tall ? area.height / 2.0 : area.height;
    const double name = std::min(surface.px(92.0), area.right() - left);
    const bool fits = static_cast<double>(sizeOf(surface.fonts().strong, ring.part.text).x) <= name;
    writeLine({left, area.y, name, half}, ring.part.text,
              {fits ? surface.fonts().strong : surface.fonts().small});
    const Area words{left + surface.px(94.0), area.y, area.right() - left - surface.px(100.0), half};
    if (tall) {
        writeLine({left, area.y + half, area.right() - left, half}, ring.state.word,
                  {surface.fonts().small, colourOf(ring.state.sign)});
        return pressed.done ? std::optional<Wish>{tapped(job, ring)} : std::nullopt;
    }
    const std::string clock = ring.at ? hoursAndMinutes(*ring.at) : std::string{};
    writeLine({words.x, words.y, surface.px(44.0), half}, clock, {surface.fonts().small, palette::kInk});
    writeLine({words.x + surface.px(44.0), words.y, words.width - surface.px(44.0), half}, ring.state.word,
              {surface.fonts().strong, colourOf(ring.state.sign), Align::Right});
    const double taken =
        static_cast<double>(sizeOf(surface.fonts().strong, ring.state.word).x) + surface.px(8.0);
    writeLine({words.x + surface.px(44.0), words.y, words.width - surface.px(44.0) - taken, half},
              legendNote(ring), {surface.fonts().small, palette::kSoftInk});
    return pressed.done ? std::optional<Wish>{tapped(job, ring)} : std::nullopt;
}

struct DialAreas {
    Area title{};
    Area dial{};
    Area legend{};
    int columns = 1;
    double rowHeight = 0.0;
};

DialAreas areasOf(const Area& area, std::size_t rings, const Surface& surface) {
    DialAreas areas;
    areas.title = {area.x, area.y, area.width, surface.px(44.0)};
    areas.rowHeight = surface.bench ? surface.target : surface.px(23.0);
    const double margin = surface.px(18.0);
    const double free = area.height - areas.title.height;
    const double least = surface.px(190.0);
    const auto heightIn = [&](int columns) {
        const auto count = static_cast<std::size_t>(columns);
        return static_cast<double>((rings + count - 1) / count) * areas.rowHeight;
    };
    areas.columns = surface.bench ? 2 : 1;
    if (surface.bench && free - heightIn(areas.columns) < least) // large targets, many rings
        areas.columns = 3;
    const double wanted = heightIn(areas.columns);
    const double legend = free - wanted >= least ? wanted : 0.0;
    const double size = std::min(area.width, free - legend);
    areas.dial = Area{area.x, areas.title.bottom(), area.width, size}.inset(margin);
    areas.legend = {area.x, areas.title.bottom() + size, area.width, legend};
    return areas;
}

void drawTitle(Side side, const Area& area, const Surface& surface) {
    const bool compressor = side == Side::Compressor;
    writeLine({area.x, area.y, area.width, area.height * 0.58}, compressor ? "COMPRESSOR end" : "TURBINE end",
              {surface.fonts().title, palette::kInk, Align::Middle});
    writeLine({area.x, area.y + area.height * 0.58, area.width, area.height * 0.42},
              compressor ? "seen from the compressor side, inlet on top"
                         : "seen from the turbine side, inlet on top",
              {surface.fonts().small, palette::kSoftInk, Align::Middle});
}

} // namespace

std::optional<Wish> endDialPanel(const Job& job, Side side, const Area& area, const Surface& surface) {
    if (area.empty())
        return std::nullopt;
    const Scope scope{surface, nameOf(side)};
    const EndDial dial = endDialOf(job, side);
    // Both dials stay alike, whichever end has more rings.
    const std::size_t most = std::max(dial.rings.size(), ringCountOf(job.frame, opposite(side)));
    const DialAreas areas = areasOf(area, most, surface);
    drawTitle(side, areas.title, surface);
    const DialPlan plan = planOf(areas.dial, dial.rings.size());
    const Pressed pressed = pressable(surface, "dial", areas.dial);
    std::optional<Wish> wish = DialDragging{job, dial, plan, surface}.follow(pressed);
    if (pressed.hovered)
        if (const auto over = ringAt(dial, plan, ImGui::GetIO().MousePos, surface.px(14.0)))
            surface.frame.pointedAt = dial.rings[*over].part;
    drawDial(dial, job, plan, surface);
    if (!asksWhichEnd(job))
        drawArrow(dial, plan, areas.dial.inset(-surface.px(14.0)), surface);
    for (std::size_t i = 0; i < dial.rings.size() && !areas.legend.empty(); ++i) {
        const auto columns = static_cast<std::size_t>(areas.columns);
        const Area row{areas.legend.x, areas.legend.y + static_cast<double>(i / columns) * areas.rowHeight,
                       areas.legend.width, areas.rowHeight};
        const Area place = columnOf(row, areas.columns, static_cast<int>(i % columns), surface.px(4.0));
        if (const auto picked = legendEntry(job, dial.rings[i], place, surface))
            wish = picked;
    }
    return wish;
}

} // namespace gapwise
