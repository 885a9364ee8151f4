#pragma once

#include "viewer/render/scene_pass.h"

namespace gapwise {

/// Draws a scene as it is shown while something moves: the colours of ScenePass, lit at corners only, with
/// thin edges and without outlines.
class CoarsePass {
public:
    static Result<CoarsePass> make();

    /// Into the bound frame, one sample a pixel.
    void draw(const Shot& shot, const Piece& piece, const SharedPasses& shared);

private:
    CoarsePass(ShaderProgram bodies, ShaderProgram marked, ShaderProgram edges)
        : bodies_{std::move(bodies)}, marked_{std::move(marked)}, edges_{std::move(edges)} {}
    void drawBodies(const Shot& shot, const Matrix& projection, GpuMeshes& meshes);
    void drawMarked(const Shot& shot, const Piece& piece, const Matrix& projection, GpuMeshes& meshes);
    void drawEdges(const Shot& shot, const Matrix& projection, GpuMeshes& meshes);

    ShaderProgram bodies_;
    ShaderProgram marked_; ///< Cut faces, and bodies of which something is not known.
    ShaderProgram edges_;
};

} // namespace gapwise
