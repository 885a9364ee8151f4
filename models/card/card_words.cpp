#include "models/card/card_words.h"

#include "geometry/base/overloaded.h"
#include "models/check/face_words.h"

#include <fmt/format.h>

#include <cmath>

namespace gapwise {

namespace {

std::string degreesText(Degrees angle) {
    return fmt::format("{:.4g}°", std::round(angle.value * 10.0) / 10.0);
}

std::string sideWords(Side side) {
    return fmt::format("from the {} side", nameOf(side));
}

std::string named(const std::vector<PartId>& parts) {
    std::string words;
    for (const PartId& part : parts)
        words += (words.empty() ? "" : ", ") + part.text;
    return words;
}

/// `3:00 from the turbine side, 9:00 from the compressor side`; `12:00 from both sides`.
std::string bothSides(const Clock& clock, Side first) {
    const std::string own = hoursAndMinutes(clock.from(first));
    const std::string other = hoursAndMinutes(clock.from(opposite(first)));
    if (own == other)
        return own + " from both sides";
    return fmt::format("{} {}, {} {}", own, sideWords(first), other, sideWords(opposite(first)));
}

std::string clockWords(const DemandedClock& clock) {
    const std::string on = clock.on.empty() ? "" : fmt::format(" of {} over {}", clock.of.text, clock.on);
    return fmt::format("{}{} at {}; ± {}, inlet on top", clock.what, on,
                       bothSides(clock.target, clock.printedFrom.value_or(Side::Compressor)),
                       degreesText(clock.tolerance));
}

std::string faceWords(const DemandedFace& face) {
    const std::string toward =
        face.toward ? fmt::format("toward {}, to the {} side", face.toward->text, nameOf(face.looks))
                    : fmt::format("to the {} side", nameOf(face.looks));
    return fmt::format("{} face {}; so you see the {} face {}, the {} face {}", faceWord(face.kind), toward,
                       faceWord(face.kind), sideWords(face.looks), otherFaceWord(face.kind),
                       sideWords(opposite(face.looks)));
}

std::string apartWords(const DemandedApart& apart, const CardDemand& demand) {
    const std::string others = named(demand.with);
    if (demand.kind == "match_marks")
        return fmt::format("match mark in one line with those of {}, within {}", others,
                           degreesText(apart.tolerance));
    return fmt::format("gap {} ± {} away from that of {}", degreesText(apart.apart),
                       degreesText(apart.tolerance), others);
}

std::string clearWords(const DemandedClear& clear) {
    const std::string at =
        clear.at ? fmt::format(" ({})", bothSides(*clear.at, Side::Compressor)) : std::string{};
    return fmt::format("whole gap clear of the {}{}: their middles at least {} apart", clear.name, at,
                       degreesText(clear.betweenMiddles));
}

} // namespace

std::string wordsOf(const CardDemand& demand) {
    return std::visit(Overloaded{[](const DemandedFact& fact) { return fact.what; },
                                 [](const DemandedClock& clock) { return clockWords(clock); },
                                 [](const DemandedFace& face) { return faceWords(face); },
                                 [&](const DemandedApart& apart) { return apartWords(apart, demand); },
                                 [](const DemandedClear& clear) { return clearWords(clear); }},
                      demand.demanded);
}

std::string rightSightWords(const PartCard& card, Side eye) {
    const RightSight sight = rightSightOf(card, eye);
    std::string words;
    if (!sight.face.empty())
        words = fmt::format("the {} face", sight.face);
    if (sight.clock)
        words += fmt::format("{}the {} at {} ± {}", words.empty() ? "" : ", ", wordOf(card.index),
                             hoursAndMinutes(*sight.clock), degreesText(sight.tolerance));
    return words;
}

std::string massWords(double massKg) {
    if (massKg < 1.0)
        return fmt::format("{:.3g} g", massKg * 1000.0);
    return fmt::format("{:.3g} kg", massKg);
}

std::string tighteningWords(const CardFastener& fastener) {
    return fmt::format("turn {} to tighten, as seen from the {} side",
                       fastener.tightensClockwise ? "clockwise" : "counter-clockwise",
                       nameOf(fastener.seenFrom));
}

std::string wordsOf(const CardStep& step) {
    return step.empty() ? std::string{"no step"} : fmt::format("{} {}", step.id.text, step.title);
}

std::string wordsOf(const std::vector<CardStep>& steps) {
    if (steps.size() == 1)
        return wordsOf(steps.front());
    std::string words;
    for (const CardStep& step : steps)
        words += (words.empty() ? "" : ", ") + step.id.text;
    return words;
}

std::string piecesWords(const CardFastener& fastener) {
    std::string words;
    for (const std::string& set : fastener.sets)
        words += (words.empty() ? "" : ", ") + set;
    return words;
}

std::string lastLookWords(const PartCard& card) {
    if (card.hiddenBy.empty())
        return "no step hides it";
    return fmt::format("before {}, which hides it", wordsOf(card.hiddenBy));
}

} // namespace gapwise
