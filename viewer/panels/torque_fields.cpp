#include "viewer/panels/torque_parts.h"

#include <imgui_stdlib.h>

#include <algorithm>

namespace gapwise {

bool typeField(const Surface& surface, const Area& area, const TorqueFieldLook& look, std::string& text) {
    const double label = surface.px(18.0);
    const bool wrong = !look.fault.empty();
    writeLine({area.x, area.y, area.width, label}, wrong ? look.fault : look.label,
              {surface.fonts().small, wrong ? palette::kBroken : palette::kSoftInk});
    const Area field{area.x, area.y + label, area.width, area.height - label};
    ImFont* font = surface.fonts().large;
    if (font)
        ImGui::PushFont(font);
    const double padding = (field.height - static_cast<double>(ImGui::GetFontSize())) / 2.0;
    ImGui::PushStyleVar(ImGuiStyleVar_FramePadding, point(surface.px(8.0), std::max(0.0, padding)));
    ImGui::SetCursorScreenPos(point(field.x, field.y));
    ImGui::SetNextItemWidth(static_cast<float>(field.width));
    surface.frame.targets.push_back({surface.frame.scope + look.id, field});
    const std::string id = std::string{"##"} + look.id;
    const bool enter = ImGui::InputText(id.c_str(), &text, ImGuiInputTextFlags_EnterReturnsTrue);
    ImGui::PopStyleVar();
    if (font)
        ImGui::PopFont();
    if (wrong)
        frameArea(field, palette::kBroken, surface.px(5.0), 2.0);
    return enter;
}

double drawFacts(const Area& area, const std::vector<FactLine>& lines, const Surface& surface) {
    ImFont* font = wordFont(surface);
    const double names = surface.px(surface.bench ? 132.0 : 104.0);
    double used = 0.0;
    for (const FactLine& line : lines) {
        const double y = area.y + used;
        const double left = area.bottom() - y;
        if (left < lineHeightOf(font))
            break;
        writeLine({area.x, y, names, lineHeightOf(font)}, line.what, {font, palette::kSoftInk});
        used += writeLines({area.x + names, y, area.width - names, left}, line.words, {font});
        used += surface.px(3.0);
    }
    return used;
}

void drawTurn(const Round& round, Sense sense, const Stroke& stroke) {
    constexpr Degrees kEnd{140.0};
    const bool clockwise = sense == Sense::Clockwise;
    const double head = stroke.thickness * 2.6;
    const Degrees headTurn{degreesFromRadians(head / std::max(round.radius, 1.0)).value};
    const Degrees end = clockwise ? kEnd : -kEnd;
    const Degrees back = clockwise ? end - headTurn : end + headTurn;
    drawArc(round,
            clockwise ? Arc{wrapped(-kEnd), Degrees{kEnd.value + back.value}}
                      : Arc{wrapped(back), Degrees{kEnd.value - back.value}},
            stroke);
    const double half = stroke.thickness * 1.5;
    const ImVec2 outer = round.withRadius(round.radius + half).at(back);
    const ImVec2 inner = round.withRadius(round.radius - half).at(back);
    ink().AddTriangleFilled(round.at(end), outer, inner, stroke.colour);
}

} // namespace gapwise
