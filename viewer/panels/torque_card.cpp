#include "viewer/panels/card_frame.h"
#include "viewer/panels/torque_parts.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace gapwise {

namespace {

using Page = TorqueDrafts::Page;

struct Tab {
    Page page;
    const char* label;
};

std::vector<Tab> tabsOf(const TorquePlan& plan) {
    std::vector<Tab> tabs{{Page::Tighten, "Tighten"},
                          {Page::Wrench, "Wrench"},
                          {Page::Value, "Value"},
                          {Page::Preload, "Preload"}};
    if (plan.nutLine)
        tabs.push_back({Page::NutLine, "Nut line"});
    tabs.push_back({Page::Touched, "Touched …"});
    return tabs;
}

/// Who it is, the pages, and the way back.
std::optional<Wish> head(const TorqueWork& work, const Area& row, const Surface& surface) {
    TorqueDrafts& drafts = surface.drafts().torque;
    const double gap = surface.px(6.0);
    const std::vector<Tab> tabs = tabsOf(work.plan);
    const double wide = surface.px(100.0);
    double x = row.right() - wide;
    std::optional<Wish> wish;
    if (button(surface, {x, row.y, wide, row.height}, "Close"))
        wish = OpenFastener{};
    x -= static_cast<double>(tabs.size()) * (wide + gap) + gap;
    const double left = x - gap;
    for (const Tab& tab : tabs) {
        if (button(surface, {x, row.y, wide, row.height}, tab.label, {.chosen = drafts.page == tab.page})) {
            drafts.page = tab.page;
            drafts.said.clear();
        }
        x += wide + gap;
    }
    const Area words{row.x, row.y, left - row.x, row.height};
    const double upper = words.height * 0.58;
    writeLine({words.x, words.y, words.width, upper},
              fmt::format("{} {}", work.fastener.id.text, work.fastener.name), {surface.fonts().title});
    writeLine({words.x, words.y + upper, words.width, words.height - upper},
              fmt::format("{} · {} in the end · {}", work.fastener.size,
                          torqueWords(work.plan.torqueNm, drafts.unit), work.plan.lubrication),
              {surface.fonts().small, palette::kSoftInk});
    return wish;
}

std::optional<Wish> page(const TorqueWork& work, const Area& body, const Surface& surface) {
    const TorqueDrafts& drafts = surface.drafts().torque;
    switch (drafts.page) {
    case Page::Wrench: return wrenchPage(work, body, surface);
    case Page::Value: drawFacts(body, valueLines(work.plan), surface); break;
    case Page::Preload: drawFacts(body, preloadLines(work.plan, drafts.unit), surface); break;
    case Page::NutLine: return nutLinePage(work, body, surface);
    case Page::Touched: return touchedPage(work, body, surface);
    case Page::Tighten: return tightenPage(work, body, surface);
    }
    return std::nullopt;
}

std::optional<Wish> cardWithoutPlan(const Fastener& fastener, const Area& inner, const Surface& surface) {
    const double row = std::max(surface.target, surface.px(36.0));
    writeLine({inner.x, inner.y, inner.width - surface.px(120.0), row},
              fmt::format("{} {}, {}", fastener.id.text, fastener.name, fastener.size),
              {surface.fonts().title});
    writeLines({inner.x, inner.y + row, inner.width, inner.height - row},
               "This frame names no torque for it: take it from the sheet.", {wordFont(surface)});
    if (button(surface, {inner.right() - surface.px(110.0), inner.y, surface.px(110.0), row}, "Close"))
        return OpenFastener{};
    return std::nullopt;
}

/// Another fastener begins at its first page; the wrench stays the same.
void turnTo(const FastenerId& fastener, TorqueDrafts& drafts) {
    if (drafts.fastener == fastener)
        return;
    drafts.fastener = fastener;
    drafts.page = Page::Tighten;
    drafts.group = 0;
    for (std::string* text : {&drafts.turned, &drafts.drag, &drafts.nutRead, &drafts.nutStack, &drafts.said})
        text->clear();
}

} // namespace

std::optional<Wish> torqueCard(const Job& job, const FastenerId& id, const Area& area,
                               const Surface& surface) {
    const Fastener* fastener = job.frame.fastener(id);
    if (!fastener || area.empty())
        return std::nullopt;
    const Scope scope{surface, "torque"};
    turnTo(id, surface.drafts().torque);
    const Area inner = drawCardFrame(area, surface);
    const std::optional<TorqueWork> work = torqueWorkOf(job, id, surface.drafts().torque);
    if (!work)
        return cardWithoutPlan(*fastener, inner, surface);
    const double row = std::max(surface.bench ? surface.target : 0.0, surface.px(40.0));
    std::optional<Wish> wish = head(*work, {inner.x, inner.y, inner.width, row}, surface);
    const double top = row + surface.px(8.0);
    Area body{inner.x, inner.y + top, inner.width, inner.height - top};
    if (job.standpoint.kind == LookKind::BothEnds) { // No dial is there for the flange to lie on.
        const Area flange{body.x, body.y, body.height, body.height};
        body.x += flange.width + surface.px(12.0);
        body.width -= flange.width + surface.px(12.0);
        if (auto tapped = flangePanel(job, id, flange, surface))
            wish = std::move(tapped);
    }
    if (auto other = page(*work, body, surface))
        wish = std::move(other);
    return wish;
}

} // namespace gapwise
