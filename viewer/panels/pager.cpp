#include "viewer/panels/pager.h"

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

double arrowWidth(const Surface& surface) {
    return surface.bench ? surface.target : surface.px(36.0);
}

} // namespace

Page pageOf(const RowOf& wanted, const Area& area, const Surface& surface) {
    Page page{.count = wanted.count, .row = area};
    const auto all = static_cast<double>(wanted.count);
    if (all * wanted.leastWidth > area.width) {
        const double arrow = arrowWidth(surface) + surface.px(4.0);
        page.row = {area.x + arrow, area.y, area.width - 2.0 * arrow, area.height};
        page.count = static_cast<std::size_t>(std::max(1.0, std::floor(page.row.width / wanted.leastWidth)));
        const double last = all - static_cast<double>(page.count);
        page.first =
            static_cast<std::size_t>(std::clamp(std::round(wanted.scroll), 0.0, std::max(0.0, last)));
    }
    page.row.width = std::min(page.row.width, wanted.mostWidth * static_cast<double>(page.count));
    return page;
}

double pageButtons(const Page& page, const RowOf& wanted, const Area& area, const Surface& surface) {
    if (page.count >= wanted.count)
        return 0.0;
    const double width = arrowWidth(surface);
    double step = 0.0;
    const auto half = static_cast<double>(std::max<std::size_t>(1, page.count / 2));
    if (button(surface, {area.x, area.y, width, area.height}, "←", {.enabled = page.first > 0}))
        step = -half;
    const bool more = page.first + page.count < wanted.count;
    if (button(surface, Area{area.right() - width, area.y, width, area.height}, "→", {.enabled = more}))
        step = half;
    const float wheel = ImGui::GetIO().MouseWheel;
    const ImVec2 mouse = ImGui::GetIO().MousePos;
    if (wheel != 0.0F && area.contains(static_cast<double>(mouse.x), static_cast<double>(mouse.y)))
        step = wheel > 0.0F ? -1.0 : 1.0;
    return step;
}

} // namespace gapwise
