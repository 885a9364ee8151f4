#include "models/card/card.h"

#include "models/card/card_words.h"
#include "models/check/face_words.h"
#include "models/check/severity.h"
#include "tests/support/small_frame.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace gapwise {

namespace {

using testing::ElementsAre;
using testing::HasSubstr;

Frame smallFrame() {
    return ChangedFrame{}.read().value();
}

/// The small frame with everything that a card may tell; all of it invented.
Frame fullFrame() {
    ChangedFrame changed;
    const auto list = nlohmann::json::array();
    for (const char* key : {"/cautions", "/measurements", "/fasteners", "/without_rule"})
        changed.set(key, list);
    changed
        .add("/cautions", {{"id", "oil"},
                           {"signal", "notice"},
                           {"words", "clean oil"},
                           {"parts", {"SR"}},
                           {"source", "invented"}})
        .add("/cautions", {{"id", "spring"},
                           {"signal", "warning"},
                           {"words", "it springs off"},
                           {"steps", {"S2"}},
                           {"source", "invented"}})
        .add("/cautions", {{"id", "hot"},
                           {"signal", "danger"},
                           {"words", "hot"},
                           {"steps", {"S4"}},
                           {"source", "invented"}})
        .add("/measurements", {{"id", "M2"},
                               {"name", "gap as seated"},
                               {"where", "in its groove"},
                               {"step", "S2"},
                               {"parts", {"SR"}}})
        .add("/fasteners", {{"id", "T1"},
                            {"name", "screws of the collar"},
                            {"size", "2 × M4×10"},
                            {"tightens", "counter_clockwise"},
                            {"seen_from", "turbine"},
                            {"step", "S4"},
                            {"parts", {"COLLAR"}}})
        .add("/without_rule", {{"trade_id", "O06"}, {"why", "no ring of this frame is split"}})
        .add("/without_rule", {{"trade_id", "O28"}, {"why", "COLLAR has no tab plate"}})
        .set("/parts/4/fastener", "T1")
        .set("/part_types/2/lubricant", {{"use", "clean engine oil"}, {"never", "grease"}});
    return changed.read().value();
}

const CardDemand& demandIn(const PartCard& card, const char* rule) {
    for (const CardDemand& demand : card.demands)
        if (demand.rule.text == rule)
            return demand;
    throw std::out_of_range(rule);
}

template <class Kind>
Kind demandedIn(const char* part, const char* rule) {
    return std::get<Kind>(demandIn(partCardOf(smallFrame(), PartId{part}), rule).demanded);
}

std::string wordsIn(const char* part, const char* rule) {
    return wordsOf(demandIn(partCardOf(smallFrame(), PartId{part}), rule));
}

} // namespace

TEST(PartCard, SaysWhatThePartIs) {
    const PartCard card = partCardOf(fullFrame(), PartId{"SR"});
    EXPECT_EQ(card.name, "snap ring");
    EXPECT_EQ(card.type.text, "snap-ring");
    EXPECT_EQ(card.tradeId, "P01");
    EXPECT_EQ(card.function, "holds");
    EXPECT_EQ(card.material, "steel");
    EXPECT_DOUBLE_EQ(card.massKg, 0.01);
    ASSERT_TRUE(card.lubricant);
    EXPECT_EQ(card.lubricant->use, "clean engine oil");
    EXPECT_EQ(card.lubricant->never, "grease");
}

TEST(PartCard, OfAnUnknownPartIsEmptyButForItsId) {
    const PartCard card = partCardOf(smallFrame(), PartId{"NONE"});
    EXPECT_EQ(card.id.text, "NONE");
    EXPECT_TRUE(card.name.empty());
    EXPECT_TRUE(card.demands.empty());
}

TEST(PartCard, ThreeFromTheCompressorSideIsNineFromTheTurbineSide) {
    ChangedFrame changed;
    changed.set("/rules/0/seen_from", "compressor");
    const PartCard card = partCardOf(changed.read().value(), PartId{"SR"});
    const auto clock = std::get<DemandedClock>(demandIn(card, "SR.gap").demanded);
    EXPECT_DOUBLE_EQ(clock.target.from(Side::Compressor).value, 90.0);
    EXPECT_DOUBLE_EQ(clock.target.from(Side::Turbine).value, 270.0);
    EXPECT_EQ(clock.printedFrom, Side::Compressor);
    EXPECT_DOUBLE_EQ(clock.tolerance.value, 30.0);
    EXPECT_EQ(hoursAndMinutes(*rightSightOf(card, Side::Compressor).clock), "3:00");
    EXPECT_EQ(hoursAndMinutes(*rightSightOf(card, Side::Turbine).clock), "9:00");
}

