#include "models/build/date.h"

#include <charconv>
#include <chrono>
#include <optional>

namespace gapwise {

namespace {

constexpr std::size_t kLength = 10; // 2026-05-04

/// The digits from `first` on as a number; nothing where one is no digit.
std::optional<unsigned> numberAt(std::string_view text, std::size_t first, std::size_t length) {
    unsigned number = 0;
    const char* const begin = text.data() + first;
    const char* const end = begin + length;
    const auto [stop, error] = std::from_chars(begin, end, number);
    return error == std::errc{} && stop == end ? std::optional{number} : std::nullopt;
}

} // namespace

bool isDate(std::string_view text) {
    if (text.size() != kLength || text[4] != '-' || text[7] != '-')
        return false;
    const auto year = numberAt(text, 0, 4);
    const auto month = numberAt(text, 5, 2);
    const auto day = numberAt(text, 8, 2);
    return year && month && day &&
           std::chrono::year_month_day{std::chrono::year{static_cast<int>(*year)}, std::chrono::month{*month},
                                       std::chrono::day{*day}}
               .ok();
}

} // namespace gapwise
