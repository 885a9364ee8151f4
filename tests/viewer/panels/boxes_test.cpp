#include "tests/viewer/panels/desk.h"

#include "viewer/panels/keys.h"
#include "viewer/panels/telling.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <imgui.h>

#include <algorithm>
#include <filesystem>

namespace gapwise {

using desk::Desk;

TEST(Findings, ATapJumpsToThePart) {
    Desk desk;
    desk.startSheet("birch-150-half-a-turn", Use::Show);
    const std::vector<const Finding*> told = toldFindings(desk.job());
    ASSERT_FALSE(told.empty());
    desk.click("notices/All findings");
    desk.frame();
    desk.click("findings/" + told.front()->verdict.rule->id.text);
    EXPECT_EQ(desk.job().inHand, told.front()->verdict.parts.front());
    EXPECT_EQ(desk.panels.drafts.box, Drafts::Box::None);
}

TEST(Findings, ThoseNotDueAreFoldedAwayWithTheirNumber) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    const Counts counts = countsOf(desk.job());
    EXPECT_GT(counts.notDue, 20);
    desk.type("l");
    const std::string fold =
        "findings/+ " + std::to_string(counts.notDue) + " not due yet: their parts are not placed";
    ASSERT_TRUE(desk.has(fold));
    desk.click(fold);
    EXPECT_TRUE(desk.panels.drafts.notDueOpen);
}

TEST(Findings, NothingIsToldOfWhatWasNotSet) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.at.place("SR-CO");
    EXPECT_TRUE(toldFindings(desk.job()).empty());
    EXPECT_GT(countsOf(desk.job()).untold, 0);
    desk.at.point("SR-CO", Side::Compressor, 270.0);
    EXPECT_FALSE(toldFindings(desk.job()).empty());
    EXPECT_GT(countsOf(desk.job()).broken, 0);
}

TEST(Findings, AtTheBenchNothingIsToldBeforeItIsSaid) {
    Desk desk;
    desk.startSheet("birch-150-half-a-turn", Use::Bench);
    EXPECT_EQ(countsOf(desk.job()).broken, 0);
    EXPECT_TRUE(toldFindings(desk.job()).empty());
}

TEST(Note, ARefusalIsShownWithItsReasonUntilItIsSeen) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.at.place("SR-TO");
    grant(desk.workplace, Act{PartPlaced{.part = PartId{"BRG-T"}, .seat = seatOf(PartId{"BRG-T"})}});
    desk.frame();
    ASSERT_TRUE(desk.workplace.note);
    EXPECT_THAT(desk.workplace.note->words, testing::HasSubstr("SR-TO is in the way"));
    desk.click("notices/Seen");
    EXPECT_FALSE(desk.workplace.note);
}

TEST(Note, StandsOverThePictureWhereTheBenchLeavesNoRoom) {
    Desk desk;
    desk.start("alder-72", Use::Bench);
    desk.at.act(AttitudeChanged{uprightAttitude(Side::Turbine, Degrees{180.0}), true});
    grant(desk.workplace, TakeInHand{PartId{"BRG-T"}});
    desk.workplace.note = Note{"the reason", true};
    desk.frame();
    EXPECT_TRUE(desk.has("notices/Seen"));
}

TEST(FileBox, SavesTheBuildSheet) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.at.place("SR-CO");
    const std::filesystem::path file = desk.workplace.stateFolder / "mine.build.json";
    desk.panels.drafts.file = file.string();
    desk.click("banner/File …");
    desk.click("file/Save the build sheet");
    EXPECT_TRUE(std::filesystem::exists(file));
    ASSERT_TRUE(desk.workplace.note);
    EXPECT_FALSE(desk.workplace.note->refused);
}

TEST(FileBox, LeavesAndStartsAgain) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.at.place("SR-CO");
    desk.click("banner/File …");
    desk.click("file/Start again …");
    EXPECT_FALSE(desk.build().seatings.empty()) << "it asks first";
    desk.frame();
    desk.click("file/Yes, start again");
    EXPECT_TRUE(desk.build().seatings.empty());
    EXPECT_FALSE(desk.panels.drafts.askedStartAgain);
    desk.click("banner/File …");
    desk.click("file/Leave: the job is kept where it stands");
    EXPECT_FALSE(desk.workplace.job);
    EXPECT_TRUE(desk.panels.picture.empty());
}

