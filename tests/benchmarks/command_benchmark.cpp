#include "tests/viewer/command/run_program.h"

#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <string>
#include <sys/resource.h>
#include <vector>

namespace {

using gapwise::test::runQuietly;

/// One whole process: from its start to its end, and what it took of the processor, in milliseconds.
struct Spent {
    double wall = 0.0;
    double processor = 0.0;
};

double processorOfChildren() {
    rusage usage{};
    getrusage(RUSAGE_CHILDREN, &usage);
    const auto milliseconds = [](const timeval& time) {
        return static_cast<double>(time.tv_sec) * 1e3 + static_cast<double>(time.tv_usec) / 1e3;
    };
    return milliseconds(usage.ru_utime) + milliseconds(usage.ru_stime);
}

Spent timeOf(const std::vector<std::string>& words) {
    const double before = processorOfChildren();
    const auto start = std::chrono::steady_clock::now();
    runQuietly(words);
    const std::chrono::duration<double, std::milli> wall = std::chrono::steady_clock::now() - start;
    return {wall.count(), processorOfChildren() - before};
}

double medianOf(const std::vector<Spent>& spent, double Spent::* what) {
    std::vector<double> values;
    for (const Spent& one : spent)
        values.push_back(one.*what);
    std::ranges::nth_element(values, values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2));
    return values[values.size() / 2];
}

void print(const char* what, double check, double parse) {
    fmt::print("  {:<10} check {:.2f} ms, parse only {:.2f} ms, ratio {:.2f}\n", what, check, parse,
               check / parse);
}

/// A build, and the files that its check reads.
struct Case {
    std::string build{};
    std::vector<std::string> frames{};
};

std::string bundled(const std::string& file) {
    return GAPWISE_TEST_SHARE "/" + file;
}

} // namespace

/// `gapwise check` of a build against a process that only parses the same files, in turns, so that both meet
/// the same machine.
int main() {
    constexpr int kRounds = 300;
    const std::vector<Case> cases{{"alder-72-good", {"alder-72"}},
                                  {"birch-150-half-a-turn", {"birch-150"}},
                                  {"alder-72-gap-over-slot", {"alder-72", "alder-72-pinned"}}};
    for (const Case& one : cases) {
        const std::string sheet = bundled("builds/" + one.build + ".build.json");
        std::vector<std::string> parseOnly{"parse_only", sheet};
        for (const std::string& frame : one.frames)
            parseOnly.push_back(bundled("frames/" + frame + ".json"));
        std::vector<Spent> check;
        std::vector<Spent> parse;
        for (int i = 0; i < kRounds; ++i) {
            parse.push_back(timeOf(parseOnly));
            check.push_back(timeOf({"gapwise", "check", sheet}));
        }
        fmt::print("{}, median of {} rounds\n", one.build, kRounds);
        print("wall", medianOf(check, &Spent::wall), medianOf(parse, &Spent::wall));
        print("processor", medianOf(check, &Spent::processor), medianOf(parse, &Spent::processor));
    }
}
