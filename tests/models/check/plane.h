#pragma once

#include "geometry/datum/side.h"

#include <cmath>
#include <numbers>

/// Directions square to the shaft as plain vectors: what the oracle reckons with instead of clocks.
namespace gapwise::oracle {

inline constexpr double kRounding = 1e-9; ///< Degrees.

/// Components along +X and +Y of the housing, or along right and up of a picture. Unit length.
struct Direction {
    double x = 0.0;
    double y = 1.0;
};

/// A rotation or a reflection of the plane.
struct Matrix {
    double xx = 1.0, xy = 0.0;
    double yx = 0.0, yy = 1.0;
};

inline Direction operator*(const Matrix& m, const Direction& d) {
    return {m.xx * d.x + m.xy * d.y, m.yx * d.x + m.yy * d.y};
}
inline Matrix operator*(const Matrix& a, const Matrix& b) {
    return {a.xx * b.xx + a.xy * b.yx, a.xx * b.xy + a.xy * b.yy, a.yx * b.xx + a.yy * b.yx,
            a.yx * b.xy + a.yy * b.yy};
}

inline constexpr Matrix kLeftForRight{-1.0, 0.0, 0.0,
                                      1.0}; ///< Half a turn about the vertical, as a picture shows it.
inline constexpr Matrix kUpForDown{1.0, 0.0, 0.0, -1.0};   ///< Half a turn about the horizontal.
inline constexpr Matrix kHalfRound{-1.0, 0.0, 0.0, -1.0};  ///< Half a turn about the line of sight.
inline constexpr Matrix kQuarterOn{0.0, 1.0, -1.0, 0.0};   ///< A quarter clockwise.
inline constexpr Matrix kQuarterBack{0.0, -1.0, 1.0, 0.0}; ///< A quarter counter-clockwise.

/// A hand at so many degrees clockwise from 12 on a dial.
inline Direction onDial(double degrees) {
    const double angle = degrees * std::numbers::pi / 180.0;
    return {std::sin(angle), std::cos(angle)};
}

/// The turn, clockwise on the dial, that takes 12 to `top`.
inline Matrix turnOf(const Direction& top) {
    return {top.y, top.x, -top.x, top.y};
}

/// Clockwise from `a` to `b` on the dial, degrees in [-180, 180].
inline double clockwiseFrom(const Direction& a, const Direction& b) {
    return std::atan2(a.y * b.x - a.x * b.y, a.x * b.x + a.y * b.y) * 180.0 / std::numbers::pi;
}

/// Degrees between two directions, in [0, 180].
inline double between(const Direction& a, const Direction& b) {
    return std::abs(clockwiseFrom(a, b));
}

inline bool within(const Direction& a, const Direction& b, double tolerance) {
    return between(a, b) <= tolerance + kRounding;
}

/// A picture of an end of the housing: from which side, and where its top appears on the dial.
struct Picture {
    Side side = Side::Compressor;
    Direction top{};
};

/// What the dial of a picture shows of a direction of the housing. From the turbine side +X lies to the left.
inline Direction shownIn(const Picture& picture, const Direction& inHousing) {
    const Matrix facing = picture.side == Side::Compressor ? Matrix{} : kLeftForRight;
    return turnOf(picture.top) * (facing * inHousing);
}

/// The direction of the housing that a person means who reads `degrees` from `side` with the inlet on top.
inline Direction meantBy(Side side, double degrees) {
    const Matrix facing = side == Side::Compressor ? Matrix{} : kLeftForRight;
    return facing * onDial(degrees); // The reflection undoes itself.
}

} // namespace gapwise::oracle
