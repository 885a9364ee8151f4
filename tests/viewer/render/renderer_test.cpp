#include "drawing.h"

namespace gapwise {

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
    const Scene shown = scene({.section = Section{}});
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
    const Scene shown = scene({.section = Section{}});
    const Shot shot = shotOf(shown, {Degrees{180.0}, Degrees{0.0}});
    const Image image = drawn(shot);
    // In the middle of the housing's upper wall only cut face and hatching can be: light and dark take turns.
    const PicturePoint wall = shot.camera.toPicture({0.0, 25.0, -30.0}, shot.size);
    const auto [darkest, lightest] = greensAround(image, wall);
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

TEST_F(Drawing, SeeksOutlinesAsFarAsTheyReach) {
    Scene shown = scene();
    Shot shot = shotOf(shown, lookFrom(Side::Compressor));
    shot.style.shadow = false;
    shot.style.lineScale = 3.0;
    const Image near = drawn(shot);
    // With a part that lies beyond opposite corners of the picture, outlines are sought everywhere in it.
    auto mesh = std::make_shared<DrawnMesh>();
    for (const double away : {-1000.0, 1000.0})
        for (const Vec3& corner : {Vec3{0.0, 0.0, 0.0}, Vec3{1.0, 0.0, 0.0}, Vec3{0.0, 1.0, 0.0}}) {
            mesh->body.faces.positions.push_back(corner + Vec3{away, away, 0.0});
            mesh->body.faces.normals.push_back({0.0, 0.0, 1.0});
        }
    mesh->body.faces.triangles = {{0U, 1U, 2U}, {3U, 4U, 5U}};
    shown.items.push_back({.mesh = mesh});
    EXPECT_EQ(drawn(shot).pixels, near.pixels);
}

TEST_F(Drawing, KeepsAShadowUntilWhatCastsItMoves) {
    Scene shown = scene();
    const Shot shot = shotOf(shown, {Degrees{28.0}, Degrees{30.0}});
    const Image before = drawn(shot);
    shown.items.front().pose.shift.y += 12.0;
    shown.items.back().pulledMm = 9.0;
    const Image moved = drawn(shot);
    EXPECT_EQ(drawnAfresh({shot}).pixels, moved.pixels);
    EXPECT_NE(before.pixels, moved.pixels);
    shown.ground.axes = poseOf({.index = Clock::seenFrom(Side::Compressor, Degrees{20.0})});
    shown.ground.benchTop = true;
    const Image turned = drawn(shot);
    EXPECT_EQ(drawnAfresh({shot}).pixels, turned.pixels);
    EXPECT_NE(turned.pixels, moved.pixels);
}

TEST_F(Drawing, FineDoesNotKeepTheShadowOfACoarsePicture) {
    const Scene shown = scene();
    const Shot fine = shotOf(shown, {Degrees{28.0}, Degrees{30.0}});
    Shot coarse = fine;
    coarse.style.coarse = true;
    EXPECT_EQ(drawnAfresh({coarse, fine}).pixels, drawn(fine).pixels);
}

TEST(Offscreen, ContextsCanBeMadeOneAfterTheOther) {
    for (int i = 0; i < 3; ++i) {
        const auto context = OffscreenContext::make();
        EXPECT_TRUE(context);
    }
}

} // namespace gapwise
