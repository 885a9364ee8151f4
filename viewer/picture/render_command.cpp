#include "viewer/picture/render_command.h"

#include "geometry/base/write_file.h"
#include "models/build/document_kind.h"
#include "models/build/read_build.h"
#include "models/frame/notice.h"
#include "models/json/document.h"
#include "viewer/picture/png_file.h"
#include "viewer/render/offscreen.h"
#include "viewer/scene/assembled_build.h"
#include "viewer/scene/part_alone.h"
#include "viewer/scene/read_meshes.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

/// What is shown: a build with its frame, or a frame as its rules want it.
struct Subject {
    BuildSheet sheet{};
    bool isBuild = false;
};

bool isBundled(const DataFolder& data, const std::string& source) {
    const std::vector<std::string> frames = bundledFrames(data);
    return std::ranges::find(frames, source) != frames.end();
}

Result<Subject> subjectOf(Result<Frame> frame) {
    if (!frame)
        return frame.errors();
    Build build = assembledBuild(*frame);
    return Subject{.sheet = {.frame = std::move(frame).value(), .build = std::move(build)}};
}

/// Reads a frame by id, or whichever of the two a file says it is.
Result<Subject> readSubject(const DataFolder& data, const std::string& source) {
    if (isBundled(data, source))
        return subjectOf(readFrame(data, source));
    const auto text = readText(source);
    if (!text)
        return text.errors();
    const auto document = parseJson(*text, source);
    if (!document)
        return document.errors();
    if (documentKind(*document) == DocumentKind::Frame)
        return subjectOf(parseFrame(data, *text, source));
    auto sheet = parseBuildSheet(data, *text, source);
    if (!sheet)
        return sheet.errors();
    return Subject{.sheet = std::move(sheet).value(), .isBuild = true};
}

/// Told from the side on which the eye is.
std::string cutWords(const RenderPlan& plan) {
    const Section& section = *plan.section;
    constexpr double kThroughThePorts = 1e-6;
    if (section.kind == Section::Kind::Half && std::abs(directionOf(section.removed).y) < kThroughThePorts)
        return " · cut along the shaft through inlet and drain";
    const Side side = towardEye(plan.look).z < 0.0 ? Side::Turbine : Side::Compressor;
    return fmt::format(" · {} taken away", wordsOf(section, side));
}

std::string sentenceOf(const RenderPlan& plan) {
    std::string how;
    if (plan.explode > 0.0)
        how += plan.explode < 1.0 ? fmt::format(" · pulled apart by {:.0f} %", plan.explode * 100.0)
                                  : " · pulled apart in reverse order of assembly";
    if (plan.section)
        how += cutWords(plan);
    return how;
}

std::string variantWords(const Frame& frame) {
    std::string words = frame.variant;
    std::ranges::replace(words, '_', ' ');
    return words;
}

std::string captionOf(const Subject& subject, const RenderRequest& request, const RenderPlan& plan) {
    const Frame& frame = subject.sheet.frame;
    std::string caption = frame.name;
    if (caption.find(frame.variant) == std::string::npos)
        caption += ", " + variantWords(frame);
    if (subject.isBuild)
        caption += fmt::format(
            " · build {}", request.source == "-" ? std::string{"from standard input"}
                                                 : std::filesystem::path{request.source}.filename().string());
    else
        caption += " · as the rules want it";
    if (const Part* part = plan.alone ? frame.part(*plan.alone) : nullptr)
        caption += fmt::format(" · {}, {}, alone", part->id.text, part->name);
    return caption + sentenceOf(plan);
}

std::string reportOf(const Frame& frame, const RenderRequest& request, const RenderPlan& plan,
                     Format format) {
    if (format == Format::Json)
        return nlohmann::ordered_json{{"file", request.out},
                                      {"width", plan.size.width},
                                      {"height", plan.size.height},
                                      {"frame", frame.id.text},
                                      {"notice", noticeOf(frame)}}
                   .dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace) +
               "\n";
    const std::string notice{noticeOf(frame)};
    return fmt::format("{}: {}, {} × {} pixels\n{}", request.out, frame.name, plan.size.width,
                       plan.size.height, notice.empty() ? "" : notice + "\n");
}

/// Why the part that is wanted alone cannot be: the frame has none such, or it is in no seat.
Errors refusalOf(const Subject& subject, const RenderPlan& plan) {
    const Frame& frame = subject.sheet.frame;
    if (!plan.alone)
        return {};
    std::string parts;
    for (const Part& part : frame.parts)
        if (part.id == frame.housing || subject.sheet.build.of(part.id))
            parts += (parts.empty() ? "" : ", ") + part.id.text;
    if (frame.part(*plan.alone) && (*plan.alone == frame.housing || subject.sheet.build.of(*plan.alone)))
        return {};
    return {{.where = "--alone",
             .found = fmt::format("\"{}\"", plan.alone->text),
             .allowed = fmt::format("a part that is in its place: {}", parts)}};
}

Scene sceneFor(const Subject& subject, const Meshes& meshes, const RenderPlan& plan) {
    const Checked checked = checkBuild(subject.sheet.frame, subject.sheet.build, {});
    const Scene scene = sceneOf(subject.sheet.frame, subject.sheet.build, meshes,
                                {.explode = plan.explode,
                                 .section = plan.section,
                                 .casings = plan.casings || plan.alone,
                                 .checked = subject.isBuild ? &checked : nullptr});
    return plan.alone ? aloneIn(scene, *plan.alone) : scene;
}

Result<Image> draw(const Subject& subject, const Meshes& meshes, const RenderPlan& plan,
                   const std::string& caption) {
    const Frame& frame = subject.sheet.frame;
    const Scene scene = sceneFor(subject, meshes, plan);
    const auto context = OffscreenContext::make();
    if (!context)
        return context.errors();
    auto renderer = Renderer::make();
    if (!renderer)
        return renderer.errors();
    return finishedPicture(
        renderer.value(), scene,
        {.size = plan.size, .look = plan.look, .subject = caption, .notice = std::string{noticeOf(frame)}});
}

} // namespace

Outcome renderCommand(const RenderRequest& request, Format format, const std::filesystem::path& program) {
    const auto plan = planOf(request);
    if (!plan)
        return misused("gapwise render", plan.errors());
    const auto data = findDataFolder(program);
    if (!data)
        return failed(ExitStatus::BadInput, data.errors());
    const auto subject = readSubject(*data, request.source);
    if (!subject)
        return failed(ExitStatus::BadInput, subject.errors());
    if (const Errors refused = refusalOf(*subject, *plan); !refused.empty())
        return misused("gapwise render", refused);
    const auto meshes = readMeshes(*data, subject->sheet.frame);
    if (!meshes)
        return failed(ExitStatus::BadInput, meshes.errors());
    const auto image = draw(*subject, *meshes, *plan, captionOf(*subject, request, *plan));
    if (!image)
        return failed(ExitStatus::CannotNow, image.errors());
    const auto png = pngOf(*image);
    if (!png)
        return failed(ExitStatus::CannotNow, png.errors());
    if (const auto trouble = writeFile(request.out, *png))
        return failed(trouble->diskFull ? ExitStatus::CannotNow : ExitStatus::BadInput, {trouble->error});
    return {.text = reportOf(subject->sheet.frame, request, *plan, format)};
}

} // namespace gapwise
