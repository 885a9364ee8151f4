#include "models/measure/compare.h"

#include "tests/models/measure/small_measures.h"

#include <gmock/gmock.h>

namespace gapwise {

namespace {

using Outcome = BeforeAndAfter::Outcome;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::UnorderedElementsAre;

/// A clearance read before and since.
class Compared : public testing::Test {
protected:
    BeforeAndAfter compare(double before, double after) {
        Reading was = small::reading("c", {before});
        was.occasion = Occasion::Before;
        was.method = methodBefore_;
        held_.build.readings = {was, small::reading("c", {after})};
        small::measure(held_);
        return held_.of("c").change.value();
    }
    void renew(const char* part) {
        held_.build.decisions.push_back({.part = PartId{part}, .fate = PartFate::Renew, .by = "R. Ohlin"});
    }
    Quantity& clearance() { return held_.frame.measurements.back().quantities.front(); }

    small::Held held_{small::frame(), small::build({})};
    std::string methodBefore_ = "push-pull";
};

} // namespace

// k·√(u₁² + u₂²) with U = 0.006 of both: 0.0085.
TEST_F(Compared, ASmallDifferenceSaysNothing) {
    const BeforeAndAfter change = compare(0.070, 0.078);
    EXPECT_TRUE(change.compared);
    EXPECT_NEAR(change.significant, 0.006 * std::sqrt(2.0), 1e-9);
    EXPECT_EQ(change.outcome, Outcome::Unchanged);
    EXPECT_EQ(compare(0.070, 0.080).outcome, Outcome::Unexpected) << "nothing was done";
}

// Common practice, no source: renewed thrust parts make the clearance smaller.
TEST_F(Compared, TheDirectionFollowsFromWhatWasRenewed) {
    renew("COLLAR");
    const BeforeAndAfter down = compare(0.095, 0.068);
    EXPECT_EQ(down.outcome, Outcome::AsExpected);
    EXPECT_THAT(down.words, HasSubstr("0.027 mm less than before, as was to be expected: COLLAR renewed"));
    EXPECT_EQ(compare(0.068, 0.095).outcome, Outcome::Unexpected);
    const BeforeAndAfter none = compare(0.070, 0.072);
    EXPECT_EQ(none.outcome, Outcome::NoChangeThoughExpected);
    EXPECT_THAT(none.words, HasSubstr("find out why"));
}

TEST_F(Compared, ANewPartInItsSeatIsRenewedToo) {
    held_.build.seatings.back().conditions = {"new"};
    renew("ROTOR");
    EXPECT_THAT(renewedParts(held_.build), UnorderedElementsAre(PartId{"COLLAR"}, PartId{"ROTOR"}));
    EXPECT_EQ(compare(0.095, 0.068).outcome, Outcome::AsExpected);
}

TEST_F(Compared, DirectionsThatContradictExpectAnyChange) {
    clearance().expectations.push_back({.work = "freed", .direction = Direction::Up});
    renew("COLLAR");
    held_.build.work = {"freed"};
    EXPECT_EQ(compare(0.068, 0.095).outcome, Outcome::AsExpected);
    EXPECT_EQ(compare(0.095, 0.068).outcome, Outcome::AsExpected);
    EXPECT_EQ(compare(0.068, 0.068).outcome, Outcome::Unchanged);
}

// Common practice, no source: mean gap after less mean gap before is the deposit that was removed.
TEST_F(Compared, DepositsThatAreGoneShow) {
    clearance().expectations = {{.work = "deposits_removed_turbine", .direction = Direction::Up}};
    held_.build.work = {"deposits_removed_turbine"};
    EXPECT_THAT(compare(0.050, 0.115).words, HasSubstr("the cleaning shows, about 0.065 mm removed"));
    EXPECT_EQ(compare(0.050, 0.052).outcome, Outcome::NoChangeThoughExpected);
}

TEST_F(Compared, OtherMethodsAreShownOnly) {
    methodBefore_ = "upright";
    const BeforeAndAfter change = compare(0.095, 0.068);
    EXPECT_FALSE(change.compared);
    EXPECT_EQ(change.outcome, Outcome::NotCompared);
    EXPECT_NEAR(change.difference, -0.027, 1e-12);
    EXPECT_THAT(change.words, HasSubstr("before by words of upright, now by words of push-pull"));
    methodBefore_ = "";
    EXPECT_FALSE(compare(0.095, 0.068).compared);
}

TEST_F(Compared, AnotherPartIsNotComparedWithTheOldOne) {
    renew("COLLAR");
    Reading was = small::reading("a", {3.415});
    was.occasion = Occasion::Before;
    held_.build.readings = {was, small::reading("a", {3.500})};
    small::measure(held_);
    EXPECT_EQ(held_.of("a").change->outcome, Outcome::NotCompared);
    EXPECT_THAT(held_.of("a").change->words, HasSubstr("COLLAR was renewed"));
}

TEST_F(Compared, OnlyAPartCameBack) {
    renew("COLLAR");
    EXPECT_THAT(compare(0.175, 0.155).words, HasSubstr("Only 0.020 of 0.105 mm came back"));
}

} // namespace gapwise
