#include "viewer/window/imgui_frame.h"

#include "viewer/panels/layout.h"

#include <GLFW/glfw3.h>
#include <backends/imgui_impl_glfw.h>
#include <backends/imgui_impl_opengl3.h>
#include <imgui.h>

#include <cstdint>
#include <utility>

namespace gapwise {

namespace {

void onKey(GLFWwindow* window, int key, int scancode, int action, int mods) {
    auto* taps = static_cast<KeyTaps*>(glfwGetWindowUserPointer(window));
    if (taps && action == GLFW_PRESS)
        taps->pressed(key);
    if (!taps || action != GLFW_RELEASE || taps->mayRelease(key))
        ImGui_ImplGlfw_KeyCallback(window, key, scancode, action, mods);
}

} // namespace

Result<ImguiFrame> ImguiFrame::make(const GlfwWindow& window) {
    IMGUI_CHECKVERSION();
    ImGui::CreateContext();
    ImGuiIO& io = ImGui::GetIO();
    io.IniFilename = nullptr;
    io.ConfigInputTextCursorBlink = false;
    const PixelSize pixels = window.pixels();
    const double scale = suggestedScale(pixels.width, pixels.height);
    const Result<Fonts> fonts = loadFonts(*io.Fonts, scale);
    if (!fonts) {
        ImGui::DestroyContext();
        return fonts.errors();
    }
    applyStyle(scale);
    ImGui_ImplGlfw_InitForOpenGL(window.handle(), true);
    glfwSetKeyCallback(window.handle(), onKey);
    ImGui_ImplOpenGL3_Init("#version 330 core");
    return ImguiFrame{window, *fonts, scale};
}

ImguiFrame::ImguiFrame(const GlfwWindow& window, Fonts fonts, double uiScale)
    : window_{&window}, taps_{std::make_unique<KeyTaps>()}, fonts_{fonts}, uiScale_{uiScale} {
    glfwSetWindowUserPointer(window.handle(), taps_.get());
}

ImguiFrame::ImguiFrame(ImguiFrame&& other) noexcept
    : window_{std::exchange(other.window_, nullptr)},
      taps_{std::move(other.taps_)},
      fonts_{other.fonts_},
      uiScale_{other.uiScale_} {}

ImguiFrame::~ImguiFrame() {
    if (!window_)
        return;
    ImGui_ImplOpenGL3_Shutdown();
    ImGui_ImplGlfw_Shutdown();
    ImGui::DestroyContext();
}

PixelSize ImguiFrame::begin() {
    ImGui_ImplOpenGL3_NewFrame();
    ImGui_ImplGlfw_NewFrame();
    ImGui::NewFrame();
    return window_->pixels();
}

bool ImguiFrame::handMoved() const {
    const ImGuiIO& io = ImGui::GetIO();
    const bool pointer = io.MouseDelta.x != 0.0F || io.MouseDelta.y != 0.0F || io.MouseWheel != 0.0F;
    const auto button = [](ImGuiMouseButton each) {
        return ImGui::IsMouseClicked(each) || ImGui::IsMouseReleased(each);
    };
    const bool buttons = button(ImGuiMouseButton_Left) || button(ImGuiMouseButton_Right);
    bool keys = io.InputQueueCharacters.Size > 0;
    for (int key = 0; key < IM_ARRAYSIZE(io.KeysDown) && !keys; ++key)
        keys = ImGui::IsKeyPressed(key) || ImGui::IsKeyReleased(key);
    return pointer || buttons || keys;
}

bool ImguiFrame::end() {
    ImGui::Render();
    ImGui_ImplOpenGL3_RenderDrawData(ImGui::GetDrawData());
    const std::vector<int> released = taps_->seen();
    for (const int key : released)
        ImGui_ImplGlfw_KeyCallback(window_->handle(), key, 0, GLFW_RELEASE, 0);
    return !released.empty();
}

void ImguiFrame::placeTexture(unsigned texture, const Area& area) {
    const ImVec2 from{static_cast<float>(area.x), static_cast<float>(area.y)};
    const ImVec2 to{static_cast<float>(area.right()), static_cast<float>(area.bottom())};
    // The texture's rows run from the bottom: v is turned over. ImGui's texture names are pointers by
    // contract.
    ImGui::GetBackgroundDrawList()->AddImage(
        reinterpret_cast<ImTextureID>(static_cast<std::uintptr_t>(texture)), from, to, {0.0F, 1.0F},
        {1.0F, 0.0F});
}

PictureMouse ImguiFrame::mouseOver(const Area& area, bool free) const {
    const ImGuiIO& io = ImGui::GetIO();
    PictureMouse mouse;
    mouse.x = static_cast<double>(io.MousePos.x) - area.x;
    mouse.y = static_cast<double>(io.MousePos.y) - area.y;
    mouse.inside =
        free && area.contains(static_cast<double>(io.MousePos.x), static_cast<double>(io.MousePos.y));
    mouse.leftPressed = ImGui::IsMouseClicked(ImGuiMouseButton_Left);
    mouse.leftDown = ImGui::IsMouseDown(ImGuiMouseButton_Left);
    mouse.leftReleased = ImGui::IsMouseReleased(ImGuiMouseButton_Left);
    mouse.rightDown = ImGui::IsMouseDown(ImGuiMouseButton_Right);
    mouse.movedX = static_cast<double>(io.MouseDelta.x);
    mouse.movedY = static_cast<double>(io.MouseDelta.y);
    mouse.wheel = mouse.inside ? static_cast<double>(io.MouseWheel) : 0.0;
    return mouse;
}

} // namespace gapwise
