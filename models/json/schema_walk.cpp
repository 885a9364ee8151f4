#include "models/json/schema_walk.h"

#include "models/json/document.h"
#include "models/json/schema_words.h"

#include <nlohmann/json.hpp>

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <regex>
#include <unordered_map>

namespace gapwise::schema {

namespace {

using nlohmann::json;

constexpr int kDeepestSchema = 400; // references and branches; a schema that refers to itself ends here

const json* member(const json& object, const char* key) {
    if (!object.is_object())
        return nullptr;
    const auto found = object.find(key);
    return found == object.end() ? nullptr : &*found;
}

std::vector<std::string> keysOf(const json& object) {
    std::vector<std::string> keys;
    for (const auto& [key, value] : object.items())
        keys.push_back(key);
    return keys;
}

/// Where the walk stands, and what it has found so far.
struct Trail {
    std::string pointer{};
    Errors errors{};
    std::size_t most = kMostErrors;
    int depth = 0;

    bool full() const { return errors.size() >= most; }
};

class Walker {
public:
    Walker(const json& root, std::string_view file) : root_{root}, file_{file} {}

    void walk(const json& value, const json& schema, Trail& trail);

private:
    void walkKeywords(const json& value, const json& schema, Trail& trail);
    void walkNumber(const json& value, const json& schema, Trail& trail);
    void walkText(const json& value, const json& schema, Trail& trail);
    void walkArray(const json& value, const json& schema, Trail& trail);
    void walkItems(const json& value, const json& schema, Trail& trail);
    void walkObject(const json& value, const json& schema, Trail& trail);
    void walkRequired(const json& value, const json& schema, Trail& trail);
    void walkMembers(const json& value, const json& schema, Trail& trail);
    void walkDependencies(const json& value, const json& schema, Trail& trail);
    void walkBranches(const json& value, const json& schema, Trail& trail);
    void walkChoice(const json& value, const json& branches, Trail& trail);
    std::size_t strangeness(const json& value, const json& branch, std::size_t errors) const;
    bool explainKinds(const json& value, const json& branches, Trail& trail);
    bool explainKeys(const json& value, const json& branches, Trail& trail) const;
    bool walkPatterns(const std::string& key, const json& value, const json& schema, Trail& trail);

    void add(const Trail& at, Errors& errors, std::string found, std::string allowed) const {
        errors.push_back(Error{placeIn(file_, at.pointer), std::move(found), std::move(allowed)});
    }
    void refuse(Trail& trail, std::string found, std::string allowed) const {
        if (!trail.full())
            add(trail, trail.errors, std::move(found), std::move(allowed));
    }
    void step(const json& value, const json& schema, Trail& trail, const std::string& token) {
        const std::size_t length = trail.pointer.size();
        trail.pointer += "/" + token;
        walk(value, schema, trail);
        trail.pointer.resize(length);
    }
    Errors errorsOf(const json& value, const json& schema, const Trail& trail, std::size_t most);
    bool accepts(const json& value, const json& schema, const Trail& trail) {
        return errorsOf(value, schema, trail, 1).empty();
    }
    const json& resolved(const json& schema) const;
    bool matches(const std::string& text, const std::string& pattern);

