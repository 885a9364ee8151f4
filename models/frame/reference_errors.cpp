#include "models/frame/frame_errors.h"

#include "geometry/base/overloaded.h"
#include "models/frame/known_ids.h"
#include "models/json/document.h"
#include "models/json/schema_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>

namespace gapwise {

namespace {

/// All references of a frame, checked against what there is.
class References {
public:
    References(const Frame& frame, Complaints& complaints) : frame_{frame}, complaints_{complaints} {}

    void gather();
    void checkTop() const;
    void checkParts() const;
    void checkSeats() const;
    void checkCarriers(const Seat& seat) const;
    void checkRules() const;
    void checkTwin(const Rule& rule) const;
    void checkSteps() const;
    void checkNotes() const;

private:
    const Frame& frame_;
    Complaints& complaints_;
    KnownIds types_{"part type", "part types"};
    KnownIds parts_{"part", "parts"};
    KnownIds seats_{"seat", "seats"};
    KnownIds features_{"feature", "features"};
    KnownIds rules_{"rule", "rules"};
    KnownIds steps_{"step", "steps"};
    KnownIds cautions_{"caution", "cautions"};
    KnownIds measurements_{"measurement", "measurements"};
    KnownIds fasteners_{"fastener", "fasteners"};
};

void References::gather() {
    for (const PartType& type : frame_.types) {
        types_.add(type.id.text, type.pointer, complaints_);
        for (std::size_t i = 0; i < type.shape.features.size(); ++i)
            if (const Feature& feature = type.shape.features[i]; !feature.id.empty())
                features_.add(feature.id, itemOf(type.pointer, "shape/features", i), complaints_);
    }
    for (const Part& part : frame_.parts)
        parts_.add(part.id.text, part.pointer, complaints_);
    for (const Seat& seat : frame_.seats)
        seats_.add(seat.id.text, seat.pointer, complaints_);
    for (const Rule& rule : frame_.rules)
        rules_.add(rule.id.text, rule.pointer, complaints_);
    for (const Step& step : frame_.steps)
        steps_.add(step.id.text, step.pointer, complaints_);
    for (const Caution& caution : frame_.cautions)
        cautions_.add(caution.id, caution.pointer, complaints_);
    for (const Measurement& measurement : frame_.measurements)
        measurements_.add(measurement.id.text, measurement.pointer, complaints_);
    for (const Fastener& fastener : frame_.fasteners)
        fasteners_.add(fastener.id.text, fastener.pointer, complaints_);
}

void References::checkTop() const {
    parts_.need(frame_.housing.text, "/housing", complaints_);
    parts_.need(frame_.rotor.text, "/rotor", complaints_);
    if (!frame_.housing.empty() && frame_.rotor == frame_.housing)
        complaints_.add("/rotor", quotedId(frame_.rotor.text), "another part than the housing");
    if (frame_.sister && *frame_.sister == frame_.id)
        complaints_.add("/sister", quotedId(frame_.sister->text), "the id of another frame");
}

void References::checkParts() const {
    for (const Part& part : frame_.parts) {
        types_.need(part.type.text, part.pointer + "/type", complaints_);
        if (part.fastener)
            fasteners_.need(part.fastener->text, part.pointer + "/fastener", complaints_);
        if (!seats_.has(seatOf(part.id).text))
            complaints_.add(part.pointer, fmt::format("{} without a seat", quotedId(part.id.text)),
                            fmt::format("a seat {} under /seats", seatOf(part.id).text));
        const bool isSide = part.id.text == nameOf(Side::Compressor) || part.id.text == nameOf(Side::Turbine);
        if (isSide || features_.has(part.id.text))
            complaints_.add(part.pointer + "/id", quotedId(part.id.text),
                            "an id that is neither a side nor the id of a feature");
    }
}

void References::checkSeats() const {
    for (const Seat& seat : frame_.seats) {
        const auto owner =
            std::ranges::find_if(frame_.parts, [&](const Part& part) { return seatOf(part.id) == seat.id; });
        if (owner == frame_.parts.end())
            complaints_.add(seat.pointer + "/id", quotedId(seat.id.text), "seat- and the id of a part");
        else if (std::ranges::find(seat.types, owner->type) == seat.types.end())
            complaints_.add(seat.pointer + "/types",
                            fmt::format("no {}, the type of {}", quotedId(owner->type.text), owner->id.text),
                            "the type of the part that the seat is meant for, among others");
        for (std::size_t i = 0; i < seat.types.size(); ++i)
            types_.need(seat.types[i].text, itemOf(seat.pointer, "types", i), complaints_);
        checkCarriers(seat);
    }
}

void References::checkCarriers(const Seat& seat) const {
    const bool isHousing = seat.id == seatOf(frame_.housing);
    if (isHousing != seat.carriers.empty())
        complaints_.add(seat.pointer + "/carriers", schema::counted(seat.carriers.size(), "carrier"),
                        isHousing ? "none: the housing carries everything" : "at least 1 carrier");
    for (std::size_t i = 0; i < seat.carriers.size(); ++i) {
        const Carrier& carrier = seat.carriers[i];
        const std::string pointer = itemOf(seat.pointer, "carriers", i);
        parts_.need(carrier.part.text, pointer + "/part", complaints_);
        if (carrier.onceStep)
            steps_.need(carrier.onceStep->text, pointer + "/once_step", complaints_);
        for (std::size_t k = 0; k < carrier.onceSeated.size(); ++k)
            parts_.need(carrier.onceSeated[k].text, itemOf(pointer, "once_seated", k), complaints_);
        const bool fromTheStart = !carrier.onceStep && carrier.onceSeated.empty();
        if (fromTheStart != (i == 0))
            complaints_.add(pointer, fromTheStart ? "no once_step and no once_seated" : "a condition",
                            fromTheStart ? "what makes this carrier follow the one before"
                                         : "a first carrier that carries from the start");
    }
}

void References::checkRules() const {
    for (const Rule& rule : frame_.rules) {
        const auto need = [&](const KnownIds& known, const std::string& id, std::string_view key) {
            known.need(id, fmt::format("{}/{}", rule.pointer, key), complaints_);
        };
        const auto needAll = [&](const std::vector<PartId>& parts) {
            for (std::size_t i = 0; i < parts.size(); ++i)
                parts_.need(parts[i].text, itemOf(rule.pointer, "parts", i), complaints_);
        };
        std::visit(Overloaded{
                       [&](const GapClockRule& r) { need(parts_, r.part.text, "part"); },
                       [&](const MarkRule& r) { need(parts_, r.part.text, "part"); },
                       [&](const GapsApartRule& r) { needAll({r.first, r.second}); },
                       [&](const GapClearOfRule& r) {
                           need(parts_, r.part.text, "part");
                           need(features_, r.feature.text, "feature");
                       },
                       [&](const FaceRule& r) {
                           need(parts_, r.part.text, "part");
                           if (const auto* part = std::get_if<PartId>(&r.toward))
                               need(parts_, part->text, "toward");
                       },
                       [&](const JointRule& r) { need(seats_, r.seat.text, "seat"); },
                       [&](const SeatRule& r) { need(seats_, r.seat.text, "seat"); },
                       [&](const MatchMarksRule& r) { needAll(r.parts); },
                       [&](const EngagedRule& r) {
                           need(parts_, r.part.text, "part");
                           if (r.feature)
                               need(features_, r.feature->text, "feature");
                           if (const auto* part = std::get_if<PartId>(&r.with);
                               part && !parts_.has(part->text))
                               complaints_.add(rule.pointer + "/with", quotedId(part->text),
                                               "the id of a part or of a feature");
                       },
                       [&](const HandRule& r) { need(fasteners_, r.fastener.text, "fastener"); },
                       [&](const OrderRule& r) { need(steps_, r.step.text, "step"); },
                       [&](const ConditionRule& r) { need(parts_, r.part.text, "part"); },
                   },
                   rule.demand);
        need(steps_, rule.lastLook.text, "last_look");
        checkTwin(rule);
    }
}

void References::checkTwin(const Rule& rule) const {
    if (!rule.twin)
        return;
    const std::string pointer = rule.pointer + "/twin";
    rules_.need(rule.twin->text, pointer, complaints_);
    const Rule* twin = frame_.rule(*rule.twin);
    if (*rule.twin == rule.id)
        complaints_.add(pointer, quotedId(rule.id.text), "the rule at the other end");
    else if (twin && kindOf(*twin) != kindOf(rule))
        complaints_.add(pointer, fmt::format("{}, a {} rule", quotedId(twin->id.text), kindOf(*twin)),
                        fmt::format("a {} rule", kindOf(rule)));
}

void References::checkSteps() const {
    for (const Step& step : frame_.steps) {
        for (std::size_t i = 0; i < step.after.size(); ++i)
            steps_.need(step.after[i].step.text, itemOf(step.pointer, "after", i) + "/step", complaints_);
        for (std::size_t i = 0; i < step.places.size(); ++i)
            parts_.need(step.places[i].text, itemOf(step.pointer, "places", i), complaints_);
        for (std::size_t i = 0; i < step.hides.size(); ++i)
            seats_.need(step.hides[i].text, itemOf(step.pointer, "hides", i), complaints_);
        for (std::size_t i = 0; i < step.standsFor.size(); ++i)
            steps_.need(step.standsFor[i].text, itemOf(step.pointer, "stands_for", i), complaints_);
    }
}

void References::checkNotes() const {
    const auto needParts = [&](const std::vector<PartId>& parts, const std::string& pointer) {
        for (std::size_t i = 0; i < parts.size(); ++i)
            parts_.need(parts[i].text, itemOf(pointer, "parts", i), complaints_);
    };
    for (const Caution& caution : frame_.cautions) {
        needParts(caution.parts, caution.pointer);
        for (std::size_t i = 0; i < caution.steps.size(); ++i)
            steps_.need(caution.steps[i].text, itemOf(caution.pointer, "steps", i), complaints_);
    }
    for (const Measurement& measurement : frame_.measurements) {
        needParts(measurement.parts, measurement.pointer);
        steps_.need(measurement.step.text, measurement.pointer + "/step", complaints_);
    }
    for (const Fastener& fastener : frame_.fasteners) {
        needParts(fastener.parts, fastener.pointer);
        steps_.need(fastener.step.text, fastener.pointer + "/step", complaints_);
        if (!fastener.plan || !fastener.plan->nutLine)
            continue;
        for (std::size_t i = 0; i < fastener.plan->nutLine->stack.size(); ++i)
            parts_.need(fastener.plan->nutLine->stack[i].text, itemOf(fastener.pointer, "nut_line/stack", i),
                        complaints_);
    }
    for (const SharedMaterial& shared : frame_.sharedMaterial) {
        parts_.need(shared.first.text, shared.pointer + "/first", complaints_);
        parts_.need(shared.second.text, shared.pointer + "/second", complaints_);
    }
}

/// Complains once about each circle of parts that carry each other.
class CarrierCircles {
public:
    CarrierCircles(const Frame& frame, Complaints& complaints) : frame_{frame}, complaints_{complaints} {}

