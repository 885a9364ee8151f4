#include "viewer/panels/layout.h"

#include <gtest/gtest.h>

#include <array>
#include <vector>

namespace gapwise {

namespace {

struct Window {
    double width;
    double height;
};
constexpr std::array<Window, 4> kWindows{{{1366, 768}, {1920, 1080}, {1280, 720}, {3840, 2160}}};

std::vector<LayoutFor> everyLayout() {
    std::vector<LayoutFor> all;
    for (const Window& window : kWindows)
        for (const double scale : {1.0, suggestedScale(window.width, window.height)})
            for (int bits = 0; bits < 8; ++bits)
                all.push_back({.width = window.width,
                               .height = window.height,
                               .uiScale = scale,
                               .cardOpen = (bits & 1) != 0,
                               .bench = (bits & 2) != 0,
                               .bothEnds = (bits & 4) != 0});
    return all;
}

std::vector<Area> areasOf(const Layout& layout) {
    std::vector<Area> shown;
    for (const Area& area :
         {layout.banner, layout.turbineDial, layout.compressorDial, layout.looks, layout.picture,
          layout.cutOpen, layout.pullApart, layout.notices, layout.tray, layout.card, layout.line})
        if (!area.empty())
            shown.push_back(area);
    return shown;
}

bool overlap(const Area& a, const Area& b) {
    return a.x < b.right() && b.x < a.right() && a.y < b.bottom() && b.y < a.bottom();
}

} // namespace

TEST(Layout, NothingOverlaps) {
    for (const LayoutFor& wanted : everyLayout()) {
        const std::vector<Area> areas = areasOf(layoutOf(wanted));
        for (std::size_t i = 0; i < areas.size(); ++i)
            for (std::size_t k = i + 1; k < areas.size(); ++k)
                EXPECT_FALSE(overlap(areas[i], areas[k]))
                    << wanted.width << " " << wanted.bench << wanted.cardOpen << " " << i << " " << k;
    }
}

TEST(Layout, EverythingIsInsideTheWindow) {
    for (const LayoutFor& wanted : everyLayout())
        for (const Area& area : areasOf(layoutOf(wanted))) {
            EXPECT_GE(area.x, 0.0);
            EXPECT_GE(area.y, 0.0);
            EXPECT_LE(area.right(), wanted.width);
            EXPECT_LE(area.bottom(), wanted.height);
        }
}

TEST(Layout, ThePictureHasAtLeastTwoFifthsOfTheWidth) {
    for (const LayoutFor& wanted : everyLayout())
        EXPECT_GE(layoutOf(wanted).picture.width, 0.4 * wanted.width) << wanted.width << " " << wanted.bench;
}

TEST(Layout, ThePictureStaysHighEnoughToSee) {
    for (const LayoutFor& wanted : everyLayout())
        EXPECT_GE(layoutOf(wanted).picture.height, 150.0 * wanted.uiScale)
            << wanted.height << wanted.bench << wanted.cardOpen;
}

TEST(Layout, BothDialsAreThereUnlessThePictureShowsBothEnds) {
    const Layout one = layoutOf({});
    EXPECT_DOUBLE_EQ(one.turbineDial.width, one.compressorDial.width);
    EXPECT_GT(one.turbineDial.width, 250.0);
    const Layout both = layoutOf({.bothEnds = true});
    EXPECT_TRUE(both.turbineDial.empty());
    EXPECT_GT(both.picture.width, 0.9 * 1366.0);
}

TEST(Layout, TheCardTakesThePlaceOfTheTray) {
    EXPECT_TRUE(layoutOf({}).card.empty());
    EXPECT_FALSE(layoutOf({}).tray.empty());
    const Layout open = layoutOf({.cardOpen = true});
    EXPECT_TRUE(open.tray.empty());
    EXPECT_GT(open.card.height, 200.0);
    EXPECT_FALSE(open.line.empty());
}

TEST(Layout, ScaleFollowsTheWindowInEighths) {
    EXPECT_DOUBLE_EQ(suggestedScale(1366, 768), 1.0);
    EXPECT_DOUBLE_EQ(suggestedScale(1280, 720), 1.0);
    EXPECT_DOUBLE_EQ(suggestedScale(1920, 1080), 1.375);
    EXPECT_DOUBLE_EQ(suggestedScale(3840, 2160), 2.75);
    EXPECT_DOUBLE_EQ(suggestedScale(100, 100), 1.0);
}

TEST(Layout, GlovesNeedFifteenMillimetresOrSixtyPixels) {
    EXPECT_DOUBLE_EQ(targetSize({.bench = true}), 60.0);
    EXPECT_DOUBLE_EQ(targetSize({.bench = true, .pixelsPerMm = 8.0}), 120.0);
    EXPECT_DOUBLE_EQ(targetSize({.uiScale = 2.0, .bench = true}), 120.0);
    EXPECT_DOUBLE_EQ(targetSize({}), 36.0);
}

} // namespace gapwise
