#include "viewer/command/step_text.h"

#include "models/frame/names.h"
#include "models/frame/notice.h"
#include "viewer/command/text_layout.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

namespace gapwise {

namespace {

/// A heading with its lines; nothing when there are none.
std::string section(std::string_view heading, const std::string& lines) {
    return lines.empty() ? std::string{} : fmt::format("\n{}\n{}", heading, lines);
}

std::string needsText(const Step& step) {
    std::string text;
    for (const Precedence& before : step.after)
        text += paragraph(fmt::format("  {:<5} ", before.step.text),
                          before.when == OnlyWhen::Always ? before.why
                                                          : before.why + ", when the rotor was lowered in");
    return text;
}

std::string actsText(const Step& step) {
    std::string text;
    for (std::size_t i = 0; i < step.acts.size(); ++i)
        text += paragraph(fmt::format("  {}. ", i + 1), step.acts[i]);
    return text;
}

std::string lubricantsText(const Step& step) {
    std::string text;
    for (const LubricantPoint& point : step.lubricants) {
        text += paragraph("  ", fmt::format("{}: {}", point.where, point.use));
        if (!point.never.empty())
            text += paragraph("    never: ", point.never);
    }
    return text;
}

std::string consumablesText(const Step& step) {
    std::string text;
    for (const Consumable& each : step.consumables)
        text += paragraph("  ", fmt::format("{} × {}", each.quantity, each.name));
    return text;
}

std::string witnessText(const Step& step) {
    std::string text;
    for (const WitnessCheck& check : step.witness) {
        text += paragraph("  ", fmt::format("{}: {}", check.look, check.good));
        if (!check.bad.empty())
            text += paragraph("    otherwise: ", check.bad);
    }
    return text;
}

std::string cautionsText(const Frame& frame, const Step& step) {
    std::vector<const Caution*> shown;
    for (const Caution& caution : frame.cautions)
        if (std::ranges::find(caution.steps, step.id) != caution.steps.end())
            shown.push_back(&caution);
    std::ranges::stable_sort(shown, {}, &Caution::signal);
    std::string text;
    for (const Caution* caution : shown)
        text += paragraph(fmt::format("  {:<8} ", signalWordOf(caution->signal)), caution->words);
    return text;
}

std::string measurementsText(const Frame& frame, const Step& step) {
    std::string text;
    for (const Measurement& each : frame.measurements)
        if (each.step == step.id)
            text += paragraph(fmt::format("  {:<4} ", each.id.text),
                              fmt::format("{}: {}{}", each.name, each.where,
                                          each.instrument.empty() ? "" : "; " + each.instrument));
    return text;
}

std::string fastenersText(const Frame& frame, const Step& step) {
    std::string text;
    for (const Fastener& fastener : frame.fasteners)
        if (fastener.step == step.id)
            text += fastenerText(fastener);
    return text;
}

std::string textsOf(const std::vector<std::string>& texts) {
    return listed(texts, "", [](const std::string& each) { return paragraph("  ", each); });
}

std::string placesText(const Step& step) {
    std::string text;
    if (!step.places.empty())
        text += paragraph("  puts in: ", listed(step.places, ", ", [](const PartId& id) { return id.text; }));
    if (!step.hides.empty())
        text += paragraph("  hides:   ", listed(step.hides, ", ", [](const SeatId& id) { return id.text; }));
    return text;
}

std::string headText(const Frame& frame, const Step& step) {
    std::string text = paragraph(step.id.text + "  ", fmt::format("{} ({})", step.title, frame.name));
    std::string lies =
        listed(step.attitudes, " or ", [](StepAttitude attitude) { return spoken(nameOf(attitude)); });
    if (step.view == StepView::Beside)
        lies += ", seen from beside";
    else if (step.view != StepView::Any)
        lies += fmt::format(", seen from the {} side", nameOf(step.view));
    text += paragraph("  lies:    ", lies);
    if (const std::string notes = stepNotesOf(step); !notes.empty())
        text += paragraph("  note:    ", notes);
    return text + placesText(step);
}

std::string runDownText(const RunDown& runDown, double finalNm) {
    return fmt::format(
        "drag at most {} N·m, seat {} N·m, slacken, snug {} N·m, final {} N·m, angle from snug to "
        "final {} to {}°",
        runDown.dragMostNm, runDown.seatNm, runDown.snugNm, finalNm, runDown.leastAngle.value,
        runDown.mostAngle.value);
}

std::string stagesText(const TorquePlan& plan) {
    const std::string groups = listed(plan.groups, ", ", [](const ScrewGroup& group) {
        return fmt::format("{}{}", group.name.empty() ? "" : group.name + " ", group.count);
    });
    return fmt::format("stages {} %{}; pattern {}; screws: {}", fmt::join(plan.stagesPercent, ", "),
                       plan.checkPass ? ", then once round clockwise" : "", fmt::join(plan.pattern, "-"),
                       groups);
}

std::string planText(const TorquePlan& plan) {
    std::string text =
        paragraph("       torque:  ", fmt::format("{} N·m, {}{}", plan.torqueNm, plan.lubrication,
                                                  plan.lubricatedValue ? " (lubricated value)" : ""));
    text += paragraph("       thread:  ", fmt::format("{}, class {}", plan.thread, plan.propertyClass));
    text += paragraph("       how:     ",
                      plan.runDown ? runDownText(*plan.runDown, plan.torqueNm) : stagesText(plan));
    if (plan.nutLine)
        text += paragraph("       line:    ",
                          fmt::format("agrees within {}°, small within {}°, once the stack is "
                                      "taken off",
                                      plan.nutLine->agrees.value, plan.nutLine->small.value));
    text += paragraph("       locking: ", spoken(nameOf(plan.locking)));
    if (!plan.check.empty())
        text += paragraph("       check:   ", plan.check);
    return text + paragraph("       source:  ", plan.source);
}

} // namespace

std::string stepNotesOf(const Step& step) {
    std::vector<std::string> notes;
    if (step.holdPoint)
        notes.emplace_back("HOLD POINT");
    if (step.when == OnlyWhen::RotorLoweredIn)
        notes.emplace_back("only when the rotor was lowered in from above");
    if (step.maySkip)
        notes.emplace_back("may be skipped with a reason");
    if (step.holdsRotor)
        notes.emplace_back("from here on the rotor is held");
    if (step.closesRecord)
        notes.emplace_back("closes the record");
    for (const StepId& other : step.standsFor)
        notes.push_back("stands for " + other.text);
    return fmt::format("{}", fmt::join(notes, "; "));
}

std::string fastenerText(const Fastener& fastener) {
    std::string text =
        paragraph(fmt::format("  {:<4} ", fastener.id.text),
                  fmt::format("{}, {}; tightens {}, seen from the {} side", fastener.name, fastener.size,
                              fastener.tightensClockwise ? "clockwise" : "counter-clockwise",
                              nameOf(fastener.handSeenFrom)));
    return fastener.plan ? text + planText(*fastener.plan) : text;
}

std::string stepAsText(const Frame& frame, const Step& step) {
    std::string text = headText(frame, step);
    text += section("After", needsText(step));
    text += section("Cautions", cautionsText(frame, step));
    text += section("Do", actsText(step));
    text += section("Lubricate", lubricantsText(step));
    text += section("Tighten", fastenersText(frame, step));
    text += section("Tools", textsOf(step.tools));
    text += section("Uses up", consumablesText(step));
    text += section("Measure", measurementsText(frame, step));
    text += section("Look, feel, listen", witnessText(step));
    text += section("Write down", textsOf(step.records));
    text += section("Asked before it is done", listed(step.asks, "", [](StepQuestion question) {
                        return paragraph("  ", spoken(nameIn(kQuestionNames, question)));
                    }));
    text += "\n";
    if (!noticeOf(frame).empty())
        text += fmt::format("{}\n", noticeOf(frame));
    return text + prevailLine(frame) + "\n";
}

} // namespace gapwise
