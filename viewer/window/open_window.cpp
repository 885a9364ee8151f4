#include "viewer/window/open_window.h"

#include "geometry/base/write_file.h"
#include "models/job/journal.h"
#include "viewer/panels/panels.h"
#include "viewer/scene/read_meshes.h"
#include "viewer/window/glfw_window.h"
#include "viewer/window/imgui_frame.h"
#include "viewer/window/overlay_of.h"
#include "viewer/window/part_portrait.h"
#include "viewer/window/picture_view.h"
#include "viewer/window/turn_arrow.h"

#include <epoxy/gl.h>

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <chrono>
#include <cmath>
#include <cstdio>
#include <future>
#include <map>
#include <utility>

namespace gapwise {

namespace {

/// After an event panels settle within this many pictures; then nothing is drawn until the next event.
constexpr int kPicturesAfterAnEvent = 3;

/// The picture, or the three of the look at both ends.
struct Pictures {
    std::shared_ptr<SectionCuts> cuts;
    PictureView main;
    std::optional<PictureView> turbineEnd{}; ///< Made when they are first looked at.
    std::optional<PictureView> compressorEnd{};
    std::optional<PartPortraits> portraits{}; ///< Likewise.
    Meshes meshes{};
    FrameId loaded{};
    Errors notLoaded{}; ///< Why the meshes of `loaded` could not be read; told once.

    void keep(const FrameId& frame, Result<Meshes> read) {
        loaded = frame;
        notLoaded = read ? Errors{} : read.errors();
        meshes = read ? std::move(read).value() : Meshes{};
    }
};

/// What lies over one of the pictures.
struct Overlaid {
    Area area{};
    PictureOverlay overlay{};
    std::string arrow{}; ///< Which arrow of a wrench is over it.
    bool moving = true;
    double drawnAt = -1.0; ///< Seconds since the start.
};

/// The day as the clock of the system has it, `2026-11-30`.
std::string today() {
    const auto now = std::chrono::floor<std::chrono::days>(std::chrono::system_clock::now());
    const std::chrono::year_month_day day{now};
    return fmt::format("{:04}-{:02}-{:02}", static_cast<int>(day.year()), static_cast<unsigned>(day.month()),
                       static_cast<unsigned>(day.day()));
}

/// What is drawn and counted while the window is open.
class WindowLoop {
public:
    WindowLoop(GlfwWindow& window, ImguiFrame& imgui, Pictures& pictures)
        : window_{window}, imgui_{imgui}, pictures_{pictures} {
        panels_.fonts = imgui.fonts();
        panels_.uiScale = imgui.uiScale();
        panels_.pixelsPerMm = window.pixelsPerMm();
        panels_.today = today();
    }

    void run(Workplace& workplace, const OpenRequest& request) {
        int pending = kPicturesAfterAnEvent;
        while (!window_.wantsToClose()) {
            if (pending == 0) {
                rememberStanding(workplace);
                window_.waitForEvents();
                pending = kPicturesAfterAnEvent;
            } else {
                window_.takeEvents();
            }
            pending = drawOnce(workplace) ? kPicturesAfterAnEvent : pending - 1;
            ++count_;
            if (request.tellFigures && count_ == 1)
                tellFirstPicture();
            if (!request.targetsFile.empty())
                tellTargets(request.targetsFile);
        }
        if (request.tellFigures)
            fmt::print(stderr, "pictures drawn: {}\n", count_);
    }

private:
    /// True when the next picture may differ: a hand did something, or a look still glides.
    bool drawOnce(Workplace& workplace) {
        const PixelSize pixels = imgui_.begin();
        std::vector<Wish> wishes;
        settled_ = !imgui_.handMoved();
        if (const std::optional<Wish> wish = showPanels(workplace, panels_))
            wishes.push_back(*wish);
        if (workplace.job)
            drawPictures(workplace, wishes);
        if (workplace.job && !panels_.portraits.empty())
            drawPortraits(workplace);
        glViewport(0, 0, pixels.width, pixels.height);
        glClearColor(0.949F, 0.953F, 0.941F, 1.0F);
        glClear(GL_COLOR_BUFFER_BIT);
        settled_ = !imgui_.end() && settled_;
        window_.show();
        for (const Wish& wish : wishes)
            grant(workplace, wish);
        return !wishes.empty() || !settled_;
    }

