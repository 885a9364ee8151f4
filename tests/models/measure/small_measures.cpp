#include "tests/models/measure/small_measures.h"

namespace gapwise::small {

namespace {

Method method(const char* id, std::vector<std::string> gauges, const char* blind = "") {
    return {.id = id, .words = std::string{"words of "} + id, .gauges = std::move(gauges), .blind = blind};
}

Quantity quantity(const char* id, const char* part) {
    return {.id = QuantityId{id}, .name = std::string{"name of "} + id, .part = PartId{part}};
}

Measurement journal() {
    Quantity d = quantity("d", "ROTOR");
    d.points = {"1, 0°", "1, 90°", "2, 0°", "2, 90°"};
    d.planes = 2;
    d.takes = Takes::Least;
    d.spreadMost = 0.002;
    d.ovalityMost = 0.005;
    d.taperMost = 0.005;
    d.limits = {.fresh = {11.990, 11.995}, .service = {11.980, std::nullopt}, .method = "micrometer"};
    return {.id = MeasurementId{"M01"},
            .name = "journal",
            .step = StepId{"S1"},
            .parts = {PartId{"ROTOR"}},
            .methods = {method("micrometer", {"flat_anvil_micrometer"})},
            .quantities = {d}};
}

Measurement collar() {
    Quantity a = quantity("a", "COLLAR");
    a.takes = Takes::Least;
    a.limits = {.fresh = {3.495, 3.505}, .service = {3.485, std::nullopt}, .method = "ball"};
    Quantity hub = quantity("hub", "COLLAR");
    hub.expected = 3.5;
    Quantity track = quantity("track", "COLLAR");
    track.from = {Term{QuantityId{"hub"}, 1}, Term{QuantityId{"a"}, -1}};
    track.limits = {.fresh = {std::nullopt, 0.010}, .method = "ball"};
    return {.id = MeasurementId{"M07"},
            .name = "collar",
            .step = StepId{"S1"},
            .parts = {PartId{"COLLAR"}},
            .methods = {method("ball", {"ball_anvil_micrometer"}),
                        method("flat", {"flat_anvil_micrometer"}, "flat anvils bridge a worn track")},
            .quantities = {a, hub, track}};
}

Measurement clearance() {
    Quantity c = quantity("c", "");
    c.spreadMost = 0.010;
    c.limits = {.fresh = {0.050, 0.090}, .service = {0.050, 0.120}, .method = "push-pull"};
    c.expectations = {Expectation{.renewed = {PartId{"COLLAR"}}, .direction = Direction::Down}};
    return {.id = MeasurementId{"axial"},
            .name = "axial clearance",
            .step = StepId{"S2"},
            .before = StepId{"D1"},
            .parts = {PartId{"COLLAR"}, PartId{"ROTOR"}},
            .required = true,
            .methods = {method("push-pull", {"dial_indicator"}), method("upright", {"dial_indicator"})},
            .quantities = {c}};
}

} // namespace

Frame frame() {
    Frame frame;
    frame.id = FrameId{"small"};
    frame.housing = PartId{"HOUSING"};
    frame.rotor = PartId{"ROTOR"};
    frame.types = {PartType{.id = PartTypeId{"steel"}, .expansionPerK = 12e-6}};
    for (const char* id : {"HOUSING", "ROTOR", "COLLAR"})
        frame.parts.push_back(Part{.id = PartId{id}, .type = PartTypeId{"steel"}});
    frame.measurements = {journal(), collar(), clearance()};
    const auto station = [](const char* id) { return StationId{id}; };
    frame.dimensions = {Dimension{.id = QuantityId{"a"},
                                  .part = PartId{"COLLAR"},
                                  .from = station("COLLAR/seat"),
                                  .to = station("COLLAR/face"),
                                  .nominalMm = 3.5,
                                  .toleranceMm = 0.006},
                        Dimension{.id = QuantityId{"t"},
                                  .part = PartId{"HOUSING"},
                                  .from = station("HOUSING/seat"),
                                  .to = station("HOUSING/face"),
                                  .nominalMm = 3.57,
                                  .toleranceMm = 0.006}};
    frame.contacts = {Contact{.first = station("HOUSING/seat"), .second = station("COLLAR/seat")}};
    frame.chains = {Chain{.id = QuantityId{"c"},
                          .name = "axial clearance",
                          .from = station("COLLAR/face"),
                          .to = station("HOUSING/face"),
                          .links = {Term{QuantityId{"a"}, -1}, Term{QuantityId{"t"}, 1}}}};
    return frame;
}

Bench bench() {
    const auto instrument = [](const char* id, const char* kind, double expanded, double most) {
        return Instrument{.id = id,
                          .kind = kind,
                          .name = id,
                          .resolution = 0.001,
                          .uncertainty = expanded,
                          .least = 0.0,
                          .most = most,
                          .calibratedUntil = "2026-12-31"};
    };
    return {.name = "small bench",
            .instruments = {instrument("MIC", "flat_anvil_micrometer", 0.003, 25.0),
                            instrument("BALL", "ball_anvil_micrometer", 0.003, 25.0),
                            instrument("DIAL", "dial_indicator", 0.006, 3.0)}};
}

Reading reading(const std::string& quantity, std::vector<double> values) {
    const bool isJournal = quantity == "d";
    const bool isClearance = quantity == "c";
    return {.measurement = isJournal     ? "M01"
                           : isClearance ? "axial"
                                         : "M07",
            .quantity = quantity,
            .values = std::move(values),
            .unit = "mm",
            .method = isJournal     ? "micrometer"
                      : isClearance ? "push-pull"
                                    : "ball",
            .instrument = isJournal     ? "MIC"
                          : isClearance ? "DIAL"
                                        : "BALL",
            .by = "R. Ohlin",
            .on = "2026-05-04"};
}

Build build(std::vector<Reading> readings) {
    Build build;
    for (const char* id : {"HOUSING", "ROTOR", "COLLAR"})
        build.seatings.push_back(Seating{.part = PartId{id}, .seat = seatOf(PartId{id})});
    build.readings = std::move(readings);
    return build;
}

std::string Held::flags(const std::string& quantity) const {
    std::string names;
    for (const Flag& flag : read(quantity).flags)
        names += (names.empty() ? "" : " ") + std::string{nameOf(flag.kind)};
    return names;
}

void measure(Held& held, const std::string& today) {
    held.report = measureReport(held.frame, held.build, bench(), {.today = today});
}

} // namespace gapwise::small
