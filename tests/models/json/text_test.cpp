#include "models/json/document.h"
#include "tests/support/print_error.h"

#include <nlohmann/json.hpp>

#include <gtest/gtest.h>

#include <fstream>

namespace gapwise {

namespace {

namespace fs = std::filesystem;

/// A folder of its own for one case, removed at its end.
class Folder {
public:
    Folder()
        : path_{fs::path{testing::TempDir()} /
                testing::UnitTest::GetInstance()->current_test_info()->name()} {
        fs::remove_all(path_);
        fs::create_directories(path_);
    }
    ~Folder() { fs::remove_all(path_); }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;

    fs::path write(const std::string& name, const std::string& text) const {
        std::ofstream{path_ / name, std::ios::binary} << text;
        return path_ / name;
    }
    const fs::path& path() const { return path_; }

private:
    fs::path path_;
};

Error errorOf(const fs::path& file) {
    const Result<std::string> text = readText(file);
    return text ? Error{} : text.errors().front();
}

} // namespace

TEST(ReadText, GivesEveryByte) {
    const Folder folder;
    const std::string all = std::string{"a\0\r\n\xFF", 5} + std::string(100'000, 'x');
    const auto text = readText(folder.write("all.json", all));
    ASSERT_TRUE(text);
    EXPECT_EQ(*text, all);
}

TEST(ReadText, EmptyFileIsEmptyText) {
    const Folder folder;
    const auto text = readText(folder.write("empty.json", ""));
    ASSERT_TRUE(text);
    EXPECT_EQ(*text, "");
}

TEST(ReadText, NamesAMissingFile) {
    const Folder folder;
    const fs::path file = folder.path() / "none.json";
    EXPECT_EQ(errorOf(file), (Error{file.string(), "no such file", "an existing file"}));
}

TEST(ReadText, RefusesADirectory) {
    const Folder folder;
    EXPECT_EQ(errorOf(folder.path()), (Error{folder.path().string(), "a directory", "a file"}));
}

TEST(ReadText, RefusesAFileOverTheLimit) {
    const Folder folder;
    const fs::path file = folder.write("garbage.json", "");
    fs::resize_file(file, 100'000'000); // sparse: nothing is written
    EXPECT_EQ(errorOf(file), (Error{file.string(), "more than 16 MiB", "a file of at most 16 MiB"}));
}

TEST(ReadText, TakesAFileOfExactlyTheLimit) {
    const Folder folder;
    const fs::path file = folder.write("large.json", "");
    fs::resize_file(file, kLargestDocumentBytes);
    const auto text = readText(file);
    ASSERT_TRUE(text);
    EXPECT_EQ(text->size(), kLargestDocumentBytes);
}

TEST(ReadText, StopsAtTheLimitOfAStreamWithoutEnd) {
    EXPECT_EQ(errorOf("/dev/zero"), (Error{"/dev/zero", "more than 16 MiB", "a file of at most 16 MiB"}));
}

TEST(Quoted, KeepsTextShortAndOnOneLine) {
    EXPECT_EQ(quotedText("left"), "\"left\"");
    EXPECT_EQ(quotedText("a\nb\x1b"), "\"a\\nb\\u001b\"");
    EXPECT_EQ(quotedText(std::string(61, 'x')), "\"" + std::string(60, 'x') + "…\"");
    EXPECT_EQ(quotedText(std::string(59, 'x') + "ä"), "\"" + std::string(59, 'x') + "…\"");
}

TEST(Quoted, SurvivesWhatIsNotUtf8) {
    EXPECT_EQ(quotedText("a\xFF"), "\"a\xEF\xBF\xBD\"");
}

TEST(Quoted, NamesValues) {
    EXPECT_EQ(quoted(nlohmann::json(370)), "370");
    EXPECT_EQ(quoted(nlohmann::json(-0.5)), "-0.5");
    EXPECT_EQ(quoted(nlohmann::json(true)), "true");
    EXPECT_EQ(quoted(nlohmann::json()), "null");
    EXPECT_EQ(quoted(nlohmann::json("left")), "\"left\"");
    EXPECT_EQ(quoted(nlohmann::json::array({1})), "an array");
    EXPECT_EQ(quoted(nlohmann::json::object()), "an object");
}

// RFC 6901, section 3 and 5.
TEST(PointerToken, EscapesTildeAndSlash) {
    EXPECT_EQ(pointerToken("a/b"), "a~1b");
    EXPECT_EQ(pointerToken("m~n"), "m~0n");
    EXPECT_EQ(pointerToken("~1"), "~01");
    EXPECT_EQ(pointerToken(" "), " ");
}

TEST(PointerToken, KeepsControlCharactersOffTheScreen) {
    EXPECT_EQ(pointerToken("a\nb\x1b"), "a\\u000ab\\u001b");
}

TEST(PlaceIn, JoinsFileAndPointer) {
    EXPECT_EQ(placeIn("k1.json", "/rules/3"), "k1.json#/rules/3");
    EXPECT_EQ(placeIn("k1.json", ""), "k1.json#");
}

} // namespace gapwise
