#include "geometry/datum/words.h"

#include <fmt/format.h>

namespace gapwise {

namespace {

std::string leftOrRight(std::string_view word) {
    return word == "left" || word == "right" ? fmt::format("to your {}", word) : std::string{word};
}

std::string uprightPart(std::string_view word) {
    if (word == "away")
        return "away from you";
    return word == "toward" ? "toward you" : leftOrRight(word);
}

} // namespace

std::string clockSeenFrom(Degrees clockwise, Side side) {
    return fmt::format("{} seen from the {} side", hoursAndMinutes(clockwise), nameOf(side));
}

std::string benchPhrase(Degrees seen, EndUp up) {
    const std::string_view word = benchWord(seen, up);
    if (word == "toward you")
        return std::string{word};
    const auto part = [up](std::string_view one) {
        return up == EndUp::Level ? leftOrRight(one) : uprightPart(one);
    };
    const std::size_t hyphen = word.find('-');
    if (hyphen == std::string_view::npos)
        return part(word);
    return fmt::format("{} and {}", part(word.substr(0, hyphen)), part(word.substr(hyphen + 1)));
}

std::string describe(const Attitude& attitude) {
    if (attitude.up == EndUp::Level)
        return fmt::format("level, drain at {}", clockSeenFrom(attitude.drain, attitude.seenFrom));
    return fmt::format("{} end up, drain at {}", nameOf(attitude.up), hoursAndMinutes(attitude.drain));
}

std::string_view nameOf(EndUp up) {
    switch (up) {
    case EndUp::Compressor: return nameOf(Side::Compressor);
    case EndUp::Turbine: return nameOf(Side::Turbine);
    case EndUp::Level: break;
    }
    return "level";
}

Result<EndUp> parseEndUp(std::string_view text, std::string_view where) {
    for (const EndUp up : {EndUp::Compressor, EndUp::Turbine, EndUp::Level})
        if (text == nameOf(up))
            return up;
    return Error{.where = std::string{where},
                 .found = fmt::format("\"{}\"", text),
                 .allowed = "compressor, turbine or level"};
}

} // namespace gapwise
