#include "geometry/base/result.h"

namespace gapwise {

std::string describe(const Error& error) {
    std::string text = error.where;
    if (!error.found.empty())
        text += ": found " + error.found;
    if (!error.allowed.empty())
        text += (error.found.empty() ? ": " : "; allowed: ") + error.allowed;
    return text;
}

} // namespace gapwise
