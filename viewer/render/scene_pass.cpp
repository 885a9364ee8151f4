#include "viewer/render/scene_pass.h"

#include "viewer/render/matrix_of.h"

#include <epoxy/gl.h>

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

constexpr double kCutWidth = 1.9;      ///< Borders of cut faces, in pixels of a picture 900 high.
constexpr double kHatchSpacing = 8.5;  ///< From line to line.
constexpr double kStripeSpacing = 9.0; ///< Where something is not known.
constexpr int kMostIds = 254;

constexpr Colour kAccent{0.22, 0.56, 0.76};
constexpr Colour kBenchTop{0.914, 0.894, 0.847};
constexpr Colour kBenchEdge{0.76, 0.73, 0.66};
constexpr double kBenchEdgePixels = 1.6;

float f(double value) {
    return static_cast<float>(value);
}

Colour mixed(const Colour& a, const Colour& b, double share) {
    return {a.red + (b.red - a.red) * share, a.green + (b.green - a.green) * share,
            a.blue + (b.blue - a.blue) * share};
}

std::array<float, 3> rgb(const Colour& colour) {
    return {f(colour.red), f(colour.green), f(colour.blue)};
}

std::array<float, 4> rgba(const Colour& colour, double alpha) {
    return {f(colour.red), f(colour.green), f(colour.blue), f(alpha)};
}

double mmPerPixel(const Shot& shot) {
    return shot.camera.heightMm / shot.size.height;
}

/// Square to the hatching, as long as the lines are dense. The plane of a section contains the shaft; the
/// direction in it that is square to the shaft is called outward.
std::array<float, 3> hatchAcross(const Shot& shot, const SceneItem& item) {
    const double spacing = kHatchSpacing * item.hatch.spacing * shot.style.lineScale * mmPerPixel(shot);
    const Vec3 normal = item.mesh->caps.normals.empty()
                            ? Vec3{1.0, 0.0, 0.0}
                            : item.pose.direction(item.mesh->caps.normals.front());
    const Vec3 outward = cross(Vec3{0.0, 0.0, 1.0}, normal);
    const double angle = radians(item.hatch.angle);
    const Vec3 across = (Vec3{0.0, 0.0, -std::sin(angle)} + outward * std::cos(angle)) * (1.0 / spacing);
    return {f(across.x), f(across.y), f(across.z)};
}

Colour tintOf(const SceneItem& item) {
    constexpr Colour kBroken{0.95, 0.66, 0.48};
    constexpr double kAccentShare = 0.5;
    const Colour tint = item.state == ItemState::Broken ? kBroken : item.tint;
    return item.inHand ? mixed(tint, kAccent, kAccentShare) : tint;
}

int parallel(const Shot& shot) {
    return shot.camera.projection == Projection::Parallel ? 1 : 0;
}

} // namespace

double edgeWidth(const DrawStyle& style) {
    return 1.0 * style.lineScale;
}

double outlineWidth(const DrawStyle& style) {
    return 1.3 * style.lineScale;
}

Result<ScenePass> ScenePass::make() {
    auto faces = ShaderProgram::make("part.vert", "part.frag");
    if (!faces)
        return faces.errors();
    auto lines = ShaderProgram::make("line.vert", "line.frag");
    if (!lines)
        return lines.errors();
    auto ground = ShaderProgram::make("ground.vert", "ground.frag");
    if (!ground)
        return ground.errors();
    auto bench = ShaderProgram::make("ground.vert", "bench.frag");
    if (!bench)
        return bench.errors();
    return ScenePass{std::move(faces).value(), std::move(lines).value(), std::move(ground).value(),
                     std::move(bench).value()};
}

