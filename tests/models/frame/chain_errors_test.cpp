#include "models/frame/frame_errors.h"

#include "tests/support/measured_frame.h"
#include "tests/support/print_error.h"

#include <gmock/gmock.h>

namespace gapwise {

namespace {

using nlohmann::json;
using testing::AllOf;
using testing::Contains;
using testing::ElementsAre;
using testing::Field;
using testing::HasSubstr;
using testing::IsEmpty;

Errors changed(const char* pointer, const json& value) {
    return measuredFrame().set(pointer, value).errors();
}

} // namespace

TEST(ChainErrors, ALinkBeginsWhereTheWayStands) {
    EXPECT_THAT(changed("/chains/0/links", {"-a", "+b", "+s"}),
                ElementsAre(Error{"f.json#/chains/0/links/1", "+b, which begins at HOUSING/datum",
                                  "a link from COLLAR/seat or BUSH/face: -b or +a"}));
    EXPECT_THAT(changed("/chains/0/links", {"+a", "-b", "+s"}),
                ElementsAre(Error{"f.json#/chains/0/links/0", "+a, which begins at COLLAR/seat",
                                  "a link from COLLAR/face: -a"}));
}

TEST(ChainErrors, AContactHoldsAtItsSideOnly) {
    EXPECT_THAT(changed("/chains/0/pushed_to", "turbine"),
                ElementsAre(Error{"f.json#/chains/0/links/1", "-b, which begins at BUSH/face",
                                  "a link from COLLAR/seat: +a"}));
    EXPECT_THAT(measuredFrame().erase("/chains/0", "pushed_to").errors(),
                ElementsAre(Field(&Error::where, "f.json#/chains/0/links/1")));
    EXPECT_THAT(measuredFrame().erase("/contacts/0", "pushed_to").erase("/chains/0", "pushed_to").errors(),
                IsEmpty());
}

TEST(ChainErrors, AChainEndsWhereItSays) {
    EXPECT_THAT(changed("/chains/0/links", {"-a", "-b"}),
                ElementsAre(Error{"f.json#/chains/0/to", "\"HOUSING/stop\"",
                                  "where the links lead to: HOUSING/datum"}));
    EXPECT_THAT(changed("/chains/0/to", "ROTOR/journal"), IsEmpty()); // It touches the stop.
    EXPECT_THAT(
        changed("/chains/1/to", "HOUSING/stop"),
        ElementsAre(Error{"f.json#/chains/1/to", "\"HOUSING/stop\"", "where the links lead to: BUSH/bore"}));
}

TEST(ChainErrors, AContactServesOnce) {
    // From the face to the seat, back through the same contact and on: the way would go over it twice.
    EXPECT_THAT(changed("/chains/0/links", {"-a", "-b", "+b", "+a"}),
                ElementsAre(Error{"f.json#/chains/0/links/3", "+a, which begins at COLLAR/seat",
                                  "a link from BUSH/face: -b"}));
}

TEST(ChainErrors, LinksAndMovesAreDimensions) {
    EXPECT_THAT(changed("/chains/0/links/1", "-NOBODY"),
                Contains(Error{"f.json#/chains/0/links/1", "\"NOBODY\"", "a dimension: s, b, a, d or D"}));
    EXPECT_THAT(changed("/changes/0/moves/0", "+gap"),
                ElementsAre(Field(&Error::where, "f.json#/changes/0/moves/0")));
    EXPECT_THAT(changed("/chains/0/links", json::array()),
                Contains(Error{"f.json#/chains/0/links", "no link", "at least 1 link"}));
}

TEST(ChainErrors, ADimensionLeadsSomewhere) {
    EXPECT_THAT(changed("/dimensions/0/to", "HOUSING/datum"),
                Contains(Error{"f.json#/dimensions/0/to", "\"HOUSING/datum\"", "another station than from"}));
    EXPECT_THAT(
        measuredFrame().set("/dimensions/3/from", "ROTOR/journal").set("/dimensions/3/to", "axis").errors(),
        Contains(
            Error{"f.json#/dimensions/3/to", "\"axis\"", "a diameter that leads outward: from the axis"}));
    EXPECT_THAT(changed("/dimensions/0/part", "NOBODY"),
                ElementsAre(Field(&Error::where, "f.json#/dimensions/0/part")));
}

TEST(ChainErrors, IdsStandOnce) {
    EXPECT_THAT(changed("/dimensions/4/id", "d"),
                Contains(Error{"f.json#/dimensions/4/id", "\"d\", as at /dimensions/3",
                               "an id that no other dimension has"}));
    EXPECT_THAT(changed("/chains/1/id", "gap"), Contains(Field(&Error::where, "f.json#/chains/1/id")));
    EXPECT_THAT(changed("/chains/1/id", "d"),
                Contains(Error{"f.json#/chains/1/id", "\"d\", a dimension", "an id that no dimension has"}));
    const json twin{{"id", "worn"}, {"name", "x"}, {"kind", "fault"}, {"part", "BUSH"}, {"moves", {"+b"}}};
    EXPECT_THAT(measuredFrame().add("/changes", twin).set("/changes/1/moves", json::array({"+b"})).errors(),
                ElementsAre(Field(&Error::where, "f.json#/changes/1/id")));
}

TEST(ChainErrors, ContactsAreBetweenTwoStations) {
    EXPECT_THAT(changed("/contacts/1/between", {"HOUSING/stop", "NOWHERE"}),
                ElementsAre(Error{"f.json#/contacts/1/between/1", "\"NOWHERE\"",
                                  "a station that a dimension begins or ends at"}));
    EXPECT_THAT(changed("/contacts/1/between", {"HOUSING/stop", "HOUSING/stop"}),
                ElementsAre(Field(&Error::found, "\"HOUSING/stop\" twice")));
}

TEST(ChainErrors, AMeasuredDimensionIsALength) {
    EXPECT_THAT(
        changed("/measurements/0/quantities/0/unit", "deg"),
        ElementsAre(Error{"f.json#/measurements/0/quantities/0/unit", "deg", "mm, as the dimension a"}));
}

TEST(ChainErrors, AWindowIsOrdered) {
    EXPECT_THAT(
        changed("/chains/1/window_mm", {0.05, 0.03}),
        ElementsAre(Error{"f.json#/chains/1/window_mm", "[0.05, 0.03]", "[least, most] with least ≤ most"}));
}

TEST(ChainErrors, AChangeMovesSomething) {
    for (const json& moves : {json::array(), json{"+a", "-a"}})
        EXPECT_THAT(changed("/changes/0/moves", moves),
                    ElementsAre(Error{"f.json#/changes/0/moves", "moves that come to nothing",
                                      "at least 1 dimension that grows or shrinks"}));
    EXPECT_THAT(changed("/changes/0/part", "NOBODY"),
                ElementsAre(Field(&Error::where, "f.json#/changes/0/part")));
}

TEST(ChainErrors, GradesRise) {
    for (const json& grades : {json{5, 4.9}, json{4.9, 4.9}})
        EXPECT_THAT(changed("/selectors/0/grades_mm", grades),
                    ElementsAre(Error{"f.json#/selectors/0/grades_mm", "grades that do not rise",
                                      "grades from the smallest to the largest"}));
    EXPECT_THAT(changed("/selectors/0/grades_mm", json::array()),
                ElementsAre(Field(&Error::found, "no grade")));
}

TEST(ChainErrors, ASelectorMovesTheChainThatItSets) {
    EXPECT_THAT(changed("/selectors/0/dimension", "d"),
                ElementsAre(Error{"f.json#/selectors/0/dimension", "\"d\"", "a link of gap, which it sets"}));
    EXPECT_THAT(changed("/selectors/0/sets", "NOBODY"),
                ElementsAre(Error{"f.json#/selectors/0/sets", "\"NOBODY\"", "a chain: gap or play"}));
    EXPECT_THAT(measuredFrame().set("/selectors/0/dimension", "d").set("/selectors/0/sets", "play").errors(),
                ElementsAre(Error{"f.json#/selectors/0/sets", "\"play\"",
                                  "a chain whose window has both ends: its middle is the target"}));
}

TEST(ChainErrors, TheLeverHangsOnWhatIsThere) {
    const auto lost = [](const char* pointer, const char* allowed) {
        EXPECT_THAT(changed(pointer, "NOBODY"),
                    ElementsAre(AllOf(Field(&Error::where, std::string{"f.json#"} + pointer),
                                      Field(&Error::allowed, HasSubstr(allowed)))));
    };
    lost("/lever/nose_reading", "a quantity");
    lost("/lever/turbine_reading", "a quantity");
    lost("/lever/compressor_play", "a chain: gap or play");
    lost("/lever/turbine_play", "a chain: gap or play");
    EXPECT_THAT(changed("/lever/bearing_length_mm", 44),
                ElementsAre(Error{"f.json#/lever/bearing_length_mm", "44", "less than span_mm, 44"}));
    EXPECT_THAT(changed("/lever/nose_mm", 4.5),
                ElementsAre(Error{"f.json#/lever/nose_mm", "4.5", "a place outside the bearing"}));
}

} // namespace gapwise
