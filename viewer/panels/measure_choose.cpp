#include "viewer/panels/measure_parts.h"
#include "viewer/panels/plots.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

using Page = MeasureDrafts::Page;

/// A thing that can be chosen.
struct Choice {
    std::string label{};
    std::string second{};
    std::string id{};
    bool chosen = false;
};

/// Choices in columns and rows, leafed through where there are more; the one that is pressed.
std::optional<std::size_t> choose(const std::vector<Choice>& choices, const Area& area, int columns,
                                  const Surface& surface) {
    MeasureDrafts& drafts = surface.drafts().measure;
    const double gap = surface.px(6.0);
    const double row = std::max(surface.target, surface.px(46.0));
    const auto rows = static_cast<std::size_t>(std::max(1.0, std::floor((area.height + gap) / (row + gap))));
    const std::size_t room = rows * static_cast<std::size_t>(columns);
    const bool leafs = choices.size() > room;
    const std::size_t each = leafs ? room - 1 : room;
    const std::size_t leaves = std::max<std::size_t>(1, (choices.size() + each - 1) / each);
    drafts.leaf = std::min(drafts.leaf, leaves - 1);
    const auto cell = [&](std::size_t index) {
        const std::size_t across = static_cast<std::size_t>(columns);
        const Area line{area.x, area.y + static_cast<double>(index / across) * (row + gap), area.width, row};
        return columnOf(line, columns, static_cast<int>(index % across), gap);
    };
    std::optional<std::size_t> pressed;
    const std::size_t first = drafts.leaf * each;
    for (std::size_t i = first; i < std::min(first + each, choices.size()); ++i) {
        const Choice& choice = choices[i];
        if (button(surface, cell(i - first), choice.label,
                   {.chosen = choice.chosen,
                    .font = surface.fonts().strong,
                    .second = choice.second,
                    .id = choice.id}))
            pressed = i;
    }
    if (leafs && button(surface, cell(room - 1), "More",
                        {.second = fmt::format("{} of {}", drafts.leaf + 1, leaves), .id = "choose more"}))
        drafts.leaf = (drafts.leaf + 1) % leaves;
    return pressed;
}

void openPage(MeasureDrafts& drafts, Page page) {
    drafts.page = drafts.page == page ? Page::Read : page;
    drafts.leaf = 0;
}

/// What stands of a quantity in a line: its value with the word of its standing.
std::string standsWords(const MeasureReport& report, const Quantity& quantity, Occasion occasion) {
    const QuantityResult* result = report.of(quantity.id);
    const bool before = occasion == Occasion::Before;
    const Evaluated* value = !result ? nullptr
                                     : (before ? (result->before ? &*result->before : nullptr)
                                               : (result->after ? &*result->after : nullptr));
    if (!value)
        return quantity.from.empty() ? "not read" : "reckoned, or read";
    const std::string number =
        fmt::format("{} {}", numberWords(value->judged, decimalsOf(quantity.unit)), symbolOf(quantity.unit));
    return before ? number : fmt::format("{} · {}", number, lookOf(result->standing).word);
}

std::string gaugeWords(const Instrument& gauge) {
    std::string words =
        fmt::format("U {:g} {}, {:g}–{:g}", gauge.uncertainty, gauge.unit, gauge.least, gauge.most);
    if (!gauge.calibratedUntil.empty())
        words += ", until " + gauge.calibratedUntil;
    return words;
}

/// `U 0.003, until 2027-03-31`
std::string shortGauge(const Instrument& gauge) {
    return fmt::format("U {:g}, {}", gauge.uncertainty,
                       gauge.calibratedUntil.empty() ? "no date known" : "until " + gauge.calibratedUntil);
}

/// Those of the sheet and of the bench, what suits first.
std::vector<const Instrument*> gaugesOf(const MeasureWork& work, std::string_view today) {
    std::vector<const Instrument*> gauges;
    for (const std::vector<Instrument>* list :
         {&work.job.state.build.instruments, &work.job.bench.instruments})
        for (const Instrument& each : *list)
            if (std::ranges::find(gauges, each.id, [](const Instrument* one) { return one->id; }) ==
                gauges.end())
                gauges.push_back(&each);
    std::ranges::stable_partition(
        gauges, [&](const Instrument* each) { return gaugeFault(work, *each, today).empty(); });
    return gauges;
}

