#pragma once

#include "geometry/datum/angle.h"

#include <optional>
#include <vector>

namespace gapwise {

/// One closed arc of the circle: from `start`, clockwise through `sweep`.
struct Arc {
    Degrees start{0.0}; ///< In [0, 360).
    Degrees sweep{0.0}; ///< In [0, 360]; 360 is the whole circle.

    Degrees middle() const { return wrapped(Degrees{start.value + sweep.value / 2.0}); }
    bool contains(Degrees angle) const; ///< The ends belong to the arc, with kAngleRounding.
};

/// A set of directions as disjoint closed arcs: what one or several angular rules allow.
class Arcs {
public:
    static Arcs whole();
    /// All directions at most `tolerance` from `middle`; 180 or more is the whole circle.
    static Arcs around(Degrees middle, Degrees tolerance);
    /// All directions at least `clearance` from `middle`; 0 or less is the whole circle, above 180 is none.
    static Arcs awayFrom(Degrees middle, Degrees clearance);

    Arcs intersectedWith(const Arcs& other) const;
    Arcs unitedWith(const Arcs& other) const;
    bool empty() const { return arcs_.empty(); }
    bool contains(Degrees angle) const;
    const std::vector<Arc>& arcs() const { return arcs_; }

    /// The signed turn of least size, clockwise positive, that brings `angle` into the set; nothing if the
    /// set is empty.
    std::optional<Degrees> turnInto(Degrees angle) const;

private:
    std::vector<Arc> arcs_{};
};

} // namespace gapwise
