#include "models/job/log.h"

#include "models/procedure/hold_point.h"
#include "models/procedure/step_status.h"
#include "models/procedure/tightening.h"
#include "tests/models/procedure/course.h"

#include <gmock/gmock.h>

namespace gapwise {

namespace {

using course::text;
using ::testing::IsEmpty;
using ::testing::SizeIs;

StepDone done(const char* step) {
    return StepDone{StepId{step}, "I. Dorn"};
}

PartPlaced rotorIn() {
    return PartPlaced{.part = PartId{"ROTOR"}, .seat = SeatId{"seat-ROTOR"}};
}

class Fold : public ::testing::Test {
protected:
    JobState state() const { return stateOf(frame_, log_); }
    JobState after(std::initializer_list<Event> events) {
        log_.events.insert(log_.events.end(), events.begin(), events.end());
        return state();
    }
    JobState tightenAll(const char* fastener) {
        while (const auto next = nextTightened(*frame_.fastener(FastenerId{fastener}), state()))
            log_.events.emplace_back(*next);
        return state();
    }

    Frame frame_ = course::smallFrame();
    Log log_{};
};

} // namespace

TEST_F(Fold, UndoingAStepOpensWhatDependsOnItAndSaysByWhat) {
    const JobState now = after({done("A"), done("B"), done("C"),
                                HoldPointPassed{.step = StepId{"D"}, .by = "I. Dorn", .witness = "R. Ohlin"},
                                done("R"), StepUndone{StepId{"B"}, "cross thread", "I. Dorn"}});
    EXPECT_EQ(text(now.build.stepsDone), "A R");
    EXPECT_THAT(now.reopened, SizeIs(3));
    EXPECT_EQ(now.reopened.at(StepId{"D"}).text, "B");
    EXPECT_THAT(now.passed, IsEmpty());
    EXPECT_EQ(stepStatuses(StepGraph{frame_}, now)[1].reopenedBy->text, "B");
}

TEST_F(Fold, ALapsedHoldPointKeepsItsAnswersAndAReopenedStepLosesThem) {
    frame_.steps[3].asks = {StepQuestion::CountIn};
    frame_.steps[4].asks = {StepQuestion::CountOut};
    const JobState now =
        after({done("A"), HoldPointPassed{.step = StepId{"E"}, .by = "I. Dorn", .loneWorker = true},
               Answered{StepId{"D"}, "count_in", "3", 3.0, "I. Dorn"},
               Answered{StepId{"E"}, "count_out", "3", 3.0, "I. Dorn"}, done("B"), done("C"), done("D"),
               StepUndone{StepId{"A"}, "", "I. Dorn"}});
    EXPECT_EQ(now.answer(StepId{"D"}, "count_in"), nullptr);
    ASSERT_NE(now.answer(StepId{"E"}, "count_out"), nullptr);
    EXPECT_EQ(now.reopened.at(StepId{"E"}).text, "A");
    EXPECT_THAT(now.build.stepsDone, IsEmpty());
}

TEST_F(Fold, ReadingsOfReopenedStepsAreVoidAndOthersStay) {
    frame_.measurements = {Measurement{.id = MeasurementId{"M1"}, .step = StepId{"C"}},
                           Measurement{.id = MeasurementId{"M2"}, .step = StepId{"E"}}};
    log_.start.stepsDone = {StepId{"A"}, StepId{"B"}, StepId{"C"}, StepId{"E"}};
    log_.start.readings = {Reading{.measurement = "M1"}, Reading{.measurement = "M2"}};
    const JobState now = after({StepUndone{StepId{"A"}, "", ""}});
    ASSERT_THAT(now.build.readings, SizeIs(1));
    EXPECT_EQ(now.build.readings[0].measurement, "M2") << "E has only lapsed";
}

TEST_F(Fold, ReadingsFromBeforeOutliveAReopenedStep) {
    frame_.measurements = {Measurement{.id = MeasurementId{"M1"}, .step = StepId{"C"}}};
    log_.start.stepsDone = {StepId{"A"}, StepId{"B"}, StepId{"C"}};
    const ReadingTaken before{Reading{.measurement = "M1", .occasion = Occasion::Before, .values = {0.095}}};
    const ReadingTaken since{Reading{.measurement = "M1", .values = {0.068}}};
    EXPECT_THAT(after({before, since}).build.readings, SizeIs(2));
    const JobState now = after({StepUndone{StepId{"A"}, "", ""}});
    ASSERT_THAT(now.build.readings, SizeIs(1));
    EXPECT_EQ(now.build.readings[0].occasion, Occasion::Before);
}

TEST_F(Fold, AReadingIsTakenBackAndBroughtBack) {
    const ReadingTaken first{Reading{.measurement = "M1", .values = {0.155}}};
    const ReadingTaken second{Reading{.measurement = "M1", .values = {0.070}}};
    EXPECT_THAT(after({first, second}).build.readings, SizeIs(2)) << "both stay; the last one counts";
    const JobState now = after({Undone{}});
    ASSERT_THAT(now.build.readings, SizeIs(1));
    EXPECT_EQ(now.build.readings[0].values, std::vector{0.155});
    EXPECT_THAT(after({Redone{}}).build.readings, SizeIs(2));
}

TEST_F(Fold, APartHasOneDecisionAndTheLastOneStands) {
    const PartDecided reuse{PartDecision{.part = PartId{"P"}, .fate = PartFate::Reuse, .by = "R. Ohlin"}};
    const PartDecided renew{PartDecision{.part = PartId{"P"}, .fate = PartFate::Renew, .by = "T. Hald"}};
    const JobState now = after({reuse, renew});
    ASSERT_THAT(now.build.decisions, SizeIs(1));
    EXPECT_EQ(now.build.decisions[0].by, "T. Hald");
    EXPECT_EQ(after({Undone{}}).build.decisions[0].by, "R. Ohlin");
}

TEST_F(Fold, WorkThatWasNotDoneAfterAllIsNoMoreThere) {
    EXPECT_EQ(after({WorkStated{"washed", true, ""}, WorkStated{"washed", true, ""}}).build.work,
              std::vector<std::string>{"washed"});
    EXPECT_THAT(after({WorkStated{"washed", false, ""}}).build.work, IsEmpty());
}

TEST_F(Fold, AStepThatIsDoneAgainTakesItsOldPlace) {
    after({done("A"), HoldPointPassed{.step = StepId{"E"}, .by = "I. Dorn", .loneWorker = true}, done("F"),
           StepUndone{StepId{"A"}, "", ""}});
    const JobState now =
        after({done("A"), HoldPointPassed{.step = StepId{"E"}, .by = "I. Dorn", .loneWorker = true}});
    EXPECT_EQ(text(now.build.stepsDone), "A E F") << "F stood all the while";
    EXPECT_THAT(now.reopened, IsEmpty());
    EXPECT_THAT(procedureFindings(frame_, now), IsEmpty());
}

TEST_F(Fold, TheLastScrewOfTheLastStageWritesTheTorqueDown) {
    JobState now = tightenAll("F1");
    ASSERT_THAT(now.build.torques, SizeIs(1));
    EXPECT_EQ(now.build.torques[0].fastener, "F1");
    EXPECT_DOUBLE_EQ(*now.build.torques[0].torqueNm, 20.0);
    EXPECT_EQ(now.build.torques[0].clockwise, true);
    now = after({Undone{}});
    EXPECT_THAT(now.build.torques, IsEmpty()) << "one screw is open again";
    now = after({Redone{}});
    EXPECT_THAT(now.build.torques, SizeIs(1));
}

TEST_F(Fold, TheNoteOfANutHoldsItsAngleAndAWrongHand) {
    const Fastener& nut = frame_.fasteners[1];
    for (int i = 0; i < 4; ++i) {
        Tightened next = *nextTightened(nut, state());
        if (i == 3) {
            next.angle = Degrees{19.0};
            next.clockwise = true;
        }
        log_.events.emplace_back(next);
    }
    const JobState now = state();
    ASSERT_THAT(now.build.torques, SizeIs(1));
    EXPECT_DOUBLE_EQ(now.build.torques[0].angle->value, 19.0);
    EXPECT_EQ(now.build.torques[0].clockwise, true);
    EXPECT_EQ(procedureFindings(frame_, now)[0].id, "hand-F2");
}

TEST_F(Fold, TouchingAFastenerOpensItsStepAndWhatFollows) {
    after({done("A")});
    tightenAll("F1");
    after({done("B"), done("C")});
    const JobState now = after({Loosened{FastenerId{"F1"}, "a washer was missing", "I. Dorn"}});
    EXPECT_EQ(text(now.build.stepsDone), "A");
    EXPECT_THAT(now.build.torques, IsEmpty());
    EXPECT_THAT(now.tightened, IsEmpty());
    EXPECT_EQ(now.reopened.at(StepId{"C"}).text, "B");
}

TEST_F(Fold, LooseningHalfwayOnlyBeginsTheTighteningAgain) {
    after({done("A"), *nextTightened(frame_.fasteners[0], {})});
    const JobState now = after({Loosened{FastenerId{"F1"}, "", ""}});
    EXPECT_THAT(now.tightened, IsEmpty());
    EXPECT_EQ(text(now.build.stepsDone), "A");
}

TEST_F(Fold, TakingAPlacedPartOffOpensItsStep) {
    const JobState now =
        after({rotorIn(), done("R"), done("W"), done("N"), PartTakenOff{SeatId{"seat-ROTOR"}}});
    EXPECT_EQ(text(now.build.stepsDone), "");
    EXPECT_EQ(now.reopened.at(StepId{"N"}).text, "R");
}

TEST_F(Fold, WhetherTheRotorWasLetDownFollowsFromHowThePieceLay) {
    EXPECT_FALSE(after({rotorIn()}).build.rotorLoweredIn) << "nobody said how it lies";
    log_.events = {AttitudeChanged{uprightAttitude(Side::Turbine, Degrees{180.0}), true}};
    EXPECT_EQ(after({rotorIn()}).build.rotorLoweredIn, true);
    EXPECT_FALSE(after({PartTakenOff{SeatId{"seat-ROTOR"}}}).build.rotorLoweredIn);
    after({AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{180.0}), true}});
    EXPECT_EQ(after({rotorIn()}).build.rotorLoweredIn, false);
}