    void drawPictures(Workplace& workplace, std::vector<Wish>& wishes) {
        const Job& job = *workplace.job;
        if (panels_.picture.width < 2.0 || panels_.picture.height < 2.0 || !loadMeshes(workplace))
            return;
        PictureOverlay overlay;
        if (job.standpoint.kind == LookKind::BothEnds) {
            const BothEndsAreas areas = bothEndsAreas(panels_.picture);
            place(workplace, made(pictures_.turbineEnd), LookKind::FromTurbine, areas.turbine, overlay);
            place(workplace, &pictures_.main, LookKind::WhereIStand, areas.lying, overlay);
            place(workplace, made(pictures_.compressorEnd), LookKind::FromCompressor, areas.compressor,
                  overlay);
        } else {
            place(workplace, &pictures_.main, job.standpoint.kind, panels_.picture, overlay);
            const PictureMouse mouse = imgui_.mouseOver(panels_.picture, panels_.pictureFree);
            const std::vector<Wish> asked = pictures_.main.wishesOf(job, mouse);
            wishes.insert(wishes.end(), asked.begin(), asked.end());
        }
        // Its words are drawn by the panels of the next picture: they are measured in the fonts of this one.
        if (overlayChanged_)
            settled_ = false;
        overlayChanged_ = false;
        panels_.overlay = std::move(overlay);
    }

    /// The part alone, on the sheet about it.
    void drawPortraits(Workplace& workplace) {
        if (!loadMeshes(workplace))
            return;
        if (!pictures_.portraits)
            if (Result<PartPortraits> made = PartPortraits::make())
                pictures_.portraits.emplace(std::move(made).value());
        for (const Portrait& wanted : panels_.portraits) {
            if (!pictures_.portraits || wanted.area.width < 2.0 || wanted.area.height < 2.0)
                continue;
            const auto drawn = pictures_.portraits->draw({workplace.job->frame, pictures_.meshes}, wanted);
            if (!drawn)
                continue;
            imgui_.placeTexture(drawn->texture, wanted.area);
            settled_ = settled_ && drawn->settled;
        }
    }

    /// False when they cannot be read; the note then says why.
    bool loadMeshes(Workplace& workplace) {
        const Frame& frame = workplace.job->frame;
        if (pictures_.loaded != frame.id)
            pictures_.keep(frame.id, readMeshes(workplace.data, frame));
        if (!pictures_.notLoaded.empty())
            workplace.note = Note{describe(std::exchange(pictures_.notLoaded, {}).front()), true};
        return !pictures_.meshes.empty();
    }

    PictureView* made(std::optional<PictureView>& view) {
        if (!view)
            if (Result<PictureView> fresh = PictureView::make(pictures_.cuts))
                view.emplace(std::move(fresh).value());
        return view ? &*view : nullptr;
    }

    void place(Workplace& workplace, PictureView* view, LookKind kind, const Area& area,
               PictureOverlay& overlay) {
        if (!view)
            return;
        Standpoint standpoint = workplace.job->standpoint;
        standpoint.kind = kind;
        const PictureSize size{static_cast<int>(std::lround(area.width)),
                               static_cast<int>(std::lround(area.height))};
        const Result<PictureView::Drawn> drawn =
            view->draw({*workplace.job, standpoint, size, secondsSinceStart()}, pictures_.meshes);
        if (!drawn) {
            workplace.note = Note{describe(drawn.errors().front()), true};
            return;
        }
        imgui_.placeTexture(drawn->texture, area);
        settled_ = settled_ && drawn->settled;
        Overlaid& kept = overlays_[view];
        if (std::string arrow = turnArrowKey(*workplace.job); arrow != kept.arrow) {
            kept.arrow = std::move(arrow);
            kept.area = {}; // What lies over the picture is made anew, though the picture is not.
        }
        if (drawn->drawnAgain || kept.area != area)
            renewOverlay(kept, *workplace.job, *view, area, drawn->settled);
        append(overlay, kept.overlay);
    }

