#include "tests/viewer/panels/desk.h"

#include <gtest/gtest.h>

#include <array>

namespace gapwise {

namespace {

using desk::Desk;

constexpr std::array<Desk::Size, 3> kSizes{{{1366, 768}, {1280, 720}, {1920, 1080}}};

std::string nameFor(const char* state, const Desk::Size& size) {
    return std::string{state} + "-" + std::to_string(size.width);
}

void expectInside(const Desk& desk, const Desk::Size& size) {
    EXPECT_GT(desk.panels.targets.size(), 3U);
    for (const Target& target : desk.panels.targets) {
        // A list may run on below its box and be scrolled there.
        if (target.name.starts_with("findings/"))
            continue;
        EXPECT_GE(target.area.x, 0.0) << target.name;
        EXPECT_GE(target.area.y, 0.0) << target.name;
        EXPECT_LE(target.area.right(), size.width + 0.5) << target.name;
        EXPECT_LE(target.area.bottom(), size.height + 0.5) << target.name;
    }
}

/// Of what is drawn beside each other nothing lies over another; boxes lie over looks that are not drawn
/// then.
void expectApart(const Desk& desk) {
    const std::vector<Target>& targets = desk.panels.targets;
    for (std::size_t i = 0; i < targets.size(); ++i)
        for (std::size_t k = i + 1; k < targets.size(); ++k) {
            const Area& a = targets[i].area;
            const Area& b = targets[k].area;
            const bool over = a.x + 0.5 < b.right() && b.x + 0.5 < a.right() && a.y + 0.5 < b.bottom() &&
                              b.y + 0.5 < a.bottom();
            const bool list =
                targets[i].name.starts_with("findings/") || targets[k].name.starts_with("findings/");
            EXPECT_FALSE(over && !list) << targets[i].name << " and " << targets[k].name;
        }
}

void expectForGloves(const Desk& desk) {
    for (const Target& target : desk.panels.targets) {
        const bool field =
            target.name == "card/clock" || target.name == "file/path" || target.name == "file/open path";
        EXPECT_GE(target.area.width, 59.5) << target.name;
        EXPECT_GE(target.area.height, field ? 36.0 : 59.5) << target.name;
    }
}

void look(Desk& desk, const Desk::Size& size, const char* state) {
    desk.frames(2);
    expectInside(desk, size);
    expectApart(desk);
    desk.picture(nameFor(state, size));
}

} // namespace

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
