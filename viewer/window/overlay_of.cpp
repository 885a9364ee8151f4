#include "viewer/window/overlay_of.h"

#include "viewer/dial/dial.h"
#include "viewer/scene/placed_labels.h"
#include "viewer/scene/ring_dial.h"
#include "viewer/window/turn_arrow.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

PictureWord wordOf(SceneLabel::Kind kind) {
    switch (kind) {
    case SceneLabel::Kind::End: return PictureWord::End;
    case SceneLabel::Kind::Port: return PictureWord::Port;
    case SceneLabel::Kind::Broken: return PictureWord::Broken;
    case SceneLabel::Kind::NotKnown: return PictureWord::NotKnown;
    case SceneLabel::Kind::Part: break;
    }
    return PictureWord::Part;
}

/// An arc as the compressor side sees it, from an arc on a dial.
Arc fromCompressor(const Arc& arc, Side dial) {
    if (dial == Side::Compressor)
        return arc;
    return {wrapped(Degrees{-(arc.start.value + arc.sweep.value)}), arc.sweep};
}

class Overlay {
public:
    Overlay(const Job& job, const PictureView& picture, const Area& area, const PanelFrame& panels,
            bool moving)
        : job_{job}, picture_{picture}, area_{area}, panels_{panels}, moving_{moving} {}

    PictureOverlay made() {
        addLabels();
        addBenchFront();
        addEndDial();
        addSeatPlaces();
        addRingDial();
        addTurnArrow();
        return std::move(overlay_);
    }

private:
    PicturePlace placeOf(const Vec3& point) const {
        const PicturePoint at = picture_.camera().toPicture(point, picture_.size());
        return {area_.x + at.x, area_.y + at.y};
    }
    double cutWordsHeight() const {
        constexpr double kLine = 24.0; // Layout pixels.
        return job_.standpoint.section ? kLine * panels_.uiScale : 0.0;
    }

    PicturePlace placeOf(const Spot& spot) const { return {area_.x + spot.x, area_.y + spot.y}; }

    void addLabels() {
        const auto measure = [&](const SceneLabel& label) {
            const LabelExtent extent =
                extentOf(wordOf(label.kind), label.text, panels_.fonts, panels_.uiScale);
            return LabelSize{extent.width, extent.height};
        };
        const PictureSize& size = picture_.size();
        // The upper edge is where the panels say what is cut away.
        const double top = std::max(2.0, cutWordsHeight());
        const PictureArea inside{2.0, top, size.width - 4.0, size.height - 2.0 - top};
        const auto placed = labelsInPlace({picture_.scene(), picture_.camera(), size}, measure,
                                          {.inside = inside, .unit = panels_.uiScale, .moving = moving_});
        for (const LabelInPlace& each : placed)
            if (each.label->kind != SceneLabel::Kind::End || !closeUpAlongTheShaft())
                overlay_.labels.push_back(labelOf(each));
    }

    PictureLabel labelOf(const LabelInPlace& placed) const {
        return {
            .kind = wordOf(placed.label->kind),
            .words = placed.label->text,
            .box = {area_.x + placed.box.left, area_.y + placed.box.top, placed.box.width, placed.box.height},
            .leader = placed.leader,
            .dashed = placed.hidden,
            .from = placeOf(placed.leaderStart),
            .to = placeOf(placed.leaderEnd)};
    }

    /// Close to a part and onto an end, that end is what one sees: its name would lie in the way.
    bool closeUpAlongTheShaft() const {
        constexpr double kAlong = 0.7;
        return job_.inHand && std::abs(picture_.camera().camera.forward().z) > kAlong;
    }

    bool free(const Area& box) const {
        return std::ranges::none_of(overlay_.labels, [&](const PictureLabel& label) {
            return box.x < label.box.right() && label.box.x < box.right() && box.y < label.box.bottom() &&
                   label.box.y < box.bottom();
        });
    }

    void addWord(PictureWord kind, std::string words, const PicturePlace& middle) {
        const LabelExtent extent = extentOf(kind, words, panels_.fonts, panels_.uiScale);
        const Area box{middle.x - extent.width / 2.0, middle.y - extent.height / 2.0, extent.width,
                       extent.height};
        if ((kind != PictureWord::Bench && kind != PictureWord::Seat) || free(box))
            overlay_.labels.push_back({.kind = kind, .words = std::move(words), .box = box});
    }

    /// Where the person stands, written on the bench; a piece that is laid on its side has no front.
    void addBenchFront() {
        const Scene& scene = picture_.scene();
        const auto top = scene.ground.benchTop ? benchTopOf(scene) : std::nullopt;
        if (!top || laidOnItsSide(job_.standpoint, job_.attitude()))
            return;
        constexpr double kFromTheEdge = 0.9;
        constexpr double kFromTheMiddle = 0.55;
        const Vec3 front = top->middle + scene.ground.axes.zAxis * (kFromTheEdge * top->halfDepth) -
                           scene.ground.axes.xAxis * (kFromTheMiddle * top->halfWidth);
        PicturePlace place = placeOf(front);
        const double margin = 10.0 * panels_.uiScale;
        if (place.y < area_.y + margin || place.x < area_.x || place.x > area_.right())
            return;
        place.y = std::min(place.y, area_.bottom() - margin);
        addWord(PictureWord::Bench, "front of the bench", place);
    }

