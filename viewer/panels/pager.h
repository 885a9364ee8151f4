#pragma once

#include "viewer/panels/surface.h"

namespace gapwise {

/// A row of equal places of which not all may fit: with a button to either side where more lie.
struct Page {
    std::size_t first = 0;
    std::size_t count = 0;
    Area row{}; ///< Between the buttons.

    Area place(std::size_t index, double gap) const {
        return columnOf(row, static_cast<int>(count), static_cast<int>(index - first), gap);
    }
};

/// What a row is to hold.
struct RowOf {
    std::size_t count = 0;
    double leastWidth = 60.0; ///< Of one place, in pixels.
    double mostWidth = 200.0;
    double scroll = 0.0; ///< First place wanted.
};

Page pageOf(const RowOf& wanted, const Area& area, const Surface& surface);

/// The buttons of a page; returns by how many places to scroll.
double pageButtons(const Page& page, const RowOf& wanted, const Area& area, const Surface& surface);

} // namespace gapwise
