#include "viewer/command/frame_command.h"

#include "models/card/card.h"
#include "models/frame/notice.h"
#include "viewer/command/card_json.h"
#include "viewer/command/card_text.h"
#include "viewer/command/frame_json.h"
#include "viewer/command/frame_text.h"
#include "viewer/command/kit_show.h"
#include "viewer/command/step_json.h"
#include "viewer/command/step_text.h"

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

/// An id that the frame lacks, with those that it has.
template <class Things>
Outcome notThere(const Frame& frame, const std::string& option, const std::string& id, const Things& things) {
    std::string ids;
    for (const auto& each : things)
        ids += (ids.empty() ? "" : ", ") + each.id.text;
    return misused("gapwise frame show",
                   {{.where = "--" + option,
                     .found = fmt::format("\"{}\"", id),
                     .allowed = fmt::format("a {} of {}: {}", option, frame.id.text, ids)}});
}

Outcome stepOutcome(const Frame& frame, const std::string& id, Format format) {
    const Step* step = frame.step(StepId{id});
    if (!step)
        return notThere(frame, "step", id, frame.steps);
    return Outcome{.text = format == Format::Json ? stepAsJson(frame, *step) : stepAsText(frame, *step)};
}

Outcome cardOutcome(const Frame& frame, const std::string& part, Format format) {
    if (!frame.part(PartId{part}))
        return notThere(frame, "part", part, frame.parts);
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
    if (request.step)
        return stepOutcome(*frame, *request.step, format);
    if (request.kit)
        return Outcome{.text = format == Format::Json ? kitAsJson(*frame) : kitAsText(*frame)};
    if (format == Format::Json)
        return Outcome{.text = check ? frameUsableAsJson(*frame) : frameAsJson(*frame)};
    return Outcome{.text = check ? usableAsText(*frame) : frameAsText(*frame)};
}

} // namespace gapwise
