#include "models/card/card.h"
#include "models/card/card_words.h"
#include "models/frame/read_frame.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <array>

namespace gapwise {

namespace {

Frame bundledFrame(const char* id) {
    return readFrame(DataFolder{GAPWISE_TEST_SHARE}, id).value();
}

PartCard cardOf(const char* frame, const char* part) {
    return partCardOf(bundledFrame(frame), PartId{part});
}

constexpr std::array kFrames{"alder-72", "alder-72-pinned", "birch-150"};

} // namespace

// One rule, rounded to the bearing, for all four rings: what is seen follows from which of ring and bearing
// lies nearer to the eye. By geometry: r = sign(z of the bearing - z of the ring).
TEST(BundledCards, TheFourSnapRingsShowTheirFacesByWhereTheirBearingLies) {
    struct Row {
        const char* ring;
        const char* fromCompressor;
        const char* fromTurbine;
    };
    constexpr std::array<Row, 4> kRows{{{"SR-CO", "sharp", "rounded"},
                                        {"SR-CI", "rounded", "sharp"},
                                        {"SR-TI", "sharp", "rounded"},
                                        {"SR-TO", "rounded", "sharp"}}};
    for (const Row& row : kRows) {
        const PartCard card = cardOf("alder-72", row.ring);
        EXPECT_EQ(rightSightOf(card, Side::Compressor).face, row.fromCompressor) << row.ring;
        EXPECT_EQ(rightSightOf(card, Side::Turbine).face, row.fromTurbine) << row.ring;
    }
}

TEST(BundledCards, InnerAndOuterRingOfOneBearingShowOppositeFaces) {
    for (const auto& [inner, outer] : {std::pair{"SR-CI", "SR-CO"}, std::pair{"SR-TI", "SR-TO"}})
        for (const Side side : {Side::Compressor, Side::Turbine})
            EXPECT_NE(rightSightOf(cardOf("alder-72", inner), side).referenceFace,
                      rightSightOf(cardOf("alder-72", outer), side).referenceFace);
}

TEST(BundledCards, TheNarrowestClockIsTheOneToBeSeen) {
    // PR-T1 of Birch-150 (invented): left from the turbine side ± 20°, and 45° off the drain at least.
    const RightSight sight = rightSightOf(cardOf("birch-150", "PR-T1"), Side::Turbine);
    ASSERT_TRUE(sight.clock);
    EXPECT_DOUBLE_EQ(sight.clock->value, 270.0);
    EXPECT_DOUBLE_EQ(sight.tolerance.value, 20.0);
    EXPECT_TRUE(sight.face.empty()) << "a seal ring may go in either way round";
}

TEST(BundledCards, ADowelHoleIsNotTheMark) {
    const PartCard card = cardOf("birch-150", "THRUST");
    const RightSight sight = rightSightOf(card, Side::Compressor);
    ASSERT_TRUE(sight.clock);
    EXPECT_DOUBLE_EQ(sight.clock->value, 0.0);
    EXPECT_DOUBLE_EQ(sight.tolerance.value, 5.0) << "of the mark, not of the dowels";
}

TEST(BundledCards, EveryPartSaysWhatItIsAndEveryRuleStandsOnACard) {
    for (const char* id : kFrames) {
        const Frame frame = bundledFrame(id);
        for (const Part& part : frame.parts) {
            const PartCard card = partCardOf(frame, part.id);
            EXPECT_FALSE(card.name.empty() || card.function.empty() || card.material.empty()) << part.id.text;
            EXPECT_GT(card.massKg, 0.0) << part.id.text;
            for (const CardDemand& demand : card.demands) {
                EXPECT_FALSE(wordsOf(demand).empty()) << demand.rule.text;
                EXPECT_FALSE(demand.reason.empty()) << demand.rule.text;
                EXPECT_FALSE(demand.lastLook.empty()) << demand.rule.text;
            }
        }
        for (const Rule& rule : frame.rules) {
            const PartCard card = partCardOf(frame, partsOf(rule).front());
            EXPECT_TRUE(std::ranges::any_of(card.demands, [&](const CardDemand& demand) {
                return demand.rule == rule.id;
            })) << rule.id.text;
        }
    }
}

} // namespace gapwise
