#include "viewer/workplace/workplace.h"

#include "tests/viewer/workplace/full_disk.h"
#include "tests/viewer/workplace/journal_lines.h"

#include "models/build/read_build.h"
#include "models/frame/sets.h"

#include <gmock/gmock.h>

#include <set>

namespace gapwise {

namespace {

using ::testing::Contains;
using ::testing::ElementsAre;
using ::testing::Field;
using ::testing::HasSubstr;
using ::testing::IsEmpty;

const SeatId kSrCo = seatOf(PartId{"SR-CO"});

double clockOf(const AtHand& hand, const SeatId& seat) {
    return hand.build().in(seat)->index->from(Side::Compressor).value;
}

/// A frame with one snap ring in its groove, its gap at 3:00 from the compressor side.
void startWithARing(AtHand& hand, Use use) {
    hand.start("alder-72", use);
    hand.place("SR-CO");
    hand.point("SR-CO", Side::Compressor, 90.0);
}

Turning turningTo(double degrees) {
    return Turning{kSrCo, Clock::seenFrom(Side::Compressor, Degrees{degrees})};
}

IndexTurned turnedTo(double degrees) {
    return IndexTurned{kSrCo, Clock::seenFrom(Side::Compressor, Degrees{degrees}), std::nullopt};
}

/// A file that no folder can lie below, whoever asks.
std::filesystem::path belowAFile(const AtHand& hand) {
    const std::filesystem::path file = hand.workplace.stateFolder / "a-file";
    std::ofstream{file} << "in the way\n";
    return file / "deeper";
}

} // namespace

TEST(Workplace, OffersTheFramesAndTheSamples) {
    const AtHand hand;
    EXPECT_FALSE(hand.workplace.job);
    EXPECT_THAT(hand.workplace.offered.frames, Contains(Field(&OfferedFrame::id, "alder-72")));
    EXPECT_THAT(hand.workplace.offered.samples,
                Contains(Field(&OfferedSample::file,
                               hand.workplace.data.root / "builds" / "alder-72-good.build.json")));
    EXPECT_THAT(hand.workplace.offered.jobs, IsEmpty());
}

TEST(Workplace, EveryWishButAStartIsNothingOnTheOpeningScreen) {
    AtHand hand;
    const std::filesystem::path sheet = hand.workplace.stateFolder / "none.build.json";
    const std::vector<Wish> wishes{Act{StepDone{StepId{"S06"}}},
                                   TakeInHand{PartId{"SR-CO"}},
                                   LookAgain{},
                                   TurnPiece{},
                                   DrainSaid{},
                                   turningTo(10.0),
                                   TurningLeft{},
                                   LookFirst{kSrCo},
                                   SaySeen{.seat = kSrCo, .gapSeen = Degrees{0.0}},
                                   SaveSheet{sheet},
                                   StartAgain{},
                                   ToOpening{},
                                   DismissNote{}};
    for (const Wish& wish : wishes)
        grant(hand.workplace, wish);
    EXPECT_FALSE(hand.workplace.job);
    EXPECT_FALSE(hand.workplace.note);
    EXPECT_TRUE(std::filesystem::is_empty(hand.workplace.stateFolder));
}

TEST(Workplace, AFrameStartsWithEveryPartButTheHousingOnTheTray) {
    AtHand hand;
    hand.start("alder-72", Use::Bench);
    EXPECT_EQ(hand.job().use, Use::Bench);
    EXPECT_EQ(hand.job().name, "not saved as a sheet");
    std::set<PartId> onTray;
    for (const PartId& part : partsOnTray(hand.job()))
        for (const PartId& piece : piecesOf(hand.job().frame, part)) // a set of screws lies there as one
            onTray.insert(piece);
    EXPECT_EQ(onTray.size(), hand.job().frame.parts.size() - 1);
    const Result<JournalContent> journal = readJournal(hand.workplace.journal->file());
    ASSERT_TRUE(journal);
    EXPECT_EQ(journal->head.frame, "alder-72");
    EXPECT_EQ(journal->head.use, "bench");
    EXPECT_THAT(journal->events, IsEmpty());
}

TEST(Workplace, ASheetStartsAsItSays) {
    AtHand hand;
    hand.startSheet("birch-150-half-a-turn", Use::Practise);
    EXPECT_EQ(hand.job().name, "birch-150-half-a-turn.build.json");
    EXPECT_EQ(clockOf(hand, kSrCo), 302.0); // as the sheet says
    EXPECT_EQ(hand.job().state.canUndo, 0U);
}

TEST(Workplace, AStartThatFailsLeavesTheOpenJobAsItWas) {
    AtHand hand;
    startWithARing(hand, Use::Practise);
    const std::filesystem::path journal = hand.workplace.journal->file();
    grant(hand.workplace, StartJob{.frame = "no-such-frame"});
    ASSERT_TRUE(hand.workplace.note && hand.workplace.note->refused);
    EXPECT_THAT(hand.workplace.note->words, HasSubstr("no-such-frame"));
    EXPECT_EQ(hand.job().frame.id.text, "alder-72");
    EXPECT_EQ(hand.workplace.journal->file(), journal);
    grant(hand.workplace, ContinueJob{hand.workplace.stateFolder / "none.journal"});
    EXPECT_TRUE(hand.workplace.note->refused);
    EXPECT_EQ(clockOf(hand, kSrCo), 90.0);
}

TEST(Workplace, NoJobStartsWithoutAPlaceForItsJournal) {
    AtHand hand;
    hand.workplace.stateFolder = belowAFile(hand);
    grant(hand.workplace, StartJob{.frame = "alder-72"});
    EXPECT_FALSE(hand.workplace.job);
    ASSERT_TRUE(hand.workplace.note && hand.workplace.note->refused);
    EXPECT_THAT(hand.workplace.note->words, HasSubstr("a-file"));
}

TEST(Workplace, AnActIsInTheJournalAndInTheJob) {
    AtHand hand;
    startWithARing(hand, Use::Practise);
    hand.face("SR-CO", Side::Turbine);
    EXPECT_THAT(namesIn(hand), ElementsAre("placed", "turned", "faced"));
    EXPECT_EQ(hand.build().in(kSrCo)->referenceFaceLooks, Side::Turbine);
}

// Room for some bytes of the line, so that the half that was written must be taken out again.
TEST(Workplace, AnActThatCannotBeWrittenIsRefusedAndNotInTheJob) {
    AtHand hand;
    startWithARing(hand, Use::Practise);
    const std::string journal = bytesOf(hand.workplace.journal->file());
    const std::string before = sheetOf(hand.job());
    {
        const FullDisk disk{journal.size() + 10};
        grant(hand.workplace, Act{turnedTo(120.0)});
    }
    ASSERT_TRUE(hand.workplace.note && hand.workplace.note->refused);
    EXPECT_THAT(hand.workplace.note->words, HasSubstr("nothing was changed"));
    EXPECT_EQ(sheetOf(hand.job()), before);
    EXPECT_EQ(hand.job().state.canUndo, 2U);
    EXPECT_EQ(bytesOf(hand.workplace.journal->file()), journal);
    hand.act(turnedTo(120.0));
    EXPECT_EQ(clockOf(hand, kSrCo), 120.0);
    EXPECT_FALSE(hand.workplace.note);
}

TEST(Workplace, WhatCannotBeDoneIsNeitherInTheJournalNorInTheJob) {
    AtHand hand;
    startWithARing(hand, Use::Practise);
    grant(hand.workplace, Act{PartPlaced{.part = PartId{"SR-CI"}, .seat = kSrCo}});
    ASSERT_TRUE(hand.workplace.note && hand.workplace.note->refused);
    EXPECT_THAT(hand.workplace.note->words, HasSubstr("SR-CO is in it"));
    EXPECT_THAT(namesIn(hand), ElementsAre("placed", "turned"));
    EXPECT_FALSE(hand.build().of(PartId{"SR-CI"}));
    grant(hand.workplace, DismissNote{});
    EXPECT_FALSE(hand.workplace.note);
}

TEST(Workplace, AGapThatIsBeingTurnedIsOneEventWhenItIsLetGo) {
    AtHand hand;
    startWithARing(hand, Use::Practise);
    for (const double degrees : {95.0, 110.0, 140.0})
        grant(hand.workplace, turningTo(degrees));
    EXPECT_EQ(hand.job().turning->index.from(Side::Compressor).value, 140.0);
    EXPECT_EQ(clockOf(hand, kSrCo), 90.0);
    EXPECT_THAT(namesIn(hand), ElementsAre("placed", "turned"));
    hand.act(turnedTo(140.0));
    EXPECT_FALSE(hand.job().turning);
    EXPECT_EQ(clockOf(hand, kSrCo), 140.0);
    EXPECT_THAT(namesIn(hand), ElementsAre("placed", "turned", "turned"));
}

TEST(Workplace, ATurningThatIsGivenUpLeavesNothing) {
    AtHand hand;
    startWithARing(hand, Use::Practise);
    grant(hand.workplace, turningTo(140.0));
    grant(hand.workplace, TurningLeft{});
    EXPECT_FALSE(hand.job().turning);
    EXPECT_EQ(clockOf(hand, kSrCo), 90.0);
    grant(hand.workplace, Turning{.seat = seatOf(PartId{"SR-TO"})});
    EXPECT_FALSE(hand.job().turning) << "nothing lies in that seat";
    EXPECT_THAT(namesIn(hand), ElementsAre("placed", "turned"));
}

TEST(Workplace, UndoAndRedoAreActsInTheJournal) {
    AtHand hand;
    startWithARing(hand, Use::Practise);
    hand.act(turnedTo(200.0));
    hand.act(Undone{});
    EXPECT_EQ(clockOf(hand, kSrCo), 90.0);
    hand.act(Redone{});
    EXPECT_EQ(clockOf(hand, kSrCo), 200.0);
    EXPECT_THAT(namesIn(hand), ElementsAre("placed", "turned", "turned", "undone", "redone"));
    grant(hand.workplace, Act{Redone{}});
    EXPECT_TRUE(hand.workplace.note && hand.workplace.note->refused);
    EXPECT_THAT(namesIn(hand), ElementsAre("placed", "turned", "turned", "undone", "redone"));
}

TEST(Workplace, StartingAgainKeepsTheFirstAttempt) {
    AtHand hand;
    startWithARing(hand, Use::Show);
    const std::filesystem::path first = hand.workplace.journal->file();
    grant(hand.workplace, StartAgain{});
    EXPECT_EQ(hand.job().use, Use::Show);
    EXPECT_THAT(hand.build().seatings, IsEmpty());
    EXPECT_NE(hand.workplace.journal->file(), first);
    EXPECT_THAT(namesIn(first), ElementsAre("placed", "turned"));
}

TEST(Workplace, ATurnOfThePieceIsBelievedUntilTheDrainIsSaid) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    hand.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{180.0}), true});
    grant(hand.workplace, TurnPiece{TurningMove::TippedOver});
    EXPECT_EQ(hand.job().attitude(), uprightAttitude(Side::Turbine, Degrees{0.0}));
    EXPECT_FALSE(hand.job().state.attitudeConfirmed);
    grant(hand.workplace, DrainSaid{Degrees{450.0}});
    EXPECT_EQ(hand.job().attitude(), uprightAttitude(Side::Turbine, Degrees{90.0}));
    EXPECT_TRUE(hand.job().state.attitudeConfirmed);
    EXPECT_THAT(namesIn(hand), ElementsAre("attitude", "attitude", "attitude"));
}

