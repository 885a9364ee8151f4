#include "tests/viewer/panels/screen_checks.h"

#include <gtest/gtest.h>

namespace gapwise {

using desk::Desk;

TEST(Screens, OpeningIsWhole) {
    for (const Desk::Size& size : kSizes) {
        Desk desk{size};
        look(desk, size, "opening");
        desk.click("opening/At the bench");
        look(desk, size, "opening-bench");
    }
}

TEST(Screens, PracticeIsWholeInEveryState) {
    for (const Desk::Size& size : kSizes) {
        Desk desk{size};
        desk.start("alder-72", Use::Practise);
        look(desk, size, "practise-begun");
        desk.click("tray/SR-CO");
        look(desk, size, "practise-seats");
        desk.at.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{0.0}), true});
        desk.at.place("SR-CO");
        look(desk, size, "practise-placed");
        desk.click("card/3");
        look(desk, size, "practise-broken");
        desk.at.point("SR-CO", Side::Compressor, 90.0);
        desk.at.face("SR-CO", Side::Turbine);
        look(desk, size, "practise-holds");
        desk.click("looks/tip sideways");
        look(desk, size, "practise-drain");
    }
}

TEST(Screens, BoxesAreWhole) {
    for (const Desk::Size& size : kSizes) {
        Desk desk{size};
        desk.startSheet("birch-150-half-a-turn", Use::Show);
        look(desk, size, "show");
        desk.type("l");
        look(desk, size, "show-findings");
        desk.type("?");
        look(desk, size, "show-keys");
        desk.type("s");
        look(desk, size, "show-file");
        desk.click("file/Start again …");
        look(desk, size, "show-start-again");
        desk.type("s");
        desk.type("c");
        look(desk, size, "show-half");
        desk.type("6");
        look(desk, size, "show-both-ends");
        desk.workplace.note =
            Note{"BRG-T into seat-BRG-T: found SR-TO is in the way: it is Ø16.7 inside, and BRG-T is "
                 "Ø18.9 outside, allowed: take SR-TO off first",
                 true};
        look(desk, size, "show-note");
    }
}

TEST(Screens, TheSheetAboutAPartIsWhole) {
    for (const Desk::Size& size : kSizes) {
        Desk desk{size};
        desk.start("birch-150", Use::Show);
        for (const Part& part : desk.job().frame.parts) {
            grant(desk.workplace, ReadAbout{About{part.id}});
            look(desk, size, ("about-" + part.id.text).c_str());
        }
        desk.workplace.note = Note{"the reason", true};
        look(desk, size, "about-note");
    }
}

TEST(Screens, TheGoodBuildHoldsOnBothDials) {
    for (const Desk::Size& size : kSizes) {
        Desk desk{size};
        desk.startSheet("alder-72-plate-on", Use::Show);
        look(desk, size, "good");
    }
}

TEST(Screens, TheBenchIsForGloves) {
    for (const Desk::Size& size : kSizes) {
        Desk desk{size};
        desk.start("alder-72", Use::Bench);
        look(desk, size, "bench-lies");
        expectForGloves(desk);
        desk.click("drain/TURBINE end up");
        look(desk, size, "bench-first-drain");
        expectForGloves(desk);
        desk.at.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{180.0}), true});
        look(desk, size, "bench-begun");
        expectForGloves(desk);
        desk.type("c");
        look(desk, size, "bench-half");
        expectForGloves(desk);
        desk.click("tray/SR-CO");
        look(desk, size, "bench-seats");
        expectForGloves(desk);
        desk.at.place("SR-CO");
        look(desk, size, "bench-saying");
        expectForGloves(desk);
        desk.click("card/About …");
        look(desk, size, "bench-about");
        expectForGloves(desk);
        desk.type("a");
        grant(desk.workplace, SaySeen{.seat = seatOf(PartId{"SR-CO"}),
                                      .gapSeen = Degrees{270.0},
                                      .referenceFaceVisible = false});
        look(desk, size, "bench-said");
        expectForGloves(desk);
        desk.type("s");
        look(desk, size, "bench-file");
        expectForGloves(desk);
        desk.type("s");
        desk.frame();
        desk.click("looks/tip toward me");
        look(desk, size, "bench-drain");
        expectForGloves(desk);
    }
}

} // namespace gapwise
