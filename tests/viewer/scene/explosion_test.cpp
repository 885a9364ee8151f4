#include "viewer/scene/explosion.h"

#include "small_cartridge.h"

#include <gmock/gmock.h>

#include <cmath>

namespace gapwise {

using testing::ElementsAre;

namespace {

std::vector<std::string> namesOf(const std::vector<PartId>& parts) {
    std::vector<std::string> names;
    for (const PartId& part : parts)
        names.push_back(part.text);
    return names;
}

PulledPart pulled(const char* part, double z, std::optional<Side> benchEntry = std::nullopt) {
    return {.part = PartId{part}, .seat = seatOf(PartId{part}), .z = {z, z}, .benchEntry = benchEntry};
}

std::vector<PulledPart> allParts() {
    return {pulled("PLATE", 10.0),
            pulled("SLEEVE", 8.0),
            pulled("RING-S", 9.0, Side::Compressor),
            pulled("ROTOR", -20.0),
            pulled("RING-1", -66.0, Side::Compressor),
            pulled("RING-2", -63.0, Side::Compressor),
            pulled("SNAP", -8.0),
            pulled("BUSH", -14.0),
            pulled("PIN", -20.0),
            pulled("HOUSING", -30.0)};
}

} // namespace

TEST(StepsInOrder, KeepsEveryAfter) {
    const Frame frame = small::frame();
    const auto order = stepsInOrder(frame);
    ASSERT_EQ(order.size(), frame.steps.size());
    for (std::size_t i = 0; i < order.size(); ++i)
        for (const Precedence& before : order[i]->after)
            EXPECT_TRUE(std::any_of(order.begin(), order.begin() + static_cast<std::ptrdiff_t>(i),
                                    [&](const Step* step) { return step->id == before.step; }));
}

// A part that goes in at an end after another lies farther out there: taken from outside in, each end's row
// is the order of assembly reversed.
TEST(PulledApart, IsTheReverseOfAssembly) {
    EXPECT_THAT(namesOf(pulledApartOrder(small::frame(), allParts())),
                ElementsAre("ROTOR", "RING-1", "RING-2", "HOUSING", "PIN", "BUSH", "SNAP", "SLEEVE", "RING-S",
                            "PLATE"));
}

TEST(PulledApart, BenchRingsComeOffTheSlimEndOfTheirCarrier) {
    std::vector<PulledPart> parts = allParts();
    for (PulledPart& part : parts)
        if (part.part.text == "RING-S")
            part.benchEntry = Side::Turbine;
    const auto order = namesOf(pulledApartOrder(small::frame(), parts));
    const auto ring = std::find(order.begin(), order.end(), "RING-S");
    ASSERT_NE(ring, order.end());
    EXPECT_EQ(*(ring + 1), "SLEEVE");
}

TEST(PulledApart, SomePartsKeepTheirOrder) {
    EXPECT_THAT(namesOf(pulledApartOrder(small::frame(), {pulled("SNAP", -8.0), pulled("HOUSING", -30.0),
                                                          pulled("RING-1", -66.0, Side::Compressor)})),
                ElementsAre("RING-1", "HOUSING", "SNAP"));
    EXPECT_TRUE(pulledApartOrder(small::frame(), {}).empty());
}

TEST(Pulls, LeaveEqualGapsAndTheHousingAtRest) {
    const std::vector<AxialReach> reaches{
        {PartId{"A"}, {-70.0, 57.0}}, {PartId{"B"}, {-60.0, 0.0}}, {PartId{"C"}, {-9.0, -8.0}}};
    const auto moves = pulls(reaches, PartId{"B"}, 5.0);
    EXPECT_EQ(moves.at(PartId{"B"}), 0.0);
    EXPECT_NEAR(57.0 + moves.at(PartId{"A"}), -65.0, 1e-9);
    EXPECT_NEAR(-9.0 + moves.at(PartId{"C"}), 5.0, 1e-9);
}

TEST(Pulls, OfNothingAreNone) {
    EXPECT_TRUE(pulls({}, PartId{}, 5.0).empty());
}

} // namespace gapwise
