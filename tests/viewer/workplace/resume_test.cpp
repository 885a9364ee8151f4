#include "viewer/workplace/workplace.h"

#include "tests/viewer/workplace/journal_lines.h"

#include <gmock/gmock.h>

namespace gapwise {

namespace {

using ::testing::ElementsAre;
using ::testing::Field;
using ::testing::HasSubstr;
using ::testing::IsEmpty;
using ::testing::SizeIs;

const SeatId kSrCo = seatOf(PartId{"SR-CO"});

/// A job in which something of everything was done.
void work(AtHand& hand) {
    hand.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{180.0}), true});
    hand.act(PartTakenOff{kSrCo});
    hand.place("SR-CO");
    hand.point("SR-CO", Side::Compressor, 90.0);
    hand.point("SR-CO", Side::Turbine, 10.0);
    hand.act(Undone{});
    hand.face("SR-CO", Side::Turbine);
    grant(hand.workplace, LookFirst{kSrCo});
    grant(hand.workplace, SaySeen{.seat = kSrCo, .gapSeen = Degrees{84.0}, .by = "Ilka Dorn"});
    if (hand.build().done(StepId{"S12"}))
        hand.act(StepUndone{StepId{"S12"}, "bearing drags", "Ilka Dorn"});
    hand.act(NoteWritten{"bearing bore looks dull", "Ilka Dorn"});
}

/// The same state folder after the program was killed: nobody left the job in order, but the system let go of
/// its journal.
Workplace startedAgain(AtHand& hand) {
    hand.workplace.journal.reset();
    return openWorkplace(hand.workplace.data, hand.workplace.stateFolder);
}

void expectTheSame(const Workplace& again, const AtHand& hand) {
    ASSERT_TRUE(again.job) << (again.note ? again.note->words : "no note");
    EXPECT_EQ(sheetOf(*again.job), sheetOf(hand.job()));
    EXPECT_EQ(again.job->use, hand.job().use);
    EXPECT_EQ(again.job->name, hand.job().name);
    EXPECT_EQ(again.job->state.canUndo, hand.job().state.canUndo);
    EXPECT_EQ(again.job->state.canRedo, hand.job().state.canRedo);
    EXPECT_EQ(again.job->state.lookedFirst, hand.job().state.lookedFirst);
    EXPECT_EQ(again.job->state.attitudeConfirmed, hand.job().state.attitudeConfirmed);
    EXPECT_EQ(again.journal->file(), hand.workplace.remembered->journal);
}

/// `alder-72-plate-on` without its outer rings, which lie open: rings can be taken off and set anew.
void startOpenAtTheCompressorEnd(AtHand& hand, Use use) {
    hand.startSheet("alder-72-plate-on", use);
    for (const char* part : {"PLATE", "PR-C1", "COLLAR-B", "DEFLECTOR", "THRUST", "SPACER", "COLLAR-A"})
        hand.act(PartTakenOff{seatOf(PartId{part})});
}

} // namespace

TEST(Resume, AKilledJobOnASheetComesBackExactlyWhereItWas) {
    AtHand hand;
    startOpenAtTheCompressorEnd(hand, Use::Bench);
    work(hand);
    Workplace again = startedAgain(hand);
    EXPECT_THAT(beginWith(again, "", Use::Practise), IsEmpty());
    expectTheSame(again, hand);
}

TEST(Resume, AKilledJobOnAFrameComesBackExactlyWhereItWas) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    hand.place("SR-CO");
    work(hand);
    hand.act(Undone{});
    grant(hand.workplace, TurnPiece{TurningMove::Rolled});
    Workplace again = startedAgain(hand);
    EXPECT_THAT(beginWith(again, "", Use::Show), IsEmpty());
    expectTheSame(again, hand);
}

