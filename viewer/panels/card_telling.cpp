#include "viewer/panels/card_telling.h"

#include "models/check/words.h"

namespace gapwise {

namespace {

/// The words of a finding without their last sentence, which says how to turn.
std::string withoutTurn(const Finding& finding, const std::string& turn) {
    std::string words = finding.words;
    if (!turn.empty() && words.ends_with(turn))
        words.resize(words.size() - turn.size());
    while (words.ends_with(' '))
        words.pop_back();
    return words;
}

class Lines {
public:
    Lines(double width, const Surface& surface) : width_{width}, space_{surface.px(5.0)} {}

    void add(const std::string& words, const Type& type) {
        const std::vector<std::string> broken = linesOf(width_, words, type.font);
        const double height = static_cast<double>(broken.size()) * lineHeightOf(type.font);
        for (std::size_t i = 0; i < broken.size(); ++i) {
            const bool first = i == 0;
            lines_.push_back({.words = broken[i],
                              .type = type,
                              .above = first && lines_.size() > 0 ? space_ : 0.0,
                              .paragraph = first ? height : 0.0});
        }
    }
    std::vector<ToldLine> take() { return std::move(lines_); }

private:
    double width_;
    double space_;
    std::vector<ToldLine> lines_{};
};

std::vector<ToldLine> linesOfFinding(const Finding& finding, double width, const Surface& surface) {
    const Fonts& fonts = surface.fonts();
    const std::string turn = finding.turn ? wordsOf(*finding.turn) : std::string{};
    Lines lines{width, surface};
    lines.add(withoutTurn(finding, turn), {fonts.body});
    lines.add(turn, {fonts.strong});
    lines.add(finding.question, {fonts.strong, palette::kAccent});
    const std::string& reason = finding.verdict.rule->reason;
    if (!reason.empty())
        lines.add("Why it matters: " + reason, {fonts.small, palette::kSoftInk});
    return lines.take();
}

} // namespace

std::vector<ToldPage> pagesOf(const std::vector<const Finding*>& findings, const Area& area,
                              const Surface& surface) {
    std::vector<ToldPage> pages;
    for (std::size_t i = 0; i < findings.size(); ++i) {
        pages.push_back({.finding = i});
        double used = 0.0;
        for (ToldLine& line : linesOfFinding(*findings[i], area.width, surface)) {
            const double height = lineHeightOf(line.type.font);
            const bool whole = line.paragraph > 0.0 && line.paragraph <= area.height + 1.0;
            const double needed = line.above + (whole ? line.paragraph : height);
            if (used + needed > area.height + 1.0 && !pages.back().lines.empty()) {
                pages.push_back({.finding = i});
                used = 0.0;
            }
            used += (pages.back().lines.empty() ? 0.0 : line.above) + height;
            pages.back().lines.push_back(std::move(line));
        }
    }
    return pages;
}

void drawPage(const ToldPage& page, const Area& area) {
    double y = area.y;
    for (const ToldLine& line : page.lines) {
        y += &line == &page.lines.front() ? 0.0 : line.above;
        const double height = lineHeightOf(line.type.font);
        writeLine({area.x, y, area.width, height}, line.words, line.type);
        y += height;
    }
}

} // namespace gapwise
