#include "viewer/window/turn_arrow.h"

#include "models/procedure/flange.h"
#include "models/procedure/tightening.h"
#include "viewer/scene/visible.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace gapwise {

namespace {

/// What is turned next, and how.
struct NextPiece {
    PartId part{};
    bool clockwise = true;
    Side seenFrom = Side::Compressor;
};

std::optional<NextPiece> nextPieceOf(const Job& job) {
    const Fastener* fastener = job.fastenerInHand ? job.frame.fastener(*job.fastenerInHand) : nullptr;
    const std::optional<NextScrew> next = fastener ? tighteningOf(*fastener, job.state).next : std::nullopt;
    if (!next)
        return std::nullopt;
    const std::vector<FlangeGroup> groups = flangeOf(job.frame, *fastener);
    const auto group = static_cast<std::size_t>(next->group);
    if (group >= groups.size())
        return std::nullopt;
    const auto screw = std::ranges::find(groups[group].screws, next->screw, &FlangeScrew::number);
    const Seating* seating = screw == groups[group].screws.end() ? nullptr : job.state.build.in(screw->seat);
    if (!seating)
        return std::nullopt;
    return NextPiece{.part = seating->part,
                     .clockwise = stagesOf(*fastener)[next->stage].clockwise,
                     .seenFrom = fastener->handSeenFrom};
}

/// A piece as it is drawn: its axis, how wide it is, and where it ends toward the one who faces it.
struct PieceEnd {
    Vec3 middle{};
    double radiusMm = 0.0;
};

std::optional<PieceEnd> endOf(const SceneItem& item, Side side) {
    const Pose pose = item.drawnPose();
    const double sign = signOf(side);
    const std::vector<Vec3>& corners = item.uncut().body.faces.positions;
    if (corners.empty())
        return std::nullopt;
    PieceEnd extent{.middle = pose.shift};
    double end = sign * pose.point(corners.front()).z;
    for (const Vec3& corner : corners) {
        extent.radiusMm = std::max(extent.radiusMm, std::hypot(corner.x, corner.y));
        end = std::max(end, sign * pose.point(corner).z);
    }
    extent.middle.z = sign * end;
    return extent;
}

/// Whether nothing is seen of the end that the wrench goes onto.
bool isOutOfSight(const ArrowOn& on, const PieceEnd& extent, Side side) {
    constexpr double kLiftMm = 0.5;
    constexpr double kInside = 0.8; // Of its radius: a point on the rim is at the edge of sight.
    constexpr std::array<double, 4> kClocks{0.0, 90.0, 180.0, 270.0};
    const Vec3 middle = extent.middle + Vec3{0.0, 0.0, signOf(side) * kLiftMm};
    if (!isHidden(on.scene, on.camera, middle))
        return false;
    return std::ranges::all_of(kClocks, [&](double clock) {
        const Vec3 away = directionOf(Clock::seenFrom(side, Degrees{clock})) * (kInside * extent.radiusMm);
        return isHidden(on.scene, on.camera, middle + away);
    });
}

TurnArrow arrowRound(const PieceEnd& extent, const NextPiece& piece, double radiusMm) {
    constexpr int kEnd = 140;
    constexpr int kStep = 7;
    constexpr double kBarbDegrees = 26.0;
    constexpr double kBarbShare = 0.26;
    const double sense = piece.clockwise ? 1.0 : -1.0;
    const auto at = [&](double turned, double share) {
        return extent.middle +
               directionOf(Clock::seenFrom(piece.seenFrom, Degrees{sense * turned})) * (radiusMm * share);
    };
    TurnArrow arrow;
    for (int turned = -kEnd; turned <= kEnd; turned += kStep)
        arrow.arc.push_back(at(turned, 1.0));
    arrow.head = {at(kEnd - kBarbDegrees, 1.0 + kBarbShare), at(kEnd, 1.0),
                  at(kEnd - kBarbDegrees, 1.0 - kBarbShare)};
    return arrow;
}

} // namespace

std::optional<TurnArrow> turnArrowOf(const Job& job, const ArrowOn& on) {
    const std::optional<NextPiece> piece = nextPieceOf(job);
    const SceneItem* item = piece ? on.scene.item(piece->part) : nullptr;
    const std::optional<PieceEnd> extent = item ? endOf(*item, piece->seenFrom) : std::nullopt;
    if (!extent || (!on.moving && isOutOfSight(on, *extent, piece->seenFrom)))
        return std::nullopt;
    constexpr double kWider = 1.35;
    return arrowRound(*extent, *piece, std::max(kWider * extent->radiusMm, on.leastRadiusMm));
}

std::string turnArrowKey(const Job& job) {
    const std::optional<NextPiece> piece = nextPieceOf(job);
    return piece ? fmt::format("{} {}", piece->part.text, piece->clockwise) : std::string{};
}

} // namespace gapwise
