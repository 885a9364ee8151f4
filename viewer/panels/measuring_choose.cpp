#include "viewer/panels/measure_work.h"
#include "viewer/panels/measuring_pages.h"
#include "viewer/panels/plot_parts.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

const Selection* selectionShown(const Job& job, const Surface& surface) {
    const std::vector<Selection>& all = job.measured.selections;
    if (all.empty())
        return nullptr;
    return &all[std::min(surface.drafts().measuring.selector, all.size() - 1)];
}

std::string nameOf(const Frame& frame, const Selector& selector) {
    const Dimension* dimension = frame.dimension(selector.dimension);
    return dimension ? dimension->name : selector.dimension.text;
}

void selectorRow(const Job& job, const Area& row, const Surface& surface) {
    MeasuringDrafts& drafts = surface.drafts().measuring;
    const std::vector<Selection>& all = job.measured.selections;
    for (std::size_t i = 0; i < all.size(); ++i)
        if (button(surface, columnOf(row, static_cast<int>(all.size()), static_cast<int>(i), surface.px(6.0)),
                   fmt::format("{} for {}", all[i].selector->dimension.text, all[i].selector->sets.text),
                   {.chosen = i == drafts.selector, .second = nameOf(job.frame, *all[i].selector)}))
            drafts.selector = i;
}

/// What a link is, and whether it was read; a touch reads it.
std::optional<Wish> linkRow(const Job& job, const LinkShare& link, const Area& row, const Surface& surface) {
    const Dimension* dimension = job.frame.dimension(link.of);
    const Frame::FoundQuantity found = job.frame.quantity(link.of);
    const bool can = found.measurement != nullptr;
    const Pressed pressed = can ? pressable(surface, link.of.text.c_str(), row) : Pressed{};
    if (pressed.hovered)
        fillArea(row, palette::kShade, surface.px(4.0));
    fillArea({row.x, row.bottom() - 1.0, row.width, 1.0}, palette::kHairline);
    const double sign = surface.px(7.0);
    drawSign(link.measured ? DialSign::Holds : DialSign::Open, point(row.x + 2.0 * sign, row.middleY()),
             sign);
    const double left = row.x + 4.0 * sign + surface.px(4.0);
    const double numbers = surface.px(surface.bench ? 150.0 : 130.0);
    const Area name{left, row.y, row.right() - numbers - left, row.height};
    writeLine({name.x, name.y, name.width, name.height * 0.54},
              fmt::format("{}{}", link.sign > 0 ? "+" : "−", link.of.text), {surface.fonts().strong});
    writeLine({name.x, name.y + name.height * 0.52, name.width, name.height * 0.44},
              dimension ? dimension->name : std::string{}, {surface.fonts().small, palette::kSoftInk});
    const Area value{row.right() - numbers, row.y, numbers, row.height};
    writeLine({value.x, value.y, value.width, value.height * 0.54},
              numberWords(link.valueMm, 3) + " ± " + numberWords(link.halfWidthMm, 3),
              {surface.fonts().strong, link.measured ? palette::kAccent : palette::kSoftInk, Align::Right});
    writeLine({value.x, value.y + value.height * 0.52, value.width, value.height * 0.44},
              link.measured ? "measured" : (can ? "drawing size: touch to read it" : "drawing size"),
              {surface.fonts().small, palette::kSoftInk, Align::Right});
    if (!pressed.done)
        return std::nullopt;
    return openAt(*found.measurement, link.of, surface.drafts().measure);
}

/// The values that the prediction stands on.
std::optional<Wish> drawLinks(const Job& job, const Prediction& prediction, const Area& area,
                              const Surface& surface) {
    std::vector<LinkShare> links = prediction.links;
    // Those that cannot be read and do not count (a shim of nothing) stand last.
    std::ranges::stable_sort(links, {},
                             [&](const LinkShare& link) { return !job.frame.quantity(link.of).measurement; });
    const double line = lineHeightOf(surface.fonts().strong);
    writeLine({area.x, area.y, area.width, line}, "The values that it stands on", {surface.fonts().strong});
    const double row = rowHeight(surface);
    std::optional<Wish> wish;
    double y = area.y + line + surface.px(2.0);
    for (std::size_t i = 0; i < links.size(); ++i) {
        if (y + row > area.bottom()) {
            writeLine({area.x, area.bottom() - line, area.width, line},
                      fmt::format("and {} more", links.size() - i),
                      {surface.fonts().small, palette::kSoftInk});
            break;
        }
        if (auto asked = linkRow(job, links[i], {area.x, y, area.width, row}, surface))
            wish = std::move(asked);
        y += row;
    }
    return wish;
}

