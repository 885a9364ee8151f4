#pragma once

#include "geometry/base/result.h"

#include <nlohmann/json_fwd.hpp>

#include <array>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace gapwise {

/// Gathers what is wrong with one file while it is read on.
class Complaints {
public:
    explicit Complaints(std::string_view file) : file_{file} {}

    /// At most kMostErrors are kept.
    void add(std::string_view pointer, std::string found, std::string allowed);
    bool empty() const { return errors_.empty(); }
    Errors take() { return std::move(errors_); }

private:
    std::string file_;
    Errors errors_{};
};

/// The numbers that a key may have.
struct Range {
    double least = 0.0;
    double most = 0.0;
    bool aboveLeast = false; ///< `least` itself is not allowed.
    bool belowMost = false;  ///< `most` itself is not allowed.
    bool contains(double number) const;
};

/// Nothing in a cartridge lies further from the datum, in mm: a guard against slipped units.
inline constexpr Range kStationMm{-5000.0, 5000.0};
inline constexpr Range kRadiusMm{0.0, 5000.0};
inline constexpr Range kLengthMm{0.0, 5000.0, true};
inline constexpr Range kClockDeg{0.0, 360.0, false, true};
inline constexpr Range kOffsetDeg{-360.0, 360.0};

/// A word of a file and the value that it stands for.
template <class Value>
struct Named {
    std::string_view name;
    Value value;
};

/// The name of a value in its table; every value must stand there.
template <class Value, std::size_t Count>
constexpr std::string_view nameIn(const std::array<Named<Value>, Count>& table, Value value) {
    for (const Named<Value>& entry : table)
        if (entry.value == value)
            return entry.name;
    return table.front().name;
}

/// Strict reading of one JSON object. Every accessor complains by pointer when the key is missing, of another
/// type or out of its range, and gives a harmless value so that reading goes on; `finish` complains about
/// every key that nothing asked for. Nothing throws. Keys must be literals. The JSON must outlive the object.
class Fields {
public:
    Fields(const nlohmann::json& value, std::string pointer, Complaints& complaints);

    const std::string& pointer() const { return pointer_; }
    std::string pointerTo(std::string_view key) const { return pointer_ + "/" + std::string{key}; }
    Complaints& complaints() const { return *complaints_; }
    bool has(std::string_view key) const;
    bool holdsArray(std::string_view key) const;

    std::string text(std::string_view key);                     ///< Required, not empty.
    std::optional<std::string> maybeText(std::string_view key); ///< Nothing when the key is absent.
    double number(std::string_view key, const Range& range);
    std::optional<double> maybeNumber(std::string_view key, const Range& range);
    int whole(std::string_view key, int least, int most);
    std::optional<bool> maybeFlag(std::string_view key);
    std::array<double, 2> pair(std::string_view key, const Range& range); ///< Exactly two numbers.
    /// Exactly two, each a number or null.
    std::array<std::optional<double>, 2> openPair(std::string_view key, const Range& range);
    std::vector<double> numbers(std::string_view key, const Range& range);
    std::vector<std::string> texts(std::string_view key); ///< Required; each not empty.
    std::optional<Fields> object(std::string_view key);   ///< Required.
    std::optional<Fields> maybeObject(std::string_view key);
    std::vector<Fields> objects(std::string_view key); ///< Required array of objects.

    std::vector<std::string> maybeTexts(std::string_view key) {
        return has(key) ? texts(key) : asked<std::vector<std::string>>(key);
    }
    std::vector<Fields> maybeObjects(std::string_view key) {
        return has(key) ? objects(key) : asked<std::vector<Fields>>(key);
    }

    /// A required text as an id of some kind.
    template <class Id>
    Id id(std::string_view key) {
        return Id{text(key)};
    }
    template <class Id>
    std::vector<Id> ids(std::string_view key) {
        return idsOf<Id>(texts(key));
    }
    template <class Id>
    std::vector<Id> maybeIds(std::string_view key) {
        return idsOf<Id>(maybeTexts(key));
    }
    template <class Id>
    std::optional<Id> maybeId(std::string_view key) {
        std::optional<std::string> found = maybeText(key);
        return found ? std::optional{Id{std::move(*found)}} : std::nullopt;
    }

    /// A required word of the table; the table's first value when it is wrong.
    template <class Value, std::size_t Count>
    Value word(std::string_view key, const std::array<Named<Value>, Count>& table) {
        return table[wordIndex(key, namesIn(table)).value_or(0)].value;
    }
    template <class Value, std::size_t Count>
    std::optional<Value> maybeWord(std::string_view key, const std::array<Named<Value>, Count>& table) {
        if (!has(key))
            return asked<std::optional<Value>>(key);
        const auto index = wordIndex(key, namesIn(table));
        return index ? std::optional{table[*index].value} : std::nullopt;
    }
    /// A required array of words.
    template <class Value, std::size_t Count>
    std::vector<Value> words(std::string_view key, const std::array<Named<Value>, Count>& table) {
        std::vector<Value> values;
        for (const std::size_t index : wordIndices(key, namesIn(table)))
            values.push_back(table[index].value);
        return values;
    }

    void complain(std::string_view key, std::string found, std::string allowed) {
        complaints_->add(pointerTo(key), std::move(found), std::move(allowed));
    }
    void finish();

private:
    template <class Id>
    static std::vector<Id> idsOf(std::vector<std::string> texts) {
        std::vector<Id> ids;
        ids.reserve(texts.size());
        for (std::string& each : texts)
            ids.push_back(Id{std::move(each)});
        return ids;
    }
    template <class Value, std::size_t Count>
    static std::array<std::string_view, Count> namesIn(const std::array<Named<Value>, Count>& table) {
        std::array<std::string_view, Count> names;
        for (std::size_t i = 0; i < Count; ++i)
            names[i] = table[i].name;
        return names;
    }
    template <class Nothing>
    Nothing asked(std::string_view key) {
        asked_.push_back(key);
        return {};
    }

    /// The value under a key that was asked for now; null when it is absent.
    const nlohmann::json* find(std::string_view key);
    /// The same, with a complaint when it is absent.
    const nlohmann::json* need(std::string_view key);
    const nlohmann::json* needArray(std::string_view key);
    std::optional<std::size_t> wordIndex(std::string_view key, std::span<const std::string_view> names);
    std::vector<std::size_t> wordIndices(std::string_view key, std::span<const std::string_view> names);

    const nlohmann::json* object_; ///< Null when the value is no object: then nothing is read or complained.
    std::string pointer_;
    Complaints* complaints_;
    std::vector<std::string_view> asked_{};
};

/// Reads every object of an array with `read(Fields&)` and finishes it.
template <class Read>
auto readEach(std::vector<Fields> items, Read read) {
    std::vector<decltype(read(items.front()))> results;
    results.reserve(items.size());
    for (Fields& item : items) {
        results.push_back(read(item));
        item.finish();
    }
    return results;
}

} // namespace gapwise
