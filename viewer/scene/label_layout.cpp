#include "viewer/scene/label_layout.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numeric>
#include <optional>

namespace gapwise {

namespace {

constexpr double kGap = 16.0; ///< From what a text speaks of to the text, in units.
constexpr double kTier = 1.3; ///< From one tier of texts to the next, in heights of a text.
constexpr std::array kAsides{0.0, -0.5, 0.5, -1.0, 1.0, -1.6, 1.6, -2.4, 2.4, -3.6, 3.6, -5.0, 5.0};
constexpr int kTiers = 16;
constexpr double kPerTangle = 200.0; ///< Cost of a tangle: only where there is no other place.
/// An `inlet` below the shaft would be read as a drain: worse than two tangles.
constexpr double kWrongSide = 500.0;
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
                for (const double aside : kAsides) {
                    const Choice choice{above, tier, aside};
                    const PlacedLabel candidate = at(request, choice);
                    if (!mayMove(request, aside) || !hasRoom(candidate))
                        continue;
                    const double cost = costOf(request, candidate, choice);
                    if (cost < least) {
                        least = cost;
                        best = candidate;
                    }
                }
        if (!best)
            return {};
        lastAbove_ = best->box.bottom() < best->leaderEnd.y;
        tangles_ += tanglesOf(*best);
        placed_.push_back(*best);
        return *best;
    }

    /// How many tangles there are among all that were placed.
    double tangles() const { return tangles_; }

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

    PlacedLabel at(const LabelRequest& request, const Choice& choice) const {
        const Spot end = choice.above ? request.upper : request.lower;
        const double away = kGap * room_.unit + choice.tier * kTier * request.height;
        const double wished = end.x - request.width / 2.0 + choice.aside * request.width;
        const double rightmost = std::max(room_.inside.left, room_.inside.right() - request.width);
        const PictureArea box{std::clamp(wished, room_.inside.left, rightmost),
                              choice.above ? end.y - away - request.height : end.y + away, request.width,
                              request.height};
        const double inset = std::min(request.width / 2.0, 6.0 * room_.unit);
        const double x = std::clamp(end.x, box.left + inset, box.right() - inset);
        return {.box = box, .leaderStart = {x, choice.above ? box.bottom() : box.top}, .leaderEnd = end};
    }

    bool hasRoom(const PlacedLabel& candidate) const {
        const PictureArea claimed = padded(candidate.box, taste_.padding * room_.unit);
        return room_.inside.contains(candidate.box) &&
               std::ranges::none_of(placed_,
                                    [&](const PlacedLabel& other) { return claimed.overlaps(other.box); });
    }

    /// How many texts already placed it would tangle with: a leader through a text, or two that cross.
    double tanglesOf(const PlacedLabel& candidate) const {
        return static_cast<double>(std::ranges::count_if(placed_, [&](const PlacedLabel& other) {
            return passesThrough(candidate.leaderStart, candidate.leaderEnd, padded(other.box, room_.unit)) ||
                   passesThrough(other.leaderStart, other.leaderEnd, padded(candidate.box, room_.unit)) ||
                   cross(candidate, other);
        }));
    }

    double costOf(const LabelRequest& request, const PlacedLabel& candidate, const Choice& choice) const {
        double cost = kPerTangle * tanglesOf(candidate);
        for (const PictureArea& obstacle : room_.obstacles)
            if (const double covered = overlapArea(padded(candidate.box, kClearance * room_.unit), obstacle);
                covered > 0.0)
                cost += 4.0 + 30.0 * covered / (request.width * request.height);
        cost += choice.tier + taste_.perAside * std::abs(choice.aside);
        cost += kPerLength *
                std::hypot(candidate.leaderEnd.x - candidate.leaderStart.x,
                           candidate.leaderEnd.y - candidate.leaderStart.y) /
                room_.unit;
        using Prefers = LabelRequest::Prefers;
        if (request.prefers == Prefers::Either)
            cost += choice.above == lastAbove_ ? 0.6 : 0.0; // To and fro, so that neighbours have room.
        else if (choice.above != (request.prefers == Prefers::Above))
            cost += kWrongSide;
        return cost;
    }

    const LabelRoom& room_;
    Taste taste_;
    std::vector<PlacedLabel> placed_{};
    double tangles_ = 0.0;
    bool lastAbove_ = false;
};

/// One way of placing all texts, and what is wrong with it.
struct Attempt {
    std::vector<PlacedLabel> placed{};
    double faults = 0.0;
};

/// Placed in the order given; the result stands in the order of the requests.
Attempt attemptOf(const std::vector<LabelRequest>& requests, const std::vector<std::size_t>& order,
                  const LabelRoom& room, const Taste& taste) {
    constexpr double kLongShare = 0.12; // of the room's width: so far away nobody finds the part of a text
    Attempt attempt;
    attempt.placed.resize(requests.size());
    Placer placer{room, taste};
    for (const std::size_t index : order) {
        const PlacedLabel label = attempt.placed[index] = placer.place(requests[index]);
        const double away = std::abs(label.leaderEnd.x - label.leaderStart.x) / room.inside.width;
        if (label.box.width == 0.0)
            attempt.faults += kPerTangle;
        else if (away > kLongShare)
            attempt.faults += away;
    }
    attempt.faults += placer.tangles();
    return attempt;
}

} // namespace

std::vector<PlacedLabel> placeLabels(const std::vector<LabelRequest>& requests, const LabelRoom& room) {
    // The first way looks best; where it leaves a text without a place, far away or tangled, the others crowd
    // more, or go from left to right.
    constexpr std::array kTastes{Taste{}, Taste{.perAside = 2.5, .padding = 3.0},
                                 Taste{.perAside = 12.0, .padding = 2.0}};
    std::vector<std::size_t> asGiven(requests.size());
    std::iota(asGiven.begin(), asGiven.end(), std::size_t{0});
    std::vector<std::size_t> fromLeft = asGiven;
    std::ranges::stable_sort(fromLeft, {}, [&](std::size_t index) { return requests[index].upper.x; });
    Attempt best{.faults = std::numeric_limits<double>::max()};
    for (const Taste& taste : kTastes)
        for (const auto& order : {asGiven, fromLeft}) {
            if (best.faults == 0.0)
                break;
            Attempt attempt = attemptOf(requests, order, room, taste);
            if (attempt.faults < best.faults)
                best = std::move(attempt);
        }
    return best.placed;
}

} // namespace gapwise
