#include "viewer/command/frame_text.h"

#include "geometry/base/overloaded.h"
#include "models/frame/names.h"
#include "models/frame/notice.h"
#include "viewer/command/frame_chains.h"
#include "viewer/command/step_text.h"
#include "viewer/command/text_layout.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

using Rows = std::vector<std::vector<std::string>>;

template <class AnyId>
std::string idText(const AnyId& id) {
    return id.text;
}

std::string headingText(const Frame& frame) {
    std::string text =
        fmt::format("{} ({}), size {}, {}\n", frame.name, frame.id.text, frame.size, spoken(frame.variant));
    text += paragraph("", fmt::format("Rules from: {}, revision {}", frame.sheet, frame.revision));
    text += fmt::format("The rotor turns {}, seen from the {} side\n",
                        frame.rotatesClockwise ? "clockwise" : "counter-clockwise",
                        nameOf(frame.rotationSeenFrom));
    if (frame.sister)
        text += fmt::format("Same size in the other bearing variant: {}\n", frame.sister->text);
    if (!noticeOf(frame).empty())
        text += fmt::format("{}\n", noticeOf(frame));
    return text;
}

std::string partsText(const Frame& frame) {
    Rows rows;
    for (const Part& part : frame.parts) {
        const PartType& type = *frame.type(part.type);
        std::string marks = type.index == IndexKind::None ? "" : spoken(nameOf(type.index));
        if (type.face != FaceKind::None)
            marks += fmt::format("{}{} face", marks.empty() ? "" : ", ", spoken(nameOf(type.face)));
        if (type.joint)
            marks += fmt::format(", {} joint", nameOf(*type.joint));
        rows.push_back({part.id.text, part.name, fmt::format("{} kg", type.massKg), marks});
    }
    return table(rows, "  ");
}

std::string carriersText(const Seat& seat) {
    return listed(seat.carriers, ", then ", [](const Carrier& carrier) {
        if (carrier.onceStep)
            return fmt::format("{} (from {} on)", carrier.part.text, carrier.onceStep->text);
        return carrier.part.text;
    });
}

std::string seatDetail(const Seat& seat) {
    std::string text = fmt::format("takes {}", listed(seat.types, " or ", idText<PartTypeId>));
    if (!seat.carriers.empty())
        text += fmt::format("; in {}", carriersText(seat));
    if (seat.entersFrom)
        text += fmt::format("; from the {} end", nameOf(*seat.entersFrom));
    if (seat.reversible)
        text += "; either way round";
    if (seat.fixedIndex)
        text += fmt::format("; fixed at {}",
                            clockSeenFrom(seat.fixedIndex->from(Side::Compressor), Side::Compressor));
    return text;
}

/// From the turbine end to the compressor end, as the shaft lies with the compressor to the right.
std::string seatsText(const Frame& frame) {
    std::vector<Seat> seats = frame.seats;
    std::ranges::stable_sort(seats, {}, &Seat::zMm);
    Rows rows;
    for (const Seat& seat : seats)
        rows.push_back({seat.id.text, fmt::format("z {:>8.2f} mm", seat.zMm), seatDetail(seat)});
    return table(rows, "  ");
}

std::string ruleText(const Frame& frame, const Rule& rule) {
    std::string text =
        fmt::format("\n  {}  severity {}, last look {}\n", rule.id.text, rule.severity, rule.lastLook.text);
    text += paragraph("    printed: ", rule.printed);
    text += paragraph("    demands: ", demandOf(frame, rule));
    text += paragraph("    matters: ", rule.reason);
    if (rule.twin)
        text += paragraph("    twin:    ", rule.twin->text + ", at the other end");
    return text + paragraph("    source:  ", rule.source);
}

std::string attitudesText(const Step& step) {
    std::string text =
        listed(step.attitudes, " or ", [](StepAttitude attitude) { return spoken(nameOf(attitude)); });
    if (step.view != StepView::Any)
        text +=
            fmt::format(", seen from {}{}", step.view == StepView::Beside ? "" : "the ",
                        step.view == StepView::Beside ? "beside" : fmt::format("{} side", nameOf(step.view)));
    return text;
}

std::string stepText(const Step& step) {
    const std::string notes = stepNotesOf(step);
    std::string text = paragraph(fmt::format("  {:<4} ", step.id.text),
                                 notes.empty() ? step.title : fmt::format("{} ({})", step.title, notes));
    constexpr std::string_view kLead = "         ";
    text += paragraph(fmt::format("{}lies:   ", kLead), attitudesText(step));
    if (!step.after.empty())
        text += paragraph(fmt::format("{}after:  ", kLead),
                          listed(step.after, "; ", [](const Precedence& before) {
                              return fmt::format("{} ({})", before.step.text, before.why);
                          }));
    if (!step.places.empty())
        text += paragraph(fmt::format("{}places: ", kLead), listed(step.places, ", ", idText<PartId>));
    if (!step.hides.empty())
        text += paragraph(fmt::format("{}hides:  ", kLead), listed(step.hides, ", ", idText<SeatId>));
    return text;
}

