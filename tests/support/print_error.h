#pragma once

#include "geometry/base/result.h"

#include <ostream>

namespace gapwise {

/// GoogleTest shows an error as a person reads it.
inline void PrintTo(const Error& error, std::ostream* out) {
    *out << describe(error);
}

} // namespace gapwise
