#include "models/torque/strength.h"

#include "tests/support/print_error.h"

#include <gtest/gtest.h>

#include <cmath>
#include <string>
#include <utility>
#include <vector>

namespace gapwise::test {

namespace {

MetricThread coarse(double diameterMm) {
    return {.diameterMm = diameterMm, .pitchMm = coarsePitchMm(diameterMm).value_or(0.0)};
}

void expectLoads(double diameterMm, const std::vector<std::pair<PropertyClass, double>>& loadsN) {
    for (const auto& [property, loadN] : loadsN)
        EXPECT_NEAR(proofLoadKn(property, coarse(diameterMm)) * 1000.0, loadN, 1e-6)
            << "M" << diameterMm << " " << nameOf(property);
}

} // namespace

// ISO 898-1 table 3 (TQ-19).
TEST(PropertyClasses, HaveTheProofStressOfIso898) {
    EXPECT_EQ(proofStressMpa(PropertyClass::P88, 16.0), 580.0);
    EXPECT_EQ(proofStressMpa(PropertyClass::P88, 16.5), 600.0);
    EXPECT_EQ(proofStressMpa(PropertyClass::P98, 8.0), 650.0);
    EXPECT_EQ(proofStressMpa(PropertyClass::P109, 8.0), 830.0);
    EXPECT_EQ(proofStressMpa(PropertyClass::P129, 24.0), 970.0);
}

// ISO 898-1 (TQ-20); class 9.8 from memory.
TEST(PropertyClasses, HaveTheLeastTensileStrengthOfIso898) {
    EXPECT_EQ(leastTensileStrengthMpa(PropertyClass::P88, 16.0), 800.0);
    EXPECT_EQ(leastTensileStrengthMpa(PropertyClass::P88, 18.0), 830.0);
    EXPECT_EQ(leastTensileStrengthMpa(PropertyClass::P98, 16.0), 900.0);
    EXPECT_EQ(leastTensileStrengthMpa(PropertyClass::P109, 10.0), 1040.0);
    EXPECT_EQ(leastTensileStrengthMpa(PropertyClass::P129, 10.0), 1220.0);
}

// As the tables of VDI 2230 reckon; class 9.8 from memory (9.8 means 90 % of 800 with its least strength).
TEST(PropertyClasses, HaveTheYieldThatVdi2230ReckonsWith) {
    EXPECT_EQ(yieldStressMpa(PropertyClass::P88, 16.0), 640.0);
    EXPECT_EQ(yieldStressMpa(PropertyClass::P88, 18.0), 660.0);
    EXPECT_EQ(yieldStressMpa(PropertyClass::P98, 8.0), 720.0);
    EXPECT_EQ(yieldStressMpa(PropertyClass::P109, 8.0), 940.0);
    EXPECT_EQ(yieldStressMpa(PropertyClass::P129, 8.0), 1100.0);
}

TEST(PropertyClasses, OfEverySizeStandInTheOrderOfTheirNames) {
    for (const double diameter : {5.0, 16.0, 24.0})
        for (std::size_t at = 1; at < kPropertyClasses.size(); ++at) {
            const PropertyClass weak = kPropertyClasses.at(at - 1);
            const PropertyClass strong = kPropertyClasses.at(at);
            EXPECT_LT(proofStressMpa(weak, diameter), proofStressMpa(strong, diameter));
            EXPECT_LT(yieldStressMpa(weak, diameter), yieldStressMpa(strong, diameter));
            EXPECT_LT(leastTensileStrengthMpa(weak, diameter), leastTensileStrengthMpa(strong, diameter));
        }
}

TEST(PropertyClasses, AreReadByTheirNames) {
    for (const PropertyClass property : kPropertyClasses)
        EXPECT_EQ(*parsePropertyClass(nameOf(property), ""), property);
    for (const char* wrong : {"", "8", "8,8", "10.9 ", "4.6"}) {
        const Result<PropertyClass> read = parsePropertyClass(wrong, "--class");
        ASSERT_FALSE(read) << wrong;
        EXPECT_EQ(read.errors().front(),
                  (Error{"--class", "\"" + std::string{wrong} + "\"", "8.8, 9.8, 10.9 or 12.9"}));
    }
}

// ISO 898-1: class 9.8 is for sizes up to 16 mm (from memory).
TEST(PropertyClasses, NinePointEightEndsAtSixteenMillimetres) {
    EXPECT_TRUE(isMade(PropertyClass::P98, 16.0));
    EXPECT_FALSE(isMade(PropertyClass::P98, 18.0));
    EXPECT_TRUE(isMade(PropertyClass::P129, 36.0));
}

// ISO 898-1 table 5 (TQ-21 to TQ-26), newtons as printed there.
TEST(ProofLoads, AreTheOnesThatIso898Prints) {
    using enum PropertyClass;
    expectLoads(6.0, {{P88, 11'600}, {P109, 16'700}, {P129, 19'500}});
    expectLoads(8.0, {{P88, 21'200}, {P109, 30'400}, {P129, 35'500}});
    expectLoads(10.0, {{P88, 33'700}, {P109, 48'100}, {P129, 56'300}});
    expectLoads(16.0, {{P88, 91'000}, {P109, 130'000}, {P129, 152'000}});
    expectLoads(20.0, {{P109, 203'000}});
    expectLoads(24.0, {{P109, 293'000}});
}

// ISO 898-1 table 5, from memory.
TEST(ProofLoads, OfTheSmallSizesAreThosePrinted) {
    using enum PropertyClass;
    expectLoads(4.0, {{P88, 5'100}, {P109, 7'290}});
    expectLoads(5.0, {{P88, 8'230}, {P109, 11'800}, {P129, 13'800}});
    expectLoads(12.0, {{P88, 48'900}, {P109, 70'000}, {P129, 81'800}});
}

// ISO 898-1 (TQ-27): the print is the product of area and stress, rounded by hand.
TEST(ProofLoads, AreTheProductOfAreaAndStressWithinTheRoundingOfThePrint) {
    for (const PropertyClass property : kPropertyClasses)
        for (const double diameter : {5.0, 6.0, 8.0, 10.0, 12.0, 14.0, 16.0}) {
            const MetricThread thread = coarse(diameter);
            const double productKn =
                sizesOf(thread).stressAreaMm2 * proofStressMpa(property, diameter) / 1000.0;
            EXPECT_NEAR(proofLoadKn(property, thread), productKn, 0.0075 * productKn) << diameter;
        }
    EXPECT_NEAR(58.0 * 580.0 / 1000.0, proofLoadKn(PropertyClass::P88, coarse(10.0)), 0.006 * 33.7);
}

// Reckoned: half the proof load of M8 in 10.9 over an area of 36.609 mm².
TEST(ProofLoads, TellHowMuchOfThemAForceUses) {
    EXPECT_NEAR(proofLoadUse(15.2, PropertyClass::P109, coarse(8.0)), 0.5, 1e-12);
    EXPECT_NEAR(stressMpa(15.2, coarse(8.0)), 15'200.0 / 36.609, 0.01);
}

} // namespace gapwise::test
