#include "geometry/solids/blades.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace gapwise {

namespace {

constexpr double kSinkMm = 1.0;
constexpr double kSame = 1e-9;

/// How many even pieces an arc of `turn` radians needs to stay within the deflection: 2 to 200, whole.
double piecesOf(double turn, double radiusMm, double deflectionMm) {
    const double step = 2.0 * std::acos(1.0 - std::min(1.0, deflectionMm / radiusMm));
    return std::clamp(std::ceil(turn / step), 2.0, 200.0);
}

/// Where on the ellipse a z lies: its parameter t in radians, 0 to π/2.
double parameterAt(const QuarterEllipse& curve, double z) {
    return std::asin(std::clamp((z - curve.z0) / curve.z1, 0.0, 1.0));
}

/// The hub curve moved into the hub: its centre lies in the open, so both half axes grow.
QuarterEllipse sunk(const QuarterEllipse& hub) {
    return {hub.r0, hub.r1 + std::copysign(kSinkMm, hub.r1), hub.z0, hub.z1 + std::copysign(kSinkMm, hub.z1)};
}

/// One ruling of the blade: straight from the sunk root over the hub line to the tip, at one z.
struct Station {
    double z = 0.0;
    std::array<double, 3> radii{}; ///< Root, hub, tip.
};

/// Stations of one smooth piece of the tip.
using Panel = std::vector<Station>;

class Layout {
public:
    explicit Layout(const Blades& blades) : blades_{blades}, root_{sunk(blades.hub)} {}

    double end() const { return blades_.zFrom + blades_.reach * (blades_.zTo - blades_.zFrom); }
    double direction() const { return blades_.zTo > blades_.zFrom ? 1.0 : -1.0; }
    double turnPerMm() const { return radians(blades_.lean) / (blades_.zTo - blades_.zFrom); }
    double turnAt(double z) const { return radians(blades_.first) + turnPerMm() * (z - blades_.zFrom); }

    /// Half the thickness as measured square to the radius: more than half where the blade leans.
    double halfWidth(double r) const { return blades_.thicknessMm / 2.0 * std::hypot(1.0, r * turnPerMm()); }

    Station stationAt(double z) const {
        const double hub = blades_.hub.radiusAt(z);
        const double largest = std::max(blades_.edge.r0, blades_.edge.r0 + blades_.edge.r1);
        const bool onInlet = blades_.inletEdgeZ && z >= blades_.inletEdgeZ->from - kSame &&
                             z <= blades_.inletEdgeZ->to + kSame;
        const double tip = onInlet ? largest : blades_.edge.radiusAt(z);
        return {z, {std::min(root_.radiusAt(z), hub), hub, std::max(tip, hub)}};
    }

    /// Between the corners of the tip, in the direction of the blade.
    std::vector<Panel> panels(double deflectionMm) const {
        std::vector<double> breaks{blades_.zFrom, end()};
        for (const double z : {blades_.edge.z0, blades_.edge.z0 + blades_.edge.z1}) {
            if ((z - blades_.zFrom) * direction() > kSame && (end() - z) * direction() > kSame)
                breaks.push_back(z);
        }
        std::sort(breaks.begin(), breaks.end(),
                  [&](double a, double b) { return (b - a) * direction() > 0.0; });
        std::vector<Panel> result;
        for (std::size_t i = 0; i + 1 < breaks.size(); ++i)
            result.push_back(panel({breaks[i], breaks[i + 1]}, deflectionMm));
        return result;
    }

private:
    const Blades& blades_;
    QuarterEllipse root_;

    /// Steps even in the parameter of the curve that bends most here, so that steep ends are followed.
    Panel panel(const std::array<double, 2>& z, double deflectionMm) const {
        const auto [low, high] = std::minmax({blades_.edge.z0, blades_.edge.z0 + blades_.edge.z1});
        const double middle = (z[0] + z[1]) / 2.0;
        const QuarterEllipse& guide = middle > low && middle < high ? blades_.edge : blades_.hub;
        const double from = parameterAt(guide, z[0]);
        const double to = parameterAt(guide, z[1]);
        const double bend = std::max(std::abs(guide.r1), std::abs(guide.z1));
        const double turn = std::abs(turnPerMm() * (z[1] - z[0]));
        const double pieces = std::max(piecesOf(std::abs(to - from), bend, deflectionMm),
                                       piecesOf(turn, blades_.hub.r0, deflectionMm));
        const bool even = std::abs(to - from) < kSame; // beyond the guide's range: a straight piece
        Panel stations;
        stations.push_back(stationAt(z[0]));
        for (double i = 1.0; i < pieces; i += 1.0) {
            const double t = from + (to - from) * i / pieces;
            stations.push_back(
                stationAt(even ? z[0] + (z[1] - z[0]) * i / pieces : guide.z0 + guide.z1 * std::sin(t)));
        }
        stations.push_back(stationAt(z[1]));
        return stations;
    }
};

/// Collects triangles and lines of one blade.
class Sheet {
public:
    explicit Sheet(const Layout& layout) : layout_{layout} {}

