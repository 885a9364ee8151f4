#include "models/frame/frame_errors.h"

#include "tests/support/measured_frame.h"
#include "tests/support/print_error.h"

#include <gmock/gmock.h>

namespace gapwise {

namespace {

using nlohmann::json;
using testing::AllOf;
using testing::Contains;
using testing::ElementsAre;
using testing::Field;
using testing::HasSubstr;
using testing::IsEmpty;

Errors changed(const std::string& pointer, const json& value) {
    return measuredFrame().set(pointer.c_str(), value).errors();
}

const std::string kFace = "/measurements/0/quantities/0";
const std::string kGap = "/measurements/1/quantities/0";
const std::string kTip = "/measurements/1/quantities/1";
const std::string kUnbalance = "/measurements/1/quantities/2";
const std::string kTurn = "/measurements/1/quantities/4";

} // namespace

TEST(MeasurementErrors, ARightFrameHasNone) {
    EXPECT_THAT(measuredFrame().errors(), IsEmpty());
}

TEST(MeasurementErrors, ALimitNamesAMethodOfItsMeasurement) {
    EXPECT_THAT(measuredFrame().erase((kFace + "/limits").c_str(), "method").errors(),
                ElementsAre(Error{"f.json#" + kFace + "/limits", "limits without a method",
                                  "method: a method of M1: ball or flat"}));
    EXPECT_THAT(changed(kFace + "/limits/method", "push-pull"),
                ElementsAre(Error{"f.json#" + kFace + "/limits/method", "\"push-pull\"",
                                  "a method of M1: ball or flat"}));
}

TEST(MeasurementErrors, QuantitiesHaveAMethodToBeReadBy) {
    EXPECT_THAT(
        measuredFrame().erase("/measurements/1", "methods").errors(),
        Contains(Error{"f.json#/measurements/1", "quantities without a method", "at least 1 method"}));
    EXPECT_THAT(changed("/measurements/0/methods/1/id", "ball"),
                ElementsAre(Error{"f.json#/measurements/0/methods/1/id", "\"ball\"",
                                  "an id that no other method of this measurement has"}));
}

TEST(MeasurementErrors, LimitsLieInsideEachOther) {
    EXPECT_THAT(changed(kFace + "/limits/service", {3.995, nullptr}),
                ElementsAre(Error{"f.json#" + kFace + "/limits/fresh", "[3.99, 4.01]",
                                  "a window within service, [3.995, open]"}));
    EXPECT_THAT(changed(kFace + "/limits/fresh", {nullptr, 4.01}),
                ElementsAre(Field(&Error::found, "[open, 4.01]")));
    EXPECT_THAT(changed(kGap + "/limits/fresh", {0.15, 0.05}),
                Contains(Error{"f.json#" + kGap + "/limits/fresh", "[0.15, 0.05]",
                               "[least, most] with least ≤ most"}));
    EXPECT_THAT(changed(kFace + "/limits/service", {3.98, 3.97}), Not(IsEmpty()));
}

TEST(MeasurementErrors, LimitsHoldSomething) {
    EXPECT_THAT(
        measuredFrame().erase((kGap + "/limits").c_str(), "fresh").errors(),
        Contains(Error{"f.json#" + kGap + "/limits", "neither fresh nor service", "at least one of both"}));
    EXPECT_THAT(changed(kGap + "/limits/fresh", {nullptr, nullptr}), Not(IsEmpty()));
}

TEST(MeasurementErrors, AQuantityHasItsIdAlone) {
    EXPECT_THAT(changed(kTip + "/id", "gap"),
                ElementsAre(Error{"f.json#" + kTip + "/id", "\"gap\", as at " + kGap,
                                  "an id that no other quantity has"}));
}

TEST(MeasurementErrors, WhatIsReferredToIsThere) {
    const auto lost = [](const std::string& pointer, const json& value) {
        EXPECT_THAT(changed(pointer, value), Contains(AllOf(Field(&Error::where, "f.json#" + pointer),
                                                            Field(&Error::found, HasSubstr("NOBODY")))))
            << pointer;
    };
    lost("/measurements/0/quantities/2/from/0", "+NOBODY");
    lost(kGap + "/agrees/with", "NOBODY");
    lost(kGap + "/expectations/0/renewed/0", "NOBODY");
    lost(kFace + "/part", "NOBODY");
    lost("/measurements/1/before", "NOBODY");
}

TEST(MeasurementErrors, NothingIsReckonedFromItself) {
    EXPECT_THAT(changed("/measurements/0/quantities/1/from", {"+track", "+a"}),
                ElementsAre(AllOf(Field(&Error::where, "f.json#/measurements/0/quantities/1/from"),
                                  Field(&Error::found, "rim from track from rim"))));
    EXPECT_THAT(changed(kGap + "/agrees/with", "gap"),
                ElementsAre(Error{"f.json#" + kGap + "/agrees/with", "\"gap\"", "another quantity"}));
}

TEST(MeasurementErrors, AQuantityIsOfAPartThatIsMeasured) {
    EXPECT_THAT(changed(kFace + "/part", "ROTOR"),
                ElementsAre(Error{"f.json#" + kFace + "/part", "\"ROTOR\"",
                                  "a part that M1 judges: BUSH or COLLAR"}));
}

TEST(MeasurementErrors, AnExpectationFollowsFromSomething) {
    EXPECT_THAT(measuredFrame().erase((kGap + "/expectations/1").c_str(), "work").errors(),
                ElementsAre(Error{"f.json#" + kGap + "/expectations/1", "neither renewed nor work",
                                  "what it follows from"}));
}

TEST(MeasurementErrors, PlanesHaveTheSameNumberOfPoints) {
    EXPECT_THAT(changed(kFace + "/planes", 3),
                ElementsAre(Error{"f.json#" + kFace + "/planes", "3 with 4 points",
                                  "planes that have the same number of points each"}));
    EXPECT_THAT(measuredFrame().erase(kFace.c_str(), "points").errors(),
                ElementsAre(Field(&Error::found, "2 with 0 points")));
    EXPECT_THAT(measuredFrame().erase(kFace.c_str(), "planes").errors(),
                ElementsAre(Field(&Error::where, "f.json#" + kFace + "/ovality_most"),
                            Field(&Error::where, "f.json#" + kFace + "/taper_most")));
}

TEST(MeasurementErrors, FourPointsAreFour) {
    EXPECT_THAT(changed(kTip + "/points", {"12", "3", "6"}),
                ElementsAre(Error{"f.json#" + kTip + "/points", "3 points",
                                  "4 points, as a quantity with four_point has"}));
    EXPECT_THAT(measuredFrame().erase(kTip.c_str(), "points").errors(),
                ElementsAre(Field(&Error::found, "0 points")));
}

TEST(MeasurementErrors, APlanHasItsUnit) {
    EXPECT_THAT(changed(kTurn + "/unit", "mm"), ElementsAre(Error{"f.json#" + kTurn + "/unit", "mm",
                                                                  "deg, as a quantity with pin_play has"}));
    EXPECT_THAT(changed(kUnbalance + "/unit", "mm"), ElementsAre(Field(&Error::found, "mm")));
    EXPECT_THAT(changed(kTip + "/unit", "deg"), ElementsAre(Field(&Error::found, "deg")));
    EXPECT_THAT(changed("/measurements/1/quantities/3/unit", "deg"),
                ElementsAre(Field(&Error::found, "deg")));
}

TEST(MeasurementErrors, TheBalancingPlanesAreApart) {
    EXPECT_THAT(changed(kUnbalance + "/unbalance/compressor_plane_z_mm", -79),
                ElementsAre(Error{"f.json#" + kUnbalance + "/unbalance/compressor_plane_z_mm", "-79",
                                  "more than turbine_plane_z_mm, -79"}));
    EXPECT_THAT(changed(kUnbalance + "/points", json::array({"C"})),
                ElementsAre(Field(&Error::found, "1 point")));
}

TEST(MeasurementErrors, ANotchIsWiderThanItsPin) {
    EXPECT_THAT(
        changed(kTurn + "/pin_play/notch_mm", 2.5),
        ElementsAre(Error{"f.json#" + kTurn + "/pin_play/notch_mm", "2.5", "wider than the pin, 2.5"}));
    EXPECT_THAT(changed(kTurn + "/pin_play/radius_mm", 2),
                ElementsAre(Field(&Error::where, "f.json#" + kTurn + "/pin_play/radius_mm")));
}

} // namespace gapwise
