#include "models/measure/compare.h"

#include "models/measure/numbers.h"
#include "models/uncertainty/decision.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

using Outcome = BeforeAndAfter::Outcome;

/// `deposits_removed_turbine` as people say it.
std::string spaced(std::string word) {
    std::ranges::replace(word, '_', ' ');
    return word;
}

/// Which way a quantity should have gone, and of what it follows.
struct Due {
    std::optional<Direction>
        direction{}; ///< Nothing: nothing was done that concerns it, or it goes both ways.
    bool bothWays = false;
    std::string why{};
    bool deposits = false;
};

/// Why an expectation applies; empty when it does not.
std::string whyOf(const Expectation& expectation, const Build& build, const std::set<PartId>& renewed) {
    std::string parts;
    for (const PartId& part : expectation.renewed)
        if (renewed.contains(part))
            parts += (parts.empty() ? "" : ", ") + part.text;
    if (!parts.empty())
        return parts + " renewed";
    const bool done =
        !expectation.work.empty() && std::ranges::find(build.work, expectation.work) != build.work.end();
    return done ? spaced(expectation.work) : std::string{};
}

const std::vector<Expectation>& expectationsOf(const Frame& frame, const Quantity& quantity) {
    if (!quantity.expectations.empty() || !quantity.agrees)
        return quantity.expectations;
    for (const Measurement& measurement : frame.measurements)
        if (const Quantity* other = measurement.quantity(quantity.agrees->with))
            return other->expectations;
    return quantity.expectations;
}

Due dueOf(const Frame& frame, const Quantity& quantity, const Build& build) {
    const std::set<PartId> renewed = renewedParts(build);
    Due due;
    for (const Expectation& expectation : expectationsOf(frame, quantity)) {
        const std::string why = whyOf(expectation, build, renewed);
        if (why.empty())
            continue;
        due.bothWays = due.bothWays || (due.direction && *due.direction != expectation.direction);
        due.direction = expectation.direction;
        due.deposits = due.deposits || expectation.work.find("deposits") != std::string::npos;
        due.why += (due.why.empty() ? "" : ", ") + why;
    }
    if (due.bothWays)
        due.direction.reset();
    return due;
}

Outcome outcomeOf(const Due& due, double difference, bool significant) {
    if (!significant)
        return due.direction ? Outcome::NoChangeThoughExpected : Outcome::Unchanged;
    if (due.bothWays)
        return Outcome::AsExpected;
    const bool isUp = difference > 0.0;
    return due.direction && isUp == (*due.direction == Direction::Up) ? Outcome::AsExpected
                                                                      : Outcome::Unexpected;
}

std::string directionWords(Direction direction) {
    return direction == Direction::Up ? "more" : "less";
}

std::string wordsFor(const BeforeAndAfter& change, const Due& due, int decimals, Unit unit) {
    const std::string size = numberWords(std::abs(change.difference), decimals, unit);
    const std::string noise = numberWords(change.significant, decimals, unit);
    const std::string moved =
        fmt::format("{} {} than before", size, change.difference > 0.0 ? "more" : "less");
    switch (change.outcome) {
    case Outcome::Unchanged: return fmt::format("Unchanged: {} apart, up to {} says nothing.", size, noise);
    case Outcome::AsExpected:
        return due.deposits && change.difference > 0.0
                   ? fmt::format("{}: the cleaning shows, about {} removed.", moved, size)
                   : fmt::format("{}, as was to be expected: {}.", moved, due.why);
    case Outcome::Unexpected:
        return due.direction ? fmt::format("{}, though {} was to be expected ({}): find out why.", moved,
                                           directionWords(*due.direction), due.why)
                             : fmt::format("{}, and nothing was done that explains it: find out why.", moved);
    case Outcome::NoChangeThoughExpected:
        return fmt::format("No change ({} apart, up to {} says nothing), though {} was to be expected ({}): "
                           "find out why.",
                           size, noise, directionWords(*due.direction), due.why);
    case Outcome::NotCompared: break;
    }
    return {};
}

std::string methodWords(const Measurement& measurement, const Evaluated& read) {
    const Method* method = measurement.method(read.method);
    return method ? method->words : "a method that is not said";
}

} // namespace

std::set<PartId> renewedParts(const Build& build) {
    std::set<PartId> renewed;
    for (const PartDecision& decision : build.decisions)
        if (decision.fate == PartFate::Renew)
            renewed.insert(decision.part);
    for (const Seating& seating : build.seatings)
        if (std::ranges::find(seating.conditions, "new") != seating.conditions.end())
            renewed.insert(seating.part);
    return renewed;
}

BeforeAndAfter compareReadings(const Frame& frame, const Build& build, const QuantityResult& result) {
    const Evaluated& before = *result.before;
    const Evaluated& after = *result.after;
    const Quantity& quantity = *result.quantity;
    const int decimals = after.values.size() > 1 ? 3 : std::max(before.decimals, after.decimals);
    BeforeAndAfter change{.difference = after.value - before.value,
                          .significant = leastSignificantChange(before.expanded / 2.0, after.expanded / 2.0)};
    if (!quantity.part.empty() && renewedParts(build).contains(quantity.part)) {
        change.words = fmt::format("Another part: {} was renewed.", quantity.part.text);
        return change;
    }
    if (before.method != after.method || after.method.empty()) {
        change.words =
            fmt::format("Shown, not compared: before by {}, now by {}.",
                        methodWords(*result.measurement, before), methodWords(*result.measurement, after));
        return change;
    }
    const Due due = dueOf(frame, quantity, build);
    change.compared = true;
    change.outcome = outcomeOf(due, change.difference, isSignificant(change.difference, change.significant));
    change.words = wordsFor(change, due, decimals, quantity.unit);
    return change;
}

} // namespace gapwise