/// Predicted, and what to take: to be read from 1.5 m.
void drawAnswer(const Selection& selection, const Prediction* prediction, const Area& area,
                const Surface& surface) {
    const Selector& selector = *selection.selector;
    const double line = lineHeightOf(surface.fonts().body);
    const double large = lineHeightOf(surface.fonts().bench);
    const Area left = columnOf(area, 2, 0, surface.px(20.0));
    const Area right = columnOf(area, 2, 1, surface.px(20.0));
    if (prediction) {
        writeLine({left.x, left.y, left.width, line},
                  fmt::format("{} predicted with {} {}", selector.sets.text, selector.dimension.text,
                              numberWords(selection.nowMm, 3)),
                  {surface.fonts().body, palette::kSoftInk});
        writeLine(
            {left.x, left.y + line, left.width, large},
            fmt::format("{} ± {}", numberWords(prediction->valueMm, 3), numberWords(prediction->rssMm, 3)),
            {surface.fonts().bench, palette::kAccent});
        writeLine({left.x, left.y + line + large, left.width, line}, linksWords(*prediction),
                  {surface.fonts().small, palette::kSoftInk});
    }
    const bool found = selection.proposed.has_value();
    writeLine({right.x, right.y, right.width, line},
              found ? fmt::format("take {}", selector.dimension.text) : std::string{"no grade will do"},
              {surface.fonts().body, palette::kSoftInk});
    if (found)
        writeLine({right.x, right.y + line, right.width, large},
                  numberWords(selection.grades[*selection.proposed].gradeMm, 3) + " mm",
                  {surface.fonts().bench, palette::kHolds});
    else
        writeLines({right.x, right.y + line, right.width, large}, selector.otherwise,
                   {surface.fonts().body, palette::kBroken});
    writeLine({right.x, right.y + line + large, right.width, line},
              fmt::format("{} would give {} in the middle of its window",
                          numberWords(selection.requiredMm, 3), numberWords(selection.targetMm, 3)),
              {surface.fonts().small, palette::kSoftInk});
}

void writeGap(const GapThen& gap, const Area& cell, bool now, const Surface& surface) {
    const ImU32 colour = gap.within ? palette::kHolds : palette::kBroken;
    const double sign = surface.px(7.0);
    drawSign(gap.within ? DialSign::Holds : DialSign::Broken, point(cell.x + sign + 2.0, cell.middleY()),
             sign);
    const double left = cell.x + 2.0 * sign + surface.px(6.0);
    const double half = cell.height * 0.54;
    writeLine({left, cell.y, cell.right() - left, half}, numberWords(gap.thenMm, 3),
              {surface.fonts().strong, colour});
    const double change = gap.thenMm - gap.nowMm;
    writeLine({left, cell.y + half, cell.right() - left, cell.height - half},
              now ? (gap.within ? "now, in" : "now, out")
                  : fmt::format("{} {}", signedWords(change, 3), gap.within ? "in" : "out"),
              {surface.fonts().small, palette::kSoftInk});
}

struct GradeTable {
    Area area{};
    double names = 0.0;
    double nut = 0.0;
    double row = 0.0;
    std::size_t gaps = 0;

    Area cell(double y, std::size_t column) const {
        const double width = (area.width - names - nut) / static_cast<double>(std::max<std::size_t>(gaps, 1));
        return {area.x + names + static_cast<double>(column) * width, y, width - 4.0, row};
    }
};

