#pragma once

#include "models/build/build.h"
#include "models/frame/ids.h"

#include <cstddef>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace gapwise {

/// A number that was typed and asks for a second touch.
struct MeasureDoubt {
    double value = 0.0;
    std::optional<double> suggestion{}; ///< What was perhaps meant.
    std::string words{};
};

/// What is typed and chosen on the card of a measurement; kept while the window is open.
struct MeasureDrafts {
    /// What lies beside the keypad: the reading, or what can be chosen.
    enum class Page { Read, Quantity, Gauge, Method };
    /// Of one quantity as received or now: a value for each place, in the order read.
    using Values = std::vector<std::optional<double>>;

    std::string frame{};    ///< Of which job …
    std::size_t events = 0; ///< … and how far it had come: what belongs to another one is thrown away.
    MeasurementId measurement{};
    StepId step{}; ///< At which it was opened.
    QuantityId quantity{};
    Occasion occasion = Occasion::After;
    Page page = Page::Read;
    std::size_t leaf = 0;                    ///< How far the choice was leafed on.
    std::map<std::string, Values> entered{}; ///< By quantity and occasion.
    std::size_t at = 0;                      ///< The place that is read now.
    std::string typed{};                     ///< Of its value.
    std::optional<MeasureDoubt> doubt{};
    std::string said{};                           ///< Why what was pressed last was not taken.
    std::map<std::string, std::string> methods{}; ///< Chosen, by quantity.
    std::map<std::string, std::string> gauges{};  ///< Chosen, by measurement and method.
    std::optional<double> partC{};                ///< Temperature of the part; not said: 20.
    std::optional<double> gaugeC{};
};

} // namespace gapwise