/// A temperature with what makes it less and more; 20 °C until it is said.
void temperature(const char* what, std::optional<double>& degrees, const Area& area, const Surface& surface) {
    const double side = std::max(surface.target, surface.px(44.0));
    const double now = degrees.value_or(20.0);
    const Area middle{area.x + side, area.y, area.width - 2.0 * side, area.height};
    if (button(surface, {area.x, area.y, side, area.height}, "−",
               {.enabled = now > -20.0, .font = surface.fonts().title, .id = fmt::format("{} colder", what)}))
        degrees = now - 1.0;
    writeLine({middle.x, middle.y, middle.width, middle.height * 0.56}, fmt::format("{:g} °C", now),
              {surface.fonts().title, degrees ? palette::kInk : palette::kSoftInk, Align::Middle});
    writeLine({middle.x, middle.y + middle.height * 0.54, middle.width, middle.height * 0.4},
              degrees ? what : fmt::format("{}, not said", what),
              {surface.fonts().small, palette::kSoftInk, Align::Middle});
    if (button(surface, {middle.right(), area.y, side, area.height}, "+",
               {.enabled = now < 60.0, .font = surface.fonts().title, .id = fmt::format("{} warmer", what)}))
        degrees = now + 1.0;
}

/// `M01  journal diameter`; an id that is words itself is left out.
std::string titleOf(const Measurement& measurement) {
    const std::string& id = measurement.id.text;
    const bool number = std::ranges::none_of(id, [](char each) { return each >= 'a' && each <= 'z'; });
    return number ? fmt::format("{}  {}", id, measurement.name) : measurement.name;
}

/// A chip of the head: what is chosen, pressed to choose anew.
struct Chip {
    double share = 1.0;
    Page page = Page::Read;
    std::string label{};
    std::string second{};
    const char* id = "";
    bool can = true;
};

std::vector<Chip> chipsOf(const MeasureWork& work, std::string_view today) {
    const std::size_t count = work.measurement.quantities.size();
    std::vector<Chip> chips;
    chips.push_back({0.8, Page::Quantity, work.quantity.id.text,
                     count > 1 ? fmt::format("of {} sizes", count) : "the only size", "quantity", count > 1});
    std::string gauge = "which gauge?";
    std::string second = work.job.bench.instruments.empty() ? "none on this bench" : "not said yet";
    if (work.gauge) {
        const std::string fault = gaugeFault(work, *work.gauge, today);
        gauge = (fault.empty() ? "" : "! ") + work.gauge->id;
        second = fault.empty() ? shortGauge(*work.gauge) : fault;
    }
    chips.push_back({1.25, Page::Gauge, gauge, second, "gauge", true});
    if (work.method) {
        const bool forLimit = work.quantity.limits.method == work.method->id;
        chips.push_back({1.1, Page::Method, spacedWords(work.method->id),
                         !work.method->blind.empty()           ? "! blind"
                         : forLimit                            ? "the limit is for it"
                         : work.quantity.limits.method.empty() ? "how it is read"
                                                               : "! not the limit's",
                         "method", true});
    }
    return chips;
}

} // namespace

std::string spacedWords(std::string_view word) {
    std::string out{word};
    std::ranges::replace(out, '_', ' ');
    std::ranges::replace(out, '-', ' ');
    return out;
}