// For one who walked a quarter round the drain, toward the front, is at his right; tipped toward him it stays
// there. From the front the same move would have sent it to the back.
TEST(Workplace, AMoveIsNamedInThePictureOfWhereThePersonStands) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    hand.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{180.0}), true});
    Standpoint aside;
    aside.kind = LookKind::WhereIStand;
    aside.observer.stand = Degrees{90.0};
    grant(hand.workplace, LookAgain{aside});
    grant(hand.workplace, TurnPiece{TurningMove::TippedOver});
    EXPECT_EQ(hand.job().attitude(), uprightAttitude(Side::Turbine, Degrees{180.0}));
}

TEST(Workplace, LookingAndTakingInHandAreNoActs) {
    AtHand hand;
    startWithARing(hand, Use::Practise);
    const std::string before = sheetOf(hand.job());
    Standpoint apart;
    apart.pulledApart = 1.0;
    apart.observer.levelSide = Side::Turbine;
    grant(hand.workplace, LookAgain{apart});
    EXPECT_EQ(hand.job().standpoint, apart);
    EXPECT_EQ(hand.job().standingView().side, Side::Turbine);
    grant(hand.workplace, TakeInHand{PartId{"SR-CO"}});
    EXPECT_EQ(seatingInHand(hand.job())->seat, kSrCo);
    grant(hand.workplace, TakeInHand{PartId{"SR-CI"}});
    EXPECT_FALSE(seatingInHand(hand.job())) << "it lies on the tray";
    grant(hand.workplace, TakeInHand{});
    EXPECT_FALSE(hand.job().inHand);
    EXPECT_EQ(sheetOf(hand.job()), before);
    EXPECT_THAT(namesIn(hand), ElementsAre("placed", "turned"));
}

