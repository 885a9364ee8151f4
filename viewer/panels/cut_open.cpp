#include "viewer/panels/cut_open.h"

#include <algorithm>

namespace gapwise {

namespace {

Vec3 toEye(const Job& job) {
    return pictureCameraOf(job.standpoint, job.attitude()).forward() * -1.0;
}

Wish withRemoved(const Job& job, const Clock& removed) {
    Standpoint standpoint = job.standpoint;
    standpoint.section->removed = removed;
    return LookAgain{standpoint};
}

} // namespace

View cutViewOf(const Job& job) {
    const Side side = toEye(job).z < 0.0 ? Side::Turbine : Side::Compressor;
    return pictureViewOf(job.standpoint, job.attitude()).value_or(inletOnTop(side));
}

Wish cutOpen(const Job& job, std::optional<Section::Kind> kind) {
    Standpoint standpoint = job.standpoint;
    standpoint.section = kind ? std::optional{openedToward(toEye(job), *kind)} : std::nullopt;
    return LookAgain{standpoint};
}

std::optional<Section::Kind> nextCut(const Job& job) {
    if (!job.standpoint.section)
        return Section::Kind::Half;
    return job.standpoint.section->kind == Section::Kind::Half ? std::optional{Section::Kind::Quarter}
                                                               : std::nullopt;
}

std::optional<Wish> turnCut(const Job& job, Degrees seenClockwise) {
    if (!job.standpoint.section)
        return std::nullopt;
    return withRemoved(job, job.standpoint.section->removed.turned(cutViewOf(job).side, seenClockwise));
}

std::optional<Wish> turnCutTo(const Job& job, Degrees seen) {
    if (!job.standpoint.section)
        return std::nullopt;
    return withRemoved(job, clockSeenIn(cutViewOf(job), seen));
}

std::optional<Wish> turnCasings(const Job& job) {
    const bool any = std::ranges::any_of(job.state.build.seatings, [&](const Seating& seating) {
        const Part* part = job.frame.part(seating.part);
        return part && part->casing;
    });
    if (!any)
        return std::nullopt;
    Standpoint standpoint = job.standpoint;
    standpoint.casings = !standpoint.casings;
    return LookAgain{standpoint};
}

std::string cutWordsOf(const Job& job) {
    if (!job.standpoint.section)
        return {};
    return "Cut away: " + wordsOf(*job.standpoint.section, cutViewOf(job).side);
}

} // namespace gapwise
