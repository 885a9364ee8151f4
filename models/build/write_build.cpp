#include "models/build/write_build.h"

#include "geometry/base/write_file.h"
#include "models/build/names.h"

#include <nlohmann/json.hpp>

namespace gapwise {

namespace {

using nlohmann::ordered_json;

std::string_view upName(EndUp up) {
    switch (up) {
    case EndUp::Compressor: return "compressor";
    case EndUp::Turbine: return "turbine";
    case EndUp::Level: break;
    }
    return "level";
}

ordered_json attitudeJson(const Attitude& attitude) {
    return {{"up", upName(attitude.up)},
            {"drain_deg", attitude.drain.value},
            {"seen_from", nameOf(attitude.seenFrom)}};
}

ordered_json seatingJson(const Seating& seating) {
    ordered_json out{{"part", seating.part.text}, {"seat", seating.seat.text}};
    if (seating.index) {
        out["clock_deg"] = seating.index->from(Side::Compressor).value;
        out["seen_from"] = nameOf(Side::Compressor);
    }
    if (seating.referenceFaceLooks)
        out["reference_face_looks"] = nameOf(*seating.referenceFaceLooks);
    if (seating.home)
        out["home"] = *seating.home;
    if (!seating.conditions.empty())
        out["conditions"] = seating.conditions;
    if (seating.setIn)
        out["set_in"] = {{"side", nameOf(seating.setIn->side)}, {"top_deg", seating.setIn->top.value}};
    if (seating.confirmed)
        out["confirmed"] = {
            {"by", seating.confirmed->by},
            {"said", seating.confirmed->said == Confirmation::Said::Before ? "before" : "after"}};
    return out;
}

ordered_json torqueJson(const TorqueNote& torque) {
    ordered_json out{{"fastener", torque.fastener}};
    if (torque.torqueNm)
        out["torque_Nm"] = *torque.torqueNm;
    if (torque.clockwise)
        out["turned"] = *torque.clockwise ? "clockwise" : "counter_clockwise";
    if (torque.seenFrom)
        out["seen_from"] = nameOf(*torque.seenFrom);
    if (torque.angle)
        out["angle_deg"] = torque.angle->value;
    return out;
}

void addText(ordered_json& object, const char* key, const std::string& text) {
    if (!text.empty())
        object[key] = text;
}

ordered_json readingJson(const Reading& reading) {
    ordered_json out{{"measurement", reading.measurement}};
    addText(out, "quantity", reading.quantity);
    if (reading.occasion == Occasion::Before)
        out["occasion"] = nameIn(kOccasionNames, reading.occasion);
    out["values"] = reading.values;
    addText(out, "unit", reading.unit);
    addText(out, "method", reading.method);
    addText(out, "instrument", reading.instrument);
    addText(out, "by", reading.by);
    addText(out, "on", reading.on);
    if (reading.temperatureC)
        out["temperature_C"] = *reading.temperatureC;
    if (reading.gaugeTemperatureC)
        out["gauge_temperature_C"] = *reading.gaugeTemperatureC;
    return out;
}

ordered_json decisionJson(const PartDecision& decision) {
    ordered_json out{{"part", decision.part.text},
                     {"condition", nameIn(kConditionWords, decision.condition)},
                     {"decision", nameIn(kFateNames, decision.fate)}};
    addText(out, "by", decision.by);
    addText(out, "reason", decision.reason);
    addText(out, "cause", decision.cause);
    addText(out, "concession", decision.concession);
    return out;
}

ordered_json instrumentJson(const Instrument& instrument) {
    ordered_json out{{"id", instrument.id},
                     {"kind", instrument.kind},
                     {"name", instrument.name},
                     {"unit", instrument.unit},
                     {"resolution", instrument.resolution},
                     {"uncertainty", instrument.uncertainty},
                     {"least", instrument.least},
                     {"most", instrument.most}};
    addText(out, "calibrated_until", instrument.calibratedUntil);
    return out;
}

template <class T>
ordered_json listOf(const std::vector<T>& things, ordered_json (*write)(const T&)) {
    ordered_json list = ordered_json::array();
    for (const T& thing : things)
        list.push_back(write(thing));
    return list;
}

} // namespace

std::string toBuildSheet(const Build& build, const Frame& frame) {
    ordered_json out{{"format", "gapwise.build/1"},
                     {"frame", build.frame.empty() ? frame.id.text : build.frame}};
    if (build.attitude)
        out["attitude"] = attitudeJson(*build.attitude);
    out["rotor_deg"] = build.rotor.value;
    if (build.rotorLoweredIn)
        out["rotor_lowered_in"] = *build.rotorLoweredIn;
    out["seatings"] = listOf(build.seatings, seatingJson);
    ordered_json steps = ordered_json::array();
    for (const StepId& step : build.stepsDone)
        steps.push_back(step.text);
    out["steps_done"] = std::move(steps);
    if (!build.torques.empty())
        out["torques"] = listOf(build.torques, torqueJson);
    if (!build.readings.empty())
        out["readings"] = listOf(build.readings, readingJson);
    if (!build.decisions.empty())
        out["decisions"] = listOf(build.decisions, decisionJson);
    if (!build.work.empty())
        out["work"] = build.work;
    if (!build.instruments.empty())
        out["instruments"] = listOf(build.instruments, instrumentJson);
    return out.dump(2) + "\n";
}

Errors writeBuildSheet(const Build& build, const Frame& frame, const std::filesystem::path& file) {
    const auto failure = writeFile(file, toBuildSheet(build, frame));
    return failure ? Errors{failure->error} : Errors{};
}

} // namespace gapwise
