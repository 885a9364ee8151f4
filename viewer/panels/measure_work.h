#pragma once

#include "viewer/panels/measure_drafts.h"
#include "viewer/workplace/workplace.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace gapwise {

/// What the card of a measurement works on. No drawing; tests call it without a window.

/// One quantity at this moment, as received or now.
struct MeasureWork {
    const Job& job;
    const Measurement& measurement;
    const Quantity& quantity;
    const QuantityResult* result = nullptr; ///< Null before anything was reckoned.
    Occasion occasion = Occasion::After;
    const Method* method = nullptr;    ///< Null where the measurement names none.
    const Instrument* gauge = nullptr; ///< Null: not said.
    MeasureDrafts::Values values{};    ///< One a place; of a place that is read again and again one more.
    std::size_t at = 0;                ///< The place that is read now; behind the last one when all are read.
    bool taken = false;                ///< The values are those of the reading that counts: nothing is typed.

    /// What was evaluated of the reading that counts; null where none was taken.
    const Evaluated* evaluated() const;
    /// Nobody read it, but it was reckoned from others.
    bool reckoned() const;
    /// Every place has a value as often as every other (of repeats: at least one).
    bool complete() const;
    /// The values that there are, in their order.
    std::vector<double> read() const;
    /// What the limits are held against: mean, least, most or range of what was read; nothing of nothing.
    std::optional<double> judged() const;
};

/// Turns the drafts to the measurement that is in hand: another one, or one of another job, begins anew; at
/// the step of the strip-down it is read as received.
void turnTo(const Job& job, const Measurement& measurement, MeasureDrafts& drafts);

/// Opens a measurement at one of its quantities.
Wish openAt(const Measurement& measurement, const QuantityId& quantity, MeasureDrafts& drafts);

MeasureWork measureWorkOf(const Job& job, const Measurement& measurement, const MeasureDrafts& drafts,
                          std::string_view today);

/// Turns to another quantity of the measurement.
void turnToQuantity(const QuantityId& quantity, MeasureDrafts& drafts);

/// Name of a place without the words that all its fellows share: `2, 90°` of `plane 2, 90°`.
std::string shortPlace(const Quantity& quantity, std::size_t place);
/// The place that is read now: `plane 2, 90° · 4 of 4`, `repeat 2`, `all read`.
std::string placeWords(const MeasureWork& work);

/// Why an instrument does not suit what is measured: of another kind, beyond its range, run out; empty where
/// it does.
std::string gaugeFault(const MeasureWork& work, const Instrument& gauge, std::string_view today);

/// Takes a gauge to the measurement, as long as it is read by this method; empty: none is named.
void takeGauge(const MeasureWork& work, MeasureDrafts& drafts, std::string gauge);

/// What is to be heeded before the reading is taken: of the method, of the instrument.
std::vector<std::string> heeded(const MeasureWork& work, std::string_view today);

/// The next quantity of the measurement that nobody read on this occasion and that is not reckoned from
/// others; null when all are read.
const Quantity* nextUnread(const MeasureWork& work);

/// Whether a letter belongs to the number that is typed: digits, point, comma, minus.
bool isMeasureKey(char letter);
/// A key of the keypad or of the keyboard: digits, point, comma (a point), minus, `<` for back.
void typeKey(const MeasureWork& work, MeasureDrafts& drafts, char key);
/// Goes to a place to type its value anew.
void goTo(const MeasureWork& work, MeasureDrafts& drafts, std::size_t place);
/// Takes the typed number for its place and goes on, or asks about it, or says why not.
void takeTyped(const MeasureWork& work, MeasureDrafts& drafts);
/// Takes this number after all.
void takeValue(const MeasureWork& work, MeasureDrafts& drafts, double value);
/// All places once more: the values so far stay.
void readAgain(const MeasureWork& work, MeasureDrafts& drafts);

/// What was read at the same places for another quantity of the part: thicknesses give the parallelism too.
struct SameValues {
    QuantityId of{};
    std::vector<double> values{};
};
/// Nothing where something was entered already.
std::optional<SameValues> sameValues(const MeasureWork& work);
void takeSame(const MeasureWork& work, MeasureDrafts& drafts, const SameValues& same);

/// The reading that is taken: only of complete work.
Reading readingOf(const MeasureWork& work, const MeasureDrafts& drafts, std::string_view today);
/// Throws away what was typed of it: it is left as it was.
void forget(const MeasureWork& work, MeasureDrafts& drafts);

} // namespace gapwise
