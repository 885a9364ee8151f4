#include "tests/viewer/panels/desk.h"

#include <imgui.h>

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

namespace gapwise {

namespace {

using desk::Desk;

/// A point of a dial, by clock and share of its radius.
struct OnDial {
    double x = 0.0;
    double y = 0.0;
};
OnDial onDial(const Desk& desk, const char* side, double degrees, double share) {
    const Area dial = desk.areaOf(std::string{side} + "/dial");
    EXPECT_FALSE(dial.empty());
    const double radius = std::min(dial.width, dial.height) / 2.0 * share;
    const double a = degrees * std::numbers::pi / 180.0;
    return {dial.middleX() + std::sin(a) * radius, dial.middleY() - std::cos(a) * radius};
}

/// Share of the radius at which a ring of the compressor dial of alder-72 lies: six rings, SR-CO the fifth.
constexpr double kSrCo = 0.76 - 4.0 * 0.10;

void placeSrCo(Desk& desk, double clock) {
    desk.at.place("SR-CO");
    desk.at.point("SR-CO", Side::Compressor, clock);
    desk.frames(2);
}

int countActs(const Desk& desk) {
    int count = 0;
    for (const Wish& wish : desk.wishes)
        count += std::holds_alternative<Act>(wish) ? 1 : 0;
    return count;
}

} // namespace

TEST(EndDialPanel, ATapTakesTheRingInHand) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    placeSrCo(desk, 0.0);
    const OnDial at = onDial(desk, "compressor", 120.0, kSrCo);
    desk.clickAt(at.x, at.y);
    ASSERT_TRUE(desk.job().inHand);
    EXPECT_EQ(desk.job().inHand->text, "SR-CO");
    EXPECT_EQ(countActs(desk), 0);
}

TEST(EndDialPanel, DraggingTheGapIsOneActWhenItIsLetGo) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    placeSrCo(desk, 0.0);
    const OnDial from = onDial(desk, "compressor", 0.0, kSrCo);
    desk.moveTo(from.x, from.y);
    desk.press();
    for (double degrees = 5.0; degrees <= 90.0; degrees += 5.0) {
        const OnDial at = onDial(desk, "compressor", degrees, kSrCo);
        desk.moveTo(at.x, at.y);
    }
    desk.frame();
    ASSERT_TRUE(desk.job().turning);
    EXPECT_EQ(countActs(desk), 0);
    desk.release();
    desk.frame();
    ASSERT_EQ(countActs(desk), 1);
    const IndexTurned* turned = desk.lastAct<IndexTurned>();
    ASSERT_NE(turned, nullptr);
    EXPECT_NEAR(turned->index.from(Side::Compressor).value, 90.0, 3.0);
    EXPECT_EQ(turned->setIn, inletOnTop(Side::Compressor));
    EXPECT_FALSE(desk.job().turning);
}

TEST(EndDialPanel, ADragOnTheTurbineDialIsReadFromTheTurbineSide) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.at.place("SHIELD");
    desk.at.point("SHIELD", Side::Turbine, 0.0);
    desk.frames(2);
    OnDial at = onDial(desk, "turbine", 0.0, 0.76);
    desk.moveTo(at.x, at.y);
    desk.press();
    for (const double degrees : {20.0, 60.0, 90.0, 90.0}) {
        at = onDial(desk, "turbine", degrees, 0.76);
        desk.moveTo(at.x, at.y);
    }
    desk.release();
    desk.frame();
    const IndexTurned* turned = desk.lastAct<IndexTurned>();
    ASSERT_NE(turned, nullptr);
    EXPECT_NEAR(turned->index.from(Side::Turbine).value, 90.0, 3.0);
    EXPECT_EQ(turned->setIn, inletOnTop(Side::Turbine));
}

TEST(EndDialPanel, EscapeGivesTheTurningUp) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    placeSrCo(desk, 0.0);
    OnDial at = onDial(desk, "compressor", 0.0, kSrCo);
    desk.moveTo(at.x, at.y);
    desk.press();
    for (const double degrees : {20.0, 40.0, 60.0, 60.0}) {
        at = onDial(desk, "compressor", degrees, kSrCo);
        desk.moveTo(at.x, at.y);
    }
    ASSERT_TRUE(desk.job().turning);
    desk.key(ImGuiKey_Escape);
    EXPECT_FALSE(desk.job().turning);
    desk.release();
    desk.frame();
    EXPECT_EQ(countActs(desk), 0);
    EXPECT_DOUBLE_EQ(desk.build().in(seatOf(PartId{"SR-CO"}))->index->from(Side::Compressor).value, 0.0);
}

TEST(EndDialPanel, APartFromTheTrayGoesIntoTheRingThatIsTapped) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.click("tray/SR-CI");
    const Area row = desk.areaOf("compressor/seat-SR-CO");
    ASSERT_FALSE(row.empty());
    desk.clickAt(row.middleX(), row.middleY());
    const PartPlaced* placed = desk.lastAct<PartPlaced>();
    ASSERT_NE(placed, nullptr);
    EXPECT_EQ(placed->part.text, "SR-CI") << "into the wrong groove, as asked";
    EXPECT_EQ(placed->seat.text, "seat-SR-CO");
    EXPECT_FALSE(placed->index);
}

TEST(EndDialPanel, TheLegendTakesInHandToo) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    placeSrCo(desk, 90.0);
    desk.click("compressor/seat-SR-CO");
    ASSERT_TRUE(desk.job().inHand);
    EXPECT_EQ(desk.job().inHand->text, "SR-CO");
}

TEST(EndDialPanel, PointingAtARingTellsThePicture) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    const Area row = desk.areaOf("turbine/seat-SR-TI");
    desk.moveTo(row.middleX(), row.middleY());
    desk.frame();
    ASSERT_TRUE(desk.panels.pointedAt);
    EXPECT_EQ(desk.panels.pointedAt->text, "SR-TI");
    EXPECT_FALSE(desk.panels.pictureFree);
    desk.moveTo(desk.panels.picture.middleX(), desk.panels.picture.middleY());
    desk.frame();
    EXPECT_FALSE(desk.panels.pointedAt);
    EXPECT_TRUE(desk.panels.pictureFree);
}

} // namespace gapwise
