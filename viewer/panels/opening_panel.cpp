#include "viewer/panels/banner_words.h"
#include "viewer/panels/parts.h"

#include "models/frame/notice.h"

#include <array>
#include <string>

namespace gapwise {

namespace {

struct UseCard {
    Use use;
    const char* label;
    const char* words;
};

constexpr std::array<UseCard, 3> kUseCards{
    {{Use::Practise, "Practise", "Place every ring, be told what is wrong and why. Nothing can break."},
     {Use::Bench, "At the bench",
      "Say what you see on the real piece, then compare. Large words, large buttons."},
     {Use::Show, "Show", "Set anything before others, judged as you turn it. Both ends at once."}}};

void useCards(const Area& area, const Surface& surface) {
    for (int i = 0; i < 3; ++i) {
        const UseCard& card = kUseCards.at(static_cast<std::size_t>(i));
        const Area place = columnOf(area, 3, i, surface.px(16.0));
        const bool chosen = surface.drafts().use == card.use;
        if (pressable(card.label, place).done)
            surface.drafts().use = card.use;
        fillArea(place, chosen ? palette::kAccentLight : palette::kSheet, surface.px(8.0));
        frameArea(place, chosen ? palette::kAccent : palette::kHairline, surface.px(8.0), chosen ? 2.5 : 1.0);
        const Area inner = place.inset(surface.px(16.0));
        writeLine({inner.x, inner.y, inner.width, surface.px(28.0)}, card.label, {surface.fonts().title});
        writeLines({inner.x, inner.y + surface.px(36.0), inner.width, inner.height - surface.px(36.0)},
                   card.words, {surface.fonts().body, palette::kSoftInk});
    }
}

/// One entry of a list; `row` counts from 0.
bool entry(const Surface& surface, const Area& list, int row, const std::string& label) {
    const double height = surface.target + surface.px(8.0);
    const Area place{list.x, list.y + surface.px(36.0) + row * (height + surface.px(6.0)), list.width,
                     height};
    if (place.bottom() > list.bottom())
        return false;
    ImGui::PushID(row);
    const bool pressed = button(surface, place, label);
    ImGui::PopID();
    return pressed;
}

void heading(const Surface& surface, const Area& list, const char* words) {
    writeLine({list.x, list.y, list.width, surface.px(28.0)}, words, {surface.fonts().strong});
}

std::optional<Wish> lists(const Workplace& workplace, const Area& area, const Surface& surface) {
    std::optional<Wish> wish;
    const double gap = surface.px(16.0);
    const Use use = surface.drafts().use;
    const Area frames = columnOf(area, 3, 0, gap);
    heading(surface, frames, "Begin with an empty housing");
    ImGui::PushID("frames");
    for (int row = 0; const std::string& frame : workplace.offered.frames)
        if (entry(surface, frames, row++, frame))
            wish = StartJob{.frame = frame, .use = use};
    ImGui::PopID();
    const Area samples = columnOf(area, 3, 1, gap);
    heading(surface, samples, "Begin with a sample build");
    ImGui::PushID("samples");
    for (int row = 0; const std::filesystem::path& sheet : workplace.offered.samples)
        if (entry(surface, samples, row++, sheet.stem().stem().string()))
            wish = StartJob{.use = use, .sheet = sheet};
    ImGui::PopID();
    const Area journals = columnOf(area, 3, 2, gap);
    heading(surface, journals, "Go on where you left");
    ImGui::PushID("journals");
    for (int row = 0; const std::filesystem::path& journal : workplace.offered.journals)
        if (entry(surface, journals, row++, journal.stem().string()))
            wish = ContinueJob{journal};
    ImGui::PopID();
    return wish;
}

} // namespace

std::optional<Wish> openingPanel(const Workplace& workplace, const Area& area, const Surface& surface) {
    ImGui::PushID("opening");
    const Area banner{area.x, area.y, area.width, surface.px(64.0)};
    fillArea(banner, palette::kBanner);
    writeLine({banner.x + surface.px(32.0), banner.y, banner.width / 2.0, banner.height}, "Gapwise",
              {surface.fonts().title, palette::kBannerInk});
    writeLine({banner.middleX(), banner.y, banner.width / 2.0 - surface.px(32.0), banner.height}, kPrevails,
              {surface.fonts().small, palette::kBannerSoft, Align::Right});
    const Area body{area.x + surface.px(32.0), banner.bottom() + surface.px(24.0),
                    area.width - surface.px(64.0), area.bottom() - banner.bottom() - surface.px(48.0)};
    useCards({body.x, body.y, body.width, surface.px(130.0)}, surface);
    const double y = body.y + surface.px(154.0);
    std::optional<Wish> wish =
        lists(workplace, {body.x, y, body.width, body.bottom() - y - surface.px(48.0)}, surface);
    writeLines({body.x, body.bottom() - surface.px(40.0), body.width, surface.px(40.0)},
               std::string{"The bundled frames are for practice. "} + std::string{kPracticeNotice} + ".",
               {surface.fonts().body, palette::kSoftInk});
    ImGui::PopID();
    return wish;
}

} // namespace gapwise
