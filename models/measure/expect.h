#pragma once

#include "models/measure/report.h"

#include <span>

namespace gapwise {

/// What is predicted for a quantity: by the chain of the same id, by the lever from the plays of the parts,
/// by the notch and pin of a bush, or as the quantity that it must agree with. Nothing where nobody can tell.
std::optional<Predicted> predictedFor(const Frame& frame, const Quantity& quantity,
                                      std::span<const Prediction> chains);

/// Whether a value and its prediction lie further apart than both allow: more than 0.02 mm (common practice,
/// no source) and more than their uncertainties; of a band, outside it by more than U.
bool disagrees(const Evaluated& read, const Predicted& predicted, Unit unit);

/// The prediction of a chain, or null.
const Prediction* predictionOf(std::span<const Prediction> chains, const QuantityId& id);

/// The plays that the parts give at both bearings; nothing where the frame has no lever or chains for them.
struct PartPlays {
    double compressor = 0.0;
    double turbine = 0.0;
    bool measured = false; ///< At least one part of each was measured.
};
std::optional<PartPlays> partPlays(const Frame& frame, std::span<const Prediction> chains);

} // namespace gapwise
