#include "geometry/datum/view.h"

#include <array>
#include <cmath>

namespace gapwise {

namespace {

constexpr Degrees kHalfTurn{180.0};

Side sideUp(EndUp up) {
    return up == EndUp::Turbine ? Side::Turbine : Side::Compressor;
}

EndUp otherEndUp(EndUp up) {
    switch (up) {
    case EndUp::Compressor: return EndUp::Turbine;
    case EndUp::Turbine: return EndUp::Compressor;
    case EndUp::Level: break;
    }
    return EndUp::Level;
}

} // namespace

Attitude uprightAttitude(Side up, Degrees drain) {
    return Attitude{up == Side::Compressor ? EndUp::Compressor : EndUp::Turbine, wrapped(drain), up};
}

Attitude levelAttitude(Side seenFrom, Degrees drain) {
    return Attitude{EndUp::Level, wrapped(drain), seenFrom};
}

Degrees seenIn(const View& view, const Clock& clock) {
    return wrapped(view.top + clock.from(view.side));
}

Clock clockSeenIn(const View& view, Degrees seen) {
    return Clock::seenFrom(view.side, seen - view.top);
}

View viewOf(const Attitude& attitude, const Observer& observer) {
    const Degrees top = attitude.drain + kHalfTurn;
    if (attitude.up != EndUp::Level)
        return View{sideUp(attitude.up), wrapped(top - observer.stand)};
    return View{observer.levelSide, wrapped(observer.levelSide == attitude.seenFrom ? top : -top)};
}

View viewFromFront(const Attitude& attitude) {
    return viewOf(attitude, Observer{.stand = Degrees{0.0}, .levelSide = attitude.seenFrom});
}

View afterMove(const View& view, TurningMove move) {
    switch (move) {
    case TurningMove::Rolled: return View{view.side, wrapped(view.top + kHalfTurn)};
    case TurningMove::TurnedRound: return View{opposite(view.side), wrapped(-view.top)};
    case TurningMove::TippedOver: break;
    }
    return View{opposite(view.side), wrapped(kHalfTurn - view.top)};
}

Attitude afterMove(const Attitude& attitude, const Observer& observer, TurningMove move) {
    const View view = afterMove(viewOf(attitude, observer), move);
    const bool sameEnd = move == TurningMove::Rolled;
    // Back from where he stands to the front of the bench; round a level piece he only changes ends.
    const Degrees stand = attitude.up == EndUp::Level ? Degrees{0.0} : observer.stand;
    return Attitude{sameEnd ? attitude.up : otherEndUp(attitude.up), wrapped(view.top + stand - kHalfTurn),
                    view.side};
}

Attitude afterMove(const Attitude& attitude, TurningMove move) {
    return afterMove(attitude, Observer{.stand = Degrees{0.0}, .levelSide = attitude.seenFrom}, move);
}

std::string_view benchWord(Degrees seen, EndUp up) {
    constexpr std::array<std::string_view, 8> kUpright{"away",       "away-right",  "right", "toward-right",
                                                       "toward you", "toward-left", "left",  "away-left"};
    constexpr std::array<std::string_view, 8> kLevel{"up",   "up-right",  "right", "down-right",
                                                     "down", "down-left", "left",  "up-left"};
    const auto eighth =
        static_cast<std::size_t>(std::floor(wrapped(seen).value / 45.0 + 0.5)) % kUpright.size();
    return up == EndUp::Level ? kLevel[eighth] : kUpright[eighth];
}

} // namespace gapwise
