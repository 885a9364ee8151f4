#include "models/torque/figures.h"

#include <gtest/gtest.h>

#include <limits>

namespace gapwise::test {

TEST(Figures, KeepsSoManyFiguresWhateverTheSize) {
    EXPECT_EQ(withFigures(32.361945, 3), "32.4");
    EXPECT_EQ(withFigures(0.0324, 2), "0.032");
    EXPECT_EQ(withFigures(1234.0, 3), "1230");
    EXPECT_EQ(withFigures(1234.5, 5), "1234.5");
}

TEST(Figures, KeepsTrailingZerosThatAreFigures) {
    EXPECT_EQ(withFigures(20.0, 3), "20.0");
    EXPECT_EQ(withFigures(5.0, 1), "5");
}

TEST(Figures, RoundingUpToAPowerOfTenAddsNoFigure) {
    EXPECT_EQ(withFigures(9.996, 3), "10.0");
    EXPECT_EQ(withFigures(999.6, 3), "1000");
    EXPECT_EQ(withFigures(0.09996, 3), "0.100");
}

TEST(Figures, SignsZeroAndWhatIsNoNumber) {
    EXPECT_EQ(withFigures(std::numeric_limits<double>::quiet_NaN(), 3), "nan");
    EXPECT_EQ(withFigures(-std::numeric_limits<double>::infinity(), 3), "-inf");
    EXPECT_EQ(withFigures(-7.2, 3), "-7.20");
    EXPECT_EQ(withFigures(0.0, 3), "0");
}

} // namespace gapwise::test
