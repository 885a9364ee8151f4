#include "viewer/scene/part_alone.h"

#include "small_cartridge.h"
#include "viewer/scene/assembled_build.h"

#include <gtest/gtest.h>

namespace gapwise {

namespace {

Scene alone(const char* part, AloneAs as) {
    return partAlone(small::frame(), PartId{part}, small::meshes(), as);
}

} // namespace

TEST(PartAlone, ShowsThePartAndNothingElse) {
    const Scene scene = alone("SNAP", AloneAs::TheRulesWant);
    ASSERT_EQ(scene.items.size(), 1U);
    EXPECT_EQ(scene.items[0].part, PartId{"SNAP"});
    EXPECT_TRUE(scene.labels.empty());
    EXPECT_EQ(scene.items[0].pose.shift, Vec3{});
}

// SNAP's rules (invented): gap at 3:00 from the compressor side, face to the turbine. +X is 3:00 from there.
TEST(PartAlone, LiesAsTheRulesWant) {
    const Pose pose = alone("SNAP", AloneAs::TheRulesWant).items.at(0).pose;
    EXPECT_NEAR(pose.yAxis.x, 1.0, 1e-9) << "the index at 3:00";
    EXPECT_NEAR(pose.zAxis.z, -1.0, 1e-9) << "the reference face to the turbine";
}

TEST(PartAlone, AsItIsMadeSaysNothingOfARule) {
    const Pose pose = alone("SNAP", AloneAs::ItIsMade).items.at(0).pose;
    EXPECT_NEAR(pose.yAxis.y, 1.0, 1e-9);
    EXPECT_NEAR(pose.zAxis.z, 1.0, 1e-9);
}

TEST(PartAlone, IsEmptyForAPartThatIsNotThere) {
    EXPECT_TRUE(alone("NONE", AloneAs::TheRulesWant).items.empty());
    EXPECT_TRUE(partAlone(small::frame(), PartId{"SNAP"}, {}, AloneAs::ItIsMade).items.empty());
}

TEST(AloneIn, LeavesThePartWhereItSits) {
    const Scene whole = sceneOf(small::frame(), small::build(), small::meshes(), {.explode = 1.0});
    const Scene scene = aloneIn(whole, PartId{"BUSH"});
    ASSERT_EQ(scene.items.size(), 1U);
    EXPECT_EQ(scene.items[0].drawnPose().shift, whole.item(PartId{"BUSH"})->drawnPose().shift);
    ASSERT_EQ(scene.labels.size(), 1U);
    EXPECT_EQ(scene.labels[0].text, "BUSH");
}

} // namespace gapwise