    /// Pictures that follow each other quickly are of something that moves; the fine one after it is whole
    /// again.
    void renewOverlay(Overlaid& kept, const Job& job, const PictureView& view, const Area& area,
                      bool settled) {
        constexpr double kQuickly = 0.2; // Seconds.
        const double now = secondsSinceStart();
        const bool moving = !settled && now - kept.drawnAt < kQuickly;
        const bool known = settled && !kept.moving && kept.area == area;
        kept.drawnAt = now;
        if (known)
            return;
        kept.area = area;
        kept.moving = moving;
        kept.overlay = overlayOf(job, view, area, panels_, moving);
        overlayChanged_ = true;
    }

    static void append(PictureOverlay& all, const PictureOverlay& more) {
        all.lines.insert(all.lines.end(), more.lines.begin(), more.lines.end());
        all.labels.insert(all.labels.end(), more.labels.begin(), more.labels.end());
    }

    double secondsSinceStart() const {
        return std::chrono::duration<double>(std::chrono::steady_clock::now() - begun_).count();
    }

    /// What lies where, for scripts that drive the window as a hand does.
    void tellTargets(const std::filesystem::path& file) const {
        const auto list = [](const Area& area) {
            return nlohmann::ordered_json{area.x, area.y, area.width, area.height};
        };
        nlohmann::ordered_json told{{"pictures", count_}, {"picture", list(panels_.picture)}};
        for (const Target& target : panels_.targets)
            told["targets"][target.name] = list(target.area);
        writeFile(file, told.dump() + "\n");
    }

    void tellFirstPicture() const {
        fmt::print(stderr, "first picture after: {:.0f} ms\n", secondsSinceStart() * 1000.0);
    }

    GlfwWindow& window_;
    ImguiFrame& imgui_;
    Pictures& pictures_;
    PanelFrame panels_{};
    std::map<const PictureView*, Overlaid> overlays_{};
    bool overlayChanged_ = false;
    bool settled_ = true;
    long count_ = 0;
    std::chrono::steady_clock::time_point begun_ = std::chrono::steady_clock::now();
};

} // namespace

Outcome openWindow(const OpenRequest& request, const std::filesystem::path& program) {
    const Result<DataFolder> data = findDataFolder(program);
    if (!data)
        return failed(ExitStatus::CannotNow, data.errors());
    Workplace workplace = openWorkplace(*data, stateFolder());
    Result<Beginning> beginning = beginningOf(workplace, request.what, request.use);
    if (!beginning)
        return failed(ExitStatus::BadInput, beginning.errors());
    // While the driver starts, the meshes are read.
    std::future<Result<Meshes>> reading;
    if (beginning->job)
        reading = std::async(std::launch::async,
                             [&data, &frame = beginning->job->frame] { return readMeshes(*data, frame); });
    Result<GlfwWindow> window = GlfwWindow::make(request.size, kLeastWindow);
    if (!window)
        return failed(ExitStatus::CannotNow, window.errors());
    Result<ImguiFrame> imgui = ImguiFrame::make(window.value());
    if (!imgui)
        return failed(ExitStatus::CannotNow, imgui.errors());
    auto cuts = std::make_shared<SectionCuts>();
    Result<PictureView> picture = PictureView::make(cuts);
    if (!picture)
        return failed(ExitStatus::CannotNow, picture.errors());
    Pictures pictures{.cuts = std::move(cuts), .main = std::move(picture).value()};
    if (reading.valid())
        pictures.keep(beginning->job->frame.id, reading.get());
    begin(workplace, std::move(beginning).value());
    WindowLoop loop{window.value(), imgui.value(), pictures};
    loop.run(workplace, request);
    leave(workplace);
    return {};
}

} // namespace gapwise
