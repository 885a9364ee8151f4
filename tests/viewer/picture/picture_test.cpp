#include "viewer/picture/picture.h"

#include "small_cartridge.h"
#include "viewer/picture/png_file.h"
#include "viewer/render/offscreen.h"

#include <gtest/gtest.h>

namespace gapwise {

namespace {

constexpr std::uint32_t kBanner = 0xff1f2a33U;

Result<Image> picture(const SceneOptions& options, const PictureWish& wish) {
    auto context = OffscreenContext::make();
    if (!context)
        return context.errors();
    auto renderer = Renderer::make();
    if (!renderer)
        return renderer.errors();
    const Scene scene = sceneOf(small::frame(), small::build(), small::meshes(), options);
    return finishedPicture(renderer.value(), scene, wish);
}

} // namespace

TEST(Picture, CarriesBannerAndFooterOverPaper) {
    const auto image = picture(
        {.explode = 1.0},
        {.size = {800, 450}, .look = usualLook(1.0, {}), .subject = "Small", .notice = "Practice frame"});
    ASSERT_TRUE(image);
    EXPECT_EQ(image->at(1, 1), kBanner);
    EXPECT_EQ(image->at(798, 1), kBanner);
    EXPECT_EQ(image->at(1, 448), 0xfff4f2ecU);
    EXPECT_EQ(image->at(798, 448), 0xfff4f2ecU);
}

TEST(Picture, IsTheSameEveryTime) {
    const PictureWish wish{.size = {400, 320}, .look = usualLook(0.0, Section{}), .subject = "Small"};
    const auto first = picture({.section = Section{}}, wish);
    const auto second = picture({.section = Section{}}, wish);
    ASSERT_TRUE(first && second);
    EXPECT_EQ(first->pixels, second->pixels);
}

TEST(Picture, OfNothingIsStillAPicture) {
    auto context = OffscreenContext::make();
    ASSERT_TRUE(context);
    auto renderer = Renderer::make();
    ASSERT_TRUE(renderer);
    const auto image = finishedPicture(renderer.value(), Scene{}, {.size = {320, 320}});
    ASSERT_TRUE(image);
    EXPECT_EQ(image->size, (PictureSize{320, 320}));
}

TEST(Png, BeginsAsTheFormatWants) {
    const Image image{.size = {2, 1}, .pixels = {0xff000000U, 0xffffffffU}};
    const auto png = pngOf(image);
    ASSERT_TRUE(png);
    EXPECT_EQ(png->substr(0, 8), "\x89PNG\r\n\x1a\n"); // PNG specification, section 5.2.
}

} // namespace gapwise
