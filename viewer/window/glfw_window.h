#pragma once

#include "geometry/base/result.h"

struct GLFWwindow;

namespace gapwise {

struct PixelSize {
    int width = 0;
    int height = 0;
};

/// The one window of the program with an OpenGL 3.3 core context, current from its making to its end.
class GlfwWindow {
public:
    /// An error names what this machine lacks: a display, or OpenGL 3.3. No hand makes it smaller than
    /// `least`.
    static Result<GlfwWindow> make(const PixelSize& size, const PixelSize& least);

    GlfwWindow(GlfwWindow&& other) noexcept;
    GlfwWindow& operator=(GlfwWindow&& other) noexcept;
    GlfwWindow(const GlfwWindow&) = delete;
    GlfwWindow& operator=(const GlfwWindow&) = delete;
    ~GlfwWindow();

    GLFWwindow* handle() const { return window_; }
    bool wantsToClose() const;
    void waitForEvents();     ///< Sleeps until a hand, a timer or the system wants something.
    void takeEvents();        ///< Takes what is there.
    PixelSize pixels() const; ///< Of what is drawn into.
    void show();              ///< Puts what was drawn on the screen.

    /// Pixels a millimetre of the monitor it stands on; 0 where the monitor does not say its size.
    double pixelsPerMm() const;

private:
    explicit GlfwWindow(GLFWwindow* window) : window_{window} {}
    GLFWwindow* window_ = nullptr;
};

} // namespace gapwise
