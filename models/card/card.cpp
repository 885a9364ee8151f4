#include "models/card/card.h"

#include "geometry/base/overloaded.h"
#include "models/access/outline.h"
#include "models/check/face_words.h"
#include "models/frame/sets.h"

#include <algorithm>
#include <cctype>

namespace gapwise {

namespace {

template <class Things, class Thing>
bool holds(const Things& things, const Thing& thing) {
    return std::ranges::find(things, thing) != things.end();
}

CardStep cardStep(const Frame& frame, const StepId& id) {
    const Step* step = frame.step(id);
    return step ? CardStep{step->id, step->title} : CardStep{};
}

const Step* placingStep(const Frame& frame, const PartId& part) {
    const auto found =
        std::ranges::find_if(frame.steps, [&](const Step& step) { return holds(step.places, part); });
    return found == frame.steps.end() ? nullptr : &*found;
}

/// The parts that a rule speaks of, a pin among them.
std::vector<PartId> allPartsOf(const Rule& rule) {
    std::vector<PartId> parts = partsOf(rule);
    if (const auto* engaged = std::get_if<EngagedRule>(&rule.demand))
        if (const auto* pin = std::get_if<PartId>(&engaged->with))
            parts.push_back(*pin);
    return parts;
}

/// Every part in its own seat, the right way round: what a rule compares with can be asked of the check then.
Build filledBuild(const Frame& frame) {
    Build build{.frame = frame.id.text};
    const Clock top = Clock::seenFrom(Side::Compressor, Degrees{0.0});
    for (const Seat& seat : frame.seats)
        if (const PartId part = partMeantFor(seat.id); frame.part(part))
            build.seatings.push_back({.part = part,
                                      .seat = seat.id,
                                      .index = seat.fixedIndex.value_or(top),
                                      .referenceFaceLooks = demandedFaceOf(frame, part),
                                      .home = true});
    return build;
}

/// What the rules of a frame demand, asked of the check so that both say the same.
class Demands {
public:
    explicit Demands(const Frame& frame) : frame_{frame}, build_{filledBuild(frame)} {}

    Demanded of(const Rule& rule) const {
        return std::visit(
            Overloaded{
                [&](const FactCompared& c) { return Demanded{DemandedFact{c.expected}}; },
                [&](const DirectionCompared& c) { return Demanded{clockOf(rule, c)}; },
                [&](const ApartCompared& c) { return Demanded{DemandedApart{c.expected, c.tolerance}}; },
                [&](const ClearCompared& c) { return Demanded{clearOf(rule, c)}; },
                [&](const FaceCompared& c) { return Demanded{faceOf(rule, c)}; }},
            judge(frame_, build_, rule).compared);
    }

private:
    DemandedClock clockOf(const Rule& rule, const DirectionCompared& compared) const {
        const PartId part = partsOf(rule).front();
        const PartType* type = frame_.typeOf(part);
        DemandedClock demanded{.of = part,
                               .what = std::string{wordOf(type ? type->index : IndexKind::None)},
                               .target = Clock::seenFrom(compared.seenFrom, compared.expected),
                               .tolerance = compared.tolerance};
        if (const PrintedClock* printed = printedClockOf(rule))
            demanded.printedFrom = printed->seenFrom;
        if (const auto* engaged = std::get_if<EngagedRule>(&rule.demand)) {
            demanded.isIndex = !engaged->feature.has_value();
            if (engaged->feature)
                demanded.what = nameOfFeature(*engaged->feature);
            demanded.on = std::visit(Overloaded{[](const PartId& pin) { return pin.text; },
                                                [&](const FeatureId& dowel) { return nameOfFeature(dowel); }},
                                     engaged->with);
        }
        return demanded;
    }

    std::string nameOfFeature(const FeatureId& id) const {
        const Feature* feature = frame_.feature(id).feature;
        return feature && !feature->name.empty() ? feature->name : id.text;
    }

