#include "tests/viewer/panels/desk.h"

#include "viewer/panels/open_path.h"
#include "viewer/panels/opening_words.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <imgui.h>

#include <algorithm>

namespace gapwise {

namespace {

using desk::Desk;
using std::chrono::hours;
using std::chrono::minutes;
using Moment = std::chrono::system_clock::time_point;

/// A moment of local time, in 2026.
Moment localMoment(int month, int day, int hour) {
    std::tm local{};
    local.tm_year = 126;
    local.tm_mon = month - 1;
    local.tm_mday = day;
    local.tm_hour = hour;
    local.tm_isdst = -1;
    return std::chrono::system_clock::from_time_t(std::mktime(&local));
}

const OfferedFrame kFloating{
    .id = "alder-72", .size = "Alder-72", .variant = "full_floating", .snapRings = 4};
const OfferedFrame kPinned{.id = "alder-72-pinned", .size = "Alder-72", .variant = "pinned", .sealRings = 1};

} // namespace

TEST(Opening, OffersTheThreeUsesAndWhatToBeginWith) {
    Desk desk;
    for (const char* use : {"opening/Practise", "opening/At the bench", "opening/Show"})
        EXPECT_TRUE(desk.has(use)) << use;
    desk.click("opening/At the bench");
    desk.click("opening/frame/alder-72");
    ASSERT_TRUE(desk.workplace.job);
    EXPECT_EQ(desk.job().use, Use::Bench);
    EXPECT_EQ(desk.job().frame.id.text, "alder-72");
}

TEST(Opening, BeginsWithASample) {
    Desk desk;
    desk.click("opening/Show");
    desk.frame();
    desk.click("opening/sample/alder-72-good");
    ASSERT_TRUE(desk.workplace.job);
    EXPECT_EQ(desk.job().use, Use::Show);
    EXPECT_GT(desk.build().seatings.size(), 10U);
}

TEST(Opening, ShowsEverySampleUnderItsFrame) {
    for (const Desk::Size& size : {Desk::Size{1366, 768}, Desk::Size{1280, 720}}) {
        Desk desk{size};
        for (const char* use : {"opening/Practise", "opening/At the bench"}) {
            desk.click(use);
            desk.frames(2);
            for (const OfferedSample& sample : desk.workplace.offered.samples) {
                const std::string stem = sample.file.stem().stem().string();
                const Area row = desk.areaOf("opening/sample/" + stem);
                const Area tile = desk.areaOf("opening/frame/" + sample.frame);
                ASSERT_FALSE(row.empty()) << stem;
                EXPECT_GE(row.x, tile.x) << stem;
                EXPECT_LE(row.right(), tile.right() + 0.5) << stem;
            }
        }
    }
}

TEST(Opening, GoesOnWithAJobThatWasLeft) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.at.place("SR-CO");
    grant(desk.workplace, ToOpening{});
    desk.frames(2);
    const auto entry = std::ranges::find_if(
        desk.panels.targets, [](const Target& target) { return target.name.starts_with("opening/job/"); });
    ASSERT_NE(entry, desk.panels.targets.end());
    desk.click(std::string{entry->name});
    ASSERT_TRUE(desk.workplace.job);
    EXPECT_NE(desk.build().of(PartId{"SR-CO"}), nullptr);
}

TEST(Opening, AJobInWhichNothingWasDoneIsNotShown) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    grant(desk.workplace, ToOpening{});
    desk.frames(2);
    ASSERT_EQ(desk.workplace.offered.jobs.size(), 1U);
    EXPECT_TRUE(std::ranges::none_of(
        desk.panels.targets, [](const Target& target) { return target.name.starts_with("opening/job/"); }));
}

TEST(Opening, WhyNothingWasOpenedIsToldThere) {
    Desk desk;
    desk.click("opening/path");
    desk.type("/no/such.build.json");
    desk.key(ImGuiKey_Enter);
    desk.frame();
    EXPECT_FALSE(desk.workplace.job);
    ASSERT_TRUE(desk.has("opening/notices/Seen"));
    desk.click("opening/notices/Seen");
    EXPECT_FALSE(desk.workplace.note);
}

