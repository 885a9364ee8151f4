#include "models/measure/parts.h"

#include "models/build/names.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace gapwise {

namespace {

constexpr std::array kFromBestToWorst{Standing::NotRead,   Standing::NoLimit,   Standing::Within,
                                      Standing::NotJudged, Standing::NotProven, Standing::Between,
                                      Standing::Beyond};

bool isWorse(Standing one, Standing other) {
    const auto rank = [](Standing standing) { return std::ranges::find(kFromBestToWorst, standing); };
    return rank(one) > rank(other);
}

bool blank(const std::string& text) {
    return text.find_first_not_of(" \t\n") == std::string::npos;
}

std::string spaced(std::string_view word) {
    std::string text{word};
    std::ranges::replace(text, '_', ' ');
    return text;
}

bool isSpoiled(PartCondition condition) {
    return condition != PartCondition::AsNew && condition != PartCondition::WornInLimits;
}

std::string listed(const std::vector<QuantityId>& ids) {
    std::string text;
    for (const QuantityId& id : ids)
        text += (text.empty() ? "" : ", ") + id.text;
    return text;
}

std::string standingWords(const PartVerdict& verdict) {
    const std::string because = listed(verdict.because);
    switch (verdict.worst) {
    case Standing::NotRead: return "not measured";
    case Standing::NoLimit: return "measured, without limits";
    case Standing::Within: return "in size";
    case Standing::NotJudged: return "not judged: " + because;
    case Standing::NotProven: return "not proven: " + because;
    case Standing::Between: return "worn within its limit: " + because;
    case Standing::Beyond: break;
    }
    return "beyond its limit: " + because;
}

std::string_view doneWords(PartFate fate) {
    switch (fate) {
    case PartFate::Reuse: return "reused";
    case PartFate::Renew: return "renewed";
    case PartFate::Reject: break;
    }
    return "rejected";
}

std::string decisionWords(const PartDecision& decision) {
    std::string words = fmt::format("found {}, {}", spaced(nameIn(kConditionWords, decision.condition)),
                                    doneWords(decision.fate));
    if (!blank(decision.by))
        words += " by " + decision.by;
    if (!blank(decision.reason))
        words += fmt::format(" ({})", decision.reason);
    if (!blank(decision.concession))
        words += ", concession " + decision.concession;
    if (!blank(decision.cause))
        words += ", suspected cause: " + decision.cause;
    return words;
}

std::string neededWords(Standing worst) {
    if (worst == Standing::Beyond)
        return "renew or reject it";
    return worst == Standing::Between ? "a named person decides, with a reason" : std::string{};
}

void close(PartVerdict& verdict) {
    const bool decided = verdict.decision.has_value();
    const std::string lack = decided ? lackOf(*verdict.decision, verdict.worst) : neededWords(verdict.worst);
    verdict.open = !lack.empty();
    const bool isNew = decided && verdict.decision->fate == PartFate::Renew;
    verdict.words =
        isNew && verdict.worst == Standing::Within ? "the new one is in size" : standingWords(verdict);
    if (decided)
        verdict.words += "; " + decisionWords(*verdict.decision);
    if (verdict.open)
        verdict.words += (decided ? ". Not enough: " : "; open: ") + lack;
    verdict.words += ".";
    if (isNew && verdict.worst == Standing::Beyond)
        verdict.words += " What was read is the old part: measure the new one.";
}

} // namespace

std::string lackOf(const PartDecision& decision, Standing worst) {
    if (decision.fate != PartFate::Reuse)
        return {};
    if ((worst == Standing::Beyond || isSpoiled(decision.condition)) && blank(decision.concession))
        return worst == Standing::Beyond
                   ? "beyond a limit a part is used again only with the number of a concession"
                   : fmt::format("a part found {} is used again only with the number of a concession",
                                 spaced(nameIn(kConditionWords, decision.condition)));
    const bool asks = worst == Standing::Between || worst == Standing::Beyond;
    if (asks && blank(decision.by))
        return "the name of the person who decides";
    return asks && blank(decision.reason) ? "the reason" : std::string{};
}

std::vector<PartVerdict> partVerdicts(const Frame& frame, const Build& build,
                                      const std::vector<QuantityResult>& quantities) {
    std::vector<PartVerdict> verdicts;
    for (const Part& part : frame.parts) {
        PartVerdict verdict{.part = part.id};
        bool concerns = false;
        for (const QuantityResult& result : quantities) {
            if (result.quantity->part != part.id)
                continue;
            concerns = true;
            if (isWorse(result.standing, verdict.worst)) {
                verdict.worst = result.standing;
                verdict.because.clear();
            }
            if (result.standing == verdict.worst)
                verdict.because.push_back(result.quantity->id);
        }
        const auto decision = std::ranges::find(build.decisions, part.id, &PartDecision::part);
        if (decision != build.decisions.end())
            verdict.decision = *decision;
        if (!concerns && !verdict.decision)
            continue;
        close(verdict);
        verdicts.push_back(std::move(verdict));
    }
    return verdicts;
}

} // namespace gapwise
