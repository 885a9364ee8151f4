#pragma once

#include "models/frame/data_folder.h"
#include "viewer/command/outcome.h"

#include <string>

namespace gapwise {

/// `gapwise job show FILE`, `gapwise job slip FILE`
struct JobRequest {
    enum class Act { Show, Slip };
    Act act = Act::Show;
    std::string file{}; ///< A build sheet or a journal; `-` is a sheet on standard input.
};

/// Where a job stands, or the slip for the next shift. Broken: a rule is broken or the procedure has a
/// finding, of severity 3 or 4.
Outcome jobCommand(const DataFolder& data, const JobRequest& request, Format format);

} // namespace gapwise
