#include "models/procedure/reopen.h"

#include "tests/models/procedure/course.h"

#include <gmock/gmock.h>

#include <algorithm>

namespace gapwise {

namespace {

using course::text;

bool has(const std::vector<StepId>& steps, const char* step) {
    return std::ranges::find(steps, StepId{step}) != steps.end();
}

/// Common practice, no source: what a shop does over when it goes back to a step.
class Rework : public ::testing::TestWithParam<const char*> {
protected:
    Reopened undo(const char* step) const { return reopenedBy(graph_, build_, StepId{step}); }

    Frame frame_ = course::bundled(GetParam());
    StepGraph graph_{frame_};
    Build build_ = course::allDone(frame_);
};

} // namespace

TEST(Reopen, FollowsPhysicsAccessAndMeasuringOnly) {
    const Frame frame = course::smallFrame();
    const StepGraph graph{frame};
    const Build build = course::allDone(frame);
    EXPECT_EQ(text(reopenedBy(graph, build, StepId{"A"}).steps), "A B C D");
    EXPECT_EQ(text(reopenedBy(graph, build, StepId{"A"}).lapsed), "E Z");
    EXPECT_EQ(text(reopenedBy(graph, build, StepId{"C"}).steps), "C D");
    EXPECT_EQ(text(reopenedBy(graph, build, StepId{"C"}).lapsed), "Z");
    EXPECT_EQ(text(reopenedBy(graph, build, StepId{"E"}).steps), "E");
    EXPECT_EQ(text(reopenedBy(graph, build, StepId{"E"}).lapsed), "Z");
}

TEST(Reopen, NamesOnlyWhatWasDone) {
    const Frame frame = course::smallFrame();
    const StepGraph graph{frame};
    const Build build = course::after({"A", "C"}).build;
    EXPECT_EQ(text(reopenedBy(graph, build, StepId{"A"}).steps), "A C") << "through B, which is open";
    EXPECT_EQ(text(reopenedBy(graph, build, StepId{"A"}).lapsed), "");
    EXPECT_EQ(text(reopenedBy(graph, build, StepId{"no such step"}).steps), "");
}

TEST(Reopen, AnEdgeThatDoesNotApplyCarriesNothing) {
    Frame frame = course::smallFrame();
    frame.steps[9].after[1].reason = "PHY"; // W after K, only when the rotor was let down.
    const StepGraph graph{frame};
    Build build = course::after({"R", "K", "W"}).build;
    EXPECT_EQ(text(reopenedBy(graph, build, StepId{"K"}).steps), "K");
    build.rotorLoweredIn = true;
    EXPECT_EQ(text(reopenedBy(graph, build, StepId{"K"}).steps), "K W");
}

TEST_P(Rework, UndoingS09BringsTheRotorOutAgain) {
    const Reopened reopened = undo("S09");
    EXPECT_TRUE(has(reopened.steps, "S17"));
    EXPECT_TRUE(has(reopened.steps, "S18"));
    EXPECT_TRUE(has(reopened.steps, "S14"));
    EXPECT_FALSE(has(reopened.steps, "S13")) << "the other end is not touched";
}

TEST_P(Rework, UndoingS15S16OrS17OpensTheStack) {
    for (const char* step : {"S15", "S16", "S17"}) {
        const Reopened reopened = undo(step);
        for (const char* stack : {"S19", "S20", "S21", "S22", "S23", "S26", "S27", "S28", "S29", "S30"})
            EXPECT_TRUE(has(reopened.steps, stack)) << step << " " << stack;
        EXPECT_FALSE(has(reopened.steps, "S24")) << "bench work stays";
        EXPECT_FALSE(has(reopened.steps, "S25")) << "bench work stays";
    }
}

TEST_P(Rework, TouchingS39MakesTheLeakTestVoid) {
    EXPECT_EQ(text(undo("S39").steps), "S39 S40 S41 S42");
}

TEST_P(Rework, TheAxialReadingIsVoidWhenTheNutIsTouched) {
    const Reopened reopened = undo("S29");
    EXPECT_TRUE(has(reopened.steps, "S30"));
    EXPECT_TRUE(has(reopened.steps, "S31"));
}

TEST_P(Rework, AHoldPointLapsesThroughAnyReason) {
    const Reopened reopened = undo("S00");
    EXPECT_TRUE(has(reopened.lapsed, "S14")) << "S00 -REC-> S01 -CLN-> S02 …";
    EXPECT_FALSE(has(reopened.steps, "S14"));
}

INSTANTIATE_TEST_SUITE_P(EveryFrame, Rework, ::testing::Values("alder-72", "alder-72-pinned", "birch-150"));

} // namespace gapwise