    void side(const Panel& panel, double sign) {
        for (std::size_t i = 0; i + 1 < panel.size(); ++i) {
            quad({vertex(panel[i], 0, sign), vertex(panel[i], 2, sign), vertex(panel[i + 1], 2, sign),
                  vertex(panel[i + 1], 0, sign)});
            for (const std::size_t row : {std::size_t{1}, std::size_t{2}})
                line(at(panel[i], row, sign), at(panel[i + 1], row, sign));
        }
    }

    /// Across the thickness along the root (row 0, looking into the hub) or the tip (row 2, away from it).
    void rim(const Panel& panel, std::size_t row) {
        for (std::size_t i = 0; i + 1 < panel.size(); ++i) {
            const Vertex a = rimVertex(panel, i, row);
            const Vertex b = rimVertex(panel, i + 1, row);
            quad({Vertex{at(panel[i], row, -1.0), a.normal}, Vertex{at(panel[i], row, 1.0), a.normal},
                  Vertex{at(panel[i + 1], row, 1.0), b.normal},
                  Vertex{at(panel[i + 1], row, -1.0), b.normal}});
        }
    }

    /// Across the thickness at an end, from root to tip. `axial`: the way it looks along Z.
    void end(const Station& station, double axial) {
        const Vec3 normal{0.0, 0.0, axial};
        quad({Vertex{at(station, 0, -1.0), normal}, Vertex{at(station, 0, 1.0), normal},
              Vertex{at(station, 2, 1.0), normal}, Vertex{at(station, 2, -1.0), normal}});
    }

    void outline(const Station& last) {
        for (const double sign : {-1.0, 1.0})
            line(at(last, 1, sign), at(last, 2, sign));
        across(last);
    }
    void across(const Station& station) { line(at(station, 2, -1.0), at(station, 2, 1.0)); }

    PartMesh take() { return std::move(mesh_); }

private:
    struct Vertex {
        Vec3 position{};
        Vec3 normal{};
    };
    const Layout& layout_;
    PartMesh mesh_{};

    /// Straight from root to tip, so that the hub line lies on the blade's own triangles.
    double widthAt(const Station& station, double r) const {
        const double root = layout_.halfWidth(station.radii[0]);
        const double tip = layout_.halfWidth(station.radii[2]);
        const double height = station.radii[2] - station.radii[0];
        return height < kSame ? root : root + (tip - root) * (r - station.radii[0]) / height;
    }

    Vec3 at(const Station& station, std::size_t row, double sign) const {
        const double turn = layout_.turnAt(station.z);
        const double r = station.radii[row];
        const double w = sign * widthAt(station, r);
        return {r * std::sin(turn) + w * std::cos(turn), r * std::cos(turn) - w * std::sin(turn), station.z};
    }

    Vertex vertex(const Station& station, std::size_t row, double sign) const {
        const double turn = layout_.turnAt(station.z);
        const double slope = station.radii[row] * layout_.turnPerMm();
        const Vec3 normal{std::cos(turn), -std::sin(turn), -slope};
        return {at(station, row, sign), normalized(normal) * sign};
    }

    Vertex rimVertex(const Panel& panel, std::size_t i, std::size_t row) const {
        const Station& before = panel[i == 0 ? 0 : i - 1];
        const Station& after = panel[std::min(i + 1, panel.size() - 1)];
        const double outward = layout_.direction() * (row == 2 ? 1.0 : -1.0);
        const double dr = after.radii[row] - before.radii[row];
        const double dz = after.z - before.z;
        const double turn = layout_.turnAt(panel[i].z);
        const Vec3 normal{dz * std::sin(turn), dz * std::cos(turn), -dr};
        return {{}, normalized(normal) * outward};
    }

    void quad(const std::array<Vertex, 4>& corners) {
        triangle({corners[0], corners[1], corners[2]});
        triangle({corners[0], corners[2], corners[3]});
    }

