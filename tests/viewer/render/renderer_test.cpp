#include "viewer/render/renderer.h"

#include "small_cartridge.h"
#include "viewer/render/offscreen.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

constexpr std::uint32_t kPaper = 0xfff4f2ecU; // 0.957, 0.949, 0.925 of 255.

class Drawing : public testing::Test {
protected:
    void SetUp() override {
        auto context = OffscreenContext::make();
        ASSERT_TRUE(context) << describe(context.errors().front());
        context_.emplace(std::move(context).value());
        auto renderer = Renderer::make();
        ASSERT_TRUE(renderer) << describe(renderer.errors().front());
        renderer_.emplace(std::move(renderer).value());
    }

    Shot shotOf(const Scene& scene, const Look& look) const {
        const PictureSize size{320, 200};
        return {.scene = scene,
                .camera = fittedCamera(scene.points(), look, Projection::Parallel,
                                       {size, {40.0, 30.0, 240.0, 140.0}}),
                .size = size,
                .style = {.lineScale = 0.5}};
    }

    Image drawn(const Shot& shot) {
        auto image = renderer_->drawImage(shot);
        EXPECT_TRUE(image);
        return image ? std::move(image).value() : Image{};
    }

    Scene scene(const SceneOptions& options = {}) const {
        return sceneOf(small::frame(), small::build(), small::meshes(), options);
    }

    std::optional<OffscreenContext> context_{};
    std::optional<Renderer> renderer_{}; // Dies before the context.
};

std::array<int, 3> channels(std::uint32_t pixel) {
    return {static_cast<int>(pixel >> 16U & 255U), static_cast<int>(pixel >> 8U & 255U),
            static_cast<int>(pixel & 255U)};
}

int largestDifference(const Image& a, const Image& b) {
    int largest = 0;
    for (std::size_t i = 0; i < a.pixels.size(); ++i)
        for (std::size_t c = 0; c < 3; ++c)
            largest = std::max(largest, std::abs(channels(a.pixels[i])[c] - channels(b.pixels[i])[c]));
    return largest;
}

double shareOf(const Image& image, const auto& wanted) {
    return static_cast<double>(std::count_if(image.pixels.begin(), image.pixels.end(), wanted)) /
           static_cast<double>(image.pixels.size());
}

} // namespace

TEST_F(Drawing, StandsOnPaperFromCornerToCorner) {
    const Image image = drawn(shotOf(scene(), {Degrees{28.0}, Degrees{16.0}}));
    ASSERT_EQ(image.size, (PictureSize{320, 200}));
    for (const int x : {0, 319})
        for (const int y : {0, 199})
            EXPECT_EQ(image.at(x, y), kPaper);
    EXPECT_GT(shareOf(image, [](std::uint32_t pixel) { return pixel != kPaper; }), 0.15);
}

TEST_F(Drawing, ShowsFacesAndDarkEdges) {
    const Image image = drawn(shotOf(scene(), {Degrees{28.0}, Degrees{16.0}}));
    EXPECT_GT(shareOf(image, [](std::uint32_t p) { return channels(p)[1] < 90; }), 0.005); // Ink.
    EXPECT_GT(shareOf(image, [](std::uint32_t p) { return channels(p)[1] > 140 && p != kPaper; }), 0.1);
}

TEST_F(Drawing, OfAnEmptySceneIsBarePaper) {
    const Scene empty;
    const PictureSize size{64, 40};
    const Image image = drawn({.scene = empty, .camera = {}, .size = size, .style = {}});
    EXPECT_EQ(shareOf(image, [](std::uint32_t p) { return p == kPaper; }), 1.0);
}

TEST_F(Drawing, TwiceIsTheSamePicture) {
    const Scene shown = scene({.explode = 1.0});
    const Shot shot = shotOf(shown, {Degrees{15.0}, Degrees{10.0}});
    EXPECT_EQ(drawn(shot).pixels, drawn(shot).pixels);
}

TEST_F(Drawing, InPiecesIsTheSamePicture) {
    const Scene shown = scene({.section = SectionPlane{}});
    const Shot shot = shotOf(shown, {Degrees{165.0}, Degrees{9.0}});
    const Image whole = drawn(shot);
    renderer_->limitPieces(73);
    // Sample places of a piece round a little differently: no more than an edge's softness.
    const Image pieces = drawn(shot);
    EXPECT_LE(largestDifference(whole, pieces), 40);
    EXPECT_LT(
        shareOf(pieces, [&, i = std::size_t{0}](std::uint32_t p) mutable { return p != whole.pixels[i++]; }),
        0.01);
}

TEST_F(Drawing, ASectionShowsHatchedCutFaces) {
    const Scene shown = scene({.section = SectionPlane{}});
    const Shot shot = shotOf(shown, {Degrees{180.0}, Degrees{0.0}});
    const Image image = drawn(shot);
    // In the middle of the housing's upper wall only cut face and hatching can be: light and dark take turns.
    const PicturePoint wall = shot.camera.toPicture({0.0, 25.0, -30.0}, shot.size);
    int lightest = 0;
    int darkest = 255;
    for (int x = -15; x <= 15; ++x) {
        const int green = channels(image.at(static_cast<int>(wall.x) + x, static_cast<int>(wall.y)))[1];
        lightest = std::max(lightest, green);
        darkest = std::min(darkest, green);
    }
    EXPECT_GT(lightest, 195);
    EXPECT_LT(darkest, 180);
}

TEST_F(Drawing, TurnsABrokenPartToTheAccent) {
    Build build = small::build();
    small::seatingOf(build, "PLATE").index = Clock::seenFrom(Side::Compressor, Degrees{0.0});
    Scene shown = sceneOf(small::frame(), build, small::meshes(), {});
    const Shot before = shotOf(shown, lookFrom(Side::Compressor));
    const Image plain = drawn(before);
    for (SceneItem& item : shown.items)
        if (item.part.text == "PLATE")
            item.state = ItemState::Broken;
    const Image broken = drawn(shotOf(shown, lookFrom(Side::Compressor)));
    const auto orange = [](std::uint32_t p) { return channels(p)[0] - channels(p)[2] > 70; };
    EXPECT_LT(shareOf(plain, orange), 0.01);
    EXPECT_GT(shareOf(broken, orange), 0.1);
}

TEST_F(Drawing, IntoATextureKeepsMeshesAndNeedsNoPieces) {
    const Scene shown = scene();
    Shot shot = shotOf(shown, {Degrees{28.0}, Degrees{16.0}});
    shot.style.samples = 1;
    const auto first = renderer_->drawTexture(shot);
    ASSERT_TRUE(first);
    EXPECT_NE(*first, 0U);
    EXPECT_EQ(*renderer_->drawTexture(shot), *first); // The same size is drawn into the same texture.
    EXPECT_GE(renderer_->largestTexture(2), 2048);
}

TEST(Offscreen, ContextsCanBeMadeOneAfterTheOther) {
    for (int i = 0; i < 3; ++i) {
        const auto context = OffscreenContext::make();
        EXPECT_TRUE(context);
    }
}

} // namespace gapwise
