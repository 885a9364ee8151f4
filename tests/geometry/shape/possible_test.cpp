#include "geometry/shape/possible.h"

#include "tests/support/shapes.h"

#include <gtest/gtest.h>
#include <limits>

namespace gapwise::test {

namespace {

/// The one error of a shape; an empty one when there is not exactly one.
Error onlyError(const Shape& shape) {
    const Errors errors = impossibleSizes(shape, "f.json#/shape");
    EXPECT_EQ(errors.size(), 1U);
    return errors.size() == 1 ? errors.front() : Error{};
}

const Shape kPlain = ringShape(10.0, 20.0, {0.0, 5.0});

/// Where the error of a feature points, below the shape.
std::string pointerOf(FeatureForm form) {
    const std::string where = onlyError(with(kPlain, cutting(std::move(form)))).where;
    const std::string prefix = "f.json#/shape/features/0/";
    EXPECT_TRUE(where.starts_with(prefix)) << where;
    return where.substr(std::min(where.size(), prefix.size()));
}

} // namespace

TEST(PossibleSizes, PlainRingHasNoFault) {
    EXPECT_TRUE(impossibleSizes(kPlain, "f").empty());
}

TEST(PossibleSizes, BoreLargerThanItsHousingIsNamed) {
    const Error error = onlyError(ringShape(30.0, 20.0, {0.0, 5.0}));
    EXPECT_EQ(error.where, "f.json#/shape/rings/0/bore_mm");
    EXPECT_EQ(error.found, "a bore of 30 mm in an outside of 20 mm");
    EXPECT_EQ(error.allowed, "a bore smaller than the outside");
}

TEST(PossibleSizes, OutlinesMayMeetAtAnEndButNotInside) {
    Shape cone = ringShape(0.0, 20.0, {0.0, 5.0});
    cone.rings[0].outside = Diameter{20.0, 0.0};
    EXPECT_TRUE(impossibleSizes(cone, "f").empty());
    cone.rings[0].bore = Diameter{0.0, 20.0};
    EXPECT_EQ(onlyError(cone).where, "f.json#/shape/rings/0/bore_mm");
}

TEST(PossibleSizes, HexagonInABoreCountsItsCorners) {
    Shape socket = ringShape(0.0, 20.0, {0.0, 5.0});
    socket.rings[0].bore = AcrossFlats{17.0}; // corners at 9.81 mm
    EXPECT_TRUE(impossibleSizes(socket, "f").empty());
    socket.rings[0].bore = AcrossFlats{18.0}; // corners at 10.39 mm
    EXPECT_EQ(onlyError(socket).where, "f.json#/shape/rings/0/bore_mm");
}

TEST(PossibleSizes, CurveMustReachOverItsRing) {
    Shape shape = ringShape(0.0, 20.0, {0.0, 5.0});
    shape.rings[0].outside = QuarterEllipse{5.0, 5.0, 0.0, 5.0};
    EXPECT_TRUE(impossibleSizes(shape, "f").empty());
    shape.rings[0].outside = QuarterEllipse{5.0, 5.0, 0.0, 4.0};
    EXPECT_EQ(onlyError(shape).where, "f.json#/shape/rings/0/outside_mm");
}

TEST(PossibleSizes, SpanThatFallsIsRefused) {
    EXPECT_EQ(onlyError(ringShape(10.0, 20.0, {5.0, 0.0})).where, "f.json#/shape/rings/0/z_mm");
}

TEST(PossibleSizes, NumbersThatAreNoneAreRefused) {
    const double none = std::numeric_limits<double>::quiet_NaN();
    EXPECT_FALSE(impossibleSizes(ringShape(10.0, none, {0.0, 5.0}), "f").empty());
    EXPECT_FALSE(impossibleSizes(ringShape(10.0, 20.0, {none, 5.0}), "f").empty());
    EXPECT_EQ(pointerOf(RadialHole{none, {0.0, 20.0}, 2.0}), "diameter_mm");
}

TEST(PossibleSizes, EveryKindOfFeatureIsLookedAt) {
    EXPECT_EQ(pointerOf(RadialHole{2.0, {20.0, 0.0}, 2.0}), "r_mm");
    EXPECT_EQ(pointerOf(AxialHole{-2.0, 7.0, {0.0, 5.0}}), "diameter_mm");
    EXPECT_EQ(pointerOf(InclinedHole{2.0, 7.0, 1.0, 7.0, 1.0}), "to_rz_mm");
    EXPECT_EQ(pointerOf(Slot{0.0, {5.0, 20.0}, {0.0, 5.0}}), "width_mm");
    EXPECT_EQ(pointerOf(Slot{2.0, {5.0, 20.0}, {0.0, 5.0}, 6000.0}), "aside_mm");
    EXPECT_EQ(pointerOf(RadialHole{2.0, {0.0, 20.0}, 2.0, -6000.0}), "aside_mm");
    EXPECT_EQ(pointerOf(HexHole{0.0, 7.0, {0.0, 5.0}}), "width_mm");
    EXPECT_EQ(pointerOf(HexHole{2.0, -7.0, {0.0, 5.0}}), "circle_radius_mm");
    EXPECT_EQ(pointerOf(HexHole{2.0, 7.0, {5.0, 0.0}}), "z_mm");
    EXPECT_EQ(pointerOf(Vane{0.0, {5.0, 9.0}, Degrees{20.0}, {0.0, 5.0}}), "thickness_mm");
    EXPECT_EQ(pointerOf(Vane{1.0, {9.0, 5.0}, Degrees{20.0}, {0.0, 5.0}}), "r_mm");
    EXPECT_EQ(pointerOf(Vane{1.0, {5.0, 9.0}, Degrees{90.0}, {0.0, 5.0}}), "lead_deg");
    EXPECT_EQ(pointerOf(Vane{1.0, {5.0, 9.0}, Degrees{20.0}, {5.0, 5.0}}), "z_mm");
    EXPECT_EQ(pointerOf(Sector{Degrees{360.0}, {5.0, 20.0}, {0.0, 5.0}}), "angle_deg");
    EXPECT_EQ(pointerOf(Groove{{12.0, 12.0}, {12.0, 14.0}, {0.0, 5.0}}), "bore_mm");
    EXPECT_EQ(pointerOf(SteppedJoint{1.0, 0.5}), "overlap_mm");
    EXPECT_EQ(pointerOf(ArrowMark{{5.0, 9.0}, 2.0, 0.0, 5.0}), "depth_mm");
    EXPECT_EQ(pointerOf(LetterMark{"Ä", 2.0, 8.0, 0.2, 5.0, true}), "text");
}

TEST(PossibleSizes, CountsAndOffsetsHaveBounds) {
    const AxialHole hole{1.0, 7.5, {-1.0, 6.0}};
    EXPECT_EQ(onlyError(with(kPlain, cutting(hole, 0.0, 0))).where, "f.json#/shape/features/0/count");
    EXPECT_EQ(onlyError(with(kPlain, cutting(hole, 400.0))).where, "f.json#/shape/features/0/offset_deg");
}

TEST(PossibleSizes, SteppedJointIsCutOnce) {
    EXPECT_EQ(onlyError(with(kPlain, adding(SteppedJoint{0.2, 1.0}))).where, "f.json#/shape/features/0/does");
    EXPECT_EQ(onlyError(with(kPlain, cutting(SteppedJoint{0.2, 1.0}, 0.0, 2))).where,
              "f.json#/shape/features/0/does");
}

TEST(PossibleSizes, EdgesAndBladesAreLookedAt) {
    const EdgeBreak flat{EdgeBreak::Kind::Chamfer, 20.0, 5.0, 0.5, Degrees{90.0}};
    EXPECT_EQ(onlyError(with(kPlain, flat)).where, "f.json#/shape/edges/0/angle_deg");
    Shape wheel = kPlain;
    const QuarterEllipse curve{20.0, -10.0, 5.0, -5.0};
    wheel.blades = {{5, 0.0, Degrees{0.0}, Degrees{30.0}, 0.0, 5.0, 1.0, curve, curve, std::nullopt}};
    EXPECT_EQ(onlyError(wheel).where, "f.json#/shape/blades/0/thickness_mm");
}

TEST(PossibleSizes, ThreadsAreLookedAt) {
    const auto pointer = [](const Thread& thread) {
        Shape shape = kPlain;
        shape.threads = {thread};
        return onlyError(shape).where;
    };
    EXPECT_EQ(pointer({0.0, 1.0, {0.0, 5.0}}), "f.json#/shape/threads/0/diameter_mm");
    EXPECT_EQ(pointer({8.0, -1.0, {0.0, 5.0}}), "f.json#/shape/threads/0/pitch_mm");
    EXPECT_EQ(pointer({8.0, 1.0, {5.0, 0.0}}), "f.json#/shape/threads/0/z_mm");
}

TEST(PossibleSizes, PartWithoutRingsBeginsWithAnAddition) {
    const RadialHole pin{2.0, {5.0, 9.0}, 0.0};
    EXPECT_TRUE(impossibleSizes(with(Shape{}, adding(pin)), "f").empty());
    EXPECT_EQ(onlyError(Shape{}).where, "f.json#/shape");
    EXPECT_EQ(onlyError(with(Shape{}, cutting(pin))).where, "f.json#/shape");
}

TEST(PossibleSizes, AllFaultsAreTold) {
    Shape shape = with(ringShape(30.0, 20.0, {0.0, 5.0}), cutting(Slot{-1.0, {9.0, 5.0}, {1.0, 0.0}}));
    EXPECT_EQ(impossibleSizes(shape, "f").size(), 4U);
}

} // namespace gapwise::test
