#include "viewer/panels/measure_work.h"
#include "viewer/panels/measuring_pages.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace gapwise {

namespace {

using Show = MeasuringDrafts::Show;

struct Choice {
    Show show;
    const char* label;
};
constexpr std::array<Choice, 4> kChoices{{{Show::Assembly, "Assembly"},
                                          {Show::Parts, "Parts"},
                                          {Show::Asking, "Needs a look"},
                                          {Show::All, "All"}}};

bool asks(const QuantityResult& result) {
    using Outcome = BeforeAndAfter::Outcome;
    const bool change = result.change && (result.change->outcome == Outcome::Unexpected ||
                                          result.change->outcome == Outcome::NoChangeThoughExpected);
    const bool missing = result.standing == Standing::NotRead && result.measurement->required;
    const bool flagged = result.after && !result.after->flags.empty();
    return missing || flagged || change || result.disagrees || result.standing == Standing::Beyond ||
           result.standing == Standing::NotProven || result.standing == Standing::NotJudged;
}

bool shown(const QuantityResult& result, Show show) {
    switch (show) {
    case Show::Assembly: return result.quantity->part.text.empty();
    case Show::Parts: return !result.quantity->part.text.empty();
    case Show::Asking: return asks(result);
    case Show::All: break;
    }
    return true;
}

std::vector<const QuantityResult*> rowsOf(const MeasureReport& report, Show show) {
    std::vector<const QuantityResult*> rows;
    for (const QuantityResult& result : report.quantities)
        if (shown(result, show))
            rows.push_back(&result);
    return rows;
}

/// Columns of the table, in pixels from its left edge.
struct Columns {
    double name = 0.0; ///< Widths.
    double received = 0.0;
    double predicted = 0.0;
    double now = 0.0;
    double bar = 0.0;
    double standing = 0.0;
};

Columns columnsIn(double width, const Surface& surface) {
    const double gap = surface.px(10.0);
    const double whole = width - 5.0 * gap;
    return {.name = whole * 0.365 + gap,
            .received = whole * 0.08 + gap,
            .predicted = whole * 0.14 + gap,
            .now = whole * 0.145 + gap,
            .bar = whole * 0.12 + gap,
            .standing = whole * 0.15};
}

/// Goes along a row of cells.
class Cells {
public:
    Cells(const Area& row, double gap) : row_{row}, x_{row.x}, gap_{gap} {}
    Area next(double width) {
        const Area cell{x_, row_.y, width - gap_, row_.height};
        x_ += width;
        return cell;
    }

private:
    Area row_{};
    double x_ = 0.0;
    double gap_ = 0.0;
};

void writeHead(const Area& row, const Surface& surface) {
    const double gap = surface.px(10.0);
    const Columns columns = columnsIn(row.width, surface);
    Cells cells{row, gap};
    const Type left{surface.fonts().small, palette::kSoftInk};
    const Type right{surface.fonts().small, palette::kSoftInk, Align::Right};
    writeLine(cells.next(columns.name), "quantity, mm where no other unit stands", left);
    writeLine(cells.next(columns.received), "as received", right);
    writeLine(cells.next(columns.predicted), "predicted", right);
    writeLine(cells.next(columns.now), "now ± U", right);
    writeLine(cells.next(columns.bar), "", left);
    writeLine(cells.next(columns.standing), "against the limit", left);
}

struct SecondLine {
    std::string words{};
    ImU32 colour = palette::kSoftInk;
};

/// What matters most about a reading besides its numbers.
SecondLine secondLineOf(const QuantityResult& result) {
    using Outcome = BeforeAndAfter::Outcome;
    if (result.after && !result.after->flags.empty())
        return {"! " + result.after->flags.front().words, palette::kBroken};
    if (result.disagrees)
        return {"! differs from the prediction by more than both allow", palette::kBroken};
    if (result.change && !result.change->words.empty()) {
        const bool odd = result.change->outcome == Outcome::Unexpected ||
                         result.change->outcome == Outcome::NoChangeThoughExpected;
        return {(odd ? "? " : "") + result.change->words, odd ? palette::kNoticeInk : palette::kSoftInk};
    }
    if (!result.after)
        return {result.measurement->where};
    return {result.words};
}

std::string receivedWords(const QuantityResult& result, int decimals) {
    return result.before ? numberWords(result.before->judged, decimals) : std::string{"–"};
}

std::string predictedWords(const QuantityResult& result, int decimals) {
    if (!result.predicted)
        return "–";
    const Predicted& predicted = *result.predicted;
    if (predicted.chain)
        return fmt::format("{} ± {}", numberWords(predicted.value, decimals),
                           numberWords(predicted.chain->rssMm, decimals));
    return windowWords({predicted.least, predicted.most}, decimals);
}

std::string nowWords(const QuantityResult& result, int decimals) {
    if (!result.after)
        return "–";
    return fmt::format("{} ± {}", numberWords(result.after->judged, decimals),
                       numberWords(result.after->expanded, decimals));
}

std::string numberHead(const QuantityResult& result) {
    const Quantity& quantity = *result.quantity;
    return quantity.unit == Unit::Millimetres
               ? quantity.id.text
               : fmt::format("{}, {}", quantity.id.text, symbolOf(quantity.unit));
}

/// The name in one line, or small in two.
void writeName(const QuantityResult& result, const Area& area, const Surface& surface) {
    const std::string& name = result.quantity->name;
    ImFont* strong = surface.fonts().strong;
    if (static_cast<double>(sizeOf(strong, name).x) <= area.width) {
        writeLine(area, name, {strong});
        return;
    }
    ImFont* font = surface.fonts().small;
    const double height = std::min(heightOf(area.width, name, font), 2.0 * lineHeightOf(font));
    writeLines({area.x, area.middleY() - height / 2.0, area.width, height + 1.0}, name, {font});
}

void writeNumbers(const QuantityResult& result, Cells& cells, const Columns& columns,
                  const Surface& surface) {
    const int decimals = decimalsFor(result);
    ImFont* font = surface.fonts().body;
    writeLine(cells.next(columns.received), receivedWords(result, decimals),
              {font, palette::kInk, Align::Right});
    writeLine(cells.next(columns.predicted), predictedWords(result, decimals),
              {font, palette::kAccent, Align::Right});
    writeLine(cells.next(columns.now), nowWords(result, decimals),
              {surface.fonts().strong, palette::kInk, Align::Right});
}

void writeStanding(const QuantityResult& result, const Area& cell, const Surface& surface) {
    const StandingLook look = lookOf(result.standing);
    drawStandingSign(result.standing, point(cell.x + surface.px(9.0), cell.middleY()), surface.px(8.0));
    const std::string words = std::string{look.word} + (result.close ? ", close" : "");
    const Area told{cell.x + surface.px(22.0), cell.y, cell.width - surface.px(22.0), cell.height};
    const double height = std::min(heightOf(told.width, words, surface.fonts().small), told.height);
    writeLines({told.x, told.middleY() - height / 2.0, told.width, height + 1.0}, words,
               {surface.fonts().small, look.colour});
}

/// Numbers above; below them, as wide as they, what is to be said of them.
std::optional<Wish> drawRow(const QuantityResult& result, const Area& row, const Surface& surface) {
    const Pressed pressed = pressable(surface, result.quantity->id.text.c_str(), row);
    if (pressed.hovered || pressed.held)
        fillArea(row, palette::kShade, surface.px(4.0));
    fillArea({row.x, row.bottom() - 1.0, row.width, 1.0}, palette::kHairline);
    const double gap = surface.px(10.0);
    const Columns columns = columnsIn(row.width, surface);
    const double below = lineHeightOf(surface.fonts().small);
    const Area upper{row.x, row.y, row.width, row.height - below - 2.0};
    Cells cells{upper, gap};
    const double id = surface.px(60.0);
    const Area name = cells.next(columns.name);
    const bool narrow = static_cast<double>(sizeOf(surface.fonts().strong, numberHead(result)).x) > id - 6.0;
    writeLine({name.x, name.y, id - 4.0, name.height}, numberHead(result),
              {narrow ? surface.fonts().small : surface.fonts().strong, palette::kAccent});
    writeName(result, {name.x + id, name.y, name.width - id, name.height}, surface);
    writeNumbers(result, cells, columns, surface);
    Cells whole{row, gap};
    const double words = columns.name + columns.received + columns.predicted + columns.now;
    const SecondLine second = secondLineOf(result);
    const Area told = whole.next(words);
    writeLine({told.x, upper.bottom() - 1.0, told.width, below}, second.words,
              {surface.fonts().small, second.colour});
    drawSmallBar(limitBarOf(result), whole.next(columns.bar), surface);
    writeStanding(result, whole.next(columns.standing), surface);
    if (!pressed.done)
        return std::nullopt;
    return openAt(*result.measurement, result.quantity->id, surface.drafts().measure);
}

std::optional<LeverSketch> leverOf(const Job& job) {
    const Frame& frame = job.frame;
    const MeasureReport& report = job.measured;
    if (!frame.lever)
        return std::nullopt;
    const LeverPlan& plan = *frame.lever;
    LeverSketch sketch{.spanMm = plan.spanMm, .noseMm = plan.noseMm, .turbineMm = plan.turbineMm};
    const auto read = [&](const QuantityId& id) -> std::optional<double> {
        const QuantityResult* result = report.of(id);
        return result && result->after ? std::optional{result->after->value} : std::nullopt;
    };
    sketch.noseReading = read(plan.noseReading);
    sketch.turbineReading = read(plan.turbineReading);
    if (const Prediction* parts = predictionOf(report, plan.compressorPlay))
        sketch.compressorParts = parts->valueMm;
    if (const Prediction* parts = predictionOf(report, plan.turbinePlay))
        sketch.turbineParts = parts->valueMm;
    sketch.playMost = windowOf(frame, plan.compressorPlay).most;
    if (report.play) {
        sketch.compressorBand = report.play->compressorBand;
        sketch.turbineBand = report.play->turbineBand;
    }
    return sketch;
}

/// The axial clearance as the parts give it, large; a touch shows how it comes about.
std::optional<Wish> drawPredicted(const Job& job, const Area& area, const Surface& surface) {
    const Chain* chain = job.frame.chains.empty() ? nullptr : &job.frame.chains.front();
    const Prediction* prediction = chain ? predictionOf(job.measured, chain->id) : nullptr;
    if (!prediction)
        return std::nullopt;
    const Pressed pressed = pressable(surface, "predicted", area);
    fillArea(area, pressed.hovered ? palette::kShade : palette::kAccentLight, surface.px(5.0));
    const Area inner = area.inset(surface.px(8.0));
    const double line = lineHeightOf(surface.fonts().small);
    writeLine({inner.x, inner.y, inner.width, line},
              fmt::format("{} {} predicted, {}", chain->name, chain->id.text, linksWords(*prediction)),
              {surface.fonts().small});
    writeLine(
        {inner.x, inner.y + line, inner.width, inner.height - line},
        fmt::format("{} ± {} mm", numberWords(prediction->valueMm, 3), numberWords(prediction->rssMm, 3)),
        {surface.fonts().title, palette::kAccent});
    return pressed.done
               ? std::optional<Wish>{ReadMeasures{MeasuresPage{MeasuresPage::Kind::Stack, chain->id}}}
               : std::nullopt;
}

std::optional<Wish> drawBeside(const Job& job, const Area& area, const Surface& surface) {
    const double predicted = std::max(surface.target, surface.px(64.0));
    const std::optional<Wish> wish = drawPredicted(job, {area.x, area.y, area.width, predicted}, surface);
    const Area rest{area.x, area.y + predicted + surface.px(12.0), area.width,
                    area.height - predicted - surface.px(12.0)};
    if (const std::optional<LeverSketch> sketch = leverOf(job)) {
        const double line = lineHeightOf(surface.fonts().strong);
        writeLine({rest.x, rest.y, rest.width, line}, "Radial: which bearing it is",
                  {surface.fonts().strong});
        const double height = std::min(rest.height - line - 4.0, surface.px(320.0));
        drawLever(*sketch, {rest.x, rest.y + line + 4.0, rest.width, height}, surface);
        const double y = rest.y + line + height + surface.px(14.0);
        if (job.measured.play)
            writeLines({rest.x, y, rest.width, rest.bottom() - y}, job.measured.play->words,
                       {surface.fonts().body});
    }
    return wish;
}

} // namespace

