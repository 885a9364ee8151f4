#include "tests/benchmarks/median.h"
#include "tests/benchmarks/plain_pass.h"

#include "models/build/read_build.h"
#include "viewer/render/offscreen.h"
#include "viewer/render/renderer.h"
#include "viewer/scene/read_meshes.h"
#include "viewer/workplace/standpoint.h"

#include <epoxy/gl.h>
#include <fmt/format.h>

#include <chrono>
#include <stdexcept>

namespace {

using namespace gapwise;

constexpr PictureSize kSize{1280, 720};
constexpr int kRounds = 25;

template <class T>
T orThrow(Result<T> result) {
    if (!result)
        throw std::runtime_error(describe(result.errors().front()));
    return std::move(result).value();
}

struct Subject {
    Scene scene{};
    SceneCamera camera{};
};

/// The complete demo cartridge over its bench, pulled apart, as the window shows it.
Subject pulledApart() {
    const DataFolder data{GAPWISE_TEST_SHARE};
    const BuildSheet sheet = orThrow(readBuildSheet(data, data.root / "builds/alder-72-good.build.json"));
    const Meshes meshes = orThrow(readMeshes(data, sheet.frame));
    Subject subject{.scene = sceneOf(sheet.frame, sheet.build, meshes, {.explode = 1.0})};
    Standpoint standpoint;
    standpoint.pulledApart = 1.0;
    const Stance stance = stanceOf(standpoint, sheet.build.attitude.value_or(Attitude{}));
    subject.scene.ground = {.axes = stance.bench, .benchTop = stance.onBench};
    subject.camera = fittedCamera(subject.scene.points(), stance.camera, Projection::Parallel,
                                  {kSize, {90.0, 60.0, kSize.width - 180.0, kSize.height - 120.0}});
    return subject;
}

std::size_t trianglesOf(const Scene& scene) {
    std::size_t count = 0;
    for (const SceneItem& item : scene.items)
        count += item.mesh->body.faces.triangles.size();
    return count;
}

/// Milliseconds until the picture is wholly drawn.
template <class Draw>
double timeOf(const Draw& draw) {
    const auto start = std::chrono::steady_clock::now();
    draw();
    glFinish();
    const std::chrono::duration<double, std::milli> taken = std::chrono::steady_clock::now() - start;
    return taken.count();
}

void measure(const Subject& subject) {
    Renderer renderer = orThrow(Renderer::make());
    bench::PlainPass plain{kSize};
    const auto withSamples = [&](int samples) {
        return timeOf([&] {
            orThrow(renderer.drawTexture({.scene = subject.scene,
                                          .camera = subject.camera,
                                          .size = kSize,
                                          .style = {.samples = samples, .lineScale = kSize.height / 900.0}}));
        });
    };
    std::vector<double> plainMs;
    std::vector<double> movingMs;
    std::vector<double> restingMs;
    for (int i = -1; i < kRounds; ++i) { // The first brings meshes and shaders to the driver.
        const double one = timeOf([&] { plain.draw(subject.scene, subject.camera); });
        const double two = withSamples(1);
        const double three = withSamples(2);
        if (i < 0)
            continue;
        plainMs.push_back(one);
        movingMs.push_back(two);
        restingMs.push_back(three);
    }
    const double least = bench::medianOf(plainMs);
    const auto print = [&](const char* what, double ms) {
        fmt::print("  {:<34} {:6.1f} ms, ratio {:.2f}\n", what, ms, ms / least);
    };
    print("one plain lit pass", least);
    print("as in the window while it moves", bench::medianOf(movingMs));
    print("as in the window at rest", bench::medianOf(restingMs));
}

} // namespace

int main() {
    const Subject subject = pulledApart();
    const OffscreenContext context = orThrow(OffscreenContext::make());
    const auto* driver = reinterpret_cast<const char*>(glGetString(GL_RENDERER));
    fmt::print("alder-72-good pulled apart, {} × {}, {} triangles, median of {} rounds, {}\n", kSize.width,
               kSize.height, trianglesOf(subject.scene), kRounds, driver);
    measure(subject);
}
