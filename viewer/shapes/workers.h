#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace gapwise {

/// What a worker process left.
struct WorkerResult {
    std::string said{};                ///< What the job returned, as far as it came.
    std::optional<std::string> died{}; ///< How the process ended when it did not come to its end.
};

/// Runs jobs 0 … count - 1, each in a process of its own, `atOnce` at a time: the library beneath may crash
/// or hang on sizes nobody thought of, and then only that job is lost. `done` is called here, in order of the
/// jobs, as soon as each and all before it have ended. A job that uses more than `cpuSeconds` is ended.
struct WorkPlan {
    std::size_t count = 0;
    std::size_t atOnce = 1;
    unsigned cpuSeconds = 60;
    std::function<std::string(std::size_t)> job{};
    std::function<void(std::size_t, const WorkerResult&)> done{};
};
void runInProcesses(const WorkPlan& plan);

} // namespace gapwise
