#include "viewer/panels/torque_parts.h"

#include "models/procedure/step_status.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

/// In newton-metres, and in the chosen unit beside it.
std::string torqueBoth(double torqueNm, TorqueUnit unit) {
    const std::string newtonMetres = torqueWords(torqueNm);
    return unit == TorqueUnit::NewtonMetre
               ? newtonMetres
               : fmt::format("{} · {}", newtonMetres, torqueWords(torqueNm, unit));
}

std::string stageTorque(const Stage& stage, TorqueUnit unit) {
    return stage.torqueNm > 0.0 ? torqueBoth(stage.torqueNm, unit) : "back, no torque";
}

/// Done, now or still to come: sign, name, torque.
void drawStage(const TorqueWork& work, std::size_t index, const Area& cell, const Surface& surface) {
    const bool now = !work.done && index == work.stage;
    const bool done = work.done || index < work.stage;
    const Stage& stage = work.stages[index];
    fillArea(cell, now ? palette::kAccentLight : palette::kSheet, surface.px(5.0));
    frameArea(cell, now ? palette::kAccent : palette::kHairline, surface.px(5.0), now ? 2.0 : 1.0);
    const double radius = surface.px(11.0);
    const ImVec2 sign = point(cell.x + surface.px(18.0), cell.middleY());
    if (done)
        drawSign(DialSign::Holds, sign, radius);
    else if (now)
        ink().AddTriangleFilled({sign.x - 6.0F, sign.y - 9.0F}, {sign.x - 6.0F, sign.y + 9.0F},
                                {sign.x + 9.0F, sign.y}, palette::kAccent);
    else
        drawSign(DialSign::Empty, sign, radius);
    const double left = cell.x + surface.px(36.0);
    const double half = cell.height * 0.42;
    const Area words{left, cell.y + surface.px(2.0), cell.right() - left - surface.px(4.0), half};
    const std::string name = stage.name + (now ? " · now" : (done ? " · done" : ""));
    writeLine(words, name, {surface.fonts().small, palette::kSoftInk});
    writeLine({words.x, words.bottom(), words.width, cell.height - half - surface.px(4.0)},
              stageTorque(stage, surface.drafts().torque.unit),
              {now ? surface.fonts().title : surface.fonts().strong});
}

void drawStages(const TorqueWork& work, const Area& row, const Surface& surface) {
    const auto count = static_cast<int>(work.stages.size());
    const double gap = surface.px(6.0);
    const Area used{row.x, row.y, std::min(row.width, count * surface.px(330.0)), row.height};
    for (int i = 0; i < count; ++i)
        drawStage(work, static_cast<std::size_t>(i), columnOf(used, count, i, gap), surface);
}

std::string nextWords(const TorqueWork& work) {
    if (work.done)
        return "every stage is done";
    return fmt::format("next: {}, {}", screwWords(work.fastener, work.group, work.next()), work.now().name);
}

std::string orderLine(const TorqueWork& work) {
    if (work.screws.size() < 2)
        return {};
    std::vector<int> order;
    for (const int screw : work.now().order)
        if (screw <= static_cast<int>(work.screws.size()))
            order.push_back(screw);
    const auto done = std::ranges::count(work.screws, ScrewStanding::Done);
    return fmt::format("order {} · {} of {} at this stage", orderWords(order), done, work.screws.size());
}

/// What the wrench is set to, or why it cannot be.
void drawSetting(const TorqueWork& work, Area& rest, const Surface& surface) {
    const TorqueDrafts& drafts = surface.drafts().torque;
    if (work.done || work.now().torqueNm <= 0.0)
        return;
    const Result<WrenchFacts> wrench = wrenchFor(work.now().torqueNm, drafts);
    const std::string words = wrench ? "set the wrench to " + torqueWords(wrench->settingNm, drafts.unit)
                                     : "the wrench: " + faultWords(wrench.errors().front());
    const double used = writeLines(
        rest, words,
        {wrench ? surface.fonts().title : surface.fonts().body, wrench ? palette::kInk : palette::kBroken});
    rest = {rest.x, rest.y + used, rest.width, rest.height - used};
}

