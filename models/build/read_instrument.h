#pragma once

#include "models/build/build.h"
#include "models/json/fields.h"

#include <span>

namespace gapwise {

/// One instrument of a sheet or of a bench; complains of an unknown kind or unit, a resolution or uncertainty
/// below 0, a day that is none.
Instrument readInstrument(Fields& fields);

/// Complains of ranges that are none and of two instruments of one number.
void instrumentErrors(std::span<const Instrument> instruments, Complaints& complaints);

} // namespace gapwise
