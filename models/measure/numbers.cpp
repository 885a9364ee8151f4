#include "models/measure/numbers.h"

#include <fmt/format.h>

#include <cmath>

namespace gapwise {

std::string plainNumber(double value, int decimals) {
    std::string text = fmt::format("{:.{}f}", value, decimals);
    const bool isZero = text.find_first_of("123456789") == std::string::npos;
    return isZero && text.front() == '-' ? text.substr(1) : text;
}

std::string numberWords(double value, int decimals, Unit unit) {
    return plainNumber(value, decimals) + (unit == Unit::Degrees ? "" : " ") + std::string{symbolOf(unit)};
}

std::string windowWords(const Window& window, int decimals, Unit unit) {
    if (window.least && window.most)
        return plainNumber(*window.least, decimals) + " to " + numberWords(*window.most, decimals, unit);
    if (window.least)
        return "at least " + numberWords(*window.least, decimals, unit);
    return window.most ? "at most " + numberWords(*window.most, decimals, unit) : std::string{};
}

bool holdsValue(const Window& window, double value) {
    return (!window.least || value >= *window.least - kRounding) &&
           (!window.most || value <= *window.most + kRounding);
}

std::optional<double> endNear(const Window& window, double value, double expanded) {
    for (const std::optional<double>& end : {window.least, window.most})
        if (end && std::abs(value - *end) < expanded - kRounding)
            return end;
    return std::nullopt;
}

} // namespace gapwise
