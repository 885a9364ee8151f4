#include "viewer/command/frame_chains.h"

#include "models/chain/prediction.h"
#include "viewer/command/text_layout.h"

#include <fmt/format.h>

namespace gapwise {

namespace {

using Rows = std::vector<std::vector<std::string>>;

/// `0.05 to 0.09`, `at least 11.98`, `at most 19.03`; empty where both ends are open.
std::string windowText(const Window& window) {
    if (window.least && window.most)
        return fmt::format("{} to {}", *window.least, *window.most);
    if (window.least)
        return fmt::format("at least {}", *window.least);
    return window.most ? fmt::format("at most {}", *window.most) : std::string{};
}

std::string limitsText(const Quantity& quantity) {
    const std::string unit{symbolOf(quantity.unit)};
    const std::string fresh = windowText(quantity.limits.fresh);
    const std::string service = windowText(quantity.limits.service);
    std::string text = fresh.empty() ? "" : fmt::format("; {} {}", fresh, unit);
    if (!service.empty())
        text += fmt::format("; in service {} {}", service, unit);
    return text.empty() ? ", in " + unit : text;
}

std::string linksText(const std::vector<Term>& links) {
    return listed(links, " ", [](const Term& link) { return (link.sign > 0 ? "+" : "−") + link.of.text; });
}

} // namespace

std::string measurementsText(const Frame& frame) {
    Rows rows;
    for (const Measurement& measurement : frame.measurements) {
        rows.push_back(
            {measurement.id.text,
             fmt::format("{}, step {}{}", measurement.name, measurement.step.text,
                         measurement.before ? ", and before at " + measurement.before->text : "")});
        for (const Quantity& quantity : measurement.quantities)
            rows.push_back({"  " + quantity.id.text, quantity.name + limitsText(quantity)});
    }
    return table(rows, "  ");
}

std::string chainsText(const Frame& frame) {
    const std::map<QuantityId, DimensionValue> values = dimensionValues(frame, {});
    Rows rows;
    for (const Chain& chain : frame.chains) {
        const Prediction drawn = predict(chain, values);
        const std::string window = windowText(windowOf(frame, chain.id));
        rows.push_back({chain.id.text,
                        fmt::format("{}: {:.3f} mm ± {:.3f} ({:.3f} at worst){}; {}", chain.name,
                                    drawn.valueMm, drawn.rssMm, drawn.worstMm,
                                    window.empty() ? "" : "; " + window + " mm", linksText(chain.links))});
    }
    return table(rows, "  ");
}

} // namespace gapwise
