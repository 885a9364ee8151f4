#pragma once

#include <string_view>

namespace gapwise {

/// Nothing but blanks.
bool isBlank(std::string_view text);

/// Whether two names are one person's: blanks around and between, and capitals, do not tell them apart.
bool isSamePerson(std::string_view a, std::string_view b);

} // namespace gapwise
