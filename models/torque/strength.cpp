#include "models/torque/strength.h"

#include <fmt/format.h>

#include <cmath>

namespace gapwise {

namespace {

/// Up to this diameter class 8.8 has its lower values, and class 9.8 is made.
constexpr double kStepMm = 16.0;

struct PrintedLoad {
    PropertyClass property = PropertyClass::P88;
    double diameterMm = 0.0;
    double pitchMm = 0.0;
    double loadKn = 0.0;
};

/// Where ISO 898-1 table 5 prints another proof load than the rounded product; M3.5 to M5 from memory.
constexpr std::array kPrintedOtherwise{
    PrintedLoad{PropertyClass::P88, 3.5, 0.6, 3.94},  PrintedLoad{PropertyClass::P88, 4.0, 0.7, 5.1},
    PrintedLoad{PropertyClass::P88, 5.0, 0.8, 8.23},  PrintedLoad{PropertyClass::P88, 6.0, 1.0, 11.6},
    PrintedLoad{PropertyClass::P88, 10.0, 1.5, 33.7}, PrintedLoad{PropertyClass::P88, 16.0, 2.0, 91.0}};

double toThreeFigures(double value) {
    const double unit = std::pow(10.0, std::floor(std::log10(value)) - 2.0);
    return std::round(value / unit) * unit;
}

} // namespace

std::string_view nameOf(PropertyClass property) {
    switch (property) {
    case PropertyClass::P88: return "8.8";
    case PropertyClass::P98: return "9.8";
    case PropertyClass::P109: return "10.9";
    case PropertyClass::P129: return "12.9";
    }
    return "";
}

Result<PropertyClass> parsePropertyClass(std::string_view text, std::string_view where) {
    for (const PropertyClass property : kPropertyClasses)
        if (nameOf(property) == text)
            return property;
    return Error{.where = std::string{where},
                 .found = fmt::format("\"{}\"", text),
                 .allowed = "8.8, 9.8, 10.9 or 12.9"};
}

bool isMade(PropertyClass property, double diameterMm) {
    return property != PropertyClass::P98 || diameterMm <= kStepMm;
}

double proofStressMpa(PropertyClass property, double diameterMm) {
    switch (property) {
    case PropertyClass::P88: return diameterMm <= kStepMm ? 580.0 : 600.0;
    case PropertyClass::P98: return 650.0;
    case PropertyClass::P109: return 830.0;
    case PropertyClass::P129: return 970.0;
    }
    return 0.0;
}

double leastTensileStrengthMpa(PropertyClass property, double diameterMm) {
    switch (property) {
    case PropertyClass::P88: return diameterMm <= kStepMm ? 800.0 : 830.0;
    case PropertyClass::P98: return 900.0;
    case PropertyClass::P109: return 1040.0;
    case PropertyClass::P129: return 1220.0;
    }
    return 0.0;
}

double yieldStressMpa(PropertyClass property, double diameterMm) {
    switch (property) {
    case PropertyClass::P88: return diameterMm <= kStepMm ? 640.0 : 660.0;
    case PropertyClass::P98: return 720.0;
    case PropertyClass::P109: return 940.0;
    case PropertyClass::P129: return 1100.0;
    }
    return 0.0;
}

double proofLoadKn(PropertyClass property, const MetricThread& thread) {
    for (const PrintedLoad& printed : kPrintedOtherwise)
        if (printed.property == property && printed.diameterMm == thread.diameterMm &&
            printed.pitchMm == thread.pitchMm)
            return printed.loadKn;
    const double areaMm2 = toThreeFigures(sizesOf(thread).stressAreaMm2);
    return toThreeFigures(areaMm2 * proofStressMpa(property, thread.diameterMm) / 1000.0);
}

double proofLoadUse(double forceKn, PropertyClass property, const MetricThread& thread) {
    return forceKn / proofLoadKn(property, thread);
}

double stressMpa(double forceKn, const MetricThread& thread) {
    return forceKn * 1000.0 / sizesOf(thread).stressAreaMm2;
}

} // namespace gapwise
