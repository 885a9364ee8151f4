#include "models/procedure/tightening.h"

#include "tests/models/procedure/course.h"

#include <gmock/gmock.h>

namespace gapwise {

namespace {

using ::testing::ElementsAre;

std::vector<std::string> namesOf(const std::vector<Stage>& stages) {
    std::vector<std::string> names;
    for (const Stage& stage : stages)
        names.push_back(stage.name);
    return names;
}

} // namespace

TEST(TighteningStages, ScrewsAreDrawnUpByPercentThenGoneRoundOnceMore) {
    const std::vector<Stage> stages = stagesOf(course::smallFrame().fasteners[0]);
    EXPECT_THAT(namesOf(stages), ElementsAre("50 %", "100 %", "once more round, clockwise"));
    EXPECT_DOUBLE_EQ(stages[0].torqueNm, 10.0);
    EXPECT_DOUBLE_EQ(stages[1].torqueNm, 20.0);
    EXPECT_DOUBLE_EQ(stages[2].torqueNm, 20.0);
    EXPECT_THAT(stages[1].order, ElementsAre(1, 3, 2, 4));
    EXPECT_THAT(stages[2].order, ElementsAre(1, 2, 3, 4));
}

TEST(TighteningStages, ANutIsSeatedSlackenedMadeSnugAndTurnedToItsFinalTorque) {
    const std::vector<Stage> stages = stagesOf(course::smallFrame().fasteners[1]);
    EXPECT_THAT(namesOf(stages), ElementsAre("seat", "slacken", "snug", "final"));
    EXPECT_FALSE(stages[0].clockwise) << "a left-hand nut tightens counter-clockwise";
    EXPECT_TRUE(stages[1].clockwise);
    EXPECT_DOUBLE_EQ(stages[1].torqueNm, 0.0);
    EXPECT_DOUBLE_EQ(stages[3].torqueNm, 14.0);
}

TEST(TighteningStages, AFastenerWithoutAPlanHasNone) {
    EXPECT_TRUE(stagesOf(Fastener{}).empty());
    EXPECT_FALSE(nextTightened(Fastener{}, {}));
}

TEST(TighteningProgress, GoesThroughEveryScrewOfEveryStageInThePattern) {
    const Fastener screws = course::smallFrame().fasteners[0];
    JobState state;
    std::string order;
    while (const std::optional<Tightened> next = nextTightened(screws, state)) {
        order += std::to_string(next->group) + std::to_string(next->screw) + " ";
        state.tightened.push_back(*next);
        ASSERT_LE(state.tightened.size(), 18U);
    }
    EXPECT_EQ(order, "01 03 02 04 01 03 02 04 01 02 03 04 11 12 11 12 11 12 ");
    EXPECT_EQ(tighteningOf(screws, state).done, 18U);
    EXPECT_EQ(tighteningOf(screws, state).all, 18U);
}

TEST(TighteningProgress, CountsOnlyWhatFollowsThePattern) {
    const Fastener screws = course::smallFrame().fasteners[0];
    JobState state;
    state.tightened = {Tightened{.fastener = screws.id, .screw = 3}};
    EXPECT_EQ(tighteningOf(screws, state).done, 0U);
    state.tightened = {Tightened{.fastener = screws.id, .group = 1, .screw = 1}};
    const Tightening tightening = tighteningOf(screws, state);
    EXPECT_EQ(tightening.done, 1U) << "the drain flange may come first";
    EXPECT_EQ(tightening.next->group, 0);
}

} // namespace gapwise
