#include "viewer/panels/sheet_flow.h"

#include <algorithm>

namespace gapwise {

namespace {

using Kind = SheetParagraph::Kind;

/// The colours of the signal words, and of words on them (ANSI Z535.4: red, orange, yellow, blue).
struct Plate {
    ImU32 ground = 0;
    ImU32 ink = 0;
    bool alert = true; ///< The triangle of a hazard to people.
};

Plate plateOf(Signal signal) {
    constexpr ImU32 kWhite = IM_COL32(0xff, 0xff, 0xff, 0xff);
    constexpr ImU32 kBlack = IM_COL32(0x10, 0x14, 0x16, 0xff);
    switch (signal) {
    case Signal::Danger: return {IM_COL32(0xc8, 0x10, 0x2e, 0xff), kWhite, true};
    case Signal::Warning: return {IM_COL32(0xff, 0x82, 0x00, 0xff), kBlack, true};
    case Signal::Caution: return {IM_COL32(0xff, 0xd1, 0x00, 0xff), kBlack, true};
    case Signal::Notice: break;
    }
    return {IM_COL32(0x00, 0x57, 0xa8, 0xff), kWhite, false};
}

Type typeOf(Kind kind, const SheetPaper& paper) {
    const Fonts& fonts = paper.surface.fonts();
    ImFont* body = paper.large ? fonts.large : fonts.body;
    ImFont* strong = paper.large ? fonts.title : fonts.strong;
    switch (kind) {
    case Kind::Heading: return {strong, palette::kAccent};
    case Kind::Signal:
    case Kind::Strong: return {strong};
    case Kind::Soft:
    case Kind::Severity: return {body, palette::kSoftInk};
    case Kind::Small: return {paper.large ? fonts.body : fonts.small, palette::kSoftInk};
    case Kind::Body: break;
    }
    return {body};
}

constexpr double kScaleWidth = 62.0; ///< Of the four marks of a severity, with the space after them.

double indentOf(const SheetParagraph& paragraph, const SheetPaper& paper) {
    return paragraph.kind == Kind::Severity ? paper.surface.px(kScaleWidth) : 0.0;
}

/// Before a paragraph, unless it begins a column.
double spaceBefore(Kind kind, const Surface& surface) {
    switch (kind) {
    case Kind::Heading: return surface.px(14.0);
    case Kind::Signal:
    case Kind::Strong: return surface.px(9.0);
    default: return surface.px(2.0);
    }
}

double heightOfLine(Kind kind, const SheetPaper& paper) {
    const Surface& surface = paper.surface;
    const double line = lineHeightOf(typeOf(kind, paper).font);
    if (kind == Kind::Heading)
        return line + surface.px(7.0);
    return kind == Kind::Signal ? line + surface.px(9.0) : line;
}

/// A tolerance stays on the line of its sign.
std::string unbroken(std::string words) {
    constexpr std::string_view kSign = "± ";
    constexpr std::string_view kBound = "±\u00a0";
    for (std::size_t at = words.find(kSign); at != std::string::npos; at = words.find(kSign, at))
        words.replace(at, kSign.size(), kBound);
    return words;
}

class Flow {
public:
    Flow(const Area& size, const SheetPaper& paper, const std::vector<SheetGroup>& beside)
        : size_{size}, paper_{paper}, beside_{beside}, columns_(1) {}

    void add(const SheetGroup& group) {
        const std::vector<SheetLine> lines = linesOf(group);
        // Twice: the column that is begun may be full of what stands beside.
        for (int i = 0; i < 2; ++i)
            if (const double whole = heightOf(lines);
                whole > left() && !columns_.back().empty() && (whole <= size_.height || left() < fewLines()))
                beginColumn();
        for (const SheetLine& line : lines)
            place(line);
    }
    std::vector<SheetColumn> take() {
        if (columns_.size() == 1 && !beside_.empty())
            beginColumn();
        return std::move(columns_);
    }

private:
    double heightOf(const std::vector<SheetLine>& lines) const {
        double whole = 0.0;
        for (const SheetLine& line : lines)
            whole += line.height + spaceOf(line, columns_.back().empty() && &line == &lines.front());
        return whole;
    }

    double fewLines() const { return 4.0 * lineHeightOf(typeOf(Kind::Body, paper_).font); }
    double left() const { return size_.height + 1.0 - used_; }

    double spaceOf(const SheetLine& line, bool atTop) const {
        return line.first && !atTop ? spaceBefore(line.paragraph.kind, paper_.surface) : 0.0;
    }

