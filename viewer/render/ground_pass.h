#pragma once

#include "viewer/render/renderer.h"
#include "viewer/render/shader_program.h"
#include "viewer/render/shadow_pass.h"

namespace gapwise {

/// What lies on the ground under a scene.
struct LaidGround {
    std::optional<BenchTop> benchTop{};
    std::optional<ShadowField> field{};
    unsigned shadow = 0U; ///< A texture over the field.
};

/// Lays bench top and shadow under a scene. Both depend on what stands there, not on the eye, and are kept
/// until a mesh, a drawn pose or the ground is another.
class GroundPass {
public:
    static Result<GroundPass> make();

    /// A coarse shot does with a coarse shadow when there is no fine one yet.
    Result<LaidGround> lay(const Shot& shot, GpuMeshes& meshes);

    /// Into what the bound frame has left bare: where its depth is still the farthest.
    void draw(const Shot& shot, const LaidGround& laid, const Matrix& projection);

private:
    /// What the ground depends on. Holds no mesh alive, and takes no new one for one that is gone.
    struct Standing {
        struct One {
            std::weak_ptr<const DrawnMesh> mesh{};
            Pose drawn{};
            bool operator==(const One& other) const;
        };
        std::vector<One> items{};
        Pose axes{};
        bool benchTop = false;
        bool operator==(const Standing& other) const;
    };
    static Standing standingOf(const Scene& scene);

    GroundPass(ShadowPass shadows, ShaderProgram shade, ShaderProgram bench)
        : shadows_{std::move(shadows)},
          shade_{std::move(shade)},
          bench_{std::move(bench)},
          array_{gl::VertexArray::make()} {}
    void drawBenchTop(const Shot& shot, const BenchTop& top, const Matrix& projection);
    void drawShadow(const Shot& shot, const LaidGround& laid, const Matrix& projection);

    ShadowPass shadows_;
    ShaderProgram shade_;
    ShaderProgram bench_;
    gl::VertexArray array_;
    Standing standing_{};
    LaidGround laid_{}; ///< Under what stands there; its shadow is 0 until one is asked for.
    bool fine_ = false; ///< Whether the shadow is.
};

} // namespace gapwise
