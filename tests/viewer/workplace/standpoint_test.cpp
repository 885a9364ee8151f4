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
    EXPECT_NEAR(camera.up().y, 1.0, 1e-9);
    EXPECT_FALSE(pictureViewOf(looking(LookKind::Beside), Attitude{}));
    EXPECT_FALSE(pictureViewOf(looking(LookKind::BothEnds), Attitude{}));
}

TEST(Standpoint, AnUprightPieceStandsUprightInThePicture) {
    for (const Side up : {Side::Compressor, Side::Turbine}) {
        const Attitude attitude = uprightAttitude(up, Degrees{180.0});
        const Camera camera = pictureCameraOf(looking(LookKind::Beside), attitude);
        EXPECT_NEAR(camera.up().z, signOf(up), 1e-9);
        // The drain points toward the person.
        const Vec3 drain = directionOf(Clock::seenFrom(Side::Compressor, Degrees{180.0}));
        EXPECT_NEAR(dot(drain, camera.forward()), -1.0, 1e-9);
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

} // namespace gapwise
