#pragma once

#include "models/frame/frame.h"

#include <string_view>

namespace gapwise {

/// What the reference face of a part is called: `rounded`, `marked`, …; `reference` when it has no name.
std::string_view faceWord(FaceKind kind);

/// What its other face is called: `sharp` against `rounded`, `plain` against `marked`, …
std::string_view otherFaceWord(FaceKind kind);

/// How to tell the two apart by hand or eye; empty when both are alike.
std::string_view faceTest(FaceKind kind);

} // namespace gapwise
