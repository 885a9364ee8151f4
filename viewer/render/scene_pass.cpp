#include "viewer/render/scene_pass.h"

#include "viewer/render/matrix_of.h"
#include "viewer/render/part_look.h"

#include <epoxy/gl.h>

namespace gapwise {

namespace {

constexpr int kMostIds = 254;

float f(double value) {
    return static_cast<float>(value);
}

} // namespace

Result<ScenePass> ScenePass::make() {
    auto faces = ShaderProgram::make("part.vert", "part.frag");
    if (!faces)
        return faces.errors();
    return ScenePass{std::move(faces).value()};
}

void ScenePass::draw(const Shot& shot, const Piece& piece, const SharedPasses& shared) {
    const Matrix projection = shot.camera.projectionMatrix(shot.size, piece.area);
    const int width = static_cast<int>(piece.area.width) * shot.style.samples;
    const int height = static_cast<int>(piece.area.height) * shot.style.samples;
    glViewport(0, 0, width, height);
    const std::array<float, 4> clear = rgba(shot.style.paper, 1.0);
    constexpr std::array<float, 4> kNothing{0.0F, 0.0F, 0.0F, 0.0F};
    constexpr float kFar = 1.0F;
    glDepthMask(GL_TRUE);
    glClearBufferfv(GL_COLOR, 0, clear.data());
    glClearBufferfv(GL_COLOR, 1, kNothing.data());
    glClearBufferfv(GL_DEPTH, 0, &kFar);
    glDisable(GL_CULL_FACE);
    drawFaces(shot, piece, projection, shared.meshes);
    shared.ground.draw(shot, piece.ground, projection);
    const LineView view{shot, projection, width, height, shot.style.samples};
    shared.lines.drawShiningThrough(view, shared.meshes);
    shared.lines.drawAll(view, shared.meshes);
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
    faces_.set("uParallel", shot.camera.projection == Projection::Parallel ? 1 : 0);
    faces_.set("uStripePixels", f(stripeSpacing(shot.style) * samples));
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

} // namespace gapwise
