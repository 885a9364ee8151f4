#pragma once

#include "viewer/panels/surface.h"

#include <optional>

namespace gapwise {

/// The panels one by one. Each draws into its area and returns what is wished, if anything.

std::optional<Wish> openingPanel(const Workplace& workplace, const Area& area, const Surface& surface);
std::optional<Wish> bannerPanel(const Job& job, const Area& area, const Surface& surface);
std::optional<Wish> lookPanel(const Job& job, const Area& area, const Surface& surface);
std::optional<Wish> pullApartPanel(const Job& job, const Area& area, const Surface& surface);

} // namespace gapwise
