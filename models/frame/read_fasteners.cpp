#include "models/frame/names.h"
#include "models/frame/readers.h"

#include <cmath>

namespace gapwise {

namespace {

constexpr Range kTorqueNm{0.0, 10'000.0, true};
constexpr Range kPercent{0.0, 100.0, true};
constexpr Range kTurnDeg{0.0, 360.0};
constexpr Range kFriction{0.0, 1.0, true};
constexpr Range kStiffness{0.0, 1'000'000.0, true};
constexpr int kMostScrews = 200;

ScrewGroup readScrewGroup(Fields& fields) {
    return ScrewGroup{.name = fields.maybeText("name").value_or(""),
                      .count = fields.whole("count", 1, kMostScrews)};
}

RunDown readRunDown(Fields& fields) {
    RunDown runDown{.seatNm = fields.number("seat_Nm", kTorqueNm),
                    .snugNm = fields.number("snug_Nm", kTorqueNm),
                    .dragMostNm = fields.number("drag_most_Nm", kTorqueNm)};
    const auto [least, most] = fields.pair("angle_deg", kTurnDeg);
    runDown.leastAngle = Degrees{least};
    runDown.mostAngle = Degrees{most};
    runDown.torqueFactor = fields.number("torque_factor", kFriction);
    runDown.stiffnessKnPerMm = fields.number("stiffness_kN_mm", kStiffness);
    runDown.stemDiameterMm = fields.number("stem_diameter_mm", kLengthMm);
    return runDown;
}

NutLineLimits readNutLine(Fields& fields) {
    return NutLineLimits{.agrees = Degrees{fields.number("agrees_deg", kTurnDeg)},
                         .small = Degrees{fields.number("small_deg", kTurnDeg)},
                         .stack = fields.ids<PartId>("stack")};
}

std::vector<int> readPattern(Fields& fields) {
    std::vector<int> pattern;
    for (const double number : fields.numbers("pattern", Range{1.0, kMostScrews})) {
        if (number != std::floor(number))
            fields.complain("pattern", std::to_string(number), "whole numbers of screws");
        pattern.push_back(static_cast<int>(number));
    }
    return pattern;
}

void readThreadOf(TorquePlan& plan, Fields& fields) {
    plan.thread = fields.text("thread");
    plan.propertyClass = fields.text("class");
    plan.lengthMm = fields.maybeNumber("length_mm", kLengthMm).value_or(0.0);
    plan.frictionThread = fields.number("friction_thread", kFriction);
    plan.frictionHead = fields.number("friction_head", kFriction);
    plan.headDiameterMm = fields.number("head_diameter_mm", kLengthMm);
}

/// A fastener without a torque has no plan; the keys of a plan are unknown ones then.
std::optional<TorquePlan> readTorquePlan(Fields& fields) {
    const auto torque = fields.maybeNumber("torque_Nm", kTorqueNm);
    if (!fields.has("torque_Nm"))
        return std::nullopt;
    TorquePlan plan{.torqueNm = torque.value_or(0.0)};
    readThreadOf(plan, fields);
    plan.lubrication = fields.text("lubrication");
    plan.lubricatedValue = fields.maybeFlag("lubricated_value").value_or(false);
    plan.locking = fields.word("locking", kLockingNames);
    if (fields.has("stages_percent"))
        plan.stagesPercent = fields.numbers("stages_percent", kPercent);
    plan.pattern = readPattern(fields);
    plan.checkPass = fields.maybeFlag("check_pass").value_or(false);
    plan.groups = readEach(fields.objects("groups"), readScrewGroup);
    plan.runDown = readMaybeSection(fields, "run_down", readRunDown);
    plan.nutLine = readMaybeSection(fields, "nut_line", readNutLine);
    plan.check = fields.maybeText("check").value_or("");
    plan.source = fields.text("source");
    return plan;
}

} // namespace

Fastener readFastener(Fields& fields) {
    return Fastener{.id = fields.id<FastenerId>("id"),
                    .name = fields.text("name"),
                    .size = fields.text("size"),
                    .tightensClockwise = fields.word("tightens", kTurnNames),
                    .handSeenFrom = fields.word("seen_from", kSideNames),
                    .step = fields.id<StepId>("step"),
                    .parts = fields.ids<PartId>("parts"),
                    .plan = readTorquePlan(fields),
                    .pointer = fields.pointer()};
}

} // namespace gapwise
