#include "models/torque/units.h"
#include "viewer/command/number.h"
#include "viewer/command/torque_command.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace gapwise {

namespace {

/// As many as the units need to tell neighbouring settings of a wrench apart.
constexpr int kFigures = 5;

struct Conversion {
    StatedTorque from{};
    std::vector<TorqueUnit> to{};
};

Result<Conversion> conversionOf(const ConvertRequest& request) {
    Errors errors;
    Conversion conversion;
    conversion.from =
        valueOr(parseTorque(fmt::format("{}", fmt::join(request.torque, " ")), "TORQUE"), {}, errors);
    if (request.to)
        conversion.to = {valueOr(parseTorqueUnit(*request.to, "--to"), TorqueUnit::NewtonMetre, errors)};
    if (!errors.empty())
        return errors;
    if (request.to)
        return conversion;
    for (const TorqueUnit unit : kTorqueUnits)
        if (unit != conversion.from.unit)
            conversion.to.push_back(unit);
    return conversion;
}

std::string asText(const Conversion& conversion) {
    const std::string given = fmt::format("{} {}", conversion.from.value, nameOf(conversion.from.unit));
    std::string text;
    for (const TorqueUnit unit : conversion.to)
        text += fmt::format("{} = {}\n", given, torqueWords(conversion.from.newtonMetres(), unit, kFigures));
    return text;
}

std::string asJson(const Conversion& conversion) {
    const auto torque = [](double value, TorqueUnit unit) {
        return nlohmann::ordered_json{{"value", value}, {"unit", nameOf(unit)}};
    };
    nlohmann::ordered_json document{{"torque", torque(conversion.from.value, conversion.from.unit)},
                                    {"torque_Nm", conversion.from.newtonMetres()},
                                    {"converted", nlohmann::ordered_json::array()}};
    for (const TorqueUnit unit : conversion.to)
        document["converted"].push_back(torque(fromNewtonMetres(conversion.from.newtonMetres(), unit), unit));
    return document.dump(2) + "\n";
}

} // namespace

Outcome torqueConvert(const ConvertRequest& request, Format format) {
    const Result<Conversion> conversion = conversionOf(request);
    if (!conversion)
        return misused("gapwise torque convert", conversion.errors());
    return Outcome{.text = format == Format::Json ? asJson(*conversion) : asText(*conversion)};
}

} // namespace gapwise
