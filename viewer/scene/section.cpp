#include "viewer/scene/section.h"

#include "geometry/datum/pose.h"
#include "viewer/scene/cap.h"
#include "viewer/scene/weld.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>
#include <utility>

namespace gapwise {

namespace {

/// Corners nearer to the plane than this lie on it, and what lies on it stays.
constexpr double kOnPlaneMm = 1e-6;

using Edge = std::pair<std::uint32_t, std::uint32_t>; ///< Welded corners, the smaller one first.

Edge edgeBetween(std::uint32_t a, std::uint32_t b) {
    return {std::min(a, b), std::max(a, b)};
}

/// Where the cut leaves one triangle: it enters at one mesh edge and leaves at another, so that pieces of
/// neighbouring triangles meet exactly.
struct CutPiece {
    Edge from{}, to{};
    Vec3 start{};
};

/// Distances of all corners from the plane: positive is taken away. Corners at one place have one distance,
/// or neighbouring triangles would part.
std::vector<double> distancesOf(const TriangleMesh& mesh, const std::vector<std::uint32_t>& welded,
                                const CuttingPlane& plane) {
    std::vector<std::optional<double>> ofPoint(mesh.positions.size());
    std::vector<double> distances(mesh.positions.size());
    for (std::size_t corner = 0; corner < distances.size(); ++corner) {
        std::optional<double>& distance = ofPoint[welded[corner]];
        if (!distance) {
            const double d = dot(plane.normal, mesh.positions[corner]) - plane.offsetMm;
            distance = std::abs(d) < kOnPlaneMm ? 0.0 : d;
        }
        distances[corner] = *distance;
    }
    return distances;
}

/// Cuts a mesh triangle by triangle.
class MeshCutter {
public:
    MeshCutter(const TriangleMesh& mesh, const CuttingPlane& plane)
        : mesh_{mesh}, welded_{weldedCorners(mesh.positions)}, distances_{distancesOf(mesh, welded_, plane)} {
        for (const auto& triangle : mesh_.triangles)
            cut(triangle);
    }

    TriangleMesh rest() && { return std::move(rest_); }
    const std::vector<CutPiece>& pieces() const { return pieces_; }

private:
    using Triangle = std::array<std::uint32_t, 3>;

    bool stays(std::uint32_t corner) const { return distances_[corner] <= 0.0; }

    std::uint32_t add(const Vec3& position, const Vec3& normal) {
        rest_.positions.push_back(position);
        rest_.normals.push_back(normal);
        return static_cast<std::uint32_t>(rest_.positions.size() - 1);
    }

    std::uint32_t keep(std::uint32_t corner) { return add(mesh_.positions[corner], mesh_.normals[corner]); }

    /// The point where an edge meets the plane, the same whichever way it is walked.
    std::uint32_t crossing(std::uint32_t a, std::uint32_t b) {
        if (welded_[a] > welded_[b])
            std::swap(a, b);
        const double t = distances_[a] / (distances_[a] - distances_[b]);
        const auto between = [t](const Vec3& p, const Vec3& q) { return p * (1.0 - t) + q * t; };
        const Vec3 normal = between(mesh_.normals[a], mesh_.normals[b]);
        return add(between(mesh_.positions[a], mesh_.positions[b]),
                   length(normal) > 0.0 ? normalized(normal) : mesh_.normals[a]);
    }

    void cut(const Triangle& t) {
        const auto staying = std::ranges::count_if(t, [&](std::uint32_t c) { return stays(c); });
        if (staying == 0)
            return;
        if (staying == 3) {
            rest_.triangles.push_back({keep(t[0]), keep(t[1]), keep(t[2])});
            return;
        }
        // Turn the triangle so that its first corner is the one that differs from the other two.
        Triangle turned = t;
        while (stays(turned[0]) != (staying == 1))
            std::ranges::rotate(turned, turned.begin() + 1);
        if (staying == 1)
            keepTip(turned);
        else
            keepBase(turned);
    }

