#pragma once

#include "models/frame/ids.h"
#include "viewer/workplace/measures_page.h"
#include "viewer/workplace/standpoint.h"

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

namespace gapwise {

/// What is before the person at this moment besides the cartridge: kept on disk while a job is open, so that
/// a program that was killed comes back exactly where it was.
struct PersonStanding {
    std::filesystem::path journal{};
    Standpoint standpoint{};
    std::optional<PartId> inHand{};
    std::optional<FastenerId> fastenerInHand{};
    std::optional<MeasurementId> measurementInHand{};
    std::optional<StepId> step{};  ///< Whose card is open.
    std::optional<PartId> about{}; ///< Of which the sheet lies open.
    std::optional<MeasuresPage> measures{};

    bool operator==(const PersonStanding&) const = default;
};

/// One line of JSON, and back; nothing for any other text. A number that is out of its range falls back to
/// the usual one.
std::string toText(const PersonStanding& standing);
std::optional<PersonStanding> standingIn(std::string_view text);

} // namespace gapwise