    const json& root_;
    std::string_view file_;
    std::unordered_map<std::string, std::regex> patterns_{};
};

/// The schema that a reference inside the file names; the schema itself without one.
const json& Walker::resolved(const json& schema) const {
    const json* at = &schema;
    for (int hops = 0; hops < kDeepestSchema; ++hops) {
        const json* reference = member(*at, "$ref");
        if (!reference || !reference->is_string())
            return *at;
        const std::string& text = reference->get_ref<const std::string&>();
        if (!text.starts_with('#'))
            return *at;
        const json::json_pointer pointer{text.substr(1)};
        if (!root_.contains(pointer))
            return *at;
        at = &root_[pointer];
    }
    return *at;
}

bool Walker::matches(const std::string& text, const std::string& pattern) {
    auto found = patterns_.find(pattern);
    if (found == patterns_.end())
        found = patterns_.emplace(pattern, std::regex{pattern}).first;
    return std::regex_search(text, found->second);
}

Errors Walker::errorsOf(const json& value, const json& schema, const Trail& trail, std::size_t most) {
    Trail aside{.pointer = trail.pointer, .errors = {}, .most = most, .depth = trail.depth};
    walk(value, schema, aside);
    return std::move(aside.errors);
}

void Walker::walk(const json& value, const json& schema, Trail& trail) {
    if (trail.full() || trail.depth >= kDeepestSchema)
        return;
    ++trail.depth;
    const json& rules = resolved(schema);
    if (rules.is_boolean() && !rules.get<bool>())
        refuse(trail, quoted(value), "nothing here");
    else if (rules.is_object())
        walkKeywords(value, rules, trail);
    --trail.depth;
}

void Walker::walkKeywords(const json& value, const json& schema, Trail& trail) {
    if (const json* type = member(schema, "type"); type && !isOfType(value, *type)) {
        refuse(trail, quoted(value), typeWords(*type));
        return;
    }
    if (const json* constant = member(schema, "const"); constant && value != *constant) {
        refuse(trail, quoted(value), listed(valueWords(json::array({*constant})), "or"));
        return;
    }
    if (const json* values = member(schema, "enum");
        values && std::find(values->begin(), values->end(), value) == values->end()) {
        refuse(trail, quoted(value), listed(valueWords(*values), "or"));
        return;
    }
    if (value.is_number())
        walkNumber(value, schema, trail);
    else if (value.is_string())
        walkText(value, schema, trail);
    else if (value.is_array())
        walkArray(value, schema, trail);
    else if (value.is_object())
        walkObject(value, schema, trail);
    walkBranches(value, schema, trail);
}

void Walker::walkNumber(const json& value, const json& schema, Trail& trail) {
    const double number = value.get<double>();
    const auto limit = [&](const char* key) -> std::optional<double> {
        const json* bound = member(schema, key);
        return bound && bound->is_number() ? std::optional{bound->get<double>()} : std::nullopt;
    };
    const auto least = limit("minimum");
    const auto above = limit("exclusiveMinimum");
    const auto most = limit("maximum");
    const auto below = limit("exclusiveMaximum");
    if ((least && number < *least) || (above && number <= *above) || (most && number > *most) ||
        (below && number >= *below))
        refuse(trail, quoted(value), rangeWords(schema));
    if (const auto step = limit("multipleOf"); step && *step > 0.0 && std::remainder(number, *step) != 0.0)
        refuse(trail, quoted(value), fmt::format("a multiple of {}", *step));
}

void Walker::walkText(const json& value, const json& schema, Trail& trail) {
    const std::string& text = value.get_ref<const std::string&>();
    const auto characters = static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char letter) {
        return (static_cast<unsigned char>(letter) & 0xC0U) != 0x80U;
    }));
    const json* least = member(schema, "minLength");
    const json* most = member(schema, "maxLength");
    if ((least && characters < least->get<std::size_t>()) ||
        (most && characters > most->get<std::size_t>())) {
        refuse(trail, quoted(value), "text of " + countWords(least, most, "character"));
        return;
    }
    const json* pattern = member(schema, "pattern");
    if (!pattern || matches(text, pattern->get_ref<const std::string&>()))
        return;
    const json* description = member(schema, "description");
    refuse(trail, quoted(value),
           description && description->is_string() ? description->get<std::string>()
                                                   : "text of the form " + pattern->get<std::string>());
}

void Walker::walkArray(const json& value, const json& schema, Trail& trail) {
    const json* least = member(schema, "minItems");
    const json* most = member(schema, "maxItems");
    if ((least && value.size() < least->get<std::size_t>()) ||
        (most && value.size() > most->get<std::size_t>()))
        refuse(trail, counted(value.size(), "item"), countWords(least, most, "item"));
    if (const json* unique = member(schema, "uniqueItems"); unique && *unique == true) {
        std::vector<const json*> items;
        for (const json& item : value)
            items.push_back(&item);
        std::sort(items.begin(), items.end(), [](const json* a, const json* b) { return *a < *b; });
        const auto twice = std::adjacent_find(items.begin(), items.end(),
                                              [](const json* a, const json* b) { return *a == *b; });
        if (twice != items.end())
            refuse(trail, quoted(**twice) + " twice", "each item once");
    }
    if (const json* needed = member(schema, "contains");
        needed && std::none_of(value.begin(), value.end(),
                               [&](const json& item) { return accepts(item, *needed, trail); }))
        refuse(trail, "no item of the kind that is needed", "an array with one");
    walkItems(value, schema, trail);
}

