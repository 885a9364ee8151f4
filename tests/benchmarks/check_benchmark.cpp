#include "models/build/read_build.h"
#include "models/check/check.h"

#include <benchmark/benchmark.h>

#include <string>

namespace {

using namespace gapwise;

const DataFolder kData{GAPWISE_TEST_SHARE};

std::filesystem::path buildFile(const std::string& name) {
    return kData.root / "builds" / (name + ".build.json");
}

/// Every rule of a frame judged and every finding explained, from a build in memory.
void checking(benchmark::State& state, const std::string& name) {
    const Result<BuildSheet> sheet = readBuildSheet(kData, buildFile(name));
    if (!sheet) {
        state.SkipWithError(describe(sheet.errors().front()).c_str());
        return;
    }
    for (auto _ : state)
        benchmark::DoNotOptimize(checkBuild(sheet->frame, sheet->build, {}));
}

/// Both files read, held against what they may say, and turned into a frame and a build.
void reading(benchmark::State& state, const std::string& name) {
    for (auto _ : state)
        benchmark::DoNotOptimize(readBuildSheet(kData, buildFile(name)));
}

BENCHMARK_CAPTURE(checking, alder_good, "alder-72-good");
BENCHMARK_CAPTURE(checking, alder_gap_over_slot, "alder-72-gap-over-slot");
BENCHMARK_CAPTURE(checking, birch_half_a_turn, "birch-150-half-a-turn");
BENCHMARK_CAPTURE(reading, alder_good, "alder-72-good");

} // namespace

BENCHMARK_MAIN();
