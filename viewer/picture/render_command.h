#pragma once

#include "viewer/command/outcome.h"
#include "viewer/picture/picture.h"

#include <filesystem>
#include <optional>
#include <string>

namespace gapwise {

/// `gapwise render` as typed.
struct RenderRequest {
    std::string source{}; ///< A bundled frame's id, or the file of a frame or a build; `-` is standard input.
    std::string out{};
    std::optional<std::string> explode{};   ///< 0 … 1.
    std::optional<std::string> from{};      ///< `compressor`, `turbine`, or `AZIMUTH,ELEVATION` in degrees.
    std::optional<std::string> size{};      ///< `1600x900`.
    std::optional<std::string> section{};   ///< `half` or `quarter`.
    bool casings = false;                   ///< Show the casings too.
    std::optional<std::string> sectionAt{}; ///< The middle of what is taken away: `3:00 compressor`.
    std::optional<std::string> alone{};     ///< The part that is shown by itself.
};

/// A request that is understood.
struct RenderPlan {
    double explode = 0.0;
    Look look{};
    PictureSize size{};
    std::optional<Section> section{};
    bool casings = false;
    std::optional<PartId> alone{};
};

/// Everything that is wrong with the options at once.
Result<RenderPlan> planOf(const RenderRequest& request);

/// Draws the picture and writes it: whole, or not at all. `program` is the file of the running program,
/// beside which the data lie.
Outcome renderCommand(const RenderRequest& request, Format format, const std::filesystem::path& program);

} // namespace gapwise
