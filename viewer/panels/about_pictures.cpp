#include "viewer/panels/about_pictures.h"

#include "models/check/face_words.h"
#include "viewer/panels/about_words.h"
#include "viewer/panels/draw.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace gapwise {

namespace {

constexpr double kDegreesPerPixel = 0.4;

std::string degreesText(Degrees angle) {
    return fmt::format("± {:.4g}°", std::round(angle.value * 10.0) / 10.0);
}

bool hasAxis(const PartCard& card) {
    return card.index != IndexKind::None || card.face != FaceKind::None;
}

/// Around a part seen from a side: the inlet on top, the hours, and where the rules want its index.
void drawDial(const PartCard& card, Side side, const Area& area, const Surface& surface) {
    const double half = std::min(area.width, area.height) / 2.0;
    const Round round{area.middleX(), area.middleY(), half * 0.84};
    drawCircle(round, {palette::kSteelLight, 1.0});
    for (int hour = 0; hour < 12; ++hour)
        ink().AddLine(round.at(Degrees{30.0 * hour}),
                      round.at(Degrees{30.0 * hour}, hour % 3 == 0 ? 0.93 : 0.96), palette::kSoftInk, 1.0F);
    drawInwardPointer(round.withRadius(half * 0.97), Degrees{0.0}, half * 0.10, palette::kInk);
    writeLine({area.middleX() + half * 0.08, area.y, half * 0.8, surface.px(16.0)}, "inlet",
              {surface.fonts().small, palette::kSoftInk});
    const bool anywhere = card.allowed.arcs().size() == 1 && card.allowed.arcs().front().sweep.value >= 360.0;
    if (anywhere)
        return;
    for (const Arc& arc : card.allowed.arcs()) {
        const Degrees start = side == Side::Compressor ? arc.start : -(arc.start + arc.sweep);
        drawArc(round, Arc{wrapped(start), arc.sweep}, {palette::kAccent, half * 0.06});
    }
}

/// One of the two looks at an end, with its words below.
class EndPicture {
public:
    EndPicture(const Job& job, const PartCard& card, Side side, const Surface& surface)
        : card_{card}, side_{side}, surface_{surface}, right_{!keepsBack(job, card)} {}

    void draw(const Area& area, double words) const {
        const Area picture{area.x, area.y, area.width, area.height - words};
        surface_.frame.portraits.push_back(
            {.look = side_ == Side::Compressor ? Portrait::Look::FromCompressor : Portrait::Look::FromTurbine,
             .part = card_.id,
             .asTheRulesWant = right_,
             .onItsAxis = hasAxis(card_),
             .area = picture});
        frameArea(picture, palette::kHairline);
        const RightSight sight = rightSightOf(card_, side_);
        if (right_ && sight.clock)
            drawDial(card_, side_, picture, surface_);
        drawWords(right_ ? sight : RightSight{},
                  {area.x, picture.bottom() + surface_.px(3.0), area.width, words});
    }

private:
    void drawWords(const RightSight& sight, Area row) const {
        const Fonts& fonts = surface_.fonts();
        const auto line = [&](const std::string& words, ImFont* font, ImU32 colour) {
            const double height = lineHeightOf(font);
            writeLine({row.x, row.y, row.width, height}, words, {font, colour, Align::Middle});
            row.y += height;
        };
        line(placeWords(), fonts.small, palette::kSoftInk);
        if (const std::string face = faceWords(sight); !face.empty())
            line(face, fonts.title, palette::kInk);
        if (!sight.clock)
            return;
        line(fmt::format("{} at {} {}", wordOf(card_.index), hoursAndMinutes(*sight.clock),
                         degreesText(sight.tolerance)),
             fonts.strong, palette::kAccent);
    }

    std::string placeWords() const {
        if (right_)
            return fmt::format("from the {} side", nameOf(side_));
        return "the part by itself";
    }

    std::string faceWords(const RightSight& sight) const {
        if (right_)
            return sight.face.empty() ? std::string{} : fmt::format("{} face", sight.face);
        if (card_.face == FaceKind::None)
            return {};
        return fmt::format("{} face",
                           side_ == Side::Compressor ? faceWord(card_.face) : otherFaceWord(card_.face));
    }

