#include "tests/viewer/command/sheets.h"

#include <gtest/gtest.h>

#include <fstream>

namespace gapwise::test {

std::string bundled(const std::string& file) {
    return GAPWISE_TEST_SHARE "/" + file;
}

nlohmann::json bundledJson(const std::string& file) {
    std::ifstream stream(bundled(file));
    return nlohmann::json::parse(stream);
}

nlohmann::json parsed(const std::string& output) {
    const nlohmann::json document = nlohmann::json::parse(output, nullptr, false);
    EXPECT_FALSE(document.is_discarded()) << output;
    return document.is_discarded() ? nlohmann::json{} : document;
}

} // namespace gapwise::test
