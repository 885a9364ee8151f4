#pragma once

#include "viewer/render/gpu_mesh.h"
#include "viewer/render/renderer.h"
#include "viewer/render/shader_program.h"
#include "viewer/render/shadow_pass.h"

namespace gapwise {

/// The piece of a picture that one pass draws.
struct Piece {
    PictureArea area{}; ///< In whole pixels of the picture.
    std::optional<ShadowField> shadow{};
    unsigned shadowTexture = 0U;
};

/// Draws the samples of a scene: ground, faces, cut faces, true edges, borders of cuts.
class ScenePass {
public:
    static Result<ScenePass> make();

    /// Into the bound frame, which has `samples` samples a pixel.
    void draw(const Shot& shot, const Piece& piece, GpuMeshes& meshes);

private:
    ScenePass(ShaderProgram faces, ShaderProgram lines, ShaderProgram ground, ShaderProgram bench)
        : faces_{std::move(faces)},
          lines_{std::move(lines)},
          ground_{std::move(ground)},
          bench_{std::move(bench)},
          array_{gl::VertexArray::make()} {}
    void drawBenchTop(const Shot& shot, const Matrix& projection);
    void drawGround(const Shot& shot, const Piece& piece, const Matrix& projection);
    void drawFaces(const Shot& shot, const Piece& piece, const Matrix& projection, GpuMeshes& meshes);
    void drawLines(const Shot& shot, const Piece& piece, const Matrix& projection, GpuMeshes& meshes);
    void drawShiningThrough(const Shot& shot, GpuMeshes& meshes);

    ShaderProgram faces_;
    ShaderProgram lines_;
    ShaderProgram ground_;
    ShaderProgram bench_;
    gl::VertexArray array_;
};

/// Pixels of the finished picture that a line or an outline is wide.
double edgeWidth(const DrawStyle& style);
double outlineWidth(const DrawStyle& style);

} // namespace gapwise
