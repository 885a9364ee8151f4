#include "viewer/panels/plots.h"
#include "viewer/panels/stack_drawing.h"

#include "tests/viewer/panels/desk.h"

#include <gtest/gtest.h>
#include <imgui.h>

#include <functional>

namespace gapwise {

namespace {

constexpr double kPen = 3.0; ///< Half a stroke and the softened edge may lie outside.

/// One empty picture to draw on; what was drawn is measured.
class Paper {
public:
    using Draws = std::function<void(const Area&, const Surface&)>;

    /// What the drawing covers.
    Area drawn(const Area& area, const Draws& draw) {
        ImGui::NewFrame();
        ImGui::SetNextWindowPos({0.0F, 0.0F});
        ImGui::SetNextWindowSize(ImGui::GetIO().DisplaySize);
        ImGui::Begin("paper", nullptr, ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoBackground);
        ImGui::PushFont(desk_.panels.fonts.body);
        const int before = ink().VtxBuffer.Size;
        draw(area, surface());
        double left = 1e9;
        double top = 1e9;
        double right = -1e9;
        double bottom = -1e9;
        for (int i = before; i < ink().VtxBuffer.Size; ++i) {
            const ImVec2 at = ink().VtxBuffer[i].pos;
            left = std::min(left, static_cast<double>(at.x));
            top = std::min(top, static_cast<double>(at.y));
            right = std::max(right, static_cast<double>(at.x));
            bottom = std::max(bottom, static_cast<double>(at.y));
        }
        const bool nothing = ink().VtxBuffer.Size == before;
        ImGui::PopFont();
        ImGui::End();
        ImGui::Render();
        return nothing ? Area{} : Area{left, top, right - left, bottom - top};
    }

    void expectInside(const Area& area, const Draws& draw, const char* name) {
        const Area covered = drawn(area, draw);
        EXPECT_FALSE(covered.empty()) << name << " draws nothing in " << area.width << "×" << area.height;
        EXPECT_GE(covered.x, area.x - kPen) << name;
        EXPECT_GE(covered.y, area.y - kPen) << name;
        EXPECT_LE(covered.right(), area.right() + kPen) << name;
        EXPECT_LE(covered.bottom(), area.bottom() + kPen) << name;
    }

    void expectInsideEverySize(const Draws& draw, const char* name) {
        for (const Area& area : {Area{100.0, 80.0, 900.0, 520.0}, Area{40.0, 60.0, 460.0, 260.0},
                                 Area{300.0, 200.0, 300.0, 420.0}, Area{10.0, 10.0, 260.0, 190.0}})
            expectInside(area, draw, name);
    }

private:
    Surface surface() { return {.frame = desk_.panels, .bench = false, .target = 36.0}; }

