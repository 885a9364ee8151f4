#pragma once

#include "viewer/scene/cap.h"
#include "viewer/scene/section.h"

#include <cstdint>
#include <span>
#include <vector>

namespace gapwise {

/// Points nearer to a plane than this lie on it, and what lies on it stays.
inline constexpr double kOnPlaneMm = 1e-6;

/// How far a point lies beyond a plane; 0 where it lies on it.
inline double beyondOrOn(const CuttingPlane& plane, const Vec3& p) {
    const double beyond = plane.beyond(p);
    return beyond < kOnPlaneMm && beyond > -kOnPlaneMm ? 0.0 : beyond;
}

/// The line in which two planes that are not parallel meet.
class MeetingLine {
public:
    MeetingLine(const CuttingPlane& first, const CuttingPlane& second);
    /// The point of the line that is nearest to `p`.
    Vec3 nearestTo(const Vec3& p) const { return base_ + along_ * dot(p - base_, along_); }

private:
    Vec3 base_{};
    Vec3 along_{};
};

/// Triangles whose corners are numbers of points, and how far each point lies beyond a plane.
struct CutTriangles {
    std::span<const std::array<std::uint32_t, 3>> triangles{};
    std::span<const std::uint32_t> pointOf{}; ///< For each corner.
    std::span<const Vec3> points{};
    std::span<const double> beyond{}; ///< For each point.
};

/// The closed lines in which triangles cross a plane, as the border of a cap runs that looks to the side
/// beyond. What does not close is left out.
std::vector<Loop> loopsAcross(const CutTriangles& cut);

/// What of loops in one plane lies beyond another, closed along the line where both meet.
std::vector<Loop> partsBeyond(const std::vector<Loop>& loops, const CuttingPlane& other,
                              const MeetingLine& meeting);

} // namespace gapwise
