#include "viewer/window/open_window.h"

#include "geometry/base/write_file.h"
#include "models/job/journal.h"
#include "viewer/panels/panels.h"
#include "viewer/window/glfw_window.h"
#include "viewer/window/imgui_frame.h"
#include "viewer/window/picture_view.h"

#include <epoxy/gl.h>

#include <GLFW/glfw3.h>
#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <chrono>
#include <cmath>
#include <cstdio>
#include <utility>

namespace gapwise {

namespace {

/// After an event panels settle within this many pictures; then nothing is drawn until the next event.
constexpr int kPicturesAfterAnEvent = 3;

/// What is drawn and counted while the window is open.
class WindowLoop {
public:
    WindowLoop(GlfwWindow& window, ImguiFrame& imgui, PictureView& left, PictureView& right)
        : window_{window}, imgui_{imgui}, picture_{left}, secondPicture_{right} {
        panels_.fonts = imgui.fonts();
        panels_.uiScale = imgui.uiScale();
        panels_.pixelsPerMm = window.pixelsPerMm();
    }

    void run(Workplace& workplace, const OpenRequest& request) {
        int pending = kPicturesAfterAnEvent;
        while (!window_.wantsToClose()) {
            if (pending == 0) {
                glfwWaitEvents();
                pending = kPicturesAfterAnEvent;
            } else {
                glfwPollEvents();
            }
            if (drawOnce(workplace))
                pending = kPicturesAfterAnEvent;
            else
                --pending;
            ++pictures_;
            if (request.tellFigures && pictures_ == 1)
                tellFirstPicture();
            if (!request.targetsFile.empty())
                tellTargets(request.targetsFile);
        }
        if (request.tellFigures)
            fmt::print(stderr, "pictures drawn: {}\n", pictures_);
    }

private:
    /// True when something was wished: the next picture will differ.
    bool drawOnce(Workplace& workplace) {
        const PixelSize pixels = imgui_.begin();
        std::vector<Wish> wishes;
        if (const std::optional<Wish> wish = showPanels(workplace, panels_))
            wishes.push_back(*wish);
        if (workplace.job)
            drawPicture(workplace, wishes);
        glViewport(0, 0, pixels.width, pixels.height);
        glClearColor(0.957F, 0.949F, 0.925F, 1.0F);
        glClear(GL_COLOR_BUFFER_BIT);
        imgui_.end();
        window_.show();
        for (const Wish& wish : wishes)
            grant(workplace, wish);
        return !wishes.empty();
    }

    void drawPicture(Workplace& workplace, std::vector<Wish>& wishes) {
        Job& job = *workplace.job;
        panels_.labels.clear();
        if (panels_.picture.width < 2.0 || panels_.picture.height < 2.0)
            return;
        for (PictureView* view : {&picture_, &secondPicture_})
            if (const Errors errors = view->load(workplace.data, job.frame); !errors.empty())
                workplace.note = Note{describe(errors.front()), true};
        if (job.standpoint.kind == LookKind::BothEnds) {
            const BothEndsAreas areas = bothEndsAreas(panels_.picture);
            place(workplace, picture_, endLook(job, LookKind::FromTurbine), areas.turbine);
            place(workplace, secondPicture_, endLook(job, LookKind::FromCompressor), areas.compressor);
            return;
        }
        place(workplace, picture_, job.standpoint, panels_.picture);
        const std::vector<Wish> asked = picture_.wishesOf(job, imgui_.mouseOver(panels_.picture));
        wishes.insert(wishes.end(), asked.begin(), asked.end());
    }

    static Standpoint endLook(const Job& job, LookKind kind) {
        Standpoint standpoint = job.standpoint;
        standpoint.kind = kind;
        return standpoint;
    }

    void place(Workplace& workplace, PictureView& view, const Standpoint& standpoint, const Area& area) {
        const PictureSize size{static_cast<int>(std::lround(area.width)),
                               static_cast<int>(std::lround(area.height))};
        const Result<PictureView::Drawn> drawn = view.draw(*workplace.job, standpoint, size);
        if (!drawn) {
            workplace.note = Note{describe(drawn.errors().front()), true};
            return;
        }
        imgui_.placeTexture(drawn->texture, area);
        for (const SceneLabel& label : view.labelsShown())
            panels_.labels.push_back(panelLabel(view, label, area));
    }

    static PictureLabel panelLabel(const PictureView& view, const SceneLabel& label, const Area& area) {
        const PicturePoint at = view.toPicture(label.anchor);
        return PictureLabel{.x = area.x + at.x,
                            .y = area.y + at.y,
                            .words = label.text,
                            .strong = label.kind == SceneLabel::Kind::End ||
                                      label.kind == SceneLabel::Kind::Broken};
    }

    /// What lies where, for scripts that drive the window as a hand does.
    void tellTargets(const std::filesystem::path& file) const {
        nlohmann::ordered_json told;
        told["pictures"] = pictures_;
        const auto list = [](const Area& area) {
            return nlohmann::ordered_json{area.x, area.y, area.width, area.height};
        };
        told["picture"] = list(panels_.picture);
        for (const Target& target : panels_.targets)
            told["targets"][target.name] = list(target.area);
        writeFile(file, told.dump() + "\n");
    }

    void tellFirstPicture() const {
        const auto since = std::chrono::steady_clock::now() - begun_;
        fmt::print(stderr, "first picture after: {} ms\n",
                   std::chrono::duration_cast<std::chrono::milliseconds>(since).count());
    }

    GlfwWindow& window_;
    ImguiFrame& imgui_;
    PictureView& picture_;
    PictureView& secondPicture_;
    PanelFrame panels_{};
    long pictures_ = 0;
    std::chrono::steady_clock::time_point begun_ = std::chrono::steady_clock::now();
};

} // namespace

Outcome openWindow(const OpenRequest& request, const std::filesystem::path& program) {
    const Result<DataFolder> data = findDataFolder(program);
    if (!data)
        return failed(ExitStatus::CannotNow, data.errors());
    Workplace workplace = openWorkplace(*data, stateFolder());
    if (Errors errors = beginWith(workplace, request.what, request.use); !errors.empty())
        return failed(ExitStatus::BadInput, std::move(errors));
    Result<GlfwWindow> window = GlfwWindow::make(request.size, kLeastWindow);
    if (!window)
        return failed(ExitStatus::CannotNow, window.errors());
    Result<ImguiFrame> imgui = ImguiFrame::make(window.value());
    if (!imgui)
        return failed(ExitStatus::CannotNow, imgui.errors());
    Result<PictureView> left = PictureView::make();
    Result<PictureView> right = PictureView::make();
    if (!left || !right)
        return failed(ExitStatus::CannotNow, left ? right.errors() : left.errors());
    WindowLoop loop{window.value(), imgui.value(), left.value(), right.value()};
    loop.run(workplace, request);
    leave(workplace);
    return {};
}

} // namespace gapwise
