#include "viewer/panels/banner_words.h"
#include "viewer/panels/opening_words.h"
#include "viewer/panels/parts.h"

#include "models/frame/notice.h"

#include <algorithm>
#include <array>
#include <string>

namespace gapwise {

namespace {

void useCards(const Area& area, const Surface& surface) {
    for (int i = 0; const UseWords& words : useWords()) {
        const Area place = columnOf(area, 3, i++, surface.px(16.0));
        const bool chosen = surface.drafts().use == words.use;
        if (pressable(surface, words.label.data(), place).done)
            surface.drafts().use = words.use;
        fillArea(place, chosen ? palette::kAccentLight : palette::kSheet, surface.px(8.0));
        frameArea(place, chosen ? palette::kAccent : palette::kHairline, surface.px(8.0), chosen ? 2.5 : 1.0);
        const Area inner = place.inset(surface.px(16.0));
        const double title = surface.px(28.0);
        writeLine({inner.x, inner.y, inner.width, title}, words.label, {surface.fonts().title});
        if (chosen)
            writeLine({inner.x, inner.y, inner.width, title}, "chosen",
                      {surface.fonts().small, palette::kAccent, Align::Right});
        writeLines({inner.x, inner.y + title + surface.px(6.0), inner.width, inner.height - title},
                   words.what, {surface.fonts().body, palette::kSoftInk});
    }
}

/// A list of buttons under a heading.
struct List {
    const char* heading = "";
    const char* empty = "";
    std::vector<std::string> labels{};
};

/// The entry that was pressed.
std::optional<std::size_t> showList(const List& list, const Area& area, const Surface& surface) {
    const Scope scope{surface, list.heading};
    const double heading = surface.px(30.0);
    writeLine({area.x, area.y, area.width, heading}, list.heading, {surface.fonts().strong});
    if (list.labels.empty())
        writeLine({area.x, area.y + heading, area.width, heading}, list.empty,
                  {surface.fonts().body, palette::kSoftInk});
    std::optional<std::size_t> chosen;
    ImGui::SetCursorScreenPos(point(area.x, area.y + heading));
    ImGui::BeginChild("entries", point(area.width, area.height - heading), false,
                      ImGuiWindowFlags_NavFlattened | ImGuiWindowFlags_NoBackground);
    const ImVec2 origin = ImGui::GetCursorScreenPos();
    const double height = std::max(surface.target, surface.px(44.0));
    double y = static_cast<double>(origin.y);
    for (std::size_t i = 0; i < list.labels.size(); ++i) {
        ImGui::PushID(static_cast<int>(i));
        if (button(surface, {area.x + 2.0, y + 2.0, area.width - surface.px(18.0), height}, list.labels[i]))
            chosen = i;
        ImGui::PopID();
        y += height + surface.px(6.0);
    }
    ImGui::SetCursorScreenPos(point(area.x, y));
    ImGui::Dummy({1.0F, 1.0F});
    ImGui::EndChild();
    return chosen;
}

std::optional<Wish> lists(const Workplace& workplace, const Area& area, const Surface& surface) {
    const Offered& offered = workplace.offered;
    const Use use = surface.drafts().use;
    const double gap = surface.px(16.0);
    List samples{"Begin with a sample build", "No samples were found.", {}};
    for (const std::filesystem::path& sheet : offered.samples)
        samples.labels.push_back(sheetLabel(sheet, offered.frames));
    List journals{"Go on where you left", "No job was begun here yet.", {}};
    for (const std::filesystem::path& journal : offered.journals)
        journals.labels.push_back(journalLabel(journal));
    const List frames{"Begin with an empty housing", "No frames were found.", offered.frames};
    std::optional<Wish> wish;
    if (const auto i = showList(frames, columnOf(area, 3, 0, gap), surface))
        wish = StartJob{.frame = offered.frames[*i], .use = use};
    if (const auto i = showList(samples, columnOf(area, 3, 1, gap), surface))
        wish = StartJob{.use = use, .sheet = offered.samples[*i]};
    if (const auto i = showList(journals, columnOf(area, 3, 2, gap), surface))
        wish = ContinueJob{offered.journals[*i]};
    return wish;
}

void banner(const Area& area, const Surface& surface) {
    fillArea(area, palette::kBanner);
    const double side = surface.px(32.0);
    writeLine({area.x + side, area.y, surface.px(150.0), area.height}, "Gapwise",
              {surface.fonts().title, palette::kBannerInk});
    writeLine({area.x + surface.px(190.0), area.y, area.width * 0.45, area.height},
              "Which way does every gap, face and mark of the cartridge look?",
              {surface.fonts().body, palette::kBannerSoft});
    writeLine({area.middleX(), area.y, area.width / 2.0 - side, area.height}, kPrevails,
              {surface.fonts().small, palette::kBannerSoft, Align::Right});
}

void firstThings(const Area& area, const Surface& surface) {
    fillArea(area, palette::kSheet, surface.px(8.0));
    frameArea(area, palette::kHairline, surface.px(8.0));
    const Area inner = area.inset(surface.px(14.0));
    const auto words = std::ranges::find(useWords(), surface.drafts().use, &UseWords::use);
    writeLine({inner.x, inner.y, inner.width, surface.px(22.0)}, "What to do first",
              {surface.fonts().strong});
    const double top = inner.y + surface.px(26.0);
    for (int i = 0; const std::string_view step : words->first)
        writeLines({columnOf(inner, 3, i, surface.px(24.0)).x, top,
                    columnOf(inner, 3, i++, surface.px(24.0)).width, inner.bottom() - top},
                   step, {surface.fonts().body, palette::kSoftInk});
}

} // namespace

std::optional<Wish> openingPanel(const Workplace& workplace, const Area& area, const Surface& surface) {
    const Scope scope{surface, "opening"};
    const Area top{area.x, area.y, area.width, surface.px(60.0)};
    banner(top, surface);
    const double side = surface.px(32.0);
    const double gap = surface.px(20.0);
    const Area cards{area.x + side, top.bottom() + gap, area.width - 2.0 * side, surface.px(124.0)};
    useCards(cards, surface);
    const Area notice{cards.x, area.bottom() - surface.px(38.0), cards.width, surface.px(24.0)};
    const Area first{cards.x, notice.y - surface.px(92.0), cards.width, surface.px(82.0)};
    std::optional<Wish> wish =
        lists(workplace, {cards.x, cards.bottom() + gap, cards.width, first.y - gap - cards.bottom() - gap},
              surface);
    firstThings(first, surface);
    writeLine(notice, "Frames that come with Gapwise: " + std::string{kPracticeNotice},
              {surface.fonts().body, palette::kNoticeInk});
    return wish;
}

} // namespace gapwise
