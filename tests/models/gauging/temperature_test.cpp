#include "models/gauging/temperature.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <string_view>

namespace gapwise::test {

// ISO 1 (UNC-44).
TEST(Temperature, LengthsAreStatedAtTwentyDegrees) {
    EXPECT_EQ(kReferenceC, 20.0);
}

// Worked by hand: a wheel of aluminium 15 K above its gauge.
TEST(Temperature, AWarmWheelReadsTooLarge) {
    const double aluminium = expansionOf("aluminium 6061")->perK;
    EXPECT_NEAR(growthMm(72.0, aluminium, 15.0), 0.025, 6e-4);
    EXPECT_NEAR(growthMm(150.0, aluminium, 15.0), 0.053, 6e-4);
    const WarmReading wheel{.readMm = 72.0255, .partC = 35.0, .partPerK = aluminium};
    EXPECT_NEAR(lengthAt20Mm(wheel), 72.0, 1e-4);
    EXPECT_NEAR(correctionTo20Mm(wheel), -0.0255, 1e-4);
}

TEST(Temperature, AWarmJournalOfSteelReadsALittleTooLarge) {
    EXPECT_NEAR(growthMm(26.0, expansionOf("plain carbon steel")->perK, 15.0), 0.0045, 1e-4);
}

// Reckoned (TH-09): 12 mm, 80 K warmer, aluminium 23.6 and steel 11.7 millionths.
TEST(Temperature, AnAluminiumBoreOutgrowsItsShaft) {
    const double bore = growthMm(12.0, expansionOf("aluminium 6061")->perK, 80.0) * 1000.0;
    const double shaft = growthMm(12.0, expansionOf("plain carbon steel")->perK, 80.0) * 1000.0;
    EXPECT_NEAR(bore, 22.66, 0.01);
    EXPECT_NEAR(shaft, 11.23, 0.01);
    EXPECT_NEAR(bore - shaft, 11.4, 0.05);
}

// Callister, table B.6 (TH-01, TH-02); TH-06 from memory.
TEST(Temperature, CoefficientsCarryTheirSource) {
    const auto millionths = [](std::string_view material) { return expansionOf(material)->perK * 1e6; };
    EXPECT_NEAR(millionths("aluminium 356.0"), 21.5, 0.1);
    EXPECT_NEAR(millionths("aluminium 2024"), 22.9, 0.1);
    EXPECT_NEAR(millionths("aluminium 6061"), 23.6, 0.1);
    EXPECT_NEAR(millionths("grey cast iron"), 11.4, 0.1);
    EXPECT_NEAR(millionths("ductile iron 60-40-18"), 11.2, 0.1);
    EXPECT_NEAR(millionths("ductile iron 80-55-06"), 10.6, 0.1);
    EXPECT_NEAR(millionths("plain carbon steel"), 11.7, 0.2);
    EXPECT_NEAR(millionths("alloy steel"), 12.3, 0.2);
    EXPECT_NEAR(millionths("austenitic steel 304"), 17.2, 0.2);
    EXPECT_FALSE(expansionOf("unobtainium").has_value());
    for (const Expansion& row : kExpansions)
        EXPECT_FALSE(row.source.empty());
}

// Common practice, no source: dimensional checks are referred to 20 °C; what is warm alike needs no
// correction.
RC_GTEST_PROP(Temperature, PartAndGaugeOfOneKindNeedNoCorrection, ()) {
    const double celsius = *rc::gen::inRange(-20, 80) / 1.0;
    const double perK = *rc::gen::inRange(80, 250) / 1e7;
    const double length = *rc::gen::inRange(1, 200'000) / 1000.0;
    RC_ASSERT(std::abs(correctionTo20Mm({length, celsius, perK, celsius, perK})) < 1e-12 * length);
}

RC_GTEST_PROP(Temperature, CorrectionUndoesTheGrowth, ()) {
    const double celsius = *rc::gen::inRange(-20, 80) / 1.0;
    const double perK = *rc::gen::inRange(80, 250) / 1e7;
    const double length = *rc::gen::inRange(1, 200'000) / 1000.0;
    const double warm = length + growthMm(length, perK, celsius - kReferenceC);
    RC_ASSERT(std::abs(lengthAt20Mm({.readMm = warm, .partC = celsius, .partPerK = perK}) - length) <
              1e-12 * length);
}

} // namespace gapwise::test
