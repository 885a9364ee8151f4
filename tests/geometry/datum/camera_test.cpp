#include "geometry/datum/camera.h"

#include "geometry/datum/pose.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace gapwise {

namespace {

double inRadians(double degrees) {
    return degrees * std::numbers::pi / 180.0;
}

Clock stored(double degrees) {
    return Clock::seenFrom(Side::Compressor, Degrees{degrees});
}

/// A camera on the axis with the top at `top` in its picture. What it holds upright is the direction that
/// must appear at 12: θ = -φ from the compressor side, θ = φ from the turbine side.
Camera onAxis(Side side, double top, const Vec3& target = {}) {
    const double sign = side == Side::Compressor ? 1.0 : -1.0;
    const double upright = -sign * top;
    return Camera{target + Vec3{0.0, 0.0, sign * 300.0}, target,
                  Vec3{std::sin(inRadians(upright)), std::cos(inRadians(upright)), 0.0}};
}

/// A camera turned off the axis by `tilt`, in the direction `toward` around the axis; the top is held
/// upright.
Camera tilted(double tilt, double toward) {
    const double across = std::sin(inRadians(tilt));
    return Camera{Vec3{across * std::sin(inRadians(toward)), across * std::cos(inRadians(toward)),
                       std::cos(inRadians(tilt))} *
                      300.0,
                  Vec3{}, Vec3{0, 1, 0}};
}

/// Largest difference between what the picture shows and the clock, over the whole circle.
double worstReading(const Camera& camera, const View& readAs) {
    double worst = 0.0;
    for (int tenth = 0; tenth < 3600; ++tenth)
        worst = std::max(
            worst, apart(camera.seen(stored(tenth / 10.0)), seenIn(readAs, stored(tenth / 10.0))).value);
    return worst;
}

} // namespace

RC_GTEST_PROP(CameraProperty, OnTheAxisTheViewFormulaIsExact, ()) {
    const Side side = *rc::gen::element(Side::Compressor, Side::Turbine);
    const double top = *rc::gen::inRange(0, 3600) / 10.0;
    const double theta = *rc::gen::inRange(0, 3600) / 10.0;
    const Camera camera = onAxis(side, top);
    const std::optional<View> view = camera.view();
    RC_ASSERT(view.has_value());
    RC_ASSERT(view->side == side);
    RC_ASSERT(apart(view->top, Degrees{top}).value < 1e-9);
    RC_ASSERT(apart(camera.seen(stored(theta)), seenIn(View{side, Degrees{top}}, stored(theta))).value <
              1e-9);
    RC_ASSERT(camera.offAxis().value < 1e-9);
}

// Observer's right = f × u: cross product (GEO-01).
TEST(Camera, RightIsSightCrossUp) {
    EXPECT_NEAR(onAxis(Side::Compressor, 0.0).right().x, 1.0, 1e-12);
    EXPECT_NEAR(onAxis(Side::Turbine, 0.0).right().x, -1.0, 1e-12);
}

RC_GTEST_PROP(CameraProperty, AxesAreRightHandedAndSquare, ()) {
    const Camera camera{Vec3{*rc::gen::inRange(-90, 90) * 1.0, *rc::gen::inRange(-90, 90) * 1.0, 100.0},
                        Vec3{0, 0, *rc::gen::inRange(-50, 50) * 1.0}, Vec3{0, 1, 0}};
    RC_ASSERT(std::abs(dot(camera.right(), camera.up())) < 1e-12);
    RC_ASSERT(std::abs(dot(camera.right(), camera.forward())) < 1e-12);
    RC_ASSERT(std::abs(length(camera.up()) - 1.0) < 1e-12);
    const Vec3 back = cross(camera.right(), camera.up());
    RC_ASSERT(length(back + camera.forward()) < 1e-12); // Right × up looks at the observer: no mirror.
}

// θ_seen = atan2(P·R, P·U) for any free look (arithmetic).
RC_GTEST_PROP(CameraProperty, SeenIsTheProjectedDirection, ()) {
    const Camera camera = tilted(*rc::gen::inRange(0, 60), *rc::gen::inRange(0, 360));
    const double theta = *rc::gen::inRange(0, 3600) / 10.0;
    const Vec3 p{std::sin(inRadians(theta)), std::cos(inRadians(theta)), 0.0};
    const double expected =
        std::atan2(dot(p, camera.right()), dot(p, camera.up())) * 180.0 / std::numbers::pi;
    RC_ASSERT(apart(camera.seen(stored(theta)), Degrees{expected}).value < 1e-9);
}

