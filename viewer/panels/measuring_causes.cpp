#include "viewer/panels/card_frame.h"
#include "viewer/panels/draw.h"
#include "viewer/panels/measure_work.h"
#include "viewer/panels/measuring_pages.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

namespace gapwise {

namespace {

std::string listed(const std::vector<QuantityId>& quantities) {
    std::vector<std::string> names;
    for (const QuantityId& quantity : quantities)
        names.push_back(quantity.text);
    return fmt::format("{}", fmt::join(names, ", "));
}

void writeTitle(const Area& area, std::string_view words, const Surface& surface) {
    writeLine(area, words, {surface.fonts().strong, palette::kSoftInk});
}

/// Gaps that were measured, beside what the parts predict.
void drawEvidence(const Job& job, const Area& area, const Surface& surface) {
    const double line = lineHeightOf(surface.fonts().strong);
    writeTitle({area.x, area.y, area.width, line}, "What moved", surface);
    const std::vector<GapEvidence>& evidence = job.measured.diagnosis.evidence;
    const double row = std::min(surface.px(58.0),
                                (area.height - line) / std::max(1.0, static_cast<double>(evidence.size())));
    double y = area.y + line + surface.px(4.0);
    for (const GapEvidence& gap : evidence) {
        const Area place{area.x, y, area.width, row - 2.0};
        const double sign = surface.px(8.0);
        drawSign(gap.moved ? DialSign::Broken : DialSign::Holds, point(place.x + sign + 2.0, place.middleY()),
                 sign);
        const double left = place.x + 2.0 * sign + surface.px(8.0);
        const double half = place.height * 0.54;
        const ImU32 colour = gap.moved ? palette::kBroken : palette::kHolds;
        writeLine({left, place.y, place.right() - left, half},
                  fmt::format("{}  {} {}", gap.chain.text, signedWords(gap.measuredMm - gap.predictedMm, 3),
                              gap.moved ? "moved" : "as predicted"),
                  {surface.fonts().strong, colour});
        writeLine({left, place.y + half, place.right() - left, place.height - half},
                  fmt::format("measured {}, predicted {}, ± {}", numberWords(gap.measuredMm, 3),
                              numberWords(gap.predictedMm, 3), numberWords(gap.expandedMm, 3)),
                  {surface.fonts().small, palette::kSoftInk});
        fillArea({place.x, place.bottom(), place.width, 1.0}, palette::kHairline);
        y += row;
    }
    if (evidence.empty())
        writeLines({area.x, y, area.width, area.height - line}, "No gap was measured yet.",
                   {surface.fonts().body});
}

std::string explainsWords(const Cause& cause) {
    std::string words = cause.explains.empty() ? std::string{"explains nothing that moved"}
                                               : "explains " + listed(cause.explains);
    if (!cause.leaves.empty())
        words += ", leaves " + listed(cause.leaves);
    return words;
}

/// Number, name and length; a bar of its likelihood; why. Returns the height used.
double drawCause(const Cause& cause, std::size_t rank, const Area& area, const Surface& surface) {
    ImFont* font = wordFont(surface);
    const double line = lineHeightOf(surface.fonts().strong) + surface.px(2.0);
    const double percent = surface.px(64.0);
    double y = area.y;
    writeLine({area.x, y, area.width - percent, line},
              fmt::format("{}. {}, by {} ± {} mm", rank, cause.name.empty() ? cause.change->name : cause.name,
                          signedWords(cause.lengthMm, 3), numberWords(2.0 * cause.standardMm, 3)),
              {surface.fonts().strong});
    writeLine({area.right() - percent, y, percent, line}, numberWords(cause.likelihood * 100.0, 0) + " %",
              {surface.fonts().strong, palette::kAccent, Align::Right});
    y += line;
    const Area groove{area.x, y, area.width, surface.px(8.0)};
    fillArea(groove, palette::kShade);
    fillArea({groove.x, groove.y, groove.width * std::clamp(cause.likelihood, 0.0, 1.0), groove.height},
             rank == 1 ? palette::kAccent : palette::kSteel);
    y += groove.height + surface.px(3.0);
    y += writeLines({area.x, y, area.width, area.bottom() - y}, cause.why, {font});
    const double small = lineHeightOf(surface.fonts().small);
    writeLine({area.x, y, area.width, small}, explainsWords(cause),
              {surface.fonts().small, palette::kSoftInk});
    y += small;
    if (rank == 1 && !cause.change->remedy.empty())
        y += writeLines({area.x, y, area.width, area.bottom() - y}, "What to do: " + cause.change->remedy,
                        {font});
    return y - area.y;
}

void drawCauses(const Job& job, const Area& area, const Surface& surface) {
    const Diagnosis& diagnosis = job.measured.diagnosis;
    const double line = lineHeightOf(surface.fonts().strong);
    writeTitle({area.x, area.y, area.width, line}, "What would explain it, likeliest first", surface);
    double y = area.y + line + surface.px(4.0);
    const double least = 4.0 * line;
    std::size_t rank = 1;
    for (const Cause& cause : diagnosis.causes) {
        if (y + least > area.bottom()) {
            writeLine({area.x, area.bottom() - line, area.width, line},
                      fmt::format("and {} less likely", diagnosis.causes.size() - rank + 1),
                      {surface.fonts().small, palette::kSoftInk});
            return;
        }
        y += drawCause(cause, rank, {area.x, y, area.width, area.bottom() - y}, surface) + surface.px(10.0);
        ++rank;
    }
    if (diagnosis.causes.empty())
        writeLines({area.x, y, area.width, area.bottom() - y},
                   diagnosis.anythingMoved ? "No single change of this frame explains it."
                                           : "Nothing moved: there is nothing to explain.",
                   {surface.fonts().body});
    else if (diagnosis.unexplained >= 0.005 && y + line <= area.bottom())
        writeLine(
            {area.x, y, area.width, line},
            fmt::format("none of them, or two at once: {} %", numberWords(diagnosis.unexplained * 100.0, 0)),
            {surface.fonts().body, palette::kSoftInk});
}

/// What to read next so that one cause is left: a touch opens its card.
std::optional<Wish> drawSettling(const Job& job, const Area& area, const Surface& surface) {
    const double line = lineHeightOf(surface.fonts().strong);
    writeTitle({area.x, area.y, area.width, line}, "What would settle it", surface);
    const std::vector<Settling>& settles = job.measured.diagnosis.settles;
    std::optional<Wish> wish;
    double y = area.y + line + surface.px(4.0);
    for (const Settling& settling : settles) {
        const Frame::FoundQuantity found = job.frame.quantity(settling.quantity);
        const double words = heightOf(area.width - surface.px(20.0), settling.words, wordFont(surface));
        const double height = std::max(rowHeight(surface), words + line + surface.px(14.0));
        if (!found.measurement || y + height > area.bottom())
            continue;
        const Area place{area.x, y, area.width, height};
        const Pressed pressed = pressable(surface, settling.quantity.text.c_str(), place);
        fillArea(place, pressed.hovered ? palette::kShade : palette::kSheet, surface.px(5.0));
        frameArea(place, palette::kAccent, surface.px(5.0), 1.5);
        writeLine(
            {place.x + surface.px(10.0), place.y + surface.px(4.0), place.width - surface.px(20.0), line},
            fmt::format("Read {} →", settling.quantity.text), {surface.fonts().strong, palette::kAccent});
        writeLines({place.x + surface.px(10.0), place.y + surface.px(6.0) + line,
                    place.width - surface.px(20.0), words + 1.0},
                   settling.words, {wordFont(surface)});
        if (pressed.done)
            wish = openAt(*found.measurement, settling.quantity, surface.drafts().measure);
        y += height + surface.px(8.0);
    }
    if (settles.empty())
        writeLines({area.x, y, area.width, area.bottom() - y}, "No further reading is asked for.",
                   {surface.fonts().body, palette::kSoftInk});
    return wish;
}

} // namespace

std::optional<Wish> causesPage(const Job& job, const Area& area, const Surface& surface) {
    const Diagnosis& diagnosis = job.measured.diagnosis;
    const double summary = std::max(rowHeight(surface), heightOf(area.width - surface.px(40.0),
                                                                 diagnosis.summary, surface.fonts().strong) +
                                                            surface.px(14.0));
    const Area band{area.x, area.y, area.width, summary};
    const bool moved = diagnosis.anythingMoved;
    fillArea(band, moved ? palette::kBrokenLight : palette::kHoldsLight, surface.px(5.0));
    drawSign(moved ? DialSign::Broken : (diagnosis.evidence.empty() ? DialSign::Open : DialSign::Holds),
             point(band.x + surface.px(20.0), band.middleY()), surface.px(10.0));
    const std::string words = diagnosis.summary.empty()
                                  ? std::string{"No gap was measured yet: measure the axial clearance first."}
                                  : diagnosis.summary;
    const double height = heightOf(band.width - surface.px(50.0), words, surface.fonts().strong);
    writeLines({band.x + surface.px(40.0), band.middleY() - height / 2.0, band.width - surface.px(50.0),
                height + 1.0},
               words, {surface.fonts().strong});
    const Area body{area.x, band.bottom() + surface.px(12.0), area.width,
                    area.bottom() - band.bottom() - surface.px(12.0)};
    const double gap = surface.px(24.0);
    const double side = (body.width - 2.0 * gap) * 0.28;
    const double middle = body.width - 2.0 * (side + gap);
    drawEvidence(job, {body.x, body.y, side, body.height}, surface);
    drawCauses(job, {body.x + side + gap, body.y, middle, body.height}, surface);
    return drawSettling(job, {body.right() - side, body.y, side, body.height}, surface);
}

} // namespace gapwise