void writeHead(const Selection& selection, const GradeTable& table, double height, const Surface& surface) {
    const double half = height / 2.0;
    writeLine({table.area.x, table.area.y, table.names, half}, "grade",
              {surface.fonts().small, palette::kSoftInk});
    for (std::size_t i = 0; i < table.gaps; ++i) {
        const GapThen& gap = selection.grades.front().gaps[i];
        const Area cell = table.cell(table.area.y, i);
        writeLine({cell.x, cell.y, cell.width, half}, gap.chain.text, {surface.fonts().strong});
        writeLine({cell.x, cell.y + half, cell.width, half}, windowWords(gap.window, 2),
                  {surface.fonts().small, palette::kSoftInk});
    }
    writeLine({table.area.right() - table.nut, table.area.y, table.nut, half}, "nut line moves",
              {surface.fonts().small, palette::kSoftInk});
}

void drawGrade(const Selection& selection, std::size_t index, double y, const GradeTable& table,
               const Surface& surface) {
    const GradeOption& grade = selection.grades[index];
    const bool proposed = selection.proposed == index;
    const bool now = std::abs(grade.gradeMm - selection.nowMm) < 0.0005;
    const Area row{table.area.x, y, table.area.width, table.row - 2.0};
    if (proposed)
        fillArea(row, palette::kHoldsLight, surface.px(4.0));
    fillArea({row.x, row.bottom(), row.width, 1.0}, palette::kHairline);
    writeLine({row.x + 6.0, row.y, table.names - 6.0, row.height * 0.54}, numberWords(grade.gradeMm, 3),
              {surface.fonts().strong});
    writeLine({row.x + 6.0, row.y + row.height * 0.52, table.names - 6.0, row.height * 0.44},
              proposed ? (now ? "take it: it is in" : "take this") : (now ? "is in now" : ""),
              {surface.fonts().small, proposed ? palette::kHolds : palette::kSoftInk});
    for (std::size_t i = 0; i < grade.gaps.size() && i < table.gaps; ++i)
        writeGap(grade.gaps[i], table.cell(y, i), now, surface);
    const bool moves = std::abs(grade.nutShiftDeg) >= 0.05;
    writeLine({row.right() - table.nut, row.y, table.nut, row.height},
              moves ? signedWords(grade.nutShiftDeg, 1) + "°" : std::string{"0°"}, {surface.fonts().body});
}

void drawGrades(const Selection& selection, const Area& area, const Surface& surface) {
    if (selection.grades.empty())
        return;
    const double head = 2.0 * lineHeightOf(surface.fonts().small) + surface.px(4.0);
    GradeTable table{.area = area, .names = surface.px(112.0), .nut = surface.px(100.0)};
    const double least = surface.px(88.0);
    const auto room = static_cast<std::size_t>((area.width - table.names - table.nut) / least);
    table.gaps = std::min(room, selection.grades.front().gaps.size());
    const auto count = static_cast<double>(selection.grades.size());
    table.row = std::min(surface.px(54.0), (area.height - head) / count);
    writeHead(selection, table, head, surface);
    for (std::size_t i = 0; i < selection.grades.size(); ++i)
        drawGrade(selection, i, area.y + head + static_cast<double>(i) * table.row, table, surface);
    const std::size_t all = selection.grades.front().gaps.size();
    if (all > table.gaps)
        writeLine({area.x, area.bottom() - lineHeightOf(surface.fonts().small), area.width,
                   lineHeightOf(surface.fonts().small)},
                  fmt::format("{} more gaps move with it: see Effects", all - table.gaps),
                  {surface.fonts().small, palette::kSoftInk});
}