/// What comes next, large.
void drawNext(const TorqueWork& work, const Area& area, const Surface& surface) {
    const TorqueDrafts& drafts = surface.drafts().torque;
    const double line = surface.px(26.0);
    writeLine({area.x, area.y, area.width, line}, nextWords(work), {surface.fonts().title});
    Area rest{area.x, area.y + line, area.width, area.height - line};
    if (!work.done) {
        const double large = lineHeightOf(surface.fonts().bench);
        const Stage& stage = work.now();
        writeLine({rest.x, rest.y, rest.width, large},
                  stage.torqueNm > 0.0 ? torqueWords(stage.torqueNm, drafts.unit) : "slacken",
                  {surface.fonts().bench});
        rest = {rest.x, rest.y + large, rest.width, rest.height - large};
    }
    drawSetting(work, rest, surface);
    const bool said = !drafts.said.empty();
    const std::string words = said ? drafts.said : (work.done ? work.plan.check : orderLine(work));
    writeLines(rest, words,
               {said || surface.bench ? surface.fonts().body : surface.fonts().small,
                said ? palette::kBroken : palette::kSoftInk});
}

/// An arrow with the word for whose picture it is.
void drawArrow(const Area& area, Sense sense, std::string_view words, const Surface& surface) {
    const double label = surface.px(18.0);
    const Area square{area.x, area.y, area.width, area.height - label};
    const double radius = std::min(square.width, square.height) / 2.0 - surface.px(10.0);
    const Round round{square.middleX(), square.middleY(), radius};
    drawTurn(round, sense, {palette::kAccent, surface.px(9.0)});
    ink().AddNgonFilled(point(round.x, round.y), static_cast<float>(radius * 0.5), palette::kSteel, 6);
    writeLine({area.x, area.bottom() - label, area.width, label}, words,
              {surface.fonts().small, palette::kSoftInk, Align::Middle});
}

/// Whether the step of the fastener asks for the drag of its nut.
bool asksDrag(const TorqueWork& work) {
    const Step* step = work.job.frame.step(work.fastener.step);
    return step && work.plan.runDown &&
           std::ranges::find(step->asks, StepQuestion::DragTorque) != step->asks.end();
}

/// The torque that turns the nut before it seats.
std::optional<Wish> dragRow(const TorqueWork& work, Area& area, double height, const Surface& surface) {
    TorqueDrafts& drafts = surface.drafts().torque;
    const double gap = surface.px(6.0);
    const TypedAmount typed = amountIn(drafts.drag, nameOf(drafts.unit));
    const bool wrong = !typed.fault.empty() || typed.value.value_or(0.0) < 0.0;
    const double wide = area.width * 0.62;
    const bool enter = typeField(surface, {area.x, area.y, wide, height},
                                 {.id = "drag",
                                  .label = fmt::format("drag before it seats, {}", nameOf(drafts.unit)),
                                  .fault = wrong ? "only a number, 0 or more" : ""},
                                 drafts.drag);
    const double label = surface.px(18.0);
    const bool ready = typed.value && !wrong;
    const bool pressed =
        button(surface, {area.x + wide + gap, area.y + label, area.width - wide - gap, height - label},
               "Note drag", {.enabled = ready});
    area = {area.x, area.y + height + gap, area.width, area.height - height - gap};
    if (!ready || !(enter || pressed))
        return std::nullopt;
    const double torqueNm = toNewtonMetres(*typed.value, drafts.unit);
    drafts.drag.clear();
    return byWhoWorks(work.job,
                      Answered{.step = work.fastener.step,
                               .question = std::string{nameOf(StepQuestion::DragTorque)},
                               .answer = torqueWords(torqueNm),
                               .amount = torqueNm,
                               .by = whoWorks(work.job)},
                      surface.drafts());
}

