#include "tests/viewer/panels/screen_checks.h"

#include "viewer/panels/step_card.h"

#include <gtest/gtest.h>
#include <imgui.h>

namespace gapwise {

namespace {

using desk::Desk;

/// Every page of every part of the card of a step.
void lookAtCard(Desk& desk, const Desk::Size& size, const std::string& step, bool gloves) {
    grant(desk.workplace, OpenStep{StepId{step}});
    desk.frames(2);
    std::vector<std::string> tabs;
    for (const Target& target : desk.panels.targets)
        if (target.name.starts_with("step/tab "))
            tabs.push_back(target.name);
    EXPECT_GE(tabs.size(), 2U) << step;
    for (const std::string& tab : tabs) {
        desk.click(tab);
        desk.frames(2);
        std::size_t page = 0;
        do {
            const std::string name =
                (gloves ? "bench-" : "") + step + "-" + tab.substr(9) + "-" + std::to_string(page);
            look(desk, size, name.c_str());
            if (gloves)
                expectForGloves(desk);
            if (!desk.has("step/Read on"))
                break;
            desk.click("step/Read on");
            desk.frames(2);
            page = desk.panels.drafts.stepCard.page;
        } while (page != 0);
    }
}

} // namespace

/// Cards of every kind: questions, rings, screws, hold points, the last one.
constexpr std::array kSteps{"D1",   "S01", "S06", "S13", "S14", "S17",
                            "S17b", "S29", "S30", "S34", "S42", "S43"};

TEST(StepScreens, CardsAreWholeInPractise) {
    for (const Desk::Size& size : kSizes) {
        Desk desk{size};
        desk.start("birch-150", Use::Practise);
        desk.at.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{180.0}), true});
        for (const char* step : kSteps)
            lookAtCard(desk, size, step, false);
    }
}

TEST(StepScreens, CardsAreForGlovesAtTheBench) {
    for (const Desk::Size& size : kSizes) {
        Desk desk{size};
        desk.start("alder-72", Use::Bench);
        desk.at.act(AttitudeChanged{uprightAttitude(Side::Turbine, Degrees{180.0}), true});
        desk.at.act(PersonCame{"R. Ohlin", Role::Technician});
        for (const char* step : kSteps)
            lookAtCard(desk, size, step, true);
    }
}

TEST(StepScreens, BoxesAndSheetsOfTheProcedureAreWhole) {
    for (const Use use : {Use::Practise, Use::Bench})
        for (const Desk::Size& size : kSizes) {
            Desk desk{size};
            const std::string name = use == Use::Bench ? "bench-" : "";
            desk.startSheet("alder-72-plate-on", use);
            desk.at.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{180.0}), true});
            desk.at.act(PersonCame{"R. Ohlin", Role::Technician});
            desk.type("i");
            look(desk, size, (name + "who").c_str());
            desk.type("i");
            grant(desk.workplace, TurnPiece{TurningMove::TippedOver});
            look(desk, size, (name + "turning").c_str());
            grant(desk.workplace, TurnGivenUp{});
            grant(desk.workplace, ReadSlip{});
            look(desk, size, (name + "slip").c_str());
            if (use == Use::Bench)
                expectForGloves(desk);
            grant(desk.workplace, ReadSlip{false});
            look(desk, size, (name + "line").c_str());
        }
}

} // namespace gapwise
