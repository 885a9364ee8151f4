#pragma once

#include "geometry/base/result.h"
#include "models/frame/ids.h"

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

/// The data folder beside the running program (`<folder of the program>/../share/gapwise`), or the one named
/// by GAPWISE_DATA.
Result<DataFolder> findDataFolder(const std::filesystem::path& program);

/// Ids of the bundled frames, in alphabetical order.
std::vector<std::string> bundledFrames(const DataFolder& data);

/// Whether the text is the id of a bundled frame, not a path.
bool isBundledFrame(const DataFolder& data, std::string_view idOrPath);

/// The file of a frame that is named by a bundled id or by a path.
std::filesystem::path frameFileOf(const DataFolder& data, const std::string& idOrPath);

} // namespace gapwise
