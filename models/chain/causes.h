#pragma once

#include "models/chain/investigation.h"

namespace gapwise {

/// The causes of a case with their likelihoods, likeliest first.
struct Ranking {
    std::vector<Cause> causes{};
    double unexplained = 0.0; ///< Likelihood that it is none of them.
    bool explained = false;
};

/// Fits every change of the frame on its own. Misfit is weighed with what is known beforehand: wear of a part
/// that was used before comes before faults, faults before choices that nobody recorded, and wear of a new
/// part last; a part reading speaks against a change by (length / its uncertainty)², up to a bound, because a
/// reading can be of another piece or wrongly noted. Expects that a gap has moved.
Ranking causesOf(const Investigation& seen);

/// The name of a change of that length: of one below 0 turned round (`longer` to `shorter`), empty where the
/// name has no word that can be.
std::string causeName(const Change& change, double lengthMm);

/// What a part reading would have shown with the change; only of readings that see it.
struct Contradiction {
    const PartEvidence* reading = nullptr;
    double expectedMm = 0.0;
};
std::vector<Contradiction> contradictionsOf(const Investigation& seen, const Change& change, double lengthMm);

} // namespace gapwise