TEST(PartCard, AClockPrintedFromTheTurbineSideIsSaidFromThereFirst) {
    EXPECT_EQ(wordsIn("SR", "SR.gap"),
              "gap at 3:00 from the turbine side, 9:00 from the compressor side; ± 30°, inlet on top");
    EXPECT_EQ(wordsIn("PR-1", "PR-1.gap"), "gap at 12:00 from both sides; ± 30°, inlet on top");
}

TEST(PartCard, AFaceSaysWhatEachSideSees) {
    const auto face = demandedIn<DemandedFace>("SR", "SR.face");
    EXPECT_EQ(face.toward, PartId{"BUSH"});
    EXPECT_EQ(face.looks, Side::Turbine) << "the bush lies deeper";
    const PartCard card = partCardOf(smallFrame(), PartId{"SR"});
    EXPECT_EQ(rightSightOf(card, Side::Compressor).face, "sharp");
    EXPECT_FALSE(rightSightOf(card, Side::Compressor).referenceFace);
    EXPECT_EQ(rightSightOf(card, Side::Turbine).face, "rounded");
    EXPECT_EQ(rightSightWords(card, Side::Turbine), "the rounded face, the gap at 3:00 ± 30°");
}

TEST(PartCard, AGapThatMustClearAFeatureSaysWhereThatIs) {
    const auto clear = demandedIn<DemandedClear>("SR", "SR.clear");
    EXPECT_EQ(clear.name, "spill slot");
    ASSERT_TRUE(clear.at);
    EXPECT_DOUBLE_EQ(clear.at->from(Side::Compressor).value, 180.0);
    EXPECT_DOUBLE_EQ(clear.margin.value, 10.0);
    // asin(4/20) + asin(3/20) + 10, by the definition of the exclusion half-angle: 11.537 + 8.627 + 10.
    EXPECT_NEAR(clear.betweenMiddles.value, 30.164, 0.001);
}

TEST(PartCard, GapsApartNameTheOtherRing) {
    const PartCard card = partCardOf(smallFrame(), PartId{"PR-1"});
    EXPECT_THAT(demandIn(card, "PR.apart").with, ElementsAre(PartId{"PR-2"}));
    EXPECT_EQ(wordsIn("PR-1", "PR.apart"), "gap 180° ± 20° away from that of PR-2");
    EXPECT_EQ(wordsIn("PR-2", "PR.apart"), "gap 180° ± 20° away from that of PR-1");
}

TEST(PartCard, MarksInLineNameAllTheOthers) {
    EXPECT_EQ(wordsIn("COLLAR", "marks"), "match mark in one line with those of ROTOR, within 5°");
    EXPECT_EQ(wordsIn("ROTOR", "marks"), "match mark in one line with those of COLLAR, within 5°");
}

TEST(PartCard, AMarkSaysItsClock) {
    EXPECT_EQ(demandedIn<DemandedClock>("COLLAR", "COLLAR.mark").what, "match mark");
}

TEST(PartCard, JointAndSeatAreFacts) {
    EXPECT_EQ(demandedIn<DemandedFact>("PR-1", "PR-1.joint").what, "a straight joint");
    EXPECT_EQ(demandedIn<DemandedFact>("SR", "SR.seat").what, "snap ring, fully home");
}

TEST(PartCard, ANotchIsDemandedOverItsPinOnBothCards) {
    const auto notch = demandedIn<DemandedClock>("BUSH", "BUSH.notch");
    EXPECT_EQ(notch.on, "PIN");
    EXPECT_DOUBLE_EQ(notch.target.from(Side::Compressor).value, 180.0) << "where the pin's hole is";
    EXPECT_EQ(wordsIn("PIN", "BUSH.notch"),
              "notch of BUSH over PIN at 6:00 from both sides; ± 0.5°, inlet on top");
    EXPECT_FALSE(rightSightOf(partCardOf(smallFrame(), PartId{"PIN"}), Side::Compressor).clock)
        << "the pin itself has no index";
}

TEST(PartCard, APartOfWhichNoRuleSpeaksHasNoDemands) {
    const PartCard card = partCardOf(smallFrame(), PartId{"HOUSING"});
    EXPECT_TRUE(card.demands.empty());
    EXPECT_TRUE(rightSightWords(card, Side::Compressor).empty());
    EXPECT_TRUE(card.allowed.contains(Degrees{17.0}));
}

