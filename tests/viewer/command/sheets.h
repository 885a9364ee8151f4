#pragma once

#include <nlohmann/json.hpp>

#include <string>

namespace gapwise::test {

/// The path of a bundled file beside the built program: `builds/alder-72-good.build.json`.
std::string bundled(const std::string& file);

/// A bundled file as JSON, to be changed by a test.
nlohmann::json bundledJson(const std::string& file);

/// A JSON output taken apart; a failure and null where it is none.
nlohmann::json parsed(const std::string& output);

} // namespace gapwise::test
