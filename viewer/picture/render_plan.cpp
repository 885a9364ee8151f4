#include "viewer/picture/render_command.h"

#include <fmt/format.h>

#include <charconv>
#include <cmath>
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

Result<Section::Kind> sectionKindIn(const std::string& text) {
    if (text == "half" || text == "quarter")
        return text == "half" ? Section::Kind::Half : Section::Kind::Quarter;
    return refused("--section", text, "half, quarter, or nothing after it: half");
}

/// `3:00 compressor`: what reads the same from both sides needs no side.
Result<Clock> sectionAtIn(const std::string& text) {
    constexpr const char* kAllowed = "a clock and the side it is seen from, such as \"3:00 compressor\" or "
                                     "\"45deg turbine\"; only 12:00 and "
                                     "6:00 need no side";
    constexpr double kHalfRound = 180.0;
    const std::size_t space = text.find(' ');
    const auto clock = parseClockwise(text.substr(0, space), "--section-at");
    const std::string named = space == std::string::npos ? std::string{} : text.substr(space + 1);
    const auto side = parseSide(named.empty() ? "compressor" : named, "--section-at");
    if (!clock || !side || (named.empty() && std::fmod(clock->value, kHalfRound) != 0.0))
        return refused("--section-at", text, kAllowed);
    return Clock::seenFrom(*side, *clock);
}

/// The usual half lies open at 3:00, through inlet and drain; the usual quarter from inlet to 3:00.
Section usualSection(Section::Kind kind) {
    return {.kind = kind,
            .removed = Clock::seenFrom(Side::Compressor, Degrees{kind == Section::Kind::Half ? 90.0 : 45.0})};
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

std::optional<Section> sectionOf(const RenderRequest& request, Errors& errors) {
    if (!request.section) {
        if (request.sectionAt)
            errors.push_back(refused("--section-at", *request.sectionAt, "only with --section"));
        return std::nullopt;
    }
    Section section = usualSection(readOr(request.section, Section::Kind::Half, sectionKindIn, errors));
    section.removed = readOr(request.sectionAt, section.removed, sectionAtIn, errors);
    return section;
}

} // namespace

Result<RenderPlan> planOf(const RenderRequest& request) {
    Errors errors;
    RenderPlan plan;
    plan.explode = readOr(request.explode, 0.0, explodeIn, errors);
    plan.section = sectionOf(request, errors);
    plan.casings = request.casings;
    plan.look = readOr(request.from, usualLook(plan.explode, plan.section), lookIn, errors);
    plan.size = readOr(request.size, PictureSize{}, sizeIn, errors);
    if (request.alone)
        plan.alone = PartId{*request.alone};
    if (request.out.empty())
        errors.push_back(refused("--out", request.out, "the file to write, such as cartridge.png"));
    if (!errors.empty())
        return errors;
    return plan;
}

} // namespace gapwise
