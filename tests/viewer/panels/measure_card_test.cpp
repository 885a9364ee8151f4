#include "tests/viewer/panels/desk.h"

#include "tests/viewer/panels/screen_checks.h"
#include "viewer/panels/measure_work.h"

#include <gmock/gmock.h>
#include <imgui.h>

namespace gapwise::desk {

namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;

/// A clearance, a diameter in four places and four feeler gaps; all numbers invented.
std::vector<Measurement> gauged() {
    const Method rock{.id = "push-pull", .words = "dial on the shaft end", .gauges = {"dial_indicator"}};
    const Method lift{.id = "by-feel", .words = "pushed by hand only", .blind = "what springs back"};
    Measurement clearance{.id = MeasurementId{"axial"},
                          .name = "axial clearance",
                          .where = "dial on the shaft end, pushed and pulled",
                          .step = StepId{"S31"},
                          .before = StepId{"D1"},
                          .methods = {rock, lift}};
    clearance.quantities.push_back(
        {.id = QuantityId{"c"},
         .name = "axial clearance",
         .expected = 0.07,
         .limits = {.fresh = {0.05, 0.09}, .service = {0.05, 0.12}, .method = "push-pull"}});
    Measurement journals{
        .id = MeasurementId{"journals"},
        .name = "journal diameter",
        .where = "each in 2 planes, 2 directions",
        .step = StepId{"S03"},
        .methods = {
            {.id = "micrometer", .words = "outside micrometer", .gauges = {"flat_anvil_micrometer"}}}};
    for (const char* id : {"d_A", "d_B"})
        journals.quantities.push_back(
            {.id = QuantityId{id},
             .name = "journal",
             .points = {"plane 1, 0°", "plane 1, 90°", "plane 2, 0°", "plane 2, 90°"},
             .planes = 2,
             .takes = Takes::Least,
             .expected = 11.992,
             .limits = {.fresh = {11.99, 11.995}, .service = {11.98, std::nullopt}, .method = "micrometer"}});
    Measurement tips{.id = MeasurementId{"tips"},
                     .name = "tip clearance",
                     .where = "feelers, seen from the turbine side",
                     .step = StepId{"S37"},
                     .methods = {{.id = "feelers", .words = "feelers", .gauges = {"feeler_gauges"}}}};
    tips.quantities.push_back({.id = QuantityId{"tip"},
                               .name = "tip clearance",
                               .points = {"12:00", "3:00", "6:00", "9:00"},
                               .expected = 0.5,
                               .limits = {.fresh = {0.4, 0.6}, .method = "feelers"},
                               .fourPoint = FourPointPlan{.seenFrom = Side::Turbine, .pointLeast = 0.25}});
    return {clearance, journals, tips};
}

std::vector<Instrument> gauges() {
    const auto one = [](const char* id, const char* kind, double least, double most, const char* until) {
        return Instrument{.id = id,
                          .kind = kind,
                          .name = "gauge",
                          .resolution = 0.001,
                          .uncertainty = 0.003,
                          .least = least,
                          .most = most,
                          .calibratedUntil = until};
    };
    return {one("MIC-07", "flat_anvil_micrometer", 0.0, 25.0, "2027-03-31"),
            one("MIC-12", "flat_anvil_micrometer", 25.0, 50.0, "2027-03-31"),
            one("DIA-02", "dial_indicator", 0.0, 3.0, "2027-03-31"),
            one("DIA-09", "dial_indicator", 0.0, 3.0, "2026-01-31"),
            one("FEE-04", "feeler_gauges", 0.03, 1.0, "")};
}

class MeasureCard : public ::testing::Test {
protected:
    void open(const char* measurement, Use use = Use::Practise, const char* step = "S31") {
        desk.start("alder-72", use);
        desk.panels.today = "2026-05-04";
        Job& job = *desk.workplace.job;
        job.frame.measurements = gauged();
        job.bench.instruments = gauges();
        job.log.start.attitude = Attitude{};
        desk.at.doneSoFar({}); // Reckons everything anew.
        grant(desk.workplace, OpenStep{StepId{step}});
        grant(desk.workplace, OpenMeasurement{MeasurementId{measurement}});
        desk.frames(3);
    }
    void enter(std::string_view number) {
        desk.type(number);
        desk.key(ImGuiKey_Enter);
        desk.frames(2);
    }
    void press(const std::string& name) {
        desk.click("measure/" + name);
        desk.frames(2);
    }
    const MeasureDrafts& drafts() const { return desk.panels.drafts.measure; }
    const std::vector<Reading>& readings() const { return desk.job().state.build.readings; }

    Desk desk{};
};

} // namespace

TEST_F(MeasureCard, ARepeatIsTypedAndTaken) {
    open("axial");
    enter("0.071");
    enter("0,073");
    EXPECT_TRUE(readings().empty()) << "there may be one repeat more";
    desk.key(ImGuiKey_Enter);
    ASSERT_EQ(readings().size(), 1U);
    EXPECT_THAT(readings()[0].values, ElementsAre(0.071, 0.073)) << "a comma is a point";
    EXPECT_EQ(readings()[0].quantity, "c");
    EXPECT_EQ(readings()[0].unit, "mm");
    EXPECT_EQ(readings()[0].method, "push-pull");
    EXPECT_EQ(readings()[0].on, "2026-05-04");
    EXPECT_EQ(readings()[0].occasion, Occasion::After);
}

