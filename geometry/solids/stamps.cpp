#include "geometry/solids/stamps.h"

#include "geometry/shape/stroke_font.h"

#include <BRepAlgoAPI_Fuse.hxx>
#include <BRepBuilderAPI_MakeFace.hxx>
#include <BRepBuilderAPI_MakePolygon.hxx>
#include <BRepPrimAPI_MakePrism.hxx>
#include <ShapeUpgrade_UnifySameDomain.hxx>
#include <TopTools_ListOfShape.hxx>
#include <TopoDS_Face.hxx>
#include <TopoDS_Shape.hxx>
#include <algorithm>
#include <array>
#include <cmath>
#include <gp_Pnt.hxx>
#include <gp_Vec.hxx>
#include <vector>

namespace gapwise {

namespace {

/// What stamps reach beyond the face, so that no face of theirs coincides with it, in mm.
constexpr double kBeyond = 0.2;

struct Point {
    double x = 0.0, y = 0.0;
};

TopoDS_Face plate(const std::vector<Point>& corners, double z) {
    BRepBuilderAPI_MakePolygon polygon;
    for (const Point& corner : corners)
        polygon.Add(gp_Pnt{corner.x, corner.y, z});
    polygon.Close();
    return BRepBuilderAPI_MakeFace{polygon.Wire()}.Face();
}

/// From z along the face's outward direction: what is cut lies below the face, what is added above it.
Span heightOver(double faceZ, double depth, Feature::Does does, double outward) {
    const double below = does == Feature::Does::Cut ? depth : kBeyond;
    const double above = does == Feature::Does::Cut ? kBeyond : depth;
    const auto [low, high] = std::minmax({faceZ - outward * below, faceZ + outward * above});
    return {low, high};
}

TopoDS_Shape prism(const TopoDS_Shape& plates, double height) {
    return BRepPrimAPI_MakePrism{plates, gp_Vec{0.0, 0.0, height}}.Shape();
}

/// A stroke as a rectangle, lengthened by half its width at both ends so that corners close.
std::vector<Point> rectangle(const Stroke& stroke) {
    const double dx = stroke.toX - stroke.fromX;
    const double dy = stroke.toY - stroke.fromY;
    const double half = kStrokeWidth / 2.0;
    const double scale = half / std::hypot(dx, dy);
    const Point along{dx * scale, dy * scale};
    const Point from{stroke.fromX - along.x, stroke.fromY - along.y};
    const Point to{stroke.toX + along.x, stroke.toY + along.y};
    return {{from.x - along.y, from.y + along.x},
            {from.x + along.y, from.y - along.x},
            {to.x + along.y, to.y - along.x},
            {to.x - along.y, to.y + along.x}};
}

/// All plates as one outline, so that the prism over it has no inner walls.
TopoDS_Shape unionOf(const std::vector<TopoDS_Face>& plates) {
    TopTools_ListOfShape arguments;
    TopTools_ListOfShape tools;
    for (const TopoDS_Face& face : plates)
        (arguments.IsEmpty() ? arguments : tools).Append(face);
    if (tools.IsEmpty())
        return plates.front();
    BRepAlgoAPI_Fuse fuse;
    fuse.SetArguments(arguments);
    fuse.SetTools(tools);
    fuse.Build();
    ShapeUpgrade_UnifySameDomain unify{fuse.Shape(), true, true, false};
    unify.Build();
    return unify.Shape();
}

} // namespace

TopoDS_Shape arrowSolid(const ArrowMark& arrow, Feature::Does does) {
    const Span z = heightOver(arrow.faceZMm, arrow.depthMm, does, 1.0);
    const double head = std::min(arrow.widthMm, 0.45 * arrow.r.length());
    const double neck = arrow.r.to - head;
    const double half = arrow.widthMm / 2.0;
    const double shaft = 0.35 * half;
    const TopoDS_Face outline = plate({{-shaft, arrow.r.from},
                                       {shaft, arrow.r.from},
                                       {shaft, neck},
                                       {half, neck},
                                       {0.0, arrow.r.to},
                                       {-half, neck},
                                       {-shaft, neck}},
                                      z.from);
    return prism(outline, z.length());
}

TopoDS_Shape lettersSolid(const LetterMark& letters, Feature::Does does) {
    const double outward = letters.looksToReference ? 1.0 : -1.0;
    const Span z = heightOver(letters.faceZMm, letters.depthMm, does, outward);
    const double scale = letters.heightMm / kLetterCellHeight;
    const double width = kLetterPitch * static_cast<double>(letters.text.size() - 1) + kLetterCellWidth;
    std::vector<TopoDS_Face> plates;
    double left = -width / 2.0;
    for (const char letter : letters.text) {
        for (const Stroke& stroke : strokesOf(letter).value_or(std::vector<Stroke>{})) {
            std::vector<Point> corners = rectangle(stroke);
            // Looking at the far face, right is the other way.
            for (Point& corner : corners)
                corner = {(left + corner.x) * scale * outward,
                          letters.radiusMm + (corner.y - kLetterCellHeight / 2.0) * scale};
            plates.push_back(plate(corners, z.from));
        }
        left += kLetterPitch;
    }
    return prism(unionOf(plates), z.length());
}

} // namespace gapwise
