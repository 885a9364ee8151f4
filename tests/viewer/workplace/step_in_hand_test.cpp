#include "tests/viewer/workplace/at_hand.h"

#include <gtest/gtest.h>

namespace gapwise {

namespace {

/// A measurement with a quantity of its own, whatever the frame measures.
MeasurementId oneWithNumbers(AtHand& hand) {
    Measurement& first = hand.workplace.job->frame.measurements.front();
    if (first.quantities.empty())
        first.quantities.push_back({.id = QuantityId{"q"}, .name = "something"});
    return first.id;
}

} // namespace

TEST(InHand, APartLiesOverTheCardOfItsStep) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    grant(hand.workplace, OpenStep{StepId{"S07"}});
    EXPECT_TRUE(hand.job().cardOpen());
    grant(hand.workplace, TakeInHand{PartId{"SR-TI"}});
    EXPECT_EQ(hand.job().step, StepId{"S07"});
    grant(hand.workplace, TakeInHand{});
    EXPECT_EQ(hand.job().step, StepId{"S07"});
    EXPECT_TRUE(hand.job().cardOpen());
    grant(hand.workplace, OpenStep{});
    EXPECT_FALSE(hand.job().cardOpen());
}

TEST(InHand, OpeningAStepPutsDownWhatWasInHand) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    grant(hand.workplace, TakeInHand{PartId{"SR-TI"}});
    grant(hand.workplace, OpenStep{StepId{"S07"}});
    EXPECT_FALSE(hand.job().inHand);
}

TEST(InHand, NeverAPartAndAFastenerTogether) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    const FastenerId nut = hand.job().frame.fasteners.front().id;
    grant(hand.workplace, TakeInHand{PartId{"SR-TI"}});
    grant(hand.workplace, OpenFastener{nut});
    EXPECT_EQ(hand.job().fastenerInHand, nut);
    EXPECT_FALSE(hand.job().inHand);
    grant(hand.workplace, TakeInHand{PartId{"SR-TI"}});
    EXPECT_FALSE(hand.job().fastenerInHand);
}

TEST(InHand, AMeasurementPutsDownEverythingElse) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    const FastenerId nut = hand.job().frame.fasteners.front().id;
    const MeasurementId gauge = oneWithNumbers(hand);
    grant(hand.workplace, TakeInHand{PartId{"SR-TI"}});
    grant(hand.workplace, OpenMeasurement{gauge});
    EXPECT_EQ(hand.job().measurementInHand, gauge);
    EXPECT_FALSE(hand.job().inHand);
    grant(hand.workplace, OpenFastener{nut});
    EXPECT_FALSE(hand.job().measurementInHand);
    grant(hand.workplace, OpenMeasurement{gauge});
    EXPECT_FALSE(hand.job().fastenerInHand);
    grant(hand.workplace, OpenMeasurement{});
    EXPECT_FALSE(hand.job().cardOpen());
}

TEST(InHand, AMeasurementFromTheSheetLeadsBackToIt) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    const MeasuresPage stack{MeasuresPage::Kind::Stack};
    grant(hand.workplace, ReadMeasures{stack});
    grant(hand.workplace, OpenMeasurement{oneWithNumbers(hand)});
    grant(hand.workplace, OpenMeasurement{});
    EXPECT_EQ(hand.job().measures, stack);
    grant(hand.workplace, OpenMeasurement{oneWithNumbers(hand)});
    grant(hand.workplace, TakeInHand{PartId{"SR-TI"}});
    EXPECT_FALSE(hand.job().measures) << "what is in hand lies on the bench";
}

TEST(InHand, WhatIsJudgedByEyeOpensThePageOfTheParts) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    hand.workplace.job->frame.measurements.front().quantities.clear();
    grant(hand.workplace, OpenMeasurement{hand.job().frame.measurements.front().id});
    EXPECT_FALSE(hand.job().measurementInHand);
    EXPECT_EQ(hand.job().measures, MeasuresPage{MeasuresPage::Kind::Parts});
}

TEST(InHand, WhatTheFrameDoesNotHaveIsNotOpened) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    grant(hand.workplace, OpenStep{StepId{"S99"}});
    grant(hand.workplace, OpenFastener{FastenerId{"T99"}});
    grant(hand.workplace, OpenMeasurement{MeasurementId{"M99"}});
    EXPECT_FALSE(hand.job().cardOpen());
}

TEST(InHand, NoneOfItIsAnAct) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    grant(hand.workplace, OpenStep{StepId{"S07"}});
    grant(hand.workplace, OpenFastener{hand.job().frame.fasteners.front().id});
    grant(hand.workplace, ReadSlip{});
    EXPECT_TRUE(hand.job().log.events.empty());
}

TEST(Procedure, IsReckonedAfterEveryEvent) {
    AtHand hand;
    hand.start("alder-72", Use::Show);
    EXPECT_EQ(hand.job().procedure.leading, StepId{"D1"});
    EXPECT_EQ(hand.job().procedure.nextHoldPoint, StepId{"S14"});
    hand.act(StepDone{StepId{"D1"}, ""});
    EXPECT_EQ(statusOf(hand.job(), StepId{"D1"}).standing, StepStanding::Done);
    EXPECT_EQ(hand.job().procedure.leading, StepId{"D2"});
    EXPECT_EQ(statusOf(hand.job(), StepId{"S99"}).standing, StepStanding::Blocked);
}

TEST(Turning, ALooseRotorIsAskedAboutBeforeThePieceIsTurned) {
    AtHand hand;
    hand.startSheet("alder-72-plate-on", Use::Practise);
    const std::size_t events = hand.job().log.events.size();
    grant(hand.workplace, TurnPiece{TurningMove::TippedOver});
    ASSERT_TRUE(hand.job().turnAsked);
    EXPECT_EQ(hand.job().log.events.size(), events);
    grant(hand.workplace, TurnGivenUp{});
    EXPECT_FALSE(hand.job().turnAsked);
    grant(hand.workplace, TurnedAllTheSame{});
    EXPECT_EQ(hand.job().log.events.size(), events) << "nothing was asked";
    grant(hand.workplace, TurnPiece{TurningMove::TippedOver});
    grant(hand.workplace, TurnedAllTheSame{});
    EXPECT_EQ(hand.job().log.events.size(), events + 1);
    EXPECT_TRUE(hand.job().state.turnedUnretained);
}

TEST(Turning, WalkingRoundAPieceThatStandsIsNoTurn) {
    AtHand hand;
    hand.startSheet("alder-72-plate-on", Use::Practise);
    Attitude round = hand.job().attitude();
    ASSERT_NE(round.up, EndUp::Level);
    round.drain = wrapped(round.drain + Degrees{90.0});
    hand.act(AttitudeChanged{round, true});
    EXPECT_FALSE(hand.job().turnAsked);
}

} // namespace gapwise
