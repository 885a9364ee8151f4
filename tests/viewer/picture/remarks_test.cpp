#include "viewer/picture/remarks.h"

#include <gtest/gtest.h>

namespace gapwise {

namespace {

Remarks remarks() {
    return {.view = {.where = "You look from beside: TURBINE left, COMPRESSOR right",
                     .drain = "Inlet up, drain down",
                     .note = "75° off the axis: read no clock here"},
            .subject =
                "Alder-72, full floating · as the rules want it · pulled apart in reverse order of assembly",
            .notice = "Practice frame – invented numbers – not for work on a machine"};
}

} // namespace

class Layout : public testing::TestWithParam<PictureSize> {};

TEST_P(Layout, LeavesRoomForTheCartridgeAtEverySize) {
    const PictureLayout layout = layoutFor(GetParam(), remarks());
    const PictureArea picture{0.0, 0.0, static_cast<double>(GetParam().width),
                              static_cast<double>(GetParam().height)};
    EXPECT_GT(layout.content.width, 0.4 * picture.width);
    EXPECT_GT(layout.content.height, 0.1 * picture.height);
    EXPECT_GE(layout.labels.top, layout.bannerHeight);
    EXPECT_TRUE(layout.labels.contains(layout.content));
}

INSTANTIATE_TEST_SUITE_P(Sizes, Layout,
                         testing::Values(PictureSize{320, 320}, PictureSize{1366, 768},
                                         PictureSize{1600, 900}, PictureSize{8000, 8000},
                                         PictureSize{8000, 320}, PictureSize{320, 8000}));

TEST(Unit, GrowsWithThePictureAndStaysReadable) {
    EXPECT_EQ(unitOf({1600, 900}), 1.0);
    EXPECT_EQ(unitOf({3200, 1800}), 2.0);
    EXPECT_LT(unitOf({8000, 900}), 1.3); // As high as it is, not as wide.
    EXPECT_GT(unitOf({900, 1200}), 0.75);
    EXPECT_GE(15.0 * unitOf({320, 320}), 8.0); // The smallest text in pixels.
}

} // namespace gapwise
