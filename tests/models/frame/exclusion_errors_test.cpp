#include "tests/support/print_error.h"
#include "tests/support/small_frame.h"

#include <gmock/gmock.h>

namespace gapwise {

using testing::ElementsAre;
using testing::IsEmpty;

// SR.gap: 90 from the turbine side is 270 from the compressor side. F1 (4 wide in a bore of 20) covers
// asin(4 / 20) = 11.5° to either side, the gap (3 wide) asin(3 / 20) = 8.6°, the margin is 10°: 30.2° from
// 180.
TEST(ExclusionErrors, BothRulesAreNamed) {
    EXPECT_THAT(
        ChangedFrame{}
            .set("/part_types/0/shape/features/0/offset_deg", 270)
            .set("/rules/0/tolerance_deg", 20)
            .errors(),
        ElementsAre(Error{"f.json#/rules/1",
                          "SR.clear (at /rules/1) allows 300.2° to 239.8°, SR.gap (at /rules/0) allows "
                          "250° to 290°",
                          "a clock of SR that both rules allow"}));
}

TEST(ExclusionErrors, TheBorderStillHolds) {
    // Windows 240 to 300 and 300 to 320 meet in one clock.
    nlohmann::json other = nlohmann::json::parse(smallFrameText())["rules"][0];
    other["id"] = "SR.other";
    other["clock_deg"] = 50;
    other["tolerance_deg"] = 10;
    EXPECT_THAT(ChangedFrame{}.add("/rules", other).errors(), IsEmpty());
    other["clock_deg"] = 49;
    EXPECT_THAT(ChangedFrame{}.add("/rules", other).errors(),
                ElementsAre(Error{"f.json#/rules/12",
                                  "SR.other (at /rules/12) allows 301° to 321°, SR.gap (at /rules/0) allows "
                                  "240° to 300°",
                                  "a clock of SR that both rules allow"}));
}

TEST(ExclusionErrors, ThreeRulesCanExcludeEachOtherWithoutAnyTwo) {
    const nlohmann::json rule = nlohmann::json::parse(smallFrameText())["rules"][10];
    ChangedFrame frame;
    frame.set("/rules/10/tolerance_deg", 65);
    for (const int clock : {120, 240}) {
        nlohmann::json other = rule;
        other["id"] = "COLLAR." + std::to_string(clock);
        other["clock_deg"] = clock;
        other["seen_from"] = "compressor";
        other["tolerance_deg"] = 65;
        frame.add("/rules", other);
    }
    EXPECT_THAT(frame.errors(),
                ElementsAre(Error{"f.json#/rules/13",
                                  "COLLAR.mark (at /rules/10) allows 295° to 65°, COLLAR.120 (at /rules/12) "
                                  "allows 55° to 185° and COLLAR.240 (at /rules/13) allows 175° to 305°",
                                  "a clock of COLLAR that all these rules allow"}));
}

TEST(ExclusionErrors, ANotchAndAMarkSpeakOfTheSameIndex) {
    nlohmann::json mark = nlohmann::json::parse(smallFrameText())["rules"][10];
    mark["id"] = "BUSH.mark";
    mark["part"] = "BUSH";
    mark["last_look"] = "S1";
    EXPECT_THAT(ChangedFrame{}.add("/rules", mark).errors(),
                ElementsAre(Error{"f.json#/rules/12",
                                  "BUSH.mark (at /rules/12) allows 350° to 10°, BUSH.notch (at /rules/4) "
                                  "allows 179.5° to 180.5°",
                                  "a clock of BUSH that both rules allow"}));
    mark["clock_deg"] = 180;
    EXPECT_THAT(ChangedFrame{}.add("/rules", mark).errors(), IsEmpty());
}

// The notch lies 30° clockwise of the index, looking at the reference face.
TEST(ExclusionErrors, AFeatureLiesAsTheFaceLooks) {
    nlohmann::json mark = nlohmann::json::parse(smallFrameText())["rules"][10];
    mark["id"] = "BUSH.mark";
    mark["part"] = "BUSH";
    mark["last_look"] = "S1";
    mark["clock_deg"] = 150;
    mark["seen_from"] = "compressor";
    ChangedFrame frame;
    frame.set("/rules/4/feature", "N1")
        .set("/part_types/4/shape/features/0/offset_deg", 30)
        .add("/rules", mark);
    EXPECT_THAT(frame.errors(), IsEmpty());
    frame.set("/rules/5/toward", "turbine");
    const Errors errors = frame.errors();
    ASSERT_EQ(errors.size(), 1U);
    EXPECT_EQ(errors.front().found, "BUSH.mark (at /rules/12) allows 140° to 160°, BUSH.notch (at /rules/4) "
                                    "allows 209.5° to 210.5°");
}

TEST(ExclusionErrors, TwoGapsHaveRoomToBeApart) {
    EXPECT_THAT(
        ChangedFrame{}.set("/rules/7/clock_deg", 0).errors(),
        ElementsAre(Error{"f.json#/rules/8",
                          "180° ± 20° between PR-1, which may stand at 330° to 30°, and PR-2, which may "
                          "stand at 330° to 30°",
                          "two clocks that the rules of both parts allow"}));
    EXPECT_THAT(ChangedFrame{}.set("/rules/7/clock_deg", 0).set("/rules/8/apart_deg", 80).errors(),
                IsEmpty());
}

} // namespace gapwise
