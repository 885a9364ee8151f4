#include "models/frame/frame_errors.h"

#include "models/frame/read_frame.h"

namespace gapwise {

Errors frameErrors(const Frame& frame, std::string_view file) {
    Complaints complaints{file};
    referenceErrors(frame, complaints);
    stepErrors(frame, complaints);
    ruleErrors(frame, complaints);
    exclusionErrors(frame, complaints);
    conditionErrors(frame, complaints);
    measurementErrors(frame, complaints);
    chainErrors(frame, complaints);
    torqueErrors(frame, complaints);
    sizeErrors(frame, complaints);
    return complaints.take();
}

} // namespace gapwise
