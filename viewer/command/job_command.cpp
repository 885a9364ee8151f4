#include "viewer/command/job_command.h"

#include "viewer/command/job_standing.h"

#include <algorithm>

namespace gapwise {

namespace {

constexpr int kGrave = 3;

} // namespace

JobStanding::JobStanding(const JobFile& file)
    : job{file},
      graph{file.frame},
      state{stateOf(file.frame, file.log)},
      checked{checkBuild(file.frame, state.build, {})},
      statuses{stepStatuses(graph, state)},
      findings{procedureFindings(file.frame, state)} {}

bool JobStanding::holds() const {
    const bool broken = std::ranges::any_of(checked.verdicts, [](const Verdict& verdict) {
        return verdict.state == RuleState::Broken && verdict.rule->severity >= kGrave;
    });
    return !broken && std::ranges::none_of(findings, [](const ProcedureFinding& finding) {
        return finding.severity >= kGrave;
    });
}

Outcome jobCommand(const DataFolder& data, const JobRequest& request, Format format) {
    const Result<JobFile> job = readJob(data, request.file);
    if (!job)
        return failed(ExitStatus::BadInput, job.errors());
    const JobStanding standing{*job};
    Outcome outcome{.status = standing.holds() ? ExitStatus::Holds : ExitStatus::Broken};
    if (job->cutOff)
        outcome.notes.push_back({.where = request.file,
                                 .found = "a last line that is not finished",
                                 .allowed = "whole lines; it is left out"});
    const bool text = format == Format::Text;
    if (request.act == JobRequest::Act::Slip) {
        const HandOver slip = handOverOf(standing.graph, job->log, standing.state, standing.checked);
        outcome.text = text ? slipAsText(standing, slip) : slipAsJson(standing, slip);
    } else {
        const std::string name = request.file == "-" ? "standard input" : request.file;
        outcome.text = text ? jobAsText(standing, name) : jobAsJson(standing);
    }
    return outcome;
}

} // namespace gapwise
