#include "viewer/panels/layout.h"

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

/// Heights of the bands and the space between them, in layout pixels.
struct Bands {
    double banner = 56.0;
    double looks = 84.0;
    double notices = 44.0;
    double tray = 78.0;
    double line = 104.0;
    double strip = 30.0; ///< The line while the card is open.
    double card = 224.0;
    double slider = 44.0; ///< Width.
    double cut = 56.0;    ///< Width.
    double gap = 8.0;
};

Bands bandsOf(const LayoutFor& wanted) {
    if (!wanted.bench) {
        Bands bands;
        bands.card = wanted.tallCard ? 288.0 : bands.card;
        return bands;
    }
    return {.banner = 90.0,
            .looks = 128.0,
            .notices = wanted.cardOpen ? 0.0 : 60.0,
            .tray = 88.0,
            .line = 104.0,
            .strip = 30.0,
            .card = wanted.tallCard ? 308.0 : 262.0,
            .slider = 60.0,
            .cut = 62.0,
            .gap = 8.0};
}

/// The layout in layout pixels, for a window of that many layout pixels.
class Builder {
public:
    Builder(double width, double height, const LayoutFor& wanted)
        : width_{width}, height_{height}, wanted_{wanted}, bands_{bandsOf(wanted)} {}

    Layout build() const {
        Layout layout;
        layout.banner = {0.0, 0.0, width_, bands_.banner};
        const double upperEnd = addBottom(layout);
        addUpper(layout, bands_.banner + bands_.gap, upperEnd);
        return layout;
    }

private:
    /// Tray and line, or the card over them; returns where they begin.
    double addBottom(Layout& layout) const {
        const double lineHeight = wanted_.cardOpen ? bands_.strip : bands_.line;
        layout.line = {0.0, height_ - lineHeight, width_, lineHeight};
        Area& above = wanted_.cardOpen ? layout.card : layout.tray;
        const double aboveHeight = wanted_.cardOpen ? bands_.card : bands_.tray;
        above = {bands_.gap, layout.line.y - aboveHeight, width_ - 2.0 * bands_.gap, aboveHeight};
        return above.y - bands_.gap;
    }

    void addUpper(Layout& layout, double from, double to) const {
        const double column = std::clamp(std::floor(width_ * 0.22), 270.0, 400.0);
        Area middle{bands_.gap, from, width_ - 2.0 * bands_.gap, to - from};
        if (!wanted_.bothEnds) {
            layout.turbineDial = {bands_.gap, from, column, to - from};
            layout.compressorDial = {width_ - bands_.gap - column, from, column, to - from};
            middle.x += column + bands_.gap;
            middle.width -= 2.0 * (column + bands_.gap);
        }
        layout.looks = {middle.x, middle.y, middle.width, bands_.looks};
        double end = to;
        if (bands_.notices > 0.0) {
            layout.notices = {middle.x, to - bands_.notices, middle.width, bands_.notices};
            end = layout.notices.y - bands_.gap;
        }
        const double top = layout.looks.bottom() + bands_.gap;
        layout.pullApart = {middle.right() - bands_.slider, top, bands_.slider, end - top};
        layout.cutOpen = {middle.x, top, bands_.cut, end - top};
        const double left = layout.cutOpen.right() + bands_.gap;
        layout.picture = {left, top, layout.pullApart.x - bands_.gap - left, end - top};
    }

    double width_;
    double height_;
    const LayoutFor& wanted_;
    Bands bands_;
};

Area scaled(const Area& area, double scale) {
    const double x = std::round(area.x * scale);
    const double y = std::round(area.y * scale);
    return {x, y, std::round(area.right() * scale) - x, std::round(area.bottom() * scale) - y};
}

} // namespace

Layout layoutOf(const LayoutFor& wanted) {
    const double scale = std::max(wanted.uiScale, 0.1);
    Layout layout = Builder{wanted.width / scale, wanted.height / scale, wanted}.build();
    for (Area* area :
         {&layout.banner, &layout.turbineDial, &layout.compressorDial, &layout.looks, &layout.picture,
          &layout.cutOpen, &layout.pullApart, &layout.notices, &layout.tray, &layout.card, &layout.line})
        *area = scaled(*area, scale);
    return layout;
}

double suggestedScale(double width, double height) {
    const double fits = std::min(width / kLayoutWidth, height / kLayoutHeight);
    return std::max(1.0, std::floor(fits * 8.0) / 8.0);
}

double targetSize(const LayoutFor& wanted) {
    constexpr double kGloveMm = 15.0;
    if (!wanted.bench)
        return 36.0 * wanted.uiScale;
    return std::max(60.0 * wanted.uiScale, kGloveMm * wanted.pixelsPerMm);
}

} // namespace gapwise
