#include "viewer/panels/card_frame.h"
#include "viewer/panels/measure_parts.h"

#include <algorithm>

namespace gapwise {

namespace {

using Page = MeasureDrafts::Page;

void keepLast(std::optional<Wish>& wish, std::optional<Wish> other) {
    if (other)
        wish = std::move(other);
}

/// The reading: entry, drawing, what it is held against.
std::optional<Wish> readPage(const MeasureWork& work, const Area& body, const Surface& surface) {
    const double gap = surface.px(14.0);
    const bool wide = work.quantity.fourPoint || work.job.frame.lever;
    const double free = body.width - 2.0 * gap;
    const Area entry{body.x, body.y, std::floor(free * 0.325), body.height};
    const Area drawing{entry.right() + gap, body.y, std::floor(free * (wide ? 0.3 : 0.26)), body.height};
    const Area held{drawing.right() + gap, body.y, body.right() - drawing.right() - gap, body.height};
    drawMeasured(work, drawing, surface);
    drawHeld(work, held, surface);
    return measureEntry(work, entry, surface);
}

std::optional<Wish> page(const MeasureWork& work, const Area& body, const Surface& surface) {
    switch (surface.drafts().measure.page) {
    case Page::Quantity: chooseQuantity(work, body, surface); return std::nullopt;
    case Page::Gauge: chooseGauge(work, body, surface); return std::nullopt;
    case Page::Method: chooseMethod(work, body, surface); return std::nullopt;
    case Page::Read: break;
    }
    return readPage(work, body, surface);
}

} // namespace

std::optional<Wish> measureCard(const Job& job, const MeasurementId& id, const Area& area,
                                const Surface& surface) {
    const Measurement* measurement = job.frame.measurement(id);
    if (!measurement || measurement->quantities.empty() || area.empty())
        return std::nullopt;
    const Scope scope{surface, "measure"};
    MeasureDrafts& drafts = surface.drafts().measure;
    turnTo(job, *measurement, drafts);
    const auto workNow = [&] { return measureWorkOf(job, *measurement, drafts, surface.frame.today); };
    const Area inner = drawCardFrame(area, surface);
    const double gap = surface.px(14.0);
    const double head = std::max(surface.bench ? surface.target : 0.0, surface.px(46.0));
    const double keys = 4.0 * std::max(surface.target, surface.px(60.0)) + 3.0 * surface.px(5.0);
    std::optional<Wish> wish = measureTyping(workNow(), surface);
    keepLast(wish, measureKeypad(workNow(), {inner.x, inner.y, keys, inner.height}, surface));
    const Area right{inner.x + keys + gap, inner.y, inner.width - keys - gap, inner.height};
    keepLast(wish, measureHead(workNow(), {right.x, right.y, right.width, head}, surface));
    const double top = head + surface.px(8.0);
    keepLast(wish, page(workNow(), {right.x, right.y + top, right.width, right.height - top}, surface));
    return wish;
}

} // namespace gapwise
