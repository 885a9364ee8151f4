#pragma once

#include "viewer/panels/plots.h"

#include <optional>
#include <string>

namespace gapwise {

/// The pages of the sheet of measurements. Each draws into its area and returns what is wished.

std::optional<Wish> readingsPage(const Job& job, const Area& area, const Surface& surface);
std::optional<Wish> partsPage(const Job& job, const Area& area, const Surface& surface);
std::optional<Wish> stackPage(const Job& job, const Area& area, const Surface& surface);
std::optional<Wish> effectsPage(const Job& job, const Area& area, const Surface& surface);
std::optional<Wish> choosePage(const Job& job, const Area& area, const Surface& surface);
std::optional<Wish> causesPage(const Job& job, const Area& area, const Surface& surface);

/// What pages share.

/// A reading of a quantity as a bar shows it.
LimitBar limitBarOf(const QuantityResult& result);

/// With how many decimals a quantity is shown: as its instrument resolves, else as its unit is read.
int decimalsFor(const QuantityResult& result);

/// Height of a row that is pressed.
double rowHeight(const Surface& surface);

/// The prediction of a chain; null when the report has none.
const Prediction* predictionOf(const MeasureReport& report, const QuantityId& chain);

/// How many links of a prediction were measured: `4 of 5 measured, 1 drawing size`.
std::string linksWords(const Prediction& prediction);

/// Leaf through what does not fit: `page 1 of 3`; nothing is drawn for one page.
void leafButton(std::size_t& page, std::size_t pages, const Area& area, const Surface& surface);

} // namespace gapwise
