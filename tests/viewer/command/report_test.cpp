#include "viewer/command/report.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

namespace gapwise {

namespace {

ErrorPlace placeIn(const char* where) {
    return placeOf(Error{.where = where});
}

} // namespace

TEST(ErrorPlace, SplitsFileAndPointer) {
    EXPECT_EQ(placeIn("k1.json#/rules/3"), (ErrorPlace{.file = "k1.json", .pointer = "/rules/3"}));
    EXPECT_EQ(placeIn("job#7/k1.json#/rules/3"),
              (ErrorPlace{.file = "job#7/k1.json", .pointer = "/rules/3"}));
    EXPECT_EQ(placeIn("k1.json#"), (ErrorPlace{.file = "k1.json"}));
}

TEST(ErrorPlace, SplitsFileLineAndColumn) {
    EXPECT_EQ(placeIn("k1.json:2:11"), (ErrorPlace{.file = "k1.json", .line = 2, .column = 11}));
}

TEST(ErrorPlace, LeavesAFileWhole) {
    for (const char* file : {"k1.json", "", "a:b.json", "k1.json:", "k1.json:7", "k1.json:x:7", ":::"})
        EXPECT_EQ(placeIn(file), (ErrorPlace{.file = file}));
}

TEST(ErrorsAsJson, HaveFourKeysAndALineOnlyWhereThereIsOne) {
    const Outcome outcome{.errors = {{.where = "k1.json#/a", .found = "1", .allowed = "2"},
                                     {.where = "k1.json:2:11", .found = "3", .allowed = "4"}}};
    EXPECT_EQ(nlohmann::json::parse(errorsAsJson(outcome)), nlohmann::json::parse(R"({"errors": [
        {"file": "k1.json", "pointer": "/a", "found": "1", "allowed": "2"},
        {"file": "k1.json", "pointer": "", "line": 2, "column": 11, "found": "3", "allowed": "4"}]})"));
}

TEST(ErrorsAsJson, NameTheOptionOfTheCommandLine) {
    const Outcome outcome = misused("gapwise clock", {{.where = "--from", .found = "x", .allowed = "y"}});
    EXPECT_EQ(nlohmann::json::parse(errorsAsJson(outcome))["errors"][0],
              nlohmann::json::parse(
                  R"({"file": "command line", "pointer": "--from", "found": "x", "allowed": "y"})"));
}

} // namespace gapwise
