#include "geometry/solids/common_volume.h"

#include "geometry/solids/blades.h"
#include "geometry/solids/body.h"
#include "geometry/solids/booleans.h"

#include <BRepAlgoAPI_Common.hxx>
#include <BRepBndLib.hxx>
#include <BRepBuilderAPI_MakeFace.hxx>
#include <BRepBuilderAPI_MakePolygon.hxx>
#include <BRepBuilderAPI_MakeSolid.hxx>
#include <BRepBuilderAPI_Sewing.hxx>
#include <BRepBuilderAPI_Transform.hxx>
#include <Bnd_Box.hxx>
#include <TopTools_ListOfShape.hxx>
#include <TopoDS.hxx>
#include <TopoDS_Face.hxx>
#include <TopoDS_Shape.hxx>
#include <TopoDS_Shell.hxx>
#include <TopoDS_Solid.hxx>
#include <algorithm>
#include <array>
#include <cmath>
#include <fmt/format.h>
#include <gp_Pnt.hxx>
#include <gp_Trsf.hxx>
#include <optional>
#include <vector>

namespace gapwise {

namespace {

struct Piece {
    TopoDS_Shape solid{};
    Bounds box{};
    double volume = 0.0;
};

/// How far the flat pieces of a blade may stray from its curves, in mm.
constexpr double kBladeDeflectionMm = 0.02;
/// Solids that reach into each other by less than this touch, in mm.
constexpr double kContactMm = 1e-5;
/// What parts coinciding faces, in mm.
constexpr double kHairMm = 1e-4;
/// Share of the smaller solid by which volumes may be off: they are integrated numerically.
constexpr double kVolumeSlack = 1e-4;

gp_Pnt pointOf(const Vec3& p) {
    return {p.x, p.y, p.z};
}

Piece pieceOf(const TopoDS_Shape& solid) {
    Bnd_Box box;
    BRepBndLib::AddOptimal(solid, box, false, false);
    const gp_Pnt low = box.CornerMin();
    const gp_Pnt high = box.CornerMax();
    return {solid, {{low.X(), low.Y(), low.Z()}, {high.X(), high.Y(), high.Z()}}, volumeOf(solid)};
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

gp_Trsf placeOf(const Pose& pose) {
    gp_Trsf place;
    place.SetValues(pose.xAxis.x, pose.yAxis.x, pose.zAxis.x, pose.shift.x, //
                    pose.xAxis.y, pose.yAxis.y, pose.zAxis.y, pose.shift.y, //
                    pose.xAxis.z, pose.yAxis.z, pose.zAxis.z, pose.shift.z);
    return place;
}

Bounds boxOf(const Piece& piece, const Pose& pose) {
    std::vector<Vec3> corners;
    for (const double x : {piece.box.low.x, piece.box.high.x})
        for (const double y : {piece.box.low.y, piece.box.high.y})
            for (const double z : {piece.box.low.z, piece.box.high.z})
                corners.push_back(pose.point({x, y, z}));
    return boundsOf(corners);
}

bool meet(const Bounds& a, const Bounds& b) {
    const auto reach = [](double aLow, double aHigh, double bLow, double bHigh) {
        return std::min(aHigh, bHigh) - std::max(aLow, bLow) > kContactMm;
    };
    return reach(a.low.x, a.high.x, b.low.x, b.high.x) && reach(a.low.y, a.high.y, b.low.y, b.high.y) &&
           reach(a.low.z, a.high.z, b.low.z, b.high.z);
}

/// Nothing when the library fails or warns.
std::optional<double> sharedBy(const TopoDS_Shape& first, const TopoDS_Shape& second, double fuzzyMm) {
    TopTools_ListOfShape arguments;
    arguments.Append(first);
    TopTools_ListOfShape tools;
    tools.Append(second);
    BRepAlgoAPI_Common common;
    common.SetArguments(arguments);
    common.SetTools(tools);
    common.SetFuzzyValue(fuzzyMm);
    common.SetNonDestructive(true);
    common.Build();
    if (common.HasErrors() || common.HasWarnings())
        return std::nullopt;
    return volumeOf(common.Shape());
}

/// The solid grown (or shrunk) about its middle, so that its outermost places move by this much.
TopoDS_Shape grown(const Piece& piece, double byMm) {
    const Vec3 middle = (piece.box.low + piece.box.high) * 0.5;
    gp_Trsf scale;
    scale.SetScale(pointOf(middle), 1.0 + byMm / length(piece.box.high - middle));
    return BRepBuilderAPI_Transform{piece.solid, scale, true}.Shape();
}

/// What two pieces share. Where faces coincide the library may fail: then with a wider tolerance, and at last
/// with the second piece smaller or larger by a hair, so that the faces part.
Result<double> shared(const Piece& first, const gp_Trsf& firstPlace, const Piece& second,
                      const gp_Trsf& secondPlace) {
    const double most = std::min(first.volume, second.volume);
    const TopoDS_Shape a = first.solid.Moved(firstPlace);
    const auto attempt = [&](const TopoDS_Shape& other, double fuzzyMm) -> std::optional<double> {
        const std::optional<double> volume = sharedBy(a, other.Moved(secondPlace), fuzzyMm);
        const bool possible =
            volume && *volume >= -kVolumeSlack * most && *volume <= (1.0 + kVolumeSlack) * most;
        return possible ? std::optional{std::max(0.0, *volume)} : std::nullopt;
    };
    for (const double fuzzyMm : {0.0, kHairMm / 10.0})
        if (const std::optional<double> volume = attempt(second.solid, fuzzyMm))
            return *volume;
    for (const double byMm : {-kHairMm, kHairMm})
        if (const std::optional<double> volume = attempt(grown(second, byMm), 0.0))
            return *volume;
    return Error{"", "two solids of which the solid builder cannot tell what they share",
                 "faces that meet squarely, neither tangent nor sharing a face by a hair"};
}

} // namespace

struct Solid::Pieces {
    std::vector<Piece> list{};
};

Result<Solid> solidOf(const Shape& shape, std::string_view where) {
    return guarded(where, [&]() -> Result<Solid> {
        const Result<TopoDS_Shape> body = bodyOf(shape, where);
        if (!body)
            return body.errors();
        auto pieces = std::make_shared<Solid::Pieces>();
        pieces->list.push_back(pieceOf(body.value()));
        for (const Blades& blades : shape.blades) {
            for (const TriangleMesh& sheet : bladeSheets(blades, kBladeDeflectionMm)) {
                const Result<TopoDS_Shape> blade = sewn(sheet, where);
                if (!blade)
                    return blade.errors();
                pieces->list.push_back(pieceOf(blade.value()));
            }
        }
        return Solid{std::move(pieces)};
    });
}

Bounds boundsOf(const Solid& solid, const Pose& pose) {
    std::vector<Vec3> corners;
    for (const Piece& piece : solid.pieces().list) {
        const Bounds box = boxOf(piece, pose);
        corners.insert(corners.end(), {box.low, box.high});
    }
    return boundsOf(corners);
}

Result<double> commonVolumeMm3(const Solid& first, const Pose& firstPose, const Solid& second,
                               const Pose& secondPose) {
    return guarded("", [&]() -> Result<double> {
        double total = 0.0;
        for (const Piece& one : first.pieces().list) {
            for (const Piece& other : second.pieces().list) {
                if (!meet(boxOf(one, firstPose), boxOf(other, secondPose)))
                    continue;
                const Result<double> volume = shared(one, placeOf(firstPose), other, placeOf(secondPose));
                if (!volume)
                    return volume.errors();
                total += volume.value();
            }
        }
        return total;
    });
}

} // namespace gapwise
