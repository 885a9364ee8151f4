#include "viewer/workplace/standing.h"

#include "models/json/document.h"

#include <nlohmann/json.hpp>

#include <array>
#include <utility>

namespace gapwise {

namespace {

using nlohmann::json;

constexpr std::array<std::pair<LookKind, std::string_view>, 6> kLooks{
    {{LookKind::WhereIStand, "where_i_stand"},
     {LookKind::FromCompressor, "from_compressor"},
     {LookKind::FromTurbine, "from_turbine"},
     {LookKind::Beside, "beside"},
     {LookKind::Free, "free"},
     {LookKind::BothEnds, "both_ends"}}};

constexpr std::array<std::pair<Section::Kind, std::string_view>, 2> kSections{
    {{Section::Kind::Half, "half"}, {Section::Kind::Quarter, "quarter"}}};

constexpr std::array<std::pair<MeasuresPage::Kind, std::string_view>, 6> kPages{
    {{MeasuresPage::Kind::Readings, "readings"},
     {MeasuresPage::Kind::Parts, "parts"},
     {MeasuresPage::Kind::Stack, "stack"},
     {MeasuresPage::Kind::Effects, "effects"},
     {MeasuresPage::Kind::Choose, "choose"},
     {MeasuresPage::Kind::Causes, "causes"}}};

/// A number in [low, high], or `usual`.
double numberIn(const json& object, const char* key, std::array<double, 2> range, double usual) {
    const auto found = object.find(key);
    if (found == object.end() || !found->is_number())
        return usual;
    const double number = found->get<double>();
    return number >= range[0] && number <= range[1] ? number : usual;
}

std::string textIn(const json& object, const char* key) {
    const auto found = object.find(key);
    return found != object.end() && found->is_string() ? found->get<std::string>() : std::string{};
}

/// Earlier programs knew one cut only, and said whether it was made.
std::optional<Section> sectionIn(const json& object) {
    constexpr std::array<double, 2> kRound{0.0, 360.0};
    if (object.value("section", json{}) == json(true))
        return Section{};
    for (const auto& [kind, name] : kSections)
        if (textIn(object, "section") == name) {
            const double usual = Section{}.removed.from(Side::Compressor).value;
            return Section{.kind = kind,
                           .removed = Clock::seenFrom(
                               Side::Compressor, Degrees{numberIn(object, "section_deg", kRound, usual)})};
        }
    return std::nullopt;
}

std::optional<MeasuresPage> measuresIn(const json& object) {
    for (const auto& [kind, name] : kPages)
        if (textIn(object, "measures") == name) {
            MeasuresPage page{.kind = kind};
            if (const std::string chain = textIn(object, "chain"); !chain.empty())
                page.chain = QuantityId{chain};
            return page;
        }
    return std::nullopt;
}

void addMeasures(const MeasuresPage& page, json& out) {
    for (const auto& [kind, name] : kPages)
        if (kind == page.kind)
            out["measures"] = name;
    if (page.chain)
        out["chain"] = page.chain->text;
}

} // namespace

std::string toText(const PersonStanding& standing) {
    const Standpoint& at = standing.standpoint;
    json out{{"journal", standing.journal.string()},
             {"stand_deg", at.observer.stand.value},
             {"level_side", nameOf(at.observer.levelSide)},
             {"azimuth_deg", at.freeAzimuth.value},
             {"elevation_deg", at.freeElevation.value},
             {"pulled_apart", at.pulledApart},
             {"zoom", at.zoom},
             {"section", false},
             {"casings", at.casings}};
    for (const auto& [kind, name] : kSections)
        if (at.section && at.section->kind == kind)
            out["section"] = name;
    if (at.section)
        out["section_deg"] = at.section->removed.from(Side::Compressor).value;
    for (const auto& [kind, name] : kLooks)
        if (kind == at.kind)
            out["look"] = name;
    if (standing.inHand)
        out["in_hand"] = standing.inHand->text;
    if (standing.fastenerInHand)
        out["fastener"] = standing.fastenerInHand->text;
    if (standing.measurementInHand)
        out["measurement"] = standing.measurementInHand->text;
    if (standing.step)
        out["step"] = standing.step->text;
    if (standing.about)
        out["about"] = standing.about->text;
    if (standing.measures)
        addMeasures(*standing.measures, out);
    return out.dump() + "\n";
}

std::optional<PersonStanding> standingIn(std::string_view text) {
    const Result<json> parsed = parseJson(text, "open job");
    if (!parsed || !parsed->is_object() || textIn(*parsed, "journal").empty())
        return std::nullopt;
    constexpr std::array<double, 2> kRound{-360.0, 360.0};
    constexpr std::array<double, 2> kUpright{-90.0, 90.0};
    PersonStanding standing{.journal = textIn(*parsed, "journal")};
    Standpoint& at = standing.standpoint;
    const std::string look = textIn(*parsed, "look");
    for (const auto& [kind, name] : kLooks)
        if (name == look)
            at.kind = kind;
    at.observer.stand = Degrees{numberIn(*parsed, "stand_deg", kRound, 0.0)};
    if (textIn(*parsed, "level_side") == nameOf(Side::Turbine))
        at.observer.levelSide = Side::Turbine;
    at.freeAzimuth = Degrees{numberIn(*parsed, "azimuth_deg", kRound, at.freeAzimuth.value)};
    at.freeElevation = Degrees{numberIn(*parsed, "elevation_deg", kUpright, at.freeElevation.value)};
    at.pulledApart = numberIn(*parsed, "pulled_apart", {0.0, 1.0}, 0.0);
    at.zoom = numberIn(*parsed, "zoom", {kLeastZoom, kMostZoom}, 1.0);
    at.section = sectionIn(*parsed);
    at.casings = parsed->value("casings", json{}) == json(true);
    if (const std::string part = textIn(*parsed, "in_hand"); !part.empty())
        standing.inHand = PartId{part};
    if (const std::string fastener = textIn(*parsed, "fastener"); !fastener.empty())
        standing.fastenerInHand = FastenerId{fastener};
    if (const std::string measurement = textIn(*parsed, "measurement"); !measurement.empty())
        standing.measurementInHand = MeasurementId{measurement};
    if (const std::string step = textIn(*parsed, "step"); !step.empty())
        standing.step = StepId{step};
    if (const std::string part = textIn(*parsed, "about"); !part.empty())
        standing.about = PartId{part};
    standing.measures = measuresIn(*parsed);
    return standing;
}

} // namespace gapwise
