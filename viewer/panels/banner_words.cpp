#include "viewer/panels/banner_words.h"

#include "models/frame/notice.h"

#include <fmt/format.h>

#include <cmath>

namespace gapwise {

namespace {

std::string_view loud(Side side) {
    return side == Side::Compressor ? "COMPRESSOR" : "TURBINE";
}

std::string lookWords(const Job& job) {
    if (job.standpoint.kind == LookKind::BothEnds)
        return "You look at BOTH ENDS, inlet on top";
    const std::optional<View> view = pictureViewOf(job.standpoint, job.attitude());
    if (!view)
        return "You look from BESIDE";
    return fmt::format("You look from the {} side", loud(view->side));
}

std::string warningWords(const Job& job) {
    if (!job.state.attitudeConfirmed)
        return "Say where the drain points: it is only believed";
    if (job.standpoint.kind == LookKind::BothEnds)
        return {};
    const Degrees off = pictureCameraOf(job.standpoint, job.attitude()).offAxis();
    if (off > kNoClock)
        return "From here no clock can be read: read the dials";
    if (off > kOblique)
        return fmt::format("Oblique look: a clock read here may be {:.0f}° off",
                           std::ceil(obliqueReadingError(off).value));
    return {};
}

} // namespace

std::string drainPhrase(const Job& job) {
    const Degrees seen = wrapped(job.standingView().top + Degrees{180.0});
    return benchPhrase(seen, job.attitude().up);
}

std::string lyingPhrase(const Job& job) {
    const EndUp up = job.attitude().up;
    return up == EndUp::Level ? "level" : fmt::format("{} end up", nameOf(up));
}

std::string_view labelOf(Use use) {
    switch (use) {
    case Use::Practise: return "Practise";
    case Use::Bench: return "At the bench";
    case Use::Show: break;
    }
    return "Show";
}

BannerWords bannerWordsOf(const Job& job) {
    return {.look = lookWords(job),
            .bench = fmt::format("On the bench: {}, drain {}{}", lyingPhrase(job), drainPhrase(job),
                                 job.state.attitudeConfirmed ? "" : " (?)"),
            .job = fmt::format("{} · {} · {}", job.name, job.frame.name, labelOf(job.use)),
            .warning = warningWords(job),
            .notice = std::string{noticeOf(job.frame)}};
}

} // namespace gapwise