TEST(Workplace, WhatIsSeenIsReadInTheViewOfThePerson) {
    AtHand hand;
    hand.start("alder-72", Use::Bench);
    hand.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{0.0}), true});
    hand.place("SR-CO");
    grant(hand.workplace,
          SaySeen{.seat = kSrCo, .gapSeen = Degrees{90.0}, .referenceFaceVisible = false, .by = "Ilka Dorn"});
    const Seating& seating = *hand.build().in(kSrCo);
    // The drain lies away from the person, so the inlet is toward him: what he sees at 3 is at 9.
    EXPECT_EQ(clockOf(hand, kSrCo), 270.0);
    EXPECT_EQ(seating.referenceFaceLooks, Side::Turbine);
    EXPECT_EQ(seating.setIn, (View{Side::Compressor, Degrees{180.0}}));
    ASSERT_TRUE(seating.confirmed);
    EXPECT_EQ(seating.confirmed->by, "Ilka Dorn");
    EXPECT_EQ(seating.confirmed->said, Confirmation::Said::Before);
    EXPECT_THAT(namesIn(hand), ElementsAre("attitude", "placed", "confirmed"));
}

TEST(Workplace, WhatIsSaidAfterLookingFirstSaysSo) {
    AtHand hand;
    startWithARing(hand, Use::Bench);
    grant(hand.workplace, LookFirst{kSrCo});
    EXPECT_THAT(namesIn(hand), ElementsAre("placed", "turned", "looked_first"));
    grant(hand.workplace, SaySeen{.seat = kSrCo, .gapSeen = Degrees{88.0}, .by = "Ilka Dorn"});
    ASSERT_TRUE(hand.build().in(kSrCo)->confirmed);
    EXPECT_EQ(hand.build().in(kSrCo)->confirmed->said, Confirmation::Said::After);
    EXPECT_THAT(bytesOf(hand.workplace.journal->file()), HasSubstr(R"("said":"after")"));
    // Undoing everything does not make it unseen.
    while (hand.job().state.canUndo > 0)
        hand.act(Undone{});
    EXPECT_TRUE(hand.job().state.lookedFirst.contains(kSrCo));
}

