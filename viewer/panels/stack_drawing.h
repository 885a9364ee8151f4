#pragma once

#include "viewer/panels/plots.h"

#include <map>

namespace gapwise {

/// A chain on the section of the machine.
struct StackDrawing {
    const Frame& frame;
    const Chain& chain;
    const Prediction& prediction;
    /// By drawing sizes, rotor toward either side (see StackNow).
    const std::map<StationId, double>& towardCompressor;
    const std::map<StationId, double>& towardTurbine;
};

/// The half section above the shaft's axis, drawn from the stations and the shapes of the parts: long plain
/// lengths shortened, the gap drawn far too wide. Below the axis the links of the chain as arrows in their
/// order, measured ones otherwise than drawing sizes, and the clearance that they leave. A chain of diameters
/// is drawn outward from the axis.
void drawStack(const StackDrawing& drawing, const Area& area, const Surface& surface);

/// The clearance of a chain enlarged, between the two faces that it lies between.
struct EnlargedGap {
    std::string fromName{}; ///< Of the face at the left …
    std::string toName{};   ///< … and at the right.
    double predicted = 0.0;
    double spread = 0.0; ///< ± root of the sum of squares.
    Window window{};
    std::optional<double> measured{};
    double expanded = 0.0;
};
EnlargedGap enlargedGap(const StackDrawing& drawing, const Window& window, const QuantityResult* result);
void drawEnlargedGap(const EnlargedGap& gap, const Area& area, const Surface& surface);

} // namespace gapwise
