#include "viewer/render/coarse_pass.h"

#include "viewer/render/matrix_of.h"
#include "viewer/render/part_look.h"

#include <epoxy/gl.h>

namespace gapwise {

namespace {

float f(double value) {
    return static_cast<float>(value);
}

/// The uniforms of light.vert that are the same for all items.
void setView(ShaderProgram& program, const Shot& shot, const Matrix& projection) {
    program.use();
    program.set("uView", shot.camera.viewMatrix());
    program.set("uProjection", projection);
    program.set("uParallel", shot.camera.projection == Projection::Parallel ? 1 : 0);
}

/// And those of one item.
void setItem(ShaderProgram& program, const SceneItem& item) {
    program.set("uModel", matrixOf(item.drawnPose()));
    program.set("uTint", rgb(tintOf(item)));
}

} // namespace

Result<CoarsePass> CoarsePass::make() {
    auto bodies = ShaderProgram::make("coarse.vert", "coarse.frag");
    if (!bodies)
        return bodies.errors();
    auto marked = ShaderProgram::make("coarse.vert", "coarse_marked.frag");
    if (!marked)
        return marked.errors();
    auto edges = ShaderProgram::make("thin_line.vert", "thin_line.frag");
    if (!edges)
        return edges.errors();
    return CoarsePass{std::move(bodies).value(), std::move(marked).value(), std::move(edges).value()};
}

void CoarsePass::draw(const Shot& shot, const Piece& piece, const SharedPasses& shared) {
    const Matrix projection = shot.camera.projectionMatrix(shot.size, piece.area);
    const int width = static_cast<int>(piece.area.width);
    const int height = static_cast<int>(piece.area.height);
    glViewport(0, 0, width, height);
    const std::array<float, 4> clear = rgba(shot.style.paper, 1.0);
    glDepthMask(GL_TRUE);
    glClearColor(clear[0], clear[1], clear[2], clear[3]);
    glClear(GL_COLOR_BUFFER_BIT | GL_DEPTH_BUFFER_BIT);
    glEnable(GL_DEPTH_TEST);
    glDepthFunc(GL_LESS);
    // Faces give way a little, so that the edges that lie in them stay whole.
    glEnable(GL_POLYGON_OFFSET_FILL);
    glPolygonOffset(1.0F, 1.0F);
    drawBodies(shot, projection, shared.meshes);
    drawMarked(shot, piece, projection, shared.meshes);
    glDisable(GL_POLYGON_OFFSET_FILL);
    shared.ground.draw(shot, piece.ground, projection);
    const LineView view{shot, projection, width, height, 1};
    shared.lines.drawShiningThrough(view, shared.meshes);
    drawEdges(shot, projection, shared.meshes);
    shared.lines.drawCutOutlines(view, shared.meshes);
}

void CoarsePass::drawBodies(const Shot& shot, const Matrix& projection, GpuMeshes& meshes) {
    // The far sides of closed bodies are never seen; a cut opens them, should its faces not close.
    if (!shot.scene.section)
        glEnable(GL_CULL_FACE);
    setView(bodies_, shot, projection);
    for (const SceneItem& item : shot.scene.items) {
        if (item.state == ItemState::NotKnown)
            continue;
        setItem(bodies_, item);
        bodies_.assertReady();
        meshes.of(item.mesh).body.draw();
    }
    glDisable(GL_CULL_FACE);
}

void CoarsePass::drawMarked(const Shot& shot, const Piece& piece, const Matrix& projection,
                            GpuMeshes& meshes) {
    setView(marked_, shot, projection);
    marked_.set("uPaper", rgb(shot.style.paper));
    marked_.set("uStripePixels", f(stripeSpacing(shot.style)));
    marked_.set("uOrigin",
                std::array<float, 2>{f(piece.area.left), f(shot.size.height - piece.area.bottom())});
    for (const SceneItem& item : shot.scene.items) {
        const GpuMesh& mesh = meshes.of(item.mesh);
        setItem(marked_, item);
        marked_.set("uHatchAcross", hatchAcross(shot, item));
        marked_.set("uCut", 1);
        marked_.assertReady();
        mesh.caps.draw();
        marked_.set("uCut", 0);
        if (item.state == ItemState::NotKnown)
            mesh.body.draw();
    }
}

void CoarsePass::drawEdges(const Shot& shot, const Matrix& projection, GpuMeshes& meshes) {
    // In full ink: they stand for the outlines too.
    glDepthFunc(GL_LEQUAL);
    glDepthMask(GL_FALSE);
    edges_.use();
    edges_.set("uView", shot.camera.viewMatrix());
    edges_.set("uProjection", projection);
    edges_.set("uTowardEye", f(kTowardEyePixels * mmPerPixel(shot)));
    edges_.set("uInk", rgb(shot.style.ink));
    for (const SceneItem& item : shot.scene.items) {
        edges_.set("uModel", matrixOf(item.drawnPose()));
        edges_.assertReady();
        meshes.of(item.mesh).edges.drawThin();
    }
    glDepthMask(GL_TRUE);
}

} // namespace gapwise
