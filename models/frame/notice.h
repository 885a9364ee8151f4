#pragma once

#include "models/frame/frame.h"

#include <string>
#include <string_view>

namespace gapwise {

/// What every screen and every printed page of a practice frame says.
inline constexpr std::string_view kPracticeNotice =
    "Practice frame – invented numbers – not for work on a machine";

/// The notice of a practice frame; empty for a frame for work.
std::string_view noticeOf(const Frame& frame);

/// What a verdict rests on and what prevails over it: the last line of everything that judges a build.
std::string consistencyLine(const Frame& frame, bool consistent);

/// What prevails over rules that are only shown, not judged by: the last line of a part's card.
std::string prevailLine(const Frame& frame);

} // namespace gapwise
