#include "viewer/panels/card_telling.h"

#include "tests/viewer/panels/desk.h"
#include "viewer/panels/show_me.h"
#include "viewer/panels/telling.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

namespace gapwise {

namespace {

using desk::Desk;
using ::testing::HasSubstr;

const SeatId kSrCo = seatOf(PartId{"SR-CO"});

/// SR-CO half a turn off and the wrong way round, in hand; set at the bench with the drain away.
void holdWrong(Desk& desk) {
    desk.start("alder-72", Use::Practise);
    desk.at.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{0.0}), true});
    desk.at.place("SR-CO");
    grant(desk.workplace, TakeInHand{PartId{"SR-CO"}});
    desk.frames(2);
    desk.click("card/3");
    desk.click("card/rounded");
    desk.frames(2);
}

std::string allWords(const std::vector<ToldPage>& pages, std::size_t finding) {
    std::string words;
    for (const ToldPage& page : pages)
        if (page.finding == finding)
            for (const ToldLine& line : page.lines)
                words += (words.empty() ? "" : " ") + line.words;
    return words;
}

std::string withoutSpaces(std::string words) {
    std::erase(words, ' ');
    return words;
}

} // namespace

TEST(CardTelling, NoWordIsCutOffHoweverLittleRoomThereIs) {
    Desk desk;
    holdWrong(desk);
    const std::vector<const Finding*> findings = toldFindingsOf(desk.job(), kSrCo);
    ASSERT_GE(findings.size(), 2U);
    const Surface surface{.frame = desk.panels};
    for (const double height : {10.0, 40.0, 90.0, 400.0}) {
        const Area area{0.0, 0.0, 300.0, height};
        const std::vector<ToldPage> pages = pagesOf(findings, area, surface);
        for (std::size_t i = 0; i < findings.size(); ++i)
            EXPECT_THAT(withoutSpaces(allWords(pages, i)), HasSubstr(withoutSpaces(findings[i]->words)))
                << height;
        for (const ToldPage& page : pages) {
            double used = 0.0;
            for (const ToldLine& line : page.lines) {
                used += (&line == &page.lines.front() ? 0.0 : line.above) + lineHeightOf(line.type.font);
                EXPECT_LE(static_cast<double>(sizeOf(line.type.font, line.words).x), area.width + 1.0);
            }
            EXPECT_TRUE(page.lines.size() == 1 || used <= height + 1.5) << height;
        }
    }
}

TEST(CardTelling, AParagraphThatFitsAPageStaysWhole) {
    Desk desk;
    holdWrong(desk);
    const Area area{0.0, 0.0, 390.0, 120.0};
    const std::vector<const Finding*> findings = toldFindingsOf(desk.job(), kSrCo);
    for (const ToldPage& page : pagesOf(findings, area, Surface{.frame = desk.panels}))
        EXPECT_GT(page.lines.front().paragraph, 0.0) << page.lines.front().words;
}

TEST(CardTelling, TheQuestionAndWhatItMattersComeAfterTheWords) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.at.place("SR-CO");
    desk.at.point("SR-CO", Side::Compressor, 270.0);
    const std::vector<const Finding*> findings = toldFindingsOf(desk.job(), kSrCo);
    ASSERT_FALSE(findings.empty());
    ASSERT_FALSE(findings.front()->question.empty());
    const std::string words =
        allWords(pagesOf(findings, {0.0, 0.0, 320.0, 200.0}, Surface{.frame = desk.panels}), 0);
    EXPECT_THAT(withoutSpaces(words), HasSubstr(withoutSpaces(findings.front()->question)));
    EXPECT_THAT(words, HasSubstr("Why it matters: "));
}

TEST(CardTelling, ThePagesAreTurnedAndComeRoundAgain) {
    Desk desk;
    holdWrong(desk);
    const auto press = [&] {
        for (const char* label : {"card/more", "card/next finding", "card/from the top"})
            if (desk.has(label))
                return desk.click(label);
        FAIL() << "no press turns the page";
    };
    press();
    EXPECT_EQ(desk.panels.drafts.cardPage, 1U);
    for (int i = 0; i < 12 && desk.panels.drafts.cardPage != 0; ++i) {
        desk.frame();
        press();
    }
    EXPECT_EQ(desk.panels.drafts.cardPage, 0U);
}

TEST(CardTelling, AnotherJudgementIsToldFromItsFirstPage) {
    Desk desk;
    holdWrong(desk);
    desk.panels.drafts.cardPage = 1;
    desk.frame();
    EXPECT_EQ(desk.panels.drafts.cardPage, 1U) << "the same is read on";
    desk.at.point("SR-CO", Side::Compressor, 250.0);
    desk.frame();
    EXPECT_EQ(desk.panels.drafts.cardPage, 0U);
}

TEST(ShowMe, LooksFirstAsTheSheetReadsThenAsItWasSet) {
    Desk desk;
    holdWrong(desk);
    const Attitude before = desk.job().attitude();
    const Observer stood = desk.job().standpoint.observer;
    const Finding& finding = *toldFindingsOf(desk.job(), kSrCo).front();
    EXPECT_EQ(showMeOf(desk.job(), finding)->words, "as printed");
    desk.click("card/Show me");
    EXPECT_EQ(desk.job().standpoint.kind, LookKind::FromCompressor);
    desk.frame();
    EXPECT_EQ(showMeOf(desk.job(), *toldFindingsOf(desk.job(), kSrCo).front())->words, "as you set it");
    desk.type("e");
    EXPECT_EQ(desk.job().standpoint.kind, LookKind::WhereIStand);
    EXPECT_EQ(desk.job().attitude(), before) << "nothing is turned";
    EXPECT_EQ(desk.job().standpoint.observer, stood) << "nobody walks";
}

TEST(ShowMe, SaysNotAsYouSetItOnceThePieceWasTurned) {
    Desk desk;
    holdWrong(desk);
    desk.at.act(AttitudeChanged{uprightAttitude(Side::Turbine, Degrees{0.0}), true});
    Standpoint standpoint = desk.job().standpoint;
    standpoint.kind = LookKind::FromCompressor;
    grant(desk.workplace, LookAgain{standpoint});
    EXPECT_EQ(showMeOf(desk.job(), *toldFindingsOf(desk.job(), kSrCo).front())->words, "as I stand");
}

TEST(ShowMe, TheTurbineSidesRuleIsShownFromTheTurbineSide) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.at.place("SR-TO");
    desk.at.point("SR-TO", Side::Turbine, 270.0);
    const std::vector<const Finding*> findings = toldFindingsOf(desk.job(), seatOf(PartId{"SR-TO"}));
    ASSERT_FALSE(findings.empty());
    EXPECT_EQ(showMeOf(desk.job(), *findings.front())->standpoint.kind, LookKind::FromTurbine);
}

TEST(ShowMe, AnOpenFindingHasNoMistakeToShow) {
    Desk desk;
    desk.start("alder-72", Use::Show);
    desk.at.place("SR-CO");
    const std::vector<const Finding*> findings = toldFindingsOf(desk.job(), kSrCo);
    ASSERT_FALSE(findings.empty());
    EXPECT_EQ(findings.front()->verdict.state, RuleState::Open);
    EXPECT_FALSE(showMeOf(desk.job(), *findings.front()));
}

} // namespace gapwise
