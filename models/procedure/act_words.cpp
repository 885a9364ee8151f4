#include "models/procedure/hand_over.h"

#include "geometry/base/overloaded.h"
#include "geometry/datum/words.h"
#include "models/build/names.h"
#include "models/check/carrier.h"
#include "models/procedure/tightening.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

namespace gapwise {

namespace {

/// `SR-CO`; of another part's seat it is said.
std::string named(const PartId& part, const SeatId& seat) {
    return seatOf(part) == seat ? part.text : fmt::format("{} in {}", part.text, seat.text);
}

std::string indexWord(const Frame& frame, const PartId& part) {
    const PartType* type = frame.typeOf(part);
    return std::string{wordOf(type ? type->index : IndexKind::None)};
}

/// `, gap at 9:00 seen from the compressor side`: from the side it was set from.
std::string indexWords(const Frame& frame, const PartId& part, const std::optional<Clock>& index,
                       const std::optional<View>& setIn) {
    if (!index)
        return {};
    const Side side = setIn ? setIn->side : Side::Compressor;
    return fmt::format(", {} at {}", indexWord(frame, part), clockSeenFrom(index->from(side), side));
}

std::string faceWords(const Frame& frame, const PartId& part, const std::optional<Side>& looks) {
    return looks ? fmt::format(", {} face toward the {}", faceWord(frame.typeOf(part)), nameOf(*looks))
                 : std::string{};
}

std::string stepWords(const Frame& frame, const StepId& id) {
    const Step* step = frame.step(id);
    return step ? fmt::format("{} {}", id.text, step->title) : id.text;
}

std::string because(const std::string& reason) {
    return reason.empty() ? std::string{} : fmt::format(" ({})", reason);
}

std::string screwWords(const Frame& frame, const Tightened& e) {
    const Fastener* fastener = frame.fastener(e.fastener);
    const std::vector<Stage> stages = fastener ? stagesOf(*fastener) : std::vector<Stage>{};
    const std::string stage =
        e.stage < stages.size() ? stages[e.stage].name : fmt::format("stage {}", e.stage);
    std::string words =
        fmt::format("{} {}, screw {}: {:g} N·m {}, seen from the {} side", e.fastener.text, stage, e.screw,
                    e.torqueNm, e.clockwise ? "clockwise" : "counter-clockwise", nameOf(e.seenFrom));
    if (e.angle)
        words += fmt::format(", {:g}°", e.angle->value);
    return e.wrench.empty() ? words : words + fmt::format(", wrench {}", e.wrench);
}

std::string passedWords(const Frame& frame, const HoldPointPassed& e) {
    std::string words = fmt::format("{} passed, {}", stepWords(frame, e.step),
                                    e.loneWorker ? "lone worker" : "witness " + e.witness);
    for (const Override& over : e.overrides)
        words += fmt::format("; {} overridden by {} ({}{}{})", over.finding, over.by, over.reason,
                             over.concession.empty() ? "" : ", concession ", over.concession);
    return words;
}

std::string turnedWords(const AttitudeChanged& e) {
    return fmt::format("lies {}{}{}", describe(e.attitude), e.confirmed ? "" : ", drain not confirmed",
                       e.unretained ? ", turned with the rotor loose" : "");
}

/// The record of a practice frame is never a release.
std::string doneWords(const Frame& frame, const StepDone& e) {
    const Step* step = frame.step(e.step);
    if (!step || !step->closesRecord)
        return stepWords(frame, e.step) + ": done";
    return frame.purpose == Purpose::Practice
               ? stepWords(frame, e.step) + ": ended as a practice record, not a release"
               : stepWords(frame, e.step) + ": record closed";
}

std::string answerWords(const Answered& e) {
    return e.amount ? fmt::format("{} {}: {} ({:g})", e.step.text, e.question, e.answer, *e.amount)
                    : fmt::format("{} {}: {}", e.step.text, e.question, e.answer);
}

/// A word of a file as people write it.
std::string spaced(std::string_view word) {
    std::string out{word};
    std::ranges::replace(out, '_', ' ');
    return out;
}

std::string readingWords(const Reading& reading) {
    return fmt::format("{} read{}: {:g} {}",
                       reading.quantity.empty() ? reading.measurement : reading.quantity,
                       reading.occasion == Occasion::Before ? " as received" : "",
                       fmt::join(reading.values, ", "), reading.unit);
}

std::string wordsAlone(const Frame& frame, const Event& event) {
    const auto of = [](const SeatId& seat) { return partMeantFor(seat); };
    return std::visit(
        Overloaded{
            [&](const AttitudeChanged& e) { return turnedWords(e); },
            [&](const PartPlaced& e) {
                return named(e.part, e.seat) + " placed" + indexWords(frame, e.part, e.index, e.setIn) +
                       faceWords(frame, e.part, e.referenceFaceLooks);
            },
            [&](const PartTakenOff& e) { return of(e.seat).text + " taken off"; },
            [&](const IndexTurned& e) {
                return of(e.seat).text + " turned" + indexWords(frame, of(e.seat), e.index, e.setIn);
            },
            [&](const FaceTurned& e) {
                return of(e.seat).text + " set" + faceWords(frame, of(e.seat), e.referenceFaceLooks);
            },
            [&](const SeatingConfirmed& e) {
                return of(e.seat).text + " confirmed" + indexWords(frame, of(e.seat), e.index, e.setIn) +
                       faceWords(frame, of(e.seat), e.referenceFaceLooks);
            },
            [&](const LookedFirst& e) { return "looked first at what is demanded of " + of(e.seat).text; },
            [&](const HomeStated& e) {
                return of(e.seat).text + (e.home ? " is fully home" : " is not fully home");
            },
            [](const RotorTurned& e) {
                return "rotor turned, mark at " + clockSeenFrom(e.rotor, Side::Compressor);
            },
            [&](const StepDone& e) { return doneWords(frame, e); },
            [&](const StepSkipped& e) { return stepWords(frame, e.step) + ": left out" + because(e.reason); },
            [&](const StepUndone& e) {
                return stepWords(frame, e.step) + ": open again" + because(e.reason);
            },
            [&](const HoldPointPassed& e) { return passedWords(frame, e); },
            [&](const Tightened& e) { return screwWords(frame, e); },
            [](const Loosened& e) { return e.fastener.text + " touched" + because(e.reason); },
            [](const Answered& e) { return answerWords(e); },
            [&](const ConditionStated& e) {
                return fmt::format("{} is {}{}", of(e.seat).text, e.so ? "" : "not ", e.state);
            },
            [](const NutLineRead& e) {
                return fmt::format("{}: nut line read at {:g}°, stack {:+g} mm", e.fastener.text,
                                   e.read.value, e.stackNewMinusOldMm);
            },
            [](const CautionAcknowledged& e) { return "caution read: " + e.caution; },
            [](const PersonCame& e) { return fmt::format("works from here on, {}", nameOf(e.role)); },
            [](const NoteWritten& e) { return e.words; },
            [](const ReadingTaken& e) { return readingWords(e.reading); },
            [](const PartDecided& e) {
                return fmt::format("{}: {}, {}{}", e.decision.part.text,
                                   spaced(nameIn(kConditionWords, e.decision.condition)),
                                   nameIn(kFateNames, e.decision.fate), because(e.decision.reason));
            },
            [](const WorkStated& e) { return spaced(e.work) + (e.so ? "" : ": not done after all"); },
            [](const Undone&) { return std::string{"the last act taken back"}; },
            [](const Redone&) { return std::string{"the act brought back"}; }},
        event);
}

/// Who did it; empty where the event does not say.
std::string personIn(const Event& event) {
    return std::visit(
        [](const auto& e) -> std::string {
            if constexpr (requires { e.by; })
                return e.by;
            else if constexpr (requires { e.confirmation; })
                return e.confirmation.by;
            else if constexpr (requires { e.reading; })
                return e.reading.by;
            else if constexpr (requires { e.decision; })
                return e.decision.by;
            else if constexpr (requires { e.name; })
                return e.name;
            else
                return {};
        },
        event);
}

} // namespace

std::string wordsOf(const Frame& frame, const Event& event) {
    const std::string person = personIn(event);
    const std::string words = wordsAlone(frame, event);
    return person.empty() ? words : person + ": " + words;
}

} // namespace gapwise
