#include "tests/viewer/command/run_program.h"

#include <array>
#include <cstdlib>
#include <fcntl.h>
#include <filesystem>
#include <fstream>
#include <spawn.h>
#include <sstream>
#include <sys/wait.h>
#include <unistd.h>
#include <utility>

namespace gapwise::test {

namespace {

std::string textOf(const std::string& file) {
    const std::ifstream stream(file, std::ios::binary);
    std::ostringstream text;
    text << stream.rdbuf();
    return text.str();
}

std::vector<std::string> environmentWith(const std::map<std::string, std::string>& changes) {
    std::vector<std::string> lines;
    for (char** line = environ; *line != nullptr; ++line) {
        const std::string text{*line};
        if (!changes.contains(text.substr(0, text.find('='))))
            lines.push_back(text);
    }
    for (const auto& [name, value] : changes)
        lines.push_back(std::string{name}.append("=").append(value));
    return lines;
}

std::vector<char*> pointersTo(std::vector<std::string>& words) {
    std::vector<char*> pointers;
    pointers.reserve(words.size() + 1);
    for (std::string& word : words)
        pointers.push_back(word.data());
    pointers.push_back(nullptr);
    return pointers;
}

/// The three streams of a program, by file.
struct Streams {
    std::string in, out, err;
};

int runWith(std::vector<std::string> words, std::vector<std::string> environment, const Streams& streams) {
    posix_spawn_file_actions_t actions{};
    posix_spawn_file_actions_init(&actions);
    posix_spawn_file_actions_addopen(&actions, 0, streams.in.c_str(), O_RDONLY, 0);
    posix_spawn_file_actions_addopen(&actions, 1, streams.out.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600);
    posix_spawn_file_actions_addopen(&actions, 2, streams.err.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600);
    pid_t child = 0;
    const int trouble = posix_spawn(&child, words.front().c_str(), &actions, nullptr,
                                    pointersTo(words).data(), pointersTo(environment).data());
    posix_spawn_file_actions_destroy(&actions);
    int status = 0;
    if (trouble != 0 || waitpid(child, &status, 0) != child || !WIFEXITED(status))
        return -1;
    return WEXITSTATUS(status);
}

std::string programFile(const std::string& name) {
    return (std::filesystem::path{GAPWISE_TEST_BINARY_DIR} / name).string();
}

} // namespace

Ended runProgram(const std::string& name, const Start& start) {
    const ScratchFolder scratch;
    const Streams streams{.in = scratch.write("in", start.input),
                          .out = start.outputTo.empty() ? scratch.path("out") : start.outputTo,
                          .err = scratch.path("err")};
    std::vector<std::string> words{programFile(name)};
    words.insert(words.end(), start.arguments.begin(), start.arguments.end());
    Ended ended;
    ended.status = runWith(std::move(words), environmentWith(start.environment), streams);
    if (start.outputTo.empty())
        ended.out = textOf(streams.out);
    ended.err = textOf(streams.err);
    return ended;
}

int runQuietly(const std::vector<std::string>& words) {
    std::vector<std::string> whole = words;
    whole.front() = programFile(whole.front());
    return runWith(std::move(whole), environmentWith({}), {"/dev/null", "/dev/null", "/dev/null"});
}

Ended gapwise(std::vector<std::string> arguments) {
    return runProgram("gapwise", Start{.arguments = std::move(arguments)});
}

ScratchFolder::ScratchFolder() {
    std::string pattern = (std::filesystem::temp_directory_path() / "gapwise-test-XXXXXX").string();
    if (mkdtemp(pattern.data()) == nullptr)
        std::abort();
    root_ = pattern;
}

ScratchFolder::~ScratchFolder() {
    std::error_code ignored;
    std::filesystem::remove_all(root_, ignored);
}

std::string ScratchFolder::write(const std::string& name, const std::string& text) const {
    std::ofstream(path(name), std::ios::binary) << text;
    return path(name);
}

} // namespace gapwise::test
