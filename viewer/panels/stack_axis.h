#pragma once

#include <vector>

namespace gapwise {

/// A shaft drawn so that what is told of it can be read: long plain lengths are shortened, short ones and
/// the gap are drawn far too long, the order of all faces stays.
class StackAxis {
public:
    struct Gap {
        double from = 0.0; ///< mm, either end first.
        double to = 0.0;
        double pixels = 24.0; ///< As wide as it is drawn.
    };
    struct Line {
        double from = 0.0; ///< Pixels.
        double to = 1.0;
    };
    /// `faces` in mm, in any order, at least two that differ; those between `focus.from` and `focus.to` get
    /// more room.
    struct Faces {
        std::vector<double> all{};
        double focusFrom = 0.0;
        double focusTo = 0.0;
    };
    StackAxis(const Faces& faces, const Gap& gap, const Line& line);

    /// The pixel of a station; beyond the outermost faces the outermost pixel.
    double at(double z) const;
    double least() const { return faces_.front(); }
    double most() const { return faces_.back(); }

private:
    std::vector<double> faces_{};  ///< Rising, mm.
    std::vector<double> pixels_{}; ///< One a face.
};

} // namespace gapwise