TEST(Workplace, NothingIsSaidOfAnEmptySeat) {
    AtHand hand;
    hand.start("alder-72", Use::Bench);
    for (const Wish& wish :
         std::vector<Wish>{LookFirst{kSrCo}, SaySeen{.seat = kSrCo, .gapSeen = Degrees{0.0}}}) {
        hand.workplace.note.reset();
        grant(hand.workplace, wish);
        EXPECT_TRUE(hand.workplace.note && hand.workplace.note->refused);
    }
    EXPECT_THAT(namesIn(hand), IsEmpty());
}

// alder-72-pinned: the pin stands at 6:00.
TEST(Workplace, ABushThatIsLetGoNearItsPinFallsOntoIt) {
    AtHand hand;
    hand.start("alder-72-pinned", Use::Practise);
    hand.place("PIN-C");
    hand.place("BRG-C");
    const SeatId bush = seatOf(PartId{"BRG-C"});
    hand.point("BRG-C", Side::Compressor, 184.5);
    EXPECT_EQ(clockOf(hand, bush), 180.0);
    hand.point("BRG-C", Side::Compressor, 186.0);
    EXPECT_EQ(clockOf(hand, bush), 186.0);
}

TEST(Workplace, ASavedSheetIsTheBuild) {
    AtHand hand;
    startWithARing(hand, Use::Practise);
    const std::filesystem::path file = hand.workplace.stateFolder / "mine.build.json";
    grant(hand.workplace, SaveSheet{file});
    ASSERT_TRUE(hand.workplace.note);
    EXPECT_FALSE(hand.workplace.note->refused);
    EXPECT_EQ(hand.job().name, "mine.build.json");
    const Result<BuildSheet> read = readBuildSheet(hand.workplace.data, file);
    ASSERT_TRUE(read);
    EXPECT_EQ(toBuildSheet(read->build, read->frame), sheetOf(hand.job()));
}

