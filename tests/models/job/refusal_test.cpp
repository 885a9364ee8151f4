#include "models/job/log.h"

#include "models/procedure/tightening.h"
#include "tests/models/procedure/course.h"

#include <gmock/gmock.h>

#include <cmath>

namespace gapwise {

namespace {

using ::testing::HasSubstr;
using ::testing::IsEmpty;

class Refusal : public ::testing::Test {
protected:
    Errors of(const Event& event) const { return refusalOf(frame_, state_, event); }
    /// The places of all errors.
    std::string places(const Event& event) const {
        std::string places;
        for (const Error& error : of(event))
            places += (places.empty() ? "" : " ") + error.where;
        return places;
    }
    void ask(std::size_t step, StepQuestion question) { frame_.steps[step].asks = {question}; }
    void torquesWritten() { state_.build.torques = {TorqueNote{"F1", 20.0}, TorqueNote{"F2", 14.0}}; }

    Frame frame_ = course::smallFrame();
    JobState state_{};
    StepId a_{"A"};
};

Answered answer(const char* question, const char* text, std::optional<double> amount = {}) {
    return Answered{StepId{"A"}, question, text, amount, "I. Dorn"};
}

} // namespace

TEST_F(Refusal, ABlockedStepIsNotDoneAndSaysWhatItWaitsFor) {
    EXPECT_THAT(of(StepDone{a_}), IsEmpty());
    const Errors blocked = of(StepDone{StepId{"C"}});
    ASSERT_EQ(blocked.size(), 1U);
    EXPECT_EQ(blocked[0].found, "C waits for B (why C)");
    state_ = course::after({"A"});
    EXPECT_THAT(of(StepDone{a_})[0].found, HasSubstr("done already"));
    EXPECT_EQ(places(StepDone{StepId{"no such step"}}), "no such step");
}

TEST_F(Refusal, AStepWaitsForItsPartsFastenersAnswersAndCautions) {
    frame_.steps[7].asks = {StepQuestion::Retention};
    frame_.cautions = {Caution{.id = "falls", .words = "It falls.", .steps = {StepId{"R"}}}};
    EXPECT_EQ(places(StepDone{StepId{"R"}}), "R/ROTOR R/retention R/falls");
    state_.demands = Demands::Order;
    EXPECT_EQ(places(StepDone{StepId{"R"}}), "R/ROTOR") << "shown, only the parts are asked for";
    state_ = course::after({"A"});
    EXPECT_EQ(places(StepDone{StepId{"B"}}), "B/F1");
    torquesWritten();
    EXPECT_THAT(of(StepDone{StepId{"B"}}), IsEmpty());
}

TEST_F(Refusal, AHoldPointIsPassedByNameOnly) {
    state_ = course::after({"A"});
    EXPECT_THAT(of(StepDone{StepId{"E"}})[0].found, HasSubstr("hold point"));
    EXPECT_THAT(of(HoldPointPassed{.step = StepId{"E"}, .by = "I. Dorn", .witness = "R. Ohlin"}), IsEmpty());
    EXPECT_EQ(places(HoldPointPassed{.step = StepId{"E"}}), "by witness");
    EXPECT_EQ(places(HoldPointPassed{.step = StepId{"D"}, .by = "I. Dorn", .witness = "R. Ohlin"}), "D")
        << "it waits for C";
    state_.demands = Demands::Order;
    EXPECT_THAT(of(StepDone{StepId{"E"}}), IsEmpty()) << "shown, nobody signs";
}

TEST_F(Refusal, TheRecordDoesNotCloseOverAFindingThatNobodyAnswersFor) {
    state_ = course::after({"A", "B", "C", "D", "E", "F"});
    EXPECT_THAT(of(StepDone{StepId{"Z"}}), IsEmpty());
    state_.build.torques = {TorqueNote{"F1", 25.0}};
    EXPECT_EQ(places(StepDone{StepId{"Z"}}), "Z/torque-F1");
    state_.passed = {HoldPointPassed{.step = StepId{"D"}, .overrides = {Override{.finding = "torque-F1"}}}};
    EXPECT_THAT(of(StepDone{StepId{"Z"}}), IsEmpty());
}

TEST_F(Refusal, OnlySomeStepsMayBeLeftOutWithAReasonAndAName) {
    EXPECT_THAT(of(StepSkipped{StepId{"S"}, "no casing came", "R. Ohlin"}), IsEmpty());
    EXPECT_EQ(places(StepSkipped{StepId{"S"}, " ", ""}), "S/reason S/by");
    EXPECT_THAT(of(StepSkipped{a_, "no time", "R. Ohlin"})[0].found, HasSubstr("must be done"));
}

TEST_F(Refusal, OnlyWhatIsDoneOrLeftOutIsUndone) {
    EXPECT_EQ(places(StepUndone{a_}), "A");
    state_ = course::after({"A"});
    EXPECT_THAT(of(StepUndone{a_}), IsEmpty());
    state_.skipped = {StepSkipped{StepId{"S"}, "r", "n"}};
    EXPECT_THAT(of(StepUndone{StepId{"S"}}), IsEmpty());
}

TEST_F(Refusal, AScrewOutOfThePatternNamesTheOneThatIsNext) {
    const FastenerId f1{"F1"};
    EXPECT_THAT(of(Tightened{.fastener = f1, .screw = 1, .torqueNm = 10.0}), IsEmpty());
    EXPECT_THAT(of(Tightened{.fastener = f1, .group = 1, .screw = 1, .torqueNm = 10.0}), IsEmpty());
    const Errors wrong = of(Tightened{.fastener = f1, .screw = 2, .torqueNm = 10.0});
    ASSERT_EQ(wrong.size(), 1U);
    EXPECT_THAT(wrong[0].allowed, HasSubstr("50 %, screw 1"));
    EXPECT_EQ(of(Tightened{.fastener = f1, .stage = 1, .screw = 1, .torqueNm = 20.0}).size(), 1U);
    torquesWritten();
    EXPECT_THAT(of(Tightened{.fastener = f1, .screw = 1, .torqueNm = 10.0})[0].found,
                HasSubstr("last stage"));
}

TEST_F(Refusal, ATorqueIsANumberAndItsPlaceIsThere) {
    const FastenerId f1{"F1"};
    for (const double torque : {-0.1, std::nan(""), HUGE_VAL, 10'001.0})
        EXPECT_EQ(places(Tightened{.fastener = f1, .screw = 1, .torqueNm = torque}), "F1/torque_Nm")
            << torque;
    EXPECT_EQ(places(Tightened{.fastener = f1, .screw = 1, .torqueNm = 10.0, .angle = Degrees{-1.0}}),
              "F1/angle_deg");
    EXPECT_EQ(places(Tightened{.fastener = f1, .stage = 3, .group = 2, .torqueNm = 10.0}),
              "F1/stage F1/group");
    EXPECT_EQ(places(Tightened{.fastener = f1, .group = 1, .screw = 3}), "F1/screw");
    EXPECT_EQ(places(Tightened{.fastener = FastenerId{"F9"}}), "F9");
}

TEST_F(Refusal, NobodyTightensAScrewThatIsNotThere) {
    frame_.parts[1].fastener = FastenerId{"F1"};
    const Tightened first{.fastener = FastenerId{"F1"}, .screw = 1, .torqueNm = 10.0};
    EXPECT_THAT(of(first)[0].found, HasSubstr("not in its seat"));
    state_.build.seatings = {Seating{.part = PartId{"ROTOR"}, .seat = SeatId{"seat-ROTOR"}}};
    EXPECT_THAT(of(first), IsEmpty());
}

TEST_F(Refusal, OnlyWhatWasTightenedIsLoosened) {
    EXPECT_EQ(places(Loosened{FastenerId{"F1"}}), "F1");
    torquesWritten();
    EXPECT_THAT(of(Loosened{FastenerId{"F1"}}), IsEmpty());
    EXPECT_EQ(places(Loosened{FastenerId{"F9"}}), "F9");
}

TEST_F(Refusal, AnAnswerIsToAQuestionOfItsStepByANamedPerson) {
    EXPECT_EQ(places(answer("count_in", "12", 12.0)), "A/count_in");
    ask(0, StepQuestion::CountIn);
    EXPECT_THAT(of(answer("count_in", "12", 12.0)), IsEmpty());
    Answered nobody = answer("count_in", "12", 12.0);
    nobody.by = " ";
    EXPECT_EQ(places(nobody), "A/count_in/by");
    state_.person = PersonCame{"I. Dorn", Role::Technician};
    EXPECT_THAT(of(nobody), IsEmpty()) << "who works is known";
    EXPECT_EQ(places(answer("count_in", "", 12.0)), "A/count_in/answer");
}

TEST_F(Refusal, ACountIsAWholeNumberAndAMeasureIsNotNegative) {
    ask(0, StepQuestion::CountIn);
    for (const double amount : {-1.0, 1.5, std::nan(""), 10'001.0})
        EXPECT_EQ(places(answer("count_in", "x", amount)), "A/count_in/answer") << amount;
    EXPECT_EQ(places(answer("count_in", "twelve")), "A/count_in/answer");
    EXPECT_THAT(of(answer("count_in", "0", 0.0)), IsEmpty());
    ask(0, StepQuestion::BlockHeight);
    EXPECT_THAT(of(answer("block_height", "69", 69.5)), IsEmpty());
    for (const double amount : {-1.0, std::nan(""), HUGE_VAL})
        EXPECT_EQ(places(answer("block_height", "x", amount)), "A/block_height/answer") << amount;
    ask(0, StepQuestion::Variant);
    EXPECT_EQ(places(answer("variant", "pined")), "A/variant/answer");
    EXPECT_THAT(of(answer("variant", "pinned")), IsEmpty());
}

TEST_F(Refusal, ANutLineIsReadOfATightenedNutInNumbers) {
    const FastenerId nut{"F2"};
    EXPECT_EQ(places(NutLineRead{nut, Degrees{3.0}, 0.0, "I. Dorn"}), "F2");
    torquesWritten();
    EXPECT_THAT(of(NutLineRead{nut, Degrees{3.0}, 0.02, "I. Dorn"}), IsEmpty());
    EXPECT_EQ(places(NutLineRead{nut, Degrees{std::nan("")}, HUGE_VAL, ""}),
              "F2/read_deg F2/stack_new_minus_old_mm F2/by");
    EXPECT_EQ(places(NutLineRead{FastenerId{"F1"}, Degrees{3.0}, 0.0, "I. Dorn"}), "F1");
}

TEST_F(Refusal, ThePieceIsNotTurnedOverALooseRotor) {
    const Attitude turbineUp = uprightAttitude(Side::Turbine, Degrees{180.0});
    Attitude level = levelAttitude(Side::Compressor, Degrees{180.0});
    state_.build.attitude = turbineUp;
    EXPECT_THAT(of(AttitudeChanged{level}), IsEmpty());
    state_.build.seatings = {Seating{.part = PartId{"ROTOR"}, .seat = SeatId{"seat-ROTOR"}}};
    EXPECT_THAT(of(AttitudeChanged{level})[0].found, HasSubstr("Nothing holds ROTOR"));
    EXPECT_THAT(of(AttitudeChanged{uprightAttitude(Side::Turbine, Degrees{90.0}), true}), IsEmpty())
        << "where the drain points may be said";
    EXPECT_THAT(of(AttitudeChanged{level, false, true}), IsEmpty()) << "said that it was loose";
    state_.build.stepsDone = {StepId{"N"}};
    EXPECT_THAT(of(AttitudeChanged{level}), IsEmpty());
}

TEST_F(Refusal, WhatIsNothingIsNotTakenDown) {
    EXPECT_EQ(places(PersonCame{" "}), "name");
    EXPECT_EQ(places(NoteWritten{"\n"}), "note");
    EXPECT_EQ(places(CautionAcknowledged{"no such caution"}), "no such caution");
    EXPECT_EQ(places(ConditionStated{SeatId{"seat-ROTOR"}, "rusty", true}), "seat-ROTOR seat-ROTOR/state");
}

TEST_F(Refusal, AReadingIsRefusedAtEachFaultAndAnOddOneIsTaken) {
    frame_.measurements = {
        Measurement{.id = MeasurementId{"M1"},
                    .name = "collar",
                    .step = a_,
                    .methods = {Method{.id = "ball"}},
                    .quantities = {Quantity{.id = QuantityId{"a"}, .limits = {.method = "ball"}}}}};
    Reading reading{.measurement = "M1", .values = {3.5}, .unit = "mm", .method = "ball"};
    EXPECT_THAT(of(ReadingTaken{reading}), IsEmpty());
    reading.values = {350.0};
    EXPECT_THAT(of(ReadingTaken{reading}), IsEmpty()) << "odd, but it may be so";
    reading.quantity = "a";
    reading.values = {3.5, -1.0, std::nan("")};
    reading.unit = "inch";
    reading.method = "eye";
    EXPECT_EQ(places(ReadingTaken{reading}), "a/unit a/method a/values/1 a/values/2");
    EXPECT_EQ(places(ReadingTaken{Reading{.measurement = "M9"}}), "M9/measurement");
}

TEST_F(Refusal, ADecisionNeedsItsPartAndAName) {
    frame_.parts.push_back(Part{.id = PartId{"COLLAR"}});
    EXPECT_THAT(of(PartDecided{{.part = PartId{"COLLAR"}, .by = "R. Ohlin"}}), IsEmpty());
    EXPECT_EQ(places(PartDecided{{.part = PartId{"COLLAR"}, .by = " "}}), "COLLAR");
    EXPECT_EQ(places(PartDecided{{.part = PartId{"X"}, .by = "R. Ohlin"}}), "decision");
}

TEST_F(Refusal, WorkIsWhatAMeasurementShows) {
    EXPECT_EQ(places(WorkStated{"washed", true, ""}), "work");
    Quantity gap{.id = QuantityId{"g"}, .expectations = {Expectation{.work = "washed"}}};
    frame_.measurements = {Measurement{.id = MeasurementId{"M1"}, .quantities = {gap}}};
    EXPECT_THAT(of(WorkStated{"washed", true, ""}), IsEmpty());
}

} // namespace gapwise