TEST_F(MeasureCard, TheKeypadTypesAsTheKeyboardDoes) {
    open("axial");
    for (const char* key : {"key point", "key 0", "key 7", "key 9", "key back", "key 2"})
        press(key);
    EXPECT_EQ(drafts().typed, "0.072");
    press("key next");
    press("take");
    ASSERT_EQ(readings().size(), 1U);
    EXPECT_THAT(readings()[0].values, ElementsAre(0.072));
}

TEST_F(MeasureCard, EveryPlaceIsReadBeforeItIsTaken) {
    open("journals", Use::Practise, "S03");
    for (const char* value : {"11.993", "11.992", "11.994"})
        enter(value);
    desk.key(ImGuiKey_Enter);
    EXPECT_TRUE(readings().empty());
    EXPECT_EQ(drafts().at, 3U);
    enter("11.991");
    desk.key(ImGuiKey_Enter);
    ASSERT_EQ(readings().size(), 1U);
    EXPECT_EQ(readings()[0].quantity, "d_A");
    EXPECT_EQ(readings()[0].instrument, "MIC-07") << "the only one that suits";
    desk.frames(2);
    desk.key(ImGuiKey_Enter);
    EXPECT_EQ(drafts().quantity, QuantityId{"d_B"}) << "and on to the next";
}

TEST_F(MeasureCard, AValueIsTypedAnewAtItsPlace) {
    open("journals", Use::Practise, "S03");
    for (const char* value : {"11.993", "11.992", "11.994"})
        enter(value);
    press("place 2");
    enter("11.990");
    EXPECT_EQ(drafts().at, 3U) << "the next place without a value";
    enter("11.991");
    desk.key(ImGuiKey_Enter);
    ASSERT_EQ(readings().size(), 1U);
    EXPECT_THAT(readings()[0].values, ElementsAre(11.993, 11.990, 11.994, 11.991));
}

TEST_F(MeasureCard, AnImplausibleNumberIsAskedAbout) {
    open("axial");
    enter("0.68");
    ASSERT_TRUE(drafts().doubt);
    ASSERT_TRUE(drafts().doubt->suggestion);
    EXPECT_NEAR(*drafts().doubt->suggestion, 0.068, 1e-9);
    desk.key(ImGuiKey_Enter);
    EXPECT_TRUE(drafts().doubt) << "enter does not answer it";
    press("take instead");
    press("take");
    ASSERT_EQ(readings().size(), 1U);
    EXPECT_NEAR(readings()[0].values[0], 0.068, 1e-9);
}

TEST_F(MeasureCard, WhatIsKeptIsTakenAsItIs) {
    open("axial");
    enter("0.68");
    press("keep");
    press("take");
    ASSERT_EQ(readings().size(), 1U);
    EXPECT_THAT(readings()[0].values, ElementsAre(0.68));
}

TEST_F(MeasureCard, ReadAgainTheLastOneCountsAndUndoBringsTheFirstBack) {
    open("axial");
    for (const char* value : {"0.071", "0.075"}) {
        enter(value);
        desk.key(ImGuiKey_Enter);
        desk.frames(2);
    }
    ASSERT_EQ(readings().size(), 2U);
    EXPECT_THAT(readings()[1].values, ElementsAre(0.075));
    desk.key(ImGuiKey_Z, true);
    EXPECT_EQ(readings().size(), 1U);
}

TEST_F(MeasureCard, AtTheStripDownItIsReadAsReceived) {
    open("axial", Use::Practise, "D1");
    enter("0.11");
    press("take");
    ASSERT_EQ(readings().size(), 1U);
    EXPECT_EQ(readings()[0].occasion, Occasion::Before);
    press("Now");
    enter("0.07");
    press("take");
    ASSERT_EQ(readings().size(), 2U);
    EXPECT_EQ(readings()[1].occasion, Occasion::After);
}

TEST_F(MeasureCard, WhatIsChosenStandsInTheReading) {
    open("axial");
    press("method");
    press("method by-feel");
    press("gauge");
    press("part warmer");
    press("gauge DIA-09");
    enter("0.07");
    press("take");
    ASSERT_EQ(readings().size(), 1U);
    EXPECT_EQ(readings()[0].method, "by-feel");
    EXPECT_EQ(readings()[0].instrument, "DIA-09");
    EXPECT_EQ(readings()[0].temperatureC, 21.0);
    EXPECT_FALSE(readings()[0].gaugeTemperatureC) << "nobody said it";
}

