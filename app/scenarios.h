// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "app/meridian_solution.h"
#include "app/model_use.h"
#include "cases/case.h"
#include "mesh/outline.h"
#include "post/report.h"
#include "solver/meridian.h"

namespace splicewright
{

Scenario sound_splice();

// A scenario of the case, or of the case as it would be.
struct WhatIf
{
    Case asked;
    Scenario scenario;
};

// With a sleeve "hidden weld lost", "left sleeve weld lost", "right sleeve weld lost"; with a joint "half penetration",
// a butt fused to half the depth asked; with plug welds or welds that do not go all round "both sleeve welds lost".
// Empty for a plain shaft.
std::vector<WhatIf> what_ifs(const Case& asked);
std::vector<std::string> what_if_notes(const Case& asked);  // what needs no scenario of its own, and why

// Meshes, solves and judges one scenario.
// An open slit whose gap the peak load would close is taken as snug instead, and a note says so.
// Crack growth is judged at every sharp end of an unfused face that carries load, and notches of 0.05 mm where a wall
// is thin; both to three times the error asked for. Toes that the case makes other than the reference radius of the
// notch method are solved a second time with it.
// The solid model takes part as `use` says. Beside the meridian model it adds checks at sites that only it has and at
// those where it finds more stress than both error bars allow; alone it is judged by all checks that its answer has.
Judgement judged(const Case& asked, const Scenario& scenario, const Accuracy& accuracy, const ModelUse& use = {});

// The same with a solution of the meridian model that may be kept from a case before.
Judgement judged(const Case& asked, const Scenario& scenario, const Accuracy& accuracy, const ModelUse& use,
                 LastSolution& last);

// The sound splice first, then the scenarios, those for information. Side by side on all processors where the meridian
// model alone answers; the solid model fills them by itself, and what is shown of it is kept whole for the sound splice
// and thinned for the others.
std::vector<Judgement> all_judged(const Case& asked, const std::vector<WhatIf>& changed, const Accuracy& accuracy,
                                  const ModelUse& use);

}  // namespace splicewright
