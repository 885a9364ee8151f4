#include "models/job/journal.h"
#include "tests/viewer/command/run_program.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <fstream>

namespace gapwise {

namespace {

using test::Ended;
using test::ScratchFolder;
using ::testing::HasSubstr;
using Json = nlohmann::json;

std::string sheet(const std::string& name) {
    return std::string{GAPWISE_TEST_SHARE} + "/builds/" + name + ".build.json";
}

/// A journal of a job on Alder-72 at the bench.
std::string journalOf(const ScratchFolder& scratch, const std::vector<Event>& events) {
    const std::string file = scratch.path("one.journal");
    Result<Journal> journal = Journal::create(file, {.frame = "alder-72", .use = "bench"});
    EXPECT_TRUE(journal);
    for (const Event& event : events)
        EXPECT_TRUE(journal.value().append(event).empty());
    return file;
}

std::vector<Event> begun() {
    return {PersonCame{"Ilka Dorn", Role::Apprentice},
            AttitudeChanged{uprightAttitude(Side::Turbine, Degrees{180.0}), true},
            StepSkipped{StepId{"D1"}, "nothing was recorded", "Ilka Dorn"},
            StepDone{StepId{"D2"}, "Ilka Dorn"},
            StepDone{StepId{"D4"}, "Ilka Dorn"},
            StepUndone{StepId{"D2"}, "line wiped off", "Ilka Dorn"}};
}

Json standingOf(const Json& shown, const char* step) {
    for (const Json& each : shown["steps"])
        if (each["step"] == step)
            return each;
    return nullptr;
}

} // namespace

TEST(JobShow, ASheetThatHoldsEndsWithStatus0AndOneThatDoesNotWith1) {
    const Ended good = test::gapwise({"job", "show", sheet("alder-72-good")});
    EXPECT_EQ(good.status, 0) << good.err;
    EXPECT_THAT(good.out, HasSubstr("No hold point is left."));
    EXPECT_THAT(good.out, HasSubstr("Practice frame"));
    const Ended faults = test::gapwise({"job", "show", sheet("alder-72-three-faults")});
    EXPECT_EQ(faults.status, 1);
    EXPECT_THAT(faults.out, HasSubstr("Next hold point: S31"));
    EXPECT_THAT(faults.out, HasSubstr("held by SR-CO.gap (severity 3)"));
    EXPECT_THAT(faults.out, HasSubstr("S33 waits for S31 (free check after push-pull)"));
}

TEST(JobShow, AJournalSaysWhatIsOpenAgainAndWhatIsPossible) {
    const ScratchFolder scratch;
    const std::string file = journalOf(scratch, begun());
    const Ended text = test::gapwise({"job", "show", file});
    EXPECT_EQ(text.status, 0) << text.err;
    EXPECT_THAT(text.out, HasSubstr("Works now: Ilka Dorn (apprentice)"));
    EXPECT_THAT(text.out, HasSubstr("Left out: D1 (nothing was recorded; Ilka Dorn)"));
    EXPECT_THAT(text.out, HasSubstr("because of D2"));
    const Ended json = test::gapwise({"job", "show", file, "--json"});
    const Json shown = Json::parse(json.out);
    EXPECT_EQ(standingOf(shown, "D1")["standing"], "skipped");
    EXPECT_EQ(standingOf(shown, "D2")["standing"], "possible");
    EXPECT_EQ(standingOf(shown, "D4")["standing"], "blocked");
    EXPECT_EQ(standingOf(shown, "D4")["reopened_by"], "D2");
    EXPECT_EQ(standingOf(shown, "D4")["waits_for"][0]["reason"], "ACC");
    EXPECT_EQ(shown["next_hold_point"]["step"], "S14");
}

TEST(JobSlip, TellsTheNextShiftHowThingsStand) {
    const ScratchFolder scratch;
    const std::string file = journalOf(scratch, begun());
    const Ended text = test::gapwise({"job", "slip", file});
    EXPECT_EQ(text.status, 0) << text.err;
    EXPECT_THAT(text.out, HasSubstr("The piece: turbine end up, drain at 6:00, toward you; confirmed"));
    EXPECT_THAT(text.out, HasSubstr("(line wiped off)"));
    const Json slip = Json::parse(test::gapwise({"job", "slip", file, "--json"}).out);
    EXPECT_EQ(slip["last_acts"].size(), 3U);
    EXPECT_EQ(slip["person"], "Ilka Dorn (apprentice)");
}

TEST(JobShow, ALastLineThatWasCutOffIsLeftOutAndSaid) {
    const ScratchFolder scratch;
    const std::string file = journalOf(scratch, begun());
    std::ofstream{file, std::ios::app} << R"({"event":"step_do)";
    const Ended cut = test::gapwise({"job", "show", file});
    EXPECT_EQ(cut.status, 0);
    EXPECT_THAT(cut.err, HasSubstr("last line"));
}

TEST(JobShow, WhatIsNoJobIsBadInput) {
    const ScratchFolder scratch;
    EXPECT_EQ(test::gapwise({"job", "show", scratch.path("nowhere")}).status, 2);
    EXPECT_EQ(test::gapwise({"job", "show", scratch.write("a.build.json", "{}")}).status, 2);
    EXPECT_EQ(
        test::gapwise({"job", "show", scratch.write("b.journal", "{\"format\":\"gapwise.journal/1\"}\n")})
            .status,
        2);
    EXPECT_EQ(test::gapwise({"job"}).status, 2);
    EXPECT_EQ(test::gapwise({"job", "show"}).status, 2);
}

} // namespace gapwise
