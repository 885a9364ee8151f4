#pragma once

#include "geometry/shape/shape.h"

#include <utility>

namespace gapwise::test {

/// A plain ring between two diameters.
inline RingBody ring(double bore, double outside, Span z) {
    return {Diameter{bore, bore}, Diameter{outside, outside}, z};
}

inline Shape ringShape(double bore, double outside, Span z) {
    return {.rings = {ring(bore, outside, z)}, .edges = {}, .blades = {}, .features = {}};
}

inline Feature cutting(FeatureForm form, double offset = 0.0, int count = 1) {
    return {"", "", Feature::Does::Cut, std::move(form), Degrees{offset}, count};
}

inline Feature adding(FeatureForm form, double offset = 0.0, int count = 1) {
    return {"", "", Feature::Does::Add, std::move(form), Degrees{offset}, count};
}

inline Shape with(Shape shape, Feature feature) {
    shape.features.push_back(std::move(feature));
    return shape;
}

inline Shape with(Shape shape, const EdgeBreak& edge) {
    shape.edges.push_back(edge);
    return shape;
}

} // namespace gapwise::test
