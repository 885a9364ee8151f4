#include "viewer/panels/stack_parts.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace gapwise {

namespace {

constexpr double kMovedMm = 1e-6;
constexpr double kAround = 5.0;        ///< Shown of the shaft beyond the outermost face, mm.
constexpr double kMostRadiusMm = 60.0; ///< Of either frame's wheel no more is drawn.

std::set<std::string> partsWithStations(const StackDrawing& drawing) {
    std::set<std::string> names;
    for (const auto& [station, z] : drawing.towardCompressor)
        names.insert(partNameOf(station));
    return names;
}

/// By how much a part lies elsewhere with the rotor pushed to the turbine.
double shiftOf(const StackDrawing& drawing, const std::string& part) {
    for (const auto& [station, z] : drawing.towardCompressor)
        if (partNameOf(station) == part)
            if (const auto other = drawing.towardTurbine.find(station); other != drawing.towardTurbine.end())
                return other->second - z;
    return 0.0;
}

bool isTold(const StackDrawing& drawing, const PartId& part) {
    return std::ranges::any_of(drawing.chain.links, [&](const Term& link) {
        const Dimension* dimension = drawing.frame.dimension(link.of);
        return dimension && dimension->part == part;
    });
}

bool isCurved(const RingBody& ring) {
    return std::holds_alternative<QuarterEllipse>(ring.bore) ||
           std::holds_alternative<QuarterEllipse>(ring.outside);
}

/// A piece of a part's shape by itself, less the grooves that are turned out of it.
void addPiece(StackPart& drawn, PartType piece, const Seat& seat, Side looks) {
    const bool blades = !piece.shape.blades.empty();
    const bool curved = blades || isCurved(piece.shape.rings.front());
    const std::vector<Slab> slabs = slabsOf(piece, seat, looks);
    if (curved)
        drawn.curves.push_back({drawn.slabs.size(), slabs.size(), blades});
    drawn.slabs.insert(drawn.slabs.end(), slabs.begin(), slabs.end());
}

/// Blades first, so that the body lies over what they sweep.
void addShape(StackPart& drawn, const PartType& type, const Seat& seat, Side looks) {
    for (const Blades& blades : type.shape.blades)
        addPiece(drawn, PartType{.shape = {.blades = {blades}}}, seat, looks);
    for (const RingBody& ring : type.shape.rings)
        addPiece(drawn, PartType{.shape = {.rings = {ring}, .features = type.shape.features}}, seat, looks);
}

StackPart partIn(const StackDrawing& drawing, const Part& part, const PartType& type, const Seat& seat) {
    StackPart drawn{.part = &part,
                    .turning = std::abs(shiftOf(drawing, part.id.text)) > kMovedMm,
                    .told = isTold(drawing, part.id)};
    addShape(drawn, type, seat, demandedFaceOf(drawing.frame, part.id));
    if (drawing.chain.pushedTo == Side::Turbine)
        for (Slab& slab : drawn.slabs)
            for (double* end : {&slab.z.from, &slab.z.to})
                *end += shiftOf(drawing, part.id.text);
    return drawn;
}

/// Parts on the shaft's axis of which some station is known; what does not turn first.
std::vector<StackPart> partsOf(const StackDrawing& drawing) {
    const std::set<std::string> named = partsWithStations(drawing);
    std::vector<StackPart> parts;
    for (const Part& part : drawing.frame.parts) {
        const Seat* seat = drawing.frame.seat(seatOf(part.id));
        const PartType* type = drawing.frame.type(part.type);
        if (named.contains(part.id.text) && seat && type && !seat->aside)
            parts.push_back(partIn(drawing, part, *type, *seat));
    }
    std::ranges::stable_sort(parts, {}, &StackPart::turning);
    return parts;
}

/// The faces between which the chain lies, and all that it touches on the way.
std::vector<double> chainFaces(const StackDrawing& drawing) {
    std::vector<double> faces;
    const auto add = [&](const StationId& station) {
        if (const std::optional<double> z = stationOf(drawing, station))
            faces.push_back(*z);
    };
    add(drawing.chain.from);
    add(drawing.chain.to);
    for (const Term& link : drawing.chain.links)
        if (const Dimension* dimension = drawing.frame.dimension(link.of)) {
            add(dimension->from);
            add(dimension->to);
        }
    return faces;
}

/// The section reaches over the chain and the stack that the nut clamps.
void setRange(StackScene& scene, const StackDrawing& drawing, const std::vector<double>& faces) {
    const auto [least, most] = std::ranges::minmax(faces);
    scene.from = least;
    scene.to = most;
    for (const StackPart& part : scene.parts)
        if (part.turning && part.part->id != drawing.frame.rotor)
            for (const Slab& slab : part.slabs) {
                scene.from = std::min(scene.from, slab.z.from);
                scene.to = std::max(scene.to, slab.z.to);
            }
    scene.from -= kAround;
    scene.to += kAround;
}

/// As far out as the parts of the chain reach near its faces.
void setRadius(StackScene& scene, const std::vector<double>& faces) {
    const auto [least, most] = std::ranges::minmax(faces);
    for (const StackPart& part : scene.parts)
        for (const Slab& slab : part.slabs)
            if (part.told && slab.z.to > least - 1.0 && slab.z.from < most + 1.0)
                scene.radius = std::max(scene.radius, slab.radius.to);
    scene.radius = std::min(scene.radius * 1.18, kMostRadiusMm);
}

/// Whether a slab has no face of its own: a slice of a curve, or what blades sweep.
bool isSlice(const StackPart& part, std::size_t slab) {
    return std::ranges::any_of(part.curves, [&](const StackCurve& curve) {
        const bool inside = slab >= curve.first && slab < curve.first + curve.count;
        return inside && (curve.blades || (slab > curve.first && slab + 1 < curve.first + curve.count));
    });
}

/// Faces of shapes that lie in the section; of a curve only its ends.
void addFaces(StackScene& scene) {
    scene.faces.push_back(scene.from);
    scene.faces.push_back(scene.to);
    for (const StackPart& part : scene.parts)
        for (std::size_t i = 0; i < part.slabs.size(); ++i) {
            const Slab& slab = part.slabs[i];
            if (isSlice(part, i) || !(part.turning || part.told) || slab.radius.from > scene.radius)
                continue;
            for (const double z : {slab.z.from, slab.z.to})
                if (z > scene.from && z < scene.to)
                    scene.faces.push_back(z);
        }
}

void addBareFaces(StackScene& scene, const StackDrawing& drawing) {
    for (const StationId& station : {drawing.chain.from, drawing.chain.to}) {
        const std::string name = partNameOf(station);
        const bool shown = std::ranges::any_of(
            scene.parts, [&](const StackPart& part) { return part.part->id.text == name; });
        const std::optional<double> z = stationOf(drawing, station);
        if (!shown && z)
            scene.bareFaces.push_back({name, *z, station == drawing.chain.to});
    }
}

} // namespace

