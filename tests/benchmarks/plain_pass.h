#pragma once

#include "viewer/render/gpu_mesh.h"
#include "viewer/scene/scene.h"

namespace gapwise::bench {

/// The least that a picture of a scene can be: its triangles once, lit from one side, into a texture with
/// depth. Needs a current context, and must die before it.
class PlainPass {
public:
    explicit PlainPass(const PictureSize& size);

    void draw(const Scene& scene, const SceneCamera& camera);

private:
    PictureSize size_;
    GpuMeshes meshes_{};
    gl::Program program_{};
    gl::Texture colour_{};
    gl::Texture depth_{};
    gl::Framebuffer target_{};
};

} // namespace gapwise::bench
