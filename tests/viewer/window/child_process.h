#pragma once

#include <map>
#include <string>
#include <sys/types.h>
#include <vector>

namespace gapwise::test {

/// How a child is started. Its output goes to files, so that nothing ever waits for a reader.
struct ChildStart {
    std::vector<std::string> words{};                 ///< The program (by path or name) and its arguments.
    std::map<std::string, std::string> environment{}; ///< Set over the test's own; empty values are unset.
    std::string folder{};                             ///< Where it runs; empty: where the test does.
    std::string outputTo{};                           ///< Standard output and error.
    int numberTo = -1; ///< A descriptor that the child keeps under its own number; -1: none.
};

/// A program that runs beside the test, and ends with it, even when the test is killed.
class ChildProcess {
public:
    explicit ChildProcess(const ChildStart& start);
    ~ChildProcess();
    ChildProcess(ChildProcess&& other) noexcept;
    ChildProcess& operator=(ChildProcess&&) = delete;
    ChildProcess(const ChildProcess&) = delete;
    ChildProcess& operator=(const ChildProcess&) = delete;

    bool running();
    /// Whether each of its threads sleeps at this moment: none computes, none waits for a processor or a
    /// disk.
    bool asleep() const;
    void signal(int number) const;
    /// Waits for its end: the exit status, or minus the number of the signal that ended it.
    int ended();

private:
    void note(int status);

    pid_t child_ = -1;
    bool ended_ = false;
    int status_ = 0;
};

} // namespace gapwise::test
