#pragma once

#include "models/build/build.h"
#include "models/frame/frame.h"

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace gapwise {

enum class RuleState { Holds, Broken, Open, NotDue };

/// The single mistakes that may explain a broken rule, in their fixed order.
enum class Mistake {
    MirroredView,     ///< `mirrored_view`: -θ.
    UpsideDown,       ///< `upside_down`: θ + 180.
    EndOverEnd,       ///< `end_over_end`: 180 - θ.
    OtherEndRule,     ///< `other_end_rule`: θ lies in the window of the twin.
    OtherVariantRule, ///< `other_variant_rule`: in the window of the rule with the same id in the sister
                      ///< frame.
    QuarterTurn,      ///< `quarter_turn`: θ ± 90.
    Reversed,         ///< `reversed`: the part sits the other way round.
    SwappedEnds,      ///< `swapped_ends`: the part meant for the other end is in this seat.
    WrongHand         ///< `wrong_hand`: turned as a nut of the other hand is tightened, that is slackened.
};
std::string_view nameOf(Mistake mistake);

/// Which way to turn the part so that the rule holds, as seen in the current view.
struct TurnHint {
    Degrees size{0.0}; ///< In (0, 180].
    bool clockwise = true;
    Side side = Side::Compressor;
};

/// A direction compared with a direction, as seen from the rule's side with the inlet on top.
struct DirectionCompared {
    Degrees expected{0.0};
    Degrees tolerance{0.0};
    std::optional<Degrees> actual{};
    std::optional<Degrees> deviation{}; ///< actual - expected, clockwise positive, in (-180, 180].
    Side seenFrom = Side::Compressor;
};

/// Two (or more) directions compared with the angle between them.
struct ApartCompared {
    Degrees expected{0.0};
    Degrees tolerance{0.0};
    std::optional<Degrees> actual{};    ///< In [0, 180]; of match marks the largest from the first.
    std::optional<Degrees> deviation{}; ///< actual - expected.
};

/// A gap compared with a feature that it must clear.
struct ClearCompared {
    FeatureId feature{};
    Degrees needed{0.0};                ///< Feature half-angle + gap half-angle + margin.
    std::optional<Degrees> actual{};    ///< Between the two middles, in [0, 180].
    std::optional<Degrees> deviation{}; ///< actual - needed.
};

/// The side a reference face looks to, compared.
struct FaceCompared {
    std::string face{}; ///< `rounded`, `marked`, …
    Side expected = Side::Compressor;
    std::optional<Side> actual{};
    /// What an observer in the current view must see: true = the reference face.
    std::optional<bool> referenceFaceVisible{};
};

/// A stated fact compared: a joint, a part type, a sense of turning, an order, a condition.
struct FactCompared {
    std::string expected{};
    std::string actual{}; ///< Empty when not known.
};

using Compared = std::variant<FactCompared, DirectionCompared, ApartCompared, ClearCompared, FaceCompared>;

/// The state of one rule in one build, with what was compared.
struct Verdict {
    const Rule* rule = nullptr;
    RuleState state = RuleState::NotDue;
    std::vector<PartId>
        parts{}; ///< What is really in the seats; the part meant for it where a seat is empty.
    Compared compared{FactCompared{}};
    std::string notKnown{}; ///< Why an open rule cannot be judged, in words.
};

/// A broken or open rule with its explanation.
struct Finding {
    Verdict verdict{};
    std::vector<Mistake> mistakes{}; ///< Likeliest first.
    std::optional<bool> asPrinted{}; ///< Null when the view in which it was set is not known.
    struct AsSeen {
        Degrees clock{0.0};
        View view{};
    };
    std::optional<AsSeen>
        asSeen{}; ///< Where the index was seen in the view in which it was set, else in the current one.
    std::optional<TurnHint> turn{};
    std::string question{}; ///< The one question that decides between two mistakes, or empty.
    std::string words{};    ///< The whole finding for a person.
};

struct CheckOptions {
    bool complete = false;             ///< Open and not due count as broken.
    const Frame* sister = nullptr;     ///< The sister variant, for `other_variant_rule`.
    std::optional<View> currentView{}; ///< Where the person stands; without it, the front of the bench by the
                                       ///< build's attitude.
};

struct Checked {
    std::vector<Verdict> verdicts{}; ///< One a rule, in the frame's order.
    std::vector<Finding> findings{}; ///< Broken first, severity falling, nearest last look, rule id.
    bool holds = true;
    int count(RuleState state) const;
};

/// Judges every rule of the frame. `build` must only name what the frame has (see readBuild).
/// The result points into `frame`.
Checked checkBuild(const Frame& frame, const Build& build, const CheckOptions& options);

/// State and comparison of one rule; no explanation.
Verdict judge(const Frame& frame, const Build& build, const Rule& rule);

/// The directions that all angular rules of the part's seat allow together, stored as from the compressor
/// side.
Arcs allowedIndexOf(const Frame& frame, const PartId& part);

/// The index of the part in a seat, in the housing's clock, through everything that carries it; nothing while
/// a link is not known. A part whose carrier is not in the cartridge yet is read from that carrier's own top
/// (`onCarrier`).
struct HousingClock {
    std::optional<Clock> index{};
    bool onCarrier = false; ///< Read from the top of a carrier that is not in the housing.
    PartId carrier{};
    std::string notKnown{};
};
HousingClock housingClockOf(const Frame& frame, const Build& build, const SeatId& seat);

} // namespace gapwise