TEST(Opening, ArrowsAndSpaceBeginAJob) {
    Desk desk;
    for (int i = 0; i < 24 && !desk.workplace.job; ++i) {
        desk.key(ImGuiKey_RightArrow);
        desk.key(ImGuiKey_Space);
    }
    EXPECT_TRUE(desk.workplace.job);
}

// The frames' own numbers: invented, and counted by hand in their files.
TEST(OfferedFrames, AreReadFromTheirFiles) {
    const AtHand hand;
    const std::vector<OfferedFrame>& frames = hand.workplace.offered.frames;
    const auto birch = std::ranges::find(frames, "birch-150", &OfferedFrame::id);
    ASSERT_NE(birch, frames.end());
    EXPECT_EQ(birch->size, "Birch-150");
    EXPECT_EQ(birch->variant, "pinned");
    EXPECT_EQ(birch->snapRings, 2);
    EXPECT_EQ(birch->sealRings, 4);
}

TEST(OpeningWords, NameAFrameByItsSizeAndItsBearings) {
    EXPECT_EQ(frameTitle(kFloating), "Alder-72 · full-floating bearing rings");
    EXPECT_EQ(frameTitle(kPinned), "Alder-72 · semi-floating pinned bushes");
    EXPECT_EQ(frameTitle({.size = "Elm-9"}), "Elm-9");
    EXPECT_EQ(ringWords(kFloating), "4 snap rings");
    EXPECT_EQ(ringWords(kPinned), "1 seal ring");
}

TEST(OpeningWords, NameASampleByWhatHappened) {
    EXPECT_EQ(sampleTitle({.file = "/b/alder-72-gap-over-slot.build.json", .frame = "alder-72"}),
              "Gap over slot");
    EXPECT_EQ(sampleTitle({.file = "/b/alder-72-pinned-good.build.json", .frame = "alder-72-pinned"}),
              "Good build");
    EXPECT_EQ(sampleTitle({.file = "/b/other.build.json", .frame = "alder-72"}), "Other");
    EXPECT_EQ(sampleWords({.seated = 1}), "1 part seated");
}

TEST(OpeningWords, NameAJobByFrameAndUse) {
    const std::vector<OfferedFrame> frames{kFloating, kPinned};
    EXPECT_EQ(jobTitle({.frame = "alder-72", .use = "bench"}, frames), "Alder-72 · At the bench");
    EXPECT_EQ(jobTitle({.use = "show", .sheet = "/b/alder-72-pinned-good.build.json"}, frames),
              "Alder-72, pinned · Show");
    EXPECT_EQ(jobTitle({.frame = "/f/elm-9.json", .use = "practise"}, frames), "elm-9 · Practise");
    EXPECT_EQ(jobWords({.acts = 1, .lastAct = localMoment(5, 6, 7)}, localMoment(5, 6, 7)),
              "just now · 1 act");
}

TEST(OpeningWords, SayHowLongAgo) {
    const Moment now = localMoment(11, 25, 12);
    EXPECT_EQ(agoWords(now, now), "just now");
    EXPECT_EQ(agoWords(now - minutes{1}, now), "1 minute ago");
    EXPECT_EQ(agoWords(now - minutes{59}, now), "59 minutes ago");
    EXPECT_EQ(agoWords(now - hours{2}, now), "today 10:00");
    EXPECT_EQ(agoWords(now - hours{13}, now), "yesterday 23:00");
    EXPECT_EQ(agoWords(localMoment(3, 4, 9), now), "04 Mar 09:00");
    EXPECT_EQ(agoWords(now - hours{24 * 400}, now), "21 Oct 2025");
    EXPECT_EQ(agoWords(now + hours{30}, now), "26 Nov 18:00") << "a clock that was set back";
}

TEST(OpenTyped, TellsAFrameFromABuildSheet) {
    EXPECT_EQ(openTyped("alder-72", Use::Show).frame, "alder-72");
    EXPECT_EQ(openTyped("/f/elm.json", Use::Show).frame, "/f/elm.json");
    const StartJob sheet = openTyped("/b/mine.build.json", Use::Bench);
    EXPECT_EQ(sheet.sheet, "/b/mine.build.json");
    EXPECT_EQ(sheet.use, Use::Bench);
    EXPECT_TRUE(sheet.frame.empty());
    EXPECT_TRUE(openTyped("mine.build.json", Use::Bench).sheet.is_absolute());
}

} // namespace gapwise
