#include "models/frame/data_folder.h"

#include <algorithm>
#include <cstdlib>
#include <system_error>

namespace gapwise {

namespace fs = std::filesystem;

namespace {

bool isFolder(const fs::path& path) {
    std::error_code ignored;
    return fs::is_directory(path, ignored);
}

} // namespace

Result<DataFolder> findDataFolder(const fs::path& program) {
    constexpr const char* kVariable = "GAPWISE_DATA";
    if (const char* named = std::getenv(kVariable);
        named && *named != '\0') { // NOLINT(concurrency-mt-unsafe)
        if (isFolder(fs::path{named} / "frames"))
            return DataFolder{fs::path{named}};
        return Error{kVariable, named, "a folder with the folder frames in it"};
    }
    std::error_code code;
    fs::path real = fs::canonical(program, code);
    if (code)
        real = program;
    const fs::path root = real.parent_path().parent_path() / "share" / "gapwise";
    if (isFolder(root / "frames"))
        return DataFolder{root};
    return Error{root.string(), "no data folder",
                 "the folder with the frames beside the program; name it by GAPWISE_DATA"};
}

std::vector<std::string> bundledFrames(const DataFolder& data) {
    std::vector<std::string> ids;
    std::error_code code;
    for (fs::directory_iterator entry{data.root / "frames", code}, end; !code && entry != end;
         entry.increment(code))
        if (entry->path().extension() == ".json")
            ids.push_back(entry->path().stem().string());
    std::sort(ids.begin(), ids.end());
    return ids;
}

bool isBundledFrame(const DataFolder& data, std::string_view idOrPath) {
    constexpr std::string_view kLetters = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_";
    std::error_code ignored;
    return !idOrPath.empty() && idOrPath.find_first_not_of(kLetters) == std::string_view::npos &&
           idOrPath != "-" && fs::is_regular_file(data.frameFile(idOrPath), ignored);
}

fs::path frameFileOf(const DataFolder& data, const std::string& idOrPath) {
    return isBundledFrame(data, idOrPath) ? data.frameFile(idOrPath) : fs::path{idOrPath};
}

} // namespace gapwise
