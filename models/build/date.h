#pragma once

#include <string_view>

namespace gapwise {

/// Whether the text is a day of the calendar, `2026-05-04`. Such texts sort as the days do.
bool isDate(std::string_view text);

} // namespace gapwise
