#include "viewer/panels/plot_parts.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

/// The rows of a bar from above: words of the value, its mark, the band, the limits, the prediction, what it
/// was before.
struct BarPlan {
    Area reading{};
    Area whisker{};
    Area band{};
    Area limits{};
    Area prediction{};
    Area before{};
    ImFont* font = nullptr;
    Scale scale{};
};

/// Rows grow with the area as long as that makes them easier to read.
BarPlan planOf(const LimitBar& bar, const Area& area, const Surface& surface) {
    BarPlan plan;
    const bool roomy = area.height >= surface.px(165.0);
    plan.font = roomy ? surface.fonts().body : surface.fonts().small;
    const double line = lineHeightOf(plan.font);
    const double rows = line * (2.0 + (bar.predicted ? 1.5 : 0.0) + (bar.previous ? 1.5 : 0.0));
    const double most = surface.px(roomy ? 46.0 : 30.0);
    const double free = std::max(area.height - rows - line, surface.px(12.0));
    const double band = std::min(most, free * 0.6);
    const double whisker = std::min(most * 0.7, free * 0.4);
    double y = area.y + std::max(0.0, (free - band - whisker) / 2.0);
    const auto take = [&](double height) {
        const Area row{area.x, y, area.width, height};
        y += height;
        return row;
    };
    plan.reading = take(line * 1.25);
    plan.whisker = take(whisker);
    plan.band = take(band);
    plan.limits = take(line * 1.15);
    plan.prediction = take(bar.predicted ? line * 1.5 : 0.0);
    plan.before = take(bar.previous ? line * 1.5 : 0.0);
    const double edge = surface.px(6.0);
    plan.scale = scaleOf(bar, area.x + edge, area.right() - edge);
    plan.band = {plan.scale.from, plan.band.y, plan.scale.to - plan.scale.from, plan.band.height};
    return plan;
}

std::string_view wordOf(Zone zone, const LimitBar& bar) {
    switch (zone) {
    case Zone::Fresh: return bar.fresh.empty() ? std::string_view{"in limits"} : bar.freshWord;
    case Zone::Between: return "between";
    case Zone::Beyond: return "beyond";
    case Zone::Free: break;
    }
    return "no limit given";
}

void writeZones(const std::vector<ZoneSpan>& zones, const LimitBar& bar, const BarPlan& plan) {
    for (const ZoneSpan& zone : zones) {
        const Area part{plan.scale.at(zone.least), plan.band.y,
                        plan.scale.at(zone.most) - plan.scale.at(zone.least), plan.band.height};
        const std::string_view word = wordOf(zone.zone, bar);
        if (static_cast<double>(sizeOf(plan.font, word).x) + 6.0 <= part.width)
            writeLine(part, word, {plan.font, palette::kSoftInk, Align::Middle});
    }
}

void writeLimits(const LimitBar& bar, const BarPlan& plan, const Surface& surface) {
    std::vector<RowLabel> labels;
    for (const std::optional<double>& edge :
         {bar.fresh.least, bar.fresh.most, bar.service.most, bar.service.least})
        if (edge && std::ranges::none_of(
                        labels, [&](const RowLabel& label) { return label.at == plan.scale.at(*edge); }))
            labels.push_back({plan.scale.at(*edge), numberWords(*edge, bar.decimals), {plan.font}});
    writeRow(labels, plan.limits, surface.px(8.0));
}

/// A bracket under the scale, its words beside it.
void drawPrediction(const LimitBar& bar, const BarPlan& plan, const Surface& surface) {
    const Area& row = plan.prediction;
    const double least = plan.scale.held(bar.predicted->least.value_or(plan.scale.least));
    const double most = plan.scale.held(bar.predicted->most.value_or(plan.scale.most));
    const double y = row.y + row.height * 0.22;
    fillArea({least, y - surface.px(3.0), std::max(most - least, 2.0), surface.px(6.0)},
             palette::kAccentLight);
    drawLine(point(least, y), point(most, y), {palette::kAccent, 2.0});
    for (const double end : {least, most})
        drawLine(point(end, y - surface.px(4.0)), point(end, y + surface.px(4.0)), {palette::kAccent, 2.0});
    std::string words = "predicted ";
    if (bar.predictedValue) {
        const double at = plan.scale.held(*bar.predictedValue);
        ink().AddCircleFilled(point(at, y), static_cast<float>(surface.px(3.5)), palette::kAccent);
        words += numberWords(*bar.predictedValue, bar.decimals) + ", ";
    }
    words += windowWords(*bar.predicted, bar.decimals);
    writeRow({{(least + most) / 2.0, words, {plan.font, palette::kAccent}}},
             {row.x, y + surface.px(3.0), row.width, row.bottom() - y - surface.px(3.0)}, 0.0);
}

