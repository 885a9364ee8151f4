#include "viewer/panels/card_frame.h"

namespace gapwise {

Area drawCardFrame(const Area& area, const Surface& surface) {
    fillArea(area, palette::kSheet, surface.px(8.0));
    frameArea(area, palette::kAccent, surface.px(8.0), 1.5);
    return area.inset(surface.px(12.0));
}

ImFont* wordFont(const Surface& surface) {
    return surface.bench ? surface.fonts().large : surface.fonts().body;
}

std::optional<Wish> byWhoWorks(const Job& job, Event event, Drafts& drafts) {
    if (job.use == Use::Bench && !job.state.person) {
        drafts.box = Drafts::Box::Who;
        return std::nullopt;
    }
    return Act{std::move(event)};
}

} // namespace gapwise
