#include "compare.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

/// The oracle on the bundled frames (invented numbers): every ring on every degree, and builds of which much
/// is not known.
namespace gapwise::oracle {

namespace {

/// A frame with its sister, read once for all builds of a case.
struct Bundled {
    Frame frame;
    std::optional<Frame> sister;

    explicit Bundled(const std::string& id) : frame{bundledFrame(id)} {
        if (frame.sister)
            sister = bundledFrame(frame.sister->text);
    }
    Case asked(const Bench& bench) const { return Case{frame, sister ? &*sister : nullptr, bench}; }
};

std::vector<std::string> turnableIn(const Frame& frame) {
    std::vector<std::string> parts;
    for (const Seat& seat : frame.seats)
        if (!seat.carriers.empty() && !seat.fixedIndex && seat.id != seatOf(frame.rotor))
            parts.push_back(seat.id.text.substr(5)); // Past "seat-".
    return parts;
}

constexpr std::array<Lying, 6> kAttitudes{{{EndUp::Compressor, 180.0, Side::Compressor},
                                           {EndUp::Compressor, 0.0, Side::Compressor},
                                           {EndUp::Turbine, 180.0, Side::Turbine},
                                           {EndUp::Turbine, 90.0, Side::Turbine},
                                           {EndUp::Level, 180.0, Side::Compressor},
                                           {EndUp::Level, 0.0, Side::Turbine}}};

/// Every part on its own degree of the circle.
void turnAll(Bench& bench, const std::vector<std::string>& parts, int degree) {
    for (std::size_t i = 0; i < parts.size(); ++i) {
        Placed& placed = *bench.of(parts[i]);
        const int k = static_cast<int>(i);
        placed.index = Said{static_cast<double>((degree + 47 * k) % 360),
                            (degree + k) % 2 == 0 ? Side::Compressor : Side::Turbine};
        placed.referenceFaceLooks = (degree / 2 + k) % 2 == 0 ? Side::Compressor : Side::Turbine;
    }
}

/// Some parts placed, some of what they need known, some in the seat of another, some steps done.
Bench drawnBench(const Frame& frame) {
    const Bench whole = goodBench(frame);
    const auto chance = [](int percent) { return *rc::gen::inRange(0, 100) < percent; };
    const auto side = [] { return *rc::gen::element(Side::Compressor, Side::Turbine); };
    Bench bench;
    for (Placed placed : whole.placed) {
        if (chance(30))
            continue;
        if (chance(40))
            placed.index = Said{static_cast<double>(*rc::gen::inRange(0, 360)), side()};
        if (chance(15))
            placed.index.reset();
        if (chance(20))
            placed.referenceFaceLooks = side();
        if (chance(15))
            placed.referenceFaceLooks.reset();
        if (chance(20))
            placed.home = chance(50) ? std::optional{false} : std::nullopt;
        placed.confirmed = chance(50);
        if (chance(40))
            placed.stated.clear();
        for (const char* state : {"new", "oiled", "greased", "coated", "dry"})
            if (chance(10))
                placed.stated.emplace_back(state);
        bench.placed.push_back(placed);
    }
    for (Wrenched note : whole.wrenched) {
        if (chance(40))
            note = {note.fastener, chance(50), side()};
        if (chance(20))
            note.clockwise.reset();
        if (chance(70))
            bench.wrenched.push_back(note);
    }
    if (chance(70))
        bench.rotorLoweredIn = chance(50);
    const int often = chance(50) ? 25 : 95;
    for (const Step& step : frame.steps)
        if (chance(often))
            bench.stepsDone.push_back(step.id.text);
    if (chance(30) && bench.stepsDone.size() > 1) {
        const auto from = *rc::gen::inRange<std::size_t>(0, bench.stepsDone.size());
        const auto to = *rc::gen::inRange<std::size_t>(0, bench.stepsDone.size());
        std::swap(bench.stepsDone[from], bench.stepsDone[to]);
    }
    return bench;
}

std::string nameOfFrame(const ::testing::TestParamInfo<const char*>& info) {
    std::string name = info.param;
    std::erase(name, '-');
    return name;
}

class BundledVerdicts : public ::testing::TestWithParam<const char*> {};

} // namespace

TEST_P(BundledVerdicts, EveryRingAttitudeDegreeAndFace) {
    const Bundled bundled{GetParam()};
    const std::vector<std::string> parts = turnableIn(bundled.frame);
    Bench bench = goodBench(bundled.frame);
    Disagreements found;
    for (int degree = 0; degree < 360; ++degree) {
        bench.lying = kAttitudes[static_cast<std::size_t>(degree) % kAttitudes.size()];
        turnAll(bench, parts, degree);
        found.compare(bundled.asked(bench));
    }
    EXPECT_TRUE(found.none());
    EXPECT_GT(found.explained(), 360);
}

TEST_P(BundledVerdicts, EveryDegreeAndViewInWhichARingWasSet) {
    Bundled bundled{GetParam()};
    const std::vector<std::string> parts = turnableIn(bundled.frame);
    std::erase_if(bundled.frame.rules, [](const Rule& rule) { return !printedClockOf(rule); });
    Bench bench = goodBench(bundled.frame);
    Disagreements found;
    for (const auto& view : viewsToTry()) {
        for (const std::string& part : parts)
            bench.of(part)->setIn = view;
        for (int degree = 0; degree < 360; ++degree) {
            turnAll(bench, parts, degree);
            found.compare(bundled.asked(bench));
        }
    }
    EXPECT_TRUE(found.none());
}

TEST_P(BundledVerdicts, AsItsRulesPrintItEverythingHolds) {
    const Bundled bundled{GetParam()};
    Bench bench = goodBench(bundled.frame);
    for (Placed& placed : bench.placed)
        placed.confirmed = true;
    for (const Step& step : bundled.frame.steps)
        bench.stepsDone.push_back(step.id.text);
    const Build build = buildOf(bench);
    const Checked checked = checkBuild(bundled.frame, build, CheckOptions{.complete = true});
    EXPECT_TRUE(checked.holds);
    for (const Finding& finding : checked.findings)
        ADD_FAILURE() << finding.verdict.rule->id.text << ": " << finding.words;
    EXPECT_EQ(checked.count(RuleState::Holds), static_cast<int>(bundled.frame.rules.size()));
}

TEST_P(BundledVerdicts, BuildsOfWhichMuchIsNotKnown) {
    const Bundled bundled{GetParam()};
    Disagreements found;
    rc::check("states of partly known builds", [&] {
        const Bench bench = drawnBench(bundled.frame);
        found.compareStates(bundled.asked(bench));
    });
    EXPECT_TRUE(found.none());
    EXPECT_GE(found.builds(), 100);
}

INSTANTIATE_TEST_SUITE_P(Frames, BundledVerdicts,
                         ::testing::Values("alder-72", "alder-72-pinned", "birch-150"), nameOfFrame);

} // namespace gapwise::oracle
