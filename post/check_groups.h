// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <vector>

#include "post/published_check.h"

namespace splicewright
{

// The published checks by subject.
std::vector<CheckGroup> shaft_checks();             // plain, hollow and stepped shafts
std::vector<CheckGroup> fit_checks();               // press fits, shafts in each other
std::vector<CheckGroup> shoulder_checks();          // shoulder fillets
std::vector<CheckGroup> groove_checks();            // ring grooves, Neuber's hyperbolic groove
std::vector<CheckGroup> cavity_checks();            // spheres and spheroids
std::vector<CheckGroup> lap_checks();               // shear lag in a tubular lap
std::vector<CheckGroup> weld_checks();              // welds as lines, Eurocode welds
std::vector<CheckGroup> fatigue_checks_of_books();  // safety factors, S-N lines, counting, damage
std::vector<CheckGroup> rotor_checks();             // whirl, balance, contact
std::vector<CheckGroup> solid_checks();             // the solid model: torsion, thick walls, benchmarks, contact

}  // namespace splicewright
