#include "models/frame/frame_errors.h"
#include "models/frame/known_ids.h"
#include "models/frame/names.h"
#include "models/json/schema_words.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>

namespace gapwise {

namespace {

constexpr std::size_t kFourPoints = 4;
constexpr std::size_t kTwoPlanes = 2;

std::string asText(const Window& window) {
    const auto end = [](const std::optional<double>& value) {
        return value ? fmt::format("{}", *value) : std::string{"open"};
    };
    return fmt::format("[{}, {}]", end(window.least), end(window.most));
}

/// Every value of the inner window is one of the outer.
bool isWithin(const Window& inner, const Window& outer) {
    const bool least = !outer.least || (inner.least && *inner.least >= *outer.least);
    const bool most = !outer.most || (inner.most && *inner.most <= *outer.most);
    return least && most;
}

std::string listedIds(const auto& things, auto nameOfThing) {
    std::vector<std::string> names;
    for (const auto& thing : things)
        names.push_back(nameOfThing(thing));
    return names.empty() ? "none" : schema::listed(names, "or");
}

/// What there is to refer to.
struct References {
    KnownIds parts;
    KnownIds steps;
    KnownIds quantities;
};

/// Checks one quantity of a measurement.
class QuantityChecker {
public:
    QuantityChecker(const Measurement& measurement, const Quantity& quantity, const References& known,
                    Complaints& complaints)
        : measurement_{measurement}, quantity_{quantity}, known_{known}, complaints_{complaints} {}

    void check() const {
        checkPart();
        checkPoints();
        checkLimits();
        checkTerms();
        checkExpectations();
        checkFourPoint();
        checkUnbalance();
        checkPinPlay();
        if (quantity_.ringGap)
            needUnit(Unit::Millimetres, "ring_gap");
    }

private:
    void complain(std::string_view key, std::string found, std::string allowed) const {
        complaints_.add(fmt::format("{}/{}", quantity_.pointer, key), std::move(found), std::move(allowed));
    }

    void needUnit(Unit unit, std::string_view plan) const {
        if (quantity_.unit != unit)
            complain("unit", std::string{nameOf(quantity_.unit)},
                     fmt::format("{}, as a quantity with {} has", nameOf(unit), plan));
    }

    void needPoints(std::size_t count, std::string_view plan) const {
        if (quantity_.points.size() != count)
            complain("points", schema::counted(quantity_.points.size(), "point"),
                     fmt::format("{} points, as a quantity with {} has", count, plan));
    }

    void checkPart() const {
        if (quantity_.part.empty())
            return;
        known_.parts.need(quantity_.part.text, quantity_.pointer + "/part", complaints_);
        const bool measured =
            std::ranges::find(measurement_.parts, quantity_.part) != measurement_.parts.end();
        if (known_.parts.has(quantity_.part.text) && !measured)
            complain(
                "part", quotedId(quantity_.part.text),
                fmt::format("a part that {} judges: {}", measurement_.id.text,
                            listedIds(measurement_.parts, [](const PartId& part) { return part.text; })));
    }

    void checkPoints() const {
        const auto planes = static_cast<std::size_t>(quantity_.planes);
        const std::size_t points = quantity_.points.size();
        if (planes != 0 && (points == 0 || points % planes != 0))
            complain("planes", fmt::format("{} with {}", planes, schema::counted(points, "point")),
                     "planes that have the same number of points each");
        if (planes == 0 && quantity_.ovalityMost)
            complain("ovality_most", "ovality without planes", "planes and their points");
        if (planes < kTwoPlanes && quantity_.taperMost)
            complain("taper_most", "taper without planes", "at least 2 planes and their points");
    }

    void checkLimits() const {
        const Limits& limits = quantity_.limits;
        const bool none = limits.fresh.empty() && limits.service.empty();
        if (limits.source.empty())
            return;
        if (none && !quantity_.unbalance)
            complain("limits", "neither fresh nor service", "at least one of both");
        checkOrder(limits.fresh, "limits/fresh");
        checkOrder(limits.service, "limits/service");
        if (!limits.fresh.empty() && !limits.service.empty() && !isWithin(limits.fresh, limits.service))
            complain("limits/fresh", asText(limits.fresh),
                     fmt::format("a window within service, {}", asText(limits.service)));
        if (limits.method.empty())
            complain("limits", "limits without a method", fmt::format("method: {}", methods()));
        else if (!measurement_.method(limits.method))
            complain("limits/method", quotedId(limits.method), methods());
    }

    std::string methods() const {
        return fmt::format("a method of {}: {}", measurement_.id.text,
                           listedIds(measurement_.methods, [](const Method& method) { return method.id; }));
    }

    void checkOrder(const Window& window, std::string_view key) const {
        if (window.least && window.most && *window.least > *window.most)
            complain(key, asText(window), "[least, most] with least ≤ most");
    }

