#include "tests/viewer/panels/desk.h"

#include "models/frame/sets.h"
#include "viewer/panels/about_words.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <imgui.h>

#include <algorithm>
#include <set>

namespace gapwise {

namespace {

using desk::Desk;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::Not;

/// Everything that the sheet says at this moment, its text and what stands under the pictures.
std::string told(const Desk& desk) {
    const PartCard card = partCardOf(desk.job().frame, desk.job().about->part);
    std::string words = fromHereOf(desk.job(), card).words;
    const SheetText text = sheetTextOf(desk.job(), card);
    for (const auto& groups : {text.groups, text.beside})
        for (const SheetGroup& group : groups)
            for (const SheetParagraph& paragraph : group.paragraphs)
                words += "\n" + paragraph.words;
    return words;
}

bool picturesTell(const Desk& desk) {
    return std::ranges::any_of(desk.panels.portraits,
                               [](const Portrait& portrait) { return portrait.asTheRulesWant; });
}

/// SR-CO in its seat, in hand, at the bench; nothing was said of it.
void holdAtTheBench(Desk& desk) {
    desk.start("alder-72", Use::Bench);
    desk.at.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{180.0}), true});
    desk.at.place("SR-CO");
    grant(desk.workplace, TakeInHand{PartId{"SR-CO"}});
    desk.frames(2);
}

} // namespace

TEST(AboutSheet, OpensFromTheCardAndClosesByItsButton) {
    Desk desk;
    desk.start("alder-72", Use::Show);
    desk.click("tray/SR-CO");
    desk.click("card/About …");
    ASSERT_TRUE(desk.job().about);
    EXPECT_EQ(desk.job().about->part, PartId{"SR-CO"});
    desk.frame();
    EXPECT_FALSE(desk.has("card/Close")) << "it lies over the card";
    EXPECT_TRUE(desk.panels.picture.empty()) << "and over the picture";
    desk.click("about/Close");
    EXPECT_FALSE(desk.job().about);
    desk.frame();
    EXPECT_TRUE(desk.has("card/About …"));
    EXPECT_EQ(desk.job().inHand, PartId{"SR-CO"}) << "the part stays in hand";
}

TEST(AboutSheet, OpensAndClosesByItsKeyAndByEscape) {
    Desk desk;
    desk.start("alder-72", Use::Show);
    desk.type("n");
    const std::optional<PartId> held = desk.job().inHand;
    desk.type("a");
    ASSERT_TRUE(desk.job().about);
    EXPECT_EQ(desk.job().about->part, held);
    desk.type("a");
    EXPECT_FALSE(desk.job().about);
    desk.type("a");
    desk.key(ImGuiKey_Escape);
    EXPECT_FALSE(desk.job().about);
    EXPECT_EQ(desk.job().inHand, held) << "one thing at a time";
}

TEST(AboutSheet, WithNothingInHandIsAboutTheHousing) {
    Desk desk;
    desk.start("birch-150", Use::Show);
    desk.type("a");
    ASSERT_TRUE(desk.job().about);
    EXPECT_EQ(desk.job().about->part, desk.job().frame.housing);
}

TEST(AboutSheet, LeafsThroughAllPartsAndOncePerSet) {
    Desk desk;
    desk.start("birch-150", Use::Show);
    desk.type("a");
    const PartId first = desk.job().about->part;
    std::set<std::string> names;
    for (const Part& part : desk.job().frame.parts)
        names.insert(setNameOf(desk.job().frame, part.id));
    std::set<std::string> seen;
    for (std::size_t i = 0; i < names.size(); ++i) {
        seen.insert(setNameOf(desk.job().frame, desk.job().about->part));
        desk.click("about/Part after");
        desk.frame();
    }
    EXPECT_EQ(desk.job().about->part, first);
    EXPECT_EQ(seen, names);
    desk.click("about/Part before");
    EXPECT_NE(desk.job().about->part, first);
}

TEST(AboutSheet, WhatIsHiddenUnderItCannotBePressedByKey) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.at.place("SR-CO");
    grant(desk.workplace, TakeInHand{PartId{"SR-CO"}});
    desk.type("a");
    desk.type(">f");
    desk.key(ImGuiKey_Delete);
    const Seating* seating = desk.build().of(PartId{"SR-CO"});
    ASSERT_NE(seating, nullptr);
    EXPECT_FALSE(seating->index);
    EXPECT_FALSE(seating->referenceFaceLooks);
}

TEST(AboutSheet, MakesRoomForABoxOfTheBanner) {
    Desk desk;
    desk.start("alder-72", Use::Show);
    desk.type("a");
    desk.click("banner/Keys …");
    EXPECT_FALSE(desk.job().about);
    EXPECT_EQ(desk.panels.drafts.box, Drafts::Box::Keys);
}

