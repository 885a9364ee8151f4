#pragma once

#include "geometry/base/result.h"
#include "geometry/shape/shape.h"

#include <functional>
#include <optional>
#include <string_view>
#include <utility>

class TopoDS_Shape;

namespace gapwise {

/// Rings and features as one valid solid with the volume that the numbers demand; blades are left out. May
/// throw what the library throws.
Result<TopoDS_Shape> bodyOf(const Shape& shape, std::string_view where);

/// Runs `work`; an error where the library throws on the way.
std::optional<Error> failureIn(const std::function<void()>& work, std::string_view where);

/// The result of `make`, or an error where the library throws on the way.
template <class Make>
auto guarded(std::string_view where, const Make& make) -> decltype(make()) {
    std::optional<decltype(make())> made;
    if (std::optional<Error> failure = failureIn([&] { made.emplace(make()); }, where))
        return *failure;
    return std::move(*made);
}

} // namespace gapwise
