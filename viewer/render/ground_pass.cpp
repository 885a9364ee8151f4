#include "viewer/render/ground_pass.h"

#include "viewer/render/matrix_of.h"
#include "viewer/render/part_look.h"

#include <epoxy/gl.h>

namespace gapwise {

namespace {

constexpr Colour kBenchTop{0.914, 0.894, 0.847};
constexpr Colour kBenchEdge{0.76, 0.73, 0.66};
constexpr double kBenchEdgePixels = 1.6;

float f(double value) {
    return static_cast<float>(value);
}

/// How steeply the eye looks down on the ground: 1 from straight above, negative from below.
double steepness(const Shot& shot) {
    return -dot(shot.camera.camera.forward(), shot.scene.ground.axes.yAxis);
}

bool isSame(const Pose& a, const Pose& b) {
    return a.xAxis == b.xAxis && a.yAxis == b.yAxis && a.zAxis == b.zAxis && a.shift == b.shift;
}

} // namespace

bool GroundPass::Standing::One::operator==(const One& other) const {
    return !mesh.owner_before(other.mesh) && !other.mesh.owner_before(mesh) && isSame(drawn, other.drawn);
}

bool GroundPass::Standing::operator==(const Standing& other) const {
    return items == other.items && isSame(axes, other.axes) && benchTop == other.benchTop;
}

GroundPass::Standing GroundPass::standingOf(const Scene& scene) {
    Standing standing{.axes = scene.ground.axes, .benchTop = scene.ground.benchTop};
    for (const SceneItem& item : scene.items)
        standing.items.push_back({item.mesh, item.drawnPose()});
    return standing;
}

Result<GroundPass> GroundPass::make() {
    auto shadows = ShadowPass::make();
    if (!shadows)
        return shadows.errors();
    auto shade = ShaderProgram::make("ground.vert", "ground.frag");
    if (!shade)
        return shade.errors();
    auto bench = ShaderProgram::make("ground.vert", "bench.frag");
    if (!bench)
        return bench.errors();
    return GroundPass{std::move(shadows).value(), std::move(shade).value(), std::move(bench).value()};
}

Result<LaidGround> GroundPass::lay(const Shot& shot, GpuMeshes& meshes) {
    // From the side the ground is a line, from below there is none and a bench would hide everything.
    constexpr double kLeastForShadow = 0.05;
    constexpr double kLeastForBench = 0.02;
    Standing standing = standingOf(shot.scene);
    if (!(standing == standing_)) {
        laid_ = {.field = shadowFieldOf(shot.scene)};
        if (shot.scene.ground.benchTop)
            laid_.benchTop = benchTopOf(shot.scene);
        standing_ = std::move(standing);
    }
    LaidGround seen;
    if (steepness(shot) >= kLeastForBench)
        seen.benchTop = laid_.benchTop;
    if (!shot.style.shadow || !laid_.field || steepness(shot) <= kLeastForShadow)
        return seen;
    if (laid_.shadow == 0U || (!fine_ && !shot.style.coarse)) {
        fine_ = !shot.style.coarse;
        const auto made =
            shadows_.draw(shot.scene, *laid_.field, fine_ ? ShadowGrain::Fine : ShadowGrain::Coarse, meshes);
        if (!made)
            return made.errors();
        laid_.shadow = *made;
    }
    seen.field = laid_.field;
    seen.shadow = laid_.shadow;
    return seen;
}

void GroundPass::draw(const Shot& shot, const LaidGround& laid, const Matrix& projection) {
    glEnable(GL_DEPTH_TEST);
    glDepthFunc(GL_LEQUAL);
    glDepthMask(GL_FALSE);
    glColorMaski(1, GL_FALSE, GL_FALSE, GL_FALSE, GL_FALSE);
    glBindVertexArray(array_.name());
    if (laid.benchTop)
        drawBenchTop(shot, *laid.benchTop, projection);
    if (laid.field)
        drawShadow(shot, laid, projection);
    glColorMaski(1, GL_TRUE, GL_TRUE, GL_TRUE, GL_TRUE);
    glDepthMask(GL_TRUE);
}

void GroundPass::drawBenchTop(const Shot& shot, const BenchTop& top, const Matrix& projection) {
    const Vec3 middle = inGroundAxes(shot.scene.ground, Pose{.shift = top.middle}).shift;
    const int samples = shot.style.coarse ? 1 : shot.style.samples;
    glDisable(GL_BLEND);
    bench_.use();
    bench_.set("uView", shot.camera.viewMatrix());
    bench_.set("uProjection", projection);
    bench_.set("uAxes", matrixOf(shot.scene.ground.axes));
    bench_.set("uField", std::array<float, 4>{f(middle.x - top.halfWidth), f(middle.z - top.halfDepth),
                                              f(2.0 * top.halfWidth), f(2.0 * top.halfDepth)});
    bench_.set("uGround", f(middle.y));
    bench_.set("uTop", rgb(kBenchTop));
    bench_.set("uInk", rgb(kBenchEdge));
    bench_.set("uEdgePixels", f(kBenchEdgePixels * shot.style.lineScale * samples));
    bench_.assertReady();
    glDrawArrays(GL_TRIANGLE_STRIP, 0, 4);
}

void GroundPass::drawShadow(const Shot& shot, const LaidGround& laid, const Matrix& projection) {
    glEnable(GL_BLEND);
    glBlendFunc(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA);
    glActiveTexture(GL_TEXTURE0);
    glBindTexture(GL_TEXTURE_2D, laid.shadow);
    shade_.use();
    shade_.set("uView", shot.camera.viewMatrix());
    shade_.set("uProjection", projection);
    shade_.set("uAxes", matrixOf(shot.scene.ground.axes));
    shade_.set("uField", laid.field->field);
    shade_.set("uGround", laid.field->ground);
    shade_.set("uShadow", 0);
    shade_.set("uInk", std::array<float, 4>{0.30F, 0.27F, 0.22F, 0.42F});
    shade_.assertReady();
    glDrawArrays(GL_TRIANGLE_STRIP, 0, 4);
    glDisable(GL_BLEND);
}

} // namespace gapwise
