#include "models/chain/diagnosis_words.h"

#include "models/chain/causes.h"
#include "models/chain/effects.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <ranges>

namespace gapwise {

namespace {

/// `a`, `a and b`, `a, b and c`.
std::string listed(const std::vector<std::string>& words, const char* last = "and") {
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (i > 0)
            text += i + 1 == words.size() ? fmt::format(" {} ", last) : ", ";
        text += words[i];
    }
    return text;
}

std::string capitalised(std::string text) {
    if (!text.empty() && text.front() >= 'a' && text.front() <= 'z')
        text.front() = static_cast<char>(text.front() - 'a' + 'A');
    return text;
}

std::string ids(const std::vector<QuantityId>& quantities) {
    std::vector<std::string> words;
    for (const QuantityId& id : quantities)
        words.push_back(id.text);
    return listed(words);
}

/// `collar A, running face worn by 0.085`.
std::string nameWithLength(const Cause& cause) {
    return fmt::format("{} by {:.3f}", cause.name, std::abs(cause.lengthMm));
}

/// Gaps that did not move and would have, with the cause.
std::vector<QuantityId> wouldHaveMoved(const Investigation& seen, const Cause& cause) {
    std::vector<QuantityId> gaps;
    for (const ReadGap& gap : seen.gaps) {
        const double effect = effectOn(*gap.chain, *cause.change, seen.values) * cause.lengthMm;
        if (!gap.moved() && std::abs(gap.deviationMm() - effect) > gap.allowedMm())
            gaps.push_back(gap.chain->id);
    }
    return gaps;
}

std::string gapWords(const Investigation& seen, const Cause& cause) {
    const std::vector<QuantityId> absent = wouldHaveMoved(seen, cause);
    std::vector<std::string> words;
    if (!cause.leaves.empty())
        words.push_back("leaves " + ids(cause.leaves) + " unexplained");
    if (!absent.empty())
        words.push_back("would have moved " + ids(absent) + " too");
    return words.empty() ? "fits every gap that was read" : listed(words);
}

/// `the thrust bearing, thickness over the pads, was measured at 5.000: it would read 4.915`.
std::string contradictionWords(const Investigation& seen, const Contradiction& contradiction) {
    const MeasuredValue& read = contradiction.reading->value;
    return fmt::format("{} was measured at {:.3f} and would read {:.3f}",
                       seen.values.at(read.id).dimension->name, read.value, contradiction.expectedMm);
}

/// A reading of what the change moves, by a method that cannot see it; null where there is none.
const PartEvidence* blindReading(const Investigation& seen, const Change& change) {
    for (const Term& move : change.moves)
        if (const PartEvidence* reading = seen.part(move.of); reading != nullptr && reading->blind)
            return reading;
    return nullptr;
}

std::vector<std::string> partWords(const Investigation& seen, const Cause& cause) {
    std::vector<std::string> words;
    for (const Contradiction& each : contradictionsOf(seen, *cause.change, cause.lengthMm))
        if (std::abs(each.expectedMm - each.reading->value.value) > each.reading->value.expanded)
            words.push_back(contradictionWords(seen, each));
    if (const PartEvidence* reading = blindReading(seen, *cause.change))
        words.push_back(fmt::format("{} was read as {:.3f} by a method that cannot see it{}{}",
                                    seen.values.at(reading->value.id).dimension->name, reading->value.value,
                                    reading->method.empty() ? "" : ": ", reading->method));
    if (cause.change->kind == ChangeKind::Wear && seen.known.renewed.contains(cause.change->part))
        words.push_back("the part is new");
    return words;
}

/// `c is 0.085 larger, N_C 0.085 smaller`.
std::string movedWords(const Investigation& seen) {
    std::vector<std::string> words;
    for (const ReadGap& gap : seen.gaps)
        if (gap.moved())
            words.push_back(fmt::format("{}{} {:.3f} {}", gap.chain->id.text, words.empty() ? " is" : "",
                                        std::abs(gap.deviationMm()),
                                        gap.deviationMm() < 0.0 ? "smaller" : "larger"));
    return listed(words) + " than the parts say.";
}

/// What the nose depths tell: which of the two stops of the rotor moved. Common practice, no source.
std::string stopWords(const Investigation& seen) {
    const ReadGap* toCompressor = seen.gap(QuantityId{"N_C"});
    const ReadGap* toTurbine = seen.gap(QuantityId{"N_T"});
    if (toCompressor == nullptr || toTurbine == nullptr || (!toCompressor->moved() && !toTurbine->moved()))
        return "";
    if (!toTurbine->moved())
        return " N_C moved and N_T did not: the stop on the turbine side of the thrust bearing moved.";
    if (!toCompressor->moved())
        return " N_T moved and N_C did not: the stop on the compressor side of the thrust bearing moved, or "
               "the "
               "distance between the running faces.";
    if (std::abs(toCompressor->deviationMm() - toTurbine->deviationMm()) <= kMovedLeastMm)
        return " N_C and N_T moved alike: the rotor or the cover stands elsewhere, and the stops are as far "
               "apart "
               "as before.";
    return " N_C and N_T both moved, and not alike: more than one place changed.";
}

/// Causes that the gaps cannot tell from the first: at least a fifth as likely.
std::vector<std::string> firstCauses(const Diagnosis& diagnosis) {
    constexpr double kAsGood = 0.2;
    std::vector<std::string> names;
    for (const Cause& cause : diagnosis.causes)
        if (cause.likelihood >= kAsGood * diagnosis.causes.front().likelihood)
            names.push_back(nameWithLength(cause));
    return names;
}

std::string causeWords(const Diagnosis& diagnosis) {
    if (!diagnosis.explained)
        return diagnosis.causes.empty()
                   ? " No single change explains it: read again, and look for two changes at once."
                   : fmt::format(" No single change explains it. {}: {}.",
                                 capitalised(nameWithLength(diagnosis.causes.front())),
                                 diagnosis.causes.front().why);
    const std::vector<std::string> names = firstCauses(diagnosis);
    if (names.size() == 1)
        return fmt::format(" {}: {}.", capitalised(names.front()), diagnosis.causes.front().why);
    return fmt::format(" {} would fit.", capitalised(listed(names, "or")));
}

std::string settleWords(const Diagnosis& diagnosis) {
    return diagnosis.settles.empty() ? ""
                                     : fmt::format(" To settle it read {}.", diagnosis.settles.front().words);
}

/// A measured link that is off its drawing size by more than its tolerance and its reading allow.
std::optional<std::string> offDrawingWords(const Investigation& seen, const LinkShare& link) {
    const DimensionValue& value = seen.values.at(link.of);
    const double off = value.valueMm - value.dimension->nominalMm;
    if (!value.measured || std::abs(off) <= std::max(value.dimension->toleranceMm, value.halfWidthMm))
        return std::nullopt;
    return fmt::format("{} is {:.3f} {} its drawing size", value.dimension->name, std::abs(off),
                       off < 0.0 ? "under" : "over");
}

std::string windowWords(const Window& window) {
    if (window.least && window.most)
        return fmt::format("{:.3f} to {:.3f}", *window.least, *window.most);
    return window.least ? fmt::format("at least {:.3f}", *window.least)
                        : fmt::format("at most {:.3f}", *window.most);
}

/// A gap that is out of its window and yet what the parts say: they are to blame.
std::string partsToBlame(const Investigation& seen, const ReadGap& gap) {
    const Window window = windowOf(seen.frame, gap.chain->id);
    if (window.empty() || window.holds(gap.value.value))
        return "";
    std::vector<std::string> parts;
    for (const LinkShare& link : gap.predicted.links)
        if (const auto words = offDrawingWords(seen, link))
            parts.push_back(*words);
    return fmt::format(" {} is {:.3f}, out of {}, and the parts explain it{}{}.", gap.chain->id.text,
                       gap.value.value, windowWords(window), parts.empty() ? "" : ": ", listed(parts));
}

} // namespace

std::string whyWords(const Investigation& seen, const Cause& cause) {
    const std::vector<std::string> parts = partWords(seen, cause);
    return gapWords(seen, cause) + (parts.empty() ? "" : "; " + listed(parts));
}

std::string summaryWords(const Investigation& seen, const Diagnosis& diagnosis) {
    if (diagnosis.anythingMoved)
        return movedWords(seen) + stopWords(seen) + causeWords(diagnosis) + settleWords(diagnosis);
    std::string words = "Nothing has moved: what was read is what the parts say.";
    for (const ReadGap& gap : seen.gaps)
        words += partsToBlame(seen, gap);
    return words;
}

} // namespace gapwise
