#include "viewer/panels/banner_words.h"
#include "viewer/panels/parts.h"

namespace gapwise {

namespace {

constexpr double kActWidth = 78.0;
constexpr double kNoticeWidth = 420.0;

/// A button on the dark ground.
bool act(const Surface& surface, const Area& area, const char* label, bool enabled) {
    return button(surface, area, label, {.enabled = enabled, .font = surface.fonts().small});
}

std::optional<Wish> acts(const Job& job, const Area& area, const Surface& surface) {
    std::optional<Wish> wish;
    const double gap = surface.px(6.0);
    if (act(surface, columnOf(area, 4, 0, gap), "Undo", job.state.canUndo > 0))
        wish = Act{Undone{}};
    if (act(surface, columnOf(area, 4, 1, gap), "Redo", job.state.canRedo > 0))
        wish = Act{Redone{}};
    if (act(surface, columnOf(area, 4, 2, gap), "File …", true))
        surface.drafts().fileOpen = !surface.drafts().fileOpen;
    if (act(surface, columnOf(area, 4, 3, gap), "Keys …", true))
        surface.drafts().keysOpen = !surface.drafts().keysOpen;
    return wish;
}

void notices(const BannerWords& words, const Area& area, const Surface& surface) {
    const double half = area.height / 2.0;
    const Area upper{area.x, area.y, area.width, half};
    const Area lower{area.x, area.y + half, area.width, half};
    if (!words.notice.empty()) {
        fillArea(upper.inset(surface.px(1.0)), palette::kNotice, surface.px(3.0));
        writeLine(upper.inset(surface.px(6.0)), words.notice,
                  {surface.fonts().small, palette::kNoticeInk, Align::Middle});
    }
    writeLine(lower, kPrevails, {surface.fonts().small, palette::kBannerSoft, Align::Middle});
}

void sentences(const BannerWords& words, const Area& area, const Surface& surface) {
    const double split = surface.bench ? 0.62 : 0.54;
    const Area upper{area.x, area.y, area.width, area.height * split};
    const Area lower{area.x, upper.bottom(), area.width, area.height - upper.height};
    const std::string drain =
        surface.bench ? words.look + " · " + words.bench.substr(words.bench.find("drain")) : words.look;
    writeLine(upper, drain,
              {surface.bench ? surface.fonts().bench : surface.fonts().title, palette::kBannerInk});
    const std::string second =
        words.warning.empty() ? words.bench + "  ·  " + words.job : words.bench + "  ·  ! " + words.warning;
    writeLine(lower, second,
              {surface.fonts().body, words.warning.empty() ? palette::kBannerSoft : palette::kNotice});
}

} // namespace

std::optional<Wish> bannerPanel(const Job& job, const Area& area, const Surface& surface) {
    ImGui::PushID("banner");
    fillArea(area, palette::kBanner);
    const BannerWords words = bannerWordsOf(job);
    const Area inner{area.x + surface.px(14.0), area.y + surface.px(4.0), area.width - surface.px(28.0),
                     area.height - surface.px(8.0)};
    const double actsWidth = surface.px(4.0 * kActWidth);
    const double noticeWidth = surface.px(kNoticeWidth);
    notices(words, {inner.right() - noticeWidth, inner.y, noticeWidth, inner.height}, surface);
    const double actsX = inner.right() - noticeWidth - surface.px(12.0) - actsWidth;
    std::optional<Wish> wish =
        acts(job, {actsX, inner.y + surface.px(4.0), actsWidth, inner.height - surface.px(8.0)}, surface);
    sentences(words, {inner.x, inner.y, actsX - inner.x - surface.px(12.0), inner.height}, surface);
    ImGui::PopID();
    return wish;
}

} // namespace gapwise
