#pragma once

#include "models/frame/data_folder.h"
#include "viewer/command/outcome.h"

#include <optional>
#include <string>

namespace gapwise {

/// `gapwise measure BUILD …`, as typed.
struct MeasureRequest {
    std::string build{};                 ///< A path, or `-` for standard input.
    std::optional<std::string> bench{};  ///< File of instruments; else the bundled bench.
    std::optional<std::string> on{};     ///< Day for calibrations of readings without one.
    std::optional<std::string> trials{}; ///< How often each chain is drawn.
    std::optional<std::string> seed{};
    std::optional<std::string> chain{}; ///< This chain only, with all its links.
    bool effects = false;
    std::optional<std::string> select{}; ///< All grades of this dimension, with every gap that they move.
};

/// Evaluates, predicts, judges, compares and explains every reading of a build. Broken: something is beyond
/// its limit, or a decision that is needed is open.
Outcome measureCommand(const DataFolder& data, const MeasureRequest& request, Format format);

} // namespace gapwise
