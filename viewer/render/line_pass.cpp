#include "viewer/render/line_pass.h"

#include "viewer/render/matrix_of.h"
#include "viewer/render/part_look.h"

#include <epoxy/gl.h>

namespace gapwise {

namespace {

float f(double value) {
    return static_cast<float>(value);
}

} // namespace

Result<LinePass> LinePass::make() {
    auto lines = ShaderProgram::make("line.vert", "line.frag");
    if (!lines)
        return lines.errors();
    return LinePass{std::move(lines).value()};
}

void LinePass::start(const LineView& view) {
    glEnable(GL_DEPTH_TEST);
    glDepthMask(GL_FALSE);
    glDepthFunc(GL_LEQUAL);
    glColorMaski(1, GL_FALSE, GL_FALSE, GL_FALSE, GL_FALSE);
    glEnable(GL_BLEND);
    glBlendFunc(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA);
    lines_.use();
    lines_.set("uView", view.shot.camera.viewMatrix());
    lines_.set("uProjection", view.projection);
    lines_.set("uViewport", std::array<float, 2>{f(view.width), f(view.height)});
    lines_.set("uTowardEye", f(kTowardEyePixels * mmPerPixel(view.shot)));
}

void LinePass::finish() {
    glDisable(GL_BLEND);
    glColorMaski(1, GL_TRUE, GL_TRUE, GL_TRUE, GL_TRUE);
    glDepthMask(GL_TRUE);
}

void LinePass::drawPieces(const SceneItem& item, const GpuLines& lines) {
    lines_.set("uModel", matrixOf(item.drawnPose()));
    lines_.assertReady();
    lines.draw();
}

void LinePass::drawAll(const LineView& view, GpuMeshes& meshes) {
    start(view);
    for (const SceneItem& item : view.shot.scene.items) {
        const GpuMesh& mesh = meshes.of(item.mesh);
        lines_.set("uWidth", f(edgeWidth(view.shot.style) * view.samples));
        lines_.set("uInk", rgba(view.shot.style.ink, kEdgeInk));
        drawPieces(item, mesh.edges);
        lines_.set("uWidth", f(cutWidth(view.shot.style) * view.samples));
        lines_.set("uInk", rgba(view.shot.style.ink, 1.0));
        drawPieces(item, mesh.cutOutline);
    }
    finish();
}

void LinePass::drawCutOutlines(const LineView& view, GpuMeshes& meshes) {
    start(view);
    lines_.set("uWidth", f(cutWidth(view.shot.style) * view.samples));
    lines_.set("uInk", rgba(view.shot.style.ink, 1.0));
    for (const SceneItem& item : view.shot.scene.items)
        drawPieces(item, meshes.of(item.mesh).cutOutline);
    finish();
}

void LinePass::drawShiningThrough(const LineView& view, GpuMeshes& meshes) {
    start(view);
    glDisable(GL_DEPTH_TEST);
    lines_.set("uWidth", f(cutWidth(view.shot.style) * view.samples));
    lines_.set("uInk", rgba(kAccent, kShiningThrough));
    for (const SceneItem& item : view.shot.scene.items)
        if (item.inHand)
            drawPieces(item, meshes.of(item.mesh).edges);
    glEnable(GL_DEPTH_TEST);
    finish();
}

} // namespace gapwise
