#include "tests/viewer/panels/desk.h"

#include "viewer/panels/cut_open.h"

#include <gtest/gtest.h>

namespace gapwise {

using desk::Desk;

namespace {

constexpr Desk::Size kUsual{1366, 768};

std::optional<Section> sectionOf(const Desk& desk) {
    return desk.job().standpoint.section;
}

double cutFrom(const Desk& desk, Side side) {
    const auto section = sectionOf(desk);
    EXPECT_TRUE(section);
    return section ? section->removed.from(side).value : -1.0;
}

void lookAs(Desk& desk, LookKind kind) {
    Standpoint standpoint = desk.job().standpoint;
    standpoint.kind = kind;
    grant(desk.workplace, LookAgain{standpoint});
    desk.frames(2);
}

} // namespace

TEST(CutOpen, WholeHalfAndQuarterAreOneTouchEach) {
    Desk desk{kUsual};
    desk.start("alder-72", Use::Practise);
    EXPECT_FALSE(desk.has("cut/ring")) << "nothing to turn";
    desk.click("cut/half");
    ASSERT_TRUE(sectionOf(desk));
    EXPECT_EQ(sectionOf(desk)->kind, Section::Kind::Half);
    desk.click("cut/quarter");
    EXPECT_EQ(sectionOf(desk)->kind, Section::Kind::Quarter);
    desk.click("cut/whole");
    EXPECT_FALSE(sectionOf(desk));
    EXPECT_FALSE(desk.has("cut/↻ 15°"));
}

// With the drain toward the person the plane through inlet and drain would be seen from its edge.
TEST(CutOpen, IsNeverSeenFromItsEdge) {
    Desk desk{kUsual};
    desk.start("alder-72", Use::Practise);
    desk.at.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{180.0}), true});
    lookAs(desk, LookKind::Beside);
    desk.click("cut/half");
    EXPECT_EQ(cutFrom(desk, Side::Compressor), 180.0);
}

// Beside, a level piece has the turbine on the left: the eye is at 9:00 from the compressor side.
TEST(CutOpen, OpensTowardTheEye) {
    Desk desk{kUsual};
    desk.start("alder-72", Use::Practise);
    desk.at.act(AttitudeChanged{levelAttitude(Side::Compressor, Degrees{180.0}), true});
    lookAs(desk, LookKind::Beside);
    desk.click("cut/half");
    EXPECT_EQ(cutFrom(desk, Side::Compressor), 270.0);
    desk.click("cut/quarter");
    EXPECT_EQ(cutFrom(desk, Side::Compressor), 315.0) << "the upper quarter: the eye is a little higher";
}

TEST(CutOpen, StepsTurnClockwiseAsSeenFromThere) {
    Desk desk{kUsual};
    desk.start("alder-72", Use::Practise);
    for (const auto& [kind, side] : {std::pair{LookKind::FromCompressor, Side::Compressor},
                                     std::pair{LookKind::FromTurbine, Side::Turbine}}) {
        lookAs(desk, kind);
        desk.click("cut/half");
        const double before = cutFrom(desk, side);
        desk.click("cut/↻ 15°");
        EXPECT_DOUBLE_EQ(cutFrom(desk, side), before + 15.0);
        desk.click("cut/↺ 15°");
        desk.click("cut/↺ 15°");
        EXPECT_DOUBLE_EQ(cutFrom(desk, side), before - 15.0);
    }
}

TEST(CutOpen, IsDraggedRoundItsRing) {
    Desk desk{kUsual};
    desk.start("alder-72", Use::Practise);
    lookAs(desk, LookKind::FromTurbine);
    desk.click("cut/half");
    const Area ring = desk.areaOf("cut/ring");
    ASSERT_FALSE(ring.empty());
    desk.moveTo(ring.middleX() + 18.0, ring.middleY());
    desk.press();
    desk.moveTo(ring.middleX(), ring.middleY() + 18.0);
    desk.frame();
    EXPECT_EQ(cutFrom(desk, Side::Turbine), 180.0) << "while it is held";
    desk.moveTo(ring.middleX() - 18.0, ring.middleY());
    desk.frame();
    desk.release();
    EXPECT_EQ(cutFrom(desk, Side::Turbine), 270.0);
}

