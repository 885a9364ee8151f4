#include "viewer/panels/card_frame.h"
#include "viewer/panels/measure_parts.h"
#include "viewer/panels/plots.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace gapwise {

namespace {

struct Key {
    const char* label;
    const char* name;
    char key;
};
/// In rows of four; the last row ends in what leads on.
constexpr std::array<Key, 14> kKeys{{{"7", "key 7", '7'},
                                     {"8", "key 8", '8'},
                                     {"9", "key 9", '9'},
                                     {"←", "key back", '<'},
                                     {"4", "key 4", '4'},
                                     {"5", "key 5", '5'},
                                     {"6", "key 6", '6'},
                                     {"−", "key minus", '-'},
                                     {"1", "key 1", '1'},
                                     {"2", "key 2", '2'},
                                     {"3", "key 3", '3'},
                                     {".", "key point", '.'},
                                     {"0", "key 0", '0'},
                                     {"00", "key 00", 'z'}}};

bool pressed(ImGuiKey key) {
    return ImGui::IsKeyPressed(ImGui::GetKeyIndex(key), true);
}

std::string valueWords(const MeasureWork& work, double value) {
    return numberWords(value, decimalsOf(work.quantity.unit));
}

/// The number as it is typed; else the value that stands there, or what came of all.
struct Shown {
    std::string words{};
    bool soft = false;
};
Shown shownNumber(const MeasureWork& work, const MeasureDrafts& drafts) {
    if (!drafts.typed.empty()) {
        std::string words = drafts.typed;
        if (words.starts_with('-'))
            words.replace(0, 1, "−");
        return {words};
    }
    const Evaluated* evaluated = work.taken || work.reckoned() ? work.evaluated() : nullptr;
    if (evaluated)
        return {valueWords(work, evaluated->judged)};
    if (work.at < work.values.size())
        return work.values[work.at] ? Shown{valueWords(work, *work.values[work.at]), true} : Shown{};
    const std::optional<double> judged = work.judged();
    return judged ? Shown{valueWords(work, *judged)} : Shown{};
}

std::string_view wordOf(Takes takes) {
    switch (takes) {
    case Takes::Least: return "least";
    case Takes::Most: return "most";
    case Takes::Range: return "range";
    case Takes::Mean: break;
    }
    return "mean";
}

void drawNumber(const MeasureWork& work, const Area& area, const Surface& surface) {
    const MeasureDrafts& drafts = surface.drafts().measure;
    const bool typing = !drafts.typed.empty();
    fillArea(area, palette::kPaper, surface.px(5.0));
    frameArea(area, typing ? palette::kAccent : palette::kHairline, surface.px(5.0), typing ? 2.0 : 1.0);
    const double unit = surface.px(52.0);
    const Shown shown = shownNumber(work, drafts);
    const bool all = !typing && work.at >= work.values.size() && work.values.size() > 1;
    writeLine({area.x + surface.px(8.0), area.y, area.width - unit - surface.px(14.0), area.height},
              shown.words,
              {surface.fonts().bench, shown.soft ? palette::kSteel : palette::kInk, Align::Right});
    if (shown.words.empty()) { // Where the number will stand.
        const double x = area.right() - unit - surface.px(8.0);
        fillArea({x, area.y + area.height * 0.22, surface.px(3.0), area.height * 0.56}, palette::kAccent);
    }
    const Area beside{area.right() - unit, area.y, unit - surface.px(6.0), area.height};
    writeLine(all ? Area{beside.x, beside.y, beside.width, beside.height * 0.6} : beside,
              symbolOf(work.quantity.unit), {surface.fonts().title});
    if (all)
        writeLine({beside.x, beside.y + beside.height * 0.5, beside.width, beside.height * 0.4},
                  wordOf(work.quantity.takes), {surface.fonts().small, palette::kSoftInk});
}

/// Which places have room, and which of them come first.
struct Shelf {
    std::size_t first = 0;
    std::size_t count = 0;
    bool leafs = false;
};
Shelf shelfOf(std::size_t places, std::size_t at, double width, double least, double gap) {
    const auto room = static_cast<std::size_t>(std::max(3.0, std::floor((width + gap) / (least + gap))));
    if (places <= room)
        return {0, places, false};
    const std::size_t each = room - 2;
    const std::size_t first = std::min(at, places - 1) / each * each;
    return {first, std::min(each, places - first), true};
}

/// One place with its value: tapped it is typed anew.
bool placeButton(const MeasureWork& work, std::size_t place, const Area& area, const Surface& surface) {
    const std::optional<double>& value = work.values[place];
    const std::string second = shortPlace(work.quantity, place);
    return button(surface, area, value ? valueWords(work, *value) : "–",
                  {.chosen = place == work.at,
                   .font = surface.fonts().strong,
                   .second = second,
                   .id = fmt::format("place {}", place + 1)});
}

void places(const MeasureWork& work, const Area& row, const Surface& surface) {
    MeasureDrafts& drafts = surface.drafts().measure;
    const double gap = surface.px(5.0);
    const double least = std::max(surface.target, surface.px(62.0));
    const Shelf shelf = shelfOf(work.values.size(), work.at, row.width, least, gap);
    const int columns = static_cast<int>(shelf.count) + (shelf.leafs ? 2 : 0);
    int column = 0;
    const auto next = [&] { return columnOf(row, std::max(columns, 3), column++, gap); };
    if (shelf.leafs && button(surface, next(), "←", {.enabled = shelf.first > 0, .id = "places before"}))
        goTo(work, drafts, shelf.first - 1);
    for (std::size_t i = shelf.first; i < shelf.first + shelf.count; ++i)
        if (placeButton(work, i, next(), surface))
            goTo(work, drafts, i);
    const std::size_t end = shelf.first + shelf.count;
    if (shelf.leafs &&
        button(surface, next(), "→", {.enabled = end < work.values.size(), .id = "places after"}))
        goTo(work, drafts, end);
}

std::string signature(const MeasureWork& work) {
    const std::string who = whoWorks(work.job);
    return who.empty() ? "nobody signed on" : "by " + who;
}

/// What leads on, and what lies beside it.
std::optional<Wish> deeds(const MeasureWork& work, const Area& row, const Surface& surface) {
    MeasureDrafts& drafts = surface.drafts().measure;
    const bool again =
        work.taken || (work.complete() && !work.quantity.points.empty() && drafts.typed.empty());
    const bool leave = !work.taken && work.evaluated() && !work.reckoned();
    const std::optional<SameValues> same = sameValues(work);
    const double gap = surface.px(6.0);
    const double small = again || leave || same ? std::max(surface.target, surface.px(96.0)) : 0.0;
    const Area main{row.x, row.y, row.width - small - (small > 0.0 ? gap : 0.0), row.height};
    const Area beside{main.right() + gap, row.y, small, row.height};
    const std::string words = goOnWords(work, drafts);
    std::optional<Wish> wish;
    if (button(surface, main, words.empty() ? "Take reading" : words,
               {.enabled = !words.empty(),
                .leading = !words.empty(),
                .font = surface.fonts().strong,
                .second = signature(work),
                .id = "take"}))
        wish = goOn(work, surface);
    if (same) {
        if (button(surface, beside, "As " + same->of.text,
                   {.font = surface.fonts().small, .second = "same values", .id = "same"}))
            takeSame(work, drafts, *same);
    } else if (leave) {
        if (button(surface, beside, "Leave it", {.font = surface.fonts().small, .second = "as it was"}))
            forget(work, drafts);
    } else if (again && button(surface, beside, "Once more",
                               {.font = surface.fonts().small, .second = "all places"})) {
        readAgain(work, drafts);
    }
    return wish;
}

/// A number that looks like a slip: asked, never refused.
void askDoubt(const MeasureWork& work, const Area& area, double row, const Surface& surface) {
    MeasureDrafts& drafts = surface.drafts().measure;
    const MeasureDoubt doubt = *drafts.doubt;
    const double gap = surface.px(6.0);
    fillArea(area, palette::kNotice, surface.px(5.0));
    const Area words = area.inset(gap);
    writeLines({words.x, words.y, words.width, words.height - row - gap}, doubt.words,
               {surface.fonts().body, palette::kNoticeInk});
    const Area buttons{words.x, words.bottom() - row, words.width, row};
    const int count = doubt.suggestion ? 2 : 1;
    const std::string_view unit = symbolOf(work.quantity.unit);
    if (button(surface, columnOf(buttons, count, 0, gap), fmt::format("Keep {:g} {}", doubt.value, unit),
               {.font = surface.fonts().strong, .id = "keep"}))
        takeValue(work, drafts, doubt.value);
    if (doubt.suggestion && button(surface, columnOf(buttons, count, 1, gap),
                                   fmt::format("Take {:g} {}", *doubt.suggestion, unit),
                                   {.leading = true, .font = surface.fonts().strong, .id = "take instead"}))
        takeValue(work, drafts, *doubt.suggestion);
}

std::optional<Wish> takeReading(const MeasureWork& work, const Surface& surface) {
    MeasureDrafts& drafts = surface.drafts().measure;
    const Event event = ReadingTaken{readingOf(work, drafts, surface.frame.today)};
    if (const Errors refused = refusalOf(work.job.frame, work.job.state, event); !refused.empty()) {
        drafts.said =
            fmt::format("not taken: {}; allowed: {}", refused.front().found, refused.front().allowed);
        return std::nullopt;
    }
    return byWhoWorks(work.job, event, surface.drafts());
}

} // namespace

