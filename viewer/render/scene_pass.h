#pragma once

#include "viewer/render/gpu_mesh.h"
#include "viewer/render/ground_pass.h"
#include "viewer/render/line_pass.h"
#include "viewer/render/renderer.h"
#include "viewer/render/shader_program.h"

namespace gapwise {

/// The piece of a picture that one pass draws.
struct Piece {
    PictureArea area{}; ///< In whole pixels of the picture.
    LaidGround ground{};
};

/// What the ways of drawing a scene share.
struct SharedPasses {
    GroundPass& ground;
    LinePass& lines;
    GpuMeshes& meshes;
};

/// Draws the samples of a scene: faces, cut faces, ground, true edges, borders of cuts.
class ScenePass {
public:
    static Result<ScenePass> make();

    /// Into the bound frame, which has `samples` samples a pixel and takes kinds beside colours.
    void draw(const Shot& shot, const Piece& piece, const SharedPasses& shared);

private:
    explicit ScenePass(ShaderProgram faces) : faces_{std::move(faces)} {}
    void drawFaces(const Shot& shot, const Piece& piece, const Matrix& projection, GpuMeshes& meshes);

    ShaderProgram faces_;
};

} // namespace gapwise
