#pragma once

#include "geometry/datum/clock.h"

#include <optional>
#include <string_view>

namespace gapwise {

/// Which end of the workpiece is up on the bench, or that its axis lies level.
enum class EndUp { Compressor, Turbine, Level };

/// How the workpiece lies on the bench, as its observer at the front of the bench sees it.
struct Attitude {
    EndUp up = EndUp::Level;
    /// ψ: the clock at which the drain appears, clockwise from above, in [0, 360). Seen looking down on the
    /// end that is up; when level, as seen from `seenFrom`.
    Degrees drain{180.0};
    /// The side from which a level piece is looked at. An end that is up is itself the side; it must agree.
    Side seenFrom = Side::Compressor;

    bool operator==(const Attitude&) const = default;
};

/// An attitude with an end up, looked at from that end.
Attitude uprightAttitude(Side up, Degrees drain);

/// An attitude with the axis level, the drain seen from `seenFrom`.
Attitude levelAttitude(Side seenFrom, Degrees drain);

/// Where a person stands: how far round the bench (clockwise from above, 0 = the front) for an upright piece,
/// and the end that a level piece is looked at from.
struct Observer {
    Degrees stand{0.0};
    Side levelSide = Side::Compressor;

    bool operator==(const Observer&) const = default;
};

/// What an observer has before him: the side, and φ, the clock at which the top (the oil inlet) appears.
struct View {
    Side side = Side::Compressor;
    Degrees top{0.0};

    bool operator==(const View&) const = default;
};

/// The view of a rule as it is printed: its side, inlet on top.
constexpr View inletOnTop(Side side) {
    return View{side, Degrees{0.0}};
}

/// θ_seen = φ + σθ, in [0, 360).
Degrees seenIn(const View& view, const Clock& clock);

/// The clock that appears at `seen` in `view`.
Clock clockSeenIn(const View& view, Degrees seen);

/// Upright: φ = ψ + 180 - stand. Level: φ = ψ + 180 from the side of `seenFrom`, -(ψ + 180) from the other
/// end.
View viewOf(const Attitude& attitude, const Observer& observer);

/// What a person at the front of the bench sees; a level piece from the side of its `seenFrom`.
View viewFromFront(const Attitude& attitude);

/// The turning moves, named in the observer's picture.
enum class TurningMove {
    Rolled,      ///< About the line of sight, half a turn: (σ, φ) → (σ, φ + 180).
    TurnedRound, ///< About the picture's vertical (upright: tipped sideways): (σ, φ) → (-σ, -φ).
    TippedOver ///< About the picture's horizontal (upright: toward or away from you): (σ, φ) → (-σ, 180 - φ).
};

/// What the same observer sees after the workpiece was turned.
View afterMove(const View& view, TurningMove move);

/// The attitude after a move named in the observer's picture; believed until it is confirmed. A rolled
/// upright piece keeps its end up; a tipped or turned one has the other end up. A level piece stays level,
/// and is then looked at from the end that the observer sees.
Attitude afterMove(const Attitude& attitude, const Observer& observer, TurningMove move);

/// The same for an observer at the front of the bench; a level piece seen from the side of its `seenFrom`.
Attitude afterMove(const Attitude& attitude, TurningMove move);

/// The nearest of the eight bench words for a direction seen in an upright or a level picture, each 45° wide.
/// Upright: away, away-right, right, toward-right, toward you, toward-left, left, away-left. Level: up,
/// up-right, …
std::string_view benchWord(Degrees seen, EndUp up);

} // namespace gapwise
