#pragma once

#include "viewer/dial/dial.h"

#include <optional>
#include <string>
#include <vector>

namespace gapwise {

/// What may be told now, in the order of the findings: nothing of a seat whose demand is not shown yet.
std::vector<const Finding*> toldFindings(const Job& job);
std::vector<const Finding*> toldFindingsOf(const Job& job, const SeatId& seat);

/// Whether a rule's verdict, and with it what it demands, may be told now.
bool mayTell(const Job& job, const Verdict& verdict);

/// Whether a part is new, oiled or dry, while nobody said so: that is asked on the card of its step.
bool isUnsaidCondition(const Verdict& verdict);

/// How many rules stand how, by what may be told.
struct Counts {
    int broken = 0;
    int open = 0;
    int held = 0;
    int untold = 0; ///< Judged, but its part was not set, or what is seen was not said.
    int notDue = 0;
};
Counts countsOf(const Job& job);

/// Where the index of the part in a seat points, in words.
struct GapWords {
    std::string own{};   ///< `3:00 from the compressor side`, from the end its part goes in.
    std::string other{}; ///< `9:00 from the turbine side`.
    std::string bench{}; ///< `bench: to your right`.
    std::string from{};  ///< `read from the mark of ROTOR`, or empty: from the inlet.
};
std::optional<GapWords> gapWordsOf(const Job& job, const SeatId& seat);

/// The two faces of the part in a seat, as the person stands.
struct Faces {
    FaceKind kind = FaceKind::None;
    std::string_view reference{};           ///< `rounded`.
    std::string_view other{};               ///< `sharp`.
    Side eye = Side::Compressor;            ///< From where he looks.
    std::optional<bool> referenceVisible{}; ///< What he sees by how it was set.
    std::optional<bool>
        mustBeReference{};   ///< What he must see; nothing while it may not be told, or no rule says.
    std::string must{};      ///< The same in a sentence, or empty.
    std::string_view test{}; ///< How to tell the two apart with a fingernail.
};
/// Nothing when both faces are alike, or the seat is empty.
std::optional<Faces> facesOf(const Job& job, const SeatId& seat);

} // namespace gapwise
