#include "models/json/document.h"

#include <nlohmann/json.hpp>

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <optional>

namespace gapwise {

namespace {

using nlohmann::json;

/// `file:line:column` of a byte; columns count characters from 1.
std::string lineAndColumn(std::string_view text, std::size_t offset, std::string_view file) {
    const std::string_view before = text.substr(0, std::min(offset, text.size()));
    const auto lines = std::count(before.begin(), before.end(), '\n');
    const std::size_t lastBreak = before.rfind('\n');
    const std::string_view line = lastBreak == std::string_view::npos ? before : before.substr(lastBreak + 1);
    const auto characters = std::count_if(line.begin(), line.end(), [](char letter) {
        return (static_cast<unsigned char>(letter) & 0xC0U) != 0x80U;
    });
    return fmt::format("{}:{}:{}", file, lines + 1, characters + 1);
}

constexpr std::string_view kWellFormed = "well-formed JSON in UTF-8 (RFC 8259)";

/// The library's sentence `… - unexpected X; expected Y`, taken apart.
struct SyntaxWords {
    std::string_view found{};
    std::string_view allowed = kWellFormed;
};

SyntaxWords syntaxWords(std::string_view sentence) {
    constexpr std::string_view kDash = " - ";
    constexpr std::string_view kExpected = "; expected ";
    constexpr std::string_view kLastRead = "; last read: '";
    if (const auto dash = sentence.find(kDash); dash != std::string_view::npos)
        sentence.remove_prefix(dash + kDash.size());
    // A fault inside a token: what was read may be long and holds any byte; the place says enough.
    if (const auto read = sentence.find(kLastRead); read != std::string_view::npos)
        return SyntaxWords{.found = sentence.substr(0, read)};
    if (const auto expected = sentence.rfind(kExpected); expected != std::string_view::npos)
        return SyntaxWords{.found = sentence.substr(0, expected),
                           .allowed = sentence.substr(expected + kExpected.size())};
    return SyntaxWords{.found = sentence};
}

/// Where the token starts that was read up to `position` (in bytes, counted from 1).
std::size_t startOfToken(std::size_t position, std::string_view token, std::string_view found) {
    const bool literal = found.ends_with("string literal") || found.ends_with("number literal");
    const std::size_t back = literal && token.size() <= position ? token.size() : 1;
    return position >= back ? position - back : 0;
}

/// Builds the document from the events of the parser and refuses what strict reading refuses.
class StrictBuilder {
public:
    StrictBuilder(std::string_view text, std::string_view file) : text_{text}, file_{file} {}

    json& document() { return document_; }
    Errors& errors() { return errors_; }

    bool null() { return put(nullptr); }
    bool boolean(bool value) { return put(value); }
    bool number_integer(json::number_integer_t value) { return put(value); }
    bool number_unsigned(json::number_unsigned_t value) { return put(value); }
    bool number_float(json::number_float_t value, const json::string_t& /*as written*/) { return put(value); }
    bool binary(json::binary_t& /*never in text*/) { return false; }
    bool string(json::string_t& value) {
        if (value.size() > kLongestText)
            return refuseLong(value.size());
        return put(std::move(value));
    }

    bool start_object(std::size_t /*unknown in text*/) { return open(json::object()); }
    bool end_object() { return close(); }
    bool start_array(std::size_t /*unknown in text*/) { return open(json::array()); }
    bool end_array() { return close(); }

    bool key(json::string_t& name) {
        if (name.size() > kLongestText)
            return refuseLong(name.size());
        Level& level = levels_.back();
        const auto [entry, inserted] = level.container->emplace(std::move(name), nullptr);
        level.key = &entry.key();
        level.slot = &entry.value();
        if (!inserted)
            add(placeIn(file_, pointer()), "the key " + quotedText(*level.key) + " again",
                "each key once in an object");
        return errors_.size() < kMostErrors;
    }

