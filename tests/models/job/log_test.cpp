#include "models/job/log.h"

#include "tests/models/check/bench.h"

#include <gmock/gmock.h>

#include <random>

namespace gapwise {

namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::SizeIs;

const SeatId kSrC{"seat-SR-C"};

PartPlaced placing(const char* part) {
    return PartPlaced{.part = PartId{part}, .seat = seatOf(PartId{part})};
}

IndexTurned turning(const SeatId& seat, double clock) {
    return IndexTurned{seat, Clock::seenFrom(Side::Compressor, Degrees{clock}),
                       View{Side::Compressor, Degrees{180.0}}};
}

double clockIn(const Build& build, const SeatId& seat) {
    return build.in(seat)->index->from(Side::Compressor).value;
}

bool sameSeatings(const Build& a, const Build& b) {
    const auto alike = [](const Seating& x, const Seating& y) {
        return x.part == y.part && x.seat == y.seat && x.index.has_value() == y.index.has_value() &&
               (!x.index || apart(*x.index, *y.index).value == 0.0) &&
               x.referenceFaceLooks == y.referenceFaceLooks && x.home == y.home && x.setIn == y.setIn;
    };
    return std::ranges::equal(a.seatings, b.seatings, alike) && a.stepsDone == b.stepsDone;
}

} // namespace

TEST(Log, APartFromTheTrayHasNoKnownClockOrFace) {
    const Frame frame = bench::smallFrame();
    const Build build = withEvent(frame, Build{}, placing("SR-C"));
    ASSERT_THAT(build.seatings, SizeIs(1));
    EXPECT_FALSE(build.seatings[0].index);
    EXPECT_FALSE(build.seatings[0].referenceFaceLooks);
}

TEST(Log, SettingAnewMakesAConfirmationVoid) {
    const Frame frame = bench::smallFrame();
    Build build = withEvent(frame, Build{}, placing("SR-C"));
    build = withEvent(frame, build, turning(kSrC, 90.0));
    build = withEvent(frame, build, SeatingConfirmed{kSrC, {.by = "R. Ohlin"}});
    ASSERT_TRUE(build.seatings[0].confirmed);
    build = withEvent(frame, build, turning(kSrC, 95.0));
    EXPECT_FALSE(build.seatings[0].confirmed);
    EXPECT_EQ(build.seatings[0].setIn, (View{Side::Compressor, Degrees{180.0}}));
}

TEST(Log, ABushWithinFiveDegreesFallsOntoItsPin) {
    const Frame frame = bench::smallFrame();
    Build build = withEvent(frame, Build{}, placing("PIN"));
    build = withEvent(frame, build, placing("BUSH"));
    const SeatId bush{"seat-BUSH"};
    EXPECT_DOUBLE_EQ(clockIn(withEvent(frame, build, turning(bush, 175.0)), bush), 180.0);
    const SeatingConfirmed seen{.seat = bush, .index = Clock::seenFrom(Side::Compressor, Degrees{183.0})};
    EXPECT_DOUBLE_EQ(clockIn(withEvent(frame, build, seen), bush), 180.0);
    EXPECT_DOUBLE_EQ(clockIn(withEvent(frame, build, turning(bush, 174.9)), bush), 174.9);
}

TEST(Log, RefusesATakenSeatAPartThatSitsElsewhereAndWhatIsNotThere) {
    const Frame frame = bench::smallFrame();
    const JobState state{.build = withEvent(frame, Build{}, placing("SR-C"))};
    const Errors twice = refusalOf(frame, state, placing("SR-C"));
    ASSERT_THAT(twice, SizeIs(1));
    EXPECT_EQ(twice[0].found, "SR-C is in it");
    const Errors elsewhere =
        refusalOf(frame, state, PartPlaced{.part = PartId{"SR-C"}, .seat = seatOf(PartId{"SR-T"})});
    ASSERT_THAT(elsewhere, SizeIs(1));
    EXPECT_THAT(elsewhere[0].found, HasSubstr("sits in seat-SR-C"));
    EXPECT_THAT(refusalOf(frame, state, PartTakenOff{SeatId{"seat-SR-T"}}), SizeIs(1));
    EXPECT_THAT(refusalOf(frame, state, StepDone{StepId{"S99"}}), SizeIs(1));
    EXPECT_THAT(refusalOf(frame, state, placing("SR-T")), IsEmpty());
}

TEST(Log, TheWrongGrooveIsNotRefusedButAnotherKindOfPartIs) {
    const Frame frame = bench::smallFrame();
    const JobState state{};
    EXPECT_THAT(refusalOf(frame, state, PartPlaced{.part = PartId{"SR-C"}, .seat = seatOf(PartId{"SR-T"})}),
                IsEmpty());
    EXPECT_THAT(refusalOf(frame, state, PartPlaced{.part = PartId{"SR-C"}, .seat = seatOf(PartId{"BUSH"})}),
                SizeIs(1));
}

