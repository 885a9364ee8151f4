#pragma once

#include "models/frame/data_folder.h"

#include <chrono>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace gapwise {

/// A bundled frame in the words of its own file.
struct OfferedFrame {
    std::string id{};
    std::string size{};    ///< `Alder-72`.
    std::string variant{}; ///< Of its bearings: `full_floating` or `pinned`.
    int snapRings = 0;
    int sealRings = 0;
};

/// A bundled build sheet.
struct OfferedSample {
    std::filesystem::path file{};
    std::string frame{}; ///< Id of the frame that it names; empty when it cannot be read.
    int seated = 0;      ///< Parts in their seats, the housing among them.
};

/// A job that was left.
struct OfferedJob {
    std::filesystem::path journal{};
    std::string frame{};           ///< Id or path.
    std::string use{};             ///< `practise`, `bench` or `show`.
    std::filesystem::path sheet{}; ///< What it began with, or empty.
    std::size_t acts = 0;
    std::chrono::system_clock::time_point lastAct{}; ///< When its journal was written last.
};

/// The opening screen's lists.
struct Offered {
    std::vector<OfferedFrame> frames{};
    std::vector<OfferedSample> samples{};
    std::vector<OfferedJob> jobs{};               ///< The last left first.
    std::chrono::system_clock::time_point asOf{}; ///< When the jobs were listed.
};

/// Only what the lists tell is read, nothing is judged; files that cannot be read are left out.
std::vector<OfferedFrame> offeredFrames(const DataFolder& data);
std::vector<OfferedSample> offeredSamples(const DataFolder& data);
std::vector<OfferedJob> offeredJobs(const std::filesystem::path& stateFolder);

/// How the names of journals end.
inline constexpr std::string_view kJournalEnding = ".journal";

} // namespace gapwise