/// A hollow tip under the scale.
void drawBefore(const LimitBar& bar, const BarPlan& plan, const Surface& surface) {
    const Area& row = plan.before;
    const double at = plan.scale.held(*bar.previous);
    const double tip = surface.px(6.0);
    const double y = row.y + surface.px(1.0);
    ink().AddTriangle(point(at, y), point(at - tip * 0.7, y + tip), point(at + tip * 0.7, y + tip),
                      palette::kInk, 1.5F);
    drawDashedLine(point(at, plan.band.y), point(at, plan.band.bottom()), {palette::kInk, 1.5}, 3.0);
    writeRow({{at, "as received " + numberWords(*bar.previous, bar.decimals), {plan.font}}},
             {row.x, y + tip, row.width, row.bottom() - y - tip}, 0.0);
}

void drawWhisker(double at, double half, double y, const Stroke& stroke) {
    const double cap = stroke.thickness * 2.0;
    drawLine(point(at - half, y), point(at + half, y), stroke);
    for (const double end : {at - half, at + half})
        drawLine(point(end, y - cap), point(end, y + cap), stroke);
}

/// The value over the band, with U to both sides and its number above.
void drawReading(const LimitBar& bar, const BarPlan& plan, const Surface& surface) {
    if (!bar.value) {
        writeRow({{plan.band.middleX(), "not read yet", {plan.font, palette::kSoftInk}}}, plan.reading, 0.0);
        return;
    }
    const StandingLook look = lookOf(bar.standing);
    const double at = plan.scale.held(*bar.value);
    const double y = plan.whisker.middleY();
    const double half = plan.scale.at(*bar.value + bar.expanded) - plan.scale.at(*bar.value);
    drawLine(point(at, y), point(at, plan.band.bottom()), {look.colour, surface.px(2.5)});
    if (bar.expanded > 0.0)
        drawWhisker(at, half, y, {look.colour, surface.px(2.0)});
    drawStandingSign(bar.standing, point(at, y), std::min(surface.px(9.0), plan.whisker.height * 0.48));
    std::string words = numberWords(*bar.value, bar.decimals);
    if (bar.expanded > 0.0)
        words += " ± " + numberWords(bar.expanded, bar.decimals);
    words += fmt::format(" {} · {}", bar.unit, bar.word.empty() ? look.word : bar.word);
    writeRow({{at, words, {surface.fonts().strong, look.colour}}}, plan.reading, 0.0);
}

} // namespace

void drawLimitBar(const LimitBar& bar, const Area& area, const Surface& surface) {
    if (area.empty())
        return;
    const BarPlan plan = planOf(bar, area, surface);
    const std::vector<ZoneSpan> zones = zonesOf(bar.fresh, bar.service, plan.scale);
    drawZones(zones, plan.scale, plan.band);
    writeZones(zones, bar, plan);
    writeLimits(bar, plan, surface);
    if (bar.predicted)
        drawPrediction(bar, plan, surface);
    if (bar.previous)
        drawBefore(bar, plan, surface);
    drawReading(bar, plan, surface);
}

void drawSmallBar(const LimitBar& bar, const Area& area, const Surface& surface) {
    if (area.empty())
        return;
    const double sign = std::min(surface.px(7.0), area.height * 0.3);
    const Scale scale = scaleOf(bar, area.x + sign, area.right() - sign);
    const double height = std::min(surface.px(14.0), area.height * 0.5);
    const Area band{scale.from, area.middleY() - height / 2.0, scale.to - scale.from, height};
    drawZones(zonesOf(bar.fresh, bar.service, scale), scale, band);
    if (bar.predicted) {
        const double least = scale.held(bar.predicted->least.value_or(scale.least));
        const double most = scale.held(bar.predicted->most.value_or(scale.most));
        drawLine(point(least, band.bottom() + 2.0), point(std::max(most, least + 2.0), band.bottom() + 2.0),
                 {palette::kAccent, surface.px(3.0)});
    }
    if (bar.previous) {
        const double at = scale.held(*bar.previous);
        drawDashedLine(point(at, band.y - 2.0), point(at, band.bottom() + 2.0), {palette::kInk, 1.5}, 2.5);
    }
    if (!bar.value)
        return;
    const double at = scale.held(*bar.value);
    const double half = scale.at(*bar.value + bar.expanded) - scale.at(*bar.value);
    const ImU32 colour = lookOf(bar.standing).colour;
    if (half > sign)
        drawWhisker(at, std::min({half, at - area.x, area.right() - at}), band.middleY(), {colour, 1.5});
    drawStandingSign(bar.standing, point(at, band.middleY()), sign);
}

} // namespace gapwise
