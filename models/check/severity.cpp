#include "models/check/severity.h"

namespace gapwise {

std::string_view severityWord(int severity) {
    switch (severity) {
    case 1: return "cosmetic";
    case 2: return "leak or loss of performance";
    case 3: return "early wear";
    default: return "fails at start-up";
    }
}

} // namespace gapwise
