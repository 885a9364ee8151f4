#include "geometry/solids/edge_breaks.h"

#include <BRepAdaptor_Curve.hxx>
#include <BRepFilletAPI_MakeFillet2d.hxx>
#include <BRep_Tool.hxx>
#include <ChFi2d_ConstructionError.hxx>
#include <TopExp.hxx>
#include <TopExp_Explorer.hxx>
#include <TopTools_IndexedDataMapOfShapeListOfShape.hxx>
#include <TopTools_ListOfShape.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Edge.hxx>
#include <TopoDS_Face.hxx>
#include <TopoDS_Vertex.hxx>
#include <cmath>
#include <fmt/format.h>
#include <optional>

namespace gapwise {

namespace {

/// A named corner may lie this far from the real one, in mm.
constexpr double kNear = 2e-3;

std::optional<TopoDS_Vertex> cornerAt(const TopoDS_Face& section, double r, double z) {
    for (TopExp_Explorer corners{section, TopAbs_VERTEX}; corners.More(); corners.Next()) {
        const TopoDS_Vertex corner = TopoDS::Vertex(corners.Current());
        const gp_Pnt point = BRep_Tool::Pnt(corner);
        if (std::hypot(point.Y() - r, point.Z() - z) <= kNear)
            return corner;
    }
    return std::nullopt;
}

/// True for a line that runs more along the axis than along the radius.
bool runsAlongZ(const TopoDS_Edge& edge) {
    const BRepAdaptor_Curve curve{edge};
    const gp_Pnt from = curve.Value(curve.FirstParameter());
    const gp_Pnt to = curve.Value(curve.LastParameter());
    return std::abs(to.Z() - from.Z()) > std::abs(to.Y() - from.Y());
}

/// The chamfer takes `sizeMm` off the line along the radius and its other leg off the line along the axis.
void addChamfer(BRepFilletAPI_MakeFillet2d& maker, const TopoDS_Face& section, const TopoDS_Vertex& corner,
                const EdgeBreak& edge) {
    TopTools_IndexedDataMapOfShapeListOfShape edgesOf;
    TopExp::MapShapesAndAncestors(section, TopAbs_VERTEX, TopAbs_EDGE, edgesOf);
    const TopTools_ListOfShape& both = edgesOf.FindFromKey(corner);
    const TopoDS_Edge first = TopoDS::Edge(both.First());
    const TopoDS_Edge second = TopoDS::Edge(both.Last());
    const double alongZ = edge.sizeMm / std::tan(radians(edge.chamferAngle));
    const bool firstAlongZ = runsAlongZ(first);
    maker.AddChamfer(first, second, firstAlongZ ? alongZ : edge.sizeMm, firstAlongZ ? edge.sizeMm : alongZ);
}

/// Nothing when the corner is not on this section.
std::optional<Result<TopoDS_Face>> brokenAt(const TopoDS_Face& section, const EdgeBreak& edge,
                                            const std::string& where) {
    const std::optional<TopoDS_Vertex> corner = cornerAt(section, edge.diameterMm / 2.0, edge.zMm);
    if (!corner)
        return std::nullopt;
    BRepFilletAPI_MakeFillet2d maker{section};
    if (edge.kind == EdgeBreak::Kind::Round)
        maker.AddFillet(*corner, edge.sizeMm);
    else
        addChamfer(maker, section, *corner, edge);
    if (maker.Status() == ChFi2d_IsDone) {
        maker.Build();
        if (maker.IsDone())
            return TopoDS::Face(maker.Shape());
    }
    return Error{where, fmt::format("a size of {} mm that the corner has no room for", edge.sizeMm),
                 "a corner between straight lines that are longer than the size"};
}

} // namespace

Result<std::vector<TopoDS_Face>> withBrokenEdges(std::vector<TopoDS_Face> sections,
                                                 const std::vector<EdgeBreak>& edges,
                                                 std::string_view where) {
    Errors errors;
    for (std::size_t i = 0; i < edges.size(); ++i) {
        const std::string pointer = fmt::format("{}/edges/{}", where, i);
        bool found = false;
        for (TopoDS_Face& section : sections) {
            std::optional<Result<TopoDS_Face>> broken = brokenAt(section, edges[i], pointer);
            if (!broken)
                continue;
            found = true;
            if (*broken)
                section = broken->value();
            else
                errors.insert(errors.end(), broken->errors().begin(), broken->errors().end());
            break;
        }
        if (!found)
            errors.push_back({pointer,
                              fmt::format("no edge of Ø{} at z {}", edges[i].diameterMm, edges[i].zMm),
                              "the diameter and z of an edge of the rings that no earlier entry took away"});
    }
    if (!errors.empty())
        return errors;
    return sections;
}

} // namespace gapwise
