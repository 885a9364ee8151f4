#include "models/check/words.h"

#include "geometry/base/overloaded.h"
#include "models/check/carrier.h"
#include "models/check/face_words.h"
#include "models/check/mistakes.h"

#include <fmt/format.h>

#include <cmath>

namespace gapwise {

namespace {

std::string degreesText(Degrees angle) {
    return fmt::format("{:.4g}°", std::round(angle.value * 10.0) / 10.0);
}

std::string indexWord(const Frame& frame, const PartId& part) {
    const PartType* type = frame.typeOf(part);
    return std::string{wordOf(type ? type->index : IndexKind::None)};
}

/// Where the drain was in a view, for the one who set the part in it.
std::string drainWords(const View& view, const std::optional<Attitude>& attitude) {
    const Degrees drain = wrapped(view.top + Degrees{180.0});
    if (!attitude)
        return fmt::format("at {} in your picture", hoursAndMinutes(drain));
    const std::string_view word = benchWord(drain, attitude->up);
    if (attitude->up == EndUp::Level)
        return drain == Degrees{0.0} ? "on top" : fmt::format("pointing {}", word);
    if (word == "left" || word == "right")
        return fmt::format("to your {}", word);
    return word == "away" ? "away from you" : std::string{word};
}

/// Why the view in which the part was set misled: `the drain was away from you`.
std::string misleadingView(const Telling& telling, const View& view, Side ruleSide) {
    const std::string drain = drainWords(view, telling.build.attitude);
    const bool inletUp = within(view.top, Degrees{0.0}, Degrees{15.0});
    if (view.side == ruleSide)
        return fmt::format("but the drain was {}", drain);
    if (inletUp)
        return fmt::format("but you were looking from the {} side", nameOf(view.side));
    return fmt::format("but you were looking from the {} side, with the drain {}", nameOf(view.side), drain);
}

Side ruleSideOf(const Rule& rule, const View& view) {
    const PrintedClock* printed = printedClockOf(rule);
    return printed ? printed->seenFrom.value_or(view.side) : Side::Compressor;
}

std::string twinParts(const Frame& frame, const Rule& rule) {
    const Rule* twin = rule.twin ? frame.rule(*rule.twin) : nullptr;
    return twin ? partsOf(*twin).front().text : "the other end";
}

/// Seen by who holds the wrench, a right-hand thread tightens clockwise.
std::string wrongHandWords(const Frame& frame, const Rule& rule) {
    const auto* hand = std::get_if<HandRule>(&rule.demand);
    const Fastener* fastener = hand ? frame.fastener(hand->fastener) : nullptr;
    const bool leftHand = fastener && !fastener->tightensClockwise;
    return fmt::format("turned as a {}-hand thread is tightened, which slackens this one",
                       leftHand ? "right" : "left");
}

std::string mistakeWords(const Frame& frame, const Rule& rule, Mistake mistake) {
    switch (mistake) {
    case Mistake::MirroredView: return "read from the other side (mirrored left to right)";
    case Mistake::UpsideDown: return "half a turn, as when the drain lies where the inlet should be";
    case Mistake::EndOverEnd: return "tipped end over end: read from the other side with the drain on top";
    case Mistake::OtherEndRule: return fmt::format("the rule of {} at the other end", twinParts(frame, rule));
    case Mistake::OtherVariantRule:
        return fmt::format("the rule of the sister variant {}", frame.sister ? frame.sister->text : "");
    case Mistake::QuarterTurn: return "a quarter turn, as when the drain lies to the left or right";
    case Mistake::Reversed: return "put in the other way round";
    case Mistake::WrongHand: return wrongHandWords(frame, rule);
    case Mistake::SwappedEnds: break;
    }
    return "the parts of the two places exchanged";
}

std::string mistakesWords(const Telling& telling) {
    const Finding& finding = telling.finding;
    const Rule& rule = *finding.verdict.rule;
    if (finding.mistakes.empty())
        return {};
    std::string words = finding.mistakes.size() == 1 ? "Likely mistake: " : "Likely mistakes: ";
    for (std::size_t i = 0; i < finding.mistakes.size(); ++i)
        words += (i == 0 ? "" : "; or ") + mistakeWords(telling.frame, rule, finding.mistakes[i]);
    return words + ".";
}

std::string asPrintedWords(const Telling& telling) {
    const Finding& finding = telling.finding;
    if (!finding.asPrinted.value_or(false) || !finding.asSeen)
        return {};
    const Rule& rule = *finding.verdict.rule;
    const View& view = finding.asSeen->view;
    return fmt::format("You set it where the sheet says, at {} as you saw it; {}.",
                       hoursAndMinutes(finding.asSeen->clock),
                       misleadingView(telling, view, ruleSideOf(rule, view)));
}

std::string seenFromWords(Side side) {
    return fmt::format("seen from the {} side, inlet on top", nameOf(side));
}

std::string carriedWords(const Telling& telling, const PartId& meant) {
    const HousingClock clock = housingClockOf(telling.frame, telling.build, seatOf(meant));
    return clock.onCarrier
               ? fmt::format(", read from the mark of {}, which still carries it", clock.carrier.text)
               : std::string{};
}

std::string directionWords(const Telling& telling, const DirectionCompared& compared) {
    const Verdict& verdict = telling.finding.verdict;
    const PartId meant = partsOf(*verdict.rule).front();
    const bool pin = std::holds_alternative<EngagedRule>(verdict.rule->demand);
    const std::string index = pin ? "notch or hole" : indexWord(telling.frame, verdict.parts.front());
    const std::string demanded = pin ? "its pin is at" : "the rule says";
    if (!compared.actual)
        return fmt::format("{}: {} {} ± {}, {}; {}.", verdict.parts.front().text, demanded,
                           hoursAndMinutes(compared.expected), degreesText(compared.tolerance),
                           seenFromWords(compared.seenFrom), verdict.notKnown);
    return fmt::format("{}: the {} is at {}, {} {} ± {} (both {}{}): {} off.", verdict.parts.front().text,
                       index, hoursAndMinutes(*compared.actual), demanded, hoursAndMinutes(compared.expected),
                       degreesText(compared.tolerance), seenFromWords(compared.seenFrom),
                       carriedWords(telling, meant),
                       degreesText(Degrees{std::abs(compared.deviation->value)}));
}

std::string apartWords(const Telling& telling, const ApartCompared& compared) {
    const Verdict& verdict = telling.finding.verdict;
    std::string parts;
    for (const PartId& part : verdict.parts)
        parts += (parts.empty() ? "" : ", ") + part.text;
    const bool marks = std::holds_alternative<MatchMarksRule>(verdict.rule->demand);
    const std::string demand =
        marks ? fmt::format("their match marks line up within {}", degreesText(compared.tolerance))
              : fmt::format("their gaps are {} ± {} apart", degreesText(compared.expected),
                            degreesText(compared.tolerance));
    if (!compared.actual)
        return fmt::format("{}: the rule says {}; {}.", parts, demand, verdict.notKnown);
    return fmt::format("{}: the rule says {}; they are {} apart.", parts, demand,
                       degreesText(*compared.actual));
}

std::string clearWords(const Telling& telling, const ClearCompared& compared) {
    const Verdict& verdict = telling.finding.verdict;
    const Feature* feature = telling.frame.feature(compared.feature).feature;
    const std::string name = feature && !feature->name.empty() ? feature->name : compared.feature.text;
    if (!compared.actual)
        return fmt::format("{}: its gap must clear the {}; {}.", verdict.parts.front().text, name,
                           verdict.notKnown);
    return fmt::format(
        "{}: the gap lies {} from the middle of the {} that crosses its groove; the whole gap clears it "
        "from {} on: {} short.",
        verdict.parts.front().text, degreesText(*compared.actual), name, degreesText(compared.needed),
        degreesText(Degrees{std::abs(compared.deviation->value)}));
}

std::string faceWords(const Telling& telling, const FaceCompared& compared) {
    const Verdict& verdict = telling.finding.verdict;
    const auto& demand = std::get<FaceRule>(verdict.rule->demand);
    const std::string toward =
        std::visit(Overloaded{[](const PartId& part) { return fmt::format("toward {}", part.text); },
                              [](Side side) { return fmt::format("to the {} side", nameOf(side)); }},
                   demand.toward);
    const Side eye = telling.currentView.side;
    const PartType* type = telling.frame.typeOf(verdict.parts.front());
    const std::string visible{compared.expected == eye ? compared.face
                                                       : otherFaceWord(type ? type->face : FaceKind::None)};
    const std::string rule =
        fmt::format("the {} face must look {}; so from the {} side, where you look from, you must "
                    "see the {} face",
                    compared.face, toward, nameOf(eye), visible);
    if (!compared.actual)
        return fmt::format("{}: {}; {}.", verdict.parts.front().text, rule, verdict.notKnown);
    return fmt::format("{}: {}. It is the other way round: turn it over; its {} stays where it is.",
                       verdict.parts.front().text, rule, indexWord(telling.frame, verdict.parts.front()));
}

/// What a fact is told of: a fastener by its name, an order, what really is in the seat; else the seat.
std::string subjectOf(const Telling& telling) {
    const Verdict& verdict = telling.finding.verdict;
    return std::visit(Overloaded{[&](const HandRule& hand) {
                                     const Fastener* fastener = telling.frame.fastener(hand.fastener);
                                     return fastener
                                                ? fmt::format("{} ({})", fastener->id.text, fastener->name)
                                                : hand.fastener.text;
                                 },
                                 [](const OrderRule&) { return std::string{"Order"}; },
                                 [&](const ConditionRule&) { return verdict.parts.front().text; },
                                 [&](const auto&) { return seatOf(partsOf(*verdict.rule).front()).text; }},
                      verdict.rule->demand);
}

std::string factWords(const Telling& telling, const FactCompared& compared) {
    const Verdict& verdict = telling.finding.verdict;
    const std::string subject = subjectOf(telling);
    if (verdict.state == RuleState::Broken)
        return fmt::format("{}: the rule says {}; found {}.", subject, compared.expected, compared.actual);
    return fmt::format("{}: the rule says {}; {}.", subject, compared.expected, verdict.notKnown);
}

/// The question's half for one mistake: `was the drain away from you (inlet down)`.
std::string askFor(const Frame& frame, const Rule& rule, Mistake mistake) {
    const PrintedClock* printed = printedClockOf(rule);
    const Side ruleSide = printed ? printed->seenFrom.value_or(Side::Compressor) : Side::Compressor;
    switch (mistake) {
    case Mistake::MirroredView:
        return fmt::format("did you look from the {} side", nameOf(opposite(ruleSide)));
    case Mistake::UpsideDown: return "was the drain away from you, or on top";
    case Mistake::EndOverEnd:
        return fmt::format("did you look from the {} side with the drain away from you, or on top",
                           nameOf(opposite(ruleSide)));
    case Mistake::OtherEndRule: return fmt::format("did you read the rule of {}", twinParts(frame, rule));
    case Mistake::OtherVariantRule:
        return fmt::format("did you read the sheet of {}",
                           frame.sister ? frame.sister->text : "the sister variant");
    case Mistake::QuarterTurn: return "did the drain lie to your left or right";
    case Mistake::Reversed: return "was it put in the other way round";
    case Mistake::WrongHand: return "was it turned the other way";
    case Mistake::SwappedEnds: break;
    }
    return "were the two parts exchanged";
}

/// A broken rule with nothing left unknown, but confirmed by nobody before it went out of sight.
std::string unconfirmedWords(const Verdict& verdict) {
    return fmt::format("{}: {}; look at it again, or have its confirmation named.",
                       verdict.parts.front().text, verdict.notKnown);
}

bool comparedInFull(const Compared& compared) {
    return std::visit(Overloaded{[](const FactCompared& c) { return !c.actual.empty(); },
                                 [](const auto& c) { return c.actual.has_value(); }},
                      compared);
}

} // namespace

std::string wordsOf(const TurnHint& turn) {
    const bool half = std::abs(turn.size.value - 180.0) < 0.05;
    const bool quarter = std::abs(turn.size.value - 90.0) < 0.05;
    return fmt::format("Turn it {}{} {}, as seen from the {} side.", degreesText(turn.size),
                       half ? " (half a turn)" : (quarter ? " (a quarter turn)" : ""),
                       turn.clockwise ? "clockwise" : "counter-clockwise", nameOf(turn.side));
}

std::string questionOf(const Frame& frame, const Finding& finding) {
    if (finding.mistakes.size() < 2 || finding.asPrinted.value_or(false))
        return {};
    std::string words = "When you set it: ";
    for (std::size_t i = 0; i < finding.mistakes.size(); ++i)
        words += (i == 0 ? "" : "; or ") + askFor(frame, *finding.verdict.rule, finding.mistakes[i]);
    return words + "?";
}

std::string wordsOf(const Telling& telling) {
    const Finding& finding = telling.finding;
    if (finding.verdict.state == RuleState::Open && comparedInFull(finding.verdict.compared) &&
        !finding.verdict.notKnown.empty())
        return unconfirmedWords(finding.verdict);
    std::string words =
        std::visit(Overloaded{[&](const FactCompared& c) { return factWords(telling, c); },
                              [&](const DirectionCompared& c) { return directionWords(telling, c); },
                              [&](const ApartCompared& c) { return apartWords(telling, c); },
                              [&](const ClearCompared& c) { return clearWords(telling, c); },
                              [&](const FaceCompared& c) { return faceWords(telling, c); }},
                   finding.verdict.compared);
    const std::string printed = asPrintedWords(telling);
    const bool isFace = std::holds_alternative<FaceCompared>(finding.verdict.compared);
    const std::string why = !printed.empty() ? printed : (isFace ? std::string{} : mistakesWords(telling));
    if (!why.empty())
        words += " " + why;
    if (finding.turn)
        words += " " + wordsOf(*finding.turn);
    return words;
}

} // namespace gapwise
