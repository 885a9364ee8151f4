#pragma once

#include "viewer/dial/dial.h"
#include "viewer/panels/surface.h"

namespace gapwise {

/// Drawing by clock: degrees clockwise from 12 around a centre in pixels.
struct Round {
    double x = 0.0;
    double y = 0.0;
    double radius = 0.0;

    /// The point at `clock` on `share` of the radius.
    ImVec2 at(Degrees clock, double share = 1.0) const;
    Round withRadius(double other) const { return {x, y, other}; }
};

/// The clock of a point, as seen from the centre of `round`.
Degrees clockOf(const Round& round, double px, double py);

struct Stroke {
    ImU32 colour = palette::kInk;
    double thickness = 1.0;
};

void drawArc(const Round& round, const Arc& arc, const Stroke& stroke);
void drawCircle(const Round& round, const Stroke& stroke);
/// Short strokes all round: a ring whose clock nobody set.
void drawDashedCircle(const Round& round, const Stroke& stroke);
/// A small filled triangle at `clock` on the radius, its tip outward or inward.
void drawPointer(const Round& round, Degrees clock, double size, ImU32 colour);
void drawInwardPointer(const Round& round, Degrees clock, double size, ImU32 colour);

/// The sign of a state in a disc of `radius` around a point.
void drawSign(DialSign sign, ImVec2 centre, double radius);
ImU32 colourOf(DialSign sign);

} // namespace gapwise