void ScenePass::draw(const Shot& shot, const Piece& piece, GpuMeshes& meshes) {
    const Matrix projection = shot.camera.projectionMatrix(shot.size, piece.area);
    glViewport(0, 0, static_cast<int>(piece.area.width) * shot.style.samples,
               static_cast<int>(piece.area.height) * shot.style.samples);
    const Colour& paper = shot.style.paper;
    const std::array<float, 4> clear = rgba(paper, 1.0);
    constexpr std::array<float, 4> kNothing{0.0F, 0.0F, 0.0F, 0.0F};
    constexpr float kFar = 1.0F;
    glDepthMask(GL_TRUE);
    glClearBufferfv(GL_COLOR, 0, clear.data());
    glClearBufferfv(GL_COLOR, 1, kNothing.data());
    glClearBufferfv(GL_DEPTH, 0, &kFar);
    glDisable(GL_CULL_FACE);
    drawBenchTop(shot, projection);
    drawGround(shot, piece, projection);
    drawFaces(shot, piece, projection, meshes);
    drawLines(shot, piece, projection, meshes);
}

void ScenePass::drawBenchTop(const Shot& shot, const Matrix& projection) {
    const Scene& scene = shot.scene;
    constexpr double kLowestEye = 0.02; // Seen edge on it is a line, from below it would hide everything.
    if (!scene.ground.benchTop || dot(shot.camera.camera.forward(), scene.ground.axes.yAxis) > -kLowestEye)
        return;
    const auto top = benchTopOf(scene);
    if (!top)
        return;
    const Vec3 middle = inGroundAxes(scene.ground, Pose{.shift = top->middle}).shift;
    glDisable(GL_DEPTH_TEST);
    glDisable(GL_BLEND);
    glColorMaski(1, GL_FALSE, GL_FALSE, GL_FALSE, GL_FALSE);
    bench_.use();
    bench_.set("uView", shot.camera.viewMatrix());
    bench_.set("uProjection", projection);
    bench_.set("uAxes", matrixOf(scene.ground.axes));
    bench_.set("uField", std::array<float, 4>{f(middle.x - top->halfWidth), f(middle.z - top->halfDepth),
                                              f(2.0 * top->halfWidth), f(2.0 * top->halfDepth)});
    bench_.set("uGround", f(middle.y));
    bench_.set("uTop", rgb(kBenchTop));
    bench_.set("uInk", rgb(kBenchEdge));
    bench_.set("uEdgePixels", f(kBenchEdgePixels * shot.style.lineScale * shot.style.samples));
    bench_.assertReady();
    glBindVertexArray(array_.name());
    glDrawArrays(GL_TRIANGLE_STRIP, 0, 4);
    glColorMaski(1, GL_TRUE, GL_TRUE, GL_TRUE, GL_TRUE);
}

void ScenePass::drawGround(const Shot& shot, const Piece& piece, const Matrix& projection) {
    if (!piece.shadow)
        return;
    glDisable(GL_DEPTH_TEST);
    glEnable(GL_BLEND);
    glBlendFunc(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA);
    glColorMaski(1, GL_FALSE, GL_FALSE, GL_FALSE, GL_FALSE);
    glActiveTexture(GL_TEXTURE0);
    glBindTexture(GL_TEXTURE_2D, piece.shadowTexture);
    ground_.use();
    ground_.set("uView", shot.camera.viewMatrix());
    ground_.set("uProjection", projection);
    ground_.set("uAxes", matrixOf(shot.scene.ground.axes));
    ground_.set("uField", piece.shadow->field);
    ground_.set("uGround", piece.shadow->ground);
    ground_.set("uShadow", 0);
    ground_.set("uInk", std::array<float, 4>{0.30F, 0.27F, 0.22F, 0.42F});
    ground_.assertReady();
    glBindVertexArray(array_.name());
    glDrawArrays(GL_TRIANGLE_STRIP, 0, 4);
    glColorMaski(1, GL_TRUE, GL_TRUE, GL_TRUE, GL_TRUE);
    glDisable(GL_BLEND);
}

