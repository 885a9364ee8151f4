#include "viewer/window/picture_view.h"

#include "models/build/write_build.h"
#include "viewer/dial/dial.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

constexpr double kDegreesPerPixel = 0.35;
constexpr double kZoomPerNotch = 1.12;
constexpr double kLowest = -30.0; ///< Degrees: under the bench there is nothing to see.
constexpr double kHighest = 85.0;
constexpr double kClickPixels = 4.0;
constexpr Colour kPaper{0.949, 0.953, 0.941}; ///< As the panels around it.

/// Lines as wide as in a picture on disk of twice the size: this one is looked at from nearby.
double lineScaleOf(const PictureSize& size) {
    return std::max(1.0, size.height / 600.0);
}

/// The findings that may be shown now: none of a seating whose demand is still kept back.
Checked shownFindings(const Job& job) {
    Checked shown = job.checked;
    std::erase_if(shown.findings, [&](const Finding& finding) {
        return std::ranges::any_of(partsOf(*finding.verdict.rule),
                                   [&](const PartId& part) { return !demandShown(job, seatOf(part)); });
    });
    return shown;
}

/// Of everything that the items and labels of the scene depend on.
std::string sceneKeyOf(const PictureOf& wanted, const Stance& stance) {
    const Job& job = wanted.job;
    std::string key = job.frame.id.text + toBuildSheet(shownBuildOf(job), job.frame);
    key += fmt::format("{} {} {} {}", wanted.standpoint.pulledApart, job.inHand ? job.inHand->text : "",
                       stance.onBench, wanted.standpoint.casings);
    if (const auto& section = wanted.standpoint.section)
        key += fmt::format(" {} {}", section->kind == Section::Kind::Half ? "half" : "quarter",
                           section->removed.from(Side::Compressor).value);
    for (const Finding& finding : shownFindings(job).findings)
        key += finding.verdict.rule->id.text;
    return key;
}

std::string lookKeyOf(const PictureOf& wanted, const Stance& stance) {
    const Vec3 eye = stance.camera.forward();
    const Vec3 up = stance.camera.up();
    const Vec3 bench = stance.bench.zAxis;
    return fmt::format("{} {} {} {} {} {} {} {} {} {} {}x{}", eye.x, eye.y, eye.z, up.x, up.y, up.z, bench.x,
                       bench.y, bench.z, wanted.standpoint.zoom, wanted.size.width, wanted.size.height);
}

/// A gap, a mark or a notch can be turned; what has no index cannot, nor what its seat holds.
bool canBeTurned(const Frame& frame, const Seating& seating) {
    const PartType* type = frame.typeOf(seating.part);
    const Seat* seat = frame.seat(seating.seat);
    return type && seat && type->index != IndexKind::None && !seat->fixedIndex && seating.part != frame.rotor;
}

Standpoint lookTurned(const Job& job, const PictureMouse& mouse) {
    Standpoint next = freed(job.standpoint, job.attitude());
    next.freeAzimuth = wrappedHalf(Degrees{next.freeAzimuth.value - mouse.movedX * kDegreesPerPixel});
    next.freeElevation =
        Degrees{std::clamp(next.freeElevation.value + mouse.movedY * kDegreesPerPixel, kLowest, kHighest)};
    return next;
}

/// The part in hand goes where it was dropped, its index where the pointer was, if it has one to be set.
Act placedAt(const Job& job, const SeatHit& hit) {
    PartPlaced placed{.part = *job.inHand, .seat = hit.seat};
    if (indexIsSet(job.frame, placed.part, hit.seat)) {
        Build build = job.state.build;
        build.seatings.push_back({.part = placed.part,
                                  .seat = hit.seat,
                                  .index = Clock::seenFrom(Side::Compressor, Degrees{0.0})});
        const HousingClock top = housingClockOf(job.frame, build, hit.seat);
        const Degrees carried = top.index ? top.index->from(Side::Compressor) : Degrees{0.0};
        placed.index = hit.clock.turned(Side::Compressor, -carried);
        placed.setIn = pictureViewOf(job.standpoint, job.attitude()).value_or(job.standingView());
    }
    return Act{placed};
}

double radiusOf(const SceneItem& item) {
    double radius = 0.0;
    for (const Vec3& p : item.uncut().body.faces.positions)
        radius = std::max(radius, std::hypot(p.x, p.y));
    return radius;
}

/// What must be inside the picture: everything, or the part in hand with a good deal of what is around it;
/// while it lies on the tray, the seats that could take it.
std::vector<Vec3> framedPoints(const Scene& scene, const std::vector<SeatPlace>& closeTo) {
    constexpr double kAround = 2.0; // In radii of the part.
    const std::vector<Vec3> all = scene.points();
    double widest = 0.0;
    for (const Vec3& p : all)
        widest = std::max(widest, std::hypot(p.x, p.y));
    std::vector<Vec3> framed;
    for (const SeatPlace& place : closeTo) {
        const double reach = kAround * place.radiusMm;
        const double z = place.zMm;
        if (reach > widest)
            return all;
        framed.insert(framed.end(), {{-reach, -reach, z},
                                     {reach, -reach, z},
                                     {-reach, reach, z},
                                     {reach, reach, z},
                                     {0.0, 0.0, z - reach},
                                     {0.0, 0.0, z + reach}});
    }
    return framed.empty() || all.empty() ? all : framed;
}