TEST(Workplace, ASheetThatCannotBeSavedIsRefusedAndNothingIsWritten) {
    AtHand hand;
    startWithARing(hand, Use::Practise);
    const std::filesystem::path place = belowAFile(hand);
    grant(hand.workplace, SaveSheet{place / "mine.build.json"});
    ASSERT_TRUE(hand.workplace.note && hand.workplace.note->refused);
    EXPECT_EQ(hand.job().name, "not saved as a sheet");
    EXPECT_EQ(bytesOf(hand.workplace.stateFolder / "a-file"), "in the way\n");
    const std::filesystem::path whole = hand.workplace.stateFolder / "whole.build.json";
    {
        const FullDisk disk{20};
        grant(hand.workplace, SaveSheet{whole});
    }
    EXPECT_TRUE(hand.workplace.note && hand.workplace.note->refused);
    EXPECT_FALSE(std::filesystem::exists(whole));
    // The journal, the name of the open job and the file in the way: no half of a sheet.
    const std::filesystem::directory_iterator files{hand.workplace.stateFolder};
    EXPECT_EQ(std::distance(begin(files), end(files)), 3);
}

TEST(DemandShown, InPractiseWhenTheClockIsSetAndNotWhileItTurns) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    EXPECT_FALSE(demandShown(hand.job(), kSrCo)) << "the seat is empty";
    hand.place("SR-CO");
    EXPECT_FALSE(demandShown(hand.job(), kSrCo)) << "from the tray its clock is not known";
    hand.point("SR-CO", Side::Compressor, 90.0);
    EXPECT_TRUE(demandShown(hand.job(), kSrCo));
    grant(hand.workplace, turningTo(95.0));
    EXPECT_FALSE(demandShown(hand.job(), kSrCo));
    hand.place("SPACER");
    EXPECT_TRUE(demandShown(hand.job(), seatOf(PartId{"SPACER"}))) << "it has no clock to set";
}

TEST(DemandShown, AtTheBenchOnceItWasSaidOrLookedAtFirst) {
    AtHand hand;
    startWithARing(hand, Use::Bench);
    EXPECT_FALSE(demandShown(hand.job(), kSrCo));
    grant(hand.workplace, SaySeen{.seat = kSrCo, .gapSeen = Degrees{90.0}});
    EXPECT_TRUE(demandShown(hand.job(), kSrCo));
    hand.act(turnedTo(100.0));
    EXPECT_FALSE(demandShown(hand.job(), kSrCo)) << "set anew: what was said is void";
    grant(hand.workplace, LookFirst{kSrCo});
    EXPECT_TRUE(demandShown(hand.job(), kSrCo));
}

TEST(DemandShown, AlwaysInAShow) {
    AtHand hand;
    hand.start("alder-72", Use::Show);
    EXPECT_TRUE(demandShown(hand.job(), kSrCo));
    hand.place("SR-CO");
    grant(hand.workplace, turningTo(95.0));
    EXPECT_TRUE(demandShown(hand.job(), kSrCo));
}

TEST(Use, HasOneNameEachWay) {
    for (const Use use : {Use::Practise, Use::Bench, Use::Show})
        EXPECT_EQ(useNamed(nameOf(use)), use);
    EXPECT_FALSE(useNamed("exam"));
}

TEST(Workplace, AForeignFileIsNotWrittenOver) {
    AtHand hand;
    startWithARing(hand, Use::Practise);
    const std::filesystem::path foreign = hand.workplace.stateFolder / "of-another.build.json";
    std::ofstream{foreign} << "precious";
    grant(hand.workplace, SaveSheet{foreign});
    ASSERT_TRUE(hand.workplace.note);
    EXPECT_TRUE(hand.workplace.note->refused);
    EXPECT_THAT(hand.workplace.note->words, HasSubstr("is there already"));
    EXPECT_EQ(std::filesystem::file_size(foreign), 8U);
    const std::filesystem::path own = hand.workplace.stateFolder / "own.build.json";
    for (int time = 0; time < 2; ++time) {
        grant(hand.workplace, SaveSheet{own});
        ASSERT_TRUE(hand.workplace.note);
        EXPECT_FALSE(hand.workplace.note->refused) << hand.workplace.note->words;
    }
}

TEST(Workplace, StartingAgainBeginsWithTheSameSheet) {
    AtHand hand;
    hand.startSheet("alder-72-plate-on", Use::Practise);
    const std::size_t seated = hand.build().seatings.size();
    hand.act(PartTakenOff{seatOf(PartId{"PLATE"})});
    grant(hand.workplace, StartAgain{});
    EXPECT_EQ(hand.build().seatings.size(), seated);
    EXPECT_EQ(hand.job().state.canUndo, 0U);
}

