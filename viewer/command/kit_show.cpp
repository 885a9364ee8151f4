#include "viewer/command/kit_show.h"

#include "models/frame/notice.h"
#include "models/procedure/kit.h"
#include "viewer/command/json_lists.h"
#include "viewer/command/text_layout.h"

#include <nlohmann/json.hpp>

#include <fmt/format.h>

#include <array>

namespace gapwise {

namespace {

using Json = nlohmann::ordered_json;

constexpr std::array kEnds{Side::Turbine, Side::Compressor};

template <class Ids>
std::string named(const Ids& ids) {
    std::string words;
    for (const auto& id : ids)
        words += (words.empty() ? "" : ", ") + id.text;
    return words;
}

std::string pickText(const Frame& frame) {
    std::vector<std::vector<std::string>> rows;
    for (const PickItem& item : pickListOf(frame))
        rows.push_back({fmt::format("{:>3} ×", item.quantity), item.name, named(item.steps)});
    return table(rows, "  ");
}

std::string gaugesText(const Frame& frame) {
    std::string text;
    for (const GaugeItem& gauge : gaugesOf(frame))
        text += paragraph("  ", fmt::format("{}: {}", gauge.instrument, named(gauge.measurements)));
    return text;
}

std::string toolsText(const Frame& frame) {
    std::string text;
    for (const std::string& tool : toolsOf(frame))
        text += paragraph("  ", tool);
    return text;
}

std::string blocksText(const Frame& frame) {
    std::string text;
    for (const Side up : kEnds)
        if (const auto least = leastBlockMm(frame, up))
            text += fmt::format("  {} end up: at least {:.1f} mm, with an open middle\n", nameOf(up), *least);
    return text;
}

std::string section(std::string_view heading, const std::string& lines) {
    return fmt::format("\n{}\n{}", heading, lines.empty() ? "  none in this frame\n" : lines);
}

} // namespace

std::string kitAsText(const Frame& frame) {
    std::string text = fmt::format("Kit of {} ({})\n", frame.name, frame.id.text);
    text += section("Pick list", pickText(frame));
    text += section("Gauges, each within its calibration", gaugesText(frame));
    text += section("Tools", toolsText(frame));
    text += section("Block under the piece", blocksText(frame));
    text += "\n";
    if (!noticeOf(frame).empty())
        text += fmt::format("{}\n", noticeOf(frame));
    return text + prevailLine(frame) + "\n";
}

std::string kitAsJson(const Frame& frame) {
    const Json pick = arrayOf(pickListOf(frame), [](const PickItem& item) {
        return Json{{"name", item.name}, {"quantity", item.quantity}, {"steps", idsOf(item.steps)}};
    });
    const Json gauges = arrayOf(gaugesOf(frame), [](const GaugeItem& gauge) {
        return Json{{"instrument", gauge.instrument}, {"measurements", idsOf(gauge.measurements)}};
    });
    const Json blocks = arrayOf(kEnds, [&](Side up) {
        const auto least = leastBlockMm(frame, up);
        return Json{{"up", nameOf(up)}, {"least_mm", least ? Json(*least) : Json(nullptr)}};
    });
    const std::string_view notice = noticeOf(frame);
    const Json document{{"frame", frame.id.text},
                        {"pick_list", pick},
                        {"gauges", gauges},
                        {"tools", toolsOf(frame)},
                        {"blocks", blocks},
                        {"notice", notice.empty() ? Json(nullptr) : Json(notice)},
                        {"rests_on", prevailLine(frame)}};
    return document.dump(2) + "\n";
}

} // namespace gapwise
