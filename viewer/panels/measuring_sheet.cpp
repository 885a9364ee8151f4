#include "viewer/panels/measuring_pages.h"
#include "viewer/panels/parts.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace gapwise {

namespace {

using Kind = MeasuresPage::Kind;

struct Tab {
    Kind kind;
    const char* label;
};
constexpr std::array<Tab, 6> kTabs{{{Kind::Readings, "Readings"},
                                    {Kind::Parts, "Parts"},
                                    {Kind::Stack, "Stack"},
                                    {Kind::Effects, "Effects"},
                                    {Kind::Choose, "Choose"},
                                    {Kind::Causes, "Causes"}}};

std::string headWords(const MeasureReport& report) {
    std::size_t read = 0;
    std::size_t beyond = 0;
    for (const QuantityResult& result : report.quantities) {
        read += result.after ? 1U : 0U;
        beyond += result.standing == Standing::Beyond ? 1U : 0U;
    }
    return fmt::format("{} of {} read, {} beyond a limit", read, report.quantities.size(), beyond);
}

/// What it is, the pages, and the way back.
std::optional<Wish> head(const Job& job, const Area& row, const Surface& surface) {
    const double gap = surface.px(6.0);
    const double wide = surface.px(112.0);
    std::optional<Wish> wish;
    double x = row.right() - wide;
    if (button(surface, {x, row.y, wide, row.height}, "Close", {.second = "Escape"}))
        wish = ReadMeasures{};
    x -= static_cast<double>(kTabs.size()) * (wide + gap) + gap;
    const double left = x - gap;
    for (const Tab& tab : kTabs) {
        if (button(surface, {x, row.y, wide, row.height}, tab.label,
                   {.chosen = job.measures->kind == tab.kind}))
            wish = ReadMeasures{MeasuresPage{tab.kind, job.measures->chain}};
        x += wide + gap;
    }
    const Area words{row.x, row.y, left - row.x, row.height};
    const double upper = words.height * 0.58;
    writeLine({words.x, words.y, words.width, upper}, "Measurements", {surface.fonts().title});
    writeLine({words.x, words.y + upper, words.width, words.height - upper}, headWords(job.measured),
              {surface.fonts().small, palette::kSoftInk});
    return wish;
}

std::optional<Wish> page(const Job& job, const Area& body, const Surface& surface) {
    switch (job.measures->kind) {
    case Kind::Parts: return partsPage(job, body, surface);
    case Kind::Stack: return stackPage(job, body, surface);
    case Kind::Effects: return effectsPage(job, body, surface);
    case Kind::Choose: return choosePage(job, body, surface);
    case Kind::Causes: return causesPage(job, body, surface);
    case Kind::Readings: break;
    }
    return readingsPage(job, body, surface);
}

} // namespace

std::optional<Wish> measuringSheet(const Job& job, const Area& area, const Surface& surface) {
    if (!job.measures || area.empty())
        return std::nullopt;
    const Scope scope{surface, "measures"};
    fillArea(area, palette::kSheet);
    frameArea(area, palette::kAccent, 0.0, 1.5);
    const Area inner = area.inset(surface.px(12.0));
    const double row = std::max(surface.target, surface.px(44.0));
    std::optional<Wish> wish = head(job, {inner.x, inner.y, inner.width, row}, surface);
    const double top = row + surface.px(10.0);
    const Area body{inner.x, inner.y + top, inner.width, inner.height - top};
    if (job.measured.quantities.empty()) {
        writeLines(body, "This frame names nothing to measure.", {surface.fonts().body});
        return wish;
    }
    if (auto asked = page(job, body, surface))
        wish = std::move(asked);
    return wish;
}

int decimalsFor(const QuantityResult& result) {
    for (const std::optional<Evaluated>* read : {&result.after, &result.before})
        if (*read)
            return (*read)->decimals;
    return decimalsOf(result.quantity->unit);
}

double rowHeight(const Surface& surface) {
    return surface.bench ? surface.target : surface.px(40.0);
}

LimitBar limitBarOf(const QuantityResult& result) {
    const Quantity& quantity = *result.quantity;
    LimitBar bar{.fresh = quantity.limits.fresh,
                 .service = quantity.limits.service,
                 .freshWord = quantity.part.text.empty() ? "window" : "new",
                 .standing = result.standing,
                 .unit = std::string{symbolOf(quantity.unit)},
                 .decimals = decimalsFor(result)};
    if (bar.fresh.empty() && bar.service.empty())
        bar.fresh = result.limit;
    if (result.predicted) {
        bar.predicted = Window{result.predicted->least, result.predicted->most};
        if (result.predicted->chain)
            bar.predictedValue = result.predicted->value;
    }
    if (result.before)
        bar.previous = result.before->judged;
    if (result.after) {
        bar.value = result.after->judged;
        bar.expanded = result.after->expanded;
    }
    return bar;
}

const Prediction* predictionOf(const MeasureReport& report, const QuantityId& chain) {
    const auto found = std::ranges::find(report.chains, chain, &Prediction::chain);
    return found == report.chains.end() ? nullptr : &*found;
}

std::string linksWords(const Prediction& prediction) {
    const auto measured = std::ranges::count_if(prediction.links, &LinkShare::measured);
    const auto all = static_cast<std::ptrdiff_t>(prediction.links.size());
    if (measured == all)
        return fmt::format("from {} measured value{}", all, all == 1 ? "" : "s");
    if (measured == 0)
        return fmt::format("from {} drawing size{}", all, all == 1 ? "" : "s");
    return fmt::format("from {} measured value{} and {} drawing size{}", measured, measured == 1 ? "" : "s",
                       all - measured, all - measured == 1 ? "" : "s");
}

void leafButton(std::size_t& page, std::size_t pages, const Area& area, const Surface& surface) {
    page = std::min(page, pages > 0 ? pages - 1 : 0);
    if (pages < 2)
        return;
    if (button(surface, area, "Read on",
               {.leading = page + 1 < pages, .second = fmt::format("page {} of {}", page + 1, pages)}))
        page = (page + 1) % pages;
}

} // namespace gapwise