/// The clearance that each grade would give, on one scale with the window.
void drawGradeLine(const Selection& selection, const Prediction& prediction, const Area& area,
                   const Surface& surface) {
    const double line = lineHeightOf(surface.fonts().small);
    const auto count = static_cast<double>(selection.grades.size());
    if (selection.grades.empty() || selection.grades.front().gaps.empty() ||
        area.height < (count + 2.5) * line)
        return;
    const Window& window = selection.grades.front().gaps.front().window;
    LimitBar range{.fresh = window, .decimals = 3};
    range.predicted = Window{selection.grades.front().gaps.front().thenMm - prediction.rssMm,
                             selection.grades.back().gaps.front().thenMm + prediction.rssMm};
    const double names = surface.px(112.0);
    const Area field{area.x + names, area.y + line * 1.2, area.width - names - surface.px(80.0),
                     area.height - 2.4 * line};
    const Scale scale = scaleOf(range, field.x, field.right());
    drawZones(zonesOf(window, {}, scale), scale, field);
    std::vector<RowLabel> labels;
    for (const std::optional<double>& edge : {window.least, window.most})
        if (edge)
            labels.push_back({scale.at(*edge), numberWords(*edge, 3), {surface.fonts().small}});
    labels.push_back({scale.held(selection.targetMm), "middle", {surface.fonts().small, palette::kHolds}});
    writeRow(labels, {field.x, field.bottom(), field.width, line * 1.2}, surface.px(6.0));
    drawDashedLine(point(scale.held(selection.targetMm), field.y),
                   point(scale.held(selection.targetMm), field.bottom()), {palette::kHolds, 1.5}, 4.0);
    writeLine({field.x, area.y, field.width, line * 1.2},
              fmt::format("{} with each grade, ± {}", selection.selector->sets.text,
                          numberWords(prediction.rssMm, 3)),
              {surface.fonts().small, palette::kSoftInk, Align::Middle});
    const double pitch = field.height / count;
    for (std::size_t i = 0; i < selection.grades.size(); ++i) {
        const GradeOption& grade = selection.grades[i];
        const GapThen& gap = grade.gaps.front();
        const double y = field.y + pitch * (static_cast<double>(i) + 0.5);
        const double at = scale.held(gap.thenMm);
        const ImU32 colour = gap.within ? palette::kHolds : palette::kBroken;
        writeLine({area.x + 6.0, y - line / 2.0, names - 12.0, line}, numberWords(grade.gradeMm, 3),
                  {selection.proposed == i ? surface.fonts().strong : surface.fonts().small});
        drawLine(point(scale.held(gap.thenMm - prediction.rssMm), y),
                 point(scale.held(gap.thenMm + prediction.rssMm), y), {colour, surface.px(2.0)});
        drawSign(gap.within ? DialSign::Holds : DialSign::Broken, point(at, y), surface.px(7.0));
    }
}

} // namespace

std::optional<Wish> choosePage(const Job& job, const Area& area, const Surface& surface) {
    const Selection* selection = selectionShown(job, surface);
    if (!selection) {
        writeLines(area, "This frame has nothing to choose from: no grades of spacer or shim.",
                   {surface.fonts().body});
        return std::nullopt;
    }
    const double row = rowHeight(surface);
    selectorRow(job, {area.x, area.y, std::min(area.width, surface.px(760.0)), row}, surface);
    const double top = area.y + row + surface.px(10.0);
    const double links = std::max(surface.px(350.0), area.width * 0.29);
    const Prediction* prediction = predictionOf(job.measured, selection->selector->sets);
    std::optional<Wish> wish;
    if (prediction)
        wish = drawLinks(job, *prediction, {area.x, top, links, area.bottom() - top}, surface);
    const Area right{area.x + links + surface.px(24.0), top, area.width - links - surface.px(24.0),
                     area.bottom() - top};
    const double answer = 2.0 * lineHeightOf(surface.fonts().body) + lineHeightOf(surface.fonts().bench);
    drawAnswer(*selection, prediction, {right.x, right.y, right.width, answer}, surface);
    const double below = answer + surface.px(14.0);
    const auto grades = static_cast<double>(selection->grades.size());
    const double table =
        2.0 * lineHeightOf(surface.fonts().small) + surface.px(8.0) + grades * surface.px(54.0);
    const double rest = std::min(right.height - below, table);
    drawGrades(*selection, {right.x, right.y + below, right.width, rest}, surface);
    const double under = right.y + below + rest + surface.px(10.0);
    if (prediction)
        drawGradeLine(*selection, *prediction,
                      {right.x, under, right.width, std::min(right.bottom() - under, surface.px(220.0))},
                      surface);
    return wish;
}

} // namespace gapwise
