#include "drawing.h"

namespace gapwise {

namespace {

/// While something moves.
class CoarsePicture : public Drawing {
protected:
    Shot coarseShotOf(const Scene& scene, const Look& look) const {
        Shot shot = shotOf(scene, look);
        shot.style.coarse = true;
        return shot;
    }

    Image coarselyDrawn(const Scene& scene, const Look& look) { return drawn(coarseShotOf(scene, look)); }
    Image finelyDrawn(const Scene& scene, const Look& look) { return drawn(shotOf(scene, look)); }
};

constexpr Look kAskew{Degrees{28.0}, Degrees{16.0}};

/// Mean of each channel over the picture.
std::array<double, 3> meanOf(const Image& image) {
    std::array<double, 3> sum{};
    for (const std::uint32_t pixel : image.pixels)
        for (std::size_t c = 0; c < sum.size(); ++c)
            sum[c] += channels(pixel)[c] / static_cast<double>(image.pixels.size());
    return sum;
}

SceneItem& itemOf(Scene& scene, std::string_view part) {
    return *std::ranges::find_if(scene.items, [&](const SceneItem& item) { return item.part.text == part; });
}

double shareThatDiffers(const Image& a, const Image& b) {
    std::size_t count = 0;
    for (std::size_t i = 0; i < a.pixels.size(); ++i)
        count += a.pixels[i] == b.pixels[i] ? 0U : 1U;
    return static_cast<double>(count) / static_cast<double>(a.pixels.size());
}

} // namespace

TEST_F(CoarsePicture, CoversWhatTheFineOneCovers) {
    const Scene shown = scene({.explode = 1.0});
    Shot shot = coarseShotOf(shown, kAskew);
    shot.style.shadow = false;
    const Image coarse = drawn(shot);
    shot.style.coarse = false;
    const Image fine = drawn(shot);
    // Paper well within paper, something well within something: borders may differ by a pixel or two.
    const auto wholly = [](const Image& image, int x, int y, bool paper) {
        for (int dy = -2; dy <= 2; ++dy)
            for (int dx = -2; dx <= 2; ++dx)
                if ((image.at(x + dx, y + dy) == kPaper) != paper)
                    return false;
        return true;
    };
    int covered = 0;
    for (int y = 2; y < 198; ++y)
        for (int x = 2; x < 318; ++x) {
            if (wholly(fine, x, y, true)) {
                ASSERT_EQ(coarse.at(x, y), kPaper) << x << ' ' << y;
            } else if (wholly(fine, x, y, false)) {
                ASSERT_NE(coarse.at(x, y), kPaper) << x << ' ' << y;
                ++covered;
            }
        }
    EXPECT_GT(covered, 3000);
}

TEST_F(CoarsePicture, IsAsBrightAsTheFineOne) {
    for (const bool benchTop : {false, true}) {
        Scene shown = scene();
        shown.ground.benchTop = benchTop;
        const std::array<double, 3> coarse = meanOf(coarselyDrawn(shown, kAskew));
        const std::array<double, 3> fine = meanOf(finelyDrawn(shown, kAskew));
        for (std::size_t c = 0; c < 3; ++c)
            EXPECT_NEAR(coarse[c], fine[c], 4.0) << benchTop << ' ' << c;
    }
}

TEST_F(CoarsePicture, TwiceIsTheSameAlsoWithAFineOneBetween) {
    const Scene shown = scene({.explode = 1.0});
    const Image first = coarselyDrawn(shown, kAskew);
    EXPECT_EQ(coarselyDrawn(shown, kAskew).pixels, first.pixels);
    finelyDrawn(shown, kAskew);
    // The shadow is the fine one now: hardly another.
    EXPECT_LE(largestDifference(coarselyDrawn(shown, kAskew), first), 12);
}

TEST_F(CoarsePicture, TellsTheBrokenPart) {
    Scene shown = scene();
    itemOf(shown, "PLATE").state = ItemState::Broken;
    const Image broken = coarselyDrawn(shown, lookFrom(Side::Compressor));
    EXPECT_GT(shareOf(broken, [](std::uint32_t p) { return channels(p)[0] - channels(p)[2] > 70; }), 0.1);
}

TEST_F(CoarsePicture, TellsWhatIsNotKnownByStripes) {
    Scene shown = scene();
    const Image plain = coarselyDrawn(shown, lookFrom(Side::Compressor));
    itemOf(shown, "PLATE").state = ItemState::NotKnown;
    const Image striped = coarselyDrawn(shown, lookFrom(Side::Compressor));
    // About half of the plate is striped, and as light as in the fine picture.
    EXPECT_GT(shareThatDiffers(plain, striped), 0.05);
    const std::array<double, 3> fine = meanOf(finelyDrawn(shown, lookFrom(Side::Compressor)));
    EXPECT_NEAR(meanOf(striped)[1], fine[1], 4.0);
}

TEST_F(CoarsePicture, HatchesCutFacesAsTheFineOne) {
    const Scene shown = scene({.section = Section{}});
    const Shot shot = coarseShotOf(shown, {Degrees{180.0}, Degrees{0.0}});
    const Image image = drawn(shot);
    const PicturePoint wall = shot.camera.toPicture({0.0, 25.0, -30.0}, shot.size);
    const auto [darkest, lightest] = greensAround(image, wall);
    EXPECT_GT(lightest, 195);
    EXPECT_LT(darkest, 180);
}

TEST_F(CoarsePicture, LetsTheEdgesOfThePartInHandShineThrough) {
    Scene shown = scene();
    SceneItem& hidden = itemOf(shown, "ROTOR");
    const Image plain = coarselyDrawn(shown, kAskew);
    hidden.inHand = true;
    const Image inHand = coarselyDrawn(shown, kAskew);
    const auto blue = [](std::uint32_t p) { return channels(p)[2] - channels(p)[0] > 25; };
    EXPECT_GT(shareOf(inHand, blue), shareOf(plain, blue) + 0.003);
}

TEST_F(CoarsePicture, StandsOnItsBenchTop) {
    Scene shown = scene();
    const Image bare = coarselyDrawn(shown, kAskew);
    shown.ground.benchTop = true;
    const Image onBench = coarselyDrawn(shown, kAskew);
    EXPECT_GT(shareThatDiffers(bare, onBench), 0.1);
}

} // namespace gapwise
