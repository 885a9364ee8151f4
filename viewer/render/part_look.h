#pragma once

#include "viewer/render/renderer.h"

#include <array>

namespace gapwise {

/// What every way of drawing a picture agrees on: tints, hatching, stripes, widths of lines. Widths and
/// spacings are in pixels of the finished picture.

/// For what is in hand.
constexpr Colour kAccent{0.22, 0.56, 0.76};
/// How strongly edges of what is in hand shine through whatever hides them.
constexpr double kShiningThrough = 0.55;
/// How strong the ink of true edges is.
constexpr double kEdgeInk = 0.75;
/// Lines are drawn so much nearer to the eye than they lie: what they lie in does not hide them.
constexpr double kTowardEyePixels = 0.6;

std::array<float, 3> rgb(const Colour& colour);
std::array<float, 4> rgba(const Colour& colour, double alpha);

/// The colour of an item, which tells what is broken and what is in hand.
Colour tintOf(const SceneItem& item);

/// Square to the hatching of an item's cut faces, in the datum axes, as long as its lines are dense: 1 / mm.
std::array<float, 3> hatchAcross(const Shot& shot, const SceneItem& item);

double mmPerPixel(const Shot& shot);
double edgeWidth(const DrawStyle& style);
double outlineWidth(const DrawStyle& style);
double cutWidth(const DrawStyle& style);      ///< Of the borders of cut faces.
double stripeSpacing(const DrawStyle& style); ///< Where something is not known.

} // namespace gapwise
