#pragma once

#include "geometry/base/result.h"

namespace gapwise {

/// An OpenGL 3.3 core context that needs no display and no window, current from its making to its end. Only
/// one at a time in a thread.
class OffscreenContext {
public:
    /// An error names what this machine lacks: EGL, its surfaceless platform, or OpenGL 3.3.
    static Result<OffscreenContext> make();

    OffscreenContext(OffscreenContext&& other) noexcept;
    OffscreenContext& operator=(OffscreenContext&& other) noexcept;
    OffscreenContext(const OffscreenContext&) = delete;
    OffscreenContext& operator=(const OffscreenContext&) = delete;
    ~OffscreenContext();

private:
    OffscreenContext(void* display, void* context) : display_{display}, context_{context} {}
    void* display_ = nullptr; ///< The library's handles are pointers; empty after a move.
    void* context_ = nullptr;
};

} // namespace gapwise