std::string goOnWords(const MeasureWork& work, const MeasureDrafts& drafts) {
    if (!drafts.typed.empty())
        return "Next";
    if (!work.taken && !work.reckoned())
        return work.complete() ? "Take reading" : "";
    const Quantity* next = nextUnread(work);
    return next ? "Next: " + next->id.text : "";
}

std::optional<Wish> goOn(const MeasureWork& work, const Surface& surface) {
    MeasureDrafts& drafts = surface.drafts().measure;
    if (drafts.doubt)
        return std::nullopt;
    if (!drafts.typed.empty()) {
        takeTyped(work, drafts);
        return std::nullopt;
    }
    if (!work.taken && !work.reckoned())
        return work.complete() ? takeReading(work, surface) : std::nullopt;
    if (const Quantity* next = nextUnread(work))
        turnToQuantity(next->id, drafts);
    return std::nullopt;
}

std::optional<Wish> measureTyping(const MeasureWork& work, const Surface& surface) {
    const ImGuiIO& io = ImGui::GetIO();
    MeasureDrafts& drafts = surface.drafts().measure;
    if (io.WantTextInput || io.KeyCtrl || surface.drafts().box != Drafts::Box::None ||
        drafts.page != MeasureDrafts::Page::Read)
        return std::nullopt;
    for (const ImWchar letter : io.InputQueueCharacters)
        if (letter < 0x80 && isMeasureKey(static_cast<char>(letter)))
            typeKey(work, drafts, static_cast<char>(letter));
    if (pressed(ImGuiKey_Backspace))
        typeKey(work, drafts, '<');
    const bool enter = ImGui::IsKeyPressed(ImGui::GetKeyIndex(ImGuiKey_Enter), false) ||
                       ImGui::IsKeyPressed(ImGui::GetKeyIndex(ImGuiKey_KeyPadEnter), false);
    return enter && (surface.frame.enterTaken || !io.NavVisible) ? goOn(work, surface) : std::nullopt;
}

