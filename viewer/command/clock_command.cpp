#include "viewer/command/clock_command.h"

#include "geometry/datum/datum.h"
#include "viewer/command/number.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <array>
#include <charconv>
#include <vector>

namespace gapwise {

namespace {

/// The piece on the bench and where the person stands.
struct Bench {
    Attitude attitude{};
    Degrees stand{0.0};
};

struct Question {
    Degrees given{0.0};
    Side from = Side::Compressor;
    std::optional<Bench> bench{};
    bool asSeen = false;
};

struct SeenOnBench {
    View view{};
    Degrees clock{0.0};
};

struct Answer {
    std::array<Side, 2> sides{}; ///< The side that was asked about, then the other.
    Clock clock = Clock::seenFrom(Side::Compressor, Degrees{0.0});
    std::vector<SeenOnBench> seen{};
};

Result<Degrees> parseStand(const std::string& text) {
    double degrees = 0.0;
    const char* const end = text.data() + text.size();
    const auto [stop, code] = std::from_chars(text.data(), end, degrees);
    if (code == std::errc{} && stop == end && degrees >= 0.0 && degrees < 360.0)
        return Degrees{degrees};
    return Error{.where = "--stand",
                 .found = fmt::format("\"{}\"", text),
                 .allowed = "degrees from 0 (the front of the bench) to below 360, clockwise from above"};
}

/// Options that say something about a bench that was not described.
void refuseWithoutBench(const ClockRequest& request, Errors& errors) {
    const auto refuse = [&](bool given, const char* option) {
        if (given)
            errors.push_back({.where = option,
                              .found = request.up ? "no --drain" : "no --up",
                              .allowed = "only with --up and --drain"});
    };
    refuse(request.up && !request.drain, "--up");
    refuse(request.drain && !request.up, "--drain");
    refuse(request.stand.has_value(), "--stand");
    refuse(request.seenFrom.has_value(), "--seen-from");
    refuse(request.asSeen, "--as-seen");
}

Attitude attitudeOf(const ClockRequest& request, Side from, Errors& errors) {
    const EndUp up = valueOr(parseEndUp(request.up.value_or(""), "--up"), EndUp::Level, errors);
    const Degrees drain =
        valueOr(parseClockwise(request.drain.value_or(""), "--drain"), Degrees{0.0}, errors);
    const Side natural = up == EndUp::Level        ? from
                         : up == EndUp::Compressor ? Side::Compressor
                                                   : Side::Turbine;
    const Side seenFrom =
        request.seenFrom ? valueOr(parseSide(*request.seenFrom, "--seen-from"), natural, errors) : natural;
    if (up != EndUp::Level && seenFrom != natural)
        errors.push_back({.where = "--seen-from",
                          .found = fmt::format("\"{}\"", nameOf(seenFrom)),
                          .allowed = fmt::format("{}, the end that is up", nameOf(natural))});
    return Attitude{.up = up, .drain = drain, .seenFrom = seenFrom};
}

std::optional<Bench> benchOf(const ClockRequest& request, Side from, Errors& errors) {
    if (!request.up || !request.drain) {
        refuseWithoutBench(request, errors);
        return std::nullopt;
    }
    const Attitude attitude = attitudeOf(request, from, errors);
    if (!request.stand)
        return Bench{.attitude = attitude};
    if (*request.up == nameOf(EndUp::Level))
        errors.push_back(
            {.where = "--stand",
             .found = fmt::format("\"{}\"", *request.stand),
             .allowed = "only for an upright piece; a level one is looked at from its two ends"});
    return Bench{.attitude = attitude, .stand = valueOr(parseStand(*request.stand), Degrees{0.0}, errors)};
}

Result<Question> questionOf(const ClockRequest& request) {
    Errors errors;
    Question question;
    question.given = valueOr(parseClockwise(request.clock, "CLOCK"), Degrees{0.0}, errors);
    question.from = valueOr(parseSide(request.from, "--from"), Side::Compressor, errors);
    question.bench = benchOf(request, question.from, errors);
    question.asSeen = request.asSeen;
    if (!errors.empty())
        return errors;
    return question;
}

std::vector<View> viewsOf(const Bench& bench, Side from) {
    const auto look = [&](Side side) { return viewOf(bench.attitude, {bench.stand, side}); };
    if (bench.attitude.up != EndUp::Level)
        return {look(from)};
    return {look(from), look(opposite(from))};
}

Answer answer(const Question& question) {
    const std::vector<View> views =
        question.bench ? viewsOf(*question.bench, question.from) : std::vector<View>{};
    Answer answer{.sides = {question.from, opposite(question.from)},
                  .clock = question.asSeen ? clockSeenIn(views.front(), question.given)
                                           : Clock::seenFrom(question.from, question.given),
                  .seen = {}};
    for (const View& view : views)
        answer.seen.push_back({view, seenIn(view, answer.clock)});
    return answer;
}

std::string benchText(const Bench& bench, const std::vector<SeenOnBench>& seen) {
    const EndUp up = bench.attitude.up;
    const std::string stand =
        bench.stand == Degrees{0.0}
            ? std::string{}
            : fmt::format(", standing {}° round the bench, clockwise from above", bench.stand.value);
    std::string text;
    for (const SeenOnBench& one : seen)
        text += fmt::format("on the bench ({}){}, looking {} the {} end: {}, {}\n", describe(bench.attitude),
                            stand, up == EndUp::Level ? "at" : "down on", nameOf(one.view.side),
                            hoursAndMinutes(one.clock), benchPhrase(one.clock, up));
    return text;
}

/// What was given comes first, then what follows from it.
std::string asText(const Question& question, const Answer& answer) {
    std::string printed;
    for (const Side side : answer.sides)
        printed += fmt::format("{}, inlet on top\n", clockSeenFrom(answer.clock.from(side), side));
    const std::string bench = question.bench ? benchText(*question.bench, answer.seen) : std::string{};
    return question.asSeen ? bench + printed : printed + bench;
}

std::string asJson(const Question& question, const Answer& answer) {
    nlohmann::ordered_json document{{"as_printed", nlohmann::ordered_json::array()},
                                    {"as_seen", nlohmann::ordered_json::array()}};
    for (const Side side : answer.sides)
        document["as_printed"].push_back(
            {{"clock_deg", answer.clock.from(side).value}, {"seen_from", nameOf(side)}});
    const EndUp up = question.bench ? question.bench->attitude.up : EndUp::Level;
    for (const SeenOnBench& one : answer.seen)
        document["as_seen"].push_back({{"clock_deg", one.clock.value},
                                       {"side", nameOf(one.view.side)},
                                       {"top_deg", one.view.top.value},
                                       {"bench_word", benchWord(one.clock, up)}});
    return document.dump(2) + "\n";
}

} // namespace

Outcome clockCommand(const ClockRequest& request, Format format) {
    const Result<Question> question = questionOf(request);
    if (!question)
        return misused("gapwise clock", question.errors());
    const Answer found = answer(*question);
    return Outcome{.text = format == Format::Json ? asJson(*question, found) : asText(*question, found)};
}

} // namespace gapwise
