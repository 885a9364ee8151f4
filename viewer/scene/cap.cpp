#include "viewer/scene/cap.h"

#include <GL/glu.h>

#include <array>
#include <deque>
#include <memory>
#include <stdexcept>

namespace gapwise {

namespace {

/// What the tessellator gathers. Its callbacks get this as their last argument.
struct Gathered {
    std::deque<std::array<double, 3>> points{}; ///< A deque: the tessellator keeps pointers.
    std::vector<Vec3> corners{};                ///< Triangles, or one border loop after the other.
    std::vector<std::size_t> loopStarts{};
    bool failed = false;
};

Vec3 toVec(const double* p) {
    return {p[0], p[1], p[2]};
}

void onBegin(GLenum /*shape*/, void* gathered) {
    auto& g = *static_cast<Gathered*>(gathered);
    g.loopStarts.push_back(g.corners.size());
}

void onVertex(void* vertex, void* gathered) {
    static_cast<Gathered*>(gathered)->corners.push_back(toVec(static_cast<const double*>(vertex)));
}

/// With this callback set the tessellator speaks in plain triangles, never in strips or fans.
void onEdgeFlag(GLboolean /*flag*/, void* /*gathered*/) {}

// The signature is the library's.
// NOLINTNEXTLINE(modernize-avoid-c-arrays, readability-function-size)
void onCombine(GLdouble at[3], void* /*from*/[4], GLfloat /*weights*/[4], void** made, void* gathered) {
    auto& points = static_cast<Gathered*>(gathered)->points;
    points.push_back({at[0], at[1], at[2]});
    *made = points.back().data();
}

void onError(GLenum /*code*/, void* gathered) {
    static_cast<Gathered*>(gathered)->failed = true;
}

using Callback = void(GLAPIENTRY*)();

struct DeleteTessellator {
    void operator()(GLUtesselator* tessellator) const { gluDeleteTess(tessellator); }
};
using Tessellator = std::unique_ptr<GLUtesselator, DeleteTessellator>;

template <class Function>
void listen(GLUtesselator* tessellator, GLenum what, Function* callback) {
    gluTessCallback(tessellator, what, reinterpret_cast<Callback>(callback));
}

Gathered tessellate(const std::vector<Loop>& loops, const Vec3& normal, bool borderOnly) {
    Gathered gathered;
    const Tessellator owner{gluNewTess()};
    GLUtesselator* tessellator = owner.get();
    listen(tessellator, GLU_TESS_BEGIN_DATA, onBegin);
    listen(tessellator, GLU_TESS_VERTEX_DATA, onVertex);
    listen(tessellator, GLU_TESS_COMBINE_DATA, onCombine);
    listen(tessellator, GLU_TESS_ERROR_DATA, onError);
    if (!borderOnly)
        listen(tessellator, GLU_TESS_EDGE_FLAG_DATA, onEdgeFlag);
    gluTessProperty(tessellator, GLU_TESS_WINDING_RULE, GLU_TESS_WINDING_POSITIVE);
    gluTessProperty(tessellator, GLU_TESS_BOUNDARY_ONLY, borderOnly ? 1.0 : 0.0);
    gluTessNormal(tessellator, normal.x, normal.y, normal.z);

    gluTessBeginPolygon(tessellator, &gathered);
    for (const Loop& loop : loops) {
        gluTessBeginContour(tessellator);
        for (const Vec3& p : loop) {
            gathered.points.push_back({p.x, p.y, p.z});
            gluTessVertex(tessellator, gathered.points.back().data(), gathered.points.back().data());
        }
        gluTessEndContour(tessellator);
    }
    gluTessEndPolygon(tessellator);
    return gathered;
}

TriangleMesh faceOf(const Gathered& gathered, const Vec3& normal) {
    TriangleMesh face;
    face.positions = gathered.corners;
    face.normals.assign(face.positions.size(), normal);
    for (std::uint32_t i = 0; i + 2 < face.positions.size(); i += 3)
        face.triangles.push_back({i, i + 1, i + 2});
    return face;
}

EdgeLines outlineOf(const Gathered& gathered) {
    EdgeLines lines{.positions = gathered.corners};
    for (std::size_t loop = 0; loop < gathered.loopStarts.size(); ++loop) {
        const std::size_t from = gathered.loopStarts[loop];
        const std::size_t to =
            loop + 1 < gathered.loopStarts.size() ? gathered.loopStarts[loop + 1] : gathered.corners.size();
        for (std::size_t i = from; i < to; ++i)
            lines.lines.push_back(
                {static_cast<std::uint32_t>(i), static_cast<std::uint32_t>(i + 1 < to ? i + 1 : from)});
    }
    return lines;
}

} // namespace

Cap capOver(const std::vector<Loop>& loops, const Vec3& normal) {
    if (loops.empty())
        return {};
    const Gathered inside = tessellate(loops, normal, false);
    const Gathered border = tessellate(loops, normal, true);
    if (inside.failed || border.failed)
        return {};
    return {faceOf(inside, normal), outlineOf(border)};
}

} // namespace gapwise
