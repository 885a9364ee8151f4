#include "models/procedure/step_status.h"

#include "models/procedure/hold_point.h"
#include "models/procedure/kit.h"
#include "models/procedure/questions.h"
#include "models/procedure/reopen.h"
#include "tests/models/procedure/course.h"

#include <gmock/gmock.h>

#include <algorithm>

namespace gapwise {

namespace {

/// The order in which a cartridge may be built (common practice, no source), on each bundled frame.
class Precedences : public ::testing::TestWithParam<const char*> {
protected:
    /// Does every step of `wanted` and what it needs, in the frame's order, but none of `without`.
    JobState before(std::initializer_list<const char*> without) const {
        JobState state = state_;
        bool goesOn = true;
        while (goesOn) {
            goesOn = false;
            for (const StepId& step : possibleNow(graph_, state)) {
                if (std::ranges::find(without, step.text) != without.end())
                    continue;
                state.build.stepsDone.push_back(step);
                goesOn = true;
                break;
            }
        }
        return state;
    }
    bool possible(const JobState& state, const char* step) const {
        const std::vector<StepId> steps = possibleNow(graph_, state);
        return std::ranges::find(steps, StepId{step}) != steps.end();
    }
    bool done(const JobState& state, const char* step) const { return state.build.done(StepId{step}); }

    Frame frame_ = course::bundled(GetParam());
    StepGraph graph_{frame_};
    JobState state_{};
};

bool isBirch(const Frame& frame) {
    return frame.id.text == "birch-150";
}

} // namespace

TEST_P(Precedences, EitherEndMayComeFirst) {
    const JobState compressorFirst = before({"S08"});
    EXPECT_TRUE(done(compressorFirst, "S13"));
    EXPECT_TRUE(possible(compressorFirst, "S08"));
    EXPECT_FALSE(done(compressorFirst, "S14")) << "W1 sees both ends";
    const JobState turbineFirst = before({"S12"});
    EXPECT_TRUE(done(turbineFirst, "S09"));
    EXPECT_TRUE(possible(turbineFirst, "S12"));
    EXPECT_FALSE(done(turbineFirst, "S14"));
}

TEST_P(Precedences, TheThrustBearingMayComeBeforeOrAfterTheSpacerSleeve) {
    const JobState thrustFirst = before({"S20"});
    EXPECT_TRUE(done(thrustFirst, "S23")) << "with the deflector on, too";
    EXPECT_TRUE(possible(thrustFirst, "S20"));
    EXPECT_FALSE(done(thrustFirst, "S26"));
    const JobState spacerFirst = before({"S21"});
    EXPECT_TRUE(done(spacerFirst, "S20"));
    EXPECT_TRUE(possible(spacerFirst, "S21"));
}

TEST_P(Precedences, TheTurbineCasingGoesOnWhenTheFrameAllowsIt) {
    const JobState rotorIn = before({"S18", "S19", "S35"});
    ASSERT_TRUE(done(rotorIn, "S17"));
    EXPECT_EQ(possible(rotorIn, "S35"), isBirch(frame_)) << "right after the rotor, or after the readings";
    if (isBirch(frame_)) {
        EXPECT_FALSE(possible(rotorIn, "S18")) << "the casing holds the rotor first";
    }
    const JobState read = before({"S35"});
    EXPECT_EQ(done(read, "S33"), !isBirch(frame_));
}

TEST_P(Precedences, BenchWorkMayBeDoneEarly) {
    const JobState early = before({"S06"});
    for (const char* step : {"S15", "S16", "S24", "S25"})
        EXPECT_TRUE(done(early, step)) << step;
    EXPECT_FALSE(done(early, "S17"));
}

TEST_P(Precedences, ThePieceMayBeTurnedOverAtAnyTime) {
    EXPECT_TRUE(possible(JobState{}, "S10"));
    EXPECT_TRUE(possible(before({"S10"}), "S10"));
}

TEST_P(Precedences, TheRotorIsRetainedOnlyWhenItWasLetDown) {
    JobState state = before({"S17b", "S18", "S19", "S35"});
    const auto standing = [&](const char* step) {
        return stepStatuses(graph_, state)[*graph_.indexOf(StepId{step})].standing;
    };
    EXPECT_EQ(standing("S17b"), StepStanding::NotNeeded);
    state.build.rotorLoweredIn = true;
    EXPECT_EQ(standing("S17b"), StepStanding::Possible);
    EXPECT_FALSE(possible(state, "S18"));
    if (!isBirch(frame_))
        return;
    state.build.stepsDone.emplace_back("S35");
    EXPECT_EQ(standing("S17b"), StepStanding::NotNeeded) << "the casing stands for it";
    EXPECT_TRUE(possible(state, "S18"));
}

TEST_P(Precedences, TheRotorIsLooseUntilSomethingHoldsIt) {
    JobState state = before({"S17b", "S18", "S35", "S29"});
    state.build.seatings = {Seating{.part = frame_.rotor, .seat = seatOf(frame_.rotor)}};
    EXPECT_TRUE(findingBeforeTurning(frame_, state));
    state.build.stepsDone.emplace_back("S29");
    EXPECT_FALSE(findingBeforeTurning(frame_, state)) << "the nut is on";
}

/// 57.00 − 8.00 + 20 for Alder-72, 111.30 − 14.00 + 20 for Birch-150 (invented dimensions).
TEST_P(Precedences, ABlockThatIsTooLowIsFoundWhileTheTurbineEndIsUp) {
    const double least = isBirch(frame_) ? 117.3 : 69.0;
    const auto found = [&](double height, Side up) {
        JobState state;
        state.build.attitude = uprightAttitude(up, Degrees{180.0});
        state.answers = {Answered{StepId{"S06"}, "block_height", "block", height, "I. Dorn"}};
        const std::vector<ProcedureFinding> findings = procedureFindings(frame_, state);
        return !findings.empty() && findings.front().id == "block";
    };
    EXPECT_TRUE(found(least - 0.1, Side::Turbine));
    EXPECT_FALSE(found(least + 0.1, Side::Turbine));
}

TEST_P(Precedences, TheBenchAsksForEveryPieceOfThePickListAndEveryGauge) {
    const std::vector<Question> questions = questionsOf(frame_, *frame_.step(StepId{"S01"}));
    const auto begins = [&](const char* with) {
        return std::ranges::count_if(questions,
                                     [&](const Question& each) { return each.name.starts_with(with); });
    };
    EXPECT_EQ(begins("pick-"), static_cast<std::ptrdiff_t>(pickListOf(frame_).size()));
    EXPECT_EQ(begins("gauge-"), static_cast<std::ptrdiff_t>(gaugesOf(frame_).size()));
    EXPECT_GT(begins("pick-") * begins("gauge-"), 0);
    EXPECT_EQ(questions.front().name, "variant");
}

TEST_P(Precedences, ReworkLetsTheReleaseLapse) {
    const Build build = course::allDone(frame_);
    for (const char* step : {"S09", "S15", "S16", "S17", "S39"}) {
        const Reopened reopened = reopenedBy(graph_, build, StepId{step});
        EXPECT_NE(std::ranges::find(reopened.lapsed, StepId{"S43"}), reopened.lapsed.end()) << step;
    }
}

INSTANTIATE_TEST_SUITE_P(EveryFrame, Precedences,
                         ::testing::Values("alder-72", "alder-72-pinned", "birch-150"));

} // namespace gapwise