TEST(Resume, TheSameJournalGoesOn) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    hand.place("SR-CO");
    Workplace again = startedAgain(hand);
    EXPECT_THAT(beginWith(again, "", Use::Practise), IsEmpty());
    grant(again, Act{FaceTurned{kSrCo, Side::Turbine, std::nullopt}});
    EXPECT_THAT(namesIn(again.journal->file()), ElementsAre("placed", "faced"));
}

TEST(Resume, ALineThatWasCutOffByTheKillIsLeftOut) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    hand.place("SR-CO");
    {
        std::ofstream{hand.workplace.journal->file(), std::ios::app} << R"({"event":"turned","seat":"se)";
    }
    Workplace again = startedAgain(hand);
    EXPECT_THAT(beginWith(again, "", Use::Practise), IsEmpty());
    expectTheSame(again, hand);
    grant(again, Act{Undone{}});
    EXPECT_THAT(namesIn(again.journal->file()), ElementsAre("placed", "undone"));
}

TEST(Resume, AJobThatWasLeftIsOfferedButNotOpened) {
    AtHand hand;
    hand.startSheet("alder-72-plate-on", Use::Bench);
    const std::filesystem::path journal = hand.workplace.journal->file();
    const std::string sheet = sheetOf(hand.job());
    leave(hand.workplace);
    EXPECT_FALSE(hand.workplace.job);
    Workplace again = startedAgain(hand);
    EXPECT_THAT(beginWith(again, "", Use::Practise), IsEmpty());
    EXPECT_FALSE(again.job);
    EXPECT_FALSE(again.note);
    EXPECT_THAT(again.offered.jobs, ElementsAre(Field(&OfferedJob::journal, journal)));
    grant(again, ContinueJob{journal});
    ASSERT_TRUE(again.job);
    EXPECT_EQ(sheetOf(*again.job), sheet);
    EXPECT_EQ(again.job->use, Use::Bench);
}

TEST(Resume, GoingToTheOpeningScreenLeavesAndOffersTheNewestFirst) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    const std::filesystem::path first = hand.workplace.journal->file();
    hand.start("birch-150", Use::Practise);
    const std::filesystem::path second = hand.workplace.journal->file();
    grant(hand.workplace, ToOpening{});
    EXPECT_FALSE(hand.workplace.job);
    EXPECT_THAT(hand.workplace.offered.jobs,
                ElementsAre(Field(&OfferedJob::journal, second), Field(&OfferedJob::journal, first)));
    Workplace again = startedAgain(hand);
    EXPECT_THAT(beginWith(again, "", Use::Practise), IsEmpty());
    EXPECT_FALSE(again.job);
}

TEST(Resume, AJournalThatCannotBeReadIsNotOffered) {
    AtHand hand;
    {
        std::ofstream{hand.workplace.stateFolder / "1-foreign.journal"} << "not a journal\n";
    }
    EXPECT_THAT(startedAgain(hand).offered.jobs, IsEmpty());
}

TEST(Resume, AJournalThatIsGoneIsToldAtTheOpeningScreen) {
    AtHand hand;
    hand.start("alder-72", Use::Practise);
    std::filesystem::remove(hand.workplace.journal->file());
    Workplace again = startedAgain(hand);
    EXPECT_THAT(beginWith(again, "", Use::Practise), IsEmpty());
    EXPECT_FALSE(again.job);
    ASSERT_TRUE(again.note && again.note->refused);
    EXPECT_THAT(again.note->words, HasSubstr(hand.workplace.remembered->journal.string()));
}

TEST(BeginWith, NothingIsTheOpeningScreen) {
    AtHand hand;
    EXPECT_THAT(beginWith(hand.workplace, "", Use::Practise), IsEmpty());
    EXPECT_FALSE(hand.workplace.job);
    EXPECT_FALSE(hand.workplace.note);
}