/// The angle from snug to final.
void angleRow(Area& area, double height, const Surface& surface) {
    TorqueDrafts& drafts = surface.drafts().torque;
    typeField(surface, {area.x, area.y, area.width, height},
              {.id = "angle-turned",
               .label = "angle from snug to final, degrees",
               .fault = amountIn(drafts.turned, "°").fault},
              drafts.turned);
    const double gap = surface.px(6.0);
    area = {area.x, area.y + height + gap, area.width, area.height - height - gap};
}

/// A reading in words, and whether it is right.
struct Judged {
    std::string words{};
    bool good = true;
};

/// What stands noted of the drag, against its most.
Judged dragJudged(const TorqueWork& work, TorqueUnit unit) {
    const Answered* drag = work.job.state.answer(work.fastener.step, nameOf(StepQuestion::DragTorque));
    const std::string most = torqueWords(work.plan.runDown->dragMostNm, unit);
    if (!drag || !drag->amount)
        return {fmt::format("drag is not noted yet; at most {}", most)};
    const bool good = *drag->amount <= work.plan.runDown->dragMostNm;
    return {fmt::format("drag {} noted, at most {}: {}", torqueWords(*drag->amount, unit), most,
                        good ? "the thread is free" : "the thread picks up, take the nut off"),
            good};
}

/// The angle as it is typed against its window.
Judged angleJudged(const AngleFacts& facts, const TorqueDrafts& drafts) {
    const TypedAmount typed = amountIn(drafts.turned, "°");
    if (!typed.value)
        return {expectedAngleWords(facts)};
    const Degrees turned{*typed.value};
    return {angleWords(turned, facts.window), judgeAngle(turned, facts.window) == AngleVerdict::Within};
}

/// What is read at this stage of a nut; of others nothing.
Judged judgedNow(const TorqueWork& work, const TorqueDrafts& drafts) {
    if (work.done)
        return {};
    const std::optional<AngleFacts> angle = angleFactsOf(work.plan);
    if (work.now().kind == StageKind::Final && angle)
        return angleJudged(*angle, drafts);
    const bool drag = work.now().kind == StageKind::Seat && asksDrag(work);
    return drag ? dragJudged(work, drafts.unit) : Judged{};
}

/// The words beside the arrows; smaller ones where not all of them have room.
void sayHand(const TorqueWork& work, const TurnFacts& turn, Area area, const Surface& surface) {
    const Judged judged = judgedNow(work, surface.drafts().torque);
    const Fonts& fonts = surface.fonts();
    std::vector<std::pair<std::string, Type>> words{
        {turn.words, {surface.bench ? fonts.large : fonts.strong}},
        {turn.behind, {fonts.body, palette::kBroken}},
        {judged.words, {fonts.body, judged.good ? palette::kInk : palette::kBroken}},
        {turn.rotation,
         {fonts.small, turn.fitsRotation.value_or(true) ? palette::kSoftInk : palette::kBroken}}};
    std::erase_if(words, [](const auto& each) { return each.first.empty(); });
    const double gap = surface.px(4.0);
    double needed = 0.0;
    for (const auto& [text, type] : words)
        needed += heightOf(area.width, text, type.font) + gap;
    const bool tight = needed > area.height;
    for (auto& [text, type] : words) {
        if (tight)
            type.font = fonts.small;
        const double used = writeLines(area, text, type) + gap;
        area = {area.x, area.y + used, area.width, area.height - used};
    }
}

/// Which way the wrench turns.
void drawHand(const TorqueWork& work, const Area& area, const Surface& surface) {
    const TurnFacts turn = work.turn();
    const bool two = !turn.behind.empty();
    const double wide = surface.px(two ? 112.0 : 140.0);
    const Area first{area.x, area.y, wide, std::min(area.height, wide + surface.px(18.0))};
    drawArrow(first, turn.asFaced, fmt::format("facing the {}", grippedOf(work.fastener)), surface);
    double left = first.right() + surface.px(8.0);
    if (two) {
        drawArrow({left, first.y, wide, first.height}, turn.asStanding, "as you stand", surface);
        left += wide + surface.px(8.0);
    }
    sayHand(work, turn, {left, area.y, area.right() - left, area.height}, surface);
}

