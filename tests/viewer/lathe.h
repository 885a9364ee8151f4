#pragma once

#include "geometry/mesh/mesh.h"

#include <vector>

namespace gapwise::lathe {

/// A ring of material about Z, in mm, with a gap of so many degrees at +Y (0 is a closed ring).
struct Ring {
    double boreRadius = 0.0; ///< 0 is a solid disc.
    double outerRadius = 1.0;
    double zFrom = 0.0;
    double zTo = 1.0;
    double gapDeg = 0.0;
};

/// A closed mesh of each ring, its circles (and the corners of its gap) as true edges. `sides` pieces a turn.
PartMesh turned(const std::vector<Ring>& rings, int sides = 96);

/// Area of the regular polygon ring that `turned` makes of a closed ring, at right angles to Z.
double polygonRingArea(const Ring& ring, int sides);

} // namespace gapwise::lathe
