#pragma once

#include "viewer/picture/remarks.h"
#include "viewer/render/renderer.h"

namespace gapwise {

/// Writes the labels of the shot's scene where they belong in its picture, with thin leaders, none over
/// another.
void writeLabels(Paper& paper, const Shot& shot, const PictureLayout& layout);

} // namespace gapwise
