#include "viewer/panels/card_frame.h"
#include "viewer/panels/measuring_pages.h"
#include "viewer/panels/torque_parts.h"
#include "viewer/panels/typed_number.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <array>

namespace gapwise {

namespace {

template <class T>
struct Choice {
    T value;
    const char* label;
};
constexpr std::array<Choice<PartCondition>, 6> kConditions{{{PartCondition::AsNew, "As new"},
                                                            {PartCondition::WornInLimits, "Worn in limits"},
                                                            {PartCondition::WornOut, "Worn out"},
                                                            {PartCondition::Damaged, "Damaged"},
                                                            {PartCondition::Missing, "Missing"},
                                                            {PartCondition::WrongPart, "Wrong part"}}};
constexpr std::array<Choice<PartFate>, 3> kFates{
    {{PartFate::Reuse, "Reuse"}, {PartFate::Renew, "Renew"}, {PartFate::Reject, "Reject"}}};
/// The shop's list (common practice, no source).
constexpr std::array<const char*, 8> kCauses{
    "oil starvation",   "dirt in oil",          "foreign object",       "over-speed",
    "over-temperature", "wear by running time", "handling or assembly", "not known"};
constexpr std::array<Choice<const char*>, 3> kWork{
    {{"deposits_removed_compressor", "Deposits off, compressor"},
     {"deposits_removed_turbine", "Deposits off, turbine"},
     {"rotor_freed", "Rotor was tight, freed"}}};

std::string_view labelOf(PartCondition condition) {
    return std::ranges::find(kConditions, condition, &Choice<PartCondition>::value)->label;
}

std::string_view labelOf(PartFate fate) {
    return std::ranges::find(kFates, fate, &Choice<PartFate>::value)->label;
}

std::string listed(const std::vector<QuantityId>& quantities) {
    std::vector<std::string> names;
    for (const QuantityId& quantity : quantities)
        names.push_back(quantity.text);
    return fmt::format("{}", fmt::join(names, ", "));
}

/// Those that ask for a decision first; else in the order of the frame.
std::vector<const PartVerdict*> rowsOf(const MeasureReport& report) {
    std::vector<const PartVerdict*> rows;
    for (const PartVerdict& part : report.parts)
        rows.push_back(&part);
    std::ranges::stable_sort(rows, {}, [](const PartVerdict* part) { return !part->open; });
    return rows;
}

std::string decisionWords(const PartVerdict& part) {
    if (part.decision)
        return fmt::format("{} · {}{}", labelOf(part.decision->condition), labelOf(part.decision->fate),
                           part.decision->by.empty() ? "" : " · " + part.decision->by);
    return part.open ? "to be decided" : "nothing to decide";
}

void drawRow(const PartVerdict& part, const Area& row, bool chosen, const Surface& surface) {
    if (chosen)
        fillArea(row, palette::kAccentLight, surface.px(4.0));
    fillArea({row.x, row.bottom() - 1.0, row.width, 1.0}, palette::kHairline);
    drawStandingSign(part.worst, point(row.x + surface.px(14.0), row.middleY()), surface.px(8.0));
    const double left = row.x + surface.px(30.0);
    const double width = row.right() - left - surface.px(6.0);
    const double half = row.height * 0.54;
    writeLine({left, row.y, width * 0.42, half}, part.part.text, {surface.fonts().strong});
    const bool asks = part.open;
    writeLine({left + width * 0.42, row.y, width * 0.58, half}, decisionWords(part),
              {asks ? surface.fonts().strong : surface.fonts().small, asks ? palette::kBroken : palette::kInk,
               Align::Right});
    const StandingLook look = lookOf(part.worst);
    const std::string because = part.because.empty() ? std::string{look.word}
                                                     : fmt::format("{}: {}", look.word, listed(part.because));
    writeLine({left, row.y + half, width, row.height - half - 2.0}, because,
              {surface.fonts().small, look.colour});
}

/// The draft is of the part that is shown: another one begins with what was decided of it.
void beginDeciding(const PartVerdict& part, MeasuringDrafts& drafts) {
    if (drafts.decided == part.part)
        return;
    drafts.decided = part.part;
    const PartDecision known = part.decision.value_or(PartDecision{});
    drafts.condition = part.decision ? std::optional{known.condition} : std::nullopt;
    drafts.fate = part.decision ? std::optional{known.fate} : std::nullopt;
    drafts.cause = known.cause;
    drafts.reason = known.reason;
    drafts.concession = known.concession;
}

/// Rows of buttons from above; each takes its height off the area.
class Rows {
public:
    Rows(const Area& area, double height, double gap) : area_{area}, height_{height}, gap_{gap} {}
    Area next(double height = 0.0) {
        const double taken = height > 0.0 ? height : height_;
        const Area row{area_.x, area_.y, area_.width, taken};
        area_ = {area_.x, area_.y + taken + gap_, area_.width, area_.height - taken - gap_};
        return row;
    }
    bool roomy() const { return roomy_; }
    void setRoomy(bool roomy) { roomy_ = roomy; }

private:
    Area area_{};
    double height_ = 0.0;
    double gap_ = 0.0;
    bool roomy_ = true;
};

PartDecision decisionOf(const Job& job, const MeasuringDrafts& drafts) {
    return {.part = drafts.decided,
            .condition = *drafts.condition,
            .fate = *drafts.fate,
            .by = whoWorks(job),
            .reason = trimmedWords(drafts.reason),
            .cause = drafts.cause,
            .concession = trimmedWords(drafts.concession)};
}

/// A reason for reuse of what is worn, a concession beyond a limit: what still has to be said.
std::string missingWords(const PartVerdict& part, const MeasuringDrafts& drafts) {
    if (!drafts.condition)
        return "say how it was found";
    if (!drafts.fate)
        return "say what becomes of it";
    const bool reuse = *drafts.fate == PartFate::Reuse;
    if (reuse && part.worst == Standing::Between && trimmedWords(drafts.reason).empty())
        return "reuse between new and limit needs a reason";
    if (reuse && part.worst == Standing::Beyond && trimmedWords(drafts.concession).empty())
        return "reuse beyond the limit needs a concession number";
    return {};
}

/// Over its buttons, where the height allows.
void label(Rows& rows, std::string_view words, const Surface& surface) {
    if (!rows.roomy())
        return;
    const double height = lineHeightOf(surface.fonts().small) - surface.px(4.0);
    writeLine(rows.next(height), words, {surface.fonts().small, palette::kSoftInk});
}

void choiceRows(Rows& rows, const Surface& surface) {
    MeasuringDrafts& drafts = surface.drafts().measuring;
    const double gap = surface.px(6.0);
    label(rows, "how it was found", surface);
    const Area first = rows.next();
    const Area second = rows.next();
    for (int i = 0; i < 6; ++i) {
        const auto& choice = kConditions.at(static_cast<std::size_t>(i));
        if (button(surface, columnOf(i < 3 ? first : second, 3, i % 3, gap), choice.label,
                   {.chosen = drafts.condition == choice.value}))
            drafts.condition = choice.value;
    }
    label(rows, "what becomes of it", surface);
    const Area fates = rows.next();
    for (int i = 0; i < 3; ++i) {
        const auto& choice = kFates.at(static_cast<std::size_t>(i));
        if (button(surface, columnOf(fates, 3, i, gap), choice.label,
                   {.chosen = drafts.fate == choice.value}))
            drafts.fate = choice.value;
    }
    label(rows, "suspected cause, where there is one", surface);
    const Area upper = rows.next();
    const Area lower = rows.next();
    for (int i = 0; i < 8; ++i) {
        const char* cause = kCauses.at(static_cast<std::size_t>(i));
        if (button(surface, columnOf(i < 4 ? upper : lower, 4, i % 4, gap), cause,
                   {.chosen = drafts.cause == cause, .font = surface.fonts().small}))
            drafts.cause = drafts.cause == cause ? "" : cause;
    }
}

/// The verdict with the numbers that it stands on.
std::string wordsOf(const Job& job, const PartVerdict& part) {
    std::string words = part.words;
    for (const QuantityId& quantity : part.because) {
        const QuantityResult* result = job.measured.of(quantity);
        if (!result || !result->after)
            continue;
        const int decimals = decimalsFor(*result);
        words += fmt::format(" · {} {} ± {}", quantity.text, numberWords(result->after->judged, decimals),
                             numberWords(result->after->expanded, decimals));
    }
    return words;
}

std::optional<Wish> drawDeciding(const Job& job, const PartVerdict& part, const Area& area,
                                 const Surface& surface) {
    MeasuringDrafts& drafts = surface.drafts().measuring;
    beginDeciding(part, drafts);
    const Part* known = job.frame.part(part.part);
    const double line = lineHeightOf(surface.fonts().title);
    writeLine({area.x, area.y, area.width, line},
              fmt::format("{}  {}", part.part.text, known ? known->name : std::string{}),
              {surface.fonts().title});
    const double words = 2.0 * lineHeightOf(surface.fonts().small);
    writeLines({area.x, area.y + line, area.width, words + 1.0}, wordsOf(job, part), {surface.fonts().small});
    const double gap = surface.px(5.0);
    const double height = std::min(surface.bench ? surface.target : surface.px(42.0),
                                   std::max(surface.target, surface.px(36.0)));
    Rows rows{
        {area.x, area.y + line + words + gap, area.width, area.height - line - words - gap}, height, gap};
    constexpr double kRows = 7.0;
    const double left = area.height - line - words - gap - kRows * (height + gap);
    rows.setRoomy(left >= 3.0 * (lineHeightOf(surface.fonts().small) + gap));
    choiceRows(rows, surface);
    const double field = std::max(height + surface.px(2.0), surface.px(54.0));
    const Area fields = rows.next(field);
    typeField(surface, {fields.x, fields.y, fields.width * 0.62 - gap, fields.height},
              {.id = "reason", .label = "reason"}, drafts.reason);
    typeField(surface, {fields.x + fields.width * 0.62, fields.y, fields.width * 0.38, fields.height},
              {.id = "concession", .label = "concession number"}, drafts.concession);
    const std::string missing = missingWords(part, drafts);
    const Area last = rows.next();
    const double wide = surface.px(190.0);
    const std::string by = whoWorks(job);
    writeLine({last.x, last.y, last.width - wide - gap, last.height},
              missing.empty() ? (by.empty() ? std::string{"who works is asked for"} : "signed by " + by)
                              : missing,
              {surface.fonts().body, palette::kSoftInk});
    if (button(surface, {last.right() - wide, last.y, wide, last.height}, "Decide",
               {.enabled = missing.empty(), .leading = missing.empty()}))
        return byWhoWorks(job, PartDecided{decisionOf(job, drafts)}, surface.drafts());
    return std::nullopt;
}

/// What was done besides, that readings show.
std::optional<Wish> workRow(const Job& job, const Area& row, const Surface& surface) {
    const double label = surface.px(86.0);
    writeLine({row.x, row.y, label, row.height}, "Work done", {surface.fonts().strong});
    const Area buttons{row.x + label, row.y, row.width - label, row.height};
    std::optional<Wish> wish;
    for (int i = 0; i < static_cast<int>(kWork.size()); ++i) {
        const auto& choice = kWork.at(static_cast<std::size_t>(i));
        const std::vector<std::string>& done = job.state.build.work;
        const bool so = std::ranges::find(done, choice.value) != done.end();
        if (button(surface, columnOf(buttons, static_cast<int>(kWork.size()), i, surface.px(6.0)),
                   choice.label,
                   {.chosen = so, .font = surface.fonts().small, .second = so ? "done" : "not stated"}))
            wish = byWhoWorks(job, WorkStated{choice.value, !so, whoWorks(job)}, surface.drafts());
    }
    return wish;
}

} // namespace

std::optional<Wish> partsPage(const Job& job, const Area& area, const Surface& surface) {
    MeasuringDrafts& drafts = surface.drafts().measuring;
    const std::vector<const PartVerdict*> rows = rowsOf(job.measured);
    const double gap = surface.px(8.0);
    const double row = rowHeight(surface) + surface.px(surface.bench ? 0.0 : 4.0);
    const Area left{area.x, area.y, std::floor(area.width * 0.46), area.height};
    const Area list{left.x, left.y, left.width, left.height - 2.0 * (row + gap)};
    const auto fit = static_cast<std::size_t>(std::max(1.0, list.height / row));
    const std::size_t pages = (rows.size() + fit - 1) / fit;
    if (!rows.empty() && drafts.part.text.empty())
        drafts.part = rows.front()->part;
    std::optional<Wish> wish;
    leafButton(drafts.partsPage, pages,
               {left.right() - surface.px(170.0), list.bottom() + gap, surface.px(170.0), row}, surface);
    const PartVerdict* shown = nullptr;
    for (const PartVerdict* part : rows)
        if (part->part == drafts.part)
            shown = part;
    for (std::size_t i = 0; i < fit && drafts.partsPage * fit + i < rows.size(); ++i) {
        const PartVerdict& part = *rows[drafts.partsPage * fit + i];
        const Area place{list.x, list.y + static_cast<double>(i) * row, list.width, row};
        if (pressable(surface, part.part.text.c_str(), place).done)
            drafts.part = part.part;
        drawRow(part, place, &part == shown, surface);
    }
    if (auto asked = workRow(job, {left.x, left.bottom() - row, left.width, row}, surface))
        wish = std::move(asked);
    const Area right{left.right() + surface.px(24.0), area.y, area.right() - left.right() - surface.px(24.0),
                     area.height};
    if (shown)
        if (auto asked = drawDeciding(job, *shown, right, surface))
            wish = std::move(asked);
    return wish;
}

} // namespace gapwise
