#include "geometry/solids/tools.h"

#include "geometry/base/overloaded.h"
#include "geometry/shape/inside.h"
#include "geometry/solids/stamps.h"

#include <BRepBuilderAPI_MakeFace.hxx>
#include <BRepBuilderAPI_MakePolygon.hxx>
#include <BRepBuilderAPI_Transform.hxx>
#include <BRepPrimAPI_MakeBox.hxx>
#include <BRepPrimAPI_MakeCylinder.hxx>
#include <BRepPrimAPI_MakePrism.hxx>
#include <BRepPrimAPI_MakeRevol.hxx>
#include <TopoDS_Face.hxx>
#include <TopoDS_Shape.hxx>
#include <algorithm>
#include <array>
#include <cmath>
#include <gp_Ax1.hxx>
#include <gp_Ax2.hxx>
#include <gp_Trsf.hxx>
#include <numbers>
#include <vector>

namespace gapwise {

namespace {

constexpr double kPi = std::numbers::pi;

gp_Ax1 shaft() {
    return {gp_Pnt{0.0, 0.0, 0.0}, gp_Dir{0.0, 0.0, 1.0}};
}

/// Clockwise about the axis, looking at the reference face.
TopoDS_Shape turned(const TopoDS_Shape& shape, double clockwise) {
    gp_Trsf turn;
    turn.SetRotation(shaft(), -clockwise);
    return BRepBuilderAPI_Transform{shape, turn, true}.Shape();
}

TopoDS_Shape cylinder(double diameter, const gp_Pnt& from, const gp_Pnt& to) {
    const gp_Vec way{from, to};
    // The seam is turned out of the planes through the axis and square to it, where other faces meet.
    gp_Ax2 axes{from, gp_Dir{way}};
    axes.Rotate(gp_Ax1{from, gp_Dir{way}}, 0.7);
    return BRepPrimAPI_MakeCylinder{axes, diameter / 2.0, way.Magnitude()}.Shape();
}

TopoDS_Shape block(const Span& x, const Span& y, const Span& z) {
    return BRepPrimAPI_MakeBox{gp_Pnt{x.from, y.from, z.from}, gp_Pnt{x.to, y.to, z.to}}.Shape();
}

TopoDS_Face quad(const std::array<gp_Pnt, 4>& corners) {
    BRepBuilderAPI_MakePolygon polygon;
    const gp_Pnt* last = nullptr;
    for (const gp_Pnt& corner : corners) {
        if (last == nullptr || last->Distance(corner) > 1e-7)
            polygon.Add(corner);
        last = &corner;
    }
    polygon.Close();
    return BRepBuilderAPI_MakeFace{polygon.Wire()}.Face();
}

/// The face between corners at one z, stretched along Z.
TopoDS_Shape prism(const std::vector<gp_Pnt>& corners, const Span& z) {
    BRepBuilderAPI_MakePolygon polygon;
    for (const gp_Pnt& corner : corners)
        polygon.Add(corner);
    polygon.Close();
    const TopoDS_Face face = BRepBuilderAPI_MakeFace{polygon.Wire()}.Face();
    return BRepPrimAPI_MakePrism{face, gp_Vec{0.0, 0.0, z.length()}}.Shape();
}

TopoDS_Shape hexagonal(const HexHole& hole) {
    const double corner = hole.widthMm / std::numbers::sqrt3;
    std::vector<gp_Pnt> corners;
    for (int k = 0; k < 6; ++k)
        corners.emplace_back(corner * std::sin(k * kPi / 3.0),
                             hole.circleRadiusMm + corner * std::cos(k * kPi / 3.0), hole.z.from);
    return prism(corners, hole.z);
}

TopoDS_Shape plate(const Vane& vane) {
    const auto [inner, outer] = lineOf(vane);
    const Vec3 way = normalized(outer - inner);
    const Vec3 across = Vec3{way.y, -way.x, 0.0} * (vane.thicknessMm / 2.0);
    std::vector<gp_Pnt> corners;
    for (const Vec3& corner : {inner - across, inner + across, outer + across, outer - across})
        corners.emplace_back(corner.x, corner.y, vane.z.from);
    return prism(corners, vane.z);
}

/// Centred on +Y.
TopoDS_Shape wedge(const Sector& sector) {
    const TopoDS_Face face =
        quad({gp_Pnt{0.0, sector.r.from, sector.z.from}, gp_Pnt{0.0, sector.r.to, sector.z.from},
              gp_Pnt{0.0, sector.r.to, sector.z.to}, gp_Pnt{0.0, sector.r.from, sector.z.to}});
    const double angle = radians(sector.angle);
    return BRepPrimAPI_MakeRevol{turned(face, angle / 2.0), shaft(), angle}.Shape();
}

TopoDS_Shape ringOf(const Groove& groove) {
    const Span& z = groove.z;
    const TopoDS_Face face =
        quad({gp_Pnt{0.0, groove.bore.atFrom / 2.0, z.from}, gp_Pnt{0.0, groove.outside.atFrom / 2.0, z.from},
              gp_Pnt{0.0, groove.outside.atTo / 2.0, z.to}, gp_Pnt{0.0, groove.bore.atTo / 2.0, z.to}});
    // Its seam lies away from that of the body (97.3°) and from every drawn angle.
    return BRepPrimAPI_MakeRevol{turned(face, 1.2), shaft()}.Shape();
}

/// Two openings, one in each half of the width, and the slit between the lands that lets the ends part.
std::vector<TopoDS_Shape> jointOf(const SteppedJoint& joint, const Tube& body) {
    const double half = joint.overlapMm / 2.0;
    const double opening = joint.gapMm / 2.0;
    const double slit = std::min(joint.gapMm / 2.0, body.z.length() / 20.0) / 2.0;
    const double beyond = body.z.length();
    const double middle = body.z.middle();
    const Span across{std::max(0.0, body.r.from - 1.0), body.r.to + 1.0};
    const auto part = [&](const Span& x, const Span& z) { return block(x, across, z); };
    return {part({half - opening, half + opening}, {middle - slit, body.z.to + beyond}),
            part({-half - opening, -half + opening}, {body.z.from - beyond, middle + slit}),
            part({-half + opening, half - opening}, {middle - slit, middle + slit})};
}

std::vector<TopoDS_Shape> formAtIndex(const Feature& feature, const Tube& body) {
    const auto one = [](const TopoDS_Shape& shape) { return std::vector<TopoDS_Shape>{shape}; };
    return std::visit(Overloaded{
                          [&](const RadialHole& hole) {
                              return one(cylinder(hole.diameterMm, {hole.asideMm, hole.r.from, hole.zMm},
                                                  {hole.asideMm, hole.r.to, hole.zMm}));
                          },
                          [&](const AxialHole& hole) {
                              return one(cylinder(hole.diameterMm, {0.0, hole.circleRadiusMm, hole.z.from},
                                                  {0.0, hole.circleRadiusMm, hole.z.to}));
                          },
                          [&](const InclinedHole& hole) {
                              return one(cylinder(hole.diameterMm, {0.0, hole.fromR, hole.fromZ},
                                                  {0.0, hole.toR, hole.toZ}));
                          },
                          [&](const Slot& slot) {
                              const double half = slot.widthMm / 2.0;
                              return one(block({slot.asideMm - half, slot.asideMm + half}, slot.r, slot.z));
                          },
                          [&](const HexHole& hole) { return one(hexagonal(hole)); },
                          [&](const Vane& vane) { return one(plate(vane)); },
                          [&](const Sector& sector) { return one(wedge(sector)); },
                          [&](const Groove& groove) { return one(ringOf(groove)); },
                          [&](const SteppedJoint& joint) { return jointOf(joint, body); },
                          [&](const ArrowMark& arrow) { return one(arrowSolid(arrow, feature.does)); },
                          [&](const LetterMark& letters) { return one(lettersSolid(letters, feature.does)); },
                      },
                      feature.form);
}

} // namespace

std::vector<TopoDS_Shape> toolsOf(const Shape& shape, std::size_t feature) {
    const Feature& made = shape.features[feature];
    const std::vector<TopoDS_Shape> atIndex = formAtIndex(made, tubeAround(shape));
    std::vector<TopoDS_Shape> tools;
    for (int k = 0; k < made.count; ++k) {
        const double clockwise = radians(made.offset) + 2.0 * kPi * k / made.count;
        for (const TopoDS_Shape& solid : atIndex)
            tools.push_back(turned(solid, clockwise));
    }
    return tools;
}

} // namespace gapwise