TEST_F(Fold, APieceTurnedWithALooseRotorOpensTheRotorsStepUntilItIsPutInAgain) {
    const Attitude turbineUp = uprightAttitude(Side::Turbine, Degrees{180.0});
    const Attitude compressorUp = uprightAttitude(Side::Compressor, Degrees{180.0});
    JobState now = after(
        {AttitudeChanged{turbineUp, true}, rotorIn(), done("R"), AttitudeChanged{compressorUp, true, true}});
    EXPECT_TRUE(now.turnedUnretained);
    EXPECT_EQ(text(now.build.stepsDone), "");
    EXPECT_EQ(procedureFindings(frame_, now)[0].id, "loose-rotor");
    now = after({PartTakenOff{SeatId{"seat-ROTOR"}}});
    EXPECT_TRUE(now.turnedUnretained);
    now = after({rotorIn()});
    EXPECT_FALSE(now.turnedUnretained);
    EXPECT_THAT(procedureFindings(frame_, now), IsEmpty());
}

TEST_F(Fold, ARotorThatIsHeldMayBeTurnedWhateverIsSaid) {
    const Attitude compressorUp = uprightAttitude(Side::Compressor, Degrees{180.0});
    const JobState now = after({rotorIn(), done("R"), done("N"), AttitudeChanged{compressorUp, true, true}});
    EXPECT_FALSE(now.turnedUnretained);
    EXPECT_EQ(text(now.build.stepsDone), "R N");
}

