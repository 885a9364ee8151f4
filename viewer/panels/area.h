#pragma once

namespace gapwise {

/// A rectangle of the window in pixels, from the window's upper left corner.
struct Area {
    double x = 0.0;
    double y = 0.0;
    double width = 0.0;
    double height = 0.0;

    double right() const { return x + width; }
    double bottom() const { return y + height; }
    double middleX() const { return x + width / 2.0; }
    double middleY() const { return y + height / 2.0; }
    bool empty() const { return width <= 0.0 || height <= 0.0; }

    /// The left and upper borders belong to it.
    bool contains(double px, double py) const { return px >= x && px < right() && py >= y && py < bottom(); }
    /// The same rectangle, smaller by `by` on every side.
    Area inset(double by) const { return {x + by, y + by, width - 2.0 * by, height - 2.0 * by}; }

    bool operator==(const Area&) const = default;
};

} // namespace gapwise
