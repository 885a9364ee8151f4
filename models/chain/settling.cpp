#include "models/chain/settling.h"

#include "models/chain/effects.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

constexpr double kLikely = 0.02;
constexpr std::size_t kMost = 3;
/// Something else is always possible: with so much likelihood a reading would be as it is taken to be.
constexpr double kElse = 0.1;
// How well parts and gaps can be read: standard uncertainties of a micrometer and of feelers or a dial.
constexpr double kPartStandardMm = 0.002;
constexpr double kGapStandardMm = 0.005;
constexpr double kSameMm = 0.0005;
/// What differs by less than three standard uncertainties tells nothing.
constexpr double kTelling = 3.0;

/// A reading that could be taken, with the value to expect under each likely cause.
struct Proposal {
    Frame::FoundQuantity found{};
    const Method* method = nullptr;
    double asItIsMm = 0.0; ///< With none of the causes.
    double standardMm = 0.0;
    bool ofPart = false;
    std::vector<double> expected{}; ///< One a cause.
};

std::vector<Cause> likelyOnes(const std::vector<Cause>& causes) {
    std::vector<Cause> likely;
    std::ranges::copy_if(causes, std::back_inserter(likely),
                         [](const Cause& cause) { return cause.likelihood > kLikely; });
    return likely;
}

/// The method that the limit is for, else the first that sees; null where all are blind.
const Method* seeingMethod(const Measurement& measurement, const Quantity& quantity) {
    if (const Method* usual = measurement.method(quantity.limits.method);
        usual != nullptr && usual->blind.empty())
        return usual;
    const auto found = std::ranges::find_if(measurement.methods, &std::string::empty, &Method::blind);
    return found != measurement.methods.end() ? &*found : nullptr;
}

/// What can be read of a quantity itself; nothing where it is only reckoned, or no method sees.
std::optional<Proposal> readable(const Frame& frame, const QuantityId& id) {
    Proposal proposal{.found = frame.quantity(id)};
    if (proposal.found.quantity == nullptr || !proposal.found.quantity->from.empty())
        return std::nullopt;
    proposal.method = seeingMethod(*proposal.found.measurement, *proposal.found.quantity);
    if (proposal.method == nullptr && !proposal.found.measurement->methods.empty())
        return std::nullopt;
    return proposal;
}

std::optional<Proposal> partProposal(const Investigation& seen, const Dimension& dimension,
                                     const std::vector<Cause>& causes) {
    const PartEvidence* read = seen.part(dimension.id);
    std::optional<Proposal> proposal = readable(seen.frame, dimension.id);
    if (!proposal || (read != nullptr && !read->blind))
        return std::nullopt;
    proposal->ofPart = true;
    proposal->asItIsMm = seen.values.at(dimension.id).valueMm;
    proposal->standardMm = kPartStandardMm;
    for (const Cause& cause : causes)
        proposal->expected.push_back(
            movedBy(*cause.change, cause.lengthMm, seen.values).at(dimension.id).valueMm);
    return proposal;
}

std::optional<Proposal> gapProposal(const Investigation& seen, const Chain& chain,
                                    const std::vector<Cause>& causes) {
    std::optional<Proposal> proposal = readable(seen.frame, chain.id);
    if (!proposal || seen.gap(chain.id) != nullptr)
        return std::nullopt;
    const Prediction predicted = predict(chain, seen.values);
    proposal->asItIsMm = predicted.valueMm;
    proposal->standardMm = std::hypot(kGapStandardMm, predicted.standardMm);
    for (const Cause& cause : causes)
        proposal->expected.push_back(predicted.valueMm +
                                     cause.lengthMm * effectOn(chain, *cause.change, seen.values));
    return proposal;
}

/// How far the likely causes lie apart in this reading, against how well it can be read.
double telling(const Proposal& proposal, const std::vector<Cause>& causes) {
    double weights = kElse;
    double mean = kElse * proposal.asItIsMm;
    for (std::size_t i = 0; i < causes.size(); ++i) {
        weights += causes[i].likelihood;
        mean += causes[i].likelihood * proposal.expected[i];
    }
    mean /= weights;
    double variance = kElse * std::pow(proposal.asItIsMm - mean, 2);
    for (std::size_t i = 0; i < causes.size(); ++i)
        variance += causes[i].likelihood * std::pow(proposal.expected[i] - mean, 2);
    return std::sqrt(variance / weights) / proposal.standardMm;
}

bool tells(const Proposal& proposal) {
    return std::ranges::any_of(proposal.expected, [&](double expected) {
        return std::abs(expected - proposal.asItIsMm) > kTelling * proposal.standardMm;
    });
}

/// `if it is worn by 0.085`, `with “spacer longer” by 0.020`.
std::string conditionWords(const Proposal& proposal, const Cause& cause) {
    const double length = std::abs(cause.lengthMm);
    if (proposal.ofPart && cause.change->kind == ChangeKind::Wear)
        return fmt::format("if it is worn by {:.3f}", length);
    return fmt::format("with “{}” by {:.3f}", cause.name, length);
}

/// `3.415 if it is worn by 0.085, 3.500 if not`.
std::string expectedWords(const Proposal& proposal, const std::vector<Cause>& causes) {
    std::string words;
    for (std::size_t i = 0; i < causes.size(); ++i)
        if (std::abs(proposal.expected[i] - proposal.asItIsMm) > kSameMm)
            words += fmt::format("{:.3f} {}, ", proposal.expected[i], conditionWords(proposal, causes[i]));
    return words + fmt::format("{:.3f} if not", proposal.asItIsMm);
}

Settling settlingOf(const Proposal& proposal, const std::vector<Cause>& causes) {
    const std::string method = proposal.method != nullptr ? proposal.method->words : "";
    const std::string& name = proposal.found.quantity->name;
    return {.quantity = proposal.found.quantity->id,
            .method = method,
            .words = fmt::format("{}{}{}: {}", name, method.empty() ? "" : ", ", method,
                                 expectedWords(proposal, causes))};
}

std::vector<Proposal> proposalsOf(const Investigation& seen, const std::vector<Cause>& causes) {
    std::vector<Proposal> proposals;
    const auto take = [&](const std::optional<Proposal>& proposal) {
        if (proposal && tells(*proposal))
            proposals.push_back(*proposal);
    };
    for (const Dimension& dimension : seen.frame.dimensions)
        take(partProposal(seen, dimension, causes));
    for (const Chain& chain : seen.frame.chains)
        take(gapProposal(seen, chain, causes));
    return proposals;
}

} // namespace

std::vector<Settling> settlingsOf(const Investigation& seen, const std::vector<Cause>& causes) {
    const std::vector<Cause> likely = likelyOnes(causes);
    std::vector<Proposal> proposals = proposalsOf(seen, likely);
    std::ranges::stable_sort(proposals, std::ranges::greater{},
                             [&](const Proposal& proposal) { return telling(proposal, likely); });
    std::vector<Settling> settlings;
    for (std::size_t i = 0; i < std::min(proposals.size(), kMost); ++i)
        settlings.push_back(settlingOf(proposals[i], likely));
    return settlings;
}

} // namespace gapwise
