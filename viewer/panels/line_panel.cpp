#include "viewer/panels/draw.h"
#include "viewer/panels/pager.h"
#include "viewer/panels/parts.h"
#include "viewer/panels/step_marks.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

constexpr double kMarkRadius = 9.0;

void diamond(ImVec2 c, float r, ImU32 fill, ImU32 rim) {
    const ImVec2 top{c.x, c.y - r};
    const ImVec2 right{c.x + r, c.y};
    const ImVec2 bottom{c.x, c.y + r};
    const ImVec2 left{c.x - r, c.y};
    ink().AddQuadFilled(top, right, bottom, left, fill);
    ink().AddQuad(top, right, bottom, left, rim, 2.0F);
}

void tick(ImVec2 c, float r, ImU32 colour) {
    ink().AddLine({c.x - 0.5F * r, c.y}, {c.x - 0.12F * r, c.y + 0.4F * r}, colour, r * 0.26F);
    ink().AddLine({c.x - 0.12F * r, c.y + 0.4F * r}, {c.x + 0.52F * r, c.y - 0.4F * r}, colour, r * 0.26F);
}

/// It was done and is open again: an arrow that goes round and back.
void backArrow(ImVec2 c, float r, ImU32 colour) {
    drawArc({static_cast<double>(c.x), static_cast<double>(c.y), static_cast<double>(r) * 0.5},
            {Degrees{-60.0}, Degrees{270.0}}, {colour, static_cast<double>(r) * 0.2});
    const ImVec2 tip{c.x - 0.43F * r, c.y - 0.25F * r};
    ink().AddTriangleFilled({tip.x - 0.32F * r, tip.y + 0.08F * r}, {tip.x + 0.24F * r, tip.y + 0.3F * r},
                            {tip.x + 0.14F * r, tip.y - 0.38F * r}, colour);
}

/// What tells the state without colour.
void drawStateSign(const StepMark& mark, ImVec2 c, float r, ImU32 colour) {
    switch (mark.state) {
    case MarkState::Done: tick(c, r, palette::kSheet); return;
    case MarkState::Skipped: // Two arrow heads: passed over.
        for (const float x : {-0.45F, 0.05F})
            ink().AddTriangleFilled({c.x + x * r, c.y - 0.4F * r}, {c.x + x * r, c.y + 0.4F * r},
                                    {c.x + (x + 0.5F) * r, c.y}, colour);
        return;
    case MarkState::NotNeeded:
        ink().AddLine({c.x - 0.5F * r, c.y}, {c.x + 0.5F * r, c.y}, colour, r * 0.24F);
        return;
    case MarkState::Next:
    case MarkState::Possible:
    case MarkState::Later: break;
    }
    if (mark.reopened)
        backArrow(c, r, colour);
    else if (mark.holdPoint) // Held: two bars.
        for (const float x : {-0.26F, 0.26F})
            ink().AddLine({c.x + x * r, c.y - 0.4F * r}, {c.x + x * r, c.y + 0.4F * r}, colour, r * 0.22F);
}

void drawMark(const StepMark& mark, ImVec2 centre, double radius) {
    const auto r = static_cast<float>(radius);
    const bool done = mark.state == MarkState::Done;
    const bool next = mark.state == MarkState::Next;
    const bool possible = next || mark.state == MarkState::Possible;
    const ImU32 fill = done ? palette::kInk : (next ? palette::kAccent : palette::kSheet);
    const ImU32 rim = done ? palette::kInk : (possible ? palette::kAccent : palette::kSteel);
    const ImU32 sign = next ? palette::kSheet : (possible ? palette::kAccent : palette::kSoftInk);
    const float size = next ? r * 1.25F : (possible || done || mark.reopened ? r : r * 0.8F);
    if (mark.holdPoint) {
        diamond(centre, size * 1.35F, fill, rim);
    } else {
        ink().AddCircleFilled(centre, size, fill, 24);
        ink().AddCircle(centre, size, rim, 24, 2.0F);
    }
    if (radius > 5.0)
        drawStateSign(mark, centre, size, sign);
}

