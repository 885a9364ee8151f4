#include "tests/viewer/window/child_process.h"

#include <csignal>
#include <cstdlib>
#include <fcntl.h>
#include <filesystem>
#include <fstream>
#include <stdexcept>
#include <sys/prctl.h>
#include <sys/wait.h>
#include <unistd.h>
#include <utility>

namespace gapwise::test {

namespace {

/// In the child, after the fork: becomes the program, or ends.
[[noreturn]] void become(const ChildStart& start, const std::vector<char*>& words) {
    prctl(PR_SET_PDEATHSIG, SIGKILL);
    for (const auto& [name, value] : start.environment)
        if (value.empty())
            unsetenv(name.c_str());
        else
            setenv(name.c_str(), value.c_str(), 1);
    const int out = ::open(start.outputTo.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC, 0600);
    if (out >= 0) {
        dup2(out, STDOUT_FILENO);
        dup2(out, STDERR_FILENO);
    }
    if (start.numberTo >= 0)
        fcntl(start.numberTo, F_SETFD, 0);
    if (start.folder.empty() || chdir(start.folder.c_str()) == 0)
        execvp(words.front(), words.data());
    _exit(127);
}

} // namespace

ChildProcess::ChildProcess(const ChildStart& start) {
    std::vector<std::string> words = start.words;
    std::vector<char*> pointers;
    for (std::string& word : words)
        pointers.push_back(word.data());
    pointers.push_back(nullptr);
    child_ = fork();
    if (child_ == 0)
        become(start, pointers);
    if (child_ < 0)
        throw std::runtime_error("no process for " + start.words.front());
}

ChildProcess::~ChildProcess() {
    if (child_ < 0 || ended_)
        return;
    signal(SIGKILL);
    ended();
}

ChildProcess::ChildProcess(ChildProcess&& other) noexcept
    : child_{std::exchange(other.child_, -1)}, ended_{other.ended_}, status_{other.status_} {}

bool ChildProcess::running() {
    int status = 0;
    if (!ended_ && waitpid(child_, &status, WNOHANG) == child_)
        note(status);
    return !ended_;
}

bool ChildProcess::asleep() const {
    std::error_code gone;
    for (const auto& thread :
         std::filesystem::directory_iterator("/proc/" + std::to_string(child_) + "/task", gone)) {
        std::ifstream stat(thread.path() / "stat");
        std::string line;
        std::getline(stat, line);
        // After the name in brackets, which may hold anything, stands the state.
        const std::size_t name = line.rfind(") ");
        if (name != std::string::npos && line[name + 2] != 'S')
            return false;
    }
    return true;
}

void ChildProcess::signal(int number) const {
    if (!ended_)
        ::kill(child_, number);
}

int ChildProcess::ended() {
    int status = 0;
    if (!ended_ && waitpid(child_, &status, 0) == child_)
        note(status);
    return status_;
}

void ChildProcess::note(int status) {
    ended_ = true;
    status_ = WIFEXITED(status) ? WEXITSTATUS(status) : -WTERMSIG(status);
}

} // namespace gapwise::test