    void follow(const PartId& part) {
        if (done_.contains(part))
            return;
        if (const auto start = std::ranges::find(path_, part); start != path_.end()) {
            complain(start, part);
            return;
        }
        path_.push_back(part);
        if (const Seat* seat = frame_.seat(seatOf(part)))
            for (const Carrier& carrier : seat->carriers)
                follow(carrier.part);
        path_.pop_back();
        done_.insert(part);
    }

private:
    void complain(std::vector<PartId>::const_iterator start, const PartId& part) {
        std::string circle;
        for (auto each = start; each != path_.end(); ++each)
            circle += each->text + " on ";
        complaints_.add(frame_.seat(seatOf(*start))->pointer + "/carriers", circle + part.text,
                        "carriers that lead to the housing");
    }

    const Frame& frame_;
    Complaints& complaints_;
    std::vector<PartId> path_{};
    std::set<PartId> done_{};
};

} // namespace

std::string quotedId(std::string_view id) {
    return quotedText(id);
}

void referenceErrors(const Frame& frame, Complaints& complaints) {
    References references{frame, complaints};
    references.gather();
    references.checkTop();
    references.checkParts();
    references.checkSeats();
    references.checkRules();
    references.checkSteps();
    references.checkNotes();
    CarrierCircles circles{frame, complaints};
    for (const Part& part : frame.parts)
        circles.follow(part.id);
}

} // namespace gapwise
