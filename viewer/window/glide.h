#pragma once

#include "models/frame/ids.h"
#include "viewer/scene/camera.h"
#include "viewer/workplace/standpoint.h"

#include <optional>

namespace gapwise {

/// Carries the eye over from one look to the next, so that a person sees whether he walked, the piece was
/// turned, or he bent closer to a part. A free look and a zoom follow the hand and do not glide.
class Glide {
public:
    struct Goal {
        const Standpoint& standpoint;
        const Attitude& attitude;
        std::optional<PartId> closeTo{}; ///< The part that the picture is held close to.
        double seconds = 0.0;            ///< On any clock that only goes forward.
    };

    /// The stance to draw at this moment.
    Stance at(const Goal& goal);

    /// The camera to draw with at this moment, from the one that frames what is wanted in the stance of `at`.
    SceneCamera framed(const SceneCamera& wanted);

    bool moving() const { return share_ < 1.0; }

private:
    struct Leg {
        Stance from{};
        SceneCamera framing{};
        double since = 0.0;
    };
    struct Last {
        Standpoint standpoint{};
        Attitude attitude{};
        std::optional<PartId> closeTo{};
    };
    std::optional<Last> last_{}; ///< Nothing before the first call.
    Stance shown_{};
    SceneCamera framing_{};
    std::optional<Leg> leg_{};
    double share_ = 1.0; ///< Of the way that is behind, eased.
};

} // namespace gapwise
