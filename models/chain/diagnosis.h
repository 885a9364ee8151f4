#pragma once

#include "models/chain/prediction.h"

#include <optional>
#include <set>
#include <span>
#include <string>
#include <vector>

namespace gapwise {

/// A gap that differs from what the parts predict by no more than this has not moved: common practice, no
/// source.
inline constexpr double kMovedLeastMm = 0.02;

/// A gap that was measured, beside what the parts predict for it.
struct GapEvidence {
    QuantityId chain{};
    double predictedMm = 0.0;
    double measuredMm = 0.0;
    double expandedMm = 0.0; ///< U of the difference, from the reading and the chain's own scatter.
    bool moved = false;      ///< The difference is more than that, and more than `kMovedLeastMm`.
};

/// A measured size of a part, and whether its method can see what a change does to it. What is reckoned from
/// a blind reading is blind too.
struct PartEvidence {
    MeasuredValue value{};
    bool blind = false;   ///< Read by a method that cannot see it: a flat anvil over a worn track.
    std::string method{}; ///< In words.
};

/// What is known before causes are sought.
struct CaseFile {
    std::vector<MeasuredValue> gaps{}; ///< Of chains.
    std::vector<PartEvidence> parts{}; ///< Of dimensions.
    std::set<PartId> renewed{};        ///< New parts do not wear.
};

/// One possible cause: one change of one length.
struct Cause {
    const Change* change = nullptr;
    std::string name{};      ///< The change's, turned round where its length is below 0: `spacer shorter`.
    double lengthMm = 0.0;   ///< The length that fits best: above 0 for wear, of either sign for the rest.
    double standardMm = 0.0; ///< Its standard uncertainty.
    double misfit = 0.0;     ///< Chi-squared of what it leaves unexplained, part readings included.
    double likelihood = 0.0; ///< 0 to 1, all causes of a diagnosis and `unexplained` together 1.
    std::vector<QuantityId> explains{}; ///< Moved gaps that it explains …
    std::vector<QuantityId> leaves{};   ///< … and those that it does not.
    std::string why{};                  ///< One sentence for or against it.
};

/// A reading that would tell likely causes apart.
struct Settling {
    QuantityId quantity{};
    std::string method{}; ///< Words of the method to use.
    std::string words{};  ///< `collar A in its track with a ball anvil: 3.415 if it is worn, 3.500 if not`
};

struct Diagnosis {
    std::vector<GapEvidence> evidence{};
    bool anythingMoved = false;
    std::vector<Cause> causes{}; ///< Likeliest first; those with next to no likelihood are left out.
    double unexplained = 0.0;    ///< How likely it is that it is none of them, or two at once.
    bool explained = false;      ///< The first one fits within the uncertainties.
    std::vector<Settling> settles{};
    std::string summary{};
};

/// Ranks the changes of the frame by how well one of them alone explains the measured gaps (generalised least
/// squares over the chains' sensitivities), and says what would settle it. No gap measured: an empty one.
/// The frame must outlive the result.
Diagnosis diagnose(const Frame& frame, const CaseFile& known);

} // namespace gapwise
