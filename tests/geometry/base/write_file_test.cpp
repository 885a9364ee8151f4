#include "geometry/base/write_file.h"

#include <gtest/gtest.h>

#include <fstream>
#include <iterator>
#include <sstream>
#include <unistd.h>

namespace gapwise {

namespace {

class WriteFileTest : public ::testing::Test {
protected:
    void SetUp() override {
        folder_ = std::filesystem::temp_directory_path() / ("gapwise-write-" + std::to_string(::getpid()));
        std::filesystem::create_directories(folder_);
    }
    void TearDown() override { std::filesystem::remove_all(folder_); }

    std::string read(const std::filesystem::path& file) const {
        std::ifstream in{file, std::ios::binary};
        std::ostringstream text;
        text << in.rdbuf();
        return text.str();
    }
    std::size_t filesInFolder() const {
        return static_cast<std::size_t>(std::distance(std::filesystem::directory_iterator{folder_}, {}));
    }

    std::filesystem::path folder_{};
};

} // namespace

TEST_F(WriteFileTest, ReplacesTheWholeFileAndLeavesNothingBesideIt) {
    const std::filesystem::path file = folder_ / "a.txt";
    EXPECT_FALSE(writeFile(file, "a long first text"));
    EXPECT_FALSE(writeFile(file, std::string_view{"b\0c", 3}));
    EXPECT_EQ(read(file), (std::string{"b\0c", 3}));
    EXPECT_EQ(filesInFolder(), 1U);
}

TEST_F(WriteFileTest, AFolderThatIsNotThereIsSaid) {
    const auto failure = writeFile(folder_ / "none" / "a.txt", "x");
    ASSERT_TRUE(failure);
    EXPECT_FALSE(failure->diskFull);
    EXPECT_EQ(failure->error.where, (folder_ / "none" / "a.txt").string());
    EXPECT_EQ(failure->error.found, "No such file or directory");
}

TEST_F(WriteFileTest, AFolderInPlaceOfAFileIsRefused) {
    ASSERT_TRUE(writeFile(folder_, "x"));
    EXPECT_EQ(writeFile(folder_, "x")->error.found, "Is a directory");
}

TEST_F(WriteFileTest, AFullDiskIsTold) {
    if (::access("/dev/full", W_OK) != 0)
        GTEST_SKIP() << "no /dev/full here";
    const auto failure = writeFile("/dev/full", "x");
    ASSERT_TRUE(failure);
    EXPECT_TRUE(failure->diskFull);
}

} // namespace gapwise
