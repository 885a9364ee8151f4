#include "tests/viewer/fits/assembly.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <gtest/gtest.h>
#include <limits>

namespace gapwise::test {

namespace {

constexpr double kSameMm = 1e-6;

/// The clearances that a frame's numbers must add up to, rotor toward the compressor, in mm; all invented.
/// Radii name places where both neighbours have plain faces.
struct Nominal {
    const char* frame = "";
    double thrustClearance = 0.0;
    double overPads = 0.0; ///< Thickness of the thrust bearing.
    double padRadius = 0.0;
    double stackRadius = 0.0;
    double threadBeyondNut = 0.0;
    double bearingFloat = 0.0;
    double bearingRadius = 0.0;
    double bearingsApart = 0.0;
    double snapRingRadius = 0.0; ///< In the groove of the bore.
    double turbineRingClearance = 0.0;
    double turbineRingRadius = 0.0;
    double compressorRingClearance = 0.0;
    double compressorRingRadius = 0.0;
    double compressorShroud = 0.0;
    double compressorBack = 0.0;
    double wheelRadius = 0.0;
    double turbineBack = 0.0;
    double shieldRadius = 0.0;
    double turbineShroud = 0.0;
    double turbineRadius = 0.0;
    double noseDepth = 0.0;
    double inletRadius = 0.0; ///< Where the cover's inlet face is.
    double inducerTip = 0.0;
    double inducerZ = 0.0;
    double exducerTip = 0.0;
    double exducerZ = 0.0;
};

constexpr Nominal kAlder{"alder-72", 0.070, 5.000, 9.0,    5.0,  2.23,  0.30,  8.8,  44.0,
                         9.8,        0.10,  9.4,   0.09,   7.6,  0.330, 0.520, 36.0, 0.800,
                         20.0,       0.550, 33.0,  35.000, 30.0, 0.43,  45.0,  0.50, -105.0};

constexpr Nominal pinned() {
    Nominal pinned = kAlder;
    pinned.frame = "alder-72-pinned";
    pinned.bearingFloat = 0.20;
    return pinned;
}

constexpr Nominal kBirch{"birch-150", 0.150, 9.000, 19.0,   10.0, 2.95,  0.20,  17.5, 92.0,
                         19.5,        0.105, 19.9,  0.095,  17.0, 0.600, 0.850, 75.0, 1.300,
                         40.0,        0.950, 69.0,  64.700, 60.0, 0.65,  88.0,  0.85, -212.0};

/// How much further out than its middle the corners of a blade's flat tip may stand.
constexpr double kTipMm = 0.03;
/// A clock at which no part has a hole, slot or mark where these tests look.
constexpr double kPlain = 55.0;
constexpr double kOnPads = 40.0;

/// The ends of the wheels' blades at their largest radius come out of the meshes: the numbers leave blades
/// out.
double bladeEndAt(const Assembly& assembly, const Placed& wheel, double radius, bool highest) {
    double end = highest ? std::numeric_limits<double>::lowest() : std::numeric_limits<double>::max();
    for (const Vec3& p : drawnIn(assembly, wheel).positions) {
        if (std::abs(std::hypot(p.x, p.y) - radius) < kTipMm)
            end = highest ? std::max(end, p.z) : std::min(end, p.z);
    }
    return end;
}

double bladeTipAt(const Assembly& assembly, const Placed& wheel, double z) {
    double radius = 0.0;
    for (const Vec3& p : drawnIn(assembly, wheel).positions) {
        if (std::abs(p.z - z) < 1e-4)
            radius = std::max(radius, std::hypot(p.x, p.y));
    }
    return radius;
}

/// How far a part may go either way along the shaft until it meets another, at some places round it.
struct Room {
    double up = std::numeric_limits<double>::max();
    double down = std::numeric_limits<double>::max();
};

Room roomOf(const Assembly& assembly, const Placed& moved, double radius) {
    Room room;
    for (const double clock : {kPlain, 125.0, 235.0, 305.0}) {
        const std::vector<Span> own = alongShaft(moved, {radius, clock});
        if (own.empty())
            continue;
        for (const Placed& other : assembly.parts) {
            if (other.part == moved.part)
                continue;
            for (const Span& span : alongShaft(other, {radius, clock})) {
                if (span.from > own.back().to - kSameMm)
                    room.up = std::min(room.up, span.from - own.back().to);
                if (span.to < own.front().from + kSameMm)
                    room.down = std::min(room.down, own.front().from - span.to);
            }
        }
    }
    return room;
}

class Stations : public testing::TestWithParam<Nominal> {
protected:
    const Nominal& nominal() const { return GetParam(); }
    const Assembly& assembly() const { return assemblyOf(nominal().frame); }
    const Placed& part(const char* id) const { return assembly().at(id); }
    Span reach(const char* id, double radius, double clock = kPlain) const {
        return reachAlong(part(id), {radius, clock});
    }
};

} // namespace

// c = spacer and hub steps less the thickness over the pads; collar A bears on the plate.
TEST_P(Stations, ThrustClearanceFollowsFromTheParts) {
    const double r = nominal().padRadius;
    const Span plate = reach("THRUST", r, kOnPads);
    const double apart = reach("COLLAR-B", r, kOnPads).from - reach("COLLAR-A", r, kOnPads).to;
    EXPECT_NEAR(plate.length(), nominal().overPads, kSameMm);
    EXPECT_NEAR(apart - plate.length(), nominal().thrustClearance, kSameMm);
    EXPECT_NEAR(reach("COLLAR-A", r, kOnPads).to, plate.from, kSameMm);
}

TEST_P(Stations, StackStandsFaceOnFaceUpToTheNut) {
    double face = reach("ROTOR", nominal().stackRadius).to;
    for (const char* const id : {"COLLAR-A", "SPACER", "COLLAR-B", "WHEEL", "NUT"}) {
        const Span span = reach(id, nominal().stackRadius);
        EXPECT_NEAR(span.from, face, kSameMm) << id;
        face = span.to;
    }
    EXPECT_NEAR(reach("ROTOR", 2.0).to - face, nominal().threadBeyondNut, kSameMm);
}

TEST_P(Stations, BearingsFloatBetweenTheirStops) {
    const Placed& turbine = part("BRG-T");
    const Placed& compressor = part("BRG-C");
    for (const Placed* bearing : {&turbine, &compressor}) {
        const Room room = roomOf(assembly(), *bearing, nominal().bearingRadius);
        EXPECT_NEAR(room.up + room.down, nominal().bearingFloat, kSameMm) << bearing->part.text;
        EXPECT_NEAR(room.up, room.down, kSameMm) << bearing->part.text;
    }
    EXPECT_NEAR(reachAlong(compressor, {nominal().bearingRadius, kPlain}).middle() -
                    reachAlong(turbine, {nominal().bearingRadius, kPlain}).middle(),
                nominal().bearingsApart, kSameMm);
}

// Seated, a snap ring lies against the wall away from its bearing; 0.10 is left on the other side.
TEST_P(Stations, SnapRingsLieAgainstTheOuterWallOfTheirGroove) {
    int rings = 0;
    for (const Placed& ring : assembly().parts) {
        if (!ring.part.text.starts_with("SR-"))
            continue;
        ++rings;
        const Room room = roomOf(assembly(), ring, nominal().snapRingRadius);
        const Placed& bearing = part(ring.part.text[3] == 'T' ? "BRG-T" : "BRG-C");
        const bool above = ring.pose.shift.z > bearing.pose.shift.z;
        EXPECT_NEAR(above ? room.up : room.down, 0.0, kSameMm) << ring.part.text;
        EXPECT_NEAR(above ? room.down : room.up, 0.10, kSameMm) << ring.part.text;
    }
    EXPECT_GE(rings, 2);
}

TEST_P(Stations, SealRingsHaveTheirSideClearance) {
    int rings = 0;
    for (const Placed& ring : assembly().parts) {
        if (!ring.part.text.starts_with("PR-"))
            continue;
        ++rings;
        const bool turbine = ring.part.text[3] == 'T';
        const Room room =
            roomOf(assembly(), ring, turbine ? nominal().turbineRingRadius : nominal().compressorRingRadius);
        EXPECT_NEAR(room.up + room.down,
                    turbine ? nominal().turbineRingClearance : nominal().compressorRingClearance, kSameMm)
            << ring.part.text;
        EXPECT_GE(std::min(room.up, room.down), 0.04) << ring.part.text;
    }
    EXPECT_GE(rings, 2);
}

// Pushed to the turbine the rotor goes by the thrust clearance: shroud and nose open, the backs close or
// open.
TEST_P(Stations, AxialGapsOfTheCompressorWheel) {
    const double c = nominal().thrustClearance;
    const double tip = bladeEndAt(assembly(), part("WHEEL"), nominal().wheelRadius, true);
    const double shroud = reach("COVER", nominal().wheelRadius).from - tip;
    EXPECT_NEAR(shroud, nominal().compressorShroud, 1e-3);
    const double onDisc = nominal().wheelRadius * 0.8;
    const double back = reach("WHEEL", onDisc).from - reach("PLATE", onDisc).to;
    EXPECT_NEAR(back, nominal().compressorBack, kSameMm);
    EXPECT_GT(back - c, 0.3);
}

TEST_P(Stations, AxialGapsOfTheTurbineWheel) {
    const double c = nominal().thrustClearance;
    const double back =
        reach("SHIELD", nominal().shieldRadius).from - reach("ROTOR", nominal().shieldRadius).to;
    EXPECT_NEAR(back, nominal().turbineBack, kSameMm);
    const double tip = bladeEndAt(assembly(), part("ROTOR"), nominal().turbineRadius, false);
    const double shroud = tip - reach("TURBINE-HOUSING", nominal().turbineRadius).to;
    EXPECT_NEAR(shroud, nominal().turbineShroud, 1e-3);
    EXPECT_GT(shroud - c, 0.3);
}

TEST_P(Stations, NoseStandsInTheInletOfTheCover) {
    EXPECT_NEAR(reach("COVER", nominal().inletRadius).to - reach("ROTOR", 2.0).to, nominal().noseDepth,
                kSameMm);
}

TEST_P(Stations, TipGapsOfBothWheels) {
    const double inducer = innerRadiusAt(part("COVER"), nominal().inducerZ, kPlain) -
                           bladeTipAt(assembly(), part("WHEEL"), nominal().inducerZ);
    EXPECT_NEAR(inducer, nominal().inducerTip, kTipMm);
    const double exducer = innerRadiusAt(part("TURBINE-HOUSING"), nominal().exducerZ, kPlain) -
                           bladeTipAt(assembly(), part("ROTOR"), nominal().exducerZ);
    EXPECT_NEAR(exducer, nominal().exducerTip, kTipMm);
}

INSTANTIATE_TEST_SUITE_P(Bundled, Stations, testing::Values(kAlder, pinned(), kBirch), [](const auto& made) {
    std::string name = made.param.frame;
    std::ranges::replace(name, '-', '_');
    return name;
});

namespace {

/// Where a part lies along the shaft when everything is home, rotor toward the compressor; invented.
struct Place {
    const char* part = "";
    Span z{};
    double radius = 0.0;
};

void expectPlaces(const char* frame, const std::vector<Place>& places) {
    const Assembly& assembly = assemblyOf(frame);
    for (const Place& place : places) {
        const Span found = reachAlong(assembly.at(place.part), {place.radius, kPlain});
        EXPECT_NEAR(found.from, place.z.from, kSameMm) << frame << " " << place.part;
        EXPECT_NEAR(found.to, place.z.to, kSameMm) << frame << " " << place.part;
    }
}

} // namespace

TEST(Places, OfTheAlder) {
    expectPlaces("alder-72", {{"NUT", {47.27, 54.77}, 5.0},
                              {"WHEEL", {19.27, 47.27}, 5.0},
                              {"COLLAR-B", {5.07, 19.27}, 5.0},
                              {"SPACER", {0.0, 5.07}, 5.0},
                              {"THRUST", {0.0, 5.0}, 10.0},
                              {"COLLAR-A", {-3.5, 0.0}, 5.0},
                              {"SR-CO", {-8.35, -7.35}, 9.0},
                              {"BRG-C", {-17.5, -8.5}, 9.0},
                              {"SR-CI", {-18.65, -17.65}, 9.0},
                              {"SR-TI", {-52.35, -51.35}, 9.0},
                              {"BRG-T", {-61.5, -52.5}, 9.0},
                              {"SR-TO", {-62.65, -61.65}, 9.0},
                              {"PR-T1", {-70.75, -69.25}, 9.4},
                              {"PR-C1", {13.4, 14.6}, 7.6},
                              {"SHIELD", {-77.0, -76.0}, 20.0},
                              {"HOUSING", {-73.0, -65.0}, 45.0},
                              {"PLATE", {12.6, 19.1}, 20.0},
                              {"COVER", {27.84, 92.0}, 30.0}});
}

TEST(Places, OfTheBirch) {
    expectPlaces("birch-150", {{"NUT", {94.35, 108.35}, 10.0},
                               {"WHEEL", {36.35, 94.35}, 10.0},
                               {"COLLAR-B", {8.70, 36.35}, 10.0},
                               {"SPACER", {0.05, 8.70}, 10.0},
                               {"THRUST", {-0.2, 8.8}, 19.0},
                               {"COLLAR-A", {-6.7, 0.05}, 10.0},
                               {"SR-CO", {-15.9, -14.15}, 18.0},
                               {"BRG-C", {-36.0, -16.0}, 18.0},
                               {"BRG-T", {-128.0, -108.0}, 18.0},
                               {"SR-TO", {-129.85, -128.1}, 18.0},
                               {"PR-T1", {-143.2, -140.8}, 20.0},
                               {"PR-T2", {-147.2, -144.8}, 20.0},
                               {"PR-C1", {26.0, 28.0}, 17.0},
                               {"PR-C2", {30.0, 32.0}, 17.0},
                               {"SHIELD", {-153.4, -150.4}, 40.0},
                               {"PLATE", {20.6, 36.2}, 40.0},
                               {"HOUSING", {-141.2, -127.2}, 120.0},
                               {"COVER", {68.0, 176.0}, 54.0}});
}

// For a rotor that turns clockwise seen from the compressor the gas must turn so too: a vane leads it inward,
// its inner end 20° clockwise of its outer one.
TEST(NozzleVanes, LeadTheGasTheWayTheRotorTurns) {
    const Assembly& assembly = assemblyOf("birch-150");
    const Placed& nozzle = assembly.at("NOZZLE");
    ASSERT_TRUE(assembly.frame.rotatesClockwise && assembly.frame.rotationSeenFrom == Side::Compressor);
    const auto vaneAt = [&](double r, double clock) {
        return !alongShaft(nozzle, {r, clock}).empty() &&
               reachAlong(nozzle, {r, clock}).to > nozzle.pose.shift.z + 15.0;
    };
    // From 1 mm within the outer end to 1 mm within the inner one it goes about 18 of these 20.
    const auto vaneNear = [&](double clock) {
        return vaneAt(78.0, clock - 1.0) || vaneAt(78.0, clock) || vaneAt(78.0, clock + 1.0);
    };
    int vanes = 0;
    for (double clock = 0.0; clock < 360.0; clock += 1.0) {
        if (!vaneAt(94.0, clock))
            continue;
        ++vanes;
        EXPECT_TRUE(vaneNear(clock + 18.0)) << clock;
        EXPECT_FALSE(vaneNear(clock - 18.0)) << clock;
    }
    EXPECT_GE(vanes, 15);
}

} // namespace gapwise::test
