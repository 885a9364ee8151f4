#include "viewer/panels/banner_words.h"

#include "viewer/panels/bench_question.h"

#include "models/frame/notice.h"

#include <fmt/format.h>

#include <cmath>

namespace gapwise {

namespace {

std::string_view loud(Side side) {
    return side == Side::Compressor ? "COMPRESSOR" : "TURBINE";
}

/// From where one looks: `the COMPRESSOR side`, `BESIDE`, `BOTH ENDS`.
std::string lookedFrom(const Job& job) {
    if (job.standpoint.kind == LookKind::BothEnds)
        return "BOTH ENDS";
    const std::optional<View> view = pictureViewOf(job.standpoint, job.attitude());
    return view ? fmt::format("the {} side", loud(view->side)) : std::string{"BESIDE"};
}

std::string hintWords(const Job& job) {
    if (job.standpoint.kind == LookKind::BothEnds)
        return "each end with the inlet on top";
    if (laidOnItsSide(job.standpoint, job.attitude()))
        return "drawn lying, pulled apart";
    const bool clock = pictureViewOf(job.standpoint, job.attitude()).has_value();
    return clock ? std::string{} : std::string{"read clocks on the dials"};
}

std::string warningWords(const Job& job) {
    if (!job.state.attitudeConfirmed)
        return "say where the drain points";
    if (job.standpoint.kind == LookKind::BothEnds)
        return {};
    const Degrees off = pictureCameraOf(job.standpoint, job.attitude()).offAxis();
    if (off <= kOblique || off > kNoClock)
        return {};
    return fmt::format("oblique look: clocks up to {:.0f}° off", std::ceil(obliqueReadingError(off).value));
}

BannerWords wordsOfLook(const Job& job) {
    const std::string from = lookedFrom(job);
    const char* believed = job.state.attitudeConfirmed ? "" : " (?)";
    const bool both = job.standpoint.kind == LookKind::BothEnds;
    return {.look = fmt::format("You look {} {}", both ? "at" : "from", from),
            .bench =
                fmt::format("On the bench: {}, drain {}{}", lyingPhrase(job), drainPhrase(job), believed),
            .fromFar = fmt::format("{} · drain {}{}", from.starts_with("the ") ? from.substr(4) : from,
                                   drainPhrase(job), believed),
            .lying = lyingPhrase(job),
            .job = fmt::format("{} · {} · {}", job.name, job.frame.name, labelOf(job.use)),
            .warning = warningWords(job),
            .hint = hintWords(job),
            .notice = std::string{noticeOf(job.frame)}};
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
    BannerWords words = wordsOfLook(job);
    if (asksWhichEnd(job)) {
        words.bench = "On the bench: not said yet";
        words.fromFar = "Say how the piece lies";
        words.lying = "not said yet how it lies";
        words.warning.clear();
    }
    return words;
}

} // namespace gapwise
