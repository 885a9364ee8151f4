#include "tests/benchmarks/median.h"

#include "models/frame/read_frame.h"
#include "viewer/render/offscreen.h"
#include "viewer/render/renderer.h"
#include "viewer/scene/assembled_build.h"
#include "viewer/scene/read_meshes.h"
#include "viewer/scene/scene_of.h"

#include <epoxy/gl.h>
#include <fmt/format.h>

#include <chrono>
#include <stdexcept>

namespace {

using namespace gapwise;

constexpr PictureSize kSize{1280, 720};
constexpr int kTurns = 24; ///< Of 5° each.

template <class T>
T orThrow(Result<T> result) {
    if (!result)
        throw std::runtime_error(describe(result.errors().front()));
    return std::move(result).value();
}

/// Milliseconds.
template <class Work>
double timed(const Work& work) {
    const auto start = std::chrono::steady_clock::now();
    work();
    const std::chrono::duration<double, std::milli> taken = std::chrono::steady_clock::now() - start;
    return taken.count();
}

/// What it takes to turn the cut through the whole cartridge, and to draw what is left as the window does
/// while something moves.
void measure(const char* id, Section::Kind kind, Renderer& renderer) {
    const DataFolder data{GAPWISE_TEST_SHARE};
    const Frame frame = orThrow(readFrame(data, id));
    const Meshes meshes = orThrow(readMeshes(data, frame));
    const Build build = assembledBuild(frame);
    SectionCuts cuts;
    std::vector<double> turned;
    std::vector<double> kept;
    std::vector<double> drawn;
    std::vector<double> again;
    std::size_t triangles = 0;
    for (int i = 0; i < kTurns; ++i) {
        const Section section{kind, Clock::seenFrom(Side::Compressor, Degrees{5.0 * i})};
        Scene scene;
        const auto make = [&] {
            scene = sceneOf(frame, build, meshes, {.section = section, .cuts = &cuts});
            scene.ground.benchTop = true;
        };
        turned.push_back(timed(make));
        kept.push_back(timed(make));
        const SceneCamera camera =
            fittedCamera(scene.points(), Look{Degrees{150.0}, Degrees{25.0}}, Projection::Parallel,
                         {kSize, {90.0, 60.0, kSize.width - 180.0, kSize.height - 120.0}});
        const auto draw = [&] {
            orThrow(renderer.drawTexture(
                {.scene = scene, .camera = camera, .size = kSize, .style = {.coarse = true}}));
            glFinish();
        };
        drawn.push_back(timed(draw));
        again.push_back(timed(draw));
        triangles = 0;
        for (const SceneItem& item : scene.items)
            triangles += item.uncut().body.faces.triangles.size();
    }
    const double scene = bench::medianOf(turned);
    const double picture = bench::medianOf(drawn);
    fmt::print("{:<10} {:<8} {} parts' triangles: first cut {:.1f} ms, a turn {:.1f} ms, the same again "
               "{:.1f} ms, its picture {:.1f} ms, drawn again {:.1f} ms: {:.0f} pictures a second\n",
               id, kind == Section::Kind::Half ? "half" : "quarter", triangles, turned.front(), scene,
               bench::medianOf(kept), picture, bench::medianOf(again), 1000.0 / (scene + picture));
}

} // namespace

int main() {
    const OffscreenContext context = orThrow(OffscreenContext::make());
    Renderer renderer = orThrow(Renderer::make());
    const auto* driver = reinterpret_cast<const char*>(glGetString(GL_RENDERER));
    fmt::print("the cut turns by 5°, {} × {}, {}\n", kSize.width, kSize.height, driver);
    for (const char* id : {"alder-72", "birch-150"})
        for (const Section::Kind kind : {Section::Kind::Half, Section::Kind::Quarter})
            measure(id, kind, renderer);
}
