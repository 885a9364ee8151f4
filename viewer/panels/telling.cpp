#include "viewer/panels/telling.h"

#include "models/check/face_words.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

/// In practice a face is tried before it is told: what must be seen stays back until one was chosen.
bool faceIsToBeTried(const Job& job, const Verdict& verdict) {
    const auto* face = std::get_if<FaceCompared>(&verdict.compared);
    const bool seated = job.state.build.in(seatOf(partsOf(*verdict.rule).front())) != nullptr;
    return job.use == Use::Practise && face && seated && verdict.state == RuleState::Open && !face->actual;
}

bool speaksOf(const Rule& rule, const SeatId& seat) {
    return std::ranges::any_of(partsOf(rule), [&](const PartId& part) { return seatOf(part) == seat; });
}

const FaceCompared* demandedFace(const Job& job, const SeatId& seat) {
    for (const Verdict& verdict : job.checked.verdicts)
        if (std::holds_alternative<FaceRule>(verdict.rule->demand) && speaksOf(*verdict.rule, seat))
            return std::get_if<FaceCompared>(&verdict.compared);
    return nullptr;
}

void addDemand(Faces& faces, const Job& job, const Seating& seating) {
    const FaceCompared* demanded = demandedFace(job, seating.seat);
    const bool tried = seating.referenceFaceLooks || job.use != Use::Practise;
    if (!demanded || !tried || !demandShown(job, seating.seat))
        return;
    faces.mustBeReference = demanded->expected == faces.eye;
    faces.must = fmt::format("From the {} side you must see the {} face.", nameOf(faces.eye),
                             *faces.mustBeReference ? faces.reference : faces.other);
}

std::string benchWords(const Job& job, const SeatId& seat, const Clock& clock) {
    const Degrees seen = seenIn(job.standingView(), clock);
    const EndUp up = job.attitude().up;
    const bool beside = sightOf(job.frame, job.state.build, seat) == Sight::FromBeside;
    const bool behind = beside && up != EndUp::Level && benchWord(seen, up).starts_with("away");
    return fmt::format("bench: {}{}", benchPhrase(seen, up), behind ? ", hidden behind the part" : "");
}

} // namespace

bool isUnsaidCondition(const Verdict& verdict) {
    return verdict.state == RuleState::Open && std::holds_alternative<ConditionRule>(verdict.rule->demand);
}

bool mayTell(const Job& job, const Verdict& verdict) {
    if (faceIsToBeTried(job, verdict) || isUnsaidCondition(verdict))
        return false;
    return std::ranges::all_of(partsOf(*verdict.rule), [&](const PartId& part) {
        const SeatId seat = seatOf(part);
        return !job.state.build.in(seat) || demandShown(job, seat);
    });
}

std::vector<const Finding*> toldFindings(const Job& job) {
    std::vector<const Finding*> told;
    for (const Finding& finding : job.checked.findings)
        if (mayTell(job, finding.verdict))
            told.push_back(&finding);
    return told;
}

std::vector<const Finding*> toldFindingsOf(const Job& job, const SeatId& seat) {
    std::vector<const Finding*> told = toldFindings(job);
    std::erase_if(told, [&](const Finding* finding) { return !speaksOf(*finding->verdict.rule, seat); });
    return told;
}

Counts countsOf(const Job& job) {
    Counts counts;
    for (const Verdict& verdict : job.checked.verdicts) {
        const bool told = mayTell(job, verdict);
        switch (verdict.state) {
        case RuleState::NotDue: ++counts.notDue; break;
        case RuleState::Broken: ++(told ? counts.broken : counts.untold); break;
        case RuleState::Open: ++(told ? counts.open : counts.untold); break;
        case RuleState::Holds: ++(told ? counts.held : counts.untold); break;
        }
    }
    return counts;
}

std::optional<GapWords> gapWordsOf(const Job& job, const SeatId& seatId) {
    const Build build = shownBuildOf(job);
    const Seating* seating = build.in(seatId);
    const Seat* seat = job.frame.seat(seatId);
    if (!seating || !seating->index || !seat)
        return std::nullopt;
    const HousingClock housing = housingClockOf(job.frame, build, seatId);
    const Clock clock = housing.index.value_or(*seating->index);
    const Side own = seat->entersFrom.value_or(Side::Compressor);
    const auto from = [&](Side side) {
        return fmt::format("{} from the {} side", hoursAndMinutes(clock.from(side)), nameOf(side));
    };
    const bool carried = housing.onCarrier || !housing.index;
    return GapWords{.own = from(own),
                    .other = from(opposite(own)),
                    .bench = benchWords(job, seatId, clock),
                    .from = carried ? fmt::format("read from the mark of {}", housing.carrier.text) : ""};
}

std::optional<Faces> facesOf(const Job& job, const SeatId& seat) {
    const Seating* seating = job.state.build.in(seat);
    const PartType* type = seating ? job.frame.typeOf(seating->part) : nullptr;
    if (!type || type->face == FaceKind::None)
        return std::nullopt;
    Faces faces{.kind = type->face,
                .reference = faceWord(type->face),
                .other = otherFaceWord(type->face),
                .eye = job.lookingView().side,
                .test = faceTest(type->face)};
    if (seating->referenceFaceLooks)
        faces.referenceVisible = *seating->referenceFaceLooks == faces.eye;
    addDemand(faces, job, *seating);
    return faces;
}

} // namespace gapwise
