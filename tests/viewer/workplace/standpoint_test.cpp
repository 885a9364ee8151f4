#include "viewer/workplace/standpoint.h"

#include <gtest/gtest.h>

namespace gapwise {

namespace {

Standpoint looking(LookKind kind) {
    Standpoint standpoint;
    standpoint.kind = kind;
    return standpoint;
}

double seenAt(const Camera& camera, double fromCompressor) {
    return camera.seen(Clock::seenFrom(Side::Compressor, Degrees{fromCompressor})).value;
}

} // namespace

TEST(Standpoint, TheEndLooksAreLevelledWithTheInletOnTop) {
    for (const auto& [kind, side] : {std::pair{LookKind::FromCompressor, Side::Compressor},
                                     std::pair{LookKind::FromTurbine, Side::Turbine}}) {
        const auto view = pictureViewOf(looking(kind), uprightAttitude(Side::Turbine, Degrees{37.0}));
        ASSERT_TRUE(view);
        EXPECT_EQ(view->side, side);
        EXPECT_NEAR(wrappedHalf(view->top).value, 0.0, 1e-9);
    }
}

TEST(Standpoint, WhereIStandShowsTheDrainWhereTheAttitudeSaysIt) {
    for (const Side up : {Side::Compressor, Side::Turbine})
        for (const double drain : {0.0, 90.0, 180.0, 270.0})
            for (const double stand : {0.0, 90.0, 180.0}) {
                Standpoint standpoint = looking(LookKind::WhereIStand);
                standpoint.observer.stand = Degrees{stand};
                const Attitude attitude = uprightAttitude(up, Degrees{drain});
                const View exact = viewOf(attitude, standpoint.observer);
                const auto view = pictureViewOf(standpoint, attitude);
                ASSERT_TRUE(view);
                EXPECT_EQ(view->side, exact.side);
                EXPECT_NEAR(wrappedHalf(view->top - exact.top).value, 0.0, 1e-6) << drain << " " << stand;
            }
}

TEST(Standpoint, BesideTheTurbineIsOnTheLeftAndNoClockIsOffered) {
    const Camera camera = pictureCameraOf(looking(LookKind::Beside), Attitude{});
    EXPECT_NEAR(camera.right().z, 1.0, 1e-9);
    EXPECT_NEAR(camera.offAxis().value, 90.0, 1e-9);
    EXPECT_GT(camera.up().y, 0.9);
    EXPECT_FALSE(pictureViewOf(looking(LookKind::Beside), Attitude{}));
    EXPECT_FALSE(pictureViewOf(looking(LookKind::BothEnds), Attitude{}));
}

TEST(Standpoint, AnUprightPieceStandsUprightInThePicture) {
    for (const Side up : {Side::Compressor, Side::Turbine}) {
        const Attitude attitude = uprightAttitude(up, Degrees{180.0});
        const Camera camera = pictureCameraOf(looking(LookKind::Beside), attitude);
        EXPECT_GT(camera.up().z * signOf(up), 0.9);
        EXPECT_NEAR(camera.right().z, 0.0, 1e-9);
        // The drain points toward the person.
        const Vec3 drain = directionOf(Clock::seenFrom(Side::Compressor, Degrees{180.0}));
        EXPECT_LT(dot(drain, camera.forward()), -0.9);
    }
}

TEST(Standpoint, AFreeLookPastTheEndChangesTheSide) {
    Standpoint free = looking(LookKind::Free);
    free.freeElevation = Degrees{0.0};
    free.freeAzimuth = Degrees{90.0};
    EXPECT_EQ(pictureViewOf(free, Attitude{})->side, Side::Compressor);
    EXPECT_NEAR(seenAt(pictureCameraOf(free, Attitude{}), 90.0), 90.0, 1e-9);
    free.freeAzimuth = Degrees{-90.0};
    EXPECT_EQ(pictureViewOf(free, Attitude{})->side, Side::Turbine);
    EXPECT_NEAR(seenAt(pictureCameraOf(free, Attitude{}), 90.0), 270.0, 1e-9);
    free.freeAzimuth = Degrees{20.0};
    EXPECT_FALSE(pictureViewOf(free, Attitude{}));
}

TEST(Standpoint, TheBenchStaysWhenThePersonWalksRoundIt) {
    const Attitude attitude = uprightAttitude(Side::Turbine, Degrees{90.0});
    Standpoint standing = looking(LookKind::WhereIStand);
    const Stance before = stanceOf(standing, attitude);
    standing.observer.stand = Degrees{90.0};
    const Stance after = stanceOf(standing, attitude);
    EXPECT_NEAR(dot(before.bench.zAxis, after.bench.zAxis), 1.0, 1e-9);
    EXPECT_LT(dot(before.camera.forward(), after.camera.forward()), 0.9);
}

TEST(Standpoint, APulledApartUprightPieceIsLaidOnItsSideAndKeepsWhatFacesThePerson) {
    for (const Side up : {Side::Compressor, Side::Turbine})
        for (const LookKind kind : {LookKind::WhereIStand, LookKind::Beside, LookKind::Free}) {
            Standpoint apart = looking(kind);
            apart.pulledApart = 0.6;
            const Attitude attitude = uprightAttitude(up, Degrees{180.0});
            ASSERT_TRUE(laidOnItsSide(apart, attitude));
            const Stance stance = stanceOf(apart, attitude);
            EXPECT_GT(stance.camera.right().z, 0.6) << "the turbine is on the left";
            // The drain points toward the person.
            const Vec3 drain = directionOf(Clock::seenFrom(Side::Compressor, Degrees{180.0}));
            EXPECT_NEAR(dot(stance.bench.zAxis, drain), 1.0, 1e-9);
        }
    Standpoint assembled = looking(LookKind::Beside);
    EXPECT_FALSE(laidOnItsSide(assembled, uprightAttitude(Side::Turbine, Degrees{0.0})));
    assembled.pulledApart = 1.0;
    EXPECT_FALSE(laidOnItsSide(assembled, Attitude{}));
}

TEST(Standpoint, AFreedLookGoesOnFromWhereThePersonLooked) {
    for (const LookKind kind : {LookKind::WhereIStand, LookKind::Beside})
        for (const double apart : {0.0, 1.0})
            for (const Attitude& attitude : {Attitude{}, uprightAttitude(Side::Turbine, Degrees{40.0})}) {
                Standpoint standing = looking(kind);
                standing.pulledApart = apart;
                const Camera before = pictureCameraOf(standing, attitude);
                const Camera after = pictureCameraOf(freed(standing, attitude), attitude);
                EXPECT_NEAR(dot(before.forward(), after.forward()), 1.0, 1e-9);
                EXPECT_NEAR(dot(before.up(), after.up()), 1.0, 1e-9);
            }
}

TEST(Standpoint, BetweenBeginsAndEndsAtTheTwoStances) {
    const Stance from =
        stanceOf(looking(LookKind::WhereIStand), uprightAttitude(Side::Turbine, Degrees{0.0}));
    const Stance to = stanceOf(looking(LookKind::Beside), uprightAttitude(Side::Compressor, Degrees{90.0}));
    for (const auto& [share, goal] : {std::pair{0.0, &from}, std::pair{1.0, &to}}) {
        const Stance at = between(from, to, share);
        EXPECT_NEAR(dot(at.camera.forward(), goal->camera.forward()), 1.0, 1e-9);
        EXPECT_NEAR(dot(at.camera.up(), goal->camera.up()), 1.0, 1e-9);
        EXPECT_NEAR(dot(at.bench.zAxis, goal->bench.zAxis), 1.0, 1e-9);
    }
}

TEST(Standpoint, WhenThePieceIsTurnedTheBenchStandsStillInThePicture) {
    const Stance from =
        stanceOf(looking(LookKind::WhereIStand), uprightAttitude(Side::Turbine, Degrees{0.0}));
    const Stance to =
        stanceOf(looking(LookKind::WhereIStand), uprightAttitude(Side::Compressor, Degrees{0.0}));
    const auto frontInPicture = [](const Stance& s) { return dot(s.bench.zAxis, s.camera.up()); };
    for (const double share : {0.1, 0.5, 0.8}) {
        const Stance at = between(from, to, share);
        EXPECT_NEAR(frontInPicture(at), frontInPicture(from), 1e-9);
        // A rotation, never a mirror.
        const Vec3 third = cross(at.bench.xAxis, at.bench.yAxis);
        EXPECT_NEAR(dot(third, at.bench.zAxis), 1.0, 1e-9);
    }
}

} // namespace gapwise
