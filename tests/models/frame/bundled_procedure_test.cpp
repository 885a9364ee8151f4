#include "models/frame/read_frame.h"

#include "tests/support/print_error.h"

#include <gmock/gmock.h>

#include <map>
#include <set>
#include <sstream>
#include <tuple>

namespace gapwise {

namespace {

using testing::ElementsAre;
using testing::IsEmpty;

// What must come before what: common practice, no source; which casing goes on when is the frame's matter.
// The last column: F full-floating only, P pinned only, A Alder-72 and its sister, B Birch-150, U only when
// the rotor was let down from above.
constexpr const char* kEdges = R"(D1 D4 MEA -
D2 D4 ACC -
D3 D5 ACC -
D4 S00 REC -
D5 S00 REC -
D6 S00 REC -
S00 S01 REC -
S00 S03 REC -
S01 S02 CLN -
S02 S03 MEA -
S03 S04 MEA -
S03 S05 MEA -
S02 S06 CLN -
S03 S06 MEA -
S06 S07 PHY F
S07 S08 PHY F
S06 S08 PHY P
S08 S09 PHY -
S06 S11 PHY F
S11 S12 PHY F
S06 S12 PHY P
S12 S13 PHY -
S09 S14 ACC -
S13 S14 ACC -
S04 S15 MEA -
S14 S17 REC -
S09 S17 PHY -
S13 S17 ACC -
S15 S17 PHY -
S16 S17 PHY -
S03 S16 MEA -
S17 S17b SAF U
S17b S18 SAF U
S17 S18 MEA -
S18 S19 REC -
S17 S19 PHY -
S13 S19 ACC -
S05 S20 MEA -
S19 S20 PHY -
S19 S21 PHY -
S21 S22 PHY -
S22 S23 PHY -
S23 S26 ACC -
S24 S25 PHY -
S04 S24 MEA -
S25 S26 PHY -
S20 S26 PHY -
S05 S26 MEA -
S22 S26 PHY -
S26 S27 PHY -
S26 S28 PHY -
S27 S28 ACC -
S04 S28 MEA -
S28 S29 PHY -
S29 S30 MEA -
S30 S31 MEA -
S30 S32 MEA -
S31 S34 REC -
S32 S34 ACC -
S33 S34 SAF -
S31 S33 MEA -
S32 S35 ACC A
S33 S35 SAF A
S17 S35 PHY B
S35 S18 SAF B
S34 S36 PHY -
S35 S37 PHY -
S34 S38 PHY -
S31 S36 MEA -
S31 S37 MEA -
S31 S38 MEA -
S36 S39 MEA -
S37 S39 MEA -
S38 S39 MEA -
S39 S40 MEA -
S39 S41 MEA -
S40 S42 ACC -
S41 S42 ACC -
S42 S43 REC -
S31 S43 REC -
S32 S43 REC -
)";

using Edge = std::tuple<std::string, std::string, std::string, bool>;

std::set<Edge> expectedEdges(bool floating, bool birch) {
    std::set<Edge> edges;
    std::istringstream lines{kEdges};
    std::string from;
    std::string to;
    std::string reason;
    char mark = '-';
    while (lines >> from >> to >> reason >> mark) {
        const bool here = (mark != 'F' || floating) && (mark != 'P' || !floating) &&
                          (mark != 'A' || !birch) && (mark != 'B' || birch);
        if (here)
            edges.emplace(from, to, reason, mark == 'U');
    }
    return edges;
}

struct Bundled {
    const char* id;
    bool floating;
    bool birch;
};

class BundledProcedure : public ::testing::TestWithParam<Bundled> {
protected:
    void SetUp() override {
        Result<Frame> frame = readFrame(DataFolder{GAPWISE_TEST_SHARE}, GetParam().id, Validation::Full);
        ASSERT_TRUE(frame) << describe(frame.errors().front());
        frame_ = std::move(frame).value();
    }

    const Step& step(const char* id) const {
        const Step* found = frame_.step(StepId{id});
        EXPECT_NE(found, nullptr) << id;
        return *found;
    }

    /// The steps for which something holds.
    template <class Holds>
    std::set<std::string> stepsWhere(Holds holds) const {
        std::set<std::string> ids;
        for (const Step& each : frame_.steps)
            if (holds(each))
                ids.insert(each.id.text);
        return ids;
    }

    std::set<std::string> warnedOf(const char* caution) const {
        std::set<std::string> ids;
        for (const Caution& each : frame_.cautions)
            if (each.id == caution)
                for (const StepId& id : each.steps)
                    ids.insert(id.text);
        return ids;
    }

