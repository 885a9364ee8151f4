#include "viewer/render/renderer.h"

#include "viewer/render/coarse_pass.h"
#include "viewer/render/finish_pass.h"
#include "viewer/render/kept_memory.h"
#include "viewer/render/part_look.h"

#include <epoxy/gl.h>

#include <algorithm>
#include <cassert>
#include <cmath>

namespace gapwise {

namespace {

/// Pieces of a large picture are at most this wide and high: a piece of samples then fits in little memory.
constexpr int kPiecePixels = 2048;

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
    struct Passes {
        GroundPass ground;
        LinePass lines;
        ScenePass scene;
        FinishPass finish;
        CoarsePass coarse;
    };
    explicit Parts(Passes passes) : passes_{std::move(passes)} {}

    static Result<Passes> makePasses() {
        auto ground = GroundPass::make();
        if (!ground)
            return ground.errors();
        auto lines = LinePass::make();
        if (!lines)
            return lines.errors();
        auto scene = ScenePass::make();
        if (!scene)
            return scene.errors();
        auto finish = FinishPass::make();
        if (!finish)
            return finish.errors();
        auto coarse = CoarsePass::make();
        if (!coarse)
            return coarse.errors();
        return Passes{std::move(ground).value(), std::move(lines).value(), std::move(scene).value(),
                      std::move(finish).value(), std::move(coarse).value()};
    }

    /// The ground is the same for all pieces of one picture.
    Result<Piece> startShot(const Shot& shot) {
        meshes_.sweep();
        const auto ground = passes_.ground.lay(shot, meshes_);
        if (!ground)
            return ground.errors();
        return Piece{.area = whole(shot.size), .ground = *ground};
    }

    /// Draws one piece and leaves it bound for reading; its texture.
    Result<unsigned> drawPiece(const Shot& shot, const Piece& piece) {
        const int width = static_cast<int>(piece.area.width);
        const int height = static_cast<int>(piece.area.height);
        if (auto fault = preparePicture(width, height))
            return *fault;
        if (auto fault = shot.style.coarse ? drawCoarse(shot, piece) : drawFine(shot, piece))
            return *fault;
        if (glGetError() == GL_OUT_OF_MEMORY)
            return Error{.where = "OpenGL", .found = "out of memory", .allowed = "a smaller picture"};
        return picture_.colour.name();
    }

    int pieceLimit = kPiecePixels;

private:
    std::optional<Error> preparePicture(int width, int height) {
        if (picture_.width == width && picture_.height == height)
            return std::nullopt;
        picture_ = {}; // The old one makes room first.
        auto made = makeColourTarget(width, height, ColourFormat::Picture);
        if (!made)
            return made.errors().front();
        picture_ = std::move(made).value();
        return std::nullopt;
    }

    std::optional<Error> drawCoarse(const Shot& shot, const Piece& piece) {
        if (!picture_.depth)
            if (auto fault = giveDepth(picture_))
                return fault;
        glBindFramebuffer(GL_FRAMEBUFFER, picture_.frame.name());
        passes_.coarse.draw(shot, piece, {passes_.ground, passes_.lines, meshes_});
        return std::nullopt;
    }

    std::optional<Error> drawFine(const Shot& shot, const Piece& piece) {
        const int width = picture_.width * shot.style.samples;
        const int height = picture_.height * shot.style.samples;
        if (samples_.width != width || samples_.height != height) {
            samples_ = {}; // The old one makes room first.
            auto made = makeSampleTarget(width, height);
            if (!made)
                return made.errors().front();
            samples_ = std::move(made).value();
        }
        glBindFramebuffer(GL_FRAMEBUFFER, samples_.frame.name());
        passes_.scene.draw(shot, piece, {passes_.ground, passes_.lines, meshes_});
        passes_.finish.draw(shot, piece, samples_, picture_, meshes_);
        return std::nullopt;
    }

    Passes passes_;
    GpuMeshes meshes_{};
    SampleTarget samples_{};
    ColourTarget picture_{};
};

Renderer::Renderer(std::unique_ptr<Parts> parts) : parts_{std::move(parts)} {}
Renderer::Renderer(Renderer&&) noexcept = default;
Renderer& Renderer::operator=(Renderer&&) noexcept = default;
Renderer::~Renderer() = default;

Result<Renderer> Renderer::make() {
    keepFreedMemory();
    auto passes = Parts::makePasses();
    if (!passes)
        return passes.errors();
    return Renderer{std::make_unique<Parts>(std::move(passes).value())};
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
