#include "models/frame/data_folder.h"
#include "tests/support/print_error.h"

#include <gmock/gmock.h>

#include <cstdlib>
#include <fstream>
#include <string>
#include <unistd.h>

namespace gapwise {

namespace {

namespace fs = std::filesystem;
using testing::ElementsAre;
using testing::IsEmpty;

/// An installed tree of its own: `bin/`, `share/gapwise/frames/` with two frames.
class DataFolderTest : public testing::Test {
protected:
    void SetUp() override {
        unsetenv("GAPWISE_DATA"); // NOLINT(concurrency-mt-unsafe): one thread
        fs::remove_all(root_);
        fs::create_directories(root_ / "bin");
        fs::create_directories(share() / "frames");
        std::ofstream{root_ / "bin" / "gapwise"} << "";
        std::ofstream{share() / "frames" / "b-2.json"} << "{}";
        std::ofstream{share() / "frames" / "a-1.json"} << "{}";
        std::ofstream{share() / "frames" / "notes.txt"} << "";
    }
    void TearDown() override {
        unsetenv("GAPWISE_DATA"); // NOLINT(concurrency-mt-unsafe): one thread
        fs::remove_all(root_);
    }
    fs::path share() const { return root_ / "share" / "gapwise"; }

    fs::path root_ = fs::canonical(testing::TempDir()) / ("installed-" + std::to_string(::getpid()));
};

} // namespace

TEST_F(DataFolderTest, LiesBesideTheProgram) {
    const auto data = findDataFolder(root_ / "bin" / "gapwise");
    ASSERT_TRUE(data);
    EXPECT_EQ(data->root, share());
}

TEST_F(DataFolderTest, IsFoundThroughALinkToTheProgram) {
    fs::create_symlink(root_ / "bin" / "gapwise", root_ / "link");
    const auto data = findDataFolder(root_ / "link");
    ASSERT_TRUE(data);
    EXPECT_EQ(data->root, share());
}

TEST_F(DataFolderTest, IsNamedByTheEnvironmentFirst) {
    setenv("GAPWISE_DATA", share().c_str(), 1); // NOLINT(concurrency-mt-unsafe): one thread
    const auto data = findDataFolder("/nowhere/bin/gapwise");
    ASSERT_TRUE(data);
    EXPECT_EQ(data->root, share());
    setenv("GAPWISE_DATA", "/nowhere", 1); // NOLINT(concurrency-mt-unsafe): one thread
    const auto none = findDataFolder(root_ / "bin" / "gapwise");
    ASSERT_FALSE(none);
    EXPECT_EQ(none.errors().front(),
              (Error{"GAPWISE_DATA", "/nowhere", "a folder with the folder frames in it"}));
}

TEST_F(DataFolderTest, SaysWhereItLookedInVain) {
    const auto none = findDataFolder("/nowhere/bin/gapwise");
    ASSERT_FALSE(none);
    EXPECT_EQ(none.errors().front(),
              (Error{"/nowhere/share/gapwise", "no data folder",
                     "the folder with the frames beside the program; name it by GAPWISE_DATA"}));
}

TEST_F(DataFolderTest, ListsItsFramesInOrder) {
    EXPECT_THAT(bundledFrames(DataFolder{share()}), ElementsAre("a-1", "b-2"));
    EXPECT_THAT(bundledFrames(DataFolder{"/nowhere"}), IsEmpty());
}

TEST_F(DataFolderTest, TellsIdsFromPaths) {
    const DataFolder data{share()};
    EXPECT_TRUE(isBundledFrame(data, "a-1"));
    EXPECT_FALSE(isBundledFrame(data, "a-2"));
    EXPECT_FALSE(isBundledFrame(data, "../frames/a-1"));
    EXPECT_FALSE(isBundledFrame(data, "a-1.json"));
    EXPECT_FALSE(isBundledFrame(data, ""));
    EXPECT_FALSE(isBundledFrame(data, "-"));
    EXPECT_EQ(frameFileOf(data, "a-1"), share() / "frames" / "a-1.json");
    EXPECT_EQ(frameFileOf(data, "mine/a-1"), "mine/a-1");
}

} // namespace gapwise
