#pragma once

#include "geometry/datum/pose.h"

#include <optional>
#include <string>

namespace gapwise {

/// What is taken away of a piece so that one can look into it, all along the shaft.
struct Section {
    enum class Kind {
        Half,   ///< The plane contains the shaft.
        Quarter ///< Two planes that meet at the shaft, square to each other.
    };
    Kind kind = Kind::Half;
    /// The middle of what is taken away; +X: the plane of a half goes through inlet and drain.
    Clock removed = Clock::seenFrom(Side::Compressor, Degrees{90.0});

    bool operator==(const Section& other) const {
        return kind == other.kind && removed.from(Side::Compressor) == other.removed.from(Side::Compressor);
    }
};

/// A cut opens toward the eye: a half through inlet and drain, or square to them where the eye would look
/// along that plane; of the four quarters that begin at inlet or drain the one that the eye looks into.
/// `toEye` points from the piece to the eye; along the shaft it says nothing, and the usual side is taken.
Section openedToward(const Vec3& toEye, Section::Kind kind);

/// A plane in a part's own axes.
struct CuttingPlane {
    Vec3 normal{1.0, 0.0, 0.0}; ///< Unit length.
    double offsetMm = 0.0;

    /// How far a point lies beyond the plane, in mm; negative on the side that stays.
    double beyond(const Vec3& p) const { return dot(normal, p) - offsetMm; }
    bool operator==(const CuttingPlane&) const = default;
};

/// What is taken away, in a part's own axes: all that lies beyond its plane, or beyond both.
struct TakenAway {
    CuttingPlane first{};
    std::optional<CuttingPlane> second{}; ///< Of a quarter.
    bool operator==(const TakenAway&) const = default;
};

/// What a section takes away in the axes of a part with this pose.
TakenAway inPartAxes(const Section& section, const Pose& pose);

/// `the half at 3:00 seen from the compressor side`, `the quarter from 12:00 to 3:00 seen from …`.
std::string wordsOf(const Section& section, Side seenFrom);

} // namespace gapwise
