// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "post/report.h"
#include "solver/solid_level.h"
#include "solver/stress_intensity.h"

namespace splicewright
{

// A case with the answers of the finite elements that its rows rest on.
struct SolvedCase
{
    Case asked;
    MeridianAnswer answer;
    MeridianAnswer notched;                 // all notches of 1 mm
    std::optional<MeridianAnswer> small;    // all notches of 0.05 mm, where a wall is thin
    std::optional<StressIntensities> tips;  // with a joint
    std::vector<WeldMetalForce> metal;      // of the solid model, where it answers
};

// The utilisation of a row before its error bar, computed a second time from the numbers of the case and the unit
// stresses of the finite elements, by formulas written out again from their sources. Nothing of post/ is called.
struct Opinion
{
    double utilisation = 0;
    double tolerance = 1e-6;  // relative
};

// Nothing for a row of a kind that nobody has computed a second time.
std::optional<Opinion> second_opinion(const SolvedCase& solved, const std::string& id);

// The parts of an id: "fatigue", "bar-toe.left", "nominal-iiw".
struct RowId
{
    std::string kind, site, name;
};

std::optional<Opinion> second_strength(const SolvedCase& solved, const RowId& id);
std::optional<Opinion> second_weld_fatigue(const SolvedCase& solved, const RowId& id);
std::optional<Opinion> second_shaft_fatigue(const SolvedCase& solved, const RowId& id);
std::optional<Opinion> second_metal_strength(const SolvedCase& solved, const RowId& id);
std::optional<Opinion> second_metal_fatigue(const SolvedCase& solved, const RowId& id);
std::optional<Opinion> second_crack_growth(const SolvedCase& solved, const RowId& id);

// Shared by the four.

// Everything that cycles: torque between two ends, a couple that turns, how often.
struct Event
{
    double low = 0, high = 0, couple = 0, count = 0;
    [[nodiscard]] double range() const { return high - low; }
};
std::vector<Event> events_of(const Load& load);

int side_number(const std::string& site);  // 0 left, 1 right
double first_diameter(const Case& asked, int side);
double shear_per_torque(double outer, double inner);   // at the surface: (outer/2) / J
double stress_per_couple(double outer, double inner);  // (outer/2) / I
double throat_of(const SleeveWeld& weld);              // height of the triangle over its face

// Stress on the throat's plane by a force per length: opening or closing, sliding across, sliding along.
struct OnThroat
{
    double normal = 0, across = 0, along = 0;
};
OnThroat on_throat(const SleeveWeld& weld, double outward, double radial, double tangential);

// Of a solid disc or of the ring that the stated depth leaves.
struct Ring
{
    double outer = 0, inner = 0;
};
Ring butt_ring(const Case& asked);

}  // namespace splicewright
