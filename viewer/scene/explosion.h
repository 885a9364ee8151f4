#pragma once

#include "geometry/shape/shape.h"
#include "models/frame/frame.h"

#include <map>
#include <optional>
#include <vector>

namespace gapwise {

/// A part that takes part in an explosion.
struct PulledPart {
    PartId part{};
    SeatId seat{}; ///< Where it sits: its steps and its end are those of the seat.
    Span z{};      ///< Its reach along the shaft, assembled, in mm.
    /// The end of its carrier over which it goes on where both are put together on the bench: the slimmer
    /// one.
    std::optional<Side> benchEntry{};
};

/// Places of the parts along the shaft when the cartridge is wholly pulled apart, from the turbine end to the
/// compressor end. What was put in last at an end lies farthest out there; what was put together on the bench
/// (a seal ring on its rotor or sleeve) stays together as a group and is pulled apart within it. Parts of one
/// step go in the deepest first, by their outer ends: a screw after the washer that it goes through; a part
/// that no step places comes after all that one does.
std::vector<PartId> pulledApartOrder(const Frame& frame, const std::vector<PulledPart>& parts);

/// The steps of a frame in an order that keeps every `after`; steps that may stand either way keep the
/// frame's order.
std::vector<const Step*> stepsInOrder(const Frame& frame);

/// What a part covers along the shaft, in mm, when it is looked at from this angle off square to the shaft: a
/// wide disc covers more than its thickness. Neighbours that are apart by this measure do not hide each other
/// in the usual three-quarter picture from either end.
inline constexpr Degrees kPulledApartSeenFrom{15.0};

/// A part's reach along the shaft when it is assembled, in mm.
struct AxialReach {
    PartId part{};
    Span z{};
};

/// How far each part moves along the shaft when everything is pulled apart, in mm, positive toward the
/// compressor: neighbours in the order of `reaches` then stand `gapMm` apart, and `still` does not move.
/// `still` must be among the reaches, or be empty: then the first stays.
std::map<PartId, double> pulls(const std::vector<AxialReach>& reaches, const PartId& still, double gapMm);

} // namespace gapwise
