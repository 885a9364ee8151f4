#pragma once

#include <map>
#include <string>
#include <vector>

namespace gapwise::test {

/// How a program is started.
struct Start {
    std::vector<std::string> arguments{};
    std::string input{};                              ///< What standard input holds.
    std::string outputTo{};                           ///< Where standard output goes; empty: it is kept.
    std::map<std::string, std::string> environment{}; ///< Set over the test's own.
};

/// What it left.
struct Ended {
    int status = -1; ///< Exit status; -1 when it did not start or died by a signal.
    std::string out{};
    std::string err{};
};

/// Runs a program of the build's bin folder, or one by its whole path, to its end.
Ended runProgram(const std::string& name, const Start& start);

/// Runs a program (the first word) with its streams on /dev/null; its exit status, -1 as in Ended.
int runQuietly(const std::vector<std::string>& words);

/// `gapwise` with these arguments.
Ended gapwise(std::vector<std::string> arguments);

/// A new empty folder for the files of one test, removed with this object.
class ScratchFolder {
public:
    ScratchFolder();
    ~ScratchFolder();
    ScratchFolder(const ScratchFolder&) = delete;
    ScratchFolder& operator=(const ScratchFolder&) = delete;

    std::string path(const std::string& name) const { return root_ + "/" + name; }
    /// Writes a file there; returns its path.
    std::string write(const std::string& name, const std::string& text) const;

private:
    std::string root_;
};

} // namespace gapwise::test
