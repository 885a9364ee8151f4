#pragma once

#include "geometry/base/result.h"
#include "models/build/build.h"
#include "models/check/check.h"
#include "models/frame/frame.h"
#include "models/frame/read_frame.h"
#include "viewer/scene/scene.h"
#include "viewer/scene/section_cuts.h"

#include <cstdint>
#include <map>
#include <memory>
#include <optional>

namespace gapwise {

/// What each part type of a frame is drawn with.
using Meshes = std::map<PartTypeId, std::shared_ptr<const DrawnMesh>>;

struct SceneOptions {
    double explode = 0.0; ///< 0 is the assembled pose, 1 wholly pulled apart.
    std::optional<Section> section{};
    SectionCuts* cuts = nullptr;      ///< Keeps what was cut from one scene to the next.
    bool casings = false;             ///< Shows the casings that are in place; they hide the cartridge.
    const Checked* checked = nullptr; ///< Marks the parts that its findings name; none are marked without it.
    std::uint32_t seed = 1;           ///< For the angle at which a part of unknown clock is drawn.
};

/// The cartridge as the build has it: the housing and every part that sits in a seat, each in its pose
/// through everything that carries it. What is not known (a clock, a face) is drawn at a seeded angle and
/// marked. A part whose type has no mesh is left out.
Scene sceneOf(const Frame& frame, const Build& build, const Meshes& meshes, const SceneOptions& options);

/// How a tint of a frame file looks; an unknown name is drawn as steel.
Colour tintOf(std::string_view name);

} // namespace gapwise