void Walker::walkItems(const json& value, const json& schema, Trail& trail) {
    const json* items = member(schema, "items");
    const json* further = member(schema, "additionalItems");
    if (!items)
        return;
    for (std::size_t i = 0; i < value.size() && !trail.full(); ++i) {
        const bool listedOne = items->is_array() && i < items->size();
        const json* rules = items->is_array() ? (listedOne ? &(*items)[i] : further) : items;
        if (rules)
            step(value[i], *rules, trail, std::to_string(i));
    }
}

void Walker::walkObject(const json& value, const json& schema, Trail& trail) {
    walkRequired(value, schema, trail);
    const json* least = member(schema, "minProperties");
    const json* most = member(schema, "maxProperties");
    if ((least && value.size() < least->get<std::size_t>()) ||
        (most && value.size() > most->get<std::size_t>()))
        refuse(trail, counted(value.size(), "key"), countWords(least, most, "key"));
    walkMembers(value, schema, trail);
    walkDependencies(value, schema, trail);
}

void Walker::walkRequired(const json& value, const json& schema, Trail& trail) {
    const json* required = member(schema, "required");
    if (!required)
        return;
    const std::vector<std::string> names = valueWords(*required);
    for (const std::string& name : names)
        if (!value.contains(name))
            refuse(trail, fmt::format("no key {}", quotedText(name)),
                   fmt::format("an object with the key{} {}", names.size() == 1 ? "" : "s",
                               listed(names, "and")));
}

void Walker::walkMembers(const json& value, const json& schema, Trail& trail) {
    const json* known = member(schema, "properties");
    const json* further = member(schema, "additionalProperties");
    const json* names = member(schema, "propertyNames");
    const bool closed = further && further->is_boolean() && !further->get<bool>();
    for (const auto& [key, each] : value.items()) {
        if (trail.full())
            return;
        if (names && !accepts(key, *names, trail))
            refuse(trail, "the key " + quotedText(key), "keys of the form that the schema names");
        const json* rules = known ? member(*known, key.c_str()) : nullptr;
        if (rules)
            step(each, *rules, trail, pointerToken(key));
        if (walkPatterns(key, each, schema, trail) || rules)
            continue;
        if (!closed && further) {
            step(each, *further, trail, pointerToken(key));
        } else if (closed) {
            const std::vector<std::string> allowed = known ? keysOf(*known) : std::vector<std::string>{};
            Trail at{.pointer = trail.pointer + "/" + pointerToken(key)};
            add(at, trail.errors, "the unknown key " + quotedText(key),
                allowed.empty() ? "no keys" : "the keys " + listed(allowed, "and"));
        }
    }
}

/// True when a pattern of `patternProperties` knows the key.
bool Walker::walkPatterns(const std::string& key, const json& value, const json& schema, Trail& trail) {
    const json* patterns = member(schema, "patternProperties");
    if (!patterns)
        return false;
    bool known = false;
    for (const auto& [pattern, rules] : patterns->items())
        if (matches(key, pattern)) {
            known = true;
            step(value, rules, trail, pointerToken(key));
        }
    return known;
}

void Walker::walkDependencies(const json& value, const json& schema, Trail& trail) {
    const json* dependencies = member(schema, "dependencies");
    if (!dependencies)
        return;
    for (const auto& [key, needs] : dependencies->items()) {
        if (!value.contains(key))
            continue;
        if (!needs.is_array()) {
            walk(value, needs, trail);
            continue;
        }
        for (const std::string& needed : valueWords(needs))
            if (!value.contains(needed))
                refuse(trail, fmt::format("{} without {}", quotedText(key), quotedText(needed)),
                       fmt::format("the key {} beside {}", needed, key));
    }
}

