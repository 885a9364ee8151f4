#pragma once

#include "models/build/build.h"
#include "models/frame/ids.h"

#include <cstddef>
#include <optional>
#include <string>

namespace gapwise {

/// What is chosen and typed on the sheet of measurements; kept while the window is open.
struct MeasuringDrafts {
    enum class Show { Assembly, Parts, Asking, All };

    Show show = Show::Assembly; ///< Which readings.
    std::size_t readingsPage = 0;
    std::size_t partsPage = 0;
    std::size_t causesPage = 0;
    PartId part{};    ///< Whose decision is being made; empty: the first that asks for one.
    PartId decided{}; ///< Of which part the draft below is.
    std::optional<PartCondition> condition{};
    std::optional<PartFate> fate{};
    std::string cause{};
    std::string reason{};
    std::string concession{};
    int changeSteps = 2;      ///< How long each change of the table is, in hundredths of a millimetre.
    std::size_t selector = 0; ///< Which of the frame's selectors is shown.
    double chainScroll = 0.0; ///< First chain of the row.
    double gradeScroll = 0.0;
};

} // namespace gapwise
