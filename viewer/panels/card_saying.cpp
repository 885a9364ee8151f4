#include "viewer/panels/bench_question.h"
#include "viewer/panels/card.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

/// What is said of one seat begins anew with another seat.
void beginSaying(const SeatId& seat, Drafts& drafts) {
    if (drafts.saying == seat)
        return;
    drafts.saying = seat;
    drafts.gapSeen.reset();
    drafts.referenceFaceVisible.reset();
}

/// A tip outside the rim and its name beside it.
void drawPort(const Round& face, Degrees at, std::string_view name, const Surface& surface) {
    drawPointer(face.withRadius(face.radius + surface.px(2.0)), at, surface.px(9.0), palette::kInk);
    const double sine = std::sin(radians(at));
    const double width = surface.px(40.0);
    const ImVec2 tip = face.withRadius(face.radius + surface.px(6.0)).at(at);
    const bool leftOfTip = sine < -0.5;
    const double x = static_cast<double>(tip.x) + (leftOfTip ? -width - surface.px(6.0) : surface.px(8.0));
    writeLine({x, static_cast<double>(tip.y) - surface.px(8.0), width, surface.px(16.0)}, name,
              {surface.fonts().small, palette::kInk, leftOfTip ? Align::Right : Align::Left});
}

void drawBareFace(const BareDial& dial, const Round& face, const Surface& surface) {
    ink().AddCircleFilled(point(face.x, face.y), static_cast<float>(face.radius), palette::kSheet, 96);
    drawCircle(face, {palette::kInk, 1.5});
    for (int hour = 0; hour < 12 && !dial.fromBeside; ++hour)
        ink().AddLine(face.at(Degrees{30.0 * hour}),
                      face.at(Degrees{30.0 * hour}, hour % 3 == 0 ? 0.90 : 0.95), palette::kSoftInk, 1.5F);
    for (std::size_t i = 0; i < dial.words.size(); ++i) {
        const ImVec2 at = face.at(Degrees{90.0 * static_cast<double>(i)}, i % 2 == 0 ? 0.80 : 0.74);
        const double half = face.radius * (i % 2 == 0 ? 0.44 : 0.24);
        writeLine({static_cast<double>(at.x) - half, static_cast<double>(at.y) - surface.px(9.0), 2.0 * half,
                   surface.px(18.0)},
                  dial.words.at(i), {surface.fonts().strong, palette::kInk, Align::Middle});
    }
    drawPort(face, dial.inletAt, "inlet", surface);
    drawPort(face, dial.drainAt, "drain", surface);
}

void drawWindow(const BareDial& dial, const Arc& window, const Round& round, Side side) {
    // An arc runs clockwise on its own dial; seen from the other end it runs the other way.
    const Degrees begin = side == dial.view.side ? window.start : window.start + window.sweep;
    const Degrees seen = seenIn(dial.view, Clock::seenFrom(side, begin));
    drawArc(round, Arc{seen, window.sweep}, {palette::kAccent, round.radius * 0.06});
}

/// Where the index is, and what is demanded, as he sees it: once that may be seen.
void drawSaid(const Job& job, const SeatId& seat, const BareDial& dial, const Round& face) {
    const Round ring = face.withRadius(face.radius * 0.42);
    drawCircle(ring, {palette::kSteelLight, face.radius * 0.10});
    for (const Side side : {Side::Compressor, Side::Turbine})
        for (const DialRing& each : endDialOf(job, side).rings) {
            if (each.seat != seat || !each.demandShown)
                continue;
            for (const Arc& window : each.windows)
                drawWindow(dial, window, face.withRadius(face.radius * 0.53), side);
            if (each.at)
                drawSign(each.state.sign, ring.at(seenIn(dial.view, Clock::seenFrom(side, *each.at))),
                         face.radius * 0.1);
        }
}

std::optional<Degrees> tappedClock(const BareDial& dial, const Round& face, const Surface& surface) {
    const bool enabled = dial.unseen.empty();
    const Area area{face.x - face.radius, face.y - face.radius, 2.0 * face.radius, 2.0 * face.radius};
    ImGui::BeginDisabled(!enabled);
    const Pressed pressed = pressable(surface, "bare dial", area);
    ImGui::EndDisabled();
    const ImVec2 mouse = ImGui::GetIO().MousePos;
    const double away =
        std::hypot(static_cast<double>(mouse.x) - face.x, static_cast<double>(mouse.y) - face.y);
    if (!enabled || !pressed.done || away < surface.px(10.0))
        return std::nullopt;
    // Square to the axis nobody reads a clock: the nearest of the eight bench words is meant.
    const double step = dial.fromBeside ? 45.0 : 1.0;
    const double seen = clockOf(face, static_cast<double>(mouse.x), static_cast<double>(mouse.y)).value;
    return wrapped(Degrees{std::round(seen / step) * step});
}

std::string legendOf(const BareDial& dial) {
    if (!dial.unseen.empty())
        return dial.unseen;
    if (!dial.heldOn.empty())
        return "Hold " + dial.heldOn.text +
               " as it goes in, its mark to the inlet. What points away is hidden behind it.";
    return "Tap where you see it, as you look at the " + std::string{nameOf(dial.view.side)} + " side.";
}

