#include "geometry/solids/booleans.h"

#include <BRepAlgoAPI_BooleanOperation.hxx>
#include <BRepAlgoAPI_Cut.hxx>
#include <BRepAlgoAPI_Fuse.hxx>
#include <BRepGProp.hxx>
#include <GProp_GProps.hxx>
#include <ShapeUpgrade_UnifySameDomain.hxx>
#include <Standard_Failure.hxx>
#include <TopExp_Explorer.hxx>
#include <TopTools_ListOfShape.hxx>
#include <TopoDS_Shape.hxx>
#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <sstream>

namespace gapwise {

namespace {

/// Share of the volume by which the bounds may be left: properties are integrated numerically.
constexpr double kVolumeSlack = 1e-4;

std::string messagesOf(const BRepAlgoAPI_BooleanOperation& operation) {
    std::ostringstream text;
    operation.GetReport()->Dump(text);
    std::string line = text.str();
    std::replace(line.begin(), line.end(), '\n', ' ');
    return line;
}

/// The library's own complaints.
Errors complaintsOf(const BRepAlgoAPI_BooleanOperation& operation, std::string_view where) {
    if (!operation.HasErrors() && !operation.HasWarnings())
        return {};
    return {
        {std::string{where},
         fmt::format("faces that the solid builder cannot join or cut cleanly ({})", messagesOf(operation)),
         "features that meet the body squarely, neither tangent nor sharing a face by a hair"}};
}

Errors outOfBounds(double volume, double low, double high, std::string_view where) {
    const double slack = kVolumeSlack * std::max(high, 1.0);
    if (volume >= low - slack && volume <= high + slack && volume > 0.0)
        return {};
    return {{std::string{where}, fmt::format("a solid of {:.2f} mm³", volume),
             fmt::format("between {:.2f} and {:.2f} mm³, as its pieces demand", low, high)}};
}

/// Faces that lie on one surface become one, edges on one curve too. Where the library cannot do that, or
/// loses something on the way, the shape stays as it is: it is right already, only in more pieces.
TopoDS_Shape simplified(const TopoDS_Shape& shape) {
    try {
        ShapeUpgrade_UnifySameDomain unify{shape, true, true, false};
        unify.Build();
        const double before = volumeOf(shape);
        if (std::abs(volumeOf(unify.Shape()) - before) <= kVolumeSlack * before)
            return unify.Shape();
    } catch (const Standard_Failure&) {
        return shape;
    }
    return shape;
}

bool leavesATrace(BRepAlgoAPI_Cut& operation, const TopoDS_Shape& tool) {
    for (TopExp_Explorer faces{tool, TopAbs_FACE}; faces.More(); faces.Next()) {
        if (!operation.IsDeleted(faces.Current()))
            return true;
    }
    return false;
}

/// One error for each feature none of whose tools shaped the body.
Errors idleFeatures(BRepAlgoAPI_Cut& operation, const Tools& tools, std::string_view where) {
    Errors errors;
    for (const auto& [feature, solids] : tools) {
        const bool works = std::any_of(solids.begin(), solids.end(), [&](const TopoDS_Shape& solid) {
            return leavesATrace(operation, solid);
        });
        if (!works)
            errors.push_back({fmt::format("{}/features/{}", where, feature), "a cut that meets no material",
                              "a cut that reaches the body"});
    }
    return errors;
}

Result<TopoDS_Shape> joinedAtOnce(const std::vector<TopoDS_Shape>& solids, std::string_view where) {
    TopTools_ListOfShape arguments;
    TopTools_ListOfShape tools;
    double sum = 0.0;
    double largest = 0.0;
    for (const TopoDS_Shape& solid : solids) {
        (arguments.IsEmpty() ? arguments : tools).Append(solid);
        const double volume = volumeOf(solid);
        sum += volume;
        largest = std::max(largest, volume);
    }
    BRepAlgoAPI_Fuse fuse;
    fuse.SetArguments(arguments);
    fuse.SetTools(tools);
    fuse.Build();
    if (Errors errors = complaintsOf(fuse, where); !errors.empty())
        return errors;
    TopoDS_Shape result = simplified(fuse.Shape());
    if (Errors errors = outOfBounds(volumeOf(result), largest, sum, where); !errors.empty())
        return errors;
    return result;
}

Result<TopoDS_Shape> cutAtOnce(const TopoDS_Shape& body, const Tools& tools, std::string_view where) {
    TopTools_ListOfShape arguments;
    arguments.Append(body);
    TopTools_ListOfShape cutters;
    double sum = 0.0;
    for (const auto& [feature, solids] : tools) {
        for (const TopoDS_Shape& solid : solids) {
            cutters.Append(solid);
            sum += volumeOf(solid);
        }
    }
    BRepAlgoAPI_Cut operation;
    operation.SetArguments(arguments);
    operation.SetTools(cutters);
    operation.Build();
    const std::string place =
        tools.size() == 1 ? fmt::format("{}/features/{}", where, tools.begin()->first) : std::string{where};
    if (Errors errors = complaintsOf(operation, place); !errors.empty())
        return errors;
    if (Errors errors = idleFeatures(operation, tools, where); !errors.empty())
        return errors;
    const double before = volumeOf(body);
    TopoDS_Shape result = simplified(operation.Shape());
    if (Errors errors = outOfBounds(volumeOf(result), before - sum, before, place); !errors.empty())
        return errors;
    return result;
}

} // namespace

double volumeOf(const TopoDS_Shape& shape) {
    GProp_GProps properties;
    BRepGProp::VolumeProperties(shape, properties);
    return properties.Mass();
}

int solidsIn(const TopoDS_Shape& shape) {
    int count = 0;
    for (TopExp_Explorer solids{shape, TopAbs_SOLID}; solids.More(); solids.Next())
        ++count;
    return count;
}

Result<TopoDS_Shape> joined(const std::vector<TopoDS_Shape>& solids, std::string_view where) {
    if (solids.size() == 1)
        return solids.front();
    Result<TopoDS_Shape> whole = joinedAtOnce(solids, where);
    if (whole || solids.size() == 2)
        return whole;
    // What is too much for the library together, it may do one after another.
    TopoDS_Shape grown = solids.front();
    for (std::size_t i = 1; i < solids.size(); ++i) {
        Result<TopoDS_Shape> next = joinedAtOnce({grown, solids[i]}, where);
        if (!next)
            return next;
        grown = std::move(next).value();
    }
    return grown;
}

Result<TopoDS_Shape> cut(const TopoDS_Shape& body, const Tools& tools, std::string_view where) {
    Result<TopoDS_Shape> whole = cutAtOnce(body, tools, where);
    // An error with a pointer below `where` names features that cut nothing: that is an answer.
    if (whole || tools.size() == 1 || whole.errors().front().where != where)
        return whole;
    TopoDS_Shape left = body;
    for (const auto& tool : tools) {
        Result<TopoDS_Shape> next = cutAtOnce(left, {tool}, where);
        if (!next)
            return next;
        left = std::move(next).value();
    }
    return left;
}

} // namespace gapwise
