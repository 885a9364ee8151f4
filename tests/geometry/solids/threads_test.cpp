#include "geometry/solids/threads.h"

#include "tests/geometry/solids/built.h"
#include "tests/support/mesh_checks.h"
#include "tests/support/shapes.h"

#include <algorithm>

namespace gapwise::test {

namespace {

Thread bolt(bool leftHand) {
    return {8.0, 1.0, {45.0, 57.0}, leftHand};
}

/// How the strands run that someone sees who looks along `look`, square to the upright axis: the summed way
/// to the right of the pieces on the near side, each walked upward.
double riseToTheRight(const EdgeLines& lines, const Vec3& look) {
    const Vec3 right = cross(look, {0.0, 0.0, 1.0});
    double sum = 0.0;
    for (const auto& [a, b] : lines.lines) {
        const Vec3& from = lines.positions[a];
        const Vec3& to = lines.positions[b];
        if (dot(from + to, look) < 0.0)
            sum += dot(to - from, right) * (to.z > from.z ? 1.0 : -1.0);
    }
    return sum;
}

} // namespace

// Held upright and seen from beside, the strands of a right-hand thread rise to the right, from wherever one
// looks; those of a left-hand thread to the left.
TEST(Threads, HandIsSeenFromBeside) {
    for (const Vec3& look : {Vec3{0.0, 1.0, 0.0}, Vec3{1.0, 0.0, 0.0}, Vec3{-0.6, -0.8, 0.0}}) {
        // Half of 11.5 turns lies on the near side, each 8 mm across.
        EXPECT_NEAR(riseToTheRight(threadLines(bolt(false)), look), 11.5 * 8.0, 9.0);
        EXPECT_NEAR(riseToTheRight(threadLines(bolt(true)), look), -11.5 * 8.0, 9.0);
    }
}

// Upside down it is the same thread.
TEST(Threads, HandStaysWhenThePartIsTurnedOver) {
    const Pose over{{1.0, 0.0, 0.0}, {0.0, -1.0, 0.0}, {0.0, 0.0, -1.0}};
    EXPECT_LT(riseToTheRight(moved(threadLines(bolt(true)), over), {0.0, 1.0, 0.0}), -80.0);
}

TEST(Threads, CrestClimbsOnePitchATurnWithinTheThread) {
    const EdgeLines lines = threadLines(bolt(false));
    const auto [low, high] = std::minmax_element(lines.positions.begin(), lines.positions.end(),
                                                 [](const Vec3& a, const Vec3& b) { return a.z < b.z; });
    EXPECT_NEAR(low->z, 45.25, 1e-9);
    EXPECT_NEAR(high->z, 56.75, 0.05);
    const auto turns = std::count_if(lines.lines.begin(), lines.lines.end(), [&](const auto& line) {
        return lines.positions[line[0]].x < 0.0 && lines.positions[line[1]].x >= 0.0;
    });
    EXPECT_NEAR(static_cast<double>(turns), 11.5, 1.0);
    EXPECT_LE(lines.lines.size(), 400U);
}

// A chord inside the cylinder would be hidden by it.
TEST(Threads, PiecesTouchTheCylinderFromOutside) {
    const EdgeLines lines = threadLines({16.0, 1.5, {90.0, 111.3}, true});
    for (const auto& [a, b] : lines.lines) {
        const Vec3 middle = (lines.positions[a] + lines.positions[b]) * 0.5;
        EXPECT_NEAR(std::hypot(middle.x, middle.y), 8.0, 1e-9);
        EXPECT_LT(std::hypot(lines.positions[a].x, lines.positions[a].y), 8.08);
    }
}

TEST(Threads, ShorterThanHalfAPitchLeavesNoCrest) {
    EXPECT_TRUE(threadLines({8.0, 1.0, {0.0, 0.4}, false}).lines.empty());
}

// The solid stays the plain cylinder.
TEST(Threads, AreDrawnButNotCut) {
    const Shape plain = ringShape(0.0, 8.0, {40.0, 57.0});
    Shape threaded = plain;
    threaded.threads = {bolt(true)};
    const SolidPart without = built(plain);
    const SolidPart part = built(threaded);
    EXPECT_DOUBLE_EQ(part.facts.volumeMm3, without.facts.volumeMm3);
    EXPECT_EQ(part.facts.triangles, without.facts.triangles);
    EXPECT_EQ(part.mesh.edges.lines.size(),
              without.mesh.edges.lines.size() + threadLines(bolt(true)).lines.size());
}

} // namespace gapwise::test
