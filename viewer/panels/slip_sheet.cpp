#include "viewer/panels/card_flow.h"
#include "viewer/panels/parts.h"
#include "viewer/workplace/slip.h"

#include <imgui_stdlib.h>

#include <algorithm>

namespace gapwise {

namespace {

using Kind = SheetParagraph::Kind;

void addList(CardFlow& flow, const char* heading, const std::vector<std::string>& items) {
    if (items.empty())
        return;
    flow.text(Kind::Heading, heading);
    for (const std::string& item : items)
        flow.text(Kind::Body, "· " + item);
}

void addSlip(CardFlow& flow, const HandOver& slip) {
    flow.text(Kind::Heading, "The piece");
    flow.text(Kind::Body, slip.frame);
    flow.text(Kind::Body, slip.attitude);
    if (!slip.person.empty())
        flow.text(Kind::Body, "Worked last: " + slip.person);
    addList(flow, "Done last", slip.lastActs);
    addList(flow, "Possible now", slip.possible);
    flow.text(Kind::Heading, "Next hold point");
    flow.text(Kind::Body, slip.nextHoldPoint.empty() ? "none is left" : slip.nextHoldPoint);
    addList(flow, "Beware", slip.beware);
    addList(flow, "On the bench, put together", slip.apart);
}

/// A path for the text, and saving it.
std::optional<Wish> saveRow(const Job& job, const Area& area, const Surface& surface) {
    Drafts& drafts = surface.drafts();
    if (drafts.slipFile.empty())
        drafts.slipFile = job.frame.id.text + "-slip.txt";
    const double width = std::max(surface.target, surface.px(150.0));
    const Area field{area.x, area.y, area.width - width - surface.px(8.0), area.height};
    ImGui::SetCursorScreenPos(
        point(field.x, field.y + (field.height - static_cast<double>(ImGui::GetFrameHeight())) / 2.0));
    ImGui::SetNextItemWidth(static_cast<float>(field.width));
    surface.frame.targets.push_back({surface.frame.scope + "path", field});
    const bool enter = ImGui::InputTextWithHint("##path", "where to save it", &drafts.slipFile,
                                                ImGuiInputTextFlags_EnterReturnsTrue);
    const bool pressed = button(surface, {area.right() - width, area.y, width, area.height}, "Save the text",
                                {.enabled = !drafts.slipFile.empty()});
    if ((enter || pressed) && !drafts.slipFile.empty())
        return SaveSlip{drafts.slipFile};
    return std::nullopt;
}

} // namespace

std::optional<Wish> slipSheet(const Job& job, const Area& area, const Surface& surface) {
    const Scope scope{surface, "slip"};
    fillArea(area, palette::kSheet);
    frameArea(area, palette::kAccent, 0.0, 1.5);
    const Area inner = area.inset(surface.px(14.0));
    const double row = std::max(surface.target, surface.px(44.0));
    writeLine({inner.x, inner.y, inner.width * 0.4, row}, "Where we stopped", {surface.fonts().title});
    std::optional<Wish> wish;
    const double button_ = std::max(surface.target, surface.px(150.0));
    if (button(surface, {inner.right() - button_, inner.y, button_, row}, "Go on",
               {.leading = true, .font = surface.fonts().title, .second = "Escape"}))
        wish = ReadSlip{false};
    const double left = inner.x + inner.width * 0.36;
    if (auto saved =
            saveRow(job, {left, inner.y, inner.right() - button_ - surface.px(16.0) - left, row}, surface))
        wish = std::move(saved);
    const Area text{inner.x, inner.y + row + surface.px(12.0), inner.width,
                    inner.height - row - surface.px(12.0)};
    const SheetPaper large{.surface = surface, .large = true};
    const SheetPaper usual{.surface = surface, .large = false};
    const HandOver slip = slipOf(job);
    CardFlow flow{text, large};
    addSlip(flow, slip);
    CardFlow smaller{text, usual};
    addSlip(smaller, slip);
    const bool fits = flow.pages() == 1;
    (fits ? flow : smaller).draw(0);
    return wish;
}

} // namespace gapwise