/// What of a mark's looks is said on its flag.
std::string flagWords(const StepMark& mark) {
    std::string words;
    for (const LastLook& look : mark.lastLooks)
        words += (words.empty() ? "" : " ") + look.part.text;
    const bool open = mark.state != MarkState::Done && mark.state != MarkState::Skipped;
    const bool near = open && !mark.lastLooks.empty() && mark.lastLooks.front().stepsLeft <= 3;
    return near ? words + ": " + countdownOf(mark.lastLooks.front()) : words;
}

/// How long the words of a flag may be: to the next flag.
struct FlagRow {
    double top = 0.0;
    double right = 0.0;
};

/// A flag before the mark.
void drawFlag(const StepMark& mark, const FlagRow& row, ImVec2 centre, const Surface& surface) {
    const bool finished = std::ranges::all_of(mark.lastLooks, &LastLook::finished);
    const bool passed = mark.state == MarkState::Done;
    const ImU32 colour = finished ? palette::kHolds : (passed ? palette::kBroken : palette::kAccent);
    // The flag stands before the mark: the look must come first.
    const double x = static_cast<double>(centre.x) - surface.px(25.0);
    const double top = row.top;
    ink().AddLine(point(x, top), point(x, static_cast<double>(centre.y)), colour, 2.0F);
    ink().AddTriangleFilled(point(x, top), point(x + surface.px(13.0), top + surface.px(5.0)),
                            point(x, top + surface.px(10.0)), colour);
    double left = x + surface.px(15.0);
    if (finished) {
        drawSign(DialSign::Holds, point(left + surface.px(6.0), top + surface.px(5.0)), surface.px(5.5));
        left += surface.px(15.0);
    }
    const Area words{left, top - surface.px(3.0), row.right - left, surface.px(16.0)};
    std::string said = (passed && !finished ? "! " : "") + flagWords(mark);
    if (static_cast<double>(sizeOf(surface.fonts().small, said).x) > words.width)
        said = said.substr(0, said.find(':'));
    writeLine(words, said, {surface.fonts().small, colour});
}

struct LineRows {
    double sentence = 0.0; ///< Upper edges.
    double flags = 0.0;
    double marks = 0.0; ///< Middle.
    double words = 0.0;
};

LineRows rowsOf(const Area& area, const Surface& surface) {
    return {.sentence = area.y + surface.px(2.0),
            .flags = area.y + surface.px(27.0),
            .marks = area.y + surface.px(54.0),
            .words = area.y + surface.px(68.0)};
}

/// What comes next, and where work stops next.
void sentence(const Job& job, const std::vector<StepMark>& marks, const Area& area, const Surface& surface) {
    const auto next = nextMarkOf(marks);
    std::string words =
        next ? "Next: " + sentenceOf(job.frame, marks[*next].id) : "Nothing is open any more.";
    const auto possible = std::ranges::count(marks, MarkState::Possible, &StepMark::state);
    if (possible > 0)
        words += fmt::format("  ·  or {} other{}", possible, possible == 1 ? "" : "s");
    writeLine(area, words, {surface.fonts().body, palette::kInk});
}

/// The line while the card is open: what comes next, and all marks small.
void strip(const Job& job, const std::vector<StepMark>& marks, const Area& area, const Surface& surface) {
    const double split = area.width * 0.55;
    sentence(job, marks, {area.x + surface.px(16.0), area.y, split, area.height}, surface);
    const Area row{area.x + split + surface.px(30.0), area.y, area.width - split - surface.px(50.0),
                   area.height};
    const double pitch = row.width / static_cast<double>(std::max<std::size_t>(1, marks.size()));
    ink().AddLine(point(row.x, row.middleY()), point(row.right(), row.middleY()), palette::kHairline, 2.0F);
    for (std::size_t i = 0; i < marks.size(); ++i)
        drawMark(marks[i], point(row.x + (static_cast<double>(i) + 0.5) * pitch, row.middleY()),
                 surface.px(4.0));
}

