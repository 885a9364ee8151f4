#include "viewer/panels/plot_parts.h"
#include "viewer/panels/stack_parts.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace gapwise {

namespace {

/// Where the drawing lies, from above: names, the section, the axis, one row for every link, the clearance.
struct Plan {
    Area names{};
    Area section{};
    Area rows{};
    double rowHeight = 0.0;
    double perMm = 1.0; ///< Of the radius.
    ImFont* font = nullptr;

    double y(double radius) const { return section.bottom() - radius * perMm; }
};

struct Sheet {
    const StackDrawing& drawing;
    const StackScene& scene;
    const Plan& plan;
    const StackAxis& axis;
    const Surface& surface;
};

Plan planOf(const StackDrawing& drawing, const StackScene& scene, const Area& area, const Surface& surface) {
    Plan plan;
    const double rows = static_cast<double>(drawing.chain.links.size()) + 1.4;
    const double line = lineHeightOf(surface.fonts().body);
    const double most = (area.height * 0.56) / rows;
    plan.font = most >= line ? surface.fonts().body : surface.fonts().small;
    plan.rowHeight = std::clamp(most, lineHeightOf(surface.fonts().small), line * 1.35);
    const double names = 2.0 * lineHeightOf(surface.fonts().small) + surface.px(10.0);
    const double head = lineHeightOf(surface.fonts().strong);
    plan.names = {area.x, area.y + head, area.width, names};
    const double below = rows * plan.rowHeight + surface.px(14.0);
    plan.section = {area.x, plan.names.bottom(), area.width, area.bottom() - below - plan.names.bottom()};
    plan.rows = {area.x, plan.section.bottom() + surface.px(12.0), area.width, below - surface.px(12.0)};
    plan.perMm = plan.section.height / std::max(scene.radius, 1.0);
    return plan;
}

ImU32 groundOf(const StackPart& part) {
    if (part.turning)
        return part.told ? palette::kAccentLight : palette::kSheet;
    return part.told ? palette::kSteelLight : palette::kShade;
}

Area boxOf(const Slab& slab, const Sheet& sheet) {
    const double left = sheet.axis.at(slab.z.from);
    const double right = sheet.axis.at(slab.z.to);
    const double outer = std::min(slab.radius.to, sheet.scene.radius);
    const double top = sheet.plan.y(outer);
    const double bottom = sheet.plan.y(std::min(slab.radius.from, outer));
    return {left, top, right - left, bottom - top};
}

/// What of an edge at `z`, from one radius to another, no neighbour of the same part covers.
void drawUpright(const StackPart& part, const Slab& slab, double z, const Sheet& sheet) {
    constexpr double kTouching = 1e-4;
    std::vector<Span> open{{slab.radius.from, std::min(slab.radius.to, sheet.scene.radius)}};
    for (const Slab& other : part.slabs) {
        const bool beside = &other != &slab && other.z.from < z + kTouching && other.z.to > z - kTouching &&
                            (other.z.from < z - kTouching || other.z.to > z + kTouching);
        const bool faces = z == slab.z.from ? other.z.from < z - kTouching : other.z.to > z + kTouching;
        if (!beside || !faces)
            continue;
        std::vector<Span> left;
        for (const Span& span : open) {
            if (other.radius.from > span.from)
                left.push_back({span.from, std::min(span.to, other.radius.from)});
            if (other.radius.to < span.to)
                left.push_back({std::max(span.from, other.radius.to), span.to});
        }
        std::erase_if(left, [](const Span& span) { return span.length() <= kTouching; });
        open = left;
    }
    const double x = sheet.axis.at(z);
    for (const Span& span : open)
        if (span.length() > 0.0)
            drawLine(point(x, sheet.plan.y(span.from)), point(x, sheet.plan.y(span.to)),
                     {palette::kInk, part.told ? 1.8 : 1.0});
}

/// An edge along the shaft is drawn unless the part goes on beyond it.
void drawAlong(const StackPart& part, const Slab& slab, double radius, bool outer, const Sheet& sheet) {
    if (radius <= 0.0 || radius > sheet.scene.radius)
        return;
    constexpr double kTouching = 1e-4;
    const double middle = (slab.z.from + slab.z.to) / 2.0;
    const bool goesOn = std::ranges::any_of(part.slabs, [&](const Slab& other) {
        const bool over = other.z.from <= middle && other.z.to >= middle && &other != &slab;
        return over &&
               (outer ? other.radius.from <= radius + kTouching && other.radius.to > radius + kTouching
                      : other.radius.to >= radius - kTouching && other.radius.from < radius - kTouching);
    });
    if (goesOn)
        return;
    const double y = sheet.plan.y(radius);
    drawLine(point(sheet.axis.at(slab.z.from), y), point(sheet.axis.at(slab.z.to), y),
             {palette::kInk, part.told ? 1.8 : 1.0});
}

const StackCurve* curveWith(const StackPart& part, std::size_t slab) {
    const auto found = std::ranges::find_if(part.curves, [&](const StackCurve& curve) {
        return slab >= curve.first && slab < curve.first + curve.count;
    });
    return found == part.curves.end() ? nullptr : &*found;
}

/// The outline of a curve as one line; what its slices leave between each other is not seen.
void drawCurve(const StackPart& part, const StackCurve& curve, bool outside, const Sheet& sheet) {
    std::vector<ImVec2> line;
    const auto add = [&](double z, const Slab& slab) {
        const double radius = outside ? slab.radius.to : slab.radius.from;
        if (radius > 0.0 && radius <= sheet.scene.radius)
            line.push_back(point(sheet.axis.at(z), sheet.plan.y(radius)));
    };
    for (std::size_t i = curve.first; i < curve.first + curve.count; ++i) {
        const Slab& slab = part.slabs[i];
        if (i == curve.first)
            add(slab.z.from, slab);
        add((slab.z.from + slab.z.to) / 2.0, slab);
        if (i + 1 == curve.first + curve.count)
            add(slab.z.to, slab);
    }
    if (line.size() > 1)
        ink().AddPolyline(line.data(), static_cast<int>(line.size()), palette::kInk, 0,
                          part.told ? 1.8F : 1.0F);
}

/// The ground of all slabs before any hatching, so that neighbours do not lie over each other's lines.
void fillPart(const StackPart& part, std::size_t index, const Sheet& sheet) {
    // Neither a shaft along its axis nor a blade is hatched.
    const bool shaft = part.part->id == sheet.drawing.frame.rotor;
    for (const bool hatched : {false, true})
        for (std::size_t i = 0; i < part.slabs.size(); ++i) {
            const Slab& slab = part.slabs[i];
            const Area box = boxOf(slab, sheet);
            if (box.empty() || slab.radius.from > sheet.scene.radius)
                continue;
            const StackCurve* curve = curveWith(part, i);
            const bool blades = curve && curve->blades;
            if (!hatched)
                fillArea({box.x, box.y, box.width + (curve ? 0.6 : 0.0), box.height},
                         blades ? palette::kPaper : groundOf(part));
            else if (!shaft && !blades)
                drawHatching(box, {part.told ? palette::kSteel : palette::kHairline,
                                   sheet.surface.px(part.told ? 7.0 : 9.0), index % 2 == 1});
        }
}

void drawPart(const StackPart& part, std::size_t index, const Sheet& sheet) {
    fillPart(part, index, sheet);
    for (const StackCurve& curve : part.curves) {
        drawCurve(part, curve, true, sheet);
        if (!curve.blades)
            drawCurve(part, curve, false, sheet);
    }
    for (std::size_t i = 0; i < part.slabs.size(); ++i) {
        const Slab& slab = part.slabs[i];
        if (slab.radius.from > sheet.scene.radius || slab.z.to < sheet.axis.least() ||
            slab.z.from > sheet.axis.most() || curveWith(part, i))
            continue;
        drawUpright(part, slab, slab.z.from, sheet);
        drawUpright(part, slab, slab.z.to, sheet);
        drawAlong(part, slab, slab.radius.to, true, sheet);
        drawAlong(part, slab, slab.radius.from, false, sheet);
    }
}

void drawBareFace(const BareFace& bare, const Sheet& sheet) {
    const double width = sheet.surface.px(46.0);
    const double x = sheet.axis.at(bare.z);
    const double left =
        std::clamp(bare.toCompressor ? x : x - width, sheet.plan.section.x, sheet.plan.section.right() - 4.0);
    const double right =
        std::clamp(bare.toCompressor ? x + width : x, sheet.plan.section.x, sheet.plan.section.right());
    const Area box{left, sheet.plan.section.y, right - left, sheet.plan.section.height * 0.45};
    fillArea(box, palette::kSteelLight);
    drawHatching(box, {palette::kSteel, sheet.surface.px(7.0), false});
    drawLine(point(x, box.y), point(x, box.bottom()), {palette::kInk, 1.8});
    drawLine(point(left, box.bottom()), point(right, box.bottom()), {palette::kInk, 1.0});
}

/// Where the name of a part finds room in the section: the largest of its boxes; empty where none holds it.
Area roomFor(const StackPart& part, std::string_view name, const Sheet& sheet) {
    ImFont* font = sheet.surface.fonts().small;
    const double width = static_cast<double>(sizeOf(font, name).x) + sheet.surface.px(8.0);
    const double height = lineHeightOf(font) + 2.0;
    Area best;
    for (const Slab& slab : part.slabs) {
        const Area box = boxOf(slab, sheet);
        const Area seen{std::max(box.x, sheet.plan.section.x), box.y,
                        std::min(box.right(), sheet.plan.section.right()) -
                            std::max(box.x, sheet.plan.section.x),
                        box.height};
        const bool larger = seen.width * seen.height > best.width * best.height;
        if (slab.radius.from <= sheet.scene.radius && seen.width >= width && seen.height >= height && larger)
            best = seen;
    }
    if (best.empty())
        return {};
    const double middle = best.y + best.height * 0.5;
    return {best.middleX() - width / 2.0, middle - height / 2.0, width, height};
}

/// The middle of what is seen of a part; nothing where it lies outside.
std::optional<double> middleOf(const StackPart& part, const Sheet& sheet) {
    double left = sheet.plan.section.right();
    double right = sheet.plan.section.x;
    for (const Slab& slab : part.slabs) {
        const Area box = boxOf(slab, sheet);
        if (box.empty() || slab.radius.from > sheet.scene.radius)
            continue;
        left = std::min(left, box.x);
        right = std::max(right, box.right());
    }
    return right > left ? std::optional{(left + right) / 2.0} : std::nullopt;
}

/// Names in the parts; over the section of those that are too narrow, in two rows.
void writeNames(const Sheet& sheet) {
    ImFont* font = sheet.surface.fonts().small;
    std::vector<std::pair<double, std::string>> above;
    for (const StackPart& part : sheet.scene.parts) {
        const std::string& name = part.part->id.text;
        const Area room = roomFor(part, name, sheet);
        if (!room.empty()) {
            fillArea(room, palette::kSheet, sheet.surface.px(3.0));
            writeLine(room, name, {font, palette::kInk, Align::Middle});
        } else if (const auto middle = middleOf(part, sheet); middle && (part.told || part.turning)) {
            above.emplace_back(*middle, name);
        }
    }
    for (const BareFace& bare : sheet.scene.bareFaces)
        above.emplace_back(sheet.axis.at(bare.z) + sheet.surface.px(bare.toCompressor ? 22.0 : -22.0),
                           bare.name);
    std::ranges::sort(above);
    std::array<std::vector<RowLabel>, 2> rows;
    const double line = lineHeightOf(font);
    for (std::size_t i = 0; i < above.size(); ++i) {
        rows.at(i % 2).push_back({above[i].first, above[i].second, {font}});
        drawLine(point(above[i].first, sheet.plan.names.y + line * (i % 2 == 0 ? 1.0 : 2.0)),
                 point(above[i].first, sheet.plan.section.y + 4.0), {palette::kSteel, 1.0});
    }
    for (std::size_t i = 0; i < rows.size(); ++i)
        writeRow(rows.at(i),
                 {sheet.plan.names.x, sheet.plan.names.y + line * static_cast<double>(i),
                  sheet.plan.names.width, line},
                 sheet.surface.px(10.0));
}

/// The two faces of the gap by their names, to either side of it; its symbol over it.
void writeFaces(const Sheet& sheet) {
    const auto from = stationOf(sheet.drawing, sheet.drawing.chain.from);
    const auto to = stationOf(sheet.drawing, sheet.drawing.chain.to);
    ImFont* font = sheet.surface.fonts().small;
    const double line = lineHeightOf(font) + 2.0;
    const auto face = [&](double at, const StationId& station, bool left, double row) {
        const std::string words = faceNameOf(station);
        const double width = static_cast<double>(sizeOf(font, words).x) + sheet.surface.px(6.0);
        const double x = left ? at - width - 3.0 : at + 3.0;
        const Area place{std::clamp(x, sheet.plan.section.x,
                                    std::max(sheet.plan.section.x, sheet.plan.section.right() - width)),
                         sheet.plan.section.y + 3.0 + row * (line + 2.0), width, line};
        fillArea(place, palette::kSheet, 2.0);
        writeLine(place, words, {font, palette::kBroken, Align::Middle});
    };
    const double a = sheet.axis.at(*from);
    const double b = sheet.axis.at(*to);
    face(a, sheet.drawing.chain.from, a <= b, 0.0);
    face(b, sheet.drawing.chain.to, a > b, 1.0);
}

/// Where the housing's datum lies.
void drawDatum(const Sheet& sheet) {
    const StationId datum{sheet.drawing.frame.housing.text + "/datum"};
    const auto z = stationOf(sheet.drawing, datum);
    if (!z || *z < sheet.scene.from || *z > sheet.scene.to)
        return;
    const double x = sheet.axis.at(*z);
    const Surface& surface = sheet.surface;
    const double y = sheet.plan.section.bottom();
    const auto half = static_cast<float>(surface.px(6.0));
    const ImVec2 tip = point(x, y - surface.px(2.0));
    ink().AddTriangleFilled(tip, {tip.x - half, tip.y - 1.6F * half}, {tip.x + half, tip.y - 1.6F * half},
                            palette::kInk);
    ImFont* font = surface.fonts().small;
    const double width = static_cast<double>(sizeOf(font, "datum").x) + 4.0;
    const Area word{x + surface.px(9.0), y - lineHeightOf(font) - 2.0, width, lineHeightOf(font)};
    fillArea(word, palette::kSheet, 2.0);
    writeLine(word, "datum", {font});
}

/// Which end is which, and where the rotor is pushed.
void writeSides(const Sheet& sheet, double y) {
    const Surface& surface = sheet.surface;
    const Area row{sheet.plan.section.x, y, sheet.plan.section.width, lineHeightOf(surface.fonts().strong)};
    writeLine(row, "← TURBINE", {surface.fonts().strong, palette::kSoftInk});
    writeLine(row, "COMPRESSOR →", {surface.fonts().strong, palette::kSoftInk, Align::Right});
    if (!sheet.drawing.chain.pushedTo)
        return;
    const Side side = *sheet.drawing.chain.pushedTo;
    const std::string words = fmt::format("rotor pushed to the {}", nameOf(side));
    writeLine(row, words, {surface.fonts().strong, palette::kAccent, Align::Middle});
    const double half = static_cast<double>(sizeOf(surface.fonts().strong, words).x) / 2.0 + surface.px(10.0);
    const double sense = signOf(side);
    const double from = row.middleX() + sense * half;
    drawArrow(point(from, row.middleY()), point(from + sense * surface.px(64.0), row.middleY()),
              {palette::kAccent, surface.px(4.0)}, surface.px(14.0));
}

/// Along the axis of the shaft another arrow, so that nobody looks for it elsewhere.
void drawAxis(const Sheet& sheet) {
    const double y = sheet.plan.section.bottom();
    const Surface& surface = sheet.surface;
    double x = sheet.plan.section.x;
    while (x < sheet.plan.section.right()) { // Long, short: a centre line.
        drawLine(point(x, y), point(std::min(x + surface.px(22.0), sheet.plan.section.right()), y),
                 {palette::kInk, 1.0});
        const double dot = x + surface.px(26.0);
        drawLine(point(dot, y), point(std::min(dot + surface.px(4.0), sheet.plan.section.right()), y),
                 {palette::kInk, 1.0});
        x += surface.px(34.0);
    }
    if (!sheet.drawing.chain.pushedTo)
        return;
    const double sense = signOf(*sheet.drawing.chain.pushedTo);
    const double middle = y - surface.px(13.0);
    const double from = sheet.plan.section.x + sheet.plan.section.width * 0.66 - sense * surface.px(35.0);
    drawArrow(point(from, middle), point(from + sense * surface.px(70.0), middle),
              {palette::kAccent, surface.px(5.0)}, surface.px(15.0));
}

/// The gap itself in the section, from the axis to where it is broken off.
void drawGap(const Sheet& sheet) {
    const auto from = stationOf(sheet.drawing, sheet.drawing.chain.from);
    const auto to = stationOf(sheet.drawing, sheet.drawing.chain.to);
    const double left = sheet.axis.at(std::min(*from, *to));
    const double right = sheet.axis.at(std::max(*from, *to));
    const double top = sheet.plan.section.y;
    for (const double x : {left, right})
        drawLine(point(x, top), point(x, sheet.plan.rows.bottom()), {palette::kBroken, 1.0});
}

struct ArrowAt {
    double from = 0.0; ///< Pixels.
    double to = 0.0;
    double y = 0.0;
    std::string words{};
    ImU32 colour = palette::kInk;
    bool measured = false;
    std::string name{}; ///< After the words, where there is room.
};

/// An arrow with its words beside it: to the right of it, or to the left where no room is.
void drawLink(const ArrowAt& arrow, const Sheet& sheet, ImFont* font) {
    const Surface& surface = sheet.surface;
    const double left = std::min(arrow.from, arrow.to);
    const double right = std::max(arrow.from, arrow.to);
    const Stroke stroke{arrow.colour, surface.px(arrow.measured ? 2.5 : 1.5)};
    if (right - left < 2.0) {
        ink().AddNgonFilled(point(left, arrow.y), static_cast<float>(surface.px(4.5)), arrow.colour, 4);
    } else if (arrow.measured) {
        drawArrow(point(arrow.from, arrow.y), point(arrow.to, arrow.y), stroke, surface.px(10.0));
        ink().AddCircleFilled(point(arrow.from, arrow.y), static_cast<float>(surface.px(3.5)), arrow.colour);
    } else {
        const double sense = arrow.to > arrow.from ? 1.0 : -1.0;
        const double tip = std::min(surface.px(10.0), right - left);
        drawDashedLine(point(arrow.from, arrow.y), point(arrow.to - sense * tip, arrow.y), stroke,
                       surface.px(5.0));
        drawArrow(point(arrow.to - sense * tip, arrow.y), point(arrow.to, arrow.y), stroke, tip);
    }
    const double width = static_cast<double>(sizeOf(font, arrow.words).x) + 2.0;
    const double gap = surface.px(9.0);
    const double height = lineHeightOf(font);
    // Beside the arrow; one that takes the whole width is broken for them.
    const bool fits = right + gap + width <= sheet.plan.rows.right();
    const bool before = left - gap - width >= sheet.plan.rows.x;
    const double x = fits ? right + gap : (before ? left - gap - width : (left + right - width) / 2.0);
    const Area place{std::max(sheet.plan.rows.x, x), arrow.y - height / 2.0, width, height};
    fillArea(place.inset(-1.0), palette::kSheet);
    writeLine(place, arrow.words, {font, arrow.colour});
    const double more = static_cast<double>(sizeOf(surface.fonts().small, arrow.name).x) + 2.0;
    const double after = place.right() + gap;
    if (fits && !arrow.name.empty() && after + more <= sheet.plan.rows.right())
        writeLine({after, place.y, more, height}, arrow.name, {surface.fonts().small, palette::kSoftInk});
}

/// Thin lines from the faces down to the arrows.
void drawExtensions(const Sheet& sheet) {
    std::vector<double> drawn;
    for (const Term& link : sheet.drawing.chain.links) {
        const Dimension* dimension = sheet.drawing.frame.dimension(link.of);
        for (const StationId* station :
             {dimension ? &dimension->from : nullptr, dimension ? &dimension->to : nullptr})
            if (const auto z = station ? stationOf(sheet.drawing, *station) : std::nullopt)
                drawn.push_back(sheet.axis.at(*z));
    }
    std::ranges::sort(drawn);
    const auto repeated = std::ranges::unique(drawn);
    drawn.erase(repeated.begin(), repeated.end());
    for (const double x : drawn)
        drawLine(point(x, sheet.plan.section.bottom()),
                 point(x, sheet.plan.rows.bottom() - sheet.plan.rowHeight), {palette::kHairline, 1.0});
}

void drawLinks(const Sheet& sheet) {
    drawExtensions(sheet);
    double y = sheet.plan.rows.y + sheet.plan.rowHeight * 0.5;
    for (const LinkShare& link : sheet.drawing.prediction.links) {
        const Dimension* dimension = sheet.drawing.frame.dimension(link.of);
        const auto from = dimension ? stationOf(sheet.drawing, dimension->from) : std::nullopt;
        const auto to = dimension ? stationOf(sheet.drawing, dimension->to) : std::nullopt;
        if (from && to) {
            const double a = sheet.axis.at(link.sign > 0 ? *from : *to);
            const double b = sheet.axis.at(link.sign > 0 ? *to : *from);
            drawLink({a, b, y, linkWords(link), link.measured ? palette::kAccent : palette::kSoftInk,
                      link.measured, dimension->name},
                     sheet, sheet.plan.font);
        }
        y += sheet.plan.rowHeight;
    }
    const auto from = stationOf(sheet.drawing, sheet.drawing.chain.from);
    const auto to = stationOf(sheet.drawing, sheet.drawing.chain.to);
    const Prediction& prediction = sheet.drawing.prediction;
    drawLink({sheet.axis.at(*from),
              sheet.axis.at(*to),
              y + sheet.plan.rowHeight * 0.2,
              fmt::format("{} = {} mm ± {}", sheet.drawing.chain.id.text, signedWords(prediction.valueMm, 3),
                          numberWords(prediction.rssMm, 3)),
              palette::kBroken,
              true,
              {}},
             sheet, sheet.surface.fonts().strong);
    const bool atRight = sheet.axis.at(*from) < sheet.plan.rows.middleX();
    const double note = lineHeightOf(sheet.surface.fonts().small);
    writeLine({sheet.plan.rows.x, sheet.plan.rows.bottom() - note, sheet.plan.rows.width, note},
              "not to scale: long lengths shortened, the gap far too wide",
              {sheet.surface.fonts().small, palette::kSoftInk, atRight ? Align::Right : Align::Left});
}

} // namespace

