#include "tests/viewer/workplace/at_hand.h"

#include <gtest/gtest.h>

#include <cstdlib>

namespace gapwise {

namespace {

std::filesystem::path freshFolder() {
    std::string pattern = (std::filesystem::temp_directory_path() / "gapwise-at-hand-XXXXXX").string();
    const char* made = mkdtemp(pattern.data());
    return made ? std::filesystem::path{made} : std::filesystem::path{};
}

std::string noteOf(const Workplace& workplace) {
    return workplace.note ? workplace.note->words : std::string{};
}

} // namespace

AtHand::AtHand() : state_{freshFolder()} {
    workplace = openWorkplace(DataFolder{GAPWISE_TEST_SHARE}, state_);
}

AtHand::~AtHand() {
    workplace.journal.reset();
    std::error_code error;
    std::filesystem::remove_all(state_, error);
}

void AtHand::start(const std::string& frame, Use use) {
    grant(workplace, StartJob{.frame = frame, .use = use});
    ASSERT_TRUE(workplace.job) << noteOf(workplace);
}

void AtHand::startSheet(const std::string& sheet, Use use) {
    grant(workplace, StartJob{.use = use, .sheet = sheetFile(sheet)});
    ASSERT_TRUE(workplace.job) << noteOf(workplace);
}

std::filesystem::path AtHand::sheetFile(const std::string& sheet) const {
    const std::filesystem::path ours = std::filesystem::path{GAPWISE_TEST_SHEETS} / (sheet + ".build.json");
    return std::filesystem::exists(ours) ? ours : workplace.data.root / "builds" / (sheet + ".build.json");
}

void AtHand::doneSoFar(const std::vector<std::string>& steps) {
    for (const std::string& step : steps)
        workplace.job->log.start.stepsDone.emplace_back(step);
    Job& job = *workplace.job;
    job.state = stateOf(job.frame, job.log);
    job.measured = measureReport(job.frame, job.state.build, job.bench, {});
    grant(workplace, LookAgain{job.standpoint}); // Judges it.
}

std::vector<std::string> AtHand::stepsBefore(const std::string& step) const {
    std::vector<std::string> steps;
    for (const Step& each : job().frame.steps) {
        if (each.id.text == step)
            break;
        steps.push_back(each.id.text);
    }
    return steps;
}

void AtHand::act(const Event& event) {
    grant(workplace, Act{event});
    EXPECT_FALSE(workplace.note && workplace.note->refused) << noteOf(workplace);
}

void AtHand::place(const char* part) {
    placeIn(part, part);
}

void AtHand::placeIn(const char* part, const char* seatPart) {
    act(PartPlaced{.part = PartId{part}, .seat = seatOf(PartId{seatPart})});
}

void AtHand::point(const char* part, Side side, double degrees) {
    act(IndexTurned{seatOf(PartId{part}), Clock::seenFrom(side, Degrees{degrees}), std::nullopt});
}

void AtHand::face(const char* part, Side looks) {
    act(FaceTurned{seatOf(PartId{part}), looks, std::nullopt});
}

} // namespace gapwise
