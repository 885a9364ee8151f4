#pragma once

#include "small_cartridge.h"
#include "viewer/render/offscreen.h"
#include "viewer/render/renderer.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace gapwise {

constexpr std::uint32_t kPaper = 0xfff4f2ecU; // 0.957, 0.949, 0.925 of 255.

/// A renderer with a context of its own, and the small cartridge.
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

    /// The last of the shots, drawn one after the other by a renderer that has drawn nothing before.
    static Image drawnAfresh(const std::vector<Shot>& shots) {
        auto renderer = Renderer::make();
        EXPECT_TRUE(renderer);
        Image last;
        for (const Shot& shot : shots)
            if (renderer)
                last = renderer.value().drawImage(shot).value();
        return last;
    }

    Scene scene(const SceneOptions& options = {}) const {
        return sceneOf(small::frame(), small::build(), small::meshes(), options);
    }

    std::optional<OffscreenContext> context_{};
    std::optional<Renderer> renderer_{}; // Dies before the context.
};

inline std::array<int, 3> channels(std::uint32_t pixel) {
    return {static_cast<int>(pixel >> 16U & 255U), static_cast<int>(pixel >> 8U & 255U),
            static_cast<int>(pixel & 255U)};
}

/// Darkest and lightest green of the row through a point, 15 pixels to either side of it.
inline std::array<int, 2> greensAround(const Image& image, const PicturePoint& middle) {
    std::array<int, 2> greens{255, 0};
    for (int x = -15; x <= 15; ++x) {
        const int green = channels(image.at(static_cast<int>(middle.x) + x, static_cast<int>(middle.y)))[1];
        greens = {std::min(greens[0], green), std::max(greens[1], green)};
    }
    return greens;
}

inline int largestDifference(const Image& a, const Image& b) {
    int largest = 0;
    for (std::size_t i = 0; i < a.pixels.size(); ++i)
        for (std::size_t c = 0; c < 3; ++c)
            largest = std::max(largest, std::abs(channels(a.pixels[i])[c] - channels(b.pixels[i])[c]));
    return largest;
}

inline double shareOf(const Image& image, const auto& wanted) {
    return static_cast<double>(std::count_if(image.pixels.begin(), image.pixels.end(), wanted)) /
           static_cast<double>(image.pixels.size());
}

} // namespace gapwise
