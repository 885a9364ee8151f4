#include "viewer/panels/open_path.h"

namespace gapwise {

namespace {

std::filesystem::path absolutePath(const std::string& typed) {
    std::error_code error;
    const std::filesystem::path path = std::filesystem::absolute(typed, error);
    return error ? std::filesystem::path{typed} : path;
}

} // namespace

StartJob openTyped(const std::string& typed, Use use) {
    if (typed.find('/') == std::string::npos && !typed.ends_with(".json"))
        return {.frame = typed, .use = use};
    if (typed.ends_with(".json") && !typed.ends_with(".build.json"))
        return {.frame = absolutePath(typed).string(), .use = use};
    return {.use = use, .sheet = absolutePath(typed)};
}

} // namespace gapwise
