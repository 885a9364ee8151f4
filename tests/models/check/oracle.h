#pragma once

#include "models/build/build.h"
#include "models/check/check.h"
#include "plane.h"

#include <optional>
#include <string>
#include <vector>

/// A second answer to what a check must say, by plain vectors and matrices: written from the contract alone,
/// slow, with no clock, window or arc of the program. It takes raw numbers as a person says them.
namespace gapwise::oracle {

/// Degrees clockwise from 12 as read from a side with the top of whatever carries the part on top.
struct Said {
    double degrees = 0.0;
    Side side = Side::Compressor;
};

/// A view as a build sheet writes it.
struct Shown {
    Side side = Side::Compressor;
    double topDegrees = 0.0;
};

/// A part in a seat. What is absent is not known.
struct Placed {
    std::string part{};
    std::string seat{};
    std::optional<Said> index{};
    std::optional<Side> referenceFaceLooks{};
    std::optional<bool> home{};
    std::optional<Shown> setIn{};
    std::vector<std::string> stated{}; ///< `new`, `oiled`, `greased`, `coated`, `dry`.
    bool confirmed = false;
};

/// A fastener that was tightened; how the wrench turned, when somebody wrote it down.
struct Wrenched {
    std::string fastener{};
    std::optional<bool> clockwise{};
    Side seenFrom = Side::Compressor;
};

/// How the workpiece lies; an end that is up is also the side it is looked at from.
struct Lying {
    EndUp up = EndUp::Level;
    double drainDegrees = 180.0;
    Side seenFrom = Side::Compressor;
};

/// A build in raw numbers.
struct Bench {
    std::optional<Lying> lying{};
    std::vector<Placed> placed{};
    std::vector<std::string> stepsDone{}; ///< In the order done.
    std::vector<Wrenched> wrenched{};
    std::optional<bool> rotorLoweredIn{};

    const Placed* in(const std::string& seat) const;
    Placed* of(const std::string& part);
};

/// The same build as the program holds it.
Build buildOf(const Bench& bench);

struct Turn {
    double degrees = 0.0;
    bool clockwise = true;
    Side side = Side::Compressor;
};

/// What must be said of a rule that demands a direction, once it is broken.
struct Explanation {
    std::vector<Mistake> mistakes{};
    std::optional<bool> asPrinted{};
    Turn turn{};
    double actual = 0.0;    ///< From the rule's side, in [0, 360].
    double deviation = 0.0; ///< Clockwise positive, in [-180, 180].
    /// In the view in which it was set, else as the piece lies, in [0, 360]; nothing when neither is known.
    std::optional<double> asSeen{};
};

/// A build of a frame (with its sister, where it has one) to be judged.
struct Case {
    const Frame& frame;
    const Frame* sister = nullptr;
    const Bench& bench;
};

RuleState stateOf(const Case& asked, const Rule& rule);

/// For a broken `gap_clock` or `mark` rule.
Explanation explanationOf(const Case& asked, const Rule& rule);

/// Where the index of the part in a seat points: in the housing, or on a carrier that will bring it there.
/// Nothing while that is not known.
std::optional<Direction> directionIn(const Case& asked, const SeatId& seat);

/// What who stands at the front of the bench has before him.
Picture currentPicture(const Bench& bench, Side whenUnknown);

/// A whole build that holds: every part in its own seat, as its rules print it.
Bench goodBench(const Frame& frame);

} // namespace gapwise::oracle
