#include "viewer/command/report.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <cerrno>
#include <charconv>
#include <csignal>
#include <cstdio>
#include <cstring>
#include <string_view>
#include <utility>

namespace gapwise {

namespace {

/// Nothing when all was written, else the reason in the system's words.
std::string writeToStandardOutput(std::string_view text) {
    // A reader that went away is an error to report, not a death by signal.
    std::signal(SIGPIPE, SIG_IGN);
    errno = 0;
    const bool written = std::fwrite(text.data(), 1, text.size(), stdout) == text.size();
    if (std::fflush(stdout) != 0 || !written)
        return std::strerror(errno);
    return {};
}

void writeErrors(const Outcome& outcome) {
    std::string text;
    const std::string prefix = outcome.command.empty() ? "" : outcome.command + ": ";
    for (const Error& error : outcome.errors)
        text += prefix + describe(error) + "\n";
    for (const Error& note : outcome.notes)
        text += "note: " + describe(note) + "\n";
    std::fwrite(text.data(), 1, text.size(), stderr);
}

/// Cuts `:12` off the end; nothing, and `text` as it was, where no number stands there.
std::optional<int> takeNumber(std::string& text) {
    const std::size_t colon = text.rfind(':');
    if (colon == std::string::npos)
        return std::nullopt;
    int number = 0;
    const char* const end = text.data() + text.size();
    const auto [stop, code] = std::from_chars(text.data() + colon + 1, end, number);
    if (code != std::errc{} || stop != end)
        return std::nullopt;
    text.erase(colon);
    return number;
}

} // namespace

ErrorPlace placeOf(const Error& error) {
    const std::string& where = error.where;
    if (const std::size_t hash = where.rfind("#/"); hash != std::string::npos)
        return {.file = where.substr(0, hash), .pointer = where.substr(hash + 1)};
    if (where.ends_with('#'))
        return {.file = where.substr(0, where.size() - 1)};
    ErrorPlace place{.file = where};
    const std::optional<int> column = takeNumber(place.file);
    const std::optional<int> line = column ? takeNumber(place.file) : std::nullopt;
    return line ? ErrorPlace{.file = place.file, .line = line, .column = column} : ErrorPlace{.file = where};
}

std::string errorsAsJson(const Outcome& outcome) {
    nlohmann::ordered_json list = nlohmann::ordered_json::array();
    for (const Error& error : outcome.errors) {
        const ErrorPlace place = outcome.command.empty()
                                     ? placeOf(error)
                                     : ErrorPlace{.file = "command line", .pointer = error.where};
        nlohmann::ordered_json one{{"file", place.file}, {"pointer", place.pointer}};
        if (place.line && place.column)
            one.update({{"line", *place.line}, {"column", *place.column}});
        one.update({{"found", error.found}, {"allowed", error.allowed}});
        list.push_back(std::move(one));
    }
    const nlohmann::ordered_json document{{"errors", std::move(list)}};
    // What was found may be no UTF-8; the message must come through all the same.
    return document.dump(2, ' ', false, nlohmann::ordered_json::error_handler_t::replace) + "\n";
}

int report(const Outcome& outcome, Format format) {
    std::string text = outcome.text;
    if (format == Format::Json && !outcome.errors.empty())
        text += errorsAsJson(outcome);
    writeErrors(outcome);
    const std::string trouble = writeToStandardOutput(text);
    if (trouble.empty())
        return static_cast<int>(outcome.status);
    fmt::print(stderr, "gapwise: standard output cannot be written: {}\n", trouble);
    return static_cast<int>(ExitStatus::CannotNow);
}

} // namespace gapwise
