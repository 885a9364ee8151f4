#include "viewer/panels/plot_parts.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

double barWidth(const ChainTrials& trials) {
    return trials.histogram.size() > 1 ? trials.histogram[1].leastMm - trials.histogram[0].leastMm : 0.001;
}

Scale scaleFor(const ChainTrials& trials, const Window& window, const Area& field) {
    double least = trials.histogram.front().leastMm;
    double most = trials.histogram.back().leastMm + barWidth(trials);
    if (window.least)
        least = std::min(least, *window.least);
    if (window.most)
        most = std::max(most, *window.most);
    const double room = (most - least) * 0.05;
    return {least - room, most + room, field.x, field.right()};
}

void drawBars(const ChainTrials& trials, const Window& window, const Scale& scale, const Area& field) {
    const double tallest = std::ranges::max(trials.histogram, {}, &Bar::share).share;
    const double width = barWidth(trials);
    if (tallest <= 0.0)
        return;
    for (const Bar& bar : trials.histogram) {
        const double left = scale.at(bar.leastMm);
        const double right = scale.at(bar.leastMm + width);
        const double height = bar.share / tallest * field.height * 0.94;
        const Area box{left, field.bottom() - height, std::max(right - left - 1.0, 1.0), height};
        const bool inside = window.holds(bar.leastMm + width / 2.0);
        const bool narrow = box.width < 5.0;
        fillArea(box, inside ? palette::kAccent : (narrow ? palette::kBroken : palette::kBrokenLight));
        if (inside || narrow)
            continue;
        drawHatching(box, {palette::kBroken, 4.0, false});
        frameArea(box, palette::kBroken);
    }
}

std::string percentWords(double share) {
    if (share > 0.0 && share < 0.0001)
        return "less than 0.01 %";
    return numberWords(share * 100.0, share < 0.01 ? 2 : 1) + " %";
}

std::string outsideWords(const ChainTrials& trials, const Window& window) {
    if (window.empty())
        return "no window";
    if (trials.below + trials.above <= 0.0)
        return "none outside the window";
    std::string words = "outside the window " + percentWords(trials.below + trials.above);
    if (trials.below > 0.0 && trials.above > 0.0)
        words += fmt::format(" (below {}, above {})", percentWords(trials.below), percentWords(trials.above));
    return words;
}

} // namespace

void drawHistogram(const ChainTrials& trials, const Window& window, const Area& area,
                   const Surface& surface) {
    if (area.empty() || trials.histogram.empty())
        return;
    const double line = lineHeightOf(surface.fonts().small);
    const Area field{area.x, area.y + line * 1.2, area.width, area.height - line * 3.7};
    if (field.height < surface.px(16.0))
        return;
    const Scale scale = scaleFor(trials, window, field);
    const double from = scale.held(window.least.value_or(scale.least));
    const double to = scale.held(window.most.value_or(scale.most));
    if (!window.empty())
        fillArea({from, field.y, to - from, field.height}, palette::kHoldsLight);
    drawBars(trials, window, scale, field);
    drawLine(point(field.x, field.bottom()), point(field.right(), field.bottom()), {palette::kInk, 1.5});
    std::vector<RowLabel> above;
    for (const std::optional<double>& edge : {window.least, window.most})
        if (edge) {
            drawLine(point(scale.at(*edge), field.y), point(scale.at(*edge), field.bottom()),
                     {palette::kHolds, 2.0});
            above.push_back(
                {scale.at(*edge), numberWords(*edge, 3), {surface.fonts().small, palette::kHolds}});
        }
    writeRow(above, {area.x, area.y, area.width, line * 1.2}, surface.px(6.0));
    const double y = field.bottom() + surface.px(4.0);
    drawLine(point(scale.at(trials.least95Mm), y), point(scale.at(trials.most95Mm), y),
             {palette::kInk, surface.px(3.0)});
    writeRow(
        {{(scale.at(trials.least95Mm) + scale.at(trials.most95Mm)) / 2.0,
          fmt::format("95 %: {} … {} mm", numberWords(trials.least95Mm, 3), numberWords(trials.most95Mm, 3)),
          {surface.fonts().small}}},
        {area.x, y + surface.px(2.0), area.width, line}, 0.0);
    const bool some = trials.below + trials.above > 0.0 && !window.empty();
    writeLine({area.x, y + surface.px(2.0) + line, area.width, line},
              fmt::format("{} · {} thousand trials", outsideWords(trials, window), trials.trials / 1000),
              {surface.fonts().small,
               some ? palette::kBroken : (window.empty() ? palette::kSoftInk : palette::kHolds),
               Align::Middle});
}

} // namespace gapwise
