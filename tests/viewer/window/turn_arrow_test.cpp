#include "viewer/window/turn_arrow.h"

#include "tests/viewer/lathe.h"

#include <gtest/gtest.h>

#include <cmath>
#include <memory>

namespace gapwise {

namespace {

constexpr double kNutRadius = 6.0;
constexpr double kNutEnd = 58.0;

/// A left-hand nut on the shaft, faced from the compressor side, and nothing else.
struct Nut {
    Nut() {
        const PartId part{"NUT"};
        job.frame.types = {{.id = PartTypeId{"nut"}}};
        Fastener fastener{.id = FastenerId{"T3"}, .tightensClockwise = false};
        fastener.plan = TorquePlan{.torqueNm = 14.0, .groups = {{"", 1}}, .runDown = RunDown{}};
        job.frame.fasteners = {fastener};
        job.frame.parts = {{.id = part, .type = PartTypeId{"nut"}, .fastener = fastener.id}};
        job.frame.seats = {{.id = seatOf(part), .types = {PartTypeId{"nut"}}}};
        job.state.build.seatings = {{.part = part, .seat = seatOf(part)}};
        job.fastenerInHand = fastener.id;
        auto mesh = std::make_shared<DrawnMesh>();
        mesh->body =
            lathe::turned({{.boreRadius = 0.0, .outerRadius = kNutRadius, .zFrom = 0.0, .zTo = 8.0}});
        scene.items = {
            {.part = part, .seat = seatOf(part), .mesh = mesh, .pose = {.shift = {0.0, 0.0, 50.0}}}};
    }

    /// With the eye on the axis at that end.
    std::optional<TurnArrow> seenFrom(Side side) const {
        const SceneCamera camera{.camera = Camera{{0.0, 0.0, signOf(side) * 500.0}, {}, {0.0, 1.0, 0.0}},
                                 .projection = Projection::Parallel};
        return turnArrowOf(job, {.scene = scene, .camera = camera});
    }
    void tickedTimes(int times) {
        for (int i = 0; i < times; ++i)
            job.state.tightened.push_back(
                {.fastener = FastenerId{"T3"}, .stage = static_cast<std::size_t>(i), .screw = 1});
    }

    Job job{};
    Scene scene{};
};

/// Clockwise from the compressor side, from the first to the second point of an arc.
double stepOf(const TurnArrow& arrow) {
    return wrappedHalf(clockOf(arrow.arc[1]).from(Side::Compressor) -
                       clockOf(arrow.arc[0]).from(Side::Compressor))
        .value;
}

} // namespace

TEST(TurnArrow, GoesRoundTheNutAtTheEndOneFacesInTheSenseOfTightening) {
    const auto arrow = Nut{}.seenFrom(Side::Compressor);
    ASSERT_TRUE(arrow);
    EXPECT_LT(stepOf(*arrow), 0.0) << "a left-hand nut tightens counter-clockwise";
    for (const Vec3& point : arrow->arc) {
        EXPECT_NEAR(point.z, kNutEnd, 1e-9);
        EXPECT_GT(std::hypot(point.x, point.y), kNutRadius);
    }
    EXPECT_EQ(arrow->head[1], arrow->arc.back()) << "its head is at its tip";
}

TEST(TurnArrow, SlackeningTurnsItRound) {
    Nut nut;
    nut.tickedTimes(1);
    EXPECT_GT(stepOf(nut.seenFrom(Side::Compressor).value()), 0.0);
}

TEST(TurnArrow, IsNotDrawnWhereTheNutIsNotSeen) {
    EXPECT_FALSE(Nut{}.seenFrom(Side::Turbine)) << "it looks the other way";
    Nut gone;
    gone.scene.items.clear();
    EXPECT_FALSE(gone.seenFrom(Side::Compressor));
}

TEST(TurnArrow, ThereIsNoneWithoutAWrenchAndWhenAllIsDone) {
    Nut laidDown;
    laidDown.job.fastenerInHand.reset();
    EXPECT_FALSE(laidDown.seenFrom(Side::Compressor));
    EXPECT_TRUE(turnArrowKey(laidDown.job).empty());
    Nut done;
    done.tickedTimes(4);
    EXPECT_FALSE(done.seenFrom(Side::Compressor));
    EXPECT_NE(turnArrowKey(Nut{}.job), turnArrowKey(done.job));
}

} // namespace gapwise
