#pragma once

#include "viewer/render/gpu_mesh.h"
#include "viewer/render/renderer.h"
#include "viewer/render/shader_program.h"

namespace gapwise {

/// A camera and what of the picture it draws into: `width` times `height` samples, some to a pixel.
struct LineView {
    const Shot& shot;
    const Matrix& projection;
    int width = 0;
    int height = 0;
    int samples = 1; ///< Along each side of a pixel.
};

/// Smooth lines of any width over the faces of a scene; they leave depth and outlines as they are.
class LinePass {
public:
    static Result<LinePass> make();

    /// True edges and borders of cut faces.
    void drawAll(const LineView& view, GpuMeshes& meshes);
    void drawCutOutlines(const LineView& view, GpuMeshes& meshes);
    /// The edges of what is in hand, through whatever hides them.
    void drawShiningThrough(const LineView& view, GpuMeshes& meshes);

private:
    explicit LinePass(ShaderProgram lines) : lines_{std::move(lines)} {}
    void start(const LineView& view);
    void drawPieces(const SceneItem& item, const GpuLines& lines);
    void finish();

    ShaderProgram lines_;
};

} // namespace gapwise