    DemandedFace faceOf(const Rule& rule, const FaceCompared& compared) const {
        const auto& demand = std::get<FaceRule>(rule.demand);
        const PartType* type = frame_.typeOf(demand.part);
        DemandedFace demanded{.kind = type ? type->face : FaceKind::None, .looks = compared.expected};
        if (const auto* toward = std::get_if<PartId>(&demand.toward))
            demanded.toward = *toward;
        return demanded;
    }

    DemandedClear clearOf(const Rule& rule, const ClearCompared& compared) const {
        const Frame::FoundFeature found = frame_.feature(compared.feature);
        const Part* owner = frame_.partWithFeature(compared.feature);
        DemandedClear demanded{.feature = compared.feature,
                               .name = nameOfFeature(compared.feature),
                               .margin = std::get<GapClearOfRule>(rule.demand).margin,
                               .betweenMiddles = compared.needed};
        if (found.feature && owner && owner->id == frame_.housing && found.feature->count == 1)
            demanded.at = Clock::seenFrom(Side::Compressor, wrapped(found.feature->offset));
        return demanded;
    }

    const Frame& frame_;
    Build build_;
};

std::vector<CardDemand> demandsOn(const Frame& frame, const PartId& part) {
    const Demands demands{frame};
    std::vector<CardDemand> all;
    for (const Rule& rule : frame.rules) {
        std::vector<PartId> parts = allPartsOf(rule);
        if (!holds(parts, part))
            continue;
        std::erase(parts, part);
        all.push_back({.rule = rule.id,
                       .kind = std::string{kindOf(rule)},
                       .printed = rule.printed,
                       .demanded = demands.of(rule),
                       .with = std::move(parts),
                       .severity = rule.severity,
                       .reason = rule.reason,
                       .lastLook = cardStep(frame, rule.lastLook),
                       .source = rule.source,
                       .tradeId = rule.tradeId});
    }
    return all;
}

std::vector<CardCaution> cautionsOn(const Frame& frame, const PartId& part) {
    const Step* placing = placingStep(frame, part);
    std::vector<CardCaution> all;
    for (const Caution& caution : frame.cautions) {
        if (!holds(caution.parts, part) && !(placing && holds(caution.steps, placing->id)))
            continue;
        CardCaution shown{
            .id = caution.id, .signal = caution.signal, .words = caution.words, .source = caution.source};
        for (const StepId& step : caution.steps)
            shown.steps.push_back(cardStep(frame, step));
        all.push_back(std::move(shown));
    }
    std::ranges::stable_sort(all, {}, &CardCaution::signal);
    return all;
}

std::vector<CardMeasurement> measurementsOn(const Frame& frame, const PartId& part) {
    std::vector<CardMeasurement> all;
    for (const Measurement& each : frame.measurements)
        if (holds(each.parts, part))
            all.push_back({each.id, each.name, each.where, cardStep(frame, each.step)});
    return all;
}

std::vector<CardFastener> fastenersAt(const Frame& frame, const Part& part) {
    std::vector<CardFastener> all;
    for (const Fastener& fastener : frame.fasteners) {
        const bool own = part.fastener == fastener.id;
        if (!own && !holds(fastener.parts, part.id))
            continue;
        CardFastener shown{.role = own ? CardFastener::Role::PartIsOneOf : CardFastener::Role::HoldsPart,
                           .id = fastener.id,
                           .name = fastener.name,
                           .size = fastener.size,
                           .tightensClockwise = fastener.tightensClockwise,
                           .seenFrom = fastener.handSeenFrom,
                           .step = cardStep(frame, fastener.step),
                           .holds = fastener.parts};
        for (const Part& piece : frame.parts) {
            if (piece.fastener != fastener.id)
                continue;
            shown.pieces.push_back(piece.id);
            if (const std::string set = setNameOf(frame, piece.id); !holds(shown.sets, set))
                shown.sets.push_back(set);
        }
        all.push_back(std::move(shown));
    }
    std::ranges::stable_sort(all, {}, &CardFastener::role);
    return all;
}

/// Whether a sentence names a part by its id, as a word of its own.
bool names(std::string_view sentence, std::string_view id) {
    const auto isPartOfWord = [&](std::size_t at) {
        return at < sentence.size() &&
               (std::isalnum(static_cast<unsigned char>(sentence[at])) != 0 || sentence[at] == '-');
    };
    for (std::size_t at = sentence.find(id); at != std::string_view::npos; at = sentence.find(id, at + 1))
        if (!(at > 0 && isPartOfWord(at - 1)) && !isPartOfWord(at + id.size()))
            return true;
    return false;
}

/// An orientation without a rule stands on the cards of the parts that its reason names; on the housing's,
/// the datum of all of them, where it names none.
std::vector<WithoutRule> withoutRuleOn(const Frame& frame, const PartId& part) {
    std::vector<WithoutRule> all;
    for (const WithoutRule& each : frame.withoutRule) {
        const bool namesAny =
            std::ranges::any_of(frame.parts, [&](const Part& any) { return names(each.why, any.id.text); });
        if (namesAny ? names(each.why, part.text) : part == frame.housing)
            all.push_back(each);
    }
    return all;
}

std::vector<std::string> orientationsOf(const std::vector<CardDemand>& demands) {
    std::vector<std::string> ids;
    for (const CardDemand& demand : demands)
        if (!demand.tradeId.empty() && !holds(ids, demand.tradeId))
            ids.push_back(demand.tradeId);
    std::ranges::sort(ids);
    return ids;
}

} // namespace

PartCard partCardOf(const Frame& frame, const PartId& id) {
    const Part* part = frame.part(id);
    const PartType* type = frame.typeOf(id);
    if (!part || !type)
        return {.id = id};
    const Seat* seat = frame.seat(seatOf(id));
    const Step* placing = placingStep(frame, id);
    const Step* hiding = hidingStepOf(frame, seatOf(id));
    PartCard card{.id = id,
                  .name = part->name,
                  .setName = setNameOf(frame, id),
                  .type = type->id,
                  .typeName = type->name,
                  .tradeId = part->tradeId,
                  .function = type->function,
                  .material = type->material,
                  .massKg = type->massKg,
                  .index = type->index,
                  .face = type->face,
                  .casing = part->casing,
                  .placedIn = placing ? CardStep{placing->id, placing->title} : CardStep{},
                  .entersFrom = seat ? seat->entersFrom : std::nullopt,
                  .hiddenBy = hiding ? CardStep{hiding->id, hiding->title} : CardStep{},
                  .demands = demandsOn(frame, id),
                  .allowed = allowedIndexOf(frame, id),
                  .lubricant = type->lubricant,
                  .cautions = cautionsOn(frame, id),
                  .measurements = measurementsOn(frame, id),
                  .fasteners = fastenersAt(frame, *part),
                  .withoutRule = withoutRuleOn(frame, id)};
    card.orientations = orientationsOf(card.demands);
    return card;
}

RightSight rightSightOf(const PartCard& card, Side eye) {
    RightSight sight;
    for (const CardDemand& demand : card.demands) {
        if (const auto* face = std::get_if<DemandedFace>(&demand.demanded)) {
            sight.referenceFace = face->looks == eye;
            sight.face = sight.referenceFace ? faceWord(face->kind) : otherFaceWord(face->kind);
        }
        const auto* clock = std::get_if<DemandedClock>(&demand.demanded);
        const bool own = clock && clock->isIndex && clock->of == card.id;
        if (own && (!sight.clock || clock->tolerance < sight.tolerance)) {
            sight.clock = clock->target.from(eye);
            sight.tolerance = clock->tolerance;
        }
    }
    return sight;
}

} // namespace gapwise
