#include "models/build/read_build.h"

#include "models/build/names.h"
#include "models/build/read_instrument.h"
#include "models/frame/names.h"
#include "models/json/document.h"
#include "models/json/fields.h"

#include <nlohmann/json.hpp>

#include <fmt/format.h>

namespace gapwise {

namespace {

constexpr Range kTorqueNm{0.0, 10'000.0};
constexpr Range kTurnDeg{0.0, 3600.0};
constexpr Range kReadingValue{-1e6, 1e6};

std::string nameOfFile(const std::filesystem::path& file) {
    return file == "-" ? "standard input" : file.string();
}

Attitude readAttitude(Fields& fields) {
    constexpr std::array kEnds{Named<EndUp>{"compressor", EndUp::Compressor},
                               Named<EndUp>{"turbine", EndUp::Turbine}, Named<EndUp>{"level", EndUp::Level}};
    const EndUp up = fields.word("up", kEnds);
    const Degrees drain{fields.number("drain_deg", kClockDeg)};
    if (up == EndUp::Level)
        return levelAttitude(fields.word("seen_from", kSideNames), drain);
    const Side side = up == EndUp::Compressor ? Side::Compressor : Side::Turbine;
    const auto seenFrom = fields.maybeWord("seen_from", kSideNames);
    if (seenFrom && *seenFrom != side)
        fields.complain("seen_from", quotedText(nameOf(*seenFrom)),
                        fmt::format("{}, the end that is up, or no seen_from", nameOf(side)));
    return uprightAttitude(side, drain);
}

View readView(Fields& fields) {
    const Side side = fields.word("side", kSideNames);
    return View{side, Degrees{fields.number("top_deg", kClockDeg)}};
}

Confirmation readConfirmation(Fields& fields) {
    constexpr std::array kSaid{Named<Confirmation::Said>{"before", Confirmation::Said::Before},
                               Named<Confirmation::Said>{"after", Confirmation::Said::After}};
    return Confirmation{.by = fields.text("by"), .said = fields.word("said", kSaid)};
}

/// An optional section by its reader.
template <class Read>
auto maybeSection(Fields& fields, std::string_view key, Read read) {
    std::optional<decltype(read(fields))> result;
    if (auto section = fields.maybeObject(key)) {
        result = read(*section);
        section->finish();
    }
    return result;
}

std::optional<Clock> readIndex(Fields& fields) {
    const auto clock = fields.maybeNumber("clock_deg", kClockDeg);
    const auto seenFrom = fields.maybeWord("seen_from", kSideNames);
    const bool hasClock = fields.has("clock_deg");
    const bool hasSide = fields.has("seen_from");
    if (hasClock != hasSide)
        fields.complaints().add(fields.pointer(),
                                hasClock ? "clock_deg without seen_from" : "seen_from without clock_deg",
                                "a clock with the side it is seen from");
    if (!clock || !seenFrom)
        return std::nullopt;
    return Clock::seenFrom(*seenFrom, Degrees{*clock});
}

Seating readSeating(Fields& fields) {
    Seating seating{.part = fields.id<PartId>("part"),
                    .seat = fields.id<SeatId>("seat"),
                    .index = readIndex(fields),
                    .referenceFaceLooks = fields.maybeWord("reference_face_looks", kSideNames),
                    .home = fields.maybeFlag("home"),
                    .setIn = maybeSection(fields, "set_in", readView),
                    .confirmed = maybeSection(fields, "confirmed", readConfirmation),
                    .pointer = fields.pointer()};
    if (fields.has("conditions"))
        for (const std::string_view condition : fields.words("conditions", kConditionNames))
            seating.conditions.emplace_back(condition);
    return seating;
}

TorqueNote readTorque(Fields& fields) {
    TorqueNote note{.fastener = fields.text("fastener"),
                    .torqueNm = fields.maybeNumber("torque_Nm", kTorqueNm),
                    .clockwise = fields.maybeWord("turned", kTurnNames),
                    .seenFrom = fields.maybeWord("seen_from", kSideNames)};
    if (const auto angle = fields.maybeNumber("angle_deg", kTurnDeg))
        note.angle = Degrees{*angle};
    if (note.clockwise && !note.seenFrom)
        fields.complaints().add(fields.pointer(), "turned without seen_from",
                                "a sense of turning with the side it is seen from");
    return note;
}

Reading readReading(Fields& fields) {
    return Reading{.measurement = fields.text("measurement"),
                   .quantity = fields.maybeText("quantity").value_or(""),
                   .occasion = fields.maybeWord("occasion", kOccasionNames).value_or(Occasion::After),
                   .values = fields.numbers("values", kReadingValue),
                   .unit = fields.maybeText("unit").value_or(""),
                   .method = fields.maybeText("method").value_or(""),
                   .instrument = fields.maybeText("instrument").value_or(""),
                   .by = fields.maybeText("by").value_or(""),
                   .on = fields.maybeText("on").value_or(""),
                   .temperatureC = fields.maybeNumber("temperature_C", kBenchC),
                   .gaugeTemperatureC = fields.maybeNumber("gauge_temperature_C", kBenchC),
                   .pointer = fields.pointer()};
}

PartDecision readDecision(Fields& fields) {
    return PartDecision{.part = fields.id<PartId>("part"),
                        .condition = fields.word("condition", kConditionWords),
                        .fate = fields.word("decision", kFateNames),
                        .by = fields.maybeText("by").value_or(""),
                        .reason = fields.maybeText("reason").value_or(""),
                        .cause = fields.maybeText("cause").value_or(""),
                        .concession = fields.maybeText("concession").value_or("")};
}

Build readWhole(const nlohmann::json& document, Complaints& complaints) {
    constexpr std::array<Named<bool>, 1> kFormats{{{"gapwise.build/1", true}}};
    Fields fields{document, "", complaints};
    fields.word("format", kFormats);
    Build build{.frame = fields.text("frame"),
                .attitude = maybeSection(fields, "attitude", readAttitude),
                .rotor = Degrees{fields.maybeNumber("rotor_deg", kClockDeg).value_or(0.0)},
                .rotorLoweredIn = fields.maybeFlag("rotor_lowered_in"),
                .seatings = readEach(fields.maybeObjects("seatings"), readSeating),
                .stepsDone = fields.maybeIds<StepId>("steps_done"),
                .torques = readEach(fields.maybeObjects("torques"), readTorque),
                .readings = readEach(fields.maybeObjects("readings"), readReading),
                .decisions = readEach(fields.maybeObjects("decisions"), readDecision),
                .work = fields.maybeTexts("work"),
                .instruments = readEach(fields.maybeObjects("instruments"), readInstrument)};
    fields.finish();
    return build;
}

/// Id of a bundled frame, or the file that a path relative to the sheet names.
std::string frameNamedBy(const DataFolder& data, const std::string& named,
                         const std::filesystem::path& sheet) {
    if (isBundledFrame(data, named))
        return named;
    std::error_code ignored;
    const std::filesystem::path whole = std::filesystem::absolute(sheet, ignored);
    return ((whole.empty() ? sheet : whole).parent_path() / named).string();
}

} // namespace

Result<BuildSheet> parseBuildSheet(const DataFolder& data, std::string_view text,
                                   const std::filesystem::path& file) {
    const std::string name = nameOfFile(file);
    const Result<nlohmann::json> document = parseJson(text, name);
    if (!document)
        return document.errors();
    if (Errors errors = schemaFileErrors(*document, data.schemaFile("build"), name); !errors.empty())
        return errors;
    Complaints complaints{name};
    Build build = readWhole(*document, complaints);
    if (!complaints.empty())
        return complaints.take();
    const std::string frameName = frameNamedBy(data, build.frame, file);
    const std::filesystem::path frameFile = frameFileOf(data, frameName);
    std::error_code ignored;
    if (!std::filesystem::is_regular_file(frameFile, ignored))
        return Error{placeIn(name, "/frame"), quotedText(build.frame),
                     fmt::format("{}, or the path of a frame file from the folder of the sheet",
                                 fmt::join(bundledFrames(data), ", "))};
    Result<Frame> frame = readFrame(data, frameName);
    if (!frame)
        return frame.errors();
    if (Errors errors = buildErrors(*frame, build, name); !errors.empty())
        return errors;
    return BuildSheet{.frame = std::move(frame).value(), .frameFile = frameFile, .build = std::move(build)};
}

Result<BuildSheet> readBuildSheet(const DataFolder& data, const std::filesystem::path& file) {
    const Result<std::string> text = readText(file);
    return text ? parseBuildSheet(data, *text, file) : Result<BuildSheet>{text.errors()};
}

} // namespace gapwise
