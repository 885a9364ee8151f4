#include "viewer/scene/scene_of.h"

#include "models/access/outline.h"

#include "viewer/scene/explosion.h"
#include "viewer/scene/scene_labels.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>
#include <iterator>
#include <numeric>
#include <random>

namespace gapwise {

namespace {

/// The gap between neighbours that are pulled apart, in shares of the length of all parts in a row.
constexpr double kPullGapShare = 0.01;

/// An angle that means nothing, the same for one part and one seed on every machine.
Degrees seededAngle(const PartId& part, std::uint32_t seed) {
    std::seed_seq numbers(part.text.begin(), part.text.end());
    std::array<std::uint32_t, 1> word{};
    numbers.generate(word.begin(), word.end());
    std::minstd_rand random{word.front() ^ (seed * 2654435761U)};
    random.discard(8);
    return Degrees{static_cast<double>(random() % 360U)};
}

/// Makes the items of one scene.
class ItemMaker {
public:
    ItemMaker(const Frame& frame, const Build& build, const SceneOptions& options)
        : frame_{frame}, build_{build}, options_{options} {}

    SceneItem housing() const {
        const Seat* seat = frame_.seat(seatOf(frame_.housing));
        return {.part = frame_.housing,
                .seat = seatOf(frame_.housing),
                .pose = poseOf(Seated{.stationMm = seat ? seat->zMm : 0.0})};
    }

    SceneItem seated(const Seating& seating) const {
        const Seat* seat = frame_.seat(seating.seat);
        const PartType* type = frame_.typeOf(seating.part);
        const HousingClock clock = housingClockOf(frame_, build_, seating.seat);
        const bool hasIndex = type && type->index != IndexKind::None;
        const bool hasFace = type && type->face != FaceKind::None;
        const Clock meaningless = Clock::seenFrom(
            Side::Compressor, hasIndex ? seededAngle(seating.part, options_.seed) : Degrees{0.0});
        const Seated sits{.index = clock.index.value_or(meaningless),
                          .referenceFaceLooks = seating.referenceFaceLooks.value_or(
                              demandedFaceOf(frame_, partMeantFor(seating.seat))),
                          .stationMm = seat ? seat->zMm : 0.0,
                          .asideMm = seat ? asideOf(*seat) : Vec3{}};
        const bool known = (clock.index || !hasIndex) && (seating.referenceFaceLooks || !hasFace);
        return {.part = seating.part,
                .seat = seating.seat,
                .pose = poseOf(sits),
                .state = known ? ItemState::Plain : ItemState::NotKnown};
    }

private:
    const Frame& frame_;
    const Build& build_;
    const SceneOptions& options_;
};

bool isBroken(const Checked* checked, const PartId& part) {
    return checked && std::ranges::any_of(checked->findings, [&](const Finding& f) {
               return f.verdict.state == RuleState::Broken &&
                      std::ranges::find(f.verdict.parts, part) != f.verdict.parts.end();
           });
}

/// What a part covers when it is assembled, turned about the shaft.
struct Cover {
    Span radius{1e300, 0.0};
    Span z{1e300, -1e300};
};

Cover sweptBy(const SceneItem& item) {
    Cover cover;
    for (const Vec3& own : item.uncut().body.faces.positions) {
        const Vec3 p = item.pose.point(own);
        const double r = std::hypot(p.x, p.y);
        cover.radius = {std::min(cover.radius.from, r), std::max(cover.radius.to, r)};
        cover.z = {std::min(cover.z.from, p.z), std::max(cover.z.to, p.z)};
    }
    return cover;
}

bool areNeighbours(const Cover& a, const Cover& b) {
    constexpr double kNearMm = 1.0;
    const auto meet = [](const Span& s, const Span& t) {
        return s.from <= t.to + kNearMm && t.from <= s.to + kNearMm;
    };
    return meet(a.radius, b.radius) && meet(a.z, b.z);
}

/// Neighbours are hatched the other way; where a part has neighbours of either kind, more or less densely.
/// The largest part is hatched first.
void hatch(Scene& scene) {
    constexpr std::array<Hatch, 6> kHatches{Hatch{Degrees{45.0}, 1.0},  Hatch{Degrees{135.0}, 1.0},
                                            Hatch{Degrees{45.0}, 0.7},  Hatch{Degrees{135.0}, 0.7},
                                            Hatch{Degrees{45.0}, 1.35}, Hatch{Degrees{135.0}, 1.35}};
    std::vector<Cover> covers;
    std::vector<std::size_t> order(scene.items.size());
    std::ranges::transform(scene.items, std::back_inserter(covers), sweptBy);
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, std::greater{},
                             [&](std::size_t i) { return covers[i].radius.to * covers[i].z.length(); });
    std::vector<std::optional<std::size_t>> chosen(scene.items.size());
    for (const std::size_t own : order) {
        std::array<double, kHatches.size()> likeness{};
        for (std::size_t kind = 0; kind < kHatches.size(); ++kind)
            for (std::size_t other = 0; other < covers.size(); ++other)
                if (chosen[other] && areNeighbours(covers[own], covers[other])) {
                    likeness[kind] += *chosen[other] == kind ? 3.0 : 0.0;
                    likeness[kind] += kHatches[*chosen[other]].angle.value == kHatches[kind].angle.value;
                }
        const auto least = std::ranges::min_element(likeness) - likeness.begin();
        chosen[own] = static_cast<std::size_t>(least);
        scene.items[own].hatch = kHatches[*chosen[own]];
    }
}

void addItem(Scene& scene, SceneItem item, const Frame& frame, const Meshes& meshes) {
    const PartType* type = frame.typeOf(item.part);
    const auto mesh = type ? meshes.find(type->id) : meshes.end();
    if (mesh == meshes.end())
        return;
    item.mesh = mesh->second;
    item.tint = tintOf(type->tint);
    scene.items.push_back(std::move(item));
}

/// What an item covers along the shaft as it is seen from a little off square, assembled.
Span coverOf(const SceneItem& item) {
    const double slope = std::tan(radians(kPulledApartSeenFrom));
    Span cover{1e300, -1e300};
    for (const Vec3& own : item.mesh->body.faces.positions) {
        const Vec3 p = item.pose.point(own);
        const double sweep = slope * std::hypot(p.x, p.y);
        cover = {std::min(cover.from, p.z - sweep), std::max(cover.to, p.z + sweep)};
    }
    return cover;
}

double boreRadiusOf(const SceneItem& item) {
    double least = 1e300;
    for (const Vec3& p : item.mesh->body.faces.positions)
        least = std::min(least, std::hypot(p.x, p.y));
    return least;
}

/// The end of a carrier over which a part goes on: the one toward which less of the carrier is wider than the
/// bore of the part, counted from `zMm`.
std::optional<Side> slimmerEnd(const SceneItem& carrier, double boreRadiusMm, double zMm) {
    double towardTurbine = 0.0;
    double towardCompressor = 0.0;
    for (const Vec3& own : carrier.mesh->body.faces.positions) {
        const Vec3 p = carrier.pose.point(own);
        if (std::hypot(p.x, p.y) <= boreRadiusMm)
            continue;
        double& wide = p.z < zMm ? towardTurbine : towardCompressor;
        wide = std::max(wide, std::abs(p.z - zMm));
    }
    if (towardTurbine == towardCompressor)
        return std::nullopt;
    return towardTurbine < towardCompressor ? Side::Turbine : Side::Compressor;
}

/// Over which end of its carrier a part goes, where the carrier is shown.
std::optional<Side> benchEntryOf(const Scene& scene, const Seat* seat, const SceneItem& part, double zMm) {
    if (!seat || seat->carriers.empty())
        return std::nullopt;
    const SeatId carrier = seatOf(seat->carriers.front().part);
    const auto found =
        std::ranges::find_if(scene.items, [&](const SceneItem& item) { return item.seat == carrier; });
    return found == scene.items.end() ? std::nullopt : slimmerEnd(*found, boreRadiusOf(part), zMm);
}

void pullApart(Scene& scene, const Frame& frame, double explode) {
    std::map<PartId, Span> covers;
    std::vector<PulledPart> parts;
    double length = 0.0;
    for (const SceneItem& item : scene.items) {
        if (item.mesh->body.faces.positions.empty() || firstOfItsSet(frame, scene, item) != &item)
            continue;
        const Span cover = covers[item.part] = coverOf(item);
        length += cover.length();
        parts.push_back({.part = item.part,
                         .seat = item.seat,
                         .z = cover,
                         .benchEntry = benchEntryOf(scene, frame.seat(item.seat), item, cover.middle())});
    }
    std::vector<AxialReach> reaches;
    for (const PartId& part : pulledApartOrder(frame, parts))
        reaches.push_back({part, covers.at(part)});
    const bool hasHousing = covers.contains(frame.housing);
    const auto moves = pulls(reaches, hasHousing ? frame.housing : PartId{}, kPullGapShare * length);
    for (SceneItem& item : scene.items)
        if (const auto move = moves.find(firstOfItsSet(frame, scene, item)->part); move != moves.end())
            item.pulledMm = explode * move->second;
}

void cutItems(Scene& scene, const Section& section, SectionCuts& cuts) {
    hatch(scene);
    scene.section = true;
    for (SceneItem& item : scene.items) {
        item.whole = item.mesh;
        item.mesh = cuts.cut(item.whole, inPartAxes(section, item.pose));
    }
    cuts.sweep();
}

} // namespace

