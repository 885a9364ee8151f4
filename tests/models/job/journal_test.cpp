#include "models/job/journal.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include <filesystem>
#include <fstream>
#include <unistd.h>

namespace gapwise {

namespace {

using ::testing::HasSubstr;
using ::testing::SizeIs;

class JournalTest : public ::testing::Test {
protected:
    void SetUp() override {
        folder_ = std::filesystem::temp_directory_path() /
                  ("gapwise-journal-" + std::to_string(::getpid()) +
                   ::testing::UnitTest::GetInstance()->current_test_info()->name());
        std::filesystem::remove_all(folder_);
    }
    void TearDown() override { std::filesystem::remove_all(folder_); }

    std::filesystem::path file() const { return folder_ / "deep" / "one.journal"; }

    std::filesystem::path folder_{};
};

std::vector<Event> oneOfEach() {
    const Clock clock = Clock::seenFrom(Side::Turbine, Degrees{122.5});
    const SeatId seat{"seat-SR-CO"};
    const View view{Side::Turbine, Degrees{180.0}};
    return {AttitudeChanged{uprightAttitude(Side::Turbine, Degrees{90.0}), true},
            AttitudeChanged{levelAttitude(Side::Compressor, Degrees{180.0}), false},
            PartPlaced{.part = PartId{"SR-CO"}, .seat = seat},
            PartPlaced{.part = PartId{"SR-CO"},
                       .seat = seat,
                       .index = clock,
                       .referenceFaceLooks = Side::Turbine,
                       .setIn = view},
            PartTakenOff{seat},
            IndexTurned{seat, clock, view},
            IndexTurned{seat, clock, std::nullopt},
            FaceTurned{seat, Side::Compressor, view},
            SeatingConfirmed{seat, {.by = "Ilka \"I.\" Dorn", .said = Confirmation::Said::After}},
            SeatingConfirmed{
                seat, {.by = "Ilka", .said = Confirmation::Said::Before}, clock, Side::Turbine, true, view},
            LookedFirst{seat},
            HomeStated{seat, false},
            RotorTurned{Degrees{12.25}},
            StepDone{StepId{"S13"}},
            StepUndone{StepId{"S13"}},
            Undone{},
            Redone{},
            AttitudeChanged{uprightAttitude(Side::Turbine, Degrees{90.0}), true, true},
            PersonCame{"Ilka Dorn", Role::Inspector},
            StepDone{StepId{"S13"}, "Ilka Dorn"},
            StepUndone{StepId{"S13"}, "ring proud", "Ilka Dorn"},
            StepSkipped{StepId{"D3"}, "nut was off already", "Ilka Dorn"},
            HoldPointPassed{.step = StepId{"S14"}, .by = "Ilka Dorn", .loneWorker = true},
            HoldPointPassed{.step = StepId{"S14"},
                            .by = "Ilka Dorn",
                            .witness = "R. Ohlin",
                            .overrides = {Override{"SR-CO.gap", "P. Vail", "by the engine's maker",
                                                   Role::Inspector, "C-17"},
                                          Override{.finding = "angle-T3", .by = "R. Ohlin", .reason = "r"}}},
            Tightened{.fastener = FastenerId{"T3"},
                      .stage = 3,
                      .group = 0,
                      .screw = 1,
                      .torqueNm = 14.0,
                      .clockwise = false,
                      .seenFrom = Side::Turbine,
                      .angle = Degrees{18.5},
                      .wrench = "W-4",
                      .by = "Ilka Dorn"},
            Tightened{.fastener = FastenerId{"T2"}, .screw = 4, .torqueNm = 4.05},
            Loosened{FastenerId{"T3"}, "a chip", "Ilka Dorn"},
            Answered{StepId{"S01"}, "count_in", "12", 12.0, "Ilka Dorn"},
            Answered{StepId{"S01"}, "variant", "pinned", std::nullopt, ""},
            ConditionStated{seat, "oiled", false},
            NutLineRead{FastenerId{"T3"}, Degrees{-6.5}, 0.02, "Ilka Dorn"},
            CautionAcknowledged{"C-blades", "Ilka Dorn"},
            NoteWritten{"line one\nline two", "Ilka Dorn"},
            ReadingTaken{{.measurement = "axial-clearance",
                          .quantity = "c",
                          .occasion = Occasion::Before,
                          .values = {0.067, 0.069, 0.068},
                          .unit = "mm",
                          .method = "push-pull",
                          .instrument = "DIA-02",
                          .by = "Ilka Dorn",
                          .on = "2026-05-04",
                          .temperatureC = 23.5,
                          .gaugeTemperatureC = 21.0}},
            ReadingTaken{{.measurement = "M05", .values = {9.0}, .unit = "mm"}},
            PartDecided{{.part = PartId{"COLLAR-A"},
                         .condition = PartCondition::WornOut,
                         .fate = PartFate::Renew,
                         .by = "R. Ohlin",
                         .reason = "step felt",
                         .cause = "dirt in oil",
                         .concession = "C-17"}},
            PartDecided{{.part = PartId{"PLATE"}, .by = "R. Ohlin"}},
            WorkStated{"deposits_removed_turbine", false, "R. Ohlin"},
            WorkStated{"rotor_freed", true, ""}};
}

} // namespace

TEST(EventLine, EveryKindComesBackAsItWasWritten) {
    for (const Event& event : oneOfEach()) {
        const std::string line = toJsonLine(event);
        EXPECT_EQ(line.find('\n'), std::string::npos);
        const Result<Event> back = parseEvent(line, "line");
        ASSERT_TRUE(back) << line << describe(back.errors()[0]);
        EXPECT_EQ(back->index(), event.index());
        EXPECT_EQ(toJsonLine(*back), line);
    }
}

TEST(EventLine, EveryTruncationIsAnError) {
    for (const Event& event : oneOfEach()) {
        const std::string line = toJsonLine(event);
        for (std::size_t length = 0; length < line.size(); ++length)
            EXPECT_FALSE(parseEvent(line.substr(0, length), "line")) << line.substr(0, length);
    }
}

TEST(EventLine, EveryFieldThatIsMissingOrOfAnotherKindIsToldOrMayBeMissing) {
    for (const Event& event : oneOfEach()) {
        const nlohmann::json whole = nlohmann::json::parse(toJsonLine(event));
        for (const auto& [key, value] : whole.items()) {
            nlohmann::json changed = whole;
            changed.erase(key);
            const Result<Event> without = parseEvent(changed.dump(), "j:2");
            if (without)
                EXPECT_EQ(without->index(), event.index()) << key;
            else
                EXPECT_THAT(without.errors()[0].where, HasSubstr("j:2/")) << key;
            changed[key] = nlohmann::json::array({nlohmann::json::array()});
            const Result<Event> other = parseEvent(changed.dump(), "j:2");
            ASSERT_FALSE(other) << changed.dump();
            EXPECT_THAT(other.errors()[0].where, HasSubstr("j:2/")) << key;
        }
    }
}

TEST(EventLine, SaysWhatWasWrong) {
    const Result<Event> unknown = parseEvent(R"({"event":"danced"})", "j:4");
    ASSERT_FALSE(unknown);
    EXPECT_EQ(unknown.errors()[0].where, "j:4/event");
    EXPECT_THAT(unknown.errors()[0].allowed, HasSubstr("placed"));
    const Result<Event> side =
        parseEvent(R"({"event":"faced","seat":"s","reference_face_looks":"left"})", "j:5");
    ASSERT_FALSE(side);
    EXPECT_EQ(side.errors()[0].where, "j:5/reference_face_looks");
    EXPECT_FALSE(parseEvent(R"(["placed"])", "j:6"));
    EXPECT_FALSE(parseEvent(R"({"event":"confirmed","seat":"s","by":"x","said":"never"})", "j:7"));
}

TEST_F(JournalTest, WhatWasAppendedIsReadBack) {
    {
        Result<Journal> journal =
            Journal::create(file(), {.frame = "alder-72", .use = "practise", .sheet = ""});
        ASSERT_TRUE(journal);
        for (const Event& event : oneOfEach())
            EXPECT_TRUE(journal.value().append(event).empty());
    }
    const Result<JournalContent> content = readJournal(file());
    ASSERT_TRUE(content);
    EXPECT_EQ(content->head.frame, "alder-72");
    EXPECT_THAT(content->events, SizeIs(oneOfEach().size()));
    EXPECT_FALSE(content->cutOff);
}

TEST_F(JournalTest, ALineThatWasCutOffIsDroppedAndTheRestGoesOn) {
    {
        ASSERT_TRUE(Journal::create(file(), {.frame = "alder-72", .use = "show", .sheet = ""})
                        .value()
                        .append(Undone{})
                        .empty());
    }
    {
        std::ofstream{file(), std::ios::app} << R"({"event":"step_d)";
    }
    EXPECT_TRUE(readJournal(file())->cutOff);
    {
        Result<Journal> again = Journal::reopen(file());
        ASSERT_TRUE(again);
        EXPECT_TRUE(again.value().append(StepDone{StepId{"S06"}}).empty());
    }
    const Result<JournalContent> content = readJournal(file());
    ASSERT_TRUE(content);
    EXPECT_FALSE(content->cutOff);
    ASSERT_THAT(content->events, SizeIs(2));
    EXPECT_EQ(nameOf(content->events[1]), "step_done");
}

