#pragma once

#include "viewer/scene/camera.h"

namespace gapwise {

/// SceneCamera::toPicture for many points: what does not depend on the point is worked out once.
class Projector {
public:
    Projector(const SceneCamera& lens, const PictureSize& size)
        : eye_{lens.camera.eye()},
          right_{lens.camera.right()},
          up_{lens.camera.up()},
          forward_{lens.camera.forward()},
          middle_{size.width / 2.0, size.height / 2.0},
          pixelsPerMm_{size.height / lens.heightMm},
          targetDistance_{length(lens.camera.target() - lens.camera.eye())},
          parallel_{lens.projection == Projection::Parallel} {}

    Spot spotOf(const Vec3& point) const {
        const Vec3 fromEye = point - eye_;
        const double scale =
            parallel_ ? pixelsPerMm_ : pixelsPerMm_ * targetDistance_ / dot(fromEye, forward_);
        return {middle_.x + dot(fromEye, right_) * scale, middle_.y - dot(fromEye, up_) * scale};
    }

private:
    Vec3 eye_;
    Vec3 right_;
    Vec3 up_;
    Vec3 forward_;
    Spot middle_;
    double pixelsPerMm_;
    double targetDistance_;
    bool parallel_;
};

} // namespace gapwise
