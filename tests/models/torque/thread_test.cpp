#include "models/torque/thread.h"

#include "tests/support/print_error.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <ostream>
#include <string>

namespace gapwise::test {

namespace {

/// A row of ISO 724 with the stress area of ISO 898-1; `printedArea` 0 where no table prints one.
struct Published {
    const char* id;
    const char* thread;
    double d2, d1, d3;
    double area, printedArea;
    double lead;

    friend void PrintTo(const Published& row, std::ostream* out) { *out << row.id << " " << row.thread; }
};

double toFigures(double value, int figures) {
    const double unit = std::pow(10.0, std::floor(std::log10(value)) - figures + 1);
    return std::round(value / unit) * unit;
}

} // namespace

class PublishedThreads : public ::testing::TestWithParam<Published> {};

TEST_P(PublishedThreads, HaveTheSizesOfIso724AndTheStressAreaOfIso898) {
    const Published& row = GetParam();
    const Result<MetricThread> thread = parseThread(row.thread, "");
    ASSERT_TRUE(thread);
    const ThreadSizes sizes = sizesOf(*thread);
    EXPECT_NEAR(sizes.flankDiameterMm, row.d2, 0.0005 + 1e-9);
    EXPECT_NEAR(sizes.minorDiameterMm, row.d1, 0.0005 + 1e-9);
    EXPECT_NEAR(sizes.rootDiameterMm, row.d3, 0.0005 + 1e-9);
    EXPECT_NEAR(sizes.stressAreaMm2, row.area, 0.0006 * row.area);
    EXPECT_NEAR(sizes.lead.value, row.lead, 0.0005 + 1e-9);
    if (row.printedArea > 0.0) {
        EXPECT_NEAR(toFigures(sizes.stressAreaMm2, 3), toFigures(row.printedArea, 3), 1e-9);
    }
}

// ISO 261 (pitch), ISO 724 (d₂, d₁), ISO 898-1 (Aₛ): THR-01 to THR-11.
INSTANTIATE_TEST_SUITE_P(
    Coarse, PublishedThreads,
    ::testing::Values(Published{"THR-01", "M6", 5.350, 4.917, 4.773, 20.123, 20.1, 3.405},
                      Published{"THR-02", "M8", 7.188, 6.647, 6.466, 36.609, 36.6, 3.168},
                      Published{"THR-03", "M10", 9.026, 8.376, 8.160, 57.990, 58.0, 3.028},
                      Published{"THR-04", "M12", 10.863, 10.106, 9.853, 84.267, 84.3, 2.935},
                      Published{"THR-05", "M14", 12.701, 11.835, 11.546, 115.439, 115, 2.869},
                      Published{"THR-06", "M16", 14.701, 13.835, 13.546, 156.668, 157, 2.480},
                      Published{"THR-07", "M18", 16.376, 15.294, 14.933, 192.473, 192, 2.782},
                      Published{"THR-08", "M20", 18.376, 17.294, 16.933, 244.794, 245, 2.480},
                      Published{"THR-09", "M22", 20.376, 19.294, 18.933, 303.399, 303, 2.236},
                      Published{"THR-10", "M24", 22.051, 20.752, 20.319, 352.504, 353, 2.480},
                      Published{"THR-11", "M27", 25.051, 23.752, 23.319, 459.406, 459, 2.183}));

// The same sources: THR-14 to THR-22.
INSTANTIATE_TEST_SUITE_P(
    Fine, PublishedThreads,
    ::testing::Values(Published{"THR-14", "M10×1.25", 9.188, 8.647, 8.466, 61.199, 61.20, 2.480},
                      Published{"THR-15", "M10x1", 9.350, 8.917, 8.773, 64.494, 0, 1.950},
                      Published{"THR-16", "M12x1.25", 11.188, 10.647, 10.466, 92.072, 92.07, 2.037},
                      Published{"THR-17", "M12x1.5", 11.026, 10.376, 10.160, 88.126, 0, 2.480},
                      Published{"THR-18", "M14x1.5", 13.026, 12.376, 12.160, 124.546, 124.5, 2.099},
                      Published{"THR-19", "M16x1.5", 15.026, 14.376, 14.160, 167.248, 167.2, 1.820},
                      Published{"THR-20", "M20x1.5", 19.026, 18.376, 18.160, 271.503, 271.5, 1.438},
                      Published{"THR-21", "M24x2", 22.701, 21.835, 21.546, 384.416, 384.4, 1.606},
                      Published{"THR-22", "M30x2", 28.701, 27.835, 27.546, 621.201, 621.2, 1.271}));

// ISO 68-1 (THR-23, THR-24).
RC_GTEST_PROP(MetricThreads, HaveTheProfileOfIso68, ()) {
    const double pitch = *rc::gen::inRange(20, 600) / 100.0;
    const ThreadSizes sizes = sizesOf({.diameterMm = 64.0, .pitchMm = pitch});
    RC_ASSERT(std::abs(sizes.overlapMm - 0.541266 * pitch) < 1e-6 * pitch);
    RC_ASSERT(std::abs(sizes.depthMm - 0.613435 * pitch) < 1e-6 * pitch);
    RC_ASSERT(std::abs(sizes.rootRadiusMm - 0.144338 * pitch) < 1e-6 * pitch);
}

// Right-hand rule (TQ-30): a left-hand nut that turns once forward about the axis comes back by its pitch.
TEST(MetricThreads, ALeftHandNutTravelsAgainstTheAxisItTurnsAbout) {
    const MetricThread left{.diameterMm = 8.0, .pitchMm = 1.0, .hand = ThreadHand::Left};
    EXPECT_NEAR(axialTravelMm(left, Degrees{360.0}), -1.0, 1e-9);
    const MetricThread right{.diameterMm = 16.0, .pitchMm = 1.5};
    EXPECT_NEAR(axialTravelMm(right, Degrees{90.0}), 0.375, 1e-9);
}

TEST(MetricThreads, AreReadWithPitchAndHand) {
    EXPECT_EQ(*parseThread("M8", ""), (MetricThread{8.0, 1.25, ThreadHand::Right}));
    EXPECT_EQ(*parseThread("M8x1", ""), (MetricThread{8.0, 1.0, ThreadHand::Right}));
    EXPECT_EQ(*parseThread("M8×1-LH", ""), (MetricThread{8.0, 1.0, ThreadHand::Left}));
    EXPECT_EQ(*parseThread("M5-LH", ""), (MetricThread{5.0, 0.8, ThreadHand::Left}));
}

TEST(MetricThreads, AreNamedAsTheyAreRead) {
    for (const char* name : {"M8×1", "M16×1.5-LH", "M1.6×0.35"})
        EXPECT_EQ(nameOf(*parseThread(name, "")), name);
    EXPECT_EQ(nameOf(*parseThread("M8", "")), "M8×1.25");
}

// A length behind the × is the mistake that a table of screws invites.
TEST(MetricThreads, RefuseWhatIsNoThread) {
    for (const char* wrong :
         {"", "M", "8", "m8", "M8x", "M8x0", "M8x-1", "M5x12", "M15", "M0.5x0.1", "M301x4", "M8x1 LH",
          "M8x1-RH", "Mnan", "M8xnan", "Minfx1", "M8x1-LHx", "3 × M5", "M8 x1"}) {
        const Result<MetricThread> read = parseThread(wrong, "THREAD");
        ASSERT_FALSE(read) << wrong;
        EXPECT_EQ(read.errors().front().where, "THREAD");
        EXPECT_EQ(read.errors().front().found, "\"" + std::string{wrong} + "\"");
    }
}

} // namespace gapwise::test
