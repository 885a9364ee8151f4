#include "viewer/workplace/job_opening.h"

#include "geometry/base/write_file.h"
#include "models/frame/sets.h"
#include "models/procedure/order.h"

#include <algorithm>
#include <array>

namespace gapwise {

namespace {

constexpr std::array<std::pair<Use, std::string_view>, 3> kUses{
    {{Use::Practise, "practise"}, {Use::Bench, "bench"}, {Use::Show, "show"}}};

} // namespace

std::string_view nameOf(Use use) {
    for (const auto& [each, name] : kUses)
        if (each == use)
            return name;
    return {};
}

std::optional<Use> useNamed(std::string_view name) {
    for (const auto& [use, each] : kUses)
        if (each == name)
            return use;
    return std::nullopt;
}

Attitude Job::attitude() const {
    return state.build.attitude.value_or(Attitude{});
}

View Job::lookingView() const {
    if (use == Use::Bench)
        return standingView();
    return pictureViewOf(standpoint, attitude()).value_or(standingView());
}

View Job::standingView() const {
    return viewOf(attitude(), standpoint.observer);
}

Workplace openWorkplace(const DataFolder& data, const std::filesystem::path& stateFolder) {
    Workplace workplace{.data = data, .stateFolder = stateFolder};
    workplace.offered.frames = offeredFrames(data);
    workplace.offered.samples = offeredSamples(data);
    listJobs(workplace);
    return workplace;
}

Errors beginWith(Workplace& workplace, const std::string& what, Use use) {
    Result<Beginning> beginning = beginningOf(workplace, what, use);
    if (!beginning)
        return beginning.errors();
    begin(workplace, std::move(beginning).value());
    return {};
}

void rememberStanding(Workplace& workplace) {
    if (!workplace.job || !workplace.journal)
        return;
    const PersonStanding now = standingOf(*workplace.job, *workplace.journal);
    if (workplace.remembered == now)
        return;
    writeFile(openJobFile(workplace.stateFolder), toText(now));
    workplace.remembered = now;
}

void leave(Workplace& workplace) {
    std::error_code ignored;
    std::filesystem::remove(openJobFile(workplace.stateFolder), ignored);
    workplace.job.reset();
    workplace.journal.reset();
}

bool demandShown(const Job& job, const SeatId& seat) {
    const Seating* seating = job.state.build.in(seat);
    const bool beingTurned = job.turning && job.turning->seat == seat;
    switch (job.use) {
    case Use::Show: return true;
    case Use::Bench:
        return seating && (seating->confirmed.has_value() || job.state.lookedFirst.contains(seat));
    case Use::Practise: break;
    }
    if (!seating || beingTurned)
        return false;
    const PartType* type = job.frame.typeOf(seating->part);
    const bool hasIndex = type && type->index != IndexKind::None && !job.frame.seat(seat)->fixedIndex;
    return seating->index.has_value() || !hasIndex;
}

std::string whoWorks(const Job& job) {
    return job.state.person ? job.state.person->name : std::string{};
}

bool lyingWasSaid(const Job& job) {
    return std::ranges::any_of(standingEvents(job.log), [](const Event* event) {
        const auto* changed = std::get_if<AttitudeChanged>(event);
        return changed && changed->confirmed;
    });
}

const Seating* seatingInHand(const Job& job) {
    return job.inHand ? job.state.build.of(*job.inHand) : nullptr;
}

std::vector<PartId> partsOnTray(const Job& job) {
    std::vector<PartId> parts;
    for (const PartId& part : partsInOrder(job.frame))
        if (!job.state.build.of(part) && part != job.frame.housing &&
            piecesOf(job.frame, part).front() == part)
            parts.push_back(part);
    return parts;
}

} // namespace gapwise