std::optional<Wish> readingsPage(const Job& job, const Area& area, const Surface& surface) {
    MeasuringDrafts& drafts = surface.drafts().measuring;
    const double gap = surface.px(6.0);
    const double row = rowHeight(surface);
    const double line = std::max(row, surface.px(52.0));
    const double wide = surface.px(150.0);
    for (std::size_t i = 0; i < kChoices.size(); ++i)
        if (button(surface, {area.x + static_cast<double>(i) * (wide + gap), area.y, wide, row},
                   kChoices.at(i).label, {.chosen = drafts.show == kChoices.at(i).show})) {
            drafts.show = kChoices.at(i).show;
            drafts.readingsPage = 0;
        }
    std::optional<Wish> wish;
    const double head = lineHeightOf(surface.fonts().small) + surface.px(4.0);
    const bool beside = drafts.show == Show::Assembly;
    const double side = beside ? std::max(surface.px(380.0), area.width * 0.30) : 0.0;
    const Area table{area.x, area.y + row + gap, area.width - side - (beside ? surface.px(18.0) : 0.0),
                     area.height - row - gap};
    const std::vector<const QuantityResult*> rows = rowsOf(job.measured, drafts.show);
    const auto fit = static_cast<std::size_t>(std::max(1.0, (table.height - head) / line));
    const std::size_t pages = (rows.size() + fit - 1) / fit;
    leafButton(drafts.readingsPage, pages, {table.right() - wide, area.y, wide, row}, surface);
    writeHead({table.x, table.y, table.width, head}, surface);
    for (std::size_t i = 0; i < fit && drafts.readingsPage * fit + i < rows.size(); ++i) {
        const Area place{table.x, table.y + head + static_cast<double>(i) * line, table.width, line};
        if (auto asked = drawRow(*rows[drafts.readingsPage * fit + i], place, surface))
            wish = std::move(asked);
    }
    if (rows.empty())
        writeLine({table.x, table.y + head, table.width, row}, "Nothing of this kind.",
                  {surface.fonts().body});
    if (beside)
        if (auto asked =
                drawBeside(job, {table.right() + surface.px(18.0), area.y, side, area.height}, surface))
            wish = std::move(asked);
    return wish;
}

} // namespace gapwise
