#pragma once

#include "viewer/render/gpu_mesh.h"
#include "viewer/render/shader_program.h"
#include "viewer/render/target.h"

#include <array>
#include <optional>

namespace gapwise {

/// The ground under a scene and what shades it, in the ground's axes and mm.
struct ShadowField {
    std::array<float, 4> field{}; ///< Low x, low z, width along x, width along z.
    float ground = 0.0F;          ///< Height of the ground.
    float reach = 1.0F;           ///< Height over which a shadow fades.
};

/// The field under what the scene draws; nothing for an empty scene.
std::optional<ShadowField> shadowFieldOf(const Scene& scene);

/// How finely a shadow is told: coarse is nearly the same, in an eighth of the time.
enum class ShadowGrain { Fine, Coarse };

/// Soft shadows of parts over the ground, seen straight down.
class ShadowPass {
public:
    static Result<ShadowPass> make();

    /// Draws the shadows into a texture that stays until the next call, and gives its name.
    Result<unsigned> draw(const Scene& scene, const ShadowField& field, ShadowGrain grain, GpuMeshes& meshes);

private:
    ShadowPass(ShaderProgram heights, ShaderProgram blur)
        : heights_{std::move(heights)}, blur_{std::move(blur)}, array_{gl::VertexArray::make()} {}
    /// Where a shadow is drawn and blurred, one into the other and back.
    struct Field {
        ColourTarget sharp{}; ///< Empty until the first drawing.
        ColourTarget soft{};
    };
    static std::optional<Error> makeTargets(Field& field, int pixels);
    /// Into the bound frame.
    void drawHeights(const Scene& scene, const ShadowField& field, GpuMeshes& meshes);
    void blurFromTo(const ColourTarget& from, const ColourTarget& to, std::array<float, 2> step);

    ShaderProgram heights_;
    ShaderProgram blur_;
    gl::VertexArray array_;
    Field fine_{};
    Field coarse_{};
};

} // namespace gapwise