/// Whether clocks run clockwise in a picture is a fact that no sign convention can argue with.
RC_GTEST_PROP(CameraProperty, SideIsTheOneFromWhichClocksRunThatWay, ()) {
    const double tilt = *rc::gen::inRange(0, 60);
    const double toward = *rc::gen::inRange(0, 360);
    const double flip = *rc::gen::element(1.0, -1.0);
    const Vec3 target{0.0, 0.0, *rc::gen::inRange(-400, 400) * 1.0};
    const Vec3 eye = tilted(tilt, toward).eye();
    const Camera camera{target + Vec3{eye.x, eye.y, flip * eye.z}, target, Vec3{0, 1, 0}};
    const std::optional<View> view = camera.view();
    RC_ASSERT(view.has_value());
    const double step = wrappedHalf(camera.seen(stored(91.0)) - camera.seen(stored(90.0))).value;
    RC_ASSERT((step > 0.0) == (view->side == Side::Compressor));
    RC_ASSERT(view->side == (flip > 0.0 ? Side::Compressor : Side::Turbine));
}

TEST(Camera, SideIsTheEyesSignAlongTheShaft) {
    EXPECT_EQ(tilted(40.0, 123.0).view()->side, Side::Compressor);
    const Camera fromTurbine{Vec3{20, 20, -300}, Vec3{}, Vec3{0, 1, 0}};
    EXPECT_EQ(fromTurbine.view()->side, Side::Turbine);
}

TEST(Camera, OffersNoClockBeyondSixtyDegrees) {
    for (int toward = 0; toward < 360; toward += 10) {
        EXPECT_TRUE(tilted(60.0, toward).view()) << toward; // The boundary holds.
        EXPECT_FALSE(tilted(60.001, toward).view()) << toward;
    }
    EXPECT_FALSE((Camera{Vec3{300, 0, 0}, Vec3{}, Vec3{0, 1, 0}}.view()));
    EXPECT_NEAR((Camera{Vec3{300, 0, 0}, Vec3{}, Vec3{0, 1, 0}}.offAxis().value), 90.0, 1e-9);
}

TEST(Camera, OffAxisIsTheAngleToTheShaft) {
    for (const double tilt : {0.0, 1e-5, 15.0, 16.0, 30.0, 50.0, 89.0})
        EXPECT_NEAR(tilted(tilt, 77.0).offAxis().value, tilt, 1e-9);
}

// Closed form atan((1 - cos t) / (2 √cos t)), recomputed: 1.0 belongs to 15 degrees, 16 gives 1.13.
TEST(ObliqueReading, ErrorAtTheNamedAngles) {
    EXPECT_NEAR(obliqueReadingError(Degrees{15.0}).value, 1.0, 0.05);
    EXPECT_NEAR(obliqueReadingError(Degrees{16.0}).value, 1.13, 0.005);
    EXPECT_NEAR(obliqueReadingError(Degrees{20.0}).value, 1.8, 0.05);
    EXPECT_NEAR(obliqueReadingError(Degrees{30.0}).value, 4.1, 0.05);
    EXPECT_NEAR(obliqueReadingError(Degrees{50.0}).value, 12.6, 0.05);
    EXPECT_EQ(obliqueReadingError(Degrees{0.0}).value, 0.0);
}

TEST(ObliqueReading, IsTheWorstReadingOfATiltAboutThePicturesAxes) {
    for (const double tilt : {5.0, 16.0, 30.0, 50.0, 60.0})
        for (const double toward : {0.0, 90.0, 180.0, 270.0}) {
            const Camera camera = tilted(tilt, toward);
            EXPECT_NEAR(worstReading(camera, *camera.view()), obliqueReadingError(Degrees{tilt}).value, 0.01)
                << tilt << " toward " << toward;
        }
}

TEST(ObliqueReading, IsAtMostDoubledWhenTheTopIsDrawnAskew) {
    double worst = 0.0;
    for (int toward = 0; toward < 360; toward += 5) {
        const Camera camera = tilted(30.0, toward);
        worst = std::max(worst, worstReading(camera, *camera.view()));
    }
    EXPECT_GT(worst, 1.9 * obliqueReadingError(Degrees{30.0}).value);
    EXPECT_LE(worst, 2.0 * obliqueReadingError(Degrees{30.0}).value + 1e-6);
}

} // namespace gapwise
