// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "cases/case.h"
#include "cases/chance.h"

namespace splicewright
{

// A shape that mostly keeps the geometry rules: bars, joint and sleeve without materials and loads.
// Lengths are hundredths of a millimetre or exactly at a limit. The rules themselves stand in the reader alone:
// what breaks one of them is drawn again by the caller.
Case random_shape(Chance& chance);

}  // namespace splicewright
