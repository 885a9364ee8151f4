#include "viewer/workplace/offered.h"

#include "models/frame/data_folder.h"
#include "models/job/journal.h"
#include "models/json/document.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <map>
#include <optional>

namespace gapwise {

namespace {

std::vector<std::filesystem::path> filesWithEnding(const std::filesystem::path& folder,
                                                   std::string_view ending) {
    std::vector<std::filesystem::path> files;
    std::error_code error;
    for (const auto& entry : std::filesystem::directory_iterator(folder, error))
        if (entry.path().string().ends_with(ending))
            files.push_back(entry.path());
    std::ranges::sort(files);
    return files;
}

std::optional<nlohmann::json> documentAt(const std::filesystem::path& file) {
    const Result<std::string> text = readText(file);
    if (!text)
        return std::nullopt;
    Result<nlohmann::json> document = parseJson(*text, file.string());
    if (!document || !document->is_object())
        return std::nullopt;
    return std::move(document).value();
}

std::string textOf(const nlohmann::json& object, const char* key) {
    const auto found = object.find(key);
    return found != object.end() && found->is_string() ? found->get<std::string>() : std::string{};
}

const nlohmann::json& listOf(const nlohmann::json& object, const char* key, const nlohmann::json& none) {
    const auto found = object.find(key);
    return found != object.end() && found->is_array() ? *found : none;
}

/// Rings with a gap: those with a rounded face are snap rings, those with a joint seal rings.
void countRings(const nlohmann::json& document, OfferedFrame& frame) {
    const nlohmann::json none = nlohmann::json::array();
    std::map<std::string, int*> counted;
    for (const nlohmann::json& type : listOf(document, "part_types", none)) {
        if (!type.is_object() || textOf(type, "index") != "gap")
            continue;
        const bool seal = !textOf(type, "joint").empty();
        counted[textOf(type, "id")] = seal ? &frame.sealRings : &frame.snapRings;
    }
    for (const nlohmann::json& part : listOf(document, "parts", none))
        if (const auto found = part.is_object() ? counted.find(textOf(part, "type")) : counted.end();
            found != counted.end())
            ++*found->second;
}

std::optional<OfferedJob> jobAt(const std::filesystem::path& file) {
    const Result<JournalContent> content = readJournal(file);
    if (!content)
        return std::nullopt;
    std::error_code error;
    const auto written = std::filesystem::last_write_time(file, error);
    OfferedJob job{.journal = file,
                   .frame = content->head.frame,
                   .use = content->head.use,
                   .sheet = content->head.sheet,
                   .acts = content->events.size()};
    if (!error)
        job.lastAct = std::chrono::time_point_cast<std::chrono::system_clock::duration>(
            std::chrono::file_clock::to_sys(written));
    return job;
}

} // namespace

std::vector<OfferedFrame> offeredFrames(const DataFolder& data) {
    std::vector<OfferedFrame> frames;
    for (const std::string& id : bundledFrames(data)) {
        const std::optional<nlohmann::json> document = documentAt(data.frameFile(id));
        if (!document)
            continue;
        OfferedFrame frame{
            .id = id, .size = textOf(*document, "size"), .variant = textOf(*document, "variant")};
        countRings(*document, frame);
        frames.push_back(std::move(frame));
    }
    return frames;
}

std::vector<OfferedSample> offeredSamples(const DataFolder& data) {
    const nlohmann::json none = nlohmann::json::array();
    std::vector<OfferedSample> samples;
    for (const std::filesystem::path& file : filesWithEnding(data.root / "builds", ".build.json"))
        if (const std::optional<nlohmann::json> document = documentAt(file))
            samples.push_back({.file = file,
                               .frame = textOf(*document, "frame"),
                               .seated = static_cast<int>(listOf(*document, "seatings", none).size())});
    return samples;
}

std::vector<OfferedJob> offeredJobs(const std::filesystem::path& stateFolder) {
    std::vector<OfferedJob> jobs;
    for (const std::filesystem::path& file : filesWithEnding(stateFolder, kJournalEnding))
        if (std::optional<OfferedJob> job = jobAt(file))
            jobs.push_back(std::move(*job));
    std::ranges::stable_sort(jobs, std::greater{},
                             [](const OfferedJob& job) { return std::pair{job.lastAct, job.journal}; });
    return jobs;
}

} // namespace gapwise
