#include "tests/viewer/window/session.h"

#include <gmock/gmock.h>

#include <filesystem>

namespace gapwise::test {

namespace {

using ::testing::HasSubstr;
using ::testing::IsEmpty;

/// `gapwise open alder-72` where DISPLAY says so, to its end.
Ended openOn(const std::string& display, const ScratchFolder& scratch) {
    return runProgram("gapwise", Start{.arguments = {"open", "alder-72"},
                                       .environment = {{"DISPLAY", display},
                                                       {"WAYLAND_DISPLAY", ""},
                                                       {"XDG_STATE_HOME", scratch.path("state")}}});
}

} // namespace

TEST(NoWindow, ADisplayWithoutOpenGlIsSaidAndTheStatusIsThree) {
    const ScratchFolder scratch;
    const Display display{scratch.path(""), {"-extension", "GLX"}};
    const Ended ended = openOn(display.name(), scratch);
    EXPECT_EQ(ended.status, 3);
    EXPECT_THAT(ended.err, HasSubstr("window"));
    EXPECT_THAT(ended.err, HasSubstr("OpenGL 3.3"));
    EXPECT_THAT(ended.out, IsEmpty());
}

TEST(NoWindow, NoDisplayAtAllIsSaidAndTheStatusIsThree) {
    const ScratchFolder scratch;
    const Ended ended = openOn("", scratch);
    EXPECT_EQ(ended.status, 3);
    EXPECT_THAT(ended.err, HasSubstr("DISPLAY"));
    EXPECT_THAT(ended.out, IsEmpty());
}

TEST(NoWindow, NoJobIsBegunWhereNoWindowOpens) {
    const ScratchFolder scratch;
    EXPECT_EQ(openOn("", scratch).status, 3);
    EXPECT_FALSE(std::filesystem::exists(scratch.path("state/gapwise")));
}

TEST(NoWindow, ADisplayThatIsNotThereIsSaidAndTheStatusIsThree) {
    const ScratchFolder scratch;
    const Ended ended = openOn(":65000", scratch);
    EXPECT_EQ(ended.status, 3);
    EXPECT_THAT(ended.err, HasSubstr("DISPLAY"));
}

} // namespace gapwise::test
