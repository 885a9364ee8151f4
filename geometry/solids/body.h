#pragma once

#include "geometry/base/result.h"
#include "geometry/shape/shape.h"

#include <Standard_Failure.hxx>
#include <string_view>

class TopoDS_Shape;

namespace gapwise {

/// Rings and features as one valid solid with the volume that the numbers demand; blades are left out. May
/// throw what the library throws.
Result<TopoDS_Shape> bodyOf(const Shape& shape, std::string_view where);

/// What is told when the library throws.
Error givenUp(const Standard_Failure& failure, std::string_view where);

/// The result of `make`, or an error where the library throws on the way.
template <class Make>
auto guarded(std::string_view where, const Make& make) -> decltype(make()) {
    try {
        return make();
    } catch (const Standard_Failure& failure) {
        return givenUp(failure, where);
    }
}

} // namespace gapwise
