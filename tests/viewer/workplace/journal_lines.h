#pragma once

#include "tests/viewer/workplace/at_hand.h"

#include "models/build/write_build.h"

#include <fstream>
#include <sstream>
#include <string>
#include <vector>

namespace gapwise {

/// A whole file; empty when there is none.
inline std::string bytesOf(const std::filesystem::path& file) {
    const std::ifstream stream(file, std::ios::binary);
    std::ostringstream bytes;
    bytes << stream.rdbuf();
    return bytes.str();
}

/// The names of the events in a journal file, in order: `placed`, `turned`, …
inline std::vector<std::string> namesIn(const std::filesystem::path& journal) {
    std::vector<std::string> names;
    const Result<JournalContent> content = readJournal(journal);
    if (!content)
        return {describe(content.errors().front())};
    for (const Event& event : content->events)
        names.emplace_back(nameOf(event));
    return names;
}

inline std::vector<std::string> namesIn(const AtHand& hand) {
    return namesIn(hand.workplace.journal->file());
}

/// Everything that a build says, to compare two of them.
inline std::string sheetOf(const Job& job) {
    return toBuildSheet(job.state.build, job.frame);
}

} // namespace gapwise
