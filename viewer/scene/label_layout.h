#pragma once

#include "viewer/scene/camera.h"

#include <vector>

namespace gapwise {

/// A text that wants a place near what it speaks of.
struct LabelRequest {
    double width = 0.0; ///< Of the text with its margins, in pixels.
    double height = 0.0;
    PictureArea about{}; ///< What it speaks of, as it appears in the picture.
    Spot upper{};        ///< Where a leader from above ends,
    Spot lower{};        ///< and one from below.
    enum class Prefers { Either, Above, Below } prefers = Prefers::Either;
    enum class Aside { Either, Left, Right } aside = Aside::Either; ///< Where it may move to for room.
};

/// Where a text stands and what its leader connects; both ends equal when it needs none.
struct PlacedLabel {
    PictureArea box{};
    Spot leaderStart{}; ///< At the box.
    Spot leaderEnd{};   ///< At what it speaks of.
};

struct LabelRoom {
    PictureArea inside{};                 ///< No text leaves this.
    std::vector<PictureArea> obstacles{}; ///< What texts had better not cover.
    double unit = 1.0;                    ///< Pixels of one unit: gaps and tiers grow with it.
};

/// Places texts in the order given, near what they speak of, above or below it: never one over another and
/// never outside the room; rather beside than on an obstacle; leaders run through no text and cross no other
/// while there is another way. A text for which no place is left has an empty box.
std::vector<PlacedLabel> placeLabels(const std::vector<LabelRequest>& requests, const LabelRoom& room);

} // namespace gapwise
