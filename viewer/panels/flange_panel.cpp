#include "viewer/panels/torque_parts.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gapwise {

namespace {

/// Where the drawing lies.
struct FlangePlan {
    Area title{};
    Area field{};
    Round ring{};        ///< Through the middles of the screws.
    double screw = 20.0; ///< Radius of a screw's disc.
};

/// How far apart neighbours on the ring are, as a share of its radius.
double spacingOf(const TorqueWork& work) {
    double least = 2.0;
    for (std::size_t i = 0; i < work.flange.screws.size(); ++i)
        for (std::size_t k = 0; k < i; ++k) {
            const double between = apart(work.flange.screws[i].at, work.flange.screws[k].at).value;
            least = std::min(least, 2.0 * std::sin(radians(Degrees{between / 2.0})));
        }
    return least;
}

bool isNut(const TorqueWork& work) {
    return work.flange.screws.size() == 1 && work.flange.screws.front().radiusMm == 0.0;
}

/// Whether what is toward the person, or up, is at the upper edge of the drawing.
bool markOnTop(const TorqueWork& work) {
    return work.facing.up == EndUp::Level || work.facing.fromBehind;
}

/// With more screws there is no room for an arrow round one of them.
constexpr std::size_t kRoomForArrows = 6;

FlangePlan planOf(const TorqueWork& work, const Area& area, const Surface& surface) {
    FlangePlan plan;
    plan.title = {area.x, area.y, area.width, surface.px(18.0)};
    const double mark = surface.px(17.0);
    plan.field = {area.x, plan.title.bottom() + (markOnTop(work) ? mark : 0.0), area.width,
                  area.height - plan.title.height - mark};
    const double half = std::min(plan.field.width, plan.field.height) / 2.0;
    const double most = surface.px(36.0);
    // disc + ring = half, and the discs just do not touch.
    constexpr double kFilled = 0.46;
    const double share = spacingOf(work) * kFilled;
    const double arrow = surface.px(work.flange.screws.size() > kRoomForArrows ? 0.0 : 11.0);
    plan.screw = isNut(work) ? half * 0.42 : std::min(most, (half - arrow) * share / (1.0 + share));
    plan.ring = {plan.field.middleX(), plan.field.middleY(),
                 isNut(work) ? half * 0.80 : half - arrow - plan.screw};
    return plan;
}

ImVec2 placeOf(const TorqueWork& work, const FlangePlan& plan, const FlangeScrew& screw) {
    return isNut(work) ? point(plan.ring.x, plan.ring.y) : plan.ring.at(work.facing.seen(screw));
}

const FlangeScrew* screwNumbered(const TorqueWork& work, int number) {
    const auto found = std::ranges::find(work.flange.screws, number, &FlangeScrew::number);
    return found == work.flange.screws.end() ? nullptr : &*found;
}

/// Screw to screw in the order of the stage: pale all of it, strong from the one done last to the next one.
void drawPattern(const TorqueWork& work, const FlangePlan& plan, const Surface& surface) {
    const std::vector<int>& order = work.now().order;
    const FlangeScrew* before = nullptr;
    for (const int number : order) {
        const FlangeScrew* screw = screwNumbered(work, number);
        if (!screw)
            continue;
        const bool now = !work.done && number == work.next();
        if (before)
            ink().AddLine(placeOf(work, plan, *before), placeOf(work, plan, *screw),
                          now ? palette::kAccent : palette::kHairline,
                          static_cast<float>(surface.px(now ? 4.0 : 1.5)));
        before = screw;
    }
}

/// A word at a clock of the drawing: inside the ring of screws, outside that of a nut.
void innerWord(const TorqueWork& work, const FlangePlan& plan, Degrees at, std::string_view word,
               const Surface& surface) {
    const double depth = isNut(work) ? surface.px(-14.0) : plan.screw + surface.px(15.0);
    const ImVec2 middle = plan.ring.withRadius(plan.ring.radius - depth).at(at);
    const ImVec2 size = sizeOf(surface.fonts().strong, word);
    const Area box{static_cast<double>(middle.x - size.x / 2.0F) - 3.0,
                   static_cast<double>(middle.y - size.y / 2.0F), static_cast<double>(size.x) + 6.0,
                   static_cast<double>(size.y)};
    fillArea(box, palette::kPaper, 3.0);
    writeLine(box, word, {surface.fonts().strong, palette::kInk, Align::Middle});
    const Round rim =
        plan.ring.withRadius(plan.ring.radius - (isNut(work) ? surface.px(9.0) : plan.screw * 0.5));
    drawPointer(rim, at, surface.px(9.0), palette::kInk);
}

/// The way toward the person, or up: outside the ring, with a tip.
void benchMark(const TorqueWork& work, const FlangePlan& plan, const Surface& surface) {
    const bool level = work.facing.up == EndUp::Level;
    const bool top = markOnTop(work);
    const double height = surface.px(17.0);
    const Area row{plan.field.x, top ? plan.field.y - height : plan.field.bottom(), plan.field.width, height};
    const std::string_view words = level ? "up" : "toward you";
    writeLine(row, words, {surface.fonts().strong, palette::kInk, Align::Middle});
    const double half = static_cast<double>(sizeOf(surface.fonts().strong, words).x) / 2.0;
    const auto tip = static_cast<float>(surface.px(top ? -5.0 : 5.0));
    for (const double side : {-1.0, 1.0}) {
        const ImVec2 at = point(row.middleX() + side * (half + surface.px(14.0)), row.middleY());
        const auto wide = static_cast<float>(surface.px(7.0));
        ink().AddTriangleFilled({at.x - wide, at.y - tip}, {at.x + wide, at.y - tip}, {at.x, at.y + tip},
                                palette::kInk);
    }
}

void drawMarks(const TorqueWork& work, const FlangePlan& plan, const Surface& surface) {
    if (!work.flange.drawn)
        return;
    innerWord(work, plan, work.facing.inletAt(), "12 inlet", surface);
    innerWord(work, plan, work.facing.drainAt(), "6 drain", surface);
    benchMark(work, plan, surface);
}

struct DiscLook {
    ImU32 fill = palette::kSheet;
    ImU32 rim = palette::kSoftInk;
    ImU32 ink = palette::kInk;
    double width = 2.0;
};

DiscLook lookOf(ScrewStanding standing) {
    switch (standing) {
    case ScrewStanding::Done: return {palette::kSheet, palette::kHolds, palette::kHolds, 3.0};
    case ScrewStanding::Next: return {palette::kAccent, palette::kInk, palette::kSheet, 4.0};
    case ScrewStanding::Open: break;
    }
    return {};
}

/// The largest font in which a number fits its disc.
ImFont* numberFont(double radius, const Surface& surface) {
    const double bench = lineHeightOf(surface.fonts().bench);
    return radius * 2.0 > bench * 0.95 ? surface.fonts().bench : surface.fonts().title;
}

void drawDisc(const TorqueWork& work, const FlangePlan& plan, const FlangeScrew& screw,
              const Surface& surface) {
    const ScrewStanding standing = work.screws[static_cast<std::size_t>(screw.number - 1)];
    const DiscLook look = lookOf(standing);
    const ImVec2 at = placeOf(work, plan, screw);
    const auto radius = static_cast<float>(plan.screw);
    if (isNut(work)) {
        ink().AddNgonFilled(at, radius, look.fill, 6);
        ink().AddNgon(at, radius, look.rim, 6, static_cast<float>(look.width));
    } else {
        ink().AddCircleFilled(at, radius, look.fill, 48);
        ink().AddCircle(at, radius - 1.0F, look.rim, 48, static_cast<float>(look.width));
    }
    const double half = plan.screw;
    const Area box{static_cast<double>(at.x) - half, static_cast<double>(at.y) - half, 2.0 * half,
                   2.0 * half};
    writeLine(box, isNut(work) ? "nut" : std::to_string(screw.number),
              {numberFont(plan.screw, surface), look.ink, Align::Middle});
    if (standing == ScrewStanding::Done)
        drawSign(DialSign::Holds, {at.x + radius * 0.72F, at.y - radius * 0.72F},
                 std::max(surface.px(9.0), plan.screw * 0.34));
}

/// Which way the next one turns, round it, where its neighbours leave room.
void drawSense(const TorqueWork& work, const FlangePlan& plan, const Surface& surface) {
    if (work.done)
        return;
    const FlangeScrew* next = screwNumbered(work, work.next());
    const double room = plan.ring.radius * spacingOf(work) - 2.0 * plan.screw;
    if (!next || work.flange.screws.size() > kRoomForArrows || (!isNut(work) && room < surface.px(22.0)))
        return;
    const ImVec2 at = placeOf(work, plan, *next);
    const double away = surface.px(isNut(work) ? 12.0 : 8.0);
    drawTurn({static_cast<double>(at.x), static_cast<double>(at.y), plan.screw + away}, work.turn().asFaced,
             {palette::kAccent, surface.px(isNut(work) ? 8.0 : 4.0)});
}

/// The torque of the stage in the middle of the ring.
void drawMiddle(const TorqueWork& work, const FlangePlan& plan, const Surface& surface) {
    const double free = plan.ring.radius - plan.screw - surface.px(30.0);
    if (isNut(work) || free < surface.px(24.0))
        return;
    const std::string torque =
        work.done ? "done" : torqueWords(work.now().torqueNm, surface.drafts().torque.unit);
    const bool wide = static_cast<double>(sizeOf(surface.fonts().title, torque).x) < 2.0 * free;
    const double line = surface.px(26.0);
    const Area row{plan.ring.x - free, plan.ring.y - line, 2.0 * free, line};
    fillArea({row.x, row.y, row.width, 2.0 * line}, palette::kPaper, 6.0);
    writeLine(row, torque,
              {wide ? surface.fonts().title : surface.fonts().strong, palette::kInk, Align::Middle});
    writeLine({row.x, row.bottom(), row.width, line}, work.done ? "all" : work.now().name,
              {surface.fonts().small, palette::kSoftInk, Align::Middle});
}

std::optional<Wish> taps(const TorqueWork& work, const FlangePlan& plan, const Surface& surface) {
    std::optional<Wish> wish;
    const double half =
        std::max(plan.screw, std::min(surface.target / 2.0, plan.ring.radius * spacingOf(work) / 2.0));
    for (const FlangeScrew& screw : work.flange.screws) {
        const ImVec2 at = placeOf(work, plan, screw);
        const Area area{static_cast<double>(at.x) - half, static_cast<double>(at.y) - half, 2.0 * half,
                        2.0 * half};
        if (pressable(surface, fmt::format("screw {}", screw.number).c_str(), area).done)
            wish = tick(work, screw.number, surface);
    }
    return wish;
}

/// The flanges of a fastener that has more than one. Returns the height used.
double chooseGroup(const TorqueWork& work, const Area& area, const Surface& surface) {
    const auto count = static_cast<int>(work.plan.groups.size());
    if (count < 2)
        return 0.0;
    const double height = std::max(surface.bench ? surface.target : 0.0, surface.px(36.0));
    for (int i = 0; i < count; ++i) {
        const std::string& name = work.plan.groups[static_cast<std::size_t>(i)].name;
        const bool done = isGroupDone(work.fastener, i, work.job.state);
        if (button(surface, columnOf({area.x, area.y, area.width, height}, count, i, surface.px(4.0)),
                   name.empty() ? fmt::format("flange {}", i + 1) : name,
                   {.chosen = i == work.group, .second = done ? "done" : "open"})) {
            surface.drafts().torque.group = i;
            surface.drafts().torque.said.clear();
        }
    }
    return height + surface.px(4.0);
}

} // namespace

std::optional<Wish> flangePanel(const Job& job, const FastenerId& id, const Area& area,
                                const Surface& surface) {
    const std::optional<TorqueWork> work = torqueWorkOf(job, id, surface.drafts().torque);
    if (area.empty() || !work)
        return std::nullopt;
    const Scope scope{surface, "flange"};
    const double used = chooseGroup(*work, area, surface);
    const FlangePlan plan = planOf(*work, {area.x, area.y + used, area.width, area.height - used}, surface);
    writeLine(plan.title,
              work->flange.drawn ? facingWords(work->facing)
                                 : "facing its heads, 1 on top: the frame draws none",
              {surface.fonts().small, palette::kInk, Align::Middle});
    if (!isNut(*work)) {
        drawCircle(plan.ring, {palette::kSteelLight, 2.0});
        drawPattern(*work, plan, surface);
    } else {
        drawCircle(plan.ring, {palette::kHairline, 1.5});
    }
    drawMiddle(*work, plan, surface);
    drawMarks(*work, plan, surface);
    for (const FlangeScrew& screw : work->flange.screws)
        drawDisc(*work, plan, screw, surface);
    drawSense(*work, plan, surface);
    return taps(*work, plan, surface);
}

} // namespace gapwise
