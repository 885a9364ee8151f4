#include "tests/support/print_error.h"
#include "tests/support/small_frame.h"

#include <gmock/gmock.h>

namespace gapwise {

using testing::ElementsAre;
using testing::IsEmpty;

TEST(RuleErrors, AClockNamesItsSide) {
    EXPECT_THAT(ChangedFrame{}.erase("/rules/0", "seen_from").errors(),
                ElementsAre(Error{"f.json#/rules/0", "clock_deg 90 without seen_from",
                                  "seen_from beside every clock but 0 and 180"}));
    EXPECT_THAT(ChangedFrame{}.set("/rules/10/clock_deg", 0.5).errors(),
                ElementsAre(Error{"f.json#/rules/10", "clock_deg 0.5 without seen_from",
                                  "seen_from beside every clock but 0 and 180"}));
    EXPECT_THAT(ChangedFrame{}.set("/rules/10/clock_deg", 180).errors(), IsEmpty());
}

TEST(RuleErrors, AToleranceLiesAboveZero) {
    EXPECT_THAT(ChangedFrame{}.set("/rules/0/tolerance_deg", 0).errors(),
                ElementsAre(Error{"f.json#/rules/0/tolerance_deg", "0", "an angle above 0 to 180"}));
    EXPECT_THAT(ChangedFrame{}.set("/rules/11/tolerance_deg", 0).errors(),
                ElementsAre(Error{"f.json#/rules/11/tolerance_deg", "0", "an angle above 0 to 180"}));
    EXPECT_THAT(ChangedFrame{}.set("/rules/0/tolerance_deg", 180).errors(), IsEmpty());
}

TEST(RuleErrors, AGapRuleSpeaksOfAGap) {
    EXPECT_THAT(ChangedFrame{}.set("/rules/10/kind", "gap_clock").errors(),
                ElementsAre(Error{"f.json#/rules/10/part",
                                  "seat-COLLAR, whose part type collar has no gap as its index",
                                  "a part whose index is its gap"}));
    EXPECT_THAT(ChangedFrame{}.set("/rules/8/parts/1", "COLLAR").errors(),
                testing::Contains(Error{"f.json#/rules/8/parts/1",
                                        "seat-COLLAR, whose part type collar has no gap as its index",
                                        "a part whose index is its gap"}));
    EXPECT_THAT(ChangedFrame{}.set("/rules/1/part", "BUSH").errors(),
                testing::Contains(Error{"f.json#/rules/1/part",
                                        "seat-BUSH, whose part type bush has no gap as its index",
                                        "a part whose index is its gap"}));
}

TEST(RuleErrors, AMarkRuleSpeaksOfAnIndex) {
    EXPECT_THAT(ChangedFrame{}.set("/rules/10/part", "PIN").errors(),
                ElementsAre(Error{"f.json#/rules/10/part", "seat-PIN, whose part type pin has no index",
                                  "a part with an index"}));
    EXPECT_THAT(ChangedFrame{}.set("/rules/11/parts/1", "PIN").errors(),
                ElementsAre(Error{"f.json#/rules/11/parts/1", "seat-PIN, whose part type pin has no index",
                                  "a part with an index"}));
}

TEST(RuleErrors, TwoGapsAreOfTwoParts) {
    EXPECT_THAT(
        ChangedFrame{}.set("/rules/8/parts/1", "PR-1").errors(),
        testing::Contains(Error{"f.json#/rules/8/parts/1", "\"PR-1\"", "another part than the first"}));
}

TEST(RuleErrors, MarksOfOnePartAlwaysMatch) {
    EXPECT_THAT(ChangedFrame{}.set("/rules/11/parts/1", "ROTOR").errors(),
                ElementsAre(Error{"f.json#/rules/11/parts/1", "\"ROTOR\" again", "each part once"}));
    EXPECT_THAT(ChangedFrame{}.set("/rules/11/parts", {"ROTOR"}).errors(),
                ElementsAre(Error{"f.json#/rules/11/parts", "1 part", "at least 2 parts"}));
}

TEST(RuleErrors, AFaceRuleNeedsAFaceThatMatters) {
    EXPECT_THAT(ChangedFrame{}.set("/rules/2/part", "PR-1").errors(),
                ElementsAre(Error{"f.json#/rules/2/part",
                                  "seat-PR-1, whose part type seal-ring has no reference face",
                                  "a part with a reference face"},
                            Error{"f.json#/rules/2/part", "\"PR-1\", whose seat is reversible",
                                  "a part that may not go in either way round"}));
}

TEST(RuleErrors, AFaceLooksTowardAPartBesideIt) {
    EXPECT_THAT(ChangedFrame{}.set("/rules/2/toward", "SR").errors(),
                ElementsAre(Error{"f.json#/rules/2/toward", "\"SR\", which lies at z -8 like SR",
                                  "compressor, turbine, or a part on one side of it"}));
}

TEST(RuleErrors, AJointRuleNeedsAJoint) {
    EXPECT_THAT(ChangedFrame{}.set("/rules/9/seat", "seat-SR").errors(),
                ElementsAre(Error{"f.json#/rules/9/seat", "seat-SR, whose part type snap-ring has no joint",
                                  "a seat whose part types all have a joint"}));
    EXPECT_THAT(ChangedFrame{}.set("/rules/9/joint", "stepped").errors(),
                ElementsAre(Error{"f.json#/rules/9/joint", "\"stepped\"",
                                  "the joint of a part type that the seat lists"}));
}

TEST(RuleErrors, ANotchEngagesWithAnotherPart) {
    EXPECT_THAT(ChangedFrame{}.set("/rules/4/with", "N1").errors(),
                ElementsAre(Error{"f.json#/rules/4/with", "\"N1\"", "a pin or a feature of another part"}));
    EXPECT_THAT(ChangedFrame{}.set("/rules/4/with", "BUSH").errors(),
                ElementsAre(Error{"f.json#/rules/4/with", "\"BUSH\"", "a pin or a feature of another part"}));
    EXPECT_THAT(
        ChangedFrame{}.set("/rules/4/feature", "F2").errors(),
        ElementsAre(Error{"f.json#/rules/4/feature", "\"F2\", a feature of housing", "a feature of bush"}));
}

TEST(RuleErrors, EngagementHasSomePlay) {
    EXPECT_THAT(ChangedFrame{}.set("/rules/4/engage_deg", 0.4).errors(),
                ElementsAre(Error{"f.json#/rules/4/engage_deg", "0.4", "half the play, from 0.5 to 180"}));
}

TEST(RuleErrors, AFeatureCrossesTheGrooveAlongTheShaft) {
    EXPECT_THAT(ChangedFrame{}.set("/part_types/0/shape/features/0/z_mm", {-7.0, -5.0}).errors(),
                ElementsAre(Error{"f.json#/rules/1/feature", "F1 at z -7 to -5 mm, r 9 to 12 mm",
                                  "a feature that crosses the groove of SR at z -8.6 to -7.5 mm, r 10 mm"}));
}

TEST(RuleErrors, TouchingTheGrooveIsNotCrossingIt) {
    EXPECT_EQ(ChangedFrame{}.set("/part_types/0/shape/features/0/z_mm", {-7.5, -5.0}).errors().size(), 1U);
}

TEST(RuleErrors, AFeatureCrossesTheBoreOfTheGroove) {
    EXPECT_THAT(ChangedFrame{}.set("/part_types/0/shape/features/0/r_mm", {11.0, 15.0}).errors(),
                ElementsAre(Error{"f.json#/rules/1/feature", "F1 at z -9 to -5 mm, r 11 to 15 mm",
                                  "a feature that crosses the groove of SR at z -8.6 to -7.5 mm, r 10 mm"}));
}

TEST(RuleErrors, AFeatureOfAnotherPartIsMovedToItsSeat) {
    // N1 lies at z -5 to -3 of the bush, whose seat is at -14; the groove does not reach there.
    EXPECT_THAT(ChangedFrame{}.set("/rules/1/feature", "N1").errors(),
                ElementsAre(Error{"f.json#/rules/1/feature", "N1 at z -19 to -17 mm, r 8 to 10 mm",
                                  "a feature that crosses the groove of SR at z -8.6 to -7.5 mm, r 10 mm"}));
    // Turned round the notch lies at the other end of the bush.
    EXPECT_THAT(ChangedFrame{}.set("/rules/1/feature", "N1").set("/rules/5/toward", "turbine").errors(),
                ElementsAre(Error{"f.json#/rules/1/feature", "N1 at z -11 to -9 mm, r 8 to 10 mm",
                                  "a feature that crosses the groove of SR at z -8.6 to -7.5 mm, r 10 mm"}));
}

TEST(RuleErrors, OnlyAGrooveCanBeCrossed) {
    EXPECT_THAT(ChangedFrame{}.erase("/seats/2", "groove").errors(),
                ElementsAre(Error{"f.json#/rules/1/part", "seat-SR without a groove", "a ring in a groove"}));
}

TEST(RuleErrors, AFeatureIsNarrowerThanTheBore) {
    EXPECT_THAT(ChangedFrame{}.set("/part_types/0/shape/features/0/width_mm", 21).errors(),
                ElementsAre(Error{"f.json#/rules/1/feature", "F1, 21 mm wide",
                                  "a feature narrower than the bore of 20 mm"}));
}

TEST(RuleErrors, NumbersOutsideTheReaderAreRefusedToo) {
    Frame frame = ChangedFrame{}.read().value();
    std::get<GapClockRule>(frame.rules[0].demand).target.clock = Degrees{360.0};
    std::get<GapClearOfRule>(frame.rules[1].demand).margin = Degrees{-1.0};
    std::get<GapsApartRule>(frame.rules[8].demand).apart = Degrees{181.0};
    frame.rules[3].severity = 0;
    EXPECT_THAT(frameErrors(frame, "f.json"),
                ElementsAre(Error{"f.json#/rules/0/clock_deg", "360", "a clock from 0 to below 360"},
                            Error{"f.json#/rules/1/margin_deg", "-1", "an angle from 0 to 180"},
                            Error{"f.json#/rules/3/severity", "0", "a whole number from 1 to 4"},
                            Error{"f.json#/rules/8/apart_deg", "181", "an angle from 0 to 180"}));
}

} // namespace gapwise
