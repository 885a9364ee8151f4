#include "models/torque/stages.h"

#include <algorithm>

namespace gapwise {

double stageTorqueNm(double finalNm, double percent) {
    return finalNm * percent / 100.0;
}

std::vector<double> stageTorquesNm(double finalNm, std::span<const double> percents) {
    std::vector<double> torques;
    torques.reserve(percents.size());
    for (const double percent : percents)
        torques.push_back(stageTorqueNm(finalNm, percent));
    return torques;
}

bool areStages(std::span<const double> percents) {
    const auto rises = [](double before, double after) { return !(after > before); };
    return !percents.empty() && percents.front() > 0.0 && percents.back() == 100.0 &&
           std::ranges::adjacent_find(percents, rises) == percents.end();
}

} // namespace gapwise
