#pragma once

#include "viewer/panels/measure_work.h"
#include "viewer/panels/parts.h"

#include <optional>

namespace gapwise {

/// The pieces of the card of a measurement.

/// Digits, point, minus, back, and what leads on; by finger, mouse and keyboard.
std::optional<Wish> measureKeypad(const MeasureWork& work, const Area& area, const Surface& surface);

/// What a key of the keyboard does on the card.
std::optional<Wish> measureTyping(const MeasureWork& work, const Surface& surface);

/// The place, the number, the values so far, and what takes the reading.
std::optional<Wish> measureEntry(const MeasureWork& work, const Area& area, const Surface& surface);

/// Takes the number or, where all is read, the reading; once it is taken goes on to the next quantity.
std::optional<Wish> goOn(const MeasureWork& work, const Surface& surface);

/// What `goOn` would do: `Next`, `Take reading`, `Next: d_T`; empty where nothing is to be done.
std::string goOnWords(const MeasureWork& work, const MeasureDrafts& drafts);

/// Who it is, what is chosen, the way back.
std::optional<Wish> measureHead(const MeasureWork& work, const Area& area, const Surface& surface);

/// A word of a file as people write it: `push pull`.
std::string spacedWords(std::string_view word);

/// What can be chosen: quantities, gauges with the temperatures, methods.
void chooseQuantity(const MeasureWork& work, const Area& area, const Surface& surface);
void chooseGauge(const MeasureWork& work, const Area& area, const Surface& surface);
void chooseMethod(const MeasureWork& work, const Area& area, const Surface& surface);

/// The instrument's face, the four points or the lever.
void drawMeasured(const MeasureWork& work, const Area& area, const Surface& surface);

/// What the value is held against, and the verdict.
void drawHeld(const MeasureWork& work, const Area& area, const Surface& surface);

} // namespace gapwise
