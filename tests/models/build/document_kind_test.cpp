#include "models/build/document_kind.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

namespace gapwise {

namespace {

using ::testing::HasSubstr;

const DataFolder kData{GAPWISE_TEST_SHARE};

std::string bundled(const char* file) {
    return (kData.root / file).string();
}

} // namespace

TEST(DocumentKind, AFrameIsKnownByItsFormatOfAnyVersion) {
    EXPECT_EQ(documentKind(nlohmann::json::parse(R"({"format": "gapwise.frame/1"})")), DocumentKind::Frame);
    EXPECT_EQ(documentKind(nlohmann::json::parse(R"({"format": "gapwise.frame/9"})")), DocumentKind::Frame);
    EXPECT_EQ(documentKind(nlohmann::json::parse(R"({"format": "gapwise.build/1"})")),
              DocumentKind::BuildSheet);
}

TEST(DocumentKind, WhatDoesNotSayThatItIsAFrameIsTakenForASheet) {
    for (const char* text : {"{}", "[]", "7", R"({"format": 1})", R"({"format": "frame"})", R"(["format"])"})
        EXPECT_EQ(documentKind(nlohmann::json::parse(text)), DocumentKind::BuildSheet) << text;
}

TEST(DocumentKind, ABundledIdIsAFrameAndAFileIsWhatItSays) {
    for (const std::string& frame : {std::string{"alder-72"}, bundled("frames/birch-150.json")}) {
        const Result<DocumentKind> kind = documentKind(kData, frame);
        ASSERT_TRUE(kind) << frame;
        EXPECT_EQ(*kind, DocumentKind::Frame) << frame;
    }
    const Result<DocumentKind> sheet = documentKind(kData, bundled("builds/alder-72-good.build.json"));
    ASSERT_TRUE(sheet);
    EXPECT_EQ(*sheet, DocumentKind::BuildSheet);
}

TEST(DocumentKind, AFileThatIsNotThereOrNoJsonIsAnErrorThatNamesIt) {
    for (const std::string& file : {std::string{"/nowhere/none.json"}, bundled("meshes/alder-72/none.glb"),
                                    std::string{GAPWISE_TEST_FRAMES "/../packages.txt"}}) {
        const Result<DocumentKind> kind = documentKind(kData, file);
        ASSERT_FALSE(kind) << file;
        EXPECT_THAT(kind.errors().front().where, HasSubstr(file));
    }
}

} // namespace gapwise
