#include "viewer/shapes/frame_meshes.h"

#include "viewer/shapes/workers.h"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <nlohmann/json.hpp>

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
            ++pieces_[part.type];
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
        seconds_ += seconds;
        const std::string time =
            said.at("up_to_date").get<bool>() ? "up to date" : fmt::format("{:.2f} s", seconds);
        tell_.line(fmt::format("{:<{}}  {:>6} triangles  {:>9.6f} kg (stated {})  {}", type.id.text, widest_,
                               triangles, said.at("mass_kg").get<double>(), type.massKg, time));
    }

    void takeErrors(const nlohmann::json& said) {
        for (const nlohmann::json& error : said.at("errors"))
            fail(said.at("cannot_write").get<bool>() ? 3 : 2,
                 {error.at(0).get<std::string>(), error.at(1).get<std::string>(),
                  error.at(2).get<std::string>()});
    }

    int close() {
        if (status_ == 0)
            tell_.line(fmt::format("{}: {} part types, {} triangles a cartridge, {:.1f} s of work",
                                   frame_.id.text, frame_.types.size(), triangles_, seconds_));
        return status_;
    }

private:
    const Frame& frame_;
    const MeshOrder& order_;
    const MeshTelling& tell_;
    std::map<PartTypeId, std::size_t> pieces_{};
    std::size_t widest_ = 0;
    std::size_t triangles_ = 0;
    double seconds_ = 0.0;
    int status_ = 0;

    void fail(int status, const Error& error) {
        status_ = std::max(status_, status);
        tell_.error(error);
    }
};

} // namespace

int makeFrameMeshes(const Frame& frame, const MeshOrder& order, std::size_t jobs, const MeshTelling& tell) {
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
