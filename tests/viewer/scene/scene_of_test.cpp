#include "viewer/scene/scene_of.h"

#include "small_cartridge.h"
#include "viewer/scene/scene_labels.h"

#include <gmock/gmock.h>

#include <algorithm>
#include <limits>
#include <set>

namespace gapwise {

namespace {

Scene sceneWith(const Build& build, const SceneOptions& options = {}) {
    static const Meshes kMeshes = small::meshes();
    return sceneOf(small::frame(), build, kMeshes, options);
}

const SceneItem& itemOf(const Scene& scene, const char* part) {
    const SceneItem* item = scene.item(PartId{part});
    EXPECT_NE(item, nullptr) << part;
    return *item;
}

Span drawnReach(const SceneItem& item) {
    Span reach{1e9, -1e9};
    const Pose drawn = item.drawnPose();
    for (const Vec3& p : item.mesh->body.faces.positions)
        reach = {std::min(reach.from, drawn.point(p).z), std::max(reach.to, drawn.point(p).z)};
    return reach;
}

std::vector<std::string> labelled(const Scene& scene, SceneLabel::Kind kind) {
    std::vector<std::string> texts;
    for (const SceneLabel& label : scene.labels)
        if (label.kind == kind)
            texts.push_back(label.text);
    return texts;
}

void expectSamePose(const Pose& a, const Pose& b) {
    EXPECT_EQ(a.xAxis, b.xAxis);
    EXPECT_EQ(a.yAxis, b.yAxis);
    EXPECT_EQ(a.zAxis, b.zAxis);
    EXPECT_EQ(a.shift, b.shift);
}

} // namespace

TEST(Scene, ShowsTheHousingAndWhatIsSeated) {
    Build build = small::build();
    EXPECT_EQ(sceneWith(build).items.size(), 10U);
    build.seatings.clear();
    const Scene empty = sceneWith(build);
    ASSERT_EQ(empty.items.size(), 1U);
    EXPECT_EQ(empty.items.front().part.text, "HOUSING");
}

TEST(Scene, PosesAPartBySeatIndexAndFace) {
    const Scene scene = sceneWith(small::build());
    const SceneItem& snap = itemOf(scene, "SNAP");
    // Its rule: gap at 3:00 from the compressor side is +X; its rounded face looks to the bush, toward -Z.
    EXPECT_NEAR(snap.pose.yAxis.x, 1.0, 1e-12);
    EXPECT_NEAR(snap.pose.zAxis.z, -1.0, 1e-12);
    EXPECT_EQ(snap.pose.shift, (Vec3{0.0, 0.0, -8.0}));
    EXPECT_EQ(snap.state, ItemState::Plain);
}

TEST(Scene, TurnsWhatTheRotorCarriesWithIt) {
    Build build = small::build();
    build.rotor = Degrees{90.0};
    EXPECT_NEAR(itemOf(sceneWith(build), "ROTOR").pose.yAxis.x, 1.0, 1e-12);
    EXPECT_NEAR(itemOf(sceneWith(build), "SLEEVE").pose.yAxis.x, 1.0, 1e-12);
    EXPECT_NEAR(itemOf(sceneWith(build), "PLATE").pose.yAxis.x, 0.0, 1e-12);
}

TEST(Scene, TurnsTheRingInAPlateWithThePlate) {
    Build build = small::build();
    small::seatingOf(build, "RING-S").index = Clock::seenFrom(Side::Compressor, Degrees{0.0});
    small::seatingOf(build, "PLATE").index = Clock::seenFrom(Side::Compressor, Degrees{60.0});
    EXPECT_NEAR(apart(clockOf(itemOf(sceneWith(build), "RING-S").pose.yAxis),
                      Clock::seenFrom(Side::Compressor, Degrees{60.0}))
                    .value,
                0.0, 1e-9);
}

TEST(Scene, DrawsWhatIsNotKnownAtASeededAngleAndMarksIt) {
    Build build = small::build();
    small::seatingOf(build, "SNAP").index.reset();
    const Scene one = sceneWith(build);
    EXPECT_EQ(itemOf(one, "SNAP").state, ItemState::NotKnown);
    expectSamePose(itemOf(one, "SNAP").pose, itemOf(sceneWith(build), "SNAP").pose);
    const Scene other = sceneWith(build, {.seed = 2});
    EXPECT_NE(itemOf(one, "SNAP").pose.yAxis, itemOf(other, "SNAP").pose.yAxis);
    EXPECT_THAT(labelled(one, SceneLabel::Kind::NotKnown), testing::ElementsAre("SNAP: not known"));
}

TEST(Scene, AFaceThatIsNotKnownIsMarkedOnlyWhereFacesDiffer) {
    Build build = small::build();
    small::seatingOf(build, "SNAP").referenceFaceLooks.reset();
    small::seatingOf(build, "RING-1").referenceFaceLooks.reset();
    const Scene scene = sceneWith(build);
    EXPECT_EQ(itemOf(scene, "SNAP").state, ItemState::NotKnown);
    EXPECT_EQ(itemOf(scene, "RING-1").state, ItemState::Plain);
}

TEST(Scene, APartWithoutIndexNeedsNoClock) {
    Build build = small::build();
    small::seatingOf(build, "BUSH").index.reset();
    EXPECT_EQ(itemOf(sceneWith(build), "BUSH").state, ItemState::Plain);
}

TEST(Scene, MarksWhatFindingsCallBroken) {
    Build build = small::build();
    Seating& snap = small::seatingOf(build, "SNAP");
    snap.index = Clock::seenFrom(Side::Compressor, Degrees{270.0});
    snap.referenceFaceLooks = Side::Compressor;
    const Frame frame = small::frame();
    const Checked checked = checkBuild(frame, build, {});
    const Scene scene = sceneWith(build, {.checked = &checked});
    EXPECT_EQ(itemOf(scene, "SNAP").state, ItemState::Broken);
    EXPECT_EQ(itemOf(scene, "BUSH").state, ItemState::Plain);
    const auto broken = labelled(scene, SceneLabel::Kind::Broken);
    ASSERT_EQ(broken.size(), 1U);
    EXPECT_THAT(broken.front(), testing::AllOf(testing::StartsWith("SNAP: "), testing::HasSubstr("gap"),
                                               testing::HasSubstr("face")));
}

TEST(Scene, NamesTheEndsAndThePorts) {
    const Scene scene = sceneWith(small::build());
    EXPECT_THAT(labelled(scene, SceneLabel::Kind::End), testing::ElementsAre("TURBINE", "COMPRESSOR"));
    EXPECT_THAT(labelled(scene, SceneLabel::Kind::Port), testing::ElementsAre("inlet", "drain"));
    const auto anchorOf = [&](const char* text) {
        return std::find_if(scene.labels.begin(), scene.labels.end(),
                            [&](const SceneLabel& label) { return label.text == text; })
            ->anchor;
    };
    EXPECT_NEAR(anchorOf("TURBINE").z, -80.0, 1e-9);
    EXPECT_NEAR(anchorOf("inlet").y, 40.0, 1e-9);
    EXPECT_NEAR(anchorOf("drain").y, -40.0, 1e-9);
}

TEST(Scene, FindsThePortsAtTheHousingsPads) {
    Frame frame = small::frame();
    const auto housing = std::find_if(frame.types.begin(), frame.types.end(),
                                      [](const PartType& type) { return type.id.text == "HOUSING"; });
    housing->shape.features = {{.does = Feature::Does::Add, .form = Slot{20.0, {30.0, 38.0}, {-40.0, -20.0}}},
                               {.does = Feature::Does::Add,
                                .form = Slot{20.0, {30.0, 39.0}, {-50.0, -30.0}},
                                .offset = Degrees{180.0}}};
    const SceneItem item{.part = PartId{"HOUSING"}, .mesh = small::meshes().at(PartTypeId{"HOUSING"})};
    EXPECT_EQ(portOf(frame, item, true), (Vec3{0.0, 38.0, -30.0}));
    EXPECT_EQ(portOf(frame, item, false), (Vec3{0.0, -39.0, -40.0}));
}

TEST(Scene, NamesPartsWhenPulledApartOrCut) {
    EXPECT_TRUE(labelled(sceneWith(small::build()), SceneLabel::Kind::Part).empty());
    EXPECT_EQ(labelled(sceneWith(small::build(), {.section = Section{}}), SceneLabel::Kind::Part).size(),
              10U);
    EXPECT_EQ(labelled(sceneWith(small::build(), {.explode = 0.5}), SceneLabel::Kind::Part).size(), 10U);
}

// A remark stands as near to what is left as it stood to the whole part, and not where its index was.
TEST(SectionedScene, RemarksAreAnchoredOnWhatIsLeft) {
    Build build = small::build();
    small::seatingOf(build, "SNAP").index.reset();
    const auto awayFromSnap = [](const Scene& scene) {
        const auto label = std::ranges::find(scene.labels, SceneLabel::Kind::NotKnown, &SceneLabel::kind);
        const SceneItem& snap = itemOf(scene, "SNAP");
        double nearest = std::numeric_limits<double>::infinity();
        for (const TriangleMesh* mesh : {&snap.mesh->body.faces, &snap.mesh->caps})
            for (const Vec3& p : mesh->positions)
                nearest = std::min(nearest, length(snap.drawnPose().point(p) - label->anchor));
        return nearest;
    };
    const double whole = awayFromSnap(sceneWith(build));
    for (const Section::Kind kind : {Section::Kind::Half, Section::Kind::Quarter})
        for (int degrees = 0; degrees < 360; degrees += 30) {
            const Section section{kind, Clock::seenFrom(Side::Compressor, Degrees{degrees * 1.0})};
            EXPECT_LE(awayFromSnap(sceneWith(build, {.section = section})), whole + 0.5) << degrees;
        }
}

TEST(SectionedScene, SaysNothingOfAPortThatIsTakenAway) {
    const auto ports = [](double degrees) {
        const Section section{Section::Kind::Quarter, Clock::seenFrom(Side::Compressor, Degrees{degrees})};
        return labelled(sceneWith(small::build(), {.section = section}), SceneLabel::Kind::Port);
    };
    EXPECT_EQ(ports(0.0), std::vector<std::string>{"drain"});
    EXPECT_EQ(ports(180.0), std::vector<std::string>{"inlet"});
    EXPECT_EQ(ports(90.0), (std::vector<std::string>{"inlet", "drain"}));
}

TEST(SectionedScene, KeepsThePictureWhereItWas) {
    const Scene whole = sceneWith(small::build());
    EXPECT_EQ(sceneWith(small::build(), {.section = Section{}}).points(), whole.points());
}

TEST(Explosion, ZeroIsExactlyTheAssembledPose) {
    const Scene assembled = sceneWith(small::build());
    for (const SceneItem& item : assembled.items)
        expectSamePose(item.drawnPose(), item.pose);
}

TEST(Explosion, MovesAlongTheShaftOnlyAndInProportion) {
    const Scene whole = sceneWith(small::build(), {.explode = 1.0});
    const Scene half = sceneWith(small::build(), {.explode = 0.5});
    for (const SceneItem& item : whole.items) {
        const SceneItem& same = itemOf(half, item.part.text.c_str());
        EXPECT_NEAR(same.pulledMm, item.pulledMm / 2.0, 1e-9);
        EXPECT_EQ(item.drawnPose().shift.x, item.pose.shift.x);
        EXPECT_EQ(item.drawnPose().shift.y, item.pose.shift.y);
        EXPECT_EQ(item.drawnPose().yAxis, item.pose.yAxis);
    }
    EXPECT_EQ(itemOf(whole, "HOUSING").pulledMm, 0.0);
}

// Nested parts too: at the end no two parts share any station of the shaft, and each end's row is the order
// of assembly reversed.
TEST(Explosion, LeavesNothingOverNothing) {
    const Scene scene = sceneWith(small::build(), {.explode = 1.0});
    std::vector<std::pair<Span, std::string>> row;
    for (const SceneItem& item : scene.items)
        row.emplace_back(drawnReach(item), item.part.text);
    std::sort(row.begin(), row.end(),
              [](const auto& a, const auto& b) { return a.first.from < b.first.from; });
    std::vector<std::string> names;
    for (std::size_t i = 0; i < row.size(); ++i) {
        names.push_back(row[i].second);
        const double end = i == 0 ? -1e9 : row[i - 1].first.to;
        EXPECT_GT(row[i].first.from, end) << row[i].second;
    }
    EXPECT_THAT(names, testing::ElementsAre("ROTOR", "RING-1", "RING-2", "HOUSING", "PIN", "BUSH", "SNAP",
                                            "SLEEVE", "RING-S", "PLATE"));
}

TEST(Explosion, NeverPullsAPartThroughOneThatIsInItsWay) {
    // On its way out each part only ever moves off from those that were placed before it.
    std::map<std::string, double> last;
    for (const double explode : {0.0, 0.25, 0.5, 0.75, 1.0}) {
        const Scene scene = sceneWith(small::build(), {.explode = explode});
        const double snapOffHousing = itemOf(scene, "SNAP").pulledMm - itemOf(scene, "HOUSING").pulledMm;
        const double snapOffBush = itemOf(scene, "SNAP").pulledMm - itemOf(scene, "BUSH").pulledMm;
        const double ringOffRotor = itemOf(scene, "RING-1").pulledMm - itemOf(scene, "ROTOR").pulledMm;
        EXPECT_GE(snapOffHousing, last["housing"]);
        EXPECT_GE(snapOffBush, last["bush"]);
        EXPECT_GE(ringOffRotor, last["rotor"]);
        last = {{"housing", snapOffHousing}, {"bush", snapOffBush}, {"rotor", ringOffRotor}};
    }
}

TEST(SectionedScene, CutsEveryPartAlongTheShaft) {
    const Scene scene = sceneWith(small::build(), {.section = Section{}});
    EXPECT_TRUE(scene.section);
    for (const SceneItem& item : scene.items) {
        EXPECT_FALSE(item.mesh->caps.triangles.empty()) << item.part.text;
        for (const Vec3& p : item.mesh->body.faces.positions)
            EXPECT_LE(item.drawnPose().point(p).x, 1e-6) << item.part.text;
    }
}

TEST(SectionedScene, NeighboursAreHatchedUnlike) {
    const Scene scene = sceneWith(small::build(), {.section = Section{}});
    for (const auto& [a, b] : {std::pair{"HOUSING", "BUSH"}, std::pair{"BUSH", "ROTOR"}}) {
        const Hatch& one = itemOf(scene, a).hatch;
        const Hatch& other = itemOf(scene, b).hatch;
        EXPECT_TRUE(one.angle.value != other.angle.value || one.spacing != other.spacing) << a << ", " << b;
    }
}

TEST(Tint, EveryNameOfAFrameFileHasOneOfItsOwn) {
    std::set<std::tuple<double, double, double>> seen;
    for (const char* name : {"housing", "steel", "bronze", "ring", "aluminium", "hot"}) {
        const Colour colour = tintOf(name);
        EXPECT_TRUE(seen.emplace(colour.red, colour.green, colour.blue).second) << name;
    }
    EXPECT_EQ(tintOf("unheard of"), tintOf("steel"));
}

} // namespace gapwise
