#include "viewer/command/torque_show.h"

#include "models/frame/read_frame.h"
#include "viewer/command/number.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

constexpr NumberRange kLength{0.0, 1e4, true,
                              "a length above 0 mm, from the middle of the grip to the drive"};
constexpr NumberRange kAdapter{0.0, 1e4, false, "0 mm or more, from the drive to the middle of the fastener"};
constexpr NumberRange kAngle{-360.0, 360.0, false,
                             "degrees from -360 to 360: 0 straight out, 180 folded back"};

/// The options apart from frame and fastener.
struct Asked {
    std::optional<Attitude> attitude{};
    TorqueUnit unit = TorqueUnit::NewtonMetre;
    Adapter adapter{};
    WrenchRange range{};
};

std::optional<Attitude> attitudeOf(const ShowRequest& request, Side heads, Errors& errors) {
    if (!request.up && !request.drain)
        return std::nullopt;
    if (!request.up || !request.drain) {
        errors.push_back({.where = request.up ? "--up" : "--drain",
                          .found = request.up ? "no --drain" : "no --up",
                          .allowed = "both or none: --up END --drain CLOCK"});
        return std::nullopt;
    }
    const EndUp up = valueOr(parseEndUp(*request.up, "--up"), EndUp::Level, errors);
    const Degrees drain = valueOr(parseClockwise(*request.drain, "--drain"), Degrees{0.0}, errors);
    if (up == EndUp::Level)
        return levelAttitude(
            request.seenFrom ? valueOr(parseSide(*request.seenFrom, "--seen-from"), heads, errors) : heads,
            drain);
    if (request.seenFrom)
        errors.push_back(
            {.where = "--seen-from",
             .found = fmt::format("\"{}\"", *request.seenFrom),
             .allowed = "only for a level piece: an upright one is looked at from its upper end"});
    return uprightAttitude(up == EndUp::Compressor ? Side::Compressor : Side::Turbine, drain);
}

std::optional<double> torqueOption(const std::optional<std::string>& text, const char* where,
                                   Errors& errors) {
    if (!text)
        return std::nullopt;
    return valueOr(parseTorqueOrNewtonMetres(*text, where), {1.0}, errors).newtonMetres();
}

Result<Asked> askedOf(const ShowRequest& request, Side heads) {
    Errors errors;
    const auto number = [&](const std::optional<std::string>& text, const char* where,
                            const NumberRange& range) {
        return text ? valueOr(parseNumber(*text, where, range), 0.0, errors) : 0.0;
    };
    Asked asked{.attitude = attitudeOf(request, heads, errors)};
    if (request.unit)
        asked.unit = valueOr(parseTorqueUnit(*request.unit, "--unit"), asked.unit, errors);
    asked.adapter = {.wrenchMm = number(request.length, "--length", kLength),
                     .adapterMm = number(request.adapter, "--adapter", kAdapter),
                     .angle = Degrees{number(request.angle, "--angle", kAngle)}};
    asked.range = {.leastNm = torqueOption(request.wrenchMin, "--wrench-min", errors),
                   .mostNm = torqueOption(request.wrenchMax, "--wrench-max", errors)};
    if (!errors.empty())
        return errors;
    return asked;
}

Errors atOptions(const Errors& errors, const Stage& stage) {
    Errors told;
    for (const Error& error : errors) {
        const bool setting = error.where == "setting";
        told.push_back({.where = "--" + (setting ? std::string{"wrench-max"} : error.where),
                        .found = setting ? fmt::format("{} at {}", error.found, stage.name) : error.found,
                        .allowed = error.allowed});
    }
    return told;
}

Result<TorqueShown> shownOf(const Frame& frame, const Fastener& fastener, const Asked& asked) {
    TorqueShown shown{.frame = frame,
                      .fastener = fastener,
                      .unit = asked.unit,
                      .lies = asked.attitude.has_value(),
                      .stages = stagesOf(fastener),
                      .flanges = flangeOf(frame, fastener),
                      .range = asked.range};
    const Side heads = fastener.handSeenFrom;
    const Attitude attitude = asked.attitude.value_or(levelAttitude(heads, Degrees{180.0}));
    shown.facing = facingOf(fastener, attitude, Observer{.levelSide = attitude.seenFrom});
    if (std::ranges::none_of(shown.flanges, &FlangeGroup::drawn)) // Nobody knows how it lies.
        shown.facing = {.view = inletOnTop(heads), .up = attitude.up};
    shown.turn = turnFactsOf(frame, fastener, shown.facing);
    Errors errors;
    for (const Stage& stage : shown.stages) {
        if (stage.torqueNm <= 0.0) {
            shown.wrench.emplace_back();
            continue;
        }
        const Result<WrenchFacts> facts = wrenchFactsOf(stage.torqueNm, asked.adapter, asked.range);
        if (!facts)
            return atOptions(facts.errors(), stage);
        shown.wrench.push_back(*facts);
    }
    return shown;
}

std::string fastenersOf(const Frame& frame) {
    std::string ids;
    for (const Fastener& fastener : frame.fasteners)
        ids += (ids.empty() ? "" : ", ") + fastener.id.text;
    return ids;
}

} // namespace

Outcome torqueShow(const DataFolder& data, const ShowRequest& request, Format format) {
    constexpr const char* kCommand = "gapwise torque show";
    const Result<Frame> frame = readFrame(data, request.frame, Validation::ReaderOnly);
    if (!frame)
        return failed(ExitStatus::BadInput, frame.errors());
    const Fastener* fastener = frame->fastener(FastenerId{request.fastener});
    if (!fastener || !fastener->plan)
        return misused(
            kCommand,
            {{.where = "FASTENER",
              .found = fmt::format("\"{}\"{}", request.fastener, fastener ? ", which has no torque" : ""),
              .allowed =
                  fmt::format("a fastener of {} with a torque: {}", frame->id.text, fastenersOf(*frame))}});
    const Result<Asked> asked = askedOf(request, fastener->handSeenFrom);
    if (!asked)
        return misused(kCommand, asked.errors());
    const Result<TorqueShown> shown = shownOf(*frame, *fastener, *asked);
    if (!shown)
        return misused(kCommand, shown.errors());
    return Outcome{.text = format == Format::Json ? torqueShownAsJson(*shown) : torqueShownAsText(*shown)};
}

} // namespace gapwise
