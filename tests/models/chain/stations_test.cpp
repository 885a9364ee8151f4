#include "models/chain/stations.h"

#include "models/chain/prediction.h"
#include "tests/support/chain_frame.h"

#include <gtest/gtest.h>

#include <ostream>

namespace gapwise::test {

namespace {

std::map<StationId, double> stations(const Frame& frame, Side pushedTo) {
    return stationsAlongShaft(frame, dimensionValues(frame, {}), pushedTo);
}

} // namespace

/// Where a face lies with the rotor toward the compressor, worked by hand for both sizes.
struct Place {
    const char* station;
    double alder;
    double birch;

    friend void PrintTo(const Place& place, std::ostream* out) { *out << place.station; }
};

class Places : public ::testing::TestWithParam<Place> {};

TEST_P(Places, AreThoseOfTheDrawing) {
    const StationId station{GetParam().station};
    EXPECT_NEAR(stations(alderChainFrame(), Side::Compressor).at(station), GetParam().alder, 1e-9);
    EXPECT_NEAR(stations(birchChainFrame(), Side::Compressor).at(station), GetParam().birch, 1e-9);
}

INSTANTIATE_TEST_SUITE_P(
    HandWorked, Places,
    ::testing::Values(Place{"HOUSING/datum", 0.0, 0.0}, Place{"COVER/inlet face", 92.0, 176.0},
                      Place{"ROTOR/shaft end", 57.0, 111.3}, Place{"NUT/seat", 47.27, 94.35},
                      Place{"NUT/outer face", 54.77, 108.35}, Place{"WHEEL/seat", 19.27, 36.35},
                      Place{"WHEEL/nut face", 47.27, 94.35}, Place{"PLATE/diffuser wall", 19.1, 36.2},
                      Place{"COLLAR-B/running face", 5.07, 8.95}, Place{"COLLAR-B/hub face", 5.07, 8.7},
                      Place{"COLLAR-B/wheel seat", 19.27, 36.35}, Place{"SPACER/turbine end", 0.0, 0.05},
                      Place{"SPACER/compressor end", 5.07, 8.7}, Place{"THRUST/pad T", 0.0, -0.2},
                      Place{"THRUST/pad C", 5.0, 8.8}, Place{"COLLAR-A/seat", -3.5, -6.7},
                      Place{"COLLAR-A/running face", 0.0, -0.2}, Place{"COLLAR-A/hub face", 0.0, 0.05},
                      Place{"SHIELD/front", -77.0, -153.4}, Place{"ROTOR/wheel back", -77.8, -154.7}));

// Common practice, no source: pushed to the compressor the rotor rests on the turbine-side face.
TEST(Stations, TheRotorRestsOnTheOppositeFaceOfTheThrustBearing) {
    const auto toCompressor = stations(alderChainFrame(), Side::Compressor);
    EXPECT_NEAR(toCompressor.at(StationId{"COLLAR-A/running face"}),
                toCompressor.at(StationId{"THRUST/pad T"}), 1e-12);
    EXPECT_GT(toCompressor.at(StationId{"COLLAR-B/running face"}),
              toCompressor.at(StationId{"THRUST/pad C"}) + 0.05);
    const auto toTurbine = stations(alderChainFrame(), Side::Turbine);
    EXPECT_NEAR(toTurbine.at(StationId{"COLLAR-B/running face"}), toTurbine.at(StationId{"THRUST/pad C"}),
                1e-12);
}

TEST(Stations, PushedToTheTurbineTheRotorStandsLowerByTheAxialClearance) {
    const Frame frame = birchChainFrame();
    const double clearance = predict(chainOf(frame, "c"), dimensionValues(frame, {})).valueMm;
    const auto toCompressor = stations(frame, Side::Compressor);
    const auto toTurbine = stations(frame, Side::Turbine);
    for (const char* station : {"ROTOR/shaft end", "WHEEL/back disc", "ROTOR/wheel back"})
        EXPECT_NEAR(toCompressor.at(StationId{station}) - toTurbine.at(StationId{station}), clearance, 1e-9);
    EXPECT_EQ(toCompressor.at(StationId{"COVER/inlet face"}), toTurbine.at(StationId{"COVER/inlet face"}));
}

TEST(Stations, EveryAxialChainIsTheDistanceOfItsEnds) {
    for (const Frame& frame : {alderChainFrame(), birchChainFrame()})
        for (const Chain& chain : frame.chains) {
            const auto values = dimensionValues(frame, {});
            const auto along = stationsAlongShaft(frame, values, chain.pushedTo.value_or(Side::Compressor));
            if (along.contains(chain.from) && along.contains(chain.to)) {
                EXPECT_NEAR(along.at(chain.to) - along.at(chain.from), predict(chain, values).valueMm, 1e-9)
                    << chain.id.text;
            }
        }
}

TEST(Stations, DiametersLieNowhereAlongTheShaft) {
    const auto along = stations(alderChainFrame(), Side::Compressor);
    EXPECT_FALSE(along.contains(StationId{"axis"}));
    EXPECT_FALSE(along.contains(StationId{"BRG-C/bore"}));
}

TEST(Stations, WithoutAWayThereIsOnlyTheDatum) {
    EXPECT_EQ(stations(Frame{}, Side::Compressor).size(), 1U);
}

} // namespace gapwise::test
