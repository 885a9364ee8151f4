#include "cut_rest.h"
#include "viewer/scene/scene_labels.h"
#include "viewer/scene/scene_of.h"

#include "models/frame/read_frame.h"
#include "viewer/scene/assembled_build.h"
#include "viewer/scene/explosion.h"
#include "viewer/scene/placed_labels.h"
#include "viewer/scene/read_meshes.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>

namespace gapwise {

namespace {

Span drawnReach(const SceneItem& item) {
    Span reach{1e9, -1e9};
    const Pose drawn = item.drawnPose();
    for (const Vec3& p : item.mesh->body.faces.positions)
        reach = {std::min(reach.from, drawn.point(p).z), std::max(reach.to, drawn.point(p).z)};
    return reach;
}

} // namespace

/// The bundled frames with the meshes that the build made of them.
class BundledScene : public testing::TestWithParam<const char*> {
protected:
    void SetUp() override {
        const DataFolder data{GAPWISE_TEST_SHARE};
        auto frame = readFrame(data, GetParam());
        ASSERT_TRUE(frame);
        frame_ = std::move(frame).value();
        auto meshes = readMeshes(data, frame_);
        ASSERT_TRUE(meshes) << describe(meshes.errors().front());
        meshes_ = std::move(meshes).value();
    }

    Scene scene(const SceneOptions& options) const {
        return sceneOf(frame_, assembledBuild(frame_), meshes_, options);
    }

    /// Of the housing, with the caps over what was taken away.
    double volumeLeft(Section::Kind kind, double degrees) const {
        const Scene shown =
            scene({.section = Section{kind, Clock::seenFrom(Side::Compressor, Degrees{degrees})}});
        return signedVolume(cut::closedRest(*shown.item(frame_.housing)->mesh));
    }

