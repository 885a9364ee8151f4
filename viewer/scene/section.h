#pragma once

#include "geometry/datum/clock.h"
#include "viewer/scene/scene.h"

namespace gapwise {

/// A plane that contains the shaft; the half that this clock points into is taken away.
struct SectionPlane {
    Clock removed =
        Clock::seenFrom(Side::Compressor, Degrees{90.0}); ///< +X: the plane through inlet and drain.
};

/// A plane in a part's own axes: points with normal · p > offset are taken away.
struct CuttingPlane {
    Vec3 normal{1.0, 0.0, 0.0}; ///< Unit length.
    double offsetMm = 0.0;
};

/// The section's plane as it lies in the axes of a part with this pose.
CuttingPlane inPartAxes(const SectionPlane& plane, const Pose& pose);

/// What a plane leaves of a mesh: the rest of its faces and true edges, flat caps over the cut (outward
/// normals) and their outline. Solids of one mesh that overlap are cut as their union. A mesh with holes gets
/// caps only where its cut closes.
DrawnMesh cutMesh(const PartMesh& mesh, const CuttingPlane& plane);

/// Area of the caps, in mm².
double areaOf(const TriangleMesh& mesh);

} // namespace gapwise