std::string linkWords(const LinkShare& link) {
    return fmt::format("{}{} {} ± {} {}", link.sign < 0 ? "−" : "+", link.of.text,
                       numberWords(link.valueMm, 3), numberWords(link.halfWidthMm, 3),
                       link.measured ? "measured" : "drawing");
}

void drawStack(const StackDrawing& drawing, const Area& area, const Surface& surface) {
    if (area.empty())
        return;
    const std::optional<StackScene> scene = stackScene(drawing);
    if (!scene) {
        const Dimension* first =
            drawing.chain.links.empty() ? nullptr : drawing.frame.dimension(drawing.chain.links.front().of);
        (first && isDiameter(*first) ? drawDiameters : drawLengths)(drawing, area, surface);
        return;
    }
    const Plan plan = planOf(drawing, *scene, area, surface);
    const auto from = stationOf(drawing, drawing.chain.from);
    const auto to = stationOf(drawing, drawing.chain.to);
    std::vector<double> told;
    for (const Term& link : drawing.chain.links)
        if (const Dimension* dimension = drawing.frame.dimension(link.of))
            for (const StationId& station : {dimension->from, dimension->to})
                if (const auto z = stationOf(drawing, station))
                    told.push_back(*z);
    told.push_back(*from);
    told.push_back(*to);
    const auto [least, most] = std::ranges::minmax(told);
    constexpr double kLongGapMm = 5.0;
    const double gap = surface.px(std::abs(*to - *from) > kLongGapMm ? 120.0 : 30.0);
    const StackAxis axis{
        {scene->faces, least, most}, {*from, *to, gap}, {plan.section.x, plan.section.right()}};
    const Sheet sheet{drawing, *scene, plan, axis, surface};
    ink().PushClipRect(point(plan.section.x, plan.section.y),
                       point(plan.section.right(), plan.section.bottom()), true);
    for (std::size_t i = 0; i < scene->parts.size(); ++i)
        drawPart(scene->parts[i], i, sheet);
    for (const BareFace& bare : scene->bareFaces)
        drawBareFace(bare, sheet);
    ink().PopClipRect();
    drawGap(sheet);
    drawDatum(sheet);
    writeNames(sheet);
    writeFaces(sheet);
    writeSides(sheet, area.y);
    drawAxis(sheet);
    drawLinks(sheet);
}

} // namespace gapwise
