#include "models/frame/readers.h"

#include <fmt/format.h>

namespace gapwise {

namespace {

constexpr int kMostInstances = 360;
constexpr Range kLeanDeg{-180.0, 180.0};
constexpr Range kSectorDeg{0.0, 360.0, true, true};
constexpr Range kChamferDeg{0.0, 90.0, true, true};
constexpr Range kLeadDeg{-90.0, 90.0, true, true};
constexpr Range kShare{0.0, 1.0, true};

using FormReader = FeatureForm (*)(Fields&);

Span readSpan(Fields& fields, std::string_view key, const Range& range) {
    const auto [from, to] = fields.pair(key, range);
    return Span{from, to};
}

QuarterEllipse readCurve(Fields& fields) {
    const auto [r0, r1] = fields.pair("r_mm", kStationMm);
    const auto [z0, z1] = fields.pair("z_mm", kStationMm);
    return QuarterEllipse{r0, r1, z0, z1};
}

/// One number, or two for a cone.
Diameter readDiameter(Fields& fields, std::string_view key) {
    if (fields.holdsArray(key)) {
        const auto [from, to] = fields.pair(key, kRadiusMm);
        return Diameter{from, to};
    }
    const double diameter = fields.number(key, kRadiusMm);
    return Diameter{diameter, diameter};
}

/// The three ways to say an outline; exactly one must stand there.
struct OutlineKeys {
    std::string_view diameter;
    std::string_view curve;
    std::string_view hexagon;
};

Outline readOutline(Fields& fields, const OutlineKeys& keys) {
    const int count = static_cast<int>(fields.has(keys.diameter)) + static_cast<int>(fields.has(keys.curve)) +
                      static_cast<int>(fields.has(keys.hexagon));
    if (count > 1)
        fields.complaints().add(
            fields.pointer(),
            fmt::format("{} of {}, {} and {}", count, keys.diameter, keys.curve, keys.hexagon),
            "one of them");
    if (fields.has(keys.curve))
        return readSection(fields, keys.curve, readCurve);
    if (fields.has(keys.hexagon))
        return AcrossFlats{fields.number(keys.hexagon, kLengthMm)};
    return readDiameter(fields, keys.diameter);
}

RingBody readRing(Fields& fields) {
    return RingBody{.bore = readOutline(fields, {"bore_mm", "bore_curve", "bore_hex_mm"}),
                    .outside = readOutline(fields, {"outside_mm", "outside_curve", "outside_hex_mm"}),
                    .z = readSpan(fields, "z_mm", kStationMm)};
}

EdgeBreak readEdge(Fields& fields) {
    constexpr std::array kKinds{Named<EdgeBreak::Kind>{"round", EdgeBreak::Kind::Round},
                                Named<EdgeBreak::Kind>{"chamfer", EdgeBreak::Kind::Chamfer}};
    EdgeBreak edge{.kind = fields.word("kind", kKinds),
                   .diameterMm = fields.number("diameter_mm", kLengthMm),
                   .zMm = fields.number("z_mm", kStationMm)};
    if (edge.kind == EdgeBreak::Kind::Round) {
        edge.sizeMm = fields.number("radius_mm", kLengthMm);
    } else {
        edge.sizeMm = fields.number("leg_mm", kLengthMm);
        edge.chamferAngle = Degrees{fields.number("angle_deg", kChamferDeg)};
    }
    return edge;
}

Blades readBlades(Fields& fields) {
    Blades blades{.count = fields.whole("count", 1, kMostInstances),
                  .thicknessMm = fields.number("thickness_mm", kLengthMm),
                  .first = Degrees{fields.number("first_deg", kOffsetDeg)},
                  .lean = Degrees{fields.number("lean_deg", kLeanDeg)}};
    const auto [from, to] = fields.pair("z_mm", kStationMm);
    blades.zFrom = from;
    blades.zTo = to;
    blades.reach = fields.maybeNumber("reach", kShare).value_or(1.0);
    blades.hub = readSection(fields, "hub", readCurve);
    blades.edge = readSection(fields, "edge", readCurve);
    if (fields.has("inlet_edge_z_mm"))
        blades.inletEdgeZ = readSpan(fields, "inlet_edge_z_mm", kStationMm);
    return blades;
}

double readAside(Fields& fields) {
    return fields.maybeNumber("aside_mm", kStationMm).value_or(0.0);
}

FeatureForm readRadialHole(Fields& fields) {
    return RadialHole{fields.number("diameter_mm", kLengthMm), readSpan(fields, "r_mm", kRadiusMm),
                      fields.number("z_mm", kStationMm), readAside(fields)};
}

FeatureForm readAxialHole(Fields& fields) {
    return AxialHole{fields.number("diameter_mm", kLengthMm), fields.number("circle_radius_mm", kRadiusMm),
                     readSpan(fields, "z_mm", kStationMm)};
}

FeatureForm readInclinedHole(Fields& fields) {
    const double diameter = fields.number("diameter_mm", kLengthMm);
    const auto [fromR, fromZ] = fields.pair("from_rz_mm", kStationMm);
    const auto [toR, toZ] = fields.pair("to_rz_mm", kStationMm);
    return InclinedHole{diameter, fromR, fromZ, toR, toZ};
}

FeatureForm readSlot(Fields& fields) {
    return Slot{fields.number("width_mm", kLengthMm), readSpan(fields, "r_mm", kRadiusMm),
                readSpan(fields, "z_mm", kStationMm), readAside(fields)};
}

FeatureForm readHexHole(Fields& fields) {
    return HexHole{fields.number("width_mm", kLengthMm), fields.number("circle_radius_mm", kRadiusMm),
                   readSpan(fields, "z_mm", kStationMm)};
}

FeatureForm readVane(Fields& fields) {
    return Vane{.thicknessMm = fields.number("thickness_mm", kLengthMm),
                .r = readSpan(fields, "r_mm", kRadiusMm),
                .lead = Degrees{fields.number("lead_deg", kLeadDeg)},
                .z = readSpan(fields, "z_mm", kStationMm)};
}

FeatureForm readSector(Fields& fields) {
    return Sector{Degrees{fields.number("angle_deg", kSectorDeg)}, readSpan(fields, "r_mm", kRadiusMm),
                  readSpan(fields, "z_mm", kStationMm)};
}

FeatureForm readGroove(Fields& fields) {
    return Groove{readDiameter(fields, "bore_mm"), readDiameter(fields, "outside_mm"),
                  readSpan(fields, "z_mm", kStationMm)};
}

FeatureForm readSteppedJoint(Fields& fields) {
    return SteppedJoint{fields.number("gap_mm", kLengthMm), fields.number("overlap_mm", kLengthMm)};
}

FeatureForm readArrow(Fields& fields) {
    return ArrowMark{readSpan(fields, "r_mm", kRadiusMm), fields.number("width_mm", kLengthMm),
                     fields.number("depth_mm", kLengthMm), fields.number("face_z_mm", kStationMm)};
}

FeatureForm readLetters(Fields& fields) {
    constexpr std::array kLooks{Named<bool>{"reference", true}, Named<bool>{"other", false}};
    return LetterMark{.text = fields.text("text"),
                      .heightMm = fields.number("height_mm", kLengthMm),
                      .radiusMm = fields.number("radius_mm", kRadiusMm),
                      .depthMm = fields.number("depth_mm", kLengthMm),
                      .faceZMm = fields.number("face_z_mm", kStationMm),
                      .looksToReference = fields.word("looks_to", kLooks)};
}

Feature readFeature(Fields& fields) {
    constexpr std::array kDoes{Named<Feature::Does>{"cut", Feature::Does::Cut},
                               Named<Feature::Does>{"add", Feature::Does::Add}};
    constexpr std::array<Named<FormReader>, 11> kForms{{
        {"radial_hole", readRadialHole},
        {"axial_hole", readAxialHole},
        {"inclined_hole", readInclinedHole},
        {"slot", readSlot},
        {"hex_hole", readHexHole},
        {"vane", readVane},
        {"sector", readSector},
        {"groove", readGroove},
        {"stepped_joint", readSteppedJoint},
        {"arrow", readArrow},
        {"letters", readLetters},
    }};
    return Feature{.id = fields.maybeText("id").value_or(""),
                   .name = fields.maybeText("name").value_or(""),
                   .does = fields.word("does", kDoes),
                   .form = fields.word("kind", kForms)(fields),
                   .offset = Degrees{fields.number("offset_deg", kOffsetDeg)},
                   .count = fields.has("count") ? fields.whole("count", 1, kMostInstances) : 1};
}

Thread readThread(Fields& fields) {
    constexpr std::array kHands{Named<bool>{"left", true}, Named<bool>{"right", false}};
    return Thread{.diameterMm = fields.number("diameter_mm", kLengthMm),
                  .pitchMm = fields.number("pitch_mm", kLengthMm),
                  .z = readSpan(fields, "z_mm", kStationMm),
                  .leftHand = fields.word("hand", kHands)};
}

} // namespace

Shape readShape(Fields& fields) {
    return Shape{.rings = readEach(fields.objects("rings"), readRing),
                 .edges = readEach(fields.maybeObjects("edges"), readEdge),
                 .blades = readEach(fields.maybeObjects("blades"), readBlades),
                 .features = readEach(fields.maybeObjects("features"), readFeature),
                 .threads = readEach(fields.maybeObjects("threads"), readThread)};
}

} // namespace gapwise
