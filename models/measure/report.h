#pragma once

#include "models/build/build.h"
#include "models/chain/chain.h"
#include "models/frame/frame.h"
#include "models/measure/bench.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace gapwise {

/// What is odd about a reading; the reading stays, and the flag stands beside it.
enum class FlagKind {
    NoMethod,          ///< How it was read is not said.
    OtherMethod,       ///< By another method than the limit is for.
    Blind,             ///< By a method that cannot see what it should tell.
    NoInstrument,      ///< With what is not said.
    UnknownInstrument, ///< A number that neither sheet nor bench knows.
    WrongInstrument,   ///< Of a kind that the method cannot use.
    OutOfRange,        ///< Beyond the instrument's range.
    Overdue,           ///< Its calibration had run out.
    Coarse,            ///< Values finer than the instrument resolves.
    Spread,            ///< Repeats lie too far apart: read again.
    OutOfRound,        ///< Ovality or taper beyond its limit.
    Implausible,       ///< Ten times, a tenth, inches …
    PartNotPlaced,     ///< Read on the assembly before the part was in.
    Disagrees          ///< With the quantity that it must agree with.
};

/// `no_method`, `other_method`, …: as in JSON.
std::string_view nameOf(FlagKind kind);

struct Flag {
    FlagKind kind = FlagKind::NoMethod;
    std::string words{};
};

/// A reading evaluated: at 20 °C, in the quantity's unit.
struct Evaluated {
    const Reading* reading = nullptr; ///< Null where it was reckoned from other quantities.
    std::vector<double> values{};
    double value = 0.0;  ///< The mean: what chains count with.
    double judged = 0.0; ///< What is held against the limits (mean, least, most or range of the values).
    double spread = 0.0; ///< Largest less smallest of the repeats of one point.
    std::optional<double> ovality{};
    std::optional<double> taper{};
    double expanded = 0.0;    ///< U, k = 2: of the instrument, the repeats and the temperature together.
    double correctedBy = 0.0; ///< What the correction to 20 °C added.
    int decimals = 3;         ///< With so many it is shown: as its instrument resolves.
    std::string method{};     ///< Id; of a reckoned one that of the readings it comes from.
    std::vector<Flag> flags{};
};

/// How a quantity stands against its limits.
enum class Standing {
    NotRead,
    NoLimit,   ///< Read, and nothing to hold it against.
    NotJudged, ///< By another method than the limit is for, or by none.
    NotProven, ///< Guarded, and value ± U straddles a limit.
    Within,    ///< In the band of new parts, or in the window.
    Between,   ///< Between that and the service limit: a person decides.
    Beyond     ///< Beyond the service limit, or the only limit there is.
};

/// `not_read`, `no_limit`, `not_judged`, `not_proven`, `within`, `between`, `beyond`: as in JSON.
std::string_view nameOf(Standing standing);

/// What the parts, the lever or the plan predict: a value with its spread, or a band from least to most.
struct Predicted {
    double value = 0.0;
    double least = 0.0; ///< Of a chain: value − root sum of squares; of the lever: the edge model.
    double most = 0.0;
    std::optional<Prediction> chain{}; ///< Where a chain gave it.
    std::string words{};               ///< `from 2 measured and 2 drawing sizes`
};

/// Before and after, side by side.
struct BeforeAndAfter {
    double difference = 0.0;  ///< After less before.
    double significant = 0.0; ///< Differences up to this say nothing: k·√(u₁² + u₂²).
    bool compared = false;    ///< Method and place agree; otherwise both are only shown.
    enum class Outcome { NotCompared, Unchanged, AsExpected, Unexpected, NoChangeThoughExpected };
    Outcome outcome = Outcome::NotCompared;
    std::string words{}; ///< In words, with what was to be expected and why; what cleaning did.
};

/// `not_compared`, `unchanged`, `as_expected`, `unexpected`, `no_change_though_expected`: as in JSON.
std::string_view nameOf(BeforeAndAfter::Outcome outcome);

/// Residual unbalance of two planes beside what each may have left, g·mm.
struct UnbalanceResult {
    double compressor = 0.0;
    double turbine = 0.0;
    double permissible = 0.0;     ///< Of both together.
    double compressorShare = 0.0; ///< Of `permissible`; 0 where it cannot be split …
    double turbineShare = 0.0;
    bool split = false; ///< … because the centre of gravity is not between the planes.
};

