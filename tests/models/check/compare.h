#pragma once

#include "oracle.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace gapwise::oracle {

/// Where a check and the oracle disagree: how often, and the first few in words. Thousands of builds are
/// compared in bulk, and one line is printed for each of the first.
class Disagreements {
public:
    /// Compares every verdict, and for each broken direction rule the whole explanation.
    void compare(const Case& asked);

    /// Compares only the states.
    void compareStates(const Case& asked);

    int builds() const { return builds_; }
    int explained() const { return explained_; } ///< Broken direction rules that were compared.
    ::testing::AssertionResult none() const;

private:
    void compareStates(const Case& asked, const Checked& checked);
    void compareExplanation(const Case& asked, const Finding& finding);
    void compareFace(const Case& asked, const Finding& finding);
    void compareOrder(const Case& asked, const Checked& checked);
    void note(const Case& asked, const Rule& rule, const std::string& what);

    int builds_ = 0;
    int explained_ = 0;
    int count_ = 0;
    std::vector<std::string> first_{};
};

/// `mirrored_view other_end_rule`, or `-` for none.
std::string namesOf(const std::vector<Mistake>& mistakes);

/// Views in which a part may have been set: not known; each side with the top on the quarters, off them by
/// just as much as a view may be and still name its mistake, by a little more, and quite askew.
std::vector<std::optional<Shown>> viewsToTry();

/// The data beside the tests: schema and bundled frames.
Frame bundledFrame(const std::string& id);

/// A frame of tests/frames.
Frame testFrame(const std::string& id);

} // namespace gapwise::oracle
