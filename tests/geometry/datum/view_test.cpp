#include "geometry/datum/view.h"

#include "picture_matrices.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <array>
#include <string_view>
#include <utility>

namespace gapwise {

namespace {

struct ViewVector {
    double theta;
    Side side;
    double phi;
    double seen;
    int hour;
};

// The view vectors of the trade: arithmetic of θ_seen = φ + σθ; hours round half up.
constexpr Side kC = Side::Compressor;
constexpr Side kT = Side::Turbine;
constexpr std::array<ViewVector, 17> kViewVectors{{{0, kC, 0, 0, 12},
                                                   {0, kT, 0, 0, 12},
                                                   {90, kC, 0, 90, 3},
                                                   {90, kT, 0, 270, 9},
                                                   {270, kT, 0, 90, 3},
                                                   {30, kT, 0, 330, 11},
                                                   {180, kT, 0, 180, 6},
                                                   {90, kC, 180, 270, 9},
                                                   {90, kT, 180, 90, 3},
                                                   {302, kC, 180, 122, 4},
                                                   {120, kC, 0, 120, 4},
                                                   {240, kT, 0, 120, 4},
                                                   {240, kC, 0, 240, 8},
                                                   {300, kT, 0, 60, 2},
                                                   {150, kC, 0, 150, 5},
                                                   {45, kC, 90, 135, 5},
                                                   {45, kT, 90, 45, 2}}};

Clock stored(double degrees) {
    return Clock::seenFrom(Side::Compressor, Degrees{degrees});
}

Side drawnSide() {
    return *rc::gen::element(Side::Compressor, Side::Turbine);
}

/// A person who looks down on an upright piece, as his right and away in the bench's axes (x right and y away
/// for who stands at the front, z up). He walks clockwise as seen from above: about the downward vertical.
struct Standing {
    picture::Vector right;
    picture::Vector away;
};
Standing standingAt(double stand) {
    const picture::Matrix walk = picture::aboutZ(-stand);
    return {walk[0], walk[1]};
}

} // namespace

TEST(View, VectorsOfTheTrade) {
    for (const ViewVector& v : kViewVectors) {
        const Degrees seen = seenIn(View{v.side, Degrees{v.phi}}, stored(v.theta));
        EXPECT_NEAR(seen.value, v.seen, 1e-12) << v.theta << ' ' << nameOf(v.side) << ' ' << v.phi;
        EXPECT_EQ(nearestHour(seen), v.hour) << v.theta << ' ' << nameOf(v.side) << ' ' << v.phi;
    }
}

// The observer's right is f × u, so +X lies to the right of an observer on the compressor side (GEO-01,
// GEO-02).
TEST(View, RightOfTheCompressorObserverIsPlusX) {
    const Vec3 up{0, 1, 0};
    EXPECT_EQ(cross(Vec3{0, 0, -1}, up), (Vec3{1, 0, 0}));
    EXPECT_EQ(cross(Vec3{0, 0, 1}, up), (Vec3{-1, 0, 0}));
    EXPECT_NEAR(seenIn(inletOnTop(kC), clockOf(Vec3{1, 0, 0})).value, 90.0, 1e-12);
    EXPECT_NEAR(seenIn(inletOnTop(kT), clockOf(Vec3{-1, 0, 0})).value, 90.0, 1e-12);
}

// Facts of the trade 1 and 2 (common practice, no source): mirrored left and right, 12 and 6 unchanged.
TEST(View, TwelveAndSixAloneAreTheSameFromBothEnds) {
    int same = 0;
    for (int degree = 0; degree < 360; ++degree)
        same += seenIn(inletOnTop(kC), stored(degree)) == seenIn(inletOnTop(kT), stored(degree)) ? 1 : 0;
    EXPECT_EQ(same, 2);
    EXPECT_EQ(seenIn(inletOnTop(kT), stored(0.0)).value, 0.0);
    EXPECT_EQ(seenIn(inletOnTop(kT), stored(180.0)).value, 180.0);
}

RC_GTEST_PROP(ViewProperty, FormulaIsTheRotatedHousing, ()) {
    const Side side = drawnSide();
    const double top = *rc::gen::inRange(0, 3600) / 10.0;
    const double theta = *rc::gen::inRange(0, 3600) / 10.0;
    const picture::Matrix housing = picture::housingSeen(side, top);
    RC_ASSERT(picture::sideSeen(housing) == side);
    RC_ASSERT(
        apart(Degrees{picture::clockSeen(housing, theta)}, seenIn(View{side, Degrees{top}}, stored(theta)))
            .value < 1e-9);
}

RC_GTEST_PROP(ViewProperty, WhatIsSeenGoesBackToItsClock, ()) {
    const View view{drawnSide(), Degrees{*rc::gen::inRange(0, 3600) / 10.0}};
    const double theta = *rc::gen::inRange(0, 3600) / 10.0;
    RC_ASSERT(apart(clockSeenIn(view, seenIn(view, stored(theta))), stored(theta)).value < 1e-12);
}

// Drain toward you, away, at your right, at your left, with either end up (arithmetic of φ = ψ + 180).
TEST(View, TopLiesOppositeTheDrain) {
    constexpr std::array<std::pair<double, double>, 4> kTops{{{180, 0}, {0, 180}, {90, 270}, {270, 90}}};
    for (const Side up : {kC, kT})
        for (const auto& [drain, top] : kTops) {
            const View view = viewFromFront(uprightAttitude(up, Degrees{drain}));
            EXPECT_EQ(view.side, up);
            EXPECT_EQ(view.top.value, top);
        }
}

RC_GTEST_PROP(ViewProperty, WalkingRoundAnUprightPiece, ()) {
    const Side up = drawnSide();
    const double drain = *rc::gen::inRange(0, 3600) / 10.0;
    const double stand = *rc::gen::inRange(-3600, 3600) / 10.0;
    const double theta = *rc::gen::inRange(0, 3600) / 10.0;
    // The bench is the picture of who stands at the front and looks down.
    const picture::Matrix onBench = picture::housingSeen(up, drain + 180.0);
    const picture::Vector point = onBench * picture::Vector{std::sin(picture::inRadians(theta)),
                                                            std::cos(picture::inRadians(theta)), 0.0};
    const Standing person = standingAt(stand);
    const double seen =
        picture::clockInPicture({glm::dot(point, person.right), glm::dot(point, person.away), 0.0});
    const View view = viewOf(uprightAttitude(up, Degrees{drain}), Observer{.stand = Degrees{stand}});
    RC_ASSERT(view.side == up);
    RC_ASSERT(apart(seenIn(view, stored(theta)), Degrees{seen}).value < 1e-9);
}

RC_GTEST_PROP(ViewProperty, WalkingToTheOtherEndOfALevelPiece, ()) {
    const Side first = drawnSide();
    const double drain = *rc::gen::inRange(0, 3600) / 10.0;
    const double theta = *rc::gen::inRange(0, 3600) / 10.0;
    const Attitude attitude = levelAttitude(first, Degrees{drain});
    const picture::Matrix here = picture::housingSeen(first, drain + 180.0);
    // Behind the piece his right and his line of sight are reversed; up stays up.
    const picture::Matrix there = picture::aboutY(180.0) * here;
    for (const auto& [side, housing] : {std::pair{first, here}, std::pair{opposite(first), there}}) {
        const View view = viewOf(attitude, Observer{.stand = Degrees{0.0}, .levelSide = side});
        RC_ASSERT(view.side == picture::sideSeen(housing));
        RC_ASSERT(apart(seenIn(view, stored(theta)), Degrees{picture::clockSeen(housing, theta)}).value <
                  1e-9);
    }
}

TEST(View, DrainAppearsWhereTheAttitudeSays) {
    for (int drain = 0; drain < 360; drain += 15) {
        const Degrees psi{static_cast<double>(drain)};
        for (const Attitude& attitude : {uprightAttitude(kC, psi), uprightAttitude(kT, psi),
                                         levelAttitude(kC, psi), levelAttitude(kT, psi)})
            EXPECT_NEAR(seenIn(viewFromFront(attitude), stored(180.0)).value, psi.value, 1e-12);
    }
}

TEST(View, GravityPutsTheInletOnTopOfALevelPieceFromBothEnds) {
    const Attitude asInstalled = levelAttitude(kC, Degrees{180.0});
    for (const Side side : {kC, kT})
        EXPECT_EQ(viewOf(asInstalled, Observer{.stand = Degrees{0.0}, .levelSide = side}), inletOnTop(side));
}

// Worked example of the command: 3:00 from the compressor side, turbine end up, drain at 9:00: 12, away.
TEST(View, WorkedExampleOfTheBench) {
    const View view = viewFromFront(uprightAttitude(kT, Degrees{270.0}));
    const Degrees seen = seenIn(view, stored(90.0));
    EXPECT_EQ(hoursAndMinutes(seen), "12:00");
    EXPECT_EQ(benchWord(seen, EndUp::Turbine), "away");
}

// Bench words of the trade: upright away, right, toward you, left; level up, right, down, left.
TEST(BenchWord, NamesTheEightDirections) {
    constexpr std::array<std::string_view, 8> kUpright{"away",       "away-right",  "right", "toward-right",
                                                       "toward you", "toward-left", "left",  "away-left"};
    constexpr std::array<std::string_view, 8> kLevel{"up",   "up-right",  "right", "down-right",
                                                     "down", "down-left", "left",  "up-left"};
    for (int eighth = 0; eighth < 8; ++eighth) {
        const auto i = static_cast<std::size_t>(eighth);
        EXPECT_EQ(benchWord(Degrees{45.0 * eighth}, EndUp::Compressor), kUpright[i]);
        EXPECT_EQ(benchWord(Degrees{45.0 * eighth}, EndUp::Turbine), kUpright[i]);
        EXPECT_EQ(benchWord(Degrees{45.0 * eighth}, EndUp::Level), kLevel[i]);
    }
}

TEST(BenchWord, EachIsFortyFiveDegreesWide) {
    EXPECT_EQ(benchWord(Degrees{22.4}, EndUp::Level), "up");
    EXPECT_EQ(benchWord(Degrees{22.6}, EndUp::Level), "up-right");
    EXPECT_EQ(benchWord(Degrees{337.4}, EndUp::Level), "up-left");
    EXPECT_EQ(benchWord(Degrees{337.6}, EndUp::Level), "up");
    EXPECT_EQ(benchWord(Degrees{-90.0}, EndUp::Level), "left");
}

// Seen from where one stands, the word changes with the walk and the piece does not (invented values).
TEST(BenchWord, FollowsThePersonRoundTheBench) {
    const Attitude attitude = uprightAttitude(kC, Degrees{180.0});
    const auto wordAt = [&](double stand) {
        return benchWord(seenIn(viewOf(attitude, Observer{.stand = Degrees{stand}}), stored(0.0)),
                         attitude.up);
    };
    EXPECT_EQ(wordAt(0.0), "away");
    EXPECT_EQ(wordAt(90.0), "left"); // He stands where his left hand was: what was away is on his left.
    EXPECT_EQ(wordAt(180.0), "toward you");
    EXPECT_EQ(wordAt(270.0), "right");
}

} // namespace gapwise
