#include "tests/support/print_error.h"
#include "tests/support/small_frame.h"

#include <gmock/gmock.h>

namespace gapwise {

using testing::Contains;
using testing::ElementsAre;
using testing::IsEmpty;

namespace {

const char* const kParts = "a part: HOUSING, ROTOR, SR, BUSH, PIN, PR-1, PR-2 or COLLAR";
const char* const kSteps = "a step: S1, S2, S3 or S4";
const char* const kSeats =
    "a seat: seat-HOUSING, seat-ROTOR, seat-SR, seat-BUSH, seat-PIN, seat-PR-1, seat-PR-2 or seat-COLLAR";

} // namespace

TEST(FrameErrors, NoneInARightFrame) {
    EXPECT_THAT(ChangedFrame{}.errors(), IsEmpty());
}

TEST(FrameErrors, IdsAreUnique) {
    EXPECT_THAT(ChangedFrame{}.set("/part_types/6/id", "pin").errors(),
                Contains(Error{"f.json#/part_types/6/id", "\"pin\", as at /part_types/5",
                               "an id that no other part type has"}));
    EXPECT_THAT(
        ChangedFrame{}.set("/parts/7/id", "SR").errors(),
        Contains(Error{"f.json#/parts/7/id", "\"SR\", as at /parts/2", "an id that no other part has"}));
    EXPECT_THAT(
        ChangedFrame{}.set("/seats/7/id", "seat-SR").errors(),
        Contains(Error{"f.json#/seats/7/id", "\"seat-SR\", as at /seats/2", "an id that no other seat has"}));
    EXPECT_THAT(ChangedFrame{}.set("/rules/3/id", "SR.gap").errors(),
                ElementsAre(Error{"f.json#/rules/3/id", "\"SR.gap\", as at /rules/0",
                                  "an id that no other rule has"}));
    EXPECT_THAT(
        ChangedFrame{}.set("/steps/3/id", "S1").errors(),
        Contains(Error{"f.json#/steps/3/id", "\"S1\", as at /steps/0", "an id that no other step has"}));
}

TEST(FrameErrors, FeatureIdsAreUniqueAcrossTypes) {
    EXPECT_THAT(ChangedFrame{}.set("/part_types/4/shape/features/0/id", "F2").errors(),
                ElementsAre(Error{"f.json#/part_types/4/shape/features/0/id",
                                  "\"F2\", as at /part_types/0/shape/features/1",
                                  "an id that no other feature has"}));
}

TEST(FrameErrors, APartIsNamedLikeNeitherSideNorFeature) {
    EXPECT_THAT(ChangedFrame{}.set("/part_types/4/shape/features/0/id", "PIN").errors(),
                Contains(Error{"f.json#/parts/4/id", "\"PIN\"",
                               "an id that is neither a side nor the id of a feature"}));
    EXPECT_THAT(ChangedFrame{}.set("/parts/4/id", "turbine").errors(),
                Contains(Error{"f.json#/parts/4/id", "\"turbine\"",
                               "an id that is neither a side nor the id of a feature"}));
}

TEST(FrameErrors, HousingAndRotorAreTwoParts) {
    EXPECT_THAT(ChangedFrame{}.set("/housing", "BODY").errors(),
                Contains(Error{"f.json#/housing", "\"BODY\"", kParts}));
    EXPECT_THAT(ChangedFrame{}.set("/rotor", "SHAFT").errors(),
                ElementsAre(Error{"f.json#/rotor", "\"SHAFT\"", kParts}));
    EXPECT_THAT(ChangedFrame{}.set("/rotor", "HOUSING").errors(),
                ElementsAre(Error{"f.json#/rotor", "\"HOUSING\"", "another part than the housing"}));
}

TEST(FrameErrors, ASisterIsAnotherFrame) {
    EXPECT_THAT(ChangedFrame{}.set("/sister", "small").errors(),
                ElementsAre(Error{"f.json#/sister", "\"small\"", "the id of another frame"}));
}

TEST(FrameErrors, EveryPartHasItsTypeAndItsSeat) {
    EXPECT_THAT(ChangedFrame{}.set("/parts/7/type", "colar").errors(),
                Contains(Error{"f.json#/parts/7/type", "\"colar\"",
                               "a part type: housing, shaft, snap-ring, seal-ring, bush, pin or collar"}));
    EXPECT_THAT(
        ChangedFrame{}.add("/parts", {{"id", "SPARE"}, {"name", "spare"}, {"type", "collar"}}).errors(),
        ElementsAre(Error{"f.json#/parts/8", "\"SPARE\" without a seat", "a seat seat-SPARE under /seats"}));
}

TEST(FrameErrors, EverySeatHasItsPart) {
    const nlohmann::json seat{
        {"id", "seat-SPARE"}, {"types", {"collar"}}, {"carriers", {{{"part", "HOUSING"}}}}, {"z_mm", 0}};
    EXPECT_THAT(ChangedFrame{}.add("/seats", seat).errors(),
                ElementsAre(Error{"f.json#/seats/8/id", "\"seat-SPARE\"", "seat- and the id of a part"}));
}

TEST(FrameErrors, ASeatTakesThePartItIsMeantFor) {
    EXPECT_THAT(ChangedFrame{}.set("/seats/7/types/0", "bush").errors(),
                Contains(Error{"f.json#/seats/7/types", "no \"collar\", the type of COLLAR",
                               "the type of the part that the seat is meant for, among others"}));
    EXPECT_THAT(ChangedFrame{}.add("/seats/7/types", "colar").errors(),
                ElementsAre(Error{"f.json#/seats/7/types/1", "\"colar\"",
                                  "a part type: housing, shaft, snap-ring, seal-ring, bush, pin or collar"}));
}

TEST(FrameErrors, CarriersResolve) {
    EXPECT_THAT(ChangedFrame{}.set("/seats/7/carriers/0/part", "SHAFT").errors(),
                ElementsAre(Error{"f.json#/seats/7/carriers/0/part", "\"SHAFT\"", kParts}));
    EXPECT_THAT(ChangedFrame{}.set("/seats/5/carriers/1/once_step", "S9").errors(),
                ElementsAre(Error{"f.json#/seats/5/carriers/1/once_step", "\"S9\"", kSteps}));
    EXPECT_THAT(ChangedFrame{}.set("/seats/5/carriers/1/once_seated/0", "SHAFT").errors(),
                ElementsAre(Error{"f.json#/seats/5/carriers/1/once_seated/0", "\"SHAFT\"", kParts}));
}

TEST(FrameErrors, OnlyTheHousingHasNoCarrier) {
    EXPECT_THAT(ChangedFrame{}.set("/seats/7/carriers", nlohmann::json::array()).errors(),
                ElementsAre(Error{"f.json#/seats/7/carriers", "0 carriers", "at least 1 carrier"}));
    EXPECT_THAT(
        ChangedFrame{}.add("/seats/0/carriers", {{"part", "ROTOR"}}).errors(),
        Contains(Error{"f.json#/seats/0/carriers", "1 carrier", "none: the housing carries everything"}));
}

TEST(FrameErrors, CarriersFollowEachOtherInTime) {
    EXPECT_THAT(ChangedFrame{}.add("/seats/7/carriers", {{"part", "HOUSING"}}).errors(),
                ElementsAre(Error{"f.json#/seats/7/carriers/1", "no once_step and no once_seated",
                                  "what makes this carrier follow the one before"}));
    EXPECT_THAT(ChangedFrame{}.set("/seats/7/carriers/0/once_step", "S4").errors(),
                ElementsAre(Error{"f.json#/seats/7/carriers/0", "a condition",
                                  "a first carrier that carries from the start"}));
}

TEST(FrameErrors, CarriersDoNotCircle) {
    EXPECT_THAT(ChangedFrame{}.set("/seats/1/carriers/0/part", "COLLAR").errors(),
                ElementsAre(Error{"f.json#/seats/1/carriers", "ROTOR on COLLAR on ROTOR",
                                  "carriers that lead to the housing"}));
    EXPECT_THAT(ChangedFrame{}.set("/seats/7/carriers/0/part", "COLLAR").errors(),
                ElementsAre(Error{"f.json#/seats/7/carriers", "COLLAR on COLLAR",
                                  "carriers that lead to the housing"}));
}

TEST(FrameErrors, RulesNameWhatTheFrameHas) {
    EXPECT_THAT(ChangedFrame{}.set("/rules/0/part", "SR-X").errors(),
                ElementsAre(Error{"f.json#/rules/0/part", "\"SR-X\"", kParts}));
    EXPECT_THAT(ChangedFrame{}.set("/rules/1/feature", "F9").errors(),
                ElementsAre(Error{"f.json#/rules/1/feature", "\"F9\"", "a feature: F1, F2 or N1"}));
    EXPECT_THAT(ChangedFrame{}.set("/rules/2/toward", "left").errors(),
                ElementsAre(Error{"f.json#/rules/2/toward", "\"left\"", kParts}));
    EXPECT_THAT(ChangedFrame{}.set("/rules/3/seat", "SR").errors(),
                ElementsAre(Error{"f.json#/rules/3/seat", "\"SR\"", kSeats}));
    EXPECT_THAT(ChangedFrame{}.set("/rules/4/with", "F9").errors(),
                ElementsAre(Error{"f.json#/rules/4/with", "\"F9\"", "the id of a part or of a feature"}));
    EXPECT_THAT(ChangedFrame{}.set("/rules/4/feature", "N9").errors(),
                ElementsAre(Error{"f.json#/rules/4/feature", "\"N9\"", "a feature: F1, F2 or N1"}));
    EXPECT_THAT(ChangedFrame{}.set("/rules/8/parts/1", "PR-3").errors(),
                ElementsAre(Error{"f.json#/rules/8/parts/1", "\"PR-3\"", kParts}));
    EXPECT_THAT(ChangedFrame{}.set("/rules/9/seat", "seat-PR-3").errors(),
                ElementsAre(Error{"f.json#/rules/9/seat", "\"seat-PR-3\"", kSeats}));
    EXPECT_THAT(ChangedFrame{}.set("/rules/11/parts/0", "SHAFT").errors(),
                ElementsAre(Error{"f.json#/rules/11/parts/0", "\"SHAFT\"", kParts}));
    EXPECT_THAT(ChangedFrame{}.set("/rules/0/last_look", "S9").errors(),
                ElementsAre(Error{"f.json#/rules/0/last_look", "\"S9\"", kSteps}));
}

TEST(FrameErrors, ATwinIsAnotherRuleOfTheSameKind) {
    EXPECT_THAT(ChangedFrame{}.set("/rules/10/twin", "COLLAR.mark").errors(),
                ElementsAre(Error{"f.json#/rules/10/twin", "\"COLLAR.mark\"", "the rule at the other end"}));
    EXPECT_THAT(ChangedFrame{}.set("/rules/10/twin", "SR.gap").errors(),
                ElementsAre(Error{"f.json#/rules/10/twin", "\"SR.gap\", a gap_clock rule", "a mark rule"}));
    const Errors none = ChangedFrame{}.set("/rules/10/twin", "no.gap").errors();
    ASSERT_EQ(none.size(), 1U);
    EXPECT_EQ(none.front().where, "f.json#/rules/10/twin");
    EXPECT_TRUE(none.front().allowed.starts_with("a rule: SR.gap, SR.clear")) << none.front().allowed;
}

TEST(FrameErrors, StepsNameWhatTheFrameHas) {
    EXPECT_THAT(ChangedFrame{}.set("/steps/3/after/0/step", "S0").errors(),
                ElementsAre(Error{"f.json#/steps/3/after/0/step", "\"S0\"", kSteps}));
    EXPECT_THAT(ChangedFrame{}.set("/steps/3/places/0", "COLLAR-A").errors(),
                ElementsAre(Error{"f.json#/steps/3/places/0", "\"COLLAR-A\"", kParts}));
    EXPECT_THAT(ChangedFrame{}.add("/steps/3/hides", "SR").errors(),
                ElementsAre(Error{"f.json#/steps/3/hides/0", "\"SR\"", kSeats}));
}

TEST(FrameErrors, AllStandInOneAnswer) {
    const Errors errors = ChangedFrame{}
                              .set("/sister", "small")
                              .set("/rules/0/part", "SR-X")
                              .set("/steps/3/places/0", "COLLAR-A")
                              .set("/part_types/2/gap_mm", 25)
                              .errors();
    EXPECT_EQ(errors.size(), 4U);
}

} // namespace gapwise