    Frame frame_{};
    Meshes meshes_{};
};

TEST_P(BundledScene, ShowsEveryPart) {
    const Scene shown = scene({.casings = true});
    EXPECT_EQ(shown.items.size(), frame_.parts.size());
    for (const SceneItem& item : shown.items)
        EXPECT_EQ(item.state, ItemState::Plain) << item.part.text;
}

TEST_P(BundledScene, LeavesTheCasingsOutOfSight) {
    const Scene shown = scene({});
    EXPECT_LT(shown.items.size(), frame_.parts.size());
    for (const Part& part : frame_.parts)
        EXPECT_EQ(shown.item(part.id) != nullptr, !part.casing) << part.id.text;
}

TEST_P(BundledScene, PulledApartLeavesNothingOverNothing) {
    const Scene shown = scene({.explode = 1.0, .casings = true});
    std::map<PartId, Span> reaches; // the pieces of a set are pulled out together
    for (const SceneItem& item : shown.items) {
        const Span reach = drawnReach(item);
        Span& whole = reaches.try_emplace(firstOfItsSet(frame_, shown, item)->part, reach).first->second;
        whole = {std::min(whole.from, reach.from), std::max(whole.to, reach.to)};
    }
    std::vector<std::pair<Span, std::string>> row;
    for (const auto& [part, reach] : reaches)
        row.emplace_back(reach, part.text);
    std::ranges::sort(row, {}, [](const auto& entry) { return entry.first.from; });
    for (std::size_t i = 1; i < row.size(); ++i)
        EXPECT_GT(row[i].first.from, row[i - 1].first.to) << row[i - 1].second << " and " << row[i].second;
}

// Taken from outside in, what lies on one side of the housing and goes in at that end goes in the later the
// farther out it lies.
TEST_P(BundledScene, PulledApartIsTheReverseOfAssembly) {
    std::vector<PartId> byTime;
    for (const Step* step : stepsInOrder(frame_))
        byTime.insert(byTime.end(), step->places.begin(), step->places.end());
    const Scene shown = scene({.explode = 1.0});
    int compared = 0;
    for (const Side side : {Side::Compressor, Side::Turbine}) {
        double outermost = -1e9;
        for (const PartId& part : byTime) {
            const Seat* seat = frame_.seat(seatOf(part));
            const bool onTheBench = seat && seat->carriers.size() > 1;
            const SceneItem* item = shown.item(part);
            if (!seat || seat->entersFrom != side || onTheBench || !item ||
                firstOfItsSet(frame_, shown, *item) != item)
                continue;
            const Span reach = drawnReach(*item);
            const double outward = side == Side::Compressor ? reach.from : -reach.to;
            EXPECT_GT(outward, outermost) << part.text;
            outermost = side == Side::Compressor ? reach.to : -reach.from;
            ++compared;
        }
    }
    EXPECT_GE(compared, 8);
}

TEST_P(BundledScene, SealRingsComeOffTheirCarrierOverItsSlimEnd) {
    const Scene shown = scene({.explode = 1.0});
    for (const auto& [ring, carrier] : {std::pair{"PR-T1", "ROTOR"}, std::pair{"PR-C1", "COLLAR-B"}})
        EXPECT_GT(drawnReach(*shown.item(PartId{ring})).from, drawnReach(*shown.item(PartId{carrier})).to)
            << ring;
}

TEST_P(BundledScene, TheORingComesOffOverTheSpigotOfItsPlate) {
    const Scene shown = scene({.explode = 1.0});
    EXPECT_LT(drawnReach(*shown.item(PartId{"ORING"})).to, drawnReach(*shown.item(PartId{"PLATE"})).from);
}

TEST_P(BundledScene, EveryPartThatTheSectionMeetsGetsACutFace) {
    const Scene shown = scene({.section = Section{}});
    std::set<std::string> uncut;
    for (const SceneItem& item : shown.items)
        if (areaOf(item.mesh->caps) <= 0.0 && !frame_.seat(item.seat)->aside) // screws stand beside it
            uncut.insert(item.part.text);
    EXPECT_TRUE(uncut.empty()) << *uncut.begin();
}

TEST_P(BundledScene, WhatTouchesIsHatchedUnlike) {
    const Scene shown = scene({.section = Section{}});
    for (const auto& [a, b] :
         {std::pair{"WHEEL", "PLATE"}, std::pair{"PLATE", "HOUSING"}, std::pair{"ROTOR", "WHEEL"},
          std::pair{"ROTOR", "COLLAR-A"}, std::pair{"COLLAR-A", "THRUST"}, std::pair{"THRUST", "RETAINER"}}) {
        const Hatch& one = shown.item(PartId{a})->hatch;
        const Hatch& other = shown.item(PartId{b})->hatch;
        EXPECT_TRUE(one.angle.value != other.angle.value || one.spacing != other.spacing) << a << b;
    }
}

// Open mesh borders would leave holes in the caps; a closed rest has half of a symmetric housing's faces.
TEST_P(BundledScene, TheHousingIsCutInTwoNearlyEqualHalves) {
    const auto half = [&](double degrees) { return volumeLeft(Section::Kind::Half, degrees); };
    const double whole = signedVolume(meshes_.at(frame_.typeOf(frame_.housing)->id)->body.faces);
    EXPECT_NEAR((half(90.0) + half(270.0)) / whole, 1.0, 1e-6);
    EXPECT_NEAR((half(40.0) + half(220.0)) / whole, 1.0, 1e-6);
}

TEST_P(BundledScene, FourQuartersTakeTheHousingAway) {
    const double whole = signedVolume(meshes_.at(frame_.typeOf(frame_.housing)->id)->body.faces);
    for (const double degrees : {45.0, 32.0}) {
        double left = 0.0;
        for (const double next : {0.0, 90.0, 180.0, 270.0})
            left += volumeLeft(Section::Kind::Quarter, degrees + next);
        EXPECT_NEAR(left / whole, 3.0, 1e-6) << degrees;
    }
}

// Twenty ids want a place in a section; still `inlet` is written above its port and `drain` below.
TEST_P(BundledScene, PortsOfASectionAreNamedOnTheirOwnSide) {
    const Scene shown = scene({.section = Section{}});
    for (const int width : {1366, 1600, 1920, 3840}) {
        const PictureSize size{width, width * 9 / 16};
        const double unit = width / 1600.0;
        const PictureArea room{40.0 * unit, 80.0 * unit, 1520.0 * unit, 760.0 * unit};
        const SceneCamera camera = fittedCamera(shown.points(), Look{Degrees{165.0}, Degrees{9.0}},
                                                Projection::Parallel, {size, room});
        const auto labels = labelsInPlace(
            {shown, camera, size},
            [&](const SceneLabel& label) {
                return LabelSize{9.0 * unit * static_cast<double>(label.text.size()), 20.0 * unit};
            },
            {.inside = room, .unit = unit});
        const auto boxOf = [&](const char* text) {
            return std::ranges::find_if(labels, [&](const LabelInPlace& l) { return l.label->text == text; });
        };
        ASSERT_NE(boxOf("inlet"), labels.end());
        ASSERT_NE(boxOf("drain"), labels.end());
        EXPECT_LT(boxOf("inlet")->box.bottom(), camera.toPicture(boxOf("inlet")->label->anchor, size).y);
        EXPECT_GT(boxOf("drain")->box.top, camera.toPicture(boxOf("drain")->label->anchor, size).y);
    }
}

TEST(ReadMeshes, SaysForEveryTypeHowToMakeWhatIsMissing) {
    auto frame = readFrame(DataFolder{GAPWISE_TEST_SHARE}, "alder-72");
    ASSERT_TRUE(frame);
    const auto meshes = readMeshes(DataFolder{"/nonexistent"}, *frame);
    ASSERT_FALSE(meshes);
    EXPECT_EQ(meshes.errors().size(), frame->types.size());
    for (const Error& error : meshes.errors())
        EXPECT_NE(describe(error).find("gapwise-shapes alder-72"), std::string::npos);
}

INSTANTIATE_TEST_SUITE_P(Bundled, BundledScene, testing::Values("alder-72", "alder-72-pinned", "birch-150"));

} // namespace gapwise
