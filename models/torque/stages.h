#pragma once

#include <span>
#include <vector>

namespace gapwise {

/// The torque of a stage that is a percentage of the final torque, N·m: 45 % of 22 is 9.9.
double stageTorqueNm(double finalNm, double percent);

/// The torques of all stages.
std::vector<double> stageTorquesNm(double finalNm, std::span<const double> percents);

/// Whether percentages can be the stages of a tightening: above 0, rising, the last one 100.
bool areStages(std::span<const double> percents);

} // namespace gapwise
