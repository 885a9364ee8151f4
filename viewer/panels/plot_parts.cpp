#include "viewer/panels/plot_parts.h"

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

double x(ImVec2 at) {
    return static_cast<double>(at.x);
}

double y(ImVec2 at) {
    return static_cast<double>(at.y);
}

Zone zoneOf(double value, const Window& fresh, const Window& service) {
    if (fresh.empty() && service.empty())
        return Zone::Free;
    if (!service.empty() && !service.holds(value))
        return Zone::Beyond;
    if (fresh.empty() || fresh.holds(value))
        return Zone::Fresh;
    return service.empty() ? Zone::Beyond : Zone::Between;
}

ImU32 groundOf(Zone zone) {
    switch (zone) {
    case Zone::Fresh: return palette::kHoldsLight;
    case Zone::Between: return palette::kNotice;
    case Zone::Beyond: return palette::kBrokenLight;
    case Zone::Free: break;
    }
    return palette::kSheet;
}

} // namespace

void drawLine(ImVec2 from, ImVec2 to, const Stroke& stroke) {
    ink().AddLine(from, to, stroke.colour, static_cast<float>(stroke.thickness));
}

void drawDashedLine(ImVec2 from, ImVec2 to, const Stroke& stroke, double dash) {
    const double length = std::hypot(x(to) - x(from), y(to) - y(from));
    if (length <= 0.0)
        return;
    const double ux = (x(to) - x(from)) / length;
    const double uy = (y(to) - y(from)) / length;
    for (double at = 0.0; at < length; at += 2.0 * dash) {
        const double end = std::min(at + dash, length);
        drawLine(point(x(from) + ux * at, y(from) + uy * at), point(x(from) + ux * end, y(from) + uy * end),
                 stroke);
    }
}

void drawArrow(ImVec2 from, ImVec2 to, const Stroke& stroke, double tip) {
    const double length = std::hypot(x(to) - x(from), y(to) - y(from));
    if (length <= 0.0)
        return;
    const double ux = (x(to) - x(from)) / length;
    const double uy = (y(to) - y(from)) / length;
    const double back = std::min(tip, length);
    const ImVec2 neck = point(x(to) - ux * back, y(to) - uy * back);
    drawLine(from, neck, stroke);
    const double half = back * 0.42;
    ink().AddTriangleFilled(to, point(x(neck) - uy * half, y(neck) + ux * half),
                            point(x(neck) + uy * half, y(neck) - ux * half), stroke.colour);
}

void drawHatching(const Area& area, const Hatching& hatching) {
    if (area.empty())
        return;
    const double step = std::max(2.0, hatching.spacing) * 1.4142;
    // Lines x + y = c keep their places whatever the area, so that neighbours of one part run on.
    const auto draw = [&](double c) {
        const double x0 = std::max(area.x, c - area.bottom());
        const double x1 = std::min(area.right(), c - area.y);
        if (x1 > x0)
            drawLine(point(x0, c - x0), point(x1, c - x1), {hatching.colour, 1.0});
    };
    const auto drawFalling = [&](double c) {
        const double x0 = std::max(area.x, area.y - c);
        const double x1 = std::min(area.right(), area.bottom() - c);
        if (x1 > x0)
            drawLine(point(x0, x0 + c), point(x1, x1 + c), {hatching.colour, 1.0});
    };
    const double least = hatching.falling ? area.y - area.right() : area.x + area.y;
    const double most = hatching.falling ? area.bottom() - area.x : area.right() + area.bottom();
    for (double c = std::ceil(least / step) * step; c < most; c += step)
        hatching.falling ? drawFalling(c) : draw(c);
}

Area writeAround(ImVec2 middle, std::string_view words, const Type& type, const Area& keep) {
    const ImVec2 size = sizeOf(type.font, words);
    const double width = std::min(x(size) + 2.0, keep.width);
    const double height = y(size);
    const double left = std::clamp(x(middle) - width / 2.0, keep.x, std::max(keep.x, keep.right() - width));
    const double top = std::clamp(y(middle) - height / 2.0, keep.y, std::max(keep.y, keep.bottom() - height));
    const Area place{left, top, width, height};
    writeLine(place, words, {type.font, type.colour, Align::Middle});
    return place;
}

