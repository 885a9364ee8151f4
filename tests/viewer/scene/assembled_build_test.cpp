#include "viewer/scene/assembled_build.h"

#include "models/check/check.h"
#include "models/frame/read_frame.h"

#include <gtest/gtest.h>

namespace gapwise {

class AssembledBuild : public testing::TestWithParam<const char*> {};

// The rules themselves are the judge of the build that is made for them.
TEST_P(AssembledBuild, BreaksNoRuleOfItsFrame) {
    const auto frame = readFrame(DataFolder{GAPWISE_TEST_SHARE}, GetParam());
    ASSERT_TRUE(frame);
    const Build build = assembledBuild(*frame);
    EXPECT_EQ(build.seatings.size(), frame->seats.size());
    const Checked checked = checkBuild(*frame, build, {});
    for (const Finding& finding : checked.findings)
        EXPECT_NE(finding.verdict.state, RuleState::Broken) << finding.words;
    EXPECT_EQ(checked.count(RuleState::NotDue), 0);
}

INSTANTIATE_TEST_SUITE_P(Bundled, AssembledBuild,
                         testing::Values("alder-72", "alder-72-pinned", "birch-150"));

} // namespace gapwise
