#include "viewer/panels/box.h"
#include "viewer/panels/draw.h"
#include "viewer/panels/keys.h"
#include "viewer/panels/parts.h"
#include "viewer/panels/telling.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

/// A row of the list of findings; returns the height used.
double findingRow(const Finding& finding, const Area& area, const Surface& surface,
                  std::optional<Wish>& wish) {
    const bool broken = finding.verdict.state == RuleState::Broken;
    const double words = area.width - surface.px(34.0);
    const double height =
        std::max(surface.target, heightOf(words, finding.words, surface.fonts().body) + surface.px(12.0));
    const Area row{area.x, area.y, area.width, height};
    const Pressed pressed = pressable(surface, finding.verdict.rule->id.text.c_str(), row);
    if (pressed.hovered)
        fillArea(row, palette::kShade, surface.px(4.0));
    drawSign(broken ? DialSign::Broken : DialSign::Open,
             point(row.x + surface.px(14.0), row.y + surface.px(16.0)), surface.px(9.0));
    writeLines({row.x + surface.px(30.0), row.y + surface.px(6.0), words, height}, finding.words,
               {surface.fonts().body});
    if (pressed.done) {
        wish = TakeInHand{finding.verdict.parts.front()};
        surface.drafts().box = Drafts::Box::None;
    }
    return height + surface.px(4.0);
}

double notDueRows(const Job& job, const Area& area, const Surface& surface) {
    const double height = std::max(surface.target, surface.px(36.0));
    const std::string label = fmt::format("{} {} not due yet: their parts are not placed",
                                          surface.drafts().notDueOpen ? "−" : "+", countsOf(job).notDue);
    if (button(surface, {area.x, area.y, std::min(area.width, surface.px(420.0)), height}, label))
        surface.drafts().notDueOpen = !surface.drafts().notDueOpen;
    double y = area.y + height + surface.px(6.0);
    if (!surface.drafts().notDueOpen)
        return y - area.y;
    for (const Verdict& verdict : job.checked.verdicts) {
        if (verdict.state != RuleState::NotDue)
            continue;
        const Area row{area.x + surface.px(10.0), y, area.width - surface.px(10.0), surface.px(20.0)};
        writeLine(row, fmt::format("{}: {}", verdict.parts.front().text, verdict.rule->printed),
                  {surface.fonts().small, palette::kSoftInk});
        y = row.bottom();
    }
    return y - area.y;
}

} // namespace

Area drawBox(const Area& area, std::string_view title, const Surface& surface) {
    const Area box = area.inset(surface.px(6.0));
    fillArea(box, palette::kSheet, surface.px(8.0));
    frameArea(box, palette::kAccent, surface.px(8.0), 1.5);
    const Area inner = box.inset(surface.px(14.0));
    const double height = surface.px(28.0);
    writeLine({inner.x, inner.y, inner.width, height}, title, {surface.fonts().title});
    return {inner.x, inner.y + height + surface.px(6.0), inner.width,
            inner.height - height - surface.px(6.0)};
}

std::optional<Wish> findingsBox(const Job& job, const Area& area, const Surface& surface) {
    std::optional<Wish> wish;
    const Scope scope{surface, "findings"};
    const Area body = drawBox(area, "Findings: tap one to take the part in hand", surface);
    ImGui::SetCursorScreenPos(point(body.x, body.y));
    ImGui::BeginChild("list", point(body.width, body.height), false,
                      ImGuiWindowFlags_NavFlattened | ImGuiWindowFlags_NoBackground);
    const ImVec2 origin = ImGui::GetCursorScreenPos();
    Area row{static_cast<double>(origin.x), static_cast<double>(origin.y), body.width - surface.px(18.0),
             0.0};
    const std::vector<const Finding*> findings = toldFindings(job);
    for (const Finding* finding : findings)
        row.y += findingRow(*finding, row, surface, wish);
    if (findings.empty()) {
        writeLine({row.x, row.y, row.width, surface.px(28.0)}, "No rule that may be told is broken or open.",
                  {surface.fonts().body});
        row.y += surface.px(34.0);
    }
    row.y += notDueRows(job, row, surface);
    ImGui::SetCursorScreenPos(point(row.x, row.y));
    ImGui::Dummy({1.0F, 1.0F});
    ImGui::EndChild();
    return wish;
}

std::optional<Wish> keysBox(const Area& area, const Surface& surface) {
    const Area body = drawBox(area, "Keys", surface);
    const std::span<const KeyHelp> keys = keyHelp();
    const double row = surface.px(19.0);
    const auto perColumn = static_cast<std::size_t>(std::max(1.0, std::floor(body.height / row)));
    const auto columns = static_cast<int>((keys.size() + perColumn - 1) / perColumn);
    for (std::size_t i = 0; i < keys.size(); ++i) {
        const Area column = columnOf(body, columns, static_cast<int>(i / perColumn), surface.px(12.0));
        const double y = column.y + static_cast<double>(i % perColumn) * row;
        const double width = surface.px(104.0);
        writeLine({column.x, y, width, row}, keys[i].key, {surface.fonts().strong});
        writeLine({column.x + width, y, column.width - width, row}, keys[i].does, {surface.fonts().small});
    }
    return std::nullopt;
}

} // namespace gapwise
