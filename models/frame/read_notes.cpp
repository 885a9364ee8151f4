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

Measurement readMeasurement(Fields& fields) {
    return Measurement{.id = fields.id<MeasurementId>("id"),
                       .name = fields.text("name"),
                       .where = fields.text("where"),
                       .step = fields.id<StepId>("step"),
                       .parts = fields.ids<PartId>("parts"),
                       .pointer = fields.pointer()};
}

Fastener readFastener(Fields& fields) {
    return Fastener{.id = fields.id<FastenerId>("id"),
                    .name = fields.text("name"),
                    .size = fields.text("size"),
                    .tightensClockwise = fields.word("tightens", kTurnNames),
                    .handSeenFrom = fields.word("seen_from", kSideNames),
                    .step = fields.id<StepId>("step"),
                    .parts = fields.ids<PartId>("parts"),
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
