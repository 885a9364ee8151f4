#include "viewer/window/picture_view.h"

#include "models/build/write_build.h"
#include "viewer/scene/read_meshes.h"
#include "viewer/scene/scene_labels.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

constexpr double kDegreesPerPixel = 0.35;
constexpr double kZoomPerNotch = 1.12;
constexpr double kLeastZoom = 0.5;
constexpr double kMostZoom = 8.0;
constexpr double kClickPixels = 4.0;

/// The build as it is shown at this moment: a gap that is being turned lies where the mouse holds it.
Build shownBuild(const Job& job) {
    Build build = job.state.build;
    if (job.turning)
        for (Seating& seating : build.seatings)
            if (seating.seat == job.turning->seat)
                seating.index = job.turning->index;
    return build;
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

std::string keyOf(const Job& job, const Standpoint& at, const PictureSize& size) {
    std::string key = toBuildSheet(shownBuild(job), job.frame);
    key += fmt::format("{} {} {} {} {} {} {} {} {} {}x{} {}", static_cast<int>(at.kind),
                       at.observer.stand.value, static_cast<int>(at.observer.levelSide), at.freeAzimuth.value,
                       at.freeElevation.value, at.pulledApart, at.zoom, at.section,
                       job.inHand ? job.inHand->text : "", size.width, size.height, job.turning.has_value());
    for (const Finding& finding : shownFindings(job).findings)
        key += finding.verdict.rule->id.text;
    return key;
}

/// A gap, a mark or a notch can be turned; what has no index cannot, nor what its seat holds.
bool canBeTurned(const Frame& frame, const Seating& seating) {
    const PartType* type = frame.typeOf(seating.part);
    const Seat* seat = frame.seat(seating.seat);
    return type && seat && type->index != IndexKind::None && !seat->fixedIndex && seating.part != frame.rotor;
}

Standpoint lookTurned(const Job& job, const PictureMouse& mouse) {
    Standpoint next = job.standpoint;
    if (next.kind != LookKind::Free) {
        // Goes on from where the look is now, seen as azimuth and elevation round the bench's upright.
        next.freeAzimuth = next.kind == LookKind::FromCompressor ? Degrees{90.0}
                           : next.kind == LookKind::FromTurbine  ? Degrees{-90.0}
                                                                 : Degrees{0.0};
        next.freeElevation = Degrees{next.kind == LookKind::WhereIStand ? 40.0 : 0.0};
        next.kind = LookKind::Free;
    }
    next.freeAzimuth = wrappedHalf(Degrees{next.freeAzimuth.value - mouse.movedX * kDegreesPerPixel});
    next.freeElevation =
        Degrees{std::clamp(next.freeElevation.value + mouse.movedY * kDegreesPerPixel, -85.0, 85.0)};
    return next;
}

/// Room for the names of the ends left and right, and for inlet and drain above and below.
FitInto fitInto(const PictureSize& size) {
    const double aside = std::min(0.09 * size.width, 90.0);
    const double above = std::min(0.11 * size.height, 60.0);
    return {size, {aside, above, size.width - 2.0 * aside, size.height - 2.0 * above}};
}

} // namespace

Result<PictureView> PictureView::make() {
    Result<Renderer> renderer = Renderer::make();
    if (!renderer)
        return renderer.errors();
    return PictureView{std::move(renderer).value()};
}

Errors PictureView::load(const DataFolder& data, const Frame& frame) {
    if (loaded_ == frame.id)
        return {};
    loaded_ = frame.id;
    key_.clear();
    Result<Meshes> meshes = readMeshes(data, frame);
    if (!meshes)
        return meshes.errors();
    meshes_ = std::move(meshes).value();
    return {};
}

void PictureView::makeScene(const Job& job, const Standpoint& standpoint) {
    const Checked shown = shownFindings(job);
    SceneOptions options{.explode = standpoint.pulledApart, .checked = &shown};
    if (standpoint.section)
        options.section = SectionPlane{};
    scene_ = sceneOf(job.frame, shownBuild(job), meshes_, options);
    scene_.labels = labelsOf(job.frame, scene_, {.partIds = standpoint.pulledApart > 0.0, .checked = &shown});
}

