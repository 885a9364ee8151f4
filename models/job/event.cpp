#include "models/job/event.h"

#include "geometry/base/overloaded.h"
#include "models/json/document.h"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <array>

namespace gapwise {

namespace {

using nlohmann::json;

// In the order of Event.
constexpr std::array<std::string_view, std::variant_size_v<Event>> kNames{
    "attitude", "placed", "taken_off", "turned",      "faced",  "confirmed", "looked_first",
    "home",     "rotor",  "step_done", "step_undone", "undone", "redone"};

constexpr std::array<std::pair<EndUp, std::string_view>, 3> kEndsUp{
    {{EndUp::Compressor, "compressor"}, {EndUp::Turbine, "turbine"}, {EndUp::Level, "level"}}};

json viewJson(const View& view) {
    return {{"side", nameOf(view.side)}, {"top_deg", view.top.value}};
}

json attitudeJson(const Attitude& attitude) {
    for (const auto& [up, name] : kEndsUp)
        if (up == attitude.up)
            return {
                {"up", name}, {"drain_deg", attitude.drain.value}, {"seen_from", nameOf(attitude.seenFrom)}};
    return {};
}

void addClock(json& object, const Clock& clock) {
    object["clock_deg"] = clock.from(Side::Compressor).value;
    object["seen_from"] = nameOf(Side::Compressor);
}

template <class T, class Write>
void addIf(json& object, const char* key, const std::optional<T>& value, Write write) {
    if (value)
        object[key] = write(*value);
}

std::string sideText(Side side) {
    return std::string{nameOf(side)};
}

json fieldsOf(const Event& event) {
    json out = json::object();
    std::visit(Overloaded{[&](const AttitudeChanged& e) {
                              out = attitudeJson(e.attitude);
                              out["drain_confirmed"] = e.confirmed;
                          },
                          [&](const PartPlaced& e) {
                              out["part"] = e.part.text;
                              out["seat"] = e.seat.text;
                              if (e.index)
                                  addClock(out, *e.index);
                              addIf(out, "reference_face_looks", e.referenceFaceLooks, sideText);
                              addIf(out, "set_in", e.setIn, viewJson);
                          },
                          [&](const PartTakenOff& e) { out["seat"] = e.seat.text; },
                          [&](const IndexTurned& e) {
                              out["seat"] = e.seat.text;
                              addClock(out, e.index);
                              addIf(out, "set_in", e.setIn, viewJson);
                          },
                          [&](const FaceTurned& e) {
                              out["seat"] = e.seat.text;
                              out["reference_face_looks"] = nameOf(e.referenceFaceLooks);
                              addIf(out, "set_in", e.setIn, viewJson);
                          },
                          [&](const SeatingConfirmed& e) {
                              out["seat"] = e.seat.text;
                              out["by"] = e.confirmation.by;
                              out["said"] =
                                  e.confirmation.said == Confirmation::Said::Before ? "before" : "after";
                              if (e.index)
                                  addClock(out, *e.index);
                              addIf(out, "reference_face_looks", e.referenceFaceLooks, sideText);
                              addIf(out, "home", e.home, [](bool home) { return home; });
                              addIf(out, "set_in", e.setIn, viewJson);
                          },
                          [&](const LookedFirst& e) { out["seat"] = e.seat.text; },
                          [&](const HomeStated& e) {
                              out["seat"] = e.seat.text;
                              out["home"] = e.home;
                          },
                          [&](const RotorTurned& e) { out["rotor_deg"] = e.rotor.value; },
                          [&](const StepDone& e) { out["step"] = e.step.text; },
                          [&](const StepUndone& e) { out["step"] = e.step.text; }, [](const auto&) {}},
               event);
    return out;
}

/// Reads fields of one line and remembers the first that was wrong.
class Fields {
public:
    Fields(const json& object, std::string_view where) : object_{object}, where_{where} {}

    std::string text(const char* key) {
        const auto found = object_.find(key);
        if (found != object_.end() && found->is_string())
            return found->get<std::string>();
        fail(key, "text");
        return {};
    }
    Degrees degrees(const char* key) {
        const auto found = object_.find(key);
        if (found != object_.end() && found->is_number())
            return Degrees{found->get<double>()};
        fail(key, "a number of degrees");
        return {};
    }
    bool truth(const char* key) {
        const auto found = object_.find(key);
        if (found != object_.end() && found->is_boolean())
            return found->get<bool>();
        fail(key, "true or false");
        return false;
    }
    Side side(const char* key) {
        const Result<Side> side = parseSide(text(key), where_);
        if (side)
            return *side;
        fail(key, "compressor or turbine");
        return Side::Compressor;
    }
    EndUp endUp(const char* key) {
        const std::string name = text(key);
        for (const auto& [up, upName] : kEndsUp)
            if (name == upName)
                return up;
        fail(key, "compressor, turbine or level");
        return EndUp::Level;
    }
    bool has(const char* key) const { return object_.contains(key); }
    Clock clock() { return Clock::seenFrom(side("seen_from"), degrees("clock_deg")); }
    std::optional<View> setIn() {
        const auto found = object_.find("set_in");
        if (found == object_.end())
            return std::nullopt;
        Fields inner{*found, where_};
        const View view{inner.side("side"), inner.degrees("top_deg")};
        if (inner.error_ && !error_)
            error_ = inner.error_;
        return view;
    }
    const std::optional<Error>& error() const { return error_; }

