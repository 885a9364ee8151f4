#include "viewer/panels/plot_parts.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

Scale scaleFor(const RepeatsPlot& plot, const Area& field) {
    std::vector<double> shown = plot.values;
    for (const std::optional<double>& edge : {plot.window.least, plot.window.most, plot.mean})
        if (edge)
            shown.push_back(*edge);
    const auto [least, most] = std::ranges::minmax(shown);
    const double room = std::max((most - least) * 0.15, std::pow(10.0, -plot.decimals) * 2.0);
    return {least - room, most + room, field.bottom(), field.y};
}

/// The window as a band, its ends and the mean with their numbers at the left.
void drawGround(const RepeatsPlot& plot, const Scale& scale, const Area& field, const Surface& surface) {
    const double numbers = field.x - surface.px(6.0);
    const double line = lineHeightOf(surface.fonts().small);
    const auto number = [&](double value, ImU32 colour) {
        writeLine({numbers - surface.px(60.0), scale.at(value) - line / 2.0, surface.px(60.0), line},
                  numberWords(value, plot.decimals), {surface.fonts().small, colour, Align::Right});
    };
    if (!plot.window.empty()) {
        const double top = scale.held(plot.window.most.value_or(scale.most));
        const double bottom = scale.held(plot.window.least.value_or(scale.least));
        fillArea({field.x, top, field.width, bottom - top}, palette::kHoldsLight);
        for (const std::optional<double>& edge : {plot.window.least, plot.window.most})
            if (edge) {
                drawLine(point(field.x, scale.at(*edge)), point(field.right(), scale.at(*edge)),
                         {palette::kHolds, 1.5});
                number(*edge, palette::kHolds);
            }
    }
    frameArea(field, palette::kHairline);
    if (plot.mean)
        drawDashedLine(point(field.x, scale.at(*plot.mean)), point(field.right(), scale.at(*plot.mean)),
                       {palette::kAccent, 2.0}, 5.0);
}

std::string wordsOf(const RepeatsPlot& plot) {
    std::string words;
    if (plot.mean)
        words = fmt::format("mean {} {}, ", numberWords(*plot.mean, plot.decimals), plot.unit);
    words += fmt::format("spread {}", numberWords(plot.spread, plot.decimals));
    if (plot.spreadMost)
        words +=
            plot.spread <= *plot.spreadMost
                ? fmt::format(", allowed {}", numberWords(*plot.spreadMost, plot.decimals))
                : fmt::format(": more than {}, read again", numberWords(*plot.spreadMost, plot.decimals));
    return words;
}

} // namespace

void drawRepeats(const RepeatsPlot& plot, const Area& area, const Surface& surface) {
    if (area.empty() || plot.values.empty())
        return;
    const double line = lineHeightOf(surface.fonts().small);
    const Area field{area.x + surface.px(66.0), area.y + line * 0.5, area.width - surface.px(72.0),
                     area.height - 2.8 * line};
    if (field.empty())
        return;
    const Scale scale = scaleFor(plot, field);
    drawGround(plot, scale, field, surface);
    std::vector<RowLabel> places;
    const auto count = plot.values.size();
    for (std::size_t i = 0; i < count; ++i) {
        const double x = field.x + field.width * (static_cast<double>(i) + 0.5) / static_cast<double>(count);
        ink().AddCircleFilled(point(x, scale.at(plot.values[i])), static_cast<float>(surface.px(4.5)),
                              plot.window.holds(plot.values[i]) ? palette::kInk : palette::kBroken, 20);
        const std::string name = i < plot.places.size() ? plot.places[i] : std::to_string(i + 1);
        places.push_back({x, name, {surface.fonts().small, palette::kSoftInk}});
    }
    writeRow(places, {field.x, field.bottom(), field.width, line * 1.1}, surface.px(4.0));
    const bool apart = plot.spreadMost && plot.spread > *plot.spreadMost;
    writeLine({area.x, field.bottom() + line * 1.15, area.width, line}, wordsOf(plot),
              {surface.fonts().small, apart ? palette::kBroken : palette::kInk, Align::Middle});
}

} // namespace gapwise
