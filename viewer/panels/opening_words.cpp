#include "viewer/panels/opening_words.h"

#include <algorithm>
#include <charconv>
#include <ctime>

namespace gapwise {

namespace {

constexpr std::array<UseWords, 3> kUseWords{
    UseWords{
        .use = Use::Practise,
        .label = "Practise",
        .what =
            "Place every part and turn every gap before the real job. Each is judged when you set it down, "
            "with the reason.",
        .first = {"1  Choose a frame or a sample.", "2  Take the first ring from the tray, tap its seat.",
                  "3  Turn its gap, choose its face, read what is said."}},
    UseWords{
        .use = Use::Bench,
        .label = "At the bench",
        .what = "Say what you see on the real piece; then see what is demanded. Large words, large buttons, "
                "gloves on.",
        .first = {"1  Choose the frame that lies before you.", "2  Say where the drain points as you stand.",
                  "3  Tap a ring, tap its gap as you see it, tap its face."}},
    UseWords{.use = Use::Show,
             .label = "Show",
             .what =
                 "Set anything before a class and see it judged while you turn it; both ends side by side.",
             .first = {"1  Choose a sample with a mistake in it.",
                       "2  Press 6 for both ends, then tip the piece over.",
                       "3  Drag a gap and let them say which way."}}};

} // namespace

std::span<const UseWords> useWords() {
    return kUseWords;
}

std::string sheetLabel(const std::filesystem::path& sheet, const std::vector<std::string>& frames) {
    const std::string stem = sheet.stem().stem().string();
    std::string longest;
    for (const std::string& frame : frames)
        if (stem.starts_with(frame + "-") && frame.size() > longest.size())
            longest = frame;
    if (longest.empty())
        return stem;
    std::string what = stem.substr(longest.size() + 1);
    std::ranges::replace(what, '-', ' ');
    return longest + ": " + what;
}

std::string journalLabel(const std::filesystem::path& journal) {
    const std::string stem = journal.stem().string();
    const std::size_t dash = stem.find('-');
    long long milliseconds = 0;
    if (dash == std::string::npos)
        return stem;
    const auto [end, error] = std::from_chars(stem.data(), stem.data() + dash, milliseconds);
    if (error != std::errc{} || end != stem.data() + dash)
        return stem;
    const std::time_t seconds = milliseconds / 1000;
    std::tm local{};
    std::array<char, 40> text{};
    if (!localtime_r(&seconds, &local) || std::strftime(text.data(), text.size(), "%d %b %H:%M", &local) == 0)
        return stem;
    return stem.substr(dash + 1) + ", " + text.data();
}

} // namespace gapwise
