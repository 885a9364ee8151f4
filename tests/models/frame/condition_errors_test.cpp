#include "tests/support/print_error.h"
#include "tests/support/tightened_frame.h"

#include <gmock/gmock.h>

namespace gapwise {

using testing::ElementsAre;
using testing::IsEmpty;

namespace {

nlohmann::json rule(const char* id, const nlohmann::json& demand, const char* lastLook = "S1") {
    nlohmann::json rule{{"id", id},        {"severity", 3},         {"printed", "as printed"},
                        {"reason", "why"}, {"last_look", lastLook}, {"source", "invented"}};
    rule.update(demand);
    return rule;
}

nlohmann::json condition(const char* part, const char* state) {
    return {{"kind", "condition"}, {"part", part}, {"state", state}};
}

nlohmann::json hand(const char* turned, const char* side) {
    return {{"kind", "hand"}, {"fastener", "N"}, {"turned", turned}, {"seen_from", side}};
}

} // namespace

TEST(ConditionErrors, APartMayBeNewAndOiled) {
    EXPECT_THAT(ChangedFrame{}
                    .add("/rules", rule("a", condition("BUSH", "new")))
                    .add("/rules", rule("b", condition("BUSH", "oiled")))
                    .errors(),
                IsEmpty());
}

TEST(ConditionErrors, APartIsNotDryAndOiled) {
    EXPECT_THAT(ChangedFrame{}
                    .add("/rules", rule("a", condition("BUSH", "dry")))
                    .add("/rules", rule("b", condition("BUSH", "oiled")))
                    .errors(),
                ElementsAre(Error{"f.json#/rules/13/state", "\"oiled\", but a wants BUSH dry",
                                  "states of BUSH that can be true together"}));
}

TEST(ConditionErrors, AStateIsDemandedOnce) {
    EXPECT_THAT(
        ChangedFrame{}
            .add("/rules", rule("a", condition("BUSH", "new")))
            .add("/rules", rule("b", condition("BUSH", "new")))
            .errors(),
        ElementsAre(Error{"f.json#/rules/13", "BUSH new, as a says already", "each state of a part once"}));
}

TEST(ConditionErrors, StateAndPartAreKnown) {
    EXPECT_THAT(
        ChangedFrame{}.add("/rules", rule("a", condition("BUSH", "shiny"))).errors(),
        ElementsAre(Error{"f.json#/rules/12/state", "\"shiny\"", "new, oiled, greased, coated or dry"}));
    EXPECT_THAT(ChangedFrame{}.add("/rules", rule("a", condition("NOBODY", "new"))).errors(),
                ElementsAre(testing::Field(&Error::where, "f.json#/rules/12/part")));
}

TEST(HandErrors, ARuleWantsWhatTheFastenerTightens) {
    EXPECT_THAT(tightenedFrame().add("/rules", rule("a", hand("counter_clockwise", "compressor"))).errors(),
                IsEmpty());
    EXPECT_THAT(tightenedFrame().add("/rules", rule("a", hand("clockwise", "turbine"))).errors(), IsEmpty());
    EXPECT_THAT(tightenedFrame().add("/rules", rule("a", hand("clockwise", "compressor"))).errors(),
                ElementsAre(Error{"f.json#/rules/12/turned", "clockwise, seen from the compressor side",
                                  "as N tightens: counter_clockwise, seen from the compressor side"}));
}

TEST(HandErrors, SomePieceCarriesTheRule) {
    EXPECT_THAT(tightenedFrame()
                    .erase("/parts/7", "fastener")
                    .add("/rules", rule("a", hand("counter_clockwise", "compressor")))
                    .errors(),
                ElementsAre(Error{"f.json#/rules/12/fastener", "\"N\", of which no piece is a part",
                                  "a fastener that a part names as its own"}));
}

TEST(OrderErrors, AStepOfAnOrderRuleNeedsOthers) {
    const nlohmann::json first{{"kind", "order"}, {"step", "S1"}};
    const nlohmann::json second{{"kind", "order"}, {"step", "S2"}};
    EXPECT_THAT(ChangedFrame{}.add("/rules", rule("a", first)).errors(),
                ElementsAre(Error{"f.json#/rules/12/step", "\"S1\", which needs no other step",
                                  "a step with something under after"}));
    EXPECT_THAT(ChangedFrame{}.add("/rules", rule("a", second)).errors(), IsEmpty());
}

} // namespace gapwise
