#include "geometry/datum/words.h"
#include "models/frame/notice.h"
#include "viewer/command/job_standing.h"
#include "viewer/command/text_layout.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

std::string section(std::string_view title, const std::string& body) {
    return body.empty() ? std::string{} : fmt::format("\n{}\n{}", title, body);
}

/// Everything of one standing, one line a step: its id, its title and what is said of it.
template <class Say>
std::string stepsThat(const JobStanding& standing, StepStanding wanted, Say say) {
    std::vector<std::vector<std::string>> rows;
    for (std::size_t i = 0; i < standing.statuses.size(); ++i)
        if (standing.statuses[i].standing == wanted)
            rows.push_back({standing.job.frame.steps[i].id.text,
                            say(standing.job.frame.steps[i], standing.statuses[i])});
    return table(rows, "  ");
}

std::string idsThat(const JobStanding& standing, StepStanding wanted) {
    std::string ids;
    for (std::size_t i = 0; i < standing.statuses.size(); ++i)
        if (standing.statuses[i].standing == wanted)
            ids += (ids.empty() ? "" : " ") + standing.job.frame.steps[i].id.text;
    return ids;
}

std::string headingOf(const JobStanding& standing, const std::string& name) {
    const Frame& frame = standing.job.frame;
    const std::optional<Attitude>& attitude = standing.state.build.attitude;
    std::string text = paragraph("", fmt::format("{}: {} ({}){}", name, frame.name, frame.id.text,
                                                 standing.job.use.empty() ? "" : ", " + standing.job.use));
    text += paragraph(
        "", attitude ? fmt::format("On the bench: {}, {}{}.", describe(*attitude),
                                   benchPhrase(attitude->drain, attitude->up),
                                   standing.state.attitudeConfirmed ? "" : "; the drain is NOT confirmed")
                     : std::string{"How it lies on the bench is not known."});
    if (standing.state.person)
        text += fmt::format("Works now: {} ({})\n", standing.state.person->name,
                            nameOf(standing.state.person->role));
    return text;
}

std::string doneText(const JobStanding& standing) {
    const std::string done = idsThat(standing, StepStanding::Done);
    std::string text = paragraph(fmt::format("Done, {} of {}: ", standing.state.build.stepsDone.size(),
                                             standing.job.frame.steps.size()),
                                 done.empty() ? "nothing" : done);
    for (const StepSkipped& skipped : standing.state.skipped)
        text += paragraph("Left out: ",
                          fmt::format("{} ({}; {})", skipped.step.text, skipped.reason, skipped.by));
    const std::string notNeeded = idsThat(standing, StepStanding::NotNeeded);
    return notNeeded.empty() ? text : text + paragraph("Not needed: ", notNeeded);
}

std::string reopenedText(const JobStanding& standing) {
    std::vector<std::vector<std::string>> rows;
    for (const auto& [step, by] : standing.state.reopened)
        rows.push_back({step.text, step == by ? "taken up again" : fmt::format("because of {}", by.text)});
    return table(rows, "  ");
}

std::string looksText(const JobStanding& standing) {
    std::vector<std::vector<std::string>> rows;
    for (const LookLeft& look : looksLeft(standing.graph, standing.state, standing.checked))
        rows.push_back({look.part.text, "until " + look.hiddenBy.text,
                        look.stepsLeft == 0 ? "it is next" : fmt::format("{} steps left", look.stepsLeft),
                        look.finished ? "✓ finished" : "? not finished"});
    return table(rows, "  ");
}

std::string holdPointText(const JobStanding& standing) {
    const Frame& frame = standing.job.frame;
    const auto next = nextHoldPoint(standing.graph, standing.state);
    if (!next)
        return "\nNo hold point is left.\n";
    std::string text = fmt::format("\nNext hold point: {} {}\n", next->text, frame.step(*next)->title);
    for (const HeldBy& held : heldBy(frame, standing.state, standing.checked))
        text += paragraph("  held by ",
                          fmt::format("{} (severity {}): {}", held.finding, held.severity, held.words));
    return text;
}

std::string findingsText(const JobStanding& standing) {
    std::string text;
    for (const ProcedureFinding& finding : standing.findings)
        text += paragraph("  ✗ ", fmt::format("{} (severity {}, {}): {}", finding.id, finding.severity,
                                              finding.step.text, finding.words));
    return text;
}

std::string tighteningText(const JobStanding& standing) {
    std::vector<std::vector<std::string>> rows;
    for (const Fastener& fastener : standing.job.frame.fasteners) {
        const Tightening tightening = tighteningOf(fastener, standing.state);
        if (tightening.done == 0 || !tightening.next)
            continue;
        rows.push_back({fastener.id.text, fmt::format("{} of {}", tightening.done, tightening.all),
                        fmt::format("next {}, screw {}", stagesOf(fastener)[tightening.next->stage].name,
                                    tightening.next->screw)});
    }
    return table(rows, "  ");
}

std::string linesOf(const std::vector<std::string>& lines) {
    std::string text;
    for (const std::string& line : lines)
        text += paragraph("  - ", line);
    return text;
}

std::string endOf(const JobStanding& standing) {
    const Frame& frame = standing.job.frame;
    std::string text = "\n";
    if (!noticeOf(frame).empty())
        text += fmt::format("{}\n", noticeOf(frame));
    return text + consistencyLine(frame, standing.holds() && standing.checked.holds) + "\n";
}

} // namespace

std::string jobAsText(const JobStanding& standing, const std::string& name) {
    const auto title = [](const Step& step, const StepStatus&) { return step.title; };
    const auto why = [&](const Step& step, const StepStatus&) {
        return whyBlocked(standing.graph, standing.state, step.id);
    };
    return headingOf(standing, name) + doneText(standing) +
           section("Possible now:", stepsThat(standing, StepStanding::Possible, title)) +
           section("Open again:", reopenedText(standing)) +
           section("Tightening half done:", tighteningText(standing)) +
           section("Last looks, the nearest first:", looksText(standing)) + holdPointText(standing) +
           section("Findings of the procedure:", findingsText(standing)) +
           section("Not yet:", stepsThat(standing, StepStanding::Blocked, why)) + endOf(standing);
}

std::string slipAsText(const JobStanding& standing, const HandOver& slip) {
    std::string text = paragraph("", "Hand-over: " + slip.frame);
    text += paragraph("The piece: ", slip.attitude);
    if (!slip.person.empty())
        text += paragraph("Worked last: ", slip.person);
    text += section("Done last:", linesOf(slip.lastActs));
    text += section("Beware:", linesOf(slip.beware));
    text += section("On the bench, not in the housing yet:", linesOf(slip.apart));
    text += section("Can be done now:", linesOf(slip.possible));
    text += slip.nextHoldPoint.empty() ? "\nNo hold point is left.\n"
                                       : "\n" + paragraph("Next hold point: ", slip.nextHoldPoint);
    return text + endOf(standing);
}

} // namespace gapwise
