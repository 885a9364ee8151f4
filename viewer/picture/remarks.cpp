#include "viewer/picture/remarks.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace gapwise {

namespace {

constexpr double kSide = 26.0;    ///< From the picture's sides to texts, in units.
constexpr double kBetween = 36.0; ///< Between texts of one row.

/// A text of the banner with its place.
struct Entry {
    std::string text{};
    TextStyle style{};
    bool notice = false; ///< In a box of its own colour, at the right.
    PictureArea area{};
};

std::vector<Entry> entriesOf(const Remarks& remarks, double unit) {
    std::vector<Entry> entries;
    const auto add = [&](const std::string& text, const TextStyle& style, bool notice) {
        if (!text.empty())
            entries.push_back({text, style, notice});
    };
    add(remarks.view.where, {.size = 23.0 * unit, .bold = true, .colour = inks::kOnBanner}, false);
    add(remarks.view.drain, {.size = 23.0 * unit, .colour = inks::kOnBanner}, false);
    add(remarks.notice, {.size = 15.0 * unit, .bold = true, .colour = inks::kOnNotice}, true);
    const TextStyle quiet{.size = 15.5 * unit, .colour = inks::kQuietOnBanner};
    add(remarks.subject, quiet, false);
    add(remarks.view.note, quiet, false);
    return entries;
}

/// Writes nothing: sets the areas row by row and returns the banner's height.
double arrange(const Paper& paper, std::vector<Entry>& entries, double width, double unit) {
    const double side = kSide * unit;
    const double pad = 10.0 * unit;
    double top = 12.0 * unit;
    double x = side;
    double rowHeight = 0.0;
    bool quietRow = false;
    for (Entry& entry : entries) {
        const TextSize size = paper.measure(entry.text, entry.style);
        const double wide = size.width + (entry.notice ? 2.0 * pad : 0.0);
        const double high = size.height + (entry.notice ? pad : 0.0);
        const bool quiet = entry.style.colour == inks::kQuietOnBanner;
        const bool newRow = (quiet && !quietRow) || (x > side && x + wide > width - side);
        if (newRow && x > side) {
            top += rowHeight + 4.0 * unit;
            x = side;
            rowHeight = 0.0;
        }
        quietRow = quiet;
        entry.area = {entry.notice ? std::max(side, width - side - wide) : x, top, wide, high};
        x += wide + kBetween * unit;
        rowHeight = std::max(rowHeight, high);
    }
    return top + rowHeight + 12.0 * unit;
}

struct Arranged {
    std::vector<Entry> entries{};
    PictureLayout layout{};
};

Arranged arranged(const Paper& paper, const PictureSize& size, const Remarks& remarks) {
    const double unit = unitOf(size);
    Arranged result{.entries = entriesOf(remarks, unit)};
    PictureLayout& layout = result.layout;
    layout.unit = unit;
    layout.bannerHeight = arrange(paper, result.entries, size.width, unit);
    layout.footerHeight = 34.0 * unit;
    const double top = layout.bannerHeight;
    const double bottom = size.height - layout.footerHeight;
    const double across = size.width - 2.0 * kSide * unit;
    const double least = 0.2 * size.height; // A banner of many rows never leaves nothing.
    layout.labels = {kSide * unit, top + 8.0 * unit, across, std::max(least, bottom - top - 12.0 * unit)};
    const double margin = std::min(74.0 * unit, 0.2 * layout.labels.height);
    layout.content = {layout.labels.left + 24.0 * unit, layout.labels.top + margin, across - 48.0 * unit,
                      layout.labels.height - 2.0 * margin};
    return result;
}

} // namespace

double unitOf(const PictureSize& size) {
    constexpr double kSmallest = 0.55;
    const double byArea = std::sqrt(size.width / 1600.0 * size.height / 900.0);
    return std::max(kSmallest, std::min({byArea, size.width / 1100.0, size.height / 700.0}));
}

PictureLayout layoutFor(const PictureSize& size, const Remarks& remarks) {
    Image scrap{.size = {1, 1}, .pixels = {0U}};
    return arranged(Paper{scrap}, size, remarks).layout;
}

PictureLayout writeRemarks(Paper& paper, const PictureSize& size, const Remarks& remarks) {
    const auto [entries, layout] = arranged(paper, size, remarks);
    const double unit = layout.unit;
    paper.fill({0.0, 0.0, static_cast<double>(size.width), layout.bannerHeight}, inks::kBanner);
    for (const Entry& entry : entries) {
        Spot at{entry.area.left, entry.area.top};
        if (entry.notice) {
            paper.fill(entry.area, inks::kNotice, 5.0 * unit);
            at = {at.x + 10.0 * unit, at.y + 5.0 * unit};
        }
        paper.write(entry.text, entry.style, at);
    }
    const TextStyle quiet{.size = 14.0 * unit, .colour = inks::kQuiet};
    const TextSize footer = paper.measure(kNoApproval, quiet);
    paper.write(kNoApproval, quiet,
                {kSide * unit, size.height - layout.footerHeight / 2.0 - footer.height / 2.0 - 4.0 * unit});
    return layout;
}

} // namespace gapwise
