#pragma once

/// Dimension chains: what the parts say that a clearance will be, what a change does to all of them, and read
/// backwards, which change explains what was measured. Millimetres at 20 °C; z positive toward the
/// compressor.

#include "models/chain/diagnosis.h"        // IWYU pragma: export — which change explains the readings
#include "models/chain/dimension_values.h" // IWYU pragma: export — drawing sizes, and what was measured
#include "models/chain/effects.h"          // IWYU pragma: export — changes against chains
#include "models/chain/prediction.h" // IWYU pragma: export — value, worst case, root sum of squares, trials
#include "models/chain/selection.h"  // IWYU pragma: export — the grade of a spacer or shim
#include "models/chain/stations.h"   // IWYU pragma: export — where every face lies along the shaft
