#include "viewer/scene/section_cut.h"

#include "viewer/scene/section_loops.h"
#include "viewer/scene/weld.h"

#include <algorithm>
#include <array>
#include <limits>
#include <utility>

namespace gapwise {

namespace {

/// How far each point lies beyond a plane. Corners at one place are one point, or neighbouring triangles
/// would part.
std::vector<double> beyondOf(const std::vector<Vec3>& points, const CuttingPlane& plane) {
    std::vector<double> beyond;
    beyond.reserve(points.size());
    for (const Vec3& p : points)
        beyond.push_back(beyondOrOn(plane, p));
    return beyond;
}

/// A corner of a triangle while it is being cut.
struct Corner {
    Vec3 at{};
    Vec3 normal{};
    double first = 0.0;  ///< How far it lies beyond the first plane,
    double second = 0.0; ///< and beyond the second; below 0 without one.
};

/// Convex, counter-clockwise seen from outside.
using Polygon = std::vector<Corner>;

bool comesBefore(const Vec3& a, const Vec3& b) {
    if (a.x != b.x)
        return a.x < b.x;
    return a.y != b.y ? a.y < b.y : a.z < b.z;
}

/// Cuts the faces of a mesh triangle by triangle.
class FaceCutter {
public:
    struct Cutting {
        const TriangleMesh& mesh;
        const std::vector<std::uint32_t>& pointOf;
        const std::vector<double>& first;
        const std::vector<double>& second; ///< Empty where there is no second plane.
        const std::optional<MeetingLine>& meeting;
    };
    explicit FaceCutter(const Cutting& cutting) : c_{cutting}, kept_(c_.mesh.positions.size(), kNotKept) {
        rest_.triangles.reserve(c_.mesh.triangles.size());
        rest_.positions.reserve(c_.mesh.positions.size());
        rest_.normals.reserve(c_.mesh.positions.size());
        for (const Triangle& triangle : c_.mesh.triangles)
            cut(triangle);
    }

    TriangleMesh rest() && { return std::move(rest_); }

private:
    using Triangle = std::array<std::uint32_t, 3>;
    static constexpr std::uint32_t kNotKept = std::numeric_limits<std::uint32_t>::max();

    double firstOf(std::uint32_t corner) const { return c_.first[c_.pointOf[corner]]; }
    double secondOf(std::uint32_t corner) const { return c_.meeting ? c_.second[c_.pointOf[corner]] : -1.0; }

    void cut(const Triangle& t) {
        int beyondFirst = 0;
        int onFirst = 0;
        int beyondSecond = 0;
        for (const std::uint32_t corner : t) {
            beyondFirst += firstOf(corner) > 0.0 ? 1 : 0;
            onFirst += firstOf(corner) == 0.0 ? 1 : 0;
            beyondSecond += !c_.meeting || secondOf(corner) > 0.0 ? 1 : 0;
        }
        if (beyondFirst == 3 && beyondSecond == 3)
            return;
        // An edge in the first plane may need a corner where the second one crosses it.
        const bool within = beyondFirst == 0 && (onFirst < 2 || !c_.meeting);
        const bool whole = within || (beyondFirst == 3 && beyondSecond == 0);
        if (whole)
            keep(t);
        else
            keepRestOf({cornerOf(t[0]), cornerOf(t[1]), cornerOf(t[2])});
    }

    Corner cornerOf(std::uint32_t corner) const {
        return {c_.mesh.positions[corner], c_.mesh.normals[corner], firstOf(corner), secondOf(corner)};
    }

    void keep(const Triangle& t) {
        Triangle kept{};
        std::ranges::transform(t, kept.begin(), [&](std::uint32_t corner) {
            if (kept_[corner] == kNotKept)
                kept_[corner] = add(c_.mesh.positions[corner], c_.mesh.normals[corner]);
            return kept_[corner];
        });
        rest_.triangles.push_back(kept);
    }

    std::uint32_t add(const Vec3& position, const Vec3& normal) {
        rest_.positions.push_back(position);
        rest_.normals.push_back(normal);
        return static_cast<std::uint32_t>(rest_.positions.size() - 1);
    }

