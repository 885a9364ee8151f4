#include "viewer/panels/stack_axis.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

/// Alder's thrust train, rotor toward the compressor (invented).
StackAxis thrustTrain() {
    return StackAxis{
        {{-8.5, -3.5, 0.0, 5.0, 5.07, 19.27, 47.27, 54.77}, 0.0, 5.07}, {5.0, 5.07, 30.0}, {100.0, 900.0}};
}

} // namespace

TEST(StackAxis, FillsItsLine) {
    const StackAxis axis = thrustTrain();
    EXPECT_DOUBLE_EQ(axis.at(-8.5), 100.0);
    EXPECT_NEAR(axis.at(54.77), 900.0, 1e-9);
    EXPECT_DOUBLE_EQ(axis.at(-50.0), 100.0) << "beyond its ends it stays at them";
}

TEST(StackAxis, DrawsTheGapAsWideAsAsked) {
    const StackAxis axis = thrustTrain();
    EXPECT_NEAR(axis.at(5.07) - axis.at(5.0), 30.0, 1e-9);
}

TEST(StackAxis, ShortensLongLengths) {
    const StackAxis axis = thrustTrain();
    EXPECT_LT(axis.at(47.27) - axis.at(19.27), 2.5 * (axis.at(5.0) - axis.at(0.0)));
}

RC_GTEST_PROP(StackAxis, KeepsTheOrderOfAllFaces, ()) {
    std::vector<double> faces;
    const auto hundredths =
        *rc::gen::nonEmpty(rc::gen::container<std::vector<int>>(rc::gen::inRange(-5000, 20000)));
    RC_PRE(hundredths.size() >= 2U);
    for (const int each : hundredths)
        faces.push_back(each / 100.0);
    std::ranges::sort(faces);
    RC_PRE(faces.back() - faces.front() > 0.01);
    const std::size_t gap = *rc::gen::inRange<std::size_t>(0, faces.size() - 1);
    const StackAxis axis{
        {faces, faces.front(), faces.back()}, {faces[gap], faces[gap + 1], 25.0}, {0.0, 500.0}};
    for (std::size_t i = 0; i + 1 < faces.size(); ++i)
        RC_ASSERT(axis.at(faces[i]) <= axis.at(faces[i + 1]) + 1e-9);
    RC_ASSERT(std::abs(axis.at(faces.back()) - 500.0) < 1e-6 || faces.size() == 2);
}

} // namespace gapwise
