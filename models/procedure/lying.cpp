#include "models/procedure/lying.h"

#include <algorithm>

namespace gapwise {

namespace {

bool suits(StepAttitude wanted, EndUp up) {
    switch (wanted) {
    case StepAttitude::CompressorUp: return up == EndUp::Compressor;
    case StepAttitude::TurbineUp: return up == EndUp::Turbine;
    case StepAttitude::Level: return up == EndUp::Level;
    case StepAttitude::Any:
    case StepAttitude::Bench: return true;
    }
    return true;
}

} // namespace

bool isDoneLying(const Step& step, EndUp up) {
    return step.attitudes.empty() ||
           std::ranges::any_of(step.attitudes, [&](StepAttitude wanted) { return suits(wanted, up); });
}

} // namespace gapwise
