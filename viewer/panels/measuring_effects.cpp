#include "viewer/panels/card_frame.h"
#include "viewer/panels/measuring_pages.h"
#include "viewer/panels/plot_parts.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace gapwise {

namespace {

constexpr double kStepMm = 0.01;
constexpr int kMostSteps = 50;
constexpr double kLikely = 0.05; ///< Below this a row is not marked.

std::string_view wordOf(ChangeKind kind) {
    switch (kind) {
    case ChangeKind::Wear: return "wear";
    case ChangeKind::Choice: return "chosen";
    case ChangeKind::Fault: break;
    }
    return "fault";
}

/// Chains with which one reads the table: those that were measured or have a window come first, and only as
/// many as the width holds.
std::vector<std::size_t> columnsOf(const Job& job, double width, double least) {
    std::vector<std::size_t> columns;
    const EffectTable& table = job.stack.effects;
    for (std::size_t i = 0; i < table.chains.size(); ++i)
        columns.push_back(i);
    const auto rank = [&](std::size_t i) {
        const Chain& chain = *table.chains[i];
        const auto& evidence = job.measured.diagnosis.evidence;
        if (std::ranges::find(evidence, chain.id, &GapEvidence::chain) != evidence.end())
            return 0;
        return windowOf(job.frame, chain.id).empty() ? 2 : 1;
    };
    std::ranges::stable_sort(columns, {}, rank);
    columns.resize(std::min(columns.size(), static_cast<std::size_t>(std::max(1.0, width / least))));
    std::ranges::sort(columns);
    return columns;
}

const Cause* causeOf(const Job& job, const Change& change) {
    const auto& causes = job.measured.diagnosis.causes;
    const auto found =
        std::ranges::find_if(causes, [&](const Cause& cause) { return cause.change == &change; });
    return found == causes.end() ? nullptr : &*found;
}

/// Up or down with its number, or a small nought.
void drawEffect(double effect, double length, const Area& cell, const Surface& surface) {
    const double value = effect * length;
    if (std::abs(effect) < 1e-9) {
        writeLine(cell, "0", {surface.fonts().small, palette::kSteel, Align::Middle});
        return;
    }
    const bool up = value > 0.0;
    const ImU32 colour = up ? palette::kAccent : palette::kNoticeInk;
    const double height = std::min(surface.px(20.0), cell.height * 0.6);
    const double x = cell.x + std::min(surface.px(14.0), cell.width * 0.18);
    const ImVec2 low = point(x, cell.middleY() + height / 2.0);
    const ImVec2 high = point(x, cell.middleY() - height / 2.0);
    drawArrow(up ? low : high, up ? high : low, {colour, surface.px(2.5)}, surface.px(8.0));
    const double left = x + surface.px(8.0);
    writeLine({left, cell.y, cell.right() - left, cell.height}, signedWords(value, 3),
              {surface.fonts().body, colour});
}

struct Table {
    Area head{};
    Area body{};
    double names = 0.0;
    double row = 0.0;
    std::vector<std::size_t> columns{};

    Area cell(double y, std::size_t column) const {
        const double width = (head.width - names) / static_cast<double>(columns.size());
        return {head.x + names + static_cast<double>(column) * width, y, width, row};
    }
};

Table tableIn(const Job& job, const Area& area, const Surface& surface) {
    Table table;
    table.names = std::min(surface.px(318.0), area.width * 0.25);
    table.columns = columnsOf(job, area.width - table.names, surface.px(82.0));
    const double head = lineHeightOf(surface.fonts().strong) + surface.px(4.0);
    const double rows = static_cast<double>(job.stack.effects.rows.size()) + 1.2;
    table.row = std::min((area.height - head) / rows, surface.px(56.0));
    table.head = {area.x, area.y, area.width, head};
    table.body = {area.x, area.y + head, area.width, area.height - head};
    return table;
}

void writeHead(const Job& job, const Table& table, const Surface& surface) {
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        Area cell = table.cell(table.head.y, i);
        cell.height = table.head.height;
        writeLine(cell, job.stack.effects.chains[table.columns[i]]->id.text,
                  {surface.fonts().strong, palette::kInk, Align::Middle});
    }
    drawLine(point(table.head.x, table.head.bottom()), point(table.head.right(), table.head.bottom()),
             {palette::kInk, 1.5});
}

