#pragma once

/// Measurement: readings evaluated, predicted, judged, compared and explained. The mathematics stand in
/// models/gauging and models/uncertainty; dimension chains in models/chain.

#include "models/measure/bench.h"  // IWYU pragma: export — instruments of the bench
#include "models/measure/report.h" // IWYU pragma: export — everything that the measurements of a build say
