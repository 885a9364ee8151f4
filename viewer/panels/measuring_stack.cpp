#include "viewer/panels/measuring_pages.h"
#include "viewer/panels/pager.h"
#include "viewer/panels/stack_drawing.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

/// Every chain of the frame; the row is leafed on where it is too long.
std::optional<Wish> chainRow(const Job& job, const Chain& shown, const Area& row, const Surface& surface) {
    MeasuringDrafts& drafts = surface.drafts().measuring;
    const RowOf wanted{.count = job.frame.chains.size(),
                       .leastWidth = std::max(surface.target, surface.px(82.0)),
                       .mostWidth = surface.px(110.0),
                       .scroll = drafts.chainScroll};
    const Page page = pageOf(wanted, row, surface);
    drafts.chainScroll = static_cast<double>(page.first) + pageButtons(page, wanted, row, surface);
    std::optional<Wish> wish;
    for (std::size_t i = page.first; i < page.first + page.count && i < job.frame.chains.size(); ++i) {
        const Chain& chain = job.frame.chains[i];
        const Area place = page.place(i, surface.px(4.0));
        const bool fits =
            static_cast<double>(sizeOf(surface.fonts().body, chain.id.text).x) + surface.px(16.0) <
            place.width;
        if (button(surface, place, chain.id.text,
                   {.chosen = chain.id == shown.id,
                    .font = fits ? surface.fonts().body : surface.fonts().small}))
            wish = ReadMeasures{MeasuresPage{MeasuresPage::Kind::Stack, chain.id}};
    }
    return wish;
}

std::vector<ShareBar> sharesOf(const Prediction& prediction) {
    std::vector<ShareBar> bars;
    for (const LinkShare& link : prediction.links)
        bars.push_back({.name = link.of.text,
                        .share = link.share,
                        .words = "± " + numberWords(link.halfWidthMm, 3) + (link.measured ? " measured" : ""),
                        .marked = link.measured});
    std::ranges::stable_sort(bars, std::ranges::greater{}, &ShareBar::share);
    std::erase_if(bars, [](const ShareBar& bar) { return bar.share < 0.0005; });
    return bars;
}

/// The number itself, large, with how sure it is.
double writePrediction(const Prediction& prediction, const Area& area, const Surface& surface) {
    const double large = lineHeightOf(surface.fonts().bench);
    writeLine({area.x, area.y, area.width, large}, numberWords(prediction.valueMm, 3) + " mm",
              {surface.fonts().bench, palette::kAccent});
    const double width =
        static_cast<double>(sizeOf(surface.fonts().bench, numberWords(prediction.valueMm, 3) + " mm").x);
    const double left = area.x + width + surface.px(12.0);
    const double line = lineHeightOf(surface.fonts().body);
    writeLine({left, area.y + large / 2.0 - line, area.right() - left, line},
              fmt::format("± {} likely", numberWords(prediction.rssMm, 3)), {surface.fonts().strong});
    writeLine({left, area.y + large / 2.0, area.right() - left, line},
              fmt::format("± {} at worst", numberWords(prediction.worstMm, 3)), {surface.fonts().body});
    writeLine({area.x, area.y + large, area.width, line}, linksWords(prediction),
              {surface.fonts().small, palette::kSoftInk});
    return large + line;
}

void drawNumbers(const Job& job, const Chain& chain, const Prediction& prediction, const Area& area,
                 const Surface& surface) {
    const Window window = windowOf(job.frame, chain.id);
    const QuantityResult* result = job.measured.of(chain.id);
    const StackDrawing drawing{job.frame, chain, prediction, job.stack.towardCompressor,
                               job.stack.towardTurbine};
    double y = area.y + writePrediction(prediction, area, surface) + surface.px(6.0);
    const double inset = std::clamp(area.height * 0.24, surface.px(110.0), surface.px(170.0));
    drawEnlargedGap(enlargedGap(drawing, window, result), {area.x, y, area.width, inset}, surface);
    y += inset + surface.px(8.0);
    const double line = lineHeightOf(surface.fonts().small);
    const std::vector<ShareBar> shares = sharesOf(prediction);
    const double row = std::max(line, surface.px(20.0));
    const double room = (area.bottom() - y) * 0.42 - line;
    const double bars = std::min(row * static_cast<double>(shares.size()), std::floor(room / row) * row);
    writeLine({area.x, y, area.width, line}, "What its scatter comes from",
              {surface.fonts().small, palette::kSoftInk});
    drawShares(shares, row, {area.x, y + line, area.width, bars + 0.5}, surface);
    y += line + bars + surface.px(8.0);
    const auto trials = job.stack.trials.find(chain.id);
    if (trials != job.stack.trials.end())
        drawHistogram(trials->second, window, {area.x, y, area.width, area.bottom() - y}, surface);
}

} // namespace

std::optional<Wish> stackPage(const Job& job, const Area& area, const Surface& surface) {
    const Chain* chain = chainShown(job);
    if (!chain) {
        writeLines(area, "This frame has no dimension chains.", {surface.fonts().body});
        return std::nullopt;
    }
    const double row = rowHeight(surface);
    std::optional<Wish> wish = chainRow(job, *chain, {area.x, area.y, area.width, row}, surface);
    const double line = lineHeightOf(surface.fonts().strong);
    const double top = area.y + row + surface.px(6.0);
    writeLine({area.x, top, area.width, line}, fmt::format("{}  {}", chain->id.text, chain->name),
              {surface.fonts().title});
    const Area body{area.x, top + line + surface.px(4.0), area.width,
                    area.bottom() - top - line - surface.px(4.0)};
    const Prediction* prediction = predictionOf(job.measured, chain->id);
    if (!prediction)
        return wish;
    const double numbers = std::max(surface.px(390.0), body.width * 0.31);
    drawStack({job.frame, *chain, *prediction, job.stack.towardCompressor, job.stack.towardTurbine},
              {body.x, body.y, body.width - numbers - surface.px(22.0), body.height}, surface);
    drawNumbers(job, *chain, *prediction, {body.right() - numbers, body.y, numbers, body.height}, surface);
    return wish;
}

} // namespace gapwise
