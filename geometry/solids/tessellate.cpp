#include "geometry/solids/tessellate.h"

#include "geometry/solids/booleans.h"

#include <BRepAdaptor_Surface.hxx>
#include <BRepGProp.hxx>
#include <BRepLProp_SLProps.hxx>
#include <BRepLib.hxx>
#include <BRepMesh_IncrementalMesh.hxx>
#include <BRep_Tool.hxx>
#include <GProp_GProps.hxx>
#include <IMeshTools_Parameters.hxx>
#include <Poly_PolygonOnTriangulation.hxx>
#include <Poly_Triangulation.hxx>
#include <TopExp.hxx>
#include <TopExp_Explorer.hxx>
#include <TopTools_IndexedDataMapOfShapeListOfShape.hxx>
#include <TopTools_ListOfShape.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Edge.hxx>
#include <TopoDS_Face.hxx>
#include <TopoDS_Shape.hxx>
#include <cmath>
#include <fmt/format.h>
#include <utility>

namespace gapwise {

namespace {

/// Faces that meet at less than this run on into each other, in radians: no edge is drawn there.
constexpr double kSmoothTurn = 0.01;

Vec3 vectorOf(const gp_XYZ& p) {
    return {p.X(), p.Y(), p.Z()};
}

/// Normals by the face's surface at each node; where the surface has none (the tip of a cone), a zero vector.
std::vector<Vec3> surfaceNormals(const TopoDS_Face& face, const Poly_Triangulation& mesh) {
    const BRepAdaptor_Surface surface{face, false};
    BRepLProp_SLProps properties{surface, 1, 1e-9};
    const double sign = face.Orientation() == TopAbs_REVERSED ? -1.0 : 1.0;
    std::vector<Vec3> normals;
    for (int node = 1; node <= mesh.NbNodes(); ++node) {
        const gp_Pnt2d uv = mesh.UVNode(node);
        properties.SetParameters(uv.X(), uv.Y());
        normals.push_back(properties.IsNormalDefined() ? vectorOf(properties.Normal().XYZ()) * sign : Vec3{});
    }
    return normals;
}

/// Triangles of one face. Nodes without a normal, like the tip of a cone, take the mean of their triangles.
void addFace(const TopoDS_Face& face, const Poly_Triangulation& mesh, const gp_Trsf& place,
             TriangleMesh& out) {
    const auto base = static_cast<std::uint32_t>(out.positions.size());
    for (int node = 1; node <= mesh.NbNodes(); ++node)
        out.positions.push_back(vectorOf(mesh.Node(node).Transformed(place).XYZ()));
    std::vector<Vec3> normals = surfaceNormals(face, mesh);
    std::vector<Vec3> means(normals.size());
    for (int i = 1; i <= mesh.NbTriangles(); ++i) {
        int a = 0;
        int b = 0;
        int c = 0;
        mesh.Triangle(i).Get(a, b, c);
        if (face.Orientation() == TopAbs_REVERSED)
            std::swap(b, c);
        const auto index = [&](int node) { return base + static_cast<std::uint32_t>(node - 1); };
        const Vec3& origin = out.positions[index(a)];
        const Vec3 across = cross(out.positions[index(b)] - origin, out.positions[index(c)] - origin);
        if (length(across) < 1e-12)
            continue;
        out.triangles.push_back({index(a), index(b), index(c)});
        for (const std::uint32_t node : out.triangles.back())
            means[node - base] = means[node - base] + across;
    }
    for (std::size_t i = 0; i < normals.size(); ++i) {
        if (normals[i] == Vec3{} && !(means[i] == Vec3{}))
            normals[i] = normalized(means[i]);
    }
    out.normals.insert(out.normals.end(), normals.begin(), normals.end());
}

bool isDrawn(const TopoDS_Edge& edge, const TopTools_ListOfShape& faces) {
    if (BRep_Tool::Degenerated(edge) || faces.IsEmpty())
        return false;
    const TopoDS_Face first = TopoDS::Face(faces.First());
    if (BRep_Tool::IsClosed(edge, first))
        return false;
    const TopoDS_Face last = TopoDS::Face(faces.Last());
    return BRep_Tool::Continuity(edge, first, last) == GeomAbs_C0;
}

void addEdge(const TopoDS_Edge& edge, const TopoDS_Face& face, EdgeLines& out) {
    TopLoc_Location place;
    const Handle(Poly_Triangulation) mesh = BRep_Tool::Triangulation(face, place);
    const Handle(Poly_PolygonOnTriangulation) polygon = BRep_Tool::PolygonOnTriangulation(edge, mesh, place);
    if (mesh.IsNull() || polygon.IsNull())
        return;
    for (int i = 1; i <= polygon->NbNodes(); ++i) {
        const auto index = static_cast<std::uint32_t>(out.positions.size());
        out.positions.push_back(
            vectorOf(mesh->Node(polygon->Node(i)).Transformed(place.Transformation()).XYZ()));
        if (i > 1)
            out.lines.push_back({index - 1, index});
    }
}

EdgeLines trueEdges(const TopoDS_Shape& solid) {
    TopTools_IndexedDataMapOfShapeListOfShape facesOf;
    TopExp::MapShapesAndAncestors(solid, TopAbs_EDGE, TopAbs_FACE, facesOf);
    EdgeLines lines;
    for (int i = 1; i <= facesOf.Extent(); ++i) {
        const TopoDS_Edge edge = TopoDS::Edge(facesOf.FindKey(i));
        if (isDrawn(edge, facesOf(i)))
            addEdge(edge, TopoDS::Face(facesOf(i).First()), lines);
    }
    return lines;
}

/// The Delabella algorithm gives half the triangles on rounded edges. Where a face bends both ways, the
/// sagittas of both add up inside it, as they would on a plain grid.
IMeshTools_Parameters settingsOf(const Fineness& fineness) {
    IMeshTools_Parameters settings;
    settings.MeshAlgo = IMeshTools_MeshAlgoType_Delabella;
    settings.Deflection = fineness.deflectionMm;
    settings.DeflectionInterior = 2.0 * fineness.deflectionMm;
    settings.Angle = radians(fineness.angle);
    return settings;
}

double areaOf(const TopoDS_Shape& solid) {
    GProp_GProps properties;
    BRepGProp::SurfaceProperties(solid, properties);
    return properties.Mass();
}

} // namespace

Result<PartMesh> tessellated(const TopoDS_Shape& solid, const Fineness& fineness, std::string_view where) {
    BRepLib::EncodeRegularity(solid, kSmoothTurn);
    const BRepMesh_IncrementalMesh mesher{solid, settingsOf(fineness)};
    PartMesh mesh;
    for (TopExp_Explorer faces{solid, TopAbs_FACE}; faces.More(); faces.Next()) {
        const TopoDS_Face face = TopoDS::Face(faces.Current());
        TopLoc_Location place;
        const Handle(Poly_Triangulation) triangles = BRep_Tool::Triangulation(face, place);
        if (triangles.IsNull() || triangles->NbTriangles() == 0)
            return Error{std::string{where}, "a face that the mesher leaves without triangles",
                         "sizes that leave no slivers"};
        addFace(face, *triangles, place.Transformation(), mesh.faces);
    }
    mesh.edges = trueEdges(solid);
    const double exact = volumeOf(solid);
    const double meshed = signedVolume(mesh.faces);
    const double allowed = areaOf(solid) * 2.0 * fineness.deflectionMm + 1e-6 * exact;
    if (!(std::abs(meshed - exact) <= allowed))
        return Error{std::string{where},
                     fmt::format("a mesh of {:.3f} mm³ of a solid of {:.3f} mm³", meshed, exact),
                     fmt::format("a mesh within {:.3f} mm³ of the solid", allowed)};
    return mesh;
}

} // namespace gapwise
