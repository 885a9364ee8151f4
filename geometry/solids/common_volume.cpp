#include "geometry/solids/common_volume.h"

#include "geometry/solids/blade_solids.h"
#include "geometry/solids/body.h"
#include "geometry/solids/booleans.h"

#include <BRepAlgoAPI_Common.hxx>
#include <BRepBndLib.hxx>
#include <BRepBuilderAPI_Transform.hxx>
#include <Bnd_Box.hxx>
#include <TopTools_ListOfShape.hxx>
#include <TopoDS_Shape.hxx>
#include <algorithm>
#include <cmath>
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

/// Solids that reach into each other by less than this touch, in mm.
constexpr double kContactMm = 1e-5;
/// Pieces that a hull holds: what misses the hull misses them all. A body needs no hull.
struct Group {
    std::optional<Piece> hull{};
    std::vector<Piece> pieces{};
};

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

/// True only when it is certain: by boxes, or by a common volume of nothing.
bool miss(const Piece& first, const Pose& firstPose, const Piece& second, const Pose& secondPose) {
    if (!meet(boxOf(first, firstPose), boxOf(second, secondPose)))
        return true;
    const Result<double> volume = shared(first, placeOf(firstPose), second, placeOf(secondPose));
    return volume && volume.value() <= 0.0;
}

/// True when the hull of one or of both shows that their pieces cannot meet.
bool miss(const Group& first, const Pose& firstPose, const Group& second, const Pose& secondPose) {
    if (!first.hull && !second.hull)
        return false;
    const Piece& one = first.hull ? *first.hull : first.pieces.front();
    const Piece& other = second.hull ? *second.hull : second.pieces.front();
    return miss(one, firstPose, other, secondPose);
}

Result<double> shared(const Group& first, const Pose& firstPose, const Group& second,
                      const Pose& secondPose) {
    double total = 0.0;
    if (miss(first, firstPose, second, secondPose))
        return total;
    for (const Piece& one : first.pieces) {
        for (const Piece& other : second.pieces) {
            if (!meet(boxOf(one, firstPose), boxOf(other, secondPose)))
                continue;
            const Result<double> volume = shared(one, placeOf(firstPose), other, placeOf(secondPose));
            if (!volume)
                return volume.errors();
            total += volume.value();
        }
    }
    return total;
}

} // namespace

struct Solid::Pieces {
    std::vector<Group> groups{};
};

Result<Solid> solidOf(const Shape& shape, std::string_view where) {
    return guarded(where, [&]() -> Result<Solid> {
        const Result<TopoDS_Shape> body = bodyOf(shape, where);
        if (!body)
            return body.errors();
        auto pieces = std::make_shared<Solid::Pieces>();
        pieces->groups.push_back({std::nullopt, {pieceOf(body.value())}});
        for (const Blades& blades : shape.blades) {
            const Result<std::vector<TopoDS_Shape>> solids = bladeSolids(blades, where);
            if (!solids)
                return solids.errors();
            Group group{pieceOf(bladeHull(blades)), {}};
            for (const TopoDS_Shape& blade : solids.value())
                group.pieces.push_back(pieceOf(blade));
            pieces->groups.push_back(std::move(group));
        }
        return Solid{std::move(pieces)};
    });
}

Bounds boundsOf(const Solid& solid, const Pose& pose) {
    std::vector<Vec3> corners;
    for (const Group& group : solid.pieces().groups) {
        for (const Piece& piece : group.pieces) {
            const Bounds box = boxOf(piece, pose);
            corners.insert(corners.end(), {box.low, box.high});
        }
    }
    return boundsOf(corners);
}

Result<double> commonVolumeMm3(const Solid& first, const Pose& firstPose, const Solid& second,
                               const Pose& secondPose) {
    return guarded("", [&]() -> Result<double> {
        double total = 0.0;
        for (const Group& one : first.pieces().groups) {
            for (const Group& other : second.pieces().groups) {
                const Result<double> volume = shared(one, firstPose, other, secondPose);
                if (!volume)
                    return volume.errors();
                total += volume.value();
            }
        }
        return total;
    });
}

} // namespace gapwise
