#include "viewer/panels/step_page.h"

#include "viewer/panels/draw.h"

#include <imgui_stdlib.h>

#include <algorithm>

namespace gapwise {

namespace {

using Kind = SheetParagraph::Kind;

void drawBox(const Area& area, bool ticked, const Surface& surface) {
    fillArea(area, ticked ? palette::kHolds : palette::kSheet, surface.px(4.0));
    frameArea(area, ticked ? palette::kHolds : palette::kInk, surface.px(4.0), 2.0);
    if (!ticked)
        return;
    const float r = static_cast<float>(area.width) * 0.5F;
    const ImVec2 c = point(area.middleX(), area.middleY());
    ink().AddLine({c.x - 0.5F * r, c.y}, {c.x - 0.1F * r, c.y + 0.42F * r}, palette::kSheet, r * 0.26F);
    ink().AddLine({c.x - 0.1F * r, c.y + 0.42F * r}, {c.x + 0.55F * r, c.y - 0.42F * r}, palette::kSheet,
                  r * 0.26F);
}

void drawTick(const Area& row, const TickLook& look, const Surface& surface) {
    const double size = surface.px(24.0);
    const double left = row.x + surface.px(6.0);
    drawBox({left, row.middleY() - size / 2.0, size, size}, look.ticked, surface);
    const double x = left + size + surface.px(10.0);
    const Area words{x, row.y, row.right() - x, row.height};
    ImFont* font = surface.bench ? surface.fonts().large : surface.fonts().body;
    const double used = heightOf(words.width, look.words, font) +
                        (look.second.empty() ? 0.0 : lineHeightOf(surface.fonts().small));
    const double top = row.middleY() - used / 2.0;
    const double first = writeLines({words.x, top, words.width, row.height}, look.words, {font});
    if (!look.second.empty())
        writeLine({words.x, top + first, words.width, lineHeightOf(surface.fonts().small)}, look.second,
                  {surface.fonts().small, palette::kSoftInk});
}

} // namespace

void sign(const StepPage& page, Event event) {
    const bool named = std::holds_alternative<Answered>(event) ||
                       std::holds_alternative<StepSkipped>(event) ||
                       std::holds_alternative<NutLineRead>(event);
    if ((named || page.job.use == Use::Bench) && !page.job.state.person) {
        page.surface.drafts().box = Drafts::Box::Who;
        return;
    }
    page.wish = Act{std::move(event)};
}

void addButton(StepPage& page, const std::string& label, const ButtonLook& look,
               std::function<void()> pressed) {
    const bool two = !look.second.empty();
    const double height = std::max(page.rowHeight(), page.surface.px(two ? 46.0 : 36.0));
    page.flow.row(height, [surface = &page.surface, label, look, second = std::string{look.second},
                           pressed = std::move(pressed)](const Area& area) {
        ButtonLook now = look;
        now.second = second;
        if (button(*surface, area, label, now))
            pressed();
    });
}

void addTick(StepPage& page, const TickLook& look, std::function<void()> pressed) {
    const Surface& surface = page.surface;
    ImFont* font = surface.bench ? surface.fonts().large : surface.fonts().body;
    const double width = page.flow.width() - surface.px(40.0);
    const double words =
        heightOf(width, look.words, font) + (look.second.empty() ? 0.0 : lineHeightOf(surface.fonts().small));
    page.flow.row(std::max(page.rowHeight(), words + surface.px(6.0)),
                  [s = &surface, look, pressed = std::move(pressed)](const Area& area) {
                      const Pressed hit = pressable(*s, look.id.c_str(), area);
                      if (hit.hovered && !look.ticked)
                          fillArea(area, palette::kShade, s->px(4.0));
                      drawTick(area, look, *s);
                      if (hit.done && !look.ticked)
                          pressed();
                  });
}

bool draftField(const StepPage& page, const std::string& name, const std::string& hint, const Area& area) {
    const Surface& surface = page.surface;
    const double y = area.y + (area.height - static_cast<double>(ImGui::GetFrameHeight())) / 2.0;
    ImGui::SetCursorScreenPos(point(area.x, y));
    ImGui::SetNextItemWidth(static_cast<float>(area.width));
    surface.frame.targets.push_back({surface.frame.scope + name, area});
    const std::string id = "##" + name;
    std::string& text = page.drafts().fields[name];
    const std::string before = text;
    const bool enter =
        ImGui::InputTextWithHint(id.c_str(), hint.c_str(), &text, ImGuiInputTextFlags_EnterReturnsTrue);
    if (text != before)
        page.drafts().faults.erase(name);
    return enter;
}

void addField(StepPage& page, const FieldLook& look, std::function<void(const std::string&)> said) {
    if (!look.label.empty()) {
        page.flow.text(Kind::Body, look.label);
        page.flow.keepsNext();
    }
    page.flow.row(std::max(page.rowHeight(), page.surface.px(40.0)),
                  [p = page, look, said = std::move(said)](const Area& area) {
                      const double width =
                          look.button.empty() ? 0.0 : std::max(p.surface.px(110.0), p.rowHeight());
                      const double gap = width > 0.0 ? p.surface.px(8.0) : 0.0;
                      const Area field{area.x, area.y, area.width - width - gap, area.height};
                      const bool enter = draftField(p, look.name, look.hint, field);
                      const bool pressed =
                          width > 0.0 && button(p.surface, {field.right() + gap, area.y, width, area.height},
                                                look.button, {.id = "say " + look.name});
                      if ((enter || pressed) && said)
                          said(p.drafts().fields[look.name]);
                  });
    const auto fault = page.drafts().faults.find(look.name);
    if (fault != page.drafts().faults.end()) {
        page.flow.keepsNext();
        addWarning(page, fault->second);
    }
}

void addWarning(StepPage& page, const std::string& words) {
    const Surface& surface = page.surface;
    ImFont* font = surface.bench ? surface.fonts().large : surface.fonts().body;
    const double width = page.flow.width() - surface.px(28.0);
    page.flow.row(
        heightOf(width, words, font) + surface.px(8.0), [s = &surface, words, font](const Area& area) {
            fillArea(area, palette::kBrokenLight, s->px(4.0));
            drawSign(DialSign::Broken, point(area.x + s->px(14.0), area.y + s->px(15.0)), s->px(8.0));
            writeLines({area.x + s->px(28.0), area.y + s->px(4.0), area.width - s->px(28.0), area.height},
                       words, {font, palette::kBroken});
        });
}

std::vector<std::string> peopleOf(const Job& job) {
    std::vector<std::string> people;
    const auto add = [&](const std::string& name) {
        if (!name.empty() && std::ranges::find(people, name) == people.end())
            people.push_back(name);
    };
    for (auto event = job.log.events.rbegin(); event != job.log.events.rend(); ++event) {
        if (const auto* came = std::get_if<PersonCame>(&*event))
            add(came->name);
        if (const auto* passed = std::get_if<HoldPointPassed>(&*event)) {
            add(passed->witness);
            add(passed->by);
        }
    }
    return people;
}

} // namespace gapwise