/// A parallel camera that is held close to a part steps back until everything lies before it: nothing else
/// changes in the picture.
void stepBack(SceneCamera& lens, const Scene& scene) {
    const Vec3 target = lens.camera.target();
    const Vec3 forward = lens.camera.forward();
    double behind = length(target - lens.camera.eye());
    double beyond = behind;
    for (const Vec3& p : scene.points()) {
        const double along = dot(p - target, forward);
        behind = std::max(behind, -along);
        beyond = std::max(beyond, along);
    }
    const double distance = 2.0 * behind;
    lens.camera = Camera{target - forward * distance, target, lens.camera.up()};
    lens.nearMm = distance - behind - 1.0;
    lens.farMm = distance + beyond + 1.0;
}

/// Room for the names of the ends left and right, and for inlet and drain above and below; above them for the
/// line that says what is cut away.
FitInto fitInto(const PictureSize& size, bool cutOpen) {
    const double aside = std::min(0.09 * size.width, 90.0);
    const double above = std::min(0.11 * size.height, 60.0);
    const double line = cutOpen ? std::min(0.07 * size.height, 36.0) : 0.0;
    return {size, {aside, above + line, size.width - 2.0 * aside, size.height - 2.0 * above - line}};
}

} // namespace

Result<PictureView> PictureView::make(std::shared_ptr<SectionCuts> cuts) {
    Result<Renderer> renderer = Renderer::make();
    if (!renderer)
        return renderer.errors();
    return PictureView{std::move(renderer).value(), std::move(cuts)};
}

void PictureView::makeScene(const PictureOf& wanted, const Meshes& meshes) {
    const Checked shown = shownFindings(wanted.job);
    const SceneOptions options{.explode = wanted.standpoint.pulledApart,
                               .section = wanted.standpoint.section,
                               .cuts = cuts_.get(),
                               .casings = wanted.standpoint.casings,
                               .checked = &shown};
    scene_ = sceneOf(wanted.job.frame, shownBuildOf(wanted.job), meshes, options);
    for (SceneItem& item : scene_.items)
        item.inHand = wanted.job.inHand == item.part;
}

Result<PictureView::Drawn> PictureView::draw(const PictureOf& wanted, const Meshes& meshes) {
    const Attitude attitude = wanted.job.attitude();
    stance_ = glide_.at({wanted.standpoint, attitude, wanted.job.inHand, wanted.seconds});
    const std::string sceneKey = sceneKeyOf(wanted, stance_);
    const std::string pictureKey = sceneKey + lookKeyOf(wanted, stance_);
    const bool same = pictureKey == pictureKey_ && !glide_.moving();
    if (same && drawn_.settled) {
        drawn_.drawnAgain = false;
        return drawn_;
    }
    if (sceneKey != sceneKey_)
        makeScene(wanted, meshes);
    const std::vector<Vec3> points = framedPoints(scene_, closeTo(wanted.job));
    if (points.empty())
        return Error{
            .where = "picture", .found = "nothing to draw", .allowed = "meshes of the frame's parts"};
    scene_.ground = {.axes = stance_.bench, .benchTop = stance_.onBench};
    size_ = wanted.size;
    camera_ = glide_.framed(fittedCamera(points, stance_.camera, Projection::Parallel,
                                         fitInto(size_, wanted.standpoint.section.has_value())));
    camera_.heightMm /= wanted.standpoint.zoom;
    stepBack(camera_, scene_);
    const bool fine = same;
    const Result<unsigned> texture = renderer_.drawTexture(
        Shot{.scene = scene_,
             .camera = camera_,
             .size = size_,
             .style = {.paper = kPaper, .lineScale = lineScaleOf(size_), .coarse = !fine}});
    if (!texture)
        return texture.errors();
    sceneKey_ = sceneKey;
    pictureKey_ = pictureKey;
    drawn_ = Drawn{.texture = *texture, .drawnAgain = true, .settled = fine};
    return drawn_;
}

std::optional<Clock> PictureView::indexUnder(const Job& job, const PictureMouse& mouse,
                                             const Seating& seating) const {
    const SceneItem* item = scene_.item(seating.part);
    if (!item)
        return std::nullopt;
    const auto at = clockUnder(rayThrough(camera_, size_, mouse.x, mouse.y), item->drawnPose().shift.z);
    const HousingClock now = housingClockOf(job.frame, shownBuildOf(job), seating.seat);
    if (!at || !now.index || !seating.index || now.onCarrier)
        return at;
    // What carries the ring may itself stand turned: the seating's clock is relative to its top.
    const Clock& own = job.turning && job.turning->seat == seating.seat ? job.turning->index : *seating.index;
    const Degrees carrier = now.index->from(Side::Compressor) - own.from(Side::Compressor);
    return at->turned(Side::Compressor, -carrier);
}

