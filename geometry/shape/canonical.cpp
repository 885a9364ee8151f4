#include "geometry/shape/canonical.h"

#include "geometry/base/overloaded.h"

#include <fmt/format.h>
#include <iterator>

namespace gapwise {

namespace {

std::string textOf(const Span& span) {
    return fmt::format("{}:{}", span.from, span.to);
}

std::string textOf(const Diameter& d) {
    return fmt::format("d{}:{}", d.atFrom, d.atTo);
}

std::string textOf(const QuarterEllipse& c) {
    return fmt::format("e{}:{}:{}:{}", c.r0, c.r1, c.z0, c.z1);
}

std::string textOf(const Outline& outline) {
    return std::visit(Overloaded{
                          [](const Diameter& d) { return textOf(d); },
                          [](const QuarterEllipse& c) { return textOf(c); },
                          [](const AcrossFlats& h) { return fmt::format("h{}", h.widthMm); },
                      },
                      outline);
}

std::string textOf(const EdgeBreak& edge) {
    return fmt::format("edge {} {} {} {} {}\n", edge.kind == EdgeBreak::Kind::Round ? "round" : "chamfer",
                       edge.diameterMm, edge.zMm, edge.sizeMm, edge.chamferAngle.value);
}

std::string textOf(const Blades& b) {
    const std::string inlet = b.inletEdgeZ ? textOf(*b.inletEdgeZ) : "none";
    return fmt::format("blades {} {} {} {} {}:{} {} {} {} {}\n", b.count, b.thicknessMm, b.first.value,
                       b.lean.value, b.zFrom, b.zTo, b.reach, textOf(b.hub), textOf(b.edge), inlet);
}

std::string textOfAside(double mm) {
    return mm == 0.0 ? std::string{} : fmt::format(" aside {}", mm);
}

std::string textOf(const FeatureForm& form) {
    return std::visit(
        Overloaded{
            [](const RadialHole& h) {
                return fmt::format("radial {} {} {}{}", h.diameterMm, textOf(h.r), h.zMm,
                                   textOfAside(h.asideMm));
            },
            [](const AxialHole& h) {
                return fmt::format("axial {} {} {}", h.diameterMm, h.circleRadiusMm, textOf(h.z));
            },
            [](const InclinedHole& h) {
                return fmt::format("inclined {} {}:{} {}:{}", h.diameterMm, h.fromR, h.fromZ, h.toR, h.toZ);
            },
            [](const Slot& s) {
                return fmt::format("slot {} {} {}{}", s.widthMm, textOf(s.r), textOf(s.z),
                                   textOfAside(s.asideMm));
            },
            [](const HexHole& h) {
                return fmt::format("hex {} {} {}", h.widthMm, h.circleRadiusMm, textOf(h.z));
            },
            [](const Vane& v) {
                return fmt::format("vane {} {} {} {}", v.thicknessMm, textOf(v.r), v.lead.value, textOf(v.z));
            },
            [](const Sector& s) {
                return fmt::format("sector {} {} {}", s.angle.value, textOf(s.r), textOf(s.z));
            },
            [](const Groove& g) {
                return fmt::format("groove {} {} {}", textOf(g.bore), textOf(g.outside), textOf(g.z));
            },
            [](const SteppedJoint& j) { return fmt::format("joint {} {}", j.gapMm, j.overlapMm); },
            [](const ArrowMark& a) {
                return fmt::format("arrow {} {} {} {}", textOf(a.r), a.widthMm, a.depthMm, a.faceZMm);
            },
            [](const LetterMark& l) {
                return fmt::format("letters {} {} {} {} {} {}", l.text, l.heightMm, l.radiusMm, l.depthMm,
                                   l.faceZMm, l.looksToReference);
            },
        },
        form);
}

} // namespace

std::string canonicalText(const Shape& shape) {
    std::string text;
    const auto out = std::back_inserter(text);
    for (const RingBody& ring : shape.rings)
        fmt::format_to(out, "ring {} {} {}\n", textOf(ring.bore), textOf(ring.outside), textOf(ring.z));
    for (const EdgeBreak& edge : shape.edges)
        text += textOf(edge);
    for (const Blades& blades : shape.blades)
        text += textOf(blades);
    for (const Feature& feature : shape.features)
        fmt::format_to(out, "{} {} {} {}\n", feature.does == Feature::Does::Add ? "add" : "cut",
                       textOf(feature.form), feature.offset.value, feature.count);
    for (const Thread& thread : shape.threads)
        fmt::format_to(out, "thread {} {} {} {}\n", thread.diameterMm, thread.pitchMm, textOf(thread.z),
                       thread.leftHand ? "left" : "right");
    return text;
}

} // namespace gapwise
