#pragma once

#include "models/frame/frame.h"
#include "viewer/scene/scene_of.h"

namespace gapwise {

/// What is left of a scene when everything but one part is taken away: the part where it sits, and its own
/// labels. Empty when the scene does not show it.
Scene aloneIn(const Scene& scene, const PartId& part);

/// How a part lies before the eye when nothing is around it.
enum class AloneAs {
    TheRulesWant, ///< Turned as it sits in the cartridge.
    ItIsMade      ///< Its index at the top, its reference face to the compressor: nothing is said of a rule.
};

/// A part by itself, its origin on the shaft's axis at 0. Empty when its type has no mesh.
Scene partAlone(const Frame& frame, const PartId& part, const Meshes& meshes, AloneAs as);

} // namespace gapwise
