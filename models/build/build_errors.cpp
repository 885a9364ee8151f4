#include "models/build/read_build.h"

#include "models/access/access.h"
#include "models/build/read_instrument.h"
#include "models/build/reading_faults.h"
#include "models/json/document.h"
#include "models/json/fields.h"
#include "models/json/schema_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace gapwise {

namespace {

/// Complains when the frame has no thing with the id.
template <class Thing, class Id>
bool known(const std::vector<Thing>& things, const Id& id, const std::string& pointer,
           Complaints& complaints) {
    if (std::ranges::find(things, id, &Thing::id) != things.end())
        return true;
    std::vector<std::string> ids;
    for (const Thing& thing : things)
        ids.push_back(thing.id.text);
    complaints.add(pointer, quotedText(id.text), schema::listed(ids, "or"));
    return false;
}

void seatingErrors(const Frame& frame, const Build& build, Complaints& complaints) {
    std::map<PartId, const Seating*> ofPart;
    std::map<SeatId, const Seating*> inSeat;
    for (const Seating& seating : build.seatings) {
        const bool hasPart = known(frame.parts, seating.part, seating.pointer + "/part", complaints);
        const bool hasSeat = known(frame.seats, seating.seat, seating.pointer + "/seat", complaints);
        const auto [part, newPart] = ofPart.emplace(seating.part, &seating);
        const auto [seat, newSeat] = inSeat.emplace(seating.seat, &seating);
        if (!newPart)
            complaints.add(seating.pointer + "/part",
                           fmt::format("{}, as at {}", quotedText(seating.part.text), part->second->pointer),
                           "each part in one seat");
        if (!newSeat)
            complaints.add(seating.pointer + "/seat",
                           fmt::format("{}, as at {}", quotedText(seating.seat.text), seat->second->pointer),
                           "one part in each seat");
        const std::string misfit =
            hasPart && hasSeat ? misfitOf(frame, seating.part, seating.seat) : std::string{};
        if (!misfit.empty())
            complaints.add(seating.pointer + "/seat", misfit,
                           fmt::format("a seat that can take {}", seating.part.text));
    }
}

void stepErrors(const Frame& frame, const Build& build, Complaints& complaints) {
    std::map<StepId, std::size_t> done;
    for (std::size_t i = 0; i < build.stepsDone.size(); ++i) {
        const StepId& step = build.stepsDone[i];
        const std::string pointer = fmt::format("/steps_done/{}", i);
        known(frame.steps, step, pointer, complaints);
        const auto [first, isNew] = done.emplace(step, i);
        if (!isNew)
            complaints.add(pointer,
                           fmt::format("{}, as at /steps_done/{}", quotedText(step.text), first->second),
                           "each step once");
    }
}

void readingErrors(const Frame& frame, const Build& build, Complaints& complaints) {
    for (const Reading& reading : build.readings)
        for (Fault& fault : faultsOf(frame, reading))
            complaints.add(reading.pointer + fault.key, std::move(fault.found), std::move(fault.allowed));
}

void decisionErrors(const Frame& frame, const Build& build, Complaints& complaints) {
    std::map<PartId, std::size_t> decided;
    for (std::size_t i = 0; i < build.decisions.size(); ++i) {
        const PartId& part = build.decisions[i].part;
        const std::string pointer = fmt::format("/decisions/{}/part", i);
        known(frame.parts, part, pointer, complaints);
        const auto [first, isNew] = decided.emplace(part, i);
        if (!isNew)
            complaints.add(pointer,
                           fmt::format("{}, as at /decisions/{}", quotedText(part.text), first->second),
                           "one decision for each part");
    }
}

void workErrors(const Frame& frame, const Build& build, Complaints& complaints) {
    const std::vector<std::string> works = worksOf(frame);
    std::map<std::string, std::size_t> done;
    for (std::size_t i = 0; i < build.work.size(); ++i) {
        const std::string pointer = fmt::format("/work/{}", i);
        const auto [first, isNew] = done.emplace(build.work[i], i);
        if (std::ranges::find(works, build.work[i]) == works.end())
            complaints.add(pointer, quotedText(build.work[i]),
                           works.empty() ? fmt::format("none: no measurement of {} shows work", frame.id.text)
                                         : schema::listed(works, "or"));
        else if (!isNew)
            complaints.add(pointer,
                           fmt::format("{}, as at /work/{}", quotedText(build.work[i]), first->second),
                           "each once");
    }
}

} // namespace

Errors buildErrors(const Frame& frame, const Build& build, std::string_view file) {
    Complaints complaints{file};
    seatingErrors(frame, build, complaints);
    stepErrors(frame, build, complaints);
    readingErrors(frame, build, complaints);
    decisionErrors(frame, build, complaints);
    workErrors(frame, build, complaints);
    instrumentErrors(build.instruments, complaints);
    return complaints.take();
}

} // namespace gapwise