TEST(Log, UndoTakesBackAndANewActForgetsWhatWasTakenBack) {
    const Frame frame = bench::smallFrame();
    Log log;
    log.events = {placing("SR-C"), turning(kSrC, 90.0), turning(kSrC, 200.0), Undone{}};
    const JobState back = stateOf(frame, log);
    EXPECT_DOUBLE_EQ(clockIn(back.build, kSrC), 90.0);
    EXPECT_EQ(back.canUndo, 2U);
    EXPECT_EQ(back.canRedo, 1U);
    log.events.emplace_back(Redone{});
    EXPECT_DOUBLE_EQ(clockIn(stateOf(frame, log).build, kSrC), 200.0);
    log.events.emplace_back(Undone{});
    log.events.emplace_back(turning(kSrC, 10.0));
    EXPECT_EQ(stateOf(frame, log).canRedo, 0U);
}

TEST(Log, TheDrainIsUnconfirmedFromATurningUntilItIsSaid) {
    const Frame frame = bench::smallFrame();
    Log log;
    EXPECT_TRUE(stateOf(frame, log).attitudeConfirmed);
    log.events = {AttitudeChanged{uprightAttitude(Side::Turbine, Degrees{0.0}), false}};
    EXPECT_FALSE(stateOf(frame, log).attitudeConfirmed);
    log.events.emplace_back(AttitudeChanged{uprightAttitude(Side::Turbine, Degrees{180.0}), true});
    EXPECT_TRUE(stateOf(frame, log).attitudeConfirmed);
    EXPECT_EQ(stateOf(frame, log).build.attitude->drain, Degrees{180.0});
}

TEST(Log, ThatADemandWasLookedAtIsNotTakenBack) {
    const Frame frame = bench::smallFrame();
    Log log;
    log.events = {placing("SR-C"), LookedFirst{kSrC}, Undone{}};
    const JobState back = stateOf(frame, log);
    EXPECT_THAT(back.lookedFirst, ElementsAre(kSrC));
    EXPECT_THAT(back.build.seatings, IsEmpty()) << "undo took back the placing";
    EXPECT_EQ(back.canUndo, 0U);
    EXPECT_THAT(refusalOf(frame, back, Undone{}), SizeIs(1));
    // Nor does it stand in the way of bringing back.
    log.events = {placing("SR-C"), turning(kSrC, 90.0), Undone{}, LookedFirst{kSrC}};
    EXPECT_EQ(stateOf(frame, log).canRedo, 1U);
    EXPECT_THAT(standingEvents(log), SizeIs(1));
}

TEST(Log, UndoThenRedoRestoresTheBuildAfterAnyRandomWalk) {
    const Frame frame = bench::smallFrame();
    std::mt19937 random{20261125};
    const std::vector<const char*> parts{"SR-C", "SR-T", "BUSH", "PIN", "PR-1", "PR-2", "SLEEVE", "PLATE"};
    Log log;
    for (int i = 0; i < 400; ++i) {
        const char* part = parts[random() % parts.size()];
        const std::vector<Event> choices{placing(part),
                                         turning(seatOf(PartId{part}), static_cast<double>(random() % 360)),
                                         FaceTurned{seatOf(PartId{part}), Side::Turbine, std::nullopt},
                                         PartTakenOff{seatOf(PartId{part})},
                                         StepDone{StepId{"S1"}},
                                         StepUndone{StepId{"S1"}},
                                         Undone{},
                                         Redone{}};
        const Event& event = choices[random() % choices.size()];
        const JobState before = stateOf(frame, log);
        if (!refusalOf(frame, before, event).empty())
            continue;
        log.events.push_back(event);
        if (std::holds_alternative<Undone>(event) || std::holds_alternative<Redone>(event))
            continue;
        Log there = log;
        there.events.emplace_back(Undone{});
        EXPECT_TRUE(sameSeatings(stateOf(frame, there).build, before.build)) << "after " << i;
        there.events.emplace_back(Redone{});
        EXPECT_TRUE(sameSeatings(stateOf(frame, there).build, stateOf(frame, log).build)) << "after " << i;
    }
}

TEST(Log, WhatIsSaidOfASeatingIsOneAct) {
    const Frame frame = bench::smallFrame();
    Log log;
    log.events = {placing("SR-C"), SeatingConfirmed{.seat = kSrC,
                                                    .confirmation = {.by = "Ilka Dorn"},
                                                    .index = Clock::seenFrom(Side::Turbine, Degrees{90.0}),
                                                    .referenceFaceLooks = Side::Turbine}};
    const JobState said = stateOf(frame, log);
    EXPECT_DOUBLE_EQ(clockIn(said.build, kSrC), 270.0);
    EXPECT_EQ(said.build.in(kSrC)->referenceFaceLooks, Side::Turbine);
    ASSERT_TRUE(said.build.in(kSrC)->confirmed);
    log.events.emplace_back(Undone{});
    const JobState back = stateOf(frame, log);
    EXPECT_FALSE(back.build.in(kSrC)->index);
    EXPECT_FALSE(back.build.in(kSrC)->confirmed);
}

} // namespace gapwise
