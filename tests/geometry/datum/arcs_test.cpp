#include "geometry/datum/arcs.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <bitset>
#include <cmath>

namespace gapwise {

namespace {

/// A set of directions, sampled every half degree: slow, and right by looking.
constexpr int kSamples = 720;
using Sampled = std::bitset<kSamples>;

constexpr double degreesOf(int sample) {
    return sample / 2.0;
}

/// Steps between two samples round the circle, the shorter way.
int stepsApart(int a, int b) {
    const int ahead = ((a - b) % kSamples + kSamples) % kSamples;
    return std::min(ahead, kSamples - ahead);
}

/// A set beside its sampled twin. Middles and widths stand on the samples, so that ends are met exactly.
struct Pair {
    Arcs arcs{};
    Sampled samples{};
};

Pair around(int middle, int tolerance) {
    Pair pair{Arcs::around(Degrees{degreesOf(middle)}, Degrees{degreesOf(tolerance)}), {}};
    for (int s = 0; s < kSamples; ++s)
        pair.samples[static_cast<std::size_t>(s)] = stepsApart(s, middle) <= tolerance;
    return pair;
}

Pair awayFrom(int middle, int clearance) {
    Pair pair{Arcs::awayFrom(Degrees{degreesOf(middle)}, Degrees{degreesOf(clearance)}), {}};
    for (int s = 0; s < kSamples; ++s)
        pair.samples[static_cast<std::size_t>(s)] = stepsApart(s, middle) >= clearance;
    return pair;
}

Sampled sampled(const Arcs& arcs) {
    Sampled samples;
    for (int s = 0; s < kSamples; ++s)
        samples[static_cast<std::size_t>(s)] = arcs.contains(Degrees{degreesOf(s)});
    return samples;
}

Pair drawnArc() {
    // Small numbers and multiples of 10 degrees too, so that arcs touch often and cross 12.
    const int middle = *rc::gen::oneOf(rc::gen::inRange(-kSamples, 2 * kSamples),
                                       rc::gen::map(rc::gen::inRange(0, 36), [](int t) { return 20 * t; }));
    const int size = *rc::gen::oneOf(rc::gen::inRange(0, 380),
                                     rc::gen::map(rc::gen::inRange(0, 19), [](int t) { return 20 * t; }));
    return *rc::gen::arbitrary<bool>() ? around(middle, size) : awayFrom(middle, size);
}

/// Up to four arcs, joined by either operation in turn.
Pair drawnSet() {
    Pair set = drawnArc();
    const int more = *rc::gen::inRange(0, 4);
    for (int i = 0; i < more; ++i) {
        const Pair next = drawnArc();
        const bool unite = *rc::gen::arbitrary<bool>();
        set.arcs = unite ? set.arcs.unitedWith(next.arcs) : set.arcs.intersectedWith(next.arcs);
        set.samples = unite ? set.samples | next.samples : set.samples & next.samples;
    }
    return set;
}

} // namespace

RC_GTEST_PROP(ArcsProperty, EverySetIsItsSampledTwin, ()) {
    const Pair set = drawnSet();
    RC_ASSERT(sampled(set.arcs) == set.samples);
    RC_ASSERT(set.arcs.empty() == set.samples.none());
}

RC_GTEST_PROP(ArcsProperty, ArcsAreDisjointAndInRange, ()) {
    const Pair set = drawnSet();
    const auto& arcs = set.arcs.arcs();
    for (const Arc& arc : arcs) {
        RC_ASSERT(arc.start.value >= 0.0 && arc.start.value < 360.0);
        RC_ASSERT(arc.sweep.value >= 0.0 && arc.sweep.value <= 360.0 + 1e-9);
        RC_ASSERT(arc.contains(arc.middle()));
        const bool met = std::any_of(arcs.begin(), arcs.end(), [&](const Arc& other) {
            return &other != &arc && (other.contains(arc.start) || other.contains(arc.start + arc.sweep));
        });
        RC_ASSERT(!met);
    }
}

RC_GTEST_PROP(ArcsProperty, TurnIntoIsTheShortestWayIn, ()) {
    const Pair set = drawnSet();
    const int from = *rc::gen::inRange(0, kSamples);
    const std::optional<Degrees> turn = set.arcs.turnInto(Degrees{degreesOf(from)});
    RC_ASSERT(turn.has_value() == set.samples.any());
    if (!turn)
        return;
    int nearest = kSamples;
    for (int s = 0; s < kSamples; ++s)
        if (set.samples[static_cast<std::size_t>(s)])
            nearest = std::min(nearest, stepsApart(s, from));
    RC_ASSERT(std::abs(std::abs(turn->value) - degreesOf(nearest)) < 1e-9);
    RC_ASSERT(set.arcs.contains(Degrees{degreesOf(from)} + *turn));
}

RC_GTEST_PROP(ArcsProperty, AwayFromIsAllThatAroundIsNot, ()) {
    const int middle = *rc::gen::inRange(0, kSamples);
    const int size = *rc::gen::inRange(1, 360);
    const Arcs near = Arcs::around(Degrees{degreesOf(middle)}, Degrees{degreesOf(size)});
    const Arcs far = Arcs::awayFrom(Degrees{degreesOf(middle)}, Degrees{degreesOf(size)});
    RC_ASSERT(sampled(near.unitedWith(far)).all());
    RC_ASSERT(sampled(near.intersectedWith(far)).count() == 2U); // Both ends belong to both.
}

TEST(Arcs, WindowAcrossTwelve) {
    const Arcs window = Arcs::around(Degrees{350.0}, Degrees{20.0});
    EXPECT_TRUE(window.contains(Degrees{330.0}));
    EXPECT_TRUE(window.contains(Degrees{0.0}));
    EXPECT_TRUE(window.contains(Degrees{10.0}));
    EXPECT_FALSE(window.contains(Degrees{10.1}));
    EXPECT_FALSE(window.contains(Degrees{180.0}));
    ASSERT_EQ(window.arcs().size(), 1U);
    EXPECT_EQ(window.arcs().front().middle().value, 350.0);
}

// The middle of 350 and 10 is 0, not 180: circular statistics (GEO-07).
TEST(Arcs, MiddleGoesTheShortWayRound) {
    const Arcs window = Arcs::around(Degrees{0.0}, Degrees{10.0});
    ASSERT_EQ(window.arcs().size(), 1U);
    EXPECT_NEAR(apart(window.arcs().front().middle(), Degrees{0.0}).value, 0.0, 1e-9);
}

TEST(Arcs, TouchingWindowsShareOneDirection) {
    const Arcs both =
        Arcs::around(Degrees{0.0}, Degrees{30.0}).intersectedWith(Arcs::around(Degrees{60.0}, Degrees{30.0}));
    ASSERT_EQ(both.arcs().size(), 1U);
    EXPECT_EQ(both.arcs().front().start.value, 30.0);
    EXPECT_EQ(both.arcs().front().sweep.value, 0.0);
}

TEST(Arcs, TouchingAtTwelveIsFoundFromBothNumbers) {
    const Arcs before = Arcs::around(Degrees{340.0}, Degrees{20.0});
    const Arcs after = Arcs::around(Degrees{20.0}, Degrees{20.0});
    EXPECT_TRUE(before.intersectedWith(after).contains(Degrees{0.0}));
    EXPECT_TRUE(before.intersectedWith(after).contains(Degrees{359.9999999999}));
    EXPECT_EQ(before.unitedWith(after).arcs().size(), 1U);
}

TEST(Arcs, ExclusiveWindowsLeaveNothing) {
    const Arcs none =
        Arcs::around(Degrees{0.0}, Degrees{30.0}).intersectedWith(Arcs::around(Degrees{90.0}, Degrees{30.0}));
    EXPECT_TRUE(none.empty());
    EXPECT_FALSE(none.turnInto(Degrees{0.0}));
}

TEST(Arcs, TwoSlotsCutAWindowInTwo) {
    const Arcs allowed = Arcs::around(Degrees{0.0}, Degrees{60.0})
                             .intersectedWith(Arcs::awayFrom(Degrees{0.0}, Degrees{10.0}));
    EXPECT_EQ(allowed.arcs().size(), 2U);
    EXPECT_FALSE(allowed.contains(Degrees{0.0}));
    EXPECT_TRUE(allowed.contains(Degrees{10.0}));
    EXPECT_TRUE(allowed.contains(Degrees{350.0}));
}

TEST(Arcs, HalfTurnToleranceAllowsEverything) {
    EXPECT_TRUE(sampled(Arcs::around(Degrees{77.0}, Degrees{180.0})).all());
    EXPECT_TRUE(sampled(Arcs::awayFrom(Degrees{77.0}, Degrees{0.0})).all());
    EXPECT_TRUE(sampled(Arcs::awayFrom(Degrees{77.0}, Degrees{-5.0})).all());
    EXPECT_TRUE(Arcs::awayFrom(Degrees{77.0}, Degrees{180.5}).empty());
    EXPECT_TRUE(Arcs::awayFrom(Degrees{77.0}, Degrees{180.0}).contains(Degrees{257.0}));
}

TEST(Arcs, NoTurnIsNeededInside) {
    const Arcs window = Arcs::around(Degrees{90.0}, Degrees{20.0});
    EXPECT_EQ(window.turnInto(Degrees{110.0})->value, 0.0);
    EXPECT_NEAR(window.turnInto(Degrees{115.0})->value, -5.0, 1e-12);
    EXPECT_NEAR(window.turnInto(Degrees{40.0})->value, 30.0, 1e-12);
}

} // namespace gapwise
