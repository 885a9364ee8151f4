#include "viewer/panels/show_me.h"

namespace gapwise {

namespace {

/// The side that the rule is read from: the one it names, else the end that its part goes in from.
std::optional<Side> sideOf(const Job& job, const Finding& finding) {
    const Verdict& verdict = finding.verdict;
    if (std::holds_alternative<FactCompared>(verdict.compared))
        return std::nullopt;
    if (const PrintedClock* printed = printedClockOf(*verdict.rule))
        if (printed->seenFrom)
            return printed->seenFrom;
    const Seat* seat = job.frame.seat(seatOf(partsOf(*verdict.rule).front()));
    return seat ? seat->entersFrom : std::nullopt;
}

bool wasSetAsHeStands(const Job& job, const Finding& finding) {
    const View now = job.standingView();
    return finding.asSeen && finding.asSeen->view.side == now.side &&
           apart(finding.asSeen->view.top, now.top) < Degrees{1.0};
}

} // namespace

std::optional<ShowMe> showMeOf(const Job& job, const Finding& finding) {
    const std::optional<Side> side = sideOf(job, finding);
    if (!side || finding.verdict.state != RuleState::Broken)
        return std::nullopt;
    const LookKind own = *side == Side::Compressor ? LookKind::FromCompressor : LookKind::FromTurbine;
    ShowMe show{.standpoint = job.standpoint, .words = "as printed"};
    show.standpoint.pulledApart = 0.0;
    show.standpoint.kind = own;
    if (job.standpoint.kind != own)
        return show;
    show.standpoint.kind = LookKind::WhereIStand;
    show.words = wasSetAsHeStands(job, finding) ? "as you set it" : "as I stand";
    return show;
}

} // namespace gapwise
