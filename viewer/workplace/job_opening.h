#pragma once

#include "viewer/workplace/workplace.h"

#include <filesystem>
#include <string>

namespace gapwise {

/// How a job comes from its frame, its sheet or its journal. For the workplace alone.

/// All errors, one a line.
std::string describeAll(const Errors& errors);

/// What the journal of a job that is started begins with.
Result<JournalHead> headOf(const StartJob& start);

/// The job that such a journal begins, with nothing done in it.
Result<Job> jobFrom(const DataFolder& data, const JournalHead& head);

/// The instruments of this bench: `bench.json` in the state folder, else the bundled one.
Result<Bench> benchOf(const DataFolder& data, const std::filesystem::path& stateFolder);

/// The job that a journal holds.
Result<Job> continued(const DataFolder& data, const std::filesystem::path& journal);

/// The job that was cut off, as it stood before the person; nothing where none was.
Beginning cutOffJob(const Workplace& workplace);

/// Names the journal of the job that is open now; gone when it was left in good order.
std::filesystem::path openJobFile(const std::filesystem::path& stateFolder);

/// What is before the person now.
PersonStanding standingOf(const Job& job, const Journal& journal);

/// Lists the jobs that were left anew.
void listJobs(Workplace& workplace);

} // namespace gapwise
