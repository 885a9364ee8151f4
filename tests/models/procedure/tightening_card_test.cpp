#include "models/procedure/tightening_card.h"

#include "tests/models/procedure/course.h"

#include <gmock/gmock.h>

#include <cmath>
#include <limits>

namespace gapwise {

namespace {

using enum ScrewStanding;
using ::testing::ElementsAre;
using ::testing::HasSubstr;

const Frame& small() {
    static const Frame frame = course::smallFrame();
    return frame;
}
const Fastener& screws() {
    return small().fasteners[0];
}
const Fastener& nut() {
    return small().fasteners[1];
}

JobState withTicks(const Fastener& fastener, int count) {
    JobState state;
    for (int i = 0; i < count; ++i)
        state.tightened.push_back(nextTightened(fastener, state).value());
    return state;
}

TurnFacts turnIn(const Attitude& attitude, StageKind stage = StageKind::Final) {
    return turnFactsOf(small(), nut(), facingOf(nut(), attitude, {}), stage);
}

/// An invented nut like the ones of the bundled frames; figures by hand from T/(K·d) and F/k/P·360°.
TorquePlan nutPlan() {
    TorquePlan plan{.thread = "M8x1-LH", .propertyClass = "10.9", .torqueNm = 14.0};
    plan.frictionThread = plan.frictionHead = 0.12;
    plan.headDiameterMm = 10.0;
    plan.runDown = RunDown{.seatNm = 16.0,
                           .snugNm = 5.0,
                           .dragMostNm = 1.0,
                           .leastAngle = Degrees{12.0},
                           .mostAngle = Degrees{28.0},
                           .torqueFactor = 0.16,
                           .stiffnessKnPerMm = 134.0,
                           .stemDiameterMm = 8.0};
    return plan;
}

} // namespace

// A left-hand nut tightens counter-clockwise to a person who faces it: common practice, no source.
TEST(TurnFacts, ALeftHandNutTightensCounterClockwiseToWhoeverFacesIt) {
    const TurnFacts turn = turnIn(uprightAttitude(Side::Compressor, Degrees{180.0}));
    EXPECT_EQ(turn.words, "to tighten: counter-clockwise as you face the nut (left-hand thread)");
    EXPECT_EQ(turn.asStanding, Sense::CounterClockwise);
    EXPECT_TRUE(turn.behind.empty());
}

TEST(TurnFacts, FromBehindItSaysThatThePictureTurnsTheOtherWay) {
    const TurnFacts turn = turnIn(uprightAttitude(Side::Turbine, Degrees{180.0}));
    EXPECT_EQ(turn.asFaced, Sense::CounterClockwise);
    EXPECT_EQ(turn.asStanding, Sense::Clockwise);
    EXPECT_THAT(turn.behind, HasSubstr("you look at its back"));
    EXPECT_THAT(turn.behind, HasSubstr("clockwise seen from the turbine side"));
}

TEST(TurnFacts, SlackeningTurnsTheOtherWay) {
    const TurnFacts turn = turnIn(uprightAttitude(Side::Compressor, Degrees{180.0}), StageKind::Slacken);
    EXPECT_EQ(turn.words, "to slacken: clockwise as you face the nut (left-hand thread)");
}

TEST(TurnFacts, TheDragOfTheWheelMustTightenTheNut) {
    Frame frame = course::smallFrame();
    const Attitude up = uprightAttitude(Side::Compressor, Degrees{180.0});
    const Fastener& left = frame.fasteners[1];
    const auto turn = [&] { return turnFactsOf(frame, left, facingOf(left, up, {})); };
    frame.rotationSeenFrom = Side::Compressor;
    frame.rotatesClockwise = true;
    EXPECT_TRUE(turn().fitsRotation.value());
    EXPECT_THAT(turn().rotation, HasSubstr("fits"));
    frame.rotationSeenFrom = Side::Turbine;
    EXPECT_FALSE(turn().fitsRotation.value()) << "clockwise from the turbine is the other way at the nose";
    EXPECT_THAT(turn().rotation, HasSubstr("does not fit"));
    EXPECT_FALSE(turnFactsOf(frame, frame.fasteners[0], facingOf(left, up, {})).fitsRotation);
}

TEST(ScrewStandings, TellWhatIsDoneAtThisStageAndWhatIsNext) {
    EXPECT_THAT(screwStandings(screws(), 0, {}), ElementsAre(Next, Open, Open, Open));
    EXPECT_THAT(screwStandings(screws(), 0, withTicks(screws(), 2)), ElementsAre(Done, Next, Done, Open))
        << "1-3-2-4";
    EXPECT_THAT(screwStandings(screws(), 0, withTicks(screws(), 4)), ElementsAre(Next, Open, Open, Open))
        << "a new stage";
    EXPECT_THAT(screwStandings(screws(), 0, withTicks(screws(), 12)), ElementsAre(Done, Done, Done, Done));
    EXPECT_TRUE(isGroupDone(screws(), 0, withTicks(screws(), 12)));
    EXPECT_FALSE(isGroupDone(screws(), 1, withTicks(screws(), 12)));
    EXPECT_EQ(stageNow(screws(), 0, withTicks(screws(), 5)).value(), 1U);
}

TEST(Ticking, OnlyTheNextScrewCanBeTicked) {
    const JobState state = withTicks(screws(), 1);
    const Result<Tightened> wrong = tickOf(screws(), state, 0, 2);
    ASSERT_FALSE(wrong);
    EXPECT_EQ(wrong.errors().front().found, "screw 2 of 4");
    EXPECT_EQ(wrong.errors().front().allowed, "screw 3 is next, at 50 %");
    const Result<Tightened> right = tickOf(screws(), state, 0, 3);
    ASSERT_TRUE(right);
    EXPECT_DOUBLE_EQ(right->torqueNm, 10.0);
    EXPECT_TRUE(right->clockwise);
    EXPECT_FALSE(tickOf(screws(), withTicks(screws(), 12), 0, 1));
}

TEST(Ticking, FlangesAreFreeOfEachOther) {
    const Result<Tightened> other = tickOf(screws(), withTicks(screws(), 1), 1, 1);
    ASSERT_TRUE(other);
    EXPECT_EQ(other->group, 1);
}

// The worked figures of M·L/(L + E·cos α): 24 N·m, L 300, E 45: 20.87 straight out, 21.70 at 45°, 24.00
// square.
TEST(WrenchFacts, AnAdapterIsCorrectedFor) {
    const auto setting = [](double angle) {
        return wrenchFactsOf(24.0, {300.0, 45.0, Degrees{angle}}, {})->settingNm;
    };
    EXPECT_NEAR(setting(0.0), 20.87, 0.005);
    EXPECT_NEAR(setting(45.0), 21.70, 0.005);
    EXPECT_NEAR(setting(90.0), 24.00, 0.005);
    const WrenchFacts facts = wrenchFactsOf(24.0, {300.0, 45.0, Degrees{0.0}}, {}).value();
    EXPECT_NEAR(facts.uncorrectedNm, 27.6, 0.005);
    EXPECT_THAT(wrenchLines(facts, {}, TorqueUnit::NewtonMetre)[1], HasSubstr("+15.0 %"));
}

TEST(WrenchFacts, ACoaxialExtensionNeedsNoCorrectionAndNoLength) {
    const WrenchFacts facts = wrenchFactsOf(24.0, {}, {}).value();
    EXPECT_DOUBLE_EQ(facts.settingNm, 24.0);
    EXPECT_THAT(wrenchLines(facts, {}, TorqueUnit::NewtonMetre)[1], HasSubstr("nothing to correct"));
}

TEST(WrenchFacts, BadGeometryAndRangesNameTheirFields) {
    const auto where = [](const Adapter& adapter, const WrenchRange& range) {
        const Result<WrenchFacts> facts = wrenchFactsOf(24.0, adapter, range);
        return facts ? std::string{} : facts.errors().front().where;
    };
    EXPECT_EQ(where({0.0, 45.0, Degrees{0.0}}, {}), "length");
    EXPECT_EQ(where({300.0, -1.0, Degrees{0.0}}, {}), "adapter");
    EXPECT_EQ(where({30.0, 45.0, Degrees{180.0}}, {}), "adapter") << "no lever is left";
    EXPECT_EQ(where({300.0, 45.0, Degrees{std::numeric_limits<double>::quiet_NaN()}}, {}), "angle");
    EXPECT_EQ(where({}, {.leastNm = 5.0}), "wrench-min");
    EXPECT_EQ(where({}, {.leastNm = 5.0, .mostNm = 20.0}), "setting");
    EXPECT_EQ(where({}, {.leastNm = 5.0, .mostNm = 25.0}), "");
}

TEST(AngleFacts, AreThoseOfTheSpringModel) {
    const AngleFacts facts = angleFactsOf(nutPlan()).value();
    EXPECT_NEAR(facts.springForceKn, 10.9, 0.05);
    EXPECT_NEAR(facts.expected.value, 18.9, 0.05);
    EXPECT_EQ(expectedAngleWords(facts), "expected 19° from snug to final, window 12° to 28°");
    EXPECT_FALSE(angleFactsOf(screws().plan.value())) << "screws are not run down";
}

TEST(PreloadFacts, SharesAddUpToTheTorque) {
    const PreloadFacts facts = preloadFactsOf(nutPlan()).value();
    EXPECT_NEAR(facts.shares.total(), 14.0, 1e-9);
    EXPECT_GT(facts.forceKn, 8.0);
    EXPECT_LT(facts.proofUse, 1.0);
    EXPECT_NEAR(facts.vdiTorqueNm, 14.0, 0.15) << "VDI 2230 rounds its constants";
    EXPECT_EQ(preloadLines(nutPlan(), TorqueUnit::NewtonMetre).size(), 6U);
    TorquePlan unreadable = nutPlan();
    unreadable.propertyClass = "7.7";
    EXPECT_FALSE(preloadFactsOf(unreadable));
}

// Frame, pitch and limits as of a small invented nut: 0.020 mm of spacer is 7.2°.
TEST(NutLineFacts, TakeOffWhatTheChangedStackExplains) {
    const NutLineShift shift = nutLineOf(nut(), Degrees{-6.0}, 0.020).value();
    EXPECT_NEAR(shift.expected.value, -7.2, 1e-9);
    EXPECT_NEAR(shift.corrected.value, 1.2, 1e-9);
    EXPECT_EQ(shift.outcome, NutLineOutcome::Agrees);
    EXPECT_EQ(nutLineOf(nut(), Degrees{30.0}, 0.010)->outcome, NutLineOutcome::Large);
    EXPECT_EQ(nutLineOf(nut(), Degrees{400.0}, 0.0).errors().front().where, "read");
    EXPECT_EQ(nutLineOf(nut(), Degrees{0.0}, std::nan("")).errors().front().where, "stack");
    EXPECT_FALSE(nutLineOf(screws(), Degrees{0.0}, 0.0));
}

} // namespace gapwise
