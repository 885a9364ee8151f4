#include "geometry/solids/blade_solids.h"

#include "geometry/solids/blades.h"
#include "geometry/solids/booleans.h"

#include <BRepBuilderAPI_MakeFace.hxx>
#include <BRepBuilderAPI_MakePolygon.hxx>
#include <BRepBuilderAPI_MakeSolid.hxx>
#include <BRepBuilderAPI_Sewing.hxx>
#include <BRepPrimAPI_MakeRevol.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Face.hxx>
#include <TopoDS_Shape.hxx>
#include <TopoDS_Shell.hxx>
#include <TopoDS_Solid.hxx>
#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <gp_Ax1.hxx>
#include <gp_Pnt.hxx>
#include <map>

namespace gapwise {

namespace {

/// How far the flat pieces of a blade may stray from its curves, in mm.
constexpr double kDeflectionMm = 0.02;
/// What the hull reaches further in than the roots between which it is straight, in mm.
constexpr double kBelowRootsMm = 0.1;
/// Share by which a volume may be off: it is integrated numerically.
constexpr double kVolumeSlack = 1e-4;

gp_Pnt pointOf(const Vec3& p) {
    return {p.x, p.y, p.z};
}

/// A closed mesh as a solid of flat faces.
Result<TopoDS_Shape> sewn(const TriangleMesh& sheet, std::string_view where) {
    BRepBuilderAPI_Sewing sewing{1e-6};
    for (const auto& triangle : sheet.triangles) {
        BRepBuilderAPI_MakePolygon side;
        for (const std::uint32_t corner : triangle)
            side.Add(pointOf(sheet.positions[corner]));
        side.Close();
        sewing.Add(BRepBuilderAPI_MakeFace{side.Wire()}.Face());
    }
    sewing.Perform();
    const TopoDS_Shape shell = sewing.SewedShape();
    if (shell.ShapeType() != TopAbs_SHELL || sewing.NbFreeEdges() != 0)
        return Error{std::string{where}, "a blade whose sheets do not close", "sizes that make a blade"};
    const TopoDS_Shape solid = BRepBuilderAPI_MakeSolid{TopoDS::Shell(shell)}.Solid();
    const double expected = signedVolume(sheet);
    if (!(std::abs(volumeOf(solid) - expected) <= kVolumeSlack * expected))
        return Error{std::string{where}, fmt::format("a blade of {:.3f} mm³", volumeOf(solid)),
                     fmt::format("{:.3f} mm³, as its sheets hold", expected)};
    return solid;
}

} // namespace

Result<std::vector<TopoDS_Shape>> bladeSolids(const Blades& blades, std::string_view where) {
    std::vector<TopoDS_Shape> solids;
    for (const TriangleMesh& sheet : bladeSheets(blades, kDeflectionMm)) {
        const Result<TopoDS_Shape> blade = sewn(sheet, where);
        if (!blade)
            return blade.errors();
        solids.push_back(blade.value());
    }
    return solids;
}

TopoDS_Shape bladeHull(const Blades& blades) {
    const TriangleMesh sheet = bladeSheets(blades, kDeflectionMm).front();
    // The corners of a blade stand at some z each: the hull goes straight from one z to the next, along the
    // largest radius there and back along the smallest. Chords of a twisted blade dip inward between them.
    std::map<double, Span> reach;
    for (const Vec3& p : sheet.positions) {
        const double r = std::hypot(p.x, p.y);
        const auto [entry, isNew] = reach.try_emplace(p.z, Span{r, r});
        entry->second = {std::min(entry->second.from, r), std::max(entry->second.to, r)};
    }
    BRepBuilderAPI_MakePolygon outline;
    for (const auto& [z, r] : reach)
        outline.Add(gp_Pnt{0.0, r.to, z});
    for (auto entry = reach.rbegin(); entry != reach.rend(); ++entry)
        outline.Add(gp_Pnt{0.0, std::max(0.0, entry->second.from - kBelowRootsMm), entry->first});
    outline.Close();
    const gp_Ax1 axis{gp_Pnt{0.0, 0.0, 0.0}, gp_Dir{0.0, 0.0, 1.0}};
    return BRepPrimAPI_MakeRevol{BRepBuilderAPI_MakeFace{outline.Wire()}.Face(), axis}.Shape();
}

} // namespace gapwise
