#pragma once

#include <cmath>

namespace gapwise {

/// A point or direction in the datum axes: +Z along the shaft toward the compressor, +Y to the top (oil
/// inlet), +X = Y × Z. Points in millimetres.
struct Vec3 {
    double x = 0.0;
    double y = 0.0;
    double z = 0.0;

    constexpr bool operator==(const Vec3&) const = default;
    constexpr Vec3 operator+(const Vec3& o) const { return {x + o.x, y + o.y, z + o.z}; }
    constexpr Vec3 operator-(const Vec3& o) const { return {x - o.x, y - o.y, z - o.z}; }
    constexpr Vec3 operator*(double s) const { return {x * s, y * s, z * s}; }
};

constexpr double dot(const Vec3& a, const Vec3& b) {
    return a.x * b.x + a.y * b.y + a.z * b.z;
}

constexpr Vec3 cross(const Vec3& a, const Vec3& b) {
    return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}

inline double length(const Vec3& v) {
    return std::sqrt(dot(v, v));
}

/// `v` with length 1. `v` must not be zero.
inline Vec3 normalized(const Vec3& v) {
    return v * (1.0 / length(v));
}

} // namespace gapwise