    void fail(const char* key, std::string allowed) {
        const auto found = object_.is_object() ? object_.find(key) : object_.end();
        if (!error_)
            error_ = Error{.where = fmt::format("{}/{}", where_, key),
                           .found = found == object_.end() ? "nothing" : quoted(*found),
                           .allowed = std::move(allowed)};
    }

private:
    const json& object_;
    std::string where_;
    std::optional<Error> error_{};
};

PartPlaced placedFrom(Fields& fields) {
    PartPlaced placed{.part = PartId{fields.text("part")}, .seat = SeatId{fields.text("seat")}};
    if (fields.has("clock_deg"))
        placed.index = fields.clock();
    if (fields.has("reference_face_looks"))
        placed.referenceFaceLooks = fields.side("reference_face_looks");
    placed.setIn = fields.setIn();
    return placed;
}

SeatingConfirmed confirmedFrom(Fields& fields) {
    SeatingConfirmed confirmed{.seat = SeatId{fields.text("seat")}};
    confirmed.confirmation.by = fields.text("by");
    const std::string said = fields.text("said");
    if (said != "before" && said != "after")
        fields.fail("said", "before or after");
    confirmed.confirmation.said = said == "after" ? Confirmation::Said::After : Confirmation::Said::Before;
    if (fields.has("clock_deg"))
        confirmed.index = fields.clock();
    if (fields.has("reference_face_looks"))
        confirmed.referenceFaceLooks = fields.side("reference_face_looks");
    if (fields.has("home"))
        confirmed.home = fields.truth("home");
    confirmed.setIn = fields.setIn();
    return confirmed;
}

using Maker = Event (*)(Fields&);

// In the order of Event.
constexpr std::array<Maker, std::variant_size_v<Event>> kMakers{
    [](Fields& f) -> Event {
        return AttitudeChanged{Attitude{f.endUp("up"), f.degrees("drain_deg"), f.side("seen_from")},
                               f.truth("drain_confirmed")};
    },
    [](Fields& f) -> Event { return placedFrom(f); },
    [](Fields& f) -> Event { return PartTakenOff{SeatId{f.text("seat")}}; },
    [](Fields& f) -> Event { return IndexTurned{SeatId{f.text("seat")}, f.clock(), f.setIn()}; },
    [](Fields& f) -> Event {
        return FaceTurned{SeatId{f.text("seat")}, f.side("reference_face_looks"), f.setIn()};
    },
    [](Fields& f) -> Event { return confirmedFrom(f); },
    [](Fields& f) -> Event { return LookedFirst{SeatId{f.text("seat")}}; },
    [](Fields& f) -> Event { return HomeStated{SeatId{f.text("seat")}, f.truth("home")}; },
    [](Fields& f) -> Event { return RotorTurned{f.degrees("rotor_deg")}; },
    [](Fields& f) -> Event { return StepDone{StepId{f.text("step")}}; },
    [](Fields& f) -> Event { return StepUndone{StepId{f.text("step")}}; },
    [](Fields&) -> Event { return Undone{}; },
    [](Fields&) -> Event { return Redone{}; },
};

} // namespace

std::string_view nameOf(const Event& event) {
    return kNames[event.index()];
}

std::string toJsonLine(const Event& event) {
    json out = fieldsOf(event);
    out["event"] = nameOf(event);
    return out.dump();
}

Result<Event> parseEvent(std::string_view line, std::string_view where) {
    const Result<json> parsed = parseJson(line, where);
    if (!parsed)
        return parsed.errors();
    Fields fields{*parsed, where};
    const std::string name = parsed->is_object() ? fields.text("event") : std::string{};
    for (std::size_t i = 0; i < kNames.size(); ++i) {
        if (name != kNames[i])
            continue;
        Event event = kMakers[i](fields);
        if (const std::optional<Error>& error = fields.error())
            return *error;
        return event;
    }
    return Error{.where = fmt::format("{}/event", where),
                 .found = parsed->is_object() ? fmt::format("\"{}\"", name) : quoted(*parsed),
                 .allowed = fmt::format("{}", fmt::join(kNames, ", "))};
}

} // namespace gapwise
