#include "viewer/panels/card_frame.h"
#include "viewer/panels/measure_parts.h"
#include "viewer/panels/plots.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace gapwise {

namespace {

std::string kindOf(const MeasureWork& work) {
    if (work.gauge)
        return work.gauge->kind;
    return work.method && !work.method->gauges.empty() ? work.method->gauges.front() : "";
}

/// What stands as received, beside a reading of now.
const Evaluated* previousOf(const MeasureWork& work) {
    const bool now = work.occasion == Occasion::After && work.result && work.result->before;
    return now ? &*work.result->before : nullptr;
}

/// What was evaluated, unless something new is being entered.
const Evaluated* toldOf(const MeasureWork& work) {
    return work.taken || work.reckoned() ? work.evaluated() : nullptr;
}

/// The value that is drawn: of the reading that counts, else of what was entered so far.
std::optional<double> valueOf(const MeasureWork& work) {
    const Evaluated* evaluated = toldOf(work);
    return evaluated ? std::optional{evaluated->judged} : work.judged();
}

Window shownWindow(const MeasureWork& work) {
    const Limits& limits = work.quantity.limits;
    if (!limits.fresh.empty())
        return limits.fresh;
    return work.result ? work.result->limit : Window{};
}

Indicator indicatorOf(const MeasureWork& work) {
    Indicator indicator{.value = valueOf(work),
                        .window = shownWindow(work),
                        .unit = std::string{symbolOf(work.quantity.unit)},
                        .decimals = decimalsOf(work.quantity.unit)};
    if (const Evaluated* previous = previousOf(work))
        indicator.previous = previous->judged;
    if (work.gauge && work.gauge->resolution > 0.0)
        indicator.division = work.gauge->resolution;
    return indicator;
}

void drawFour(const MeasureWork& work, const Area& area, const Surface& surface) {
    const FourPointPlan& plan = *work.quantity.fourPoint;
    FourPointSketch sketch{.seenFrom = plan.seenFrom, .mean = shownWindow(work)};
    for (std::size_t i = 0; i < std::min<std::size_t>(4, work.values.size()); ++i)
        sketch.gaps.at(i) = work.values[i];
    if (work.at < work.values.size())
        sketch.readNow = work.at % 4;
    if (work.taken && work.result)
        sketch.result =
            work.occasion == Occasion::Before ? work.result->fourPointBefore : work.result->fourPoint;
    if (plan.pointLeast > 0.0)
        sketch.pointLeast = plan.pointLeast;
    if (plan.eccentricityMost > 0.0)
        sketch.eccentricityMost = plan.eccentricityMost;
    drawFourPoints(sketch, area, surface);
}

std::optional<Side> leverEnd(const MeasureWork& work) {
    const auto& lever = work.job.frame.lever;
    if (lever && lever->noseReading == work.quantity.id)
        return Side::Compressor;
    if (lever && lever->turbineReading == work.quantity.id)
        return Side::Turbine;
    return std::nullopt;
}

std::optional<double> readingAt(const MeasureWork& work, const QuantityId& id) {
    if (id == work.quantity.id)
        return valueOf(work);
    const QuantityResult* result = work.job.measured.of(id);
    return result && result->after ? std::optional{result->after->judged} : std::nullopt;
}

void drawRocked(const MeasureWork& work, Side end, const Area& area, const Surface& surface) {
    const LeverPlan& plan = *work.job.frame.lever;
    LeverSketch sketch{.spanMm = plan.spanMm,
                       .noseMm = plan.noseMm,
                       .turbineMm = plan.turbineMm,
                       .noseReading = readingAt(work, plan.noseReading),
                       .turbineReading = readingAt(work, plan.turbineReading)};
    if (work.at < work.values.size())
        sketch.readNow = end;
    if (const auto& play = work.job.measured.play; play && work.occasion == Occasion::After) {
        sketch.compressorBand = play->compressorBand;
        sketch.turbineBand = play->turbineBand;
        sketch.compressorParts = play->compressorParts;
        sketch.turbineParts = play->turbineParts;
        sketch.words = play->words;
    }
    drawLever(sketch, area, surface);
}

void drawAllRepeats(const MeasureWork& work, const Area& area, const Surface& surface) {
    RepeatsPlot plot{.values = work.read(),
                     .window = work.quantity.takes == Takes::Range ? Window{} : shownWindow(work),
                     .spreadMost = work.quantity.spreadMost,
                     .unit = std::string{symbolOf(work.quantity.unit)},
                     .decimals = decimalsOf(work.quantity.unit)};
    const auto [least, most] = std::ranges::minmax(plot.values);
    plot.spread = most - least;
    if (!work.quantity.points.empty())
        for (std::size_t i = 0; i < work.values.size(); ++i)
            if (work.values[i])
                plot.places.push_back(shortPlace(work.quantity, i));
    drawRepeats(plot, area, surface);
}

void drawInstrument(const MeasureWork& work, const Area& area, const Surface& surface) {
    const std::string kind = kindOf(work);
    if (kind == "dial_indicator")
        return drawIndicatorFace(indicatorOf(work), area, surface);
    drawRuler(indicatorOf(work), kind == "feeler_gauges" ? RulerKind::Feelers : RulerKind::Micrometer, area,
              surface);
}

/// Words with their type, the most needed first.
using Said = std::vector<std::pair<std::string, Type>>;

std::string limitWords(const MeasureWork& work) {
    const Limits& limits = work.quantity.limits;
    const int decimals = decimalsOf(work.quantity.unit);
    const std::string_view unit = symbolOf(work.quantity.unit);
    const Window window = shownWindow(work);
    if (window.empty() && limits.service.empty())
        return "No limit: it is written down, and other sizes are reckoned with it.";
    std::string words;
    if (!window.empty())
        words = fmt::format("{} {} {}", limits.service.empty() ? "Wanted" : "New",
                            windowWords(window, decimals), unit);
    if (!limits.service.empty())
        words += fmt::format("{} {} {}", words.empty() ? "Service" : "; service",
                             windowWords(limits.service, decimals), unit);
    words +=
        limits.rule == LimitRule::Guarded ? ", less U as guard band (ISO 14253-1)." : ", held as printed.";
    return words;
}

/// `rim_A − a_A`
std::string termWords(const std::vector<Term>& terms) {
    std::string words;
    for (const Term& term : terms)
        words +=
            (term.sign < 0 ? (words.empty() ? "−" : " − ") : (words.empty() ? "" : " + ")) + term.of.text;
    return words;
}

Said saidOf(const MeasureWork& work, const Surface& surface) {
    const Fonts& fonts = surface.fonts();
    Said said;
    const QuantityResult* result = work.result;
    const Evaluated* evaluated = toldOf(work);
    if (evaluated && work.occasion == Occasion::After && result && !result->words.empty())
        said.push_back({result->words, {fonts.strong}});
    if (!work.taken)
        for (const std::string& line : heeded(work, surface.frame.today))
            said.push_back({"! " + line, {fonts.body, palette::kBroken}});
    if (evaluated)
        for (const Flag& flag : evaluated->flags)
            said.push_back({"! " + flag.words, {fonts.body, palette::kBroken}});
    said.push_back({limitWords(work), {fonts.body, palette::kSoftInk}});
    if (!work.quantity.from.empty())
        said.push_back({"Reckoned as " + termWords(work.quantity.from) + " where nobody reads it itself.",
                        {fonts.body, palette::kSoftInk}});
    if (result && result->predicted && !result->predicted->words.empty())
        said.push_back({"Predicted " + result->predicted->words, {fonts.body, palette::kSoftInk}});
    if (evaluated && work.occasion == Occasion::After && result && result->change)
        said.push_back({result->change->words, {fonts.body}});
    return said;
}

/// As much as has room, in smaller type before anything is left out.
void say(Said said, Area area, const Surface& surface) {
    const double gap = surface.px(3.0);
    double needed = 0.0;
    for (const auto& [words, type] : said)
        needed += heightOf(area.width, words, type.font) + gap;
    for (auto& [words, type] : said) {
        if (needed > area.height)
            type.font = surface.fonts().small;
        const double used = writeLines(area, words, type) + gap;
        area = {area.x, area.y + used, area.width, std::max(0.0, area.height - used)};
    }
}

LimitBar barOf(const MeasureWork& work) {
    const Limits& limits = work.quantity.limits;
    const Evaluated* evaluated = toldOf(work);
    LimitBar bar{.fresh = shownWindow(work),
                 .service = limits.service,
                 .freshWord = limits.service.empty() ? "wanted" : "new",
                 .value = valueOf(work),
                 .expanded = evaluated ? evaluated->expanded : (work.gauge ? work.gauge->uncertainty : 0.0),
                 .unit = std::string{symbolOf(work.quantity.unit)},
                 .decimals = decimalsOf(work.quantity.unit)};
    if (const Evaluated* previous = previousOf(work))
        bar.previous = previous->judged;
    if (work.result && work.result->predicted && work.occasion == Occasion::After) {
        bar.predicted = Window{work.result->predicted->least, work.result->predicted->most};
        bar.predictedValue = work.result->predicted->value;
    }
    if (!evaluated && bar.value)
        bar.word = "not taken yet";
    if (evaluated)
        bar.standing = work.occasion == Occasion::After ? work.result->standing : Standing::NoLimit;
    return bar;
}

} // namespace

void drawMeasured(const MeasureWork& work, const Area& area, const Surface& surface) {
    if (work.quantity.fourPoint)
        return drawFour(work, area, surface);
    if (const std::optional<Side> end = leverEnd(work))
        return drawRocked(work, *end, area, surface);
    if (work.read().size() < 2)
        return drawInstrument(work, area, surface);
    const double upper = area.height * 0.46;
    drawInstrument(work, {area.x, area.y, area.width, upper}, surface);
    drawAllRepeats(work, {area.x, area.y + upper, area.width, area.height - upper}, surface);
}

void drawHeld(const MeasureWork& work, const Area& area, const Surface& surface) {
    const double bar = std::min(surface.px(120.0), area.height * 0.56);
    drawLimitBar(barOf(work), {area.x, area.y, area.width, bar}, surface);
    const double top = area.y + bar + surface.px(4.0);
    say(saidOf(work, surface), {area.x, top, area.width, area.bottom() - top}, surface);
}

} // namespace gapwise
