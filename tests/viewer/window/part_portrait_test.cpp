#include "viewer/window/part_portrait.h"

#include "small_cartridge.h"
#include "viewer/render/offscreen.h"
#include "viewer/scene/part_alone.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <optional>

namespace gapwise {

namespace {

Portrait wanted(Portrait::Look look, const char* part = "SNAP") {
    return {.look = look, .part = PartId{part}, .asTheRulesWant = true, .area = {10.0, 10.0, 120.0, 120.0}};
}

/// Portraits with a context of their own.
class Portraits : public testing::Test {
protected:
    void SetUp() override {
        auto context = OffscreenContext::make();
        ASSERT_TRUE(context) << describe(context.errors().front());
        context_.emplace(std::move(context).value());
        auto portraits = PartPortraits::make();
        ASSERT_TRUE(portraits) << describe(portraits.errors().front());
        portraits_.emplace(std::move(portraits).value());
    }

    unsigned drawn(const Portrait& portrait) {
        const auto drawn = portraits_->draw({frame_, meshes_}, portrait);
        EXPECT_TRUE(drawn);
        settled_ = drawn && drawn->settled;
        return drawn ? drawn->texture : 0U;
    }

    bool settled_ = false;
    Frame frame_ = small::frame();
    Meshes meshes_ = small::meshes();
    std::optional<OffscreenContext> context_{};
    std::optional<PartPortraits> portraits_{}; // Dies before the context.
};

} // namespace

TEST_F(Portraits, EachLookHasATextureOfItsOwn) {
    const unsigned one = drawn(wanted(Portrait::Look::FromCompressor));
    const unsigned other = drawn(wanted(Portrait::Look::FromTurbine));
    EXPECT_NE(one, 0U);
    EXPECT_NE(one, other);
}

TEST_F(Portraits, IsDrawnAgainOnlyWhenSomethingChanged) {
    Portrait portrait = wanted(Portrait::Look::Turned);
    drawn(portrait);
    drawn(portrait);
    EXPECT_EQ(portraits_->drawn(), 1);
    portrait.part = PartId{"BUSH"};
    drawn(portrait);
    EXPECT_EQ(portraits_->drawn(), 2) << "another part";
    EXPECT_TRUE(settled_) << "it is fine at once";
    portrait.area.x = 300.0;
    drawn(portrait);
    EXPECT_EQ(portraits_->drawn(), 2) << "only moved";
}

TEST_F(Portraits, IsCoarseWhileItIsTurnedAndFineOnceItStays) {
    Portrait portrait = wanted(Portrait::Look::Turned);
    drawn(portrait);
    portrait.azimuth = Degrees{20.0};
    drawn(portrait);
    EXPECT_FALSE(settled_);
    drawn(portrait);
    EXPECT_TRUE(settled_);
    EXPECT_EQ(portraits_->drawn(), 3);
    drawn(portrait);
    EXPECT_EQ(portraits_->drawn(), 3) << "then it stays";
    portrait.area.width = 140.0;
    drawn(portrait);
    EXPECT_EQ(portraits_->drawn(), 4) << "another size";
}

TEST_F(Portraits, APartThatIsNotThereIsAnError) {
    EXPECT_FALSE(portraits_->draw({frame_, meshes_}, wanted(Portrait::Look::Turned, "NONE")));
}

TEST(PortraitCamera, HoldsTheAxisInTheMiddleAndLeavesRoomForADial) {
    const Frame frame = small::frame();
    const Scene scene = partAlone(frame, PartId{"SNAP"}, small::meshes(), AloneAs::TheRulesWant);
    const PictureSize size{200, 160};
    double reach = 0.0;
    for (const Portrait::Look look : {Portrait::Look::FromCompressor, Portrait::Look::FromTurbine}) {
        const SceneCamera camera = portraitCamera(scene, wanted(look), size);
        const PicturePoint middle = camera.toPicture({}, size);
        EXPECT_NEAR(middle.x, 100.0, 0.01);
        EXPECT_NEAR(middle.y, 80.0, 0.01);
        for (const Vec3& p : scene.points()) {
            const PicturePoint at = camera.toPicture(p, size);
            reach = std::max(reach, std::hypot(at.x - 100.0, at.y - 80.0));
        }
        EXPECT_NEAR(reach, kPortraitReach * 80.0, 0.5);
    }
}

// The gap is at 3:00 from the compressor side (invented): right in that picture, left in the other.
TEST(PortraitCamera, TheTwoEndsSeeThreeAsThreeAndAsNine) {
    const Scene scene = partAlone(small::frame(), PartId{"SNAP"}, small::meshes(), AloneAs::TheRulesWant);
    const Vec3 gap = scene.items.at(0).pose.point({0.0, 10.0, 0.0});
    const PictureSize size{200, 200};
    EXPECT_GT(portraitCamera(scene, wanted(Portrait::Look::FromCompressor), size).toPicture(gap, size).x,
              100.0);
    EXPECT_LT(portraitCamera(scene, wanted(Portrait::Look::FromTurbine), size).toPicture(gap, size).x, 100.0);
}

} // namespace gapwise
