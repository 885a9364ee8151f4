#include "models/torque/pattern.h"

#include "tests/support/print_error.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cstdlib>

namespace gapwise::test {

namespace {

std::string orderFor(int screws) {
    return orderWords(*tighteningOrder(screws, ""));
}

} // namespace

// Common practice: star patterns of bolting guides, screws numbered clockwise as the tightener sees them.
TEST(Patterns, AreTheStarsOfTheTrade) {
    EXPECT_EQ(orderFor(1), "1");
    EXPECT_EQ(orderFor(2), "1-2");
    EXPECT_EQ(orderFor(3), "1-2-3");
    EXPECT_EQ(orderFor(4), "1-3-2-4");
    EXPECT_EQ(orderFor(6), "1-4-2-5-3-6");
    EXPECT_EQ(orderFor(8), "1-5-3-7-2-6-4-8");
    EXPECT_EQ(orderFor(12), "1-7-4-10-2-8-5-11-3-9-6-12");
}

// Common practice: the five-pointed star drawn in one line.
TEST(Patterns, FiveScrewsMakeAFivePointedStar) {
    EXPECT_EQ(orderFor(5), "1-3-5-2-4");
}

// ASME PCC-1 appendix F, legacy cross pattern (TQ-32): both are in use.
TEST(Patterns, SixScrewsHaveMoreThanOneOppositePairOrder) {
    EXPECT_TRUE(isOppositePairOrder(std::vector{1, 4, 2, 5, 3, 6}));
    EXPECT_TRUE(isOppositePairOrder(std::vector{1, 4, 6, 3, 5, 2}));
}

TEST(Patterns, InTurnIsNoOppositePairOrder) {
    EXPECT_FALSE(isOppositePairOrder(std::vector{1, 2, 3, 4}));
    EXPECT_FALSE(isOppositePairOrder(std::vector{1, 2, 3}));
    EXPECT_FALSE(isOppositePairOrder(std::vector{1, 3, 3, 1}));
    EXPECT_FALSE(isOppositePairOrder(std::vector<int>{}));
}

TEST(Patterns, AWholeOrderHasEveryScrewOnce) {
    EXPECT_TRUE(isWholeOrder(std::vector{2, 1, 3}));
    EXPECT_FALSE(isWholeOrder(std::vector{1, 1, 3}));
    EXPECT_FALSE(isWholeOrder(std::vector{0, 1, 2}));
    EXPECT_FALSE(isWholeOrder(std::vector{1, 2, 4}));
    EXPECT_FALSE(isWholeOrder(std::vector<int>{}));
}

RC_GTEST_PROP(Patterns, EveryNumberOfScrewsHasAWholeOrder, ()) {
    const int screws = *rc::gen::inRange(1, kMostScrews + 1);
    RC_ASSERT(isWholeOrder(*tighteningOrder(screws, "")));
}

RC_GTEST_PROP(Patterns, EveryEvenNumberGoesByOppositePairs, ()) {
    const int screws = 2 * *rc::gen::inRange(1, kMostScrews / 2 + 1);
    RC_ASSERT(isOppositePairOrder(*tighteningOrder(screws, "")));
}

// The second pair stands square to the first, so that the flange does not tip.
RC_GTEST_PROP(Patterns, ByFoursTheSecondPairStandsSquareToTheFirst, ()) {
    const int screws = 4 * *rc::gen::inRange(1, kMostScrews / 4 + 1);
    const std::vector<int> order = *tighteningOrder(screws, "");
    RC_ASSERT(std::abs(order[2] - order[0]) == screws / 4);
}

TEST(Patterns, RefuseNoScrewsAndTooMany) {
    for (const int wrong : {0, -3, kMostScrews + 1}) {
        const Result<std::vector<int>> order = tighteningOrder(wrong, "SCREWS");
        ASSERT_FALSE(order);
        EXPECT_EQ(order.errors().front(),
                  (Error{"SCREWS", std::to_string(wrong), "a number of screws from 1 to 96"}));
    }
}

} // namespace gapwise::test
