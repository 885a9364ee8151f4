#include "models/json/fields.h"

#include "models/json/document.h"
#include "models/json/schema_words.h"

#include <nlohmann/json.hpp>

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace gapwise {

namespace {

using nlohmann::json;

std::string rangeWords(const Range& range, std::string_view what) {
    return fmt::format("{} {}{} to {}{}", what, range.aboveLeast ? "above " : "from ", range.least,
                       range.belowMost ? "below " : "", range.most);
}

std::string indexed(std::string_view pointer, std::size_t index) {
    return fmt::format("{}/{}", pointer, index);
}

/// The number when it lies in the range, else a complaint at `pointer`.
std::optional<double> numberIn(const json& value, const Range& range, std::string_view pointer,
                               Complaints& complaints) {
    if (value.is_number() && range.contains(value.get<double>()))
        return value.get<double>();
    complaints.add(pointer, quoted(value), rangeWords(range, "a number"));
    return std::nullopt;
}

std::string keyList(std::span<const std::string_view> keys) {
    std::vector<std::string> words{keys.begin(), keys.end()};
    std::sort(words.begin(), words.end());
    words.erase(std::unique(words.begin(), words.end()), words.end());
    return schema::listed(words, "and");
}

} // namespace

void Complaints::add(std::string_view pointer, std::string found, std::string allowed) {
    if (errors_.size() < kMostErrors)
        errors_.push_back(Error{placeIn(file_, pointer), std::move(found), std::move(allowed)});
}

bool Range::contains(double number) const {
    return std::isfinite(number) && (aboveLeast ? number > least : number >= least) &&
           (belowMost ? number < most : number <= most);
}

Fields::Fields(const json& value, std::string pointer, Complaints& complaints)
    : object_{value.is_object() ? &value : nullptr}, pointer_{std::move(pointer)}, complaints_{&complaints} {
    if (!object_)
        complaints.add(pointer_, quoted(value), "an object");
}

bool Fields::has(std::string_view key) const {
    return object_ && object_->contains(key);
}

bool Fields::holdsArray(std::string_view key) const {
    if (!object_)
        return false;
    const auto found = object_->find(key);
    return found != object_->end() && found->is_array();
}

const json* Fields::find(std::string_view key) {
    asked_.push_back(key);
    if (!object_)
        return nullptr;
    const auto found = object_->find(key);
    return found == object_->end() ? nullptr : &*found;
}

const json* Fields::need(std::string_view key) {
    const json* value = find(key);
    if (!value && object_)
        complaints_->add(pointer_, fmt::format("no key {}", quotedText(key)),
                         fmt::format("an object with the key {}", key));
    return value;
}

const json* Fields::needArray(std::string_view key) {
    const json* value = need(key);
    if (!value || value->is_array())
        return value;
    complain(key, quoted(*value), "an array");
    return nullptr;
}

std::string Fields::text(std::string_view key) {
    const json* value = need(key);
    if (!value)
        return {};
    if (!value->is_string() || value->get_ref<const std::string&>().empty()) {
        complain(key, quoted(*value), "text");
        return {};
    }
    return value->get_ref<const std::string&>();
}

std::optional<std::string> Fields::maybeText(std::string_view key) {
    if (!has(key))
        return asked<std::optional<std::string>>(key);
    std::string found = text(key);
    return found.empty() ? std::nullopt : std::optional{std::move(found)};
}

double Fields::number(std::string_view key, const Range& range) {
    const json* value = need(key);
    return value ? numberIn(*value, range, pointerTo(key), *complaints_).value_or(range.least) : range.least;
}

std::optional<double> Fields::maybeNumber(std::string_view key, const Range& range) {
    const json* value = find(key);
    return value ? numberIn(*value, range, pointerTo(key), *complaints_) : std::nullopt;
}

int Fields::whole(std::string_view key, int least, int most) {
    const json* value = need(key);
    if (!value)
        return least;
    const Range range{static_cast<double>(least), static_cast<double>(most)};
    if (value->is_number_integer() && range.contains(value->get<double>()))
        return value->get<int>();
    complain(key, quoted(*value), rangeWords(range, "a whole number"));
    return least;
}

std::optional<bool> Fields::maybeFlag(std::string_view key) {
    const json* value = find(key);
    if (!value)
        return std::nullopt;
    if (value->is_boolean())
        return value->get<bool>();
    complain(key, quoted(*value), "true or false");
    return std::nullopt;
}

std::array<double, 2> Fields::pair(std::string_view key, const Range& range) {
    const std::vector<double> both = numbers(key, range);
    if (both.size() == 2)
        return {both[0], both[1]};
    if (holdsArray(key))
        if (const std::size_t size = object_->find(key)->size(); size != 2)
            complain(key, schema::counted(size, "number"), "2 numbers");
    return {range.least, range.least};
}

std::array<std::optional<double>, 2> Fields::openPair(std::string_view key, const Range& range) {
    std::array<std::optional<double>, 2> both;
    const json* array = needArray(key);
    if (array && array->size() != both.size())
        complain(key, schema::counted(array->size(), "value"), "2 values, each a number or null");
    else if (array)
        for (std::size_t i = 0; i < both.size(); ++i)
            if (!(*array)[i].is_null())
                both[i] = numberIn((*array)[i], range, indexed(pointerTo(key), i), *complaints_);
    return both;
}

std::vector<double> Fields::numbers(std::string_view key, const Range& range) {
    std::vector<double> all;
    const json* array = needArray(key);
    for (std::size_t i = 0; array && i < array->size(); ++i)
        if (const auto number = numberIn((*array)[i], range, indexed(pointerTo(key), i), *complaints_))
            all.push_back(*number);
    return all;
}

std::vector<std::string> Fields::texts(std::string_view key) {
    std::vector<std::string> all;
    const json* array = needArray(key);
    for (std::size_t i = 0; array && i < array->size(); ++i) {
        const json& value = (*array)[i];
        if (value.is_string() && !value.get_ref<const std::string&>().empty())
            all.push_back(value.get_ref<const std::string&>());
        else
            complaints_->add(indexed(pointerTo(key), i), quoted(value), "text");
    }
    return all;
}

std::optional<Fields> Fields::object(std::string_view key) {
    const json* value = need(key);
    return value ? std::optional{Fields{*value, pointerTo(key), *complaints_}} : std::nullopt;
}

std::optional<Fields> Fields::maybeObject(std::string_view key) {
    const json* value = find(key);
    return value ? std::optional{Fields{*value, pointerTo(key), *complaints_}} : std::nullopt;
}

std::vector<Fields> Fields::objects(std::string_view key) {
    std::vector<Fields> all;
    const json* array = needArray(key);
    if (array)
        all.reserve(array->size());
    for (std::size_t i = 0; array && i < array->size(); ++i)
        all.emplace_back((*array)[i], indexed(pointerTo(key), i), *complaints_);
    return all;
}

std::optional<std::size_t> Fields::wordIndex(std::string_view key, std::span<const std::string_view> names) {
    const json* value = need(key);
    if (!value)
        return std::nullopt;
    if (value->is_string())
        for (std::size_t i = 0; i < names.size(); ++i)
            if (value->get_ref<const std::string&>() == names[i])
                return i;
    complain(key, quoted(*value), schema::listed({names.begin(), names.end()}, "or"));
    return std::nullopt;
}

std::vector<std::size_t> Fields::wordIndices(std::string_view key, std::span<const std::string_view> names) {
    std::vector<std::size_t> indices;
    const json* array = needArray(key);
    for (std::size_t i = 0; array && i < array->size(); ++i) {
        const json& value = (*array)[i];
        const auto found = value.is_string()
                               ? std::find(names.begin(), names.end(), value.get_ref<const std::string&>())
                               : names.end();
        if (found != names.end())
            indices.push_back(static_cast<std::size_t>(found - names.begin()));
        else
            complaints_->add(indexed(pointerTo(key), i), quoted(value),
                             schema::listed({names.begin(), names.end()}, "or"));
    }
    return indices;
}

void Fields::finish() {
    if (!object_)
        return;
    for (const auto& [key, value] : object_->items())
        if (std::find(asked_.begin(), asked_.end(), key) == asked_.end())
            complaints_->add(pointer_ + "/" + pointerToken(key), "the unknown key " + quotedText(key),
                             "the keys " + keyList(asked_));
}

} // namespace gapwise
