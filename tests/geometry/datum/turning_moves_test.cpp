#include "geometry/datum/view.h"

#include "picture_matrices.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <array>

namespace gapwise {

namespace {

constexpr std::array<TurningMove, 3> kMoves{TurningMove::Rolled, TurningMove::TurnedRound,
                                            TurningMove::TippedOver};

TurningMove drawnMove() {
    return *rc::gen::elementOf(kMoves);
}

Side drawnSide() {
    return *rc::gen::element(Side::Compressor, Side::Turbine);
}

double drawnDegrees() {
    return *rc::gen::inRange(0, 3600) / 10.0;
}

bool sameView(const View& a, const View& b) {
    return a.side == b.side && apart(a.top, b.top).value < 1e-9;
}

/// What the picture shows of a housing: the end that looks at us, and where its top lies.
View viewFrom(const picture::Matrix& housing) {
    return View{picture::sideSeen(housing), Degrees{picture::clockInPicture(housing[1])}};
}

} // namespace

// Half turns of a rigid body about the picture's axes (rotation matrices; arithmetic).
RC_GTEST_PROP(TurningMoveProperty, IsTheHousingRotatedInThePicture, ()) {
    const View view{drawnSide(), Degrees{drawnDegrees()}};
    const TurningMove move = drawnMove();
    const picture::Matrix after = picture::turned(move, picture::housingSeen(view.side, view.top.value));
    RC_ASSERT(std::abs(glm::determinant(after) - 1.0) < 1e-12);
    RC_ASSERT(sameView(afterMove(view, move), viewFrom(after)));
    const double theta = drawnDegrees();
    RC_ASSERT(apart(seenIn(afterMove(view, move), Clock::seenFrom(Side::Compressor, Degrees{theta})),
                    Degrees{picture::clockSeen(after, theta)})
                  .value < 1e-9);
}

RC_GTEST_PROP(TurningMoveProperty, TwiceIsNoMove, ()) {
    const View view{drawnSide(), Degrees{drawnDegrees()}};
    const TurningMove move = drawnMove();
    RC_ASSERT(sameView(afterMove(afterMove(view, move), move), view));
}

RC_GTEST_PROP(TurningMoveProperty, TwoDifferentOnesMakeTheThird, ()) {
    const View view{drawnSide(), Degrees{drawnDegrees()}};
    const auto first = *rc::gen::inRange<std::size_t>(0, 3);
    const auto second = (first + *rc::gen::inRange<std::size_t>(1, 3)) % 3;
    const auto third = 3 - first - second;
    RC_ASSERT(
        sameView(afterMove(afterMove(view, kMoves[first]), kMoves[second]), afterMove(view, kMoves[third])));
}

// The table of the trade, for who first sees the compressor end with the inlet on top (arithmetic).
TEST(TurningMove, TableOfTheTrade) {
    const auto seen = [](TurningMove move, double theta) {
        return seenIn(afterMove(inletOnTop(Side::Compressor), move),
                      Clock::seenFrom(Side::Compressor, Degrees{theta}))
            .value;
    };
    EXPECT_NEAR(seen(TurningMove::Rolled, 90.0), 270.0, 1e-12);
    EXPECT_NEAR(seen(TurningMove::Rolled, 0.0), 180.0, 1e-12);
    EXPECT_NEAR(seen(TurningMove::TurnedRound, 90.0), 270.0, 1e-12);
    EXPECT_NEAR(seen(TurningMove::TurnedRound, 0.0), 0.0, 1e-12);
    EXPECT_NEAR(seen(TurningMove::TippedOver, 90.0), 90.0, 1e-12); // Right stays right: the trap.
    EXPECT_NEAR(seen(TurningMove::TippedOver, 0.0), 180.0, 1e-12);
}

// Facts of the trade 4 and 5 (common practice, no source).
TEST(TurningMove, RollingMovesEveryClockBySixHours) {
    const View view{Side::Turbine, Degrees{37.0}};
    for (int degree = 0; degree < 360; degree += 5) {
        const Clock clock = Clock::seenFrom(Side::Compressor, Degrees{static_cast<double>(degree)});
        EXPECT_NEAR(apart(seenIn(view, clock), seenIn(afterMove(view, TurningMove::Rolled), clock)).value,
                    180.0, 1e-12);
    }
}

// An upright piece: the picture of who looks down on the bench (rotation matrices; arithmetic).
RC_GTEST_PROP(TurningMoveProperty, UprightAttitudeFollowsTheHousingForWhoeverTurnsIt, ()) {
    const Side up = drawnSide();
    const double drain = drawnDegrees();
    const double stand = drawnDegrees();
    const TurningMove move = drawnMove();
    // Bench axes: the picture of who stands at the front. The one who turns it stands elsewhere; his axes
    // there.
    const picture::Matrix his = picture::aboutZ(-stand);
    const picture::Matrix onBench = picture::housingSeen(up, drain + 180.0);
    const picture::Matrix after = his * picture::turned(move, glm::transpose(his) * onBench);
    const Attitude attitude =
        afterMove(uprightAttitude(up, Degrees{drain}), Observer{.stand = Degrees{stand}}, move);
    RC_ASSERT(attitude.up ==
              (picture::sideSeen(after) == Side::Compressor ? EndUp::Compressor : EndUp::Turbine));
    RC_ASSERT(attitude.seenFrom == picture::sideSeen(after));
    RC_ASSERT(apart(attitude.drain, Degrees{picture::clockInPicture(-after[1])}).value < 1e-9);
    RC_ASSERT(attitude.drain.value >= 0.0 && attitude.drain.value < 360.0);
}

RC_GTEST_PROP(TurningMoveProperty, LevelAttitudeFollowsTheHousingFromEitherEnd, ()) {
    const Side printed = drawnSide();
    const Side observer = drawnSide();
    const double drain = drawnDegrees();
    const TurningMove move = drawnMove();
    const picture::Matrix fromPrinted = picture::housingSeen(printed, drain + 180.0);
    const picture::Matrix his = observer == printed ? fromPrinted : picture::aboutY(180.0) * fromPrinted;
    const picture::Matrix after = picture::turned(move, his);
    const Attitude attitude = afterMove(levelAttitude(printed, Degrees{drain}),
                                        Observer{.stand = Degrees{0.0}, .levelSide = observer}, move);
    RC_ASSERT(attitude.up == EndUp::Level);
    const View now = viewOf(attitude, Observer{.stand = Degrees{0.0}, .levelSide = attitude.seenFrom});
    RC_ASSERT(sameView(now, viewFrom(after)));
}

RC_GTEST_PROP(TurningMoveProperty, FromTheFrontNeedsNoObserver, ()) {
    const Attitude attitude = *rc::gen::arbitrary<bool>()
                                  ? uprightAttitude(drawnSide(), Degrees{drawnDegrees()})
                                  : levelAttitude(drawnSide(), Degrees{drawnDegrees()});
    const TurningMove move = drawnMove();
    RC_ASSERT(afterMove(attitude, move) ==
              afterMove(attitude, Observer{.stand = Degrees{0.0}, .levelSide = attitude.seenFrom}, move));
    RC_ASSERT(sameView(viewFromFront(afterMove(attitude, move)), afterMove(viewFromFront(attitude), move)));
}

// On a vertical fixture with the drain toward you (common practice, no source): tipped sideways it stays
// toward you, tipped toward or away from you it goes to the far side.
TEST(TurningMove, SidewaysKeepsTheDrainTowardYou) {
    const Attitude before = uprightAttitude(Side::Compressor, Degrees{180.0});
    EXPECT_EQ(afterMove(before, TurningMove::TurnedRound), uprightAttitude(Side::Turbine, Degrees{180.0}));
    EXPECT_EQ(afterMove(before, TurningMove::TippedOver), uprightAttitude(Side::Turbine, Degrees{0.0}));
    EXPECT_EQ(afterMove(before, TurningMove::Rolled), uprightAttitude(Side::Compressor, Degrees{0.0}));
}

} // namespace gapwise
