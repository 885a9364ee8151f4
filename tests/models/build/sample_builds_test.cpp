#include "models/build/read_build.h"
#include "models/check/check.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace gapwise {

namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::SizeIs;

/// A sample sheet with the frame and the sister that its findings point into.
struct Sample {
    BuildSheet sheet{};
    std::optional<Frame> sister{};

    Checked checked(bool complete) const {
        return checkBuild(sheet.frame, sheet.build,
                          {.complete = complete, .sister = sister ? &*sister : nullptr});
    }
};

Sample sample(const std::string& name) {
    const DataFolder data{GAPWISE_TEST_SHARE};
    Result<BuildSheet> sheet = readBuildSheet(data, data.root / "builds" / (name + ".build.json"));
    if (!sheet) {
        for (const Error& error : sheet.errors())
            ADD_FAILURE() << error.where << ": " << error.found << "; allowed: " << error.allowed;
        return {};
    }
    Sample result{.sheet = std::move(sheet.value())};
    if (result.sheet.frame.sister)
        if (Result<Frame> sister = readFrame(data, result.sheet.frame.sister->text))
            result.sister = std::move(sister.value());
    return result;
}

std::vector<std::string> namesOf(const Checked& checked) {
    std::vector<std::string> names;
    for (const Finding& finding : checked.findings)
        names.push_back(finding.verdict.rule->id.text);
    return names;
}

} // namespace

// Every build sheet here is invented.
TEST(SampleBuilds, TheGoodOnesHoldInFull) {
    for (const char* name : {"alder-72-good", "alder-72-pinned-good", "birch-150-good"}) {
        const Sample good = sample(name);
        const Checked checked = good.checked(true);
        EXPECT_TRUE(checked.holds) << name;
        EXPECT_THAT(namesOf(checked), IsEmpty()) << name;
        EXPECT_THAT(good.sheet.build.seatings, SizeIs(good.sheet.frame.parts.size())) << name;
    }
}

TEST(SampleBuilds, ARingFaceReversedBreaksThatRuleAlone) {
    const Sample reversed = sample("alder-72-ring-face-reversed");
    const Checked checked = reversed.checked(false);
    ASSERT_THAT(namesOf(checked), ElementsAre("SR-CI.face"));
    EXPECT_THAT(checked.findings.front().mistakes, ElementsAre(Mistake::Reversed));
}

TEST(SampleBuilds, AGapOverASlotBreaksTheClockToo) {
    const Sample overSlot = sample("alder-72-gap-over-slot");
    EXPECT_THAT(namesOf(overSlot.checked(false)), ElementsAre("SR-CO.clear-F06", "SR-CO.gap"));
}

TEST(SampleBuilds, HalfATurnIsSetAsPrintedWithTheDrainAway) {
    const Sample half = sample("birch-150-half-a-turn");
    const Checked checked = half.checked(false);
    ASSERT_THAT(namesOf(checked), ElementsAre("SR-CO.gap"));
    EXPECT_THAT(checked.findings.front().mistakes, ElementsAre(Mistake::UpsideDown));
    EXPECT_EQ(checked.findings.front().asPrinted, true);
}

TEST(SampleBuilds, ReadFromTheOtherSideIsAlsoTheOtherEndsRule) {
    const Sample other = sample("birch-150-read-from-the-other-side");
    const Checked checked = other.checked(false);
    ASSERT_THAT(namesOf(checked), ElementsAre("SR-CO.gap"));
    EXPECT_THAT(checked.findings.front().mistakes, ElementsAre(Mistake::MirroredView, Mistake::OtherEndRule));
    EXPECT_EQ(checked.findings.front().asPrinted, true);
}

TEST(SampleBuilds, StepsWereDoneInALegitimateOrder) {
    for (const auto& entry : std::filesystem::directory_iterator(GAPWISE_TEST_SHARE "/builds")) {
        const std::string file = entry.path().filename().string();
        const Sample built = sample(file.substr(0, file.find(".build.json")));
        const std::vector<StepId>& done = built.sheet.build.stepsDone;
        for (auto step = done.begin(); step != done.end(); ++step)
            for (const Precedence& before : built.sheet.frame.step(*step)->after) {
                const bool applies =
                    before.when == OnlyWhen::Always || built.sheet.build.rotorLoweredIn == true;
                const bool stoodFor = std::any_of(done.begin(), step, [&](const StepId& earlier) {
                    const std::vector<StepId>& others = built.sheet.frame.step(earlier)->standsFor;
                    return std::ranges::find(others, before.step) != others.end();
                });
                if (!applies || stoodFor)
                    continue;
                EXPECT_NE(std::find(done.begin(), step, before.step), step)
                    << file << ": " << before.step.text << " before " << step->text;
            }
    }
}

} // namespace gapwise
