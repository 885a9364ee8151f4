#include "viewer/panels/torque_parts.h"

#include "viewer/panels/typed_number.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace gapwise {

namespace {

/// A field of the wrench and where its errors point.
struct WrenchField {
    const char* id;
    std::string label;
    std::string TorqueDrafts::* text;
};

std::array<WrenchField, 6> fieldsOf(TorqueUnit unit) {
    return {{{"length", "length L, grip to drive, mm", &TorqueDrafts::length},
             {"adapter", "adapter E, drive to screw, mm", &TorqueDrafts::adapter},
             {"angle", "angle between both, degrees", &TorqueDrafts::angle},
             {"wrench-min", fmt::format("wrench from, {}", nameOf(unit)), &TorqueDrafts::least},
             {"wrench-max", fmt::format("wrench to, {}", nameOf(unit)), &TorqueDrafts::most},
             {"number", "number of the wrench", &TorqueDrafts::number}}};
}

/// The field at which an error is shown: a setting out of range at the end of the range that it passes.
std::string fieldOf(const Error& error, double settingNm, const WrenchRange& range) {
    if (error.where != "setting")
        return error.where;
    return range.leastNm && settingNm < *range.leastNm ? "wrench-min" : "wrench-max";
}

/// At the field there is room for little; the whole of it stands beside the fields.
std::string shortFault(const Error& error) {
    return error.where == "setting" ? "the setting is out of its range" : "cannot be: " + error.found;
}

/// What is typed in one unit, in another.
void convert(std::string& text, TorqueUnit from, TorqueUnit to) {
    constexpr int kFigures = 5;
    if (const std::optional<double> number = typedNumber(text))
        text = withFigures(fromNewtonMetres(toNewtonMetres(*number, from), to), kFigures);
}

void units(const Area& row, const Surface& surface) {
    TorqueDrafts& drafts = surface.drafts().torque;
    const auto count = static_cast<int>(kTorqueUnits.size());
    for (int i = 0; i < count; ++i) {
        const TorqueUnit unit = kTorqueUnits.at(static_cast<std::size_t>(i));
        if (!button(surface, columnOf(row, count, i, surface.px(4.0)), nameOf(unit),
                    {.chosen = drafts.unit == unit}))
            continue;
        for (std::string* text : {&drafts.least, &drafts.most, &drafts.drag})
            convert(*text, drafts.unit, unit);
        drafts.unit = unit;
    }
}

/// The torque that the page reckons with: of the stage now, of the last one while slackening or at the end.
double targetOf(const TorqueWork& work) {
    return work.now().torqueNm > 0.0 ? work.now().torqueNm : work.plan.torqueNm;
}

void drawAnswer(const Result<WrenchFacts>& wrench, const TypedWrench& typed, Area area,
                const Surface& surface) {
    if (!wrench) {
        for (const Error& error : wrench.errors()) {
            const double used = writeLines(area, fmt::format("{}: {}", error.where, faultWords(error)),
                                           {surface.fonts().body, palette::kBroken});
            area = {area.x, area.y + used, area.width, area.height - used};
        }
        return;
    }
    bool first = true;
    for (const std::string& line : wrenchLines(*wrench, typed.range, surface.drafts().torque.unit)) {
        const double used = writeLines(area, line, {first ? surface.fonts().title : surface.fonts().body});
        area = {area.x, area.y + used + surface.px(2.0), area.width, area.height - used};
        first = false;
    }
}

} // namespace

std::optional<Wish> wrenchPage(const TorqueWork& work, const Area& area, const Surface& surface) {
    TorqueDrafts& drafts = surface.drafts().torque;
    const double gap = surface.px(10.0);
    const TypedWrench typed = typedWrench(drafts);
    const Result<WrenchFacts> wrench = wrenchFor(targetOf(work), drafts);
    const Errors errors = wrench ? Errors{} : wrench.errors();
    const Result<WrenchFacts> anyRange = wrenchFactsOf(targetOf(work), typed.adapter, {});
    const double settingNm = anyRange ? anyRange->settingNm : 0.0;
    const Area left{area.x, area.y, area.width * 0.55, area.height};
    const double row = std::min((left.height - gap) / 2.0, surface.px(18.0) + surface.px(66.0));
    const auto fields = fieldsOf(drafts.unit);
    for (int i = 0; i < static_cast<int>(fields.size()); ++i) {
        const WrenchField& field = fields.at(static_cast<std::size_t>(i));
        const auto wrong = std::ranges::find_if(
            errors, [&](const Error& error) { return fieldOf(error, settingNm, typed.range) == field.id; });
        const std::string fault = wrong == errors.end() ? std::string{} : shortFault(*wrong);
        const Area line{left.x, left.y + (i / 3) * (row + gap), left.width, row};
        typeField(surface, columnOf(line, 3, i % 3, gap),
                  {.id = field.id, .label = field.label, .fault = fault}, drafts.*field.text);
    }
    const double right = left.right() + surface.px(20.0);
    const double unitRow = std::max(surface.bench ? surface.target : 0.0, surface.px(40.0));
    units({right, area.y, area.right() - right, unitRow}, surface);
    const double top = area.y + unitRow + gap;
    drawAnswer(wrench, typed, {right, top, area.right() - right, area.bottom() - top}, surface);
    return std::nullopt;
}

} // namespace gapwise
