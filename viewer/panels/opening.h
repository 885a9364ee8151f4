#pragma once

#include "viewer/panels/surface.h"
#include "viewer/workplace/workplace.h"

#include <optional>

namespace gapwise {

/// The parts of the opening screen.

/// The three uses below each other; the chosen one says what to do first.
void useCards(const Area& area, const Surface& surface);

/// Smallest height of a row on it: larger once `At the bench` is chosen, whose user wears gloves.
double openingRow(const Surface& surface);

/// The frames beside each other, each with its sample builds below.
std::optional<Wish> frameShelf(const Workplace& workplace, const Area& area, const Surface& surface);

/// The jobs that were left, the last one first.
std::optional<Wish> jobsRow(const Workplace& workplace, const Area& area, const Surface& surface);

/// A field for the path of a build sheet or a frame file: what is wished when it is opened.
std::optional<Wish> pathField(Use use, const Area& area, const Surface& surface);

} // namespace gapwise
