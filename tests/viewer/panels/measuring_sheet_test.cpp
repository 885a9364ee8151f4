#include "tests/viewer/panels/sample_report.h"
#include "tests/viewer/panels/screen_checks.h"

#include <gtest/gtest.h>
#include <imgui.h>

namespace gapwise {

namespace {

using desk::Desk;
using Kind = MeasuresPage::Kind;

constexpr std::array<std::pair<Kind, const char*>, 6> kPages{{{Kind::Readings, "Readings"},
                                                              {Kind::Parts, "Parts"},
                                                              {Kind::Stack, "Stack"},
                                                              {Kind::Effects, "Effects"},
                                                              {Kind::Choose, "Choose"},
                                                              {Kind::Causes, "Causes"}}};

/// Alder, job 1 of the demo scenario up to a worn collar (all invented).
const std::vector<MeasuredValue> kMeasured{
    {QuantityId{"t_T"}, 4.996, 0.003}, {QuantityId{"h_A"}, 0.0, 0.003},   {QuantityId{"h_B"}, 0.0, 0.003},
    {QuantityId{"L_S"}, 5.069, 0.003}, {QuantityId{"a_A"}, 3.500, 0.003}, {QuantityId{"c"}, 0.158, 0.006},
    {QuantityId{"R_n"}, 0.54, 0.012},  {QuantityId{"R_t"}, 0.50, 0.012},  {QuantityId{"N_C"}, 34.915, 0.005},
    {QuantityId{"N_T"}, 35.07, 0.005}, {QuantityId{"d_C"}, 11.992, 0.003}};

/// How the piece lies was said, and who works.
void settle(Desk& desk) {
    desk.at.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{180.0}), true});
    desk.at.act(PersonCame{"R. Ohlin", Role::Technician});
}

void measure(Desk& desk) {
    Job& job = *desk.workplace.job;
    job.measured = sampleReport(job.frame, kMeasured);
    desk.frames(2);
}

void open(Desk& desk, Kind kind, std::optional<QuantityId> chain = {}) {
    grant(desk.workplace, ReadMeasures{MeasuresPage{kind, std::move(chain)}});
    desk.frames(2);
}

} // namespace

TEST(MeasuringSheet, OpensAndClosesByItsButton) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    measure(desk);
    open(desk, Kind::Readings);
    EXPECT_TRUE(desk.has("measures/Close"));
    desk.click("measures/Close");
    EXPECT_FALSE(desk.job().measures);
}

TEST(MeasuringSheet, TabsTurnThePages) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    measure(desk);
    open(desk, Kind::Readings);
    for (const auto& [kind, label] : kPages) {
        desk.click(std::string{"measures/"} + label);
        ASSERT_TRUE(desk.job().measures);
        EXPECT_EQ(desk.job().measures->kind, kind);
    }
}

TEST(MeasuringSheet, ARowOpensItsCard) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    measure(desk);
    open(desk, Kind::Readings);
    desk.click("measures/c");
    EXPECT_EQ(desk.job().measurementInHand, MeasurementId{"axial-clearance"});
}

TEST(MeasuringSheet, AValueOfTheChoiceOpensItsCard) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    measure(desk);
    open(desk, Kind::Choose);
    desk.click("measures/L_S");
    EXPECT_EQ(desk.job().measurementInHand, MeasurementId{"M09"});
}

TEST(MeasuringSheet, WhatWouldSettleItOpensItsCard) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    measure(desk);
    open(desk, Kind::Causes);
    desk.click("measures/h_A");
    EXPECT_EQ(desk.job().measurementInHand, MeasurementId{"M07"});
}

TEST(MeasuringSheet, AChainOfTheRowIsShown) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    measure(desk);
    open(desk, Kind::Stack);
    desk.click("measures/g_cs_C");
    ASSERT_TRUE(desk.job().measures);
    EXPECT_EQ(desk.job().measures->chain, QuantityId{"g_cs_C"});
    EXPECT_TRUE(desk.job().stack.trials.contains(QuantityId{"g_cs_C"})) << "it was drawn by trials";
}

TEST(MeasuringSheet, ADecisionIsOneActWithItsName) {
    Desk desk;
    desk.start("alder-72", Use::Bench);
    settle(desk);
    measure(desk);
    open(desk, Kind::Parts);
    desk.click("measures/Worn in limits");
    desk.click("measures/Reuse");
    desk.click("measures/Decide");
    EXPECT_EQ(desk.lastAct<PartDecided>(), nullptr) << "reuse of what is worn needs a reason";
    desk.panels.drafts.measuring.reason = "bright track, no step felt";
    desk.frames(2);
    desk.click("measures/Decide");
    const PartDecided* decided = desk.lastAct<PartDecided>();
    ASSERT_NE(decided, nullptr);
    EXPECT_EQ(decided->decision.condition, PartCondition::WornInLimits);
    EXPECT_EQ(decided->decision.fate, PartFate::Reuse);
    EXPECT_EQ(decided->decision.by, "R. Ohlin");
    EXPECT_EQ(decided->decision.reason, "bright track, no step felt");
}

TEST(MeasuringSheet, WorkIsStatedAndTakenBack) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    measure(desk);
    open(desk, Kind::Parts);
    desk.click("measures/Deposits off, turbine");
    EXPECT_EQ(desk.build().work, std::vector<std::string>{"deposits_removed_turbine"});
    measure(desk);
    desk.click("measures/Deposits off, turbine");
    EXPECT_TRUE(desk.build().work.empty());
}

TEST(MeasuringSheet, TheLengthOfAChangeIsSetByHand) {
    Desk desk;
    desk.start("alder-72", Use::Show);
    measure(desk);
    open(desk, Kind::Effects);
    const int before = desk.panels.drafts.measuring.changeSteps;
    desk.click("measures/more");
    desk.click("measures/more");
    desk.click("measures/less");
    EXPECT_EQ(desk.panels.drafts.measuring.changeSteps, before + 1);
}

TEST(MeasuringSheet, EveryPageIsWholeAndForGlovesAtTheBench) {
    for (const char* frame : {"alder-72", "birch-150"})
        for (const Use use : {Use::Bench, Use::Show})
            for (const Desk::Size& size : kSizes) {
                Desk desk{size};
                desk.start(frame, use);
                settle(desk);
                measure(desk);
                for (const auto& [kind, label] : kPages) {
                    open(desk, kind);
                    const std::string name =
                        std::string{use == Use::Bench ? "bench-" : "show-"} + frame + "-" + label;
                    look(desk, size, name.c_str());
                    if (use == Use::Bench)
                        expectForGloves(desk);
                }
            }
}

TEST(MeasuringSheet, EveryChainIsDrawn) {
    Desk desk;
    desk.start("birch-150", Use::Practise);
    measure(desk);
    for (const Chain& chain : desk.job().frame.chains) {
        open(desk, Kind::Stack, chain.id);
        desk.picture("chain-" + chain.id.text);
    }
    EXPECT_EQ(desk.job().stack.trials.size(), desk.job().frame.chains.size());
}

} // namespace gapwise