    const PartCard& card_;
    Side side_;
    const Surface& surface_;
    bool right_;
};

/// Of the words under a look at an end; the same for both.
double wordsHeight(const Job& job, const PartCard& card, const Surface& surface) {
    const Fonts& fonts = surface.fonts();
    const bool right = !keepsBack(job, card);
    const RightSight sight = rightSightOf(card, Side::Compressor);
    double height = lineHeightOf(fonts.small) + surface.px(4.0);
    if (right ? !sight.face.empty() : card.face != FaceKind::None)
        height += lineHeightOf(fonts.title);
    if (right && sight.clock)
        height += lineHeightOf(fonts.strong);
    return height;
}

/// What must be seen as he looks now. At the bench its clock is the largest on the sheet: the printed ones
/// are not where he sets it. Returns the height used.
double drawFromHere(const FromHere& here, const Area& area, const Surface& surface) {
    if (here.words.empty())
        return 0.0;
    const Fonts& fonts = surface.fonts();
    const bool large = surface.bench && !here.clock.empty();
    const double clock =
        large ? static_cast<double>(sizeOf(fonts.bench, here.clock).x) + surface.px(12.0) : 0.0;
    const double words = heightOf(area.width - clock, here.words, fonts.body);
    const double height = std::max(large ? lineHeightOf(fonts.bench) : 0.0, words);
    if (large)
        writeLine({area.x, area.y, clock, height}, here.clock, {fonts.bench});
    writeLines({area.x + clock, area.y + (height - words) / 2.0, area.width - clock, words + 1.0}, here.words,
               {fonts.body});
    return height;
}

/// The part as the hand turns it.
std::optional<Wish> turnedPicture(const Job& job, const PartCard& card, const Area& area,
                                  const Surface& surface) {
    const About& about = *job.about;
    const Pressed pressed = pressable(surface, "picture", area);
    frameArea(area, palette::kHairline);
    surface.frame.portraits.push_back({.look = Portrait::Look::Turned,
                                       .part = card.id,
                                       .asTheRulesWant = !keepsBack(job, card),
                                       .azimuth = about.azimuth,
                                       .elevation = about.elevation,
                                       .area = area});
    writeLine({area.x + surface.px(6.0), area.bottom() - surface.px(20.0), area.width, surface.px(18.0)},
              "drag it to turn it", {surface.fonts().small, palette::kSoftInk});
    const ImVec2 moved = ImGui::GetIO().MouseDelta;
    if (!pressed.held || (moved.x == 0.0F && moved.y == 0.0F))
        return std::nullopt;
    About turned = about;
    turned.azimuth =
        wrappedHalf(Degrees{about.azimuth.value - static_cast<double>(moved.x) * kDegreesPerPixel});
    turned.elevation = Degrees{
        std::clamp(about.elevation.value + static_cast<double>(moved.y) * kDegreesPerPixel, -85.0, 85.0)};
    return ReadAbout{turned};
}

} // namespace

std::optional<Wish> aboutPictures(const Job& job, const PartCard& card, const Area& area,
                                  const Surface& surface) {
    const double gap = surface.px(8.0);
    const double words = wordsHeight(job, card, surface);
    const double side = std::min((area.width - gap) / 2.0, area.height * 0.4);
    const Area ends{area.x, area.y, area.width, side + words};
    EndPicture{job, card, Side::Compressor, surface}.draw(columnOf(ends, 2, 0, gap), words);
    EndPicture{job, card, Side::Turbine, surface}.draw(columnOf(ends, 2, 1, gap), words);
    double top = ends.bottom() + gap;
    if (const double used =
            drawFromHere(fromHereOf(job, card), {area.x, top, area.width, area.height}, surface);
        used > 0.0)
        top += used + gap;
    const Area rest{area.x, top, area.width, area.bottom() - top};
    return rest.height < surface.target ? std::nullopt : turnedPicture(job, card, rest, surface);
}

} // namespace gapwise
