#include "models/frame/read_frame.h"

#include "tests/support/print_error.h"

#include <gmock/gmock.h>

#include <fmt/format.h>

#include <map>
#include <set>

namespace gapwise {

namespace {

using ::testing::Contains;
using ::testing::IsSupersetOf;
using ::testing::Not;

/// The orientations that the trade knows, O01 to O28; the list is common practice, no source.
std::set<std::string> knownOrientations() {
    std::set<std::string> known;
    for (int number = 1; number <= 28; ++number)
        known.insert(fmt::format("O{:02}", number));
    return known;
}

class Orientations : public ::testing::TestWithParam<const char*> {
protected:
    void SetUp() override {
        Result<Frame> frame = readFrame(DataFolder{GAPWISE_TEST_SHARE}, GetParam(), Validation::Full);
        ASSERT_TRUE(frame) << describe(frame.errors().front());
        frame_ = std::move(frame).value();
    }

    std::set<std::string> ruled() const {
        std::set<std::string> ids;
        for (const Rule& rule : frame_.rules)
            if (!rule.tradeId.empty())
                ids.insert(rule.tradeId);
        return ids;
    }

    Frame frame_{};
};

} // namespace

INSTANTIATE_TEST_SUITE_P(Bundled, Orientations, ::testing::Values("alder-72", "alder-72-pinned", "birch-150"),
                         [](const auto& frame) {
                             std::string name = frame.param;
                             std::erase(name, '-');
                             return name;
                         });

TEST_P(Orientations, EachHasARuleOrAReasonWhyNot) {
    std::set<std::string> answered = ruled();
    for (const WithoutRule& without : frame_.withoutRule)
        answered.insert(without.tradeId);
    EXPECT_EQ(answered, knownOrientations());
}

TEST_P(Orientations, NoneHasBoth) {
    const std::set<std::string> ids = ruled();
    for (const WithoutRule& without : frame_.withoutRule)
        EXPECT_THAT(ids, Not(Contains(without.tradeId)));
}

// Common practice, no source: the rotor stack carries one line from the shaft to the nut.
TEST_P(Orientations, TheMatchMarksRunOverAllCarriers) {
    std::set<std::string> marked;
    for (const Rule& rule : frame_.rules)
        if (rule.tradeId == "O17")
            for (const PartId& part : partsOf(rule))
                marked.insert(part.text);
    EXPECT_THAT(marked, IsSupersetOf({"ROTOR", "COLLAR-A", "COLLAR-B", "WHEEL", "NUT"}));
}

// A feature that a rule speaks of can be seen on the part: its shape has a name for it.
TEST_P(Orientations, EveryMarkThatARuleSpeaksOfIsOnThePart) {
    const std::map<IndexKind, std::string> named{{IndexKind::Gap, "gap"},
                                                 {IndexKind::Notch, "notch"},
                                                 {IndexKind::TopMark, "TOP mark"},
                                                 {IndexKind::Arrow, "arrow"},
                                                 {IndexKind::MatchMark, "line"}};
    for (const PartType& type : frame_.types) {
        const auto name = named.find(type.index);
        if (name == named.end())
            continue;
        const bool there = std::ranges::any_of(type.shape.features, [&](const Feature& feature) {
            return feature.name.find(name->second) != std::string::npos && feature.offset.value == 0.0;
        });
        EXPECT_TRUE(there) << type.id.text << " has no " << name->second << " at its index";
    }
}

// Common practice, no source: a rotor that turns clockwise seen from the nose carries a left-hand nut.
TEST_P(Orientations, TheShaftNutTightensAgainstTheRotation) {
    const Fastener* nut = frame_.fastener(FastenerId{"T3"});
    ASSERT_NE(nut, nullptr);
    EXPECT_EQ(nut->handSeenFrom, frame_.rotationSeenFrom);
    EXPECT_NE(nut->tightensClockwise, frame_.rotatesClockwise);
    const PartType* rotor = frame_.typeOf(frame_.rotor);
    ASSERT_FALSE(rotor->shape.threads.empty());
    EXPECT_TRUE(rotor->shape.threads.front().leftHand);
}

// Common practice, no source: the inducer edge of the compressor wheel leads its blade, the exducer edge of
// the turbine lags, for a rotor that turns clockwise seen from the compressor.
TEST_P(Orientations, TheBladesLeanForTheStatedRotation) {
    ASSERT_TRUE(frame_.rotatesClockwise);
    for (const Blades& blades : frame_.typeOf(PartId{"WHEEL"})->shape.blades)
        EXPECT_GT(blades.lean.value, 0.0);
    for (const Blades& blades : frame_.typeOf(frame_.rotor)->shape.blades)
        EXPECT_LT(blades.lean.value, 0.0);
}

TEST_P(Orientations, EveryPieceOfAFastenerNamesItAndEveryFastenerStandsInAStep) {
    for (const Part& part : frame_.parts)
        if (part.fastener) {
            EXPECT_NE(frame_.fastener(*part.fastener), nullptr) << part.id.text;
        }
    for (const Fastener& fastener : frame_.fasteners)
        EXPECT_NE(frame_.step(fastener.step), nullptr) << fastener.id.text;
}

// Common practice, no source: a left-hand nut tightens counter-clockwise to a person who faces it.
TEST_P(Orientations, TheHandOfTheShaftNutIsARule) {
    const Rule* rule = frame_.rule(RuleId{"NUT.hand"});
    const auto* hand = rule ? std::get_if<HandRule>(&rule->demand) : nullptr;
    ASSERT_NE(hand, nullptr);
    EXPECT_EQ(rule->tradeId, "O19");
    EXPECT_EQ(rule->severity, 4);
    EXPECT_EQ(hand->part, PartId{"NUT"});
    EXPECT_FALSE(hand->clockwise);
    EXPECT_EQ(hand->seenFrom, Side::Compressor);
}

// Common practice, no source: what is renewed at every assembly, whatever it looks like.
TEST_P(Orientations, WhatIsAlwaysRenewedIsWantedNew) {
    std::set<std::string> wanted;
    for (const Rule& rule : frame_.rules)
        if (const auto* condition = std::get_if<ConditionRule>(&rule.demand);
            condition && condition->state == "new")
            wanted.insert(condition->part.text);
    std::set<std::string> renewed;
    for (const Part& part : frame_.parts)
        for (const char* kind :
             {"SR-", "PR-", "BRG-", "ORING", "THRUST", "SHIELD-GASKET", "INLET-G", "DRAIN-G"})
            if (part.id.text.starts_with(kind))
                renewed.insert(part.id.text);
    EXPECT_EQ(wanted, renewed);
}

// Oil where the trade wants oil, nothing where a clamp needs bare metal (common practice, no source).
TEST_P(Orientations, SurfacesThatAClampReliesOnAreDryAndThreadsOiled) {
    const std::map<std::string, std::string> expected{
        {"ROTOR", "oiled"}, {"NUT", "oiled"},  {"BRG-T", "oiled"},  {"BRG-C", "oiled"},
        {"WHEEL", "dry"},   {"SPACER", "dry"}, {"COLLAR-A", "dry"}, {"COLLAR-B", "dry"}};
    std::map<std::string, std::string> stated;
    for (const Rule& rule : frame_.rules)
        if (const auto* condition = std::get_if<ConditionRule>(&rule.demand);
            condition && condition->state != "new")
            stated[condition->part.text] = condition->state;
    EXPECT_EQ(stated, expected);
}

} // namespace gapwise
