#include "geometry/datum/clock.h"

#include <fmt/format.h>

#include <charconv>
#include <cmath>
#include <optional>

namespace gapwise {

namespace {

constexpr double kDegreesPerHour = 30.0;
constexpr double kDegreesPerMinute = 0.5;

template <class Number>
std::optional<Number> wholeNumber(std::string_view text) {
    Number number{};
    const auto [end, code] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (code != std::errc{} || end != text.data() + text.size())
        return std::nullopt;
    return number;
}

std::optional<Degrees> parseHours(std::string_view text) {
    const std::size_t colon = text.find(':');
    if (colon == std::string_view::npos || text.size() - colon != 3 || colon == 0 || colon > 2)
        return std::nullopt;
    const auto hours = wholeNumber<unsigned>(text.substr(0, colon));
    const auto minutes = wholeNumber<unsigned>(text.substr(colon + 1));
    if (!hours || !minutes || *hours < 1 || *hours > 12 || *minutes > 59)
        return std::nullopt;
    return wrapped(Degrees{*hours * kDegreesPerHour + *minutes * kDegreesPerMinute});
}

std::optional<Degrees> parseDegrees(std::string_view text) {
    constexpr std::string_view kUnit = "deg";
    if (!text.ends_with(kUnit))
        return std::nullopt;
    const auto degrees = wholeNumber<double>(text.substr(0, text.size() - kUnit.size()));
    if (!degrees || !std::isfinite(*degrees) || *degrees < 0.0 || *degrees >= 360.0)
        return std::nullopt;
    return wrapped(Degrees{*degrees}); // "-0" too reads as 0.
}

} // namespace

Clock Clock::seenFrom(Side side, Degrees clockwise) {
    return Clock{wrapped(Degrees{signOf(side) * clockwise.value})};
}

Degrees Clock::from(Side side) const {
    return wrapped(Degrees{signOf(side) * fromCompressor_.value});
}

Clock Clock::turned(Side side, Degrees offset) const {
    return seenFrom(side, from(side) + offset);
}

Degrees apart(const Clock& a, const Clock& b) {
    return apart(a.from(Side::Compressor), b.from(Side::Compressor));
}

std::string hoursAndMinutes(Degrees clockwise) {
    const int minutes =
        static_cast<int>(std::floor(wrapped(clockwise).value / kDegreesPerMinute + 0.5)) % 720;
    const int hour = minutes / 60;
    return fmt::format("{}:{:02}", hour == 0 ? 12 : hour, minutes % 60);
}

int nearestHour(Degrees clockwise) {
    const int hour = static_cast<int>(std::floor(wrapped(clockwise).value / kDegreesPerHour + 0.5)) % 12;
    return hour == 0 ? 12 : hour;
}

Result<Degrees> parseClockwise(std::string_view text, std::string_view where) {
    if (const auto hours = parseHours(text))
        return *hours;
    if (const auto degrees = parseDegrees(text))
        return *degrees;
    return Error{.where = std::string{where},
                 .found = fmt::format("\"{}\"", text),
                 .allowed = "h:mm with hours 1 to 12 (3:00), or degrees from 0 to below 360 (90deg)"};
}

Result<Side> parseSide(std::string_view text, std::string_view where) {
    for (const Side side : {Side::Compressor, Side::Turbine})
        if (text == nameOf(side))
            return side;
    return Error{.where = std::string{where},
                 .found = fmt::format("\"{}\"", text),
                 .allowed = "compressor or turbine"};
}

} // namespace gapwise
