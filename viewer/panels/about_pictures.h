#pragma once

#include "models/card/card.h"
#include "viewer/panels/surface.h"

#include <optional>

namespace gapwise {

/// The pictures of the sheet about a part: both ends, with what must be seen there once it may be told, and
/// the part turned by hand. The places are given back in the frame's portraits.
std::optional<Wish> aboutPictures(const Job& job, const PartCard& card, const Area& area,
                                  const Surface& surface);

} // namespace gapwise
