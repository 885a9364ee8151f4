#include "viewer/panels/panels.h"

#include "viewer/panels/bench_question.h"
#include "viewer/panels/parts.h"

#include <cmath>

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
        wanted.cardOpen = workplace.job->cardOpen();
        wanted.tallCard = wanted.cardOpen && !workplace.job->inHand;
        wanted.bench = workplace.job->use == Use::Bench;
        wanted.bothEnds = workplace.job->standpoint.kind == LookKind::BothEnds;
    }
    return wanted;
}

void keepFirst(std::optional<Wish>& wish, std::optional<Wish> other) {
    if (!wish && other)
        wish = std::move(other);
}

/// The ground around a picture, which is left free for it.
void drawGround(const Area& picture, const Area& window) {
    fillArea({0.0, 0.0, window.width, picture.y}, palette::kPaper);
    fillArea({0.0, picture.bottom(), window.width, window.height - picture.bottom()}, palette::kPaper);
    fillArea({0.0, picture.y, picture.x, picture.height}, palette::kPaper);
    fillArea({picture.right(), picture.y, window.width - picture.right(), picture.height}, palette::kPaper);
}

/// Where a box lies: over the picture, and over the looks too where the picture is low.
Area boxAreaOf(const Layout& layout, const Surface& surface) {
    const bool low = layout.picture.height < surface.px(300.0);
    const double top = low ? layout.looks.y : layout.picture.y;
    return {layout.picture.x, top, layout.picture.width, layout.picture.bottom() - top};
}

bool boxIsOpen(const Job& job, const Drafts& drafts) {
    return asksHowItLies(job) || job.turnAsked || drafts.box != Drafts::Box::None;
}

/// At most one box; how the piece lies and where its drain points is asked first.
std::optional<Wish> boxes(const Job& job, const Area& area, const Surface& surface) {
    if (job.turnAsked)
        return turningBox(job, area, surface);
    if (surface.drafts().box == Drafts::Box::Who)
        return whoBox(job, area, surface);
    if (asksHowItLies(job))
        return benchQuestion(job, area, surface);
    switch (surface.drafts().box) {
    case Drafts::Box::Findings: return findingsBox(job, area, surface);
    case Drafts::Box::Keys: return keysBox(area, surface);
    case Drafts::Box::File: return fileBox(job, area, surface);
    case Drafts::Box::Lying: return lyingBox(job, area, surface);
    case Drafts::Box::Who:
    case Drafts::Box::None: break;
    }
    return std::nullopt;
}

/// The box, and the looks unless it lies over them.
std::optional<Wish> middlePanels(const Job& job, const Layout& layout, const Surface& surface) {
    const Area box = boxAreaOf(layout, surface);
    std::optional<Wish> wish;
    const bool open = boxIsOpen(job, surface.drafts());
    if (!open || box.y >= layout.looks.bottom())
        keepFirst(wish, lookPanel(job, layout.looks, surface));
    if (open)
        keepFirst(wish, boxes(job, box, surface));
    return wish;
}

/// Under the picture, or over its lower edge where no place is left: a note, or the findings in one line.
std::optional<Wish> saidBelow(const Workplace& workplace, const Layout& layout, const Surface& surface) {
    const double height = std::max(surface.px(60.0), surface.target);
    const Area overPicture{layout.picture.x, layout.picture.bottom() - height, layout.picture.width, height};
    const bool over = layout.notices.empty() && workplace.note;
    return noticesPanel(workplace, over ? overPicture : layout.notices, surface);
}

/// The dial of an end; while a wrench is taken to a fastener that is faced from there, its flange.
std::optional<Wish> endPanel(const Job& job, Side side, const Area& area, const Surface& surface) {
    const Fastener* fastener = job.fastenerInHand ? job.frame.fastener(*job.fastenerInHand) : nullptr;
    const bool flange = fastener && fastener->plan && fastener->handSeenFrom == side;
    return flange ? flangePanel(job, fastener->id, area, surface) : endDialPanel(job, side, area, surface);
}

