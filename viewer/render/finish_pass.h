#pragma once

#include "viewer/render/scene_pass.h"
#include "viewer/render/target.h"

#include <vector>

namespace gapwise {

/// Makes the pixels of a picture from its samples, and draws the outlines.
class FinishPass {
public:
    static Result<FinishPass> make();

    /// From the samples of a piece into the picture, which stays bound.
    void draw(const Shot& shot, const Piece& piece, const SampleTarget& samples, const ColourTarget& picture,
              GpuMeshes& meshes);

private:
    /// A rectangle in pixels, from the lower left corner.
    struct Box {
        int left = 0;
        int low = 0;
        int right = 0; ///< Not part of it any more.
        int high = 0;  ///< Not part of it any more.
        bool empty() const { return left >= right || low >= high; }
    };
    /// Around what an item and its outlines cover; empty when that is outside of the piece.
    static Box boxOf(const SceneItem& item, const Bounds& bounds, const Shot& shot, const Piece& piece);
    /// Upright strips side by side that cover the piece; each box holds all that can have an outline there.
    static std::vector<Box> outlinedStrips(const Shot& shot, const Piece& piece, GpuMeshes& meshes);
    void setOutlines(const Shot& shot);
    static void drawInto(const Box& box);

    FinishPass(ShaderProgram outlines, ShaderProgram resolve)
        : outlines_{std::move(outlines)}, resolve_{std::move(resolve)}, array_{gl::VertexArray::make()} {}

    ShaderProgram outlines_;
    ShaderProgram resolve_; ///< Where there are no outlines.
    gl::VertexArray array_;
};

} // namespace gapwise
