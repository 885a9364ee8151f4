#include "geometry/shape/possible.h"

#include "geometry/base/overloaded.h"
#include "geometry/shape/stroke_font.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <fmt/format.h>
#include <numbers>

namespace gapwise {

namespace {

/// Lengths that agree within this are the same, in mm.
constexpr double kSame = 1e-6;
/// Nothing in a cartridge is longer, in mm: a guard against slipped units.
constexpr double kLongest = 5000.0;
constexpr int kMostInstances = 360;

class Demands {
public:
    explicit Demands(std::string where) : where_{std::move(where)} {}

    void hold(bool holds, std::string_view below, std::string found, std::string_view allowed) {
        if (!holds)
            errors_.push_back({fmt::format("{}{}", where_, below), std::move(found), std::string{allowed}});
    }
    void positive(double value, std::string_view below) {
        hold(value > kSame && value <= kLongest, below, fmt::format("{}", value),
             fmt::format("a length above 0, at most {} mm", kLongest));
    }
    void ascends(const Span& span, std::string_view below) {
        const bool finite = std::abs(span.from) <= kLongest && std::abs(span.to) <= kLongest;
        hold(finite && span.length() > kSame, below, fmt::format("[{}, {}]", span.from, span.to),
             "[from, to] with from < to");
    }
    void radii(const Span& span, std::string_view below) {
        ascends(span, below);
        hold(span.from >= 0.0, below, fmt::format("[{}, {}]", span.from, span.to), "radii of at least 0");
    }
    void inPlace(double value, std::string_view below) {
        hold(std::abs(value) <= kLongest, below, fmt::format("{}", value),
             fmt::format("a number between -{0} and {0}", kLongest));
    }

