#pragma once

#include "models/frame/frame.h"

#include <vector>

namespace gapwise {

/// One ring of material in the assembled cartridge: what its outline covers, in mm; its radii are about the
/// axis of its seat.
struct Slab {
    Span radius{};
    Span z{};
};

/// Smallest and largest radius of an outline, in mm.
double smallestRadiusOf(const Outline& outline);
double largestRadiusOf(const Outline& outline);

/// The outline of a part in a seat, curves and blades in thin slices, less the grooves that are turned out of
/// it. The seat's place of the origin holds for either way round; a part that was put in the other way round
/// covers the same length.
std::vector<Slab> slabsOf(const PartType& type, const Seat& seat, Side referenceFaceLooks);

/// The side to which the reference face of a part looks where the frame's face rule wants it; the compressor
/// where no rule wants anything.
Side demandedFaceOf(const Frame& frame, const PartId& part);

} // namespace gapwise
