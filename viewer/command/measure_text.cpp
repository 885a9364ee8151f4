#include "models/build/names.h"
#include "models/frame/notice.h"
#include "models/measure/numbers.h"
#include "viewer/command/measure_shown.h"
#include "viewer/command/text_layout.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

/// State is never colour alone: its own sign and word.
std::string_view signAndWord(Standing standing) {
    switch (standing) {
    case Standing::Within: return "✓ WITHIN";
    case Standing::Between: return "~ BETWEEN";
    case Standing::Beyond: return "✗ BEYOND";
    case Standing::NotProven: return "? NOT PROVEN";
    case Standing::NotJudged: return "? NOT JUDGED";
    case Standing::NoLimit: return "· NO LIMIT";
    case Standing::NotRead: break;
    }
    return "… NOT READ";
}

std::string mm(double value) {
    return numberWords(value, 3, Unit::Millimetres);
}

std::string headingOf(const MeasureShown& shown) {
    return paragraph("", fmt::format("{}: {} ({})", shown.name, shown.frame->name, shown.frame->id.text)) +
           paragraph("", fmt::format("Instruments: {}.", shown.bench->name));
}

std::string countsOf(const MeasureReport& report) {
    const auto count = [&](Standing standing) {
        return std::ranges::count(report.quantities, standing, &QuantityResult::standing);
    };
    return paragraph("",
                     fmt::format("Quantities: {} within, {} between, {} beyond, {} not proven, {} not "
                                 "judged, {} without a limit, {} not read.",
                                 count(Standing::Within), count(Standing::Between), count(Standing::Beyond),
                                 count(Standing::NotProven), count(Standing::NotJudged),
                                 count(Standing::NoLimit), count(Standing::NotRead)));
}

std::string valuesOf(const std::vector<double>& values, int decimals) {
    return listed(values, ", ", [&](double value) { return plainNumber(value, decimals); });
}

/// `0.155 ± 0.006 mm (0.154, 0.156, 0.155; DIA-02, R. Ohlin, 2026-06-05)`
std::string readWords(const Evaluated& read, const Quantity& quantity) {
    const bool isRange = quantity.takes == Takes::Range && read.reading;
    std::string words =
        fmt::format("{} ± {}", plainNumber(isRange ? read.judged : read.value, std::max(read.decimals, 3)),
                    numberWords(read.expanded, 3, quantity.unit));
    std::vector<std::string> details;
    if (!read.reading)
        details.push_back("reckoned from other readings");
    if (read.values.size() > 1)
        details.push_back(valuesOf(read.values, read.decimals));
    if (read.reading)
        for (const std::string& each : {read.reading->instrument, read.reading->by, read.reading->on})
            if (!each.empty())
                details.push_back(each);
    return words + " (" + listed(details, "; ", [](const std::string& each) { return each; }) + ")";
}

std::string predictedWords(const Predicted& predicted, Unit unit) {
    if (predicted.chain)
        return fmt::format("{} ± {}, {}", plainNumber(predicted.value, 3),
                           numberWords(predicted.most - predicted.value, 3, unit), predicted.words);
    const int decimals = unit == Unit::Degrees ? 2 : 3;
    return predicted.most - predicted.least < kRounding
               ? numberWords(predicted.value, decimals, unit) + ", " + predicted.words
               : fmt::format("{} to {}, {}", plainNumber(predicted.least, decimals),
                             numberWords(predicted.most, decimals, unit), predicted.words);
}

std::string limitWords(const QuantityResult& result) {
    const Limits& limits = result.quantity->limits;
    const int decimals = result.after ? std::max(result.after->decimals, 2) : 3;
    std::string words = windowWords(result.limit, decimals, result.quantity->unit);
    if (!limits.fresh.empty() && !limits.service.empty())
        words += ", service " + windowWords(limits.service, decimals, result.quantity->unit);
    if (words.empty())
        return words;
    words += limits.rule == LimitRule::Guarded ? "; guarded by U" : "; as printed";
    const Method* method = result.measurement->method(limits.method);
    return method ? words + ", for: " + method->words : words;
}

std::string line(const char* lead, const std::string& words) {
    return words.empty() ? std::string{} : paragraph(lead, words);
}

std::string quantityText(const QuantityResult& result) {
    const Quantity& quantity = *result.quantity;
    std::string text = paragraph(fmt::format("  {}  {}  ", signAndWord(result.standing), quantity.id.text),
                                 quantity.name + (result.close ? ", close to a limit" : ""));
    if (result.after)
        text += line("      Read:      ", readWords(*result.after, quantity));
    if (result.predicted)
        text += line("      Predicted: ", predictedWords(*result.predicted, quantity.unit));
    text += line("      Limit:     ", limitWords(result));
    if (result.before)
        text += line("      Before:    ", readWords(*result.before, quantity));
    if (result.change)
        text += line("      Change:    ", result.change->words);
    text += line("      Verdict:   ", result.words);
    if (result.fourPoint)
        text += line("      Points:    ", result.fourPoint->words);
    if (result.hotGap)
        text += line("      Running:   ",
                     fmt::format("{} of its gap is left when it runs hot.", mm(*result.hotGap)));
    if (result.after)
        for (const Flag& flag : result.after->flags)
            if (flag.kind != FlagKind::OtherMethod) // the verdict says so
                text += line("      Look:      ", flag.words);
    for (const Evaluated& earlier : result.earlier)
        text += line("      Earlier:   ", readWords(earlier, quantity));
    return text;
}

