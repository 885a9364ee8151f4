#include "viewer/shapes/frame_meshes.h"

#include "geometry/meshfile/meshfile.h"
#include "viewer/shapes/workers.h"

#include <algorithm>
#include <filesystem>
#include <fmt/format.h>
#include <map>
#include <nlohmann/json.hpp>
#include <unistd.h>

namespace gapwise {

namespace {

/// What a worker says to this process, as JSON text.
nlohmann::json message(const Result<MadeMesh>& made, bool cannotWrite) {
    if (made)
        return {{"triangles", made->triangles},
                {"mass_kg", made->massKg},
                {"seconds", made->seconds},
                {"up_to_date", made->wasUpToDate}};
    nlohmann::json errors = nlohmann::json::array();
    for (const Error& error : made.errors())
        errors.push_back({error.where, error.found, error.allowed});
    return {{"errors", errors}, {"cannot_write", cannotWrite}};
}

/// Gathers what the workers say and tells it.
class Tally {
public:
    Tally(const Frame& frame, const MeshOrder& order, const MeshTelling& tell)
        : frame_{frame}, order_{order}, tell_{tell} {
        for (const Part& part : frame.parts)
            ++(part.casing ? casings_ : pieces_)[part.type];
        for (const PartType& type : frame.types)
            widest_ = std::max(widest_, type.id.text.size());
    }

    void take(const PartType& type, const WorkerResult& result) {
        const nlohmann::json said = nlohmann::json::parse(result.said, nullptr, false);
        if (said.is_object() && said.contains("triangles"))
            takeMesh(type, said);
        else if (said.is_object() && said.contains("errors"))
            takeErrors(said);
        else
            fail(2, {fmt::format("{}#{}/shape", order_.frameFile, type.pointer),
                     fmt::format("sizes at which the builder of this part {}",
                                 result.died.value_or("says nothing")),
                     "sizes that make a solid"});
    }

    void takeMesh(const PartType& type, const nlohmann::json& said) {
        const auto triangles = said.at("triangles").get<std::size_t>();
        const auto seconds = said.at("seconds").get<double>();
        triangles_ += triangles * pieces_[type.id];
        casingTriangles_ += triangles * casings_[type.id];
        seconds_ += seconds;
        const bool upToDate = said.at("up_to_date").get<bool>();
        if (!upToDate)
            made_.push_back(&type);
        const std::string time = upToDate ? "up to date" : fmt::format("{:.2f} s", seconds);
        tell_.line(fmt::format("{:<{}}  {:>6} triangles  {:>9.6f} kg (stated {})  {}", type.id.text, widest_,
                               triangles, said.at("mass_kg").get<double>(), type.massKg, time));
    }

    void takeErrors(const nlohmann::json& said) {
        for (const nlohmann::json& error : said.at("errors"))
            fail(said.at("cannot_write").get<bool>() ? 3 : 2,
                 {error.at(0).get<std::string>(), error.at(1).get<std::string>(),
                  error.at(2).get<std::string>()});
    }

    /// Puts everything in place when nothing failed.
    int close() {
        for (const PartType* type : made_) {
            if (status_ != 0)
                break;
            if (const auto failure = moveMesh(glbOf(*type, order_.staging), glbOf(*type, order_.folder)))
                fail(3, failure->error);
        }
        if (status_ == 0)
            tell_.line(fmt::format("{}: {} part types, {} triangles a cartridge{}, {:.1f} s of work",
                                   frame_.id.text, frame_.types.size(), triangles_, casingsInWords(),
                                   seconds_));
        return status_;
    }

private:
    const Frame& frame_;
    const MeshOrder& order_;
    const MeshTelling& tell_;
    std::map<PartTypeId, std::size_t> pieces_{};  ///< Of the cartridge.
    std::map<PartTypeId, std::size_t> casings_{}; ///< Of the casings and what holds them.
    std::vector<const PartType*> made_{};
    std::size_t widest_ = 0;
    std::size_t triangles_ = 0;
    std::size_t casingTriangles_ = 0;
    double seconds_ = 0.0;
    int status_ = 0;

    std::string casingsInWords() const {
        return casingTriangles_ == 0 ? "" : fmt::format(", {} its casings", casingTriangles_);
    }

    void fail(int status, const Error& error) {
        status_ = std::max(status_, status);
        tell_.error(error);
    }
};

/// Where the meshes wait; gone with this object.
class StagingFolder {
public:
    /// Beside the folder, so that a rename is enough; its name is this process's own.
    explicit StagingFolder(const std::filesystem::path& folder)
        : path_{folder.parent_path() / fmt::format(".{}.{}", folder.filename().string(), ::getpid())} {}
    StagingFolder(const StagingFolder&) = delete;
    StagingFolder& operator=(const StagingFolder&) = delete;
    ~StagingFolder() {
        std::error_code ignored;
        std::filesystem::remove_all(path_, ignored);
    }
    const std::filesystem::path& path() const { return path_; }

private:
    std::filesystem::path path_;
};

} // namespace

int makeFrameMeshes(const Frame& frame, MeshOrder order, std::size_t jobs, const MeshTelling& tell) {
    order.folder = std::filesystem::absolute(order.folder / "any").parent_path();
    const StagingFolder staging{order.folder};
    order.staging = staging.path();
    order.leastDeflectionMm = leastDeflectionOf(frame);
    Tally tally{frame, order, tell};
    WorkPlan plan;
    plan.count = frame.types.size();
    plan.atOnce = std::max<std::size_t>(jobs, 1);
    plan.job = [&](std::size_t i) {
        bool cannotWrite = false;
        const Result<MadeMesh> made = makePartMesh(frame.types[i], order, cannotWrite);
        return message(made, cannotWrite).dump();
    };
    plan.done = [&](std::size_t i, const WorkerResult& result) { tally.take(frame.types[i], result); };
    runInProcesses(plan);
    return tally.close();
}

} // namespace gapwise
