#include "models/torque/pattern.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>
#include <numeric>

namespace gapwise {

namespace {

/// An odd number: on by nearly half a turn each time, which meets every screw once.
std::vector<int> oddOrder(int screws) {
    std::vector<int> order;
    const int step = (screws - 1) / 2;
    for (int at = 0; at < screws; ++at)
        order.push_back(at * step % screws + 1);
    return order;
}

std::vector<int> orderOf(int screws) {
    if (screws == 1)
        return {1};
    if (screws % 2 != 0)
        return oddOrder(screws);
    std::vector<int> order;
    for (const int first : orderOf(screws / 2)) {
        order.push_back(first);
        order.push_back(first + screws / 2);
    }
    return order;
}

} // namespace

Result<std::vector<int>> tighteningOrder(int screws, std::string_view where) {
    if (screws < 1 || screws > kMostScrews)
        return Error{.where = std::string{where},
                     .found = fmt::format("{}", screws),
                     .allowed = fmt::format("a number of screws from 1 to {}", kMostScrews)};
    return orderOf(screws);
}

bool isWholeOrder(std::span<const int> order) {
    std::vector<int> wanted(order.size());
    std::iota(wanted.begin(), wanted.end(), 1);
    return !order.empty() && std::ranges::is_permutation(order, wanted);
}

bool isOppositePairOrder(std::span<const int> order) {
    if (order.size() % 2 != 0 || !isWholeOrder(order))
        return false;
    const int half = static_cast<int>(order.size()) / 2;
    for (std::size_t at = 0; at < order.size(); at += 2)
        if (std::abs(order[at] - order[at + 1]) != half)
            return false;
    return true;
}

std::string orderWords(std::span<const int> order) {
    return fmt::format("{}", fmt::join(order, "-"));
}

} // namespace gapwise