std::string clockDemand(const PrintedClock& printed) {
    const Side side = printed.seenFrom.value_or(Side::Compressor);
    const Side other = opposite(side);
    return fmt::format("{} = {}, each ± {}°, inlet on top", clockSeenFrom(printed.clock, side),
                       clockSeenFrom(targetOf(printed).from(other), other), printed.tolerance.value);
}

std::string featureName(const Frame& frame, const FeatureId& id) {
    const Feature* feature = frame.feature(id).feature;
    return feature && !feature->name.empty() ? fmt::format("{} ({})", feature->name, id.text) : id.text;
}

std::string faceDemand(const Frame& frame, const FaceRule& rule) {
    const PartType* type = frame.typeOf(rule.part);
    const std::string face = type ? spoken(nameOf(type->face)) : std::string{"reference"};
    if (const Side* side = std::get_if<Side>(&rule.toward))
        return fmt::format("{} face to the {} side", face, nameOf(*side));
    return fmt::format("{} face to {}", face, std::get<PartId>(rule.toward).text);
}

std::string engagedDemand(const Frame& frame, const EngagedRule& rule) {
    const std::string with =
        std::visit(Overloaded{[](const PartId& part) { return part.text; },
                              [&](const FeatureId& feature) { return featureName(frame, feature); }},
                   rule.with);
    const std::string own = rule.feature ? featureName(frame, *rule.feature) : std::string{"notch"};
    return fmt::format("{} of {} on {}, within {}°", own, rule.part.text, with, rule.engage.value);
}

} // namespace

std::string demandOf(const Frame& frame, const Rule& rule) {
    return std::visit(
        Overloaded{
            [](const GapClockRule& r) { return "gap at " + clockDemand(r.target); },
            [](const MarkRule& r) { return "index mark at " + clockDemand(r.target); },
            [](const GapsApartRule& r) {
                return fmt::format("gaps of {} and {} {}° ± {}° apart", r.first.text, r.second.text,
                                   r.apart.value, r.tolerance.value);
            },
            [&](const GapClearOfRule& r) {
                return fmt::format("whole gap at least {}° clear of {}", r.margin.value,
                                   featureName(frame, r.feature));
            },
            [&](const FaceRule& r) { return faceDemand(frame, r); },
            [](const JointRule& r) { return fmt::format("a {} joint in {}", nameOf(r.joint), r.seat.text); },
            [&](const SeatRule& r) {
                return fmt::format("{} in {}, fully home",
                                   listed(frame.seat(r.seat)->types, " or ", idText<PartTypeId>),
                                   r.seat.text);
            },
            [](const MatchMarksRule& r) {
                return fmt::format("match marks of {} in line within {}°",
                                   listed(r.parts, ", ", idText<PartId>), r.tolerance.value);
            },
            [&](const EngagedRule& r) { return engagedDemand(frame, r); },
            [](const HandRule& r) {
                return fmt::format("{} tightened {}, seen from the {} side", r.fastener.text,
                                   r.clockwise ? "clockwise" : "counter-clockwise", nameOf(r.seenFrom));
            },
            [](const OrderRule& r) { return fmt::format("{} only after all that it needs", r.step.text); },
            [](const ConditionRule& r) {
                return r.surface.empty() ? fmt::format("{} {}", r.part.text, r.state)
                                         : fmt::format("{}, {}: {}", r.part.text, r.surface, r.state);
            }},
        rule.demand);
}

std::string frameAsText(const Frame& frame) {
    std::string text = headingText(frame);
    text += "\nParts\n" + partsText(frame);
    text += "\nSeats, from the turbine end to the compressor end\n" + seatsText(frame);
    text += "\nRules\n";
    for (const Rule& rule : frame.rules)
        text += ruleText(frame, rule);
    text += "\nSteps\n";
    for (const Step& step : frame.steps)
        text += stepText(step);
    if (!frame.measurements.empty())
        text += "\nMeasurements\n" + measurementsText(frame);
    if (!frame.chains.empty())
        text += "\nChains, as drawn\n" + chainsText(frame);
    if (!frame.fasteners.empty())
        text += "\nFasteners\n";
    for (const Fastener& fastener : frame.fasteners)
        text += fastenerText(fastener);
    return text;
}

} // namespace gapwise
