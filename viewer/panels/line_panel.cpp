#include "viewer/panels/draw.h"
#include "viewer/panels/pager.h"
#include "viewer/panels/parts.h"
#include "viewer/panels/step_marks.h"

#include <algorithm>

namespace gapwise {

namespace {

constexpr double kMarkRadius = 8.0;

/// Done, or undone when it was done; asks first where it is out of order or would hide what is not finished.
std::optional<Wish> tap(const StepMark& mark, Drafts& drafts) {
    if (mark.state == MarkState::Done)
        return Act{StepUndone{mark.id}};
    if (!warningBefore(mark).empty() && drafts.askedStep != mark.id) {
        drafts.askedStep = mark.id;
        return std::nullopt;
    }
    drafts.askedStep.reset();
    return Act{StepDone{mark.id}};
}

void drawDiamond(ImVec2 c, float r, ImU32 fill, ImU32 rim) {
    const ImVec2 top{c.x, c.y - r};
    const ImVec2 right{c.x + r, c.y};
    const ImVec2 bottom{c.x, c.y + r};
    const ImVec2 left{c.x - r, c.y};
    ink().AddQuadFilled(top, right, bottom, left, fill);
    ink().AddQuad(top, right, bottom, left, rim, 2.0F);
}

void drawMark(const StepMark& mark, ImVec2 centre, double radius) {
    const auto r = static_cast<float>(radius);
    const bool done = mark.state == MarkState::Done;
    const bool later = mark.state == MarkState::Later;
    const ImU32 fill =
        done ? palette::kInk : (mark.state == MarkState::Next ? palette::kAccent : palette::kSheet);
    const ImU32 rim = later ? palette::kSteel : (done ? palette::kInk : palette::kAccent);
    if (mark.holdPoint)
        return drawDiamond(centre, r * 1.35F, fill, rim);
    const float size = mark.state == MarkState::Next ? r * 1.25F : (later ? r * 0.75F : r);
    ink().AddCircleFilled(centre, size, fill, 24);
    ink().AddCircle(centre, size, rim, 24, 2.0F);
}

/// A flag before the mark, its words no farther than the area's right end.
void drawFlag(const StepMark& mark, const Area& area, ImVec2 centre, const Surface& surface) {
    const bool finished = std::ranges::all_of(mark.lastLooks, &LastLook::finished);
    const bool passed = mark.state == MarkState::Done;
    const ImU32 colour = finished ? palette::kHolds : (passed ? palette::kBroken : palette::kAccent);
    // The flag stands before the mark: the look must come first.
    const double x = static_cast<double>(centre.x) - surface.px(25.0);
    const double top = area.y;
    ink().AddLine(point(x, top), point(x, static_cast<double>(centre.y)), colour, 2.0F);
    ink().AddTriangleFilled(point(x, top), point(x + surface.px(13.0), top + surface.px(5.0)),
                            point(x, top + surface.px(10.0)), colour);
    std::string words;
    for (const LastLook& look : mark.lastLooks)
        words += (words.empty() ? "" : " ") + look.part.text;
    const double left = x + surface.px(15.0);
    writeLine(
        {left, top - surface.px(3.0), std::min(surface.px(120.0), area.right() - left), surface.px(16.0)},
        words, {surface.fonts().small, colour});
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

/// What comes next.
void sentence(const Job& job, const std::vector<StepMark>& marks, const Area& area, const Surface& surface) {
    const auto next = nextMarkOf(marks);
    const std::string words =
        next ? "Next: " + sentenceOf(job.frame, marks[*next].id) : "Every step is done.";
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

} // namespace

std::optional<Wish> stepKeys(const Job& job, Drafts& drafts) {
    const std::vector<StepMark> marks = stepMarksOf(job);
    if (ImGui::IsKeyPressed(ImGui::GetKeyIndex(ImGuiKey_PageDown), false)) {
        drafts.lineScroll = -1.0;
        if (const auto next = nextMarkOf(marks))
            return tap(marks[*next], drafts);
    }
    if (ImGui::IsKeyPressed(ImGui::GetKeyIndex(ImGuiKey_PageUp), false)) {
        drafts.lineScroll = -1.0;
        if (drafts.askedStep)
            drafts.askedStep.reset();
        else if (!job.state.build.stepsDone.empty())
            return Act{StepUndone{job.state.build.stepsDone.back()}};
    }
    return std::nullopt;
}

std::optional<Wish> stepQuestion(const Job& job, const Area& area, const Surface& surface) {
    Drafts& drafts = surface.drafts();
    const std::vector<StepMark> marks = stepMarksOf(job);
    const auto asked =
        std::ranges::find_if(marks, [&](const StepMark& mark) { return drafts.askedStep == mark.id; });
    if (asked == marks.end() || area.empty())
        return std::nullopt;
    const Scope scope{surface, "line"};
    fillArea(area, palette::kNotice, surface.px(6.0));
    frameArea(area, palette::kNoticeInk, surface.px(6.0));
    const Area inner = surface.bench ? area : area.inset(surface.px(4.0));
    const double width = surface.px(136.0);
    const Area all{inner.right() - width, inner.y, width, inner.height};
    const Area first{all.x - width - surface.px(6.0), inner.y, width, inner.height};
    const Area words{inner.x + surface.px(8.0), inner.y, first.x - inner.x - surface.px(14.0), inner.height};
    const std::string warning = "! " + asked->id.text + " " + warningBefore(*asked);
    const bool fits = heightOf(words.width, warning, surface.fonts().body) <= words.height;
    writeLines(words, warning, {fits ? surface.fonts().body : surface.fonts().small, palette::kNoticeInk});
    const auto look = std::ranges::find(asked->lastLooks, false, &LastLook::finished);
    const bool looks = look != asked->lastLooks.end();
    std::optional<Wish> wish;
    if (button(surface, first, looks ? "Look at it" : "Not yet", {.leading = true})) {
        if (looks)
            wish = TakeInHand{look->part};
        drafts.askedStep.reset();
    }
    if (button(surface, all, "Done all the same", {.font = surface.fonts().small})) {
        wish = Act{StepDone{asked->id}};
        drafts.askedStep.reset();
    }
    return wish;
}

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
            if (const auto tapped = tap(marks[i], surface.drafts()))
                wish = tapped;
        if (!marks[i].lastLooks.empty())
            drawFlag(marks[i], {place.x, rows.flags, page.row.right() - place.x, rows.marks - rows.flags},
                     centre, surface);
        drawMark(marks[i], centre, surface.px(kMarkRadius));
        const double height = surface.px(17.0);
        const Area labels{page.row.x, rows.words + (i % 2 == 1 ? height : 0.0), page.row.width, height};
        drawLabel(marks[i], place.middleX(), {labels, place.width}, surface);
    }
    return wish;
}

} // namespace gapwise
