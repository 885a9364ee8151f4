#include "models/procedure/hand_over.h"

#include "models/procedure/tightening.h"
#include "tests/models/procedure/course.h"

#include <gmock/gmock.h>

namespace gapwise {

namespace {

using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::HasSubstr;

class Slip : public ::testing::Test {
protected:
    HandOver slip() const {
        const JobState state = stateOf(frame_, log_);
        return handOverOf(StepGraph{frame_}, log_, state, checkBuild(frame_, state.build, {}));
    }

    Frame frame_ = course::smallFrame();
    Log log_{};
};

} // namespace

TEST_F(Slip, NamesTheLastThreeActsTheLastFirst) {
    log_.events = {StepDone{StepId{"A"}, "I. Dorn"},
                   StepDone{StepId{"B"}, "I. Dorn"},
                   Undone{},
                   NoteWritten{"bore is dull", "I. Dorn"},
                   StepDone{StepId{"R"}, ""},
                   PersonCame{"R. Ohlin", Role::Technician},
                   StepSkipped{StepId{"S"}, "no casing", "R. Ohlin"}};
    EXPECT_THAT(slip().lastActs, ElementsAre("R. Ohlin: S act S: left out (no casing)", "R act R: done",
                                             "I. Dorn: bore is dull"));
    EXPECT_EQ(slip().person, "R. Ohlin (technician)");
    EXPECT_THAT(slip().possible, Contains("B act B"));
    EXPECT_EQ(slip().nextHoldPoint, "D act D");
}

TEST_F(Slip, WarnsOfALooseRotorAHalfTighteningAndWhatIsOpenAgain) {
    log_.events = {AttitudeChanged{uprightAttitude(Side::Turbine, Degrees{180.0}), false},
                   PartPlaced{.part = frame_.rotor, .seat = seatOf(frame_.rotor)}, StepDone{StepId{"A"}, ""},
                   *nextTightened(frame_.fasteners[0], {}), StepUndone{StepId{"A"}, "", ""}};
    EXPECT_THAT(slip().attitude, HasSubstr("NOT confirmed"));
    EXPECT_THAT(slip().beware, Contains(HasSubstr("Nothing holds ROTOR")));
    EXPECT_THAT(slip().beware,
                Contains(HasSubstr("F1 screws is half tightened: 1 of 18, next 50 %, screw 3")));
    EXPECT_THAT(slip().beware, Contains("A act A is open again"));
}

TEST_F(Slip, NamesWhatLiesTogetherOnTheBench) {
    const Frame alder = course::bundled("alder-72");
    Log log;
    const auto in = [](const char* part) {
        return PartPlaced{.part = PartId{part}, .seat = seatOf(PartId{part})};
    };
    log.events = {in("PR-T1"), in("SR-TI")};
    const JobState state = stateOf(alder, log);
    const HandOver slip = handOverOf(StepGraph{alder}, log, state, checkBuild(alder, state.build, {}));
    EXPECT_THAT(slip.apart, ElementsAre("ROTOR with PR-T1"));
}

TEST_F(Slip, AnActIsSaidWithItsSideAndItsPerson) {
    const Frame alder = course::bundled("alder-72");
    const SeatId ring{"seat-SR-CO"};
    const Clock nine = Clock::seenFrom(Side::Compressor, Degrees{270.0});
    EXPECT_EQ(wordsOf(alder, SeatingConfirmed{.seat = ring,
                                              .confirmation = {.by = "R. Ohlin"},
                                              .index = nine,
                                              .setIn = View{Side::Compressor, Degrees{0.0}}}),
              "R. Ohlin: SR-CO confirmed, gap at 9:00 seen from the compressor side");
    EXPECT_THAT(wordsOf(alder, StepDone{StepId{"S43"}, "R. Ohlin"}),
                HasSubstr("practice record, not a release"));
    EXPECT_EQ(wordsOf(alder, PartPlaced{.part = PartId{"SR-CI"}, .seat = ring}),
              "SR-CI in seat-SR-CO placed");
}

TEST_F(Slip, TheFirstAttemptStaysInTheHistory) {
    log_.events = {StepDone{StepId{"A"}, "I. Dorn"}, StepUndone{StepId{"A"}, "chip", "I. Dorn"},
                   StepDone{StepId{"A"}, "R. Ohlin"}};
    const std::vector<Attempt> attempts = attemptsOf(frame_, log_, StepId{"A"});
    ASSERT_EQ(attempts.size(), 2U);
    EXPECT_FALSE(attempts[0].stands);
    EXPECT_TRUE(attempts[1].stands);
    EXPECT_EQ(attempts[0].words, "I. Dorn: A act A: done");
    log_.events.emplace_back(StepUndone{StepId{"A"}, "", ""});
    EXPECT_FALSE(attemptsOf(frame_, log_, StepId{"A"})[1].stands);
}

} // namespace gapwise
