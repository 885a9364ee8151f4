#include "viewer/render/shadow_pass.h"

#include "viewer/render/matrix_of.h"

#include <epoxy/gl.h>

namespace gapwise {

namespace {

constexpr int kFinePixels = 256;
constexpr int kCoarsePixels = 128;

} // namespace

std::optional<ShadowField> shadowFieldOf(const Scene& scene) {
    std::vector<Vec3> points = scene.points();
    if (points.empty())
        return std::nullopt;
    const Pose toGround = inGroundAxes(scene.ground, Pose{});
    for (Vec3& point : points)
        point = toGround.point(point);
    const Bounds bounds = boundsOf(points);
    const double height = bounds.high.y - bounds.low.y;
    const double margin = 0.6 * height; // As far as the softest shadow spreads.
    const auto f = [](double value) { return static_cast<float>(value); };
    return ShadowField{.field = {f(bounds.low.x - margin), f(bounds.low.z - margin),
                                 f(bounds.high.x - bounds.low.x + 2.0 * margin),
                                 f(bounds.high.z - bounds.low.z + 2.0 * margin)},
                       .ground = f(bounds.low.y - (scene.ground.benchTop ? 0.0 : 0.04 * height)),
                       .reach = f(0.5 * height)};
}

Result<ShadowPass> ShadowPass::make() {
    auto heights = ShaderProgram::make("shadow.vert", "shadow.frag");
    if (!heights)
        return heights.errors();
    auto blur = ShaderProgram::make("fullscreen.vert", "blur.frag");
    if (!blur)
        return blur.errors();
    return ShadowPass{std::move(heights).value(), std::move(blur).value()};
}

std::optional<Error> ShadowPass::makeTargets(Field& field, int pixels) {
    for (ColourTarget* target : {&field.sharp, &field.soft}) {
        if (target->frame)
            continue;
        auto made = makeColourTarget(pixels, pixels, ColourFormat::Shade);
        if (!made)
            return made.errors().front();
        *target = std::move(made).value();
    }
    return std::nullopt;
}

void ShadowPass::drawHeights(const Scene& scene, const ShadowField& field, GpuMeshes& meshes) {
    glDisable(GL_DEPTH_TEST);
    glDisable(GL_CULL_FACE);
    // The deepest shade wins: what hangs lowest.
    glEnable(GL_BLEND);
    glBlendEquation(GL_MAX);
    glClearColor(0.0F, 0.0F, 0.0F, 0.0F);
    glClear(GL_COLOR_BUFFER_BIT);
    heights_.use();
    heights_.set("uField", field.field);
    heights_.set("uGround", field.ground);
    heights_.set("uReach", field.reach);
    for (const SceneItem& item : scene.items) {
        heights_.set("uModel", matrixOf(inGroundAxes(scene.ground, item.drawnPose())));
        heights_.assertReady();
        meshes.of(item.mesh).body.draw();
    }
    glBlendEquation(GL_FUNC_ADD);
    glDisable(GL_BLEND);
}

void ShadowPass::blurFromTo(const ColourTarget& from, const ColourTarget& to, std::array<float, 2> step) {
    glBindFramebuffer(GL_FRAMEBUFFER, to.frame.name());
    glActiveTexture(GL_TEXTURE0);
    glBindTexture(GL_TEXTURE_2D, from.colour.name());
    blur_.use();
    blur_.set("uSource", 0);
    blur_.set("uStep", step);
    blur_.assertReady();
    glBindVertexArray(array_.name());
    glDrawArrays(GL_TRIANGLES, 0, 3);
}

Result<unsigned> ShadowPass::draw(const Scene& scene, const ShadowField& field, ShadowGrain grain,
                                  GpuMeshes& meshes) {
    const bool fine = grain == ShadowGrain::Fine;
    Field& into = fine ? fine_ : coarse_;
    const int pixels = fine ? kFinePixels : kCoarsePixels;
    if (auto fault = makeTargets(into, pixels))
        return *fault;
    glBindFramebuffer(GL_FRAMEBUFFER, into.sharp.frame.name());
    glViewport(0, 0, pixels, pixels);
    drawHeights(scene, field, meshes);
    // The same width in mm along both directions of the ground; each round closes the gaps between the
    // samples of the wider one after it. Coarse pixels leave no gaps for the first to close.
    for (const float step : {0.010F, 0.027F, 0.070F}) {
        if (!fine && step < 0.02F)
            continue;
        blurFromTo(into.sharp, into.soft, {step * field.reach / field.field[2], 0.0F});
        blurFromTo(into.soft, into.sharp, {0.0F, step * field.reach / field.field[3]});
    }
    return into.sharp.colour.name();
}

} // namespace gapwise