std::optional<Wish> measureHead(const MeasureWork& work, const Area& area, const Surface& surface) {
    MeasureDrafts& drafts = surface.drafts().measure;
    const Fonts& fonts = surface.fonts();
    const double gap = surface.px(6.0);
    const double end = std::max(surface.target, surface.px(82.0));
    std::optional<Wish> wish;
    if (button(surface, {area.right() - end, area.y, end, area.height}, "Close",
               {.font = fonts.small, .second = "Escape"}))
        wish = OpenMeasurement{};
    const double all = area.right() - 2.0 * end - gap;
    if (button(surface, {all, area.y, end, area.height}, "All …",
               {.font = fonts.small, .second = "readings"}))
        wish = ReadMeasures{MeasuresPage{}};
    const Area rest{area.x, area.y, all - gap - area.x, area.height};
    const Area title{rest.x, rest.y, std::floor(rest.width * 0.29), rest.height};
    const double upper = title.height * 0.5;
    writeLine({title.x, title.y, title.width, upper}, titleOf(work.measurement), {fonts.strong});
    writeLine({title.x, title.y + upper, title.width, title.height - upper}, work.measurement.where,
              {fonts.small, palette::kSoftInk});
    const std::vector<Chip> chips = chipsOf(work, surface.frame.today);
    const bool occasions = work.measurement.before.has_value();
    double shares = occasions ? 1.3 : 0.0;
    for (const Chip& chip : chips)
        shares += chip.share;
    const double count = static_cast<double>(chips.size()) + (occasions ? 2.0 : 0.0);
    double x = title.right() + gap;
    const double unit = (rest.right() - x - gap * (count - 1.0)) / shares;
    for (const Chip& chip : chips) {
        if (button(surface, {x, rest.y, unit * chip.share, rest.height}, chip.label,
                   {.chosen = drafts.page == chip.page,
                    .enabled = chip.can,
                    .font = fonts.strong,
                    .second = chip.second,
                    .id = chip.id}))
            openPage(drafts, chip.page);
        x += unit * chip.share + gap;
    }
    if (occasions)
        for (const auto& [occasion, label] :
             {std::pair{Occasion::Before, "As received"}, std::pair{Occasion::After, "Now"}}) {
            const double wide = unit * (occasion == Occasion::Before ? 0.78 : 0.52);
            if (button(surface, {x, rest.y, wide, rest.height}, label,
                       {.chosen = work.occasion == occasion, .font = fonts.small})) {
                drafts.occasion = occasion;
                turnToQuantity(work.quantity.id, drafts);
            }
            x += wide + gap;
        }
    return wish;
}

void chooseQuantity(const MeasureWork& work, const Area& area, const Surface& surface) {
    std::vector<Choice> choices;
    for (const Quantity& each : work.measurement.quantities)
        choices.push_back({each.id.text, standsWords(work.job.measured, each, work.occasion),
                           "quantity " + each.id.text, each.id == work.quantity.id});
    if (const auto chosen = choose(choices, area, 4, surface))
        turnToQuantity(work.measurement.quantities[*chosen].id, surface.drafts().measure);
}

void chooseGauge(const MeasureWork& work, const Area& area, const Surface& surface) {
    MeasureDrafts& drafts = surface.drafts().measure;
    const double gap = surface.px(10.0);
    const Area right{area.right() - surface.px(220.0), area.y, surface.px(220.0), area.height};
    const std::vector<const Instrument*> gauges = gaugesOf(work, surface.frame.today);
    std::vector<Choice> choices;
    for (const Instrument* each : gauges) {
        const std::string fault = gaugeFault(work, *each, surface.frame.today);
        choices.push_back({fmt::format("{}{}  {}", fault.empty() ? "" : "! ", each->id, each->name),
                           fault.empty() ? gaugeWords(*each) : fault, "gauge " + each->id,
                           each == work.gauge});
    }
    choices.push_back({"None of these", "the reading says none", "gauge none", !work.gauge});
    if (const auto chosen =
            choose(choices, {area.x, area.y, right.x - gap - area.x, area.height}, 3, surface)) {
        takeGauge(work, drafts, *chosen < gauges.size() ? gauges[*chosen]->id : "");
        drafts.page = Page::Read;
    }
    const double row = std::max(surface.target, surface.px(46.0));
    temperature("part", drafts.partC, {right.x, right.y, right.width, row}, surface);
    temperature("gauge", drafts.gaugeC, {right.x, right.y + row + surface.px(6.0), right.width, row},
                surface);
    writeLines({right.x, right.y + 2.0 * row + surface.px(14.0), right.width,
                right.height - 2.0 * row - surface.px(14.0)},
               "Sizes hold at 20 °C; what is said here is taken off.",
               {surface.fonts().small, palette::kSoftInk});
}

void chooseMethod(const MeasureWork& work, const Area& area, const Surface& surface) {
    MeasureDrafts& drafts = surface.drafts().measure;
    std::vector<Choice> choices;
    for (const Method& each : work.measurement.methods) {
        std::string second = each.id == work.quantity.limits.method ? "the limit is for it"
                                                                    : "the limit is for another method";
        if (work.quantity.limits.method.empty())
            second = "no limit names a method";
        if (!each.blind.empty())
            second = "blind: " + each.blind;
        choices.push_back({each.words, second, "method " + each.id, &each == work.method});
    }
    if (const auto chosen = choose(choices, area, 1, surface)) {
        drafts.methods[work.quantity.id.text] = work.measurement.methods[*chosen].id;
        drafts.page = Page::Read;
    }
}

} // namespace gapwise
