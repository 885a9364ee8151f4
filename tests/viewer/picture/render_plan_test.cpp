#include "viewer/picture/render_command.h"

#include <gtest/gtest.h>

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
    EXPECT_EQ(plan->look, usualLook(0.0, false));
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

class BadOption : public testing::TestWithParam<std::pair<const char*, const char*>> {};

TEST_P(BadOption, IsAnErrorThatNamesIt) {
    RenderRequest asked = request();
    const auto [option, text] = GetParam();
    (std::string{option} == "--size"   ? asked.size
     : std::string{option} == "--from" ? asked.from
                                       : asked.explode) = text;
    const auto plan = planOf(asked);
    ASSERT_FALSE(plan);
    EXPECT_EQ(plan.errors().front().where, option);
}

INSTANTIATE_TEST_SUITE_P(Each, BadOption,
                         testing::Values(std::pair{"--size", "1600"}, std::pair{"--size", "1600x"},
                                         std::pair{"--size", "1600x900x2"}, std::pair{"--size", "0x900"},
                                         std::pair{"--size", "-1600x900"}, std::pair{"--size", "319x900"},
                                         std::pair{"--size", "99999999999x900"}, std::pair{"--from", ""},
                                         std::pair{"--from", "10"}, std::pair{"--from", "10,"},
                                         std::pair{"--from", "181,0"}, std::pair{"--from", "0,91"},
                                         std::pair{"--from", "nan,0"}, std::pair{"--explode", "nan"},
                                         std::pair{"--explode", "-0.1"}, std::pair{"--explode", "all"},
                                         std::pair{"--explode", ""}));

} // namespace gapwise
