#pragma once

#include "tests/viewer/command/run_program.h"
#include "tests/viewer/window/driven_window.h"
#include "tests/viewer/window/names.h"

#include <gtest/gtest.h>

namespace gapwise::test {

/// A person before the window, with folders of his own. Each session has its own display.
class Session : public ::testing::Test {
protected:
    /// `gapwise open ARGUMENTS` on this session's display.
    DrivenWindow open(const std::vector<std::string>& arguments);
    /// A build sheet of alder-72, compressor end up, drain toward the person: SR-CO in its groove, its gap at
    /// 3:00 from the compressor side, its rounded face (the wrong one) toward the person.
    std::string sheetWithARing() const;
    /// Waits until the journal holds so many events, and returns them.
    std::vector<nlohmann::json> journal(DrivenWindow& window, std::size_t events) const;

    ScratchFolder scratch_{};
    Person person_{.state = scratch_.path("state"), .folder = scratch_.path("")};
    Display display_{scratch_.path(""), {}};
};

/// A point of the circle of SR-CO on the compressor dial, by its clock there.
Point onSrCo(const Rectangle& dial, double clockwise);

} // namespace gapwise::test
