#include "viewer/dial/bare_dial.h"

#include "models/check/carrier.h"

#include <fmt/format.h>

namespace gapwise {

namespace {

std::string whyUnseen(const Job& job, const SeatId& seat, Side eye) {
    const Build& build = job.state.build;
    if (inSightFrom(job.frame, build, seat, eye))
        return {};
    if (inSightFrom(job.frame, build, seat, opposite(eye)))
        return fmt::format("It shows to the {} side. Turn the piece, or walk to that end.",
                           nameOf(opposite(eye)));
    return "Nothing of it can be seen any more.";
}

} // namespace

BareDial bareDialOf(const Job& job, const SeatId& seat) {
    BareDial dial{.view = job.standingView(), .upright = job.attitude().up != EndUp::Level};
    for (std::size_t i = 0; i < dial.words.size(); ++i)
        dial.words.at(i) = benchWord(Degrees{90.0 * static_cast<double>(i)}, job.attitude().up);
    dial.inletAt = dial.view.top;
    dial.drainAt = wrapped(dial.view.top + Degrees{180.0});
    dial.fromBeside = sightOf(job.frame, job.state.build, seat) == Sight::FromBeside;
    const Carrier* carrier = currentCarrierOf(job.frame, job.state.build, seat);
    if (dial.fromBeside && carrier)
        dial.heldOn = carrier->part;
    if (!dial.fromBeside)
        dial.unseen = whyUnseen(job, seat, dial.view.side);
    return dial;
}

} // namespace gapwise
