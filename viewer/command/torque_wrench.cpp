#include "models/torque/figures.h"
#include "models/torque/units.h"
#include "models/torque/wrench.h"
#include "viewer/command/number.h"
#include "viewer/command/torque_command.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <cmath>

namespace gapwise {

namespace {

/// The coarsest step that is allowed is not refused for a rounding.
constexpr double kRounding = 1e-9;

constexpr NumberRange kLength{0.0, 1e4, true,
                              "a length above 0 mm, from the middle of the grip to the drive"};
constexpr NumberRange kAdapter{0.0, 1e4, false, "0 mm or more, from the drive to the middle of the fastener"};
constexpr NumberRange kAngle{-360.0, 360.0, false,
                             "degrees from -360 to 360: 0 straight out, 180 folded back"};

struct Question {
    StatedTorque target{};
    Adapter adapter{};
    WrenchRange range{};
    std::optional<double> stepNm{};
};

/// The setting on the wrench whose maximum was said.
struct OnWrench {
    double mostNm = 0.0;
    WrenchUse use{};
    double coarsestNm = 0.0; ///< Step that an electronic wrench may show at this setting.
    bool tooCoarse = false;  ///< This one shows coarser steps.
};

struct Answer {
    double settingNm = 0.0;
    double uncorrectedNm = 0.0; ///< What the fastener gets when the wrench is set to the target.
    std::optional<OnWrench> on{};