void ScenePass::drawFaces(const Shot& shot, const Piece& piece, const Matrix& projection, GpuMeshes& meshes) {
    const int samples = shot.style.samples;
    glEnable(GL_DEPTH_TEST);
    glDepthFunc(GL_LESS);
    // Faces give way a little, so that the edges that lie in them stay whole.
    glEnable(GL_POLYGON_OFFSET_FILL);
    glPolygonOffset(1.0F, 1.0F);
    faces_.use();
    faces_.set("uView", shot.camera.viewMatrix());
    faces_.set("uProjection", projection);
    faces_.set("uPaper", rgb(shot.style.paper));
    faces_.set("uParallel", parallel(shot));
    faces_.set("uStripePixels", f(kStripeSpacing * shot.style.lineScale * samples));
    faces_.set("uOrigin", std::array<float, 2>{f(piece.area.left * samples),
                                               f((shot.size.height - piece.area.bottom()) * samples)});
    int id = 0;
    for (const SceneItem& item : shot.scene.items) {
        const GpuMesh& mesh = meshes.of(item.mesh);
        id = id % kMostIds + 1;
        faces_.set("uModel", matrixOf(item.drawnPose()));
        faces_.set("uTint", rgb(tintOf(item)));
        faces_.set("uId", f(id / 255.0));
        faces_.set("uHatchAcross", hatchAcross(shot, item));
        faces_.set("uLook", item.state == ItemState::NotKnown ? 2 : 0);
        faces_.assertReady();
        mesh.body.draw();
        faces_.set("uLook", 1);
        mesh.caps.draw();
    }
    glDisable(GL_POLYGON_OFFSET_FILL);
}

void ScenePass::drawLines(const Shot& shot, const Piece& piece, const Matrix& projection, GpuMeshes& meshes) {
    const int samples = shot.style.samples;
    const auto width = static_cast<int>(piece.area.width) * samples;
    const auto height = static_cast<int>(piece.area.height) * samples;
    glDepthMask(GL_FALSE);
    glDepthFunc(GL_LEQUAL);
    glColorMaski(1, GL_FALSE, GL_FALSE, GL_FALSE, GL_FALSE);
    glEnable(GL_BLEND);
    glBlendFunc(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA);
    lines_.use();
    lines_.set("uView", shot.camera.viewMatrix());
    lines_.set("uProjection", projection);
    lines_.set("uViewport", std::array<float, 2>{f(width), f(height)});
    lines_.set("uTowardEye", f(0.6 * mmPerPixel(shot)));
    drawShiningThrough(shot, meshes);
    for (const SceneItem& item : shot.scene.items) {
        const GpuMesh& mesh = meshes.of(item.mesh);
        lines_.set("uModel", matrixOf(item.drawnPose()));
        lines_.set("uWidth", f(edgeWidth(shot.style) * samples));
        lines_.set("uInk", rgba(shot.style.ink, 0.75));
        lines_.assertReady();
        mesh.edges.draw();
        lines_.set("uWidth", f(kCutWidth * shot.style.lineScale * samples));
        lines_.set("uInk", rgba(shot.style.ink, 1.0));
        mesh.cutOutline.draw();
    }
    glDisable(GL_BLEND);
    glColorMaski(1, GL_TRUE, GL_TRUE, GL_TRUE, GL_TRUE);
    glDepthMask(GL_TRUE);
}

void ScenePass::drawShiningThrough(const Shot& shot, GpuMeshes& meshes) {
    constexpr double kFaint = 0.55;
    glDisable(GL_DEPTH_TEST);
    for (const SceneItem& item : shot.scene.items) {
        if (!item.inHand)
            continue;
        lines_.set("uModel", matrixOf(item.drawnPose()));
        lines_.set("uWidth", f(kCutWidth * shot.style.lineScale * shot.style.samples));
        lines_.set("uInk", rgba(kAccent, kFaint));
        lines_.assertReady();
        meshes.of(item.mesh).edges.draw();
    }
    glEnable(GL_DEPTH_TEST);
}

} // namespace gapwise
