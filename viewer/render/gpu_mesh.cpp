#include "viewer/render/gpu_mesh.h"

#include <epoxy/gl.h>

#include <vector>

namespace gapwise {

namespace {

constexpr int kFloatsPerPoint = 3;

void append(std::vector<float>& floats, const Vec3& v) {
    floats.insert(floats.end(), {static_cast<float>(v.x), static_cast<float>(v.y), static_cast<float>(v.z)});
}

/// Two points side by side at locations 0 and 1 of the bound array and buffer.
void describePairs(unsigned divisor) {
    constexpr int kStride = 2 * kFloatsPerPoint * static_cast<int>(sizeof(float));
    for (const unsigned location : {0U, 1U}) {
        const std::size_t offset = sizeof(float) * kFloatsPerPoint * location;
        glEnableVertexAttribArray(location);
        glVertexAttribPointer(location, kFloatsPerPoint, GL_FLOAT, GL_FALSE, kStride,
                              // The library takes an offset as a pointer.
                              reinterpret_cast<const void*>(offset)); // NOLINT(performance-no-int-to-ptr)
        glVertexAttribDivisor(location, divisor);
    }
}

template <class Value>
void upload(unsigned target, const std::vector<Value>& values) {
    glBufferData(target, static_cast<GLsizeiptr>(values.size() * sizeof(Value)), values.data(),
                 GL_STATIC_DRAW);
}

GpuFaces facesOf(const TriangleMesh& mesh) {
    GpuFaces faces;
    if (mesh.triangles.empty())
        return faces;
    std::vector<float> corners;
    corners.reserve(mesh.positions.size() * 2U * kFloatsPerPoint);
    for (std::size_t i = 0; i < mesh.positions.size(); ++i) {
        append(corners, mesh.positions[i]);
        append(corners, mesh.normals[i]);
    }
    faces.array = gl::VertexArray::make();
    faces.corners = gl::Buffer::make();
    faces.indices = gl::Buffer::make();
    faces.indexCount = static_cast<int>(mesh.triangles.size() * 3U);
    glBindVertexArray(faces.array.name());
    glBindBuffer(GL_ARRAY_BUFFER, faces.corners.name());
    upload(GL_ARRAY_BUFFER, corners);
    glBindBuffer(GL_ELEMENT_ARRAY_BUFFER, faces.indices.name());
    upload(GL_ELEMENT_ARRAY_BUFFER, mesh.triangles);
    describePairs(0U);
    glBindVertexArray(0U);
    return faces;
}

GpuLines linesOf(const EdgeLines& edges) {
    GpuLines lines;
    if (edges.lines.empty())
        return lines;
    std::vector<float> ends;
    ends.reserve(edges.lines.size() * 2U * kFloatsPerPoint);
    for (const auto& [a, b] : edges.lines) {
        append(ends, edges.positions[a]);
        append(ends, edges.positions[b]);
    }
    lines.array = gl::VertexArray::make();
    lines.ends = gl::Buffer::make();
    lines.count = static_cast<int>(edges.lines.size());
    glBindVertexArray(lines.array.name());
    glBindBuffer(GL_ARRAY_BUFFER, lines.ends.name());
    upload(GL_ARRAY_BUFFER, ends);
    describePairs(1U);
    lines.thin = gl::VertexArray::make();
    glBindVertexArray(lines.thin.name());
    glEnableVertexAttribArray(0U);
    glVertexAttribPointer(0U, kFloatsPerPoint, GL_FLOAT, GL_FALSE, 0, nullptr);
    glBindVertexArray(0U);
    return lines;
}

/// Nothing but the origin for a mesh without corners.
Bounds boundsOfDrawn(const DrawnMesh& mesh) {
    std::vector<Vec3> corners = mesh.body.faces.positions;
    corners.insert(corners.end(), mesh.caps.positions.begin(), mesh.caps.positions.end());
    return corners.empty() ? Bounds{} : boundsOf(corners);
}

} // namespace

void GpuFaces::draw() const {
    if (indexCount == 0)
        return;
    glBindVertexArray(array.name());
    glDrawElements(GL_TRIANGLES, indexCount, GL_UNSIGNED_INT, nullptr);
}

void GpuLines::draw() const {
    if (count == 0)
        return;
    constexpr int kCorners = 4;
    glBindVertexArray(array.name());
    glDrawArraysInstanced(GL_TRIANGLE_STRIP, 0, kCorners, count);
}

void GpuLines::drawThin() const {
    if (count == 0)
        return;
    glBindVertexArray(thin.name());
    glDrawArrays(GL_LINES, 0, 2 * count);
}

const GpuMesh& GpuMeshes::of(const std::shared_ptr<const DrawnMesh>& mesh) {
    const auto found = kept_.find(mesh.get());
    if (found != kept_.end() && !found->second.source.expired())
        return found->second.mesh;
    Kept kept{.source = mesh,
              .mesh = {.bounds = boundsOfDrawn(*mesh),
                       .body = facesOf(mesh->body.faces),
                       .caps = facesOf(mesh->caps),
                       .edges = linesOf(mesh->body.edges),
                       .cutOutline = linesOf(mesh->cutOutline)}};
    return kept_.insert_or_assign(mesh.get(), std::move(kept)).first->second.mesh;
}

void GpuMeshes::sweep() {
    std::erase_if(kept_, [](const auto& entry) { return entry.second.source.expired(); });
}

} // namespace gapwise
