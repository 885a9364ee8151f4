#include "models/gauging/fits.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <optional>
#include <utility>

namespace gapwise {

namespace {

constexpr int kLeastGrade = 5;
constexpr int kMostGrade = 11;
constexpr std::string_view kHoles = "HKNP";
constexpr std::string_view kShafts = "efghkmnp";

/// One step of sizes: over the step before it, up to and including its end.
struct SizeStep {
    double upToMm = 0.0;
    std::array<int, 7> toleranceUm{}; ///< IT5 … IT11, ISO 286-1 table 1.
    std::array<int, 3> upperUm{};     ///< Shafts e, f, g: upper deviation.
    std::array<int, 4> lowerUm{};     ///< Shafts k (IT4 to IT7 only), m, n, p: lower deviation.
};

/// ISO 286-1 tables 1, 4 and 5. From memory: the first row, the tolerances over 18 to 30 other than IT6 and
/// IT7, and the deviations over 80 to 120.
constexpr std::array kSteps{
    SizeStep{3.0, {4, 6, 10, 14, 25, 40, 60}, {-14, -6, -2}, {0, 2, 4, 6}},
    SizeStep{6.0, {5, 8, 12, 18, 30, 48, 75}, {-20, -10, -4}, {1, 4, 8, 12}},
    SizeStep{10.0, {6, 9, 15, 22, 36, 58, 90}, {-25, -13, -5}, {1, 6, 10, 15}},
    SizeStep{18.0, {8, 11, 18, 27, 43, 70, 110}, {-32, -16, -6}, {1, 7, 12, 18}},
    SizeStep{30.0, {9, 13, 21, 33, 52, 84, 130}, {-40, -20, -7}, {2, 8, 15, 22}},
    SizeStep{50.0, {11, 16, 25, 39, 62, 100, 160}, {-50, -25, -9}, {2, 9, 17, 26}},
    SizeStep{80.0, {13, 19, 30, 46, 74, 120, 190}, {-60, -30, -10}, {2, 11, 20, 32}},
    SizeStep{120.0, {15, 22, 35, 54, 87, 140, 220}, {-72, -36, -12}, {3, 13, 23, 37}}};

Result<SizeStep> stepOf(double sizeMm, std::string_view where) {
    const auto* const step =
        std::ranges::find_if(kSteps, [=](const SizeStep& s) { return sizeMm <= s.upToMm; });
    if (!(sizeMm > 0.0) || step == kSteps.end())
        return Error{std::string{where}, fmt::format("a size of {} mm", sizeMm),
                     fmt::format("above 0 and up to {} mm", kSteps.back().upToMm)};
    return *step;
}

int toleranceOf(const SizeStep& step, int grade) {
    return step.toleranceUm.at(static_cast<std::size_t>(grade - kLeastGrade));
}

/// Lower deviation of k, m, n or p as the table has it.
int lowerOf(const SizeStep& step, char letter) {
    return step.lowerUm.at(std::string_view{"kmnp"}.find(letter));
}

Deviations shaftDeviations(const SizeStep& step, const ToleranceClass& shaft) {
    const int width = toleranceOf(step, shaft.grade);
    if (shaft.letter == 'h')
        return {-width, 0};
    const std::size_t clear = std::string_view{"efg"}.find(shaft.letter);
    if (clear != std::string_view::npos)
        return {step.upperUm.at(clear) - width, step.upperUm.at(clear)};
    // The table's k ends at IT7; from IT8 on it begins at the nominal size.
    const int lower = shaft.letter == 'k' && shaft.grade > 7 ? 0 : lowerOf(step, shaft.letter);
    return {lower, lower + width};
}

/// What ISO 286-1 adds to the mirrored shaft for a hole K or N up to IT8 and P up to IT7, above 3 mm.
int holeCorrection(const SizeStep& step, const ToleranceClass& hole) {
    const bool corrected = hole.grade <= (hole.letter == 'P' ? 7 : 8);
    if (!corrected || step.upToMm <= 3.0)
        return 0;
    return toleranceOf(step, hole.grade) - toleranceOf(step, hole.grade - 1);
}

Deviations holeDeviations(const SizeStep& step, const ToleranceClass& hole) {
    const int width = toleranceOf(step, hole.grade);
    if (hole.letter == 'H')
        return {0, width};
    // N has its upper deviation at 0 from IT9 on, above 3 mm.
    if (hole.letter == 'N' && hole.grade > 8 && step.upToMm > 3.0)
        return {-width, 0};
    const char shaft = static_cast<char>(hole.letter - 'A' + 'a');
    const int upper = holeCorrection(step, hole) - lowerOf(step, shaft);
    return {upper - width, upper};
}

std::string_view lettersOf(const ToleranceClass& tolerance) {
    return tolerance.hole() ? kHoles : kShafts;
}

std::string textOf(const ToleranceClass& tolerance) {
    return fmt::format("{}{}", tolerance.letter, tolerance.grade);
}

/// Nothing, or what keeps a class out of the tables.
std::optional<Error> classError(const ToleranceClass& tolerance, std::string_view where) {
    const auto refuse = [&](std::string allowed) {
        return Error{std::string{where}, textOf(tolerance), std::move(allowed)};
    };
    if (lettersOf(tolerance).find(tolerance.letter) == std::string_view::npos)
        return refuse("a hole H, K, N or P, or a shaft e, f, g, h, k, m, n or p");
    if (tolerance.grade < kLeastGrade || tolerance.grade > kMostGrade)
        return refuse(fmt::format("a grade from {} to {}", kLeastGrade, kMostGrade));
    // Their correction takes the grade below, and K ends where its shaft does.
    if (tolerance.hole() && tolerance.letter != 'H' && tolerance.grade == kLeastGrade)
        return refuse("grade 6 or above for a hole K, N or P");
    if (tolerance.letter == 'K' && tolerance.grade > 8)
        return refuse("grade 6, 7 or 8 for a hole K");
    return std::nullopt;
}

std::string_view withoutBlanks(std::string_view text) {
    const std::size_t first = text.find_first_not_of(' ');
    if (first == std::string_view::npos)
        return {};
    return text.substr(first, text.find_last_not_of(' ') - first + 1);
}

} // namespace

Result<ToleranceClass> parseToleranceClass(std::string_view text, std::string_view where) {
    const Error error{std::string{where}, fmt::format("\"{}\"", text),
                      "a letter and a grade from 5 to 11, such as H7 or g6"};
    if (text.size() < 2 || text[1] == '0')
        return error;
    ToleranceClass tolerance{.letter = text.front(), .grade = 0};
    const char* const end = text.data() + text.size();
    const auto [rest, problem] = std::from_chars(text.data() + 1, end, tolerance.grade);
    if (problem != std::errc{} || rest != end)
        return error;
    if (std::optional<Error> refused = classError(tolerance, where))
        return *std::move(refused);
    return tolerance;
}

Result<int> toleranceUm(double sizeMm, int grade, std::string_view where) {
    if (grade < kLeastGrade || grade > kMostGrade)
        return Error{std::string{where}, fmt::format("IT{}", grade),
                     fmt::format("IT{} to IT{}", kLeastGrade, kMostGrade)};
    const Result<SizeStep> step = stepOf(sizeMm, where);
    if (!step)
        return step.errors();
    return toleranceOf(*step, grade);
}

Result<Deviations> deviationsOf(double sizeMm, const ToleranceClass& tolerance, std::string_view where) {
    if (std::optional<Error> refused = classError(tolerance, where))
        return *std::move(refused);
    const Result<SizeStep> step = stepOf(sizeMm, where);
    if (!step)
        return step.errors();
    return tolerance.hole() ? holeDeviations(*step, tolerance) : shaftDeviations(*step, tolerance);
}

Band limitsOf(double sizeMm, const Deviations& deviations) {
    return {sizeMm + deviations.lowerUm / 1000.0, sizeMm + deviations.upperUm / 1000.0};
}

std::string_view nameOf(FitKind kind) {
    switch (kind) {
    case FitKind::Clearance: return "clearance";
    case FitKind::Transition: return "transition";
    case FitKind::Interference: return "interference";
    }
    return "";
}

FitKind Fit::kind() const {
    if (mostClearanceUm() <= 0)
        return FitKind::Interference;
    return leastClearanceUm() >= 0 ? FitKind::Clearance : FitKind::Transition;
}

Result<Fit> parseFit(std::string_view text, std::string_view where) {
    const Error error{std::string{where}, fmt::format("\"{}\"", text),
                      "a size in mm, a hole and a shaft, such as 25 H7/g6"};
    Fit fit;
    const std::string_view given = withoutBlanks(text);
    const char* const end = given.data() + given.size();
    const auto [rest, problem] = std::from_chars(given.data(), end, fit.sizeMm, std::chars_format::fixed);
    if (problem != std::errc{} || !std::isfinite(fit.sizeMm))
        return error;
    const std::string_view classes = withoutBlanks({rest, static_cast<std::size_t>(end - rest)});
    const std::size_t slash = classes.find('/');
    if (slash == std::string_view::npos)
        return error;
    const auto hole = parseToleranceClass(withoutBlanks(classes.substr(0, slash)), where);
    const auto shaft = parseToleranceClass(withoutBlanks(classes.substr(slash + 1)), where);
    if (!hole || !shaft)
        return hole ? shaft.errors() : hole.errors();
    if (!hole->hole() || shaft->hole())
        return error;
    const auto holeDeviations = deviationsOf(fit.sizeMm, *hole, where);
    const auto shaftDeviations = deviationsOf(fit.sizeMm, *shaft, where);
    if (!holeDeviations || !shaftDeviations)
        return holeDeviations ? shaftDeviations.errors() : holeDeviations.errors();
    return Fit{fit.sizeMm, *hole, *shaft, *holeDeviations, *shaftDeviations};
}

} // namespace gapwise