Colour tintOf(std::string_view name) {
    struct Named {
        std::string_view name;
        Colour colour;
    };
    constexpr std::array<Named, 8> kTints{
        Named{"housing", {0.74, 0.76, 0.77}},   Named{"steel", {0.78, 0.82, 0.86}},
        Named{"bronze", {0.84, 0.69, 0.45}},    Named{"ring", {0.52, 0.58, 0.65}},
        Named{"aluminium", {0.86, 0.87, 0.87}}, Named{"hot", {0.75, 0.69, 0.64}},
        Named{"rubber", {0.33, 0.35, 0.38}},    Named{"gasket", {0.70, 0.74, 0.68}}};
    const auto found = std::ranges::find_if(kTints, [&](const Named& tint) { return tint.name == name; });
    return found == kTints.end() ? kTints[1].colour : found->colour;
}

Scene sceneOf(const Frame& frame, const Build& build, const Meshes& meshes, const SceneOptions& options) {
    const ItemMaker maker{frame, build, options};
    Scene scene;
    addItem(scene, maker.housing(), frame, meshes);
    const auto isShown = [&](const Seating& seating) {
        const Part* part = frame.part(seating.part);
        return seating.seat != seatOf(frame.housing) && (options.casings || !part || !part->casing);
    };
    for (const Seating& seating : build.seatings)
        if (isShown(seating))
            addItem(scene, maker.seated(seating), frame, meshes);
    for (SceneItem& item : scene.items)
        if (isBroken(options.checked, item.part))
            item.state = ItemState::Broken;
    if (options.explode > 0.0)
        pullApart(scene, frame, options.explode);
    if (options.section) {
        SectionCuts forgotten;
        cutItems(scene, *options.section, options.cuts ? *options.cuts : forgotten);
    }
    scene.labels = labelsOf(
        frame, scene, {.partIds = options.explode > 0.0 || options.section, .checked = options.checked});
    return scene;
}

} // namespace gapwise
