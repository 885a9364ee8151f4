#pragma once

#include "geometry/base/result.h"
#include "models/gauging/band.h"

#include <string>
#include <string_view>

namespace gapwise {

/// Limits and fits of ISO 286-1 and -2, for the sizes and letters of small machine parts: up to 120 mm, IT5
/// to IT11, holes H, K, N, P and shafts e, f, g, h, k, m, n, p. The printed tables count, not the formulae
/// that they were once made by: those were rounded by hand.

/// A tolerance class: `H7`, `g6`. A capital letter is a hole.
struct ToleranceClass {
    char letter = 'H';
    int grade = 7; ///< 5 to 11: IT5 to IT11.

    bool hole() const { return letter >= 'A' && letter <= 'Z'; }
    bool operator==(const ToleranceClass&) const = default;
};

/// Reads `H7` or `g6`. `where` names the place in an error.
Result<ToleranceClass> parseToleranceClass(std::string_view text, std::string_view where);

/// Width of the tolerance, µm, of a size in mm (ISO 286-1 table 1). A step edge belongs to the step below it.
Result<int> toleranceUm(double sizeMm, int grade, std::string_view where);

/// From the nominal size, µm, upper no less than lower.
struct Deviations {
    int lowerUm = 0;
    int upperUm = 0;

    bool operator==(const Deviations&) const = default;
};

/// Limit deviations of a hole or a shaft (ISO 286-2). Refuses sizes, letters and grades that the tables here
/// lack.
Result<Deviations> deviationsOf(double sizeMm, const ToleranceClass& tolerance, std::string_view where);

/// Least and greatest size, mm.
Band limitsOf(double sizeMm, const Deviations& deviations);

enum class FitKind { Clearance, Transition, Interference };

/// `clearance`, `transition` or `interference`.
std::string_view nameOf(FitKind kind);

/// A hole and a shaft of one nominal size.
struct Fit {
    double sizeMm = 0.0;
    ToleranceClass hole{};
    ToleranceClass shaft{};
    Deviations holeDeviations{};
    Deviations shaftDeviations{};

    Band holeMm() const { return limitsOf(sizeMm, holeDeviations); }
    Band shaftMm() const { return limitsOf(sizeMm, shaftDeviations); }
    int leastClearanceUm() const { return holeDeviations.lowerUm - shaftDeviations.upperUm; }
    int mostClearanceUm() const { return holeDeviations.upperUm - shaftDeviations.lowerUm; }
    FitKind kind() const; ///< Interference where it never clears, clearance where it always does, 0 included.
};

/// Reads `25 H7/g6`: size in mm with a decimal point, hole, shaft.
Result<Fit> parseFit(std::string_view text, std::string_view where);

} // namespace gapwise
