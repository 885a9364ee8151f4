#include "tests/viewer/command/run_program.h"

#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <string>
#include <vector>

namespace {

using gapwise::test::runQuietly;

/// Milliseconds of one whole process.
double timeOf(const std::vector<std::string>& words) {
    const auto start = std::chrono::steady_clock::now();
    if (runQuietly(words) < 0)
        return -1.0;
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count();
}

double medianOf(std::vector<double> values) {
    std::ranges::nth_element(values, values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2));
    return values[values.size() / 2];
}

std::string bundled(const std::string& file) {
    return GAPWISE_TEST_SHARE "/" + file;
}

} // namespace

/// `gapwise check` of a build against a process that only parses the same two files, in turns, so that both
/// meet the same machine.
int main() {
    constexpr int kRounds = 300;
    for (const std::string build : {"alder-72-good", "birch-150-half-a-turn"}) {
        const std::string sheet = bundled("builds/" + build + ".build.json");
        const std::string frame =
            bundled(build.starts_with("alder-72") ? "frames/alder-72.json" : "frames/birch-150.json");
        std::vector<double> check;
        std::vector<double> parse;
        for (int i = 0; i < kRounds; ++i) {
            parse.push_back(timeOf({"parse_only", sheet, frame}));
            check.push_back(timeOf({"gapwise", "check", sheet}));
        }
        const double checkMs = medianOf(check);
        const double parseMs = medianOf(parse);
        fmt::print("{}: check {:.2f} ms, parse only {:.2f} ms, ratio {:.2f} (median of {} rounds)\n", build,
                   checkMs, parseMs, checkMs / parseMs, kRounds);
    }
}
