#include "models/measure/parts.h"

#include "tests/models/measure/small_measures.h"

#include <gmock/gmock.h>

namespace gapwise {

namespace {

using testing::ElementsAre;
using testing::HasSubstr;

PartDecision decision(PartFate fate, PartCondition condition = PartCondition::AsNew) {
    return {.part = PartId{"COLLAR"}, .condition = condition, .fate = fate, .by = "R. Ohlin"};
}

/// The verdict on the collar, whose face was read.
class Collar : public testing::Test {
protected:
    PartVerdict verdict(double face) {
        held_.build.readings = {small::reading("a", {face})};
        small::measure(held_);
        for (const PartVerdict& each : held_.report.parts)
            if (each.part == PartId{"COLLAR"})
                return each;
        ADD_FAILURE() << "no verdict";
        return {};
    }
    void decide(const PartDecision& decided) { held_.build.decisions = {decided}; }

    small::Held held_{small::frame(), small::build({})};
};

} // namespace

// Three zones: common practice, no source.
TEST_F(Collar, InSizeIsReusedWithoutAnyDecision) {
    const PartVerdict good = verdict(3.500);
    EXPECT_EQ(good.worst, Standing::Within);
    EXPECT_FALSE(good.open);
    EXPECT_FALSE(isBroken(held_.report));
}

TEST_F(Collar, BetweenNeedsANamedDecisionWithAReason) {
    EXPECT_TRUE(verdict(3.490).open);
    EXPECT_TRUE(isBroken(held_.report)) << "open";
    decide(decision(PartFate::Reuse));
    EXPECT_TRUE(verdict(3.490).open) << "no reason";
    EXPECT_THAT(verdict(3.490).words, HasSubstr("Not enough: the reason"));
    PartDecision reasoned = decision(PartFate::Reuse);
    reasoned.reason = "face bright, no step felt";
    decide(reasoned);
    EXPECT_FALSE(verdict(3.490).open);
    EXPECT_FALSE(isBroken(held_.report));
    reasoned.by = " ";
    decide(reasoned);
    EXPECT_TRUE(verdict(3.490).open) << "no name";
}

TEST_F(Collar, BeyondNobodyReusesWithoutAConcession) {
    EXPECT_TRUE(verdict(3.415).open);
    PartDecision reuse = decision(PartFate::Reuse);
    reuse.reason = "there is no other";
    decide(reuse);
    EXPECT_TRUE(verdict(3.415).open);
    EXPECT_THAT(verdict(3.415).words, HasSubstr("number of a concession"));
    reuse.concession = "C-17";
    decide(reuse);
    EXPECT_FALSE(verdict(3.415).open);
    EXPECT_TRUE(isBroken(held_.report)) << "it stays beyond its limit";
}

TEST_F(Collar, RenewedItIsMeasuredAnew) {
    decide(decision(PartFate::Renew, PartCondition::WornOut));
    EXPECT_FALSE(verdict(3.415).open);
    EXPECT_THAT(verdict(3.415).words, HasSubstr("measure the new one"));
    EXPECT_EQ(verdict(3.500).worst, Standing::Within);
}

TEST_F(Collar, ASpoiledPartIsNotReusedHoweverItMeasures) {
    for (const PartCondition condition :
         {PartCondition::WornOut, PartCondition::Damaged, PartCondition::Missing, PartCondition::WrongPart}) {
        decide(decision(PartFate::Reuse, condition));
        EXPECT_TRUE(verdict(3.500).open);
    }
    decide(decision(PartFate::Reject, PartCondition::Damaged));
    EXPECT_FALSE(verdict(3.500).open);
}

TEST_F(Collar, TheWorstOfItsQuantitiesSpeaks) {
    held_.build.readings = {small::reading("a", {3.490}), small::reading("hub", {3.520})};
    small::measure(held_);
    const PartVerdict& collar = held_.report.parts.back();
    EXPECT_EQ(collar.worst, Standing::Beyond) << "the track is 0.030 deep";
    EXPECT_THAT(collar.because, ElementsAre(QuantityId{"track"}));
}

TEST(Parts, ThoseWithoutSizesOrDecisionAreLeftOut) {
    small::Held held{small::frame(), small::build({})};
    held.build.decisions = {{.part = PartId{"HOUSING"}, .by = "R. Ohlin"}};
    small::measure(held);
    std::vector<std::string> parts;
    for (const PartVerdict& each : held.report.parts)
        parts.push_back(each.part.text);
    EXPECT_THAT(parts, ElementsAre("HOUSING", "ROTOR", "COLLAR"));
    held.build.decisions.clear();
    small::measure(held);
    EXPECT_EQ(held.report.parts.size(), 2U);
}

} // namespace gapwise