    /// What is not beyond the first plane stays; of the other piece what is not beyond the second.
    void keepRestOf(const Polygon& triangle) {
        auto [within, beyond] = parted(triangle, &Corner::first);
        if (c_.meeting) {
            addMeetingCorner(within);
            addPolygon(parted(beyond, &Corner::second).first);
        }
        // Of a triangle that only touches the plane from beyond, no more than a line would stay.
        if (beyond.empty() || std::ranges::any_of(within, [](const Corner& c) { return c.first < 0.0; }))
            addPolygon(within);
    }

    std::pair<Polygon, Polygon> parted(const Polygon& polygon, double Corner::* beyond) const {
        std::pair<Polygon, Polygon> sides;
        for (std::size_t i = 0; i < polygon.size(); ++i) {
            const Corner& p = polygon[i];
            const Corner& q = polygon[(i + 1) % polygon.size()];
            (p.*beyond > 0.0 ? sides.second : sides.first).push_back(p);
            if ((p.*beyond > 0.0) == (q.*beyond > 0.0))
                continue;
            const Corner between = crossing(p, q, beyond);
            sides.first.push_back(between);
            sides.second.push_back(between);
        }
        return sides;
    }

    /// The point where an edge meets a plane, the same whichever way it is walked.
    Corner crossing(const Corner& from, const Corner& to, double Corner::* beyond) const {
        const bool turn = comesBefore(to.at, from.at);
        const Corner& p = turn ? to : from;
        const Corner& q = turn ? from : to;
        const double t = p.*beyond / (p.*beyond - q.*beyond);
        const auto between = [t](const auto& a, const auto& b) { return a * (1.0 - t) + b * t; };
        const Vec3 normal = between(p.normal, q.normal);
        Corner corner{between(p.at, q.at), length(normal) > 0.0 ? normalized(normal) : p.normal,
                      between(p.first, q.first), between(p.second, q.second)};
        corner.*beyond = 0.0;
        if (std::abs(corner.second) < kOnPlaneMm)
            corner.second = 0.0;
        if (c_.meeting && corner.first == 0.0 && corner.second == 0.0)
            corner.at = c_.meeting->nearestTo(corner.at);
        return corner;
    }

    /// Where the line in which the planes meet crosses the cut edge of a piece that stays, the other side of
    /// that edge has a corner: this one gets it too, and begins with it.
    void addMeetingCorner(Polygon& polygon) const {
        for (std::size_t i = 0; i < polygon.size(); ++i) {
            const Corner& p = polygon[i];
            const Corner& q = polygon[(i + 1) % polygon.size()];
            if (p.first != 0.0 || q.first != 0.0 || (p.second > 0.0) == (q.second > 0.0))
                continue;
            const Corner meeting = crossing(p, q, &Corner::second);
            std::ranges::rotate(polygon, polygon.begin() + static_cast<std::ptrdiff_t>(i) + 1);
            polygon.insert(polygon.begin(), meeting);
            return;
        }
    }

    void addPolygon(const Polygon& polygon) {
        std::array<std::uint32_t, 8> numbers{};
        const std::size_t count = std::min(polygon.size(), numbers.size());
        for (std::size_t i = 0; i < count && count >= 3; ++i)
            numbers.at(i) = add(polygon[i].at, polygon[i].normal);
        for (std::size_t i = 2; i < count; ++i) {
            const Vec3& a = polygon[0].at;
            const Vec3& b = polygon[i - 1].at;
            const Vec3& c = polygon[i].at;
            if (!(a == b || b == c || c == a))
                rest_.triangles.push_back({numbers[0], numbers.at(i - 1), numbers.at(i)});
        }
    }

