#include "tests/viewer/panels/desk.h"

#include "viewer/panels/card_flow.h"

#include <gtest/gtest.h>
#include <imgui.h>

namespace gapwise {

namespace {

/// Lays out within a picture of its own, as a panel does.
template <class Work>
void onPaper(const Work& work) {
    desk::Desk desk;
    ImGui::NewFrame();
    ImGui::Begin("paper");
    const Surface surface{.frame = desk.panels};
    work(SheetPaper{.surface = surface, .large = false});
    ImGui::End();
    ImGui::Render();
}

} // namespace

TEST(CardFlow, NothingIsCutOffAndNothingIsDrawnTwice) {
    onPaper([](const SheetPaper& paper) {
        const Area body{10.0, 10.0, 700.0, 120.0};
        CardFlow flow{body, paper};
        std::vector<int> drawn(30, 0);
        for (std::size_t i = 0; i < drawn.size(); ++i)
            flow.row(36.0, [&drawn, i, body](const Area& area) {
                ++drawn[i];
                EXPECT_LE(area.bottom(), body.bottom() + 1.0);
                EXPECT_LE(area.right(), body.right() + 1.0);
            });
        ASSERT_GT(flow.pages(), 1U);
        for (std::size_t page = 0; page < flow.pages(); ++page)
            flow.draw(page);
        for (const int count : drawn)
            EXPECT_EQ(count, 1);
    });
}

TEST(CardFlow, AHeadingStaysWithWhatFollowsIt) {
    onPaper([](const SheetPaper& paper) {
        // Room for three rows in a column: the heading would be the fourth.
        CardFlow flow{{0.0, 0.0, 330.0, 150.0}, paper};
        Area last{};
        for (int i = 0; i < 3; ++i)
            flow.row(36.0, [](const Area&) {});
        flow.text(SheetParagraph::Kind::Heading, "Tools");
        flow.row(36.0, [&last](const Area& area) { last = area; });
        EXPECT_EQ(flow.pages(), 2U);
        flow.draw(1);
        EXPECT_GT(last.y, 5.0) << "below its heading";
    });
}

TEST(CardFlow, AnEmptyOneHasAPage) {
    onPaper([](const SheetPaper& paper) {
        CardFlow flow{{0.0, 0.0, 700.0, 120.0}, paper};
        EXPECT_EQ(flow.pages(), 1U);
        flow.draw(0);
    });
}

} // namespace gapwise
