#pragma once

#include "geometry/shape/shape.h"

class TopoDS_Shape;

namespace gapwise {

/// An arrow as a plate with its tip up, at offset 0: sunk into the face when cut, standing on it when added.
TopoDS_Shape arrowSolid(const ArrowMark& arrow, Feature::Does does);

/// Letters as plates, upright at offset 0 when their face is looked at: sunk when cut, raised when added.
TopoDS_Shape lettersSolid(const LetterMark& letters, Feature::Does does);

} // namespace gapwise