    bool broken() const { return on && on->tooCoarse; }
};

/// The models speak of what it is; the command line of the option that said it.
Errors atOptions(Errors errors) {
    for (Error& error : errors) {
        if (error.where == "setting")
            error.found = "a setting of " + error.found;
        error.where = error.where == "setting" ? "--target" : "--" + error.where;
    }
    return errors;
}

std::optional<double> torqueOption(const std::optional<std::string>& text, const char* where,
                                   Errors& errors) {
    if (!text)
        return std::nullopt;
    return valueOr(parseTorqueOrNewtonMetres(*text, where), {1.0}, errors).newtonMetres();
}

Result<Question> questionOf(const WrenchRequest& request) {
    Errors errors;
    Question question;
    question.target = valueOr(parseTorqueOrNewtonMetres(request.target, "--target"), {1.0}, errors);
    question.adapter.wrenchMm = valueOr(parseNumber(request.length, "--length", kLength), 1.0, errors);
    question.adapter.adapterMm =
        valueOr(parseNumber(request.adapter.value_or("0"), "--adapter", kAdapter), 0.0, errors);
    question.adapter.angle =
        Degrees{valueOr(parseNumber(request.angle.value_or("0"), "--angle", kAngle), 0.0, errors)};
    question.range = {.leastNm = torqueOption(request.wrenchMin, "--wrench-min", errors),
                      .mostNm = torqueOption(request.wrenchMax, "--wrench-max", errors)};
    question.stepNm = torqueOption(request.wrenchStep, "--wrench-step", errors);
    if (errors.empty())
        errors = atOptions(rangeErrors(question.range));
    if (question.stepNm && !request.wrenchMax)
        errors.push_back({"--wrench-step", "no --wrench-max", "only with --wrench-max"});
    if (!errors.empty())
        return errors;
    return question;
}

Result<Answer> answerTo(const Question& question) {
    const double targetNm = question.target.newtonMetres();
    const Result<double> setting = wrenchSettingNm(targetNm, question.adapter);
    if (!setting)
        return atOptions(setting.errors());
    Answer answer{.settingNm = *setting, .uncorrectedNm = *appliedTorqueNm(targetNm, question.adapter)};
    if (!question.range.mostNm)
        return answer;
    OnWrench on{.mostNm = *question.range.mostNm};
    const Result<WrenchUse> use = useOfWrench(answer.settingNm, question.range);
    if (!use)
        return atOptions(use.errors());
    on.use = *use;
    on.coarsestNm = coarsestResolutionNm(answer.settingNm, on.mostNm);
    on.tooCoarse = question.stepNm.value_or(0.0) > on.coarsestNm * (1.0 + kRounding);
    answer.on = on;
    return answer;
}

std::string adapterWords(const Adapter& adapter) {
    if (adapter.adapterMm == 0.0)
        return "No adapter, or one in line with the drive: nothing to correct.\n";
    const double angle = std::abs(wrappedHalf(adapter.angle).value);
    const std::string lies = angle == 0.0     ? "straight out"
                             : angle == 90.0  ? "square to it: nothing to correct"
                             : angle == 180.0 ? "folded back"
                                              : fmt::format("{}° to it", angle);
    return fmt::format("Wrench {} mm from grip to drive, adapter {} mm from drive to fastener, {}.\n",
                       adapter.wrenchMm, adapter.adapterMm, lies);
}

std::string wrenchText(const Question& question, const OnWrench& on) {
    const auto words = [&](double torqueNm) { return torqueWords(torqueNm, question.target.unit); };
    std::string text =
        fmt::format("A wrench up to {} may be off by ±{:.0f} %, that is ±{} here (ISO 6789).\n",
                    words(on.mostNm), permissibleDeviation(on.mostNm) * 100.0, words(on.use.deviationNm));
    if (on.use.belowCheckPoints)
        text += fmt::format("Below {}, 20 % of its maximum, no calibration checks it: take a smaller one.\n",
                            words(checkPointsNm(on.mostNm).front()));
    if (on.tooCoarse)
        text += fmt::format("It shows steps of {}; at this setting {} is the coarsest (ISO 6789).\n",
                            words(question.stepNm.value_or(0.0)), words(on.coarsestNm));
    return text;
}

std::string asText(const Question& question, const Answer& answer) {
    const TorqueUnit unit = question.target.unit;
    const std::string target = fmt::format("{} {}", question.target.value, nameOf(unit));
    std::string text = fmt::format("Set the wrench to {}: the fastener gets {}.\n",
                                   torqueWords(answer.settingNm, unit), target);
    text += adapterWords(question.adapter);
    const double more = answer.uncorrectedNm / question.target.newtonMetres() - 1.0;
    if (std::abs(more) >= 0.0005)
        text += fmt::format("Set to {} it would give {} ({:+.1f} %).\n", target,
                            torqueWords(answer.uncorrectedNm, unit), more * 100.0);
    return answer.on ? text + wrenchText(question, *answer.on) : text;
}

nlohmann::ordered_json wrenchJson(const OnWrench& on) {
    return {{"most_Nm", on.mostNm},
            {"permissible_deviation", permissibleDeviation(on.mostNm)},
            {"deviation_Nm", on.use.deviationNm},
            {"below_check_points", on.use.belowCheckPoints},
            {"coarsest_step_Nm", on.coarsestNm},
            {"too_coarse", on.tooCoarse}};
}

std::string asJson(const Question& question, const Answer& answer) {
    const auto torque = [&](double torqueNm) {
        return nlohmann::ordered_json{{"torque_Nm", torqueNm},
                                      {"value", fromNewtonMetres(torqueNm, question.target.unit)},
                                      {"unit", nameOf(question.target.unit)}};
    };
    nlohmann::ordered_json document{
        {"target", torque(question.target.newtonMetres())}, {"setting", torque(answer.settingNm)},
        {"uncorrected", torque(answer.uncorrectedNm)},      {"length_mm", question.adapter.wrenchMm},
        {"adapter_mm", question.adapter.adapterMm},         {"angle_deg", question.adapter.angle.value}};
    if (answer.on)
        document["wrench"] = wrenchJson(*answer.on);
    return document.dump(2) + "\n";
}

} // namespace

Outcome torqueWrench(const WrenchRequest& request, Format format) {
    const Result<Question> question = questionOf(request);
    if (!question)
        return misused("gapwise torque wrench", question.errors());
    const Result<Answer> answer = answerTo(*question);
    if (!answer)
        return misused("gapwise torque wrench", answer.errors());
    return Outcome{.status = answer->broken() ? ExitStatus::Broken : ExitStatus::Holds,
                   .text = format == Format::Json ? asJson(*question, *answer) : asText(*question, *answer)};
}

} // namespace gapwise
