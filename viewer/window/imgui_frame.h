#pragma once

#include "geometry/base/result.h"
#include "viewer/panels/panels.h"
#include "viewer/window/glfw_window.h"
#include "viewer/window/key_taps.h"
#include "viewer/window/picture_view.h"

#include <memory>

namespace gapwise {

/// Dear ImGui on the window: one frame of panels after another.
class ImguiFrame {
public:
    /// An error when a font is missing or the driver refuses ImGui's shaders.
    static Result<ImguiFrame> make(const GlfwWindow& window);

    ImguiFrame(ImguiFrame&& other) noexcept;
    ImguiFrame& operator=(ImguiFrame&&) = delete;
    ImguiFrame(const ImguiFrame&) = delete;
    ImguiFrame& operator=(const ImguiFrame&) = delete;
    ~ImguiFrame();

    /// Begins a frame and gives the size of what is drawn into, in pixels.
    PixelSize begin();
    /// Whether a hand did anything that this frame is the first to see: what it changes shows in later ones.
    bool handMoved() const;
    /// Draws what was asked for since begin. True when keys were let go in the meantime: another picture has
    /// to see that.
    bool end();

    /// The picture under all panels of this frame; rows of the texture run from the bottom.
    void placeTexture(unsigned texture, const Area& area);

    /// The mouse over an area; `free` tells whether no panel above it wants the mouse.
    PictureMouse mouseOver(const Area& area, bool free) const;

    const Fonts& fonts() const { return fonts_; }
    double uiScale() const { return uiScale_; }

private:
    ImguiFrame(const GlfwWindow& window, Fonts fonts, double uiScale);
    const GlfwWindow* window_ = nullptr; ///< Empty after a move.
    std::unique_ptr<KeyTaps> taps_{};    ///< Known to the window by its place in memory.
    Fonts fonts_{};
    double uiScale_ = 1.0;
};

} // namespace gapwise
