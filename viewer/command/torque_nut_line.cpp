#include "models/torque/nut_line.h"
#include "viewer/command/number.h"
#include "viewer/command/torque_command.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <cmath>

namespace gapwise {

namespace {

constexpr NumberRange kRead{-360.0, 360.0, false, "degrees from -360 to 360, tightening positive"};
constexpr NumberRange kStack{-100.0, 100.0, false, "new less old length in mm, from -100 to 100"};
constexpr NumberRange kPitch{0.0, 10.0, true, "the pitch of the thread, above 0 mm, up to 10 mm"};
constexpr NumberRange kLimit{0.0, 180.0, false, "degrees from 0 to 180"};

struct Question {
    Degrees read{0.0};
    double stackMm = 0.0;
    double pitchMm = 1.0;
    ShiftLimits limits{};
};

Result<Question> questionOf(const NutLineRequest& request) {
    Errors errors;
    const auto number = [&](const std::string& text, const char* where, const NumberRange& range) {
        return valueOr(parseNumber(text, where, range), range.most, errors);
    };
    const Question question{.read = Degrees{number(request.read, "--read", kRead)},
                            .stackMm = number(request.stack, "--stack", kStack),
                            .pitchMm = number(request.pitch, "--pitch", kPitch),
                            .limits = {.agrees = Degrees{number(request.agrees, "--agrees", kLimit)},
                                       .small = Degrees{number(request.small, "--small", kLimit)}}};
    if (errors.empty())
        for (const Error& error : limitErrors(question.limits))
            errors.push_back({"--" + error.where, error.found, error.allowed});
    if (!errors.empty())
        return errors;
    return question;
}

std::string stackWords(double stackMm) {
    if (stackMm == 0.0)
        return "the clamped stack is as long as before";
    return fmt::format("the clamped stack is {} mm {}", std::abs(stackMm),
                       stackMm > 0.0 ? "longer" : "shorter");
}

std::string asText(const Question& question, const NutLineShift& shift) {
    return fmt::format("Expected {:.1f}°: {}, pitch {} mm.\n"
                       "Read {:.1f}°; less the expected shift {:.1f}°: {} (agrees to {}°, small to {}°).\n"
                       "Then: {}.\n",
                       shift.expected.value, stackWords(question.stackMm), question.pitchMm, shift.read.value,
                       shift.corrected.value, nameOf(shift.outcome), question.limits.agrees.value,
                       question.limits.small.value, adviceFor(shift.outcome));
}

std::string asJson(const Question& question, const NutLineShift& shift) {
    const nlohmann::ordered_json document{{"stack_new_minus_old_mm", question.stackMm},
                                          {"pitch_mm", question.pitchMm},
                                          {"expected_deg", shift.expected.value},
                                          {"read_deg", shift.read.value},
                                          {"corrected_deg", shift.corrected.value},
                                          {"outcome", nameOf(shift.outcome)},
                                          {"then", adviceFor(shift.outcome)}};
    return document.dump(2) + "\n";
}

} // namespace

Outcome torqueNutLine(const NutLineRequest& request, Format format) {
    const Result<Question> question = questionOf(request);
    if (!question)
        return misused("gapwise torque nut-line", question.errors());
    const NutLineShift shift = judgeNutLine(
        question->read, expectedNutShift(question->stackMm, question->pitchMm), question->limits);
    return Outcome{.status = shift.outcome == NutLineOutcome::Agrees ? ExitStatus::Holds : ExitStatus::Broken,
                   .text = format == Format::Json ? asJson(*question, shift) : asText(*question, shift)};
}

} // namespace gapwise
