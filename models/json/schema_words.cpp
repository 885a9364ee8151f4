#include "models/json/schema_words.h"

#include <nlohmann/json.hpp>

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <utility>

namespace gapwise::schema {

namespace {

using nlohmann::json;

bool isOfNamedType(const json& value, std::string_view name) {
    if (name == "object")
        return value.is_object();
    if (name == "array")
        return value.is_array();
    if (name == "string")
        return value.is_string();
    if (name == "number")
        return value.is_number();
    if (name == "integer")
        return value.is_number_integer();
    if (name == "boolean")
        return value.is_boolean();
    return name == "null" && value.is_null();
}

std::string typeWord(std::string_view name) {
    constexpr std::array<std::pair<std::string_view, std::string_view>, 7> kWords{{
        {"object", "an object"},
        {"array", "an array"},
        {"string", "text"},
        {"number", "a number"},
        {"integer", "a whole number"},
        {"boolean", "true or false"},
        {"null", "null"},
    }};
    for (const auto& [type, word] : kWords)
        if (type == name)
            return std::string{word};
    return std::string{name};
}

const json* member(const json& schema, const char* key) {
    const auto found = schema.find(key);
    return found == schema.end() ? nullptr : &*found;
}

std::string plural(const json& count, std::string_view thing) {
    return fmt::format("{} {}{}", count.dump(), thing, count == 1 ? "" : "s");
}

} // namespace

std::string listed(const std::vector<std::string>& words, std::string_view last) {
    std::string list;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (i > 0)
            list += i + 1 == words.size() ? fmt::format(" {} ", last) : ", ";
        list += words[i];
    }
    return list;
}

std::string typeWords(const json& type) {
    if (type.is_string())
        return typeWord(type.get_ref<const std::string&>());
    std::vector<std::string> words;
    for (const json& each : type)
        if (each.is_string())
            words.push_back(typeWord(each.get_ref<const std::string&>()));
    return listed(words, "or");
}

bool isOfType(const json& value, const json& type) {
    if (type.is_string())
        return isOfNamedType(value, type.get_ref<const std::string&>());
    return std::any_of(type.begin(), type.end(), [&](const json& each) {
        return each.is_string() && isOfNamedType(value, each.get_ref<const std::string&>());
    });
}

std::vector<std::string> valueWords(const json& values) {
    std::vector<std::string> words;
    const auto add = [&](const json& value) {
        words.push_back(value.is_string() ? value.get<std::string>() : value.dump());
    };
    if (values.is_array())
        for (const json& value : values)
            add(value);
    else
        add(values);
    return words;
}

std::string rangeWords(const json& schema) {
    std::string low;
    std::string high;
    if (const json* least = member(schema, "minimum"))
        low = least->dump();
    if (const json* below = member(schema, "exclusiveMinimum"))
        low = "above " + below->dump();
    if (const json* most = member(schema, "maximum"))
        high = most->dump();
    if (const json* over = member(schema, "exclusiveMaximum"))
        high = "below " + over->dump();
    if (low.empty() && high.empty())
        return {};
    const bool openLow = low.starts_with("above");
    if (high.empty())
        return fmt::format("a number {}{}", openLow ? "" : "of at least ", low);
    if (low.empty())
        return fmt::format("a number {}{}", high.starts_with("below") ? "" : "of at most ", high);
    return fmt::format("a number {}{} to {}", openLow ? "" : "from ", low, high);
}

std::string countWords(const json* least, const json* most, std::string_view thing) {
    if (least && most)
        return *least == *most ? plural(*least, thing)
                               : fmt::format("{} to {}", least->dump(), plural(*most, thing));
    if (least)
        return "at least " + plural(*least, thing);
    return most ? "at most " + plural(*most, thing) : std::string{};
}

std::string counted(std::size_t count, std::string_view thing) {
    return fmt::format("{} {}{}", count, thing, count == 1 ? "" : "s");
}

} // namespace gapwise::schema
