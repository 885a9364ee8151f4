#include "viewer/panels/parts.h"

#include <algorithm>
#include <array>
#include <utility>

namespace gapwise {

namespace {

constexpr std::array<std::pair<LookKind, const char*>, 6> kLooks{
    {{LookKind::FromTurbine, "Turbine side"},
     {LookKind::FromCompressor, "Compressor side"},
     {LookKind::WhereIStand, "From where I stand"},
     {LookKind::Beside, "Beside"},
     {LookKind::Free, "Free"},
     {LookKind::BothEnds, "Both ends"}}};

Wish lookFrom(const Job& job, LookKind kind) {
    Standpoint standpoint = job.standpoint;
    standpoint.kind = kind;
    return LookAgain{standpoint};
}

/// The eye moves, the piece stays: an eighth of the way round, or to the other end of a level piece.
Wish walkOn(const Job& job, double direction) {
    Standpoint standpoint = job.standpoint;
    standpoint.kind = LookKind::WhereIStand;
    if (job.attitude().up == EndUp::Level)
        standpoint.observer.levelSide = opposite(standpoint.observer.levelSide);
    else
        standpoint.observer.stand = wrapped(standpoint.observer.stand + Degrees{90.0 * direction});
    return LookAgain{standpoint};
}

std::optional<Wish> looksRow(const Job& job, const Area& area, const Surface& surface) {
    std::optional<Wish> wish;
    constexpr std::array<double, 6> kShares{1.0, 1.22, 1.4, 0.7, 0.55, 0.85};
    double total = 0.0;
    for (const double share : kShares)
        total += share;
    const double gap = surface.px(5.0);
    const double unit = (area.width - gap * (kShares.size() - 1)) / total;
    double x = area.x;
    for (std::size_t i = 0; i < kLooks.size(); ++i) {
        const auto& [kind, label] = kLooks.at(i);
        const Area place{x, area.y, unit * kShares.at(i), area.height};
        if (button(surface, place, label,
                   {.chosen = job.standpoint.kind == kind, .font = surface.fonts().small}))
            wish = lookFrom(job, kind);
        x = place.right() + gap;
    }
    return wish;
}

std::optional<Wish> walkRow(const Job& job, const Area& area, const Surface& surface) {
    const bool level = job.attitude().up == EndUp::Level;
    const Area words{area.x, area.y, area.width * 0.36, area.height};
    const Area buttons{words.right(), area.y, area.width - words.width, area.height};
    writeLine(words, "I walk round", {surface.fonts().strong, palette::kInk});
    const double gap = surface.px(5.0);
    std::optional<Wish> wish;
    if (level) {
        if (button(surface, buttons, "to the other end", {.font = surface.fonts().small}))
            wish = walkOn(job, 1.0);
        return wish;
    }
    if (button(surface, columnOf(buttons, 2, 0, gap), "to the left", {.font = surface.fonts().small}))
        wish = walkOn(job, 1.0);
    if (button(surface, columnOf(buttons, 2, 1, gap), "to the right", {.font = surface.fonts().small}))
        wish = walkOn(job, -1.0);
    return wish;
}

std::optional<Wish> turnRow(const Job& job, const Area& area, const Surface& surface) {
    const bool level = job.attitude().up == EndUp::Level;
    const std::array<std::pair<TurningMove, const char*>, 3> moves{
        {{TurningMove::Rolled, level ? "roll over" : "half round"},
         {TurningMove::TurnedRound, level ? "turn round" : "tip sideways"},
         {TurningMove::TippedOver, level ? "tip over" : "tip toward me"}}};
    const Area words{area.x, area.y, area.width * 0.26, area.height};
    const Area buttons{words.right(), area.y, area.width - words.width, area.height};
    writeLine(words, "I turn the piece", {surface.fonts().strong, palette::kInk});
    std::optional<Wish> wish;
    const double gap = surface.px(5.0);
    for (int i = 0; i < 3; ++i) {
        const auto& [move, label] = moves.at(static_cast<std::size_t>(i));
        if (button(surface, columnOf(buttons, 4, i, gap), label, {.font = surface.fonts().small}))
            wish = TurnPiece{move};
    }
    if (button(surface, columnOf(buttons, 4, 3, gap), level ? "stand it up …" : "lay it …",
               {.font = surface.fonts().small}))
        surface.drafts().box = Drafts::Box::Lying;
    return wish;
}

} // namespace

std::optional<Wish> lookPanel(const Job& job, const Area& area, const Surface& surface) {
    const Scope scope{surface, "looks"};
    const double gap = surface.px(8.0);
    const double row = (area.height - gap) / 2.0;
    std::optional<Wish> wish = looksRow(job, {area.x, area.y, area.width, row}, surface);
    const double split = area.width * 0.34;
    const double y = area.y + row + gap;
    if (const auto walk = walkRow(job, {area.x, y, split - gap, row}, surface))
        wish = walk;
    if (const auto turn = turnRow(job, {area.x + split + gap, y, area.width - split - gap, row}, surface))
        wish = turn;
    return wish;
}

std::optional<Wish> pullApartPanel(const Job& job, const Area& area, const Surface& surface) {
    const Scope scope{surface, "pull apart"};
    const double words = surface.px(34.0);
    writeLines({area.x, area.y, area.width, words}, "Pull\napart",
               {surface.fonts().small, palette::kSoftInk, Align::Middle});
    const Area rail{area.x, area.y + words + surface.px(12.0), area.width,
                    area.height - words - surface.px(24.0)};
    // The knob can be taken whole at either end.
    const double knob = surface.px(12.0);
    const Area hold{rail.x, rail.y - knob, rail.width, rail.height + 2.0 * knob};
    const Pressed pressed = pressable(surface, "rail", hold);
    const double x = rail.middleX();
    const double value = job.standpoint.pulledApart;
    const double y = rail.bottom() - value * rail.height;
    ink().AddLine(point(x, rail.y), point(x, rail.bottom()), palette::kHairline,
                  static_cast<float>(surface.px(4.0)));
    ink().AddLine(point(x, y), point(x, rail.bottom()), palette::kAccent,
                  static_cast<float>(surface.px(4.0)));
    ink().AddCircleFilled(point(x, y), static_cast<float>(surface.px(pressed.held ? 12.0 : 10.0)),
                          palette::kAccent);
    if (!pressed.held)
        return std::nullopt;
    Standpoint standpoint = job.standpoint;
    const double asked = (rail.bottom() - static_cast<double>(ImGui::GetIO().MousePos.y)) / rail.height;
    // A piece is whole again where the knob rests near the end of its rail.
    constexpr double kWhole = 0.04;
    standpoint.pulledApart = asked < kWhole ? 0.0 : std::min(asked, 1.0);
    if (standpoint == job.standpoint)
        return std::nullopt;
    return LookAgain{standpoint};
}

} // namespace gapwise
