#include "models/frame/read_frame.h"

#include "models/frame/names.h"
#include "models/frame/readers.h"
#include "models/json/document.h"

#include <nlohmann/json.hpp>

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace gapwise {

namespace {

constexpr std::string_view kFormat = "gapwise.frame/1";

constexpr std::array<Named<std::string_view>, 2> kVariants{
    {{"full_floating", "full_floating"}, {"pinned", "pinned"}}};

/// What stands at the top of the file, the sections left out.
void readHead(Fields& fields, Frame& frame) {
    constexpr std::array<Named<bool>, 1> kFormats{{{kFormat, true}}};
    fields.word("format", kFormats);
    frame.id = fields.id<FrameId>("id");
    frame.name = fields.text("name");
    frame.size = fields.text("size");
    frame.variant = fields.word("variant", kVariants);
    frame.sister = fields.maybeId<FrameId>("sister");
    frame.purpose = fields.word("purpose", kPurposeNames);
    if (auto source = fields.object("source")) {
        frame.sheet = source->text("sheet");
        frame.revision = source->text("revision");
        source->finish();
    }
    if (auto rotation = fields.object("rotation")) {
        frame.rotatesClockwise = rotation->word("turns", kTurnNames);
        frame.rotationSeenFrom = rotation->word("seen_from", kSideNames);
        rotation->finish();
    }
    frame.housing = fields.id<PartId>("housing");
    frame.rotor = fields.id<PartId>("rotor");
}

Frame readWhole(const nlohmann::json& document, Complaints& complaints) {
    Frame frame;
    Fields fields{document, "", complaints};
    readHead(fields, frame);
    frame.types = readEach(fields.objects("part_types"), readPartType);
    frame.parts = readEach(fields.objects("parts"), readPart);
    frame.seats = readEach(fields.objects("seats"), readSeat);
    frame.steps = readEach(fields.objects("steps"), readStep);
    frame.rules = readEach(fields.objects("rules"), [&](Fields& rule) { return readRule(rule, frame); });
    frame.cautions = readEach(fields.maybeObjects("cautions"), readCaution);
    frame.measurements = readEach(fields.maybeObjects("measurements"), readMeasurement);
    frame.dimensions = readEach(fields.maybeObjects("dimensions"), readDimension);
    frame.contacts = readEach(fields.maybeObjects("contacts"), readContact);
    frame.chains = readEach(fields.maybeObjects("chains"), readChain);
    frame.changes = readEach(fields.maybeObjects("changes"), readChange);
    frame.selectors = readEach(fields.maybeObjects("selectors"), readSelector);
    frame.lever = readMaybeSection(fields, "lever", readLever);
    frame.fasteners = readEach(fields.maybeObjects("fasteners"), readFastener);
    frame.rests = readEach(fields.maybeObjects("rests"), readRest);
    frame.sharedMaterial = readEach(fields.maybeObjects("shared_material"), readSharedMaterial);
    frame.withoutRule = readEach(fields.maybeObjects("without_rule"), readWithoutRule);
    fields.finish();
    return frame;
}

} // namespace

Result<Frame> parseFrame(const DataFolder& data, std::string_view text, std::string_view file,
                         Validation validation) {
    const Result<nlohmann::json> document = parseJson(text, file);
    if (!document)
        return document.errors();
    if (validation == Validation::Full)
        if (Errors errors = schemaFileErrors(*document, data.schemaFile("frame"), file); !errors.empty())
            return errors;
    Complaints complaints{file};
    Frame frame = readWhole(*document, complaints);
    if (!complaints.empty())
        return complaints.take();
    if (Errors errors = frameErrors(frame, file); !errors.empty())
        return errors;
    return frame;
}

Result<Frame> readFrame(const DataFolder& data, const std::string& idOrPath, Validation forBundled) {
    const bool bundled = isBundledFrame(data, idOrPath);
    const std::filesystem::path file = frameFileOf(data, idOrPath);
    const Result<std::string> text = readText(file);
    std::error_code ignored;
    if (!text && !std::filesystem::exists(file, ignored))
        return Error{file.string(), "no such file",
                     fmt::format("a frame file, or one of {}", fmt::join(bundledFrames(data), ", "))};
    if (!text)
        return text.errors();
    const std::string name = file == "-" ? "standard input" : file.string();
    Result<Frame> frame = parseFrame(data, *text, name, bundled ? forBundled : Validation::Full);
    if (frame && bundled && frame->id.text != idOrPath)
        return Error{placeIn(name, "/id"), quotedText(frame->id.text),
                     fmt::format("{}, as the file is named", idOrPath)};
    return frame;
}

Result<std::optional<Frame>> readSister(const DataFolder& data, const Frame& frame,
                                        const std::filesystem::path& frameFile) {
    if (!frame.sister)
        return std::optional<Frame>{};
    const std::filesystem::path beside = frameFile.parent_path() / (frame.sister->text + ".json");
    const bool bundledBeside = beside == data.frameFile(frame.sister->text);
    std::error_code ignored;
    const bool useBeside = !bundledBeside && std::filesystem::is_regular_file(beside, ignored);
    Result<Frame> sister = readFrame(data, useBeside ? beside.string() : frame.sister->text);
    if (!sister)
        return sister.errors();
    return std::optional<Frame>{std::move(sister).value()};
}

} // namespace gapwise
