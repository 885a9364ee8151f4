#pragma once

#include "tests/viewer/command/run_program.h"
#include "tests/viewer/window/driven_window.h"
#include "tests/viewer/window/names.h"
#include "tests/viewer/window/ring_on_dial.h"

#include <gtest/gtest.h>

namespace gapwise::test {

/// A person before the window, with folders of his own. Each session has its own display.
class Session : public ::testing::Test {
protected:
    /// `gapwise open ARGUMENTS` on this session's display.
    DrivenWindow open(const std::vector<std::string>& arguments);
    /// A file with ringSheet().
    std::string sheetWithARing() const { return scratch_.write("ring.build.json", ringSheet()); }
    /// Waits until the journal holds so many events, and returns them.
    std::vector<nlohmann::json> journal(DrivenWindow& window, std::size_t events) const;

    ScratchFolder scratch_{};
    Person person_{.state = scratch_.path("state"), .folder = scratch_.path("")};
    Display display_{scratch_.path(""), {}};
};

} // namespace gapwise::test
