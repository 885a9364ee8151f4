#pragma once

#include "geometry/datum/angle.h"
#include "geometry/datum/vector.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace gapwise {

/// The description of one part's shape, in the part's own axes: axis on Z, index at +Y, reference face toward
/// +Z, origin in the seat plane, millimetres. A body of revolution (rings and curves), rounded or chamfered
/// edges, blades, and then features: what is added and what is cut. `offset` is always clockwise from the
/// index, looking at the reference face. Numbers only; the solids are built elsewhere (geometry/solids).

/// From `from` to `to`, `from` < `to`, in mm.
struct Span {
    double from = 0.0;
    double to = 0.0;

    double length() const { return to - from; }
    double middle() const { return (from + to) / 2.0; }
    bool operator==(const Span&) const = default;
};

/// A diameter that may change evenly along Z: a cylinder when both are equal, else a cone.
struct Diameter {
    double atFrom = 0.0;
    double atTo = 0.0;
    bool operator==(const Diameter&) const = default;
};

/// r = r0 + r1·cos t, z = z0 + z1·sin t, t from 0 to 90°: a quarter ellipse in the (r, z) half plane.
struct QuarterEllipse {
    double r0 = 0.0, r1 = 0.0, z0 = 0.0, z1 = 0.0;
    double radiusAt(double z) const; ///< `z` between z0 and z0 + z1.
    bool operator==(const QuarterEllipse&) const = default;
};

/// A hexagon of this width across flats, one corner at the index.
struct AcrossFlats {
    double widthMm = 0.0;
    bool operator==(const AcrossFlats&) const = default;
};

using Outline = std::variant<Diameter, QuarterEllipse, AcrossFlats>;

/// The ring of material between bore and outside over a span of Z. A bore of 0 is solid.
struct RingBody {
    Outline bore = Diameter{};
    Outline outside = Diameter{};
    Span z{};
};

/// An edge of the body of revolution, named by its circle, that is rounded or chamfered before any feature is
/// made.
struct EdgeBreak {
    enum class Kind { Round, Chamfer };
    Kind kind = Kind::Round;
    double diameterMm = 0.0;
    double zMm = 0.0;
    double sizeMm = 0.0;        ///< Radius, or leg of the chamfer along the radius.
    Degrees chamferAngle{45.0}; ///< Between the chamfer and the axis: leg along Z = size / tan(angle).
};

/// A hole along a radius, or parallel to it.
struct RadialHole {
    double diameterMm = 0.0;
    Span r{};
    double zMm = 0.0;
    double asideMm = 0.0; ///< From that radius, clockwise looking at the reference face.
};

/// A hole along the axis, its centre on `circleRadiusMm`.
struct AxialHole {
    double diameterMm = 0.0;
    double circleRadiusMm = 0.0;
    Span z{};
};

/// A straight hole in the half plane of its offset, from one (r, z) to another.
struct InclinedHole {
    double diameterMm = 0.0;
    double fromR = 0.0, fromZ = 0.0, toR = 0.0, toZ = 0.0;
};

/// A parallel-sided block, `widthMm` across, standing on the radius of its offset between `r` (measured along
/// that radius).
struct Slot {
    double widthMm = 0.0;
    Span r{};
    Span z{};
    double asideMm = 0.0; ///< Of its middle from that radius, clockwise looking at the reference face.
};

/// A hexagonal hole along the axis, this wide across flats, its centre on `circleRadiusMm`; a corner looks
/// outward.
struct HexHole {
    double widthMm = 0.0;
    double circleRadiusMm = 0.0;
    Span z{};
};

/// A straight guide vane of constant thickness: a plate from `r.to` at its offset inward to `r.from`, which
/// lies `lead` further on, clockwise looking at the reference face.
struct Vane {
    double thicknessMm = 0.0;
    Span r{};
    Degrees lead{0.0};
    Span z{};
};

