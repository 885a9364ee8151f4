#include "viewer/scene/view_words.h"

#include <fmt/format.h>

#include <cmath>

namespace gapwise {

namespace {

/// Nearer to the axis than this, a look is square on.
constexpr Degrees kSquareOn{0.5};

/// Where the ends lie in a picture taken from beside.
std::string endsIn(const Camera& camera) {
    const double right = camera.right().z;
    const double up = camera.up().z;
    if (std::abs(right) >= std::abs(up))
        return right > 0.0 ? "TURBINE left, COMPRESSOR right" : "COMPRESSOR left, TURBINE right";
    return up > 0.0 ? "COMPRESSOR above, TURBINE below" : "TURBINE above, COMPRESSOR below";
}

std::string_view standpointOf(const Camera& camera) {
    constexpr double kMostlyAlong = 0.71;
    const double down = -camera.forward().y;
    if (std::abs(down) < kMostlyAlong)
        return "from beside";
    return down > 0.0 ? "from the inlet side" : "from the drain side";
}

std::string drainWords(const Camera& camera) {
    constexpr double kMostlyAlong = 0.9;
    const Vec3 drain{0.0, -1.0, 0.0};
    const double away = dot(drain, camera.forward());
    if (std::abs(away) > kMostlyAlong)
        return away < 0.0 ? "Drain: toward you" : "Drain: on the far side";
    const Clock sixOClock = Clock::seenFrom(Side::Compressor, Degrees{180.0});
    const std::string_view word = benchWord(camera.seen(sixOClock), EndUp::Level);
    if (word != "down")
        return fmt::format("Drain: {}", word);
    return camera.offAxis() <= kOblique ? "Inlet on top, at 12:00; drain at 6:00" : "Inlet up, drain down";
}

} // namespace

std::string capitalNameOf(Side side) {
    return side == Side::Compressor ? "COMPRESSOR" : "TURBINE";
}

ViewWords viewWordsOf(const Camera& camera) {
    const Degrees off = camera.offAxis();
    const auto view = camera.view();
    if (!view)
        return {.where = fmt::format("You look {}: {}", standpointOf(camera), endsIn(camera)),
                .drain = drainWords(camera),
                .note = fmt::format("{:.0f}° off the axis: read no clock here", off.value)};
    const std::string side = fmt::format("You look from the {} side", capitalNameOf(view->side));
    if (off <= kSquareOn)
        return {.where = side, .drain = drainWords(camera)};
    if (off <= kOblique)
        return {.where = side,
                .drain = drainWords(camera),
                .note = fmt::format("{:.0f}° off the axis", off.value)};
    return {.where = side,
            .drain = drainWords(camera),
            .note = fmt::format("oblique, {:.0f}° off the axis: a clock read here may be {:.0f}° off",
                                off.value, std::ceil(obliqueReadingError(off).value))};
}

} // namespace gapwise
