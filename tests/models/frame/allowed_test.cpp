#include "models/frame/allowed.h"

#include "models/check/check.h"
#include "tests/models/check/bench.h"

#include <gtest/gtest.h>

namespace gapwise {

namespace {

/// The small frame with another form for what crosses the groove of SR-C (bore 19, gap 3.5, margin 10).
Frame frameWith(const FeatureForm& form, double offset = 180.0, int count = 1) {
    Frame frame = bench::smallFrame();
    Feature& feature = frame.types.front().shape.features.front();
    feature.form = form;
    feature.offset = Degrees{offset};
    feature.count = count;
    return frame;
}

const Rule& clearRule(const Frame& frame) {
    return *frame.rule(RuleId{"SR-C.clear"});
}

std::optional<Degrees> neededIn(const Frame& frame) {
    return clearanceNeeded(frame, std::get<GapClearOfRule>(clearRule(frame).demand),
                           *frame.typeOf(PartId{"SR-C"}));
}

RuleState stateAt(const Frame& frame, double clock) {
    Build build;
    build.seatings = {bench::seatedAt("SR-C", clock)};
    return judge(frame, build, clearRule(frame)).state;
}

Slot slotOf(double width) {
    return Slot{.widthMm = width, .r = {9.0, 11.5}, .z = {-9.0, -5.0}};
}

} // namespace

// Exclusion half-angles asin(w/D) + asin(g/D) + margin: arithmetic of the demo frames' invented sizes.
TEST(Clearance, IsFeatureAndGapHalfAnglesAndMargin) {
    EXPECT_NEAR(neededIn(frameWith(slotOf(4.0)))->value, 32.8, 0.05);
    EXPECT_NEAR(neededIn(frameWith(slotOf(5.0)))->value, 35.9, 0.05);
}

// A wedge has the same angle at every radius, wherever its own measure starts.
TEST(Clearance, OfASectorIsHalfItsAngle) {
    const double gapAndMargin = neededIn(frameWith(slotOf(0.0)))->value;
    for (const double innerRadius : {5.0, 9.5})
        EXPECT_NEAR(
            neededIn(frameWith(Sector{.angle = Degrees{40.0}, .r = {innerRadius, 12.0}, .z = {-9.0, -5.0}}))
                ->value,
            20.0 + gapAndMargin, 1e-9);
}

TEST(Clearance, IsNotKnownForWhatIsWiderThanTheBore) {
    EXPECT_FALSE(neededIn(frameWith(slotOf(19.5))));
}

TEST(Clearance, HoldsFromEveryCopyOfAFeature) {
    const Frame frame = frameWith(slotOf(5.0), 30.0, 3); // At 30, 150 and 270.
    for (const double clock : {30.0, 150.0, 270.0, 115.0})
        EXPECT_EQ(stateAt(frame, clock), RuleState::Broken) << clock;
    for (const double clock : {90.0, 210.0, 330.0})
        EXPECT_EQ(stateAt(frame, clock), RuleState::Holds) << clock;
}

TEST(AllowedIndex, AgreesWithTheVerdictOnEveryDegree) {
    for (const Frame& frame : {frameWith(slotOf(5.0)), frameWith(slotOf(5.0), 30.0, 3)}) {
        const Arcs allowed = allowedBy(frame, clearRule(frame));
        int disagreed = 0;
        for (int degree = 0; degree < 360; ++degree)
            disagreed += allowed.contains(Degrees{static_cast<double>(degree)}) ==
                                 (stateAt(frame, degree) == RuleState::Holds)
                             ? 0
                             : 1;
        EXPECT_EQ(disagreed, 0);
    }
}

} // namespace gapwise
