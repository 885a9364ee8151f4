#include "models/check/mistakes.h"

#include <gmock/gmock.h>

namespace gapwise {

namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

Clock atCompressor(double degrees) {
    return Clock::seenFrom(Side::Compressor, Degrees{degrees});
}

/// 4 o'clock from the compressor side, as on the invented Birch-150; its twin is 4 o'clock from the turbine
/// side.
MistakeCase fourOClock(double actual) {
    return MistakeCase{.actual = atCompressor(actual),
                       .window = {atCompressor(120.0), Degrees{20.0}},
                       .printed = PrintedClock{Degrees{120.0}, Side::Compressor, Degrees{20.0}},
                       .twin = ClockWindow{atCompressor(240.0), Degrees{20.0}}};
}

} // namespace

TEST(Mistakes, HalfATurnOnlyWhenOnlyThatExplainsIt) {
    EXPECT_THAT(mistakesOf(fourOClock(302.0)).mistakes, ElementsAre(Mistake::UpsideDown));
}

TEST(Mistakes, MirroredTwinsAreBothNamedInTheFixedOrder) {
    EXPECT_THAT(mistakesOf(fourOClock(240.0)).mistakes,
                ElementsAre(Mistake::MirroredView, Mistake::OtherEndRule));
}

TEST(Mistakes, NoneWhenNoSingleOneExplainsIt) {
    EXPECT_THAT(mistakesOf(fourOClock(180.0)).mistakes, IsEmpty());
}

TEST(Mistakes, AsPrintedIsUnknownWithoutTheViewInWhichItWasSet) {
    EXPECT_EQ(mistakesOf(fourOClock(302.0)).asPrinted, std::nullopt);
}

TEST(Mistakes, AsPrintedWhenTheDrainLayAway) {
    MistakeCase half = fourOClock(302.0);
    half.setIn = View{Side::Compressor, Degrees{180.0}};
    EXPECT_EQ(mistakesOf(half).asPrinted, true);
    half.setIn = View{Side::Turbine, Degrees{0.0}};
    EXPECT_EQ(mistakesOf(half).asPrinted, false);
}

TEST(Mistakes, TheViewThatWasUsedPutsItsMistakeFirst) {
    // 9:00 for a rule of 3:00: mirrored and upside down coincide; the view decides.
    MistakeCase sideways{.actual = atCompressor(270.0),
                         .window = {atCompressor(90.0), Degrees{30.0}},
                         .printed = PrintedClock{Degrees{90.0}, Side::Compressor, Degrees{30.0}}};
    EXPECT_THAT(mistakesOf(sideways).mistakes, ElementsAre(Mistake::MirroredView, Mistake::UpsideDown));
    sideways.setIn = View{Side::Compressor, Degrees{180.0}};
    EXPECT_THAT(mistakesOf(sideways).mistakes, ElementsAre(Mistake::UpsideDown, Mistake::MirroredView));
    sideways.setIn = View{Side::Turbine, Degrees{0.0}};
    EXPECT_THAT(mistakesOf(sideways).mistakes, ElementsAre(Mistake::MirroredView, Mistake::UpsideDown));
}

TEST(Mistakes, AViewNamesItsMistakeWithinFifteenDegrees) {
    EXPECT_EQ(mistakeOfView({Side::Compressor, Degrees{195.0}}, Side::Compressor), Mistake::UpsideDown);
    EXPECT_EQ(mistakeOfView({Side::Turbine, Degrees{165.0}}, Side::Compressor), Mistake::EndOverEnd);
    EXPECT_EQ(mistakeOfView({Side::Turbine, Degrees{345.0}}, Side::Compressor), Mistake::MirroredView);
    EXPECT_EQ(mistakeOfView({Side::Compressor, Degrees{270.0}}, Side::Compressor), Mistake::QuarterTurn);
    EXPECT_EQ(mistakeOfView({Side::Compressor, Degrees{45.0}}, Side::Compressor), std::nullopt);
    EXPECT_EQ(mistakeOfView({Side::Compressor, Degrees{0.0}}, Side::Compressor), std::nullopt);
}

} // namespace gapwise