/// Four feeler gaps evaluated, in the view that they were read in.
struct FourPointResult {
    Side seenFrom = Side::Compressor;
    double mean = 0.0;
    double right = 0.0; ///< Rotor off the middle of the casing, right positive in that view.
    double up = 0.0;
    double eccentricity = 0.0;
    double directionDeg = 0.0; ///< Clockwise from 12 in that view.
    double consistency = 0.0;
    double least = 0.0;          ///< Smallest of the four.
    bool parts = true;           ///< The plays of the parts are known: what follows is theirs.
    double sag = 0.0;            ///< Of the resting rotor at this plane, by the lever.
    double casing = 0.0;         ///< Eccentricity of the casing after the sag.
    double rock = 0.0;           ///< ± by hand at this plane.
    double leftWhenRocked = 0.0; ///< At the tightest of the four points; below 0 it touches.
    std::string words{};
};

/// Readings at both shaft ends taken apart into the play at each bearing, as bands.
struct PlayResult {
    Window compressorBand{}; ///< D_C by the edge and mid-plane models.
    Window turbineBand{};
    double compressorParts = 0.0; ///< What the parts give.
    double turbineParts = 0.0;
    bool agree = false;  ///< Both parts' plays lie in their bands.
    std::string words{}; ///< Which bearing is worn, to 0.01 only.
};

/// One quantity with everything that is known of it.
struct QuantityResult {
    const Measurement* measurement = nullptr;
    const Quantity* quantity = nullptr;
    std::optional<Evaluated> before{};
    std::optional<Evaluated> after{};
    std::vector<Evaluated> earlier{}; ///< Readings that a later one took the place of, oldest first.
    std::optional<Predicted> predicted{};
    bool disagrees = false; ///< After and predicted lie further apart than both allow.
    Standing standing = Standing::NotRead;
    bool close = false; ///< As printed, and value ± U straddles a limit.
    Window limit{};     ///< The window that it is shown against.
    std::optional<BeforeAndAfter> change{};
    std::optional<FourPointResult> fourPoint{};
    std::optional<FourPointResult> fourPointBefore{}; ///< Without sag: the old parts are not known.
    std::optional<UnbalanceResult> unbalance{};
    std::optional<double> hotGap{}; ///< Of a seal ring: what is left of its gap when it runs.
    std::string words{};            ///< The verdict in one sentence; why it could not be judged.
};

/// What the measurements make of a part.
struct PartVerdict {
    PartId part{};
    Standing worst = Standing::NotRead; ///< Of its quantities.
    std::vector<QuantityId> because{};
    std::optional<PartDecision> decision{};
    bool open = false; ///< A decision is needed and not made, or the one made is not allowed.
    std::string words{};
};

/// Everything that the measurements of a build say.
struct MeasureReport {
    std::vector<QuantityResult> quantities{}; ///< In the order of the frame.
    std::vector<Prediction> chains{};         ///< Every chain of the frame.
    std::optional<PlayResult> play{};
    std::optional<PlayResult> playBefore{}; ///< Of the readings before; the parts are those of now.
    Diagnosis diagnosis{};
    std::vector<Selection> selections{};
    std::vector<PartVerdict> parts{};

    const QuantityResult* of(const QuantityId& id) const;
};

struct MeasureSettings {
    std::string today{}; ///< `2026-05-04`: for calibrations of readings without a date; empty: not looked at.
};

/// Evaluates, predicts, judges, compares and diagnoses. The frame and build must outlive the report.
MeasureReport measureReport(const Frame& frame, const Build& build, const Bench& bench,
                            const MeasureSettings& settings);

/// What was measured since, as chains count it: for dimensionValues, drawTrials, selectionsOf.
std::vector<MeasuredValue> measuredValues(const MeasureReport& report);

/// Whether a quantity of the report is beyond its limit, or a needed decision is open.
bool isBroken(const MeasureReport& report);

/// Whether anything of the report holds a build back: what isBroken says, or a required quantity not read.
bool measuresHold(const Frame& frame, const MeasureReport& report);

} // namespace gapwise
