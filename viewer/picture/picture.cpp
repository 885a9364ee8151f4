#include "viewer/picture/picture.h"

#include "viewer/picture/annotate.h"

namespace gapwise {

namespace {

/// More samples make smoother outlines; in a large picture a pixel is small enough without.
int samplesFor(const PictureSize& size) {
    const double megapixels = static_cast<double>(size.width) * size.height / 1e6;
    if (megapixels <= 4.0)
        return 3;
    return megapixels <= 24.0 ? 2 : 1;
}

SceneCamera cameraFor(const Scene& scene, const PictureWish& wish, const PictureArea& content) {
    std::vector<Vec3> points = scene.points();
    if (points.empty())
        points = {{-1.0, -1.0, -1.0}, {1.0, 1.0, 1.0}};
    return fittedCamera(points, wish.look, wish.projection, {wish.size, content});
}

} // namespace

Look usualLook(double explode, const std::optional<Section>& section) {
    constexpr double kLevel = 9.0;
    constexpr double kSteeper = 36.0;
    constexpr double kToTheRight = -1e-9;
    if (section) {
        const Vec3 open = directionOf(section->removed);
        return {.azimuth = Degrees{open.x > kToTheRight ? 165.0 : 15.0},
                .elevation = Degrees{kLevel + kSteeper * (1.0 - 0.5 * explode) * open.y}};
    }
    return {.azimuth = Degrees{28.0 - 13.0 * explode}, .elevation = Degrees{16.0 - 6.0 * explode}};
}

Result<Image> finishedPicture(Renderer& renderer, const Scene& scene, const PictureWish& wish) {
    // From where one looks does not change with the room that the words about it leave.
    const PictureArea whole{.width = static_cast<double>(wish.size.width),
                            .height = static_cast<double>(wish.size.height)};
    const Remarks remarks{.view = viewWordsOf(cameraFor(scene, wish, whole).camera),
                          .subject = wish.subject,
                          .notice = wish.notice};
    const PictureLayout layout = layoutFor(wish.size, remarks);
    const SceneCamera camera = cameraFor(scene, wish, layout.content);
    const Shot shot{.scene = scene,
                    .camera = camera,
                    .size = wish.size,
                    .style = {.paper = inks::kPaper,
                              .ink = inks::kText,
                              .samples = samplesFor(wish.size),
                              .lineScale = layout.unit}};
    auto image = renderer.drawImage(shot);
    if (!image)
        return image;
    Paper paper{image.value()};
    writeRemarks(paper, wish.size, remarks);
    writeLabels(paper, shot, layout);
    return image;
}

} // namespace gapwise
