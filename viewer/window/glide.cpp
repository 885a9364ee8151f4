#include "viewer/window/glide.h"

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

constexpr double kSeconds = 0.45;

/// Begins and ends gently.
double eased(double share) {
    return share * share * (3.0 - 2.0 * share);
}

bool looksElsewhere(const Standpoint& a, const Standpoint& b) {
    return a.kind != b.kind || a.observer != b.observer || (a.pulledApart > 0.0) != (b.pulledApart > 0.0);
}

} // namespace

Stance Glide::at(const Goal& goal) {
    const Stance wanted = stanceOf(goal.standpoint, goal.attitude);
    if (last_ && (looksElsewhere(last_->standpoint, goal.standpoint) || last_->attitude != goal.attitude ||
                  last_->closeTo != goal.closeTo))
        leg_ = Leg{shown_, framing_, goal.seconds};
    last_ = Last{goal.standpoint, goal.attitude, goal.closeTo};
    if (leg_ && goal.seconds - leg_->since >= kSeconds)
        leg_.reset();
    share_ = leg_ ? eased(std::max((goal.seconds - leg_->since) / kSeconds, 0.0)) : 1.0;
    shown_ = leg_ ? between(leg_->from, wanted, share_) : wanted;
    return shown_;
}

SceneCamera Glide::framed(const SceneCamera& wanted) {
    framing_ = wanted;
    if (leg_) {
        const Vec3 eye = wanted.camera.eye() - wanted.camera.target();
        const Vec3 from = leg_->framing.camera.target();
        const Vec3 target = from + (wanted.camera.target() - from) * share_;
        framing_.camera = Camera{target + eye, target, wanted.camera.up()};
        framing_.heightMm =
            std::pow(leg_->framing.heightMm, 1.0 - share_) * std::pow(wanted.heightMm, share_);
    }
    return framing_;
}

} // namespace gapwise