/// The card of what is in hand, else of the step that is open.
std::optional<Wish> cardPanel(const Job& job, const Area& area, const Surface& surface) {
    if (job.inHand)
        return partCard(job, area, surface);
    if (job.fastenerInHand)
        return torqueCard(job, *job.fastenerInHand, area, surface);
    if (job.measurementInHand)
        return measureCard(job, *job.measurementInHand, area, surface);
    return job.step ? stepCard(job, area, surface) : std::nullopt;
}

std::optional<Wish> jobPanels(const Workplace& workplace, const Layout& layout, const Surface& surface) {
    const Job& job = *workplace.job;
    std::optional<Wish> wish = jobKeys(job, surface.drafts());
    drawOverlay(surface);
    drawCutWords(job, layout.picture, surface);
    keepFirst(wish, bannerPanel(job, layout.banner, surface));
    keepFirst(wish, endPanel(job, Side::Turbine, layout.turbineDial, surface));
    keepFirst(wish, endPanel(job, Side::Compressor, layout.compressorDial, surface));
    keepFirst(wish, middlePanels(job, layout, surface));
    keepFirst(wish, cutOpenPanel(job, layout.cutOpen, surface));
    keepFirst(wish, pullApartPanel(job, layout.pullApart, surface));
    keepFirst(wish, trayPanel(job, layout.tray, surface));
    keepFirst(wish, cardPanel(job, layout.card, surface));
    keepFirst(wish, linePanel(job, layout.line, surface));
    keepFirst(wish, saidBelow(workplace, layout, surface));
    return wish;
}

/// A sheet lies over everything; only the banner and a note stay in sight.
struct SheetPlaces {
    Area sheet{};
    Area note{};
};
SheetPlaces sheetPlaces(const Workplace& workplace, const Layout& layout, const Area& window,
                        const Surface& surface) {
    const double gap = surface.px(8.0);
    const double top = layout.banner.bottom() + gap;
    const double note = workplace.note ? std::max(surface.px(60.0), surface.target) + gap : 0.0;
    const Area sheet{gap, top, window.width - 2.0 * gap, window.height - top - gap - note};
    return {sheet, {sheet.x, sheet.bottom() + gap, sheet.width, note - gap}};
}

/// The sheet about a part.
std::optional<Wish> sheetPanels(const Workplace& workplace, const Layout& layout, const Area& window,
                                const Surface& surface) {
    const Job& job = *workplace.job;
    std::optional<Wish> wish = aboutKeys(job, surface.drafts());
    const auto [sheet, note] = sheetPlaces(workplace, layout, window, surface);
    const Drafts::Box before = surface.drafts().box;
    drawGround(sheet, window);
    keepFirst(wish, bannerPanel(job, layout.banner, surface));
    if (surface.drafts().box != before) // A box lies over the picture: the sheet makes room for it.
        keepFirst(wish, ReadAbout{});
    keepFirst(wish, aboutSheet(job, sheet, surface));
    if (workplace.note)
        keepFirst(wish, noticesPanel(workplace, note, surface));
    return wish;
}

/// The sheet of measurements; while a box asks for something that lies in its place.
std::optional<Wish> measuresPanels(const Workplace& workplace, const Layout& layout, const Area& window,
                                   const Surface& surface) {
    const Job& job = *workplace.job;
    const auto [sheet, note] = sheetPlaces(workplace, layout, window, surface);
    fillArea(window, palette::kPaper);
    std::optional<Wish> wish = measuresKeys(job, surface.drafts());
    keepFirst(wish, bannerPanel(job, layout.banner, surface));
    const bool asked = job.turnAsked || surface.drafts().box != Drafts::Box::None;
    if (asked) // How the piece lies is asked when the sheet is away.
        keepFirst(wish, boxes(job, {sheet.x, sheet.y, sheet.width, std::min(sheet.height, surface.px(420.0))},
                              surface));
    else
        keepFirst(wish, measuringSheet(job, sheet, surface));
    if (workplace.note)
        keepFirst(wish, noticesPanel(workplace, note, surface));
    return wish;
}

