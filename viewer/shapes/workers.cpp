#include "viewer/shapes/workers.h"

#include <array>
#include <cassert>
#include <cerrno>
#include <csignal>
#include <cstring>
#include <fmt/format.h>
#include <poll.h>
#include <sys/resource.h>
#include <sys/types.h>
#include <sys/wait.h>
#include <unistd.h>

namespace gapwise {

namespace {

struct Running {
    std::size_t job = 0;
    pid_t process = -1;
    int pipe = -1;
    std::string said{};
};

void writeAll(int file, std::string_view text) {
    while (!text.empty()) {
        const ssize_t written = ::write(file, text.data(), text.size());
        if (written > 0)
            text.remove_prefix(static_cast<std::size_t>(written));
        else if (errno != EINTR)
            return;
    }
}

[[noreturn]] void work(const WorkPlan& plan, std::size_t job, int pipe) {
    const rlimit limit{plan.cpuSeconds, plan.cpuSeconds};
    ::setrlimit(RLIMIT_CPU, &limit);
    writeAll(pipe, plan.job(job));
    ::_exit(0); // what the parent holds open is the parent's to close
}

std::optional<Running> start(const WorkPlan& plan, std::size_t job) {
    std::array<int, 2> ends{};
    if (::pipe(ends.data()) != 0)
        return std::nullopt;
    const pid_t process = ::fork();
    if (process == 0) {
        ::close(ends[0]);
        work(plan, job, ends[1]);
    }
    ::close(ends[1]);
    if (process < 0) {
        ::close(ends[0]);
        return std::nullopt;
    }
    return Running{job, process, ends[0], {}};
}

/// True once the worker has closed its end.
bool readSome(Running& worker) {
    std::array<char, 4096> buffer{};
    const ssize_t got = ::read(worker.pipe, buffer.data(), buffer.size());
    if (got > 0)
        worker.said.append(buffer.data(), static_cast<std::size_t>(got));
    return got == 0 || (got < 0 && errno != EINTR);
}

WorkerResult endOf(Running& worker) {
    ::close(worker.pipe);
    int status = 0;
    while (::waitpid(worker.process, &status, 0) < 0 && errno == EINTR) {
    }
    WorkerResult result{std::move(worker.said), std::nullopt};
    if (WIFSIGNALED(status))
        result.died =
            fmt::format("was ended by the signal {} ({})", WTERMSIG(status), ::strsignal(WTERMSIG(status)));
    else if (WEXITSTATUS(status) != 0)
        result.died = fmt::format("ended with status {}", WEXITSTATUS(status));
    return result;
}

/// Waits for any worker to say something; takes those that have ended out of `running`.
void collect(std::vector<Running>& running, std::vector<std::optional<WorkerResult>>& results) {
    std::vector<pollfd> pipes;
    for (const Running& worker : running)
        pipes.push_back({worker.pipe, POLLIN, 0});
    ::poll(pipes.data(), pipes.size(), -1);
    std::vector<Running> left;
    for (std::size_t i = 0; i < running.size(); ++i) {
        if (pipes[i].revents != 0 && readSome(running[i]))
            results[running[i].job] = endOf(running[i]);
        else
            left.push_back(std::move(running[i]));
    }
    running = std::move(left);
}

} // namespace

void runInProcesses(const WorkPlan& plan) {
    assert(plan.atOnce > 0 && plan.job && plan.done);
    std::vector<std::optional<WorkerResult>> results(plan.count);
    std::vector<Running> running;
    std::size_t next = 0;
    std::size_t told = 0;
    while (told < plan.count) {
        while (next < plan.count && running.size() < plan.atOnce) {
            if (std::optional<Running> worker = start(plan, next))
                running.push_back(std::move(*worker));
            else
                results[next] =
                    WorkerResult{{}, fmt::format("could not be started: {}", std::strerror(errno))};
            ++next;
        }
        if (!running.empty())
            collect(running, results);
        for (; told < plan.count && results[told]; ++told)
            plan.done(told, *results[told]);
    }
}

} // namespace gapwise
