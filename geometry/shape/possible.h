#pragma once

#include "geometry/base/result.h"
#include "geometry/shape/shape.h"

#include <string_view>

namespace gapwise {

/// Everything in a shape's numbers that no part can have: a bore as large as its outside, a span that does
/// not ascend, a hole without a diameter, a letter that the stroke font lacks. `where` names the shape; each
/// error adds the pointer below it (`/rings/2/bore_mm`). Empty when a solid can be tried.
Errors impossibleSizes(const Shape& shape, std::string_view where);

} // namespace gapwise
