#pragma once

#include "models/frame/data_folder.h"
#include "models/frame/frame.h"
#include "models/job/log.h"

#include <filesystem>
#include <string>

namespace gapwise {

/// A job as a file holds it, with its frame.
struct JobFile {
    Frame frame{};
    Log log{};
    std::string use{};   ///< `practise`, `bench` or `show`; empty for a build sheet.
    bool cutOff = false; ///< The last line of the journal was not finished, and is left out.
};

/// Reads a journal, or a build sheet as a job in which nothing was done since. `-` is a sheet on standard
/// input.
Result<JobFile> readJob(const DataFolder& data, const std::filesystem::path& file);

} // namespace gapwise
