#include "lathe.h"

#include <cmath>
#include <numbers>

namespace gapwise::lathe {

namespace {

struct RZ {
    double r = 0.0;
    double z = 0.0;
};

/// Builds one ring station by station around the turn.
class Turner {
public:
    Turner(PartMesh& mesh, const Ring& ring, int sides) : mesh_{mesh}, ring_{ring}, sides_{sides} {
        // Counter-clockwise in the (r, z) half plane seen with z to the right and r up … outward is to the
        // right of each side when the profile is walked so.
        profile_ = {{ring.boreRadius, ring.zFrom},
                    {ring.boreRadius, ring.zTo},
                    {ring.outerRadius, ring.zTo},
                    {ring.outerRadius, ring.zFrom}};
    }

    void build() {
        for (std::size_t side = 0; side < profile_.size(); ++side)
            buildSide(profile_[side], profile_[(side + 1) % profile_.size()]);
        if (ring_.gapDeg > 0.0) {
            buildEnd(0, 1.0);
            buildEnd(sides_, -1.0);
        }
    }

private:
    double angleAt(int station) const {
        const double gap = ring_.gapDeg * std::numbers::pi / 180.0;
        return gap / 2.0 + (2.0 * std::numbers::pi - gap) * station / sides_;
    }

    /// Clockwise from +Y looking against +Z, as clocks run.
    Vec3 at(const RZ& p, int station) const {
        const double angle = angleAt(ring_.gapDeg > 0.0 ? station : station % sides_);
        return {p.r * std::sin(angle), p.r * std::cos(angle), p.z};
    }

    std::uint32_t add(const Vec3& position, const Vec3& normal) {
        mesh_.faces.positions.push_back(position);
        mesh_.faces.normals.push_back(normal);
        return static_cast<std::uint32_t>(mesh_.faces.positions.size() - 1);
    }

    void buildSide(const RZ& a, const RZ& b) {
        const double dr = b.r - a.r;
        const double dz = b.z - a.z;
        const double size = std::hypot(dr, dz);
        if (size == 0.0 || (a.r == 0.0 && b.r == 0.0))
            return;
        for (int station = 0; station < sides_; ++station) {
            const auto normalAt = [&](int s) {
                const double angle = angleAt(s);
                const double nr = -dz / size;
                return Vec3{nr * std::sin(angle), nr * std::cos(angle), dr / size};
            };
            const Vec3 n0 = normalAt(station);
            const Vec3 n1 = normalAt(station + 1);
            const std::uint32_t a0 = add(at(a, station), n0);
            const std::uint32_t a1 = add(at(a, station + 1), n1);
            const std::uint32_t b0 = add(at(b, station), n0);
            const std::uint32_t b1 = add(at(b, station + 1), n1);
            if (a.r > 0.0)
                mesh_.faces.triangles.push_back({a0, a1, b1});
            if (b.r > 0.0 || a.r == 0.0)
                mesh_.faces.triangles.push_back({a0, b1, b0});
            if (a.r > 0.0)
                addEdge(at(a, station), at(a, station + 1));
        }
    }

    void buildEnd(int station, double sense) {
        const Vec3 along = at({1.0, 0.0}, station);
        const Vec3 normal = cross({0.0, 0.0, 1.0}, along) * sense;
        std::vector<std::uint32_t> corners;
        for (const RZ& p : profile_)
            corners.push_back(add(at(p, station), normal));
        if (sense > 0.0) {
            mesh_.faces.triangles.push_back({corners[0], corners[1], corners[2]});
            mesh_.faces.triangles.push_back({corners[0], corners[2], corners[3]});
        } else {
            mesh_.faces.triangles.push_back({corners[0], corners[2], corners[1]});
            mesh_.faces.triangles.push_back({corners[0], corners[3], corners[2]});
        }
        for (std::size_t i = 0; i < profile_.size(); ++i)
            addEdge(at(profile_[i], station), at(profile_[(i + 1) % profile_.size()], station));
    }

    void addEdge(const Vec3& from, const Vec3& to) {
        const auto start = static_cast<std::uint32_t>(mesh_.edges.positions.size());
        mesh_.edges.positions.push_back(from);
        mesh_.edges.positions.push_back(to);
        mesh_.edges.lines.push_back({start, start + 1});
    }

    PartMesh& mesh_;
    Ring ring_;
    int sides_;
    std::vector<RZ> profile_{};
};

} // namespace

PartMesh turned(const std::vector<Ring>& rings, int sides) {
    PartMesh mesh;
    for (const Ring& ring : rings)
        Turner{mesh, ring, sides}.build();
    return mesh;
}

double polygonRingArea(const Ring& ring, int sides) {
    const double perRadius = sides / 2.0 * std::sin(2.0 * std::numbers::pi / sides);
    return perRadius * (ring.outerRadius * ring.outerRadius - ring.boreRadius * ring.boreRadius);
}

} // namespace gapwise::lathe
