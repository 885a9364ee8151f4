#include "tests/viewer/window/session.h"

#include <filesystem>
#include <fstream>

namespace gapwise::test {

namespace {

/// The names of events: `placed`, `turned`, …
std::vector<std::string> namesOf(const std::vector<nlohmann::json>& events) {
    std::vector<std::string> names;
    for (const nlohmann::json& event : events)
        names.push_back(event["event"]);
    return names;
}

using Names = std::vector<std::string>;

} // namespace

TEST_F(Session, PlacesARingFromTheTrayAndSetsItsClock) {
    DrivenWindow window = open({});
    window.press(names::kShow);
    window.press(names::kAlder);
    window.press(names::kOnTheTray);
    window.press(names::kItsSeat);
    const nlohmann::json placed = journal(window, 1)[0];
    EXPECT_EQ(placed["event"], "placed");
    EXPECT_EQ(placed["part"], "SR-CO");
    EXPECT_EQ(placed["seat"], "seat-SR-CO");
    EXPECT_FALSE(placed.contains("clock_deg")) << "from the tray its clock is not known";
    window.press(names::kFromCompressor);
    window.press(names::kClock);
    window.type("2:30");
    window.press(names::kSet);
    const nlohmann::json turned = journal(window, 2)[1];
    EXPECT_EQ(turned["event"], "turned");
    EXPECT_EQ(turned["seat"], "seat-SR-CO");
    EXPECT_EQ(turned["clock_deg"], 75.0);
    EXPECT_EQ(turned["seen_from"], "compressor");
    EXPECT_FALSE(window.shows(names::kOnTheTray));
}

TEST_F(Session, AGapDraggedRoundADialIsOneEventWhenItIsLetGo) {
    DrivenWindow window = open({sheetWithARing()});
    window.press(names::kItsSeat);
    const Rectangle dial = window.areaOf(names::kCompressorDial);
    window.dragAndHold({onSrCo(dial, 90.0), onSrCo(dial, 100.0), onSrCo(dial, 120.0), onSrCo(dial, 150.0)});
    EXPECT_TRUE(journalOf(person_).empty()) << "the gap is still in the hand";
    window.letGo();
    const std::vector<nlohmann::json> events = journal(window, 1);
    ASSERT_EQ(namesOf(events), Names{"turned"});
    EXPECT_EQ(events[0]["seat"], "seat-SR-CO");
    EXPECT_NEAR(events[0]["clock_deg"].get<double>(), 150.0, 3.0); // a pixel on that circle is 1°
    EXPECT_EQ(events[0]["set_in"]["side"], "compressor");
}

TEST_F(Session, AFaceIsFlippedByItsPictureAndByKey) {
    DrivenWindow window = open({sheetWithARing()});
    window.press(names::kItsSeat);
    window.press(names::kSharp);
    // Whoever sees the sharp face from the compressor side has the rounded one on the turbine side.
    EXPECT_EQ(journal(window, 1)[0]["reference_face_looks"], "turbine");
    window.key("f");
    const std::vector<nlohmann::json> events = journal(window, 2);
    EXPECT_EQ(namesOf(events), (Names{"faced", "faced"}));
    EXPECT_EQ(events[1]["reference_face_looks"], "compressor");
}

TEST_F(Session, ThePieceIsTurnedOverAndTheDrainIsSaid) {
    DrivenWindow window = open({sheetWithARing()});
    window.press(names::kTipTowardMe);
    const nlohmann::json turned = journal(window, 1)[0];
    EXPECT_EQ(turned["up"], "turbine");
    EXPECT_EQ(turned["drain_deg"], 0.0);
    EXPECT_EQ(turned["drain_confirmed"], false);
    EXPECT_TRUE(window.shows(names::kDrainTowardMe));
    window.press(names::kDrainLeft);
    const nlohmann::json said = journal(window, 2)[1];
    EXPECT_EQ(said["up"], "turbine");
    EXPECT_EQ(said["drain_deg"], 270.0);
    EXPECT_EQ(said["drain_confirmed"], true);
    EXPECT_FALSE(window.shows(names::kDrainLeft));
}

TEST_F(Session, UndoAndRedoByButtonAndByKey) {
    DrivenWindow window = open({sheetWithARing()});
    window.press(names::kItsSeat);
    window.press(names::kSharp);
    window.press(names::kUndo);
    window.press(names::kRedo);
    window.key("ctrl+z");
    window.key("ctrl+y");
    EXPECT_EQ(namesOf(journal(window, 5)), (Names{"faced", "undone", "redone", "undone", "redone"}));
    // Nothing is left to bring back: the button and the key are of no effect.
    window.press(names::kRedo);
    window.key("ctrl+y");
    EXPECT_EQ(journalOf(person_).size(), 5U);
}

TEST_F(Session, ASavedBuildSheetIsWhatTheCheckReads) {
    const std::string given = sheetWithARing();
    EXPECT_EQ(gapwise({"check", given}).status, 1) << "its face is the wrong one";
    DrivenWindow window = open({given});
    window.press(names::kItsSeat);
    window.press(names::kSharp);
    window.press(names::kFile);
    // The field for the path lies left of the button.
    const Rectangle save = window.areaOf(names::kSave);
    window.pressAt({save.x - save.width, save.middle().y});
    window.key("ctrl+a");
    const std::string saved = scratch_.path("mended.build.json");
    window.type(saved);
    window.press(names::kSave);
    window.waitUntil("to save", [&] { return std::filesystem::exists(saved); });
    const Ended check = gapwise({"check", saved, "--json"});
    EXPECT_EQ(check.status, 0) << check.out << check.err;
    const nlohmann::json sheet = nlohmann::json::parse(std::ifstream{saved});
    ASSERT_EQ(sheet["seatings"].size(), 1U);
    EXPECT_EQ(sheet["seatings"][0]["clock_deg"], 90.0);
    EXPECT_EQ(sheet["seatings"][0]["reference_face_looks"], "turbine");
}

TEST_F(Session, AKilledProgramComesBackWhereItWas) {
    {
        DrivenWindow window = open({sheetWithARing()});
        window.press(names::kItsSeat);
        window.press(names::kSharp);
        const Rectangle dial = window.areaOf(names::kCompressorDial);
        window.dragAndHold({onSrCo(dial, 90.0), onSrCo(dial, 100.0), onSrCo(dial, 120.0)});
        window.kill();
    }
    DrivenWindow again = open({});
    EXPECT_FALSE(again.shows(names::kAlder)) << "not the opening screen";
    again.press(names::kGoOn);
    again.press(names::kItsSeat);
    again.key("period");
    const std::vector<nlohmann::json> events = journal(again, 2);
    // The gap that was in the hand was not let go: it goes on from 3:00, 1° clockwise, in the same journal.
    ASSERT_EQ(namesOf(events), (Names{"faced", "turned"}));
    EXPECT_EQ(events[1]["clock_deg"], 91.0);
    EXPECT_EQ(journalsOf(person_).size(), 1U);
}

TEST_F(Session, AJobThatWasLeftIsOnTheOpeningScreen) {
    {
        DrivenWindow window = open({"alder-72"});
        window.press(names::kFile);
        window.press(names::kLeave);
        EXPECT_TRUE(window.shows(names::kAlder));
        window.kill();
    }
    const DrivenWindow again = open({});
    EXPECT_TRUE(again.shows(names::kAlder));
}

TEST_F(Session, TheSheetAboutAPartIsReadTurnedAndLaidAway) {
    DrivenWindow window = open({sheetWithARing()});
    window.press(names::kItsSeat);
    window.press(names::kAbout);
    const Rectangle picture = window.areaOf(names::kAboutPicture);
    EXPECT_FALSE(window.shows(names::kSharp)) << "it lies over the card";
    const Point middle = picture.middle();
    window.drag({middle, {middle.x + 30.0, middle.y}, {middle.x + 60.0, middle.y + 20.0}});
    window.key("Escape");
    EXPECT_TRUE(window.shows(names::kSharp)) << "the part is still in hand";
    EXPECT_FALSE(window.shows(names::kAboutPicture));
    window.key("a");
    window.press(names::kCloseAbout);
    EXPECT_FALSE(window.shows(names::kAboutPicture));
    EXPECT_TRUE(journalOf(person_).empty()) << "reading changes nothing";
}

TEST_F(Session, AtTheBenchTheSheetShowsTheDemandOnlyWhenItIsAskedFor) {
    DrivenWindow window = open({sheetWithARing(), "--use", "bench"});
    window.press(names::kPieceStands);
    window.press(names::kDrainTowardMe);
    const std::size_t before = journalOf(person_).size();
    window.press(names::kItsSeat);
    window.press(names::kAbout);
    window.press(names::kShowTheDemand);
    const nlohmann::json looked = journal(window, before + 1).back();
    EXPECT_EQ(looked["event"], "looked_first");
    EXPECT_EQ(looked["seat"], "seat-SR-CO");
    EXPECT_FALSE(window.shows(names::kShowTheDemand));
}

TEST_F(Session, NothingIsDrawnWhileNothingHappens) {
    DrivenWindow window = open({sheetWithARing()});
    window.press(names::kItsSeat);
    const long before = window.pictures();
    int looks = 0;
    window.waitUntil("to be looked at", [&] { return ++looks > 50 || window.pictures() != before; });
    EXPECT_EQ(window.pictures(), before);
}

} // namespace gapwise::test
