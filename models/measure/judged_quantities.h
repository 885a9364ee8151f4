#pragma once

#include "models/measure/readings.h"

namespace gapwise {

/// Every quantity of a frame with how it stands, and what that rests on.
struct JudgedQuantities {
    AllRead read{};
    std::vector<Prediction> chains{};         ///< Every chain of the frame.
    std::vector<QuantityResult> quantities{}; ///< In the order of the frame.
};

/// Evaluates, predicts, judges and compares, without looking for causes. Frame and build must outlive it.
JudgedQuantities judgedQuantities(const Frame& frame, const Build& build, const Bench& bench,
                                  std::string_view today);

/// What was read of a quantity, if it was.
std::optional<Evaluated> valueIn(const ReadValues& read, const QuantityId& id);

} // namespace gapwise
