#include "models/frame/read_frame.h"

#include "models/frame/names.h"
#include "tests/support/measured_frame.h"
#include "tests/support/print_error.h"

#include <gmock/gmock.h>

namespace gapwise {

namespace {

using nlohmann::json;
using testing::Contains;
using testing::ElementsAre;
using testing::Field;
using testing::IsEmpty;
using testing::SizeIs;

Frame measured() {
    Result<Frame> frame = measuredFrame().read();
    if (!frame) {
        ADD_FAILURE() << describe(frame.errors().front());
        return {};
    }
    return std::move(frame).value();
}

/// Places that are wrong with a value at a pointer.
void expectRefused(const char* pointer, const json& value) {
    const Errors errors = measuredFrame().set(pointer, value).errors();
    EXPECT_THAT(errors, Contains(Field(&Error::where, std::string{"f.json#"} + pointer))) << value;
}

} // namespace

TEST(ReadMeasurements, ReadsAMeasurementWithItsMethods) {
    const Frame frame = measured();
    ASSERT_THAT(frame.measurements, SizeIs(2));
    const Measurement& lengths = frame.measurements[0];
    EXPECT_FALSE(lengths.before);
    EXPECT_FALSE(lengths.required);
    EXPECT_EQ(lengths.instrument, "micrometer");
    ASSERT_THAT(lengths.methods, SizeIs(2));
    EXPECT_EQ(lengths.methods[1].words, "flat anvils");
    EXPECT_EQ(lengths.methods[1].blind, "flat anvils bridge a worn track");
    EXPECT_EQ(lengths.method("ball"), &lengths.methods[0]);
    EXPECT_THAT(lengths.methods[0].gauges, ElementsAre("ball_anvil_micrometer"));
    EXPECT_EQ(frame.measurements[1].before, StepId{"S1"});
    EXPECT_TRUE(frame.measurements[1].required);
}

TEST(ReadMeasurements, ReadsAQuantityWithItsLimits) {
    const Frame frame = measured();
    const Quantity& face = *frame.quantity(QuantityId{"a"}).quantity;
    EXPECT_EQ(face.part, PartId{"COLLAR"});
    EXPECT_EQ(face.unit, Unit::Millimetres);
    EXPECT_THAT(face.points, ElementsAre("1", "2", "3", "4"));
    EXPECT_EQ(face.planes, 2);
    EXPECT_EQ(face.takes, Takes::Least);
    EXPECT_EQ(face.expected, 4.0);
    EXPECT_EQ(face.spreadMost, 0.003);
    EXPECT_EQ(face.ovalityMost, 0.005);
    EXPECT_EQ(face.taperMost, 0.006);
    EXPECT_EQ(face.limits.fresh.least, 3.99);
    EXPECT_EQ(face.limits.fresh.most, 4.01);
    EXPECT_EQ(face.limits.service.least, 3.98);
    EXPECT_FALSE(face.limits.service.most);
    EXPECT_EQ(face.limits.rule, LimitRule::Guarded);
    EXPECT_EQ(face.limits.method, "ball");
    EXPECT_EQ(face.limits.source, "invented");
    EXPECT_EQ(face.pointer, "/measurements/0/quantities/0");
    const Quantity& rim = *frame.quantity(QuantityId{"rim"}).quantity;
    EXPECT_EQ(rim.takes, Takes::Mean);
    EXPECT_TRUE(rim.limits.fresh.empty() && rim.limits.service.empty());
    EXPECT_THAT(rim.points, IsEmpty());
}

TEST(ReadMeasurements, ReadsWhatHangsOnOtherQuantities) {
    const Frame frame = measured();
    const Quantity& track = *frame.quantity(QuantityId{"track"}).quantity;
    ASSERT_THAT(track.from, SizeIs(2));
    EXPECT_EQ(track.from[0].of, QuantityId{"rim"});
    EXPECT_EQ(track.from[0].sign, 1);
    EXPECT_EQ(track.from[1].sign, -1);
    const Quantity& gap = *frame.quantity(QuantityId{"gap"}).quantity;
    EXPECT_EQ(gap.agrees->with, QuantityId{"track"});
    EXPECT_EQ(gap.agrees->withinMm, 0.02);
    ASSERT_THAT(gap.expectations, SizeIs(2));
    EXPECT_THAT(gap.expectations[0].renewed, ElementsAre(PartId{"BUSH"}));
    EXPECT_EQ(gap.expectations[0].direction, Direction::Down);
    EXPECT_EQ(gap.expectations[1].work, "rotor_freed");
    EXPECT_EQ(gap.expectations[1].direction, Direction::Up);
}

TEST(ReadMeasurements, ReadsEveryPlan) {
    const Frame frame = measured();
    const FourPointPlan& tip = *frame.quantity(QuantityId{"tip"}).quantity->fourPoint;
    EXPECT_EQ(tip.seenFrom, Side::Turbine);
    EXPECT_EQ(tip.outboardMm, 48.0);
    EXPECT_EQ(tip.eccentricityMost, 0.06);
    EXPECT_EQ(tip.pointLeast, 0.25);
    EXPECT_EQ(tip.consistencyMost, 0.05);
    const UnbalancePlan& unbalance = *frame.quantity(QuantityId{"U"}).quantity->unbalance;
    EXPECT_EQ(unbalance.grade, 2.5);
    EXPECT_EQ(unbalance.speedRpm, 130000.0);
    EXPECT_EQ(unbalance.massKg, 0.5);
    EXPECT_EQ(unbalance.centreMm, -50.0);
    EXPECT_EQ(unbalance.compressorPlaneMm, 46.0);
    EXPECT_EQ(unbalance.turbinePlaneMm, -79.0);
    const RingGapPlan& ring = *frame.quantity(QuantityId{"ends"}).quantity->ringGap;
    EXPECT_EQ(ring.boreMm, 20.0);
    EXPECT_EQ(ring.ringPerK, 11.4e-6);
    EXPECT_EQ(ring.borePerK, 10.6e-6);
    EXPECT_EQ(ring.ringRiseK, 180.0);
    EXPECT_EQ(ring.boreRiseK, 120.0);
    const PinPlayPlan& pin = *frame.quantity(QuantityId{"turn"}).quantity->pinPlay;
    EXPECT_EQ(pin.notchMm, 2.7);
    EXPECT_EQ(pin.pinMm, 2.5);
    EXPECT_EQ(pin.radiusMm, 9.4525);
}

TEST(ReadMeasurements, ReadsDimensionsContactsAndChains) {
    const Frame frame = measured();
    EXPECT_EQ(frame.types[0].expansionPerK, 11.4e-6);
    const Dimension& bush = *frame.dimension(QuantityId{"b"});
    EXPECT_EQ(bush.part, PartId{"BUSH"});
    EXPECT_EQ(bush.from, StationId{"HOUSING/datum"});
    EXPECT_EQ(bush.to, StationId{"BUSH/face"});
    EXPECT_EQ(bush.nominalMm, 5.0);
    EXPECT_EQ(bush.toleranceMm, 0.01);
    EXPECT_EQ(bush.scatter, Scatter::Triangular);
    EXPECT_EQ(frame.dimension(QuantityId{"s"})->scatter, Scatter::Normal);
    ASSERT_THAT(frame.contacts, SizeIs(2));
    EXPECT_EQ(frame.contacts[0].first, StationId{"BUSH/face"});
    EXPECT_EQ(frame.contacts[0].second, StationId{"COLLAR/seat"});
    EXPECT_EQ(frame.contacts[0].pushedTo, Side::Compressor);
    EXPECT_FALSE(frame.contacts[1].pushedTo);
    const Chain& gap = *frame.chain(QuantityId{"gap"});
    EXPECT_EQ(gap.from, StationId{"COLLAR/face"});
    EXPECT_EQ(gap.to, StationId{"HOUSING/stop"});
    EXPECT_EQ(gap.pushedTo, Side::Compressor);
    ASSERT_THAT(gap.links, SizeIs(3));
    EXPECT_EQ(gap.links[2].of, QuantityId{"s"});
    EXPECT_TRUE(gap.window.empty());
    const Chain& play = *frame.chain(QuantityId{"play"});
    EXPECT_FALSE(play.pushedTo);
    EXPECT_EQ(play.window.least, 0.03);
    EXPECT_FALSE(play.window.most);
}

TEST(ReadMeasurements, ReadsChangesSelectorsAndTheLever) {
    const Frame frame = measured();
    ASSERT_THAT(frame.changes, SizeIs(1));
    EXPECT_EQ(frame.changes[0].kind, ChangeKind::Wear);
    EXPECT_EQ(frame.changes[0].part, PartId{"COLLAR"});
    EXPECT_THAT(frame.changes[0].moves, SizeIs(2));
    EXPECT_EQ(frame.changes[0].remedy, "renew");
    ASSERT_THAT(frame.selectors, SizeIs(1));
    EXPECT_EQ(frame.selectors[0].dimension, QuantityId{"b"});
    EXPECT_EQ(frame.selectors[0].sets, QuantityId{"gap"});
    EXPECT_THAT(frame.selectors[0].gradesMm, ElementsAre(4.9, 5.0, 5.1));
    EXPECT_EQ(frame.selectors[0].otherwise, "grind");
    ASSERT_TRUE(frame.lever);
    EXPECT_EQ(frame.lever->spanMm, 44.0);
    EXPECT_EQ(frame.lever->noseMm, 62.0);
    EXPECT_EQ(frame.lever->turbineMm, 56.0);
    EXPECT_EQ(frame.lever->bearingLengthMm, 9.0);
    EXPECT_EQ(frame.lever->noseReading, QuantityId{"nose"});
    EXPECT_EQ(frame.lever->turbineReading, QuantityId{"hub"});
    EXPECT_EQ(frame.lever->compressorPlay, QuantityId{"play"});
    EXPECT_EQ(frame.lever->turbinePlay, QuantityId{"play"});
}

TEST(ReadMeasurements, AFrameNeedsNoneOfIt) {
    const Frame frame = ChangedFrame{}.erase("", "measurements").read().value();
    EXPECT_THAT(frame.measurements, IsEmpty());
    EXPECT_THAT(frame.chains, IsEmpty());
    EXPECT_FALSE(frame.lever);
}

TEST(ReadMeasurements, ATermHasItsSign) {
    for (const char* text : {"a", "*a", "+", "-", "", "−a"})
        expectRefused("/chains/0/links/0", text);
    EXPECT_THAT(measuredFrame().set("/measurements/0/quantities/2/from/0", "rim").errors(),
                Contains(Error{"f.json#/measurements/0/quantities/2/from/0", "\"rim\"",
                               "+ or - and an id, as in +L_S or -t_T"}));
}

TEST(ReadMeasurements, AWindowHasTwoEnds) {
    for (const json& window : {json{0.05}, json{0.05, 0.1, 0.2}, json::array()})
        expectRefused("/measurements/1/quantities/0/limits/fresh", window);
    expectRefused("/measurements/1/quantities/0/limits/fresh/0", "0.05");
    expectRefused("/chains/1/window_mm/0", 6000);
    expectRefused("/chains/1/window_mm", "open");
}

TEST(ReadMeasurements, WordsAreThoseOfTheTable) {
    expectRefused("/measurements/0/quantities/0/unit", "inch");
    expectRefused("/measurements/0/quantities/0/takes", "median");
    expectRefused("/measurements/0/quantities/0/limits/rule", "simple");
    expectRefused("/measurements/1/quantities/0/expectations/0/direction", "left");
    expectRefused("/dimensions/0/scatter", "gaussian");
    expectRefused("/contacts/0/pushed_to", "nose");
    expectRefused("/changes/0/kind", "luck");
    expectRefused("/measurements/1/quantities/1/four_point/seen_from", "above");
}

TEST(ReadMeasurements, ImpossibleNumbersAreRefusedAtTheirPlace) {
    for (const json& value : {json(-1), json("1"), json(nullptr)}) {
        expectRefused("/measurements/0/quantities/0/spread_most", value);
        expectRefused("/measurements/1/quantities/1/four_point/outboard_mm", value);
        expectRefused("/measurements/1/quantities/1/four_point/point_least_mm", value);
        expectRefused("/measurements/1/quantities/2/unbalance/mass_kg", value);
        expectRefused("/measurements/1/quantities/2/unbalance/speed_rpm", value);
        expectRefused("/measurements/1/quantities/2/unbalance/grade_mm_s", value);
        expectRefused("/measurements/1/quantities/3/ring_gap/bore_mm", value);
        expectRefused("/measurements/1/quantities/3/ring_gap/ring_per_K", value);
        expectRefused("/measurements/1/quantities/3/ring_gap/bore_rise_K", value);
        expectRefused("/measurements/1/quantities/4/pin_play/pin_mm", value);
        expectRefused("/dimensions/0/tolerance_mm", value);
        expectRefused("/lever/span_mm", value);
    }
    expectRefused("/dimensions/0/nominal_mm", 1e6);
    expectRefused("/part_types/0/expansion_per_K", 11.4);
    expectRefused("/measurements/0/quantities/0/planes", 1.5);
    expectRefused("/contacts/0/between", {"BUSH/face"});
}

TEST(ReadMeasurements, UnknownKeysAreRefusedEverywhere) {
    for (const char* place :
         {"/measurements/0", "/measurements/0/methods/0", "/measurements/0/quantities/0",
          "/measurements/0/quantities/0/limits", "/measurements/1/quantities/0/agrees",
          "/measurements/1/quantities/0/expectations/0", "/measurements/1/quantities/1/four_point",
          "/measurements/1/quantities/2/unbalance", "/measurements/1/quantities/3/ring_gap",
          "/measurements/1/quantities/4/pin_play", "/dimensions/0", "/contacts/0", "/chains/0", "/changes/0",
          "/selectors/0", "/lever"})
        expectRefused((std::string{place} + "/colour").c_str(), "red");
}

TEST(ReadMeasurements, TheSchemaKnowsEveryKey) {
    const DataFolder bundled{GAPWISE_TEST_SHARE};
    const Result<Frame> frame = parseFrame(bundled, measuredFrame().text(), "f.json", Validation::Full);
    ASSERT_TRUE(frame) << describe(frame.errors().front());
    const auto refused = [&](const char* pointer, const json& value) {
        const std::string text = measuredFrame().set(pointer, value).text();
        EXPECT_FALSE(parseFrame(bundled, text, "f.json", Validation::Full)) << pointer;
    };
    refused("/measurements/0/quantities/0/unit", "inch");
    refused("/measurements/0/quantities/0/limits/fresh", {1});
    refused("/measurements/0/quantities/0/colour", "red");
    refused("/dimensions/0/tolerance_mm", -0.01);
    refused("/chains/0/links", json::array());
}

// Values of the wrong type everywhere: nothing may throw, and every error has its place.
TEST(ReadMeasurements, SurvivesAWrongValueAtEveryPlace) {
    const json good = json::parse(measuredFrame().text());
    const std::vector<json> wrong{nullptr, true, -1, 1e300, "", "x", json::array(), json::object()};
    const json places = good.flatten();
    for (const auto& [pointer, value] : places.items()) {
        const std::string section = pointer.substr(0, pointer.find('/', 1));
        if (section == "/part_types" || section == "/seats" || section == "/rules" || section == "/steps")
            continue;
        for (const json& other : wrong) {
            json changed = good;
            changed[json::json_pointer{pointer}] = other;
            const Result<Frame> frame =
                parseFrame(DataFolder{}, changed.dump(), "f.json", Validation::ReaderOnly);
            for (const Error& error : frame ? Errors{} : frame.errors())
                ASSERT_TRUE(error.where.starts_with("f.json#")) << describe(error);
        }
    }
}

TEST(ReadMeasurements, RefusesEveryTruncatedLength) {
    const std::string good = measuredFrame().text();
    for (std::size_t length = good.find("\"chains\""); length < good.size(); length += 7)
        ASSERT_FALSE(parseFrame(DataFolder{}, std::string_view{good}.substr(0, length), "f.json",
                                Validation::ReaderOnly))
            << length;
}

} // namespace gapwise
