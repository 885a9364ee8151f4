#include "tests/geometry/solids/built.h"
#include "tests/support/shapes.h"

#include <algorithm>

namespace gapwise::test {

namespace {

/// How a stamped L lies in its face: from the middle of its box to the middle of its floor, in mm. An upright
/// L has its mass at the lower left.
Vec3 leanOfAnEl(double offset, bool looksToReference) {
    const double face = looksToReference ? 10.0 : 0.0;
    const double floor = looksToReference ? 9.5 : 0.5;
    const Shape plate = ringShape(0.0, 60.0, {0.0, 10.0});
    const SolidPart part =
        built(with(plate, cutting(LetterMark{"L", 6.0, 15.0, 0.5, face, looksToReference}, offset)));
    std::vector<Vec3> corners;
    Vec3 moment{};
    double area = 0.0;
    const TriangleMesh& mesh = part.mesh.faces;
    for (const auto& [a, b, c] : mesh.triangles) {
        const Vec3 p = mesh.positions[a];
        const Vec3 q = mesh.positions[b];
        const Vec3 r = mesh.positions[c];
        if (std::max({std::abs(p.z - floor), std::abs(q.z - floor), std::abs(r.z - floor)}) > 1e-6)
            continue;
        const double size = length(cross(q - p, r - p)) / 2.0;
        area += size;
        moment = moment + (p + q + r) * (size / 3.0);
        corners.insert(corners.end(), {p, q, r});
    }
    EXPECT_GT(area, 0.0);
    const Bounds box = boundsOf(corners);
    return moment * (1.0 / area) - (box.low + box.high) * 0.5;
}

} // namespace

// From +Z, with +Y up, right is +X.
TEST(Letters, StandUprightWhenTheReferenceFaceIsLookedAt) {
    const Vec3 lean = leanOfAnEl(0.0, true);
    EXPECT_LT(lean.x, -0.3);
    EXPECT_LT(lean.y, -0.3);
}

// From -Z, with +Y up, right is -X.
TEST(Letters, StandUprightWhenTheOtherFaceIsLookedAt) {
    const Vec3 lean = leanOfAnEl(0.0, false);
    EXPECT_GT(lean.x, 0.3);
    EXPECT_LT(lean.y, -0.3);
}

// At 90° clockwise the letter's up is +X, its right -Y.
TEST(Letters, TurnWithTheirOffset) {
    const Vec3 lean = leanOfAnEl(90.0, true);
    EXPECT_LT(lean.x, -0.3);
    EXPECT_GT(lean.y, 0.3);
}

TEST(Letters, EveryCharacterOfTheFontCanBeStamped) {
    const Shape plate = ringShape(0.0, 400.0, {0.0, 10.0});
    const double whole = volumeOf(plate);
    for (const char* const text : {"ABCDEFGHI", "JKLMNOPQR", "STUVWXYZ-", "01234 56789"})
        EXPECT_LT(volumeOf(with(plate, cutting(LetterMark{text, 20.0, 10.0, 1.0, 10.0, true}))),
                  whole - 500.0)
            << text;
}

} // namespace gapwise::test
