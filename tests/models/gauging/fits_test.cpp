#include "models/gauging/fits.h"

#include "tests/support/print_error.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <array>
#include <cmath>
#include <ostream>
#include <string>
#include <vector>

namespace gapwise::test {

namespace {

struct Step {
    const char* id;
    double overMm, upToMm;
    std::array<int, 7> tolerances;
    friend void PrintTo(const Step& row, std::ostream* out) { *out << row.id; }
};

struct Shafts {
    const char* id;
    double sizeMm;
    std::array<int, 7> deviations; ///< e, f, g: upper; k, m, n, p: lower.
    friend void PrintTo(const Shafts& row, std::ostream* out) { *out << row.id; }
};

struct Worked {
    const char* id;
    const char* fit;
    Deviations hole, shaft;
    int least, most; ///< Clearance, µm.
    FitKind kind;
    friend void PrintTo(const Worked& row, std::ostream* out) { *out << row.id; }
};

int toleranceOf(double sizeMm, int grade) {
    return toleranceUm(sizeMm, grade, "size").value();
}

Deviations deviations(double sizeMm, std::string_view tolerance) {
    return deviationsOf(sizeMm, parseToleranceClass(tolerance, "class").value(), "size").value();
}

std::string refusalOf(std::string_view fit) {
    const Result<Fit> read = parseFit(fit, "fit");
    return read ? "taken" : describe(read.errors().front());
}

} // namespace

class ToleranceSteps : public ::testing::TestWithParam<Step> {};

TEST_P(ToleranceSteps, AreThePrintedIntegers) {
    const Step& row = GetParam();
    for (int grade = 5; grade <= 11; ++grade) {
        EXPECT_EQ(toleranceOf(row.upToMm, grade), row.tolerances.at(static_cast<std::size_t>(grade - 5)));
        EXPECT_EQ(toleranceOf(row.overMm + 0.001, grade),
                  row.tolerances.at(static_cast<std::size_t>(grade - 5)));
    }
}

// ISO 286-1, table 1 (ISO286-06 to ISO286-12).
INSTANTIATE_TEST_SUITE_P(Iso286, ToleranceSteps,
                         ::testing::Values(Step{"ISO286-06", 3, 6, {5, 8, 12, 18, 30, 48, 75}},
                                           Step{"ISO286-07", 6, 10, {6, 9, 15, 22, 36, 58, 90}},
                                           Step{"ISO286-08", 10, 18, {8, 11, 18, 27, 43, 70, 110}},
                                           Step{"ISO286-10", 30, 50, {11, 16, 25, 39, 62, 100, 160}},
                                           Step{"ISO286-11", 50, 80, {13, 19, 30, 46, 74, 120, 190}},
                                           Step{"ISO286-12", 80, 120, {15, 22, 35, 54, 87, 140, 220}}));

// ISO 286-1, table 1, from memory: the steps whose rows are not among those.
INSTANTIATE_TEST_SUITE_P(FromMemory, ToleranceSteps,
                         ::testing::Values(Step{"up to 3", 0, 3, {4, 6, 10, 14, 25, 40, 60}},
                                           Step{"over 18 to 30", 18, 30, {9, 13, 21, 33, 52, 84, 130}}));

class ShaftDeviations : public ::testing::TestWithParam<Shafts> {};

TEST_P(ShaftDeviations, AreThePrintedIntegers) {
    const Shafts& row = GetParam();
    constexpr std::array kUpper{"e7", "f7", "g7"};
    for (std::size_t at = 0; at < kUpper.size(); ++at)
        EXPECT_EQ(deviations(row.sizeMm, kUpper.at(at)).upperUm, row.deviations.at(at));
    constexpr std::array kLower{"k7", "m7", "n7", "p7"};
    for (std::size_t at = 0; at < kLower.size(); ++at)
        EXPECT_EQ(deviations(row.sizeMm, kLower.at(at)).lowerUm, row.deviations.at(at + 3));
}

// ISO 286-1, tables 4 and 5 (ISO286-13 to ISO286-18).
INSTANTIATE_TEST_SUITE_P(Iso286, ShaftDeviations,
                         ::testing::Values(Shafts{"ISO286-13", 6, {-20, -10, -4, 1, 4, 8, 12}},
                                           Shafts{"ISO286-14", 10, {-25, -13, -5, 1, 6, 10, 15}},
                                           Shafts{"ISO286-15", 18, {-32, -16, -6, 1, 7, 12, 18}},
                                           Shafts{"ISO286-16", 30, {-40, -20, -7, 2, 8, 15, 22}},
                                           Shafts{"ISO286-17", 50, {-50, -25, -9, 2, 9, 17, 26}},
                                           Shafts{"ISO286-18", 80, {-60, -30, -10, 2, 11, 20, 32}}));

// From memory.
INSTANTIATE_TEST_SUITE_P(FromMemory, ShaftDeviations,
                         ::testing::Values(Shafts{"up to 3", 3, {-14, -6, -2, 0, 2, 4, 6}},
                                           Shafts{"over 80 to 120", 120, {-72, -36, -12, 3, 13, 23, 37}}));

// ISO 286-1 annex A (ISO286-01, ISO286-03, ISO286-04): the formulae that the tables were rounded from.
TEST(Fits, TheTablesLieNearTheirFormulae) {
    const auto unitUm = [](double over, double upTo) {
        const double size = std::sqrt(over * upTo);
        return 0.45 * std::cbrt(size) + 0.001 * size;
    };
    EXPECT_NEAR(std::sqrt(1.0 * 3.0), 1.732, 5e-4);
    EXPECT_NEAR(unitUm(30, 50), 1.561, 1e-3);
    EXPECT_NEAR(unitUm(80, 120), 2.173, 1e-3);
    constexpr std::array kSteps{3.0, 6.0, 10.0, 18.0, 30.0, 50.0, 80.0, 120.0};
    constexpr std::array kUnits{7.0, 10.0, 16.0, 25.0, 40.0, 64.0, 100.0};
    for (std::size_t at = 1; at < kSteps.size(); ++at)
        for (int grade = 5; grade <= 11; ++grade) {
            const double formula =
                kUnits.at(static_cast<std::size_t>(grade - 5)) * unitUm(kSteps.at(at - 1), kSteps.at(at));
            EXPECT_NEAR(toleranceOf(kSteps.at(at), grade), formula, 0.5 + 0.03 * formula)
                << kSteps.at(at) << " IT" << grade;
        }
}

// ISO 286-1, heading of table 1 (ISO286-35).
TEST(Fits, AStepsEdgeBelongsToTheStepBelow) {
    EXPECT_EQ(toleranceOf(30.0, 7), 21);
    EXPECT_EQ(toleranceOf(30.001, 7), 25);
}

// ISO 286-1, table 3 (ISO286-20): the correction of holes in IT7, taken out of K7 and k6.
TEST(Fits, HolesAreTheMirroredShaftAndACorrection) {
    struct Row {
        double size;
        int delta;
    };
    for (const Row& row : {Row{18, 7}, Row{30, 8}, Row{50, 9}, Row{120, 13}})
        EXPECT_EQ(deviations(row.size, "K7").upperUm + deviations(row.size, "k6").lowerUm, row.delta);
}

// ISO 286-2, reckoned from those (ISO286-21, ISO286-22, ISO286-23).
TEST(Fits, HolesOfTheLettersKNP) {
    EXPECT_EQ(deviations(25, "K7"), (Deviations{-15, 6}));
    EXPECT_EQ(deviations(40, "N7"), (Deviations{-33, -8}));
    EXPECT_EQ(deviations(40, "P7"), (Deviations{-42, -17}));
}

// ISO 286-2, from memory: where the correction ends.
TEST(Fits, HolesBeyondTheCorrection) {
    EXPECT_EQ(deviations(25, "K8"), (Deviations{-23, 10}));
    EXPECT_EQ(deviations(25, "N8"), (Deviations{-36, -3}));
    EXPECT_EQ(deviations(25, "N9"), (Deviations{-52, 0}));
    EXPECT_EQ(deviations(25, "P8"), (Deviations{-55, -22}));
    EXPECT_EQ(deviations(2, "K7"), (Deviations{-10, 0}));
    EXPECT_EQ(deviations(2, "N7"), (Deviations{-14, -4}));
    EXPECT_EQ(deviations(2, "P7"), (Deviations{-16, -6}));
    EXPECT_EQ(deviations(2, "N9"), (Deviations{-29, -4}));
}

// ISO 286-1: k has its deviation up to IT7 only.
TEST(Fits, AShaftKBeginsAtTheNominalSizeFromIt8On) {
    EXPECT_EQ(deviations(25, "k7"), (Deviations{2, 23}));
    EXPECT_EQ(deviations(25, "k8"), (Deviations{0, 33}));
}

class WorkedFits : public ::testing::TestWithParam<Worked> {};

TEST_P(WorkedFits, AgreeToTheMicrometre) {
    const Worked& row = GetParam();
    const Fit fit = parseFit(row.fit, "fit").value();
    EXPECT_EQ(fit.holeDeviations, row.hole);
    EXPECT_EQ(fit.shaftDeviations, row.shaft);
    EXPECT_EQ(fit.leastClearanceUm(), row.least);
    EXPECT_EQ(fit.mostClearanceUm(), row.most);
    EXPECT_EQ(fit.kind(), row.kind);
}

// Worked fits of hole basis (ISO286-24 to ISO286-34).
INSTANTIATE_TEST_SUITE_P(
    Iso286, WorkedFits,
    ::testing::Values(Worked{"ISO286-24", "25 H7/g6", {0, 21}, {-20, -7}, 7, 41, FitKind::Clearance},
                      Worked{"ISO286-25", "25 H7/p6", {0, 21}, {22, 35}, -35, -1, FitKind::Interference},
                      Worked{"ISO286-26", "40 H7/p6", {0, 25}, {26, 42}, -42, -1, FitKind::Interference},
                      Worked{"ISO286-27", "50 H7/g6", {0, 25}, {-25, -9}, 9, 50, FitKind::Clearance},
                      Worked{"ISO286-28", "50 H7/p6", {0, 25}, {26, 42}, -42, -1, FitKind::Interference},
                      Worked{"ISO286-29", "40 H7/k6", {0, 25}, {2, 18}, -18, 23, FitKind::Transition},
                      Worked{"ISO286-30", "30 H7/n6", {0, 21}, {15, 28}, -28, 6, FitKind::Transition},
                      Worked{"ISO286-31", "12 H7/h6", {0, 18}, {-11, 0}, 0, 29, FitKind::Clearance},
                      Worked{"ISO286-33", "8 H7/g6", {0, 15}, {-14, -5}, 5, 29, FitKind::Clearance},
                      Worked{"ISO286-34", "60 H7/f7", {0, 30}, {-60, -30}, 30, 90, FitKind::Clearance}));

// ISO 286 example (ISO286-24).
TEST(Fits, LimitsAreSizes) {
    const Fit fit = parseFit("25 H7/g6", "fit").value();
    EXPECT_NEAR(fit.holeMm().least, 25.000, 1e-9);
    EXPECT_NEAR(fit.holeMm().most, 25.021, 1e-9);
    EXPECT_NEAR(fit.shaftMm().least, 24.980, 1e-9);
    EXPECT_NEAR(fit.shaftMm().most, 24.993, 1e-9);
}

TEST(Fits, AreReadAsTheyAreWritten) {
    for (const char* text : {"25 H7/g6", "25H7/g6", " 25.0  H7 / g6 "})
        EXPECT_EQ(parseFit(text, "fit").value().mostClearanceUm(), 41) << text;
    EXPECT_EQ(nameOf(FitKind::Clearance), "clearance");
    EXPECT_EQ(nameOf(FitKind::Transition), "transition");
    EXPECT_EQ(nameOf(FitKind::Interference), "interference");
}

TEST(Fits, RefuseWhatTheTablesLack) {
    EXPECT_EQ(refusalOf("121 H7/g6"), "fit: found a size of 121 mm; allowed: above 0 and up to 120 mm");
    EXPECT_EQ(refusalOf("0 H7/g6"), "fit: found a size of 0 mm; allowed: above 0 and up to 120 mm");
    EXPECT_EQ(refusalOf("25 H12/g6"), "fit: found H12; allowed: a grade from 5 to 11");
    EXPECT_EQ(refusalOf("25 S7/h6"),
              "fit: found S7; allowed: a hole H, K, N or P, or a shaft e, f, g, h, k, m, n or p");
    EXPECT_EQ(refusalOf("25 K5/h6"), "fit: found K5; allowed: grade 6 or above for a hole K, N or P");
    EXPECT_EQ(refusalOf("25 K9/h6"), "fit: found K9; allowed: grade 6, 7 or 8 for a hole K");
    EXPECT_EQ(toleranceUm(25, 4, "it").errors().front().allowed, "IT5 to IT11");
}

TEST(Fits, RefuseWhatIsNoFit) {
    for (const char* text :
         {"", "25", "25 H7", "H7/g6", "25 g6/H7", "25 H7/H6", "25 H7/g6/", "25 H/g6", "25 H07/g6", "25 7H/g6",
          "nan H7/g6", "inf H7/g6", "-25 H7/g6", "25,0 H7/g6", "25 H7/"})
        EXPECT_NE(refusalOf(text), "taken") << text;
}

// From memory (ISO286-36): the kind follows from the two clearances.
RC_GTEST_PROP(Fits, TheKindFollowsFromTheClearances, ()) {
    const double size = *rc::gen::inRange(1, 120'001) / 1000.0;
    const std::string hole = *rc::gen::elementOf(std::vector<std::string>{"H6", "H7", "K7", "N8", "P7"});
    const std::string shaft =
        *rc::gen::elementOf(std::vector<std::string>{"e8", "f7", "g6", "h6", "k6", "m6", "p6"});
    const Fit fit = parseFit(std::to_string(size) + " " + hole + "/" + shaft, "fit").value();
    RC_ASSERT(fit.leastClearanceUm() <= fit.mostClearanceUm());
    RC_ASSERT((fit.kind() == FitKind::Interference) == (fit.mostClearanceUm() <= 0));
    RC_ASSERT((fit.kind() == FitKind::Clearance) ==
              (fit.mostClearanceUm() > 0 && fit.leastClearanceUm() >= 0));
    RC_ASSERT(fit.holeMm().least <= fit.holeMm().most && fit.shaftMm().least <= fit.shaftMm().most);
}

} // namespace gapwise::test