std::optional<Wish> measureKeypad(const MeasureWork& work, const Area& area, const Surface& surface) {
    MeasureDrafts& drafts = surface.drafts().measure;
    const double gap = surface.px(5.0);
    const double height = (area.height - 3.0 * gap) / 4.0;
    const auto cell = [&](std::size_t index) {
        const Area row{area.x, area.y + static_cast<double>(index / 4) * (height + gap), area.width, height};
        return columnOf(row, 4, static_cast<int>(index % 4), gap);
    };
    for (std::size_t i = 0; i < kKeys.size(); ++i) {
        const Key& key = kKeys.at(i);
        if (!button(surface, cell(i), key.label, {.font = surface.fonts().title, .id = key.name}))
            continue;
        for (const char each : key.key == 'z' ? std::string_view{"00"} : std::string_view{&key.key, 1})
            typeKey(work, drafts, each);
    }
    const Area third = cell(14);
    const Area last = cell(15);
    const std::string words = goOnWords(work, drafts);
    const bool can = !words.empty() && !drafts.doubt;
    if (button(surface, {third.x, third.y, last.right() - third.x, third.height},
               words == "Take reading" ? "Take" : "Next",
               {.enabled = can, .leading = can, .font = surface.fonts().title, .id = "key next"}))
        return goOn(work, surface);
    return std::nullopt;
}

std::optional<Wish> measureEntry(const MeasureWork& work, const Area& area, const Surface& surface) {
    const MeasureDrafts& drafts = surface.drafts().measure;
    const Fonts& fonts = surface.fonts();
    const double gap = surface.px(5.0);
    const double row = std::max(surface.target, surface.px(44.0));
    const double line = lineHeightOf(fonts.body);
    const std::string name = fmt::format("{}  {}", work.quantity.id.text, work.quantity.name);
    writeLine({area.x, area.y, area.width, line}, name, {fonts.strong, palette::kAccent});
    const bool wrong = !drafts.said.empty();
    writeLine({area.x, area.y + line, area.width, line}, wrong ? drafts.said : placeWords(work),
              {wordFont(surface), wrong ? palette::kBroken : palette::kInk});
    const double top = area.y + 2.0 * line + gap;
    const double most = surface.px(drafts.doubt ? 44.0 : 64.0);
    const double number = std::clamp(area.bottom() - top - 2.0 * (row + gap), surface.px(40.0), most);
    drawNumber(work, {area.x, top, area.width, number}, surface);
    const double below = top + number + gap;
    if (drafts.doubt) {
        askDoubt(work, {area.x, below, area.width, area.bottom() - below}, row, surface);
        return std::nullopt;
    }
    places(work, {area.x, below, area.width, row}, surface);
    return deeds(work, {area.x, below + row + gap, area.width, row}, surface);
}

} // namespace gapwise
