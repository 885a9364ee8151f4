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
#include <utility>

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

/// Milliseconds.
template <class Work>
double timed(const Work& work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    const std::chrono::duration<double, std::milli> taken = std::chrono::steady_clock::now() - start;
    return taken.count();
}

/// Milliseconds until the picture is wholly drawn.
template <class Draw>
double timeOf(const Draw& draw) {
    return timed([&] {
        draw();
        glFinish();
    });
}

/// One way to draw the picture, and what it took each time.
struct Way {
    const char* what = "";
    DrawStyle style{};
    bool partMoves = false; ///< Since the picture before: its shadow moves too.
    std::vector<double> ms{};
};

std::vector<Way> ways() {
    const double lines = kSize.height / 900.0;
    return {{.what = "in the window: the eye moves", .style = {.lineScale = lines, .coarse = true}},
            {.what = "  without shadow", .style = {.lineScale = lines, .shadow = false, .coarse = true}},
            {.what = "in the window: a part moves",
             .style = {.lineScale = lines, .coarse = true},
             .partMoves = true},
            {.what = "in the window: at rest", .style = {.lineScale = lines}},
            {.what = "  after a part moved", .style = {.lineScale = lines}, .partMoves = true}};
}

/// In turns, so that all meet the same machine.
void measure(Subject subject) {
    Renderer renderer = orThrow(Renderer::make());
    bench::PlainPass plain{kSize};
    std::vector<Way> all = ways();
    std::vector<double> plainMs;
    for (int i = -1; i < kRounds; ++i) { // The first brings meshes and shaders to the driver.
        const double least = timeOf([&] { plain.draw(subject.scene, subject.camera); });
        if (i >= 0)
            plainMs.push_back(least);
        for (Way& way : all) {
            const Shot shot{
                .scene = subject.scene, .camera = subject.camera, .size = kSize, .style = way.style};
            const auto draw = [&] { orThrow(renderer.drawTexture(shot)); };
            if (i < 0 && &way == &all.front())
                fmt::print("  {:<34} {:6.1f} ms\n", "the first picture", timeOf(draw));
            timeOf(draw); // Whatever is kept from picture to picture is there now.
            if (way.partMoves)
                subject.scene.items.back().pulledMm += 0.01;
            const double taken = timeOf(draw);
            if (i >= 0)
                way.ms.push_back(taken);
        }
    }
    const double least = bench::medianOf(plainMs);
    fmt::print("  {:<34} {:6.1f} ms\n", "one plain lit pass", least);
    for (const Way& way : all)
        fmt::print("  {:<34} {:6.1f} ms, ratio {:.2f}\n", way.what, bench::medianOf(way.ms),
                   bench::medianOf(way.ms) / least);
}

} // namespace

int main() {
    Subject subject;
    fmt::print("frame, build, meshes and scene from disk {:.1f} ms\n",
               timed([&] { subject = pulledApart(); }));
    const OffscreenContext context = orThrow(OffscreenContext::make());
    const auto* driver = reinterpret_cast<const char*>(glGetString(GL_RENDERER));
    fmt::print("alder-72-good pulled apart, {} × {}, {} triangles, median of {} rounds, {}\n", kSize.width,
               kSize.height, trianglesOf(subject.scene), kRounds, driver);
    measure(std::move(subject));
}
