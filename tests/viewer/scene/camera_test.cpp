#include "viewer/scene/camera.h"

#include "viewer/scene/projector.h"

#include <gtest/gtest.h>

#include <glm/gtc/type_ptr.hpp>
#include <glm/mat4x4.hpp>
#include <glm/vec4.hpp>

namespace gapwise {

namespace {

constexpr PictureSize kSize{1600, 900};
constexpr PictureArea kArea{100.0, 120.0, 1200.0, 500.0};

std::vector<Vec3> boxCorners() {
    std::vector<Vec3> corners;
    for (const double x : {-30.0, 30.0})
        for (const double y : {-50.0, 45.0})
            for (const double z : {-80.0, 60.0})
                corners.push_back({x, y, z});
    return corners;
}

/// Where the matrices put a point, in pixels of `area`.
PicturePoint byMatrices(const SceneCamera& camera, const Vec3& p, const PictureArea& area) {
    const glm::mat4 view = glm::make_mat4(camera.viewMatrix().data());
    const glm::mat4 lens = glm::make_mat4(camera.projectionMatrix(kSize, area).data());
    const glm::vec4 clip =
        lens * view *
        glm::vec4{static_cast<float>(p.x), static_cast<float>(p.y), static_cast<float>(p.z), 1.0F};
    const double right = static_cast<double>(clip.x / clip.w);
    const double up = static_cast<double>(clip.y / clip.w);
    return {area.left + (right + 1.0) / 2.0 * area.width, area.top + (1.0 - up) / 2.0 * area.height};
}

} // namespace

class FittedCamera : public testing::TestWithParam<std::tuple<double, double, Projection>> {
protected:
    SceneCamera fitted() const {
        const auto [azimuth, elevation, projection] = GetParam();
        return fittedCamera(boxCorners(), {Degrees{azimuth}, Degrees{elevation}}, projection, {kSize, kArea});
    }
};

TEST_P(FittedCamera, HoldsEverythingInsideAndTouchesTwoSides) {
    const SceneCamera camera = fitted();
    double left = 1e9;
    double right = -1e9;
    double top = 1e9;
    double bottom = -1e9;
    for (const Vec3& corner : boxCorners()) {
        const PicturePoint seen = camera.toPicture(corner, kSize);
        left = std::min(left, seen.x);
        right = std::max(right, seen.x);
        top = std::min(top, seen.y);
        bottom = std::max(bottom, seen.y);
        EXPECT_GT(seen.depthMm, camera.nearMm);
        EXPECT_LT(seen.depthMm, camera.farMm);
    }
    EXPECT_NEAR((left + right) / 2.0, kArea.left + kArea.width / 2.0, 0.5);
    EXPECT_NEAR((top + bottom) / 2.0, kArea.top + kArea.height / 2.0, 0.5);
    EXPECT_NEAR(std::max((right - left) / kArea.width, (bottom - top) / kArea.height), 1.0, 1e-3);
}

TEST_P(FittedCamera, ToPictureAgreesWithTheMatrices) {
    const SceneCamera camera = fitted();
    const PictureArea whole{0.0, 0.0, 1600.0, 900.0};
    const PictureArea piece{640.0, 128.0, 300.0, 200.0};
    for (const Vec3& corner : boxCorners()) {
        const PicturePoint said = camera.toPicture(corner, kSize);
        for (const PictureArea& area : {whole, piece}) {
            const PicturePoint drawn = byMatrices(camera, corner, area);
            EXPECT_NEAR(said.x, drawn.x, 0.02); // Matrices are in float.
            EXPECT_NEAR(said.y, drawn.y, 0.02);
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Looks, FittedCamera,
                         testing::Combine(testing::Values(-150.0, -90.0, 0.0, 28.0, 90.0, 165.0),
                                          testing::Values(-90.0, 0.0, 16.0, 90.0),
                                          testing::Values(Projection::Parallel, Projection::Perspective)));

TEST(Look, AzimuthZeroHasTheTurbineOnTheLeftAndTheInletUp) {
    const SceneCamera camera = fittedCamera(boxCorners(), {}, Projection::Parallel, {kSize, kArea});
    const PicturePoint turbine = camera.toPicture({0.0, 0.0, -80.0}, kSize);
    const PicturePoint compressor = camera.toPicture({0.0, 0.0, 60.0}, kSize);
    const PicturePoint inlet = camera.toPicture({0.0, 45.0, 0.0}, kSize);
    EXPECT_LT(turbine.x, compressor.x);
    EXPECT_NEAR(turbine.y, compressor.y, 1e-9);
    EXPECT_LT(inlet.y, turbine.y);
}

TEST(Look, FromASideIsThatSidesViewWithTheInletOnTop) {
    for (const Side side : {Side::Compressor, Side::Turbine}) {
        const SceneCamera camera =
            fittedCamera(boxCorners(), lookFrom(side), Projection::Parallel, {kSize, kArea});
        const auto view = camera.camera.view();
        ASSERT_TRUE(view);
        EXPECT_EQ(view->side, side);
        EXPECT_LE(apart(view->top, Degrees{0.0}), Degrees{1e-9});
    }
}

TEST(PictureArea, TouchingIsNotOverlapping) {
    const PictureArea a{0.0, 0.0, 10.0, 10.0};
    EXPECT_FALSE(a.overlaps({10.0, 0.0, 5.0, 5.0}));
    EXPECT_TRUE(a.overlaps({9.9, 9.9, 5.0, 5.0}));
    EXPECT_TRUE(a.contains({0.0, 0.0, 10.0, 10.0}));
    EXPECT_FALSE(a.contains({0.0, 0.0, 10.1, 10.0}));
}

TEST(Projector, PutsEveryPointWhereTheCameraDoes) {
    for (const Projection projection : {Projection::Parallel, Projection::Perspective}) {
        const SceneCamera camera =
            fittedCamera(boxCorners(), Look{Degrees{35.0}, Degrees{20.0}}, projection, {kSize, kArea});
        const Projector projector{camera, kSize};
        for (const Vec3& corner : boxCorners()) {
            const PicturePoint seen = camera.toPicture(corner, kSize);
            EXPECT_NEAR(projector.spotOf(corner).x, seen.x, 1e-9);
            EXPECT_NEAR(projector.spotOf(corner).y, seen.y, 1e-9);
        }
    }
}

} // namespace gapwise
