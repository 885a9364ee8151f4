#pragma once

#include "geometry/base/result.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace gapwise {

/// Screws are numbered from 1, clockwise as seen by whoever tightens them, evenly round the flange.

/// The most screws of one flange for which an order is made.
inline constexpr int kMostScrews = 96;

/// In which order to tighten so many screws so that the flange comes down evenly: three in turn; an even
/// number in opposite pairs, the pairs in the order of half as many (4: 1-3-2-4, 8: 1-5-3-7-2-6-4-8, 12:
/// 1-7-4-10-2-8-5-11-3-9-6-12); a larger odd number nearly half round at a time (5: 1-3-5-2-4). `where` names
/// the option or file in an error: fewer than 1 or more than kMostScrews.
Result<std::vector<int>> tighteningOrder(int screws, std::string_view where);

/// Whether every screw from 1 to the number of entries comes once.
bool isWholeOrder(std::span<const int> order);

/// Whether it is a whole order of an even number of screws that goes pair by pair, the second screw of each
/// pair 180° from its first.
bool isOppositePairOrder(std::span<const int> order);

/// `1-3-2-4`.
std::string orderWords(std::span<const int> order);

} // namespace gapwise
