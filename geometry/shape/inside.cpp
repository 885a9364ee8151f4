#include "geometry/shape/inside.h"

#include "geometry/base/overloaded.h"
#include "geometry/shape/stroke_font.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <functional>
#include <limits>
#include <numbers>

namespace gapwise {

namespace {

constexpr double kPi = std::numbers::pi;
constexpr double kHuge = std::numeric_limits<double>::max();

bool holds(const Span& span, double value) {
    return value >= span.from && value <= span.to;
}

double along(const Diameter& d, const Span& z, double at) {
    return (d.atFrom + (d.atTo - d.atFrom) * (at - z.from) / z.length()) / 2.0;
}

/// One corner at +Y: the flats look to 30°, 90° and 150° from it.
bool insideHexagon(double width, const Vec3& p) {
    const double half = width / 2.0;
    return std::abs(p.x) <= half && std::abs(p.x * 0.5 + p.y * std::numbers::sqrt3 / 2.0) <= half &&
           std::abs(p.x * 0.5 - p.y * std::numbers::sqrt3 / 2.0) <= half;
}

bool insideOutline(const Outline& outline, const Span& z, const Vec3& p) {
    const double r = std::hypot(p.x, p.y);
    return std::visit(Overloaded{
                          [&](const Diameter& d) { return r < along(d, z, p.z); },
                          [&](const QuarterEllipse& curve) { return r < curve.radiusAt(p.z); },
                          [&](const AcrossFlats& hexagon) { return insideHexagon(hexagon.widthMm, p); },
                      },
                      outline);
}

bool insideRing(const RingBody& ring, const Vec3& p) {
    return holds(ring.z, p.z) && insideOutline(ring.outside, ring.z, p) &&
           !insideOutline(ring.bore, ring.z, p);
}

bool insideInclined(const InclinedHole& hole, const Vec3& p) {
    const Vec3 from{0.0, hole.fromR, hole.fromZ};
    const Vec3 way = Vec3{0.0, hole.toR, hole.toZ} - from;
    const double along = dot(p - from, way) / dot(way, way);
    return along >= 0.0 && along <= 1.0 && length(p - from - way * along) <= hole.diameterMm / 2.0;
}

/// Over the half toward the reference face the opening lies clockwise of the index, over the other half
/// counter-clockwise.
bool insideJoint(const SteppedJoint& joint, double middleZ, const Vec3& p) {
    const double centre = p.z > middleZ ? joint.overlapMm / 2.0 : -joint.overlapMm / 2.0;
    return p.y > 0.0 && std::abs(p.x - centre) <= joint.gapMm / 2.0;
}

/// A corner at +Y of its centre.
bool insideHexagon(const HexHole& hole, const Vec3& p) {
    const double half = hole.widthMm / 2.0;
    const double x = std::abs(p.x);
    const double y = std::abs(p.y - hole.circleRadiusMm);
    return x <= half && x / 2.0 + y * std::numbers::sqrt3 / 2.0 <= half;
}

bool insideVane(const Vane& vane, const Vec3& p) {
    const auto [inner, outer] = lineOf(vane);
    const Vec3 way = outer - inner;
    const Vec3 from{p.x - inner.x, p.y - inner.y, 0.0};
    const double along = dot(from, way) / dot(way, way);
    return along >= 0.0 && along <= 1.0 && length(from - way * along) <= vane.thicknessMm / 2.0;
}

/// `p` turned so that the feature's offset lies at +Y.
bool insideForm(const FeatureForm& form, double middleZ, const Vec3& p) {
    return std::visit(Overloaded{
                          [&](const RadialHole& hole) {
                              return holds(hole.r, p.y) &&
                                     std::hypot(p.x - hole.asideMm, p.z - hole.zMm) <= hole.diameterMm / 2.0;
                          },
                          [&](const AxialHole& hole) {
                              return holds(hole.z, p.z) &&
                                     std::hypot(p.x, p.y - hole.circleRadiusMm) <= hole.diameterMm / 2.0;
                          },
                          [&](const InclinedHole& hole) { return insideInclined(hole, p); },
                          [&](const Slot& slot) {
                              return std::abs(p.x - slot.asideMm) <= slot.widthMm / 2.0 &&
                                     holds(slot.r, p.y) && holds(slot.z, p.z);
                          },
                          [&](const HexHole& hole) { return holds(hole.z, p.z) && insideHexagon(hole, p); },
                          [&](const Vane& vane) { return holds(vane.z, p.z) && insideVane(vane, p); },
                          [&](const Sector& sector) {
                              return std::abs(std::atan2(p.x, p.y)) <= radians(sector.angle) / 2.0 &&
                                     holds(sector.r, std::hypot(p.x, p.y)) && holds(sector.z, p.z);
                          },
                          [&](const Groove& groove) {
                              const double r = std::hypot(p.x, p.y);
                              return holds(groove.z, p.z) && r >= along(groove.bore, groove.z, p.z) &&
                                     r <= along(groove.outside, groove.z, p.z);
                          },
                          [&](const SteppedJoint& joint) { return insideJoint(joint, middleZ, p); },
                          [](const ArrowMark&) { return false; },
                          [](const LetterMark&) { return false; },
                      },
                      form);
}

bool insideFeature(const Feature& feature, double middleZ, const Vec3& p) {
    for (int k = 0; k < feature.count; ++k) {
        const double turn = radians(feature.offset) + 2.0 * kPi * k / feature.count;
        // Clockwise looking at the reference face: the feature's own +Y is (sin, cos).
        const Vec3 turned{p.x * std::cos(turn) - p.y * std::sin(turn),
                          p.x * std::sin(turn) + p.y * std::cos(turn), p.z};
        if (insideForm(feature.form, middleZ, turned))
            return true;
    }
    return false;
}

bool isInside(const Shape& shape, double middleZ, const Vec3& p) {
    bool inside = std::any_of(shape.rings.begin(), shape.rings.end(),
                              [&](const RingBody& ring) { return insideRing(ring, p); });
    for (const Feature& feature : shape.features) {
        const bool adds = feature.does == Feature::Does::Add;
        if (inside != adds && insideFeature(feature, middleZ, p))
            inside = adds;
    }
    return inside;
}

/// Smallest and largest radius of the outline's own curve.
Span reachOf(const Outline& outline, const Span& z) {
    return std::visit(Overloaded{
                          [](const Diameter& d) {
                              const auto [low, high] = std::minmax(d.atFrom, d.atTo);
                              return Span{low / 2.0, high / 2.0};
                          },
                          [&](const QuarterEllipse& curve) {
                              const auto [low, high] =
                                  std::minmax({curve.radiusAt(z.from), curve.radiusAt(z.to)});
                              return Span{low, high};
                          },
                          [](const AcrossFlats& hexagon) {
                              return Span{hexagon.widthMm / 2.0, hexagon.widthMm / std::numbers::sqrt3};
                          },
                      },
                      outline);
}

/// How far the form's middle stands beside its radius, either way.
double asideOf(const FeatureForm& form) {
    return std::abs(
        std::visit(Overloaded{[](const RadialHole& hole) { return hole.asideMm; },
                              [](const Slot& slot) { return slot.asideMm; }, [](const auto&) { return 0.0; }},
                   form));
}

/// How far something added reaches from the axis: its extent, and its corners beside the radius.
Tube reachOf(const Feature& feature) {
    const Extent extent = extentOf(feature.form);
    const double half = extent.widthMm / 2.0;
    if (std::holds_alternative<InclinedHole>(feature.form))
        return {{std::max(0.0, extent.r.from - half), extent.r.to + half}, extent.z};
    const bool round =
        std::holds_alternative<Sector>(feature.form) || std::holds_alternative<Groove>(feature.form);
    const double aside = half + asideOf(feature.form);
    const double out = round ? extent.r.to : std::hypot(extent.r.to, aside);
    // The inner end of a vane stands askew: one of its corners lies further in than its middle.
    const double in = std::holds_alternative<Vane>(feature.form) ? extent.r.from - half : extent.r.from;
    return {{std::max(0.0, in), out}, extent.z};
}

/// Where points are spread to count a volume: as far in as they need be, so that most of them tell something.
struct Field {
    double volume = 0.0;
    std::function<Vec3(double, double, double)> pointAt{}; ///< Of three shares from 0 to 1.
};

Field tubeField(const Tube& tube) {
    const double inner = tube.r.from * tube.r.from;
    const double ring = tube.r.to * tube.r.to - inner;
    const auto pointAt = [=](double outward, double round, double up) {
        const double r = std::sqrt(inner + ring * outward);
        const double turn = 2.0 * kPi * round;
        return Vec3{r * std::sin(turn), r * std::cos(turn), tube.z.from + tube.z.length() * up};
    };
    return {kPi * ring * tube.z.length(), pointAt};
}

/// The box about what is added: a part without rings, like a gasket far off the axis, fills little of a tube.
Field boxField(const Shape& shape) {
    Vec3 low{kHuge, kHuge, kHuge};
    Vec3 high{-kHuge, -kHuge, -kHuge};
    for (const Feature& feature : shape.features) {
        if (feature.does != Feature::Does::Add)
            continue;
        const Tube reach = reachOf(feature);
        const bool wide = std::holds_alternative<Sector>(feature.form) ||
                          std::holds_alternative<Groove>(feature.form) ||
                          std::holds_alternative<Vane>(feature.form) ||
                          std::holds_alternative<InclinedHole>(feature.form) || feature.count > 1;
        const double across =
            wide ? reach.r.to : extentOf(feature.form).widthMm / 2.0 + asideOf(feature.form);
        const double inward = wide ? -reach.r.to : extentOf(feature.form).r.from;
        const double turn = radians(feature.offset);
        for (const double x : {-across, across}) {
            for (const double y : {inward, reach.r.to}) {
                const Vec3 corner{x * std::cos(turn) + y * std::sin(turn),
                                  y * std::cos(turn) - x * std::sin(turn), 0.0};
                low = {std::min(low.x, corner.x), std::min(low.y, corner.y), std::min(low.z, reach.z.from)};
                high = {std::max(high.x, corner.x), std::max(high.y, corner.y), std::max(high.z, reach.z.to)};
            }
        }
    }
    const Vec3 size = high - low;
    const auto pointAt = [=](double right, double back, double up) {
        return low + Vec3{size.x * right, size.y * back, size.z * up};
    };
    return {size.x * size.y * size.z, pointAt};
}

} // namespace

bool isInside(const Shape& shape, const Vec3& point) {
    return isInside(shape, tubeAround(shape).z.middle(), point);
}

Tube tubeAround(const Shape& shape) {
    Tube tube{{kHuge, 0.0}, {kHuge, -kHuge}};
    const auto include = [&](const Tube& other) {
        tube.r = {std::min(tube.r.from, other.r.from), std::max(tube.r.to, other.r.to)};
        tube.z = {std::min(tube.z.from, other.z.from), std::max(tube.z.to, other.z.to)};
    };
    for (const RingBody& ring : shape.rings)
        include({{reachOf(ring.bore, ring.z).from, reachOf(ring.outside, ring.z).to}, ring.z});
    for (const Feature& feature : shape.features) {
        if (feature.does == Feature::Does::Add)
            include(reachOf(feature));
    }
    return tube;
}

double countedVolume(const Shape& shape, int points) {
    assert(points > 0);
    const Tube tube = tubeAround(shape);
    const Field field = shape.rings.empty() ? boxField(shape) : tubeField(tube);
    // Two irrational steps, the plastic number's, and one even one spread the points evenly.
    constexpr double kFirst = 0.7548776662466927;
    constexpr double kSecond = 0.5698402909980532;
    int inside = 0;
    for (int i = 0; i < points; ++i) {
        const Vec3 point =
            field.pointAt(std::fmod(i * kFirst, 1.0), std::fmod(i * kSecond, 1.0), (i + 0.5) / points);
        inside += isInside(shape, tube.z.middle(), point) ? 1 : 0;
    }
    return field.volume * inside / points;
}

double omittedVolume(const Shape& shape) {
    double volume = 0.0;
    for (const EdgeBreak& edge : shape.edges) {
        const bool round = edge.kind == EdgeBreak::Kind::Round;
        const double alongZ = round ? edge.sizeMm : edge.sizeMm / std::tan(radians(edge.chamferAngle));
        volume += kPi * edge.diameterMm * edge.sizeMm * alongZ / 2.0;
    }
    for (const Feature& feature : shape.features) {
        if (const auto* const arrow = std::get_if<ArrowMark>(&feature.form))
            volume += feature.count * arrow->r.length() * arrow->widthMm * arrow->depthMm;
        if (const auto* const letters = std::get_if<LetterMark>(&feature.form))
            volume += feature.count * static_cast<double>(letters->text.size()) * letters->heightMm *
                      letters->heightMm * letters->depthMm;
    }
    return volume;
}

} // namespace gapwise
