#include "models/frame/notice.h"

#include <gtest/gtest.h>

namespace gapwise {

TEST(Notice, APracticeFrameIsNotForWork) {
    EXPECT_EQ(noticeOf(Frame{.purpose = Purpose::Practice}),
              "Practice frame – invented numbers – not for work on a machine");
}

TEST(Notice, AFrameForWorkCarriesNone) {
    EXPECT_EQ(noticeOf(Frame{.purpose = Purpose::Work}), "");
}

TEST(Notice, TheVerdictNamesItsRulesAndWhatPrevails) {
    const Frame frame{.id = FrameId{"alder-72"}, .revision = "3"};
    EXPECT_EQ(
        consistencyLine(frame, true),
        "consistent with the loaded rules of frame alder-72, revision 3; the maker's manual, local codes "
        "and authorised persons prevail");
    EXPECT_EQ(consistencyLine(frame, false),
              "not consistent with the loaded rules of frame alder-72, revision 3; the maker's manual, local "
              "codes and authorised persons prevail");
}

} // namespace gapwise
