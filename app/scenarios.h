// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <vector>

#include "cases/case.h"
#include "mesh/outline.h"
#include "post/report.h"
#include "solver/meridian.h"

namespace splicewright
{

Scenario sound_splice();

// What is asked of every splice with a sleeve: the hidden weld lost, and each sleeve weld lost. Empty without one.
std::vector<Scenario> lost_welds(const Case& asked);

// What a scenario outside the verdict is solved to: three times the error asked for.
Accuracy for_information(const Accuracy& accuracy);

// Meshes, solves and judges one scenario.
// An open slit whose gap the peak load would close is taken as snug instead, and a note says so.
// The sound splice is judged by crack growth too and, where a wall is thin, by notches of 0.05 mm, both to three times
// the error asked for.
// Toes that the case makes other than the reference radius of the notch method are solved a second time with it.
Judgement judged(const Case& asked, const Scenario& scenario, const Accuracy& accuracy);

}  // namespace splicewright