    void keepTip(const Triangle& t) {
        const std::uint32_t ab = crossing(t[0], t[1]);
        const std::uint32_t ca = crossing(t[2], t[0]);
        rest_.triangles.push_back({keep(t[0]), ab, ca});
        // The rest's border runs from ab to ca; the cap's runs against it.
        addPiece({t[2], t[0]}, {t[0], t[1]}, ca);
    }

    void keepBase(const Triangle& t) {
        const std::uint32_t ab = crossing(t[0], t[1]);
        const std::uint32_t ca = crossing(t[2], t[0]);
        const std::uint32_t c = keep(t[2]);
        rest_.triangles.push_back({ab, keep(t[1]), c});
        rest_.triangles.push_back({ab, c, ca});
        addPiece({t[0], t[1]}, {t[2], t[0]}, ab);
    }

    void addPiece(Edge from, Edge to, std::uint32_t start) {
        pieces_.push_back({edgeBetween(welded_[from.first], welded_[from.second]),
                           edgeBetween(welded_[to.first], welded_[to.second]), rest_.positions[start]});
    }

    const TriangleMesh& mesh_;
    std::vector<std::uint32_t> welded_;
    std::vector<double> distances_;
    TriangleMesh rest_{};
    std::vector<CutPiece> pieces_{};
};

/// Joins pieces end to start; what does not close is left out.
std::vector<Loop> loopsOf(const std::vector<CutPiece>& pieces) {
    std::multimap<Edge, const CutPiece*> open;
    for (const CutPiece& piece : pieces)
        open.emplace(piece.from, &piece);
    std::vector<Loop> loops;
    while (!open.empty()) {
        const Edge first = open.begin()->first;
        Loop loop;
        auto next = open.begin();
        Edge at = first;
        do {
            loop.push_back(next->second->start);
            at = next->second->to;
            open.erase(next);
            next = open.find(at);
        } while (at != first && next != open.end());
        if (at == first && loop.size() >= 3)
            loops.push_back(std::move(loop));
    }
    return loops;
}

EdgeLines cutLines(const EdgeLines& edges, const CuttingPlane& plane) {
    EdgeLines rest;
    for (const auto& [a, b] : edges.lines) {
        Vec3 p = edges.positions[a];
        Vec3 q = edges.positions[b];
        const double dp = dot(plane.normal, p) - plane.offsetMm;
        const double dq = dot(plane.normal, q) - plane.offsetMm;
        if (dp > kOnPlaneMm && dq > kOnPlaneMm)
            continue;
        if (dp > kOnPlaneMm || dq > kOnPlaneMm) {
            const Vec3 crossing = p + (q - p) * (dp / (dp - dq));
            (dp > dq ? p : q) = crossing;
        }
        const auto start = static_cast<std::uint32_t>(rest.positions.size());
        rest.positions.push_back(p);
        rest.positions.push_back(q);
        rest.lines.push_back({start, start + 1});
    }
    return rest;
}

} // namespace

CuttingPlane inPartAxes(const SectionPlane& plane, const Pose& pose) {
    const Vec3 normal = directionOf(plane.removed);
    return {.normal = {dot(pose.xAxis, normal), dot(pose.yAxis, normal), dot(pose.zAxis, normal)},
            .offsetMm = -dot(pose.shift, normal)};
}

DrawnMesh cutMesh(const PartMesh& mesh, const CuttingPlane& plane) {
    MeshCutter cutter{mesh.faces, plane};
    Cap cap = capOver(loopsOf(cutter.pieces()), plane.normal);
    return {.body = {std::move(cutter).rest(), cutLines(mesh.edges, plane)},
            .caps = std::move(cap.face),
            .cutOutline = std::move(cap.outline)};
}

double areaOf(const TriangleMesh& mesh) {
    double twofold = 0.0;
    for (const auto& [a, b, c] : mesh.triangles)
        twofold +=
            length(cross(mesh.positions[b] - mesh.positions[a], mesh.positions[c] - mesh.positions[a]));
    return twofold / 2.0;
}

} // namespace gapwise