    Errors take() { return std::move(errors_); }

private:
    std::string where_;
    Errors errors_{};
};

void checkCurve(const QuarterEllipse& curve, const Span& z, std::string_view below, Demands& demands) {
    const auto [low, high] = std::minmax({curve.z0, curve.z0 + curve.z1});
    demands.hold(std::abs(curve.r1) > kSame && std::abs(curve.z1) > kSame, below,
                 fmt::format("half axes {} and {}", curve.r1, curve.z1), "half axes other than 0");
    demands.hold(z.from >= low - kSame && z.to <= high + kSame, below,
                 fmt::format("a curve over z {}…{}", low, high),
                 fmt::format("a curve that reaches over the ring's z {}…{}", z.from, z.to));
}

/// Radius of the outline; of a hexagon that of its flats.
double radiusAt(const Outline& outline, const Span& span, double z) {
    return std::visit(Overloaded{
                          [&](const Diameter& d) {
                              const double share = (z - span.from) / span.length();
                              return (d.atFrom + (d.atTo - d.atFrom) * share) / 2.0;
                          },
                          [&](const QuarterEllipse& curve) { return curve.radiusAt(z); },
                          [&](const AcrossFlats& hexagon) { return hexagon.widthMm / 2.0; },
                      },
                      outline);
}

void checkOutline(const Outline& outline, const Span& z, std::string_view below, Demands& demands) {
    if (const auto* const curve = std::get_if<QuarterEllipse>(&outline))
        checkCurve(*curve, z, below, demands);
    for (const double at : {z.from, z.to}) {
        const double radius = radiusAt(outline, z, at);
        demands.hold(radius >= 0.0 && radius <= kLongest, below, fmt::format("radius {}", radius),
                     "a radius of at least 0");
    }
}

void checkRing(const RingBody& ring, std::string_view below, Demands& demands) {
    const auto key = [&](std::string_view name) { return fmt::format("{}/{}", below, name); };
    demands.ascends(ring.z, key("z_mm"));
    if (ring.z.length() <= kSame)
        return;
    checkOutline(ring.bore, ring.z, key("bore_mm"), demands);
    checkOutline(ring.outside, ring.z, key("outside_mm"), demands);
    // A hexagon in the bore reaches further out at its corners than at its flats.
    const double corners = std::holds_alternative<AcrossFlats>(ring.bore) ? 2.0 / std::numbers::sqrt3 : 1.0;
    const auto wall = [&](double z) {
        return radiusAt(ring.outside, ring.z, z) - corners * radiusAt(ring.bore, ring.z, z);
    };
    // Where the outlines run into each other at one end they may touch; between the ends they may not.
    const double middle = ring.z.middle();
    const bool crosses = wall(middle) <= kSame || wall(ring.z.from) < -kSame || wall(ring.z.to) < -kSame;
    demands.hold(!crosses, key("bore_mm"),
                 fmt::format("a bore of {} mm in an outside of {} mm",
                             2.0 * radiusAt(ring.bore, ring.z, middle),
                             2.0 * radiusAt(ring.outside, ring.z, middle)),
                 "a bore smaller than the outside");
}

void checkEdge(const EdgeBreak& edge, std::string_view below, Demands& demands) {
    demands.positive(edge.diameterMm, fmt::format("{}/diameter_mm", below));
    demands.inPlace(edge.zMm, fmt::format("{}/z_mm", below));
    const bool round = edge.kind == EdgeBreak::Kind::Round;
    demands.positive(edge.sizeMm, fmt::format("{}/{}", below, round ? "radius_mm" : "leg_mm"));
    demands.hold(round || (edge.chamferAngle.value > 1.0 && edge.chamferAngle.value < 89.0),
                 fmt::format("{}/angle_deg", below), fmt::format("{}", edge.chamferAngle.value),
                 "an angle between 1 and 89");
}

void checkBlades(const Blades& blades, std::string_view below, Demands& demands) {
    const auto key = [&](std::string_view name) { return fmt::format("{}/{}", below, name); };
    demands.hold(blades.count >= 1 && blades.count <= kMostInstances, key("count"),
                 fmt::format("{}", blades.count), fmt::format("1 to {}", kMostInstances));
    demands.positive(blades.thicknessMm, key("thickness_mm"));
    demands.hold(std::abs(blades.zTo - blades.zFrom) > kSame && std::abs(blades.zFrom) <= kLongest &&
                     std::abs(blades.zTo) <= kLongest,
                 key("z_mm"), fmt::format("[{}, {}]", blades.zFrom, blades.zTo), "two different z");
    demands.hold(blades.reach > 0.0 && blades.reach <= 1.0, key("reach"), fmt::format("{}", blades.reach),
                 "above 0, at most 1");
    demands.hold(std::abs(blades.lean.value) <= 180.0, key("lean_deg"), fmt::format("{}", blades.lean.value),
                 "-180 to 180");
    for (const auto* const curve : {&blades.hub, &blades.edge})
        demands.hold(std::abs(curve->r1) > kSame && std::abs(curve->z1) > kSame,
                     key(curve == &blades.hub ? "hub" : "edge"),
                     fmt::format("half axes {} and {}", curve->r1, curve->z1), "half axes other than 0");
}

void checkJoint(const SteppedJoint& joint, std::string_view below, Demands& demands) {
    demands.positive(joint.gapMm, fmt::format("{}/gap_mm", below));
    demands.hold(joint.overlapMm > joint.gapMm && joint.overlapMm <= kLongest,
                 fmt::format("{}/overlap_mm", below), fmt::format("{}", joint.overlapMm),
                 "an overlap larger than the gap, so that no straight way leads through");
}

void checkLetters(const LetterMark& letters, std::string_view below, Demands& demands) {
    const auto key = [&](std::string_view name) { return fmt::format("{}/{}", below, name); };
    demands.positive(letters.heightMm, key("height_mm"));
    demands.positive(letters.depthMm, key("depth_mm"));
    demands.inPlace(letters.radiusMm, key("radius_mm"));
    demands.inPlace(letters.faceZMm, key("face_z_mm"));
    const bool known = std::all_of(letters.text.begin(), letters.text.end(),
                                   [](char letter) { return strokesOf(letter).has_value(); });
    demands.hold(known && letters.text.find_first_not_of(' ') != std::string::npos, key("text"),
                 fmt::format("\"{}\"", letters.text), "capital letters A–Z, digits, hyphens and spaces");
}

void checkHole(const InclinedHole& hole, std::string_view below, Demands& demands) {
    demands.positive(hole.diameterMm, fmt::format("{}/diameter_mm", below));
    demands.inPlace(hole.fromZ, fmt::format("{}/from_rz_mm", below));
    demands.inPlace(hole.toZ, fmt::format("{}/to_rz_mm", below));
    demands.hold(hole.fromR >= 0.0 && hole.fromR <= kLongest, fmt::format("{}/from_rz_mm", below),
                 fmt::format("radius {}", hole.fromR), "a radius of at least 0");
    demands.hold(hole.toR >= 0.0 && hole.toR <= kLongest, fmt::format("{}/to_rz_mm", below),
                 fmt::format("radius {}", hole.toR), "a radius of at least 0");
    demands.hold(std::hypot(hole.toR - hole.fromR, hole.toZ - hole.fromZ) > kSame,
                 fmt::format("{}/to_rz_mm", below), "the point it starts from", "another point");
}

void checkGroove(const Groove& groove, std::string_view below, Demands& demands) {
    demands.ascends(groove.z, fmt::format("{}/z_mm", below));
    for (const auto& [inner, outer] : {std::array{groove.bore.atFrom, groove.outside.atFrom},
                                       std::array{groove.bore.atTo, groove.outside.atTo}})
        demands.hold(inner >= 0.0 && outer > inner + kSame && outer <= kLongest,
                     fmt::format("{}/bore_mm", below), fmt::format("{} in {}", inner, outer),
                     "a bore of at least 0 and smaller than the outside");
}

void checkForm(const FeatureForm& form, std::string_view below, Demands& demands) {
    const auto key = [&](std::string_view name) { return fmt::format("{}/{}", below, name); };
    std::visit(Overloaded{
                   [&](const RadialHole& hole) {
                       demands.positive(hole.diameterMm, key("diameter_mm"));
                       demands.radii(hole.r, key("r_mm"));
                       demands.inPlace(hole.zMm, key("z_mm"));
                       demands.inPlace(hole.asideMm, key("aside_mm"));
                   },
                   [&](const AxialHole& hole) {
                       demands.positive(hole.diameterMm, key("diameter_mm"));
                       demands.hold(hole.circleRadiusMm >= 0.0 && hole.circleRadiusMm <= kLongest,
                                    key("circle_radius_mm"), fmt::format("{}", hole.circleRadiusMm),
                                    "a radius of at least 0");
                       demands.ascends(hole.z, key("z_mm"));
                   },
                   [&](const InclinedHole& hole) { checkHole(hole, below, demands); },
                   [&](const Slot& slot) {
                       demands.positive(slot.widthMm, key("width_mm"));
                       demands.ascends(slot.r, key("r_mm"));
                       demands.ascends(slot.z, key("z_mm"));
                       demands.inPlace(slot.asideMm, key("aside_mm"));
                   },
                   [&](const HexHole& hole) {
                       demands.positive(hole.widthMm, key("width_mm"));
                       demands.hold(hole.circleRadiusMm >= 0.0 && hole.circleRadiusMm <= kLongest,
                                    key("circle_radius_mm"), fmt::format("{}", hole.circleRadiusMm),
                                    "a radius of at least 0");
                       demands.ascends(hole.z, key("z_mm"));
                   },
                   [&](const Vane& vane) {
                       demands.positive(vane.thicknessMm, key("thickness_mm"));
                       demands.radii(vane.r, key("r_mm"));
                       demands.hold(std::abs(vane.lead.value) < 90.0, key("lead_deg"),
                                    fmt::format("{}", vane.lead.value), "an angle between -90 and 90");
                       demands.ascends(vane.z, key("z_mm"));
                   },
                   [&](const Sector& sector) {
                       demands.hold(sector.angle.value > 0.0 && sector.angle.value < 360.0, key("angle_deg"),
                                    fmt::format("{}", sector.angle.value), "an angle between 0 and 360");
                       demands.radii(sector.r, key("r_mm"));
                       demands.ascends(sector.z, key("z_mm"));
                   },
                   [&](const Groove& groove) { checkGroove(groove, below, demands); },
                   [&](const SteppedJoint& joint) { checkJoint(joint, below, demands); },
                   [&](const ArrowMark& arrow) {
                       demands.radii(arrow.r, key("r_mm"));
                       demands.positive(arrow.widthMm, key("width_mm"));
                       demands.positive(arrow.depthMm, key("depth_mm"));
                       demands.inPlace(arrow.faceZMm, key("face_z_mm"));
                   },
                   [&](const LetterMark& letters) { checkLetters(letters, below, demands); },
               },
               form);
}

void checkThread(const Thread& thread, std::string_view below, Demands& demands) {
    demands.positive(thread.diameterMm, fmt::format("{}/diameter_mm", below));
    demands.positive(thread.pitchMm, fmt::format("{}/pitch_mm", below));
    demands.ascends(thread.z, fmt::format("{}/z_mm", below));
}

void checkFeature(const Feature& feature, std::string_view below, Demands& demands) {
    checkForm(feature.form, below, demands);
    demands.hold(feature.count >= 1 && feature.count <= kMostInstances, fmt::format("{}/count", below),
                 fmt::format("{}", feature.count), fmt::format("1 to {}", kMostInstances));
    demands.hold(std::abs(feature.offset.value) <= 360.0, fmt::format("{}/offset_deg", below),
                 fmt::format("{}", feature.offset.value), "-360 to 360");
    demands.hold(!std::holds_alternative<SteppedJoint>(feature.form) ||
                     (feature.does == Feature::Does::Cut && feature.count == 1),
                 fmt::format("{}/does", below), "a stepped joint that is added or repeated",
                 "a stepped joint is cut once");
}

} // namespace

Errors impossibleSizes(const Shape& shape, std::string_view where) {
    Demands demands{std::string{where}};
    for (std::size_t i = 0; i < shape.rings.size(); ++i)
        checkRing(shape.rings[i], fmt::format("/rings/{}", i), demands);
    for (std::size_t i = 0; i < shape.edges.size(); ++i)
        checkEdge(shape.edges[i], fmt::format("/edges/{}", i), demands);
    for (std::size_t i = 0; i < shape.blades.size(); ++i)
        checkBlades(shape.blades[i], fmt::format("/blades/{}", i), demands);
    for (std::size_t i = 0; i < shape.features.size(); ++i)
        checkFeature(shape.features[i], fmt::format("/features/{}", i), demands);
    for (std::size_t i = 0; i < shape.threads.size(); ++i)
        checkThread(shape.threads[i], fmt::format("/threads/{}", i), demands);
    const bool bodied = !shape.rings.empty() ||
                        (!shape.features.empty() && shape.features.front().does == Feature::Does::Add);
    demands.hold(bodied, "", "no rings and no first addition",
                 "at least one ring, or a feature that adds before any cut");
    return demands.take();
}

} // namespace gapwise
