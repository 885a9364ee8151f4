#include "models/measure/reckon.h"

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

/// What a reckoned value takes over from what it comes from.
bool carriesOver(FlagKind kind) {
    return kind == FlagKind::Blind || kind == FlagKind::WrongInstrument || kind == FlagKind::PartNotPlaced ||
           kind == FlagKind::Implausible;
}

void addFlags(const QuantityId& of, const Evaluated& term, Evaluated& sum) {
    for (const Flag& flag : term.flags) {
        const auto isSame = [&](const Flag& each) { return each.kind == flag.kind; };
        if (carriesOver(flag.kind) && std::ranges::none_of(sum.flags, isSame))
            sum.flags.push_back({flag.kind, of.text + ": " + flag.words});
    }
}

/// The method of all terms; where they differ the first that is not the one that the limits are for.
void addMethod(const std::string& wanted, const Evaluated& term, bool first, Evaluated& sum) {
    if (first || (sum.method == wanted && term.method != wanted))
        sum.method = term.method;
}

} // namespace

std::optional<Evaluated> reckoned(const Frame& /*frame*/, const Measurement& measurement,
                                  const Quantity& quantity, const ReadValues& read) {
    if (quantity.from.empty())
        return std::nullopt;
    Evaluated sum;
    sum.decimals = 0;
    sum.method = quantity.limits.method;
    bool first = true;
    for (const Term& term : quantity.from) {
        const auto found = read.find(term.of);
        if (found == read.end())
            return std::nullopt;
        const Evaluated& each = found->second;
        sum.value += term.sign * each.value;
        sum.judged += term.sign * each.judged;
        sum.expanded = std::hypot(sum.expanded, each.expanded);
        sum.decimals = std::max(sum.decimals, each.decimals);
        addFlags(term.of, each, sum);
        if (measurement.quantity(term.of)) {
            addMethod(quantity.limits.method, each, first, sum);
            first = false;
        }
    }
    sum.values = {sum.value};
    return sum;
}

} // namespace gapwise