/// A wedge of `angle`, centred on its offset.
struct Sector {
    Degrees angle{0.0};
    Span r{};
    Span z{};
};

/// A ring of revolution, with possibly conical walls.
struct Groove {
    Diameter bore{};
    Diameter outside{};
    Span z{};
};

/// The stepped joint of a seal ring at the index: no straight way through. Over half the width the opening
/// lies `overlap`/2 to one side, over the other half to the other; each opening is `gapMm` wide.
struct SteppedJoint {
    double gapMm = 0.0;
    double overlapMm = 0.0;
};

/// An arrow in the face at `faceZMm`, pointing outward along its offset, from r.from to its tip at r.to.
struct ArrowMark {
    Span r{};
    double widthMm = 0.0;
    double depthMm = 0.0;
    double faceZMm = 0.0;
};

/// Capital letters and digits in the face at `faceZMm`, upright when their offset points up and the face is
/// looked at.
struct LetterMark {
    std::string text{};
    double heightMm = 0.0;
    double radiusMm = 0.0; ///< Of the middle of the text.
    double depthMm = 0.0;
    double faceZMm = 0.0;
    bool looksToReference = true; ///< The face that carries it looks to +Z (true) or to -Z.
};

using FeatureForm = std::variant<RadialHole, AxialHole, InclinedHole, Slot, HexHole, Vane, Sector, Groove,
                                 SteppedJoint, ArrowMark, LetterMark>;

/// Something added to or cut from the body, once or in an even circle.
struct Feature {
    std::string id{};   ///< Empty when nothing speaks of it.
    std::string name{}; ///< In words, for findings and cards: `spill slot CO`.
    enum class Does { Cut, Add };
    Does does = Does::Cut;
    FeatureForm form = Slot{};
    Degrees offset{0.0};
    int count = 1; ///< Evenly divided over the circle from `offset` on.
};

/// Blades of constant thickness: blade surface at θ = θ_k + lean·(z - zFrom)/(zTo - zFrom), holding all (r,
/// z) between the hub curve (sunk into it) and the edge curve, capped at `tipRadius` beyond the edge curve's
/// range.
struct Blades {
    int count = 0;
    double thicknessMm = 0.0;
    Degrees first{0.0};
    Degrees lean{0.0};
    double zFrom = 0.0; ///< Where the blade meets the rim of the hub.
    double zTo = 0.0;   ///< Where the blade ends; lean is measured between both.
    double reach = 1.0; ///< Share of the way from zFrom to zTo that the blade goes: 0.6 for a splitter.
    QuarterEllipse hub{};
    QuarterEllipse edge{};
    std::optional<Span>
        inletEdgeZ{}; ///< A straight inlet edge at the largest radius over this span, where there is one.
};

/// An outside thread. The solid is the cylinder of its nominal size; the thread itself is drawn as the helix
/// of its crest, so that its hand can be seen.
struct Thread {
    double diameterMm = 0.0;
    double pitchMm = 0.0;
    Span z{};
    bool leftHand = false;
};

/// A part may have no rings: then it begins with the first feature, which adds.
struct Shape {
    std::vector<RingBody> rings{};
    std::vector<EdgeBreak> edges{};
    std::vector<Blades> blades{};
    std::vector<Feature> features{}; ///< In the order they are made; additions before cuts where they meet.
    std::vector<Thread> threads{};
};

/// Half the angle that a width covers on a circle of this diameter: asin(w / D). The width must not exceed
/// the diameter.
Degrees halfAngleOf(double widthMm, double diameterMm);

/// The two ends of a vane's middle line in the plane across the axis, its offset at +Y.
struct VaneLine {
    Vec3 inner{};
    Vec3 outer{};
};
VaneLine lineOf(const Vane& vane);

/// Radial and axial reach of a feature's form, and its width square to the radius, in mm.
struct Extent {
    Span r{};
    Span z{};
    double widthMm = 0.0;
};
Extent extentOf(const FeatureForm& form);

} // namespace gapwise
