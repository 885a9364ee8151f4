#include "models/torque/angle_window.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace gapwise::test {

using ::testing::HasSubstr;

namespace {

// Two invented shafts.
constexpr ClampSpring kAlder{
    .torqueFactor = 0.16, .diameterMm = 8.0, .pitchMm = 1.0, .stiffnessKnPerMm = 134.0};
constexpr ClampSpring kBirch{
    .torqueFactor = 0.16, .diameterMm = 16.0, .pitchMm = 1.5, .stiffnessKnPerMm = 280.0};
constexpr AngleWindow kWindow{Degrees{12.0}, Degrees{28.0}};

} // namespace

// Worked by hand from T/(K·d), spring and pitch, with invented figures.
TEST(ClampSprings, GiveForceAngleAndStressOfTheInventedShafts) {
    EXPECT_NEAR(springForceKn(kAlder, 14.0), 10.9, 0.05);
    EXPECT_NEAR(expectedAngle(kAlder, 5.0, 14.0).value, 18.9, 0.05);
    EXPECT_NEAR(stemStressMpa(springForceKn(kAlder, 14.0), 8.0), 218.0, 0.5);
    EXPECT_NEAR(springForceKn(kBirch, 110.0), 43.0, 0.05);
    EXPECT_NEAR(expectedAngle(kBirch, 30.0, 110.0).value, 26.8, 0.05);
    EXPECT_NEAR(stemStressMpa(springForceKn(kBirch, 110.0), 16.0), 214.0, 0.5);
}

RC_GTEST_PROP(ClampSprings, MoreFrictionMeansLessAngle, ()) {
    ClampSpring drier = kAlder;
    drier.torqueFactor += *rc::gen::inRange(1, 30) / 100.0;
    RC_ASSERT(expectedAngle(drier, 5.0, 14.0) < expectedAngle(kAlder, 5.0, 14.0));
}

RC_GTEST_PROP(ClampSprings, AngleFromSnugAddsUp, ()) {
    const double between = *rc::gen::inRange(500, 1400) / 100.0;
    const Degrees first = expectedAngle(kAlder, 5.0, between);
    const Degrees second = expectedAngle(kAlder, between, 14.0);
    RC_ASSERT(within(first + second, expectedAngle(kAlder, 5.0, 14.0), Degrees{1e-9}));
}

TEST(AngleWindows, TheBoundaryIsWithin) {
    EXPECT_EQ(judgeAngle(Degrees{12.0}, kWindow), AngleVerdict::Within);
    EXPECT_EQ(judgeAngle(Degrees{28.0}, kWindow), AngleVerdict::Within);
    EXPECT_EQ(judgeAngle(Degrees{11.99}, kWindow), AngleVerdict::TooLittle);
    EXPECT_EQ(judgeAngle(Degrees{28.01}, kWindow), AngleVerdict::TooMuch);
}

// Common practice, no source.
TEST(AngleWindows, TooLittleIsFrictionAndTooMuchIsSomethingStillClosing) {
    EXPECT_THAT(
        angleWords(Degrees{7.0}, kWindow),
        HasSubstr("7° from snug to final, window 12° to 28°: too little: the thread is dry or picking up"));
    EXPECT_THAT(angleWords(Degrees{40.0}, kWindow), HasSubstr("still closing up"));
    EXPECT_THAT(angleWords(Degrees{40.0}, kWindow), HasSubstr("shaft is yielding"));
    EXPECT_THAT(angleWords(Degrees{19.0}, kWindow), HasSubstr("in the window"));
}

TEST(AngleWindows, HaveKeysForFiles) {
    EXPECT_EQ(keyOf(AngleVerdict::TooLittle), "too_little");
    EXPECT_EQ(keyOf(AngleVerdict::Within), "within");
    EXPECT_EQ(keyOf(AngleVerdict::TooMuch), "too_much");
}

} // namespace gapwise::test
