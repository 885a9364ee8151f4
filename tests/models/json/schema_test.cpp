#include "models/json/document.h"
#include "tests/support/print_error.h"

#include <nlohmann/json.hpp>

#include <gtest/gtest.h>

namespace gapwise {

namespace {

using nlohmann::json;

Errors errorsOf(const char* document, const char* schema) {
    return schemaErrors(json::parse(document), json::parse(schema), "k.json");
}

/// The only error, or an empty one.
Error errorOf(const char* document, const char* schema) {
    const Errors errors = errorsOf(document, schema);
    EXPECT_EQ(errors.size(), 1U);
    return errors.size() == 1 ? errors.front() : Error{};
}

const char* const kSeating = R"({
    "type": "object", "required": ["part", "seat"], "additionalProperties": false,
    "properties": {
        "part": {"type": "string", "minLength": 1},
        "seat": {"type": "string", "pattern": "^seat-", "description": "a seat id: seat- and the id of a part"},
        "clock_deg": {"type": "number", "minimum": 0, "exclusiveMaximum": 360},
        "seen_from": {"$ref": "#/definitions/side"},
        "conditions": {"type": "array", "items": {"enum": ["new", "oiled", "dry"]}, "uniqueItems": true}
    },
    "dependencies": {"clock_deg": ["seen_from"]},
    "definitions": {"side": {"enum": ["compressor", "turbine"]}}
})";

const char* const kFeature = R"({"oneOf": [
    {"type": "object", "required": ["kind", "width_mm"], "additionalProperties": false,
     "properties": {"kind": {"const": "slot"}, "width_mm": {"type": "number", "exclusiveMinimum": 0}}},
    {"type": "object", "required": ["kind", "diameter_mm"], "additionalProperties": false,
     "properties": {"kind": {"const": "hole"}, "diameter_mm": {"type": "number", "exclusiveMinimum": 0}}}
]})";

} // namespace

TEST(SchemaErrors, NoneForAValidDocument) {
    EXPECT_TRUE(errorsOf(R"({"part": "SR-CO", "seat": "seat-SR-CO", "clock_deg": 0, "seen_from": "turbine"})",
                         kSeating)
                    .empty());
}

TEST(SchemaErrors, NamesEveryMissingKey) {
    const Errors errors = errorsOf("{}", kSeating);
    ASSERT_EQ(errors.size(), 2U);
    EXPECT_EQ(errors[0], (Error{"k.json#", "no key \"part\"", "an object with the keys part and seat"}));
    EXPECT_EQ(errors[1].found, "no key \"seat\"");
}

TEST(SchemaErrors, NamesEveryUnknownKeyByPointer) {
    const Errors errors = errorsOf(R"({"part": "a", "seat": "seat-a", "clock_rad": 1, "a/b": 2})", kSeating);
    ASSERT_EQ(errors.size(), 2U);
    EXPECT_EQ(errors[0].where, "k.json#/a~1b");
    EXPECT_EQ(errors[1], (Error{"k.json#/clock_rad", "the unknown key \"clock_rad\"",
                                "the keys clock_deg, conditions, part, seat and seen_from"}));
}

TEST(SchemaErrors, SaysTheTypeInWords) {
    EXPECT_EQ(errorOf("[]", kSeating), (Error{"k.json#", "an array", "an object"}));
    EXPECT_EQ(errorOf(R"({"part": 7, "seat": "seat-a"})", kSeating), (Error{"k.json#/part", "7", "text"}));
    EXPECT_EQ(
        errorOf(R"({"part": "a", "seat": "seat-a", "clock_deg": "3:00", "seen_from": "turbine"})", kSeating),
        (Error{"k.json#/clock_deg", "\"3:00\"", "a number"}));
    EXPECT_EQ(errorOf("\"x\"", R"({"type": ["number", "boolean", "null"]})").allowed,
              "a number, true or false or null");
    EXPECT_EQ(errorOf("2.5", R"({"type": "integer"})"), (Error{"k.json#", "2.5", "a whole number"}));
}

