#include "viewer/picture/render_command.h"

#include <fmt/format.h>

#include <charconv>
#include <string_view>

namespace gapwise {

namespace {

template <class Number>
std::optional<Number> numberIn(std::string_view text) {
    Number number{};
    const auto [end, trouble] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (trouble != std::errc{} || end != text.data() + text.size())
        return std::nullopt;
    return number;
}

/// Two numbers with a mark between them.
template <class Number>
std::optional<std::pair<Number, Number>> pairIn(std::string_view text, char mark) {
    const std::size_t at = text.find(mark);
    if (at == std::string_view::npos)
        return std::nullopt;
    const auto first = numberIn<Number>(text.substr(0, at));
    const auto second = numberIn<Number>(text.substr(at + 1));
    return first && second ? std::optional{std::pair{*first, *second}} : std::nullopt;
}

Error refused(std::string where, const std::string& found, std::string allowed) {
    return {.where = std::move(where), .found = fmt::format("\"{}\"", found), .allowed = std::move(allowed)};
}

Result<double> explodeIn(const std::string& text) {
    const auto number = numberIn<double>(text);
    if (!number || !(*number >= 0.0 && *number <= 1.0))
        return refused("--explode", text, "a number from 0 (assembled) to 1 (wholly pulled apart)");
    return *number;
}

Result<Look> lookIn(const std::string& text) {
    if (text == "compressor" || text == "turbine")
        return lookFrom(text == "compressor" ? Side::Compressor : Side::Turbine);
    const auto angles = pairIn<double>(text, ',');
    constexpr double kRound = 180.0;
    constexpr double kUpright = 90.0;
    if (!angles || !(angles->first >= -kRound && angles->first <= kRound) ||
        !(angles->second >= -kUpright && angles->second <= kUpright))
        return refused(
            "--from", text,
            "compressor, turbine, or AZIMUTH,ELEVATION in degrees: azimuth -180 to 180, 0 square to "
            "the shaft with the turbine on the left, 90 from the compressor side; elevation -90 to 90");
    return Look{.azimuth = Degrees{angles->first}, .elevation = Degrees{angles->second}};
}

Result<PictureSize> sizeIn(const std::string& text) {
    const auto pixels = pairIn<int>(text, 'x');
    const auto fits = [](int side) { return side >= kSmallestPicture && side <= kLargestPicture; };
    if (!pixels || !fits(pixels->first) || !fits(pixels->second))
        return refused(
            "--size", text,
            fmt::format("WIDTHxHEIGHT in pixels, each {} to {}", kSmallestPicture, kLargestPicture));
    return PictureSize{pixels->first, pixels->second};
}

/// Reads an option where it was typed; an error joins the others.
template <class Value, class Reader>
Value readOr(const std::optional<std::string>& text, Value otherwise, Reader reader, Errors& errors) {
    if (!text)
        return otherwise;
    auto read = reader(*text);
    if (read)
        return *read;
    errors.insert(errors.end(), read.errors().begin(), read.errors().end());
    return otherwise;
}

} // namespace

Result<RenderPlan> planOf(const RenderRequest& request) {
    Errors errors;
    RenderPlan plan{.section = request.section};
    plan.explode = readOr(request.explode, 0.0, explodeIn, errors);
    plan.look = readOr(request.from, usualLook(plan.explode, request.section), lookIn, errors);
    plan.size = readOr(request.size, PictureSize{}, sizeIn, errors);
    if (request.out.empty())
        errors.push_back(refused("--out", request.out, "the file to write, such as cartridge.png"));
    if (!errors.empty())
        return errors;
    return plan;
}

} // namespace gapwise
