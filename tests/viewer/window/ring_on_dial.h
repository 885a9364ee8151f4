#pragma once

#include "tests/viewer/window/driven_window.h"

#include <string>

namespace gapwise::test {

/// A build sheet of alder-72, compressor end up, drain toward the person: SR-CO in its groove, its gap at
/// 3:00 from the compressor side, its rounded face (the wrong one) toward the person.
std::string ringSheet();

/// A point of the circle of SR-CO on the compressor dial, by its clock there.
Point onSrCo(const Rectangle& dial, double clockwise);

} // namespace gapwise::test