    Cutting c_;
    std::vector<std::uint32_t> kept_; ///< For each corner its number in the rest.
    TriangleMesh rest_{};
};

/// The share of a line, as parameters from its start, that lies beyond a plane.
struct Share {
    double from = 1.0;
    double to = 0.0;
};

Share shareBeyond(const CuttingPlane& plane, const Vec3& p, const Vec3& q) {
    const double dp = plane.beyond(p);
    const double dq = plane.beyond(q);
    if (dp <= kOnPlaneMm && dq <= kOnPlaneMm)
        return {};
    if (dp > kOnPlaneMm && dq > kOnPlaneMm)
        return {0.0, 1.0};
    const double crossing = dp / (dp - dq);
    return dp > dq ? Share{0.0, crossing} : Share{crossing, 1.0};
}

EdgeLines cutLines(const EdgeLines& edges, const TakenAway& away) {
    EdgeLines rest;
    const auto add = [&](const Vec3& p, const Vec3& q) {
        const auto start = static_cast<std::uint32_t>(rest.positions.size());
        rest.positions.insert(rest.positions.end(), {p, q});
        rest.lines.push_back({start, start + 1});
    };
    for (const auto& [a, b] : edges.lines) {
        const Vec3& p = edges.positions[a];
        const Vec3& q = edges.positions[b];
        Share gone = shareBeyond(away.first, p, q);
        if (away.second) {
            const Share other = shareBeyond(*away.second, p, q);
            gone = {std::max(gone.from, other.from), std::min(gone.to, other.to)};
        }
        if (gone.from >= gone.to) {
            add(p, q);
            continue;
        }
        if (gone.from > 0.0)
            add(p, p + (q - p) * gone.from);
        if (gone.to < 1.0)
            add(p + (q - p) * gone.to, q);
    }
    return rest;
}

void append(TriangleMesh& all, const TriangleMesh& more) {
    const auto offset = static_cast<std::uint32_t>(all.positions.size());
    all.positions.insert(all.positions.end(), more.positions.begin(), more.positions.end());
    all.normals.insert(all.normals.end(), more.normals.begin(), more.normals.end());
    for (const auto& [a, b, c] : more.triangles)
        all.triangles.push_back({a + offset, b + offset, c + offset});
}

/// Adds the border of a cap, but for what lies in `drawn`: the border of another cap has it already.
void append(EdgeLines& all, const EdgeLines& more, const CuttingPlane* drawn) {
    const auto offset = static_cast<std::uint32_t>(all.positions.size());
    all.positions.insert(all.positions.end(), more.positions.begin(), more.positions.end());
    for (const auto& [a, b] : more.lines)
        if (!drawn || beyondOrOn(*drawn, more.positions[a]) != 0.0 ||
            beyondOrOn(*drawn, more.positions[b]) != 0.0)
            all.lines.push_back({a + offset, b + offset});
}

} // namespace

Cuttable::Cuttable(const PartMesh& mesh) : mesh_{&mesh}, pointOf_{weldedCorners(mesh.faces.positions)} {
    // Points are numbered in the order in which the corners meet them.
    for (std::size_t corner = 0; corner < pointOf_.size(); ++corner)
        if (pointOf_[corner] == points_.size())
            points_.push_back(mesh.faces.positions[corner]);
}

DrawnMesh Cuttable::cut(const TakenAway& away) const {
    const std::vector<double> first = beyondOf(points_, away.first);
    const std::vector<double> second = away.second ? beyondOf(points_, *away.second) : std::vector<double>{};
    std::optional<MeetingLine> meeting;
    if (away.second)
        meeting.emplace(away.first, *away.second);
    FaceCutter faces{{mesh_->faces, pointOf_, first, second, meeting}};
    DrawnMesh drawn{.body = {std::move(faces).rest(), cutLines(mesh_->edges, away)}};

    std::vector<Loop> loops = loopsAcross({mesh_->faces.triangles, pointOf_, points_, first});
    if (meeting)
        loops = partsBeyond(loops, *away.second, *meeting);
    Cap cap = capOver(loops, away.first.normal);
    drawn.caps = std::move(cap.face);
    drawn.cutOutline = std::move(cap.outline);
    if (meeting) {
        loops = loopsAcross({mesh_->faces.triangles, pointOf_, points_, second});
        cap = capOver(partsBeyond(loops, away.first, *meeting), away.second->normal);
        append(drawn.caps, cap.face);
        append(drawn.cutOutline, cap.outline, &away.first);
    }
    return drawn;
}

DrawnMesh cutMesh(const PartMesh& mesh, const TakenAway& away) {
    return Cuttable{mesh}.cut(away);
}

double areaOf(const TriangleMesh& mesh) {
    double twofold = 0.0;
    for (const auto& [a, b, c] : mesh.triangles)
        twofold +=
            length(cross(mesh.positions[b] - mesh.positions[a], mesh.positions[c] - mesh.positions[a]));
    return twofold / 2.0;
}

} // namespace gapwise
