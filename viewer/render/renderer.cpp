#include "viewer/render/renderer.h"

#include "viewer/render/scene_pass.h"
#include "viewer/render/target.h"

#include <epoxy/gl.h>

#include <algorithm>
#include <cassert>
#include <cmath>

namespace gapwise {

namespace {

/// Pieces of a large picture are at most this wide and high: a piece of samples then fits in little memory.
constexpr int kPiecePixels = 2048;

float f(double value) {
    return static_cast<float>(value);
}

PictureArea whole(const PictureSize& size) {
    return {.width = static_cast<double>(size.width), .height = static_cast<double>(size.height)};
}

/// Reads the inner part of a bound piece into its place in the image.
void readPiece(Image& image, const PictureArea& inner, const PictureArea& drawn) {
    const int width = static_cast<int>(inner.width);
    const int height = static_cast<int>(inner.height);
    std::vector<std::uint32_t> rows(static_cast<std::size_t>(width) * static_cast<std::size_t>(height));
    glPixelStorei(GL_PACK_ALIGNMENT, 4);
    glReadPixels(static_cast<int>(inner.left - drawn.left), static_cast<int>(drawn.bottom() - inner.bottom()),
                 width, height, GL_BGRA, GL_UNSIGNED_INT_8_8_8_8_REV, rows.data());
    for (int row = 0; row < height; ++row) {
        const auto from = rows.begin() + static_cast<std::ptrdiff_t>(row) * width;
        const auto y = static_cast<std::ptrdiff_t>(inner.bottom()) - 1 - row;
        std::copy(from, from + width,
                  image.pixels.begin() + y * image.size.width + static_cast<std::ptrdiff_t>(inner.left));
    }
}

} // namespace

/// Everything that lives on the GPU.
class Renderer::Parts {
public:
    Parts(ScenePass scene, ShadowPass shadow, ShaderProgram finish)
        : scene_{std::move(scene)},
          shadow_{std::move(shadow)},
          finish_{std::move(finish)},
          array_{gl::VertexArray::make()} {}

    /// The shadow is the same for all pieces of one picture.
    Result<Piece> startShot(const Shot& shot) {
        meshes_.sweep();
        Piece piece{.area = whole(shot.size)};
        // From the side the ground is a line, from below there is none.
        constexpr double kLowestEye = 0.05;
        if (shot.style.shadow &&
            dot(shot.camera.camera.forward(), shot.scene.ground.axes.yAxis) < -kLowestEye)
            piece.shadow = shadowFieldOf(shot.scene);
        if (piece.shadow) {
            const auto texture = shadow_.draw(shot.scene, *piece.shadow, meshes_);
            if (!texture)
                return texture.errors();
            piece.shadowTexture = *texture;
        }
        return piece;
    }

    /// Draws one piece and leaves it bound for reading; its texture.
    Result<unsigned> drawPiece(const Shot& shot, const Piece& piece) {
        const int width = static_cast<int>(piece.area.width);
        const int height = static_cast<int>(piece.area.height);
        const int samples = shot.style.samples;
        if (samples_.width != width * samples || samples_.height != height * samples) {
            samples_ = {}; // The old one makes room first.
            auto made = makeSampleTarget(width * samples, height * samples);
            if (!made)
                return made.errors();
            samples_ = std::move(made).value();
        }
        if (picture_.width != width || picture_.height != height) {
            picture_ = {};
            auto made = makeColourTarget(width, height, ColourFormat::Picture);
            if (!made)
                return made.errors();
            picture_ = std::move(made).value();
        }
        glBindFramebuffer(GL_FRAMEBUFFER, samples_.frame.name());
        scene_.draw(shot, piece, meshes_);
        finish(shot);
        if (glGetError() == GL_OUT_OF_MEMORY)
            return Error{.where = "OpenGL", .found = "out of memory", .allowed = "a smaller picture"};
        return picture_.colour.name();
    }

