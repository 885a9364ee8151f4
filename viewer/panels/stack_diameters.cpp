#include "viewer/panels/plot_parts.h"
#include "viewer/panels/stack_parts.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

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
              {surface.fonts().small, palette::kSoftInk, Align::Right});
    const double step = (field.right() - material) / (count + 1.0) * 0.3;
    const double words = material + step * (count + 0.6);
    for (std::size_t i = 0; i < levels.size(); ++i) {
        const LinkShare& link = *levels[i].link;
        const ImU32 colour = link.measured ? palette::kAccent : palette::kSoftInk;
        const double x = material + step * (static_cast<double>(i) + 1.0);
        drawLine(point(material, levels[i].y), point(x, levels[i].y), {palette::kHairline, 1.0});
        const ImVec2 foot = point(x, field.bottom());
        const ImVec2 tip = point(x, levels[i].y);
        drawArrow(link.sign > 0 ? foot : tip, link.sign > 0 ? tip : foot,
                  {colour, surface.px(link.measured ? 2.5 : 1.5)}, surface.px(9.0));
        drawLine(point(x, levels[i].y), point(words - 4.0, levels[i].y), {palette::kHairline, 1.0});
        const double high = lineHeightOf(surface.fonts().body);
        writeLine({words, levels[i].y - high / 2.0, field.right() - words, high}, linkWords(link),
                  {surface.fonts().body, colour});
        writeLine({words, levels[i].y + high / 2.0, field.right() - words, line}, levels[i].dimension->name,
                  {surface.fonts().small, palette::kSoftInk});
        if (i > 0 && levels[i].dimension->part != levels[i - 1].dimension->part)
            writeLine({field.x, levels[i].y, material - field.x, levels[i - 1].y - levels[i].y},
                      numberWords(link.valueMm - levels[i - 1].link->valueMm, 3) + " in diameter",
                      {surface.fonts().strong, palette::kBroken, Align::Middle});
    }
    writeLine({area.x, area.bottom() - 1.6 * line, area.width, 1.6 * line},
              fmt::format("{} = {} mm ± {}, in diameter", drawing.chain.id.text,
                          signedWords(drawing.prediction.valueMm, 3),
                          numberWords(drawing.prediction.rssMm, 3)),
              {surface.fonts().strong, palette::kBroken});
}

void drawLengths(const StackDrawing& drawing, const Area& area, const Surface& surface) {
    const std::vector<LinkShare>& links = drawing.prediction.links;
    if (links.empty())
        return;
    const double line = lineHeightOf(surface.fonts().small);
    writeLine({area.x, area.y, area.width, line}, "lengths beside each other; the gap drawn far too wide",
              {surface.fonts().small, palette::kSoftInk});
    const Area field{area.x, area.y + 1.6 * line, area.width,
                     std::min(area.height - 4.2 * line, surface.px(330.0))};
    const double row = field.height / static_cast<double>(links.size());
    // Every length begins at the same stop; the longest ends at the right, the others a gap before it.
    double most = 0.0;
    for (const LinkShare& link : links)
        most = std::max(most, std::abs(link.valueMm));
    const double left = field.x + surface.px(20.0);
    const double right = field.right() - surface.px(40.0);
    const double gap = surface.px(90.0);
    for (std::size_t i = 0; i < links.size(); ++i) {
        const LinkShare& link = links[i];
        const Dimension* dimension = drawing.frame.dimension(link.of);
        const bool longest = std::abs(link.valueMm) >= most;
        const double end = longest ? right : right - gap;
        const double y = field.y + row * static_cast<double>(i);
        const Area box{left, y + row * 0.42, end - left, row * 0.46};
        drawMaterial(box, dimension ? dimension->part.text : link.of.text, i % 2 == 1, surface);
        const ImU32 colour = link.measured ? palette::kAccent : palette::kSoftInk;
        const double arrow = y + row * 0.32;
        drawArrow(point(link.sign > 0 ? left : end, arrow), point(link.sign > 0 ? end : left, arrow),
                  {colour, surface.px(link.measured ? 2.5 : 1.5)}, surface.px(10.0));
        writeLine({left, y, end - left, row * 0.26}, linkWords(link),
                  {surface.fonts().body, colour, Align::Middle});
    }
    for (const double x : {left, right - gap, right})
        drawLine(point(x, field.y), point(x, field.bottom()),
                 {x == left ? palette::kInk : palette::kBroken, 1.0});
    writeLine({area.x, field.bottom() + line * 0.4, area.width, 1.4 * line},
              fmt::format("{} = {} mm ± {}", drawing.chain.id.text,
                          signedWords(drawing.prediction.valueMm, 3),
                          numberWords(drawing.prediction.rssMm, 3)),
              {surface.fonts().strong, palette::kBroken, Align::Right});
}

} // namespace gapwise
