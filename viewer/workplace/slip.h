#pragma once

#include "viewer/workplace/workplace.h"

namespace gapwise {

/// The slip for the next shift, without what the person himself may not be told yet.
HandOver slipOf(const Job& job);

} // namespace gapwise
