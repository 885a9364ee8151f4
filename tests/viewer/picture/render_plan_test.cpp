#include "viewer/picture/render_command.h"

#include <gtest/gtest.h>

#include <map>

namespace gapwise {

namespace {

RenderRequest request() {
    return {.source = "alder-72", .out = "x.png"};
}

} // namespace

TEST(RenderPlan, WithoutOptionsIsTheThreeQuarterLook) {
    const auto plan = planOf(request());
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->size, (PictureSize{1600, 900}));
    EXPECT_EQ(plan->explode, 0.0);
    EXPECT_EQ(plan->look, usualLook(0.0, {}));
}

TEST(RenderPlan, ReadsSidesAnglesAndSizes) {
    RenderRequest asked = request();
    asked.from = "turbine";
    asked.size = "8000x320";
    asked.explode = "0.25";
    const auto plan = planOf(asked);
    ASSERT_TRUE(plan);
    EXPECT_EQ(plan->look, lookFrom(Side::Turbine));
    EXPECT_EQ(plan->size, (PictureSize{8000, 320}));
    EXPECT_EQ(plan->explode, 0.25);
    asked.from = "-35.5,20";
    EXPECT_EQ(planOf(asked)->look, (Look{Degrees{-35.5}, Degrees{20.0}}));
}

TEST(RenderPlan, RefusesAPlaceForASectionThatIsNotMade) {
    RenderRequest asked = request();
    asked.sectionAt = "12:00";
    const auto plan = planOf(asked);
    ASSERT_FALSE(plan);
    EXPECT_EQ(plan.errors().front().where, "--section-at");
    EXPECT_EQ(plan.errors().front().allowed, "only with --section");
}

TEST(RenderPlan, RefusesEverythingElseAtOnce) {
    RenderRequest asked = request();
    asked.from = "left";
    asked.size = "8001x900";
    asked.explode = "1.01";
    const auto plan = planOf(asked);
    ASSERT_FALSE(plan);
    ASSERT_EQ(plan.errors().size(), 3U);
    EXPECT_EQ(plan.errors()[0].where, "--explode");
    EXPECT_EQ(plan.errors()[1].found, "\"left\"");
    EXPECT_EQ(plan.errors()[2].allowed, "WIDTHxHEIGHT in pixels, each 320 to 8000");
}

TEST(RenderPlan, SectionIsTheHalfAtThreeFromTheCompressorSide) {
    RenderRequest asked = request();
    EXPECT_FALSE(planOf(asked)->section);
    asked.section = "half";
    EXPECT_EQ(planOf(asked)->section, Section{});
    EXPECT_EQ(planOf(asked)->look.azimuth, Degrees{165.0});
    EXPECT_NEAR(planOf(asked)->look.elevation.value, 9.0, 1e-9);
}

// 3:00 from one side is 9:00 from the other; 12:00 and 6:00 read the same from both: clock.h.
TEST(RenderPlan, ReadsWhereTheSectionIsSeenFromASide) {
    RenderRequest asked = request();
    asked.section = "quarter";
    const auto opened = [&] { return planOf(asked)->section->removed.from(Side::Compressor).value; };
    EXPECT_EQ(planOf(asked)->section->kind, Section::Kind::Quarter);
    EXPECT_EQ(opened(), 45.0) << "from the inlet to 3:00";
    for (const auto& [text, degrees] :
         {std::pair{"3:00 compressor", 90.0}, std::pair{"3:00 turbine", 270.0}, std::pair{"12:00", 0.0},
          std::pair{"180deg", 180.0}, std::pair{"45deg turbine", 315.0}}) {
        asked.sectionAt = text;
        EXPECT_EQ(opened(), degrees) << text;
    }
}

// Eye and cut: the eye must lie beyond the plane, or it would look at the back of what stays.
TEST(RenderPlan, LooksIntoTheSectionWhereNothingElseIsAsked) {
    RenderRequest asked = request();
    for (const char* kind : {"half", "quarter"})
        for (int degrees = 0; degrees < 360; degrees += 15)
            for (const char* explode : {"0", "1"}) {
                asked.section = kind;
                asked.explode = explode;
                asked.sectionAt = std::to_string(degrees) + "deg compressor";
                const auto plan = planOf(asked);
                ASSERT_TRUE(plan);
                EXPECT_GT(dot(towardEye(plan->look), directionOf(plan->section->removed)), 0.1)
                    << kind << " at " << degrees;
            }
}

class BadOption : public testing::TestWithParam<std::pair<const char*, const char*>> {};

TEST_P(BadOption, IsAnErrorThatNamesIt) {
    RenderRequest asked = request();
    const auto [option, text] = GetParam();
    asked.section = "half";
    const std::map<std::string, std::optional<std::string>*> options{{"--size", &asked.size},
                                                                     {"--from", &asked.from},
                                                                     {"--explode", &asked.explode},
                                                                     {"--section", &asked.section},
                                                                     {"--section-at", &asked.sectionAt}};
    *options.at(option) = text;
    const auto plan = planOf(asked);
    ASSERT_FALSE(plan);
    EXPECT_EQ(plan.errors().front().where, option);
}

INSTANTIATE_TEST_SUITE_P(
    Each, BadOption,
    testing::Values(std::pair{"--size", "1600"}, std::pair{"--size", "1600x"},
                    std::pair{"--size", "1600x900x2"}, std::pair{"--size", "0x900"},
                    std::pair{"--size", "-1600x900"}, std::pair{"--size", "319x900"},
                    std::pair{"--size", "99999999999x900"}, std::pair{"--from", ""},
                    std::pair{"--from", "10"}, std::pair{"--from", "10,"}, std::pair{"--from", "181,0"},
                    std::pair{"--from", "0,91"}, std::pair{"--from", "nan,0"}, std::pair{"--explode", "nan"},
                    std::pair{"--explode", "-0.1"}, std::pair{"--explode", "all"}, std::pair{"--explode", ""},
                    std::pair{"--section", "third"}, std::pair{"--section", "Half"},
                    std::pair{"--section-at", "3:00"}, std::pair{"--section-at", "3:00 left"},
                    std::pair{"--section-at", ""}, std::pair{"--section-at", "90deg"},
                    std::pair{"--section-at", "25:00 turbine"}, std::pair{"--section-at", "3:00  turbine"},
                    std::pair{"--section-at", "compressor"}));

} // namespace gapwise
