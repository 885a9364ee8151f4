#pragma once

#include "viewer/panels/draw.h"
#include "viewer/panels/plots.h"

#include <string>
#include <string_view>
#include <vector>

namespace gapwise {

/// Strokes that the drawings of measured values share.

void drawLine(ImVec2 from, ImVec2 to, const Stroke& stroke);
void drawDashedLine(ImVec2 from, ImVec2 to, const Stroke& stroke, double dash);
/// A line with a filled tip of `tip` pixels at `to`.
void drawArrow(ImVec2 from, ImVec2 to, const Stroke& stroke, double tip);
/// Slanting lines over an area, as a cut through material is drawn; they do not leave it.
struct Hatching {
    ImU32 colour = palette::kSteel;
    double spacing = 6.0;
    bool falling = false; ///< `\` instead of `/`.
};
void drawHatching(const Area& area, const Hatching& hatching);

/// Words around a point, moved so far that they stay inside `keep`; returns where they stand.
Area writeAround(ImVec2 middle, std::string_view words, const Type& type, const Area& keep);

/// A label of a row, wanted in the middle over a pixel.
struct RowLabel {
    double at = 0.0;
    std::string words{};
    Type type{};
};
/// Labels beside each other in one row: pushed apart and kept inside; what finds no room at all is left out,
/// the last first.
void writeRow(std::vector<RowLabel> labels, const Area& row, double gap);

/// What a value of a quantity would be held to be, for the ground of a bar.
enum class Zone { Free, Fresh, Between, Beyond };
struct ZoneSpan {
    Zone zone = Zone::Free;
    double least = 0.0;
    double most = 0.0;
};
/// The zones of a scale from left to right, neighbours differ.
std::vector<ZoneSpan> zonesOf(const Window& fresh, const Window& service, const Scale& scale);

/// A scale over all that a bar shows, with some room at its ends.
Scale scaleOf(const LimitBar& bar, double from, double to);

/// Draws the zones as a band of that height.
void drawZones(const std::vector<ZoneSpan>& zones, const Scale& scale, const Area& band);

} // namespace gapwise