TEST(AboutSheet, SaysBothClocksBothFacesAndHowGraveItIs) {
    Desk desk;
    desk.start("alder-72", Use::Show);
    desk.click("tray/SR-CO");
    desk.type("a");
    EXPECT_THAT(told(desk), HasSubstr("Gap at 3:00 from the compressor side, 9:00 from the turbine side"));
    EXPECT_THAT(told(desk), HasSubstr("Severity 3, early wear."));
    EXPECT_THAT(told(desk), HasSubstr("the sharp face"));
    EXPECT_TRUE(picturesTell(desk));
}

TEST(AboutSheet, AtTheBenchNothingIsRevealedBeforeItIsSaid) {
    Desk desk;
    holdAtTheBench(desk);
    desk.click("card/About …");
    desk.frame();
    for (const char* secret : {"3:00", "9:00", "gap right", "to the turbine side", "you must see"})
        EXPECT_THAT(told(desk), Not(HasSubstr(secret)));
    EXPECT_FALSE(picturesTell(desk));
    EXPECT_THAT(told(desk), HasSubstr("Stops the bearing")) << "what it is may be told";
    EXPECT_THAT(told(desk), HasSubstr("Seated all round")) << "that it belongs there is no secret";
}

TEST(AboutSheet, AtTheBenchOneMayLookFirstAndItIsNoted) {
    Desk desk;
    holdAtTheBench(desk);
    desk.click("card/About …");
    desk.frame();
    desk.click("about/Show the demand");
    EXPECT_TRUE(desk.job().state.lookedFirst.contains(seatOf(PartId{"SR-CO"})));
    desk.frame();
    EXPECT_THAT(told(desk), HasSubstr("3:00"));
    EXPECT_TRUE(picturesTell(desk));
    EXPECT_FALSE(desk.has("about/Show the demand"));
}

TEST(AboutSheet, AtTheBenchAllIsToldOnceItIsSaid) {
    Desk desk;
    holdAtTheBench(desk);
    grant(desk.workplace,
          SaySeen{.seat = seatOf(PartId{"SR-CO"}), .gapSeen = Degrees{90.0}, .referenceFaceVisible = false});
    desk.type("a");
    EXPECT_THAT(told(desk), HasSubstr("3:00"));
    EXPECT_FALSE(desk.has("about/Show the demand"));
}

TEST(AboutSheet, OfAPartOnTheTrayNothingIsRevealedBeforeAShow) {
    for (const Use use : {Use::Practise, Use::Bench}) {
        Desk desk;
        desk.start("alder-72", use);
        if (use == Use::Bench)
            desk.at.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{180.0}), true});
        grant(desk.workplace, ReadAbout{About{PartId{"SR-CO"}}});
        desk.frames(2);
        EXPECT_THAT(told(desk), Not(HasSubstr("3:00")));
        EXPECT_THAT(told(desk), HasSubstr("This is told once SR-CO is in its seat"));
        EXPECT_FALSE(picturesTell(desk));
        EXPECT_FALSE(desk.has("about/Show the demand")) << "there is nothing to look at first";
    }
}

TEST(AboutSheet, InPracticeItIsToldOnceItWasSet) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.at.place("SR-CO");
    grant(desk.workplace, ReadAbout{About{PartId{"SR-CO"}}});
    desk.frames(2);
    EXPECT_THAT(told(desk), Not(HasSubstr("3:00")));
    EXPECT_THAT(told(desk), HasSubstr("Set it as you think right"));
    desk.at.point("SR-CO", Side::Compressor, 200.0);
    desk.frames(2);
    EXPECT_THAT(told(desk), HasSubstr("3:00"));
    EXPECT_THAT(told(desk), Not(HasSubstr("to the turbine side"))) << "its face was not tried yet";
    EXPECT_FALSE(picturesTell(desk)) << "a picture would show the face too";
    desk.at.face("SR-CO", Side::Compressor);
    desk.frames(2);
    EXPECT_THAT(told(desk), HasSubstr("to the turbine side"));
    EXPECT_TRUE(picturesTell(desk));
}

TEST(AboutSheet, CautionsStandOnTheFirstPageBesideWhatItIs) {
    Desk desk;
    desk.start("birch-150", Use::Show);
    const PartCard card = partCardOf(desk.job().frame, desk.job().frame.rotor);
    ASSERT_FALSE(card.cautions.empty());
    const Surface surface{.frame = desk.panels};
    const std::vector<SheetColumn> columns =
        columnsOf(sheetTextOf(desk.job(), card), {0.0, 0.0, 437.0, 540.0}, {surface, true});
    ASSERT_GE(columns.size(), 2U);
    EXPECT_EQ(columns[0].front().paragraph.words, "What it is");
    EXPECT_EQ(columns[1].front().paragraph.kind, SheetParagraph::Kind::Signal);
    EXPECT_EQ(columns[1].front().paragraph.words, "DANGER") << "the gravest first";
}

