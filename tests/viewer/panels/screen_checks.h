#pragma once

#include "tests/viewer/panels/desk.h"

#include <array>

namespace gapwise {

/// The sizes of window that every screen is looked at in.
inline constexpr std::array<desk::Desk::Size, 3> kSizes{{{1366, 768}, {1280, 720}, {1920, 1080}}};

/// Everything that can be pressed is large enough for a gloved finger.
void expectForGloves(const desk::Desk& desk);

/// Everything that can be pressed is inside the window, and nothing of it lies over another; keeps a picture
/// of it.
void look(desk::Desk& desk, const desk::Desk::Size& size, const char* state);

} // namespace gapwise
