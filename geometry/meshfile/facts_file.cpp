#include "geometry/meshfile/facts_file.h"

#include <nlohmann/json.hpp>

namespace gapwise {

namespace {

constexpr std::string_view kFormat = "gapwise.mesh/1";

nlohmann::ordered_json arrayOf(const Vec3& v) {
    return nlohmann::ordered_json::array({v.x, v.y, v.z});
}

Vec3 vectorFrom(const nlohmann::json& array) {
    return {array.at(0).get<double>(), array.at(1).get<double>(), array.at(2).get<double>()};
}

StoredFacts factsFrom(const nlohmann::json& json) {
    StoredFacts stored;
    stored.glbHash = json.at("glb_sha256").get<std::string>();
    MeshFacts& facts = stored.facts;
    facts.contentKey = json.at("content_key").get<std::string>();
    facts.sagittaMm = json.at("sagitta_mm").get<double>();
    facts.volumeMm3 = json.at("volume_mm3").get<double>();
    facts.massKg = json.at("mass_kg").get<double>();
    facts.centreMm = vectorFrom(json.at("centre_mm"));
    facts.bounds = {vectorFrom(json.at("bounds_mm").at(0)), vectorFrom(json.at("bounds_mm").at(1))};
    facts.triangles = json.at("triangles").get<std::size_t>();
    return stored;
}

} // namespace

std::string factsText(const StoredFacts& stored) {
    const MeshFacts& facts = stored.facts;
    nlohmann::ordered_json json;
    json["format"] = kFormat;
    json["content_key"] = facts.contentKey;
    json["glb_sha256"] = stored.glbHash;
    json["sagitta_mm"] = facts.sagittaMm;
    json["volume_mm3"] = facts.volumeMm3;
    json["mass_kg"] = facts.massKg;
    json["centre_mm"] = arrayOf(facts.centreMm);
    json["bounds_mm"] =
        nlohmann::ordered_json::array({arrayOf(facts.bounds.low), arrayOf(facts.bounds.high)});
    json["triangles"] = facts.triangles;
    return json.dump(2) + "\n";
}

Result<StoredFacts> parseFacts(const std::string& text, std::string_view where) {
    try {
        const nlohmann::json json = nlohmann::json::parse(text);
        if (json.at("format").get<std::string>() == kFormat)
            return factsFrom(json);
        return Error{std::string{where}, json.at("format").dump(), "\"gapwise.mesh/1\" as format"};
    } catch (const nlohmann::json::exception& failure) {
        return Error{std::string{where}, failure.what(), "the facts of a mesh"};
    }
}

} // namespace gapwise
