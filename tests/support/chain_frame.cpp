#include "tests/support/chain_frame.h"

#include <algorithm>
#include <cassert>
#include <string_view>

namespace gapwise::test {

namespace {

/// A dimension with its drawing size on Alder and Birch.
struct Row {
    const char* id;
    const char* name;
    const char* part;
    const char* from;
    const char* to;
    double alder;
    double alderTolerance;
    double birch;
    double birchTolerance;
};

// Lengths from the turbine end of each part to its compressor end, diameters from the axis outward.
const Row kRows[] = {
    {"s_D", "shim behind the thrust bearing", "HOUSING", "HOUSING/datum", "THRUST/seat face", 0, 0, 0, 0},
    {"p_T", "turbine-side pads from the seat face", "THRUST", "THRUST/seat face", "THRUST/pad T", 0.0, 0.003,
     -0.2, 0.005},
    {"t_T", "thrust bearing, thickness over the pads", "THRUST", "THRUST/pad T", "THRUST/pad C", 5.0, 0.010,
     9.0, 0.012},
    {"a_A", "collar A, thickness at the track", "COLLAR-A", "COLLAR-A/seat", "COLLAR-A/running face", 3.5,
     0.010, 6.5, 0.010},
    {"h_A", "collar A, hub over the running face", "COLLAR-A", "COLLAR-A/running face", "COLLAR-A/hub face",
     0.0, 0.0, 0.25, 0.008},
    {"L_S", "spacer sleeve, length", "SPACER", "SPACER/turbine end", "SPACER/compressor end", 5.07, 0.005,
     8.65, 0.010},
    {"h_B", "collar B, hub over the running face", "COLLAR-B", "COLLAR-B/hub face", "COLLAR-B/running face",
     0.0, 0.0, 0.25, 0.008},
    {"b_B", "collar B, running face to wheel seat", "COLLAR-B", "COLLAR-B/running face",
     "COLLAR-B/wheel seat", 14.2, 0.010, 27.4, 0.010},
    {"s_w", "between collar B and the wheel", "WHEEL", "COLLAR-B/wheel seat", "WHEEL/seat", 0, 0, 0, 0},
    {"e_w", "wheel, seat to back disc", "WHEEL", "WHEEL/seat", "WHEEL/back disc", 0.35, 0.020, 0.7, 0.030},
    {"w_t", "wheel, seat to shroud edge", "WHEEL", "WHEEL/seat", "WHEEL/shroud edge", 6.2, 0.020, 12.8,
     0.030},
    {"L_h", "wheel, hub length", "WHEEL", "WHEEL/seat", "WHEEL/nut face", 28.0, 0.050, 58.0, 0.050},
    {"n", "shaft nut, height", "NUT", "NUT/seat", "NUT/outer face", 7.5, 0.050, 14.0, 0.050},
    {"H_b", "datum to diffuser wall", "PLATE", "HOUSING/datum", "PLATE/diffuser wall", 19.1, 0.020, 36.2,
     0.030},
    {"s_c", "cover shim", "SHIM", "HOUSING/datum", "COVER/datum", 0.2, 0.005, 0.5, 0.005},
    {"H_c", "datum to cover shroud without shim", "COVER", "COVER/datum", "COVER/shroud plane", 25.6, 0.020,
     49.25, 0.030},
    {"H_n0", "datum to cover inlet without shim", "COVER", "COVER/datum", "COVER/inlet face", 91.8, 0.020,
     175.5, 0.030},
    {"L_sh", "shaft, shoulder to end", "ROTOR", "ROTOR/shoulder", "ROTOR/shaft end", 60.5, 0.020, 118.0,
     0.030},
    {"L_ts", "shaft, turbine wheel back to shoulder", "ROTOR", "ROTOR/wheel back", "ROTOR/shoulder", 74.3,
     0.030, 148.0, 0.050},
    {"x_t", "turbine wheel, shroud line to back", "ROTOR", "ROTOR/shroud line", "ROTOR/wheel back", 9.2,
     0.030, 19.0, 0.050},
    {"H_h", "heat shield, front face to datum", "SHIELD", "SHIELD/front", "HOUSING/datum", 77.0, 0.050, 153.4,
     0.080},
    {"H_t", "turbine shroud to datum", "TURBINE-HOUSING", "TURBINE-HOUSING/shroud plane", "HOUSING/datum",
     87.55, 0.040, 174.65, 0.060},
    {"d_C", "journal, compressor end", "ROTOR", "axis", "ROTOR/journal C", 11.9925, 0.0025, 25.990, 0.005},
    {"ID_C", "bearing C, bore", "BRG-C", "axis", "BRG-C/bore", 12.035, 0.005, 26.0775, 0.0075},
    {"OD_C", "bearing C, outside", "BRG-C", "axis", "BRG-C/outside", 18.905, 0.005, 37.8875, 0.0075},
    {"B_C", "housing bore, compressor end", "HOUSING", "axis", "HOUSING/bore C", 19.006, 0.006, 38.008,
     0.008},
};

struct Touch {
    const char* first;
    const char* second;
    std::optional<Side> pushedTo;
};

const Touch kTouches[] = {
    {"THRUST/pad T", "COLLAR-A/running face", Side::Compressor},
    {"THRUST/pad C", "COLLAR-B/running face", Side::Turbine},
    {"COLLAR-A/seat", "ROTOR/shoulder", std::nullopt},
    {"COLLAR-A/hub face", "SPACER/turbine end", std::nullopt},
    {"SPACER/compressor end", "COLLAR-B/hub face", std::nullopt},
    {"WHEEL/nut face", "NUT/seat", std::nullopt},
    {"HOUSING/bore C", "BRG-C/outside", std::nullopt},
};

/// A chain with the windows of Alder and Birch; both ends 0: none.
struct Loop {
    const char* id;
    const char* from;
    const char* to;
    std::optional<Side> pushedTo;
    const char* links;
    std::pair<double, double> alder;
    std::pair<double, double> birch;
};

constexpr std::optional<Side> kC = Side::Compressor;
constexpr std::optional<Side> kT = Side::Turbine;
constexpr std::pair kOpen{0.0, 0.0};

const Loop kLoops[] = {
    {"c", "THRUST/pad C", "COLLAR-B/running face", kC, "-t_T +h_A +L_S +h_B", {0.05, 0.09}, {0.11, 0.19}},
    {"g_cs_C",
     "WHEEL/shroud edge",
     "COVER/shroud plane",
     kC,
     "-w_t -s_w -b_B -h_B -L_S -h_A -p_T -s_D +s_c +H_c",
     {0.28, 0.40},
     {0.50, 0.75}},
    {"g_cs_T", "WHEEL/shroud edge", "COVER/shroud plane", kT, "-w_t -s_w -b_B -t_T -p_T -s_D +s_c +H_c",
     kOpen, kOpen},
    {"g_cb_C", "PLATE/diffuser wall", "WHEEL/back disc", kC, "-H_b +s_D +p_T +h_A +L_S +h_B +b_B +s_w +e_w",
     kOpen, kOpen},
    {"g_cb_T",
     "PLATE/diffuser wall",
     "WHEEL/back disc",
     kT,
     "-H_b +s_D +p_T +t_T +b_B +s_w +e_w",
     {0.35, 0.60},
     {0.55, 0.90}},
    {"g_tb_C",
     "ROTOR/wheel back",
     "SHIELD/front",
     kC,
     "+L_ts +a_A -p_T -s_D -H_h",
     {0.60, 1.00},
     {1.00, 1.70}},
    {"g_tb_T", "ROTOR/wheel back", "SHIELD/front", kT, "+L_ts +a_A +h_A +L_S +h_B -t_T -p_T -s_D -H_h", kOpen,
     kOpen},
    {"g_ts_C", "TURBINE-HOUSING/shroud plane", "ROTOR/shroud line", kC, "+H_t +s_D +p_T -a_A -L_ts -x_t",
     kOpen, kOpen},
    {"g_ts_T",
     "TURBINE-HOUSING/shroud plane",
     "ROTOR/shroud line",
     kT,
     "+H_t +s_D +p_T +t_T -h_B -L_S -h_A -a_A -L_ts -x_t",
     {0.40, 0.65},
     {0.65, 1.10}},
    {"N_C", "ROTOR/shaft end", "COVER/inlet face", kC, "-L_sh +a_A -p_T -s_D +s_c +H_n0", kOpen, kOpen},
    {"N_T", "ROTOR/shaft end", "COVER/inlet face", kT, "-L_sh +a_A +h_A +L_S +h_B -t_T -p_T -s_D +s_c +H_n0",
     kOpen, kOpen},
    {"beyond_nut", "NUT/outer face", "ROTOR/shaft end", std::nullopt,
     "-n -L_h -s_w -b_B -h_B -L_S -h_A -a_A +L_sh", kOpen, kOpen},
    {"Ci_C", "ROTOR/journal C", "BRG-C/bore", std::nullopt, "-d_C +ID_C", kOpen, kOpen},
    {"Co_C", "BRG-C/outside", "HOUSING/bore C", std::nullopt, "-OD_C +B_C", kOpen, kOpen},
    {"D_C", "ROTOR/journal C", "BRG-C/bore", std::nullopt, "-d_C +B_C -OD_C +ID_C", kOpen, kOpen},
};

/// `-t_T +h_A`.
std::vector<Term> terms(std::string_view text) {
    std::vector<Term> result;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find(' '), text.size());
        result.push_back(
            {.of = QuantityId{std::string{text.substr(1, end - 1)}}, .sign = text.front() == '-' ? -1 : 1});
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return result;
}

Change change(const char* id, const char* name, ChangeKind kind, const char* part, const char* moves) {
    return {.id = id, .name = name, .kind = kind, .part = PartId{part}, .moves = terms(moves)};
}

std::vector<Change> changes() {
    using enum ChangeKind;
    return {
        change("collar-A-worn", "collar A, running face worn", Wear, "COLLAR-A", "-a_A +h_A"),
        change("pad-T-worn", "thrust bearing, turbine-side pads worn", Wear, "THRUST", "+p_T -t_T"),
        change("collar-B-worn", "collar B, running face worn", Wear, "COLLAR-B", "-b_B +h_B"),
        change("pad-C-worn", "thrust bearing, compressor-side pads worn", Wear, "THRUST", "-t_T"),
        change("spacer-longer", "spacer sleeve longer", Choice, "SPACER", "+L_S"),
        change("thrust-shim", "shim behind the thrust bearing", Choice, "HOUSING", "+s_D"),
        change("wheel-spacer", "spacer between collar B and wheel", Choice, "WHEEL", "+s_w"),
        change("cover-shim", "cover shim thicker", Choice, "SHIM", "+s_c"),
        change("shield-proud", "heat shield proud toward the wheel", Fault, "SHIELD", "+H_h"),
        change("wheel-not-home", "wheel not home", Fault, "WHEEL", "+s_w"),
    };
}

Quantity sizeOf(const char* id, const char* name, const char* part) {
    return {.id = QuantityId{id}, .name = name, .part = PartId{part}};
}

/// What can be read of the thrust train: flat anvils bridge a worn track.
std::vector<Measurement> measurements() {
    Measurement collar{.id = MeasurementId{"M07"}, .name = "running faces of the collars"};
    collar.methods = {
        {.id = "ball-anvil", .words = "ball or point anvil in the track"},
        {.id = "flat-anvil", .words = "flat anvils", .blind = "flat anvils bridge a worn track"}};
    collar.quantities = {sizeOf("a_A", "collar A in its track", "COLLAR-A"),
                         sizeOf("b_B", "collar B in its track", "COLLAR-B")};
    Measurement thrust{.id = MeasurementId{"M06"}, .name = "thrust bearing"};
    thrust.methods = {{.id = "pads", .words = "flat anvils over opposite pads"}};
    thrust.quantities = {sizeOf("t_T", "thrust bearing over its pads", "THRUST")};
    Measurement spacer{.id = MeasurementId{"M09"}, .name = "spacer sleeve"};
    spacer.methods = {{.id = "ends", .words = "flat anvils"}};
    spacer.quantities = {sizeOf("L_S", "length of the spacer sleeve", "SPACER")};
    Measurement nose{.id = MeasurementId{"nose-depth"}, .name = "nose depth"};
    nose.methods = {{.id = "bridge", .words = "depth micrometer on a bridge"}};
    nose.quantities = {sizeOf("N_C", "nose depth, rotor toward the compressor", ""),
                       sizeOf("N_T", "nose depth, rotor toward the turbine", "")};
    Measurement gaps{.id = MeasurementId{"axial-gaps"}, .name = "axial gaps"};
    gaps.quantities = {sizeOf("g_cs_C", "compressor shroud gap", ""),
                       sizeOf("g_ts_T", "turbine shroud gap", "")};
    return {collar, thrust, spacer, nose, gaps};
}

Fastener linedNut(const char* thread) {
    TorquePlan plan{.thread = thread};
    plan.nutLine = NutLineLimits{.agrees = Degrees{8.0}, .small = Degrees{25.0}};
    return {.id = FastenerId{"T3"}, .name = "shaft nut", .plan = plan};
}

Window windowOf(const std::pair<double, double>& ends) {
    return ends == kOpen ? Window{} : Window{ends.first, ends.second};
}

Frame shaftFrame(bool birch) {
    Frame frame{.id = FrameId{birch ? "birch" : "alder"}};
    for (const Row& row : kRows)
        frame.dimensions.push_back({.id = QuantityId{row.id},
                                    .name = row.name,
                                    .part = PartId{row.part},
                                    .from = StationId{row.from},
                                    .to = StationId{row.to},
                                    .nominalMm = birch ? row.birch : row.alder,
                                    .toleranceMm = birch ? row.birchTolerance : row.alderTolerance});
    for (const Touch& touch : kTouches)
        frame.contacts.push_back(
            {.first = StationId{touch.first}, .second = StationId{touch.second}, .pushedTo = touch.pushedTo});
    for (const Loop& loop : kLoops)
        frame.chains.push_back({.id = QuantityId{loop.id},
                                .name = loop.id,
                                .from = StationId{loop.from},
                                .to = StationId{loop.to},
                                .pushedTo = loop.pushedTo,
                                .links = terms(loop.links),
                                .window = windowOf(birch ? loop.birch : loop.alder)});
    frame.changes = changes();
    frame.measurements = measurements();
    for (const char* part : {"HOUSING", "THRUST", "COLLAR-A", "SPACER", "COLLAR-B", "WHEEL", "SHIM", "ROTOR"})
        frame.parts.push_back({.id = PartId{part}, .name = part});
    return frame;
}

Selector selector(const char* dimension, const char* sets, std::vector<double> grades) {
    return {.dimension = QuantityId{dimension}, .sets = QuantityId{sets}, .gradesMm = std::move(grades)};
}

} // namespace