Result<PictureView::Drawn> PictureView::draw(const Job& job, const Standpoint& standpoint,
                                             const PictureSize& size) {
    std::string key = keyOf(job, standpoint, size);
    if (key == key_) {
        drawn_.drawnAgain = false;
        return drawn_;
    }
    makeScene(job, standpoint);
    size_ = size;
    const std::vector<Vec3> points = scene_.points();
    if (points.empty())
        return Error{
            .where = "picture", .found = "nothing to draw", .allowed = "meshes of the frame's parts"};
    const Camera direction = pictureCameraOf(standpoint, job.attitude());
    camera_ = fittedCamera(points, direction, Projection::Parallel, fitInto(size));
    camera_.heightMm /= standpoint.zoom;
    const Result<unsigned> texture =
        renderer_.drawTexture(Shot{.scene = scene_,
                                   .camera = camera_,
                                   .size = size,
                                   .style = {.samples = 1, .lineScale = size.height / 900.0}});
    if (!texture)
        return texture.errors();
    key_ = std::move(key);
    drawn_ = Drawn{*texture, size, true};
    return drawn_;
}

const SceneItem* PictureView::itemOf(const PartId& part) const {
    const auto found = std::ranges::find(scene_.items, part, &SceneItem::part);
    return found == scene_.items.end() ? nullptr : &*found;
}

std::optional<Clock> PictureView::indexUnder(const Job& job, const PictureMouse& mouse,
                                             const Seating& seating) const {
    const SceneItem* item = itemOf(seating.part);
    if (!item)
        return std::nullopt;
    const auto at = clockUnder(rayThrough(camera_, size_, mouse.x, mouse.y), item->drawnPose().shift.z);
    const HousingClock now = housingClockOf(job.frame, shownBuild(job), seating.seat);
    if (!at || !now.index || !seating.index || now.onCarrier)
        return at;
    // What carries the ring may itself stand turned: the seating's clock is relative to its top.
    const Clock& own = job.turning && job.turning->seat == seating.seat ? job.turning->index : *seating.index;
    const Degrees carrier = now.index->from(Side::Compressor) - own.from(Side::Compressor);
    return at->turned(Side::Compressor, -carrier);
}

void PictureView::press(const Job& job, const PictureMouse& mouse, std::vector<Wish>& wishes) {
    pressed_ = true;
    moved_ = false;
    dragged_.reset();
    const auto picked = pick(scene_, rayThrough(camera_, size_, mouse.x, mouse.y));
    if (!picked)
        return;
    const PartId part = scene_.items[picked->item].part;
    const Seating* seating = job.state.build.of(part);
    // What is in hand already can be turned; a first touch only takes it in hand.
    if (seating && job.inHand == part && canBeTurned(job.frame, *seating) && indexUnder(job, mouse, *seating))
        dragged_ = seating->seat;
    else if (part != job.frame.housing)
        wishes.emplace_back(TakeInHand{part});
}

void PictureView::release(const Job& job, const PictureMouse& mouse, std::vector<Wish>& wishes) {
    if (dragged_ && moved_ && job.turning) {
        const auto view = pictureViewOf(job.standpoint, job.attitude());
        wishes.emplace_back(
            Act{IndexTurned{*dragged_, job.turning->index, view.value_or(job.standingView())}});
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
    if (std::hypot(mouse.movedX, mouse.movedY) > kClickPixels)
        moved_ = true;
    const bool moves = mouse.movedX != 0.0 || mouse.movedY != 0.0;
    if (dragged_ && mouse.leftDown && moves) {
        moved_ = true;
        const Seating* seating = job.state.build.in(*dragged_);
        const auto index = seating ? indexUnder(job, mouse, *seating) : std::nullopt;
        if (index)
            wishes.emplace_back(Turning{*dragged_, *index});
    } else if (moves && ((pressed_ && mouse.leftDown) || (mouse.inside && mouse.rightDown))) {
        moved_ = true;
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
