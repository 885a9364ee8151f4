#pragma once

#include "viewer/scene/scene.h"
#include "viewer/scene/weld.h"

#include <algorithm>
#include <cstdint>
#include <map>
#include <utility>

namespace gapwise::cut {

/// The rest of the body and its caps as one mesh: closed when the caps fit.
inline TriangleMesh closedRest(const DrawnMesh& drawn) {
    TriangleMesh whole = drawn.body.faces;
    const auto offset = static_cast<std::uint32_t>(whole.positions.size());
    whole.positions.insert(whole.positions.end(), drawn.caps.positions.begin(), drawn.caps.positions.end());
    whole.normals.insert(whole.normals.end(), drawn.caps.normals.begin(), drawn.caps.normals.end());
    for (const auto& [a, b, c] : drawn.caps.triangles)
        whole.triangles.push_back({a + offset, b + offset, c + offset});
    return whole;
}

inline double lengthOf(const EdgeLines& lines) {
    double sum = 0.0;
    for (const auto& [a, b] : lines.lines)
        sum += length(lines.positions[a] - lines.positions[b]);
    return sum;
}

/// Directed edges that no triangle walks the other way: none where the mesh is closed.
inline std::size_t openEdges(const TriangleMesh& mesh) {
    const std::vector<std::uint32_t> points = weldedCorners(mesh.positions);
    std::map<std::pair<std::uint32_t, std::uint32_t>, int> walked;
    for (const auto& t : mesh.triangles)
        for (const auto& [from, to] : {std::pair{t[0], t[1]}, std::pair{t[1], t[2]}, std::pair{t[2], t[0]}}) {
            const std::uint32_t a = points[from];
            const std::uint32_t b = points[to];
            if (a != b)
                walked[std::minmax(a, b)] += a < b ? 1 : -1;
        }
    return static_cast<std::size_t>(
        std::count_if(walked.begin(), walked.end(), [](const auto& edge) { return edge.second != 0; }));
}

} // namespace gapwise::cut
