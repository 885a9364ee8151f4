#include "geometry/datum/pose.h"

#include "picture_matrices.h"

#include <glm/gtc/quaternion.hpp>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <numbers>

namespace gapwise {

namespace {

using picture::inRadians;
using picture::toGlm;

Side drawnSide() {
    return *rc::gen::element(Side::Compressor, Side::Turbine);
}

double drawnDegrees() {
    return *rc::gen::inRange(0, 3600) / 10.0;
}

Seated drawnSeated() {
    return Seated{.index = Clock::seenFrom(drawnSide(), Degrees{drawnDegrees()}),
                  .referenceFaceLooks = drawnSide(),
                  .stationMm = *rc::gen::inRange(-1000, 1000) / 10.0};
}

picture::Matrix rotationOf(const Pose& pose) {
    return {toGlm(pose.xAxis), toGlm(pose.yAxis), toGlm(pose.zAxis)};
}

/// A point in part axes at `offset` clockwise from the index, for who looks at the reference face.
Vec3 featurePoint(double offset, double radius, double z) {
    return {radius * std::sin(inRadians(offset)), radius * std::cos(inRadians(offset)), z};
}

double storedOf(const Clock& clock) {
    return clock.from(Side::Compressor).value;
}

} // namespace

// A point at θ is x = r sin θ, y = r cos θ: cross products (GEO-02).
TEST(Direction, ThreeFromTheCompressorSideIsPlusX) {
    const Vec3 three = directionOf(Clock::seenFrom(Side::Compressor, Degrees{90.0}));
    EXPECT_NEAR(three.x, 1.0, 1e-12);
    EXPECT_NEAR(three.y, 0.0, 1e-12);
    const Vec3 fromTurbine = directionOf(Clock::seenFrom(Side::Turbine, Degrees{90.0}));
    EXPECT_NEAR(fromTurbine.x, -1.0, 1e-12);
    EXPECT_EQ(three.z, 0.0);
}

RC_GTEST_PROP(DirectionProperty, PointAndClockAreInverse, ()) {
    const Clock clock = Clock::seenFrom(drawnSide(), Degrees{drawnDegrees()});
    const Vec3 along = directionOf(clock);
    RC_ASSERT(std::abs(length(along) - 1.0) < 1e-12);
    const Vec3 somewhere = along * 17.5 + Vec3{0.0, 0.0, -42.0};
    RC_ASSERT(apart(clockOf(somewhere), clock).value < 1e-9);
}

RC_GTEST_PROP(PoseProperty, IsARotationNeverAMirror, ()) {
    const Pose pose = poseOf(drawnSeated());
    const picture::Matrix rotation = rotationOf(pose);
    RC_ASSERT(std::abs(glm::determinant(rotation) - 1.0) < 1e-12);
    const picture::Matrix product = glm::transpose(rotation) * rotation;
    for (int column = 0; column < 3; ++column)
        RC_ASSERT(glm::length(product[column] - picture::Matrix{1.0}[column]) < 1e-12);
}

// Against GLM quaternions. A clock grows clockwise from the compressor side, which is a negative rotation
// about +Z (GEO-06); the reference face is turned to the turbine by half a turn about the part's own Y.
RC_GTEST_PROP(PoseProperty, IsTheQuaternionOfClockAndFace, ()) {
    const Seated seated = drawnSeated();
    const glm::dquat clock = glm::angleAxis(-inRadians(storedOf(seated.index)), glm::dvec3{0, 0, 1});
    const glm::dquat flip = seated.referenceFaceLooks == Side::Compressor
                                ? glm::dquat{1, 0, 0, 0}
                                : glm::angleAxis(std::numbers::pi, glm::dvec3{0, 1, 0});
    const picture::Matrix expected = glm::mat3_cast(clock * flip);
    const picture::Matrix actual = rotationOf(poseOf(seated));
    for (int column = 0; column < 3; ++column)
        RC_ASSERT(glm::length(expected[column] - actual[column]) < 1e-12);
}

RC_GTEST_PROP(PoseProperty, FlippingKeepsTheIndexWhereItIs, ()) {
    Seated seated = drawnSeated();
    const Vec3 before = poseOf(seated).direction({0, 1, 0});
    seated.referenceFaceLooks = opposite(seated.referenceFaceLooks);
    const Vec3 after = poseOf(seated).direction({0, 1, 0});
    RC_ASSERT(before == after);
    RC_ASSERT(apart(clockOf(after), seated.index).value < 1e-9);
}

RC_GTEST_PROP(PoseProperty, ReferenceFaceLooksWhereItShould, ()) {
    const Seated seated = drawnSeated();
    const Vec3 normal = poseOf(seated).direction({0, 0, 1});
    RC_ASSERT(normal == (Vec3{0.0, 0.0, signOf(seated.referenceFaceLooks)}));
    RC_ASSERT(poseOf(seated).point({0, 0, 0}) == (Vec3{0.0, 0.0, seated.stationMm}));
}

// θ + a with the reference face to the compressor, θ - a to the turbine.
RC_GTEST_PROP(PoseProperty, FeatureOffsetIsCountedLookingAtTheReferenceFace, ()) {
    const Seated seated = drawnSeated();
    const double offset = drawnDegrees();
    const Clock moved = clockOf(poseOf(seated).point(featurePoint(offset, 9.5, 1.2)));
    RC_ASSERT(apart(featureClock(seated.index, seated.referenceFaceLooks, Degrees{offset}), moved).value <
              1e-9);
    const double sign = seated.referenceFaceLooks == Side::Compressor ? 1.0 : -1.0;
    RC_ASSERT(apart(moved.from(Side::Compressor), Degrees{storedOf(seated.index) + sign * offset}).value <
              1e-9);
}

TEST(Pose, FeatureOnTheRightOfTheIndexGoesToTheLeftWhenFlipped) {
    const Clock top = Clock::seenFrom(Side::Compressor, Degrees{0.0});
    EXPECT_NEAR(storedOf(featureClock(top, Side::Compressor, Degrees{30.0})), 30.0, 1e-12);
    EXPECT_NEAR(storedOf(featureClock(top, Side::Turbine, Degrees{30.0})), 330.0, 1e-12);
}

// Quaternion order x, y, z, w, and +90 about +X takes +Y to +Z: glTF 2.0 (GLTF-05), from memory and
// recomputed.
TEST(Pose, QuaternionConventionOfGltf) {
    const glm::dquat q = glm::angleAxis(std::numbers::pi / 2.0, glm::dvec3{1, 0, 0});
    EXPECT_NEAR(q.x, 0.707107, 1e-6);
    EXPECT_NEAR(q.y, 0.0, 1e-6);
    EXPECT_NEAR(q.z, 0.0, 1e-6);
    EXPECT_NEAR(q.w, 0.707107, 1e-6);
    EXPECT_LT(glm::length(q * glm::dvec3{0, 1, 0} - glm::dvec3{0, 0, 1}), 1e-6);
}

// Positive about +Z takes X to Y, so it runs against the clock of the compressor side: right-hand rule
// (GEO-06).
TEST(Pose, PositiveRotationAboutZIsCounterClockwiseFromTheCompressorSide) {
    const glm::dvec3 turnedX =
        glm::angleAxis(std::numbers::pi / 2.0, glm::dvec3{0, 0, 1}) * glm::dvec3{1, 0, 0};
    EXPECT_LT(glm::length(turnedX - glm::dvec3{0, 1, 0}), 1e-12);
    const Clock before = clockOf(Vec3{1, 0, 0});
    const Clock after = clockOf(Vec3{turnedX.x, turnedX.y, turnedX.z});
    EXPECT_NEAR(wrappedHalf(after.from(Side::Compressor) - before.from(Side::Compressor)).value, -90.0, 1e-9);
    EXPECT_NEAR(wrappedHalf(after.from(Side::Turbine) - before.from(Side::Turbine)).value, 90.0, 1e-9);
}

} // namespace gapwise