bool isShown(const QuantityResult& result) {
    return result.after || result.before ||
           (result.measurement->required && result.standing == Standing::NotRead);
}

std::string quantitiesText(const MeasureReport& report) {
    std::string text;
    const Measurement* last = nullptr;
    for (const QuantityResult& result : report.quantities) {
        if (!isShown(result))
            continue;
        if (result.measurement != last)
            text += "\n" + paragraph(result.measurement->id.text + "  ",
                                     fmt::format("{}, {}: {}", result.measurement->name,
                                                 result.measurement->step.text, result.measurement->where));
        last = result.measurement;
        text += quantityText(result);
    }
    return text;
}

std::string playText(const MeasureReport& report) {
    std::string text;
    if (report.playBefore)
        text += line("  Before: ", report.playBefore->words);
    if (report.play)
        text += line("  Now:    ", report.play->words);
    return text.empty() ? text : "\nPlay at the bearings, by both end readings\n" + text;
}

std::string signOf(const PartVerdict& verdict) {
    if (verdict.open)
        return "✗ OPEN";
    const bool sure = verdict.worst == Standing::Within || verdict.worst == Standing::Between;
    if (verdict.worst == Standing::Beyond)
        return "✗";
    const bool unlimited = verdict.worst == Standing::NoLimit || verdict.worst == Standing::NotRead;
    return sure ? "✓" : unlimited ? "·" : "?";
}

std::string partsText(const MeasureReport& report) {
    std::vector<std::vector<std::string>> rows;
    for (const PartVerdict& verdict : report.parts)
        if (verdict.decision || verdict.worst != Standing::NotRead)
            rows.push_back({signOf(verdict), verdict.part.text, verdict.words});
    return rows.empty() ? std::string{} : "\nParts\n" + table(rows, "  ");
}

std::string causeText(const Cause& cause) {
    return paragraph(fmt::format("  {:>3.0f} %  ", 100.0 * cause.likelihood),
                     fmt::format("{} by {} ± {}: {}.", cause.name, plainNumber(cause.lengthMm, 3),
                                 mm(2.0 * cause.standardMm), cause.why)) +
           (cause.change->remedy.empty() ? "" : paragraph("         Do: ", cause.change->remedy + "."));
}

std::string diagnosisText(const Diagnosis& diagnosis) {
    if (diagnosis.evidence.empty())
        return {};
    std::string text = "\nDiagnosis\n" + paragraph("  ", diagnosis.summary);
    for (const Cause& cause : diagnosis.causes)
        text += causeText(cause);
    if (diagnosis.anythingMoved && diagnosis.unexplained >= 0.005)
        text += paragraph(fmt::format("  {:>3.0f} %  ", 100.0 * diagnosis.unexplained),
                          "none of these alone, or two at once.");
    for (std::size_t i = 1; i < diagnosis.settles.size(); ++i) // the summary has the first
        text += paragraph("  Or read: ", diagnosis.settles[i].words + ".");
    return text;
}

std::string gapWords(const GapThen& gap) {
    return fmt::format("{} {}{}", gap.chain.text, plainNumber(gap.thenMm, 3), gap.within ? "" : " (outside)");
}

std::string gradeText(const GradeOption& option, bool proposed) {
    return paragraph(fmt::format("    {} {}  ", proposed ? "→" : " ", plainNumber(option.gradeMm, 3)),
                     fmt::format("{}; nut line {:+.1f}°", listed(option.gaps, ", ", gapWords),
                                 option.nutShiftDeg == 0.0 ? 0.0 : option.nutShiftDeg));
}

std::string selectionText(const Selection& selection, bool all) {
    const Selector& selector = *selection.selector;
    const std::string proposal =
        selection.proposed
            ? fmt::format("take {}", mm(selection.grades[*selection.proposed].gradeMm))
            : "no grade will do" + (selector.otherwise.empty() ? std::string{} : ": " + selector.otherwise);
    std::string text =
        paragraph("  ", fmt::format("{} ({}) is {}; {} would bring {} to {}: {}.", selector.dimension.text,
                                    selector.part.text, mm(selection.nowMm), mm(selection.requiredMm),
                                    selector.sets.text, mm(selection.targetMm), proposal));
    for (std::size_t i = 0; i < selection.grades.size(); ++i)
        if (all || selection.proposed == i)
            text += gradeText(selection.grades[i], selection.proposed == i);
    return text;
}