    Frame frame_{};
};

using Ids = std::set<std::string>;

} // namespace

INSTANTIATE_TEST_SUITE_P(Frames, BundledProcedure,
                         ::testing::Values(Bundled{"alder-72", true, false},
                                           Bundled{"alder-72-pinned", false, false},
                                           Bundled{"birch-150", false, true}),
                         [](const auto& frame) {
                             std::string name = frame.param.id;
                             std::erase(name, '-');
                             return name;
                         });

TEST_P(BundledProcedure, HasExactlyTheEdgesOfItsFamily) {
    std::set<Edge> edges;
    for (const Step& each : frame_.steps)
        for (const Precedence& before : each.after)
            edges.emplace(before.step.text, each.id.text, before.reason,
                          before.when == OnlyWhen::RotorLoweredIn);
    EXPECT_EQ(edges, expectedEdges(GetParam().floating, GetParam().birch));
}

TEST_P(BundledProcedure, EveryStepHasAWholeCard) {
    for (const Step& each : frame_.steps) {
        EXPECT_FALSE(each.acts.empty()) << each.id.text;
        EXPECT_FALSE(each.tools.empty()) << each.id.text;
        EXPECT_FALSE(each.witness.empty()) << each.id.text;
        EXPECT_FALSE(each.records.empty()) << each.id.text;
        for (const WitnessCheck& check : each.witness)
            EXPECT_FALSE(check.bad.empty()) << each.id.text << ": " << check.look;
    }
}

TEST_P(BundledProcedure, TheStripDownCardMayBeSkippedAndNothingElse) {
    EXPECT_EQ(stepsWhere([](const Step& each) { return each.maySkip; }),
              (Ids{"D1", "D2", "D3", "D4", "D5", "D6"}));
}

TEST_P(BundledProcedure, HoldPointsStandWhereSomethingIsShutIn) {
    EXPECT_EQ(stepsWhere([](const Step& each) { return each.holdPoint; }),
              (Ids{"S14", "S17b", "S18", "S30", "S31"}));
}

TEST_P(BundledProcedure, TheRotorIsHeldByAStrapTheNutOrAnEarlyCasing) {
    const Ids held = stepsWhere([](const Step& each) { return each.holdsRotor; });
    EXPECT_EQ(held, GetParam().birch ? (Ids{"S17b", "S29", "S35"}) : (Ids{"S17b", "S29"}));
    EXPECT_EQ(stepsWhere([](const Step& each) { return each.when == OnlyWhen::RotorLoweredIn; }),
              (Ids{"S17b"}));
    const std::vector<StepId> standsFor = step("S35").standsFor;
    if (GetParam().birch)
        EXPECT_THAT(standsFor, ElementsAre(StepId{"S17b"}));
    else
        EXPECT_THAT(standsFor, IsEmpty());
}

TEST_P(BundledProcedure, TheLastStepClosesTheRecord) {
    EXPECT_EQ(stepsWhere([](const Step& each) { return each.closesRecord; }), (Ids{"S43"}));
}

TEST_P(BundledProcedure, QuestionsStandAtTheirSteps) {
    EXPECT_THAT(step("S01").asks, ElementsAre(StepQuestion::Variant, StepQuestion::PickList,
                                              StepQuestion::Gauges, StepQuestion::CountIn));
    EXPECT_THAT(step("S06").asks, ElementsAre(StepQuestion::BlockHeight));
    EXPECT_THAT(step("S17b").asks, ElementsAre(StepQuestion::Retention));
    EXPECT_THAT(step("S29").asks, ElementsAre(StepQuestion::DragTorque));
    EXPECT_THAT(step("S30").asks, ElementsAre(StepQuestion::NutLine));
    EXPECT_THAT(step("S42").asks, ElementsAre(StepQuestion::CountOut));
    EXPECT_EQ(stepsWhere([](const Step& each) { return !each.asks.empty(); }),
              (Ids{"S01", "S06", "S17b", "S29", "S30", "S42"}));
}

// Common practice, no source: what is used up is new at every assembly.
TEST_P(BundledProcedure, WhatIsAlwaysRenewedIsAConsumableOfItsStep) {
    const auto uses = [&](const char* id, int quantity) {
        int found = 0;
        for (const Consumable& each : step(id).consumables)
            found += each.quantity;
        EXPECT_EQ(found, quantity) << id;
    };
    uses("S08", 1);
    uses("S09", 1);
    uses("S12", 1);
    uses("S13", 1);
    uses("S15", GetParam().birch ? 2 : 1);
    uses("S16", GetParam().birch ? 1 : 0);
    uses("S21", 1);
    uses("S22", GetParam().birch ? 4 : 3);
    uses("S24", GetParam().birch ? 2 : 1);
    uses("S26", 1);
    EXPECT_EQ(frame_.step(StepId{"S07"}) != nullptr, GetParam().floating);
}

