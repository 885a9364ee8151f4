#include "models/procedure/procedure.h"

#include "tests/models/procedure/course.h"

#include <gmock/gmock.h>

namespace gapwise {

namespace {

using ::testing::HasSubstr;
using ::testing::IsEmpty;

/// The small course, which reads a clearance at step A, and a size of a collar at step B.
class MeasureFindings : public ::testing::Test {
protected:
    MeasureFindings() {
        Quantity clearance{.id = QuantityId{"c"}, .name = "axial clearance"};
        clearance.limits = {.fresh = {0.05, 0.09}, .service = {0.05, 0.12}, .method = "push-pull"};
        Quantity size{.id = QuantityId{"a"}, .name = "collar", .part = PartId{"COLLAR"}};
        size.limits = {.fresh = {3.495, 3.505}, .service = {3.485, 3.505}, .method = "ball"};
        Quantity sum{.id = QuantityId{"sum"}, .from = {Term{QuantityId{"c"}, 1}}};
        frame_.parts.push_back(Part{.id = PartId{"COLLAR"}});
        frame_.measurements = {Measurement{.id = MeasurementId{"axial"},
                                           .name = "axial clearance",
                                           .step = StepId{"A"},
                                           .required = true,
                                           .methods = {Method{.id = "push-pull"}, Method{.id = "upright"}},
                                           .quantities = {clearance, sum}},
                               Measurement{.id = MeasurementId{"M07"},
                                           .name = "collar",
                                           .step = StepId{"B"},
                                           .methods = {Method{.id = "ball"}},
                                           .quantities = {size}}};
    }

    void read(const char* measurement, const char* quantity, double value, const char* method) {
        state_.build.readings.push_back(Reading{.measurement = measurement,
                                                .quantity = quantity,
                                                .values = {value},
                                                .unit = "mm",
                                                .method = method});
    }
    void decide(PartFate fate, const char* reason = "", const char* concession = "") {
        state_.build.decisions = {{.part = PartId{"COLLAR"},
                                   .fate = fate,
                                   .by = "R. Ohlin",
                                   .reason = reason,
                                   .concession = concession}};
    }
    /// `measure-c 3 A`, joined by commas.
    std::string findings() const {
        std::string text;
        for (const ProcedureFinding& each : procedureFindings(frame_, state_))
            if (each.id.starts_with("measure-"))
                text += (text.empty() ? "" : ", ") + each.id + " " + std::to_string(each.severity) + " " +
                        each.step.text;
        return text;
    }
    std::string refusals(const Event& event) const {
        std::string places;
        for (const Error& error : refusalOf(frame_, state_, event))
            places += (places.empty() ? "" : " ") + error.where;
        return places;
    }

    Frame frame_ = course::smallFrame();
    JobState state_{};
};

} // namespace

TEST_F(MeasureFindings, AStepIsNotDoneWithoutTheReadingsThatItAsksFor) {
    EXPECT_EQ(refusals(StepDone{StepId{"A"}}), "A/c") << "what is reckoned nobody reads";
    const std::vector<Missing> missing = missingFrom(frame_, state_, StepId{"A"});
    ASSERT_EQ(missing.size(), 1U);
    EXPECT_EQ(missing[0].kind, Missing::Kind::Reading);
    EXPECT_EQ(missing[0].words, "not read: axial clearance");
    read("axial", "c", 0.07, "push-pull");
    EXPECT_EQ(refusals(StepDone{StepId{"A"}}), "");
}

TEST_F(MeasureFindings, AReadingFromBeforeIsNotTheOneAskedFor) {
    read("axial", "c", 0.07, "push-pull");
    state_.build.readings.back().occasion = Occasion::Before;
    EXPECT_EQ(refusals(StepDone{StepId{"A"}}), "A/c");
}

TEST_F(MeasureFindings, ShownTheWorkGoesOnWithoutReadings) {
    state_.demands = Demands::Order;
    EXPECT_EQ(refusals(StepDone{StepId{"A"}}), "");
}

TEST_F(MeasureFindings, WithinNothingIsFound) {
    EXPECT_EQ(findings(), "");
    read("axial", "c", 0.07, "push-pull");
    read("M07", "a", 3.5, "ball");
    EXPECT_EQ(findings(), "");
}

TEST_F(MeasureFindings, BeyondItsLimitHoldsAHoldPoint) {
    read("axial", "c", 0.155, "push-pull");
    EXPECT_EQ(findings(), "measure-c 3 A");
    const std::vector<HeldBy> held = heldBy(frame_, state_, {});
    ASSERT_EQ(held.size(), 1U);
    EXPECT_EQ(held[0].finding, "measure-c");
    EXPECT_THAT(held[0].words,
                HasSubstr("axial clearance: 0.155 mm is beyond the limit, 0.050 to 0.120 mm."));
}

TEST_F(MeasureFindings, BetweenAndNotJudgedAreSaidAndHoldNothing) {
    read("axial", "c", 0.1, "push-pull");
    EXPECT_EQ(findings(), "measure-c 2 A");
    state_.build.readings.clear();
    read("axial", "c", 0.07, "upright");
    EXPECT_EQ(findings(), "measure-c 2 A");
    EXPECT_THAT(heldBy(frame_, state_, {}), IsEmpty());
}

TEST_F(MeasureFindings, ADecisionThatIsAllowedSettlesIt) {
    read("M07", "a", 3.49, "ball");
    EXPECT_EQ(findings(), "measure-a 2 B");
    decide(PartFate::Reuse, "face bright");
    EXPECT_EQ(findings(), "");
    state_.build.readings.clear();
    read("M07", "a", 3.415, "ball");
    EXPECT_EQ(findings(), "measure-a 3 B") << "no concession";
    decide(PartFate::Reuse, "there is no other", "C-17");
    EXPECT_EQ(findings(), "");
    decide(PartFate::Renew);
    EXPECT_EQ(findings(), "measure-a 2 B") << "the new one is not measured";
}

TEST_F(MeasureFindings, NobodyDecidesReuseBeyondALimitWithoutAConcession) {
    read("M07", "a", 3.415, "ball");
    PartDecision reuse{.part = PartId{"COLLAR"}, .by = "R. Ohlin", .reason = "there is no other"};
    const Errors refused = refusalOf(frame_, state_, PartDecided{reuse});
    ASSERT_EQ(refused.size(), 1U);
    EXPECT_EQ(refused[0].where, "COLLAR");
    EXPECT_THAT(refused[0].allowed, HasSubstr("number of a concession"));
    reuse.concession = "C-17";
    EXPECT_THAT(refusalOf(frame_, state_, PartDecided{reuse}), IsEmpty());
    EXPECT_THAT(refusalOf(frame_, state_,
                          PartDecided{{.part = PartId{"COLLAR"}, .fate = PartFate::Renew, .by = "R. Ohlin"}}),
                IsEmpty());
    state_.build.readings.clear();
    read("M07", "a", 3.49, "ball");
    EXPECT_EQ(refusals(PartDecided{{.part = PartId{"COLLAR"}, .by = "R. Ohlin"}}), "COLLAR") << "no reason";
}

} // namespace gapwise
