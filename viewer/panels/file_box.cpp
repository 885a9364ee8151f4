#include "viewer/panels/box.h"
#include "viewer/panels/open_path.h"
#include "viewer/panels/parts.h"

#include <imgui_stdlib.h>

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

/// A row of the box: a field for a path, and the button that does something with it.
struct PathRow {
    const char* id = "";
    const char* hint = "";
    const char* label = "";
    bool leading = false;
};

/// True when it is to be done with the path.
bool pathRow(const PathRow& row, std::string& path, const Area& area, const Surface& surface) {
    const double width = std::max(surface.px(180.0), surface.target);
    const double gap = surface.px(8.0);
    const Area field{area.x, area.y, area.width - width - gap, area.height};
    ImGui::SetCursorScreenPos(
        point(field.x, field.y + (field.height - static_cast<double>(ImGui::GetFrameHeight())) / 2.0));
    ImGui::SetNextItemWidth(static_cast<float>(field.width));
    surface.frame.targets.push_back({surface.frame.scope + row.id, field});
    const std::string id = std::string{"##"} + row.id;
    const bool enter =
        ImGui::InputTextWithHint(id.c_str(), row.hint, &path, ImGuiInputTextFlags_EnterReturnsTrue);
    const bool pressed = button(surface, {field.right() + gap, area.y, width, area.height}, row.label,
                                {.enabled = !path.empty(), .leading = row.leading && !path.empty()});
    return (enter || pressed) && !path.empty();
}

/// Leaving, and beginning anew: the latter is asked before.
std::optional<Wish> leaveRow(const Job& job, const Area& area, const Surface& surface) {
    Drafts& drafts = surface.drafts();
    const double gap = surface.px(8.0);
    if (!drafts.askedStartAgain) {
        if (button(surface, columnOf(area, 2, 0, gap), "Start again …"))
            drafts.askedStartAgain = true;
        if (button(surface, columnOf(area, 2, 1, gap), "Leave: the job is kept where it stands"))
            return ToOpening{};
        return std::nullopt;
    }
    const Area words{area.x, area.y, area.width * 0.42, area.height};
    const Area buttons{words.right() + gap, area.y, area.right() - words.right() - gap, area.height};
    fillArea(words, palette::kNotice, surface.px(4.0));
    writeLines(
        words.inset(surface.px(4.0)),
        fmt::format("! Begin with an empty housing? {} parts are seated; this job stays among the recent "
                    "ones.",
                    job.state.build.seatings.size()),
        {surface.fonts().small, palette::kNoticeInk});
    if (button(surface, columnOf(buttons, 2, 0, gap), "No, go on here", {.leading = true}))
        drafts.askedStartAgain = false;
    if (!button(surface, columnOf(buttons, 2, 1, gap), "Yes, start again"))
        return std::nullopt;
    drafts.askedStartAgain = false;
    return StartAgain{};
}

} // namespace

std::optional<Wish> fileBox(const Job& job, const Area& area, const Surface& surface) {
    const Scope scope{surface, "file"};
    const Area body = drawBox(area, "Save, open, start again, leave", surface);
    Drafts& drafts = surface.drafts();
    if (drafts.file.empty())
        drafts.file = job.name.ends_with(".build.json") ? job.name : job.frame.id.text + ".build.json";
    const double height = std::max(surface.target, surface.px(40.0));
    const double gap = surface.px(8.0);
    const auto row = [&](int index) {
        return Area{body.x, body.y + index * (height + gap), body.width, height};
    };
    std::optional<Wish> wish;
    if (pathRow({"path", "where to save it", "Save the build sheet", true}, drafts.file, row(0), surface))
        wish = SaveSheet{drafts.file};
    if (pathRow({"open path", "path of a build sheet or a frame file", "Open", false}, drafts.openPath,
                row(1), surface))
        wish = openTyped(drafts.openPath, job.use);
    if (const auto left = leaveRow(job, row(2), surface))
        wish = left;
    if (button(surface, columnOf(row(3), 2, 0, gap), "Slip for the next shift"))
        wish = ReadSlip{true};
    const double below = row(4).y;
    writeLines({body.x, below, body.width, body.bottom() - below},
               "Every act is on disk before you see it: nothing is lost when you open another, leave, or the "
               "power goes.",
               {surface.fonts().small, palette::kSoftInk});
    if (wish)
        drafts.box = Drafts::Box::None;
    return wish;
}

} // namespace gapwise
