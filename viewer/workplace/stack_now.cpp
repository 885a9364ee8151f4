#include "viewer/workplace/stack_now.h"

#include "viewer/workplace/workplace.h"

namespace gapwise {

namespace {

/// Enough for a histogram on a screen: its bars do not move visibly from one seed to the next.
constexpr std::size_t kTrialsOnScreen = 100'000;

} // namespace

StackNow stackNow(const Job& job) {
    const auto drawn = dimensionValues(job.frame, {});
    return {.towardCompressor = stationsAlongShaft(job.frame, drawn, Side::Compressor),
            .towardTurbine = stationsAlongShaft(job.frame, drawn, Side::Turbine),
            .effects = effectTable(job.frame)};
}

const Chain* chainShown(const Job& job) {
    if (job.measures && job.measures->chain)
        if (const Chain* chain = job.frame.chain(*job.measures->chain))
            return chain;
    return job.frame.chains.empty() ? nullptr : &job.frame.chains.front();
}

void drawShownChain(Job& job) {
    const Chain* chain = chainShown(job);
    if (!chain || !job.measures || job.measures->kind != MeasuresPage::Kind::Stack ||
        job.stack.trials.contains(chain->id))
        return;
    const auto values = dimensionValues(job.frame, measuredValues(job.measured));
    job.stack.trials.emplace(
        chain->id, drawTrials(*chain, values, windowOf(job.frame, chain->id), {.trials = kTrialsOnScreen}));
}

} // namespace gapwise
