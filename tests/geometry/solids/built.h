#pragma once

#include "geometry/solids/solids.h"
#include "tests/support/print_error.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace gapwise::test {

inline constexpr double kPi = std::numbers::pi;

/// The built part; an empty one, and a failed test, when it cannot be built.
inline SolidPart built(const Shape& shape, const Fineness& fineness = {}) {
    Result<SolidPart> part = buildSolid(shape, fineness, "shape");
    if (part)
        return std::move(part).value();
    for (const Error& error : part.errors())
        ADD_FAILURE() << describe(error);
    return {};
}

inline double volumeOf(const Shape& shape) {
    return built(shape).facts.volumeMm3;
}

/// The errors of a shape that must not build.
inline Errors refused(const Shape& shape) {
    const Result<SolidPart> part = buildSolid(shape, {}, "shape");
    EXPECT_FALSE(part);
    return part ? Errors{{}} : part.errors();
}

inline double ringVolume(double bore, double outside, double length) {
    return kPi / 4.0 * (outside * outside - bore * bore) * length;
}

/// Area of a disc of radius r between two chords square to x.
inline double discBetween(double r, double fromX, double toX) {
    const auto integral = [&](double x) { return x * std::sqrt(r * r - x * x) + r * r * std::asin(x / r); };
    return integral(toX) - integral(fromX);
}

/// Area of the upper half of a ring between two chords: what a slot across one side takes.
inline double slotArea(double bore, double outside, double fromX, double toX) {
    return (discBetween(outside / 2.0, fromX, toX) - discBetween(bore / 2.0, fromX, toX)) / 2.0;
}

} // namespace gapwise::test
