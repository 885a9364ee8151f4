#include "viewer/render/offscreen.h"

#include <epoxy/egl.h>
#include <epoxy/gl.h>

#include <fmt/format.h>

#include <array>
#include <utility>

namespace gapwise {

namespace {

constexpr const char* kNeeded = "EGL with the surfaceless platform and OpenGL 3.3 core (Debian: libegl1 and "
                                "libgl1-mesa-dri draw in software)";

Error lacking(std::string found) {
    return {.where = "OpenGL", .found = std::move(found), .allowed = kNeeded};
}

/// The library aborts the process where a function has no provider, so each is asked for before it is called.
bool hasSurfacelessEgl() {
    return epoxy_has_egl() && epoxy_has_egl_extension(EGL_NO_DISPLAY, "EGL_EXT_platform_base") &&
           epoxy_has_egl_extension(EGL_NO_DISPLAY, "EGL_MESA_platform_surfaceless");
}

EGLContext makeContext(EGLDisplay display) {
    constexpr std::array<EGLint, 5> kConfigWishes{EGL_RENDERABLE_TYPE, EGL_OPENGL_BIT, EGL_SURFACE_TYPE,
                                                  EGL_PBUFFER_BIT, EGL_NONE};
    constexpr std::array<EGLint, 7> kContextWishes{EGL_CONTEXT_MAJOR_VERSION,
                                                   3,
                                                   EGL_CONTEXT_MINOR_VERSION,
                                                   3,
                                                   EGL_CONTEXT_OPENGL_PROFILE_MASK,
                                                   EGL_CONTEXT_OPENGL_CORE_PROFILE_BIT,
                                                   EGL_NONE};
    EGLConfig config = nullptr;
    EGLint count = 0;
    if (!eglBindAPI(EGL_OPENGL_API) || !eglChooseConfig(display, kConfigWishes.data(), &config, 1, &count) ||
        count < 1)
        return EGL_NO_CONTEXT;
    return eglCreateContext(display, config, EGL_NO_CONTEXT, kContextWishes.data());
}

} // namespace

Result<OffscreenContext> OffscreenContext::make() {
    if (!hasSurfacelessEgl())
        return lacking("no EGL with a surfaceless platform");
    EGLDisplay display = eglGetPlatformDisplayEXT(EGL_PLATFORM_SURFACELESS_MESA, nullptr, nullptr);
    if (display == EGL_NO_DISPLAY || !eglInitialize(display, nullptr, nullptr))
        return lacking("an EGL that does not start");
    EGLContext context = makeContext(display);
    OffscreenContext owner{display, context};
    if (context == EGL_NO_CONTEXT)
        return lacking(fmt::format("no OpenGL 3.3 core context (EGL error {:#x})", eglGetError()));
    if (!eglMakeCurrent(display, EGL_NO_SURFACE, EGL_NO_SURFACE, context))
        return lacking("an EGL that draws only to a surface");
    constexpr int kVersion = 33;
    if (epoxy_gl_version() < kVersion)
        return lacking(fmt::format("OpenGL {:.1f}", epoxy_gl_version() / 10.0));
    return owner;
}

OffscreenContext::OffscreenContext(OffscreenContext&& other) noexcept
    : display_{std::exchange(other.display_, nullptr)}, context_{std::exchange(other.context_, nullptr)} {}

OffscreenContext& OffscreenContext::operator=(OffscreenContext&& other) noexcept {
    std::swap(display_, other.display_);
    std::swap(context_, other.context_);
    return *this;
}

OffscreenContext::~OffscreenContext() {
    if (!display_)
        return;
    eglMakeCurrent(display_, EGL_NO_SURFACE, EGL_NO_SURFACE, EGL_NO_CONTEXT);
    if (context_)
        eglDestroyContext(display_, context_);
    eglTerminate(display_);
}

} // namespace gapwise
