#include "tests/support/print_error.h"
#include "tests/support/tightened_frame.h"

#include <gmock/gmock.h>

namespace gapwise {

using nlohmann::json;
using testing::ElementsAre;
using testing::IsEmpty;

TEST(TorqueErrors, ARightPlanHasNone) {
    EXPECT_THAT(tightenedFrame().errors(), IsEmpty());
}

TEST(TorqueErrors, APatternNamesEveryScrewOnce) {
    for (const json& pattern : {json{1, 3, 2, 3}, json{1, 2, 3}, json{1, 2, 3, 5}, json::array()}) {
        const Errors errors = tightenedFrame().set("/fasteners/0/pattern", pattern).errors();
        ASSERT_EQ(errors.size(), 1U) << pattern;
        EXPECT_EQ(errors[0].where, "f.json#/fasteners/0/pattern");
        EXPECT_EQ(errors[0].allowed, "each screw from 1 to 4 once, as the group left has them");
    }
    EXPECT_THAT(tightenedFrame().set("/fasteners/0/pattern", {4, 3, 2, 1}).errors(), IsEmpty());
}

TEST(TorqueErrors, APatternServesEveryGroup) {
    EXPECT_THAT(tightenedFrame().set("/fasteners/0/groups/1/count", 6).errors(),
                ElementsAre(Error{"f.json#/fasteners/0/pattern", "[1, 3, 2, 4]",
                                  "each screw from 1 to 6 once, as the group right has them"}));
}

TEST(TorqueErrors, StagesRiseToTheWholeTorque) {
    for (const json& stages : {json{100, 60}, json{60, 60, 100}, json{40, 90}})
        EXPECT_THAT(
            tightenedFrame().set("/fasteners/0/stages_percent", stages).errors(),
            ElementsAre(testing::AllOf(testing::Field(&Error::where, "f.json#/fasteners/0/stages_percent"),
                                       testing::Field(&Error::allowed, "stages that rise to 100"))))
            << stages;
}

TEST(TorqueErrors, AFastenerHasStagesOrIsRunDown) {
    EXPECT_THAT(
        tightenedFrame().erase("/fasteners/0", "stages_percent").errors(),
        ElementsAre(Error{"f.json#/fasteners/0", "neither stages_percent nor run_down", "one of both"}));
    EXPECT_THAT(tightenedFrame().set("/fasteners/1/stages_percent", {50, 100}).errors(),
                ElementsAre(Error{"f.json#/fasteners/1", "stages_percent and run_down", "one of both"}));
}

// Common practice, no source: a left-hand thread tightens counter-clockwise to who faces it.
TEST(TorqueErrors, TheHandOfTheThreadIsTheSenseOfTightening) {
    EXPECT_THAT(tightenedFrame().set("/fasteners/1/tightens", "clockwise").errors(),
                ElementsAre(testing::Field(&Error::found, "clockwise with the thread M8x1-LH")));
    EXPECT_THAT(tightenedFrame().set("/fasteners/0/tightens", "counter_clockwise").errors(),
                ElementsAre(testing::Field(&Error::found, "counter_clockwise with the thread M5")));
}

TEST(TorqueErrors, TheTorquesOfARunDownAreInOrder) {
    EXPECT_THAT(tightenedFrame().set("/fasteners/1/run_down/drag_most_Nm", 5).errors(),
                ElementsAre(Error{"f.json#/fasteners/1/run_down/snug_Nm", "5", "more than drag_most_Nm, 5"}));
    EXPECT_THAT(tightenedFrame().set("/fasteners/1/torque_Nm", 5).errors(),
                ElementsAre(Error{"f.json#/fasteners/1/run_down/snug_Nm", "5", "less than torque_Nm, 5"}));
    EXPECT_THAT(tightenedFrame().set("/fasteners/1/run_down/seat_Nm", 4).errors(),
                ElementsAre(Error{"f.json#/fasteners/1/run_down/seat_Nm", "4", "more than snug_Nm, 5"}));
}

TEST(TorqueErrors, TheWindowOfTheAngleIsOrdered) {
    EXPECT_THAT(tightenedFrame().set("/fasteners/1/run_down/angle_deg", {28, 12}).errors(),
                ElementsAre(Error{"f.json#/fasteners/1/run_down/angle_deg", "[28, 12]",
                                  "[from, to] with from < to"}));
}

TEST(TorqueErrors, TheNutLineHasOrderedLimitsAndItsStack) {
    EXPECT_THAT(tightenedFrame().set("/fasteners/1/nut_line/small_deg", 8).errors(),
                ElementsAre(Error{"f.json#/fasteners/1/nut_line/small_deg", "8", "more than agrees_deg, 8"}));
    EXPECT_THAT(tightenedFrame().set("/fasteners/1/nut_line/stack", {"NOBODY"}).errors(),
                ElementsAre(testing::Field(&Error::where, "f.json#/fasteners/1/nut_line/stack/0")));
}

TEST(TorqueErrors, TheDrawnPiecesAreAsManyAsAreTightened) {
    EXPECT_THAT(
        tightenedFrame().set("/parts/2/fastener", "A").errors(),
        ElementsAre(Error{"f.json#/fasteners/0/groups", "8 in all", "as many as there are pieces of A: 1"}));
}

TEST(TorqueErrors, ImpossibleNumbersAreRefusedAtTheirPlace) {
    const auto refused = [](const char* pointer, const json& value) {
        const Errors errors = tightenedFrame().set(pointer, value).errors();
        const std::string where = std::string{"f.json#"} + pointer;
        EXPECT_THAT(errors, testing::Contains(testing::Field(&Error::where, where))) << value;
    };
    for (const json& value : {json(0), json(-5), json(10001), json("nan"), json(nullptr)})
        refused("/fasteners/0/torque_Nm", value);
    refused("/fasteners/0/stages_percent/0", 0);
    refused("/fasteners/0/stages_percent/1", 101);
    refused("/fasteners/0/friction_thread", 0);
    refused("/fasteners/0/friction_head", -0.1);
    refused("/fasteners/0/length_mm", 0);
    refused("/fasteners/0/head_diameter_mm", "7 mm");
    refused("/fasteners/0/groups/0/count", 0);
    refused("/fasteners/0/groups/0/count", 1.5);
    refused("/fasteners/0/locking", "glue");
    refused("/fasteners/1/run_down/stiffness_kN_mm", 0);
    refused("/fasteners/1/run_down/torque_factor", 1.5);
    refused("/fasteners/1/run_down/angle_deg/0", -1);
    refused("/fasteners/1/nut_line/agrees_deg", 361);
    EXPECT_THAT(tightenedFrame().set("/fasteners/0/pattern/0", 1.5).errors(), testing::Not(IsEmpty()));
}

TEST(TorqueErrors, WithoutATorqueThereIsNoPlan) {
    const Errors errors = tightenedFrame().erase("/fasteners/0", "torque_Nm").errors();
    EXPECT_THAT(errors, testing::Contains(testing::Field(&Error::where, "f.json#/fasteners/0/thread")));
}

} // namespace gapwise
