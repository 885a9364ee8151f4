#include "viewer/window/part_portrait.h"

#include "viewer/scene/part_alone.h"

#include <epoxy/gl.h>

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

namespace gapwise {

namespace {

constexpr Colour kSheet{0.992, 0.992, 0.984}; ///< As the sheet around it.

PictureSize sizeOf(const Portrait& wanted) {
    return {static_cast<int>(std::lround(wanted.area.width)),
            static_cast<int>(std::lround(wanted.area.height))};
}

/// Of what is drawn.
std::string sceneKeyOf(const Frame& frame, const Portrait& wanted) {
    return fmt::format("{} {} {}", frame.id.text, wanted.part.text, wanted.asTheRulesWant);
}

/// Of how it is drawn.
std::string lookKeyOf(const Portrait& wanted) {
    const PictureSize size = sizeOf(wanted);
    return fmt::format(" {} {} {} {}x{}", wanted.onItsAxis, wanted.azimuth.value, wanted.elevation.value,
                       size.width, size.height);
}

Look lookOf(const Portrait& wanted) {
    switch (wanted.look) {
    case Portrait::Look::FromCompressor: return lookFrom(Side::Compressor);
    case Portrait::Look::FromTurbine: return lookFrom(Side::Turbine);
    case Portrait::Look::Turned: break;
    }
    return {.azimuth = wanted.azimuth, .elevation = wanted.elevation};
}

/// Lays an image into a texture, its rows from the bottom.
gl::Texture textureOf(const Image& image) {
    std::vector<std::uint32_t> rows;
    rows.reserve(image.pixels.size());
    for (int y = image.size.height - 1; y >= 0; --y) {
        const auto row = image.pixels.begin() + static_cast<std::ptrdiff_t>(y) * image.size.width;
        rows.insert(rows.end(), row, row + image.size.width);
    }
    gl::Texture texture = gl::Texture::make();
    glBindTexture(GL_TEXTURE_2D, texture.name());
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MIN_FILTER, GL_LINEAR);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MAG_FILTER, GL_LINEAR);
    glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MAX_LEVEL, 0);
    glPixelStorei(GL_UNPACK_ALIGNMENT, 4);
    glTexImage2D(GL_TEXTURE_2D, 0, GL_RGBA8, image.size.width, image.size.height, 0, GL_BGRA,
                 GL_UNSIGNED_INT_8_8_8_8_REV, rows.data());
    glBindTexture(GL_TEXTURE_2D, 0U);
    return texture;
}

} // namespace

SceneCamera portraitCamera(const Scene& scene, const Portrait& wanted, const PictureSize& size) {
    const std::vector<Vec3> points = scene.points();
    const double margin = 0.08 * std::min(size.width, size.height);
    const FitInto into{size, {margin, margin, size.width - 2.0 * margin, size.height - 2.0 * margin}};
    SceneCamera camera = fittedCamera(points, lookOf(wanted), Projection::Parallel, into);
    if (wanted.look == Portrait::Look::Turned || !wanted.onItsAxis)
        return camera;
    // The axis stands in the middle, so that a dial can be laid around it.
    double radius = 0.0;
    for (const Vec3& p : points)
        radius = std::max(radius, std::hypot(p.x, p.y));
    const Vec3 forward = camera.camera.forward();
    const Vec3 target{0.0, 0.0, camera.camera.target().z};
    const double away = length(camera.camera.target() - camera.camera.eye());
    camera.camera = Camera{target - forward * away, target, camera.camera.up()};
    const double across = std::min(1.0, size.aspect());
    camera.heightMm = 2.0 * radius / (kPortraitReach * across);
    return camera;
}

Result<PartPortraits> PartPortraits::make() {
    Result<Renderer> renderer = Renderer::make();
    if (!renderer)
        return renderer.errors();
    return PartPortraits{std::move(renderer).value()};
}

Result<Image> PartPortraits::pictureOf(const Kept& kept, const Portrait& wanted, bool coarse) {
    const PictureSize size = sizeOf(wanted);
    constexpr double kUsualHeight = 420.0; // A part is looked at from nearby: its lines are not hairlines.
    return renderer_.drawImage(Shot{.scene = kept.scene,
                                    .camera = portraitCamera(kept.scene, wanted, size),
                                    .size = size,
                                    .style = {.paper = kSheet,
                                              .lineScale = std::max(1.0, size.height / kUsualHeight),
                                              .shadow = false,
                                              .coarse = coarse}});
}

Result<PartPortraits::Drawn> PartPortraits::draw(const PortraitOf& of, const Portrait& wanted) {
    Kept& kept = kept_[wanted.look];
    const std::string sceneKey = sceneKeyOf(of.frame, wanted);
    const std::string key = sceneKey + lookKeyOf(wanted);
    if (kept.key == key && kept.settled && kept.texture)
        return Drawn{kept.texture.name()};
    const bool samePart = kept.sceneKey == sceneKey;
    if (!samePart) {
        kept.scene = partAlone(of.frame, wanted.part, of.meshes,
                               wanted.asTheRulesWant ? AloneAs::TheRulesWant : AloneAs::ItIsMade);
        kept.sceneKey = sceneKey;
    }
    if (kept.scene.points().empty())
        return Error{.where = wanted.part.text, .found = "nothing to draw", .allowed = "a part with a mesh"};
    const bool coarse = samePart && kept.key != key;
    const Result<Image> image = pictureOf(kept, wanted, coarse);
    if (!image)
        return image.errors();
    kept.texture = textureOf(*image);
    kept.key = key;
    kept.settled = !coarse;
    ++drawn_;
    return Drawn{kept.texture.name(), kept.settled};
}

} // namespace gapwise
