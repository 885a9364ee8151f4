#pragma once

/// What the dials of the screen show, as plain values: no drawing in here.

#include "viewer/dial/bare_dial.h"
#include "viewer/dial/dial_state.h"
#include "viewer/dial/end_dial.h"
#include "viewer/dial/sight.h"
