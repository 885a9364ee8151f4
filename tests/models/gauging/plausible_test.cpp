#include "models/gauging/plausible.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <ostream>

namespace gapwise::test {

namespace {

struct Typed {
    double entry, expected;
    Slip slip;
    double meant;

    friend void PrintTo(const Typed& row, std::ostream* out) { *out << row.entry << " for " << row.expected; }
};

} // namespace

class Slips : public ::testing::TestWithParam<Typed> {};

TEST_P(Slips, AreNamedAndCorrected) {
    const Typed& row = GetParam();
    const auto doubt = doubtOf(row.entry, expectedAround(row.expected));
    ASSERT_TRUE(doubt.has_value());
    EXPECT_EQ(doubt->slip, row.slip);
    ASSERT_TRUE(doubt->suggestion.has_value());
    EXPECT_NEAR(*doubt->suggestion, row.meant, 1e-6);
}

INSTANTIATE_TEST_SUITE_P(
    Invented, Slips,
    ::testing::Values(Typed{0.68, 0.070, Slip::TenTimes, 0.068}, Typed{6.8, 0.070, Slip::HundredTimes, 0.068},
                      Typed{68, 0.070, Slip::ThousandTimes, 0.068}, Typed{0.0068, 0.070, Slip::Tenth, 0.068},
                      Typed{0.00068, 0.070, Slip::Hundredth, 0.068},
                      Typed{0.000068, 0.070, Slip::Thousandth, 0.068},
                      Typed{119.93, 11.9925, Slip::TenTimes, 11.993},
                      Typed{0.47217, 11.9925, Slip::InchesForMm, 11.993118},
                      Typed{304.6, 11.9925, Slip::MmForInches, 11.992126},
                      Typed{-0.068, 0.070, Slip::WrongSign, 0.068}, Typed{0.068, 70, Slip::Thousandth, 68}));

// A thousandth of an inch typed as millimetres (ENG-15).
TEST(Plausible, InchesAreToldFromMillimetres) {
    const auto doubt = doubtOf(0.001, expectedAround(0.0254));
    ASSERT_TRUE(doubt.has_value());
    EXPECT_EQ(doubt->slip, Slip::InchesForMm);
    EXPECT_NEAR(doubt->suggestion.value(), 0.0254, 1e-9);
    EXPECT_EQ(doubt->words, "0.001 is what is expected in inches: did you mean 0.0254?");
}

TEST(Plausible, AsksInWords) {
    const ExpectedEntry clearance{.value = 0.070, .plausible = {0.02, 0.2}};
    EXPECT_EQ(doubtOf(0.68, clearance)->words, "0.68 is ten times what is expected: did you mean 0.068?");
    EXPECT_EQ(doubtOf(68, clearance)->words, "68 is a thousand times what is expected: did you mean 0.068?");
    EXPECT_EQ(doubtOf(-0.068, clearance)->words,
              "-0.068 is of the other sign than is expected: did you mean 0.068?");
    EXPECT_EQ(doubtOf(0.0, clearance)->words, "0 is far from what is expected, 0.02 to 0.2: is it right?");
}

TEST(Plausible, AsksNothingInsideTheBand) {
    const ExpectedEntry clearance{.value = 0.070, .plausible = {0.02, 0.2}};
    for (const double entry : {0.02, 0.07, 0.155, 0.2})
        EXPECT_FALSE(doubtOf(entry, clearance).has_value()) << entry;
}

TEST(Plausible, WhatNoSlipExplainsIsFarOff) {
    const ExpectedEntry length{.value = 35.0, .plausible = {34.8, 35.2}};
    const auto doubt = doubtOf(36.0, length);
    ASSERT_TRUE(doubt.has_value());
    EXPECT_EQ(doubt->slip, Slip::FarOff);
    EXPECT_FALSE(doubt->suggestion.has_value());
}

// A band that many corrections reach: the one nearest to what is expected is asked about.
TEST(Plausible, TheNearestCorrectionIsAskedAbout) {
    const ExpectedEntry wide{.value = 1.0, .plausible = {0.1, 10.0}};
    EXPECT_EQ(doubtOf(100.0, wide)->slip, Slip::HundredTimes);
    EXPECT_EQ(doubtOf(25.4, wide)->slip, Slip::MmForInches);
}

// A sag may be expected below 0 or round 0.
TEST(Plausible, WorksRoundNoughtAndBelow) {
    EXPECT_EQ(doubtOf(0.07, {.value = -0.07, .plausible = {-0.1, -0.05}})->slip, Slip::WrongSign);
    EXPECT_FALSE(doubtOf(0.0, {.value = 0.0, .plausible = {-0.1, 0.1}}).has_value());
    EXPECT_EQ(doubtOf(0.5, {.value = 0.0, .plausible = {-0.1, 0.1}})->suggestion.has_value(), true);
}

RC_GTEST_PROP(Plausible, ASlipByTenNeverPasses, ()) {
    const double expected = *rc::gen::inRange(1, 100'000) / 1000.0;
    const double off = *rc::gen::inRange(70, 140) / 100.0;
    const double times = *rc::gen::elementOf(std::vector<double>{10.0, 0.1, 100.0, 0.01, 1000.0});
    const auto doubt = doubtOf(expected * off * times, expectedAround(expected));
    RC_ASSERT(doubt.has_value());
    RC_ASSERT(doubt->slip != Slip::FarOff);
    RC_ASSERT(holds(expectedAround(expected).plausible, doubt->suggestion.value()));
}

} // namespace gapwise::test
