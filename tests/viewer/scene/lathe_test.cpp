#include "lathe.h"

#include <gtest/gtest.h>

namespace gapwise {

// The tests' own bodies must be sound before anything is proven with them.

TEST(Lathe, ClosedRingHasItsPolygonsVolume) {
    const lathe::Ring ring{.boreRadius = 5.0, .outerRadius = 9.0, .zFrom = 2.0, .zTo = 6.0};
    EXPECT_NEAR(signedVolume(lathe::turned({ring}, 48).faces), 4.0 * lathe::polygonRingArea(ring, 48), 1e-9);
}

TEST(Lathe, SolidDiscHasItsPolygonsVolume) {
    const lathe::Ring disc{.boreRadius = 0.0, .outerRadius = 9.0, .zFrom = 0.0, .zTo = 1.0};
    EXPECT_NEAR(signedVolume(lathe::turned({disc}, 48).faces), lathe::polygonRingArea(disc, 48), 1e-9);
}

TEST(Lathe, GapTakesItsShareOfTheTurn) {
    const lathe::Ring open{.boreRadius = 5.0, .outerRadius = 9.0, .zFrom = 0.0, .zTo = 1.0, .gapDeg = 90.0};
    const lathe::Ring closed{.boreRadius = 5.0, .outerRadius = 9.0, .zFrom = 0.0, .zTo = 1.0};
    const double share =
        signedVolume(lathe::turned({open}, 300).faces) / signedVolume(lathe::turned({closed}, 400).faces);
    EXPECT_NEAR(share, 0.75, 1e-9);
}

} // namespace gapwise
