#include "viewer/panels/plot_parts.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

void drawShares(const std::vector<ShareBar>& bars, double rowHeight, const Area& area,
                const Surface& surface) {
    if (area.empty() || bars.empty() || rowHeight <= 0.0)
        return;
    const auto fit = static_cast<std::size_t>(area.height / rowHeight);
    const bool all = bars.size() <= fit;
    const std::size_t shown = all ? bars.size() : (fit > 0 ? fit - 1 : 0);
    ImFont* font = rowHeight >= surface.px(26.0) ? surface.fonts().body : surface.fonts().small;
    double names = 0.0;
    double words = 0.0;
    const auto wordsOf = [](const ShareBar& bar) {
        const std::string percent = numberWords(bar.share * 100.0, 0) + " %";
        return bar.words.empty() ? percent : percent + " · " + bar.words;
    };
    for (const ShareBar& bar : bars) {
        names = std::max(names, static_cast<double>(sizeOf(font, bar.name).x));
        words = std::max(words, static_cast<double>(sizeOf(font, wordsOf(bar)).x));
    }
    const double gap = surface.px(8.0);
    names = std::min(names + 2.0, area.width * 0.45);
    words = std::min(words + 2.0, area.width * 0.4);
    const double width = std::max(area.width - names - words - 2.0 * gap, surface.px(12.0));
    for (std::size_t i = 0; i < shown; ++i) {
        const Area row{area.x, area.y + static_cast<double>(i) * rowHeight, area.width, rowHeight};
        writeLine({row.x, row.y, names, row.height}, bars[i].name, {font});
        const Area groove{row.x + names + gap, row.y + rowHeight * 0.22, width, rowHeight * 0.56};
        fillArea(groove, palette::kShade);
        const double filled = groove.width * std::clamp(bars[i].share, 0.0, 1.0);
        fillArea({groove.x, groove.y, filled, groove.height},
                 bars[i].marked ? palette::kAccent : palette::kSteel);
        writeLine({groove.right() + gap, row.y, words, row.height}, wordsOf(bars[i]), {font});
    }
    if (!all)
        writeLine({area.x, area.y + static_cast<double>(shown) * rowHeight, area.width, rowHeight},
                  fmt::format("and {} more", bars.size() - shown), {font, palette::kSoftInk});
}

} // namespace gapwise
