#pragma once

#include "models/job/log.h"

#include <filesystem>
#include <memory>
#include <string>

namespace gapwise {

/// What a journal says of itself in its first line.
struct JournalHead {
    std::string frame{}; ///< Id of a bundled frame, or a path; empty where a sheet names it.
    std::string use{};   ///< `practise`, `bench` or `show`.
    std::string sheet{}; ///< The file of the build sheet it began with, or empty.
    /// What that file held then, as JSON: the job may be saved over it, and must not begin with itself.
    std::string sheetText{};
};

/// What a use asks of a job: practice is a rehearsal, in which no finding is overridden; showing asks for the
/// order only.
void setUse(Log& log, std::string_view use);

/// An append-only journal of events, one a line. An event is on disk when `append` returns.
class Journal {
public:
    /// Begins a new journal; a file that is already there is an error.
    static Result<Journal> create(const std::filesystem::path& file, const JournalHead& head);

    /// Opens a journal to go on with it. A last line that was cut off is dropped from the file first.
    static Result<Journal> reopen(const std::filesystem::path& file);

    Journal(Journal&& other) noexcept;
    Journal& operator=(Journal&& other) noexcept;
    Journal(const Journal&) = delete;
    Journal& operator=(const Journal&) = delete;
    ~Journal();

    const std::filesystem::path& file() const { return file_; }

    /// Empty when the event is on disk; else why it is not (disk full, file gone), and the file is as it was.
    Errors append(const Event& event);

private:
    Journal(std::filesystem::path file, int descriptor) : file_{std::move(file)}, descriptor_{descriptor} {}

    std::filesystem::path file_;
    int descriptor_ = -1;
};

/// A journal as read back.
struct JournalContent {
    JournalHead head{};
    std::vector<Event> events{};
    bool cutOff = false; ///< The last line was not finished when the program ended; it is left out.
};

Result<JournalContent> readJournal(const std::filesystem::path& file);

/// `$XDG_STATE_HOME/gapwise`, or `~/.local/state/gapwise`.
std::filesystem::path stateFolder();

} // namespace gapwise
