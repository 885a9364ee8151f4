#include "viewer/scene/assembled_build.h"

#include "geometry/base/overloaded.h"
#include "models/access/outline.h"
#include "models/check/check.h"
#include "viewer/scene/explosion.h"

#include <algorithm>

namespace gapwise {

namespace {

const Clock kTop = Clock::seenFrom(Side::Compressor, Degrees{0.0});

/// Fills a build clock by clock.
class Assembler {
public:
    explicit Assembler(const Frame& frame) : frame_{frame} {
        for (const Step* step : stepsInOrder(frame))
            build_.stepsDone.push_back(step->id);
        for (const Seat& seat : frame.seats) {
            const PartId part = partMeantFor(seat.id);
            if (frame.part(part))
                build_.seatings.push_back({.part = part,
                                           .seat = seat.id,
                                           .index = seat.fixedIndex.value_or(kTop),
                                           .referenceFaceLooks = demandedFaceOf(frame, part),
                                           .home = true});
        }
    }

    Build build() && {
        build_.frame = frame_.id.text;
        // A clock may follow from one that stands later in the file: settle them over a few rounds.
        constexpr int kRounds = 4;
        for (int round = 0; round < kRounds; ++round)
            for (Seating& seating : build_.seatings)
                settle(seating);
        return std::move(build_);
    }

private:
    /// Turns the part on its carrier until its index points where the rules want it in the housing.
    void settle(Seating& seating) {
        const Seat* seat = frame_.seat(seating.seat);
        if (seat->fixedIndex || seat->carriers.empty())
            return;
        const Clock wanted = demandedIndex(seating);
        const std::optional<Clock> now = housingClockOf(frame_, build_, seating.seat).index;
        if (now && seating.index)
            seating.index = seating.index->turned(Side::Compressor, wanted.from(Side::Compressor) -
                                                                        now->from(Side::Compressor));
    }

    Clock demandedIndex(const Seating& seating) const {
        const PartId& part = seating.part;
        for (const Rule& rule : frame_.rules) {
            if (const auto* engaged = std::get_if<EngagedRule>(&rule.demand);
                engaged && engaged->part == part)
                return engagedIndex(*engaged, seating);
            if (const auto* gaps = std::get_if<GapsApartRule>(&rule.demand); gaps && gaps->second == part)
                if (const auto first = housingClockOf(frame_, build_, seatOf(gaps->first)).index)
                    return nearestAllowed(part, first->turned(Side::Compressor, gaps->apart));
        }
        for (const Rule& rule : frame_.rules)
            if (const PrintedClock* printed = printedClockOf(rule); printed && partsOf(rule).front() == part)
                return nearestAllowed(part, targetOf(*printed));
        return nearestAllowed(part, kTop);
    }

    /// `wished`, where the rules of the part allow it; else the middle of what they allow, nearest to it.
    Clock nearestAllowed(const PartId& part, const Clock& wished) const {
        const Arcs allowed = allowedIndexOf(frame_, part);
        const Degrees wish = wished.from(Side::Compressor);
        const auto nearest = std::ranges::min_element(allowed.arcs(), [&](const Arc& a, const Arc& b) {
            return apart(a.middle(), wish) - Degrees{a.sweep.value / 2.0} <
                   apart(b.middle(), wish) - Degrees{b.sweep.value / 2.0};
        });
        return allowed.contains(wish) || allowed.empty()
                   ? wished
                   : Clock::seenFrom(Side::Compressor, nearest->middle());
    }

    Clock engagedIndex(const EngagedRule& rule, const Seating& seating) const {
        const std::optional<Clock> pin = std::visit(
            Overloaded{[&](const PartId& part) { return housingClockOf(frame_, build_, seatOf(part)).index; },
                       [&](const FeatureId& feature) { return clockOf(feature); }},
            rule.with);
        const Side face = seating.referenceFaceLooks.value_or(Side::Compressor);
        const Feature* own = rule.feature ? frame_.feature(*rule.feature).feature : nullptr;
        return pin.value_or(kTop).turned(face, own ? -own->offset : Degrees{0.0});
    }

    std::optional<Clock> clockOf(const FeatureId& feature) const {
        const Part* owner = frame_.partWithFeature(feature);
        if (!owner)
            return std::nullopt;
        const Seating* seating = build_.of(owner->id);
        const auto index = housingClockOf(frame_, build_, seatOf(owner->id)).index;
        if (!index)
            return std::nullopt;
        const Side looks =
            seating ? seating->referenceFaceLooks.value_or(Side::Compressor) : Side::Compressor;
        return featureClock(*index, looks, frame_.feature(feature).feature->offset);
    }

    const Frame& frame_;
    Build build_{};
};

} // namespace

Build assembledBuild(const Frame& frame) {
    return Assembler{frame}.build();
}

} // namespace gapwise
