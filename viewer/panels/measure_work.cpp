#include "viewer/panels/measure_work.h"

#include "models/gauging/plausible.h"
#include "viewer/panels/typed_number.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <sstream>

namespace gapwise {

namespace {

std::string keyOf(const QuantityId& quantity, Occasion occasion) {
    return quantity.text + (occasion == Occasion::Before ? "/before" : "/after");
}

std::string gaugeKeyOf(const Measurement& measurement, const Method* method) {
    return measurement.id.text + "/" + (method ? method->id : "");
}

/// The last reading of a quantity on an occasion; null where nobody took one.
const Reading* lastReadingOf(const Job& job, const Measurement& measurement, const Quantity& quantity,
                             Occasion occasion) {
    const bool only = measurement.quantities.size() == 1;
    const std::vector<Reading>& readings = job.state.build.readings;
    const auto found = std::find_if(readings.rbegin(), readings.rend(), [&](const Reading& each) {
        const bool named = each.quantity == quantity.id.text || (each.quantity.empty() && only);
        return each.measurement == measurement.id.text && named && each.occasion == occasion;
    });
    return found == readings.rend() ? nullptr : &*found;
}

const Method* methodOf(const Measurement& measurement, const Quantity& quantity, const Reading* last,
                       const MeasureDrafts& drafts) {
    const auto chosen = drafts.methods.find(quantity.id.text);
    if (chosen != drafts.methods.end())
        return measurement.method(chosen->second);
    if (last && measurement.method(last->method))
        return measurement.method(last->method);
    if (const Method* forLimit = measurement.method(quantity.limits.method))
        return forLimit;
    return measurement.methods.empty() ? nullptr : &measurement.methods.front();
}

/// A gauge that nobody chose is offered only where there is no choice.
const Instrument* onlyOneThatFits(const MeasureWork& work, std::string_view today) {
    const Instrument* only = nullptr;
    for (const Instrument& each : work.job.bench.instruments) {
        if (!gaugeFault(work, each, today).empty())
            continue;
        if (only)
            return nullptr;
        only = &each;
    }
    return only;
}

const Instrument* gaugeOf(const MeasureWork& work, const Reading* last, const MeasureDrafts& drafts,
                          std::string_view today) {
    const Job& job = work.job;
    const auto chosen = drafts.gauges.find(gaugeKeyOf(work.measurement, work.method));
    if (chosen != drafts.gauges.end())
        return instrumentOf(job.state.build, job.bench, chosen->second);
    if (last && !last->instrument.empty())
        return instrumentOf(job.state.build, job.bench, last->instrument);
    return work.method ? onlyOneThatFits(work, today) : nullptr;
}

/// What a single value is expected to be; of sizes around 0 nothing.
std::optional<double> expectedValue(const MeasureWork& work) {
    const Quantity& quantity = work.quantity;
    const auto above0 = [](std::optional<double> value) {
        return value && *value > 0.0 ? value : std::nullopt;
    };
    const bool range = quantity.takes == Takes::Range;
    if (!range && work.result && work.result->predicted)
        if (const auto predicted = above0(work.result->predicted->value))
            return predicted;
    if (const auto expected = above0(quantity.expected))
        return expected;
    if (range)
        return std::nullopt;
    if (const Dimension* dimension = work.job.frame.dimension(quantity.id))
        return above0(dimension->nominalMm);
    const Window& fresh = quantity.limits.fresh;
    return fresh.least && fresh.most ? above0((*fresh.least + *fresh.most) / 2.0) : std::nullopt;
}

std::size_t firstBlank(const MeasureDrafts::Values& values) {
    const auto blank = std::ranges::find_if(values, [](const auto& each) { return !each; });
    return static_cast<std::size_t>(blank - values.begin());
}

/// The values that are being entered; none yet: all blank.
MeasureDrafts::Values& entryOf(const MeasureWork& work, MeasureDrafts& drafts) {
    MeasureDrafts::Values& values = drafts.entered[keyOf(work.quantity.id, work.occasion)];
    if (values.empty())
        values.resize(std::max<std::size_t>(work.quantity.points.size(), 1));
    return values;
}

/// Throws away what was typed of the readings that were taken since the card was last drawn.
void forgetTaken(const Job& job, MeasureDrafts& drafts) {
    for (std::size_t i = drafts.events; i < job.log.events.size(); ++i) {
        const auto* event = std::get_if<ReadingTaken>(&job.log.events[i]);
        if (!event)
            continue;
        const QuantityId quantity{event->reading.quantity};
        drafts.entered.erase(keyOf(quantity, event->reading.occasion));
        if (quantity == drafts.quantity && event->reading.occasion == drafts.occasion) {
            drafts.typed.clear();
            drafts.at = 0;
        }
    }
}

std::vector<std::string> wordsIn(const std::string& text) {
    std::istringstream in{text};
    std::vector<std::string> words;
    for (std::string word; in >> word;)
        words.push_back(word);
    return words;
}

/// How many words all places begin with, one less than the shortest has at most.
std::size_t sharedWords(const std::vector<std::string>& places) {
    if (places.size() < 2)
        return 0;
    const std::vector<std::string> first = wordsIn(places.front());
    std::size_t shared = first.size();
    for (const std::string& place : places) {
        const std::vector<std::string> words = wordsIn(place);
        const auto same = std::ranges::mismatch(first, words).in1 - first.begin();
        const std::size_t most = words.empty() ? 0 : words.size() - 1;
        shared = std::min({shared, static_cast<std::size_t>(same), most});
    }
    return shared;
}

std::string spaced(std::string_view word) {
    std::string out{word};
    std::ranges::replace(out, '_', ' ');
    return out;
}

} // namespace

const Evaluated* MeasureWork::evaluated() const {
    if (!result)
        return nullptr;
    const std::optional<Evaluated>& of = occasion == Occasion::Before ? result->before : result->after;
    return of ? &*of : nullptr;
}

bool MeasureWork::reckoned() const {
    const Evaluated* value = evaluated();
    return value && !value->reading && read().empty();
}

bool MeasureWork::complete() const {
    const std::size_t count = read().size();
    if (count == 0 || quantity.points.empty())
        return count > 0;
    return count % quantity.points.size() == 0 && firstBlank(values) == count;
}

std::vector<double> MeasureWork::read() const {
    std::vector<double> out;
    for (const std::optional<double>& each : values)
        if (each)
            out.push_back(*each);
    return out;
}

std::optional<double> MeasureWork::judged() const {
    const std::vector<double> all = read();
    if (all.empty())
        return std::nullopt;
    const auto [least, most] = std::ranges::minmax(all);
    switch (quantity.takes) {
    case Takes::Least: return least;
    case Takes::Most: return most;
    case Takes::Range: return most - least;
    case Takes::Mean: break;
    }
    return std::accumulate(all.begin(), all.end(), 0.0) / static_cast<double>(all.size());
}

void turnTo(const Job& job, const Measurement& measurement, MeasureDrafts& drafts) {
    const std::size_t events = job.log.events.size();
    if (drafts.frame != job.frame.id.text || events < drafts.events)
        drafts = {.events = events, .quantity = drafts.quantity};
    forgetTaken(job, drafts);
    drafts.frame = job.frame.id.text;
    drafts.events = events;
    const StepId step = job.step.value_or(StepId{});
    if (drafts.measurement == measurement.id && drafts.step == step && measurement.quantity(drafts.quantity))
        return;
    drafts.measurement = measurement.id;
    drafts.step = step;
    drafts.occasion =
        measurement.before && measurement.before == job.step ? Occasion::Before : Occasion::After;
    const Quantity* aimedAt = measurement.quantity(drafts.quantity);
    turnToQuantity(aimedAt ? aimedAt->id : measurement.quantities.front().id, drafts);
}

Wish openAt(const Measurement& measurement, const QuantityId& quantity, MeasureDrafts& drafts) {
    drafts.measurement = {}; // It begins anew, at this quantity.
    drafts.quantity = quantity;
    return OpenMeasurement{measurement.id};
}

void turnToQuantity(const QuantityId& quantity, MeasureDrafts& drafts) {
    drafts.quantity = quantity;
    drafts.page = MeasureDrafts::Page::Read;
    drafts.leaf = 0;
    drafts.typed.clear();
    drafts.said.clear();
    drafts.doubt.reset();
    const auto entered = drafts.entered.find(keyOf(quantity, drafts.occasion));
    drafts.at = entered == drafts.entered.end() ? 0 : firstBlank(entered->second);
}

MeasureWork measureWorkOf(const Job& job, const Measurement& measurement, const MeasureDrafts& drafts,
                          std::string_view today) {
    const Quantity* quantity = measurement.quantity(drafts.quantity);
    MeasureWork work{.job = job,
                     .measurement = measurement,
                     .quantity = quantity ? *quantity : measurement.quantities.front(),
                     .occasion = drafts.occasion};
    work.result = job.measured.of(work.quantity.id);
    const Reading* last = lastReadingOf(job, measurement, work.quantity, work.occasion);
    work.method = methodOf(measurement, work.quantity, last, drafts);
    work.gauge = gaugeOf(work, last, drafts, today);
    const auto entered = drafts.entered.find(keyOf(work.quantity.id, work.occasion));
    work.taken = last && entered == drafts.entered.end();
    if (work.taken)
        work.values.assign(last->values.begin(), last->values.end());
    else if (entered != drafts.entered.end())
        work.values = entered->second;
    else
        work.values.resize(std::max<std::size_t>(work.quantity.points.size(), 1));
    work.at = work.taken ? work.values.size() : std::min(drafts.at, work.values.size());
    return work;
}

std::string shortPlace(const Quantity& quantity, std::size_t place) {
    const std::vector<std::string>& places = quantity.points;
    if (places.empty())
        return fmt::format("{}", place + 1);
    const std::vector<std::string> words = wordsIn(places[place % places.size()]);
    const auto from = words.begin() + static_cast<std::ptrdiff_t>(sharedWords(places));
    return fmt::format("{}", fmt::join(from, words.end(), " "));
}

std::string placeWords(const MeasureWork& work) {
    const std::vector<std::string>& places = work.quantity.points;
    if (work.at >= work.values.size())
        return work.taken ? "taken" : "all read";
    if (places.empty())
        return work.values.size() == 1 ? "one reading, or repeats" : fmt::format("repeat {}", work.at + 1);
    std::string words = fmt::format("{} · {} of {}", places[work.at % places.size()],
                                    work.at % places.size() + 1, places.size());
    if (work.values.size() > places.size())
        words += fmt::format(", round {}", work.at / places.size() + 1);
    return words;
}

std::string gaugeFault(const MeasureWork& work, const Instrument& gauge, std::string_view today) {
    if (work.method && !work.method->gauges.empty() &&
        std::ranges::find(work.method->gauges, gauge.kind) == work.method->gauges.end())
        return fmt::format("is no {}", spaced(work.method->gauges.front()));
    if (gauge.unit != nameOf(work.quantity.unit))
        return fmt::format("reads in {}", gauge.unit);
    if (!gauge.calibratedUntil.empty() && !today.empty() && gauge.calibratedUntil < today)
        return fmt::format("its calibration ran out on {}", gauge.calibratedUntil);
    const std::vector<double> read = work.read();
    const std::optional<double> about = read.empty() ? expectedValue(work) : std::optional{read.front()};
    if (about && (std::abs(*about) < gauge.least || std::abs(*about) > gauge.most))
        return fmt::format("reads from {:g} to {:g} {}", gauge.least, gauge.most, gauge.unit);
    return {};
}

void takeGauge(const MeasureWork& work, MeasureDrafts& drafts, std::string gauge) {
    drafts.gauges[gaugeKeyOf(work.measurement, work.method)] = std::move(gauge);
}

std::vector<std::string> heeded(const MeasureWork& work, std::string_view today) {
    std::vector<std::string> lines;
    const Limits& limits = work.quantity.limits;
    if (work.method && !work.method->blind.empty())
        lines.push_back("This method is blind to something: " + work.method->blind + ".");
    if (work.method && !limits.method.empty() && limits.method != work.method->id) {
        const Method* other = work.measurement.method(limits.method);
        lines.push_back(
            fmt::format("The limit is for another method: {}.", other ? other->words : limits.method));
    }
    if (work.gauge)
        if (const std::string fault = gaugeFault(work, *work.gauge, today); !fault.empty())
            lines.push_back(fmt::format("{} {}.", work.gauge->id, fault));
    return lines;
}

const Quantity* nextUnread(const MeasureWork& work) {
    for (const Quantity& each : work.measurement.quantities)
        if (each.id != work.quantity.id && each.from.empty() &&
            !lastReadingOf(work.job, work.measurement, each, work.occasion))
            return &each;
    return nullptr;
}

bool isMeasureKey(char letter) {
    return (letter >= '0' && letter <= '9') || letter == '.' || letter == ',' || letter == '-';
}

void typeKey(const MeasureWork& work, MeasureDrafts& drafts, char key) {
    constexpr std::size_t kMostDigits = 10;
    drafts.said.clear();
    drafts.doubt.reset();
    if (key == '<') {
        if (!drafts.typed.empty())
            drafts.typed.pop_back();
        else if (!work.taken && work.at > 0)
            goTo(work, drafts, work.at - 1);
        return;
    }
    if (work.at >= work.values.size() && !work.taken) {
        drafts.said = "all is read: take it, or tap a value to type it anew";
        return;
    }
    if (work.taken) { // What is typed now begins another reading.
        entryOf(work, drafts);
        drafts.at = 0;
    }
    if (key == '-') {
        if (drafts.typed.starts_with('-'))
            drafts.typed.erase(0, 1);
        else
            drafts.typed.insert(0, 1, '-');
        return;
    }
    if (key == ',' || key == '.') {
        if (drafts.typed.find('.') == std::string::npos)
            drafts.typed += drafts.typed.empty() || drafts.typed == "-" ? "0." : ".";
        return;
    }
    if (drafts.typed.size() < kMostDigits)
        drafts.typed += key;
}

void goTo(const MeasureWork& work, MeasureDrafts& drafts, std::size_t place) {
    entryOf(work, drafts) = work.values;
    drafts.at = place;
    drafts.typed.clear();
    drafts.said.clear();
    drafts.doubt.reset();
}

void takeValue(const MeasureWork& work, MeasureDrafts& drafts, double value) {
    MeasureDrafts::Values& values = entryOf(work, drafts);
    const std::size_t at = std::min(drafts.at, values.size() - 1);
    values[at] = value;
    if (work.quantity.points.empty() && values.back())
        values.emplace_back(); // There may always be one repeat more.
    drafts.at = firstBlank(values);
    drafts.typed.clear();
    drafts.doubt.reset();
    drafts.said.clear();
}

void takeTyped(const MeasureWork& work, MeasureDrafts& drafts) {
    const std::optional<double> value = typedNumber(drafts.typed);
    if (!value) {
        drafts.said = fmt::format("\"{}\" is no number", drafts.typed);
        return;
    }
    const std::optional<double> expected = expectedValue(work);
    const auto doubt = expected ? doubtOf(*value, expectedAround(*expected)) : std::nullopt;
    if (doubt)
        drafts.doubt = MeasureDoubt{*value, doubt->suggestion, doubt->words};
    else
        takeValue(work, drafts, *value);
}

void readAgain(const MeasureWork& work, MeasureDrafts& drafts) {
    goTo(work, drafts, work.values.size());
    MeasureDrafts::Values& values = entryOf(work, drafts);
    values.resize(values.size() + std::max<std::size_t>(work.quantity.points.size(), 1));
}

std::optional<SameValues> sameValues(const MeasureWork& work) {
    const Quantity& mine = work.quantity;
    if (work.taken || !work.read().empty() || mine.points.empty())
        return std::nullopt;
    for (const Quantity& other : work.measurement.quantities) {
        const bool same = other.id != mine.id && other.points == mine.points && other.part == mine.part &&
                          other.unit == mine.unit;
        if (!same || (mine.takes == Takes::Range) == (other.takes == Takes::Range))
            continue;
        if (const Reading* reading = lastReadingOf(work.job, work.measurement, other, work.occasion))
            return SameValues{other.id, reading->values};
    }
    return std::nullopt;
}

void takeSame(const MeasureWork& work, MeasureDrafts& drafts, const SameValues& same) {
    MeasureDrafts::Values& values = entryOf(work, drafts);
    values.assign(same.values.begin(), same.values.end());
    drafts.at = values.size();
    drafts.typed.clear();
    drafts.said.clear();
}

Reading readingOf(const MeasureWork& work, const MeasureDrafts& drafts, std::string_view today) {
    return {.measurement = work.measurement.id.text,
            .quantity = work.quantity.id.text,
            .occasion = work.occasion,
            .values = work.read(),
            .unit = std::string{nameOf(work.quantity.unit)},
            .method = work.method ? work.method->id : "",
            .instrument = work.gauge ? work.gauge->id : "",
            .by = whoWorks(work.job),
            .on = std::string{today},
            .temperatureC = drafts.partC,
            .gaugeTemperatureC = drafts.gaugeC};
}

void forget(const MeasureWork& work, MeasureDrafts& drafts) {
    drafts.entered.erase(keyOf(work.quantity.id, work.occasion));
    drafts.typed.clear();
    drafts.said.clear();
    drafts.doubt.reset();
    drafts.at = 0;
}

} // namespace gapwise
