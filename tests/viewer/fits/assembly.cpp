#include "tests/viewer/fits/assembly.h"

#include "geometry/meshfile/meshfile.h"
#include "geometry/shape/inside.h"
#include "models/frame/read_frame.h"
#include "tests/support/print_error.h"
#include "viewer/scene/assembled_build.h"
#include "viewer/scene/read_meshes.h"
#include "viewer/scene/scene_of.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <gtest/gtest.h>
#include <map>
#include <memory>
#include <numbers>

namespace gapwise::test {

namespace {

const DataFolder kData{GAPWISE_TEST_SHARE};

/// Between two places of which only one is inside: where the surface lies.
double surfaceBetween(double outside, double inside, const std::function<bool(double)>& isInside) {
    for (int i = 0; i < 60; ++i) {
        const double middle = (outside + inside) / 2.0;
        (isInside(middle) ? inside : outside) = middle;
    }
    return inside;
}

std::vector<Span> spansOf(const Span& range, const std::function<bool(double)>& isInside) {
    constexpr double kStep = 0.02;
    std::vector<Span> spans;
    bool in = false;
    double last = range.from - kStep;
    for (double at = range.from - kStep / 2.0; at < range.to + kStep; last = at, at += kStep) {
        const bool now = isInside(at);
        if (now && !in)
            spans.push_back({surfaceBetween(last, at, isInside), at});
        if (!now && in)
            spans.back().to = surfaceBetween(at, last, isInside);
        in = now;
    }
    return spans;
}

Vec3 pointAt(const Beside& place, double z) {
    const double turn = place.clock * std::numbers::pi / 180.0;
    return {place.r * std::sin(turn), place.r * std::cos(turn), z};
}

} // namespace

Vec3 Placed::own(const Vec3& point) const {
    const Vec3 from = point - pose.shift;
    return {dot(from, pose.xAxis), dot(from, pose.yAxis), dot(from, pose.zAxis)};
}

bool Placed::holds(const Vec3& point) const {
    return isInside(type->shape, own(point));
}

const Placed* Assembly::find(const std::string& id) const {
    const auto found =
        std::ranges::find_if(parts, [&](const Placed& placed) { return placed.part.text == id; });
    return found == parts.end() ? nullptr : &*found;
}

const Placed& Assembly::at(const std::string& id) const {
    const Placed* found = find(id);
    EXPECT_NE(found, nullptr) << id << " in " << frame.id.text;
    return found ? *found : parts.front();
}

const Assembly& assemblyOf(const std::string& frame) {
    static std::map<std::string, Assembly> made;
    const auto [entry, isNew] = made.try_emplace(frame);
    Assembly& assembly = entry->second;
    if (!isNew)
        return assembly;
    assembly.frame = readFrame(kData, frame).value();
    // An empty mesh stands for each type: only the poses are wanted.
    Meshes meshes;
    for (const PartType& type : assembly.frame.types)
        meshes[type.id] = std::make_shared<const DrawnMesh>();
    const Scene scene = sceneOf(assembly.frame, assembledBuild(assembly.frame), meshes, {.casings = true});
    for (const SceneItem& item : scene.items)
        assembly.parts.push_back({item.part, assembly.frame.typeOf(item.part), item.pose});
    return assembly;
}

TriangleMesh drawnIn(const Assembly& assembly, const Placed& placed) {
    const Result<PartMesh> mesh =
        readMesh(kData.meshFile(assembly.frame.id, placed.type->id), assembly.frame.id.text);
    EXPECT_TRUE(mesh) << (mesh ? "" : describe(mesh.errors()[0]));
    return mesh ? moved(mesh->faces, placed.pose) : TriangleMesh{};
}

std::vector<Span> alongShaft(const Placed& placed, const Beside& place) {
    const Tube tube = tubeAround(placed.type->shape);
    const double up = placed.pose.zAxis.z;
    const auto [from, to] =
        std::minmax({placed.pose.shift.z + up * tube.z.from, placed.pose.shift.z + up * tube.z.to});
    return spansOf({from, to}, [&](double z) { return placed.holds(pointAt(place, z)); });
}

Span reachAlong(const Placed& placed, const Beside& place) {
    const std::vector<Span> spans = alongShaft(placed, place);
    EXPECT_FALSE(spans.empty()) << placed.part.text << " at r " << place.r << ", " << place.clock << "°";
    return spans.empty() ? Span{} : Span{spans.front().from, spans.back().to};
}

double innerRadiusAt(const Placed& placed, double z, double clock) {
    const Tube tube = tubeAround(placed.type->shape);
    const std::vector<Span> spans = spansOf({std::max(0.0, tube.r.from), tube.r.to}, [&](double r) {
        return r >= 0.0 && placed.holds(pointAt({r, clock}, z));
    });
    EXPECT_FALSE(spans.empty()) << placed.part.text << " at z " << z << ", " << clock << "°";
    return spans.empty() ? 0.0 : spans.front().from;
}

} // namespace gapwise::test
