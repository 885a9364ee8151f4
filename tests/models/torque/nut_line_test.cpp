#include "models/torque/nut_line.h"

#include "tests/support/print_error.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>
#include <ostream>

namespace gapwise::test {

namespace {

constexpr ShiftLimits kAlder{Degrees{8.0}, Degrees{25.0}};
constexpr ShiftLimits kBirch{Degrees{6.0}, Degrees{20.0}};

struct Line {
    ShiftLimits limits;
    double pitch, stack, expected, read, corrected;
    NutLineOutcome outcome;

    friend void PrintTo(const Line& line, std::ostream* out) { *out << line.stack << " mm, " << line.read; }
};

} // namespace

class NutLines : public ::testing::TestWithParam<Line> {};

TEST_P(NutLines, AreJudgedLessTheShiftThatTheStackExplains) {
    const Line& line = GetParam();
    const NutLineShift shift =
        judgeNutLine(Degrees{line.read}, expectedNutShift(line.stack, line.pitch), line.limits);
    EXPECT_NEAR(shift.expected.value, line.expected, 1e-9);
    EXPECT_EQ(shift.read.value, line.read);
    EXPECT_NEAR(shift.corrected.value, line.corrected, 1e-9);
    EXPECT_EQ(shift.outcome, line.outcome);
}

// Invented limits, worked by hand from −Δ/P·360°.
INSTANTIATE_TEST_SUITE_P(HandWorked, NutLines,
                         ::testing::Values(Line{kAlder, 1.0, 0.000, 0.0, 5.0, 5.0, NutLineOutcome::Agrees},
                                           Line{kAlder, 1.0, 0.020, -7.2, -6.0, 1.2, NutLineOutcome::Agrees},
                                           Line{kAlder, 1.0, -0.020, 7.2, -6.0, -13.2, NutLineOutcome::Small},
                                           Line{kAlder, 1.0, 0.010, -3.6, 30.0, 33.6, NutLineOutcome::Large},
                                           Line{kBirch, 1.5, 0.025, -6.0, -4.5, 1.5, NutLineOutcome::Agrees},
                                           Line{kBirch, 1.5, 0.010, -2.4, 8.0, 10.4, NutLineOutcome::Small},
                                           Line{kBirch, 1.5, -0.025, 6.0, -20.0, -26.0,
                                                NutLineOutcome::Large}));

TEST(NutLine, TheBoundaryBelongsToTheBetterOutcome) {
    const auto outcome = [](double read) {
        return judgeNutLine(Degrees{read}, Degrees{0.0}, kAlder).outcome;
    };
    EXPECT_EQ(outcome(8.0), NutLineOutcome::Agrees);
    EXPECT_EQ(outcome(-8.0), NutLineOutcome::Agrees);
    EXPECT_EQ(outcome(8.01), NutLineOutcome::Small);
    EXPECT_EQ(outcome(25.0), NutLineOutcome::Small);
    EXPECT_EQ(outcome(-25.01), NutLineOutcome::Large);
}

TEST(NutLine, NoChangeOfTheStackExpectsNoShift) {
    EXPECT_FALSE(std::signbit(expectedNutShift(0.0, 1.0).value));
}

RC_GTEST_PROP(NutLine, WhatTheStackExplainsAlwaysAgrees, ()) {
    const double stack = *rc::gen::inRange(-200, 200) / 1000.0;
    const Degrees expected = expectedNutShift(stack, 1.5);
    RC_ASSERT(judgeNutLine(expected, expected, kBirch).outcome == NutLineOutcome::Agrees);
}

RC_GTEST_PROP(NutLine, EitherWayIsJudgedAlike, ()) {
    const double off = *rc::gen::inRange(0, 1800) / 10.0;
    RC_ASSERT(judgeNutLine(Degrees{off}, {}, kAlder).outcome ==
              judgeNutLine(Degrees{-off}, {}, kAlder).outcome);
}

TEST(NutLine, SaysWhatIsDoneThen) {
    EXPECT_EQ(adviceFor(NutLineOutcome::Agrees), "go on");
    EXPECT_THAT(std::string{adviceFor(NutLineOutcome::Small)}, ::testing::HasSubstr("specified torque"));
    EXPECT_THAT(std::string{adviceFor(NutLineOutcome::Large)}, ::testing::HasSubstr("build it again"));
    EXPECT_EQ(nameOf(NutLineOutcome::Agrees), "agrees");
    EXPECT_EQ(nameOf(NutLineOutcome::Small), "small");
    EXPECT_EQ(nameOf(NutLineOutcome::Large), "large");
}

TEST(NutLine, RefusesLimitsThatAreNotInOrder) {
    EXPECT_TRUE(limitErrors(kAlder).empty());
    EXPECT_TRUE(limitErrors({Degrees{8.0}, Degrees{8.0}}).empty());
    EXPECT_EQ(limitErrors({Degrees{25.0}, Degrees{8.0}}).front(),
              (Error{"small", "8°", "no less than the limit that agrees, 25°"}));
    EXPECT_EQ(limitErrors({Degrees{-1.0}, Degrees{8.0}}).front().where, "agrees");
    EXPECT_EQ(limitErrors({Degrees{8.0}, Degrees{181.0}}).front().where, "small");
    EXPECT_EQ(limitErrors({Degrees{std::numeric_limits<double>::quiet_NaN()}, Degrees{8.0}}).front().where,
              "agrees");
}

} // namespace gapwise::test
