#include "models/job/log.h"
#include "models/procedure/step_graph.h"
#include "models/procedure/step_status.h"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <random>
#include <string>

namespace {

using namespace gapwise;

/// A frame of so many steps, each needing about three earlier ones (fewer at the beginning), invented.
Frame drawnFrame(std::size_t steps) {
    std::mt19937 random{20261125};
    const std::vector<std::string> reasons{"PHY", "ACC", "MEA", "CLN", "SAF", "REC"};
    Frame frame;
    frame.id = FrameId{"drawn"};
    for (std::size_t i = 0; i < steps; ++i) {
        Step step{.id = StepId{"S" + std::to_string(i)}, .title = "act"};
        for (std::size_t edge = 0; edge < 3 && i > 3; ++edge)
            step.after.push_back(
                {StepId{"S" + std::to_string(i - 1 - random() % std::min<std::size_t>(i, 60))},
                 reasons[random() % reasons.size()], "why"});
        frame.steps.push_back(std::move(step));
    }
    return frame;
}

/// The first half of the steps done in order.
Log halfDone(const Frame& frame) {
    Log log;
    for (std::size_t i = 0; i < frame.steps.size() / 2; ++i)
        log.events.emplace_back(StepDone{frame.steps[i].id, "I. Dorn"});
    return log;
}

void possibleAfterOneEvent(benchmark::State& state) {
    const Frame frame = drawnFrame(static_cast<std::size_t>(state.range(0)));
    const StepGraph graph{frame};
    const JobState job = stateOf(frame, halfDone(frame));
    for (auto _ : state)
        benchmark::DoNotOptimize(possibleNow(graph, job));
}

void everyStatus(benchmark::State& state) {
    const Frame frame = drawnFrame(static_cast<std::size_t>(state.range(0)));
    const StepGraph graph{frame};
    const JobState job = stateOf(frame, halfDone(frame));
    for (auto _ : state)
        benchmark::DoNotOptimize(stepStatuses(graph, job));
}

void graphMade(benchmark::State& state) {
    const Frame frame = drawnFrame(static_cast<std::size_t>(state.range(0)));
    for (auto _ : state)
        benchmark::DoNotOptimize(StepGraph{frame});
}

/// As the window does after each event: the whole log folded again, its graph made anew.
void wholeLogFolded(benchmark::State& state) {
    const Frame frame = drawnFrame(static_cast<std::size_t>(state.range(0)));
    const Log log = halfDone(frame);
    for (auto _ : state)
        benchmark::DoNotOptimize(stateOf(frame, log));
}

/// The first step undone: everything that depends on it is looked for.
void firstStepUndone(benchmark::State& state) {
    const Frame frame = drawnFrame(static_cast<std::size_t>(state.range(0)));
    Log log = halfDone(frame);
    log.events.emplace_back(StepUndone{frame.steps.front().id, "", ""});
    for (auto _ : state)
        benchmark::DoNotOptimize(stateOf(frame, log));
}

BENCHMARK(possibleAfterOneEvent)->Arg(50)->Arg(10'000)->Unit(benchmark::kMicrosecond);
BENCHMARK(everyStatus)->Arg(50)->Arg(10'000)->Unit(benchmark::kMicrosecond);
BENCHMARK(graphMade)->Arg(50)->Arg(10'000)->Unit(benchmark::kMicrosecond);
BENCHMARK(wholeLogFolded)->Arg(50)->Arg(10'000)->Unit(benchmark::kMicrosecond);
BENCHMARK(firstStepUndone)->Arg(50)->Arg(10'000)->Unit(benchmark::kMicrosecond);

} // namespace

BENCHMARK_MAIN();