TEST_F(MeasureCard, WhoWorksIsAskedAtTheBenchAndNothingIsLost) {
    open("axial", Use::Bench);
    desk.panels.drafts.box = Drafts::Box::None;
    enter("0.07");
    press("take");
    EXPECT_TRUE(readings().empty());
    EXPECT_EQ(desk.panels.drafts.box, Drafts::Box::Who);
    desk.panels.drafts.box = Drafts::Box::None;
    desk.at.act(PersonCame{"R. Ohlin", Role::Technician});
    desk.frames(2);
    press("take");
    ASSERT_EQ(readings().size(), 1U);
    EXPECT_EQ(readings()[0].by, "R. Ohlin");
}

TEST_F(MeasureCard, WhatIsRefusedStaysTypedWithItsReason) {
    open("axial");
    enter("-0.07");
    ASSERT_TRUE(drafts().doubt) << "of the wrong sign";
    press("keep");
    press("take");
    EXPECT_TRUE(readings().empty()) << "no clearance is below 0";
    EXPECT_THAT(drafts().said, HasSubstr("not taken"));
    press("place 1");
    enter("0.07");
    press("take");
    ASSERT_EQ(readings().size(), 1U);
    EXPECT_THAT(readings()[0].values, ElementsAre(0.07));
}

TEST_F(MeasureCard, DigitsAreNoLooksWhileItIsOpen) {
    open("axial");
    const LookKind before = desk.job().standpoint.kind;
    desk.type("1");
    EXPECT_EQ(desk.job().standpoint.kind, before);
    EXPECT_EQ(drafts().typed, "1");
}

TEST_F(MeasureCard, EscapeLeavesTheChoiceThenTheCard) {
    open("axial");
    press("gauge");
    desk.key(ImGuiKey_Escape);
    EXPECT_TRUE(desk.job().measurementInHand);
    desk.key(ImGuiKey_Escape);
    EXPECT_FALSE(desk.job().measurementInHand);
    EXPECT_EQ(desk.job().step, StepId{"S31"}) << "the card of the step lies there again";
}

TEST_F(MeasureCard, AStepOpensItsMeasurements) {
    open("axial", Use::Practise, "D1");
    grant(desk.workplace, OpenMeasurement{});
    desk.frames(2);
    desk.click("step/tab measure");
    desk.frames(2);
    for (int page = 0; page < 8 && !desk.has("step/measure axial"); ++page)
        desk.click("step/Read on");
    desk.click("step/measure axial");
    EXPECT_EQ(desk.job().measurementInHand, MeasurementId{"axial"});
}

TEST(MeasureWork, PlacesAreNamedByWhatTellsThemApart) {
    const std::vector<Measurement> all = gauged();
    EXPECT_EQ(shortPlace(all[1].quantities[0], 3), "2, 90°");
    EXPECT_EQ(shortPlace(all[2].quantities[0], 1), "3:00");
    EXPECT_EQ(shortPlace(all[0].quantities[0], 1), "2");
}

TEST_F(MeasureCard, AGaugeThatDoesNotSuitSaysWhy) {
    open("journals", Use::Practise, "S03");
    const Job& job = desk.job();
    const MeasureWork work = measureWorkOf(job, job.frame.measurements[1], drafts(), "2026-05-04");
    EXPECT_EQ(gaugeFault(work, job.bench.instruments[0], "2026-05-04"), "");
    EXPECT_THAT(gaugeFault(work, job.bench.instruments[1], "2026-05-04"), HasSubstr("from 25 to 50"));
    EXPECT_THAT(gaugeFault(work, job.bench.instruments[2], "2026-05-04"), HasSubstr("flat anvil micrometer"));
    EXPECT_THAT(gaugeFault(work, job.bench.instruments[0], "2027-05-04"), HasSubstr("2027-03-31"));
}

TEST(MeasureScreens, CardsAreWholeAtTheBenchAndElsewhere) {
    for (const Use use : {Use::Practise, Use::Bench, Use::Show})
        for (const Desk::Size& size : kSizes) {
            Desk desk{size};
            desk.start("alder-72", use);
            desk.panels.today = "2026-05-04";
            Job& job = *desk.workplace.job;
            job.frame.measurements = gauged();
            job.bench.instruments = gauges();
            desk.at.act(AttitudeChanged{uprightAttitude(Side::Compressor, Degrees{180.0}), true});
            desk.at.act(PersonCame{"R. Ohlin", Role::Technician});
            const std::string name = use == Use::Bench ? "bench-" : use == Use::Show ? "show-" : "";
            for (const char* id : {"axial", "journals", "tips"}) {
                grant(desk.workplace, OpenMeasurement{MeasurementId{id}});
                desk.type(id == std::string{"journals"} ? "11.993" : "0.41");
                desk.key(ImGuiKey_Enter);
                desk.frames(2);
                look(desk, size, (name + id).c_str());
                if (use == Use::Bench)
                    expectForGloves(desk);
                for (const char* page : {"quantity", "gauge", "method"}) {
                    desk.click(std::string{"measure/"} + page);
                    desk.frames(2);
                    look(desk, size, (name + id + "-" + page).c_str());
                    if (use == Use::Bench)
                        expectForGloves(desk);
                    if (desk.panels.drafts.measure.page != MeasureDrafts::Page::Read)
                        desk.key(ImGuiKey_Escape);
                }
            }
        }
}

} // namespace gapwise::desk
