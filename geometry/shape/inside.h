#pragma once

#include "geometry/datum/vector.h"
#include "geometry/shape/shape.h"

namespace gapwise {

/// Whether a point in the part's own axes lies in the material, straight from the numbers: no solid is built,
/// so that solids can be checked against it. Broken edges, blades, letters and arrows are left out (the body
/// counts as whole there), the slit between the lands of a stepped joint too.
bool isInside(const Shape& shape, const Vec3& point);

/// Volume of the material by counting about `points` evenly spread points, in mm³, with the same omissions.
/// Off by a few tenths of a per cent at 100 000 points.
double countedVolume(const Shape& shape, int points);

/// An upper bound of what `isInside` leaves out, in mm³: broken edges, letters and arrows.
double omittedVolume(const Shape& shape);

/// The smallest tube about the axis that holds the rings and all that is added to them; blades are left out.
struct Tube {
    Span r{};
    Span z{};
};
Tube tubeAround(const Shape& shape);

} // namespace gapwise