void writeRow(std::vector<RowLabel> labels, const Area& row, double gap) {
    const auto widthOf = [](const RowLabel& label) { return x(sizeOf(label.type.font, label.words)) + 2.0; };
    const auto total = [&] {
        double all = -gap;
        for (const RowLabel& label : labels)
            all += widthOf(label) + gap;
        return all;
    };
    while (!labels.empty() && total() > row.width)
        labels.pop_back();
    std::ranges::stable_sort(labels, {}, &RowLabel::at);
    std::vector<double> lefts;
    double free = row.x;
    for (const RowLabel& label : labels) {
        lefts.push_back(std::max(free, label.at - widthOf(label) / 2.0));
        free = lefts.back() + widthOf(label) + gap;
    }
    double end = row.right();
    for (std::size_t i = labels.size(); i-- > 0;) {
        lefts[i] = std::min(lefts[i], end - widthOf(labels[i]));
        end = lefts[i] - gap;
    }
    for (std::size_t i = 0; i < labels.size(); ++i)
        writeLine({lefts[i], row.y, widthOf(labels[i]), row.height}, labels[i].words,
                  {labels[i].type.font, labels[i].type.colour, Align::Middle});
}

std::vector<ZoneSpan> zonesOf(const Window& fresh, const Window& service, const Scale& scale) {
    std::vector<double> edges{scale.least, scale.most};
    for (const std::optional<double>& edge : {fresh.least, fresh.most, service.least, service.most})
        if (edge && *edge > scale.least && *edge < scale.most)
            edges.push_back(*edge);
    std::ranges::sort(edges);
    std::vector<ZoneSpan> zones;
    for (std::size_t i = 0; i + 1 < edges.size(); ++i) {
        if (edges[i + 1] <= edges[i])
            continue;
        const Zone zone = zoneOf((edges[i] + edges[i + 1]) / 2.0, fresh, service);
        if (!zones.empty() && zones.back().zone == zone)
            zones.back().most = edges[i + 1];
        else
            zones.push_back({zone, edges[i], edges[i + 1]});
    }
    return zones;
}

Scale scaleOf(const LimitBar& bar, double from, double to) {
    std::vector<double> shown;
    const auto add = [&](const std::optional<double>& value) {
        if (value)
            shown.push_back(*value);
    };
    for (const Window& window : {bar.fresh, bar.service, bar.predicted.value_or(Window{})}) {
        add(window.least);
        add(window.most);
    }
    add(bar.predictedValue);
    add(bar.previous);
    if (bar.value) {
        add(*bar.value - bar.expanded);
        add(*bar.value + bar.expanded);
    }
    if (shown.empty())
        return {0.0, 1.0, from, to};
    const auto [least, most] = std::ranges::minmax(shown);
    const double smallest = std::pow(10.0, -bar.decimals) * 10.0;
    const double room = std::max((most - least) * 0.14, smallest);
    return {least - room, most + room, from, to};
}

void drawZones(const std::vector<ZoneSpan>& zones, const Scale& scale, const Area& band) {
    for (const ZoneSpan& zone : zones) {
        const Area part{scale.at(zone.least), band.y, scale.at(zone.most) - scale.at(zone.least),
                        band.height};
        fillArea(part, groundOf(zone.zone));
        if (zone.zone == Zone::Beyond)
            drawHatching(part, {palette::kHairline, 5.0, false});
    }
    for (std::size_t i = 1; i < zones.size(); ++i) {
        const double at = scale.at(zones[i].least);
        drawLine(point(at, band.y), point(at, band.bottom()), {palette::kInk, 1.5});
    }
    frameArea(band, palette::kHairline);
}

} // namespace gapwise
