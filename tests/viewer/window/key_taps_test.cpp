#include "viewer/window/key_taps.h"

#include <gmock/gmock.h>

namespace gapwise {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

TEST(KeyTaps, AKeyThatIsPressedAndReleasedBetweenTwoPicturesIsSeenDownInOne) {
    KeyTaps taps;
    taps.pressed(7);
    EXPECT_FALSE(taps.mayRelease(7));
    EXPECT_THAT(taps.seen(), ElementsAre(7));
    EXPECT_THAT(taps.seen(), IsEmpty());
}

TEST(KeyTaps, AKeyThatWasSeenIsReleasedAtOnce) {
    KeyTaps taps;
    taps.pressed(7);
    EXPECT_THAT(taps.seen(), IsEmpty());
    EXPECT_TRUE(taps.mayRelease(7));
}

TEST(KeyTaps, ReleasesKeepTheirOrder) {
    KeyTaps taps;
    taps.pressed(1);
    taps.pressed(2);
    EXPECT_FALSE(taps.mayRelease(2));
    EXPECT_FALSE(taps.mayRelease(1));
    EXPECT_THAT(taps.seen(), ElementsAre(2, 1));
}

TEST(KeyTaps, CtrlStaysDownUntilTheKeyWithItWasSeen) {
    constexpr int kCtrl = 1;
    constexpr int kZ = 2;
    KeyTaps taps;
    taps.pressed(kCtrl);
    taps.seen();
    taps.pressed(kZ);
    EXPECT_FALSE(taps.mayRelease(kZ));
    EXPECT_FALSE(taps.mayRelease(kCtrl));
    EXPECT_THAT(taps.seen(), ElementsAre(kZ, kCtrl));
}

} // namespace gapwise
