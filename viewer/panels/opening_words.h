#pragma once

#include "viewer/workplace/offered.h"
#include "viewer/workplace/wish.h"

#include <array>
#include <chrono>
#include <filesystem>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace gapwise {

/// What the opening screen says of a use.
struct UseWords {
    Use use = Use::Practise;
    std::string_view label{};
    std::string_view what{};
    std::array<std::string_view, 3> first{}; ///< What to do first.
};
std::span<const UseWords> useWords();

/// `full-floating bearing rings` for the variant of a frame file; another variant by its own name.
std::string variantWords(std::string_view variant);

/// `Alder-72 · full-floating bearing rings`.
std::string frameTitle(const OfferedFrame& frame);

/// `4 snap rings, 2 seal rings`; what the frame has none of is left out.
std::string ringWords(const OfferedFrame& frame);

/// What happened in a bundled build, from the name of its file: `Gap over slot`, `Good build`.
std::string sampleTitle(const OfferedSample& sample);

/// How far it goes: `24 parts seated`.
std::string sampleWords(const OfferedSample& sample);

/// `Alder-72 · Practise`; a frame that is not bundled by the name of its file.
std::string jobTitle(const OfferedJob& job, const std::vector<OfferedFrame>& frames);

/// When it was left and how much was done: `12 minutes ago · 31 acts`.
std::string jobWords(const OfferedJob& job, std::chrono::system_clock::time_point now);

/// `just now`, `12 minutes ago`, `today 12:39`, `yesterday 12:39`, `25 Nov 12:39`, `25 Nov 2024`; in local
/// time.
std::string agoWords(std::chrono::system_clock::time_point then, std::chrono::system_clock::time_point now);

} // namespace gapwise