    void checkTerms() const {
        for (std::size_t i = 0; i < quantity_.from.size(); ++i)
            known_.quantities.need(quantity_.from[i].of.text, itemOf(quantity_.pointer, "from", i),
                                   complaints_);
        if (!quantity_.agrees)
            return;
        known_.quantities.need(quantity_.agrees->with.text, quantity_.pointer + "/agrees/with", complaints_);
        if (quantity_.agrees->with == quantity_.id)
            complain("agrees/with", quotedId(quantity_.id.text), "another quantity");
    }

    void checkExpectations() const {
        for (std::size_t i = 0; i < quantity_.expectations.size(); ++i) {
            const Expectation& expectation = quantity_.expectations[i];
            const std::string pointer = itemOf(quantity_.pointer, "expectations", i);
            for (std::size_t k = 0; k < expectation.renewed.size(); ++k)
                known_.parts.need(expectation.renewed[k].text, itemOf(pointer, "renewed", k), complaints_);
            if (expectation.renewed.empty() && expectation.work.empty())
                complaints_.add(pointer, "neither renewed nor work", "what it follows from");
        }
    }

    void checkFourPoint() const {
        if (!quantity_.fourPoint)
            return;
        needUnit(Unit::Millimetres, "four_point");
        needPoints(kFourPoints, "four_point");
    }

    void checkUnbalance() const {
        if (!quantity_.unbalance)
            return;
        needUnit(Unit::GramMillimetres, "unbalance");
        needPoints(kTwoPlanes, "unbalance");
        const UnbalancePlan& plan = *quantity_.unbalance;
        if (!(plan.compressorPlaneMm > plan.turbinePlaneMm))
            complain("unbalance/compressor_plane_z_mm", fmt::format("{}", plan.compressorPlaneMm),
                     fmt::format("more than turbine_plane_z_mm, {}", plan.turbinePlaneMm));
    }

    void checkPinPlay() const {
        if (!quantity_.pinPlay)
            return;
        needUnit(Unit::Degrees, "pin_play");
        const PinPlayPlan& plan = *quantity_.pinPlay;
        if (!(plan.notchMm > plan.pinMm))
            complain("pin_play/notch_mm", fmt::format("{}", plan.notchMm),
                     fmt::format("wider than the pin, {}", plan.pinMm));
        if (!(plan.radiusMm > plan.notchMm))
            complain("pin_play/radius_mm", fmt::format("{}", plan.radiusMm),
                     fmt::format("more than the notch is wide, {}", plan.notchMm));
    }

    const Measurement& measurement_;
    const Quantity& quantity_;
    const References& known_;
    Complaints& complaints_;
};

/// Complains about quantities that are reckoned from themselves, once a circle.
class TermCircles {
public:
    TermCircles(const Frame& frame, Complaints& complaints) : frame_{frame}, complaints_{complaints} {}

    void follow(const Quantity& quantity) {
        if (done_.contains(quantity.id))
            return;
        if (const auto start = std::ranges::find(path_, quantity.id); start != path_.end()) {
            std::string circle;
            for (auto each = start; each != path_.end(); ++each)
                circle += each->text + " from ";
            complaints_.add(quantity.pointer + "/from", circle + quantity.id.text,
                            "terms that end at quantities that are read");
            return;
        }
        path_.push_back(quantity.id);
        for (const Term& term : quantity.from)
            if (const Quantity* next = frame_.quantity(term.of).quantity)
                follow(*next);
        path_.pop_back();
        done_.insert(quantity.id);
    }

private:
    const Frame& frame_;
    Complaints& complaints_;
    std::vector<QuantityId> path_{};
    std::set<QuantityId> done_{};
};

void checkMeasurement(const Measurement& measurement, const References& known, Complaints& complaints) {
    if (measurement.before)
        known.steps.need(measurement.before->text, measurement.pointer + "/before", complaints);
    std::set<std::string> methods;
    for (std::size_t i = 0; i < measurement.methods.size(); ++i)
        if (const std::string& id = measurement.methods[i].id; !methods.insert(id).second)
            complaints.add(itemOf(measurement.pointer, "methods", i) + "/id", quotedId(id),
                           "an id that no other method of this measurement has");
    if (!measurement.quantities.empty() && measurement.methods.empty())
        complaints.add(measurement.pointer, "quantities without a method", "at least 1 method");
    for (const Quantity& quantity : measurement.quantities)
        QuantityChecker{measurement, quantity, known, complaints}.check();
}

} // namespace

void measurementErrors(const Frame& frame, Complaints& complaints) {
    References known{.parts = knownIds("part", "parts", frame.parts),
                     .steps = knownIds("step", "steps", frame.steps),
                     .quantities = KnownIds{"quantity", "quantities"}};
    for (const Measurement& measurement : frame.measurements)
        for (const Quantity& quantity : measurement.quantities)
            known.quantities.add(quantity.id.text, quantity.pointer, complaints);
    for (const Measurement& measurement : frame.measurements)
        checkMeasurement(measurement, known, complaints);
    TermCircles circles{frame, complaints};
    for (const Measurement& measurement : frame.measurements)
        for (const Quantity& quantity : measurement.quantities)
            circles.follow(quantity);
}

} // namespace gapwise
