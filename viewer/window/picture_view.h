#pragma once

#include "viewer/render/renderer.h"
#include "viewer/scene/pick.h"
#include "viewer/scene/scene_of.h"
#include "viewer/scene/seat_places.h"
#include "viewer/window/glide.h"
#include "viewer/workplace/workplace.h"

#include <memory>
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

/// What is to be seen of a job, and how.
struct PictureOf {
    const Job& job;
    Standpoint standpoint{};
    PictureSize size{};
    double seconds = 0.0; ///< On any clock that only goes forward.
};

/// The picture of a job: keeps its scene, and draws it again only when something changed.
class PictureView {
public:
    /// `cuts`, of all pictures that show one job: they cut its parts alike.
    static Result<PictureView> make(std::shared_ptr<SectionCuts> cuts);

    struct Drawn {
        unsigned texture = 0; ///< RGBA, rows from the bottom.
        bool drawnAgain = false;
        bool settled = false; ///< False: the next picture is finer, or the look is still gliding.
    };
    /// Draws with the meshes of the job's frame, where the last picture does not do. The first picture after
    /// a change is coarse, the next one fine.
    Result<Drawn> draw(const PictureOf& wanted, const Meshes& meshes);

    /// What was drawn last, and how.
    const Scene& scene() const { return scene_; }
    const SceneCamera& camera() const { return camera_; }
    const PictureSize& size() const { return size_; }
    const Stance& stance() const { return stance_; }

    /// The empty seats that could take the part in hand, while it lies on the tray.
    std::vector<SeatPlace> seatPlaces(const Job& job) const;

    /// What the mouse asks for: a part taken in hand, a gap turned round the axis, a look turned or zoomed.
    std::vector<Wish> wishesOf(const Job& job, const PictureMouse& mouse);

private:
    PictureView(Renderer renderer, std::shared_ptr<SectionCuts> cuts)
        : renderer_{std::move(renderer)}, cuts_{std::move(cuts)} {}

    void makeScene(const PictureOf& wanted, const Meshes& meshes);
    /// Where the index of the part in a seat would point if it were under the mouse, relative to what carries
    /// it.
    std::optional<Clock> indexUnder(const Job& job, const PictureMouse& mouse, const Seating& seating) const;
    /// Where the part in hand sits, or could sit: what the picture is held close to.
    std::vector<SeatPlace> closeTo(const Job& job) const;
    /// The seating in hand, when the mouse is on its dial and it can be turned.
    const Seating* seatOnDial(const Job& job, const PictureMouse& mouse) const;
    void takeUnder(const Job& job, const PictureMouse& mouse, std::vector<Wish>& wishes) const;
    void press(const Job& job, const PictureMouse& mouse, std::vector<Wish>& wishes);
    void release(const Job& job, const PictureMouse& mouse, std::vector<Wish>& wishes);

    Renderer renderer_;
    std::shared_ptr<SectionCuts> cuts_;
    Scene scene_{};
    SceneCamera camera_{};
    PictureSize size_{};
    Stance stance_{};
    Glide glide_{};
    std::string sceneKey_{};
    std::string pictureKey_{};
    Drawn drawn_{};
    std::optional<SeatId> dragged_{}; ///< The ring that the mouse holds.
    Degrees grip_{0.0};    ///< From where the mouse took it to its index, as its carrier's clock runs.
    bool pressed_ = false; ///< The mouse went down in the picture.
    bool moved_ = false;   ///< And has moved since: no click any more.
    Spot pressedAt_{};
};

} // namespace gapwise