std::string selectionsText(const MeasureShown& shown) {
    std::string text;
    for (const Selection& selection : shown.report.selections)
        if (!shown.onlySelector || selection.selector->dimension == *shown.onlySelector)
            text += selectionText(selection, shown.onlySelector.has_value());
    if (text.empty())
        return text;
    const bool first = shown.report.diagnosis.anythingMoved;
    return "\nGrades\n" +
           (first
                ? paragraph("  ", "First put right what the diagnosis names: a grade is chosen on gaps whose "
                                  "cause is known.")
                : "") +
           text;
}

std::string chainText(const Frame& frame, const Prediction& prediction) {
    const Chain* chain = frame.chain(prediction.chain);
    std::string text =
        "\n" + paragraph("", fmt::format("{}  {}", prediction.chain.text, chain ? chain->name : ""));
    text += paragraph("  ", fmt::format("{} by drawing sizes, {} with what was measured; ± {} root sum of "
                                        "squares, ± {} worst case",
                                        mm(prediction.drawingMm), mm(prediction.valueMm),
                                        mm(prediction.rssMm), mm(prediction.worstMm)));
    if (const Window window = windowOf(frame, prediction.chain); !window.empty())
        text += paragraph("  ", "Window: " + windowWords(window, 3, Unit::Millimetres));
    std::vector<std::vector<std::string>> rows;
    for (const LinkShare& link : prediction.links) {
        const Dimension* dimension = frame.dimension(link.of);
        rows.push_back(
            {(link.sign > 0 ? "+" : "−") + link.of.text,
             fmt::format("{} ± {}", plainNumber(link.valueMm, 3), plainNumber(link.halfWidthMm, 3)),
             link.measured ? "measured" : "drawing", fmt::format("{:.0f} %", 100.0 * link.share),
             dimension ? dimension->name : ""});
    }
    return text + table(rows, "    ");
}

std::string drawnText(const DrawnChain& drawn) {
    const ChainTrials& trials = drawn.trials;
    return paragraph("  ",
                     fmt::format("{}: {} trials (seed {}): mean {}, standard deviation {}, 95 % from {} to "
                                 "{}, {:.2f} % below the window, {:.2f} % above it",
                                 drawn.chain.text, trials.trials, drawn.seed,
                                 numberWords(trials.meanMm, 4, Unit::Millimetres),
                                 numberWords(trials.standardMm, 4, Unit::Millimetres),
                                 plainNumber(trials.least95Mm, 3), mm(trials.most95Mm), 100.0 * trials.below,
                                 100.0 * trials.above));
}

std::string trialsText(const MeasureShown& shown) {
    std::string text;
    for (const DrawnChain& drawn : shown.drawn)
        text += drawnText(drawn);
    return text.empty() ? text : "\nDrawn at random\n" + text;
}

std::string effectWords(double effect) {
    if (std::abs(effect) < kRounding)
        return "0";
    if (std::abs(std::abs(effect) - 1.0) < kRounding)
        return effect > 0.0 ? "+w" : "−w";
    return fmt::format("{:+.2f} w", effect);
}

std::string effectsText(const EffectTable& effects) {
    std::vector<std::vector<std::string>> rows;
    std::vector<std::string> head{"a change by w"};
    for (const Chain* chain : effects.chains)
        head.push_back(chain->id.text);
    rows.push_back(head);
    for (const EffectRow& effect : effects.rows) {
        std::vector<std::string> row{effect.change->id};
        for (const double each : effect.effects)
            row.push_back(effectWords(each));
        rows.push_back(row);
    }
    return "\nEffects\n" + table(rows, "  ");
}

std::string partialText(const MeasureShown& shown) {
    std::string text;
    if (shown.onlyChain)
        for (const Prediction& prediction : shown.report.chains)
            if (prediction.chain == *shown.onlyChain)
                text += chainText(*shown.frame, prediction);
    text += trialsText(shown);
    if (shown.effects)
        text += effectsText(*shown.effects);
    return shown.onlySelector ? text + selectionsText(shown) : text;
}

std::string wholeText(const MeasureShown& shown) {
    return countsOf(shown.report) + quantitiesText(shown.report) + playText(shown.report) +
           partsText(shown.report) + diagnosisText(shown.report.diagnosis) + selectionsText(shown) +
           trialsText(shown);
}

} // namespace

std::string measureAsText(const MeasureShown& shown) {
    std::string text = headingOf(shown) + (shown.whole() ? wholeText(shown) : partialText(shown)) + "\n";
    if (!noticeOf(*shown.frame).empty())
        text += fmt::format("{}\n", noticeOf(*shown.frame));
    return text + consistencyLine(*shown.frame, !isBroken(shown.report)) + "\n";
}

} // namespace gapwise
