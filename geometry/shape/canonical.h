#pragma once

#include "geometry/shape/shape.h"

#include <string>

namespace gapwise {

/// Every number of the shape in a fixed order, each printed so that it reads back exactly: two shapes give
/// the same text only when the same solid comes of them. Names and ids of features leave no trace.
std::string canonicalText(const Shape& shape);

} // namespace gapwise
