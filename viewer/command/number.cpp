#include "viewer/command/number.h"

#include <fmt/format.h>

#include <charconv>

namespace gapwise {

Result<double> parseNumber(std::string_view text, std::string_view where, const NumberRange& range) {
    double number = 0.0;
    const char* const end = text.data() + text.size();
    const auto [stop, code] = std::from_chars(text.data(), end, number);
    // A comparison with not-a-number is false.
    const bool inside = range.aboveLeast ? number > range.least : number >= range.least;
    if (code == std::errc{} && stop == end && inside && number <= range.most)
        return number;
    return Error{.where = std::string{where},
                 .found = fmt::format("\"{}\"", text),
                 .allowed = std::string{range.words}};
}

} // namespace gapwise
