#include "models/uncertainty/propagate.h"

#include "models/uncertainty/budget.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <array>
#include <cmath>
#include <numeric>

namespace gapwise::test {

namespace {

/// JCGM 100:2008 H.1 (UNC-01): l_S, d, α_S, θ, δα, δθ in nanometres and kelvins.
Estimates gaugeBlock() {
    return {.values = {50.000623e6, 215.0, 11.5e-6, -0.1, 0.0, 0.0},
            .standards = {25.0, 9.7, 1.2e-6, 0.41, 0.58e-6, 0.029}};
}

/// l = [l_S(1 + α_S·θ_S) + d] / (1 + α·θ) with α = α_S + δα and θ_S = θ − δθ, JCGM 100:2008 H.1.1.
double gaugeLength(std::span<const double> x) {
    const double alpha = x[2] + x[4];
    return (x[0] * (1.0 + x[2] * (x[3] - x[5])) + x[1]) / (1.0 + alpha * x[3]);
}

/// JCGM 100:2008 table H.2 (UNC-08): V, mA, rad, taken together.
std::vector<std::vector<double>> impedanceReadings() {
    return {{5.007, 4.994, 5.005, 4.990, 4.999},
            {19.663, 19.639, 19.640, 19.685, 19.678},
            {1.0456, 1.0438, 1.0468, 1.0428, 1.0433}};
}

/// R, X and Z in ohms.
std::array<MeasurementModel, 3> impedance() {
    const auto z = [](std::span<const double> x) { return 1000.0 * x[0] / x[1]; };
    return {[z](std::span<const double> x) { return z(x) * std::cos(x[2]); },
            [z](std::span<const double> x) { return z(x) * std::sin(x[2]); }, z};
}

} // namespace

// JCGM 100:2008 H.1.5 and table H.1 (UNC-02, UNC-03).
TEST(GaugeBlock, LengthAndFirstOrderUncertainty) {
    const std::array<MeasurementModel, 1> model{gaugeLength};
    const Estimates length = propagate(model, gaugeBlock());
    EXPECT_NEAR(length.values[0] / 1e6, 50.000838, 5e-7);
    EXPECT_NEAR(length.standards[0], 31.71, 0.4);
}

// JCGM 100:2008 H.1.7, from memory and reckoned (UNC-07): the products δα·θ and α_S·δθ bring 11.7 and 1.7 nm.
TEST(GaugeBlock, SecondOrderBrings34Nanometres) {
    const double added = secondOrderVariance(gaugeLength, gaugeBlock());
    EXPECT_NEAR(std::sqrt(added), std::hypot(11.7, 1.7), 0.3);
    EXPECT_NEAR(std::sqrt(1002.0 + added), 34.0, 1.0);
}

// JCGM 100:2008 tables H.2 and H.4 (UNC-09).
TEST(Impedance, OfTableH4WithItsCorrelations) {
    const Estimates results = propagate(impedance(), estimatesOf(impedanceReadings()));
    EXPECT_NEAR(results.values[0], 127.732, 0.001);
    EXPECT_NEAR(results.values[1], 219.847, 0.001);
    EXPECT_NEAR(results.values[2], 254.260, 0.001);
    EXPECT_NEAR(results.standards[0], 0.071, 0.001);
    EXPECT_NEAR(results.standards[1], 0.295, 0.001);
    EXPECT_NEAR(results.standards[2], 0.236, 0.001);
}

// JCGM 100:2008 H.2 (UNC-10): what comes out where correlation is ignored.
TEST(Impedance, IsWrongWithoutThem) {
    Estimates inputs = estimatesOf(impedanceReadings());
    inputs.correlations.clear();
    const Estimates results = propagate(impedance(), inputs);
    EXPECT_NEAR(results.standards[0], 0.195, 0.001);
    EXPECT_NEAR(results.standards[1], 0.201, 0.001);
    EXPECT_NEAR(results.standards[2], 0.204, 0.001);
}

// JCGM 100:2008 H.2, reckoned from its data (UNC-46).
TEST(Impedance, CorrelationsOfInputsAndResults) {
    const Estimates inputs = estimatesOf(impedanceReadings());
    EXPECT_NEAR(inputs.correlation(0, 1), -0.355, 0.001);
    EXPECT_NEAR(inputs.correlation(0, 2), 0.858, 0.001);
    EXPECT_NEAR(inputs.correlation(2, 1), -0.645, 0.001);
    const Estimates results = propagate(impedance(), inputs);
    EXPECT_NEAR(results.correlation(0, 1), -0.588, 0.001);
    EXPECT_NEAR(results.correlation(0, 2), -0.485, 0.001);
    EXPECT_NEAR(results.correlation(1, 2), 0.993, 0.001);
}

// JCGM 100:2008 H.3, from memory (UNC-11): intercept and slope of the fit, r = −0.930.
TEST(Thermometer, CorrectionAt30Degrees) {
    const Estimates line{
        .values = {-0.1712, 0.00218}, .standards = {0.0029, 0.00067}, .correlations = {1, -0.930, -0.930, 1}};
    const std::array<MeasurementModel, 1> correction{
        [](std::span<const double> y) { return y[0] + y[1] * (30.0 - 20.0); }};
    const Estimates at30 = propagate(correction, line);
    EXPECT_NEAR(at30.values[0], -0.1494, 0.0001);
    EXPECT_NEAR(at30.standards[0], 0.0041, 0.0001);
}

// NIST TN 1900 E13 (UNC-20).
TEST(ExpansionCoefficient, OfACopperBar) {
    const Estimates inputs{.values = {1.4999, 1.5021, 288.15, 373.10},
                           .standards = {0.0001, 0.0002, 0.02, 0.05}};
    const std::array<MeasurementModel, 1> alpha{
        [](std::span<const double> x) { return (x[1] - x[0]) / (x[0] * (x[3] - x[2])); }};
    const Estimates result = propagate(alpha, inputs);
    EXPECT_NEAR(result.values[0], 1.7266e-5, 1e-9);
    EXPECT_NEAR(result.standards[0], 1.76e-6, 0.01e-6);
}

// NPL report DEM-ES-011 §9.2 (UNC-21): the first order's answer where it does not fit.
TEST(Logarithm, ToTheFirstOrder) {
    const Estimates x{.values = {0.6}, .standards = {0.5 / std::sqrt(3.0)}};
    const std::array<MeasurementModel, 1> logarithm{
        [](std::span<const double> value) { return std::log(value[0]); }};
    const Estimates y = propagate(logarithm, x);
    EXPECT_NEAR(y.values[0], -0.511, 0.001);
    EXPECT_NEAR(y.standards[0], 0.481, 0.001);
}

// y = x²: ½(y″)²u⁴ = 2u⁴, and y‴ = 0.
TEST(SecondOrder, OfASquare) {
    const MeasurementModel square = [](std::span<const double> x) { return x[0] * x[0]; };
    EXPECT_NEAR(secondOrderVariance(square, {.values = {0.0}, .standards = {0.3}}), 2.0 * std::pow(0.3, 4),
                1e-12);
}

// y = x³ at 1: ½(6)²u⁴ + 3·6·u⁴.
TEST(SecondOrder, OfACube) {
    const MeasurementModel cube = [](std::span<const double> x) { return x[0] * x[0] * x[0]; };
    EXPECT_NEAR(secondOrderVariance(cube, {.values = {1.0}, .standards = {0.1}}), 36e-4, 1e-5);
}

TEST(Sensitivities, OfAnInputThatIsExactlyZero) {
    const MeasurementModel model = [](std::span<const double> x) { return 3.0 * x[0] - x[1]; };
    const std::vector<double> slopes = sensitivities(model, {.values = {0.0, 0.0}, .standards = {0.0, 1.0}});
    EXPECT_NEAR(slopes[0], 3.0, 1e-9);
    EXPECT_NEAR(slopes[1], -1.0, 1e-9);
}

TEST(Propagate, AConstantHasNoUncertainty) {
    const std::array<MeasurementModel, 2> models{[](std::span<const double>) { return 4.0; },
                                                 [](std::span<const double> x) { return x[0]; }};
    const Estimates results = propagate(models, {.values = {1.0}, .standards = {0.1}});
    EXPECT_EQ(results.standards[0], 0.0);
    EXPECT_EQ(results.correlation(0, 1), 0.0);
    EXPECT_EQ(results.correlation(0, 0), 1.0);
}

RC_GTEST_PROP(Propagate, OfASumIsTheBudget, ()) {
    const std::size_t number = *rc::gen::inRange<std::size_t>(1, 7);
    Estimates inputs;
    std::vector<UncertaintyComponent> components;
    for (std::size_t i = 0; i < number; ++i) {
        inputs.values.push_back(*rc::gen::inRange(-5000, 5000) / 100.0);
        inputs.standards.push_back(*rc::gen::inRange(1, 100) / 1000.0);
        components.push_back(
            {.sensitivity = *rc::gen::inRange(-300, 300) / 100.0, .standard = inputs.standards.back()});
    }
    const std::array<MeasurementModel, 1> sum{[&](std::span<const double> x) {
        double result = 0.0;
        for (std::size_t i = 0; i < x.size(); ++i)
            result += components[i].sensitivity * x[i];
        return result;
    }};
    RC_ASSERT(std::abs(propagate(sum, inputs).standards[0] - combinedStandard(components)) < 1e-8);
    RC_ASSERT(std::abs(secondOrderVariance(sum[0], inputs)) < 1e-9);
}

} // namespace gapwise::test
