#pragma once

#include "models/chain/dimension_values.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace gapwise {

/// A link of a chain with what it adds and how much of the scatter is its. A dimension that the way leads
/// through twice has two links, which halve its share.
struct LinkShare {
    QuantityId of{};
    int sign = 1;
    double valueMm = 0.0;
    double halfWidthMm = 0.0;
    bool measured = false;
    double share = 0.0; ///< Of the variance, 0 to 1; all of a chain's add up to 1, or are 0.
};

/// What the parts say that a clearance will be.
struct Prediction {
    QuantityId chain{};
    double drawingMm = 0.0;  ///< By drawing sizes alone.
    double valueMm = 0.0;    ///< With what was measured.
    double worstMm = 0.0;    ///< ± worst case: the sum of the half widths.
    double rssMm = 0.0;      ///< ± root of the sum of their squares.
    double standardMm = 0.0; ///< Standard deviation.
    bool measured = false;   ///< At least one link was measured.
    std::vector<LinkShare> links{};
};

/// How often the dimension counts in the chain, with its sign: the change of the clearance for a change of
/// the dimension. 0 where it is no link.
int sensitivityOf(const Chain& chain, const QuantityId& dimension);

/// By the values, which must hold every link of the chain.
Prediction predict(const Chain& chain, const std::map<QuantityId, DimensionValue>& values);

/// Where a clearance should lie: the fresh limits of the quantity of the same id, else the chain's own
/// window.
Window windowOf(const Frame& frame, const QuantityId& chain);

/// How often to draw, and from what seed: the same seed gives the same result on every machine.
struct TrialPlan {
    std::size_t trials = 1'000'000;
    std::uint64_t seed = 20'260'504;
    unsigned threads = 0; ///< 0: as many as the machine has.
};

/// A bar of a histogram: from `least` on, as wide as all the others.
struct Bar {
    double leastMm = 0.0;
    double share = 0.0; ///< Of all trials.
};

/// A chain drawn many times over.
struct ChainTrials {
    std::size_t trials = 0;
    double meanMm = 0.0;
    double standardMm = 0.0;
    double least95Mm = 0.0; ///< Ends of the shortest interval that holds 95 %.
    double most95Mm = 0.0;
    double below = 0.0;           ///< Share of the trials under the window …
    double above = 0.0;           ///< … and over it.
    std::vector<Bar> histogram{}; ///< Of 40 bars; one where nothing scatters.
};

/// The chain by Monte Carlo (JCGM 101:2008), held against a window (either end may be open): each dimension
/// drawn by its scatter, a measured one from a normal distribution of its standard uncertainty.
ChainTrials drawTrials(const Chain& chain, const std::map<QuantityId, DimensionValue>& values,
                       const Window& window, const TrialPlan& plan);

} // namespace gapwise
