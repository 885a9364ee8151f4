#pragma once

#include "viewer/render/gl_objects.h"
#include "viewer/scene/scene.h"

#include <map>
#include <memory>

namespace gapwise {

/// Triangles on the GPU: position at location 0, normal at 1.
struct GpuFaces {
    gl::VertexArray array{};
    gl::Buffer corners{};
    gl::Buffer indices{};
    int indexCount = 0;

    void draw() const;
};

/// Line pieces on the GPU.
struct GpuLines {
    gl::VertexArray array{}; ///< One instance a piece: start at location 0, end at 1.
    gl::VertexArray thin{};  ///< Two corners a piece, at location 0.
    gl::Buffer ends{};
    int count = 0;

    void draw() const;
    void drawThin() const; ///< As the driver's own lines.
};

struct GpuMesh {
    Bounds bounds{}; ///< Of body and cut faces, in the part's own axes.
    GpuFaces body{};
    GpuFaces caps{};
    GpuLines edges{};
    GpuLines cutOutline{};
};

/// Keeps meshes on the GPU from one picture to the next.
class GpuMeshes {
public:
    /// The mesh on the GPU, brought there the first time.
    const GpuMesh& of(const std::shared_ptr<const DrawnMesh>& mesh);
    /// Drops what no scene holds any more.
    void sweep();
    std::size_t count() const { return kept_.size(); }

private:
    struct Kept {
        std::weak_ptr<const DrawnMesh> source{};
        GpuMesh mesh{};
    };
    std::map<const DrawnMesh*, Kept> kept_{};
};

} // namespace gapwise