TEST_F(JournalTest, AHeadThatNamesASheetOnlyIsEnough) {
    ASSERT_TRUE(Journal::create(file(), {.frame = "", .use = "bench", .sheet = "/bench/mine.build.json"}));
    const Result<JournalContent> content = readJournal(file());
    ASSERT_TRUE(content);
    EXPECT_EQ(content->head.sheet, "/bench/mine.build.json");
    EXPECT_THAT(content->events, SizeIs(0));
}

TEST_F(JournalTest, AForeignFileAndAFileThatIsThereAreRefused) {
    std::filesystem::create_directories(file().parent_path());
    {
        std::ofstream{file()} << "{\"format\":\"something else\"}\n";
    }
    EXPECT_FALSE(readJournal(file()));
    EXPECT_FALSE(Journal::create(file(), {.frame = "alder-72", .use = "show", .sheet = ""}));
    EXPECT_FALSE(readJournal(folder_));
}

TEST_F(JournalTest, OneProgramAtATimeWritesIt) {
    std::optional<Journal> first{Journal::create(file(), {.frame = "alder-72"}).value()};
    const Result<Journal> second = Journal::reopen(file());
    ASSERT_FALSE(second);
    EXPECT_THAT(second.errors()[0].found, HasSubstr("open in another window"));
    EXPECT_TRUE(readJournal(file())) << "it may be read meanwhile";
    first.reset();
    EXPECT_TRUE(Journal::reopen(file()));
}

} // namespace gapwise
