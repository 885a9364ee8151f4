#include "geometry/meshfile/meshfile.h"
#include "models/frame/read_frame.h"
#include "tests/support/print_error.h"
#include "tests/viewer/fits/assembly.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace gapwise::test {

namespace {

const DataFolder kData{GAPWISE_TEST_SHARE};

MeshFacts factsOf(const Assembly& assembly, const Placed& placed) {
    const Result<MeshFacts> facts =
        readMeshFacts(kData.meshFile(assembly.frame.id, placed.type->id), assembly.frame.id.text);
    EXPECT_TRUE(facts) << (facts ? "" : describe(facts.errors()[0]));
    return facts ? facts.value() : MeshFacts{};
}

struct Weighed {
    double massKg = 0.0;
    double z = 0.0; ///< Of the centre of mass, in the datum axes.
};

Weighed weighed(const Assembly& assembly, const std::vector<const char*>& ids) {
    Weighed total;
    double moment = 0.0;
    for (const char* const id : ids) {
        const Placed& placed = assembly.at(id);
        const MeshFacts facts = factsOf(assembly, placed);
        total.massKg += facts.massKg;
        moment += facts.massKg * placed.pose.point(facts.centreMm).z;
    }
    total.z = moment / total.massKg;
    return total;
}

const std::vector<const char*> kRotor{"ROTOR"};
const std::vector<const char*> kRotorWithStack{"ROTOR", "COLLAR-A", "SPACER", "COLLAR-B", "WHEEL", "NUT"};

double cartridgeMass(const Assembly& assembly) {
    double mass = 0.0;
    for (const Placed& placed : assembly.parts)
        mass += assembly.frame.part(placed.part)->casing ? 0.0 : factsOf(assembly, placed).massKg;
    return mass;
}

} // namespace

// Invented sizes. The bare rotors also by slices along the shaft, worked out once beside the program: 0.3447
// kg at -70.69 and 3.1053 kg at -142.94.
TEST(Masses, OfTheAlder) {
    const Assembly& assembly = assemblyOf("alder-72");
    EXPECT_NEAR(weighed(assembly, kRotor).massKg, 0.3447, 0.001);
    EXPECT_NEAR(weighed(assembly, kRotor).z, -70.69, 0.1);
    EXPECT_NEAR(weighed(assembly, kRotorWithStack).massKg, 0.457, 0.03 * 0.457);
    EXPECT_NEAR(weighed(assembly, kRotorWithStack).z, -48.0, 1.0);
    EXPECT_NEAR(cartridgeMass(assembly), 3.7, 0.03 * 3.7);
}

TEST(Masses, OfTheBirch) {
    const Assembly& assembly = assemblyOf("birch-150");
    EXPECT_NEAR(weighed(assembly, kRotor).massKg, 3.1053, 0.01);
    EXPECT_NEAR(weighed(assembly, kRotor).z, -142.94, 0.2);
    EXPECT_NEAR(weighed(assembly, kRotorWithStack).massKg, 4.063, 0.03 * 4.063);
    EXPECT_NEAR(weighed(assembly, kRotorWithStack).z, -99.3, 2.0);
    EXPECT_NEAR(cartridgeMass(assembly), 31.0, 0.03 * 31.0);
}

// The rotor rests on its bearings by itself only once its stack is on: before, it tips over.
TEST(Masses, CentreLiesBetweenTheBearingsOnlyWithTheWheelOn) {
    for (const char* const frame : {"alder-72", "alder-72-pinned", "birch-150"}) {
        const Assembly& assembly = assemblyOf(frame);
        const double turbine = assembly.at("BRG-T").pose.shift.z;
        const double compressor = assembly.at("BRG-C").pose.shift.z;
        EXPECT_LT(weighed(assembly, kRotor).z, turbine) << frame;
        EXPECT_GT(weighed(assembly, kRotorWithStack).z, turbine) << frame;
        EXPECT_LT(weighed(assembly, kRotorWithStack).z, compressor) << frame;
    }
}

} // namespace gapwise::test