    std::vector<SheetLine> linesOf(const SheetGroup& group) const {
        std::vector<SheetLine> lines;
        for (const SheetParagraph& paragraph : group.paragraphs) {
            const Type type = typeOf(paragraph.kind, paper_);
            const double width = size_.width - indentOf(paragraph, paper_);
            bool first = true;
            for (std::string& words : gapwise::linesOf(width, unbroken(paragraph.words), type.font)) {
                SheetLine line{
                    .paragraph = paragraph, .first = first, .height = heightOfLine(paragraph.kind, paper_)};
                line.paragraph.words = std::move(words);
                lines.push_back(std::move(line));
                first = false;
            }
        }
        return lines;
    }

    void beginColumn() {
        columns_.emplace_back();
        used_ = 0.0;
        if (columns_.size() == 2)
            for (const SheetGroup& group : beside_)
                add(group);
    }

    void place(SheetLine line) {
        double space = spaceOf(line, columns_.back().empty());
        if (space + line.height > left() && !columns_.back().empty()) {
            beginColumn();
            space = 0.0;
        }
        line.y = used_ + space;
        used_ = line.y + line.height;
        columns_.back().push_back(std::move(line));
    }

    Area size_;
    const SheetPaper& paper_;
    const std::vector<SheetGroup>& beside_;
    std::vector<SheetColumn> columns_;
    double used_ = 0.0;
};

/// A triangle with its exclamation mark, as on the plate of a hazard to people.
void drawAlert(const Area& plate, const Plate& look) {
    const double half = plate.height * 0.36;
    const double x = plate.x + plate.height * 0.62;
    const double y = plate.middleY();
    ink().AddTriangleFilled(point(x, y - half), point(x + half * 1.12, y + half * 0.86),
                            point(x - half * 1.12, y + half * 0.86), look.ink);
    const auto thick = static_cast<float>(half * 0.26);
    ink().AddLine(point(x, y - half * 0.42), point(x, y + half * 0.30), look.ground, thick);
    ink().AddCircleFilled(point(x, y + half * 0.60), thick * 0.62F, look.ground, 12);
}

void drawSignal(const SheetLine& line, const Area& row, const SheetPaper& paper) {
    const Surface& surface = paper.surface;
    ImFont* font = typeOf(Kind::Signal, paper).font;
    const Plate look = plateOf(line.paragraph.signal);
    const double words = static_cast<double>(sizeOf(font, line.paragraph.words).x) + surface.px(20.0);
    const Area plate{row.x, row.y + surface.px(2.0),
                     std::min(row.width, words + (look.alert ? row.height : 0.0)),
                     row.height - surface.px(4.0)};
    fillArea(plate, look.ground, surface.px(3.0));
    const double sign = look.alert ? plate.height : 0.0;
    if (look.alert)
        drawAlert(plate, look);
    writeLine({plate.x + sign, plate.y, plate.width - sign, plate.height}, line.paragraph.words,
              {font, look.ink, Align::Middle});
}

/// Four marks, as many of them full as the severity is grave.
void drawScale(int severity, const Area& row, const Surface& surface) {
    const double size = surface.px(10.0);
    for (int i = 0; i < 4; ++i) {
        const Area mark{row.x + static_cast<double>(i) * surface.px(14.0), row.middleY() - size / 2.0, size,
                        size};
        if (i < severity)
            fillArea(mark, palette::kBroken, surface.px(1.0));
        frameArea(mark, i < severity ? palette::kBroken : palette::kSteel, surface.px(1.0));
    }
}

} // namespace

std::vector<SheetColumn> columnsOf(const SheetText& text, const Area& size, const SheetPaper& paper) {
    Flow flow{size, paper, text.beside};
    for (const SheetGroup& group : text.groups)
        flow.add(group);
    return flow.take();
}

void drawColumn(const SheetColumn& column, const Area& area, const SheetPaper& paper) {
    for (const SheetLine& line : column) {
        const Area row{area.x, area.y + line.y, area.width, line.height};
        const double indent = indentOf(line.paragraph, paper);
        if (line.paragraph.kind == Kind::Signal) {
            drawSignal(line, row, paper);
            continue;
        }
        if (line.paragraph.kind == Kind::Severity && line.first)
            drawScale(line.paragraph.severity, row, paper.surface);
        writeLine({row.x + indent, row.y, row.width - indent, row.height}, line.paragraph.words,
                  typeOf(line.paragraph.kind, paper));
        if (line.paragraph.kind == Kind::Heading)
            ink().AddLine(point(row.x, row.bottom() - 2.0), point(row.right(), row.bottom() - 2.0),
                          palette::kHairline, 1.0F);
    }
}

} // namespace gapwise
