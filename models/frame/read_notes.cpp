#include "models/frame/names.h"
#include "models/frame/readers.h"

namespace gapwise {

Caution readCaution(Fields& fields) {
    return Caution{.id = fields.text("id"),
                   .signal = fields.word("signal", kSignalNames),
                   .words = fields.text("words"),
                   .steps = fields.maybeIds<StepId>("steps"),
                   .parts = fields.maybeIds<PartId>("parts"),
                   .source = fields.text("source"),
                   .pointer = fields.pointer()};
}

Rest readRest(Fields& fields) {
    return Rest{.up = fields.word("up", kSideNames),
                .faceMm = fields.number("face_z_mm", kStationMm),
                .clearanceMm = fields.number("clearance_mm", kLengthMm),
                .pointer = fields.pointer()};
}

SharedMaterial readSharedMaterial(Fields& fields) {
    return SharedMaterial{.first = fields.id<PartId>("first"),
                          .second = fields.id<PartId>("second"),
                          .why = fields.text("why"),
                          .pointer = fields.pointer()};
}

WithoutRule readWithoutRule(Fields& fields) {
    return WithoutRule{
        .tradeId = fields.text("trade_id"), .why = fields.text("why"), .pointer = fields.pointer()};
}

} // namespace gapwise
