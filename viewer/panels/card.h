#pragma once

#include "viewer/panels/draw.h"
#include "viewer/panels/parts.h"
#include "viewer/panels/telling.h"

namespace gapwise {

/// The columns of the card of the part in hand.

/// The view in which a clock on the card is meant.
View viewMeant(const Job& job, ClockMeant meant);

/// The act that points the index of the part in a seat to `seen`, as it appears in `view`.
Wish pointTo(const Job& job, const SeatId& seat, const View& view, Degrees seen);

/// The act that turns it on by `degrees`, clockwise as seen in `view`; from where it is drawn if it was not
/// set.
Wish turnOn(const Job& job, const SeatId& seat, const View& view, Degrees degrees);

/// A clock as a person typed it.
struct TypedClock {
    Degrees clock{0.0};
    std::optional<Side> side{}; ///< Typed with it: seen from there with the inlet on top.
};

/// `3:00`, `3`, or `90deg`, and the side after it where one is meant: `3:00 turbine`, `3 c`, `9:30 from
/// compressor`. Nothing for anything else.
std::optional<TypedClock> typedClock(std::string_view text);

/// A field for a clock: the clock when enter is pressed in it.
std::optional<TypedClock> clockField(const Area& area, const Surface& surface);

/// The places that the part on the tray may go into, as buttons.
std::optional<Wish> seatsColumn(const Job& job, const PartId& part, const Area& area, const Surface& surface);

/// Clock in words from both sides, buttons and a field to set it.
std::optional<Wish> clockColumn(const Job& job, const SeatId& seat, const Area& area, const Surface& surface);

/// The two faces as pictures; the tapped one, true = the reference face.
std::optional<bool> facePictures(const Faces& faces, std::optional<bool> chosen, const Area& area,
                                 const Surface& surface);

std::optional<Wish> faceColumn(const Job& job, const SeatId& seat, const Area& area, const Surface& surface);

/// The demanded clock of a seat as the person finds it, and as it is printed.
struct DemandWords {
    std::string clock{};   ///< `10:00`, as he stands.
    std::string stands{};  ///< `as you stand: away from you and to your left`.
    std::string printed{}; ///< `printed: 4:00 from the compressor side, inlet on top`.
};
/// Nothing while the demand is not shown, or where no rule prints a clock.
std::optional<DemandWords> demandWordsOf(const Job& job, const SeatId& seat);

/// A direction that is never cut off: `toward you and to your left`, or `toward-left` where that is wider
/// than `width`.
std::string directionIn(double width, const Job& job, Degrees seen, ImFont* font);

/// What is wrong and why, or that it holds.
std::optional<Wish> verdictColumn(const Job& job, const SeatId& seat, const Area& area,
                                  const Surface& surface);

/// Whether all that is to be said of a seat at the bench stands in the drafts: the gap where it has one, the
/// face where both differ.
bool saidAll(const Job& job, const SeatId& seat, const Drafts& drafts);

/// What was tapped becomes what is said; the drafts are empty then.
Wish said(const Job& job, const SeatId& seat, Drafts& drafts);

/// `Gap to your right. Sharp face.`; what was not tapped yet is asked for.
std::string saidWords(const Job& job, const SeatId& seat, const Drafts& drafts);

/// At the bench: the bare dial and the faces to tap.
std::optional<Wish> sayingColumns(const Job& job, const SeatId& seat, const Area& area,
                                  const Surface& surface);

} // namespace gapwise
