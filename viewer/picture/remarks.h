#pragma once

#include "viewer/picture/paper.h"
#include "viewer/scene/view_words.h"

#include <string>

namespace gapwise {

/// What a picture says beside the labels at the parts.
struct Remarks {
    ViewWords view{};
    std::string subject{}; ///< Frame and build, and how it is shown.
    std::string notice{};  ///< Of a practice frame; empty for a frame for work.
};

/// What every picture ends with.
inline constexpr const char* kNoApproval =
    "Consistent with the loaded rules is not approval: the maker's manual and local codes prevail";

/// Where things go in a picture of some size.
struct PictureLayout {
    double unit = 1.0; ///< Pixels of one unit; 1 in a picture of 1600 × 900.
    double bannerHeight = 0.0;
    double footerHeight = 0.0;
    PictureArea content{}; ///< For what is looked at.
    PictureArea labels{};  ///< For texts at parts.
};

/// Pixels of one unit in a picture of this size: texts and lines grow with the picture, and stay readable in
/// a small one.
double unitOf(const PictureSize& size);

/// Writes the banner and the footer, and says what room they leave.
PictureLayout writeRemarks(Paper& paper, const PictureSize& size, const Remarks& remarks);

/// The room that the remarks will leave, without writing them.
PictureLayout layoutFor(const PictureSize& size, const Remarks& remarks);

} // namespace gapwise
