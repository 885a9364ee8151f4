#include "viewer/scene/view_words.h"

#include "viewer/scene/camera.h"

#include <gtest/gtest.h>

namespace gapwise {

namespace {

ViewWords wordsFrom(double azimuth, double elevation) {
    const std::vector<Vec3> points{{-1.0, -1.0, -1.0}, {1.0, 1.0, 1.0}};
    return viewWordsOf(fittedCamera(points, {Degrees{azimuth}, Degrees{elevation}}, Projection::Parallel,
                                    {{100, 100}, {0.0, 0.0, 100.0, 100.0}})
                           .camera);
}

} // namespace

TEST(ViewWords, NameTheSideOfALevelledLook) {
    EXPECT_EQ(wordsFrom(90.0, 0.0).where, "You look from the COMPRESSOR side");
    EXPECT_EQ(wordsFrom(-90.0, 0.0).where, "You look from the TURBINE side");
    EXPECT_EQ(wordsFrom(90.0, 0.0).drain, "Inlet on top, at 12:00; drain at 6:00");
    EXPECT_EQ(wordsFrom(0.0, 10.0).drain, "Inlet up, drain down");
    EXPECT_EQ(wordsFrom(90.0, 0.0).note, "");
}

TEST(ViewWords, SayHowFarAnObliqueClockMayBeOff) {
    // atan((1 - cos t) / (2 sqrt cos t)) is 4.1° at 30°.
    const ViewWords words = wordsFrom(60.0, 0.0);
    EXPECT_EQ(words.where, "You look from the COMPRESSOR side");
    EXPECT_EQ(words.note, "oblique, 30° off the axis: a clock read here may be 5° off");
    EXPECT_EQ(wordsFrom(80.0, 0.0).note, "10° off the axis");
}

TEST(ViewWords, FromBesideSayWhichEndLiesWhere) {
    EXPECT_EQ(wordsFrom(0.0, 0.0).where, "You look from beside: TURBINE left, COMPRESSOR right");
    EXPECT_EQ(wordsFrom(165.0, 9.0).where, "You look from beside: COMPRESSOR left, TURBINE right");
    EXPECT_EQ(wordsFrom(0.0, 0.0).note, "90° off the axis: read no clock here");
}

TEST(ViewWords, SayWhereTheDrainIsFromAnywhere) {
    EXPECT_EQ(wordsFrom(0.0, 90.0).drain, "Drain: on the far side");
    EXPECT_EQ(wordsFrom(0.0, -90.0).drain, "Drain: toward you");
    EXPECT_EQ(wordsFrom(0.0, 90.0).where, "You look from the inlet side: TURBINE left, COMPRESSOR right");
}

} // namespace gapwise
