#include "geometry/solids/profile.h"

#include "geometry/base/overloaded.h"
#include "geometry/solids/booleans.h"
#include "geometry/solids/edge_breaks.h"

#include <BRepAlgoAPI_Cut.hxx>
#include <BRepAlgoAPI_Fuse.hxx>
#include <BRepBuilderAPI_MakeEdge.hxx>
#include <BRepBuilderAPI_MakeFace.hxx>
#include <BRepBuilderAPI_MakePolygon.hxx>
#include <BRepBuilderAPI_MakeWire.hxx>
#include <BRepBuilderAPI_Transform.hxx>
#include <BRepPrimAPI_MakePrism.hxx>
#include <BRepPrimAPI_MakeRevol.hxx>
#include <ShapeUpgrade_UnifySameDomain.hxx>
#include <TopExp_Explorer.hxx>
#include <TopTools_ListOfShape.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Face.hxx>
#include <TopoDS_Shape.hxx>
#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <gp_Ax1.hxx>
#include <gp_Ax2.hxx>
#include <gp_Elips.hxx>
#include <gp_Pln.hxx>
#include <gp_Trsf.hxx>
#include <numbers>

namespace gapwise {

namespace {

constexpr double kSame = 1e-6;
/// The seam of a revolved face lies where no drawing puts a feature: away from every multiple of 7.5°.
constexpr double kSeamDegrees = 97.3;

bool isHexagon(const Outline& outline) {
    return std::holds_alternative<AcrossFlats>(outline);
}

/// The half plane: r along +Y, z along +Z.
gp_Pnt at(double r, double z) {
    return {0.0, r, z};
}

double radiusAt(const Outline& outline, const Span& span, double z) {
    return std::visit(Overloaded{
                          [&](const Diameter& d) {
                              return (d.atFrom + (d.atTo - d.atFrom) * (z - span.from) / span.length()) / 2.0;
                          },
                          [&](const QuarterEllipse& curve) { return curve.radiusAt(z); },
                          [](const AcrossFlats& hexagon) { return hexagon.widthMm / std::numbers::sqrt3; },
                      },
                      outline);
}

/// The quarter ellipse between two z as an edge.
TopoDS_Edge ellipseEdge(const QuarterEllipse& curve, double fromZ, double toZ) {
    const gp_Dir alongR{0.0, std::copysign(1.0, curve.r1), 0.0};
    const gp_Dir alongZ{0.0, 0.0, std::copysign(1.0, curve.z1)};
    const bool wide = std::abs(curve.r1) >= std::abs(curve.z1);
    const gp_Dir major = wide ? alongR : alongZ;
    const gp_Dir minor = wide ? alongZ : alongR;
    const gp_Ax2 axes{at(curve.r0, curve.z0), major.Crossed(minor), major};
    const auto [small, large] = std::minmax({std::abs(curve.r1), std::abs(curve.z1)});
    const auto parameter = [&](double z) {
        const double t = std::asin(std::clamp((z - curve.z0) / curve.z1, 0.0, 1.0));
        return wide ? t : std::numbers::pi / 2.0 - t;
    };
    const auto [first, last] = std::minmax({parameter(fromZ), parameter(toZ)});
    return BRepBuilderAPI_MakeEdge{gp_Elips{axes, large, small}, first, last}.Edge();
}

TopoDS_Edge outlineEdge(const Outline& outline, const Span& z) {
    if (const auto* const curve = std::get_if<QuarterEllipse>(&outline))
        return ellipseEdge(*curve, z.from, z.to);
    return BRepBuilderAPI_MakeEdge{at(radiusAt(outline, z, z.from), z.from),
                                   at(radiusAt(outline, z, z.to), z.to)}
        .Edge();
}

/// One ring's cross-section.
TopoDS_Face sectionOf(const RingBody& ring) {
    TopTools_ListOfShape edges;
    edges.Append(outlineEdge(ring.bore, ring.z));
    edges.Append(outlineEdge(ring.outside, ring.z));
    for (const double z : {ring.z.from, ring.z.to}) {
        const double inner = radiusAt(ring.bore, ring.z, z);
        const double outer = radiusAt(ring.outside, ring.z, z);
        if (outer - inner > kSame)
            edges.Append(BRepBuilderAPI_MakeEdge{at(inner, z), at(outer, z)}.Edge());
    }
    BRepBuilderAPI_MakeWire wire;
    wire.Add(edges);
    return BRepBuilderAPI_MakeFace{gp_Pln{gp_Pnt{0.0, 0.0, 0.0}, gp_Dir{1.0, 0.0, 0.0}}, wire.Wire()}.Face();
}

/// All cross-sections as one shape: a face for each piece that hangs together.
Result<TopoDS_Shape> unionOf(const std::vector<TopoDS_Face>& sections, std::string_view where) {
    TopTools_ListOfShape arguments;
    TopTools_ListOfShape tools;
    for (const TopoDS_Face& section : sections)
        (arguments.IsEmpty() ? arguments : tools).Append(section);
    if (tools.IsEmpty())
        return TopoDS_Shape{sections.front()};
    BRepAlgoAPI_Fuse fuse;
    fuse.SetArguments(arguments);
    fuse.SetTools(tools);
    fuse.Build();
    if (fuse.HasErrors() || fuse.HasWarnings())
        return Error{fmt::format("{}/rings", where), "cross-sections that the solid builder cannot join",
                     "rings that touch or overlap squarely"};
    ShapeUpgrade_UnifySameDomain unify{fuse.Shape(), true, true, false};
    unify.Build();
    return unify.Shape();
}

TopoDS_Shape revolved(const TopoDS_Face& section) {
    const gp_Ax1 axis{gp_Pnt{0.0, 0.0, 0.0}, gp_Dir{0.0, 0.0, 1.0}};
    gp_Trsf turn;
    turn.SetRotation(axis, -kSeamDegrees * std::numbers::pi / 180.0);
    const TopoDS_Shape turned = BRepBuilderAPI_Transform{section, turn, true}.Shape();
    return BRepPrimAPI_MakeRevol{turned, axis}.Shape();
}

TopoDS_Shape hexagonPrism(double width, const Span& z) {
    BRepBuilderAPI_MakePolygon polygon;
    const double corner = width / std::numbers::sqrt3;
    for (int i = 0; i < 6; ++i) {
        const double turn = std::numbers::pi / 3.0 * i;
        polygon.Add(gp_Pnt{corner * std::sin(turn), corner * std::cos(turn), z.from});
    }
    polygon.Close();
    const TopoDS_Face face = BRepBuilderAPI_MakeFace{polygon.Wire()}.Face();
    return BRepPrimAPI_MakePrism{face, gp_Vec{0.0, 0.0, z.length()}}.Shape();
}

/// A ring with a hexagon inside or outside: what fills the outside less what fills the bore.
Result<TopoDS_Shape> hexagonRing(const RingBody& ring, std::string_view where) {
    const auto filled = [](const Outline& outline, const Span& z) -> TopoDS_Shape {
        if (const auto* const hexagon = std::get_if<AcrossFlats>(&outline))
            return hexagonPrism(hexagon->widthMm, z);
        return revolved(sectionOf({Diameter{}, outline, z}));
    };
    const TopoDS_Shape outside = filled(ring.outside, ring.z);
    const auto* const bore = std::get_if<Diameter>(&ring.bore);
    if (bore != nullptr && std::max(bore->atFrom, bore->atTo) <= kSame)
        return outside;
    const TopoDS_Shape hole = filled(ring.bore, ring.z);
    BRepAlgoAPI_Cut operation{outside, hole};
    const double expected = volumeOf(outside) - volumeOf(hole);
    if (operation.HasErrors() || operation.HasWarnings() ||
        std::abs(volumeOf(operation.Shape()) - expected) > 1e-4 * volumeOf(outside))
        return Error{std::string{where}, "a bore that the solid builder cannot cut",
                     "a bore that lies within the outside over the whole length"};
    return operation.Shape();
}

} // namespace

Result<std::vector<TopoDS_Shape>> ringSolids(const Shape& shape, std::string_view where) {
    std::vector<TopoDS_Shape> solids;
    std::vector<TopoDS_Face> sections;
    for (std::size_t i = 0; i < shape.rings.size(); ++i) {
        const RingBody& ring = shape.rings[i];
        if (!isHexagon(ring.bore) && !isHexagon(ring.outside)) {
            sections.push_back(sectionOf(ring));
            continue;
        }
        Result<TopoDS_Shape> solid = hexagonRing(ring, fmt::format("{}/rings/{}", where, i));
        if (!solid)
            return solid.errors();
        solids.push_back(std::move(solid).value());
    }
    std::vector<TopoDS_Face> faces;
    if (!sections.empty()) {
        const Result<TopoDS_Shape> outline = unionOf(sections, where);
        if (!outline)
            return outline.errors();
        for (TopExp_Explorer pieces{outline.value(), TopAbs_FACE}; pieces.More(); pieces.Next())
            faces.push_back(TopoDS::Face(pieces.Current()));
    }
    const Result<std::vector<TopoDS_Face>> broken = withBrokenEdges(std::move(faces), shape.edges, where);
    if (!broken)
        return broken.errors();
    for (const TopoDS_Face& face : broken.value())
        solids.push_back(revolved(face));
    return solids;
}

} // namespace gapwise