/// A label on every other row, so that it may take the width of two places.
struct LabelRow {
    Area row{};
    double pitch = 0.0; ///< Of the marks.
};

/// Words centred under `middle`, within the row and clear of the labels two marks farther on.
void drawLabel(const StepMark& mark, double middle, const LabelRow& label, const Surface& surface) {
    const Area& row = label.row;
    const double half = label.pitch - surface.px(5.0);
    const double left = std::max(row.x, middle - half);
    const double width = std::min(row.right(), middle + half) - left;
    const ImU32 colour = mark.state == MarkState::Later ? palette::kSoftInk : palette::kInk;
    ImFont* font = mark.state == MarkState::Next ? surface.fonts().strong : surface.fonts().small;
    writeLine({left, row.y, width, row.height}, mark.id.text + " " + mark.label,
              {font, colour, Align::Middle});
}

double followedScroll(const std::vector<StepMark>& marks, const Drafts& drafts) {
    constexpr double kBefore = 5.0;
    if (drafts.lineScroll >= 0.0)
        return drafts.lineScroll;
    return static_cast<double>(nextMarkOf(marks).value_or(marks.size())) - kBefore;
}

/// Where the flag after that of mark `at` stands, or the row ends.
double nextFlag(const std::vector<StepMark>& marks, std::size_t at, const Page& page,
                const Surface& surface) {
    for (std::size_t i = at + 1; i < page.first + page.count && i < marks.size(); ++i)
        if (!marks[i].lastLooks.empty())
            return page.place(i, 0.0).middleX() - surface.px(29.0);
    return page.row.right();
}

} // namespace

std::optional<Wish> linePanel(const Job& job, const Area& area, const Surface& surface) {
    const Scope scope{surface, "line"};
    const std::vector<StepMark> marks = stepMarksOf(job);
    if (area.height < surface.px(60.0)) {
        strip(job, marks, area, surface);
        return std::nullopt;
    }
    const LineRows rows = rowsOf(area, surface);
    const double side = surface.px(16.0);
    std::optional<Wish> wish;
    sentence(job, marks, {area.x + side, rows.sentence, area.width - 2.0 * side, surface.px(22.0)}, surface);
    const Area row{area.x + side, rows.flags, area.width - 2.0 * side, area.bottom() - rows.flags};
    const RowOf wanted{.count = marks.size(),
                       .leastWidth =
                           surface.bench ? std::max(surface.target, surface.px(76.0)) : surface.px(76.0),
                       .scroll = followedScroll(marks, surface.drafts())};
    const Page page = pageOf(wanted, row, surface);
    if (const double step = pageButtons(page, wanted, row, surface); step != 0.0)
        surface.drafts().lineScroll = std::max(0.0, static_cast<double>(page.first) + step);
    ink().AddLine(point(page.row.x, rows.marks), point(page.row.right(), rows.marks), palette::kSteel, 2.0F);
    for (std::size_t i = page.first; i < page.first + page.count && i < marks.size(); ++i) {
        const Area place = page.place(i, 0.0);
        const ImVec2 centre = point(place.middleX(), rows.marks);
        if (pressable(surface, marks[i].id.text.c_str(), place).done)
            wish = OpenStep{marks[i].id};
        if (!marks[i].lastLooks.empty())
            drawFlag(marks[i], {rows.flags, nextFlag(marks, i, page, surface)}, centre, surface);
        drawMark(marks[i], centre, surface.px(kMarkRadius));
        const double height = surface.px(17.0);
        const Area labels{page.row.x, rows.words + (i % 2 == 1 ? height : 0.0), page.row.width, height};
        drawLabel(marks[i], place.middleX(), {labels, place.width}, surface);
    }
    return wish;
}

} // namespace gapwise