TEST(SchemaErrors, SaysTheRangeInWords) {
    const char* const kSheet = R"({"part": "a", "seat": "seat-a", "clock_deg": 370, "seen_from": "turbine"})";
    EXPECT_EQ(errorOf(kSheet, kSeating), (Error{"k.json#/clock_deg", "370", "a number from 0 to below 360"}));
    EXPECT_EQ(errorOf("0", R"({"exclusiveMinimum": 0, "maximum": 180})").allowed, "a number above 0 to 180");
    EXPECT_EQ(errorOf("0", R"({"minimum": 0.5})").allowed, "a number of at least 0.5");
    EXPECT_EQ(errorOf("9", R"({"maximum": 4})").allowed, "a number of at most 4");
    EXPECT_EQ(errorOf("9", R"({"exclusiveMaximum": 4})").allowed, "a number below 4");
    EXPECT_EQ(errorOf("5", R"({"multipleOf": 2})").allowed, "a multiple of 2");
}

TEST(SchemaErrors, ListsTheWordsOfAnEnumeration) {
    EXPECT_EQ(errorOf(R"({"part": "a", "seat": "seat-a", "seen_from": "left"})", kSeating),
              (Error{"k.json#/seen_from", "\"left\"", "compressor or turbine"}));
    EXPECT_EQ(errorOf("2", R"({"const": 1})"), (Error{"k.json#", "2", "1"}));
}

TEST(SchemaErrors, SaysWhatAPatternMeans) {
    EXPECT_EQ(errorOf(R"({"part": "a", "seat": "SR-CO"})", kSeating),
              (Error{"k.json#/seat", "\"SR-CO\"", "a seat id: seat- and the id of a part"}));
    EXPECT_EQ(errorOf("\"x\"", R"({"pattern": "^y"})").allowed, "text of the form ^y");
}

TEST(SchemaErrors, CountsCharactersAndItems) {
    EXPECT_EQ(errorOf(R"({"part": "", "seat": "seat-a"})", kSeating),
              (Error{"k.json#/part", "\"\"", "text of at least 1 character"}));
    EXPECT_EQ(errorOf("[1]", R"({"minItems": 2, "maxItems": 2})"), (Error{"k.json#", "1 item", "2 items"}));
    EXPECT_EQ(errorOf("[1, 2, 3]", R"({"minItems": 1, "maxItems": 2})").allowed, "1 to 2 items");
    EXPECT_EQ(errorOf("[1, 2, 3]", R"({"maxItems": 2})").allowed, "at most 2 items");
    EXPECT_EQ(errorOf("[1, 2, 1]", R"({"uniqueItems": true})"),
              (Error{"k.json#", "1 twice", "each item once"}));
    EXPECT_EQ(errorOf("\"ää\"", R"({"maxLength": 1})").allowed, "text of at most 1 character");
}

TEST(SchemaErrors, NamesTheItemByItsIndex) {
    const Errors errors =
        errorsOf(R"({"part": "a", "seat": "seat-a", "conditions": ["new", "wet", "dry", 3]})", kSeating);
    ASSERT_EQ(errors.size(), 2U);
    EXPECT_EQ(errors[0], (Error{"k.json#/conditions/1", "\"wet\"", "new, oiled or dry"}));
    EXPECT_EQ(errors[1].where, "k.json#/conditions/3");
}

TEST(SchemaErrors, AKeyThatNeedsAnotherSaysSo) {
    EXPECT_EQ(
        errorOf(R"({"part": "a", "seat": "seat-a", "clock_deg": 90})", kSeating),
        (Error{"k.json#", "\"clock_deg\" without \"seen_from\"", "the key seen_from beside clock_deg"}));
}

TEST(SchemaErrors, FollowsTheFormThatTheKindNames) {
    EXPECT_EQ(errorOf(R"({"kind": "slot", "width_mm": -1})", kFeature),
              (Error{"k.json#/width_mm", "-1", "a number above 0"}));
    EXPECT_EQ(errorOf(R"({"kind": "hole", "diameter_mm": 3, "width_mm": 1})", kFeature).where,
              "k.json#/width_mm");
}

