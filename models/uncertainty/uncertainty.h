#pragma once

/// Uncertainty: how well a number is known, and what may be decided with it.
///
/// Plain functions on plain numbers: nothing here reads a frame. Values and uncertainties come in any one
/// unit, the same throughout a call; `u` is a standard uncertainty, `U` an expanded one (GUM, JCGM 100:2008).
/// Numbers must be finite, uncertainties not below 0, which the caller sees to.

#include "models/uncertainty/budget.h"         // IWYU pragma: export — components to one combined uncertainty
#include "models/uncertainty/decision.h"       // IWYU pragma: export — within, outside, not proven
#include "models/uncertainty/input_quantity.h" // IWYU pragma: export — quantities with their distributions
#include "models/uncertainty/monte_carlo.h"    // IWYU pragma: export — distributions drawn through a model
#include "models/uncertainty/propagate.h"      // IWYU pragma: export — uncertainties through any function
#include "models/uncertainty/quantiles.h"      // IWYU pragma: export — normal and Student's distribution
#include "models/uncertainty/risk.h"           // IWYU pragma: export — chances of a wrong verdict, capability
#include "models/uncertainty/trials.h"         // IWYU pragma: export — what a Monte Carlo run brought
#include "models/uncertainty/type_b.h" // IWYU pragma: export — one component from readings or resolution
