#include "geometry/meshfile/meshfile.h"

#include "geometry/meshfile/facts_file.h"
#include "geometry/meshfile/files.h"
#include "geometry/meshfile/glb.h"

#include <fmt/format.h>

namespace gapwise {

namespace {

/// A part of 60 000 triangles takes 5 MB.
constexpr std::uintmax_t kLargestMesh = std::uintmax_t{256} << 20U;
constexpr std::uintmax_t kLargestFacts = std::uintmax_t{1} << 20U;

struct Files {
    std::string glb{};
    StoredFacts stored{};
};

/// Whatever is wrong with a mesh file, the same command makes it anew.
Errors withCommand(Errors errors, std::string_view frame) {
    for (Error& error : errors)
        error.allowed = fmt::format("a mesh made by `gapwise-shapes {}`", frame);
    return errors;
}

/// Both files, the mesh being the very one that its facts were written with: what follows can trust it.
Result<Files> soundFiles(const std::filesystem::path& glb) {
    Result<std::string> bytes = fileContents(glb, kLargestMesh);
    if (!bytes)
        return bytes.errors();
    const std::filesystem::path beside = factsFileOf(glb);
    const Result<std::string> text = fileContents(beside, kLargestFacts);
    if (!text)
        return text.errors();
    Result<StoredFacts> stored = parseFacts(text.value(), beside.string());
    if (!stored)
        return stored.errors();
    if (stored->glbHash != sha256(bytes.value()))
        return Error{glb.string(), "a file that was broken or exchanged since its facts were written", ""};
    return Files{std::move(bytes).value(), std::move(stored).value()};
}

WriteFailure failureOf(const std::filesystem::path& place, const std::error_code& problem) {
    return {{place.string(), problem.message(), "a place that can be written"},
            problem == std::errc::no_space_on_device};
}

std::optional<WriteFailure> makeFolder(const std::filesystem::path& folder) {
    std::error_code problem;
    std::filesystem::create_directories(folder, problem);
    if (problem)
        return failureOf(folder, problem);
    return std::nullopt;
}

} // namespace

std::filesystem::path factsFileOf(const std::filesystem::path& glb) {
    return std::filesystem::path{glb}.replace_extension(".json");
}

std::string contentKeyOf(std::string_view canonicalText) {
    return sha256(canonicalText);
}

std::optional<WriteFailure> writeMesh(const std::filesystem::path& glb, const PartMesh& mesh,
                                      const MeshFacts& facts) {
    if (std::optional<WriteFailure> failure = makeFolder(glb.parent_path()))
        return failure;
    const std::string bytes = glbOf(mesh);
    if (std::optional<WriteFailure> failure = writeFile(glb, bytes))
        return failure;
    return writeFile(factsFileOf(glb), factsText({facts, sha256(bytes)}));
}

std::optional<WriteFailure> moveMesh(const std::filesystem::path& from, const std::filesystem::path& to) {
    if (std::optional<WriteFailure> failure = makeFolder(to.parent_path()))
        return failure;
    std::error_code problem;
    std::filesystem::rename(from, to, problem);
    if (!problem)
        std::filesystem::rename(factsFileOf(from), factsFileOf(to), problem);
    if (problem)
        return failureOf(to, problem);
    return std::nullopt;
}

Result<MeshFacts> readMeshFacts(const std::filesystem::path& glb, std::string_view frame) {
    const Result<Files> files = soundFiles(glb);
    if (!files)
        return withCommand(files.errors(), frame);
    return files->stored.facts;
}

Result<PartMesh> readMesh(const std::filesystem::path& glb, std::string_view frame) {
    const Result<Files> files = soundFiles(glb);
    if (!files)
        return withCommand(files.errors(), frame);
    Result<PartMesh> mesh = meshFromGlb(files->glb, glb.string());
    if (!mesh)
        return withCommand(mesh.errors(), frame);
    return mesh;
}

} // namespace gapwise
