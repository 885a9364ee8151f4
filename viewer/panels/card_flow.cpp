#include "viewer/panels/card_flow.h"

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

/// Narrower than this a line of text is hard to read.
constexpr double kLeastColumn = 320.0;
constexpr double kLeastLargeColumn = 380.0;
/// Higher than any column: text is broken into lines in it, and nothing else.
constexpr double kEndless = 1e6;

} // namespace

CardFlow::CardFlow(const Area& body, const SheetPaper& paper)
    : body_{body}, paper_{paper}, gap_{paper.surface.px(20.0)} {
    const double least = paper.surface.px(paper.large ? kLeastLargeColumn : kLeastColumn);
    count_ = std::max(1, static_cast<int>(std::floor((body.width + gap_) / (least + gap_))));
    column_ = columnOf(body, count_, 0, gap_).width;
}

void CardFlow::text(SheetParagraph::Kind kind, std::string words) {
    if (!words.empty())
        paragraph({.kind = kind, .words = std::move(words)});
}

void CardFlow::paragraph(SheetParagraph paragraph) {
    const bool bound =
        paragraph.kind == SheetParagraph::Kind::Heading || paragraph.kind == SheetParagraph::Kind::Signal;
    const SheetText text{.groups = {{{std::move(paragraph)}}}};
    const std::vector<SheetColumn> columns = columnsOf(text, {0.0, 0.0, column_, kEndless}, paper_);
    bool first = true;
    for (const SheetLine& line : columns.front()) {
        SheetLine alone = line;
        alone.y = 0.0;
        const bool heading = line.paragraph.kind == SheetParagraph::Kind::Heading;
        const double space =
            heading ? 12.0 : (line.paragraph.kind == SheetParagraph::Kind::Signal ? 9.0 : 4.0);
        blocks_.push_back(
            {.height = line.height,
             .before = first ? paper_.surface.px(space) : 0.0,
             .keepsNext = bound,
             .draw = [alone, paper = paper_](const Area& area) { drawColumn({alone}, area, paper); }});
        first = false;
    }
}

void CardFlow::row(double height, std::function<void(const Area&)> draw) {
    blocks_.push_back({.height = height, .before = paper_.surface.px(5.0), .draw = std::move(draw)});
}

void CardFlow::keepsNext() {
    if (!blocks_.empty())
        blocks_.back().keepsNext = true;
}

void CardFlow::keepTogether(std::size_t since) {
    for (std::size_t i = since; i + 1 < blocks_.size(); ++i)
        blocks_[i].keepsNext = true;
}

std::vector<std::vector<CardFlow::Placed>> CardFlow::placed() const {
    std::vector<std::vector<Placed>> columns(1);
    double used = 0.0;
    for (std::size_t i = 0; i < blocks_.size(); ++i) {
        double needed = 0.0;
        for (std::size_t k = i; k < blocks_.size(); ++k) {
            needed += blocks_[k].height + (k == i ? 0.0 : blocks_[k].before);
            if (!blocks_[k].keepsNext)
                break;
        }
        const bool fresh = columns.back().empty();
        const double before = fresh ? 0.0 : blocks_[i].before;
        const bool bound = i > 0 && blocks_[i - 1].keepsNext;
        if (!fresh && used + before + (bound ? blocks_[i].height : needed) > body_.height + 1.0) {
            columns.emplace_back();
            used = 0.0;
        } else {
            used += before;
        }
        columns.back().push_back({i, used});
        used += blocks_[i].height;
    }
    return columns;
}

std::size_t CardFlow::pages() const {
    return std::max<std::size_t>(1, (placed().size() + columnCount() - 1) / columnCount());
}

std::size_t CardFlow::pageNow() const {
    return (placed().size() - 1) / columnCount();
}

void CardFlow::draw(std::size_t page) const {
    const std::vector<std::vector<Placed>> columns = placed();
    const std::size_t first = page * columnCount();
    for (std::size_t i = first; i < columns.size() && i < first + columnCount(); ++i) {
        const Area column = columnOf(body_, count_, static_cast<int>(i - first), gap_);
        for (const Placed& each : columns[i])
            blocks_[each.block].draw({column.x, column.y + each.y, column.width, blocks_[each.block].height});
    }
}

} // namespace gapwise
