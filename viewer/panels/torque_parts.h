#pragma once

#include "models/procedure/tightening_card.h"
#include "viewer/panels/card_frame.h"
#include "viewer/panels/draw.h"
#include "viewer/panels/parts.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace gapwise {

/// The pages of the card of a fastener.

/// What is tightened at this moment: one flange of a fastener, at one stage.
struct TorqueWork {
    const Job& job;
    const Fastener& fastener; ///< Has a plan.
    const TorquePlan& plan;
    int group = 0;
    FlangeGroup flange{};
    Facing facing{}; ///< A flange that the frame does not draw is faced.
    std::vector<Stage> stages{};
    std::size_t stage = 0; ///< The last one where all is done.
    bool done = false;     ///< Every screw of the flange is at its last stage.
    std::vector<ScrewStanding> screws{};

    const Stage& now() const { return stages[stage]; }
    /// The number of the screw that is next; 0 when all is done.
    int next() const;
    TurnFacts turn() const;
};

/// Nothing for a fastener without a plan.
std::optional<TorqueWork> torqueWorkOf(const Job& job, const FastenerId& fastener,
                                       const TorqueDrafts& drafts);

/// The act that ticks a screw; nothing where it is refused, and the reason then stands in the drafts.
std::optional<Wish> tick(const TorqueWork& work, int screw, const Surface& surface,
                         bool withoutAngle = false);

/// The wrench as it is typed: errors name `length`, `adapter`, `angle`, `wrench-min`, `wrench-max`.
struct TypedWrench {
    Adapter adapter{};
    WrenchRange range{};
    Errors errors{};
};
TypedWrench typedWrench(const TorqueDrafts& drafts);

/// What the wrench is set to at a torque; errors also name `setting`.
Result<WrenchFacts> wrenchFor(double torqueNm, const TorqueDrafts& drafts);

/// `"abc"; allowed: a number`: an error of a field in words.
std::string faultWords(const Error& error);

/// A field to type into.
struct TorqueFieldLook {
    const char* id = "";
    std::string_view label{};
    std::string_view fault{}; ///< Why it cannot be taken; stands in the place of the label.
};
/// Whether enter was pressed in it.
bool typeField(const Surface& surface, const Area& area, const TorqueFieldLook& look, std::string& text);

/// A number as typed; an empty field is no number and no fault.
struct TypedAmount {
    std::optional<double> value{};
    std::string fault{};
};
TypedAmount amountIn(const std::string& text, std::string_view unit);

/// Facts below each other, their names in a column of their own. Returns the height used.
double drawFacts(const Area& area, const std::vector<FactLine>& lines, const Surface& surface);

/// A turning arrow round a centre.
void drawTurn(const Round& round, Sense sense, const Stroke& stroke);

std::optional<Wish> tightenPage(const TorqueWork& work, const Area& area, const Surface& surface);
std::optional<Wish> wrenchPage(const TorqueWork& work, const Area& area, const Surface& surface);
std::optional<Wish> nutLinePage(const TorqueWork& work, const Area& area, const Surface& surface);
std::optional<Wish> touchedPage(const TorqueWork& work, const Area& area, const Surface& surface);

} // namespace gapwise
