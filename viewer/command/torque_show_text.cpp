#include "models/frame/notice.h"
#include "viewer/command/text_layout.h"
#include "viewer/command/torque_show.h"

#include <fmt/format.h>

#include <algorithm>

namespace gapwise {

namespace {

std::string headText(const TorqueShown& shown) {
    const Fastener& fastener = shown.fastener;
    return fmt::format("{} {}, {}, at step {} of {}: {}\n", fastener.id.text, fastener.name, fastener.size,
                       fastener.step.text, shown.frame.id.text,
                       torqueWords(fastener.plan->torqueNm, shown.unit));
}

std::string factsText(std::string_view title, const std::vector<FactLine>& lines) {
    std::string text = lines.empty() ? std::string{} : fmt::format("\n{}\n", title);
    for (const FactLine& line : lines)
        text += paragraph(fmt::format("  {:<14}", line.what), line.words);
    return text;
}

/// Torque, setting and order of every stage.
std::string stagesText(const TorqueShown& shown) {
    std::vector<std::vector<std::string>> rows{{"stage", "torque", "set the wrench to", "order"}};
    for (std::size_t i = 0; i < shown.stages.size(); ++i) {
        const Stage& stage = shown.stages[i];
        const bool turns = stage.torqueNm > 0.0;
        rows.push_back({stage.name, turns ? torqueWords(stage.torqueNm, shown.unit) : "-",
                        turns ? torqueWords(shown.wrench[i].settingNm, shown.unit) : "-",
                        orderWords(stage.order)});
    }
    return "\nstages\n" + table(rows, "  ");
}

std::string groupText(const TorqueShown& shown, const FlangeGroup& group) {
    const std::string name = group.name.empty() ? "screws" : group.name;
    if (!group.drawn)
        return paragraph("  ", fmt::format("{}: {} screws in an even ring, numbered clockwise facing their "
                                           "heads; the frame draws none",
                                           name, group.screws.size()));
    std::vector<std::vector<std::string>> rows{{"number", "seat", "from the shaft", "clock, inlet on top"}};
    if (shown.lies)
        rows.front().emplace_back("as it lies");
    for (const FlangeScrew& screw : group.screws) {
        rows.push_back({fmt::format("{}", screw.number), screw.seat.text,
                        fmt::format("{:g} mm", screw.radiusMm),
                        screw.radiusMm > 0.0 ? hoursAndMinutes(screw.at) : "-"});
        if (shown.lies)
            rows.back().push_back(screw.radiusMm > 0.0 ? hoursAndMinutes(shown.facing.seen(screw)) : "-");
    }
    return table(rows, "  ");
}

std::string flangeText(const TorqueShown& shown) {
    const bool drawn = std::ranges::any_of(shown.flanges, &FlangeGroup::drawn);
    const std::string from = !drawn ? "facing its heads"
                             : shown.lies
                                 ? facingWords(shown.facing)
                                 : fmt::format("seen from the {} side", nameOf(shown.fastener.handSeenFrom));
    std::string text = fmt::format("\nflange, {}\n", from);
    for (const FlangeGroup& group : shown.flanges)
        text += groupText(shown, group);
    return text;
}

std::string handText(const TorqueShown& shown) {
    std::string text = "\nhand\n" + paragraph("  ", shown.turn.words);
    if (shown.lies && !shown.turn.behind.empty())
        text += paragraph("  ", shown.turn.behind);
    return shown.turn.rotation.empty() ? text : text + paragraph("  ", shown.turn.rotation);
}

std::string wrenchText(const TorqueShown& shown) {
    std::string text = "\nwrench, at the last stage\n";
    for (const std::string& line : wrenchLines(shown.wrench.back(), shown.range, shown.unit))
        text += paragraph("  ", line);
    return text;
}

} // namespace

std::string torqueShownAsText(const TorqueShown& shown) {
    const TorquePlan& plan = *shown.fastener.plan;
    std::string text = headText(shown) + stagesText(shown) + handText(shown) + wrenchText(shown) +
                       flangeText(shown) + factsText("value", valueLines(plan)) +
                       factsText("preload", preloadLines(plan, shown.unit));
    if (const std::optional<AngleFacts> angle = angleFactsOf(plan))
        text += "\nangle\n" + paragraph("  ", expectedAngleWords(*angle));
    text += "\n";
    if (!noticeOf(shown.frame).empty())
        text += fmt::format("{}\n", noticeOf(shown.frame));
    return text + prevailLine(shown.frame) + "\n";
}

} // namespace gapwise
