#pragma once

#include "viewer/workplace/workplace.h"

#include <string>

namespace gapwise {

/// What the banner says of a job.
struct BannerWords {
    std::string look{};    ///< `You look from the COMPRESSOR side`.
    std::string bench{};   ///< `On the bench: turbine end up, drain toward you`.
    std::string fromFar{}; ///< Both in large words: `COMPRESSOR side · drain toward you`.
    std::string lying{};   ///< `turbine end up`.
    std::string job{};     ///< `alder-72-good.build.json · Alder-72 · Practise`.
    std::string warning{}; ///< Of an oblique look, or of an attitude that is only believed; or empty.
    std::string hint{};    ///< How to read this look, or empty.
    std::string notice{};  ///< Of a practice frame, or empty.
};
BannerWords bannerWordsOf(const Job& job);

/// What stands on every screen: what a verdict rests on.
inline constexpr std::string_view kPrevails =
    "The maker's manual, local codes and authorised persons prevail";

/// Where the drain points for the person who stands at the bench: `toward you`, `down`.
std::string drainPhrase(const Job& job);

/// `turbine end up` or `level`.
std::string lyingPhrase(const Job& job);

/// `Practise`, `At the bench` or `Show`.
std::string_view labelOf(Use use);

} // namespace gapwise
