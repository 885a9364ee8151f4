#pragma once

#include "viewer/panels/surface.h"

#include <optional>

namespace gapwise {

/// What the cards have in common.

/// Draws an empty card over `area`; returns the place inside.
Area drawCardFrame(const Area& area, const Surface& surface);

/// The font for what is read at the bench.
ImFont* wordFont(const Surface& surface);

/// An act that needs to know who does it: at the bench, who works is asked first.
std::optional<Wish> byWhoWorks(const Job& job, Event event, Drafts& drafts);

} // namespace gapwise
