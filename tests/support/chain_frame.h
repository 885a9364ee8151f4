#pragma once

#include "models/chain/dimension_values.h"
#include "models/frame/frame.h"

#include <initializer_list>
#include <string>
#include <utility>
#include <vector>

namespace gapwise::test {

/// The thrust train, casings and bearings of the two practice sizes as dimensions, contacts, chains, changes
/// and selectors, and no more of a frame than chains need. All sizes are invented.
Frame alderChainFrame();
Frame birchChainFrame();

/// A frame of nothing but a row of dimensions of one part and the chain `gap` over all of them, in order.
struct Link {
    const char* id = "";
    int sign = 1;
    double nominalMm = 0.0;
    double toleranceMm = 0.0;
    Scatter scatter = Scatter::Normal;
};
Frame stackFrame(const std::vector<Link>& links);

/// The chain of that id, which must be there.
const Chain& chainOf(const Frame& frame, const std::string& id);
/// The change of that id, which must be there.
const Change& changeOf(const Frame& frame, const std::string& id);

/// `t_T` 5.002: measured with U = 0.003.
MeasuredValue read(const char* id, double value, double expanded = 0.003);
std::vector<MeasuredValue> readings(std::initializer_list<std::pair<const char*, double>> values,
                                    double expanded = 0.003);

} // namespace gapwise::test
