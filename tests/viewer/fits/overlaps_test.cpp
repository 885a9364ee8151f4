#include "geometry/solids/common_volume.h"
#include "tests/support/print_error.h"
#include "tests/viewer/fits/assembly.h"

#include <algorithm>
#include <cmath>
#include <gtest/gtest.h>
#include <map>

namespace gapwise::test {

namespace {

/// What two parts may share by the rounding of their numbers, in mm³.
constexpr double kNothingMm3 = 0.01;

/// The solids of all part types, each built once.
std::map<PartTypeId, Solid> solidsOf(const Frame& frame) {
    std::map<PartTypeId, Solid> solids;
    for (const PartType& type : frame.types) {
        Result<Solid> made = solidOf(type.shape, type.id.text);
        EXPECT_TRUE(made) << (made ? "" : describe(made.errors()[0]));
        if (made)
            solids.emplace(type.id, std::move(made).value());
    }
    return solids;
}

bool isDeclared(const Frame& frame, const Placed& a, const Placed& b) {
    return std::ranges::any_of(frame.sharedMaterial, [&](const SharedMaterial& pair) {
        return (pair.first == a.part && pair.second == b.part) ||
               (pair.first == b.part && pair.second == a.part);
    });
}

/// Where both boxes are; nothing inside out where they do not meet.
Bounds commonBox(const Bounds& a, const Bounds& b) {
    return {{std::max(a.low.x, b.low.x), std::max(a.low.y, b.low.y), std::max(a.low.z, b.low.z)},
            {std::min(a.high.x, b.high.x), std::min(a.high.y, b.high.y), std::min(a.high.z, b.high.z)}};
}

bool isEmpty(const Bounds& box) {
    const Vec3 size = box.high - box.low;
    return std::min({size.x, size.y, size.z}) <= 1e-5;
}

/// Points of a box that lie in both parts by the numbers alone, of `points` evenly spread ones.
int pointsInBoth(const Placed& a, const Placed& b, const Bounds& box, int points) {
    const Vec3 size = box.high - box.low;
    int both = 0;
    for (int i = 0; i < points; ++i) {
        const Vec3 p =
            box.low + Vec3{size.x * std::fmod(i * 0.7548776662466927, 1.0),
                           size.y * std::fmod(i * 0.5698402909980532, 1.0), size.z * (i + 0.5) / points};
        both += a.holds(p) && b.holds(p) ? 1 : 0;
    }
    return both;
}

class Fits : public testing::TestWithParam<const char*> {};

} // namespace

// Common volumes by the solid library; points counted from the numbers keep a silent nought from passing.
TEST_P(Fits, NoTwoPartsShareMaterialButThoseDeclared) {
    const Assembly& assembly = assemblyOf(GetParam());
    const std::map<PartTypeId, Solid> solids = solidsOf(assembly.frame);
    ASSERT_EQ(solids.size(), assembly.frame.types.size());
    for (std::size_t i = 0; i < assembly.parts.size(); ++i) {
        for (std::size_t j = i + 1; j < assembly.parts.size(); ++j) {
            const Placed& a = assembly.parts[i];
            const Placed& b = assembly.parts[j];
            const Solid& first = solids.at(a.type->id);
            const Solid& second = solids.at(b.type->id);
            const Bounds box = commonBox(boundsOf(first, a.pose), boundsOf(second, b.pose));
            const bool declared = isDeclared(assembly.frame, a, b);
            const std::string pair = a.part.text + " and " + b.part.text;
            EXPECT_FALSE(declared && isEmpty(box)) << pair << " are apart, but declared to share material";
            if (isEmpty(box))
                continue;
            const Result<double> shared = commonVolumeMm3(first, a.pose, second, b.pose);
            ASSERT_TRUE(shared) << pair << ": " << describe(shared.errors()[0]);
            if (declared) {
                EXPECT_GT(shared.value(), kNothingMm3) << pair << " are declared to share material";
                continue;
            }
            EXPECT_LE(shared.value(), kNothingMm3) << pair;
            EXPECT_LE(pointsInBoth(a, b, box, 4000), 2) << pair;
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Bundled, Fits, testing::Values("alder-72", "alder-72-pinned", "birch-150"),
                         [](const auto& frame) {
                             std::string name = frame.param;
                             std::ranges::replace(name, '-', '_');
                             return name;
                         });

} // namespace gapwise::test
