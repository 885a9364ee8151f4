#include "viewer/panels/torque_parts.h"

#include "viewer/panels/typed_number.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

/// A field of the wrench; nothing while it is empty.
std::optional<double> numberOf(const std::string& text, const char* where, const char* allowed,
                               Errors& errors) {
    if (trimmedWords(text).empty())
        return std::nullopt;
    const std::optional<double> number = typedNumber(text);
    if (!number)
        errors.push_back({.where = where, .found = fmt::format("\"{}\"", text), .allowed = allowed});
    return number;
}

bool asksAngle(const TorqueWork& work) {
    return work.now().kind == StageKind::Final && angleFactsOf(work.plan).has_value();
}

/// The angle that goes with the final torque; false where it is missing and asked for.
bool takeAngle(const TorqueWork& work, TorqueDrafts& drafts, bool withoutAngle, Tightened& tightened) {
    if (!asksAngle(work) || withoutAngle)
        return true;
    const TypedAmount typed = amountIn(drafts.turned, "°");
    constexpr double kMostTurn = 360.0;
    const bool good = typed.value && *typed.value >= 0.0 && *typed.value <= kMostTurn;
    if (!good) {
        drafts.said = typed.fault.empty() ? "type the angle turned from snug to final, 0° to 360°, or press "
                                            "that it was not read"
                                          : "angle turned: " + typed.fault;
        return false;
    }
    tightened.angle = Degrees{*typed.value};
    return true;
}

} // namespace

int TorqueWork::next() const {
    const auto found = std::ranges::find(screws, ScrewStanding::Next);
    return found == screws.end() ? 0 : static_cast<int>(found - screws.begin()) + 1;
}

TurnFacts TorqueWork::turn() const {
    return turnFactsOf(job.frame, fastener, facing, done ? StageKind::Draw : now().kind);
}

std::optional<TorqueWork> torqueWorkOf(const Job& job, const FastenerId& id, const TorqueDrafts& drafts) {
    const Fastener* fastener = job.frame.fastener(id);
    if (!fastener || !fastener->plan)
        return std::nullopt;
    std::vector<FlangeGroup> flanges = flangeOf(job.frame, *fastener);
    if (flanges.empty())
        return std::nullopt;
    const int last = static_cast<int>(flanges.size()) - 1;
    const int group = drafts.fastener == id ? std::clamp(drafts.group, 0, last) : 0;
    TorqueWork work{.job = job,
                    .fastener = *fastener,
                    .plan = *fastener->plan,
                    .group = group,
                    .flange = std::move(flanges[static_cast<std::size_t>(group)]),
                    .facing = facingOf(*fastener, job.attitude(), job.standpoint.observer),
                    .stages = stagesOf(*fastener)};
    work.stage = stageNow(*fastener, group, job.state).value_or(0);
    work.done = isGroupDone(*fastener, group, job.state);
    work.screws = screwStandings(*fastener, group, job.state);
    if (!work.flange.drawn)
        work.facing = {.view = inletOnTop(fastener->handSeenFrom), .up = job.attitude().up};
    return work;
}

std::optional<Wish> tick(const TorqueWork& work, int screw, const Surface& surface, bool withoutAngle) {
    TorqueDrafts& drafts = surface.drafts().torque;
    Result<Tightened> ticked = tickOf(work.fastener, work.job.state, work.group, screw);
    if (!ticked) {
        const Error& error = ticked.errors().front();
        drafts.said = fmt::format("{} is not ticked: {}", error.found, error.allowed);
        return std::nullopt;
    }
    Tightened tightened = std::move(ticked).value();
    if (tightened.torqueNm > 0.0)
        if (const Result<WrenchFacts> wrench = wrenchFor(tightened.torqueNm, drafts); !wrench) {
            drafts.said = "the wrench does not do it: " + faultWords(wrench.errors().front());
            return std::nullopt;
        }
    if (!takeAngle(work, drafts, withoutAngle, tightened))
        return std::nullopt;
    tightened.by = whoWorks(work.job);
    tightened.wrench = trimmedWords(drafts.number);
    drafts.said.clear();
    return byWhoWorks(work.job, tightened, surface.drafts());
}

TypedWrench typedWrench(const TorqueDrafts& drafts) {
    TypedWrench typed;
    const auto millimetres = [&](const std::string& text, const char* where) {
        return numberOf(text, where, "a number of millimetres", typed.errors).value_or(0.0);
    };
    const auto torque = [&](const std::string& text, const char* where) -> std::optional<double> {
        const auto number = numberOf(text, where, "a number", typed.errors);
        return number ? std::optional{toNewtonMetres(*number, drafts.unit)} : std::nullopt;
    };
    typed.adapter.wrenchMm = millimetres(drafts.length, "length");
    typed.adapter.adapterMm = millimetres(drafts.adapter, "adapter");
    typed.adapter.angle =
        Degrees{numberOf(drafts.angle, "angle", "a number of degrees", typed.errors).value_or(0.0)};
    typed.range.leastNm = torque(drafts.least, "wrench-min");
    typed.range.mostNm = torque(drafts.most, "wrench-max");
    return typed;
}

Result<WrenchFacts> wrenchFor(double torqueNm, const TorqueDrafts& drafts) {
    const TypedWrench typed = typedWrench(drafts);
    if (!typed.errors.empty())
        return typed.errors;
    return wrenchFactsOf(torqueNm, typed.adapter, typed.range);
}

std::string faultWords(const Error& error) {
    return fmt::format("{}; allowed: {}", error.found, error.allowed);
}

TypedAmount amountIn(const std::string& text, std::string_view unit) {
    if (trimmedWords(text).empty())
        return {};
    const std::optional<double> number = typedNumber(text);
    if (!number)
        return {.fault = fmt::format("\"{}\"; allowed: a number, in {}", text, unit)};
    return {.value = number};
}

} // namespace gapwise