    void triangle(std::array<Vertex, 3> corners) {
        const Vec3 across =
            cross(corners[1].position - corners[0].position, corners[2].position - corners[0].position);
        if (length(across) < kSame)
            return;
        if (dot(across, corners[0].normal + corners[1].normal + corners[2].normal) < 0.0)
            std::swap(corners[1], corners[2]);
        std::array<std::uint32_t, 3> indices{};
        for (std::size_t i = 0; i < 3; ++i) {
            indices[i] = static_cast<std::uint32_t>(mesh_.faces.positions.size());
            mesh_.faces.positions.push_back(corners[i].position);
            mesh_.faces.normals.push_back(corners[i].normal);
        }
        mesh_.faces.triangles.push_back(indices);
    }

    void line(const Vec3& from, const Vec3& to) {
        if (length(to - from) < kSame)
            return;
        const auto index = static_cast<std::uint32_t>(mesh_.edges.positions.size());
        mesh_.edges.positions.push_back(from);
        mesh_.edges.positions.push_back(to);
        mesh_.edges.lines.push_back({index, index + 1});
    }
};

/// The place of blade k of n: turned clockwise looking at +Z.
Pose turnedTo(int k, int n) {
    const double turn = 2.0 * std::numbers::pi * k / n;
    return {{std::cos(turn), -std::sin(turn), 0.0}, {std::sin(turn), std::cos(turn), 0.0}};
}

PartMesh oneBlade(const Layout& layout, double deflectionMm) {
    Sheet sheet{layout};
    const std::vector<Panel> panels = layout.panels(deflectionMm);
    for (const Panel& panel : panels) {
        sheet.side(panel, -1.0);
        sheet.side(panel, 1.0);
        sheet.rim(panel, 0);
        sheet.rim(panel, 2);
        sheet.across(panel.back());
    }
    sheet.end(panels.front().front(), -layout.direction());
    sheet.end(panels.back().back(), layout.direction());
    sheet.outline(panels.back().back());
    return sheet.take();
}

/// Volume and moment of what stands free of the hub: thickness times the area of the leaning surface.
void addFreePart(const Layout& layout, BladeMesh& total) {
    constexpr int kSlices = 16;
    for (const Panel& panel : layout.panels(1e-4)) {
        for (std::size_t i = 0; i + 1 < panel.size(); ++i) {
            const Station middle = layout.stationAt((panel[i].z + panel[i + 1].z) / 2.0);
            const double dz = std::abs(panel[i + 1].z - panel[i].z);
            const double dr = (middle.radii[2] - middle.radii[1]) / kSlices;
            const double turn = layout.turnAt(middle.z);
            for (int slice = 0; slice < kSlices; ++slice) {
                const double r = middle.radii[1] + dr * (slice + 0.5);
                const double volume = 2.0 * layout.halfWidth(r) * dr * dz;
                total.freeVolumeMm3 += volume;
                total.freeMoment =
                    total.freeMoment + Vec3{r * std::sin(turn), r * std::cos(turn), middle.z} * volume;
            }
        }
    }
}

} // namespace

void append(PartMesh& mesh, const PartMesh& more) {
    const auto faceBase = static_cast<std::uint32_t>(mesh.faces.positions.size());
    const auto edgeBase = static_cast<std::uint32_t>(mesh.edges.positions.size());
    const auto addAll = [](auto& to, const auto& from) { to.insert(to.end(), from.begin(), from.end()); };
    addAll(mesh.faces.positions, more.faces.positions);
    addAll(mesh.faces.normals, more.faces.normals);
    addAll(mesh.edges.positions, more.edges.positions);
    for (const auto& [a, b, c] : more.faces.triangles)
        mesh.faces.triangles.push_back({a + faceBase, b + faceBase, c + faceBase});
    for (const auto& [a, b] : more.edges.lines)
        mesh.edges.lines.push_back({a + edgeBase, b + edgeBase});
}

std::vector<TriangleMesh> bladeSheets(const Blades& blades, double deflectionMm) {
    const TriangleMesh one = oneBlade(Layout{blades}, deflectionMm).faces;
    std::vector<TriangleMesh> all;
    for (int k = 0; k < blades.count; ++k)
        all.push_back(moved(one, turnedTo(k, blades.count)));
    return all;
}

BladeMesh bladeMesh(const Blades& blades, double deflectionMm) {
    const Layout layout{blades};
    const PartMesh one = oneBlade(layout, deflectionMm);
    BladeMesh single;
    addFreePart(layout, single);
    BladeMesh all;
    for (int k = 0; k < blades.count; ++k) {
        const Pose pose = turnedTo(k, blades.count);
        append(all.mesh, {moved(one.faces, pose), moved(one.edges, pose)});
        all.freeVolumeMm3 += single.freeVolumeMm3;
        all.freeMoment = all.freeMoment + pose.direction(single.freeMoment);
    }
    return all;
}

} // namespace gapwise