    /// Straight onto an end: its name, and the hours round everything, unless the dial at a ring has them.
    void addEndDial() {
        constexpr Degrees kStraight{1.0};
        constexpr double kCircleShare = 0.84; // Of the widest part; the dial then stands a little outside it.
        const Camera& camera = picture_.camera().camera;
        if (camera.offAxis() > kStraight)
            return;
        const Side side = camera.forward().z < 0.0 ? Side::Compressor : Side::Turbine;
        const LabelExtent extent =
            extentOf(PictureWord::End, nameOfEnd(side), panels_.fonts, panels_.uiScale);
        const double margin = 6.0 * panels_.uiScale;
        addWord(PictureWord::End, nameOfEnd(side),
                {area_.x + margin + extent.width / 2.0,
                 area_.y + margin + cutWordsHeight() + extent.height / 2.0});
        if (!seatingInHand(job_))
            addLines(ringDialOf({.ringRadiusMm = kCircleShare * widest(), .seenFrom = side}));
    }

    static const char* nameOfEnd(Side side) {
        return side == Side::Compressor ? "COMPRESSOR end" : "TURBINE end";
    }

    double widest() const {
        double radius = 1.0;
        for (const Vec3& p : picture_.scene().points())
            radius = std::max(radius, std::hypot(p.x, p.y));
        return radius;
    }

    /// Where the part in hand could be dropped: a circle in each empty seat that takes it.
    void addSeatPlaces() {
        constexpr Degrees kBelow{150.0};
        for (const SeatPlace& place : picture_.seatPlaces(job_)) {
            std::vector<Vec3> circle;
            for (int degree = 0; degree <= 360; degree += 4)
                circle.push_back(place.at(Clock::seenFrom(Side::Compressor, Degrees{degree * 1.0})));
            addLine(PictureLine::Kind::Seat, circle);
            const PicturePlace at = placeOf(place.at(Clock::seenFrom(Side::Compressor, kBelow)));
            const double aside = 10.0 * panels_.uiScale;
            addWord(PictureWord::Seat, meantFor(job_.frame, place.seat).text,
                    {at.x + 2.0 * aside, at.y + aside});
        }
    }

    const DialRing* ringInHand(const EndDial& dial) const {
        const Seating* seating = seatingInHand(job_);
        if (!seating)
            return nullptr;
        const auto found = std::ranges::find(dial.rings, seating->seat, &DialRing::seat);
        return found == dial.rings.end() ? nullptr : &*found;
    }

    void addRingDial() {
        // Edge on, its hours would lie over each other.
        constexpr double kEdgeOn = 0.12;
        const double across = picture_.camera().camera.forward().z;
        if (std::abs(across) < kEdgeOn)
            return;
        for (const Side side : {Side::Turbine, Side::Compressor}) {
            const EndDial dial = endDialOf(job_, side);
            if (const DialRing* ring = ringInHand(dial))
                addRingDial(*ring, side, across < 0.0 ? Side::Compressor : Side::Turbine);
        }
    }

    void addRingDial(const DialRing& ring, Side dial, Side seenFrom) {
        const SceneItem* item = picture_.scene().item(ring.part);
        if (!item || item->uncut().body.faces.positions.empty())
            return;
        double radius = 0.0;
        for (const Vec3& p : item->uncut().body.faces.positions)
            radius = std::max(radius, std::hypot(p.x, p.y));
        RingDialOf wanted{.zMm = item->drawnPose().shift.z,
                          .ringRadiusMm = radius,
                          .seenFrom = seenFrom,
                          .topWord = ring.readFrom.text.empty() ? "inlet" : "mark"};
        if (ring.at)
            wanted.gap = Clock::seenFrom(dial, *ring.at);
        for (const Arc& window : ring.windows)
            wanted.windows.push_back(fromCompressor(window, dial));
        addLines(ringDialOf(wanted));
    }

    /// The way the wrench turns, round what is tightened next.
    void addTurnArrow() {
        constexpr double kLeastRadius = 20.0; // Layout pixels.
        const double mmPerPixel = picture_.camera().heightMm / std::max(1, picture_.size().height);
        const auto arrow = turnArrowOf(job_, {.scene = picture_.scene(),
                                              .camera = picture_.camera(),
                                              .leastRadiusMm = kLeastRadius * panels_.uiScale * mmPerPixel,
                                              .moving = moving_});
        if (!arrow)
            return;
        addLine(PictureLine::Kind::Turn, arrow->arc);
        addLine(PictureLine::Kind::Turn, arrow->head);
    }

    void addLines(const RingDial& dial) {
        for (const auto& line : dial.circle)
            addLine(PictureLine::Kind::Dial, line);
        for (const auto& line : dial.windows)
            addLine(PictureLine::Kind::Window, line);
        if (!dial.gap.empty())
            addLine(PictureLine::Kind::Gap, dial.gap);
        // Whose clock it is stands at its 12: the oil inlet's, or the mark's of what carries the ring.
        for (const RingDial::Hour& hour : dial.hours)
            addWord(PictureWord::Hour,
                    hour.hour == 12 ? fmt::format("12 {}", dial.top) : fmt::format("{}", hour.hour),
                    placeOf(hour.at));
    }

    void addLine(PictureLine::Kind kind, const std::vector<Vec3>& points) {
        PictureLine line{.kind = kind};
        for (const Vec3& point : points)
            line.points.push_back(placeOf(point));
        overlay_.lines.push_back(std::move(line));
    }

    const Job& job_;
    const PictureView& picture_;
    const Area& area_;
    const PanelFrame& panels_;
    bool moving_;
    PictureOverlay overlay_{};
};

} // namespace

PictureOverlay overlayOf(const Job& job, const PictureView& picture, const Area& area,
                         const PanelFrame& panels, bool moving) {
    return Overlay{job, picture, area, panels, moving}.made();
}

} // namespace gapwise
