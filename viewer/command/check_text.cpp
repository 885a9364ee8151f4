#include "viewer/command/check_text.h"

#include "models/check/severity.h"
#include "models/frame/notice.h"
#include "viewer/command/text_layout.h"

#include <fmt/format.h>

namespace gapwise {

namespace {

/// State is never colour alone: its own sign and word.
std::string_view signAndWord(RuleState state) {
    switch (state) {
    case RuleState::Holds: return "✓ HOLDS";
    case RuleState::Broken: return "✗ BROKEN";
    case RuleState::Open: return "? OPEN";
    case RuleState::NotDue: break;
    }
    return "… NOT DUE";
}

std::string headingOf(const Frame& frame, const Build& build, std::string_view name) {
    const std::string lies =
        build.attitude ? fmt::format("On the bench, seen from its front: {}, {}.", describe(*build.attitude),
                                     benchPhrase(build.attitude->drain, build.attitude->up))
                       : std::string{"How it lies on the bench is not known: turns are told from the side of "
                                     "each rule, inlet on top."};
    return paragraph("", fmt::format("{}: {} ({})", name, frame.name, frame.id.text)) + paragraph("", lies);
}

std::string countsOf(const Checked& checked) {
    return fmt::format("Rules: {} hold, {} broken, {} open, {} not due yet.", checked.count(RuleState::Holds),
                       checked.count(RuleState::Broken), checked.count(RuleState::Open),
                       checked.count(RuleState::NotDue));
}

std::string findingText(const Finding& finding) {
    const Rule& rule = *finding.verdict.rule;
    const std::string lastLook =
        rule.lastLook.empty() ? std::string{} : fmt::format(", last look {}", rule.lastLook.text);
    std::string text = fmt::format("\n{}  {}  severity {} ({}){}\n", signAndWord(finding.verdict.state),
                                   rule.id.text, rule.severity, severityWord(rule.severity), lastLook);
    text += paragraph("    Rule:    ", fmt::format("{} ({})", rule.printed, rule.source));
    text += paragraph("    Finding: ", finding.words);
    text += paragraph("    Matters: ", rule.reason);
    if (!finding.question.empty())
        text += paragraph("    Decide:  ", finding.question);
    return text;
}

} // namespace

std::string checkAsText(const Frame& frame, const Build& build, const Checked& checked,
                        std::string_view name) {
    std::string text = headingOf(frame, build, name) + countsOf(checked) + "\n";
    for (const Finding& finding : checked.findings)
        text += findingText(finding);
    text += "\n";
    if (!noticeOf(frame).empty())
        text += fmt::format("{}\n", noticeOf(frame));
    return text + consistencyLine(frame, checked.holds) + "\n";
}

} // namespace gapwise
