#pragma once

#include <compare>
#include <string>
#include <string_view>
#include <utility>

namespace gapwise {

/// An identifier of one kind of thing; ids of different kinds do not mix.
template <class Kind>
struct Id {
    std::string text{};

    Id() = default;
    explicit Id(std::string id) : text{std::move(id)} {}
    auto operator<=>(const Id&) const = default;
    bool empty() const { return text.empty(); }
};

using FrameId = Id<struct FrameKind>;             ///< `alder-72`
using PartTypeId = Id<struct TypeKind>;           ///< `snap-ring`
using PartId = Id<struct PartKind>;               ///< `SR-CO`
using SeatId = Id<struct SeatKind>;               ///< `seat-SR-CO`
using FeatureId = Id<struct FeatureKind>;         ///< `F08`
using RuleId = Id<struct RuleKind>;               ///< `SR-CO.gap`
using StepId = Id<struct StepKind>;               ///< `S13`
using FastenerId = Id<struct FastenerKind>;       ///< `T3`
using MeasurementId = Id<struct MeasurementKind>; ///< `M19`
using QuantityId = Id<struct QuantityIdKind>;     ///< Its symbol: `t_T`, `c`, `R_n`
using StationId = Id<struct StationIdKind>;       ///< `COLLAR-A/running face`

/// `seat-` and the id of the part meant for it.
inline SeatId seatOf(const PartId& part) {
    return SeatId{"seat-" + part.text};
}

/// The part that a seat is meant for.
inline PartId partMeantFor(const SeatId& seat) {
    constexpr std::string_view kPrefix = "seat-";
    return PartId{seat.text.starts_with(kPrefix) ? seat.text.substr(kPrefix.size()) : seat.text};
}

} // namespace gapwise
