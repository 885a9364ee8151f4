#pragma once

#include "models/check/check.h"
#include "models/job/read_job.h"
#include "models/procedure/procedure.h"

#include <string>
#include <vector>

namespace gapwise {

/// All that is said of where a job stands. Points into `job`, which must outlive it.
struct JobStanding {
    const JobFile& job;
    StepGraph graph;
    JobState state;
    Checked checked;
    std::vector<StepStatus> statuses;
    std::vector<ProcedureFinding> findings;

    explicit JobStanding(const JobFile& file);

    /// Nothing of severity 3 or 4 is broken.
    bool holds() const;
};

std::string jobAsText(const JobStanding& standing, const std::string& name);
std::string jobAsJson(const JobStanding& standing);
std::string slipAsText(const JobStanding& standing, const HandOver& slip);
std::string slipAsJson(const JobStanding& standing, const HandOver& slip);

} // namespace gapwise
