#include "models/procedure/last_look.h"

#include "tests/models/check/bench.h"

#include <gmock/gmock.h>

namespace gapwise {

namespace {

/// S1, S2 → S3, which hides SR-C (see bench.h) → S4, which hides the rotor's ring.
Frame frameWithLooks() {
    Frame frame = bench::smallFrame();
    frame.steps[2].after = {{StepId{"S1"}, "PHY", "w"}, {StepId{"S2"}, "REC", "w"}};
    frame.steps[3].after = {{StepId{"S3"}, "PHY", "w"}};
    frame.steps[3].hides = {seatOf(PartId{"PR-1"})};
    return frame;
}

std::vector<LookLeft> looks(const Frame& frame, const JobState& state) {
    return looksLeft(StepGraph{frame}, state, checkBuild(frame, state.build, {}));
}

JobState finishedRing() {
    JobState state;
    Seating ring = bench::seatedAt("SR-C", 90.0);
    ring.confirmed = Confirmation{.by = "I. Dorn"};
    state.build.seatings = {ring, bench::seatedAt("BUSH", 180.0), bench::seatedAt("PIN", 0.0)};
    return state;
}

} // namespace

TEST(LastLooks, CountTheStepsThatMustComeBefore) {
    const Frame frame = frameWithLooks();
    JobState state;
    std::vector<LookLeft> left = looks(frame, state);
    ASSERT_EQ(left.size(), 2U);
    EXPECT_EQ(left[0].hiddenBy.text, "S3");
    EXPECT_EQ(left[0].part.text, "SR-C");
    EXPECT_EQ(left[0].stepsLeft, 2U);
    EXPECT_EQ(left[1].stepsLeft, 3U);
    state.build.stepsDone = {StepId{"S1"}, StepId{"S2"}};
    EXPECT_EQ(looks(frame, state)[0].stepsLeft, 0U) << "it is next";
    state.build.stepsDone.emplace_back("S3");
    left = looks(frame, state);
    ASSERT_EQ(left.size(), 1U) << "S3 has hidden it";
    EXPECT_EQ(left[0].stepsLeft, 0U);
}

TEST(LastLooks, ALookIsFinishedWhenItsRulesHoldAndSomebodySaidSo) {
    const Frame frame = frameWithLooks();
    JobState state = finishedRing();
    EXPECT_TRUE(looks(frame, state)[0].finished);
    state.build.seatings[0].confirmed.reset();
    EXPECT_FALSE(looks(frame, state)[0].finished);
    state = finishedRing();
    state.build.seatings[0].index = Clock::seenFrom(Side::Compressor, Degrees{180.0});
    EXPECT_FALSE(looks(frame, state)[0].finished) << "the gap is over the slot";
    state.build.seatings.clear();
    EXPECT_FALSE(looks(frame, state)[0].finished) << "nothing is in the seat";
}

TEST(LastLooks, AStepNamesWhatItWouldHideUnfinished) {
    const Frame frame = frameWithLooks();
    JobState state = finishedRing();
    const auto hidden = [&] {
        return hiddenUnfinished(StepGraph{frame}, state, checkBuild(frame, state.build, {}), StepId{"S3"});
    };
    EXPECT_TRUE(hidden().empty());
    state.build.seatings[0].confirmed.reset();
    ASSERT_EQ(hidden().size(), 1U);
    EXPECT_EQ(hidden()[0].seat, seatOf(PartId{"SR-C"}));
}

} // namespace gapwise
