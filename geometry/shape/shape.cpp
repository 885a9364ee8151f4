#include "geometry/shape/shape.h"

#include "geometry/base/overloaded.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numbers>

namespace gapwise {

namespace {

double larger(const Diameter& d) {
    return std::max(d.atFrom, d.atTo);
}

} // namespace

double QuarterEllipse::radiusAt(double z) const {
    const double sine = z1 == 0.0 ? 0.0 : std::clamp((z - z0) / z1, 0.0, 1.0);
    return r0 + r1 * std::sqrt(1.0 - sine * sine);
}

Degrees halfAngleOf(double widthMm, double diameterMm) {
    assert(widthMm >= 0.0 && diameterMm > 0.0 && widthMm <= diameterMm);
    return degreesFromRadians(std::asin(widthMm / diameterMm));
}

VaneLine lineOf(const Vane& vane) {
    const double lead = radians(vane.lead);
    return {.inner = {vane.r.from * std::sin(lead), vane.r.from * std::cos(lead), 0.0},
            .outer = {0.0, vane.r.to, 0.0}};
}

Extent extentOf(const FeatureForm& form) {
    return std::visit(
        Overloaded{
            [](const RadialHole& hole) {
                const double half = hole.diameterMm / 2.0;
                return Extent{hole.r, {hole.zMm - half, hole.zMm + half}, hole.diameterMm};
            },
            [](const AxialHole& hole) {
                const double half = hole.diameterMm / 2.0;
                return Extent{
                    {hole.circleRadiusMm - half, hole.circleRadiusMm + half}, hole.z, hole.diameterMm};
            },
            [](const InclinedHole& hole) {
                const double half = hole.diameterMm / 2.0;
                const auto [rLow, rHigh] = std::minmax(hole.fromR, hole.toR);
                const auto [zLow, zHigh] = std::minmax(hole.fromZ, hole.toZ);
                return Extent{{rLow, rHigh}, {zLow - half, zHigh + half}, hole.diameterMm};
            },
            [](const Slot& slot) { return Extent{slot.r, slot.z, slot.widthMm}; },
            [](const HexHole& hole) {
                const double half = hole.widthMm / std::numbers::sqrt3;
                return Extent{{hole.circleRadiusMm - half, hole.circleRadiusMm + half}, hole.z, hole.widthMm};
            },
            [](const Vane& vane) { return Extent{vane.r, vane.z, vane.thicknessMm}; },
            [](const Sector& sector) {
                return Extent{sector.r, sector.z,
                              2.0 * sector.r.from * std::sin(radians(sector.angle) / 2.0)};
            },
            [](const Groove& groove) {
                return Extent{
                    {std::min(groove.bore.atFrom, groove.bore.atTo) / 2.0, larger(groove.outside) / 2.0},
                    groove.z,
                    0.0};
            },
            [](const SteppedJoint& joint) { return Extent{{}, {}, joint.gapMm + joint.overlapMm}; },
            [](const ArrowMark& arrow) {
                return Extent{arrow.r, {arrow.faceZMm - arrow.depthMm, arrow.faceZMm}, arrow.widthMm};
            },
            [](const LetterMark& letters) {
                const double half = letters.heightMm / 2.0;
                return Extent{{letters.radiusMm - half, letters.radiusMm + half},
                              {letters.faceZMm, letters.faceZMm},
                              letters.heightMm};
            },
        },
        form);
}

} // namespace gapwise
