#include "viewer/render/finish_pass.h"

#include "viewer/render/part_look.h"

#include <epoxy/gl.h>

#include <algorithm>
#include <cmath>
#include <limits>

namespace gapwise {

namespace {

float f(double value) {
    return static_cast<float>(value);
}

/// Half the width of an outline, in samples.
double reachOf(const DrawStyle& style) {
    return std::max(1.0, outlineWidth(style) * style.samples / 2.0);
}

std::array<Vec3, 8> cornersOf(const Bounds& box) {
    std::array<Vec3, 8> corners{};
    for (unsigned i = 0; i < corners.size(); ++i)
        corners[i] = {(i & 1U) != 0U ? box.high.x : box.low.x, (i & 2U) != 0U ? box.high.y : box.low.y,
                      (i & 4U) != 0U ? box.high.z : box.low.z};
    return corners;
}

} // namespace

Result<FinishPass> FinishPass::make() {
    auto outlines = ShaderProgram::make("fullscreen.vert", "finish.frag");
    if (!outlines)
        return outlines.errors();
    auto resolve = ShaderProgram::make("fullscreen.vert", "resolve.frag");
    if (!resolve)
        return resolve.errors();
    return FinishPass{std::move(outlines).value(), std::move(resolve).value()};
}

FinishPass::Box FinishPass::outlinedBox(const Shot& shot, const Piece& piece, GpuMeshes& meshes) {
    const auto width = static_cast<int>(piece.area.width);
    const auto height = static_cast<int>(piece.area.height);
    // What comes near to the eye, or lies behind it, may be seen anywhere.
    if (shot.camera.projection == Projection::Perspective)
        return {0, 0, width, height};
    constexpr double kFar = std::numeric_limits<double>::max();
    Spot low{kFar, kFar};
    Spot high{-kFar, -kFar};
    for (const SceneItem& item : shot.scene.items)
        for (const Vec3& corner : cornersOf(meshes.of(item.mesh).bounds)) {
            const PicturePoint at = shot.camera.toPicture(item.drawnPose().point(corner), shot.size);
            low = {std::min(low.x, at.x), std::min(low.y, at.y)};
            high = {std::max(high.x, at.x), std::max(high.y, at.y)};
        }
    const double margin = reachOf(shot.style) + 1.0;
    const auto inside = [](double value, int most) {
        return static_cast<int>(std::clamp(value, 0.0, static_cast<double>(most)));
    };
    return {inside(std::floor(low.x - margin - piece.area.left), width),
            inside(std::floor(piece.area.bottom() - high.y - margin), height),
            inside(std::ceil(high.x + margin - piece.area.left), width),
            inside(std::ceil(piece.area.bottom() - low.y + margin), height)};
}

void FinishPass::drawInto(const Box& box) {
    if (box.left >= box.right || box.low >= box.high)
        return;
    glScissor(box.left, box.low, box.right - box.left, box.high - box.low);
    glDrawArrays(GL_TRIANGLES, 0, 3);
}

void FinishPass::setOutlines(const Shot& shot) {
    const SceneCamera& camera = shot.camera;
    const double reach = reachOf(shot.style);
    const double mmPerSample = mmPerPixel(shot) / shot.style.samples;
    outlines_.set("uColour", 0);
    outlines_.set("uKind", 1);
    outlines_.set("uDepth", 2);
    outlines_.set("uSamples", shot.style.samples);
    outlines_.set("uReach", f(reach));
    outlines_.set("uInk", rgba(shot.style.ink, 0.85));
    outlines_.set("uNearFar", std::array<float, 2>{f(camera.nearMm), f(camera.farMm)});
    outlines_.set("uParallel", camera.projection == Projection::Parallel ? 1 : 0);
    outlines_.set("uJump", f(6.0 * mmPerSample * reach));
    outlines_.assertReady();
}

void FinishPass::draw(const Shot& shot, const Piece& piece, const SampleTarget& samples,
                      const ColourTarget& picture, GpuMeshes& meshes) {
    glBindFramebuffer(GL_FRAMEBUFFER, picture.frame.name());
    glViewport(0, 0, picture.width, picture.height);
    glDisable(GL_DEPTH_TEST);
    const std::array<unsigned, 3> textures{samples.colour.name(), samples.kind.name(), samples.depth.name()};
    for (unsigned unit = 0; unit < textures.size(); ++unit) {
        glActiveTexture(GL_TEXTURE0 + unit);
        glBindTexture(GL_TEXTURE_2D, textures[unit]);
    }
    glActiveTexture(GL_TEXTURE0);
    glEnable(GL_SCISSOR_TEST);
    glBindVertexArray(array_.name());
    const Box box = outlinedBox(shot, piece, meshes);
    outlines_.use();
    setOutlines(shot);
    drawInto(box);
    resolve_.use();
    resolve_.set("uColour", 0);
    resolve_.set("uSamples", shot.style.samples);
    resolve_.assertReady();
    const bool none = box.left >= box.right || box.low >= box.high;
    if (none) {
        drawInto({0, 0, picture.width, picture.height});
    } else {
        drawInto({0, 0, picture.width, box.low});
        drawInto({0, box.high, picture.width, picture.height});
        drawInto({0, box.low, box.left, box.high});
        drawInto({box.right, box.low, picture.width, box.high});
    }
    glDisable(GL_SCISSOR_TEST);
}

} // namespace gapwise
