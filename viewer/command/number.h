#pragma once

#include "geometry/base/result.h"

#include <string>
#include <string_view>

namespace gapwise {

/// Which numbers an option takes, and how that is said.
struct NumberRange {
    double least = 0.0;
    double most = 0.0;
    bool aboveLeast = false; ///< `least` itself is refused.
    std::string_view words{};
};

/// Reads a number of which all text is used. `where` is the option in an error.
Result<double> parseNumber(std::string_view text, std::string_view where, const NumberRange& range);

/// The value, or the fallback with the errors kept for the end.
template <class T>
T valueOr(const Result<T>& result, T fallback, Errors& errors) {
    if (result)
        return *result;
    errors.insert(errors.end(), result.errors().begin(), result.errors().end());
    return fallback;
}

} // namespace gapwise
