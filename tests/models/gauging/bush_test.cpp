#include "models/gauging/bush.h"

#include <gtest/gtest.h>

namespace gapwise::test {

TEST(PinnedBush, FloatsByPocketLessLength) {
    EXPECT_NEAR(axialFloatMm(20.20, 20.00), 0.20, 1e-12);
    EXPECT_LT(axialFloatMm(20.00, 20.05), 0.0);
}

// Worked by hand from the sizes of two invented frames.
TEST(PinnedBush, TurnsByTheWidthOfItsNotch) {
    EXPECT_NEAR(radians(pinPlay({4.30, 4.00, 18.94})), 0.0158, 5e-5);
    EXPECT_NEAR(pinPlay({4.30, 4.00, 18.94}).value, 0.91, 0.005);
    EXPECT_NEAR(pinPlay({2.70, 2.50, 9.4525}).value, 1.21, 0.005);
    EXPECT_LT(pinPlay({2.40, 2.50, 9.4525}).value, 0.0);
}

// Common practice, no source: beyond 2° the pin is lost, at 0 the bush is nipped.
TEST(PinnedBush, SaysByTurningWhetherItsPinHolds) {
    EXPECT_EQ(pinStateOf(Degrees{0.0}), PinState::Nipped);
    EXPECT_EQ(pinStateOf(Degrees{0.05}), PinState::Holds);
    EXPECT_EQ(pinStateOf(Degrees{2.0}), PinState::Holds);
    EXPECT_EQ(pinStateOf(Degrees{2.1}), PinState::Lost);
    EXPECT_EQ(adviceFor(PinState::Nipped), "it does not turn at all: it is nipped");
    EXPECT_EQ(adviceFor(PinState::Holds), "the pin holds it");
    EXPECT_EQ(adviceFor(PinState::Lost), "it turns by more than 2°: it has lost its pin");
}

TEST(PinnedBush, IsLoadedWhereOneSideOfThePinIsClosed) {
    EXPECT_FALSE(pinLoadsBush({0.15, 0.15}));
    EXPECT_TRUE(pinLoadsBush({0.30, 0.0}));
    EXPECT_TRUE(pinLoadsBush({0.0, 0.30}));
}

// Worked by hand from the sizes of two invented frames.
TEST(PinnedBush, ThePinStaysClearOfTheNotch) {
    EXPECT_NEAR(pinEndClearanceMm({19.0, 2.2, 18.94, 2.6}), 0.46, 1e-9);
    EXPECT_NEAR(pinEndClearanceMm({9.5, 1.4, 9.4525, 1.8}), 0.4475, 1e-9);
    EXPECT_LT(pinEndClearanceMm({19.0, 2.8, 18.94, 2.6}), 0.0);
}

} // namespace gapwise::test
