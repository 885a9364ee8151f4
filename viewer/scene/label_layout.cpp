#include "viewer/scene/label_layout.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <optional>

namespace gapwise {

namespace {

constexpr double kGap = 16.0; ///< From what a text speaks of to the text, in units.
constexpr double kTier = 1.3; ///< From one tier of texts to the next, in heights of a text.
constexpr int kTiers = 16;
constexpr double kPerLength = 0.012; ///< Cost of a unit of a leader's length.
constexpr double kClearance = 4.0;   ///< Between a text and an obstacle, in units.

PictureArea padded(const PictureArea& area, double by) {
    return {area.left - by, area.top - by, area.width + 2.0 * by, area.height + 2.0 * by};
}

double overlapArea(const PictureArea& a, const PictureArea& b) {
    const double width = std::min(a.right(), b.right()) - std::max(a.left, b.left);
    const double height = std::min(a.bottom(), b.bottom()) - std::max(a.top, b.top);
    return width > 0.0 && height > 0.0 ? width * height : 0.0;
}

/// True when the straight line between two spots passes through an area: clipped side by side.
bool passesThrough(const Spot& from, const Spot& to, const PictureArea& area) {
    double enter = 0.0;
    double leave = 1.0;
    const auto clip = [&](double start, double change, double low, double high) {
        if (change == 0.0)
            return start >= low && start <= high;
        const double a = (low - start) / change;
        const double b = (high - start) / change;
        enter = std::max(enter, std::min(a, b));
        leave = std::min(leave, std::max(a, b));
        return enter <= leave;
    };
    return clip(from.x, to.x - from.x, area.left, area.right()) &&
           clip(from.y, to.y - from.y, area.top, area.bottom()) && enter < leave;
}

double turn(const Spot& a, const Spot& b, const Spot& c) {
    return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}

bool cross(const PlacedLabel& a, const PlacedLabel& b) {
    return turn(a.leaderStart, a.leaderEnd, b.leaderStart) * turn(a.leaderStart, a.leaderEnd, b.leaderEnd) <
               0.0 &&
           turn(b.leaderStart, b.leaderEnd, a.leaderStart) * turn(b.leaderStart, b.leaderEnd, a.leaderEnd) <
               0.0;
}

/// What a way of placing weighs.
struct Taste {
    double perAside = 4.0; ///< Cost of moving aside by the width of the text, in tiers.
    double padding = 6.0;  ///< Between texts, in units.
};

/// Finds places one after the other.
class Placer {
public:
    Placer(const LabelRoom& room, const Taste& taste) : room_{room}, taste_{taste} {}

    PlacedLabel place(const LabelRequest& request) {
        std::optional<PlacedLabel> best;
        double least = std::numeric_limits<double>::max();
        for (const bool above : {true, false})
            for (int tier = 0; tier < kTiers; ++tier)
                for (const double aside :
                     {0.0, -0.5, 0.5, -1.0, 1.0, -1.6, 1.6, -2.4, 2.4, -3.6, 3.6, -5.0, 5.0}) {
                    if (!mayMove(request, aside))
                        continue;
                    const PlacedLabel candidate = at(request, above, tier, aside);
                    if (!isFree(candidate))
                        continue;
                    const double cost = costOf(request, candidate, {above, tier, aside});
                    if (cost < least) {
                        least = cost;
                        best = candidate;
                    }
                }
        if (!best)
            return {};
        lastAbove_ = best->box.bottom() < best->leaderEnd.y;
        placed_.push_back(*best);
        return *best;
    }

private:
    struct Choice {
        bool above = true;
        int tier = 0;
        double aside = 0.0;
    };

    static bool mayMove(const LabelRequest& request, double aside) {
        using Aside = LabelRequest::Aside;
        return !(request.aside == Aside::Left && aside > 0.0) &&
               !(request.aside == Aside::Right && aside < 0.0);
    }

    PlacedLabel at(const LabelRequest& request, bool above, int tier, double aside) const {
        const Spot end = above ? request.upper : request.lower;
        const double away = kGap * room_.unit + tier * kTier * request.height;
        const double wished = end.x - request.width / 2.0 + aside * request.width;
        const double rightmost = std::max(room_.inside.left, room_.inside.right() - request.width);
        const PictureArea box{std::clamp(wished, room_.inside.left, rightmost),
                              above ? end.y - away - request.height : end.y + away, request.width,
                              request.height};
        const double inset = std::min(request.width / 2.0, 6.0 * room_.unit);
        const double x = std::clamp(end.x, box.left + inset, box.right() - inset);
        return {.box = box, .leaderStart = {x, above ? box.bottom() : box.top}, .leaderEnd = end};
    }

    bool isFree(const PlacedLabel& candidate) const {
        if (!room_.inside.contains(candidate.box))
            return false;
        const PictureArea claimed = padded(candidate.box, taste_.padding * room_.unit);
        return std::none_of(placed_.begin(), placed_.end(), [&](const PlacedLabel& other) {
            return claimed.overlaps(other.box) ||
                   passesThrough(candidate.leaderStart, candidate.leaderEnd, padded(other.box, room_.unit)) ||
                   passesThrough(other.leaderStart, other.leaderEnd, padded(candidate.box, room_.unit)) ||
                   cross(candidate, other);
        });
    }

