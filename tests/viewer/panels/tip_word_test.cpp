#include "viewer/panels/tip_word.h"

#include "tests/viewer/panels/desk.h"
#include "viewer/panels/draw.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

/// How far a point is from an area, in pixels.
double awayFrom(const Area& area, double x, double y) {
    const double dx = std::max({area.x - x, 0.0, x - area.right()});
    const double dy = std::max({area.y - y, 0.0, y - area.bottom()});
    return std::hypot(dx, dy);
}

} // namespace

TEST(TipWord, KeepsBesideItsTipAllRoundTheDial) {
    desk::Desk desk;
    const Surface surface{.frame = desk.panels};
    const Area area{0.0, 0.0, 290.0, 290.0};
    const Round rim{145.0, 145.0, 140.0};
    for (double clock = 0.0; clock < 360.0; clock += 15.0) {
        const ImVec2 at = rim.at(Degrees{clock});
        const Tip tip{static_cast<double>(at.x), static_cast<double>(at.y), 12.0, Degrees{clock}};
        const TipWord word = tipWordOf(tip, "you stand here ?", area, surface);
        EXPECT_LT(awayFrom(word.place, tip.x, tip.y), 20.0) << clock;
        EXPECT_GT(word.place.x, -8.0) << clock;
        EXPECT_LT(word.place.right(), area.right() + 8.0) << clock;
        std::string all;
        for (const std::string& line : word.lines)
            all += (all.empty() ? "" : " ") + line;
        EXPECT_EQ(all, "you stand here ?") << clock;
    }
}

} // namespace gapwise
