#include "compare.h"

#include <gtest/gtest.h>

#include <array>
#include <set>

/// The off-axis frame (invented for tests): rules at 1:00 and 2:30 ± 10° from each side, twins with another
/// number, a sister with a third. There every mistake has clocks of its own, and the oracle is asked about
/// all of them.
namespace gapwise::oracle {

namespace {

constexpr std::array<const char*, 6> kTurnable{"SR-TI", "SR-TO", "SR-CI", "SR-CO", "THRUST", "DEFLECTOR"};

std::vector<std::optional<Lying>> attitudes() {
    std::vector<std::optional<Lying>> all{std::nullopt};
    for (const double drain : {180.0, 0.0, 90.0, 307.0}) {
        all.push_back(Lying{EndUp::Compressor, drain, Side::Compressor});
        all.push_back(Lying{EndUp::Turbine, drain, Side::Turbine});
        all.push_back(Lying{EndUp::Level, drain, Side::Compressor});
        all.push_back(Lying{EndUp::Level, drain, Side::Turbine});
    }
    return all;
}

class OffAxis : public ::testing::Test {
protected:
    /// Every turnable part at its own degree of the circle, all seen from one side.
    void turnAll(int degree, Side side) {
        for (std::size_t i = 0; i < kTurnable.size(); ++i)
            bench_.of(kTurnable[i])->index =
                Said{static_cast<double>((degree + 60 * static_cast<int>(i)) % 360), side};
    }
    void setAllIn(const std::optional<Shown>& view) {
        for (const char* part : kTurnable)
            bench_.of(part)->setIn = view;
    }
    void faceAll(Side side) {
        for (const char* part : kTurnable)
            bench_.of(part)->referenceFaceLooks = side;
    }
    Case asked() const { return Case{frame_, &sister_, bench_}; }
    std::vector<Mistake> mistakesAt(const char* part, double fromCompressor) {
        bench_.of(part)->index = Said{fromCompressor, Side::Compressor};
        return explanationOf(asked(), *frame_.rule(RuleId{std::string{part} + ".gap"})).mistakes;
    }

    Frame frame_ = testFrame("off-axis");
    Frame sister_ = testFrame("off-axis-sister");
    Bench bench_ = goodBench(frame_);
};

} // namespace

TEST_F(OffAxis, EveryPartViewDegreeAndFace) {
    Disagreements found;
    for (const auto& setting : viewsToTry()) {
        setAllIn(setting);
        for (const Side face : {Side::Compressor, Side::Turbine}) {
            faceAll(face);
            for (int degree = 0; degree < 360; ++degree) {
                turnAll(degree, degree % 2 == 0 ? Side::Compressor : Side::Turbine);
                found.compare(asked());
            }
        }
    }
    EXPECT_TRUE(found.none());
    EXPECT_GT(found.explained(), 21 * 2 * 360 * 5);
}

TEST_F(OffAxis, EveryPartAttitudeDegreeAndSide) {
    Disagreements found;
    for (const auto& attitude : attitudes()) {
        bench_.lying = attitude;
        for (const Side side : {Side::Compressor, Side::Turbine})
            for (int degree = 0; degree < 360; ++degree) {
                faceAll(degree % 2 == 0 ? Side::Compressor : Side::Turbine);
                turnAll(degree, side);
                found.compare(asked());
            }
    }
    EXPECT_TRUE(found.none());
}

// The promise of the frame itself, by the oracle alone: else the comparison above would compare nothing.
TEST_F(OffAxis, EveryMistakeHasClocksOfItsOwn) {
    for (const char* part : {"SR-TI", "SR-TO", "SR-CI", "SR-CO"}) {
        std::set<Mistake> alone;
        for (int degree = 0; degree < 360; ++degree) {
            const auto mistakes = mistakesAt(part, degree);
            if (mistakes.size() == 1)
                alone.insert(mistakes.front());
        }
        EXPECT_EQ(alone, (std::set{Mistake::MirroredView, Mistake::UpsideDown, Mistake::EndOverEnd,
                                   Mistake::OtherEndRule, Mistake::OtherVariantRule, Mistake::QuarterTurn}))
            << part;
    }
}

TEST_F(OffAxis, SomeClocksHaveTwoMistakesAndSomeNone) {
    EXPECT_EQ(mistakesAt("SR-CI", 292.0), (std::vector{Mistake::OtherEndRule, Mistake::QuarterTurn}));
    EXPECT_EQ(mistakesAt("SR-CI", 276.0), (std::vector{Mistake::OtherEndRule, Mistake::OtherVariantRule}));
    EXPECT_TRUE(mistakesAt("SR-CI", 180.0).empty());
}

TEST_F(OffAxis, AsPrintedIsReached) {
    int asPrinted = 0;
    for (const auto& setting : viewsToTry())
        for (int degree = 0; degree < 360; ++degree) {
            setAllIn(setting);
            turnAll(degree, Side::Compressor);
            for (const char* part : {"SR-TI", "SR-TO", "SR-CI", "SR-CO"}) {
                const Rule& rule = *frame_.rule(RuleId{std::string{part} + ".gap"});
                if (stateOf(asked(), rule) == RuleState::Broken)
                    asPrinted += explanationOf(asked(), rule).asPrinted.value_or(false) ? 1 : 0;
            }
        }
    EXPECT_GT(asPrinted,
              18 * 4 * 19); // Nearly every foreign view reads the printed number on its 21 degrees.
}

} // namespace gapwise::oracle
