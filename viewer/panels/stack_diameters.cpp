#include "viewer/panels/plot_parts.h"
#include "viewer/panels/stack_parts.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

/// A diameter of the chain, from the axis outward.
struct Level {
    const LinkShare* link = nullptr;
    const Dimension* dimension = nullptr;
    double y = 0.0;
};

std::vector<Level> levelsOf(const StackDrawing& drawing) {
    std::vector<Level> levels;
    for (const LinkShare& link : drawing.prediction.links)
        if (const Dimension* dimension = drawing.frame.dimension(link.of))
            levels.push_back({&link, dimension});
    std::ranges::stable_sort(levels, {}, [](const Level& level) { return level.link->valueMm; });
    return levels;
}

/// Material of one part between two of its diameters, or from the axis, or outward to the edge.
void drawMaterial(const Area& box, std::string_view name, bool falling, const Surface& surface) {
    fillArea(box, palette::kSteelLight);
    drawHatching(box, {palette::kSteel, surface.px(7.0), falling});
    frameArea(box, palette::kInk, 0.0, 1.5);
    const double width = static_cast<double>(sizeOf(surface.fonts().small, name).x) + surface.px(8.0);
    const double line = lineHeightOf(surface.fonts().small);
    const Area label{box.x + surface.px(6.0), box.middleY() - line / 2.0, width, line};
    if (box.height < line)
        return;
    fillArea(label, palette::kSheet, 2.0);
    writeLine(label, name, {surface.fonts().small, palette::kInk, Align::Middle});
}

} // namespace

void drawDiameters(const StackDrawing& drawing, const Area& area, const Surface& surface) {
    std::vector<Level> levels = levelsOf(drawing);
    if (levels.empty())
        return;
    const double line = lineHeightOf(surface.fonts().small);
    writeLine({area.x, area.y, area.width, line}, "diameters, from the axis outward; gaps drawn far too wide",
              {surface.fonts().small, palette::kSoftInk});
    const Area field{area.x, area.y + 1.4 * line, area.width, area.height - 3.2 * line};
    const auto count = static_cast<double>(levels.size());
    const double pitch = field.height / (count + 1.0);
    for (std::size_t i = 0; i < levels.size(); ++i)
        levels[i].y = field.bottom() - pitch * (static_cast<double>(i) + 1.0);
    const double material = field.x + field.width * 0.42;
    double inner = field.bottom();
    for (std::size_t i = 0; i < levels.size(); ++i) {
        const bool again = i > 0 && levels[i].dimension->part == levels[i - 1].dimension->part;
        const bool outside = levels[i].link->sign < 0; // A part's own outside is taken off.
        if (outside)
            drawMaterial(
                {field.x, levels[i].y, material - field.x, (again ? levels[i - 1].y : inner) - levels[i].y},
                levels[i].dimension->part.text, i % 2 == 1, surface);
        inner = levels[i].y;
    }
    if (levels.back().link->sign > 0)
        drawMaterial({field.x, field.y, material - field.x, levels.back().y - field.y},
                     levels.back().dimension->part.text, false, surface);
    drawLine(point(field.x, field.bottom()), point(field.right(), field.bottom()), {palette::kInk, 1.0});
    writeLine({field.x, field.bottom(), field.width, line}, "axis",
              {surface.fonts().small, palette::kSoftInk});
    const double step = (field.right() - material) / (count + 1.0) * 0.35;
    for (std::size_t i = 0; i < levels.size(); ++i) {
        const LinkShare& link = *levels[i].link;
        const ImU32 colour = link.measured ? palette::kAccent : palette::kSoftInk;
        const double x = material + step * (static_cast<double>(i) + 1.0);
        drawLine(point(material, levels[i].y), point(x, levels[i].y), {palette::kHairline, 1.0});
        const ImVec2 foot = point(x, field.bottom());
        const ImVec2 tip = point(x, levels[i].y);
        drawArrow(link.sign > 0 ? foot : tip, link.sign > 0 ? tip : foot,
                  {colour, surface.px(link.measured ? 2.5 : 1.5)}, surface.px(9.0));
        writeLine({x + surface.px(8.0), levels[i].y - lineHeightOf(surface.fonts().body) / 2.0,
                   field.right() - x - surface.px(8.0), lineHeightOf(surface.fonts().body)},
                  linkWords(link), {surface.fonts().body, colour});
    }
    writeLine({area.x, area.bottom() - 1.6 * line, area.width, 1.6 * line},
              fmt::format("{} = {} mm ± {}, in diameter", drawing.chain.id.text,
                          signedWords(drawing.prediction.valueMm, 3),
                          numberWords(drawing.prediction.rssMm, 3)),
              {surface.fonts().strong, palette::kBroken});
}

} // namespace gapwise
