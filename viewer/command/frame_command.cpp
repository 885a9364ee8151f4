#include "viewer/command/frame_command.h"

#include "models/card/card.h"
#include "models/frame/notice.h"
#include "viewer/command/card_json.h"
#include "viewer/command/card_text.h"
#include "viewer/command/frame_json.h"
#include "viewer/command/frame_text.h"

#include <fmt/format.h>

namespace gapwise {

namespace {

std::string usableAsText(const Frame& frame) {
    std::string text = fmt::format(
        "frame {}, revision {}: can be used; {} parts, {} seats, {} rules, {} steps\n", frame.id.text,
        frame.revision, frame.parts.size(), frame.seats.size(), frame.rules.size(), frame.steps.size());
    if (!noticeOf(frame).empty())
        text += fmt::format("{}\n", noticeOf(frame));
    return text;
}

Outcome cardOutcome(const Frame& frame, const std::string& part, Format format) {
    if (!frame.part(PartId{part})) {
        std::string parts;
        for (const Part& each : frame.parts)
            parts += (parts.empty() ? "" : ", ") + each.id.text;
        return misused("gapwise frame show",
                       {{.where = "--part",
                         .found = fmt::format("\"{}\"", part),
                         .allowed = fmt::format("a part of {}: {}", frame.id.text, parts)}});
    }
    const PartCard card = partCardOf(frame, PartId{part});
    return Outcome{.text = format == Format::Json ? cardAsJson(frame, card) : cardAsText(frame, card)};
}

} // namespace

Outcome frameCommand(const DataFolder& data, const FrameRequest& request, Format format) {
    const bool check = request.act == FrameRequest::Act::Check;
    const Result<Frame> frame =
        readFrame(data, request.frame, check ? Validation::Full : Validation::ReaderOnly);
    if (!frame)
        return failed(ExitStatus::BadInput, frame.errors());
    if (request.part)
        return cardOutcome(*frame, *request.part, format);
    if (format == Format::Json)
        return Outcome{.text = check ? frameUsableAsJson(*frame) : frameAsJson(*frame)};
    return Outcome{.text = check ? usableAsText(*frame) : frameAsText(*frame)};
}

} // namespace gapwise