std::string tickLabel(const TorqueWork& work, TorqueUnit unit) {
    std::string label = screwWords(work.fastener, work.group, work.next());
    label.front() = static_cast<char>(label.front() - 'a' + 'A');
    if (work.now().kind == StageKind::Slacken)
        return label + " is slack";
    return fmt::format("{} is at {}", label, torqueWords(work.now().torqueNm, unit));
}

std::string signature(const TorqueWork& work, const TorqueDrafts& drafts) {
    const std::string who = whoWorks(work.job);
    return fmt::format("{}{} · Ctrl+Z takes it back", who.empty() ? "nobody signed on" : "by " + who,
                       drafts.number.empty() ? "" : ", wrench " + drafts.number);
}

/// The button that ticks what is next; of a nut at its final torque a second one for an angle not read.
std::optional<Wish> tickRow(const TorqueWork& work, bool angle, const Area& row, const Surface& surface) {
    const double gap = surface.px(6.0);
    const double less = angle ? row.width * 0.34 : 0.0;
    const Area main{row.x, row.y, row.width - less - (angle ? gap : 0.0), row.height};
    std::optional<Wish> wish;
    if (button(surface, main, tickLabel(work, surface.drafts().torque.unit),
               {.leading = true, .font = surface.fonts().strong, .id = "tick"}))
        wish = tick(work, work.next(), surface);
    const Area other{main.right() + gap, row.y, less, row.height};
    if (angle && button(surface, other, "angle not read", {.font = surface.fonts().small}))
        wish = tick(work, work.next(), surface, true);
    return wish;
}

/// Fields and buttons of what is next.
std::optional<Wish> doColumn(const TorqueWork& work, Area area, const Surface& surface) {
    const double row = std::max(surface.bench ? surface.target : 0.0, surface.px(44.0));
    const double gap = surface.px(6.0);
    const double label = surface.px(18.0);
    std::optional<Wish> wish;
    if (work.done) {
        writeLines(area, "All at their last stage. Touched again, it must be tightened again.",
                   {surface.fonts().body, palette::kSoftInk});
        return std::nullopt;
    }
    const bool final = work.now().kind == StageKind::Final;
    const std::optional<AngleFacts> angle = final ? angleFactsOf(work.plan) : std::nullopt;
    const bool drag = work.now().kind == StageKind::Seat && asksDrag(work);
    if (drag)
        wish = dragRow(work, area, row + label, surface);
    if (angle)
        angleRow(area, row + label, surface);
    if (auto ticked = tickRow(work, angle.has_value(), {area.x, area.y, area.width, row}, surface))
        wish = std::move(ticked);
    const Area words{area.x, area.y + row + gap, area.width, area.height - row - gap};
    writeLines(words, signature(work, surface.drafts().torque), {surface.fonts().small, palette::kSoftInk});
    return wish;
}

} // namespace

std::optional<Wish> tightenPage(const TorqueWork& work, const Area& area, const Surface& surface) {
    const double stages = surface.px(52.0);
    const double gap = surface.px(14.0);
    drawStages(work, {area.x, area.y, area.width, stages}, surface);
    const double top = area.y + stages + surface.px(8.0);
    const double height = area.bottom() - top;
    const double free = area.width - 2.0 * gap;
    const Area next{area.x, top, free * 0.27, height};
    const Area hand{next.right() + gap, top, free * 0.43, height};
    const Area act{hand.right() + gap, top, area.right() - hand.right() - gap, height};
    drawNext(work, next, surface);
    drawHand(work, hand, surface);
    return doColumn(work, act, surface);
}

} // namespace gapwise
