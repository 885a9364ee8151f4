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

FinishPass::Box FinishPass::boxOf(const SceneItem& item, const Bounds& bounds, const Shot& shot,
                                  const Piece& piece) {
    const auto width = static_cast<int>(piece.area.width);
    const auto height = static_cast<int>(piece.area.height);
    // What comes near to the eye, or lies behind it, may be seen anywhere.
    if (shot.camera.projection == Projection::Perspective)
        return {0, 0, width, height};
    constexpr double kFar = std::numeric_limits<double>::max();
    Spot low{kFar, kFar};
    Spot high{-kFar, -kFar};
    for (const Vec3& corner : cornersOf(bounds)) {
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

std::vector<FinishPass::Box> FinishPass::outlinedStrips(const Shot& shot, const Piece& piece,
                                                        GpuMeshes& meshes) {
    std::vector<Box> boxes;
    std::vector<int> cuts{0, static_cast<int>(piece.area.width)};
    for (const SceneItem& item : shot.scene.items) {
        const Box box = boxOf(item, meshes.of(item.mesh).bounds, shot, piece);
        if (box.empty())
            continue;
        boxes.push_back(box);
        cuts.insert(cuts.end(), {box.left, box.right});
    }
    std::ranges::sort(cuts);
    std::vector<Box> strips;
    for (std::size_t i = 1; i < cuts.size(); ++i) {
        if (cuts[i - 1] == cuts[i])
            continue;
        Box strip{.left = cuts[i - 1], .right = cuts[i]};
        for (const Box& box : boxes) {
            if (box.left >= strip.right || box.right <= strip.left)
                continue;
            const bool first = strip.empty();
            strip.low = first ? box.low : std::min(strip.low, box.low);
            strip.high = first ? box.high : std::max(strip.high, box.high);
        }
        strips.push_back(strip);
    }
    return strips;
}

void FinishPass::drawInto(const Box& box) {
    if (box.empty())
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
    const std::vector<Box> strips = outlinedStrips(shot, piece, meshes);
    outlines_.use();
    setOutlines(shot);
    for (const Box& strip : strips)
        drawInto(strip);
    resolve_.use();
    resolve_.set("uColour", 0);
    resolve_.set("uSamples", shot.style.samples);
    resolve_.assertReady();
    for (const Box& strip : strips) {
        drawInto({strip.left, 0, strip.right, strip.low});
        drawInto({strip.left, strip.high, strip.right, picture.height});
    }
    glDisable(GL_SCISSOR_TEST);
}

} // namespace gapwise