TEST_P(BundledProcedure, EveryMeasurementButThoseByEyeNamesItsInstrument) {
    Ids without;
    for (const Measurement& each : frame_.measurements)
        if (each.instrument.empty())
            without.insert(each.id.text);
    EXPECT_EQ(without, (Ids{"M15"}));
}

// Which caution stands at which steps: the table of cautions, common practice, no source.
TEST_P(BundledProcedure, CautionsStandWhereTheHazardIs) {
    const Ids strip{"D1", "D2", "D3", "D4", "D5", "D6"};
    Ids seals = strip;
    seals.insert({"S02", "S03"});
    EXPECT_EQ(warnedOf("C-charred-seals"), seals);
    EXPECT_EQ(warnedOf("C-deposits"), strip);
    EXPECT_EQ(warnedOf("C-hot"), (Ids{"D1", "D2"}));
    EXPECT_EQ(warnedOf("C-air"), (Ids{"S02"}));
    EXPECT_EQ(warnedOf("C-crack-test"), (Ids{"S03", "S04"}));
    EXPECT_EQ(warnedOf("C-spring"),
              GetParam().floating ? (Ids{"S07", "S09", "S11", "S13"}) : (Ids{"S09", "S13"}));
    EXPECT_THAT(warnedOf("C-blades"), testing::IsSupersetOf({"S15", "S16", "S17", "S17b", "S18"}));
    for (const char* id :
         {"S17", "S17b", "S18", "S19", "S20", "S21", "S22", "S23", "S26", "S27", "S28", "S29"})
        EXPECT_THAT(warnedOf("C-loose-rotor"), testing::Contains(id));
    EXPECT_EQ(warnedOf("C-lifting").empty(), !GetParam().birch);
    EXPECT_EQ(warnedOf("C-warm-wheel"), (Ids{"S28"}));
    EXPECT_THAT(warnedOf("C-casing-blades"), testing::Contains("S35"));
    EXPECT_EQ(warnedOf("C-test-spin"), (Ids{"S40"}));
    EXPECT_EQ(warnedOf("C-pressure"), (Ids{"S41"}));
    EXPECT_THAT(warnedOf("C-blanks"), testing::IsSupersetOf({"S01", "S42"}));
    EXPECT_THAT(warnedOf("C-first-start"), testing::IsSupersetOf({"S40", "S43"}));
    EXPECT_THAT(warnedOf("C-always"), testing::Contains("S00"));
}

// ANSI Z535.4, 4.14: danger and warning tell of death or serious injury, caution of minor or moderate injury,
// notice of none.
TEST_P(BundledProcedure, SignalWordsFollowTheGreatestHazard) {
    const std::map<std::string, Signal> expected{{"C-charred-seals", Signal::Warning},
                                                 {"C-deposits", Signal::Warning},
                                                 {"C-air", Signal::Warning},
                                                 {"C-crack-test", Signal::Warning},
                                                 {"C-spring", Signal::Warning},
                                                 {"C-blades", Signal::Caution},
                                                 {"C-loose-rotor", Signal::Warning},
                                                 {"C-lifting", Signal::Warning},
                                                 {"C-warm-wheel", Signal::Warning},
                                                 {"C-casing-blades", Signal::Caution},
                                                 {"C-over-spread", Signal::Notice},
                                                 {"C-no-force", Signal::Notice},
                                                 {"C-bush-force", Signal::Notice},
                                                 {"C-skewed-thrust", Signal::Notice},
                                                 {"C-plate-turn", Signal::Notice},
                                                 {"C-hold-hub", Signal::Notice},
                                                 {"C-double-shim", Signal::Notice},
                                                 {"C-test-spin", Signal::Danger},
                                                 {"C-pressure", Signal::Warning},
                                                 {"C-blanks", Signal::Notice},
                                                 {"C-first-start", Signal::Warning},
                                                 {"C-always", Signal::Warning},
                                                 {"C-hot", Signal::Caution}};
    for (const Caution& each : frame_.cautions)
        EXPECT_EQ(each.signal, expected.at(each.id)) << each.id;
}

} // namespace gapwise
