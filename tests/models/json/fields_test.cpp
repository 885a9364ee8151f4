#include "models/json/fields.h"
#include "tests/support/print_error.h"

#include <nlohmann/json.hpp>

#include <gmock/gmock.h>

namespace gapwise {

namespace {

using nlohmann::json;
using testing::ElementsAre;
using testing::IsEmpty;

constexpr std::array kWords{Named<int>{"one", 1}, Named<int>{"two", 2}};
constexpr Range kPercent{0.0, 100.0};

/// Reads an object with `read` and gives what was complained about.
template <class Read>
Errors complaintsOf(const json& document, Read read) {
    Complaints complaints{"k.json"};
    Fields fields{document, "", complaints};
    read(fields);
    return complaints.take();
}

} // namespace

TEST(Fields, ReadsWhatIsThere) {
    const json document = json::parse(
        R"({"t": "x", "n": 1.5, "w": 3, "f": true, "p": [1, 2], "l": ["a", "b"], "word": "two", "o": {"i": "k"}})");
    const Errors errors = complaintsOf(document, [](Fields& fields) {
        EXPECT_EQ(fields.text("t"), "x");
        EXPECT_EQ(fields.number("n", kPercent), 1.5);
        EXPECT_EQ(fields.whole("w", 0, 9), 3);
        EXPECT_EQ(fields.maybeFlag("f"), true);
        EXPECT_EQ(fields.pair("p", kPercent), (std::array{1.0, 2.0}));
        EXPECT_THAT(fields.texts("l"), ElementsAre("a", "b"));
        EXPECT_EQ(fields.word("word", kWords), 2);
        auto object = fields.object("o");
        ASSERT_TRUE(object);
        EXPECT_EQ(object->text("i"), "k");
        object->finish();
        fields.finish();
    });
    EXPECT_THAT(errors, IsEmpty());
}

TEST(Fields, WhatMayBeAbsentIsNothing) {
    const json document = json::object();
    const Errors errors = complaintsOf(document, [](Fields& fields) {
        EXPECT_FALSE(fields.maybeText("t"));
        EXPECT_FALSE(fields.maybeNumber("n", kPercent));
        EXPECT_FALSE(fields.maybeFlag("f"));
        EXPECT_FALSE(fields.maybeWord("w", kWords));
        EXPECT_FALSE(fields.maybeObject("o"));
        EXPECT_THAT(fields.maybeTexts("l"), IsEmpty());
        EXPECT_THAT(fields.maybeObjects("os"), IsEmpty());
        fields.finish();
    });
    EXPECT_THAT(errors, IsEmpty());
}

TEST(Fields, ComplainsOnceAboutEachMissingKey) {
    const json document = json::object();
    const Errors errors = complaintsOf(document, [](Fields& fields) {
        fields.text("t");
        fields.number("n", kPercent);
        fields.whole("w", 0, 9);
        fields.pair("p", kPercent);
        fields.word("word", kWords);
        fields.objects("os");
    });
    ASSERT_EQ(errors.size(), 6U);
    EXPECT_EQ(errors[0], (Error{"k.json#", "no key \"t\"", "an object with the key t"}));
    EXPECT_EQ(errors[3].found, "no key \"p\"");
}

TEST(Fields, ComplainsAboutTypesAndRangesByPointer) {
    const json document = json::parse(
        R"({"t": 1, "e": "", "n": 101, "w": 1.5, "f": 1, "p": [1], "q": [1, "2"], "word": "three", "l": "a"})");
    const Errors errors = complaintsOf(document, [](Fields& fields) {
        fields.text("t");
        fields.text("e");
        fields.number("n", kPercent);
        fields.whole("w", 0, 9);
        fields.maybeFlag("f");
        fields.pair("p", kPercent);
        fields.pair("q", kPercent);
        fields.word("word", kWords);
        fields.texts("l");
    });
    EXPECT_THAT(errors, ElementsAre(Error{"k.json#/t", "1", "text"}, Error{"k.json#/e", "\"\"", "text"},
                                    Error{"k.json#/n", "101", "a number from 0 to 100"},
                                    Error{"k.json#/w", "1.5", "a whole number from 0 to 9"},
                                    Error{"k.json#/f", "1", "true or false"},
                                    Error{"k.json#/p", "1 number", "2 numbers"},
                                    Error{"k.json#/q/1", "\"2\"", "a number from 0 to 100"},
                                    Error{"k.json#/word", "\"three\"", "one or two"},
                                    Error{"k.json#/l", "\"a\"", "an array"}));
}

TEST(Fields, AnOpenPairMayLackItsEnds) {
    const json document =
        json::parse(R"({"a": [1, null], "b": [null, null], "c": [1], "d": [1, "2"], "e": 1})");
    const Errors errors = complaintsOf(document, [](Fields& fields) {
        EXPECT_EQ(fields.openPair("a", kPercent), (std::array{std::optional{1.0}, std::optional<double>{}}));
        EXPECT_EQ(fields.openPair("b", kPercent), (std::array<std::optional<double>, 2>{}));
        fields.openPair("c", kPercent);
        fields.openPair("d", kPercent);
        fields.openPair("e", kPercent);
    });
    EXPECT_THAT(errors, ElementsAre(Error{"k.json#/c", "1 value", "2 values, each a number or null"},
                                    Error{"k.json#/d/1", "\"2\"", "a number from 0 to 100"},
                                    Error{"k.json#/e", "1", "an array"}));
}

TEST(Fields, ListsEveryUnknownKeyWithThoseItKnows) {
    const json document = json::parse(R"({"b": "x", "a": "x", "u/1": 0, "u2": 0})");
    const Errors errors = complaintsOf(document, [](Fields& fields) {
        fields.text("b");
        fields.text("a");
        fields.finish();
    });
    EXPECT_THAT(errors, ElementsAre(Error{"k.json#/u~11", "the unknown key \"u/1\"", "the keys a and b"},
                                    Error{"k.json#/u2", "the unknown key \"u2\"", "the keys a and b"}));
}

TEST(Fields, WhatIsNoObjectIsOneComplaint) {
    const json document = json::parse(R"({"o": [1]})");
    const Errors errors = complaintsOf(document, [](Fields& fields) {
        auto object = fields.object("o");
        ASSERT_TRUE(object);
        EXPECT_EQ(object->text("t"), "");
        object->number("n", kPercent);
        object->pair("p", kPercent);
        object->finish();
    });
    EXPECT_THAT(errors, ElementsAre(Error{"k.json#/o", "an array", "an object"}));
}

TEST(Fields, ReadsEachObjectOfAnArray) {
    const json document = json::parse(R"({"os": [{"t": "a"}, 7, {"t": "b", "x": 1}]})");
    const Errors errors = complaintsOf(document, [](Fields& fields) {
        const auto texts = readEach(fields.objects("os"), [](Fields& item) { return item.text("t"); });
        EXPECT_THAT(texts, ElementsAre("a", "", "b"));
    });
    EXPECT_THAT(errors, ElementsAre(Error{"k.json#/os/1", "7", "an object"},
                                    Error{"k.json#/os/2/x", "the unknown key \"x\"", "the keys t"}));
}

TEST(Range, KnowsOpenAndClosedEnds) {
    const Range clock{0.0, 360.0, false, true};
    EXPECT_TRUE(clock.contains(0.0));
    EXPECT_FALSE(clock.contains(360.0));
    const Range length{0.0, 5.0, true};
    EXPECT_FALSE(length.contains(0.0));
    EXPECT_TRUE(length.contains(5.0));
    EXPECT_FALSE(length.contains(std::numeric_limits<double>::quiet_NaN()));
    EXPECT_FALSE(length.contains(std::numeric_limits<double>::infinity()));
}

} // namespace gapwise