std::vector<SeatPlace> PictureView::closeTo(const Job& job) const {
    const Seating* seating = seatingInHand(job);
    if (!seating)
        return seatPlaces(job);
    const SceneItem* item = scene_.item(seating->part);
    if (!item)
        return {};
    return {{seating->seat, item->drawnPose().shift.z, radiusOf(*item)}};
}

std::vector<SeatPlace> PictureView::seatPlaces(const Job& job) const {
    if (!job.inHand || job.state.build.of(*job.inHand))
        return {};
    return seatPlacesFor(job.frame, job.state.build, scene_, *job.inHand);
}

void PictureView::press(const Job& job, const PictureMouse& mouse, std::vector<Wish>& wishes) {
    pressed_ = true;
    moved_ = false;
    pressedAt_ = {mouse.x, mouse.y};
    dragged_.reset();
    if (const auto hit = seatAt(seatPlaces(job), camera_, size_, pressedAt_)) {
        wishes.emplace_back(placedAt(job, *hit));
        pressed_ = false;
        return;
    }
    // The whole dial at what is in hand is its handle; a first touch elsewhere only takes a part in hand.
    if (const Seating* held = seatOnDial(job, mouse)) {
        if (const auto under = indexUnder(job, mouse, *held)) {
            dragged_ = held->seat;
            grip_ = held->index.value_or(*under).from(Side::Compressor) - under->from(Side::Compressor);
        }
        return;
    }
    takeUnder(job, mouse, wishes);
}

void PictureView::takeUnder(const Job& job, const PictureMouse& mouse, std::vector<Wish>& wishes) const {
    const auto picked = pick(scene_, rayThrough(camera_, size_, mouse.x, mouse.y));
    if (!picked)
        return;
    const PartId part = scene_.items[picked->item].part;
    if (part != job.frame.housing && part != job.inHand)
        wishes.emplace_back(TakeInHand{part});
}

const Seating* PictureView::seatOnDial(const Job& job, const PictureMouse& mouse) const {
    constexpr double kDialShare = 1.6; // Of the ring's radius: out to its hours.
    const Seating* seating = seatingInHand(job);
    const SceneItem* item = seating ? scene_.item(seating->part) : nullptr;
    if (!item || !canBeTurned(job.frame, *seating))
        return nullptr;
    const auto met = meets(rayThrough(camera_, size_, mouse.x, mouse.y), item->drawnPose().shift.z);
    return met && std::hypot(met->x, met->y) <= kDialShare * radiusOf(*item) ? seating : nullptr;
}

void PictureView::release(const Job& job, const PictureMouse& mouse, std::vector<Wish>& wishes) {
    if (dragged_ && moved_ && job.turning) {
        const auto view = pictureViewOf(job.standpoint, job.attitude());
        wishes.emplace_back(
            Act{IndexTurned{*dragged_, job.turning->index, view.value_or(job.standingView())}});
    } else if (dragged_ && !moved_) {
        takeUnder(job, mouse, wishes);
    } else if (!dragged_ && !moved_ && pressed_ &&
               !pick(scene_, rayThrough(camera_, size_, mouse.x, mouse.y))) {
        wishes.emplace_back(TakeInHand{});
    }
    dragged_.reset();
    pressed_ = false;
}

std::vector<Wish> PictureView::wishesOf(const Job& job, const PictureMouse& mouse) {
    std::vector<Wish> wishes;
    if (mouse.inside && mouse.leftPressed)
        press(job, mouse, wishes);
    const bool moves = mouse.movedX != 0.0 || mouse.movedY != 0.0;
    if (std::hypot(mouse.x - pressedAt_.x, mouse.y - pressedAt_.y) > kClickPixels)
        moved_ = true;
    if (dragged_ && mouse.leftDown && moves && moved_) {
        const Seating* seating = job.state.build.in(*dragged_);
        const auto under = seating ? indexUnder(job, mouse, *seating) : std::nullopt;
        if (under)
            wishes.emplace_back(Turning{*dragged_, under->turned(Side::Compressor, grip_)});
    } else if (moves &&
               ((pressed_ && mouse.leftDown && moved_ && !dragged_) || (mouse.inside && mouse.rightDown))) {
        wishes.emplace_back(LookAgain{lookTurned(job, mouse)});
    }
    if (mouse.leftReleased)
        release(job, mouse, wishes);
    if (mouse.inside && mouse.wheel != 0.0) {
        Standpoint next = job.standpoint;
        next.zoom = std::clamp(next.zoom * std::pow(kZoomPerNotch, mouse.wheel), kLeastZoom, kMostZoom);
        wishes.emplace_back(LookAgain{next});
    }
    return wishes;
}

} // namespace gapwise
