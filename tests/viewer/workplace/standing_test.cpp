#include "viewer/workplace/standing.h"

#include <gtest/gtest.h>

namespace gapwise {

namespace {

PersonStanding usual() {
    return {.journal = "/state/1-alder-72.journal",
            .standpoint = {.observer = {.stand = Degrees{90.0}, .levelSide = Side::Turbine},
                           .freeAzimuth = Degrees{-12.5},
                           .freeElevation = Degrees{33.0},
                           .pulledApart = 0.4,
                           .zoom = 2.5,
                           .section = Section{.kind = Section::Kind::Quarter,
                                              .removed = Clock::seenFrom(Side::Turbine, Degrees{30.0})},
                           .casings = true},
            .inHand = PartId{"SR-CO"},
            .fastenerInHand = FastenerId{"T3"},
            .measurementInHand = MeasurementId{"M01"},
            .step = StepId{"S13"},
            .about = PartId{"HOUSING"},
            .measures = MeasuresPage{MeasuresPage::Kind::Stack, QuantityId{"c"}}};
}

} // namespace

TEST(Standing, ComesBackAsItWasForEveryLook) {
    for (const LookKind kind : {LookKind::WhereIStand, LookKind::FromCompressor, LookKind::FromTurbine,
                                LookKind::Beside, LookKind::Free, LookKind::BothEnds}) {
        PersonStanding standing = usual();
        standing.standpoint.kind = kind;
        EXPECT_EQ(standingIn(toText(standing)), standing);
        standing.inHand.reset();
        standing.fastenerInHand.reset();
        standing.step.reset();
        standing.about.reset();
        standing.measurementInHand.reset();
        standing.measures.reset();
        EXPECT_EQ(standingIn(toText(standing)), standing);
    }
}

TEST(Standing, RemembersHowThePieceIsCutOpen) {
    PersonStanding standing = usual();
    for (const std::optional<Section>& section : {std::optional<Section>{}, std::optional{Section{}},
                                                  std::optional{Section{.kind = Section::Kind::Quarter}}}) {
        standing.standpoint.section = section;
        EXPECT_EQ(standingIn(toText(standing))->standpoint.section, section);
    }
}

// What earlier programs wrote.
TEST(Standing, OfAnEarlierProgramIsWholeOrCutInTwo) {
    EXPECT_EQ(standingIn(R"({"journal":"a","section":true})")->standpoint.section, Section{});
    EXPECT_FALSE(standingIn(R"({"journal":"a","section":false})")->standpoint.section);
    EXPECT_FALSE(standingIn(R"({"journal":"a"})")->standpoint.section);
    EXPECT_EQ(standingIn(R"({"journal":"a","section":"half","section_deg":"left"})")->standpoint.section,
              Section{});
}

TEST(Standing, RemembersEveryPageOfTheMeasurements) {
    using Kind = MeasuresPage::Kind;
    PersonStanding standing = usual();
    for (const Kind kind :
         {Kind::Readings, Kind::Parts, Kind::Stack, Kind::Effects, Kind::Choose, Kind::Causes}) {
        standing.measures = MeasuresPage{kind};
        EXPECT_EQ(standingIn(toText(standing))->measures, standing.measures);
    }
    EXPECT_FALSE(standingIn(R"({"journal":"a","measures":"elsewhere","chain":"c"})")->measures);
}

TEST(Standing, EveryTruncationIsNothing) {
    const std::string text = toText(usual());
    for (std::size_t length = 0; length + 2 < text.size(); ++length)
        EXPECT_FALSE(standingIn(text.substr(0, length))) << length;
}

TEST(Standing, NumbersOutOfRangeFallBack) {
    const auto standing = standingIn(
        R"({"journal":"a","zoom":0,"pulled_apart":7,"elevation_deg":400,"look":"sideways","section":"yes"})");
    ASSERT_TRUE(standing);
    EXPECT_EQ(standing->standpoint, Standpoint{});
}

TEST(Standing, WithoutAJournalIsNothing) {
    EXPECT_FALSE(standingIn(R"({"look":"free"})"));
    EXPECT_FALSE(standingIn("[]"));
    EXPECT_FALSE(standingIn("/state/1-alder-72.journal"));
}

} // namespace gapwise
