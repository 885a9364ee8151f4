#include "small_cartridge.h"

#include "lathe.h"
#include "viewer/scene/assembled_build.h"

#include <algorithm>
#include <stdexcept>

namespace gapwise::small {

namespace {

struct Piece {
    const char* id;
    const char* tint;
    double zMm;
    std::vector<const char*> carriers;
    std::optional<Side> entersFrom;
    IndexKind index;
    std::vector<lathe::Ring> rings; ///< In the part's own axes: its origin at zMm of the cartridge.
};

std::vector<Piece> pieces() {
    constexpr auto kCompressor = Side::Compressor;
    constexpr auto kTurbine = Side::Turbine;
    return {
        {"HOUSING", "housing", 0.0, {}, {}, IndexKind::Opening, {{10.0, 40.0, -60.0, 0.0}}},
        {"PIN", "steel", -30.0, {"HOUSING"}, {}, IndexKind::None, {{0.0, 1.0, -1.0, 1.0}}},
        {"BUSH", "bronze", -14.0, {"HOUSING"}, kCompressor, IndexKind::None, {{6.0, 9.9, -4.0, 4.0}}},
        {"SNAP", "ring", -8.0, {"HOUSING"}, kCompressor, IndexKind::Gap, {{8.0, 10.0, -0.5, 0.5, 30.0}}},
        // The seats of the rotor's rings name the end of the cartridge at which they go in with the rotor.
        {"RING-1",
         "ring",
         -66.0,
         {"ROTOR", "HOUSING"},
         kTurbine,
         IndexKind::Gap,
         {{7.0, 9.5, -0.5, 0.5, 5.0}}},
        {"RING-2",
         "ring",
         -63.0,
         {"ROTOR", "HOUSING"},
         kTurbine,
         IndexKind::Gap,
         {{7.0, 9.5, -0.5, 0.5, 5.0}}},
        {"ROTOR",
         "hot",
         -70.0,
         {"HOUSING"},
         kTurbine,
         IndexKind::MatchMark,
         {{0.0, 30.0, -10.0, 0.0}, {0.0, 9.0, 0.0, 10.0}, {0.0, 5.0, 10.0, 90.0}}},
        {"RING-S",
         "ring",
         9.0,
         {"SLEEVE", "PLATE"},
         kCompressor,
         IndexKind::Gap,
         {{6.0, 8.0, -0.5, 0.5, 5.0}}},
        {"SLEEVE",
         "steel",
         2.0,
         {"ROTOR"},
         kCompressor,
         IndexKind::MatchMark,
         {{5.0, 12.0, 0.0, 3.0}, {5.0, 7.5, 3.0, 12.0}}},
        {"PLATE", "aluminium", 6.0, {"HOUSING"}, kCompressor, IndexKind::Arrow, {{8.0, 50.0, 0.0, 8.0}}},
    };
}

Seat seatFor(const Piece& piece) {
    Seat seat{.id = seatOf(PartId{piece.id}),
              .types = {PartTypeId{piece.id}},
              .zMm = piece.zMm,
              .entersFrom = piece.entersFrom};
    for (const char* carrier : piece.carriers) {
        Carrier carried{.part = PartId{carrier}};
        if (!seat.carriers.empty())
            carried.onceSeated = {seat.carriers.front().part, PartId{carrier}};
        seat.carriers.push_back(carried);
    }
    if (seat.carriers.size() == 2 && seat.carriers.back().part.text == "HOUSING")
        seat.carriers.back().onceSeated = {seat.carriers.front().part};
    return seat;
}

Step stepOf(const char* id, std::vector<const char*> places, std::vector<const char*> after) {
    Step step{.id = StepId{id}};
    for (const char* part : places)
        step.places.emplace_back(part);
    for (const char* before : after)
        step.after.push_back({.step = StepId{before}, .reason = "PHY"});
    return step;
}

} // namespace

Frame frame() {
    Frame frame{.id = FrameId{"small"}, .name = "Small", .variant = "pinned"};
    frame.housing = PartId{"HOUSING"};
    frame.rotor = PartId{"ROTOR"};
    for (const Piece& piece : pieces()) {
        frame.types.push_back({.id = PartTypeId{piece.id}, .index = piece.index, .tint = piece.tint});
        frame.parts.push_back({.id = PartId{piece.id}, .type = PartTypeId{piece.id}});
        frame.seats.push_back(seatFor(piece));
    }
    const auto type = std::find_if(frame.types.begin(), frame.types.end(),
                                   [](const PartType& candidate) { return candidate.id.text == "SNAP"; });
    type->face = FaceKind::Rounded;
    // The list does not stand in the order of the work: `after` says what that is.
    frame.steps = {stepOf("S5", {"PLATE"}, {"S4"}),         stepOf("S0", {"HOUSING", "PIN"}, {}),
                   stepOf("S1", {"BUSH"}, {"S0"}),          stepOf("S2", {"SNAP"}, {"S1"}),
                   stepOf("S2b", {"RING-2", "RING-1"}, {}), stepOf("S3", {"ROTOR"}, {"S2", "S2b"}),
                   stepOf("S3b", {"RING-S"}, {}),           stepOf("S4", {"SLEEVE"}, {"S3", "S3b"})};
    frame.rules = {{.id = RuleId{"SNAP.gap"},
                    .demand = GapClockRule{PartId{"SNAP"}, {Degrees{90.0}, Side::Compressor, Degrees{30.0}}}},
                   {.id = RuleId{"SNAP.face"}, .demand = FaceRule{PartId{"SNAP"}, PartId{"BUSH"}}}};
    return frame;
}

Meshes meshes() {
    Meshes meshes;
    for (const Piece& piece : pieces())
        meshes[PartTypeId{piece.id}] =
            std::make_shared<const DrawnMesh>(DrawnMesh{.body = lathe::turned(piece.rings, 48)});
    return meshes;
}

Build build() {
    return assembledBuild(frame());
}

Seating& seatingOf(Build& build, const char* part) {
    for (Seating& seating : build.seatings)
        if (seating.part.text == part)
            return seating;
    throw std::out_of_range{part};
}

} // namespace gapwise::small