TEST(Workplace, WhatHasNeitherGapNorFaceIsSaidToBeFullyHome) {
    AtHand hand;
    hand.start("alder-72", Use::Bench);
    hand.place("SPACER");
    hand.act(HomeStated{seatOf(PartId{"SPACER"}), false});
    grant(hand.workplace, SaySeen{.seat = seatOf(PartId{"SPACER"}), .by = "Ilka Dorn"});
    const Seating* seating = hand.build().in(seatOf(PartId{"SPACER"}));
    ASSERT_TRUE(seating);
    EXPECT_EQ(seating->home, true);
    EXPECT_TRUE(seating->confirmed);
}

TEST(Workplace, BeforeAClassAGapIsJudgedWhileItTurns) {
    for (const auto& [use, live] : {std::pair{Use::Show, true}, std::pair{Use::Practise, false}}) {
        AtHand hand;
        hand.startSheet("birch-150-half-a-turn", use);
        const auto broken = [&] { return hand.job().checked.count(RuleState::Broken); };
        ASSERT_EQ(broken(), 1U);
        grant(hand.workplace, Turning{kSrCo, Clock::seenFrom(Side::Compressor, Degrees{120.0})});
        EXPECT_EQ(broken(), live ? 0U : 1U);
        grant(hand.workplace, TurningLeft{});
        EXPECT_EQ(broken(), 1U);
    }
}

TEST(Workplace, OfALevelPieceThatIsTurnedRoundTheOtherEndIsBeforeThePerson) {
    for (const auto& [move, otherEnd] :
         {std::pair{TurningMove::Rolled, false}, std::pair{TurningMove::TurnedRound, true},
          std::pair{TurningMove::TippedOver, true}}) {
        AtHand hand;
        hand.start("alder-72", Use::Practise);
        const Side before = hand.job().standingView().side;
        grant(hand.workplace, TurnPiece{move});
        EXPECT_EQ(hand.job().standingView().side == before, !otherEnd);
    }
}

TEST(Workplace, AfterATurnThePieceIsLookedAtWholeFromWhereThePersonStands) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    grant(hand.workplace, LookAgain{{.kind = LookKind::Beside, .pulledApart = 0.7}});
    grant(hand.workplace, TurnPiece{TurningMove::Rolled});
    EXPECT_EQ(hand.job().standpoint.kind, LookKind::WhereIStand);
    EXPECT_EQ(hand.job().standpoint.pulledApart, 0.0);
    grant(hand.workplace, LookAgain{{.kind = LookKind::BothEnds}});
    grant(hand.workplace, TurnPiece{TurningMove::Rolled});
    EXPECT_EQ(hand.job().standpoint.kind, LookKind::BothEnds);
}

TEST(Workplace, AWayToTurnIsToldAsThePictureShowsIt) {
    AtHand hand;
    hand.startSheet("birch-150-half-a-turn", Use::Practise);
    const auto turnedFrom = [&](LookKind kind) {
        grant(hand.workplace, LookAgain{{.kind = kind}});
        EXPECT_EQ(hand.job().checked.findings.front().verdict.rule->id.text, "SR-CO.gap");
        return hand.job().checked.findings.front().words;
    };
    EXPECT_THAT(turnedFrom(LookKind::FromTurbine), HasSubstr("as seen from the turbine side"));
    EXPECT_THAT(turnedFrom(LookKind::FromCompressor), HasSubstr("as seen from the compressor side"));
}

TEST(About, TheSheetGoesAlongWithTheHand) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    grant(hand.workplace, ReadAbout{About{PartId{"SR-CO"}, Degrees{12.0}, Degrees{5.0}}});
    ASSERT_TRUE(hand.job().about);
    grant(hand.workplace, TakeInHand{PartId{"SR-CO"}});
    EXPECT_EQ(hand.job().about->azimuth, Degrees{12.0}) << "it was about this part";
    grant(hand.workplace, TakeInHand{PartId{"SR-CI"}});
    EXPECT_EQ(hand.job().about, About{PartId{"SR-CI"}});
    grant(hand.workplace, TakeInHand{});
    EXPECT_FALSE(hand.job().about);
    grant(hand.workplace, TakeInHand{PartId{"SR-CI"}});
    EXPECT_FALSE(hand.job().about) << "taking in hand opens none";
}

TEST(About, OfAnUnknownPartThereIsNoSheet) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    grant(hand.workplace, ReadAbout{About{PartId{"NONE"}}});
    EXPECT_FALSE(hand.job().about);
}

} // namespace gapwise