TEST(PartCard, TellsTheLastLookAndWhatHidesIt) {
    const PartCard card = partCardOf(smallFrame(), PartId{"SR"});
    EXPECT_EQ(demandIn(card, "SR.gap").lastLook, (CardStep{StepId{"S2"}, "Place the snap ring"}));
    EXPECT_EQ(card.placedIn.id.text, "S2");
    EXPECT_EQ(card.hiddenBy.id.text, "S3");
    EXPECT_EQ(card.entersFrom, Side::Compressor);
    EXPECT_EQ(lastLookWords(card), "before S3 Insert the rotor, which hides it");
    EXPECT_EQ(lastLookWords(partCardOf(smallFrame(), PartId{"COLLAR"})), "no step hides it");
}

TEST(PartCard, CautionsOfThePartAndOfItsStepComeGravestFirst) {
    const PartCard card = partCardOf(fullFrame(), PartId{"SR"});
    ASSERT_EQ(card.cautions.size(), 2U) << "the one at S4 is not of this part";
    EXPECT_EQ(card.cautions[0].id, "spring");
    EXPECT_EQ(card.cautions[0].signal, Signal::Warning);
    EXPECT_THAT(card.cautions[0].steps, ElementsAre(CardStep{StepId{"S2"}, "Place the snap ring"}));
    EXPECT_EQ(card.cautions[1].id, "oil");
}

TEST(PartCard, TellsWhatIsMeasuredAndTightenedThere) {
    const PartCard ring = partCardOf(fullFrame(), PartId{"SR"});
    ASSERT_EQ(ring.measurements.size(), 1U);
    EXPECT_EQ(ring.measurements[0].where, "in its groove");
    EXPECT_EQ(ring.measurements[0].step.title, "Place the snap ring");
    const PartCard collar = partCardOf(fullFrame(), PartId{"COLLAR"});
    ASSERT_EQ(collar.fasteners.size(), 1U);
    EXPECT_EQ(collar.fasteners[0].role, CardFastener::Role::HoldsPart);
    EXPECT_EQ(tighteningWords(collar.fasteners[0]),
              "turn counter-clockwise to tighten, as seen from the turbine side");
}

TEST(PartCard, APieceOfASetShowsTheSet) {
    const PartCard card = partCardOf(fullFrame(), PartId{"PIN"});
    ASSERT_EQ(card.fasteners.size(), 1U);
    EXPECT_EQ(card.fasteners[0].role, CardFastener::Role::PartIsOneOf);
    EXPECT_EQ(card.fasteners[0].size, "2 × M4×10");
    EXPECT_THAT(card.fasteners[0].pieces, ElementsAre(PartId{"PIN"}));
    EXPECT_THAT(card.fasteners[0].holds, ElementsAre(PartId{"COLLAR"}));
}

TEST(PartCard, AnOrientationWithoutARuleStandsWhereItsReasonPoints) {
    EXPECT_EQ(partCardOf(fullFrame(), PartId{"HOUSING"}).withoutRule.at(0).tradeId, "O06");
    EXPECT_EQ(partCardOf(fullFrame(), PartId{"COLLAR"}).withoutRule.at(0).tradeId, "O28");
    EXPECT_TRUE(partCardOf(fullFrame(), PartId{"SR"}).withoutRule.empty());
}

TEST(CardWords, MassesStandAsOnAPartsList) {
    EXPECT_EQ(massWords(0.0007), "0.7 g");
    EXPECT_EQ(massWords(0.098), "98 g");
    EXPECT_EQ(massWords(0.97), "970 g");
    EXPECT_EQ(massWords(2.5), "2.5 kg");
    EXPECT_EQ(massWords(27.7), "27.7 kg");
}

TEST(SeverityWord, EachNumberHasItsOwn) {
    EXPECT_EQ(severityWord(1), "cosmetic");
    EXPECT_EQ(severityWord(2), "leak or loss of performance");
    EXPECT_EQ(severityWord(3), "early wear");
    EXPECT_EQ(severityWord(4), "fails at start-up");
}

TEST(FaceWords, TheTwoFacesOfAPartAreNeverCalledTheSame) {
    for (const FaceKind kind : {FaceKind::None, FaceKind::Rounded, FaceKind::Marked, FaceKind::EndMark,
                                FaceKind::Running, FaceKind::Chamfered, FaceKind::Dished})
        EXPECT_NE(faceWord(kind), otherFaceWord(kind));
    EXPECT_THAT(std::string{faceTest(FaceKind::Rounded)}, HasSubstr("fingernail"));
}

} // namespace gapwise
