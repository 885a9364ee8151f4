#include "viewer/panels/typed_number.h"

#include <algorithm>
#include <charconv>
#include <chrono>
#include <cmath>

namespace gapwise {

namespace {

template <class Number>
std::optional<Number> parsed(std::string_view text) {
    Number number{};
    const char* end = text.data() + text.size();
    const auto [at, error] = std::from_chars(text.data(), end, number);
    return error == std::errc{} && at == end ? std::optional{number} : std::nullopt;
}

} // namespace

std::string trimmedWords(std::string_view text) {
    while (text.starts_with(' '))
        text.remove_prefix(1);
    while (text.ends_with(' '))
        text.remove_suffix(1);
    return std::string{text};
}

std::optional<double> typedNumber(std::string_view text) {
    std::string number = trimmedWords(text);
    if (number.find_first_not_of("+-0123456789.,") != std::string::npos)
        return std::nullopt;
    std::ranges::replace(number, ',', '.');
    if (number.find_first_of("+-", 1) != std::string::npos)
        return std::nullopt;
    if (number.starts_with('+'))
        number.erase(0, 1);
    const std::optional<double> value = parsed<double>(number);
    return value && std::isfinite(*value) ? value : std::nullopt;
}

std::optional<int> typedCount(std::string_view text) {
    constexpr int kMost = 1'000'000;
    const std::optional<int> count = parsed<int>(trimmedWords(text));
    return count && *count >= 0 && *count <= kMost ? count : std::nullopt;
}

std::optional<std::string> typedDay(std::string_view text) {
    const std::string day = trimmedWords(text);
    if (day.size() != 10 || day[4] != '-' || day[7] != '-')
        return std::nullopt;
    const std::string_view view{day};
    const auto year = parsed<int>(view.substr(0, 4));
    const auto month = parsed<unsigned>(view.substr(5, 2));
    const auto date = parsed<unsigned>(view.substr(8, 2));
    if (!year || !month || !date)
        return std::nullopt;
    const std::chrono::year_month_day whole{std::chrono::year{*year}, std::chrono::month{*month},
                                            std::chrono::day{*date}};
    return whole.ok() ? std::optional{day} : std::nullopt;
}

} // namespace gapwise
