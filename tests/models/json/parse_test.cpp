#include "models/json/document.h"
#include "tests/support/print_error.h"

#include <nlohmann/json.hpp>

#include <gtest/gtest.h>

namespace gapwise {

namespace {

const std::string kGood =
    R"({"format": "gapwise.build/1", "frame": "alder-72", "n": [1, -2.5e1, true, null, "é\u0041"]})";

Errors errorsOf(std::string_view text) {
    const auto document = parseJson(text, "k.json");
    return document ? Errors{} : document.errors();
}

Error errorOf(std::string_view text) {
    const Errors errors = errorsOf(text);
    return errors.empty() ? Error{} : errors.front();
}

std::string nested(std::size_t depth) {
    return std::string(depth, '[') + std::string(depth, ']');
}

} // namespace

TEST(ParseJson, GivesTheDocument) {
    const auto document = parseJson(kGood, "k.json");
    ASSERT_TRUE(document);
    EXPECT_EQ(*document, nlohmann::json::parse(kGood));
}

TEST(ParseJson, RefusesEveryTruncatedLength) {
    for (std::size_t length = 0; length < kGood.size(); ++length) {
        const Errors errors = errorsOf(std::string_view{kGood}.substr(0, length));
        ASSERT_EQ(errors.size(), 1U) << length;
        EXPECT_TRUE(errors.front().where.starts_with("k.json:1:")) << errors.front().where;
    }
}

TEST(ParseJson, SyntaxErrorsNameLineAndColumn) {
    EXPECT_EQ(errorOf("{\n  \"é\": }"), (Error{"k.json:2:8", "unexpected '}'", "'[', '{', or a literal"}));
    EXPECT_EQ(errorOf("{\"a\": 1\n \"b\": 2}"), (Error{"k.json:2:2", "unexpected string literal", "'}'"}));
    EXPECT_EQ(errorOf(""), (Error{"k.json:1:1", "unexpected end of input", "'[', '{', or a literal"}));
    EXPECT_EQ(errorOf("{'a': 1}").where, "k.json:1:2");
}

TEST(ParseJson, RefusesTrailingText) {
    EXPECT_EQ(errorOf("{} {}"), (Error{"k.json:1:4", "unexpected '{'", "end of input"}));
    EXPECT_EQ(errorOf("{}\n\nx").where, "k.json:3:1");
    EXPECT_TRUE(errorsOf("{} \n").empty());
}

TEST(ParseJson, RefusesWhatHidesBehindAZeroByte) {
    EXPECT_EQ(errorOf(std::string_view{"{}\0{\"a\":", 8}),
              (Error{"k.json:1:3", "a zero byte", "UTF-8 text"}));
}

TEST(ParseJson, RefusesCommentsAndTrailingCommas) {
    EXPECT_EQ(errorsOf("{} // no").size(), 1U);
    EXPECT_EQ(errorsOf("[1,]").size(), 1U);
    EXPECT_EQ(errorsOf("{\"a\":1,}").size(), 1U);
}

TEST(ParseJson, RefusesNumbersThatNoDoubleHolds) {
    EXPECT_EQ(errorOf("{\"a\": 1e999}"),
              (Error{"k.json:1:7", "the number 1e999", "a number that fits a double (up to 1.8e308)"}));
    for (const std::string_view text : {"NaN", "[Infinity]", "[-Infinity]", "[+1]", "[01]", "[.5]", "[1.]"})
        EXPECT_EQ(errorsOf(text).size(), 1U) << text;
}

TEST(ParseJson, NamesEveryDuplicateKey) {
    const Errors errors = errorsOf(R"({"a": {"b/c": 1, "b/c": 2}, "l": [{}, {"x": 1, "x": 1}], "a": 3})");
    ASSERT_EQ(errors.size(), 3U);
    EXPECT_EQ(errors[0], (Error{"k.json#/a/b~1c", "the key \"b/c\" again", "each key once in an object"}));
    EXPECT_EQ(errors[1].where, "k.json#/l/1/x");
    EXPECT_EQ(errors[2].where, "k.json#/a");
}

TEST(ParseJson, SeesDuplicatesThroughEscapes) {
    EXPECT_EQ(errorOf(R"({"a": 1, "\u0061": 2})").where, "k.json#/a");
}

TEST(ParseJson, CapsTheNumberOfErrors) {
    std::string text = "{\"a\":0";
    for (int i = 0; i < 1000; ++i)
        text += ",\"a\":0";
    EXPECT_EQ(errorsOf(text + "}").size(), kMostErrors);
}

TEST(ParseJson, TakesTheDeepestAllowedNesting) {
    EXPECT_TRUE(errorsOf(nested(kDeepestNesting)).empty());
    EXPECT_EQ(errorOf(nested(kDeepestNesting + 1)).found, "nesting deeper than 64");
}

TEST(ParseJson, RefusesNestingWithoutEndOfTheStack) {
    const Errors errors = errorsOf(std::string(100'000, '['));
    ASSERT_EQ(errors.size(), 1U);
    EXPECT_EQ(errors.front().found, "nesting deeper than 64");
    EXPECT_EQ(errors.front().allowed, "at most 64 objects and arrays inside each other");
    std::string objects;
    for (int i = 0; i < 100'000; ++i)
        objects += "{\"a\":";
    EXPECT_EQ(errorOf(objects).found, "nesting deeper than 64");
}

TEST(ParseJson, PassesOverAByteOrderMark) {
    EXPECT_TRUE(errorsOf("\xEF\xBB\xBF{}").empty());
    EXPECT_EQ(errorOf("\xEF\xBB\xBF{x").where, "k.json:1:2");
}

TEST(ParseJson, RefusesOtherEncodings) {
    EXPECT_EQ(errorOf(std::string_view{"\xFF\xFE{\0}\0", 6}),
              (Error{"k.json:1:1", "UTF-16 text", "UTF-8 text"}));
    const Error latin = errorOf("{\"name\": \"caf\xE9\"}");
    EXPECT_EQ(latin, (Error{"k.json:1:15", "invalid string: ill-formed UTF-8 byte",
                            "well-formed JSON in UTF-8 (RFC 8259)"}));
}

TEST(ParseJson, RefusesBrokenEscapesAndHalfSurrogates) {
    EXPECT_EQ(errorsOf(R"(["\x"])").size(), 1U);
    EXPECT_EQ(errorsOf(R"(["\ud800"])").size(), 1U);
    EXPECT_EQ(errorsOf("[\"a\nb\"]").size(), 1U);
}

TEST(ParseJson, RefusesTextAndKeysOverTheLimit) {
    const std::string longest(kLongestText, 'x');
    EXPECT_TRUE(errorsOf("{\"a\":\"" + longest + "\"}").empty());
    EXPECT_EQ(errorOf("{\"a\":[\"" + longest + "x\"]}"),
              (Error{"k.json#/a/0", "a text of 2049 bytes", "at most 2048 bytes"}));
    EXPECT_EQ(errorOf("{\"" + longest + "x\": 1}").found, "a text of 2049 bytes");
}

TEST(ParseJson, LongGarbageGivesAShortError) {
    const std::string garbage(5'000'000, 'x');
    EXPECT_LT(describe(errorOf(garbage)).size(), 400U);
    EXPECT_LT(describe(errorOf("[\"" + garbage)).size(), 400U);
    EXPECT_LT(describe(errorOf("[" + std::string(1'000'000, '9'))).size(), 400U);
}

} // namespace gapwise
