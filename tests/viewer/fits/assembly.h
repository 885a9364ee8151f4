#pragma once

#include "geometry/datum/pose.h"
#include "geometry/mesh/mesh.h"
#include "models/frame/frame.h"

#include <optional>
#include <string>
#include <vector>

namespace gapwise::test {

/// One part of the assembled cartridge: its shape and its pose, as it is drawn.
struct Placed {
    PartId part{};
    const PartType* type = nullptr;
    Pose pose{};

    Vec3 own(const Vec3& point) const;   ///< From the datum axes to the part's own.
    bool holds(const Vec3& point) const; ///< Whether a point of the datum axes lies in its material.
};

/// A bundled frame with everything in its seat, the rotor pushed toward the compressor.
struct Assembly {
    Frame frame{};
    std::vector<Placed> parts{};

    const Placed* find(const std::string& id) const;
    /// A part that must be there: a failed test, and the first part, where it is not.
    const Placed& at(const std::string& id) const;
};

const Assembly& assemblyOf(const std::string& frame);

/// What a part is drawn with, in the datum axes.
TriangleMesh drawnIn(const Assembly& assembly, const Placed& placed);

/// A place beside the shaft: radius in mm, and degrees clockwise from the top seen from the compressor.
struct Beside {
    double r = 0.0;
    double clock = 0.0;
};

/// The material of a part along a line parallel to the shaft, from the numbers alone: spans of z in the datum
/// axes, exact to 1e-9 mm. What is thinner than 0.02 mm may be missed.
std::vector<Span> alongShaft(const Placed& placed, const Beside& place);

/// The lowest and the highest z of a part's material there; a failed test where it has none.
Span reachAlong(const Placed& placed, const Beside& place);

/// The smallest radius of a part's material at a z, toward a clock; a failed test where it has none.
double innerRadiusAt(const Placed& placed, double z, double clock);

} // namespace gapwise::test
