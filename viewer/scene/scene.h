#pragma once

/// What a picture of a cartridge consists of, with no word of how it is drawn: posed parts with their tints
/// and states, a camera, texts anchored in space. Pictures on disk and the window draw the same scene.

#include "geometry/datum/datum.h"
#include "geometry/mesh/mesh.h"
#include "models/frame/ids.h"
#include "viewer/scene/camera.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace gapwise {

/// A colour as it is shown: sRGB, each part in [0, 1].
struct Colour {
    double red = 0.0;
    double green = 0.0;
    double blue = 0.0;
    bool operator==(const Colour&) const = default;
};

/// What one item is drawn with, in the part's own axes.
struct DrawnMesh {
    PartMesh body{};        ///< What the section leaves, or all of it.
    TriangleMesh caps{};    ///< The cut faces of a section.
    EdgeLines cutOutline{}; ///< The borders of the cut faces.
};

/// How an item stands out. State is never colour alone: a label with a sign and a word goes with it.
enum class ItemState {
    Plain,
    NotKnown, ///< Its clock or its face is not known: drawn striped, at an angle that means nothing.
    Broken    ///< A rule about it is broken.
};

/// Hatching of an item's cut faces, told apart from its neighbours'.
struct Hatch {
    Degrees angle{45.0};  ///< Counter-clockwise from the shaft, in the plane of the section.
    double spacing = 1.0; ///< In units of the picture's usual spacing.
};

/// One part as it is drawn.
struct SceneItem {
    PartId part{};
    SeatId seat{}; ///< Where it sits, which need not be the seat meant for it.
    std::shared_ptr<const DrawnMesh>
        mesh{}; ///< Shared by parts of one type, and with what keeps it on the GPU.
    std::shared_ptr<const DrawnMesh> whole{}; ///< What a section cut; null where nothing was cut.
    Pose pose{};                              ///< Where it sits when assembled.
    double pulledMm = 0.0;                    ///< Along the shaft, positive toward the compressor.
    Colour tint{};
    ItemState state = ItemState::Plain;
    Hatch hatch{};
    bool inHand = false; ///< Tinted with the accent, and its edges shine through whatever hides it.

    /// Where it is drawn: the pose, pulled along the shaft.
    Pose drawnPose() const;
    /// The mesh before a section.
    const DrawnMesh& uncut() const { return whole ? *whole : *mesh; }
};

/// A text that belongs to a point in space.
struct SceneLabel {
    enum class Kind {
        End,      ///< The name of an end: TURBINE or COMPRESSOR, beyond the last part.
        Port,     ///< `inlet` or `drain`, at its pad.
        Part,     ///< The id of a part.
        Broken,   ///< A part with a broken rule.
        NotKnown, ///< A part of which something is not known.
    };
    Kind kind = Kind::Part;
    std::string text{};
    Vec3 anchor{}; ///< In the datum axes, in mm.
};

/// What everything stands over. The axes are columns in the datum axes: right, up, and toward whoever stands
/// in front; how deep the ground lies follows from what is drawn.
struct Ground {
    Pose axes{};
    bool benchTop = false; ///< A bench top is drawn, its front toward the person.
};

struct Scene {
    std::vector<SceneItem> items{};
    std::vector<SceneLabel> labels{};
    bool section = false;
    Ground ground{};

    /// The item of a part; null when it is not shown.
    const SceneItem* item(const PartId& part) const;

    /// Every corner of every mesh as it is pulled apart, in the datum axes; empty when nothing is shown. What
    /// a section took away counts: the picture and the bench stay where they are while the cut turns.
    std::vector<Vec3> points() const;
};

/// Where the bench top lies under what a scene draws.
struct BenchTop {
    Vec3 middle{};          ///< Of the top, in the datum axes.
    double halfWidth = 0.0; ///< Along the ground's right, in mm.
    double halfDepth = 0.0; ///< Toward the person, in mm.
};

/// The bench top that is a hand's breadth wider than what stands on it; nothing for an empty scene.
std::optional<BenchTop> benchTopOf(const Scene& scene);

/// The motion of a part as it is told in the ground's axes.
Pose inGroundAxes(const Ground& ground, const Pose& pose);

} // namespace gapwise
