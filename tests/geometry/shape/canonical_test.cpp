#include "geometry/shape/canonical.h"

#include "tests/support/shapes.h"

#include <gtest/gtest.h>
#include <set>

namespace gapwise::test {

namespace {

const Shape kPlain = ringShape(10.0, 20.0, {0.0, 5.0});

Shape threaded(double diameter, double pitch, bool leftHand) {
    Shape shape = kPlain;
    shape.threads = {{diameter, pitch, {0.0, 5.0}, leftHand}};
    return shape;
}

} // namespace

TEST(CanonicalText, NumbersReadBackExactly) {
    EXPECT_NE(canonicalText(kPlain), canonicalText(ringShape(10.0, 20.0, {0.0, 5.000000000000001})));
    EXPECT_EQ(canonicalText(kPlain), canonicalText(ringShape(10.0, 20.0, {0.0, 5.0})));
}

TEST(CanonicalText, NamesLeaveNoTrace) {
    Shape shape = with(kPlain, cutting(Slot{1.0, {5.0, 20.0}, {0.0, 5.0}}));
    const std::string unnamed = canonicalText(shape);
    shape.features[0].id = "F08";
    shape.features[0].name = "spill slot";
    EXPECT_EQ(canonicalText(shape), unnamed);
}

// Frame files of before stay as they are: nothing beside its radius is no trace.
TEST(CanonicalText, NothingAsideLeavesNoTrace) {
    const std::string text = canonicalText(with(kPlain, cutting(Slot{1.0, {5.0, 20.0}, {0.0, 5.0}})));
    EXPECT_NE(text.find("slot 1 5:20 0:5 0 1"), std::string::npos) << text;
}

TEST(CanonicalText, EverySizeLeavesATrace) {
    const QuarterEllipse curve{20.0, -10.0, 5.0, -5.0};
    Shape wheel = kPlain;
    wheel.blades = {{5, 1.0, Degrees{0.0}, Degrees{30.0}, 0.0, 5.0, 1.0, curve, curve, std::nullopt}};
    Shape inlet = wheel;
    inlet.blades[0].inletEdgeZ = Span{0.0, 1.0};
    Shape curved = kPlain;
    curved.rings[0].bore = curve;
    Shape hexagon = kPlain;
    hexagon.rings[0].bore = AcrossFlats{10.0};
    const std::vector<Shape> shapes{
        kPlain,
        wheel,
        inlet,
        curved,
        hexagon,
        with(kPlain, EdgeBreak{EdgeBreak::Kind::Round, 20.0, 5.0, 0.5, Degrees{45.0}}),
        with(kPlain, EdgeBreak{EdgeBreak::Kind::Chamfer, 20.0, 5.0, 0.5, Degrees{45.0}}),
        with(kPlain, EdgeBreak{EdgeBreak::Kind::Chamfer, 20.0, 5.0, 0.5, Degrees{30.0}}),
        with(kPlain, cutting(RadialHole{1.0, {0.0, 20.0}, 2.0})),
        with(kPlain, adding(RadialHole{1.0, {0.0, 20.0}, 2.0})),
        with(kPlain, cutting(RadialHole{1.0, {0.0, 20.0}, 2.0}, 10.0)),
        with(kPlain, cutting(RadialHole{1.0, {0.0, 20.0}, 2.0}, 0.0, 3)),
        with(kPlain, cutting(RadialHole{1.0, {0.0, 20.0}, 2.0, 0.5})),
        with(kPlain, cutting(AxialHole{1.0, 7.0, {0.0, 5.0}})),
        with(kPlain, cutting(InclinedHole{1.0, 7.0, 0.0, 8.0, 5.0})),
        with(kPlain, cutting(Slot{1.0, {0.0, 20.0}, {0.0, 5.0}})),
        with(kPlain, cutting(Slot{1.0, {0.0, 20.0}, {0.0, 5.0}, 0.5})),
        with(kPlain, cutting(HexHole{1.0, 7.0, {0.0, 5.0}})),
        with(kPlain, cutting(Vane{1.0, {6.0, 9.0}, Degrees{20.0}, {0.0, 5.0}})),
        with(kPlain, cutting(Vane{1.0, {6.0, 9.0}, Degrees{-20.0}, {0.0, 5.0}})),
        threaded(20.0, 1.0, false),
        threaded(20.0, 1.0, true),
        threaded(20.0, 1.5, false),
        with(kPlain, cutting(Sector{Degrees{10.0}, {0.0, 20.0}, {0.0, 5.0}})),
        with(kPlain, cutting(Groove{{12.0, 12.0}, {14.0, 14.0}, {0.0, 1.0}})),
        with(kPlain, cutting(SteppedJoint{0.1, 1.0})),
        with(kPlain, cutting(ArrowMark{{6.0, 9.0}, 1.0, 0.2, 5.0})),
        with(kPlain, cutting(LetterMark{"T", 1.0, 8.0, 0.2, 5.0, true})),
        with(kPlain, cutting(LetterMark{"T", 1.0, 8.0, 0.2, 5.0, false})),
    };
    std::set<std::string> texts;
    for (const Shape& shape : shapes)
        texts.insert(canonicalText(shape));
    EXPECT_EQ(texts.size(), shapes.size());
}

} // namespace gapwise::test