/// The slip of where one stopped.
std::optional<Wish> slipPanels(const Workplace& workplace, const Layout& layout, const Area& window,
                               const Surface& surface) {
    const Job& job = *workplace.job;
    const auto [sheet, note] = sheetPlaces(workplace, layout, window, surface);
    fillArea(window, palette::kPaper);
    std::optional<Wish> wish = slipKeys(job);
    keepFirst(wish, bannerPanel(job, layout.banner, surface));
    keepFirst(wish, slipSheet(job, sheet, surface));
    if (workplace.note)
        keepFirst(wish, noticesPanel(workplace, note, surface));
    return wish;
}

/// What lies before all else.
enum class Before { Cartridge, Measures, About, Slip };
Before beforeAll(const Job& job) {
    if (job.slip)
        return Before::Slip;
    if (job.about)
        return Before::About;
    return job.measures && !job.measurementInHand ? Before::Measures : Before::Cartridge;
}

bool pictureIsFree(const Workplace& workplace, const PanelFrame& frame) {
    const ImVec2 mouse = ImGui::GetIO().MousePos;
    return workplace.job &&
           frame.picture.contains(static_cast<double>(mouse.x), static_cast<double>(mouse.y)) &&
           !boxIsOpen(*workplace.job, frame.drafts) && !ImGui::IsAnyItemActive() &&
           !ImGui::IsAnyItemHovered();
}

} // namespace

std::optional<Wish> showPanels(const Workplace& workplace, PanelFrame& frame) {
    const LayoutFor wanted = wantedLayout(workplace, frame);
    const Area window{0.0, 0.0, wanted.width, wanted.height};
    const Surface surface{.frame = frame, .bench = wanted.bench, .target = targetSize(wanted)};
    frame.enterTaken = workplace.job && workplace.job->measurementInHand &&
                       !frame.drafts.measure.typed.empty() && !frame.drafts.measure.doubt;
    frame.pointedAt.reset();
    frame.targets.clear();
    frame.picture = {};
    frame.portraits.clear();
    std::optional<Wish> wish;
    ImGui::PushFont(frame.fonts.body);
    ImGui::SetNextWindowPos({0.0F, 0.0F});
    ImGui::SetNextWindowSize(ImGui::GetIO().DisplaySize);
    if (ImGui::Begin("Gapwise", nullptr, kRootFlags)) {
        if (workplace.job) {
            const Layout layout = layoutOf(wanted);
            const Before before = beforeAll(*workplace.job);
            frame.picture = before == Before::Cartridge ? layout.picture : Area{};
            if (before == Before::Cartridge)
                drawGround(layout.picture, window);
            switch (before) {
            case Before::Slip: wish = slipPanels(workplace, layout, window, surface); break;
            case Before::About: wish = sheetPanels(workplace, layout, window, surface); break;
            case Before::Measures: wish = measuresPanels(workplace, layout, window, surface); break;
            case Before::Cartridge: wish = jobPanels(workplace, layout, surface); break;
            }
        } else {
            fillArea(window, palette::kPaper);
            wish = openingPanel(workplace, window, surface);
        }
    }
    frame.pictureFree = pictureIsFree(workplace, frame);
    ImGui::End();
    ImGui::PopFont();
    return wish;
}

BothEndsAreas bothEndsAreas(const Area& picture) {
    const double end = std::floor(picture.width * 0.36);
    return {.turbine = {picture.x, picture.y, end, picture.height},
            .lying = {picture.x + end, picture.y, picture.width - 2.0 * end, picture.height},
            .compressor = {picture.right() - end, picture.y, end, picture.height}};
}

} // namespace gapwise
