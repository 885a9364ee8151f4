#include "oracle.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace gapwise::oracle {

namespace {

constexpr double kNamedWithin = 15.0;

/// What a rule that prints a clock demands of a direction.
struct Demand {
    Direction middle{};
    double tolerance = 0.0;

    bool allows(const Direction& d) const { return within(d, middle, tolerance); }
};

std::optional<Demand> demandOf(const Rule* rule) {
    const PrintedClock* printed = rule ? printedClockOf(*rule) : nullptr;
    if (!printed)
        return std::nullopt;
    return Demand{meantBy(printed->seenFrom.value_or(Side::Compressor), printed->clock.value),
                  printed->tolerance.value};
}

/// In the fixed order: each candidate is a thing that a person did, and asks whether undoing it would
/// satisfy.
std::vector<Mistake> candidates(const Case& asked, const Rule& rule, const Direction& actual) {
    const Demand own = *demandOf(&rule);
    const auto twin = rule.twin ? demandOf(asked.frame.rule(*rule.twin)) : std::nullopt;
    const auto sister = asked.sister ? demandOf(asked.sister->rule(rule.id)) : std::nullopt;
    std::vector<Mistake> found;
    if (own.allows(kLeftForRight * actual))
        found.push_back(Mistake::MirroredView);
    if (own.allows(kHalfRound * actual))
        found.push_back(Mistake::UpsideDown);
    if (own.allows(kUpForDown * actual))
        found.push_back(Mistake::EndOverEnd);
    if (twin && twin->allows(actual))
        found.push_back(Mistake::OtherEndRule);
    if (sister && sister->allows(actual))
        found.push_back(Mistake::OtherVariantRule);
    if (own.allows(kQuarterOn * actual) || own.allows(kQuarterBack * actual))
        found.push_back(Mistake::QuarterTurn);
    return found;
}

/// The mistake that the view in which a part was set names by itself.
std::optional<Mistake> namedBy(const Picture& view, Side ruleSide) {
    const bool drainOnTop = within(view.top, {0.0, -1.0}, kNamedWithin);
    const bool inletOnTop = within(view.top, {0.0, 1.0}, kNamedWithin);
    const bool onItsSide =
        within(view.top, {1.0, 0.0}, kNamedWithin) || within(view.top, {-1.0, 0.0}, kNamedWithin);
    if (onItsSide)
        return Mistake::QuarterTurn;
    if (view.side == ruleSide)
        return drainOnTop ? std::optional{Mistake::UpsideDown} : std::nullopt;
    if (inletOnTop)
        return Mistake::MirroredView;
    return drainOnTop ? std::optional{Mistake::EndOverEnd} : std::nullopt;
}

double onWholeDial(double degrees) {
    return degrees < 0.0 ? degrees + 360.0 : degrees;
}

Turn turnTo(const Picture& picture, const Direction& actual, const Direction& middle) {
    const double clockwise = clockwiseFrom(shownIn(picture, actual), shownIn(picture, middle));
    const bool halfRound = std::abs(clockwise) >= 180.0 - kRounding;
    return Turn{std::abs(clockwise), halfRound || clockwise > 0.0, picture.side};
}

} // namespace

Picture currentPicture(const Bench& bench, Side whenUnknown) {
    if (!bench.lying)
        return Picture{whenUnknown, {}};
    const Lying& lying = *bench.lying;
    const Direction top = kHalfRound * onDial(lying.drainDegrees); // The inlet lies opposite the drain.
    switch (lying.up) {
    case EndUp::Compressor: return {Side::Compressor, top};
    case EndUp::Turbine: return {Side::Turbine, top};
    case EndUp::Level: break;
    }
    return {lying.seenFrom, top};
}

Explanation explanationOf(const Case& asked, const Rule& rule) {
    const PrintedClock& printed = *printedClockOf(rule);
    const SeatId seat = seatOf(partsOf(rule).front());
    const Direction actual = *directionIn(asked, seat);
    const Demand own = *demandOf(&rule);
    const Picture current = currentPicture(asked.bench, printed.seenFrom.value_or(Side::Compressor));
    const Picture asRead{printed.seenFrom.value_or(Side::Compressor), {}};

    Explanation said;
    said.mistakes = candidates(asked, rule, actual);
    said.turn = turnTo(current, actual, own.middle);
    said.actual = onWholeDial(clockwiseFrom({}, shownIn(asRead, actual)));
    said.deviation = clockwiseFrom(shownIn(asRead, own.middle), shownIn(asRead, actual));
    if (asked.bench.lying)
        said.asSeen = onWholeDial(clockwiseFrom({}, shownIn(current, actual)));

    const std::optional<Shown>& setIn = asked.bench.in(seat.text)->setIn;
    if (!setIn)
        return said;
    const Picture view{setIn->side, onDial(setIn->topDegrees)};
    const Direction seen = shownIn(view, actual);
    said.asSeen = onWholeDial(clockwiseFrom({}, seen));
    const Side ruleSide = printed.seenFrom.value_or(view.side);
    const bool rulesOwn = view.side == ruleSide && between(view.top, {}) <= kRounding;
    said.asPrinted = !rulesOwn && within(seen, onDial(printed.clock.value), printed.tolerance.value);
    const auto named = *said.asPrinted ? namedBy(view, ruleSide) : std::nullopt;
    if (named) {
        const auto at = std::find(said.mistakes.begin(), said.mistakes.end(), *named);
        if (at != said.mistakes.end())
            std::rotate(said.mistakes.begin(), at, at + 1);
    }
    return said;
}

} // namespace gapwise::oracle
