#include "viewer/window/glfw_window.h"

#include <epoxy/gl.h>

#include <GLFW/glfw3.h>

#include <string>
#include <utility>

namespace gapwise {

namespace {

constexpr int kNeededVersion = 33;

std::string lastError() {
    const char* words = nullptr;
    return glfwGetError(&words) == GLFW_NO_ERROR || !words ? "no reason given" : words;
}

} // namespace

Result<GlfwWindow> GlfwWindow::make(const PixelSize& size, const PixelSize& least) {
    if (glfwInit() != GLFW_TRUE)
        return Error{
            .where = "window", .found = lastError(), .allowed = "a display (DISPLAY or WAYLAND_DISPLAY)"};
    glfwWindowHint(GLFW_CONTEXT_VERSION_MAJOR, 3);
    glfwWindowHint(GLFW_CONTEXT_VERSION_MINOR, 3);
    glfwWindowHint(GLFW_OPENGL_PROFILE, GLFW_OPENGL_CORE_PROFILE);
    glfwWindowHint(GLFW_OPENGL_FORWARD_COMPAT, GLFW_TRUE);
    GLFWwindow* window = glfwCreateWindow(size.width, size.height, "Gapwise", nullptr, nullptr);
    if (!window) {
        const std::string why = lastError();
        glfwTerminate();
        return Error{
            .where = "window", .found = why, .allowed = "OpenGL 3.3 (a driver, or Mesa's software one)"};
    }
    GlfwWindow made{window};
    glfwMakeContextCurrent(window);
    if (glfwGetCurrentContext() != window || epoxy_gl_version() < kNeededVersion)
        return Error{.where = "window",
                     .found = "OpenGL " + std::to_string(epoxy_gl_version() / 10) + "." +
                              std::to_string(epoxy_gl_version() % 10),
                     .allowed = "OpenGL 3.3 or newer"};
    glfwSetWindowSizeLimits(window, least.width, least.height, GLFW_DONT_CARE, GLFW_DONT_CARE);
    glfwSwapInterval(1);
    return made;
}

GlfwWindow::GlfwWindow(GlfwWindow&& other) noexcept : window_{std::exchange(other.window_, nullptr)} {}

GlfwWindow& GlfwWindow::operator=(GlfwWindow&& other) noexcept {
    std::swap(window_, other.window_);
    return *this;
}

GlfwWindow::~GlfwWindow() {
    if (!window_)
        return;
    glfwDestroyWindow(window_);
    glfwTerminate();
}

bool GlfwWindow::wantsToClose() const {
    return glfwWindowShouldClose(window_) == GLFW_TRUE;
}

void GlfwWindow::waitForEvents() {
    glfwWaitEvents();
}

void GlfwWindow::takeEvents() {
    glfwPollEvents();
}

PixelSize GlfwWindow::pixels() const {
    PixelSize pixels;
    glfwGetFramebufferSize(window_, &pixels.width, &pixels.height);
    return pixels;
}

void GlfwWindow::show() {
    glfwSwapBuffers(window_);
}

double GlfwWindow::pixelsPerMm() const {
    GLFWmonitor* monitor = glfwGetPrimaryMonitor();
    const GLFWvidmode* mode = monitor ? glfwGetVideoMode(monitor) : nullptr;
    int widthMm = 0;
    int heightMm = 0;
    if (monitor)
        glfwGetMonitorPhysicalSize(monitor, &widthMm, &heightMm);
    return mode && widthMm > 0 ? static_cast<double>(mode->width) / widthMm : 0.0;
}

} // namespace gapwise
