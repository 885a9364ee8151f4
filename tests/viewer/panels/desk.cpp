#include "tests/viewer/panels/desk.h"

#include "tests/viewer/panels/panel_picture.h"

#include <gtest/gtest.h>
#include <imgui.h>

#include <algorithm>
#include <cstdlib>

namespace gapwise::desk {

Desk::Desk(Size size) : context_{ImGui::CreateContext()} {
    ImGuiIO& io = ImGui::GetIO();
    io.DisplaySize = {static_cast<float>(size.width), static_cast<float>(size.height)};
    io.DeltaTime = 1.0F / 60.0F;
    panels.uiScale = suggestedScale(size.width, size.height);
    applyStyle(panels.uiScale);
    for (int key = 0; key < ImGuiKey_COUNT; ++key)
        io.KeyMap[key] = key;
    const Result<Fonts> fonts = loadFonts(*io.Fonts, panels.uiScale);
    EXPECT_TRUE(fonts) << (fonts ? "" : describe(fonts.errors().front()));
    if (fonts)
        panels.fonts = *fonts;
    frames(2);
}

Desk::~Desk() {
    ImGui::DestroyContext(context_);
}

void Desk::start(const std::string& frameId, Use use) {
    at.start(frameId, use);
    frames(2);
}

void Desk::startSheet(const std::string& sheet, Use use) {
    at.startSheet(sheet, use);
    frames(2);
}

void Desk::frame() {
    ImGui::NewFrame();
    const std::optional<Wish> wish = showPanels(workplace, panels);
    ImGui::Render();
    if (!wish)
        return;
    wishes.push_back(*wish);
    grant(workplace, *wish);
}

void Desk::frames(int count) {
    for (int i = 0; i < count; ++i)
        frame();
}

void Desk::moveTo(double x, double y) {
    ImGui::GetIO().MousePos = {static_cast<float>(x), static_cast<float>(y)};
    frame();
}

void Desk::press() {
    ImGui::GetIO().MouseDown[0] = true;
    frame();
}

void Desk::release() {
    ImGui::GetIO().MouseDown[0] = false;
    frame();
}

void Desk::clickAt(double x, double y) {
    moveTo(x, y);
    frame();
    press();
    release();
    frame();
}

void Desk::click(std::string_view target) {
    const Area area = areaOf(target);
    ASSERT_FALSE(area.empty()) << "nothing is named " << target;
    clickAt(area.middleX(), area.middleY());
}

void Desk::type(std::string_view letters) {
    for (const char letter : letters)
        ImGui::GetIO().AddInputCharacter(static_cast<unsigned char>(letter));
    frames(2);
}

void Desk::key(ImGuiKey key, bool ctrl) {
    ImGuiIO& io = ImGui::GetIO();
    io.KeyCtrl = ctrl;
    io.KeyMods = ctrl ? ImGuiKeyModFlags_Ctrl : ImGuiKeyModFlags_None;
    io.KeysDown[key] = true;
    frame();
    io.KeysDown[key] = false;
    io.KeyCtrl = false;
    io.KeyMods = ImGuiKeyModFlags_None;
    frame();
}

Area Desk::areaOf(std::string_view target) const {
    const auto found = std::ranges::find(panels.targets, target, &Target::name);
    return found == panels.targets.end() ? Area{} : found->area;
}

Layout Desk::layout() const {
    const ImVec2 size = ImGui::GetIO().DisplaySize;
    return layoutOf({.width = static_cast<double>(size.x),
                     .height = static_cast<double>(size.y),
                     .uiScale = panels.uiScale,
                     .cardOpen = workplace.job && workplace.job->cardOpen(),
                     .tallCard = workplace.job && workplace.job->cardOpen() && !workplace.job->inHand,
                     .bench = workplace.job && workplace.job->use == Use::Bench});
}

void Desk::picture(const std::string& name) {
    const char* folder = std::getenv("GAPWISE_PANEL_PICTURES");
    if (!folder)
        return;
    EXPECT_TRUE(writePanelPicture(*ImGui::GetDrawData(), *ImGui::GetIO().Fonts,
                                  std::filesystem::path{folder} / (name + ".png")));
}

} // namespace gapwise::desk
