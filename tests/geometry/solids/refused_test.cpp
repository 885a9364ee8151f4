#include "tests/geometry/solids/built.h"
#include "tests/support/shapes.h"

namespace gapwise::test {

namespace {

const Shape kBody = ringShape(20.0, 40.0, {0.0, 10.0});

EdgeBreak rounding(double diameter, double z, double radius) {
    return {EdgeBreak::Kind::Round, diameter, z, radius, Degrees{45.0}};
}

} // namespace

TEST(RefusedSolids, ImpossibleSizesAreToldBeforeAnythingIsBuilt) {
    const Errors errors = refused(ringShape(50.0, 40.0, {0.0, 10.0}));
    ASSERT_EQ(errors.size(), 1U);
    EXPECT_EQ(errors[0].where, "shape/rings/0/bore_mm");
}

TEST(RefusedSolids, RingsThatDoNotTouchAreTwoPieces) {
    Shape shape = kBody;
    shape.rings.push_back(ring(20.0, 40.0, {12.0, 15.0}));
    const Errors errors = refused(shape);
    ASSERT_EQ(errors.size(), 1U);
    EXPECT_EQ(errors[0].found, "a body of 2 pieces");
}

TEST(RefusedSolids, CutThatPartsTheBodyIsRefused) {
    EXPECT_EQ(refused(with(kBody, cutting(Groove{{10.0, 10.0}, {50.0, 50.0}, {4.0, 6.0}})))[0].found,
              "a body of 2 pieces");
}

TEST(RefusedSolids, AdditionThatTouchesNothingIsRefused) {
    EXPECT_EQ(refused(with(kBody, adding(Slot{4.0, {25.0, 30.0}, {0.0, 5.0}})))[0].found,
              "a body of 2 pieces");
}

TEST(RefusedSolids, CutThatMeetsNoMaterialIsNamed) {
    Shape shape = with(kBody, cutting(Slot{4.0, {9.0, 21.0}, {-1.0, 5.0}}));
    shape = with(shape, cutting(AxialHole{2.0, 15.0, {11.0, 12.0}}));
    const Errors errors = refused(shape);
    ASSERT_EQ(errors.size(), 1U);
    EXPECT_EQ(errors[0].where, "shape/features/1");
    EXPECT_EQ(errors[0].found, "a cut that meets no material");
}

TEST(RefusedSolids, OnlyOneOfACircleOfHolesNeedsMaterial) {
    const Shape open = with(kBody, cutting(Sector{Degrees{90.0}, {5.0, 25.0}, {-1.0, 11.0}}, 180.0));
    EXPECT_GT(volumeOf(with(open, cutting(AxialHole{2.0, 15.0, {-1.0, 11.0}}, 0.0, 4))), 0.0);
}

TEST(RefusedSolids, CutThatTakesEverythingIsRefused) {
    EXPECT_FALSE(refused(with(kBody, cutting(Groove{{10.0, 10.0}, {50.0, 50.0}, {-1.0, 11.0}}))).empty());
}

TEST(RefusedSolids, EdgeThatIsNotThereIsNamed) {
    const Errors errors = refused(with(with(kBody, rounding(40.0, 10.0, 1.0)), rounding(39.0, 10.0, 1.0)));
    ASSERT_EQ(errors.size(), 1U);
    EXPECT_EQ(errors[0].where, "shape/edges/1");
    EXPECT_EQ(errors[0].found, "no edge of Ø39 at z 10");
}

TEST(RefusedSolids, RoundingThatTheBodyHasNoRoomForIsNamed) {
    const Errors errors = refused(with(kBody, rounding(40.0, 10.0, 12.0)));
    ASSERT_EQ(errors.size(), 1U);
    EXPECT_EQ(errors[0].where, "shape/edges/0");
}

TEST(RefusedSolids, LetterThatTheFontLacksIsNamed) {
    const Errors errors = refused(with(kBody, cutting(LetterMark{"top", 4.0, 15.0, 0.2, 10.0, true})));
    ASSERT_EQ(errors.size(), 1U);
    EXPECT_EQ(errors[0].where, "shape/features/0/text");
    EXPECT_EQ(errors[0].found, "\"top\"");
}

} // namespace gapwise::test
