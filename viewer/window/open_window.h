#pragma once

#include "viewer/command/outcome.h"
#include "viewer/window/glfw_window.h"
#include "viewer/workplace/wish.h"

#include <filesystem>
#include <string>

namespace gapwise {

/// The window is never made smaller or larger than this.
constexpr PixelSize kLeastWindow{1024, 600};
constexpr PixelSize kMostWindow{7680, 4320};

/// What the window opens with.
struct OpenRequest {
    std::string what{}; ///< A frame's id or path, a build sheet, or empty: the opening screen, or the job
                        ///< that was cut off.
    Use use = Use::Practise; ///< What for, where `what` names something.
    PixelSize size{1366, 768};
    bool tellFigures = false; ///< Tell on standard error: time to the first picture, pictures drawn.
    std::filesystem::path
        targetsFile{}; ///< Where to write what can be pressed, after each picture; or empty.
};

/// Opens the window and stays until it is closed. `program` is the file of this process: its data lie beside
/// it. Errors are bad input, or what this machine lacks (a display, OpenGL 3.3, a place for the journal).
Outcome openWindow(const OpenRequest& request, const std::filesystem::path& program);

} // namespace gapwise
