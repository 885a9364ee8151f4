#include "viewer/panels/fonts.h"
#include "viewer/panels/palette.h"

#include <imgui.h>

namespace gapwise {

void applyStyle(double uiScale) {
    ImGui::GetIO().ConfigFlags |= ImGuiConfigFlags_NavEnableKeyboard;
    ImGui::GetIO().IniFilename = nullptr;
    ImGuiStyle style;
    ImGui::StyleColorsLight(&style);
    style.WindowPadding = {0.0F, 0.0F};
    style.WindowBorderSize = 0.0F;
    style.ChildBorderSize = 0.0F;
    style.WindowMinSize = {1.0F, 1.0F};
    style.FrameRounding = 5.0F;
    style.FrameBorderSize = 1.0F;
    style.FramePadding = {8.0F, 8.0F};
    style.ScrollbarSize = 14.0F;
    style.DisabledAlpha = 1.0F;
    style.ScaleAllSizes(static_cast<float>(uiScale));
    const auto set = [&](ImGuiCol what, ImU32 colour) {
        style.Colors[what] = ImGui::ColorConvertU32ToFloat4(colour);
    };
    set(ImGuiCol_Text, palette::kInk);
    set(ImGuiCol_WindowBg, palette::kPaper);
    set(ImGuiCol_FrameBg, palette::kSheet);
    set(ImGuiCol_Border, palette::kHairline);
    set(ImGuiCol_NavHighlight, palette::kAccent);
    set(ImGuiCol_TextSelectedBg, palette::kAccentLight);
    ImGui::GetStyle() = style;
}

} // namespace gapwise