bool isDiameter(const Dimension& dimension) {
    return dimension.from.text == "axis" || dimension.to.text == "axis";
}

std::string partNameOf(const StationId& station) {
    return station.text.substr(0, station.text.find('/'));
}

std::string faceNameOf(const StationId& station) {
    const std::size_t slash = station.text.find('/');
    return slash == std::string::npos ? std::string{} : station.text.substr(slash + 1);
}

const std::map<StationId, double>& stationsOf(const StackDrawing& drawing) {
    return drawing.chain.pushedTo == Side::Turbine ? drawing.towardTurbine : drawing.towardCompressor;
}

std::optional<double> stationOf(const StackDrawing& drawing, const StationId& station) {
    const auto& stations = stationsOf(drawing);
    const auto found = stations.find(station);
    return found == stations.end() ? std::nullopt : std::optional{found->second};
}

std::optional<StackScene> stackScene(const StackDrawing& drawing) {
    if (!stationOf(drawing, drawing.chain.from) || !stationOf(drawing, drawing.chain.to))
        return std::nullopt;
    StackScene scene{.parts = partsOf(drawing)};
    const std::vector<double> faces = chainFaces(drawing);
    setRange(scene, drawing, faces);
    setRadius(scene, faces);
    addFaces(scene);
    scene.faces.insert(scene.faces.end(), faces.begin(), faces.end());
    addBareFaces(scene, drawing);
    return scene;
}

} // namespace gapwise
