#pragma once

#include "viewer/scene/scene.h"
#include "viewer/scene/section.h"

#include <cstdint>
#include <vector>

namespace gapwise {

/// A mesh made ready to be cut again and again: which of its corners are one point is found once.
class Cuttable {
public:
    /// The mesh must live as long.
    explicit Cuttable(const PartMesh& mesh);

    /// What stays of the mesh: the rest of its faces and true edges, flat caps over the cut (outward normals)
    /// and their outline. The two caps of a quarter reach to the line where they meet, not into what stays.
    /// Solids of one mesh that overlap are cut as their union. A mesh with holes gets caps only where its cut
    /// closes.
    DrawnMesh cut(const TakenAway& away) const;

private:
    const PartMesh* mesh_;
    std::vector<std::uint32_t> pointOf_{}; ///< For each corner the point that it belongs to.
    std::vector<Vec3> points_{};
};

/// The same for one cut.
DrawnMesh cutMesh(const PartMesh& mesh, const TakenAway& away);

/// Area of a mesh's triangles, in mm².
double areaOf(const TriangleMesh& mesh);

} // namespace gapwise
