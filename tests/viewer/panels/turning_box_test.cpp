#include "tests/viewer/panels/desk.h"

#include <gtest/gtest.h>
#include <imgui.h>

namespace gapwise {

namespace {

using desk::Desk;

/// A sheet built up to the seal plate: the rotor is in, the nut is not on, nothing holds it.
void rotorLoose(Desk& desk) {
    desk.startSheet("alder-72-plate-on", Use::Practise);
    ASSERT_TRUE(rotorIsLoose(desk.job().frame, desk.build()));
}

} // namespace

TEST(TurningBox, StandsBeforeATurnWithALooseRotor) {
    Desk desk;
    rotorLoose(desk);
    const std::size_t events = desk.job().log.events.size();
    const Attitude before = desk.job().attitude();
    desk.type("o");
    desk.frames(2);
    EXPECT_EQ(desk.job().log.events.size(), events) << "nothing was turned";
    EXPECT_EQ(desk.job().attitude(), before);
    ASSERT_TRUE(desk.has("turning/Record what holds it"));
    desk.picture("turning-box");
    desk.click("turning/Do not turn");
    EXPECT_FALSE(desk.job().turnAsked);
    EXPECT_EQ(desk.job().attitude(), before);
}

TEST(TurningBox, EscapeDoesNotTurn) {
    Desk desk;
    rotorLoose(desk);
    desk.type("o");
    ASSERT_TRUE(desk.job().turnAsked);
    desk.key(ImGuiKey_Escape);
    EXPECT_FALSE(desk.job().turnAsked);
}

TEST(TurningBox, LeadsToWhatHoldsTheRotor) {
    Desk desk;
    rotorLoose(desk);
    desk.type("o");
    desk.frame();
    desk.click("turning/Record what holds it");
    ASSERT_TRUE(desk.job().step);
    EXPECT_TRUE(desk.job().frame.step(*desk.job().step)->holdsRotor);
    EXPECT_FALSE(desk.job().turnAsked);
}

TEST(TurningBox, WhatWasTurnedAllTheSameIsWrittenDown) {
    Desk desk;
    rotorLoose(desk);
    desk.type("o");
    desk.frame();
    desk.click("turning/It was turned all the same");
    const auto* turned = std::get_if<AttitudeChanged>(&desk.job().log.events.back());
    ASSERT_NE(turned, nullptr);
    EXPECT_TRUE(turned->unretained);
    EXPECT_TRUE(desk.job().state.turnedUnretained);
    EXPECT_FALSE(desk.job().state.attitudeConfirmed) << "the drain is asked for next";
}

TEST(TurningBox, APieceWhoseRotorIsHeldIsTurnedAtOnce) {
    Desk desk;
    desk.startSheet("alder-72-good", Use::Practise);
    ASSERT_FALSE(rotorIsLoose(desk.job().frame, desk.build()));
    desk.type("o");
    EXPECT_FALSE(desk.job().turnAsked);
    EXPECT_NE(std::get_if<AttitudeChanged>(&desk.job().log.events.back()), nullptr);
}

} // namespace gapwise
