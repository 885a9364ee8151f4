#pragma once

#include "geometry/base/result.h"
#include "models/build/build.h"
#include "models/frame/data_folder.h"

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace gapwise {

/// A bench with its instruments: `gapwise.bench/1`.
struct Bench {
    std::string name{};
    std::vector<Instrument> instruments{};
};

/// Reads a file of instruments. Errors with file and pointer: unknown keys, a range that is no range, a
/// resolution or uncertainty below 0, two instruments of one number.
Result<Bench> readBench(const DataFolder& data, const std::filesystem::path& file);

/// The bundled bench of the demo jobs; all its numbers are invented.
Result<Bench> demoBench(const DataFolder& data);

/// The instrument of that number: of the sheet first, then of the bench; null when neither names it.
const Instrument* instrumentOf(const Build& build, const Bench& bench, std::string_view id);

} // namespace gapwise
