// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <array>
#include <optional>

#include "cases/case.h"

namespace splicewright
{

// What the joints at the ends can take up of a shaft that comes out too long or too short, mm.
struct PlungeBudget
{
    double available = 0, used = 0;
    double length_error = 0;  // of the finished shaft, either way
    [[nodiscard]] double left_over() const { return available - used; }
    [[nodiscard]] bool suffices() const { return length_error <= left_over(); }
};

// Lengths to saw, mm.
//
//   |<------- cut left ------->|
//   |<--- l_left --->|                     l: from the shaft's end to the joint as drawn, plus the adjustment
//   |________________|_________|
//   |                |  half lap |_____________________|
//   |<------------------ overall ------------------->|   after the weld has drawn the gap together
//
//   cut = l + half lap/2 + (weld shrink - root gap)/2
// Derived: both bars tacked with the root gap between every face of the joint, then drawn together by the shrink:
// overall = cut left + cut right - half lap + root gap - weld shrink.
struct CutPlan
{
    double overall = 0;                     // finished
    double drawn = 0;                       // as the sections add up
    std::array<double, 2> adjusted_by{};    // of the first section of each bar, [left, right]
    std::array<double, 2> first_section{};  // what the case's first section lengths would have to be
    std::array<double, 2> cut{};            // whole bar with its share of the half lap
    double half_lap = 0, root_gap = 0, weld_shrink = 0;
    std::optional<PlungeBudget> plunge;
};

// Expects a joint and how it is made.
CutPlan cut_plan(const Case& asked);

// A saw cut, squared. Judgement.
constexpr double cut_tolerance_mm = 0.5;
// How far a shrink that was not measured on a trial piece may be off, as a share of it. Judgement.
constexpr double shrink_uncertainty = 0.5;

}  // namespace splicewright