TEST(FileBox, StartingAgainMayBeThoughtBetterOf) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.at.place("SR-CO");
    desk.click("banner/File …");
    desk.click("file/Start again …");
    desk.frame();
    desk.click("file/No, go on here");
    EXPECT_NE(desk.build().of(PartId{"SR-CO"}), nullptr);
    desk.frame();
    EXPECT_TRUE(desk.has("file/Start again …"));
}

TEST(FileBox, EscapeCancelsStartingAgain) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.at.place("SR-CO");
    desk.click("banner/File …");
    desk.click("file/Start again …");
    ASSERT_TRUE(desk.panels.drafts.askedStartAgain);
    desk.key(ImGuiKey_Escape);
    EXPECT_FALSE(desk.panels.drafts.askedStartAgain);
    EXPECT_EQ(desk.panels.drafts.box, Drafts::Box::File) << "one thing at a time";
    desk.click("file/Start again …");
    desk.click("banner/File …");
    desk.frame();
    EXPECT_FALSE(desk.panels.drafts.askedStartAgain) << "a box that was closed asks nothing";
}

TEST(FileBox, OpensABuildSheetByItsPath) {
    Desk desk;
    desk.start("birch-150", Use::Show);
    desk.click("banner/File …");
    desk.click("file/open path");
    desk.type((desk.workplace.data.root / "builds" / "alder-72-good.build.json").string());
    desk.click("file/Open");
    EXPECT_EQ(desk.job().frame.id.text, "alder-72");
    EXPECT_EQ(desk.job().use, Use::Show);
    EXPECT_GT(desk.build().seatings.size(), 10U);
}

TEST(FileBox, APathThatLeadsNowhereLeavesTheJobOpen) {
    Desk desk;
    desk.start("birch-150", Use::Show);
    desk.panels.drafts.openPath = "/no/such.build.json";
    desk.click("banner/File …");
    desk.frame();
    desk.click("file/Open");
    ASSERT_TRUE(desk.workplace.note);
    EXPECT_THAT(desk.workplace.note->words, testing::HasSubstr("/no/such.build.json"));
    EXPECT_EQ(desk.job().frame.id.text, "birch-150");
}

TEST(Keys, AreListedOnceAndShown) {
    const auto keys = keyHelp();
    for (std::size_t i = 0; i < keys.size(); ++i)
        for (std::size_t k = i + 1; k < keys.size(); ++k)
            EXPECT_NE(keys[i].key, keys[k].key);
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.type("?");
    EXPECT_EQ(desk.panels.drafts.box, Drafts::Box::Keys);
    desk.key(ImGuiKey_Escape);
    EXPECT_EQ(desk.panels.drafts.box, Drafts::Box::None);
}

TEST(Keys, ARingIsPlacedSetFlippedConfirmedByKeysAlone) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.type("n");
    ASSERT_EQ(desk.job().inHand, PartId{"SR-TI"});
    desk.type("p");
    ASSERT_NE(desk.build().of(PartId{"SR-TI"}), nullptr);
    desk.type("v");
    for (int i = 0;
         i < 90 &&
         !(desk.build().of(PartId{"SR-TI"})->index &&
           std::abs(desk.build().of(PartId{"SR-TI"})->index->from(Side::Turbine).value - 270.0) < 5.0);
         ++i)
        desk.type(">");
    desk.type("f");
    if (desk.build().of(PartId{"SR-TI"})->referenceFaceLooks != Side::Turbine)
        desk.type("f");
    desk.type("y");
    EXPECT_TRUE(desk.build().of(PartId{"SR-TI"})->confirmed);
    desk.key(ImGuiKey_Z, true);
    EXPECT_FALSE(desk.build().of(PartId{"SR-TI"})->confirmed);
    desk.key(ImGuiKey_Delete);
    EXPECT_EQ(desk.build().of(PartId{"SR-TI"}), nullptr);
}

TEST(Keys, ArrowsAndSpacePressButtons) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    const std::size_t before = desk.wishes.size();
    for (int i = 0; i < 12 && desk.wishes.size() == before; ++i) {
        desk.key(ImGuiKey_DownArrow);
        desk.key(ImGuiKey_Space);
    }
    EXPECT_GT(desk.wishes.size(), before);
}

TEST(Keys, LooksHaveNumbers) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.type("2");
    EXPECT_EQ(desk.job().standpoint.kind, LookKind::FromCompressor);
    desk.type("]]");
    EXPECT_NEAR(desk.job().standpoint.pulledApart, 0.1, 1e-9) << "one wish a picture";
    desk.type("6");
    EXPECT_EQ(desk.job().standpoint.kind, LookKind::BothEnds);
}

} // namespace gapwise
