#pragma once

/// The procedure: steps in a partial order, what can be done now, what is open again, what stops a hold
/// point.

#include "models/procedure/flange.h"           // IWYU pragma: export
#include "models/procedure/hand_over.h"        // IWYU pragma: export
#include "models/procedure/hold_point.h"       // IWYU pragma: export
#include "models/procedure/kit.h"              // IWYU pragma: export
#include "models/procedure/last_look.h"        // IWYU pragma: export
#include "models/procedure/measure_findings.h" // IWYU pragma: export
#include "models/procedure/nut_findings.h"     // IWYU pragma: export
#include "models/procedure/order.h"            // IWYU pragma: export
#include "models/procedure/questions.h"        // IWYU pragma: export
#include "models/procedure/reopen.h"           // IWYU pragma: export
#include "models/procedure/step_graph.h"       // IWYU pragma: export
#include "models/procedure/step_status.h"      // IWYU pragma: export
#include "models/procedure/tightening.h"       // IWYU pragma: export
#include "models/procedure/tightening_card.h"  // IWYU pragma: export
