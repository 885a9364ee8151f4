#pragma once

#include "viewer/render/renderer.h"
#include "viewer/scene/pick.h"
#include "viewer/scene/scene_of.h"
#include "viewer/workplace/workplace.h"

#include <optional>
#include <string>
#include <vector>

namespace gapwise {

/// The mouse over the picture, in pixels from its upper left corner.
struct PictureMouse {
    double x = 0.0;
    double y = 0.0;
    bool inside = false;
    bool leftPressed = false; ///< In this frame.
    bool leftDown = false;
    bool leftReleased = false; ///< In this frame.
    bool rightDown = false;
    double movedX = 0.0;
    double movedY = 0.0;
    double wheel = 0.0;
};

/// The picture of a job: keeps its scene, and draws it again only when something changed.
class PictureView {
public:
    static Result<PictureView> make();

    /// Brings the meshes of the job's frame in; an error names the command that makes them.
    Errors load(const DataFolder& data, const Frame& frame);

    struct Drawn {
        unsigned texture = 0; ///< RGBA, rows from the bottom.
        PictureSize size{};
        bool drawnAgain = false;
    };
    /// The job's picture as seen from `standpoint`, at this size. While a gap or the look is being turned it
    /// is drawn coarser than at rest.
    Result<Drawn> draw(const Job& job, const Standpoint& standpoint, const PictureSize& size);

    /// The texts of what was drawn last, and where a point of it lies in the picture.
    const std::vector<SceneLabel>& labelsShown() const { return scene_.labels; }
    PicturePoint toPicture(const Vec3& point) const { return camera_.toPicture(point, size_); }

    /// What the mouse asks for: a part taken in hand, a gap turned round the axis, a look turned or zoomed.
    std::vector<Wish> wishesOf(const Job& job, const PictureMouse& mouse);

private:
    explicit PictureView(Renderer renderer) : renderer_{std::move(renderer)} {}

    void makeScene(const Job& job, const Standpoint& standpoint);
    const SceneItem* itemOf(const PartId& part) const;
    /// Where the index of the part in a seat would point if it were under the mouse, relative to what carries
    /// it.
    std::optional<Clock> indexUnder(const Job& job, const PictureMouse& mouse, const Seating& seating) const;
    void press(const Job& job, const PictureMouse& mouse, std::vector<Wish>& wishes);
    void release(const Job& job, const PictureMouse& mouse, std::vector<Wish>& wishes);

    Renderer renderer_;
    Meshes meshes_{};
    FrameId loaded_{};
    Scene scene_{};
    SceneCamera camera_{};
    PictureSize size_{};
    std::string key_{};
    Drawn drawn_{};
    std::optional<SeatId> dragged_{}; ///< The ring that the mouse holds.
    bool pressed_ = false;            ///< The mouse went down in the picture.
    bool moved_ = false;              ///< And has moved since: no click any more.
};

} // namespace gapwise