    double costOf(const LabelRequest& request, const PlacedLabel& candidate, const Choice& choice) const {
        double cost = 0.0;
        for (const PictureArea& obstacle : room_.obstacles)
            if (const double covered = overlapArea(padded(candidate.box, kClearance * room_.unit), obstacle);
                covered > 0.0)
                cost += 12.0 + 40.0 * covered / (request.width * request.height);
        cost += choice.tier + taste_.perAside * std::abs(choice.aside);
        cost += kPerLength *
                std::hypot(candidate.leaderEnd.x - candidate.leaderStart.x,
                           candidate.leaderEnd.y - candidate.leaderStart.y) /
                room_.unit;
        using Prefers = LabelRequest::Prefers;
        if (request.prefers == Prefers::Either)
            cost += choice.above == lastAbove_ ? 0.6 : 0.0; // To and fro, so that neighbours have room.
        else if (choice.above != (request.prefers == Prefers::Above))
            cost += 30.0;
        return cost;
    }

    const LabelRoom& room_;
    Taste taste_;
    std::vector<PlacedLabel> placed_{};
    bool lastAbove_ = false;
};

/// Gathers the bounds of what is seen, and its highest and lowest point.
class OutlineFinder {
public:
    void add(const Spot& spot, const Vec3& point) {
        if (first_ || spot.y < outlined_.upper.y) {
            outlined_.upper = spot;
            outlined_.upperPoint = point;
        }
        if (first_ || spot.y > outlined_.lower.y) {
            outlined_.lower = spot;
            outlined_.lowerPoint = point;
        }
        left_ = first_ ? spot.x : std::min(left_, spot.x);
        right_ = first_ ? spot.x : std::max(right_, spot.x);
        first_ = false;
    }

    Outlined found() const {
        Outlined outlined = outlined_;
        outlined.area = {left_, outlined.upper.y, right_ - left_, outlined.lower.y - outlined.upper.y};
        return outlined;
    }

private:
    Outlined outlined_{};
    double left_ = 0.0;
    double right_ = 0.0;
    bool first_ = true;
};

/// The middle of the widest piece of a cut face above (`sense` 1) or below (-1) the shaft; of a piece across
/// the shaft its middle, whatever the sense. Nothing where nothing is cut there.
std::optional<Vec3> cutPoint(const SceneItem& item, double sense) {
    const TriangleMesh& caps = item.mesh->caps;
    const Pose drawn = item.drawnPose();
    std::optional<Vec3> best;
    double widest = 0.0;
    for (const auto& [a, b, c] : caps.triangles) {
        const Vec3 p = caps.positions[a];
        const Vec3 q = caps.positions[b];
        const Vec3 r = caps.positions[c];
        // How round it is counts, not only how large: a leader to the middle of a sliver seems to point
        // beside.
        const double longest = std::max({length(q - p), length(r - q), length(p - r)});
        const double width = longest > 0.0 ? length(cross(q - p, r - p)) / longest : 0.0;
        const Vec3 middle = drawn.point((p + q + r) * (1.0 / 3.0));
        if (middle.y * sense >= 0.0 && width > widest) {
            widest = width;
            best = middle;
        }
    }
    return best;
}

} // namespace

std::vector<PlacedLabel> placeLabels(const std::vector<LabelRequest>& requests, const LabelRoom& room) {
    // The first way looks best; where it leaves a text without a place, the others crowd more.
    constexpr std::array kTastes{Taste{}, Taste{.perAside = 2.5, .padding = 3.0},
                                 Taste{.perAside = 12.0, .padding = 2.0}};
    std::vector<PlacedLabel> best;
    std::ptrdiff_t fewest = std::numeric_limits<std::ptrdiff_t>::max();
    for (const Taste& taste : kTastes) {
        Placer placer{room, taste};
        std::vector<PlacedLabel> placed;
        placed.reserve(requests.size());
        for (const LabelRequest& request : requests)
            placed.push_back(placer.place(request));
        const auto leftOut = std::count_if(placed.begin(), placed.end(),
                                           [](const PlacedLabel& label) { return label.box.width == 0.0; });
        if (leftOut < fewest) {
            fewest = leftOut;
            best = std::move(placed);
        }
        if (fewest == 0)
            break;
    }
    return best;
}

Outlined outlineOf(const SceneItem& item, const SceneCamera& camera, const PictureSize& size) {
    const Pose drawn = item.drawnPose();
    OutlineFinder finder;
    for (const Vec3& own : item.mesh->body.faces.positions) {
        const Vec3 point = drawn.point(own);
        const PicturePoint seen = camera.toPicture(point, size);
        finder.add({seen.x, seen.y}, point);
    }
    Outlined outlined = finder.found();
    const auto pointAt = [&](const Vec3& point, Spot& spot, Vec3& kept) {
        const PicturePoint seen = camera.toPicture(point, size);
        spot = {seen.x, seen.y};
        kept = point;
    };
    if (const auto above = cutPoint(item, 1.0))
        pointAt(*above, outlined.upper, outlined.upperPoint);
    if (const auto below = cutPoint(item, -1.0))
        pointAt(*below, outlined.lower, outlined.lowerPoint);
    return outlined;
}

} // namespace gapwise