    desk::Desk desk_{};
};

LimitBar wholeBar() {
    return {.fresh = {0.05, 0.09},
            .service = {std::nullopt, 0.12},
            .predicted = Window{0.062, 0.084},
            .predictedValue = 0.073,
            .previous = 0.175,
            .value = 0.068,
            .expanded = 0.006,
            .standing = Standing::Within};
}

FourPointSketch fourPoints() {
    return {.seenFrom = Side::Compressor,
            .gaps = {0.50, 0.44, 0.36, 0.42},
            .readNow = 2,
            .result = FourPointResult{.mean = 0.430,
                                      .right = -0.010,
                                      .up = -0.070,
                                      .eccentricity = 0.071,
                                      .directionDeg = 188.1,
                                      .sag = 0.067,
                                      .casing = 0.010,
                                      .rock = 0.26,
                                      .leftWhenRocked = 0.17},
            .mean = {0.35, 0.50},
            .pointLeast = 0.25,
            .eccentricityMost = 0.06};
}

} // namespace

TEST(Plots, LimitBarsStayInTheirArea) {
    Paper paper;
    paper.expectInsideEverySize([](const Area& area, const Surface& s) { drawLimitBar(wholeBar(), area, s); },
                                "bar");
    paper.expectInsideEverySize([](const Area& area, const Surface& s) { drawLimitBar({}, area, s); },
                                "empty bar");
    paper.expectInside(
        {10.0, 10.0, 160.0, 36.0},
        [](const Area& area, const Surface& s) { drawSmallBar(wholeBar(), area, s); }, "small bar");
}

TEST(Plots, AValueFarOffStaysOnTheBar) {
    Paper paper;
    LimitBar bar = wholeBar();
    bar.value = 68.0;
    bar.standing = Standing::Beyond;
    paper.expectInsideEverySize([&](const Area& area, const Surface& s) { drawLimitBar(bar, area, s); },
                                "far off");
}

TEST(Plots, InstrumentsStayInTheirArea) {
    Paper paper;
    const Indicator indicator{.value = 0.175, .previous = 0.2, .window = {0.05, 0.09}};
    paper.expectInsideEverySize(
        [&](const Area& area, const Surface& s) { drawIndicatorFace(indicator, area, s); }, "face");
    for (const RulerKind kind : {RulerKind::Micrometer, RulerKind::Feelers})
        paper.expectInsideEverySize(
            [&](const Area& area, const Surface& s) { drawRuler(indicator, kind, area, s); }, "ruler");
}

TEST(Plots, RepeatsStayInTheirArea) {
    Paper paper;
    const RepeatsPlot plot{.values = {11.991, 11.993, 11.989, 11.992},
                           .window = {11.99, 11.995},
                           .mean = 11.991,
                           .spread = 0.004,
                           .spreadMost = 0.002};
    paper.expectInsideEverySize([&](const Area& area, const Surface& s) { drawRepeats(plot, area, s); },
                                "repeats");
}

TEST(Plots, SketchesStayInTheirArea) {
    Paper paper;
    paper.expectInsideEverySize(
        [](const Area& area, const Surface& s) { drawFourPoints(fourPoints(), area, s); }, "four points");
    paper.expectInsideEverySize([](const Area& area, const Surface& s) { drawFourPoints({}, area, s); },
                                "four points not read");
    const LeverSketch lever{.spanMm = 44.0,
                            .noseMm = 62.0,
                            .turbineMm = 56.0,
                            .noseReading = 0.54,
                            .turbineReading = 0.5,
                            .compressorBand = Window{0.129, 0.156},
                            .turbineBand = Window{0.25, 0.27},
                            .compressorParts = 0.141,
                            .turbineParts = 0.147,
                            .playMost = 0.21,
                            .readNow = Side::Turbine,
                            .words = "The turbine bearing is worn: its play lies beyond 0.21."};
    paper.expectInsideEverySize([&](const Area& area, const Surface& s) { drawLever(lever, area, s); },
                                "lever");
}

TEST(Plots, DistributionsStayInTheirArea) {
    Paper paper;
    ChainTrials trials{.trials = 100'000, .meanMm = 0.07, .least95Mm = 0.06, .most95Mm = 0.08, .above = 0.01};
    for (int i = 0; i < 40; ++i)
        trials.histogram.push_back({0.05 + 0.001 * i, 1.0 / (1.0 + (i - 20.0) * (i - 20.0))});
    const Window window{0.055, 0.085};
    paper.expectInsideEverySize(
        [&](const Area& area, const Surface& s) { drawHistogram(trials, window, area, s); }, "histogram");
    std::vector<ShareBar> bars(12, {.name = "t_T", .share = 0.4, .words = "± 0.010 measured"});
    paper.expectInsideEverySize([&](const Area& area, const Surface& s) { drawShares(bars, 24.0, area, s); },
                                "shares");
}

TEST(PlotWords, NumbersAreRoundedAndNeverMinusNothing) {
    EXPECT_EQ(numberWords(0.0704, 3), "0.070");
    EXPECT_EQ(numberWords(-0.0004, 3), "0.000");
    EXPECT_EQ(numberWords(-0.02, 2), "−0.02");
    EXPECT_EQ(signedWords(0.02, 3), "+0.020");
    EXPECT_EQ(signedWords(-0.0001, 3), "0.000");
    EXPECT_EQ(signedWords(-1.5, 1), "−1.5");
}

TEST(PlotWords, WindowsSayTheirOpenEnds) {
    EXPECT_EQ(windowWords({0.05, 0.09}, 3), "0.050 … 0.090");
    EXPECT_EQ(windowWords({11.98, std::nullopt}, 3), "at least 11.980");
    EXPECT_EQ(windowWords({std::nullopt, 0.12}, 2), "at most 0.12");
    EXPECT_EQ(windowWords({}, 3), "");
}

TEST(PlotWords, StepsAreOneTwoFive) {
    EXPECT_DOUBLE_EQ(stepFor(1.0, 10), 0.1);
    EXPECT_DOUBLE_EQ(stepFor(1.0, 9), 0.2);
    EXPECT_DOUBLE_EQ(stepFor(0.09, 2), 0.05);
    EXPECT_DOUBLE_EQ(stepFor(70.0, 10), 10.0);
}

TEST(PlotWords, EveryStandingHasItsOwnWord) {
    const std::array all{Standing::NotRead, Standing::NoLimit, Standing::NotJudged, Standing::NotProven,
                         Standing::Within,  Standing::Between, Standing::Beyond};
    for (const Standing a : all)
        for (const Standing b : all)
            EXPECT_EQ(a == b, lookOf(a).word == lookOf(b).word);
}

} // namespace gapwise