/// The dial to tap.
void sayGap(const Job& job, const SeatId& seat, const Area& area, const Surface& surface) {
    Drafts& drafts = surface.drafts();
    const BareDial dial = bareDialOf(job, seat);
    const double margin = surface.px(46.0); // For the words beside the tips.
    const double radius = std::min(area.width / 2.0 - margin, area.height / 2.0 - surface.px(13.0));
    const Round face{area.x + radius + margin, area.middleY(), radius};
    const std::optional<Degrees> tapped = tappedClock(dial, face, surface);
    drawBareFace(dial, face, surface);
    drawSaid(job, seat, dial, face);
    if (tapped)
        drafts.gapSeen = tapped;
    if (drafts.gapSeen)
        drawSign(DialSign::Unsaid, face.withRadius(radius * 0.42).at(*drafts.gapSeen), radius * 0.11);
    const double left = face.x + radius + margin;
    writeLines({left, area.y, area.right() - left, area.height}, legendOf(dial),
               {surface.fonts().small, dial.unseen.empty() ? palette::kSoftInk : palette::kBroken});
}

/// The faces to tap, as bare as the dial: neither is chosen before one was said.
void sayFace(const Faces& faces, bool wasSaid, const Area& area, const Surface& surface) {
    Drafts& drafts = surface.drafts();
    writeLine({area.x, area.y, area.width, surface.px(22.0)}, "The face that you see",
              {surface.fonts().strong});
    const Area pictures{area.x, area.y + surface.px(26.0), area.width, area.height - surface.px(80.0)};
    const auto before = wasSaid ? faces.referenceVisible : std::nullopt;
    const auto chosen = drafts.referenceFaceVisible ? drafts.referenceFaceVisible : before;
    if (const auto tapped = facePictures(faces, chosen, pictures, surface))
        drafts.referenceFaceVisible = tapped;
    writeLines({area.x, pictures.bottom() + surface.px(4.0), area.width, surface.px(50.0)}, faces.test,
               {surface.fonts().small, palette::kSoftInk});
}

} // namespace

bool saidAll(const Job& job, const SeatId& seat, const Drafts& drafts) {
    const Seating* seating = job.state.build.in(seat);
    if (!seating || drafts.saying != seat)
        return false;
    const bool hasGap = indexIsSet(job.frame, seating->part, seat);
    const bool hasFace = facesOf(job, seat).has_value();
    return (hasGap || hasFace) && (!hasGap || drafts.gapSeen) && (!hasFace || drafts.referenceFaceVisible);
}

Wish said(const Job& job, const SeatId& seat, Drafts& drafts) {
    SaySeen wish{.seat = seat,
                 .gapSeen = drafts.gapSeen,
                 .referenceFaceVisible = drafts.referenceFaceVisible,
                 .by = whoWorks(job)};
    drafts.gapSeen.reset();
    drafts.referenceFaceVisible.reset();
    return wish;
}

std::string saidWords(const Job& job, const SeatId& seat, const Drafts& drafts) {
    const Seating* seating = job.state.build.in(seat);
    const std::optional<Faces> faces = facesOf(job, seat);
    const PartType* type = job.frame.typeOf(seating->part);
    std::string words;
    if (!faces && !indexIsSet(job.frame, seating->part, seat))
        return "It has no gap and no face to tell apart: look whether it is in its place.";
    if (indexIsSet(job.frame, seating->part, seat)) {
        const std::string index{wordOf(type->index)};
        words = drafts.gapSeen ? fmt::format("You see the {} {}. ", index,
                                             benchPhrase(*drafts.gapSeen, job.attitude().up))
                               : fmt::format("Tap where you see the {}. ", index);
    }
    if (faces && drafts.referenceFaceVisible)
        words += fmt::format("You see the {} face. ",
                             *drafts.referenceFaceVisible ? faces->reference : faces->other);
    else if (faces)
        words += "Tap the face that you see. ";
    return words + (saidAll(job, seat, drafts) ? "Then press Done." : "What is demanded comes after that.");
}

std::optional<Wish> sayingColumns(const Job& job, const SeatId& seat, const Area& area,
                                  const Surface& surface) {
    Drafts& drafts = surface.drafts();
    beginSaying(seat, drafts);
    if (asksHowItLies(job)) {
        writeLines(area, "First say how the piece lies and where its drain points, above.",
                   {surface.fonts().title, palette::kSoftInk});
        return std::nullopt;
    }
    const Seating* seating = job.state.build.in(seat);
    const bool hasGap = indexIsSet(job.frame, seating->part, seat);
    const std::optional<Faces> faces = facesOf(job, seat);
    if (!hasGap && !faces) {
        const Area place{area.x, area.middleY() - surface.target / 2.0, area.width * 0.6, surface.target};
        const bool told = seating->confirmed.has_value();
        if (button(surface, place, "It is in its place, fully home",
                   {.chosen = told, .leading = !told, .second = told ? "said" : ""}))
            return said(job, seat, drafts);
        return std::nullopt;
    }
    const Area dial{area.x, area.y, area.width * 0.6, area.height};
    const double left = dial.right() + surface.px(12.0);
    if (hasGap)
        sayGap(job, seat, dial, surface);
    if (faces)
        sayFace(*faces, seating->confirmed.has_value(), {left, area.y, area.right() - left, area.height},
                surface);
    return std::nullopt;
}

} // namespace gapwise
