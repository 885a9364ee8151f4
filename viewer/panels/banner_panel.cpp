#include "viewer/panels/banner_words.h"
#include "viewer/panels/parts.h"

namespace gapwise {

namespace {

constexpr double kNoticeWidth = 372.0;
/// How much wider than the others the button of the measurements is.
constexpr double kMeasuresShare = 1.25;

/// A button on the dark ground.
bool act(const Surface& surface, const Area& area, const char* label, bool enabled) {
    return button(surface, area, label, {.enabled = enabled, .font = surface.fonts().small});
}

void toggle(Drafts& drafts, Drafts::Box box) {
    drafts.box = drafts.box == box ? Drafts::Box::None : box;
}

std::optional<Wish> acts(const Job& job, const Area& area, const Surface& surface) {
    std::optional<Wish> wish;
    const double gap = surface.px(6.0);
    const double who = std::max(surface.target, surface.px(84.0));
    const double measures = kMeasuresShare;
    const Area rest{area.x + who + gap, area.y, area.width - who - gap, area.height};
    const double unit = (rest.width - 4.0 * gap) / (4.0 + measures);
    double x = rest.x;
    const auto next = [&](double share) {
        const Area place{x, rest.y, unit * share, rest.height};
        x = place.right() + gap;
        return place;
    };
    const auto& person = job.state.person;
    if (button(surface, {area.x, area.y, who, area.height}, person ? person->name : "Sign on",
               {.font = surface.fonts().small,
                .second = person ? nameOf(person->role) : std::string_view{"nobody yet"},
                .id = "Who"}))
        toggle(surface.drafts(), Drafts::Box::Who);
    if (act(surface, next(1.0), "Undo", job.state.canUndo > 0))
        wish = Act{Undone{}};
    if (act(surface, next(1.0), "Redo", job.state.canRedo > 0))
        wish = Act{Redone{}};
    if (button(surface, next(measures), "Measures",
               {.chosen = job.measures.has_value(), .font = surface.fonts().small}))
        wish = job.measures && !job.measurementInHand ? ReadMeasures{} : ReadMeasures{MeasuresPage{}};
    if (act(surface, next(1.0), "File …", true))
        toggle(surface.drafts(), Drafts::Box::File);
    if (act(surface, next(1.0), "Keys …", true))
        toggle(surface.drafts(), Drafts::Box::Keys);
    return wish;
}

void drawNotice(const BannerWords& words, const Area& area, const Surface& surface) {
    if (words.notice.empty())
        return;
    fillArea(area, palette::kNotice, surface.px(3.0));
    writeLine(area, words.notice, {surface.fonts().small, palette::kNoticeInk, Align::Middle});
}

void drawPrevails(const Area& area, const Surface& surface) {
    writeLine(area, kPrevails, {surface.fonts().small, palette::kBannerSoft, Align::Middle});
}

/// The bench words with what is to be heeded.
void drawBench(const BannerWords& words, const Area& area, const Surface& surface) {
    std::string line = words.bench;
    if (!words.warning.empty())
        line += "  ·  ! " + words.warning;
    else if (!words.hint.empty())
        line += "  ·  " + words.hint;
    writeLine(area, line,
              {surface.fonts().body, words.warning.empty() ? palette::kBannerSoft : palette::kNotice});
}

/// Two lines, then the acts, then the notices.
std::optional<Wish> nearBanner(const Job& job, const BannerWords& words, const Area& inner,
                               const Surface& surface) {
    const double notice = surface.px(kNoticeWidth);
    const double half = inner.height / 2.0;
    const Area upper{inner.right() - notice, inner.y, notice, half};
    drawNotice(words, upper.inset(surface.px(1.0)), surface);
    drawPrevails({upper.x, upper.bottom(), notice, half}, surface);
    const double width = surface.px(372.0);
    const Area buttons{upper.x - surface.px(14.0) - width, inner.y + surface.px(4.0), width,
                       inner.height - surface.px(8.0)};
    const Area line{inner.x, inner.y, buttons.x - inner.x - surface.px(12.0), inner.height * 0.54};
    writeLine(line, words.look, {surface.fonts().title, palette::kBannerInk});
    const double taken = static_cast<double>(sizeOf(surface.fonts().title, words.look).x) + surface.px(16.0);
    writeLine({line.x + taken, line.y, line.width - taken, line.height}, words.job,
              {surface.fonts().small, palette::kBannerSoft, Align::Right});
    drawBench(words, {line.x, line.bottom(), line.width, inner.bottom() - line.bottom()}, surface);
    return acts(job, buttons, surface);
}

/// Large words over the width; below them two lines: the job with what is to be heeded, and the notices.
std::optional<Wish> farBanner(const Job& job, const BannerWords& words, const Area& inner,
                              const Surface& surface) {
    const double width = (4.0 + kMeasuresShare) * surface.target +
                         std::max(surface.target, surface.px(84.0)) + surface.px(30.0);
    const Area buttons{inner.right() - width, inner.y, width, inner.height};
    const double free = buttons.x - inner.x - surface.px(12.0);
    const Area upper{inner.x, inner.y, free, surface.px(46.0)};
    writeLine(upper, words.fromFar, {surface.fonts().bench, palette::kBannerInk});
    const double row = (inner.bottom() - upper.bottom()) / 2.0;
    const double each = surface.px(342.0);
    const Area left{inner.x, upper.bottom(), free - each - surface.px(12.0), row};
    writeLine(left, words.job, {surface.fonts().small, palette::kBannerSoft});
    const std::string heeded = words.warning.empty() ? words.lying : words.lying + " · ! " + words.warning;
    writeLine({left.x, left.bottom(), left.width, row}, heeded,
              {surface.fonts().small, words.warning.empty() ? palette::kBannerSoft : palette::kNotice});
    const Area right{left.right() + surface.px(12.0), upper.bottom(), each, row};
    drawNotice(words, right, surface);
    drawPrevails({right.x, right.bottom(), each, row}, surface);
    return acts(job, buttons, surface);
}

} // namespace

std::optional<Wish> bannerPanel(const Job& job, const Area& area, const Surface& surface) {
    const Scope scope{surface, "banner"};
    fillArea(area, palette::kBanner);
    const BannerWords words = bannerWordsOf(job);
    const Area inner{area.x + surface.px(14.0), area.y + surface.px(4.0), area.width - surface.px(28.0),
                     area.height - surface.px(8.0)};
    return surface.bench ? farBanner(job, words, inner, surface) : nearBanner(job, words, inner, surface);
}

} // namespace gapwise