TEST(SchemaErrors, ListsTheKindsWhenNoneFits) {
    EXPECT_EQ(errorOf(R"({"kind": "bump", "width_mm": 1})", kFeature),
              (Error{"k.json#/kind", "\"bump\"", "slot or hole"}));
}

TEST(SchemaErrors, ListsTheTypesWhenNoneFits) {
    EXPECT_EQ(errorOf("true", R"({"oneOf": [{"type": "number"}, {"type": "array", "minItems": 2}]})"),
              (Error{"k.json#", "true", "a number or an array"}));
    EXPECT_EQ(errorOf("[1]", R"({"oneOf": [{"type": "number"}, {"type": "array", "minItems": 2}]})"),
              (Error{"k.json#", "1 item", "at least 2 items"}));
}

TEST(SchemaErrors, NamesTheKeysOfWhichOneIsWanted) {
    const char* const kRing = R"({"oneOf": [{"required": ["bore_mm"]}, {"required": ["bore_curve"]}]})";
    EXPECT_EQ(errorOf("{}", kRing), (Error{"k.json#", "none of the keys bore_mm and bore_curve",
                                           "one of the keys bore_mm or bore_curve"}));
    EXPECT_EQ(errorOf(R"({"bore_mm": 1, "bore_curve": 2})", kRing).found, "bore_mm and bore_curve");
    EXPECT_TRUE(errorsOf(R"({"bore_mm": 1})", kRing).empty());
}

TEST(SchemaErrors, FollowsConditions) {
    const char* const kSchema =
        R"({"allOf": [{"if": {"properties": {"kind": {"const": "mark"}}, "required": ["kind"]},
        "then": {"required": ["clock_deg"]}, "else": {"required": ["seat"]}}]})";
    EXPECT_EQ(errorOf(R"({"kind": "mark"})", kSchema).found, "no key \"clock_deg\"");
    EXPECT_EQ(errorOf(R"({"kind": "seat"})", kSchema).found, "no key \"seat\"");
}

TEST(SchemaErrors, FollowsReferencesThatCircle) {
    const char* const kTree =
        R"({"type": "object", "properties": {"child": {"$ref": "#"}}, "additionalProperties": false})";
    EXPECT_TRUE(errorsOf(R"({"child": {"child": {}}})", kTree).empty());
    EXPECT_EQ(errorOf(R"({"child": {"child": {"x": 1}}})", kTree).where, "k.json#/child/child/x");
}

TEST(SchemaErrors, StopsAtTheCap) {
    const json document = json(std::vector<int>(100'000, -1));
    EXPECT_EQ(schemaErrors(document, json::parse(R"({"items": {"minimum": 0}})"), "k.json").size(),
              kMostErrors);
}

TEST(SchemaErrors, AFaultThatOnlyTheLibraryKnowsStillHasItsPlace) {
    const Errors errors =
        errorsOf(R"({"at": ["2024-13-01"]})",
                 R"({"properties": {"at": {"items": {"type": "string", "format": "date"}}}})");
    ASSERT_EQ(errors.size(), 1U);
    EXPECT_EQ(errors.front().where, "k.json#/at/0");
}

TEST(SchemaErrors, ASchemaThatIsNoneIsAnError) {
    EXPECT_EQ(errorsOf("{}", R"({"type": 7})").size(), 1U);
    EXPECT_EQ(errorsOf("{}", R"({"required": 7})").size(), 1U);
    EXPECT_EQ(errorsOf("\"x\"", R"({"pattern": "("})").size(), 1U);
}

// The pattern matcher of the standard library recurses once or more a character.
TEST(SchemaErrors, TheLongestTextLeavesThePatternItsStack) {
    const json document(std::string(kLongestText, 'a') + "!");
    EXPECT_EQ(schemaErrors(document, json::parse(R"({"pattern": "^(a|b)+$"})"), "k.json").size(), 1U);
}

} // namespace gapwise