    bool parse_error(std::size_t position, const std::string& lastToken, const json::exception& error) {
        constexpr int kNumberOverflow = 406;
        if (error.id == kNumberOverflow) {
            const std::size_t start = startOfToken(position, lastToken, "number literal");
            add(lineAndColumn(text_, start, file_), "the number " + lastToken.substr(0, kLongestNumber),
                "a number that fits a double (up to 1.8e308)");
            return false;
        }
        const SyntaxWords words = syntaxWords(error.what());
        const std::size_t start = startOfToken(position, lastToken, words.found);
        add(lineAndColumn(text_, start, file_), std::string{words.found}, std::string{words.allowed});
        return false;
    }

private:
    /// One open object or array; in an object, the key whose value comes next.
    struct Level {
        json* container = nullptr;
        const std::string* key = nullptr;
        json* slot = nullptr;
    };

    static constexpr std::size_t kLongestNumber = 40;

    void add(std::string where, std::string found, std::string allowed) {
        errors_.push_back(Error{std::move(where), std::move(found), std::move(allowed)});
    }

    bool refuseLong(std::size_t bytes) {
        add(placeIn(file_, pointer()), fmt::format("a text of {} bytes", bytes),
            fmt::format("at most {} bytes", kLongestText));
        return false;
    }

    /// JSON pointer of the value that comes next.
    std::string pointer() const {
        std::string path;
        for (const Level& level : levels_) {
            const bool inArray = level.container->is_array();
            // The value of every level but the innermost already stands in its array.
            const std::size_t index = level.container->size() - (&level == &levels_.back() ? 0U : 1U);
            if (inArray)
                path += fmt::format("/{}", index);
            else if (level.key)
                path += "/" + pointerToken(*level.key);
        }
        return path;
    }

    template <class Value>
    json* place(Value&& value) {
        if (levels_.empty()) {
            document_ = std::forward<Value>(value);
            return &document_;
        }
        Level& level = levels_.back();
        if (level.container->is_array()) {
            level.container->push_back(std::forward<Value>(value));
            return &level.container->back();
        }
        *level.slot = std::forward<Value>(value);
        return level.slot;
    }

    template <class Value>
    bool put(Value&& value) {
        place(std::forward<Value>(value));
        return true;
    }

    bool open(json container) {
        if (levels_.size() >= kDeepestNesting) {
            add(placeIn(file_, pointer()), fmt::format("nesting deeper than {}", kDeepestNesting),
                fmt::format("at most {} objects and arrays inside each other", kDeepestNesting));
            return false;
        }
        levels_.push_back(Level{.container = place(std::move(container))});
        return true;
    }

    bool close() {
        levels_.pop_back();
        return true;
    }

    std::string_view text_;
    std::string_view file_;
    json document_{};
    std::vector<Level> levels_{};
    Errors errors_{};
};

/// What is not UTF-8 text at all, before the parser sees it.
std::optional<Error> encodingError(std::string_view text, std::string_view file) {
    using namespace std::string_view_literals;
    constexpr std::array kWideMarks{"\xFF\xFE"sv, "\xFE\xFF"sv};
    for (const std::string_view mark : kWideMarks)
        if (text.starts_with(mark))
            return Error{lineAndColumn(text, 0, file), "UTF-16 text", "UTF-8 text"};
    // The parser takes a zero byte for the end and would pass over what follows.
    if (const auto zero = text.find('\0'); zero != std::string_view::npos)
        return Error{lineAndColumn(text, zero, file), "a zero byte", "UTF-8 text"};
    return std::nullopt;
}

} // namespace

Result<json> parseJson(std::string_view text, std::string_view file) {
    constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";
    if (const auto error = encodingError(text, file))
        return *error;
    if (text.starts_with(kByteOrderMark))
        text.remove_prefix(kByteOrderMark.size());
    StrictBuilder builder{text, file};
    json::sax_parse(text.begin(), text.end(), &builder);
    if (!builder.errors().empty())
        return std::move(builder.errors());
    return std::move(builder.document());
}

} // namespace gapwise
