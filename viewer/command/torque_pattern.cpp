#include "models/torque/pattern.h"
#include "viewer/command/torque_command.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <charconv>

namespace gapwise {

namespace {

Result<std::vector<int>> orderOf(const std::string& text) {
    int screws = 0;
    const char* const end = text.data() + text.size();
    const auto [stop, code] = std::from_chars(text.data(), end, screws);
    if (code == std::errc{} && stop == end)
        return tighteningOrder(screws, "SCREWS");
    return Error{.where = "SCREWS",
                 .found = fmt::format("\"{}\"", text),
                 .allowed = fmt::format("a number of screws from 1 to {}", kMostScrews)};
}

std::string asText(const std::vector<int>& order) {
    const std::string_view pairs = isOppositePairOrder(order) ? ", by opposite pairs" : "";
    return fmt::format("{} screw{}, numbered clockwise as you face them{}:\n{}\n", order.size(),
                       order.size() == 1 ? "" : "s", pairs, orderWords(order));
}

std::string asJson(const std::vector<int>& order) {
    const nlohmann::ordered_json document{{"screws", order.size()},
                                          {"order", order},
                                          {"numbered", "clockwise as faced"},
                                          {"opposite_pairs", isOppositePairOrder(order)}};
    return document.dump(2) + "\n";
}

} // namespace

Outcome torquePattern(const PatternRequest& request, Format format) {
    const Result<std::vector<int>> order = orderOf(request.screws);
    if (!order)
        return misused("gapwise torque pattern", order.errors());
    return Outcome{.text = format == Format::Json ? asJson(*order) : asText(*order)};
}

} // namespace gapwise
