#include "geometry/solids/solids.h"

#include "geometry/solids/blades.h"
#include "geometry/solids/body.h"
#include "geometry/solids/tessellate.h"
#include "geometry/solids/threads.h"

#include <BRepGProp.hxx>
#include <GProp_GProps.hxx>
#include <Standard_Version.hxx>
#include <TopoDS_Shape.hxx>
#include <cassert>
#include <fmt/format.h>

namespace gapwise {

namespace {

/// Raised by whoever changes what mesh comes of a shape: meshes of another version are made anew.
constexpr int kBuilderVersion = 2;

Result<SolidPart> built(const Shape& shape, const Fineness& fineness, std::string_view where) {
    const Result<TopoDS_Shape> body = bodyOf(shape, where);
    if (!body)
        return body.errors();
    Result<PartMesh> mesh = tessellated(body.value(), fineness, where);
    if (!mesh)
        return mesh.errors();

    GProp_GProps properties;
    BRepGProp::VolumeProperties(body.value(), properties);
    const gp_Pnt centre = properties.CentreOfMass();
    double volume = properties.Mass();
    Vec3 moment = Vec3{centre.X(), centre.Y(), centre.Z()} * volume;
    SolidPart part{.mesh = std::move(mesh).value()};
    for (const Blades& blades : shape.blades) {
        const BladeMesh made = bladeMesh(blades, fineness.deflectionMm);
        append(part.mesh, made.mesh);
        volume += made.freeVolumeMm3;
        moment = moment + made.freeMoment;
    }
    for (const Thread& thread : shape.threads)
        append(part.mesh, {{}, threadLines(thread)});
    part.facts = {volume, moment * (1.0 / volume), boundsOf(part.mesh.faces.positions),
                  2.0 * fineness.deflectionMm, part.mesh.faces.triangles.size()};
    return part;
}

} // namespace

Result<SolidPart> buildSolid(const Shape& shape, const Fineness& fineness, std::string_view where) {
    assert(fineness.deflectionMm > 0.0 && fineness.angle.value > 0.0);
    return guarded(where, [&] { return built(shape, fineness, where); });
}

std::string solidsVersion() {
    return fmt::format("gapwise solids {}, Open CASCADE {}", kBuilderVersion, OCC_VERSION_COMPLETE);
}

} // namespace gapwise