void Walker::walkBranches(const json& value, const json& schema, Trail& trail) {
    if (const json* all = member(schema, "allOf"))
        for (const json& each : *all)
            walk(value, each, trail);
    if (const json* any = member(schema, "anyOf"))
        walkChoice(value, *any, trail);
    if (const json* one = member(schema, "oneOf"); one && !explainKeys(value, *one, trail)) {
        walkChoice(value, *one, trail);
        const auto fitting = std::count_if(one->begin(), one->end(),
                                           [&](const json& each) { return accepts(value, each, trail); });
        if (fitting > 1)
            refuse(trail, fmt::format("{} that fits {} forms at once", quoted(value), fitting), "one form");
    }
    if (const json* no = member(schema, "not"); no && accepts(value, *no, trail)) {
        const json* description = member(*no, "description");
        refuse(trail, quoted(value),
               description && description->is_string() ? description->get<std::string>() : "something else");
    }
    if (const json* condition = member(schema, "if")) {
        const json* rules = member(schema, accepts(value, *condition, trail) ? "then" : "else");
        if (rules)
            walk(value, *rules, trail);
    }
}

/// When every branch only wants another key, exactly one of the keys is allowed. True when that is the case,
/// whether the value is right or not.
bool Walker::explainKeys(const json& value, const json& branches, Trail& trail) const {
    std::vector<std::string> keys;
    std::vector<std::string> present;
    for (const json& branch : branches) {
        const json* required = member(branch, "required");
        if (!value.is_object() || !required || branch.size() != 1 || required->size() != 1)
            return false;
        keys.push_back(valueWords(*required).front());
        if (value.contains(keys.back()))
            present.push_back(keys.back());
    }
    if (present.size() != 1)
        refuse(trail, present.empty() ? "none of the keys " + listed(keys, "and") : listed(present, "and"),
               "one of the keys " + listed(keys, "or"));
    return true;
}

/// When every branch wants another word under the same key (`kind`), the words are what is allowed.
bool Walker::explainKinds(const json& value, const json& branches, Trail& trail) {
    if (!value.is_object())
        return false;
    for (const auto& [key, each] : value.items()) {
        std::vector<std::string> words;
        bool fits = false;
        for (const json& branch : branches) {
            const json* known = member(resolved(branch), "properties");
            const json* rules = known ? member(*known, key.c_str()) : nullptr;
            const json* constant = rules ? member(*rules, "const") : nullptr;
            if (!constant)
                break;
            words.push_back(valueWords(json::array({*constant})).front());
            fits = fits || *constant == each;
        }
        if (words.size() != branches.size() || fits)
            continue;
        Trail at{.pointer = trail.pointer + "/" + pointerToken(key)};
        add(at, trail.errors, quoted(each), listed(words, "or"));
        return true;
    }
    return false;
}

/// How far a value is from a branch. A branch whose fixed words (`"kind": "slot"`) it has is the one that was
/// meant, however much else is wrong.
std::size_t Walker::strangeness(const json& value, const json& branch, std::size_t errors) const {
    const json* known = member(resolved(branch), "properties");
    if (!known || !value.is_object())
        return errors;
    for (const auto& [key, each] : value.items()) {
        const json* rules = member(*known, key.c_str());
        const json* constant = rules ? member(*rules, "const") : nullptr;
        if (constant && *constant != each)
            errors += kMostErrors;
    }
    return errors;
}

void Walker::walkChoice(const json& value, const json& branches, Trail& trail) {
    Errors best;
    std::size_t least = 0;
    std::vector<std::string> types;
    for (const json& branch : branches) {
        Errors wrong = errorsOf(value, branch, trail, kMostErrors);
        if (wrong.empty())
            return;
        const json* type = member(resolved(branch), "type");
        if (type && !isOfType(value, *type)) {
            types.push_back(typeWords(*type));
            continue;
        }
        const std::size_t distance = strangeness(value, branch, wrong.size());
        if (best.empty() || distance < least) {
            best = std::move(wrong);
            least = distance;
        }
    }
    if (best.empty())
        refuse(trail, quoted(value), listed(types, "or"));
    else if (!explainKinds(value, branches, trail))
        for (Error& error : best)
            if (!trail.full())
                trail.errors.push_back(std::move(error));
}

} // namespace

Errors walkErrors(const json& document, const json& schema, std::string_view file, std::size_t most) {
    Trail trail{.most = most};
    Walker{schema, file}.walk(document, schema, trail);
    return std::move(trail.errors);
}

} // namespace gapwise::schema