TEST_F(Fold, WhatIsSaidStandsUntilItIsSaidAgain) {
    const JobState now = after(
        {PersonCame{"R. Ohlin", Role::Technician}, PersonCame{"I. Dorn", Role::Apprentice},
         Answered{StepId{"A"}, "count_in", "12", 12.0, "I. Dorn"},
         Answered{StepId{"A"}, "count_in", "13", 13.0, "I. Dorn"}, CautionAcknowledged{"edges", "I. Dorn"},
         StepSkipped{StepId{"S"}, "as found is lost", "R. Ohlin"},
         NutLineRead{FastenerId{"F2"}, Degrees{3.0}, 0.0, "I. Dorn"}});
    EXPECT_EQ(now.person->name, "I. Dorn");
    ASSERT_THAT(now.answers, SizeIs(1));
    EXPECT_EQ(now.answers[0].answer, "13");
    EXPECT_TRUE(now.acknowledged.contains("edges"));
    ASSERT_THAT(now.skipped, SizeIs(1));
    EXPECT_TRUE(now.nutLine);
    EXPECT_THAT(after({done("S")}).skipped, IsEmpty()) << "done after all";
}

TEST_F(Fold, AConditionIsStatedAndTakenBack) {
    after({rotorIn(), ConditionStated{SeatId{"seat-ROTOR"}, "new", true},
           ConditionStated{SeatId{"seat-ROTOR"}, "oiled", true}});
    EXPECT_EQ(state().build.seatings[0].conditions, (std::vector<std::string>{"new", "oiled"}));
    after({ConditionStated{SeatId{"seat-ROTOR"}, "dry", true}});
    EXPECT_EQ(state().build.seatings[0].conditions, (std::vector<std::string>{"new", "dry"}))
        << "what is dry is not oiled";
    after({ConditionStated{SeatId{"seat-ROTOR"}, "dry", false}});
    EXPECT_EQ(state().build.seatings[0].conditions, std::vector<std::string>{"new"});
}

TEST_F(Fold, ASheetMayBeginWithStepsInAnyOrder) {
    log_.start.stepsDone = {StepId{"C"}, StepId{"A"}};
    EXPECT_EQ(text(after({done("E")}).build.stepsDone), "C A E");
}

TEST_F(Fold, WhatTheLogAsksIsInTheState) {
    log_.rehearsal = true;
    log_.demands = Demands::Order;
    EXPECT_TRUE(state().rehearsal);
    EXPECT_EQ(state().demands, Demands::Order);
}

} // namespace gapwise
