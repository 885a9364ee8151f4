#include "models/torque/preload.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <array>
#include <cmath>
#include <ostream>

namespace gapwise::test {

namespace {

ScrewJoint hexagon(double diameterMm, double pitchMm, double friction) {
    return {.thread = {.diameterMm = diameterMm, .pitchMm = pitchMm},
            .bearingDiameterMm = hexagonHeadDiameterMm(diameterMm).value_or(0.0),
            .friction = {.thread = friction, .head = friction}};
}

/// Mounting preload (kN) and torque (N·m) at 90 % of R_p0.2, for the classes 8.8, 10.9, 12.9.
struct VdiRow {
    const char* id;
    double diameter, pitch;
    std::array<double, 3> preload;
    std::array<double, 3> torque;

    friend void PrintTo(const VdiRow& row, std::ostream* out) { *out << row.id; }
};

constexpr std::array kTabled{PropertyClass::P88, PropertyClass::P109, PropertyClass::P129};

double vdiTorqueAtPreload(const ScrewJoint& joint, PropertyClass property) {
    return vdiTorqueNm(joint, vdiPreloadKn(property, joint.thread, joint.friction.thread));
}

} // namespace

class VdiFineThreads : public ::testing::TestWithParam<VdiRow> {};

TEST_P(VdiFineThreads, AgreeWithTheTablesWithinOnePercent) {
    const VdiRow& row = GetParam();
    const ScrewJoint joint = hexagon(row.diameter, row.pitch, 0.12);
    for (std::size_t at = 0; at < kTabled.size(); ++at) {
        const double preload = vdiPreloadKn(kTabled.at(at), joint.thread, 0.12);
        EXPECT_NEAR(preload, row.preload.at(at), 0.01 * row.preload.at(at));
        EXPECT_NEAR(vdiTorqueNm(joint, preload), row.torque.at(at), 0.01 * row.torque.at(at));
    }
}

// VDI 2230, tables for fine threads, friction 0.12 (TQ-02 to TQ-06).
INSTANTIATE_TEST_SUITE_P(Vdi2230, VdiFineThreads,
                         ::testing::Values(VdiRow{"TQ-02", 10, 1.25, {31.6, 46.4, 54.3}, {51, 75, 87}},
                                           VdiRow{"TQ-03", 12, 1.25, {48.0, 70.5, 82.5}, {90, 133, 155}},
                                           VdiRow{"TQ-04", 14, 1.5, {64.8, 95.2, 111.4}, {142, 209, 244}},
                                           VdiRow{"TQ-05", 16, 1.5, {87.6, 128.7, 150.6}, {218, 320, 374}},
                                           VdiRow{"TQ-06", 20, 1.5, {148, 211, 246}, {454, 646, 756}}));

// VDI 2230, M8×1 in 8.8 (TQ-07): the preload falls with friction, the torque grows.
TEST(Vdi2230, ThreeFrictionsOfOneThread) {
    struct Row {
        double friction, preload, torque;
    };
    for (const Row& row : {Row{0.10, 20.7, 22.8}, Row{0.12, 20.2, 26.1}, Row{0.14, 19.7, 29.2}}) {
        const ScrewJoint joint = hexagon(8.0, 1.0, row.friction);
        const double preload = vdiPreloadKn(PropertyClass::P88, joint.thread, row.friction);
        EXPECT_NEAR(preload, row.preload, 0.01 * row.preload);
        EXPECT_NEAR(vdiTorqueNm(joint, preload), row.torque, 0.01 * row.torque);
    }
}

// A worked example of VDI 2230 (TQ-08): M12 in 8.8, friction 0.14, tightening factor 1.8.
TEST(Vdi2230, TheTighteningFactorLeavesTheLeastPreload) {
    const double most = vdiPreloadKn(PropertyClass::P88, {.diameterMm = 12.0, .pitchMm = 1.75}, 0.14);
    EXPECT_NEAR(most, 41.9, 0.005 * 41.9);
    EXPECT_NEAR(leastPreloadKn(most, 1.8), 23.3, 0.005 * 23.3);
}

// VDI 2230 table A1, coarse threads, friction 0.12, from memory (TQ-10, TQ-11).
TEST(Vdi2230, CoarseThreadsInTheStrongClasses) {
    struct Row {
        double diameter, in109, in129;
    };
    for (const Row& row : {Row{6, 14.9, 17.4}, Row{8, 36.1, 42.2}, Row{10, 71, 83}, Row{12, 123, 144},
                           Row{16, 302, 354}, Row{20, 592, 692}}) {
        const ScrewJoint joint = hexagon(row.diameter, coarsePitchMm(row.diameter).value_or(0.0), 0.12);
        EXPECT_NEAR(vdiTorqueAtPreload(joint, PropertyClass::P109), row.in109, 0.01 * row.in109)
            << "M" << row.diameter;
        EXPECT_NEAR(vdiTorqueAtPreload(joint, PropertyClass::P129), row.in129, 0.01 * row.in129)
            << "M" << row.diameter;
    }
}

// VDI 2230 with the head of ISO 4014 (33.6 mm) over the hole of ISO 273 (26 mm): TQ-12.
TEST(Vdi2230, TheFormulaGivesTheTabledM24) {
    ScrewJoint joint = hexagon(24.0, 2.0, 0.12);
    joint.bearingDiameterMm = (33.6 + 26.0) / 2.0;
    const double preload = vdiPreloadKn(PropertyClass::P88, joint.thread, 0.12);
    EXPECT_NEAR(preload, 209.0, 0.005 * 209.0);
    EXPECT_NEAR(vdiTorqueNm(joint, preload), 769.0, 0.005 * 769.0);
}

// Motosh 1976, reckoned (TQ-13): M8, 18.6 kN, friction 0.12, mean head diameter 10.3 mm.
TEST(LongForm, SplitsTheTorqueInPitchThreadAndHead) {
    ScrewJoint joint = hexagon(8.0, 1.25, 0.12);
    joint.bearingDiameterMm = 10.3;
    const TorqueShares shares = torqueShares(joint, 18.6);
    EXPECT_NEAR(shares.pitchNm, 3.70, 0.02);
    EXPECT_NEAR(shares.threadNm, 9.26, 0.02);
    EXPECT_NEAR(shares.headNm, 11.49, 0.02);
    EXPECT_NEAR(shares.total(), 24.46, 0.02);
    EXPECT_NEAR(shares.pitchNm / shares.total(), 0.151, 0.0005);
    EXPECT_NEAR(shares.threadNm / shares.total(), 0.379, 0.0005);
    EXPECT_NEAR(shares.headNm / shares.total(), 0.470, 0.0005);
}

// Reckoned (TQ-14): the constants 0.16 and 0.58 stand for 1/2π and 1/(2 cos 30°).
TEST(LongForm, DiffersFromVdi2230ByLessThanHalfAPercent) {
    ScrewJoint joint = hexagon(8.0, 1.25, 0.12);
    joint.bearingDiameterMm = 10.3;
    EXPECT_NEAR(vdiTorqueNm(joint, 18.6), 24.52, 0.005);
    EXPECT_NEAR(vdiTorqueNm(joint, 18.6) / torqueShares(joint, 18.6).total(), 1.0, 0.005);
}

// ISO 16047, from memory and reckoned (TQ-16).
TEST(TotalFriction, IsFoundFromTorqueAndForce) {
    ScrewJoint joint = hexagon(10.0, 1.5, 0.0);
    joint.bearingDiameterMm = 12.8;
    EXPECT_NEAR(totalFriction(joint, 16.32, 10.0), 0.1200, 0.0005);
}

// The nut factor of handbooks, reckoned (TQ-17).
TEST(NutFactor, IsTorqueOverDiameterAndForce) {
    EXPECT_NEAR(nutFactor(10.0, 20.0, 10.0), 0.20, 1e-12);
    EXPECT_NEAR(nutFactorForceKn(0.20, 10.0, 20.0), 10.0, 1e-12);
    EXPECT_NEAR(nutFactor(10.0, 16.32, 10.0), 0.163, 0.0005);
}

// ISO 4014 (product grade A) and ISO 273 (medium), from memory; M24 as in TQ-12.
TEST(HexagonHeads, HaveTheirMeanDiameterFromFaceAndHole) {
    EXPECT_NEAR(hexagonHeadDiameterMm(8.0).value_or(0.0), 10.3, 0.02);
    EXPECT_NEAR(hexagonHeadDiameterMm(10.0).value_or(0.0), 12.8, 0.02);
    EXPECT_NEAR(hexagonHeadDiameterMm(24.0).value_or(0.0), 29.8, 0.02);
    EXPECT_FALSE(hexagonHeadDiameterMm(7.0));
}

namespace {

ScrewJoint drawnJoint() {
    ScrewJoint joint;
    joint.thread.diameterMm = *rc::gen::elementOf(std::vector<double>{5, 6, 8, 10, 12, 16, 20, 24});
    joint.thread.pitchMm = coarsePitchMm(joint.thread.diameterMm).value_or(0.0);
    joint.bearingDiameterMm = joint.thread.diameterMm * *rc::gen::inRange(110, 180) / 100.0;
    joint.friction = {.thread = *rc::gen::inRange(4, 30) / 100.0, .head = *rc::gen::inRange(4, 30) / 100.0};
    return joint;
}

} // namespace

RC_GTEST_PROP(LongForm, GoesBackToTheForceItCameFrom, ()) {
    const ScrewJoint joint = drawnJoint();
    const double force = *rc::gen::inRange(1, 20'000) / 100.0;
    RC_ASSERT(std::abs(clampForceKn(joint, torqueShares(joint, force).total()) / force - 1.0) < 1e-12);
}

RC_GTEST_PROP(LongForm, MoreFrictionLeavesLessForceOfOneTorque, ()) {
    const ScrewJoint joint = drawnJoint();
    ScrewJoint drier = joint;
    (*rc::gen::arbitrary<bool>() ? drier.friction.thread : drier.friction.head) += 0.01;
    RC_ASSERT(clampForceKn(drier, 20.0) < clampForceKn(joint, 20.0));
    RC_ASSERT(torqueShares(drier, 10.0).total() > torqueShares(joint, 10.0).total());
}

RC_GTEST_PROP(LongForm, TheHandChangesNoForce, ()) {
    const ScrewJoint joint = drawnJoint();
    ScrewJoint left = joint;
    left.thread.hand = ThreadHand::Left;
    RC_ASSERT(clampForceKn(left, 20.0) == clampForceKn(joint, 20.0));
}

RC_GTEST_PROP(Vdi2230, PreloadFallsAndTorqueGrowsWithFriction, ()) {
    const ScrewJoint joint = drawnJoint();
    ScrewJoint drier = joint;
    drier.friction.thread += 0.01;
    RC_ASSERT(vdiPreloadKn(PropertyClass::P109, drier.thread, drier.friction.thread) <
              vdiPreloadKn(PropertyClass::P109, joint.thread, joint.friction.thread));
    RC_ASSERT(vdiTorqueNm(drier, 10.0) > vdiTorqueNm(joint, 10.0));
}

// Its factors are rounded values of the long form's, so that they cannot run apart.
RC_GTEST_PROP(Vdi2230, StaysWithinOnePercentOfTheLongForm, ()) {
    const ScrewJoint joint = drawnJoint();
    RC_ASSERT(std::abs(vdiTorqueNm(joint, 10.0) / torqueShares(joint, 10.0).total() - 1.0) < 0.01);
}

} // namespace gapwise::test
