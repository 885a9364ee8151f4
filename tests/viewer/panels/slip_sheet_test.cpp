#include "tests/viewer/panels/desk.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <imgui.h>

#include <filesystem>
#include <fstream>
#include <sstream>

namespace gapwise {

namespace {

using desk::Desk;

std::string contentOf(const std::filesystem::path& file) {
    std::ifstream in{file};
    std::ostringstream text;
    text << in.rdbuf();
    return text.str();
}

} // namespace

TEST(SlipSheet, AJobThatIsGoneOnWithTellsWhereOneStopped) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.at.act(PersonCame{"R. Ohlin", Role::Technician});
    desk.at.place("SR-TI");
    const std::filesystem::path journal = desk.workplace.journal->file();
    grant(desk.workplace, ToOpening{});
    grant(desk.workplace, ContinueJob{journal});
    desk.frames(2);
    ASSERT_TRUE(desk.job().slip);
    EXPECT_TRUE(desk.job().step) << "under it the step that comes next";
    ASSERT_TRUE(desk.has("slip/Go on"));
    EXPECT_FALSE(desk.has("step/Close"));
    desk.picture("slip");
    desk.click("slip/Go on");
    EXPECT_FALSE(desk.job().slip);
    desk.frame();
    EXPECT_TRUE(desk.has("step/Close"));
}

TEST(SlipSheet, EscapeLaysItAway) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    grant(desk.workplace, ReadSlip{});
    desk.frame();
    desk.key(ImGuiKey_Escape);
    EXPECT_FALSE(desk.job().slip);
}

TEST(SlipSheet, ANewJobBeginsWithoutIt) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    EXPECT_FALSE(desk.job().slip);
}

TEST(SlipSheet, IsSavedAsTextForTheNextShift) {
    Desk desk;
    desk.start("alder-72", Use::Practise);
    desk.at.act(PersonCame{"R. Ohlin", Role::Technician});
    desk.at.place("SR-TI");
    desk.click("banner/File …");
    desk.frame();
    desk.click("file/Slip for the next shift");
    ASSERT_TRUE(desk.job().slip);
    const std::filesystem::path file = desk.workplace.stateFolder / "slip.txt";
    desk.panels.drafts.slipFile = file.string();
    desk.frame();
    desk.click("slip/Save the text");
    const std::string text = contentOf(file);
    EXPECT_THAT(text, testing::HasSubstr("R. Ohlin"));
    EXPECT_THAT(text, testing::HasSubstr("SR-TI"));
    EXPECT_THAT(text, testing::HasSubstr("Practice frame"));
    desk.frame();
    desk.click("slip/Save the text");
    ASSERT_TRUE(desk.workplace.note);
    EXPECT_TRUE(desk.workplace.note->refused) << "nothing is written over";
}

} // namespace gapwise
