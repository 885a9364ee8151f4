#include "viewer/shapes/part_mesh.h"

#include "geometry/meshfile/meshfile.h"
#include "geometry/shape/canonical.h"
#include "geometry/shape/inside.h"

#include <algorithm>
#include <ctime>
#include <fmt/format.h>

namespace gapwise {

namespace {

/// g/cm³ times mm³ in kg.
constexpr double kKgPerGramCm3Mm3 = 1e-6;
constexpr double kShareOfDiameter = 1.0 / 4000.0;
/// Coarse enough that a broken edge takes three pieces; larger arcs follow the deflection.
constexpr Degrees kLargestTurn{40.0};

double diameterOf(const Shape& shape) {
    return 2.0 * tubeAround(shape).r.to;
}

} // namespace

double leastDeflectionOf(const Frame& frame) {
    return diameterOf(frame.typeOf(frame.housing)->shape) * kShareOfDiameter;
}

Fineness finenessOf(const Shape& shape, double leastDeflectionMm) {
    return {.deflectionMm = std::max(leastDeflectionMm, diameterOf(shape) * kShareOfDiameter),
            .angle = kLargestTurn};
}

std::string contentKeyOf(const PartType& type, const Fineness& fineness) {
    return contentKeyOf(fmt::format("{}\n{} mm {} deg\n{} g/cm3\n{}", solidsVersion(), fineness.deflectionMm,
                                    fineness.angle.value, type.densityGPerCm3, canonicalText(type.shape)));
}

std::filesystem::path glbOf(const PartType& type, const std::filesystem::path& folder) {
    return folder / (type.id.text + ".glb");
}

Result<MadeMesh> makePartMesh(const PartType& type, const MeshOrder& order, bool& cannotWrite) {
    const std::clock_t start = std::clock();
    const Fineness fineness = finenessOf(type.shape, order.leastDeflectionMm);
    const std::string key = contentKeyOf(type, fineness);
    const auto since = [&] { return static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC; };
    if (!order.evenIfUpToDate) {
        const Result<MeshFacts> there = readMeshFacts(glbOf(type, order.folder), order.frame);
        if (there && there->contentKey == key)
            return MadeMesh{there->triangles, there->massKg, since(), true};
    }
    const Result<SolidPart> part =
        buildSolid(type.shape, fineness, fmt::format("{}#{}/shape", order.frameFile, type.pointer));
    if (!part)
        return part.errors();
    const SolidFacts& solid = part->facts;
    const MeshFacts facts{.contentKey = key,
                          .sagittaMm = solid.sagittaMm,
                          .volumeMm3 = solid.volumeMm3,
                          .massKg = solid.volumeMm3 * type.densityGPerCm3 * kKgPerGramCm3Mm3,
                          .centreMm = solid.centreMm,
                          .bounds = solid.bounds,
                          .triangles = solid.triangles};
    if (const auto failure = writeMesh(glbOf(type, order.staging), part->mesh, facts)) {
        cannotWrite = true;
        return failure->error;
    }
    return MadeMesh{facts.triangles, facts.massKg, since(), false};
}

} // namespace gapwise
