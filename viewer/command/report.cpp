#include "viewer/command/report.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <cerrno>
#include <csignal>
#include <cstdio>
#include <cstring>
#include <string_view>

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

} // namespace

ErrorPlace placeOf(const Error& error) {
    const std::size_t hash = error.where.rfind("#/");
    if (hash == std::string::npos)
        return {.file = error.where, .pointer = {}};
    return {.file = error.where.substr(0, hash), .pointer = error.where.substr(hash + 1)};
}

std::string errorsAsJson(const Outcome& outcome) {
    nlohmann::ordered_json list = nlohmann::ordered_json::array();
    for (const Error& error : outcome.errors) {
        const ErrorPlace place =
            outcome.command.empty() ? placeOf(error) : ErrorPlace{"command line", error.where};
        list.push_back({{"file", place.file},
                        {"pointer", place.pointer},
                        {"found", error.found},
                        {"allowed", error.allowed}});
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
