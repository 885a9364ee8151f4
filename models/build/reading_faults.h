#pragma once

#include "models/build/build.h"
#include "models/frame/frame.h"

#include <string>
#include <vector>

namespace gapwise {

/// What is wrong with a reading or a decision as such, whatever the build is.
struct Fault {
    std::string key{}; ///< In the reading: `/values/2`; empty: of the whole.
    std::string found{};
    std::string allowed{};
};

/// The quantity that a reading is of: the named one, or the only one of its measurement. Null when the frame
/// has no such measurement or quantity, or the reading names none of several.
const Quantity* quantityOf(const Frame& frame, const Reading& reading);

/// Whether a value below 0 makes sense: of a difference, and of a dimension whose drawing size is not above
/// 0.
bool mayBeNegative(const Frame& frame, const Quantity& quantity);

/// A measurement, quantity or method that the frame does not have, another unit, no value, a value that is no
/// number or below 0 where that makes no sense, gaps that are not four, a day that is none.
std::vector<Fault> faultsOf(const Frame& frame, const Reading& reading);

/// Whether a measurement of the frame shows such work.
bool knowsWork(const Frame& frame, const std::string& work);

/// The work that measurements of the frame show, each once, in order.
std::vector<std::string> worksOf(const Frame& frame);

} // namespace gapwise
