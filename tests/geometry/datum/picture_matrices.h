#pragma once

#include "geometry/datum/pose.h"
#include "geometry/datum/view.h"

#include <glm/mat3x3.hpp>
#include <glm/vec3.hpp>

#include <cmath>
#include <numbers>

/// The housing as a rotation matrix in an observer's picture: x to his right, y up in the picture, z toward
/// him. A slow and independent answer to what the clock formulas say.
namespace gapwise::picture {

using Vector = glm::dvec3;
using Matrix = glm::dmat3; ///< Columns: where the datum axes X, Y and Z point in the picture.

inline double inRadians(double degrees) {
    return degrees * std::numbers::pi / 180.0;
}

inline Vector toGlm(const Vec3& v) {
    return {v.x, v.y, v.z};
}

/// Right-handed rotations about the picture's axes.
inline Matrix aboutX(double degrees) {
    const double c = std::cos(inRadians(degrees)), s = std::sin(inRadians(degrees));
    return {Vector{1, 0, 0}, Vector{0, c, s}, Vector{0, -s, c}};
}
inline Matrix aboutY(double degrees) {
    const double c = std::cos(inRadians(degrees)), s = std::sin(inRadians(degrees));
    return {Vector{c, 0, -s}, Vector{0, 1, 0}, Vector{s, 0, c}};
}
inline Matrix aboutZ(double degrees) {
    const double c = std::cos(inRadians(degrees)), s = std::sin(inRadians(degrees));
    return {Vector{c, s, 0}, Vector{-s, c, 0}, Vector{0, 0, 1}};
}

/// Clock of a direction in the picture, degrees in [0, 360).
inline double clockInPicture(const Vector& v) {
    const double degrees = std::atan2(v.x, v.y) * 180.0 / std::numbers::pi;
    return degrees < 0.0 ? degrees + 360.0 : degrees;
}

/// The housing as a person sees it from `side` with its top at the clock `top`: first from the compressor
/// side with the inlet on top (the datum axes are the picture's own), turned round if it is the other side,
/// then rolled until the top is where it should be.
inline Matrix housingSeen(Side side, double top) {
    const Matrix facing = side == Side::Compressor ? Matrix{1.0} : aboutY(180.0);
    return aboutZ(-top) * facing;
}

/// Which end of such a housing looks at the observer.
inline Side sideSeen(const Matrix& housing) {
    return housing[2].z > 0.0 ? Side::Compressor : Side::Turbine;
}

/// Where a stored clock (clockwise from the compressor side, inlet on top) appears in the picture.
inline double clockSeen(const Matrix& housing, double stored) {
    return clockInPicture(housing * Vector{std::sin(inRadians(stored)), std::cos(inRadians(stored)), 0.0});
}

/// Half a turn of the workpiece in the observer's picture.
inline Matrix turned(TurningMove move, const Matrix& housing) {
    switch (move) {
    case TurningMove::Rolled: return aboutZ(180.0) * housing;
    case TurningMove::TurnedRound: return aboutY(180.0) * housing;
    case TurningMove::TippedOver: break;
    }
    return aboutX(180.0) * housing;
}

} // namespace gapwise::picture