TEST(BeginWith, AFramesIdOrPathStartsItForTheUse) {
    AtHand hand;
    EXPECT_THAT(beginWith(hand.workplace, "birch-150", Use::Show), IsEmpty());
    ASSERT_TRUE(hand.workplace.job);
    EXPECT_EQ(hand.job().frame.id.text, "birch-150");
    EXPECT_EQ(hand.job().use, Use::Show);
    const std::filesystem::path frame = hand.workplace.data.root / "frames" / "alder-72.json";
    EXPECT_THAT(beginWith(hand.workplace, std::filesystem::relative(frame).string(), Use::Bench), IsEmpty());
    EXPECT_EQ(hand.job().frame.id.text, "alder-72");
    // Whatever folder the next start is in, the journal finds it.
    EXPECT_EQ(readJournal(hand.workplace.journal->file())->head.frame,
              std::filesystem::absolute(std::filesystem::relative(frame)).string());
}

TEST(BeginWith, ABuildSheetStartsAsItSays) {
    AtHand hand;
    const std::filesystem::path sheet = hand.sheetFile("alder-72-plate-on");
    EXPECT_THAT(beginWith(hand.workplace, std::filesystem::relative(sheet).string(), Use::Bench), IsEmpty());
    ASSERT_TRUE(hand.workplace.job);
    EXPECT_EQ(hand.job().name, "alder-72-plate-on.build.json");
    EXPECT_EQ(hand.job().use, Use::Bench);
}

TEST(BeginWith, WhatCannotBeReadIsAnErrorThatNamesIt) {
    AtHand hand;
    const std::filesystem::path bad = hand.workplace.stateFolder / "bad.build.json";
    {
        std::ofstream{bad} << R"({"format": "gapwise.build/1", "frame": "no-such-frame", "seatings": []})";
    }
    for (const std::string& what : {bad.string(), (bad.parent_path() / "none.json").string()}) {
        const Errors errors = beginWith(hand.workplace, what, Use::Practise);
        ASSERT_FALSE(errors.empty());
        EXPECT_THAT(errors.front().where, HasSubstr(what));
    }
    EXPECT_FALSE(hand.workplace.job);
    EXPECT_THAT(startedAgain(hand).offered.jobs, SizeIs(0)) << "nothing was begun";
}

TEST(Resume, AJobThatWasSavedOverItsOwnSheetIsNotDoneTwice) {
    AtHand hand;
    const std::filesystem::path sheet = hand.workplace.stateFolder / "mine.build.json";
    std::filesystem::copy_file(hand.sheetFile("alder-72-plate-on"), sheet);
    grant(hand.workplace, StartJob{.frame = {}, .use = Use::Practise, .sheet = sheet});
    ASSERT_TRUE(hand.workplace.job);
    hand.act(PartTakenOff{seatOf(PartId{"PLATE"})});
    grant(hand.workplace, SaveSheet{sheet});
    Workplace again = startedAgain(hand);
    EXPECT_THAT(beginWith(again, "", Use::Practise), IsEmpty());
    expectTheSame(again, hand);
    grant(again, Act{Undone{}});
    EXPECT_TRUE(again.job->state.build.in(seatOf(PartId{"PLATE"})));
}

TEST(Resume, ThePersonStandsWhereHeStoodWithThePartInHand) {
    AtHand hand;
    hand.startSheet("alder-72-plate-on", Use::Show);
    grant(hand.workplace, TakeInHand{PartId{"SR-CO"}});
    grant(hand.workplace, ReadAbout{About{PartId{"THRUST"}}});
    const Standpoint standpoint{.kind = LookKind::Free, .pulledApart = 0.5, .zoom = 2.0};
    grant(hand.workplace, LookAgain{standpoint});
    rememberStanding(hand.workplace);
    Workplace again = startedAgain(hand);
    EXPECT_THAT(beginWith(again, "", Use::Practise), IsEmpty());
    ASSERT_TRUE(again.job);
    EXPECT_EQ(again.job->standpoint, standpoint);
    EXPECT_EQ(again.job->inHand, PartId{"SR-CO"});
    EXPECT_EQ(again.job->about, About{PartId{"THRUST"}}) << "the sheet lies open where it lay";
}

} // namespace gapwise
