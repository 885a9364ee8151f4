#pragma once

/// Whether parts that are put together share material, and how much: the proof that they fit.

#include "geometry/base/result.h"
#include "geometry/mesh/mesh.h"
#include "geometry/shape/shape.h"

#include <memory>
#include <string_view>

namespace gapwise {

/// The solid of a shape, to be held against others in any pose: its body, and each blade beside it. Copies
/// share what was built.
class Solid {
public:
    struct Pieces; ///< Of the library beneath.

    explicit Solid(std::shared_ptr<const Pieces> pieces) : pieces_{std::move(pieces)} {}
    const Pieces& pieces() const { return *pieces_; }

private:
    std::shared_ptr<const Pieces> pieces_;
};

/// Builds the solid of a shape. Errors are those of `buildSolid`.
Result<Solid> solidOf(const Shape& shape, std::string_view where);

/// The axis-parallel box round a solid in its pose: never too small, a little too large for one that is
/// turned.
Bounds boundsOf(const Solid& solid, const Pose& pose);

/// The material that two solids share, in mm³; 0 where they only touch. Where a blade is sunk into its hub
/// both count. Where faces coincide so that the library fails, the second solid is tried smaller and larger
/// by 1e-4 mm. An error when the library still fails, warns, or gives a volume that cannot be.
Result<double> commonVolumeMm3(const Solid& first, const Pose& firstPose, const Solid& second,
                               const Pose& secondPose);

} // namespace gapwise
