#include "models/check/mistakes.h"

#include <algorithm>

namespace gapwise {

namespace {

constexpr Degrees kHalfTurn{180.0};
constexpr Degrees kQuarterTurn{90.0};
constexpr Degrees kViewTolerance{15.0};

Clock stored(Degrees fromCompressor) {
    return Clock::seenFrom(Side::Compressor, fromCompressor);
}

bool explains(Mistake mistake, const MistakeCase& mistakeCase) {
    const Degrees theta = mistakeCase.actual.from(Side::Compressor);
    const ClockWindow& window = mistakeCase.window;
    switch (mistake) {
    case Mistake::MirroredView: return window.contains(stored(-theta));
    case Mistake::UpsideDown: return window.contains(stored(theta + kHalfTurn));
    case Mistake::EndOverEnd: return window.contains(stored(kHalfTurn - theta));
    case Mistake::OtherEndRule: return mistakeCase.twin && mistakeCase.twin->contains(mistakeCase.actual);
    case Mistake::OtherVariantRule:
        return mistakeCase.sister && mistakeCase.sister->contains(mistakeCase.actual);
    case Mistake::QuarterTurn:
        return window.contains(stored(theta + kQuarterTurn)) || window.contains(stored(theta - kQuarterTurn));
    case Mistake::Reversed:
    case Mistake::SwappedEnds:
    case Mistake::WrongHand: break;
    }
    return false;
}

bool isOwnView(const View& view, Side ruleSide) {
    return view.side == ruleSide && apart(view.top, Degrees{0.0}) <= kAngleRounding;
}

} // namespace

bool ClockWindow::contains(const Clock& clock) const {
    return apart(clock, middle) <= tolerance + kAngleRounding;
}

std::optional<Mistake> mistakeOfView(const View& view, Side ruleSide) {
    const bool sameSide = view.side == ruleSide;
    if (within(view.top, kHalfTurn, kViewTolerance))
        return sameSide ? Mistake::UpsideDown : Mistake::EndOverEnd;
    if (within(view.top, Degrees{0.0}, kViewTolerance))
        return sameSide ? std::nullopt : std::optional{Mistake::MirroredView};
    if (within(view.top, kQuarterTurn, kViewTolerance) || within(view.top, -kQuarterTurn, kViewTolerance))
        return Mistake::QuarterTurn;
    return std::nullopt;
}

MistakesFound mistakesOf(const MistakeCase& mistakeCase) {
    MistakesFound found;
    for (const Mistake mistake : {Mistake::MirroredView, Mistake::UpsideDown, Mistake::EndOverEnd,
                                  Mistake::OtherEndRule, Mistake::OtherVariantRule, Mistake::QuarterTurn})
        if (explains(mistake, mistakeCase))
            found.mistakes.push_back(mistake);

    if (!mistakeCase.setIn || !mistakeCase.printed)
        return found;
    const View& view = *mistakeCase.setIn;
    const Side ruleSide = mistakeCase.printed->seenFrom.value_or(view.side);
    const bool atPrintedNumber =
        within(seenIn(view, mistakeCase.actual), mistakeCase.printed->clock, mistakeCase.printed->tolerance);
    found.asPrinted = !isOwnView(view, ruleSide) && atPrintedNumber;
    if (!*found.asPrinted)
        return found;
    const auto named = mistakeOfView(view, ruleSide);
    const auto place = named ? std::ranges::find(found.mistakes, *named) : found.mistakes.end();
    if (place != found.mistakes.end())
        std::rotate(found.mistakes.begin(), place, place + 1);
    return found;
}

} // namespace gapwise
