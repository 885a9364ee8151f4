#pragma once

#include "viewer/panels/portrait.h"
#include "viewer/render/gl_objects.h"
#include "viewer/render/renderer.h"
#include "viewer/scene/scene_of.h"

#include <map>
#include <string>

namespace gapwise {

/// Whose part is drawn, and with what.
struct PortraitOf {
    const Frame& frame;
    const Meshes& meshes;
};

/// Pictures of one part alone, each in a texture of its own. One is drawn again only when its part, its size
/// or its turn changed.
class PartPortraits {
public:
    static Result<PartPortraits> make();

    struct Drawn {
        unsigned texture = 0; ///< RGBA, rows from the bottom; stays until the next call with the same look.
        bool settled = true;  ///< False: it is being turned, and the next picture is finer.
    };
    Result<Drawn> draw(const PortraitOf& of, const Portrait& wanted);

    long drawn() const { return drawn_; } ///< Pictures drawn so far.

private:
    struct Kept {
        std::string sceneKey{};
        Scene scene{};
        std::string key{}; ///< Of the picture in the texture.
        gl::Texture texture{};
        bool settled = true;
    };
    /// Coarse while only the turn changes, fine once it stays.
    Result<Image> pictureOf(const Kept& kept, const Portrait& wanted, bool coarse);
    explicit PartPortraits(Renderer renderer) : renderer_{std::move(renderer)} {}

    Renderer renderer_;
    std::map<Portrait::Look, Kept> kept_{};
    long drawn_ = 0;
};

/// The camera of a portrait of a scene that shows one part; `scene` must not be empty.
SceneCamera portraitCamera(const Scene& scene, const Portrait& wanted, const PictureSize& size);

} // namespace gapwise