TEST(AboutSheet, SaysWhatMustBeSeenFromWhereOneStands) {
    Desk desk;
    desk.start("alder-72", Use::Show);
    // The drain away: 3:00 from the compressor side appears at 9:00, by the view formula.
    desk.at.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{0.0}), true});
    const PartCard card = partCardOf(desk.job().frame, PartId{"SR-CO"});
    EXPECT_EQ(fromHereOf(desk.job(), card).clock, "9:00");
    EXPECT_EQ(
        fromHereOf(desk.job(), card).words,
        "From where you look now, the compressor side, you must see the sharp face, the gap at 9:00, to "
        "your left.");
    const PartCard housing = partCardOf(desk.job().frame, desk.job().frame.housing);
    EXPECT_THAT(fromHereOf(desk.job(), housing).words, IsEmpty());
}

// A turbine seal ring rides on the rotor until the rotor is in: it is judged as the rotor will go in.
TEST(AboutSheet, AtTheBenchARingOnTheRotorIsMeantAsItGoesIn) {
    Desk desk;
    desk.start("alder-72", Use::Bench);
    desk.at.act(AttitudeChanged{uprightAttitude(Side::Turbine, Degrees{180.0}), true});
    desk.at.place("PR-T1");
    grant(desk.workplace, LookFirst{seatOf(PartId{"PR-T1"})});
    const PartCard card = partCardOf(desk.job().frame, PartId{"PR-T1"});
    EXPECT_THAT(fromHereOf(desk.job(), card).words, ::testing::StartsWith("With ROTOR held as it goes in"));
}

TEST(AboutSheet, ADragTurnsThePictureAndNothingElse) {
    Desk desk;
    desk.start("alder-72", Use::Show);
    desk.type("a");
    const Area picture = desk.areaOf("about/picture");
    const Degrees before = desk.job().about->azimuth;
    desk.moveTo(picture.middleX(), picture.middleY());
    desk.press();
    desk.moveTo(picture.middleX() + 40.0, picture.middleY() + 10.0);
    desk.release();
    EXPECT_LT(desk.job().about->azimuth, before);
    EXPECT_TRUE(desk.job().log.events.empty());
    desk.click("about/Part after");
    EXPECT_EQ(desk.job().about->azimuth, About{}.azimuth) << "another part begins anew";
}

TEST(AboutSheet, GivesBackThreePlacesForPictures) {
    Desk desk;
    desk.start("alder-72", Use::Show);
    desk.type("a");
    ASSERT_EQ(desk.panels.portraits.size(), 3U);
    for (const Portrait& portrait : desk.panels.portraits) {
        EXPECT_GE(portrait.area.width, 150.0);
        EXPECT_GE(portrait.area.height, 120.0);
    }
    desk.type("a");
    EXPECT_TRUE(desk.panels.portraits.empty());
}

TEST(AboutSheet, LongTextIsReadOnPageByPage) {
    Desk desk{{1280, 720}};
    desk.start("alder-72", Use::Show);
    desk.click("tray/SR-CO");
    desk.type("a");
    ASSERT_TRUE(desk.has("about/Read on"));
    desk.click("about/Read on");
    EXPECT_EQ(desk.panels.drafts.aboutPage, 1U);
    desk.key(ImGuiKey_PageUp);
    EXPECT_EQ(desk.panels.drafts.aboutPage, 0U);
    desk.key(ImGuiKey_PageDown);
    EXPECT_EQ(desk.panels.drafts.aboutPage, 1U);
    desk.click("about/Part after");
    desk.frame();
    EXPECT_EQ(desk.panels.drafts.aboutPage, 0U);
}

TEST(AboutSheet, EveryPartOfEveryFrameIsWhole) {
    for (const Desk::Size& size : {Desk::Size{1366, 768}, Desk::Size{1280, 720}})
        for (const char* frame : {"alder-72", "alder-72-pinned", "birch-150"}) {
            Desk desk{size};
            desk.start(frame, Use::Show);
            for (const Part& part : desk.job().frame.parts) {
                grant(desk.workplace, ReadAbout{About{part.id}});
                desk.frame();
                ASSERT_EQ(desk.panels.portraits.size(), 3U) << part.id.text;
                const Area text{0.0, 0.0, 400.0, 460.0};
                const PartCard card = partCardOf(desk.job().frame, part.id);
                const Surface surface{.frame = desk.panels};
                for (const SheetColumn& column :
                     columnsOf(sheetTextOf(desk.job(), card), text, {surface, true}))
                    for (const SheetLine& line : column)
                        EXPECT_LE(line.y + line.height, text.height + 1.5) << part.id.text;
            }
        }
}

} // namespace gapwise
