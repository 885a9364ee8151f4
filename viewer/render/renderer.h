#pragma once

#include "geometry/base/result.h"
#include "viewer/render/image.h"
#include "viewer/scene/scene.h"

#include <memory>

namespace gapwise {

/// How a scene is put on paper.
struct DrawStyle {
    Colour paper{0.957, 0.949, 0.925}; ///< The ground that everything stands on, corner to corner.
    Colour ink{0.122, 0.165, 0.200};   ///< Edges and outlines.
    int samples = 2;                   ///< Along each side of a pixel, 1 to 4.
    double lineScale = 1.0;            ///< 1 in a picture 900 pixels high.
    bool shadow = true;
    /// For while something moves: the same colours in a fraction of the time, one sample a pixel, thin edges
    /// and no outlines.
    bool coarse = false;
};

/// What is drawn, and from where.
struct Shot {
    const Scene& scene;
    SceneCamera camera{};
    PictureSize size{};
    DrawStyle style{};
};

/// Draws scenes with the OpenGL context that is current, and keeps the meshes on the GPU from one picture to
/// the next. Must die before the context.
class Renderer {
public:
    /// An error when the driver refuses the shaders.
    static Result<Renderer> make();

    Renderer(Renderer&&) noexcept;
    Renderer& operator=(Renderer&&) noexcept;
    ~Renderer();

    /// Draws into a texture (RGBA, rows from the bottom) that stays until the next call, and gives its name.
    /// The size must not exceed `largestTexture`. An error when the driver lacks the memory.
    Result<unsigned> drawTexture(const Shot& shot);

    /// Draws a picture of any size, in pieces where it is larger than what the driver draws at once.
    Result<Image> drawImage(const Shot& shot);

    /// The largest width and height that drawTexture takes with so many samples.
    int largestTexture(int samples) const;

    /// Pieces of drawImage are at most this wide and high; for tests.
    void limitPieces(int pixels);

private:
    class Parts;
    explicit Renderer(std::unique_ptr<Parts> parts);
    std::unique_ptr<Parts> parts_;
};

} // namespace gapwise
