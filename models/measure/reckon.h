#pragma once

#include "models/measure/report.h"

#include <map>

namespace gapwise {

/// Values of one occasion, by quantity.
using ReadValues = std::map<QuantityId, Evaluated>;

/// A quantity from its terms, U by root sum of squares; nothing where one was not read. What makes a term
/// worthless (a blind method, a wrong instrument) is said of it too.
std::optional<Evaluated> reckoned(const Frame& frame, const Measurement& measurement,
                                  const Quantity& quantity, const ReadValues& read);

} // namespace gapwise
