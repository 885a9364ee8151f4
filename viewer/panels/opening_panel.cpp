#include "viewer/panels/opening.h"

#include "viewer/panels/banner_words.h"
#include "viewer/panels/parts.h"

#include "models/frame/notice.h"

#include <algorithm>
#include <string>

namespace gapwise {

namespace {

/// Where everything lies on the opening screen.
struct OpeningPlan {
    Area banner{};
    Area uses{};
    Area shelf{};
    Area jobs{};
    Area path{};
    Area notice{};
};

OpeningPlan planOf(const Area& area, const Surface& surface) {
    OpeningPlan plan;
    const double side = surface.px(28.0);
    const double gap = surface.px(18.0);
    plan.banner = {area.x, area.y, area.width, surface.px(60.0)};
    plan.notice = {area.x, area.bottom() - surface.px(30.0), area.width, surface.px(30.0)};
    const double top = plan.banner.bottom() + gap;
    const double end = plan.notice.y - gap;
    const double left = std::clamp(area.width * 0.26, surface.px(320.0), surface.px(400.0));
    plan.uses = {area.x + side, top, left, end - top};
    const double x = plan.uses.right() + surface.px(28.0);
    const double width = area.right() - side - x;
    const double row = openingRow(surface);
    plan.path = {x, end - row, width, row};
    const double jobs = surface.px(30.0) + std::max(row, surface.px(60.0));
    plan.jobs = {x, plan.path.y - gap - jobs, width, jobs};
    plan.shelf = {x, top, width, plan.jobs.y - gap - top};
    return plan;
}

void banner(const Area& area, const Surface& surface) {
    fillArea(area, palette::kBanner);
    const double side = surface.px(28.0);
    const double name = static_cast<double>(sizeOf(surface.fonts().title, "Gapwise").x) + surface.px(22.0);
    writeLine({area.x + side, area.y, name, area.height}, "Gapwise",
              {surface.fonts().title, palette::kBannerInk});
    writeLine({area.x + side + name, area.y, area.width * 0.45, area.height},
              "Which way does every gap, face and mark of the cartridge look?",
              {surface.fonts().body, palette::kBannerSoft});
    writeLine({area.middleX(), area.y, area.width / 2.0 - side, area.height}, kPrevails,
              {surface.fonts().small, palette::kBannerSoft, Align::Right});
}

void notice(const Area& area, const Surface& surface) {
    fillArea(area, palette::kNotice);
    writeLine(area, "Frames that come with Gapwise: " + std::string{kPracticeNotice},
              {surface.fonts().body, palette::kNoticeInk, Align::Middle});
}

} // namespace

double openingRow(const Surface& surface) {
    return surface.drafts().use == Use::Bench ? surface.px(60.0) : surface.px(44.0);
}

std::optional<Wish> openingPanel(const Workplace& workplace, const Area& area, const Surface& surface) {
    const Scope scope{surface, "opening"};
    const OpeningPlan plan = planOf(area, surface);
    banner(plan.banner, surface);
    useCards(plan.uses, surface);
    std::optional<Wish> wish = frameShelf(workplace, plan.shelf, surface);
    if (const auto job = jobsRow(workplace, plan.jobs, surface))
        wish = job;
    if (workplace.note) {
        if (const auto seen = noticesPanel(workplace, plan.path, surface))
            wish = seen;
    } else if (const auto path = pathField(surface.drafts().use, plan.path, surface)) {
        wish = path;
    }
    notice(plan.notice, surface);
    return wish;
}

} // namespace gapwise
