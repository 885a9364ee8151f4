#include "viewer/scene/label_layout.h"

#include <gtest/gtest.h>

namespace gapwise {

namespace {

constexpr LabelRequest::Prefers kBelow = LabelRequest::Prefers::Below;

LabelRequest request(double x, double top, double bottom) {
    return {.width = 60.0,
            .height = 18.0,
            .about = {x - 10.0, top, 20.0, bottom - top},
            .upper = {x, top},
            .lower = {x, bottom}};
}

LabelRoom room() {
    return {.inside = {0.0, 0.0, 1000.0, 600.0}, .unit = 1.0};
}

} // namespace

// As crowded as a row of rings gets: a label every 25 pixels, each 60 wide.
TEST(Labels, NeverStandOverOneAnotherNorOutsideTheRoom) {
    std::vector<LabelRequest> requests;
    for (int i = 0; i < 30; ++i)
        requests.push_back(request(120.0 + 25.0 * i, 280.0, 320.0));
    const auto placed = placeLabels(requests, room());
    ASSERT_EQ(placed.size(), requests.size());
    for (std::size_t i = 0; i < placed.size(); ++i) {
        EXPECT_GT(placed[i].box.width, 0.0) << i;
        EXPECT_TRUE(room().inside.contains(placed[i].box)) << i;
        for (std::size_t k = 0; k < i; ++k)
            EXPECT_FALSE(placed[i].box.overlaps(placed[k].box)) << i << " and " << k;
    }
}

TEST(Labels, StandBesideObstaclesWhereTheyCan) {
    LabelRoom crowded = room();
    crowded.obstacles = {{430.0, 100.0, 140.0, 180.0}};
    const auto placed = placeLabels({request(500.0, 300.0, 340.0)}, crowded);
    EXPECT_FALSE(placed.front().box.overlaps(crowded.obstacles.front()));
}

TEST(Labels, StandWhereTheyPrefer) {
    LabelRequest below = request(500.0, 280.0, 320.0);
    below.prefers = kBelow;
    const PlacedLabel placed = placeLabels({below}, room()).front();
    EXPECT_GT(placed.box.top, 320.0);
    EXPECT_EQ(placed.leaderEnd, (Spot{500.0, 320.0}));
    EXPECT_EQ(placed.leaderStart.y, placed.box.top);
}

TEST(Labels, NameOfAnEndMovesOutwardOnly) {
    LabelRequest name = request(900.0, 300.0, 340.0);
    name.aside = LabelRequest::Aside::Right;
    LabelRoom crowded = room();
    crowded.obstacles = {{850.0, 0.0, 80.0, 290.0}};
    const PlacedLabel placed = placeLabels({name}, crowded).front();
    EXPECT_GE(placed.box.left + placed.box.width / 2.0, 900.0);
}

TEST(Labels, WithoutRoomAreLeftOut) {
    EXPECT_EQ(placeLabels({request(5.0, 5.0, 10.0)}, {.inside = {0.0, 0.0, 30.0, 30.0}}).front().box.width,
              0.0);
    EXPECT_TRUE(placeLabels({}, room()).empty());
}

TEST(Labels, RatherTangleThanStayAway) {
    // A wide text in a corner that others hem in.
    std::vector<LabelRequest> requests{request(940.0, 280.0, 320.0), request(965.0, 282.0, 318.0)};
    requests.push_back(request(955.0, 300.0, 302.0));
    requests.back().width = 300.0;
    for (const PlacedLabel& label : placeLabels(requests, room()))
        EXPECT_GT(label.box.width, 0.0);
}

} // namespace gapwise
