// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "cases/case.h"

namespace splicewright
{

// How the assembled shaft turns, its ends held on the axis of rotation by the joints.

// Amounts of unbalance in one plane, tonne*mm; 1 tonne*mm is 1e6 g*mm.
struct PlaneUnbalance
{
    double mass = 0;                                                     // that the plane carries, tonne
    double offset = 0, tilt = 0, sleeve = 0;                             // each alone, largest
    [[nodiscard]] double sum() const { return offset + tilt + sleeve; }  // all in one direction: the worst
};

//   left end _______________ joint
//                           |e                               e: offset, a jump at the joint
//                            \______________________ right end
//   - - - - - - - - - - - - - - - - - - - - - - - - - - - -  axis of rotation, through both ends
//
// Straight bars pinned at the far ends; a tilt bends them at the joint. The sleeve sits off each bar by half its
// clearance. Each slice's mass times its distance from the axis is shared by both ends by the lever. Derived.
struct Balance
{
    std::array<PlaneUnbalance, 2> plane;  // at the left and right end of the shaft
    double eccentricity = 0;              // mm, of the worse plane: unbalance over mass
    // At the speed asked for; absent without one.
    std::optional<double> grade;                         // mm/s
    std::optional<double> offset_allowed, tilt_allowed;  // mm, rad: each alone, that use up `grade_asked`
};

// Unbalance of shafts and its limits. Source: [ISO21940-11] table 1, from memory: drive shafts G 16, car drive shafts
// and wheels G 40.
constexpr double grade_asked = 16, grade_of_cars = 40;  // mm/s

// Running speed below the first critical one by this factor at least. Judgement: makers of drive shafts stop at 0.65
// to 0.70 of it, read in a secondary source (1/0.65 = 1.54, 1/0.70 = 1.43).
constexpr double least_margin = 1.5;

struct RunningTrue
{
    double mass = 0;                 // tonne, bars and sleeve
    double length = 0;               // mm between the supports
    double critical_speed = 0;       // rad/s, first in bending
    std::optional<double> margin;    // critical over running speed
    std::optional<Balance> balance;  // with a joint
    std::string source;
    Provenance provenance = Provenance::derived;
};

// Weld metal, fillets and grooves are left out of the masses. The sleeve stiffens the shaft over its whole length,
// from weld to weld: EI of bar and sleeve added. The land of a partly fused butt is left out. Derived.
RunningTrue running_true(const Case& asked);

// What deserves a thought: a critical speed near the running speed, an unbalance beyond the grade.
std::vector<std::string> running_cautions(const Case& asked, const RunningTrue& running);

}  // namespace splicewright
