#include "models/torque/thread.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <numbers>

namespace gapwise {

namespace {

struct CoarsePitch {
    double diameterMm = 0.0;
    double pitchMm = 0.0;
};

/// ISO 261, coarse series.
constexpr std::array kCoarse{
    CoarsePitch{1.0, 0.25},  CoarsePitch{1.1, 0.25}, CoarsePitch{1.2, 0.25}, CoarsePitch{1.4, 0.3},
    CoarsePitch{1.6, 0.35},  CoarsePitch{1.8, 0.35}, CoarsePitch{2.0, 0.4},  CoarsePitch{2.2, 0.45},
    CoarsePitch{2.5, 0.45},  CoarsePitch{3.0, 0.5},  CoarsePitch{3.5, 0.6},  CoarsePitch{4.0, 0.7},
    CoarsePitch{4.5, 0.75},  CoarsePitch{5.0, 0.8},  CoarsePitch{6.0, 1.0},  CoarsePitch{7.0, 1.0},
    CoarsePitch{8.0, 1.25},  CoarsePitch{9.0, 1.25}, CoarsePitch{10.0, 1.5}, CoarsePitch{11.0, 1.5},
    CoarsePitch{12.0, 1.75}, CoarsePitch{14.0, 2.0}, CoarsePitch{16.0, 2.0}, CoarsePitch{18.0, 2.5},
    CoarsePitch{20.0, 2.5},  CoarsePitch{22.0, 2.5}, CoarsePitch{24.0, 3.0}, CoarsePitch{27.0, 3.0},
    CoarsePitch{30.0, 3.5},  CoarsePitch{33.0, 3.5}, CoarsePitch{36.0, 4.0}, CoarsePitch{39.0, 4.0},
    CoarsePitch{42.0, 4.5},  CoarsePitch{45.0, 4.5}, CoarsePitch{48.0, 5.0}, CoarsePitch{52.0, 5.0},
    CoarsePitch{56.0, 5.5},  CoarsePitch{60.0, 5.5}, CoarsePitch{64.0, 6.0}};

constexpr double kLeastDiameterMm = 1.0;
constexpr double kMostDiameterMm = 300.0;

/// H of the basic triangle over the pitch.
const double kTriangle = std::numbers::sqrt3 / 2.0;

/// Takes a number off the front of the text.
std::optional<double> takeNumber(std::string_view& text) {
    double number = 0.0;
    const auto [stop, code] =
        std::from_chars(text.data(), text.data() + text.size(), number, std::chars_format::fixed);
    if (code != std::errc{})
        return std::nullopt;
    text.remove_prefix(static_cast<std::size_t>(stop - text.data()));
    return number;
}

bool take(std::string_view& text, std::string_view word) {
    if (!text.starts_with(word))
        return false;
    text.remove_prefix(word.size());
    return true;
}

/// The text as a thread, or nothing where it is none.
std::optional<MetricThread> threadIn(std::string_view text) {
    if (!take(text, "M"))
        return std::nullopt;
    const std::optional<double> diameter = takeNumber(text);
    if (!diameter)
        return std::nullopt;
    const bool saysPitch = take(text, "x") || take(text, "×");
    const std::optional<double> pitch = saysPitch ? takeNumber(text) : coarsePitchMm(*diameter);
    const ThreadHand hand = take(text, "-LH") ? ThreadHand::Left : ThreadHand::Right;
    if (!pitch || !text.empty())
        return std::nullopt;
    return MetricThread{*diameter, *pitch, hand};
}

/// Comparisons with not-a-number are false.
bool canBeCut(const MetricThread& thread) {
    return thread.diameterMm >= kLeastDiameterMm && thread.diameterMm <= kMostDiameterMm &&
           thread.pitchMm > 0.0 && thread.pitchMm <= thread.diameterMm / 4.0;
}

} // namespace

std::string_view nameOf(ThreadHand hand) {
    return hand == ThreadHand::Right ? "right-hand" : "left-hand";
}

std::optional<double> coarsePitchMm(double diameterMm) {
    const auto found = std::ranges::find(kCoarse, diameterMm, &CoarsePitch::diameterMm);
    if (found == kCoarse.end())
        return std::nullopt;
    return found->pitchMm;
}

Result<MetricThread> parseThread(std::string_view text, std::string_view where) {
    const std::optional<MetricThread> thread = threadIn(text);
    if (thread && canBeCut(*thread))
        return *thread;
    return Error{.where = std::string{where},
                 .found = fmt::format("\"{}\"", text),
                 .allowed =
                     "an ISO metric thread such as M8 (coarse pitch), M8x1 or M8x1-LH (left hand): 1 to "
                     "300 mm, the pitch at most a quarter of it"};
}

std::string nameOf(const MetricThread& thread) {
    return fmt::format("M{}×{}{}", thread.diameterMm, thread.pitchMm,
                       thread.hand == ThreadHand::Left ? "-LH" : "");
}

ThreadSizes sizesOf(const MetricThread& thread) {
    const double height = kTriangle * thread.pitchMm;
    ThreadSizes sizes;
    sizes.overlapMm = 5.0 / 8.0 * height;
    sizes.depthMm = 17.0 / 24.0 * height;
    sizes.rootRadiusMm = height / 6.0;
    sizes.flankDiameterMm = thread.diameterMm - 3.0 / 4.0 * height;
    sizes.minorDiameterMm = thread.diameterMm - 2.0 * sizes.overlapMm;
    sizes.rootDiameterMm = thread.diameterMm - 2.0 * sizes.depthMm;
    const double stressDiameterMm = (sizes.flankDiameterMm + sizes.rootDiameterMm) / 2.0;
    sizes.stressAreaMm2 = std::numbers::pi / 4.0 * stressDiameterMm * stressDiameterMm;
    sizes.lead = degreesFromRadians(std::atan(thread.pitchMm / (std::numbers::pi * sizes.flankDiameterMm)));
    return sizes;
}

double axialTravelMm(const MetricThread& thread, Degrees turn) {
    const double sense = thread.hand == ThreadHand::Right ? 1.0 : -1.0;
    return sense * thread.pitchMm * turn.value / 360.0;
}

} // namespace gapwise
