#include "geometry/meshfile/glb.h"

#include <algorithm>
#include <bit>
#include <cassert>
#include <cstring>
#include <limits>
#include <sstream>
#include <tiny_gltf.h>
#include <vector>

namespace gapwise {

namespace {

constexpr double kMetresPerMm = 1e-3;
/// glTF buffers hold little-endian numbers; the writer copies them as they lie in memory.
static_assert(std::endian::native == std::endian::little);

/// Appends arrays of numbers to the one buffer, each with its view and accessor.
class Arrays {
public:
    explicit Arrays(tinygltf::Model& model) : model_{model} { model_.buffers.resize(1); }

    int vectors(const std::vector<Vec3>& values, double scale, bool withLimits) {
        std::vector<float> numbers;
        for (const Vec3& v : values) {
            for (const double value : {v.x, v.y, v.z})
                numbers.push_back(static_cast<float>(value * scale));
        }
        tinygltf::Accessor accessor;
        accessor.type = TINYGLTF_TYPE_VEC3;
        accessor.componentType = TINYGLTF_COMPONENT_TYPE_FLOAT;
        accessor.count = values.size();
        if (withLimits)
            setLimits(accessor, numbers);
        return add(numbers.data(), numbers.size() * sizeof(float), TINYGLTF_TARGET_ARRAY_BUFFER, accessor);
    }

    template <std::size_t N>
    int indices(const std::vector<std::array<std::uint32_t, N>>& values) {
        tinygltf::Accessor accessor;
        accessor.type = TINYGLTF_TYPE_SCALAR;
        accessor.componentType = TINYGLTF_COMPONENT_TYPE_UNSIGNED_INT;
        accessor.count = values.size() * N;
        return add(values.data(), values.size() * sizeof(values[0]), TINYGLTF_TARGET_ELEMENT_ARRAY_BUFFER,
                   accessor);
    }

private:
    tinygltf::Model& model_;

    static void setLimits(tinygltf::Accessor& accessor, const std::vector<float>& numbers) {
        accessor.minValues.assign(3, std::numeric_limits<double>::max());
        accessor.maxValues.assign(3, std::numeric_limits<double>::lowest());
        for (std::size_t i = 0; i < numbers.size(); ++i) {
            const auto value = static_cast<double>(numbers[i]);
            accessor.minValues[i % 3] = std::min(accessor.minValues[i % 3], value);
            accessor.maxValues[i % 3] = std::max(accessor.maxValues[i % 3], value);
        }
    }

    int add(const void* bytes, std::size_t size, int target, tinygltf::Accessor& accessor) {
        std::vector<unsigned char>& data = model_.buffers[0].data;
        tinygltf::BufferView view;
        view.buffer = 0;
        view.byteOffset = data.size();
        view.byteLength = size;
        view.target = target;
        data.resize(data.size() + size);
        std::memcpy(data.data() + view.byteOffset, bytes, size);
        accessor.bufferView = static_cast<int>(model_.bufferViews.size());
        model_.bufferViews.push_back(view);
        model_.accessors.push_back(accessor);
        return static_cast<int>(model_.accessors.size() - 1);
    }
};

void addNode(tinygltf::Model& model, const std::string& name, const tinygltf::Primitive& primitive) {
    tinygltf::Mesh mesh;
    mesh.name = name;
    mesh.primitives.push_back(primitive);
    tinygltf::Node node;
    node.name = name;
    node.mesh = static_cast<int>(model.meshes.size());
    model.meshes.push_back(mesh);
    model.scenes[0].nodes.push_back(static_cast<int>(model.nodes.size()));
    model.nodes.push_back(node);
}

tinygltf::Model modelOf(const PartMesh& mesh) {
    tinygltf::Model model;
    model.asset.version = "2.0";
    model.asset.generator = "gapwise-shapes";
    model.scenes.resize(1);
    model.defaultScene = 0;
    Arrays arrays{model};

    tinygltf::Primitive faces;
    faces.mode = TINYGLTF_MODE_TRIANGLES;
    faces.attributes["POSITION"] = arrays.vectors(mesh.faces.positions, kMetresPerMm, true);
    faces.attributes["NORMAL"] = arrays.vectors(mesh.faces.normals, 1.0, false);
    faces.indices = arrays.indices(mesh.faces.triangles);
    addNode(model, "faces", faces);
    if (!mesh.edges.lines.empty()) {
        tinygltf::Primitive edges;
        edges.mode = TINYGLTF_MODE_LINE;
        edges.attributes["POSITION"] = arrays.vectors(mesh.edges.positions, kMetresPerMm, true);
        edges.indices = arrays.indices(mesh.edges.lines);
        addNode(model, "edges", edges);
    }
    return model;
}

} // namespace

std::string glbOf(const PartMesh& mesh) {
    assert(!mesh.faces.triangles.empty() && mesh.faces.normals.size() == mesh.faces.positions.size());
    tinygltf::Model model = modelOf(mesh);
    std::ostringstream stream;
    tinygltf::TinyGLTF writer;
    [[maybe_unused]] const bool written = writer.WriteGltfSceneToStream(&model, stream, false, true);
    assert(written); // into memory, from a model without images: nothing is left to fail
    return std::move(stream).str();
}

} // namespace gapwise
