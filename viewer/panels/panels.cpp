#include "viewer/panels/panels.h"

#include "viewer/panels/parts.h"

namespace gapwise {

namespace {

constexpr ImGuiWindowFlags kRootFlags = ImGuiWindowFlags_NoDecoration | ImGuiWindowFlags_NoMove |
                                        ImGuiWindowFlags_NoSavedSettings | ImGuiWindowFlags_NoBackground |
                                        ImGuiWindowFlags_NoBringToFrontOnFocus |
                                        ImGuiWindowFlags_NoScrollWithMouse;

LayoutFor wantedLayout(const Workplace& workplace, const PanelFrame& frame) {
    const ImVec2 size = ImGui::GetIO().DisplaySize;
    LayoutFor wanted{.width = static_cast<double>(size.x),
                     .height = static_cast<double>(size.y),
                     .uiScale = frame.uiScale,
                     .pixelsPerMm = frame.pixelsPerMm};
    if (workplace.job) {
        wanted.cardOpen = workplace.job->inHand.has_value();
        wanted.bench = workplace.job->use == Use::Bench;
        wanted.bothEnds = workplace.job->standpoint.kind == LookKind::BothEnds;
    }
    return wanted;
}

void keepFirst(std::optional<Wish>& wish, std::optional<Wish> other) {
    if (!wish && other)
        wish = std::move(other);
}

/// The ground around the picture, which is left free for it.
void drawGround(const Layout& layout, const Area& window) {
    const Area& picture = layout.picture;
    fillArea({0.0, 0.0, window.width, picture.y}, palette::kPaper);
    fillArea({0.0, picture.bottom(), window.width, window.height - picture.bottom()}, palette::kPaper);
    fillArea({0.0, picture.y, picture.x, picture.height}, palette::kPaper);
    fillArea({picture.right(), picture.y, window.width - picture.right(), picture.height}, palette::kPaper);
}

void drawLabels(const PanelFrame& frame) {
    for (const PictureLabel& label : frame.labels) {
        ImFont* font = label.strong ? frame.fonts.strong : frame.fonts.small;
        const ImVec2 size = sizeOf(font, label.words);
        const Area area{label.x - static_cast<double>(size.x) / 2.0,
                        label.y - static_cast<double>(size.y) / 2.0, static_cast<double>(size.x) + 1.0,
                        static_cast<double>(size.y)};
        writeLine(area, label.words, {font, label.strong ? palette::kInk : palette::kSoftInk});
    }
}

std::optional<Wish> jobPanels(const Job& job, const Layout& layout, const Surface& surface) {
    std::optional<Wish> wish;
    drawLabels(surface.frame);
    keepFirst(wish, bannerPanel(job, layout.banner, surface));
    keepFirst(wish, lookPanel(job, layout.looks, surface));
    keepFirst(wish, pullApartPanel(job, layout.pullApart, surface));
    return wish;
}

} // namespace

std::optional<Wish> showPanels(const Workplace& workplace, PanelFrame& frame) {
    const LayoutFor wanted = wantedLayout(workplace, frame);
    const Area window{0.0, 0.0, wanted.width, wanted.height};
    const Surface surface{.frame = frame, .bench = wanted.bench, .target = targetSize(wanted)};
    frame.pointedAt.reset();
    frame.picture = {};
    std::optional<Wish> wish;
    ImGui::SetNextWindowPos({0.0F, 0.0F});
    ImGui::SetNextWindowSize(ImGui::GetIO().DisplaySize);
    if (ImGui::Begin("Gapwise", nullptr, kRootFlags)) {
        if (workplace.job) {
            const Layout layout = layoutOf(wanted);
            frame.picture = layout.picture;
            drawGround(layout, window);
            wish = jobPanels(*workplace.job, layout, surface);
        } else {
            fillArea(window, palette::kPaper);
            wish = openingPanel(workplace, window, surface);
        }
    }
    ImGui::End();
    return wish;
}

BothEndsAreas bothEndsAreas(const Area& picture) {
    const double half = picture.width / 2.0;
    return {.turbine = {picture.x, picture.y, half, picture.height},
            .compressor = {picture.x + half, picture.y, picture.width - half, picture.height}};
}

} // namespace gapwise
