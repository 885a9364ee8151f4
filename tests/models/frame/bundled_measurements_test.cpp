#include "models/frame/read_frame.h"

#include "models/frame/frame_errors.h"
#include "models/measure/bench.h"
#include "tests/support/print_error.h"

#include <gmock/gmock.h>

#include <cmath>
#include <map>
#include <set>

namespace gapwise {

namespace {

constexpr const char* kAll[] = {"alder-72", "alder-72-pinned", "birch-150"};
constexpr const char* kSmall[] = {"alder-72", "alder-72-pinned"};
constexpr double kMicron = 0.001;
constexpr double kExact = 1e-9;

Frame bundledFrame(const char* id) {
    Result<Frame> frame = readFrame(DataFolder{GAPWISE_TEST_SHARE}, id, Validation::ReaderOnly);
    if (!frame) {
        ADD_FAILURE() << describe(frame.errors().front());
        return {};
    }
    return std::move(frame).value();
}

/// Moves of dimensions by a change of a given length.
using Moves = std::map<std::string, double>;

/// The sum of the links of a chain, every moved dimension by so much.
double sumOf(const Frame& frame, const char* chain, const Moves& moves = {}) {
    double sum = 0.0;
    const Chain* found = frame.chain(QuantityId{chain});
    if (!found) {
        ADD_FAILURE() << chain;
        return NAN;
    }
    for (const Term& link : found->links) {
        const auto moved = moves.find(link.of.text);
        const double by = moved == moves.end() ? 0.0 : moved->second;
        sum += link.sign * (frame.dimension(link.of)->nominalMm + by);
    }
    return sum;
}

/// How far a change of the frame moves its dimensions.
Moves movesOf(const Frame& frame, std::string_view change, double length) {
    Moves moves;
    for (const Change& each : frame.changes)
        if (each.id == change)
            for (const Term& move : each.moves)
                moves[move.of.text] += move.sign * length;
    EXPECT_FALSE(moves.empty()) << change;
    return moves;
}

/// Root of the sum of the squares of the tolerances, and their plain sum.
struct Spread {
    double rss = 0.0;
    double worst = 0.0;
};

Spread spreadOf(const Frame& frame, const char* chain) {
    Spread spread;
    for (const Term& link : frame.chain(QuantityId{chain})->links) {
        const double tolerance = frame.dimension(link.of)->toleranceMm;
        spread.rss += tolerance * tolerance;
        spread.worst += tolerance;
    }
    spread.rss = std::sqrt(spread.rss);
    return spread;
}

const Quantity& quantityOf(const Frame& frame, const char* id) {
    const Quantity* found = frame.quantity(QuantityId{id}).quantity;
    if (!found)
        ADD_FAILURE() << id;
    static const Quantity kNone{};
    return found ? *found : kNone;
}

/// `[least, most]` as text, for one line a check.
std::string textOf(const Window& window) {
    const auto end = [](const std::optional<double>& value) {
        return value ? std::to_string(std::lround(*value / kMicron)) : std::string{"-"};
    };
    return end(window.least) + " " + end(window.most);
}

} // namespace

// All numbers invented. The vectors of the chains: nominal, and with one change of the given length.
TEST(BundledMeasurements, TheGapsComeToTheirVectors) {
    struct Vector {
        const char* frame;
        const char* change;
        double length;
        std::array<double, 7> gaps; // c, g_cs C, g_cb T, g_tb C, g_ts T, N C, N T
    };
    constexpr std::array<const char*, 7> kChains{"c", "g_cs_C", "g_cb_T", "g_tb_C", "g_ts_T", "N_C", "N_T"};
    const std::vector<Vector> vectors{
        {"alder-72", "", 0.0, {0.070, 0.330, 0.450, 0.800, 0.480, 35.000, 35.070}},
        {"alder-72-pinned", "", 0.0, {0.070, 0.330, 0.450, 0.800, 0.480, 35.000, 35.070}},
        {"alder-72", "collar-A-worn", 0.085, {0.155, 0.245, 0.450, 0.715, 0.480, 34.915, 35.070}},
        {"alder-72", "collar-B-worn", 0.085, {0.155, 0.330, 0.365, 0.800, 0.395, 35.000, 35.155}},
        {"alder-72", "spacer-longer", -0.050, {0.020, 0.380, 0.450, 0.800, 0.530, 35.000, 35.020}},
        {"alder-72", "thrust-shim", 0.100, {0.070, 0.230, 0.550, 0.700, 0.580, 34.900, 34.970}},
        {"birch-150", "", 0.0, {0.150, 0.600, 0.700, 1.300, 0.800, 64.700, 64.850}},
        {"birch-150", "collar-A-worn", 0.130, {0.280, 0.470, 0.700, 1.170, 0.800, 64.570, 64.850}},
    };
    for (const Vector& vector : vectors) {
        const Frame frame = bundledFrame(vector.frame);
        const Moves moves = *vector.change == '\0' ? Moves{} : movesOf(frame, vector.change, vector.length);
        for (std::size_t i = 0; i < kChains.size(); ++i)
            EXPECT_NEAR(sumOf(frame, kChains[i], moves), vector.gaps[i], kExact)
                << vector.frame << ' ' << vector.change << ' ' << kChains[i];
    }
}

TEST(BundledMeasurements, TheOtherGapsComeToTheirNominalValues) {
    const auto nominal = [](const char* id, std::map<const char*, double> gaps) {
        const Frame frame = bundledFrame(id);
        for (const auto& [chain, gap] : gaps)
            EXPECT_NEAR(sumOf(frame, chain), gap, kExact) << id << ' ' << chain;
    };
    for (const char* id : kSmall)
        nominal(id, {{"g_cs_T", 0.400},
                     {"g_cb_C", 0.520},
                     {"g_tb_T", 0.870},
                     {"g_ts_C", 0.550},
                     {"beyond_nut", 2.23}});
    nominal(
        "birch-150",
        {{"g_cs_T", 0.750}, {"g_cb_C", 0.850}, {"g_tb_T", 1.450}, {"g_ts_C", 0.950}, {"beyond_nut", 2.95}});
    nominal("alder-72", {{"float_C", 0.30}, {"float_T", 0.30}});
    nominal("alder-72-pinned", {{"float_C", 0.20}, {"float_T", 0.20}});
    nominal("birch-150", {{"float_C", 0.20}, {"float_T", 0.20}});
}

// The page that is read backwards to find a cause: signs by geometry.
TEST(BundledMeasurements, EveryChangeMovesTheGapsAsGeometryHasIt) {
    constexpr std::array<const char*, 7> kChains{"c", "g_cs_C", "g_cb_T", "g_tb_C", "g_ts_T", "N_C", "N_T"};
    const std::map<std::string, std::array<int, 7>> effects{
        {"collar-A-worn", {1, -1, 0, -1, 0, -1, 0}}, {"pad-T-worn", {1, -1, 0, -1, 0, -1, 0}},
        {"collar-B-worn", {1, 0, -1, 0, -1, 0, 1}},  {"pad-C-worn", {1, 0, -1, 0, -1, 0, 1}},
        {"spacer-longer", {1, -1, 0, 0, -1, 0, 1}},  {"thrust-shim", {0, -1, 1, -1, 1, -1, -1}},
        {"wheel-spacer", {0, -1, 1, 0, 0, 0, 0}},    {"cover-shim", {0, 1, 0, 0, 0, 1, 1}},
        {"shield-proud", {0, 0, 0, -1, 0, 0, 0}},    {"wheel-not-home", {0, -1, 1, 0, 0, 0, 0}},
    };
    for (const char* id : kAll) {
        const Frame frame = bundledFrame(id);
        std::set<std::string> changes;
        for (const Change& change : frame.changes) {
            changes.insert(change.id);
            const auto expected = effects.find(change.id);
            ASSERT_NE(expected, effects.end()) << change.id;
            EXPECT_FALSE(change.remedy.empty()) << change.id;
            for (std::size_t i = 0; i < kChains.size(); ++i)
                EXPECT_NEAR(sumOf(frame, kChains[i], movesOf(frame, change.id, 1.0)) -
                                sumOf(frame, kChains[i]),
                            expected->second[i], kExact)
                    << id << ' ' << change.id << ' ' << kChains[i];
        }
        EXPECT_EQ(changes.size(), effects.size()) << id;
    }
}

// Thread beyond the nut tells a wheel that is not home; a worn collar keeps the stack's length.
TEST(BundledMeasurements, TheThreadBeyondTheNutTellsTheStack) {
    const Frame frame = bundledFrame("alder-72");
    for (const char* shorter : {"wheel-not-home", "wheel-spacer", "spacer-longer"})
        EXPECT_NEAR(sumOf(frame, "beyond_nut", movesOf(frame, shorter, 0.1)), 2.13, kExact) << shorter;
    for (const char* same : {"collar-A-worn", "collar-B-worn", "pad-T-worn"})
        EXPECT_NEAR(sumOf(frame, "beyond_nut", movesOf(frame, same, 0.1)), 2.23, kExact) << same;
}

TEST(BundledMeasurements, TheAxialClearanceSpreadsAsItsPartsDo) {
    const Spread alder = spreadOf(bundledFrame("alder-72"), "c");
    EXPECT_NEAR(alder.worst, 0.015, kExact);
    EXPECT_NEAR(alder.rss, 0.011, 0.0005);
    const Spread birch = spreadOf(bundledFrame("birch-150"), "c");
    EXPECT_NEAR(birch.worst, 0.038, kExact);
    EXPECT_NEAR(birch.rss, 0.019, 0.0005);
    // A shift of 0.085 of a gap or a nose depth stands out of the scatter of the parts.
    for (const char* chain : {"g_cs_C", "g_cb_T", "g_tb_C", "g_ts_T", "N_C", "N_T"})
        EXPECT_LE(spreadOf(bundledFrame("alder-72"), chain).rss, 0.030) << chain;
}

// The bands that new parts give, from the tolerances of the parts: exact.
TEST(BundledMeasurements, TheBearingClearancesSpanTheirBands) {
    const auto spans = [](const char* id, const char* chain, double least, double most) {
        const Frame frame = bundledFrame(id);
        for (const std::string end : {"_C", "_T"}) {
            const double middle = sumOf(frame, (chain + end).c_str());
            const double worst = spreadOf(frame, (chain + end).c_str()).worst;
            EXPECT_NEAR(middle - worst, least, kExact) << id << ' ' << chain << end;
            EXPECT_NEAR(middle + worst, most, kExact) << id << ' ' << chain << end;
        }
    };
    for (const char* id : kSmall) {
        spans(id, "Ci", 0.035, 0.050);
        spans(id, "Co", 0.090, 0.112);
        spans(id, "D", 0.125, 0.162);
    }
    spans("birch-150", "Ci", 0.075, 0.100);
    spans("birch-150", "Co", 0.105, 0.136);
    spans("birch-150", "D", 0.180, 0.236);
}

// All invented, in micrometres: new band, then service limit.
TEST(BundledMeasurements, LimitsAreThoseOfTheSheet) {
    struct Printed {
        const char* quantity;
        const char* alder;
        const char* birch;
    };
    const std::vector<Printed> sheet{
        {"c", "50 90 50 120", "110 190 110 250"},
        {"R_n", "390 620 390 750", "550 900 550 1100"},
        {"R_t", "360 580 360 700", "500 820 500 1000"},
        {"tip_C", "350 500 - -", "550 800 - -"},
        {"tip_T", "400 600 - -", "700 1000 - -"},
        {"g_cs_C", "280 400 - -", "500 750 - -"},
        {"g_cb_T", "350 600 - -", "550 900 - -"},
        {"g_tb_C", "600 1000 - -", "1000 1700 - -"},
        {"g_ts_T", "400 650 - -", "650 1100 - -"},
        {"d_C", "11990 11995 11980 -", "25985 25995 25965 -"},
        {"d_T", "11990 11995 11980 -", "25985 25995 25965 -"},
        {"ID_C", "12030 12040 - -", "26070 26085 - -"},
        {"OD_T", "18900 18910 - -", "37880 37895 - -"},
        {"B_C", "19000 19012 - 19030", "38000 38016 - 38040"},
        {"par_T", "- 10 - -", "- 10 - -"},
        {"par_S", "- 3 - -", "- 3 - -"},
        {"track_A", "- 5 - 10", "- 5 - 10"},
        {"track_B", "- 5 - 10", "- 5 - 10"},
        {"flat_A", "- 2 - -", "- 2 - -"},
        {"runout_B", "- 5 - -", "- 5 - -"},
        {"gap_T1", "100 250 100 400", "200 400 200 600"},
        {"gap_C1", "100 250 100 400", "200 400 200 600"},
        {"runout_hub", "- 10 - -", "- 15 - -"},
        {"square_W", "- 5 - -", "- 8 - -"},
        {"nick_W", "- 0 - 500", "- 0 - 1000"},
        {"flat_shield", "- 200 - -", "- 200 - -"},
    };
    for (const char* id : kAll) {
        const Frame frame = bundledFrame(id);
        for (const Printed& printed : sheet) {
            const Limits& limits = quantityOf(frame, printed.quantity).limits;
            EXPECT_EQ(textOf(limits.fresh) + " " + textOf(limits.service),
                      std::string_view{id} == "birch-150" ? printed.birch : printed.alder)
                << id << ' ' << printed.quantity;
        }
    }
}

TEST(BundledMeasurements, PinnedBushesHaveTheirPlay) {
    for (const char* id : {"alder-72-pinned", "birch-150"}) {
        const Frame frame = bundledFrame(id);
        for (const std::string end : {"C", "T"}) {
            EXPECT_EQ(textOf(quantityOf(frame, ("float_" + end).c_str()).limits.fresh), "100 300");
            EXPECT_EQ(textOf(quantityOf(frame, ("turn_" + end).c_str()).limits.fresh), "500 1500");
            EXPECT_TRUE(quantityOf(frame, ("pin_" + end).c_str()).limits.service.most) << id;
        }
    }
    const Frame floating = bundledFrame("alder-72");
    for (const char* none : {"float_C", "turn_T", "pin_C"})
        EXPECT_FALSE(floating.quantity(QuantityId{none}).quantity) << none;
    EXPECT_EQ(textOf(floating.chain(QuantityId{"float_C"})->window), "100 400");
}

// The plans of lever and four points, invented; (w − d)/R turns a bush: 1.21° and 0.91°.
TEST(BundledMeasurements, LeverPlanesAndPinsAreThoseOfTheSheet) {
    for (const char* id : kAll) {
        const bool birch = std::string_view{id} == "birch-150";
        const Frame frame = bundledFrame(id);
        ASSERT_TRUE(frame.lever);
        EXPECT_EQ(frame.lever->spanMm, birch ? 92.0 : 44.0);
        EXPECT_EQ(frame.lever->noseMm, birch ? 128.0 : 62.0);
        EXPECT_EQ(frame.lever->turbineMm, birch ? 112.0 : 56.0);
        EXPECT_EQ(frame.lever->bearingLengthMm, birch ? 20.0 : 9.0);
        const FourPointPlan& inducer = *quantityOf(frame, "tip_C").fourPoint;
        const FourPointPlan& exducer = *quantityOf(frame, "tip_T").fourPoint;
        EXPECT_EQ(inducer.outboardMm, birch ? 114.0 : 58.0);
        EXPECT_EQ(exducer.outboardMm, birch ? 94.0 : 48.0);
        EXPECT_EQ(exducer.seenFrom, Side::Turbine);
        EXPECT_EQ(inducer.eccentricityMost, birch ? 0.10 : 0.06);
        EXPECT_EQ(inducer.pointLeast, birch ? 0.40 : 0.25);
        if (std::string_view{id} == "alder-72")
            continue;
        const PinPlayPlan& pin = *quantityOf(frame, "turn_C").pinPlay;
        EXPECT_NEAR((pin.notchMm - pin.pinMm) / pin.radiusMm * 57.29578, birch ? 0.91 : 1.21, 0.005);
    }
}

// ISO 21940-11: 9549 G m / n, in g·mm. Invented masses and speeds.
TEST(BundledMeasurements, TheUnbalancePlanIsOfG25) {
    for (const auto& [id, total] : {std::pair{"alder-72", 0.092}, std::pair{"birch-150", 1.71}}) {
        const Frame frame = bundledFrame(id);
        const Quantity& unbalance = quantityOf(frame, "U");
        const UnbalancePlan& plan = *unbalance.unbalance;
        EXPECT_EQ(plan.grade, 2.5);
        EXPECT_NEAR(9549.0 * plan.grade * plan.massKg / plan.speedRpm, total, total * 0.005);
        EXPECT_EQ(unbalance.limits.rule, LimitRule::Guarded);
        EXPECT_LT(plan.turbinePlaneMm, plan.centreMm);
        EXPECT_GT(plan.compressorPlaneMm, plan.centreMm);
    }
}

TEST(BundledMeasurements, TheGradesAreThoseOfTheSheet) {
    for (const char* id : kAll) {
        const bool birch = std::string_view{id} == "birch-150";
        const Frame frame = bundledFrame(id);
        ASSERT_EQ(frame.selectors.size(), 2U);
        EXPECT_EQ(frame.selectors[0].sets, QuantityId{"c"});
        EXPECT_EQ(frame.selectors[0].gradesMm, birch ? (std::vector{8.600, 8.625, 8.650, 8.675, 8.700})
                                                     : (std::vector{5.050, 5.070, 5.090}));
        EXPECT_EQ(frame.selectors[1].sets, QuantityId{"g_cs_C"});
        const std::vector<double>& shims = frame.selectors[1].gradesMm;
        EXPECT_EQ(shims.front(), birch ? 0.30 : 0.10);
        EXPECT_EQ(shims.back(), birch ? 0.70 : 0.30);
        for (std::size_t i = 1; i < shims.size(); ++i)
            EXPECT_NEAR(shims[i] - shims[i - 1], 0.05, kExact);
    }
}

// Each link of each chain is needed and has its one sense: without it, or turned about, the way breaks off.
TEST(BundledMeasurements, NoChainClosesWithALinkLeftOutOrTurned) {
    const auto refused = [](const Frame& frame) {
        Complaints complaints{"f.json"};
        chainErrors(frame, complaints);
        return !complaints.empty();
    };
    for (const char* id : kAll) {
        Frame frame = bundledFrame(id);
        EXPECT_FALSE(refused(frame)) << id;
        for (Chain& chain : frame.chains)
            for (std::size_t i = 0; i < chain.links.size(); ++i) {
                const std::vector<Term> links = chain.links;
                chain.links[i].sign = -links[i].sign;
                EXPECT_TRUE(refused(frame)) << id << ' ' << chain.id.text << " turned " << i;
                chain.links = links;
                chain.links.erase(chain.links.begin() + static_cast<std::ptrdiff_t>(i));
                EXPECT_TRUE(refused(frame)) << id << ' ' << chain.id.text << " without " << i;
                chain.links = links;
            }
    }
}

// A number without its method is no clearance; what is measured must be measurable on the bench.
TEST(BundledMeasurements, EveryMethodFindsAnInstrumentOnTheBench) {
    const Bench bench = demoBench(DataFolder{GAPWISE_TEST_SHARE}).value();
    std::set<std::string> kinds;
    for (const Instrument& instrument : bench.instruments)
        kinds.insert(instrument.kind);
    for (const char* id : kAll)
        for (const Measurement& measurement : bundledFrame(id).measurements)
            for (const Method& method : measurement.methods)
                for (const std::string& gauge : method.gauges)
                    EXPECT_TRUE(kinds.contains(gauge)) << id << ' ' << measurement.id.text << ' ' << gauge;
}

TEST(BundledMeasurements, OnlyThreadAndTurbineWheelAreJudgedByEye) {
    for (const char* id : kAll) {
        std::set<std::string> byEye;
        for (const Measurement& measurement : bundledFrame(id).measurements)
            if (measurement.quantities.empty())
                byEye.insert(measurement.id.text);
        EXPECT_EQ(byEye, (std::set<std::string>{"M15", "M18"})) << id;
    }
}

// Every dimension of a part that can be measured is measured: then what was measured counts.
TEST(BundledMeasurements, WhatTheThrustTrainIsMadeOfIsMeasured) {
    for (const char* id : kAll) {
        const Frame frame = bundledFrame(id);
        for (const char* dimension :
             {"t_T", "L_S", "a_A", "h_A", "b_B", "h_B", "d_C", "d_T", "ID_C", "ID_T", "OD_C", "OD_T", "B_C",
              "B_T", "len_C", "pocket_T", "groove_T1", "ring_C1"}) {
            ASSERT_TRUE(frame.dimension(QuantityId{dimension})) << id << ' ' << dimension;
            EXPECT_EQ(quantityOf(frame, dimension).part, frame.dimension(QuantityId{dimension})->part)
                << id << ' ' << dimension;
        }
    }
}

// A warm part is corrected by the expansion of its type: every measured part's type has one.
TEST(BundledMeasurements, EveryMeasuredPartHasItsExpansion) {
    for (const char* id : kAll) {
        const Frame frame = bundledFrame(id);
        for (const Measurement& measurement : frame.measurements)
            for (const Quantity& quantity : measurement.quantities)
                EXPECT_TRUE(quantity.part.empty() || frame.typeOf(quantity.part)->expansionPerK)
                    << id << ' ' << quantity.part.text;
    }
}

// Near room temperature, 10⁻⁶/K: grey and ductile iron (TH-02), aluminium (TH-01), steel and stainless
// (TH-06, from memory); bronze 18 by common handbooks.
TEST(BundledMeasurements, ExpansionIsThatOfTheMaterial) {
    const std::map<std::string, std::pair<double, double>> bands{
        {"grey cast iron", {11.3, 11.5}},
        {"ductile iron", {10.5, 11.3}},
        {"aluminium", {21.4, 23.7}},
        {"hardened steel", {11.5, 12.5}},
        {"bronze", {17.0, 19.0}},
        {"stainless sheet", {17.0, 17.4}},
        {"alloyed ring iron", {11.3, 11.5}},
    };
    for (const char* id : kAll)
        for (const PartType& type : bundledFrame(id).types) {
            const auto band = bands.find(type.material);
            if (band == bands.end() || !type.expansionPerK)
                continue;
            EXPECT_GE(*type.expansionPerK * 1e6, band->second.first) << id << ' ' << type.id.text;
            EXPECT_LE(*type.expansionPerK * 1e6, band->second.second) << id << ' ' << type.id.text;
        }
}

// What is read after assembly is compared with what was read before dismantling.
TEST(BundledMeasurements, WhatIsReadBeforeIsReadAtTheStripDown) {
    for (const char* id : kAll) {
        std::set<std::string> before;
        for (const Measurement& measurement : bundledFrame(id).measurements)
            if (measurement.before) {
                before.insert(measurement.id.text);
                EXPECT_EQ(*measurement.before, StepId{"D1"});
            }
        EXPECT_EQ(before, (std::set<std::string>{"axial-clearance", "radial-nose", "radial-turbine",
                                                 "compressor-tip", "turbine-tip", "nose-depth"}));
    }
}

// A flat anvil bridges a worn track: the limit of a collar's face is for the ball anvil.
TEST(BundledMeasurements, TheTrackIsReadWithABallAnvil) {
    for (const char* id : kAll) {
        const Frame frame = bundledFrame(id);
        const Measurement& collar = *frame.measurement(MeasurementId{"M07"});
        for (const char* face : {"a_A", "b_B", "track_A", "track_B"})
            EXPECT_EQ(quantityOf(frame, face).limits.method, "ball-anvil");
        EXPECT_FALSE(collar.method("flat-anvil")->blind.empty());
        EXPECT_TRUE(collar.method("ball-anvil")->blind.empty());
    }
}

// The heat closes a gap of turbine rings, and never the whole of it at the smallest new gap.
TEST(BundledMeasurements, NoRingGapClosesWhenHot) {
    for (const char* id : kAll) {
        const Frame frame = bundledFrame(id);
        for (const Measurement& measurement : frame.measurements)
            for (const Quantity& quantity : measurement.quantities) {
                if (!quantity.ringGap)
                    continue;
                const RingGapPlan& plan = *quantity.ringGap;
                const double closes =
                    3.14159 * plan.boreMm * (plan.ringPerK * plan.ringRiseK - plan.borePerK * plan.boreRiseK);
                EXPECT_LT(closes, *quantity.limits.fresh.least) << id << ' ' << quantity.id.text;
            }
    }
}

} // namespace gapwise
