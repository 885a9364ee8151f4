#include "models/chain/causes.h"

#include "models/chain/diagnosis_words.h"
#include "models/chain/effects.h"
#include "models/chain/gap_fit.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace gapwise {

namespace {

// What is known before a gap is read, on the scale of chi-squared: −2·ln of how often, against the wear of a
// part that has run.
constexpr double kNewPartWorn = 6.0; ///< One in twenty.
constexpr double kFault = 2.4;       ///< Three in ten.
constexpr double kChoice = 3.2;      ///< Two in ten.
constexpr double kNoneOfThese = 6.0; ///< One in twenty.

/// A part reading counts no more than this: one in four hundred is of another piece or wrongly noted.
constexpr double kReadingMost = 12.0;

/// Half a micrometre: no part is known better.
constexpr double kLeastStandardMm = 0.0005;

constexpr double kPlausibleZ = 2.326; ///< 99 %
constexpr double kAbsurdZ = 3.090;    ///< 99.9 %
constexpr double kNextToNothing = 0.001;

/// A cause before it is held against the others.
struct Candidate {
    Cause cause{};
    double gapMisfit = 0.0;
    double readingMisfit = 0.0;
    std::size_t readings = 0; ///< Part readings that it had to agree with.
    double prior = 0.0;
};

double priorOf(const Investigation& seen, const Change& change) {
    switch (change.kind) {
    case ChangeKind::Wear: return seen.known.renewed.contains(change.part) ? kNewPartWorn : 0.0;
    case ChangeKind::Choice: return kChoice;
    case ChangeKind::Fault: return kFault;
    }
    return 0.0;
}

std::vector<double> effectsOf(const Investigation& seen, const Change& change) {
    std::vector<double> effects;
    for (const ReadGap& gap : seen.gaps)
        effects.push_back(effectOn(*gap.chain, change, seen.values));
    return effects;
}

double againstReading(const Contradiction& contradiction) {
    const MeasuredValue& read = contradiction.reading->value;
    const double standard = std::max(read.expanded / 2.0, kLeastStandardMm);
    return std::pow((contradiction.expectedMm - read.value) / standard, 2);
}

void sortGaps(Cause& cause, const Investigation& seen, const std::vector<double>& effects) {
    for (std::size_t i = 0; i < seen.gaps.size(); ++i) {
        const ReadGap& gap = seen.gaps[i];
        if (!gap.moved())
            continue;
        const bool explained = std::abs(gap.deviationMm() - effects[i] * cause.lengthMm) <= gap.allowedMm();
        (explained ? cause.explains : cause.leaves).push_back(gap.chain->id);
    }
}

std::optional<Candidate> candidateOf(const Investigation& seen, const GapFit& gaps, const Change& change) {
    const std::vector<double> effects = effectsOf(seen, change);
    const std::optional<LengthFit> fit = gaps.fit(effects);
    if (!fit || (change.kind == ChangeKind::Wear && fit->lengthMm <= 0.0))
        return std::nullopt;
    Candidate candidate{.cause = {.change = &change,
                                  .name = causeName(change, fit->lengthMm),
                                  .lengthMm = fit->lengthMm,
                                  .standardMm = fit->standardMm},
                        .gapMisfit = fit->misfit,
                        .prior = priorOf(seen, change)};
    if (candidate.cause.name.empty())
        return std::nullopt;
    for (const Contradiction& contradiction : contradictionsOf(seen, change, fit->lengthMm)) {
        candidate.readingMisfit += againstReading(contradiction);
        ++candidate.readings;
    }
    candidate.readingMisfit = std::min(candidate.readingMisfit, kReadingMost);
    candidate.cause.misfit = candidate.gapMisfit + candidate.readingMisfit;
    sortGaps(candidate.cause, seen, effects);
    candidate.cause.why = whyWords(seen, candidate.cause);
    return candidate;
}

bool plausible(const Candidate& candidate, std::size_t gaps) {
    return candidate.gapMisfit <= chiSquaredBound(gaps - 1, kPlausibleZ) + 1e-9 &&
           candidate.readingMisfit < kReadingMost &&
           candidate.readingMisfit <= chiSquaredBound(candidate.readings, kPlausibleZ);
}

/// How likely each candidate is and, last, that it is none; together 1.
std::vector<double> likelihoods(const std::vector<Candidate>& candidates, std::size_t gaps) {
    std::vector<double> logs;
    for (const Candidate& candidate : candidates)
        logs.push_back(-(candidate.cause.misfit + candidate.prior) / 2.0);
    logs.push_back(-(chiSquaredBound(gaps - 1, kAbsurdZ) + kNoneOfThese) / 2.0);
    const double greatest = std::ranges::max(logs);
    double sum = 0.0;
    for (double& each : logs)
        sum += each = std::exp(each - greatest);
    for (double& each : logs)
        each /= sum;
    return logs;
}

} // namespace

std::string causeName(const Change& change, double lengthMm) {
    if (lengthMm >= 0.0)
        return change.name;
    using Pair = std::pair<std::string_view, std::string_view>;
    constexpr std::array kOpposites{Pair{"longer", "shorter"},  Pair{"long", "short"},
                                    Pair{"thicker", "thinner"}, Pair{"thick", "thin"},
                                    Pair{"larger", "smaller"},  Pair{"large", "small"},
                                    Pair{"wider", "narrower"},  Pair{"higher", "lower"}};
    for (const auto& [word, opposite] : kOpposites)
        if (const std::size_t at = change.name.find(word); at != std::string::npos)
            return std::string{change.name}.replace(at, word.size(), opposite);
    return {};
}

std::vector<Contradiction> contradictionsOf(const Investigation& seen, const Change& change,
                                            double lengthMm) {
    std::vector<Contradiction> contradictions;
    for (const Term& move : change.moves)
        if (const PartEvidence* reading = seen.part(move.of); reading != nullptr && !reading->blind)
            contradictions.push_back(
                {.reading = reading, .expectedMm = reading->value.value + move.sign * lengthMm});
    return contradictions;
}

Ranking causesOf(const Investigation& seen) {
    const GapFit gaps{seen};
    std::vector<Candidate> candidates;
    for (const Change& change : seen.frame.changes)
        if (std::optional<Candidate> candidate = candidateOf(seen, gaps, change))
            candidates.push_back(std::move(*candidate));
    const std::vector<double> likely = likelihoods(candidates, seen.gaps.size());
    for (std::size_t i = 0; i < candidates.size(); ++i)
        candidates[i].cause.likelihood = likely[i];
    std::ranges::stable_sort(candidates, std::ranges::greater{},
                             [](const Candidate& candidate) { return candidate.cause.likelihood; });
    Ranking ranking{.causes = {}, .unexplained = likely.back()};
    ranking.explained = !candidates.empty() && candidates.front().cause.likelihood > ranking.unexplained &&
                        plausible(candidates.front(), seen.gaps.size());
    for (Candidate& candidate : candidates)
        if (candidate.cause.likelihood >= kNextToNothing)
            ranking.causes.push_back(std::move(candidate.cause));
    return ranking;
}

} // namespace gapwise