    int pieceLimit = kPiecePixels;

private:
    void finish(const Shot& shot) {
        glBindFramebuffer(GL_FRAMEBUFFER, picture_.frame.name());
        glViewport(0, 0, picture_.width, picture_.height);
        glDisable(GL_DEPTH_TEST);
        const std::array<unsigned, 3> textures{samples_.colour.name(), samples_.kind.name(),
                                               samples_.depth.name()};
        for (unsigned unit = 0; unit < textures.size(); ++unit) {
            glActiveTexture(GL_TEXTURE0 + unit);
            glBindTexture(GL_TEXTURE_2D, textures[unit]);
        }
        glActiveTexture(GL_TEXTURE0);
        const SceneCamera& camera = shot.camera;
        const double reach = outlineWidth(shot.style) * shot.style.samples / 2.0;
        const double mmPerSample = camera.heightMm / shot.size.height / shot.style.samples;
        const Colour& ink = shot.style.ink;
        finish_.use();
        finish_.set("uColour", 0);
        finish_.set("uKind", 1);
        finish_.set("uDepth", 2);
        finish_.set("uSamples", shot.style.samples);
        finish_.set("uReach", f(std::max(1.0, reach)));
        finish_.set("uInk", std::array<float, 4>{f(ink.red), f(ink.green), f(ink.blue), 0.85F});
        finish_.set("uNearFar", std::array<float, 2>{f(camera.nearMm), f(camera.farMm)});
        finish_.set("uParallel", camera.projection == Projection::Parallel ? 1 : 0);
        finish_.set("uJump", f(6.0 * mmPerSample * std::max(1.0, reach)));
        finish_.assertReady();
        glBindVertexArray(array_.name());
        glDrawArrays(GL_TRIANGLES, 0, 3);
    }

    ScenePass scene_;
    ShadowPass shadow_;
    ShaderProgram finish_;
    gl::VertexArray array_;
    GpuMeshes meshes_{};
    SampleTarget samples_{};
    ColourTarget picture_{};
};

Renderer::Renderer(std::unique_ptr<Parts> parts) : parts_{std::move(parts)} {}
Renderer::Renderer(Renderer&&) noexcept = default;
Renderer& Renderer::operator=(Renderer&&) noexcept = default;
Renderer::~Renderer() = default;

Result<Renderer> Renderer::make() {
    auto scene = ScenePass::make();
    if (!scene)
        return scene.errors();
    auto shadow = ShadowPass::make();
    if (!shadow)
        return shadow.errors();
    auto finish = ShaderProgram::make("fullscreen.vert", "finish.frag");
    if (!finish)
        return finish.errors();
    return Renderer{std::make_unique<Parts>(std::move(scene).value(), std::move(shadow).value(),
                                            std::move(finish).value())};
}

int Renderer::largestTexture(int samples) const {
    int largest = 0;
    glGetIntegerv(GL_MAX_TEXTURE_SIZE, &largest);
    return largest / samples;
}

void Renderer::limitPieces(int pixels) {
    assert(pixels > 0);
    parts_->pieceLimit = pixels;
}

Result<unsigned> Renderer::drawTexture(const Shot& shot) {
    assert(std::max(shot.size.width, shot.size.height) <= largestTexture(shot.style.samples));
    const auto piece = parts_->startShot(shot);
    if (!piece)
        return piece.errors();
    auto texture = parts_->drawPiece(shot, *piece);
    glBindFramebuffer(GL_FRAMEBUFFER, 0U);
    return texture;
}

Result<Image> Renderer::drawImage(const Shot& shot) {
    auto piece = parts_->startShot(shot);
    if (!piece)
        return piece.errors();
    Image image{.size = shot.size,
                .pixels = std::vector<std::uint32_t>(static_cast<std::size_t>(shot.size.width) *
                                                     static_cast<std::size_t>(shot.size.height))};
    // Lines and outlines at the border of a piece reach over from beyond it.
    const double margin = std::ceil(4.0 * outlineWidth(shot.style)) + 2.0;
    const int limit =
        std::min(parts_->pieceLimit, largestTexture(shot.style.samples) - 2 * static_cast<int>(margin));
    for (int top = 0; top < shot.size.height; top += limit)
        for (int left = 0; left < shot.size.width; left += limit) {
            const PictureArea inner{.left = static_cast<double>(left),
                                    .top = static_cast<double>(top),
                                    .width = static_cast<double>(std::min(limit, shot.size.width - left)),
                                    .height = static_cast<double>(std::min(limit, shot.size.height - top))};
            piece.value().area = {inner.left - margin, inner.top - margin, inner.width + 2.0 * margin,
                                  inner.height + 2.0 * margin};
            if (const auto drawn = parts_->drawPiece(shot, *piece); !drawn)
                return drawn.errors();
            readPiece(image, inner, piece->area);
        }
    glBindFramebuffer(GL_FRAMEBUFFER, 0U);
    return image;
}

} // namespace gapwise
