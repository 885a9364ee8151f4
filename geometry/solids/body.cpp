#include "geometry/solids/body.h"

#include "geometry/shape/inside.h"
#include "geometry/shape/possible.h"
#include "geometry/solids/booleans.h"
#include "geometry/solids/profile.h"
#include "geometry/solids/tools.h"

#include <BRepCheck_Analyzer.hxx>
#include <Standard_Failure.hxx>
#include <TopoDS_Shape.hxx>
#include <cmath>
#include <fmt/format.h>

namespace gapwise {

namespace {

/// How well the counted volume is known, as a share of it.
constexpr double kCountedShare = 0.015;
constexpr int kCountedPoints = 60000;

/// Applies the features from `first` on that do the same, and tells where the next kind begins.
Result<TopoDS_Shape> withRun(const std::vector<TopoDS_Shape>& bodies, const Shape& shape, std::size_t first,
                             std::size_t& next, std::string_view where) {
    const Feature::Does does = shape.features[first].does;
    Tools tools;
    for (next = first; next < shape.features.size() && shape.features[next].does == does; ++next)
        tools[next] = toolsOf(shape, next);
    if (does == Feature::Does::Cut)
        return cut(bodies.front(), tools, where);
    std::vector<TopoDS_Shape> pieces = bodies;
    for (const auto& [feature, solids] : tools)
        pieces.insert(pieces.end(), solids.begin(), solids.end());
    return joined(pieces, fmt::format("{}/features/{}", where, first));
}

Result<TopoDS_Shape> withFeatures(const Shape& shape, std::string_view where) {
    Result<std::vector<TopoDS_Shape>> rings = ringSolids(shape, where);
    if (!rings)
        return rings.errors();
    std::vector<TopoDS_Shape> bodies = std::move(rings).value();
    std::size_t next = 0;
    if (bodies.size() > 1 && (shape.features.empty() || shape.features[0].does == Feature::Does::Cut)) {
        Result<TopoDS_Shape> whole = joined(bodies, fmt::format("{}/rings", where));
        if (!whole)
            return whole.errors();
        bodies = {std::move(whole).value()};
    }
    while (next < shape.features.size()) {
        Result<TopoDS_Shape> changed = withRun(bodies, shape, next, next, where);
        if (!changed)
            return changed.errors();
        bodies = {std::move(changed).value()};
    }
    return bodies.front();
}

/// One valid solid, with the volume that the numbers demand.
Errors faultsOf(const TopoDS_Shape& body, const Shape& shape, std::string_view where) {
    const int pieces = solidsIn(body);
    if (pieces != 1)
        return {{std::string{where}, fmt::format("a body of {} pieces", pieces),
                 "one body: rings and additions that touch, cuts that leave it whole"}};
    if (!BRepCheck_Analyzer{body}.IsValid())
        return {{std::string{where}, "a solid whose faces do not close",
                 "features that meet the body squarely, neither tangent nor sharing a face by a hair"}};
    const double volume = volumeOf(body);
    const double counted = countedVolume(shape, kCountedPoints);
    const double allowed = kCountedShare * counted + omittedVolume(shape);
    if (std::abs(volume - counted) > allowed)
        return {{std::string{where}, fmt::format("a solid of {:.1f} mm³", volume),
                 fmt::format("{:.1f} ± {:.1f} mm³, as counted from the numbers", counted, allowed)}};
    return {};
}

} // namespace

Result<TopoDS_Shape> bodyOf(const Shape& shape, std::string_view where) {
    if (Errors errors = impossibleSizes(shape, where); !errors.empty())
        return errors;
    Result<TopoDS_Shape> body = withFeatures(shape, where);
    if (!body)
        return body.errors();
    if (Errors faults = faultsOf(body.value(), shape, where); !faults.empty())
        return faults;
    return body;
}

std::optional<Error> failureIn(const std::function<void()>& work, std::string_view where) {
    try {
        work();
        return std::nullopt;
    } catch (const Standard_Failure& failure) {
        const char* const text = failure.GetMessageString();
        return Error{std::string{where},
                     fmt::format("sizes at which the solid builder gives up ({}: {})",
                                 failure.DynamicType()->Name(), text == nullptr ? "" : text),
                     "sizes that make a solid"};
    }
}

} // namespace gapwise
