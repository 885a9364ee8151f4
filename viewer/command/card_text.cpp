#include "viewer/command/card_text.h"

#include "models/card/card_words.h"
#include "models/check/face_words.h"
#include "models/check/severity.h"
#include "models/frame/notice.h"
#include "viewer/command/text_layout.h"

#include <fmt/format.h>

namespace gapwise {

namespace {

std::string named(const std::vector<PartId>& parts) {
    std::string words;
    for (const PartId& part : parts)
        words += (words.empty() ? "" : ", ") + part.text;
    return words;
}

/// Who it is, what for, of what, and when it goes in and out of sight.
std::string identityText(const Frame& frame, const PartCard& card) {
    const std::string trade = card.tradeId.empty() ? "" : fmt::format(", {}", card.tradeId);
    std::string text = fmt::format("{}  {} ({}{})\n", card.id.text, card.name, frame.name, trade);
    text += paragraph("  What it does: ", card.function);
    text += paragraph("  Made of:      ", fmt::format("{}; {}", card.material, massWords(card.massKg)));
    if (!card.placedIn.empty()) {
        const std::string from =
            card.entersFrom ? fmt::format(", from the {} end", nameOf(*card.entersFrom)) : "";
        text += paragraph("  Goes in:      ", wordsOf(card.placedIn) + from);
    }
    text += paragraph("  Last look:    ", lastLookWords(card));
    if (card.face != FaceKind::None)
        text += paragraph("  Its faces:    ", fmt::format("{} and {}. {}", faceWord(card.face),
                                                          otherFaceWord(card.face), faceTest(card.face)));
    return text;
}

std::string sightsText(const PartCard& card) {
    std::string text;
    for (const Side side : {Side::Compressor, Side::Turbine})
        if (const std::string seen = rightSightWords(card, side); !seen.empty())
            text += paragraph(fmt::format("  From the {:<12} ", fmt::format("{}:", nameOf(side))), seen);
    return text.empty() ? text : "\nYou must see, inlet on top\n" + text;
}

std::string demandText(const CardDemand& demand) {
    const std::string trade = demand.tradeId.empty() ? "" : fmt::format(", {}", demand.tradeId);
    std::string text = fmt::format("\n  {}  severity {} ({}){}\n", demand.rule.text, demand.severity,
                                   severityWord(demand.severity), trade);
    text += paragraph("    Rule:      ", fmt::format("{} ({})", demand.printed, demand.source));
    text += paragraph("    That is:   ", wordsOf(demand));
    text += paragraph("    Otherwise: ", demand.reason);
    return text + paragraph("    Last look: ", wordsOf(demand.lastLook));
}

std::string demandsText(const PartCard& card) {
    if (card.demands.empty())
        return "\nHow it must sit\n  No rule of this frame speaks of it.\n";
    std::string text = "\nHow it must sit\n";
    for (const CardDemand& demand : card.demands)
        text += demandText(demand);
    return text;
}

std::string lubricantText(const PartCard& card) {
    if (!card.lubricant)
        return {};
    std::string text = "\nLubricant\n" + paragraph("  Use:   ", card.lubricant->use);
    return card.lubricant->never.empty() ? text : text + paragraph("  Never: ", card.lubricant->never);
}

std::string cautionsText(const PartCard& card) {
    std::string text;
    for (const CardCaution& caution : card.cautions) {
        text += paragraph(fmt::format("  {:<8} ", signalWordOf(caution.signal)), caution.words);
        if (!caution.steps.empty())
            text += paragraph("           at ", wordsOf(caution.steps));
    }
    return text.empty() ? text : "\nCautions\n" + text;
}

std::string measurementsText(const PartCard& card) {
    std::string text;
    for (const CardMeasurement& each : card.measurements)
        text += paragraph(fmt::format("  {:<4} ", each.id.text),
                          fmt::format("{}: {} ({})", each.name, each.where, wordsOf(each.step)));
    return text.empty() ? text : "\nMeasured\n" + text;
}

std::string fastenersText(const PartCard& card) {
    std::string text;
    for (const CardFastener& each : card.fasteners) {
        const bool own = each.role == CardFastener::Role::PartIsOneOf;
        text += paragraph(fmt::format("  {:<4} ", each.id.text),
                          fmt::format("{}{}, {}; {} ({})", own ? "one of the " : "", each.name, each.size,
                                      tighteningWords(each), wordsOf(each.step)));
        if (!each.sets.empty())
            text += paragraph("       pieces: ", piecesWords(each));
        if (own && !each.holds.empty())
            text += paragraph("       hold:   ", named(each.holds));
    }
    return text.empty() ? text : "\nTightened\n" + text;
}

std::string withoutRuleText(const PartCard& card) {
    std::string text;
    for (const WithoutRule& each : card.withoutRule)
        text += paragraph(fmt::format("  {} ", each.tradeId), each.why);
    return text.empty() ? text : "\nOrientations without a rule here\n" + text;
}

} // namespace

std::string cardAsText(const Frame& frame, const PartCard& card) {
    std::string text = identityText(frame, card) + cautionsText(card) + sightsText(card) + demandsText(card) +
                       lubricantText(card) + measurementsText(card) + fastenersText(card) +
                       withoutRuleText(card) + "\n";
    if (!noticeOf(frame).empty())
        text += fmt::format("{}\n", noticeOf(frame));
    return text + prevailLine(frame) + "\n";
}

} // namespace gapwise
