#pragma once

#include "viewer/panels/step_page.h"

#include <string_view>

namespace gapwise {

/// What a page that asks is called: `Which bearing`, `Pick list`, `Count in`.
std::string_view labelOf(StepQuestion question);

/// Questions that are answered with numbers or a few words.
void addCount(StepPage& page, StepQuestion question);
void addBlockHeight(StepPage& page);
void addRetention(StepPage& page);
void addDragTorque(StepPage& page);
void addNutLine(StepPage& page);

} // namespace gapwise