void drawRow(const Job& job, const EffectRow& row, double y, const Table& table, const Surface& surface) {
    const Area whole{table.head.x, y, table.head.width, table.row};
    const Cause* cause = causeOf(job, *row.change);
    const bool fits = cause && job.measured.diagnosis.anythingMoved && cause->likelihood >= kLikely;
    if (fits)
        fillArea(whole, palette::kNotice);
    drawLine(point(whole.x, whole.bottom()), point(whole.right(), whole.bottom()), {palette::kHairline, 1.0});
    const double half = table.row * 0.54;
    const double width = table.names - surface.px(10.0);
    writeLine({whole.x + surface.px(4.0), y, width, half}, row.change->name, {surface.fonts().body});
    const std::string second =
        fits ? fmt::format("fits the readings: {} %, by {} mm", numberWords(cause->likelihood * 100.0, 0),
                           numberWords(cause->lengthMm, 3))
             : std::string{wordOf(row.change->kind)};
    writeLine({whole.x + surface.px(4.0), y + half, width, table.row - half}, second,
              {surface.fonts().small, fits ? palette::kNoticeInk : palette::kSoftInk});
    const double length = kStepMm * surface.drafts().measuring.changeSteps;
    for (std::size_t i = 0; i < table.columns.size(); ++i)
        drawEffect(row.effects[table.columns[i]], length, table.cell(y, i), surface);
}

/// What was measured less what the parts predict, under the table: read upwards, it finds the row.
void drawEvidence(const Job& job, double y, const Table& table, const Surface& surface) {
    const Area whole{table.head.x, y, table.head.width, table.row};
    fillArea(whole, palette::kAccentLight);
    writeLine({whole.x + surface.px(4.0), y, table.names - surface.px(10.0), table.row},
              "measured less predicted", {surface.fonts().strong});
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        const QuantityId& chain = job.stack.effects.chains[table.columns[i]]->id;
        const auto& evidence = job.measured.diagnosis.evidence;
        const auto found = std::ranges::find(evidence, chain, &GapEvidence::chain);
        const Area cell = table.cell(y, i);
        if (found == evidence.end()) {
            writeLine(cell, "–", {surface.fonts().small, palette::kSoftInk, Align::Middle});
            continue;
        }
        const double difference = found->measuredMm - found->predictedMm;
        writeLine({cell.x, cell.y, cell.width, cell.height * 0.56}, signedWords(difference, 3),
                  {found->moved ? surface.fonts().strong : surface.fonts().body,
                   found->moved ? palette::kBroken : palette::kInk, Align::Middle});
        writeLine(
            {cell.x, cell.y + cell.height * 0.5, cell.width, cell.height * 0.46},
            found->moved ? "moved" : "as predicted",
            {surface.fonts().small, found->moved ? palette::kBroken : palette::kSoftInk, Align::Middle});
    }
}

/// The length of the change, set by the person.
void lengthRow(const Area& row, const Surface& surface) {
    MeasuringDrafts& drafts = surface.drafts().measuring;
    const double side = std::max(row.height, surface.px(60.0));
    const double number = surface.px(130.0);
    double x = row.x;
    writeLine({x, row.y, surface.px(220.0), row.height}, "Each change by w =", {wordFont(surface)});
    x += static_cast<double>(sizeOf(wordFont(surface), "Each change by w =").x) + surface.px(14.0);
    if (button(surface, {x, row.y, side, row.height}, "−", {.enabled = drafts.changeSteps > 1, .id = "less"}))
        drafts.changeSteps -= 1;
    writeLine({x + side, row.y, number, row.height}, numberWords(kStepMm * drafts.changeSteps, 2) + " mm",
              {surface.fonts().title, palette::kInk, Align::Middle});
    if (button(surface, {x + side + number, row.y, side, row.height}, "+",
               {.enabled = drafts.changeSteps < kMostSteps, .id = "more"}))
        drafts.changeSteps += 1;
    const double left = x + 2.0 * side + number + surface.px(18.0);
    writeLine(
        {left, row.y, row.right() - left, row.height},
        "Forward: what it does to each gap. Backward: the row whose signs the readings show is the cause.",
        {surface.fonts().small, palette::kSoftInk});
}

} // namespace

std::optional<Wish> effectsPage(const Job& job, const Area& area, const Surface& surface) {
    const double row = rowHeight(surface);
    if (job.stack.effects.rows.empty()) {
        writeLines(area, "This frame names no changes.", {surface.fonts().body});
        return std::nullopt;
    }
    lengthRow({area.x, area.y, area.width, row}, surface);
    const double top = row + surface.px(8.0);
    const Table table = tableIn(job, {area.x, area.y + top, area.width, area.height - top}, surface);
    writeHead(job, table, surface);
    double y = table.body.y;
    for (const EffectRow& effect : job.stack.effects.rows) {
        drawRow(job, effect, y, table, surface);
        y += table.row;
    }
    drawEvidence(job, y + table.row * 0.15, table, surface);
    return std::nullopt;
}

} // namespace gapwise
