#include "viewer/panels/stack_axis.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace gapwise {

namespace {

constexpr double kSameFaceMm = 1e-3;
constexpr double kLongestMm = 9.0; ///< Beyond this a length is drawn no longer.
constexpr double kFocus = 3.0;     ///< How much more room the faces of the chain get.

/// Rising, each face once: what lies within a thousandth is one face.
std::vector<double> distinct(std::vector<double> faces) {
    std::ranges::sort(faces);
    std::vector<double> kept;
    for (const double face : faces)
        if (kept.empty() || face - kept.back() > kSameFaceMm)
            kept.push_back(face);
    return kept;
}

/// Even the shortest length is seen, and a long one takes less than its share.
double weightOf(double length) {
    return 0.5 + std::pow(std::min(length, kLongestMm), 0.75);
}

} // namespace

StackAxis::StackAxis(const Faces& faces, const Gap& gap, const Line& line) : faces_{distinct(faces.all)} {
    assert(faces_.size() >= 2);
    const double gapFrom = std::min(gap.from, gap.to) - kSameFaceMm;
    const double gapTo = std::max(gap.from, gap.to) + kSameFaceMm;
    const double focusFrom = std::min(faces.focusFrom, faces.focusTo) - kSameFaceMm;
    const double focusTo = std::max(faces.focusFrom, faces.focusTo) + kSameFaceMm;
    std::vector<double> weights;
    std::vector<bool> inGap;
    double total = 0.0;
    double gapLength = 0.0;
    for (std::size_t i = 0; i + 1 < faces_.size(); ++i) {
        const double length = faces_[i + 1] - faces_[i];
        inGap.push_back(faces_[i] >= gapFrom && faces_[i + 1] <= gapTo);
        const bool focus = faces_[i] >= focusFrom && faces_[i + 1] <= focusTo;
        weights.push_back(inGap.back() ? length : weightOf(length) * (focus ? kFocus : 1.0));
        (inGap.back() ? gapLength : total) += weights.back();
    }
    const double whole = line.to - line.from;
    const double gapPixels = gapLength > 0.0 ? std::min(gap.pixels, whole * 0.5) : 0.0;
    const double perWeight = total > 0.0 ? (whole - gapPixels) / total : 0.0;
    pixels_.push_back(line.from);
    for (std::size_t i = 0; i < weights.size(); ++i)
        pixels_.push_back(pixels_.back() +
                          (inGap[i] ? weights[i] / gapLength * gapPixels : weights[i] * perWeight));
}

double StackAxis::at(double z) const {
    const auto next = std::ranges::upper_bound(faces_, z);
    if (next == faces_.begin())
        return pixels_.front();
    if (next == faces_.end())
        return pixels_.back();
    const auto i = static_cast<std::size_t>(next - faces_.begin());
    const double share = (z - faces_[i - 1]) / (faces_[i] - faces_[i - 1]);
    return pixels_[i - 1] + share * (pixels_[i] - pixels_[i - 1]);
}

} // namespace gapwise
