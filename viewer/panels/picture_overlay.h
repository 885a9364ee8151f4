#pragma once

#include "viewer/panels/area.h"
#include "viewer/panels/fonts.h"

#include <string>
#include <string_view>
#include <vector>

namespace gapwise {

/// What stands over the 3D picture, in pixels of the window. Whoever knows the camera places it.

enum class PictureWord {
    End,      ///< TURBINE, COMPRESSOR.
    Port,     ///< inlet, drain.
    Part,     ///< Id of a part.
    Broken,   ///< In a box with a cross.
    NotKnown, ///< In a box with a question mark.
    Bench,    ///< What the bench says of itself.
    Seat,     ///< The part that a seat is meant for.
    Hour      ///< On the dial at a ring.
};

struct PicturePlace {
    double x = 0.0;
    double y = 0.0;
};

struct PictureLabel {
    PictureWord kind = PictureWord::Part;
    std::string words{};
    Area box{};
    bool leader = false; ///< A line from `from`, at the box, to `to`, at what it speaks of.
    bool dashed = false; ///< What it speaks of is out of sight.
    PicturePlace from{};
    PicturePlace to{};
};

struct PictureLine {
    enum class Kind {
        Dial,   ///< The circle round a ring and its hours.
        Seat,   ///< Where the part in hand may be dropped.
        Window, ///< What a rule demands.
        Gap,    ///< Where the index points.
        Turn    ///< The way a wrench turns.
    };
    Kind kind = Kind::Dial;
    std::vector<PicturePlace> points{};
};

struct PictureOverlay {
    std::vector<PictureLine> lines{};
    std::vector<PictureLabel> labels{};
};

/// The size of a label's box.
struct LabelExtent {
    double width = 0.0;
    double height = 0.0;
};
LabelExtent extentOf(PictureWord kind, std::string_view words, const Fonts& fonts, double uiScale);

} // namespace gapwise
