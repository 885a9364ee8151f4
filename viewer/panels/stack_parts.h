#pragma once

#include "models/access/outline.h"
#include "viewer/panels/stack_axis.h"
#include "viewer/panels/stack_drawing.h"

#include <optional>
#include <vector>

namespace gapwise {

/// What a section drawing shows of the machine, in millimetres.

/// Slices of one curve that follow each other in a part's slabs.
struct StackCurve {
    std::size_t first = 0;
    std::size_t count = 0;
    bool blades = false; ///< What blades sweep: it is not cut.
};

/// A part in the section.
struct StackPart {
    const Part* part = nullptr;
    std::vector<Slab> slabs{};
    std::vector<StackCurve> curves{};
    bool turning = false; ///< It moves with the rotor.
    bool told = false;    ///< One of its dimensions is a link of the chain.
};

/// A face that only a station names: its part has no shape in the frame.
struct BareFace {
    std::string name{};
    double z = 0.0;
    bool toCompressor = true; ///< Its material lies to this side.
};

struct StackScene {
    std::vector<StackPart> parts{}; ///< What is drawn first, first.
    std::vector<BareFace> bareFaces{};
    double from = 0.0;   ///< Where the section begins …
    double to = 0.0;     ///< … and ends, mm.
    double radius = 0.0; ///< Beyond this, in mm, it is broken off.
    std::vector<double> faces{};
};

/// The stations that the chain leads through, the rotor pushed to its side.
const std::map<StationId, double>& stationsOf(const StackDrawing& drawing);
std::optional<double> stationOf(const StackDrawing& drawing, const StationId& station);

/// Nothing when the chain does not lie along the shaft.
std::optional<StackScene> stackScene(const StackDrawing& drawing);

/// Name of the part that a station belongs to, in words: `COLLAR-B`.
std::string partNameOf(const StationId& station);
/// What of it: `running face`.
std::string faceNameOf(const StationId& station);

/// For a chain of diameters: outward from the axis.
void drawDiameters(const StackDrawing& drawing, const Area& area, const Surface& surface);
/// For a chain of lengths that nothing ties to the datum: its parts one over the other.
void drawLengths(const StackDrawing& drawing, const Area& area, const Surface& surface);
/// Whether a dimension is a diameter, from the axis outward.
bool isDiameter(const Dimension& dimension);

/// One link in words: `−t_T 4.996 ± 0.003`.
std::string linkWords(const LinkShare& link);

} // namespace gapwise
