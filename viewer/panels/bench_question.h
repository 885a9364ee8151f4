#pragma once

#include "viewer/panels/surface.h"

#include <optional>

namespace gapwise {

/// Whether it must be said how the piece lies and where the drain points before anything else: after every
/// turn; at the bench also when nobody has said it in this job.
bool asksHowItLies(const Job& job);

/// Whether nobody has said in this job which end is up: asked at the bench only.
bool asksWhichEnd(const Job& job);

/// The box that asks it: how it lies (when nobody has said that), then the drain with four large answers.
std::optional<Wish> benchQuestion(const Job& job, const Area& area, const Surface& surface);

} // namespace gapwise