TEST(Casings, AreShownAndPutOutOfSightWhereAnyIsInPlace) {
    for (const Use use : {Use::Show, Use::Bench}) {
        Desk desk{kUsual};
        desk.startSheet("alder-72-plate-on", Use::Show);
        EXPECT_FALSE(desk.has("cut/casings"));
        desk.startSheet("alder-72-good", use);
        if (use == Use::Bench)
            desk.at.act(AttitudeChanged{levelAttitude(Side::Compressor, Degrees{180.0}), true});
        desk.frames(2);
        EXPECT_FALSE(desk.job().standpoint.casings);
        desk.click("cut/casings");
        EXPECT_TRUE(desk.job().standpoint.casings);
        desk.type("k");
        EXPECT_FALSE(desk.job().standpoint.casings);
    }
}

TEST(Casings, ComeIntoSightWhenOneIsPutOn) {
    Desk desk{kUsual};
    desk.startSheet("alder-72-three-faults", Use::Show);
    desk.at.place("SHIM");
    EXPECT_TRUE(desk.job().standpoint.casings);
}

TEST(CutOpen, SaysItsClockAndTheSide) {
    Desk desk{kUsual};
    desk.start("alder-72", Use::Practise);
    EXPECT_EQ(cutWordsOf(desk.job()), "");
    lookAs(desk, LookKind::FromCompressor);
    desk.click("cut/half");
    EXPECT_EQ(cutWordsOf(desk.job()), "Cut away: the half at 3:00 seen from the compressor side");
    lookAs(desk, LookKind::FromTurbine);
    EXPECT_EQ(cutWordsOf(desk.job()), "Cut away: the half at 9:00 seen from the turbine side");
}

TEST(CutOpen, HasKeysOfItsOwn) {
    Desk desk{kUsual};
    desk.start("alder-72", Use::Practise);
    lookAs(desk, LookKind::FromCompressor);
    desk.type("x");
    EXPECT_FALSE(sectionOf(desk)) << "nothing to turn";
    desk.type("c");
    EXPECT_EQ(sectionOf(desk)->kind, Section::Kind::Half);
    desk.type("x");
    EXPECT_EQ(cutFrom(desk, Side::Compressor), 105.0);
    desk.type("X");
    desk.type("X");
    EXPECT_EQ(cutFrom(desk, Side::Compressor), 75.0);
    desk.type("c");
    EXPECT_EQ(sectionOf(desk)->kind, Section::Kind::Quarter);
    desk.type("c");
    EXPECT_FALSE(sectionOf(desk));
}

TEST(CutOpen, IsALookAndNoEvent) {
    Desk desk{kUsual};
    desk.start("alder-72", Use::Practise);
    const std::size_t events = desk.job().log.events.size();
    desk.click("cut/quarter");
    desk.click("cut/↻ 15°");
    EXPECT_EQ(desk.job().log.events.size(), events);
    for (const LookKind kind :
         {LookKind::FromTurbine, LookKind::Beside, LookKind::Free, LookKind::BothEnds}) {
        const auto before = sectionOf(desk);
        lookAs(desk, kind);
        EXPECT_EQ(sectionOf(desk), before) << "it stays when one looks from elsewhere";
        EXPECT_TRUE(desk.has("cut/whole"));
    }
}

TEST(CutOpen, AtTheBenchGlovesHitEveryPartOfIt) {
    Desk desk{kUsual};
    desk.startSheet("birch-150-half-a-turn", Use::Bench);
    desk.frames(2);
    desk.click("cut/cut open");
    EXPECT_EQ(sectionOf(desk)->kind, Section::Kind::Half);
    for (const char* part : {"cut/cut open", "cut/↺ 15°", "cut/↻ 15°"}) {
        EXPECT_GE(desk.areaOf(part).width, 60.0) << part;
        EXPECT_GE(desk.areaOf(part).height, 60.0) << part;
    }
    desk.click("cut/cut open");
    EXPECT_EQ(sectionOf(desk)->kind, Section::Kind::Quarter);
    desk.click("cut/cut open");
    EXPECT_FALSE(sectionOf(desk));
}

} // namespace gapwise
