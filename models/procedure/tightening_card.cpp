#include "models/procedure/tightening_card.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

Sense senseOf(bool clockwise) {
    return clockwise ? Sense::Clockwise : Sense::CounterClockwise;
}

ThreadHand handOf(const Fastener& fastener) {
    return handThatTightens(senseOf(fastener.tightensClockwise));
}

std::string rotationWords(const Frame& frame, const TurnFacts& turn) {
    const std::string runs =
        fmt::format("{} nut on a rotor that runs {} seen from the {} side", nameOf(turn.thread.hand),
                    nameOf(senseOf(frame.rotatesClockwise)), nameOf(frame.rotationSeenFrom));
    return *turn.fitsRotation ? runs + ": fits, the drag of the wheel tightens it"
                              : runs + ": does not fit, the drag of the wheel would loosen it";
}

bool isNoted(const Fastener& fastener, const JobState& state) {
    return std::ranges::find(state.build.torques, fastener.id.text, &TorqueNote::fastener) !=
           state.build.torques.end();
}

std::optional<NextScrew> openIn(const Fastener& fastener, int group, const JobState& state) {
    return isNoted(fastener, state) ? std::nullopt : nextIn(fastener, group, state);
}

int countOf(const Fastener& fastener, int group) {
    const auto index = static_cast<std::size_t>(group);
    return fastener.plan && index < fastener.plan->groups.size() ? fastener.plan->groups[index].count : 1;
}

} // namespace

std::string_view grippedOf(const Fastener& fastener) {
    return fastener.plan && fastener.plan->runDown ? "nut" : "head";
}

TurnFacts turnFactsOf(const Frame& frame, const Fastener& fastener, const Facing& facing, StageKind stage) {
    const Side stands = facing.fromBehind ? opposite(fastener.handSeenFrom) : fastener.handSeenFrom;
    TurnFacts turn{.thread = {.hand = handOf(fastener), .looksTo = fastener.handSeenFrom},
                   .stands = stands,
                   .tightens = stage != StageKind::Slacken};
    const Sense tightening = tighteningAsFaced(turn.thread.hand);
    turn.asFaced = turn.tightens ? tightening : opposite(tightening);
    turn.asStanding = facing.fromBehind ? opposite(turn.asFaced) : turn.asFaced;
    const std::string_view gripped = grippedOf(fastener);
    turn.words =
        fmt::format("{}: {} as you face the {} ({} thread)", turn.tightens ? "to tighten" : "to slacken",
                    nameOf(turn.asFaced), gripped, nameOf(turn.thread.hand));
    if (facing.fromBehind)
        turn.behind = fmt::format("as you stand you look at its back: in your picture the wrench turns the "
                                  "other way, {} seen from the {} side",
                                  nameOf(turn.asStanding), nameOf(stands));
    if (fastener.plan && fastener.plan->runDown) {
        const bool clockwise = frame.rotatesClockwise == (frame.rotationSeenFrom == fastener.handSeenFrom);
        turn.fitsRotation = fitsRotation(turn.thread.hand, senseOf(clockwise));
        turn.rotation = rotationWords(frame, turn);
    }
    return turn;
}

std::optional<std::size_t> stageNow(const Fastener& fastener, int group, const JobState& state) {
    const std::size_t stages = stagesOf(fastener).size();
    if (stages == 0)
        return std::nullopt;
    const auto next = openIn(fastener, group, state);
    return next ? next->stage : stages - 1;
}

bool isGroupDone(const Fastener& fastener, int group, const JobState& state) {
    return !openIn(fastener, group, state);
}

std::vector<ScrewStanding> screwStandings(const Fastener& fastener, int group, const JobState& state) {
    std::vector<ScrewStanding> standings(static_cast<std::size_t>(countOf(fastener, group)),
                                         ScrewStanding::Done);
    const auto next = openIn(fastener, group, state);
    if (!next)
        return standings;
    std::ranges::fill(standings, ScrewStanding::Open);
    const auto at = [&](int screw) -> ScrewStanding& {
        return standings[static_cast<std::size_t>(screw - 1)];
    };
    for (const NextScrew& screw : screwsInOrder(fastener, group)) {
        if (screw.stage != next->stage)
            continue;
        if (screw.screw == next->screw)
            break;
        at(screw.screw) = ScrewStanding::Done;
    }
    at(next->screw) = ScrewStanding::Next;
    return standings;
}

std::string screwWords(const Fastener& fastener, int group, int screw) {
    const int count = countOf(fastener, group);
    return count == 1 ? std::string{grippedOf(fastener) == "nut" ? "nut" : "screw"}
                      : fmt::format("screw {} of {}", screw, count);
}

Result<Tightened> tickOf(const Fastener& fastener, const JobState& state, int group, int screw) {
    const auto next = openIn(fastener, group, state);
    const std::string tapped = screwWords(fastener, group, screw);
    if (!next)
        return Error{
            .where = "screw", .found = tapped, .allowed = "none is left: all are at their last stage"};
    const Stage stage = stagesOf(fastener)[next->stage];
    if (next->screw != screw)
        return Error{.where = "screw",
                     .found = tapped,
                     .allowed = fmt::format("screw {} is next, at {}", next->screw, stage.name)};
    return plannedAt(fastener, *next);
}

} // namespace gapwise
