#include "geometry/base/running_program.h"
#include "models/frame/read_frame.h"
#include "viewer/shapes/frame_meshes.h"

#include <CLI/CLI.hpp>
#include <algorithm>
#include <fmt/format.h>
#include <iostream>
#include <thread>

namespace {

using namespace gapwise;

constexpr int kBadInput = 2;

struct Request {
    std::string frame{};
    std::string out{};
    std::size_t jobs = 0;
    bool force = false;
};

void tellErrors(const Errors& errors) {
    for (const Error& error : errors)
        std::cerr << describe(error) << '\n';
}

int run(const Request& request) {
    const Result<DataFolder> data = findDataFolder(runningProgram());
    if (!data) {
        tellErrors(data.errors());
        return kBadInput;
    }
    const Result<Frame> frame = readFrame(data.value(), request.frame);
    if (!frame) {
        tellErrors(frame.errors());
        return kBadInput;
    }
    MeshOrder order;
    order.frame = request.frame;
    order.frameFile = frameFileOf(data.value(), request.frame).string();
    order.folder = request.out.empty() ? data->meshFile(frame->id, PartTypeId{"any"}).parent_path()
                                       : std::filesystem::path{request.out};
    order.evenIfUpToDate = request.force;
    const std::size_t cores = std::max(1U, std::thread::hardware_concurrency());
    const MeshTelling tell{[](const std::string& line) { std::cout << line << std::endl; },
                           [](const Error& error) { std::cerr << describe(error) << '\n'; }};
    return makeFrameMeshes(frame.value(), order, request.jobs == 0 ? cores : request.jobs, tell);
}

} // namespace

int main(int argc, char** argv) {
    CLI::App app{"Builds the solids of a frame's parts and writes one mesh a part type.", "gapwise-shapes"};
    Request request;
    app.add_option("FRAME", request.frame, "A bundled frame by its id, or a frame file")
        ->type_name("")
        ->required();
    app.add_option("--out", request.out, "Folder for the meshes; else the one where the other programs look")
        ->type_name("DIR");
    app.add_option("--jobs", request.jobs, "Parts at a time; else as many as there are cores")
        ->type_name("N")
        ->check(CLI::Range(1, 64));
    app.add_flag("--force", request.force, "Make every mesh anew, also those that are up to date");
    app.footer("Exit status: 0 all meshes are there, 2 bad input or usage, 3 this machine cannot do it now.");
    try {
        app.parse(argc, argv);
        return run(request);
    } catch (const CLI::ParseError& problem) {
        return app.exit(problem) == 0 ? 0 : kBadInput;
    } catch (const std::exception& trouble) {
        std::cerr << "gapwise-shapes: " << trouble.what() << '\n';
        return 3;
    }
}
