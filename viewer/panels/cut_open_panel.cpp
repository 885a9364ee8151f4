#include "viewer/panels/cut_open.h"

#include "viewer/panels/draw.h"
#include "viewer/panels/parts.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace gapwise {

namespace {

constexpr std::array<std::pair<std::optional<Section::Kind>, const char*>, 3> kKinds{
    {{std::nullopt, "whole"}, {Section::Kind::Half, "half"}, {Section::Kind::Quarter, "quarter"}}};

std::optional<Section::Kind> kindOf(const Job& job) {
    return job.standpoint.section ? std::optional{job.standpoint.section->kind} : std::nullopt;
}

/// What finds room in the strip: where it is low, one button goes through the cuts in turn, and the ring
/// gives way to the two steps.
class Strip {
public:
    Strip(const Job& job, const Area& area, const Surface& surface)
        : job_{job}, left_{area}, bottom_{area.bottom()}, surface_{surface}, gap_{surface.px(4.0)} {}

    std::optional<Wish> drawn() {
        if (turnCasings(job_)) // room for them is kept at the foot of the strip
            left_.height -= surface_.target + gap_;
        const double title = surface_.px(34.0);
        const double three = 3.0 * (surface_.target + gap_);
        const double steps = 2.0 * (surface_.target + gap_);
        if (left_.height >= title + three + steps) {
            writeLines(take(title), "Cut\nopen", {surface_.fonts().small, palette::kSoftInk, Align::Middle});
            for (const auto& [kind, label] : kKinds)
                if (button(surface_, takeTarget(), label,
                           {.chosen = kindOf(job_) == kind, .font = surface_.fonts().small}))
                    wish_ = cutOpen(job_, kind);
        } else {
            cycle();
        }
        if (job_.standpoint.section)
            turning(steps);
        casings();
        return std::move(wish_);
    }

private:
    Area take(double height) {
        const Area taken{left_.x, left_.y, left_.width, height};
        left_ = {left_.x, left_.y + height + gap_, left_.width, left_.height - height - gap_};
        return taken;
    }
    Area takeTarget() { return take(surface_.target); }

    void cycle() {
        const auto shown = std::ranges::find(kKinds, kindOf(job_), &decltype(kKinds)::value_type::first);
        if (button(surface_, takeTarget(), "cut open",
                   {.chosen = job_.standpoint.section.has_value(),
                    .font = surface_.fonts().small,
                    .second = shown->second}))
            wish_ = cutOpen(job_, nextCut(job_));
    }

    void casings() {
        const std::optional<Wish> turned = turnCasings(job_);
        const Area place{left_.x, bottom_ - surface_.target, left_.width, surface_.target};
        const bool shown = job_.standpoint.casings;
        if (turned &&
            button(surface_, place, "casings",
                   {.chosen = shown, .font = surface_.fonts().small, .second = shown ? "shown" : "hidden"}))
            wish_ = turned;
    }

    void turning(double steps) {
        const double side = std::max(left_.width, surface_.target);
        if (left_.height >= side + gap_ + steps - gap_)
            ring(take(side));
        if (button(surface_, takeTarget(), "↺ 15°", {.font = surface_.fonts().small}))
            wish_ = turnCut(job_, -kCutStep);
        if (button(surface_, takeTarget(), "↻ 15°", {.font = surface_.fonts().small}))
            wish_ = turnCut(job_, kCutStep);
    }

    /// The piece seen end on as in the picture, what is away left out; it is turned by hand.
    void ring(const Area& area) {
        const Pressed pressed = pressable(surface_, "ring", area);
        const Round round{area.middleX(), area.middleY(), std::min(area.width, area.height) * 0.42};
        const Section& section = *job_.standpoint.section;
        const View view = cutViewOf(job_);
        const Degrees middle = seenIn(view, section.removed);
        const double half = section.kind == Section::Kind::Half ? 90.0 : 45.0;
        const Arc stays{wrapped(middle + Degrees{half}), Degrees{360.0 - 2.0 * half}};
        drawStaying(round, stays);
        drawArc(round, Arc{wrapped(middle - Degrees{half}), Degrees{2.0 * half}},
                {palette::kHairline, surface_.px(1.5)});
        drawInwardPointer(round, seenIn(view, Clock::seenFrom(Side::Compressor, Degrees{0.0})),
                          surface_.px(6.0), palette::kInk);
        const ImVec2 grip = round.at(middle, 0.62);
        ink().AddCircleFilled(grip, static_cast<float>(surface_.px(pressed.held ? 7.0 : 5.0)),
                              palette::kAccent);
        if (pressed.held)
            followPointer(round, middle);
    }

    void drawStaying(const Round& round, const Arc& stays) const {
        constexpr double kPiece = 6.0; // Degrees.
        const ImVec2 centre{static_cast<float>(round.x), static_cast<float>(round.y)};
        const int pieces = static_cast<int>(std::ceil(stays.sweep.value / kPiece));
        const auto at = [&](int piece) {
            return round.at(stays.start + Degrees{stays.sweep.value * piece / pieces});
        };
        for (int i = 0; i < pieces; ++i)
            ink().AddTriangleFilled(centre, at(i), at(i + 1), palette::kSteelLight);
        drawArc(round, stays, {palette::kInk, surface_.px(1.5)});
        ink().AddLine(centre, at(0), palette::kInk, static_cast<float>(surface_.px(1.5)));
        ink().AddLine(centre, at(pieces), palette::kInk, static_cast<float>(surface_.px(1.5)));
    }

    void followPointer(const Round& round, Degrees now) {
        constexpr double kSnap = 5.0; // Degrees: a pixel of the ring is more than two.
        const ImVec2 mouse = ImGui::GetIO().MousePos;
        const auto x = static_cast<double>(mouse.x);
        const auto y = static_cast<double>(mouse.y);
        constexpr double kNearMiddle = 0.2;
        if (std::hypot(x - round.x, y - round.y) < kNearMiddle * round.radius)
            return;
        const Degrees asked = wrapped(Degrees{std::round(clockOf(round, x, y).value / kSnap) * kSnap});
        if (apart(asked, now).value > kSnap / 2.0)
            wish_ = turnCutTo(job_, asked);
    }

    const Job& job_;
    Area left_;
    double bottom_;
    const Surface& surface_;
    double gap_;
    std::optional<Wish> wish_{};
};

} // namespace

std::optional<Wish> cutOpenPanel(const Job& job, const Area& area, const Surface& surface) {
    const Scope scope{surface, "cut"};
    return Strip{job, area, surface}.drawn();
}

void drawCutWords(const Job& job, const Area& picture, const Surface& surface) {
    const std::string words = cutWordsOf(job);
    if (words.empty())
        return;
    ImFont* font = surface.bench ? surface.fonts().body : surface.fonts().small;
    const double margin = surface.px(6.0);
    const ImVec2 size = sizeOf(font, words);
    const double width = std::min(static_cast<double>(size.x), picture.width - 2.0 * margin);
    const Area line{picture.right() - margin - width, picture.y + margin, width, static_cast<double>(size.y)};
    fillArea(line.inset(-surface.px(3.0)), palette::kPaper, surface.px(3.0));
    writeLine(line, words, {font, palette::kInk, Align::Right});
}

} // namespace gapwise
