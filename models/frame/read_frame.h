#pragma once

#include "geometry/base/result.h"
#include "models/frame/frame.h"

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace gapwise {

/// Where the bundled data lie: `frames/`, `schema/`, `builds/`, `meshes/`.
struct DataFolder {
    std::filesystem::path root{};

    std::filesystem::path frameFile(std::string_view id) const {
        return root / "frames" / (std::string{id} + ".json");
    }
    std::filesystem::path schemaFile(std::string_view name) const {
        return root / "schema" / (std::string{name} + ".schema.json");
    }
    std::filesystem::path meshFile(const FrameId& frame, const PartTypeId& type) const {
        return root / "meshes" / frame.text / (type.text + ".glb");
    }
};

/// The data folder beside the running program (`<program>/../share/gapwise`), or the one named by
/// GAPWISE_DATA.
Result<DataFolder> findDataFolder(const std::filesystem::path& program);

/// Ids of the bundled frames, in alphabetical order.
std::vector<std::string> bundledFrames(const DataFolder& data);

/// The file of a frame that is named by a bundled id or by a path.
std::filesystem::path frameFileOf(const DataFolder& data, const std::string& idOrPath);

/// Reads a frame by bundled id or by path: syntax, schema, then what the schema cannot say (checkFrame). All
/// errors at once, but each stage only when the one before found none.
Result<Frame> readFrame(const DataFolder& data, const std::string& idOrPath);

/// From text; `file` names the place in errors.
Result<Frame> parseFrame(const DataFolder& data, std::string_view text, std::string_view file);

/// What no schema can say: references resolve, steps have no cycle, features cross the grooves that rules
/// name, clocks name a side, rules of one part do not contradict, sizes are possible. `where` of each error
/// is `file#/pointer`.
Errors frameErrors(const Frame& frame, std::string_view file);

} // namespace gapwise
