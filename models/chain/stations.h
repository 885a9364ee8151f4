#pragma once

#include "models/chain/dimension_values.h"

namespace gapwise {

/// The station at z = 0: the shoulder in the housing that the thrust bearing seats on.
StationId datumStation();

/// Where every station lies along Z, in the datum axes, with the rotor pushed to a side: found by walking
/// from `HOUSING/datum` through dimensions and contacts, the shortest way in number of links. Stations of
/// diameters (reached through `axis` only) and those that nothing leads to are not in it.
std::map<StationId, double>
stationsAlongShaft(const Frame& frame, const std::map<QuantityId, DimensionValue>& values, Side pushedTo);

} // namespace gapwise
