#include "viewer/panels/draw.h"
#include "viewer/panels/step_page.h"
#include "viewer/panels/step_question_pages.h"
#include "viewer/panels/typed_number.h"

#include "models/procedure/procedure.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace gapwise {

namespace {

using Kind = SheetParagraph::Kind;

/// The kinds of bearing that a hand tells apart.
struct BearingKind {
    const char* variant;
    const char* label;
    const char* told;
};
constexpr std::array<BearingKind, 3> kBearings{{{"full_floating", "Floating ring", "turns freely, no notch"},
                                                {"pinned", "Pinned bush", "a notch or a pin hole"},
                                                {"split", "Split ring", "in two halves"}}};

std::string labelOf(std::string_view variant) {
    const auto found = std::ranges::find(kBearings, variant, &BearingKind::variant);
    return found == kBearings.end() ? std::string{variant} : std::string{found->label};
}

/// A bearing from its end: plain, with a notch, or in two halves.
void drawBearing(std::string_view variant, const Area& area) {
    const double radius = std::min(area.width, area.height) * 0.42;
    const Round round{area.middleX(), area.middleY(), radius};
    drawCircle(round, {palette::kInk, 2.0});
    drawCircle(round.withRadius(radius * 0.6), {palette::kInk, 2.0});
    if (variant == "pinned") {
        const Area notch{round.x - radius * 0.16, round.y - radius * 1.08, radius * 0.32, radius * 0.34};
        fillArea(notch, palette::kSheet);
        frameArea(notch, palette::kInk, 0.0, 2.0);
    } else if (variant == "split") {
        for (const double side : {-1.0, 1.0})
            ink().AddLine(point(round.x + side * radius * 0.56, round.y),
                          point(round.x + side * radius * 1.06, round.y), palette::kBroken, 3.0F);
    }
}

void bearingButton(const StepPage& page, const BearingKind& kind, bool chosen, const Area& area) {
    const Surface& surface = page.surface;
    const Pressed pressed = pressable(surface, kind.variant, area);
    fillArea(area, chosen ? palette::kAccentLight : (pressed.hovered ? palette::kShade : palette::kSheet),
             surface.px(5.0));
    frameArea(area, chosen ? palette::kAccent : palette::kHairline, surface.px(5.0), chosen ? 2.5 : 1.0);
    drawBearing(kind.variant, {area.x + surface.px(6.0), area.y, area.height, area.height});
    const double left = area.x + area.height + surface.px(14.0);
    writeLine({left, area.y + area.height * 0.08, area.right() - left, area.height * 0.46},
              std::string{kind.label} + (chosen ? " – said" : ""), {surface.fonts().strong});
    writeLine({left, area.y + area.height * 0.5, area.right() - left, area.height * 0.4}, kind.told,
              {surface.fonts().body, palette::kSoftInk});
    if (pressed.done && !chosen)
        sign(page, Answered{page.step.id, "variant", kind.variant, std::nullopt, whoWorks(page.job)});
}

void addVariant(StepPage& page) {
    const Answered* said = page.job.state.answer(page.step.id, "variant");
    page.flow.text(Kind::Strong, "Take the bearing in the hand. Which is it?");
    for (const BearingKind& kind : kBearings) {
        const bool chosen = said && said->answer == kind.variant;
        page.flow.row(std::max(page.rowHeight(), page.surface.px(52.0)),
                      [p = page, kind, chosen](const Area& area) { bearingButton(p, kind, chosen, area); });
    }
    if (!said)
        return;
    const Frame& frame = page.job.frame;
    if (said->answer == frame.variant) {
        page.flow.text(Kind::Body, fmt::format("It is what {} is for.", frame.name));
        return;
    }
    addWarning(page, fmt::format("Stop: {} is for the other kind: {}. Its rules are other ones.", frame.name,
                                 labelOf(frame.variant)));
    if (page.job.sister && page.job.sister->variant == said->answer)
        addButton(
            page, "Open " + page.job.sister->name,
            {.leading = true, .second = "a new job with the right rules", .id = "open sister"},
            [p = page] { p.wish = StartJob{.frame = p.job.sister->id.text, .use = p.job.use, .sheet = {}}; });
    else
        page.flow.text(Kind::Body, "There is no frame here for that bearing.");
}

/// Under a list, once each of its items is ticked.
void addAll(StepPage& page, const char* name, bool every) {
    const std::vector<Question> asked = questionsOf(page.job.frame, page.step);
    if (std::ranges::find(asked, name, &Question::name) == asked.end()) {
        page.flow.text(Kind::Strong, every ? "All ticked." : "Tick each.");
        return;
    }
    const bool said = page.job.state.answer(page.step.id, name) != nullptr;
    if (said)
        page.flow.text(Kind::Strong, "All ticked.");
    else
        addButton(
            page, "All ticked",
            {.enabled = every, .leading = every, .second = every ? "say so" : "tick each first"},
            [p = page, name] { sign(p, Answered{p.step.id, name, "all", std::nullopt, whoWorks(p.job)}); });
}

void addPickList(StepPage& page) {
    page.flow.text(Kind::Strong, "Does each lie there, new, in its quantity?");
    const std::vector<PickItem> items = pickListOf(page.job.frame);
    bool every = true;
    for (std::size_t i = 0; i < items.size(); ++i) {
        const std::string name = fmt::format("pick-{}", i + 1);
        const bool ticked = page.job.state.answer(page.step.id, name) != nullptr;
        every = every && ticked;
        std::string steps;
        for (const StepId& step : items[i].steps)
            steps += (steps.empty() ? "for " : ", ") + step.text;
        addTick(
            page,
            {.id = name,
             .words = fmt::format("{} × {}", items[i].quantity, items[i].name),
             .ticked = ticked,
             .second = steps},
            [p = page, name] { sign(p, Answered{p.step.id, name, "there", std::nullopt, whoWorks(p.job)}); });
    }
    addAll(page, "pick_list", every);
}

/// What was typed as the day of an instrument.
void sayDay(const StepPage& page, const std::string& name, const std::string& typed) {
    const auto day = typedDay(typed);
    if (!day) {
        page.drafts().faults[name] = "A day is written as 2027-03-31.";
        return;
    }
    sign(page, Answered{page.step.id, name, *day, std::nullopt, whoWorks(page.job)});
}

void addGauges(StepPage& page) {
    page.flow.text(Kind::Strong, "Until which day is each calibrated?");
    const std::vector<GaugeItem> items = gaugesOf(page.job.frame);
    const std::string& today = page.surface.frame.today;
    bool every = true;
    for (std::size_t i = 0; i < items.size(); ++i) {
        const std::string name = fmt::format("gauge-{}", i + 1);
        const Answered* said = page.job.state.answer(page.step.id, name);
        every = every && said;
        if (said) {
            const bool due = !today.empty() && said->answer < today;
            addTick(
                page,
                {.id = name, .words = items[i].instrument, .ticked = true, .second = "until " + said->answer},
                [] {});
            if (due)
                addWarning(page, fmt::format("Due since {}: take another one.", said->answer));
            continue;
        }
        addField(page,
                 {.name = name, .label = items[i].instrument, .hint = "year-month-day", .button = "There"},
                 [p = page, name](const std::string& typed) { sayDay(p, name, typed); });
    }
    addAll(page, "gauges", every);
}

} // namespace

void addQuestion(StepPage& page, StepQuestion question) {
    switch (question) {
    case StepQuestion::Variant: return addVariant(page);
    case StepQuestion::PickList: return addPickList(page);
    case StepQuestion::Gauges: return addGauges(page);
    case StepQuestion::CountIn:
    case StepQuestion::CountOut: return addCount(page, question);
    case StepQuestion::BlockHeight: return addBlockHeight(page);
    case StepQuestion::Retention: return addRetention(page);
    case StepQuestion::DragTorque: return addDragTorque(page);
    case StepQuestion::NutLine: return addNutLine(page);
    }
}

} // namespace gapwise
