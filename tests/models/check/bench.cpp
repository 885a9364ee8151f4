#include "tests/models/check/bench.h"

namespace gapwise::bench {

namespace {

PartType typeNamed(const char* id, IndexKind index, FaceKind face) {
    PartType type;
    type.id = PartTypeId{id};
    type.name = id;
    type.index = index;
    type.face = face;
    return type;
}

std::vector<PartType> types() {
    PartType housing = typeNamed("housing", IndexKind::None, FaceKind::None);
    housing.shape.features.push_back(
        Feature{.id = "F08",
                .name = "spill slot",
                .form = Slot{.widthMm = 5.0, .r = {9.0, 11.5}, .z = {-9.0, -5.0}},
                .offset = Degrees{180.0}});
    PartType snap = typeNamed("snap-ring", IndexKind::Gap, FaceKind::Rounded);
    snap.gapMm = 3.5;
    PartType straight = typeNamed("seal-straight", IndexKind::Gap, FaceKind::None);
    straight.joint = Joint::Straight;
    PartType stepped = typeNamed("seal-stepped", IndexKind::Gap, FaceKind::None);
    stepped.joint = Joint::Stepped;
    return {housing,
            snap,
            straight,
            stepped,
            typeNamed("rotor", IndexKind::MatchMark, FaceKind::None),
            typeNamed("bush", IndexKind::Notch, FaceKind::EndMark),
            typeNamed("pin", IndexKind::None, FaceKind::None),
            typeNamed("sleeve", IndexKind::MatchMark, FaceKind::Running),
            typeNamed("plate", IndexKind::Arrow, FaceKind::Marked)};
}

struct Place {
    const char* part;
    const char* type;
    double z;
    std::vector<Carrier> carriers;
};

void add(Frame& frame, const Place& place) {
    frame.parts.push_back(Part{.id = PartId{place.part}, .name = place.part, .type = PartTypeId{place.type}});
    frame.seats.push_back(Seat{.id = seatOf(PartId{place.part}),
                               .types = {PartTypeId{place.type}},
                               .carriers = place.carriers,
                               .zMm = place.z});
}

Rule rule(const char* id, RuleDemand demand, int severity, const char* lastLook) {
    return Rule{
        .id = RuleId{id}, .demand = std::move(demand), .severity = severity, .lastLook = StepId{lastLook}};
}

PrintedClock printed(double clock, std::optional<Side> side, double tolerance) {
    return PrintedClock{Degrees{clock}, side, Degrees{tolerance}};
}

void addRules(Frame& frame) {
    const PartId c{"SR-C"};
    const PartId t{"SR-T"};
    Rule gapC = rule("SR-C.gap", GapClockRule{c, printed(90.0, Side::Compressor, 30.0)}, 3, "S2");
    Rule gapT = rule("SR-T.gap", GapClockRule{t, printed(90.0, Side::Turbine, 30.0)}, 3, "S1");
    gapC.twin = gapT.id;
    gapT.twin = gapC.id;
    frame.rules = {
        gapC,
        gapT,
        rule("SR-C.clear", GapClearOfRule{c, FeatureId{"F08"}, Degrees{10.0}}, 3, "S2"),
        rule("SR-C.face", FaceRule{c, PartId{"BUSH"}}, 3, "S2"),
        rule("SR-C.seat", SeatRule{seatOf(c)}, 4, "S2"),
        rule("BUSH.notch", EngagedRule{PartId{"BUSH"}, std::nullopt, PartId{"PIN"}, Degrees{0.5}}, 4, "S1"),
        rule("PR-1.gap", GapClockRule{PartId{"PR-1"}, printed(0.0, std::nullopt, 30.0)}, 2, "S3"),
        rule("PR.apart", GapsApartRule{PartId{"PR-1"}, PartId{"PR-2"}, Degrees{180.0}, Degrees{20.0}}, 2,
             "S3"),
        rule("PR-1.joint", JointRule{seatOf(PartId{"PR-1"}), Joint::Straight}, 2, "S3"),
        rule("PR-P.gap", GapClockRule{PartId{"PR-P"}, printed(0.0, std::nullopt, 30.0)}, 2, "S4"),
        rule("marks", MatchMarksRule{{PartId{"ROTOR"}, PartId{"SLEEVE"}}, Degrees{5.0}}, 3, "S4")};
}

} // namespace

Frame smallFrame() {
    Frame frame;
    frame.id = FrameId{"small"};
    frame.housing = PartId{"HOUSING"};
    frame.rotor = PartId{"ROTOR"};
    frame.types = types();
    const Carrier housing{.part = frame.housing};
    const Carrier rotor{.part = frame.rotor};
    const Carrier bore{.part = frame.housing, .onceSeated = {frame.rotor}};
    const Carrier plate{.part = PartId{"PLATE"}, .onceStep = StepId{"S4"}};
    add(frame, {"HOUSING", "housing", 0.0, {}});
    add(frame, {"SR-C", "snap-ring", -7.85, {housing}});
    add(frame, {"SR-T", "snap-ring", -62.15, {housing}});
    add(frame, {"BUSH", "bush", -13.0, {housing}});
    add(frame, {"PIN", "pin", -16.0, {housing}});
    add(frame, {"ROTOR", "rotor", 0.0, {housing}});
    add(frame, {"PR-1", "seal-straight", -70.0, {rotor, bore}});
    add(frame, {"PR-2", "seal-straight", -74.0, {rotor, bore}});
    add(frame, {"SLEEVE", "sleeve", 5.0, {rotor}});
    add(frame, {"PLATE", "plate", 8.0, {housing}});
    add(frame, {"PR-P", "seal-stepped", 14.0, {Carrier{.part = PartId{"SLEEVE"}}, plate}});
    for (Seat& seat : frame.seats) {
        if (seat.id == seatOf(PartId{"SR-C"}))
            seat.groove = RingGroove{.boreMm = 19.0, .z = {-8.45, -7.35}};
        if (seat.id == seatOf(PartId{"PIN"}))
            seat.fixedIndex = Clock::seenFrom(Side::Compressor, Degrees{180.0});
    }
    frame.steps = {Step{.id = StepId{"S1"}}, Step{.id = StepId{"S2"}},
                   Step{.id = StepId{"S3"}, .hides = {seatOf(PartId{"SR-C"})}}, Step{.id = StepId{"S4"}}};
    addRules(frame);
    return frame;
}

Seating seatedAt(const char* part, double clock, Side looks) {
    return Seating{.part = PartId{part},
                   .seat = seatOf(PartId{part}),
                   .index = Clock::seenFrom(Side::Compressor, Degrees{clock}),
                   .referenceFaceLooks = looks,
                   .home = true};
}

} // namespace gapwise::bench
