#include "models/frame/sets.h"
#include "models/procedure/lying.h"
#include "models/procedure/measure_findings.h"
#include "models/procedure/questions.h"
#include "models/procedure/step_status.h"
#include "models/procedure/tightening.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

using Kind = Missing::Kind;

/// Of a set of screws its first missing piece speaks for all.
void addParts(const Frame& frame, const Build& build, const Step& step, std::vector<Missing>& missing) {
    std::vector<PartId> said;
    for (const PartId& part : step.places) {
        if (part == frame.housing || build.of(part) || std::ranges::find(said, part) != said.end())
            continue;
        for (const PartId& piece : piecesOf(frame, part))
            said.push_back(piece);
        missing.push_back(
            {Kind::Part, part.text, fmt::format("{} is not in its seat", setNameOf(frame, part))});
    }
}

void addFasteners(const Frame& frame, const JobState& state, const Step& step,
                  std::vector<Missing>& missing) {
    for (const Fastener& fastener : frame.fasteners) {
        if (fastener.step != step.id || !fastener.plan)
            continue;
        const Tightening tightening = tighteningOf(fastener, state);
        if (!tightening.next)
            continue;
        const Stage stage = stagesOf(fastener)[tightening.next->stage];
        missing.push_back({Kind::Fastener, fastener.id.text,
                           fmt::format("{} is at {} of {}; next: {}, screw {}", fastener.id.text,
                                       tightening.done, tightening.all, stage.name, tightening.next->screw)});
    }
}

void addReadings(const Frame& frame, const JobState& state, const Step& step, std::vector<Missing>& missing) {
    for (const Quantity* quantity : unreadAt(frame, state.build, step.id))
        missing.push_back({Kind::Reading, quantity->id.text, fmt::format("not read: {}", quantity->name)});
}

void addQuestions(const Frame& frame, const JobState& state, const Step& step,
                  std::vector<Missing>& missing) {
    for (const Question& question : questionsOf(frame, step))
        if (!isAnswered(state, step.id, question))
            missing.push_back({Kind::Question, question.name,
                               question.needed ? fmt::format("not answered: {}", question.words)
                                               : fmt::format("not ticked: {}", question.words),
                               question.needed});
}

void addCautions(const Frame& frame, const JobState& state, const Step& step, std::vector<Missing>& missing) {
    for (const Caution& caution : frame.cautions) {
        const bool here = std::ranges::find(caution.steps, step.id) != caution.steps.end();
        if (here && !state.acknowledged.contains(caution.id))
            missing.push_back(
                {Kind::Caution, caution.id,
                 fmt::format("not read yet: {}: {}", signalWordOf(caution.signal), caution.words)});
    }
}

void addAttitude(const JobState& state, const Step& step, std::vector<Missing>& missing) {
    const std::optional<Attitude>& attitude = state.build.attitude;
    if (!attitude || step.attitudes.empty())
        return;
    if (!isDoneLying(step, attitude->up))
        missing.push_back({Kind::Attitude, "attitude",
                           fmt::format("{} is done with the piece lying another way", step.id.text), false});
    if (!state.attitudeConfirmed)
        missing.push_back({Kind::Attitude, "drain", "nobody said where the drain points now", false});
}

} // namespace

std::vector<Missing> missingFrom(const Frame& frame, const JobState& state, const StepId& id) {
    std::vector<Missing> missing;
    const Step* step = frame.step(id);
    if (!step)
        return missing;
    addParts(frame, state.build, *step, missing);
    addFasteners(frame, state, *step, missing);
    addReadings(frame, state, *step, missing);
    addQuestions(frame, state, *step, missing);
    addCautions(frame, state, *step, missing);
    if (step->holdPoint && !state.build.done(id))
        missing.push_back({Kind::HoldPoint, id.text,
                           fmt::format("{} is a hold point: it is passed by name, with a witness", id.text)});
    addAttitude(state, *step, missing);
    return missing;
}

} // namespace gapwise
