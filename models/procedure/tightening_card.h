#pragma once

#include "models/procedure/flange.h"
#include "models/procedure/tightening.h"
#include "models/torque/torque.h"

#include <optional>
#include <string>
#include <vector>

namespace gapwise {

/// What is told of a fastener to whoever has the wrench in his hand: the same in the window and on the
/// command line.

/// `nut`, or `head` of a screw: what the wrench grips.
std::string_view grippedOf(const Fastener& fastener);

/// Which way the wrench turns.
struct TurnFacts {
    FacedThread thread{};
    Side stands = Side::Compressor;      ///< From where the person looks at the piece.
    bool tightens = true;                ///< False: at this stage it is slackened.
    Sense asFaced = Sense::Clockwise;    ///< To whoever faces the nut or the head.
    Sense asStanding = Sense::Clockwise; ///< As the person stands.
    std::optional<bool> fitsRotation{};  ///< Of a shaft nut: whether the drag of the wheel tightens it.
    std::string words{};    ///< `to tighten: counter-clockwise as you face the nut (left-hand thread)`.
    std::string behind{};   ///< What the one who looks at its back must know; else empty.
    std::string rotation{}; ///< Nut hand against rotor rotation; of screws empty.
};
TurnFacts turnFactsOf(const Frame& frame, const Fastener& fastener, const Facing& facing,
                      StageKind stage = StageKind::Draw);

/// How far a screw has come at the stage that its group is at.
enum class ScrewStanding { Done, Next, Open };

/// Of one group, by number; all done where it is at its last stage.
std::vector<ScrewStanding> screwStandings(const Fastener& fastener, int group, const JobState& state);

/// The stage that a group is at; the last one where all is done. Nothing for a fastener without a plan.
std::optional<std::size_t> stageNow(const Fastener& fastener, int group, const JobState& state);

/// Whether every screw of a group is at its last stage.
bool isGroupDone(const Fastener& fastener, int group, const JobState& state);

/// What is recorded when a screw is said to be at its torque. Refused, with the one that is next, where it is
/// not next: nothing is half applied.
Result<Tightened> tickOf(const Fastener& fastener, const JobState& state, int group, int screw);

/// `screw 4 of 8`, `nut`.
std::string screwWords(const Fastener& fastener, int group, int screw);

/// What is said of the state that a torque is stated for, line by line.
struct FactLine {
    std::string what{};
    std::string words{};
};
/// Thread and class, lubrication, locking, length, check afterwards, source.
std::vector<FactLine> valueLines(const TorquePlan& plan);

/// `none`, `spring washer, new`, ….
std::string_view wordsOf(Locking locking);

/// What a torque does to the screw.
struct PreloadFacts {
    double torqueNm = 0.0;
    double forceKn = 0.0; ///< By the long form.
    TorqueShares shares{};
    double vdiTorqueNm = 0.0; ///< For the same force, by VDI 2230.
    double vdiMostKn = 0.0;   ///< The preload that uses 90 % of the yield stress, by VDI 2230.
    double stressMpa = 0.0;   ///< In the stress area.
    double proofLoadKn = 0.0; ///< ISO 898-1.
    double proofUse = 0.0;    ///< 1 is all of it.
};
/// Nothing where the plan's thread or class cannot be read.
std::optional<PreloadFacts> preloadFactsOf(const TorquePlan& plan);
std::vector<FactLine> preloadLines(const TorquePlan& plan, TorqueUnit unit);

/// From snug to final, of a nut that is run down.
struct AngleFacts {
    AngleWindow window{};
    Degrees expected{0.0};
    double springForceKn = 0.0;
    double stemStressMpa = 0.0;
};
std::optional<AngleFacts> angleFactsOf(const TorquePlan& plan);
std::string expectedAngleWords(const AngleFacts& facts);

/// What the wrench must be set to.
struct WrenchFacts {
    double targetNm = 0.0;
    double settingNm = 0.0;
    double uncorrectedNm = 0.0;     ///< What the fastener gets from a wrench that is set to the target.
    std::optional<WrenchUse> use{}; ///< Of a wrench whose range is known.
};
/// Errors name `target`, `length`, `adapter`, `angle`, `wrench-min`, `wrench-max` or `setting`. A wrench
/// without an adapter (0 mm) needs no length.
Result<WrenchFacts> wrenchFactsOf(double targetNm, const Adapter& adapter, const WrenchRange& range);
/// Setting, what an uncorrected one would apply, deviation of the tool.
std::vector<std::string> wrenchLines(const WrenchFacts& facts, const WrenchRange& range, TorqueUnit unit);

/// The nut line of a fastener that has one, from what was read and the change of its stack.
Result<NutLineShift> nutLineOf(const Fastener& fastener, Degrees read, double stackNewMinusOldMm);
std::vector<FactLine> nutLineLines(const NutLineShift& shift, const NutLineLimits& limits);

} // namespace gapwise
