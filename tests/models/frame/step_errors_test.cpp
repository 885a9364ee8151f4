#include "tests/support/print_error.h"
#include "tests/support/tightened_frame.h"

#include <gmock/gmock.h>

namespace gapwise {

using testing::ElementsAre;
using testing::IsEmpty;

namespace {

nlohmann::json after(const char* step) {
    return {{"step", step}, {"reason", "PHY"}, {"why", "why"}};
}

} // namespace

TEST(StepErrors, ACircleIsNamed) {
    EXPECT_THAT(ChangedFrame{}.add("/steps/0/after", after("S3")).errors(),
                ElementsAre(Error{"f.json#/steps/1/after/0/step", "S1 after S3 after S2 after S1",
                                  "steps that do not wait for each other"}));
}

TEST(StepErrors, AStepDoesNotWaitForItself) {
    EXPECT_THAT(ChangedFrame{}.add("/steps/3/after", after("S4")).errors(),
                ElementsAre(Error{"f.json#/steps/3/after/1/step", "S4 after S4",
                                  "steps that do not wait for each other"}));
}

TEST(StepErrors, EveryCircleIsNamedOnce) {
    const Errors errors =
        ChangedFrame{}.add("/steps/0/after", after("S2")).add("/steps/2/after", after("S4")).errors();
    ASSERT_EQ(errors.size(), 2U);
    EXPECT_EQ(errors[0].found, "S1 after S2 after S1");
    EXPECT_EQ(errors[1].found, "S3 after S4 after S3");
}

TEST(StepErrors, ALongWayRoundIsNoCircle) {
    EXPECT_THAT(ChangedFrame{}.add("/steps/3/after", after("S1")).add("/steps/3/after", after("S2")).errors(),
                IsEmpty());
}

TEST(StepErrors, TheLastLookComesBeforeTheHidingStep) {
    EXPECT_THAT(ChangedFrame{}.set("/rules/0/last_look", "S4").errors(),
                ElementsAre(Error{"f.json#/rules/0/last_look", "\"S4\", but S3 hides seat-SR before",
                                  "S3 or a step before it"}));
}

TEST(StepErrors, TheLastLookMayBeTheHidingStep) {
    EXPECT_THAT(ChangedFrame{}.set("/rules/0/last_look", "S3").errors(), IsEmpty());
}

TEST(StepErrors, UnorderedStepsCountAsListed) {
    // S4 no longer waits for S3, so only their order in the file tells which comes first.
    EXPECT_THAT(ChangedFrame{}
                    .set("/steps/3/after", nlohmann::json::array())
                    .set("/rules/0/last_look", "S4")
                    .errors(),
                ElementsAre(Error{"f.json#/rules/0/last_look", "\"S4\", but S3 hides seat-SR before",
                                  "S3 or a step before it"}));
    EXPECT_THAT(ChangedFrame{}
                    .set("/steps/3/after", nlohmann::json::array())
                    .add("/steps/3/hides", "seat-COLLAR")
                    .set("/rules/10/last_look", "S3")
                    .errors(),
                IsEmpty());
}

TEST(StepErrors, ARuleOfTwoPartsNeedsOneThatCanBeSeen) {
    EXPECT_THAT(ChangedFrame{}.add("/steps/2/hides", "seat-ROTOR").errors(), IsEmpty());
    EXPECT_THAT(ChangedFrame{}.set("/rules/8/last_look", "S4").errors(),
                ElementsAre(Error{"f.json#/rules/8/last_look", "\"S4\", but S3 hides seat-PR-2 before",
                                  "S3 or a step before it"}));
}

TEST(StepErrors, TheDragIsReadWhereTheNutIsRunDown) {
    EXPECT_THAT(tightenedFrame().set("/steps/3/asks", {"drag_torque"}).errors(), IsEmpty());
    EXPECT_THAT(tightenedFrame().set("/steps/1/asks", {"drag_torque"}).errors(),
                ElementsAre(Error{"f.json#/steps/1/asks/0", "\"drag_torque\"",
                                  "at a step that tightens a fastener with run_down"}));
}

TEST(StepErrors, TheNutLineIsReadAfterTheNutWasTightened) {
    EXPECT_THAT(tightenedFrame().set("/steps/3/asks", {"nut_line"}).errors(), IsEmpty());
    EXPECT_THAT(tightenedFrame().set("/steps/2/asks", {"nut_line"}).errors(),
                ElementsAre(Error{"f.json#/steps/2/asks/0", "\"nut_line\"",
                                  "at or after the step of a fastener with nut_line"}));
}

TEST(StepErrors, ABlockNeedsARest) {
    const nlohmann::json rests =
        nlohmann::json::parse(R"([{"up": "turbine", "face_z_mm": -1, "clearance_mm": 20}])");
    EXPECT_THAT(ChangedFrame{}.set("/steps/0/asks", {"block_height"}).set("/rests", rests).errors(),
                IsEmpty());
    EXPECT_THAT(ChangedFrame{}.set("/steps/0/asks", {"block_height"}).errors(),
                ElementsAre(Error{"f.json#/steps/0/asks/0", "\"block_height\"", "in a frame with rests"}));
}

TEST(StepErrors, AStepStandsForOthers) {
    EXPECT_THAT(ChangedFrame{}.set("/steps/3/stands_for", {"S2"}).errors(), IsEmpty());
    EXPECT_THAT(ChangedFrame{}.set("/steps/3/stands_for", {"S4"}).errors(),
                ElementsAre(Error{"f.json#/steps/3/stands_for/0", "\"S4\"", "other steps"}));
    EXPECT_THAT(ChangedFrame{}.set("/steps/3/stands_for", {"S9"}).errors(),
                ElementsAre(testing::Field(&Error::where, "f.json#/steps/3/stands_for/0")));
}

} // namespace gapwise
