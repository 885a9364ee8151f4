#pragma once

#include "geometry/base/result.h"
#include "models/frame/data_folder.h"
#include "models/frame/frame.h"

#include <optional>
#include <string>
#include <string_view>

namespace gapwise {

/// How closely a frame file is looked at. The reader itself is strict and total either way: `Full` adds the
/// published schema before it. A frame that is named by its bundled id was held against the schema when it
/// was built, so that a plain check need not spend the time again.
enum class Validation { Full, ReaderOnly };

/// Reads a frame by bundled id or by path: syntax, schema, then what the schema cannot say (frameErrors). All
/// errors at once, but each stage only when the one before found none. A frame by path always goes through
/// the schema; `forBundled` says what a bundled one goes through.
Result<Frame> readFrame(const DataFolder& data, const std::string& idOrPath,
                        Validation forBundled = Validation::ReaderOnly);

/// From text; `file` names the place in errors.
Result<Frame> parseFrame(const DataFolder& data, std::string_view text, std::string_view file,
                         Validation validation = Validation::Full);

/// The other bearing variant that `frame` names as its sister, by the same rules as readFrame: a file
/// `<sister>.json` beside `frameFile` goes before a bundled frame. Nothing when it names none.
Result<std::optional<Frame>> readSister(const DataFolder& data, const Frame& frame,
                                        const std::filesystem::path& frameFile);

/// What no schema can say: references resolve, steps have no cycle, features cross the grooves that rules
/// name, clocks name a side, rules of one part do not contradict, sizes are possible. `where` of each error
/// is `file#/pointer`. All errors at once; those that others would only follow from are left out.
Errors frameErrors(const Frame& frame, std::string_view file);

} // namespace gapwise
