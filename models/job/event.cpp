#include "models/job/event.h"

#include "geometry/base/overloaded.h"
#include "models/build/names.h"
#include "models/frame/names.h"
#include "models/json/document.h"

#include <fmt/format.h>
#include <fmt/ranges.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <array>
#include <vector>

namespace gapwise {

namespace {

using nlohmann::json;

// In the order of Event.
constexpr std::array<std::string_view, std::variant_size_v<Event>> kNames{
    "attitude",     "placed",      "taken_off", "turned",       "faced",    "confirmed", "looked_first",
    "home",         "rotor",       "step_done", "step_undone",  "undone",   "redone",    "person",
    "step_skipped", "hold_passed", "tightened", "loosened",     "answered", "condition", "nut_line",
    "caution_read", "note",        "reading",   "part_decided", "work"};

constexpr std::array kRoleNames{
    Named<Role>{"technician", Role::Technician}, Named<Role>{"apprentice", Role::Apprentice},
    Named<Role>{"instructor", Role::Instructor}, Named<Role>{"inspector", Role::Inspector}};

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

void addText(json& object, const char* key, const std::string& text) {
    if (!text.empty())
        object[key] = text;
}

json overrideJson(const Override& over) {
    json out{
        {"finding", over.finding}, {"by", over.by}, {"reason", over.reason}, {"role", nameOf(over.role)}};
    addText(out, "concession", over.concession);
    return out;
}

void addPassed(json& out, const HoldPointPassed& e) {
    out["step"] = e.step.text;
    out["by"] = e.by;
    addText(out, "witness", e.witness);
    if (e.loneWorker)
        out["lone_worker"] = true;
    if (!e.overrides.empty())
        out["overrides"] = json::array();
    for (const Override& over : e.overrides)
        out["overrides"].push_back(overrideJson(over));
}

void addTightened(json& out, const Tightened& e) {
    out["fastener"] = e.fastener.text;
    out["stage"] = e.stage;
    out["group"] = e.group;
    out["screw"] = e.screw;
    out["torque_Nm"] = e.torqueNm;
    out["turned"] = nameIn(kTurnNames, e.clockwise);
    out["seen_from"] = nameOf(e.seenFrom);
    addIf(out, "angle_deg", e.angle, [](Degrees angle) { return angle.value; });
    addText(out, "wrench", e.wrench);
    addText(out, "by", e.by);
}

/// What was done at a step, and who did it.
template <class Done>
void addStep(json& out, const Done& e) {
    out["step"] = e.step.text;
    if constexpr (requires { e.reason; })
        addText(out, "reason", e.reason);
    addText(out, "by", e.by);
}

void addReading(json& out, const Reading& reading) {
    out["measurement"] = reading.measurement;
    addText(out, "quantity", reading.quantity);
    out["occasion"] = nameIn(kOccasionNames, reading.occasion);
    out["values"] = reading.values;
    out["unit"] = reading.unit;
    addText(out, "method", reading.method);
    addText(out, "instrument", reading.instrument);
    addText(out, "by", reading.by);
    addText(out, "on", reading.on);
    const auto asItIs = [](double value) { return value; };
    addIf(out, "temperature_C", reading.temperatureC, asItIs);
    addIf(out, "gauge_temperature_C", reading.gaugeTemperatureC, asItIs);
}

void addDecision(json& out, const PartDecision& decision) {
    out["part"] = decision.part.text;
    out["condition"] = nameIn(kConditionWords, decision.condition);
    out["decision"] = nameIn(kFateNames, decision.fate);
    addText(out, "by", decision.by);
    addText(out, "reason", decision.reason);
    addText(out, "cause", decision.cause);
    addText(out, "concession", decision.concession);
}

void addProcedure(json& out, const Event& event) {
    std::visit(Overloaded{[&](const StepDone& e) { addStep(out, e); },
                          [&](const StepUndone& e) { addStep(out, e); },
                          [&](const StepSkipped& e) { addStep(out, e); },
                          [&](const PersonCame& e) {
                              out["name"] = e.name;
                              out["role"] = nameOf(e.role);
                          },
                          [&](const HoldPointPassed& e) { addPassed(out, e); },
                          [&](const Tightened& e) { addTightened(out, e); },
                          [&](const Loosened& e) {
                              out["fastener"] = e.fastener.text;
                              addText(out, "reason", e.reason);
                              addText(out, "by", e.by);
                          },
                          [&](const Answered& e) {
                              addStep(out, e);
                              out["question"] = e.question;
                              out["answer"] = e.answer;
                              addIf(out, "amount", e.amount, [](double amount) { return amount; });
                          },
                          [&](const ConditionStated& e) {
                              out["seat"] = e.seat.text;
                              out["state"] = e.state;
                              out["so"] = e.so;
                          },
                          [&](const NutLineRead& e) {
                              out["fastener"] = e.fastener.text;
                              out["read_deg"] = e.read.value;
                              out["stack_new_minus_old_mm"] = e.stackNewMinusOldMm;
                              addText(out, "by", e.by);
                          },
                          [&](const CautionAcknowledged& e) {
                              out["caution"] = e.caution;
                              addText(out, "by", e.by);
                          },
                          [&](const NoteWritten& e) {
                              out["words"] = e.words;
                              addText(out, "by", e.by);
                          },
                          [&](const ReadingTaken& e) { addReading(out, e.reading); },
                          [&](const PartDecided& e) { addDecision(out, e.decision); },
                          [&](const WorkStated& e) {
                              out["work"] = e.work;
                              out["so"] = e.so;
                              addText(out, "by", e.by);
                          },
                          [](const auto&) {}},
               event);
}

json fieldsOf(const Event& event) {
    json out = json::object();
    std::visit(
        Overloaded{[&](const AttitudeChanged& e) {
                       out = attitudeJson(e.attitude);
                       out["drain_confirmed"] = e.confirmed;
                       if (e.unretained)
                           out["rotor_unretained"] = true;
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
                       out["said"] = e.confirmation.said == Confirmation::Said::Before ? "before" : "after";
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
                   [&](const RotorTurned& e) { out["rotor_deg"] = e.rotor.value; }, [](const auto&) {}},
        event);
    addProcedure(out, event);
    return out;
}

/// Reads fields of one line and remembers the first that was wrong.
class EventFields {
public:
    EventFields(const json& object, std::string_view where) : object_{object}, where_{where} {}

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
    double number(const char* key) {
        const auto found = object_.find(key);
        if (found != object_.end() && found->is_number())
            return found->get<double>();
        fail(key, "a number");
        return 0.0;
    }
    int whole(const char* key) {
        const auto found = object_.find(key);
        if (found != object_.end() && found->is_number_unsigned() && found->get<std::uint64_t>() <= 1000)
            return found->get<int>();
        fail(key, "a whole number from 0 to 1000");
        return 0;
    }
    std::string maybeText(const char* key) { return has(key) ? text(key) : std::string{}; }
    bool maybeTruth(const char* key) { return has(key) && truth(key); }
    std::optional<double> maybeNumber(const char* key) {
        return has(key) ? std::optional{number(key)} : std::nullopt;
    }
    std::vector<double> numbers(const char* key) {
        const auto found = object_.find(key);
        const auto isNumber = [](const json& each) { return each.is_number(); };
        if (found != object_.end() && found->is_array() && std::ranges::all_of(*found, isNumber))
            return found->get<std::vector<double>>();
        fail(key, "a list of numbers");
        return {};
    }
    /// A word of a table; its first value when it is another.
    template <class Value, std::size_t Count>
    Value word(const char* key, const std::array<Named<Value>, Count>& table) {
        const std::string word = text(key);
        for (const auto& [name, value] : table)
            if (word == name)
                return value;
        std::vector<std::string_view> names;
        for (const auto& [name, value] : table)
            names.push_back(name);
        fail(key, fmt::format("{}", fmt::join(names, ", ")));
        return table.front().value;
    }
    Role role(const char* key) {
        const std::optional<Role> role = roleNamed(text(key));
        if (role)
            return *role;
        fail(key, "technician, apprentice, instructor or inspector");
        return Role::Technician;
    }
    bool clockwise(const char* key) {
        const std::string word = text(key);
        for (const auto& [name, clockwise] : kTurnNames)
            if (word == name)
                return clockwise;
        fail(key, "clockwise or counter_clockwise");
        return true;
    }
    /// Each of an array of objects, by its reader; none where the key is missing.
    template <class Read>
    auto each(const char* key, Read read) {
        std::vector<decltype(read(*this))> items;
        const auto found = object_.find(key);
        if (found == object_.end())
            return items;
        if (!found->is_array())
            fail(key, "a list");
        for (std::size_t i = 0; found->is_array() && i < found->size(); ++i) {
            EventFields inner{(*found)[i], fmt::format("{}/{}/{}", where_, key, i)};
            if (!(*found)[i].is_object())
                inner.error_ =
                    Error{.where = inner.where_, .found = quoted((*found)[i]), .allowed = "an object"};
            else
                items.push_back(read(inner));
            if (inner.error_ && !error_)
                error_ = inner.error_;
        }
        return items;
    }
    bool has(const char* key) const { return object_.contains(key); }
    Clock clock() { return Clock::seenFrom(side("seen_from"), degrees("clock_deg")); }
    std::optional<View> setIn() {
        const auto found = object_.find("set_in");
        if (found == object_.end())
            return std::nullopt;
        EventFields inner{*found, where_};
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

PartPlaced placedFrom(EventFields& fields) {
    PartPlaced placed{.part = PartId{fields.text("part")}, .seat = SeatId{fields.text("seat")}};
    if (fields.has("clock_deg"))
        placed.index = fields.clock();
    if (fields.has("reference_face_looks"))
        placed.referenceFaceLooks = fields.side("reference_face_looks");
    placed.setIn = fields.setIn();
    return placed;
}

SeatingConfirmed confirmedFrom(EventFields& fields) {
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

Override overrideFrom(EventFields& fields) {
    return Override{.finding = fields.text("finding"),
                    .by = fields.text("by"),
                    .reason = fields.text("reason"),
                    .role = fields.role("role"),
                    .concession = fields.maybeText("concession")};
}

HoldPointPassed passedFrom(EventFields& fields) {
    return HoldPointPassed{.step = StepId{fields.text("step")},
                           .by = fields.text("by"),
                           .witness = fields.maybeText("witness"),
                           .loneWorker = fields.maybeTruth("lone_worker"),
                           .overrides = fields.each("overrides", overrideFrom)};
}

Tightened tightenedFrom(EventFields& fields) {
    Tightened tightened{.fastener = FastenerId{fields.text("fastener")},
                        .stage = static_cast<std::size_t>(fields.whole("stage")),
                        .group = fields.whole("group"),
                        .screw = fields.whole("screw"),
                        .torqueNm = fields.number("torque_Nm"),
                        .clockwise = fields.clockwise("turned"),
                        .seenFrom = fields.side("seen_from"),
                        .wrench = fields.maybeText("wrench"),
                        .by = fields.maybeText("by")};
    if (fields.has("angle_deg"))
        tightened.angle = fields.degrees("angle_deg");
    return tightened;
}

Answered answeredFrom(EventFields& fields) {
    Answered answered{.step = StepId{fields.text("step")},
                      .question = fields.text("question"),
                      .answer = fields.text("answer"),
                      .by = fields.maybeText("by")};
    if (fields.has("amount"))
        answered.amount = fields.number("amount");
    return answered;
}

ReadingTaken readingFrom(EventFields& fields) {
    return ReadingTaken{{.measurement = fields.text("measurement"),
                         .quantity = fields.maybeText("quantity"),
                         .occasion = fields.word("occasion", kOccasionNames),
                         .values = fields.numbers("values"),
                         .unit = fields.text("unit"),
                         .method = fields.maybeText("method"),
                         .instrument = fields.maybeText("instrument"),
                         .by = fields.maybeText("by"),
                         .on = fields.maybeText("on"),
                         .temperatureC = fields.maybeNumber("temperature_C"),
                         .gaugeTemperatureC = fields.maybeNumber("gauge_temperature_C")}};
}

PartDecided decidedFrom(EventFields& fields) {
    return PartDecided{{.part = PartId{fields.text("part")},
                        .condition = fields.word("condition", kConditionWords),
                        .fate = fields.word("decision", kFateNames),
                        .by = fields.maybeText("by"),
                        .reason = fields.maybeText("reason"),
                        .cause = fields.maybeText("cause"),
                        .concession = fields.maybeText("concession")}};
}

using Maker = Event (*)(EventFields&);

// In the order of Event.
constexpr std::array<Maker, std::variant_size_v<Event>> kMakers{
    [](EventFields& f) -> Event {
        return AttitudeChanged{Attitude{f.endUp("up"), f.degrees("drain_deg"), f.side("seen_from")},
                               f.truth("drain_confirmed"), f.maybeTruth("rotor_unretained")};
    },
    [](EventFields& f) -> Event { return placedFrom(f); },
    [](EventFields& f) -> Event { return PartTakenOff{SeatId{f.text("seat")}}; },
    [](EventFields& f) -> Event { return IndexTurned{SeatId{f.text("seat")}, f.clock(), f.setIn()}; },
    [](EventFields& f) -> Event {
        return FaceTurned{SeatId{f.text("seat")}, f.side("reference_face_looks"), f.setIn()};
    },
    [](EventFields& f) -> Event { return confirmedFrom(f); },
    [](EventFields& f) -> Event { return LookedFirst{SeatId{f.text("seat")}}; },
    [](EventFields& f) -> Event { return HomeStated{SeatId{f.text("seat")}, f.truth("home")}; },
    [](EventFields& f) -> Event { return RotorTurned{f.degrees("rotor_deg")}; },
    [](EventFields& f) -> Event { return StepDone{StepId{f.text("step")}, f.maybeText("by")}; },
    [](EventFields& f) -> Event {
        return StepUndone{StepId{f.text("step")}, f.maybeText("reason"), f.maybeText("by")};
    },
    [](EventFields&) -> Event { return Undone{}; },
    [](EventFields&) -> Event { return Redone{}; },
    [](EventFields& f) -> Event { return PersonCame{f.text("name"), f.role("role")}; },
    [](EventFields& f) -> Event {
        return StepSkipped{StepId{f.text("step")}, f.text("reason"), f.maybeText("by")};
    },
    [](EventFields& f) -> Event { return passedFrom(f); },
    [](EventFields& f) -> Event { return tightenedFrom(f); },
    [](EventFields& f) -> Event {
        return Loosened{FastenerId{f.text("fastener")}, f.maybeText("reason"), f.maybeText("by")};
    },
    [](EventFields& f) -> Event { return answeredFrom(f); },
    [](EventFields& f) -> Event {
        return ConditionStated{SeatId{f.text("seat")}, f.text("state"), f.truth("so")};
    },
    [](EventFields& f) -> Event {
        return NutLineRead{FastenerId{f.text("fastener")}, f.degrees("read_deg"),
                           f.number("stack_new_minus_old_mm"), f.maybeText("by")};
    },
    [](EventFields& f) -> Event { return CautionAcknowledged{f.text("caution"), f.maybeText("by")}; },
    [](EventFields& f) -> Event { return NoteWritten{f.text("words"), f.maybeText("by")}; },
    [](EventFields& f) -> Event { return readingFrom(f); },
    [](EventFields& f) -> Event { return decidedFrom(f); },
    [](EventFields& f) -> Event { return WorkStated{f.text("work"), f.truth("so"), f.maybeText("by")}; },
};

} // namespace

std::string_view nameOf(Role role) {
    return nameIn(kRoleNames, role);
}

std::optional<Role> roleNamed(std::string_view name) {
    for (const auto& [each, role] : kRoleNames)
        if (each == name)
            return role;
    return std::nullopt;
}

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
    EventFields fields{*parsed, where};
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
