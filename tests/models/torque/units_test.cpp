#include "models/torque/units.h"

#include "tests/support/print_error.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <string>

namespace gapwise::test {

namespace {

double relative(double a, double b) {
    return std::abs(a - b) / std::abs(b);
}

} // namespace

// NIST SP 811 appendix B.8 (TT-18 to TT-21); the pound-force foot as the exact product of its definition.
TEST(TorqueUnits, HaveTheFactorsOfNistSp811) {
    EXPECT_DOUBLE_EQ(newtonMetresIn(TorqueUnit::PoundForceFoot), 1.3558179483314004);
    EXPECT_LT(relative(newtonMetresIn(TorqueUnit::PoundForceFoot), 1.355818), 1e-6);
    EXPECT_LT(relative(newtonMetresIn(TorqueUnit::PoundForceInch), 0.1129848), 1e-6);
    EXPECT_EQ(newtonMetresIn(TorqueUnit::KilogramForceMetre), 9.80665);
    EXPECT_EQ(newtonMetresIn(TorqueUnit::KilogramForceCentimetre), 0.0980665);
}

// Reckoned from the factors of NIST SP 811 B.8 (TT-23).
TEST(TorqueUnits, TwentyFiveNewtonMetresInEveryUnit) {
    EXPECT_LT(relative(fromNewtonMetres(25.0, TorqueUnit::PoundForceFoot), 18.4391), 5e-6);
    EXPECT_LT(relative(fromNewtonMetres(25.0, TorqueUnit::PoundForceInch), 221.269), 5e-6);
    EXPECT_LT(relative(fromNewtonMetres(25.0, TorqueUnit::KilogramForceMetre), 2.54929), 5e-6);
    EXPECT_LT(relative(fromNewtonMetres(25.0, TorqueUnit::KilogramForceCentimetre), 254.929), 5e-6);
}

// Common practice, no source: a torque of shaft-end nuts, and how sheets print it.
TEST(TorqueUnits, TheShaftNutOfThirtyTwoPointFour) {
    EXPECT_EQ(torqueWords(32.4, TorqueUnit::PoundForceFoot, 5), "23.897 lbf·ft");
    EXPECT_EQ(torqueWords(32.4, TorqueUnit::PoundForceInch, 5), "286.76 lbf·in");
    EXPECT_EQ(torqueWords(32.4, TorqueUnit::KilogramForceCentimetre, 5), "330.39 kgf·cm");
    EXPECT_EQ(torqueWords(toNewtonMetres(3.3, TorqueUnit::KilogramForceMetre)), "32.4 N·m");
}

// Identity to 1e-12 (TT-25).
RC_GTEST_PROP(TorqueUnits, GoingThereAndBackChangesNothing, ()) {
    const auto unit = *rc::gen::elementOf(kTorqueUnits);
    const double torque = *rc::gen::inRange(1, 1'000'000) / 100.0;
    RC_ASSERT(relative(toNewtonMetres(fromNewtonMetres(torque, unit), unit), torque) < 1e-12);
}

TEST(TorqueUnits, AreReadAsTheyArePrintedAndTyped) {
    for (const TorqueUnit unit : kTorqueUnits) {
        EXPECT_EQ(*parseTorqueUnit(nameOf(unit), "--to"), unit);
        EXPECT_EQ(*parseTorqueUnit(typedNameOf(unit), "--to"), unit);
    }
    EXPECT_EQ(*parseTorqueUnit("Nm", ""), TorqueUnit::NewtonMetre);
    EXPECT_EQ(*parseTorqueUnit("ft-lb", ""), TorqueUnit::PoundForceFoot);
    EXPECT_EQ(*parseTorqueUnit("lb*in", ""), TorqueUnit::PoundForceInch);
    EXPECT_EQ(*parseTorqueUnit("kg m", ""), TorqueUnit::KilogramForceMetre);
    EXPECT_EQ(*parseTorqueUnit("kgcm", ""), TorqueUnit::KilogramForceCentimetre);
}

TEST(TorqueUnits, OthersAreRefusedByName) {
    for (const char* wrong : {"", "N", "m", "nm", "kN·m", "N..m", "N·mm", "lbf", "ozf·in", "N·m "}) {
        const Result<TorqueUnit> read = parseTorqueUnit(wrong, "--to");
        ASSERT_FALSE(read) << wrong;
        EXPECT_EQ(read.errors().front().where, "--to");
        EXPECT_EQ(read.errors().front().found, "\"" + std::string{wrong} + "\"");
        EXPECT_NE(read.errors().front().allowed.find("lbf·ft"), std::string::npos);
    }
}

TEST(StatedTorques, KeepTheUnitInWhichTheyWereStated) {
    const Result<StatedTorque> read = parseTorque("32.4 lbf·ft", "--target");
    ASSERT_TRUE(read);
    EXPECT_EQ(*read, (StatedTorque{32.4, TorqueUnit::PoundForceFoot}));
    EXPECT_EQ(*parseTorque("14Nm", ""), (StatedTorque{14.0, TorqueUnit::NewtonMetre}));
    EXPECT_EQ(*parseTorque("3.3 kgf.m", ""), (StatedTorque{3.3, TorqueUnit::KilogramForceMetre}));
}

TEST(StatedTorques, RefuseWhatIsNoTorqueToTightenWith) {
    for (const char* wrong :
         {"", "N·m", "32.4", "32,4 N·m", "-5 N·m", "0 N·m", "nan N·m", "inf N·m", "1e7 N·m", "1e400 N·m",
          "1e-9 N·m", "14 Nmm", "14 N·m x", " 14 N·m", "14  N·m", "+14 N·m", "0x14 N·m"}) {
        const Result<StatedTorque> read = parseTorque(wrong, "--target");
        ASSERT_FALSE(read) << wrong;
        EXPECT_EQ(read.errors().front().where, "--target");
        EXPECT_EQ(read.errors().front().found, "\"" + std::string{wrong} + "\"");
    }
}

TEST(StatedTorques, ABareNumberIsNewtonMetresOnlyWhereThatIsSaid) {
    EXPECT_EQ(*parseTorqueOrNewtonMetres("14", ""), (StatedTorque{14.0, TorqueUnit::NewtonMetre}));
    EXPECT_EQ(*parseTorqueOrNewtonMetres("14 lbf.in", ""), (StatedTorque{14.0, TorqueUnit::PoundForceInch}));
    EXPECT_FALSE(parseTorqueOrNewtonMetres("14 ", ""));
    EXPECT_FALSE(parseTorqueOrNewtonMetres("-14", ""));
}

} // namespace gapwise::test
