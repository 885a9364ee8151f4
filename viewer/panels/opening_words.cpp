#include "viewer/panels/opening_words.h"

#include "viewer/panels/banner_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <ctime>

namespace gapwise {

namespace {

using Moment = std::chrono::system_clock::time_point;

constexpr std::array<UseWords, 3> kUseWords{
    UseWords{
        .use = Use::Practise,
        .label = "Practise",
        .what = "Place every part and turn every gap; each is judged when you set it down.",
        .first = {"Begin with an empty housing of the frame you learn, or a sample to find what is wrong.",
                  "Take the first ring from the tray and tap its seat.",
                  "Turn its gap, choose the face you see, read what is said of it."}},
    UseWords{.use = Use::Bench,
             .label = "At the bench",
             .what = "Say what you see on the real piece, then see what is demanded.",
             .first = {"Choose the frame and variant of the piece that lies before you.",
                       "Say how it lies and where its drain points.",
                       "Tap a ring: its gap as you see it, its face, done."}},
    UseWords{.use = Use::Show,
             .label = "Show",
             .what = "Set anything before a class; it is judged while you turn it.",
             .first = {"Choose a sample with a mistake in it.",
                       "Press 6 for both ends, then tip the piece over.",
                       "Drag a gap and let them say which way it must go."}}};

std::tm localOf(Moment moment) {
    const std::time_t seconds = std::chrono::system_clock::to_time_t(moment);
    std::tm local{};
    localtime_r(&seconds, &local);
    return local;
}

std::string timeWords(const std::tm& local, const char* format) {
    std::array<char, 40> text{};
    const std::size_t length = std::strftime(text.data(), text.size(), format, &local);
    return {text.data(), length};
}

bool sameDay(const std::tm& a, const std::tm& b) {
    return a.tm_year == b.tm_year && a.tm_yday == b.tm_yday;
}

std::string counted(std::size_t count, std::string_view thing) {
    return fmt::format("{} {}{}", count, thing, count == 1 ? "" : "s");
}

const OfferedFrame* frameNamed(const std::vector<OfferedFrame>& frames, const std::string& id) {
    const auto found = std::ranges::find(frames, id, &OfferedFrame::id);
    return found == frames.end() ? nullptr : &*found;
}

/// `alder-72-good` for `…/alder-72-good.build.json`.
std::string sheetStem(const std::filesystem::path& sheet) {
    return sheet.stem().stem().string();
}

/// The frame that the job's sheet begins with by its name, where the journal names a sheet only.
const OfferedFrame* frameOf(const OfferedJob& job, const std::vector<OfferedFrame>& frames) {
    if (!job.frame.empty())
        return frameNamed(frames, job.frame);
    const std::string stem = sheetStem(job.sheet);
    const OfferedFrame* longest = nullptr;
    for (const OfferedFrame& frame : frames)
        if (stem.starts_with(frame.id + "-") && (!longest || frame.id.size() > longest->id.size()))
            longest = &frame;
    return longest;
}

} // namespace

std::span<const UseWords> useWords() {
    return kUseWords;
}

std::string variantWords(std::string_view variant) {
    if (variant == "full_floating")
        return "full-floating bearing rings";
    if (variant == "pinned")
        return "semi-floating pinned bushes";
    std::string words{variant};
    std::ranges::replace(words, '_', ' ');
    return words;
}

std::string frameTitle(const OfferedFrame& frame) {
    const std::string variant = variantWords(frame.variant);
    return variant.empty() ? frame.size : fmt::format("{} · {}", frame.size, variant);
}

std::string ringWords(const OfferedFrame& frame) {
    std::string words;
    if (frame.snapRings > 0)
        words = counted(static_cast<std::size_t>(frame.snapRings), "snap ring");
    if (frame.sealRings > 0)
        words +=
            (words.empty() ? "" : ", ") + counted(static_cast<std::size_t>(frame.sealRings), "seal ring");
    return words;
}

std::string sampleTitle(const OfferedSample& sample) {
    std::string what = sheetStem(sample.file);
    if (!sample.frame.empty() && what.starts_with(sample.frame + "-"))
        what = what.substr(sample.frame.size() + 1);
    if (what == "good")
        return "Good build";
    std::ranges::replace(what, '-', ' ');
    if (!what.empty() && what.front() >= 'a' && what.front() <= 'z')
        what.front() = static_cast<char>(what.front() - 'a' + 'A');
    return what;
}

std::string sampleWords(const OfferedSample& sample) {
    return counted(static_cast<std::size_t>(sample.seated), "part") + " seated";
}

std::string jobTitle(const OfferedJob& job, const std::vector<OfferedFrame>& frames) {
    const OfferedFrame* frame = frameOf(job, frames);
    const std::filesystem::path named = job.frame.empty() ? job.sheet : std::filesystem::path{job.frame};
    const bool shared = frame && std::ranges::count(frames, frame->size, &OfferedFrame::size) > 1;
    const std::string variant = shared && frame->variant == "pinned" ? ", pinned" : "";
    return fmt::format("{} · {}", frame ? frame->size + variant : sheetStem(named),
                       labelOf(useNamed(job.use).value_or(Use::Practise)));
}

std::string jobWords(const OfferedJob& job, Moment now) {
    return fmt::format("{} · {}", agoWords(job.lastAct, now), counted(job.acts, "act"));
}

std::string agoWords(Moment then, Moment now) {
    const auto minutes = std::chrono::duration_cast<std::chrono::minutes>(now - then).count();
    if (minutes >= 0 && minutes < 1)
        return "just now";
    if (minutes > 0 && minutes < 60)
        return counted(static_cast<std::size_t>(minutes), "minute") + " ago";
    const std::tm local = localOf(then);
    if (sameDay(local, localOf(now)))
        return "today " + timeWords(local, "%H:%M");
    if (sameDay(local, localOf(now - std::chrono::hours{24})))
        return "yesterday " + timeWords(local, "%H:%M");
    return timeWords(local, local.tm_year == localOf(now).tm_year ? "%d %b %H:%M" : "%d %b %Y");
}

} // namespace gapwise