Frame alderChainFrame() {
    Frame frame = shaftFrame(false);
    frame.selectors = {selector("L_S", "c", {5.05, 5.07, 5.09}),
                       selector("s_c", "g_cs_C", {0.10, 0.15, 0.20, 0.25, 0.30})};
    frame.fasteners.push_back(linedNut("M8x1-LH"));
    return frame;
}

Frame birchChainFrame() {
    Frame frame = shaftFrame(true);
    frame.selectors = {selector("L_S", "c", {8.6, 8.625, 8.65, 8.675, 8.7}),
                       selector("s_c", "g_cs_C", {0.30, 0.35, 0.40, 0.45, 0.50, 0.55, 0.60, 0.65, 0.70})};
    frame.fasteners.push_back(linedNut("M16x1.5-LH"));
    return frame;
}

Frame stackFrame(const std::vector<Link>& links) {
    Frame frame;
    Chain chain{.id = QuantityId{"gap"}, .name = "gap"};
    for (const Link& link : links) {
        frame.dimensions.push_back({.id = QuantityId{link.id},
                                    .name = link.id,
                                    .nominalMm = link.nominalMm,
                                    .toleranceMm = link.toleranceMm,
                                    .scatter = link.scatter});
        chain.links.push_back({.of = QuantityId{link.id}, .sign = link.sign});
    }
    frame.chains.push_back(chain);
    return frame;
}

const Chain& chainOf(const Frame& frame, const std::string& id) {
    const Chain* found = frame.chain(QuantityId{id});
    assert(found != nullptr);
    return *found;
}

const Change& changeOf(const Frame& frame, const std::string& id) {
    const auto found = std::ranges::find(frame.changes, id, &Change::id);
    assert(found != frame.changes.end());
    return *found;
}

MeasuredValue read(const char* id, double value, double expanded) {
    return {.id = QuantityId{id}, .value = value, .expanded = expanded};
}

std::vector<MeasuredValue> readings(std::initializer_list<std::pair<const char*, double>> values,
                                    double expanded) {
    std::vector<MeasuredValue> result;
    for (const auto& [id, value] : values)
        result.push_back(read(id, value, expanded));
    return result;
}

} // namespace gapwise::test
