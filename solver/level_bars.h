// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "solver/meridian_level.h"

namespace splicewright
{

// Surface stress of the thinnest bar per unit load, the scale against which a site counts as loaded.
struct NominalStress
{
    double torsion = 0, bending = 0, axial = 0;  // von Mises, MPa per N*mm or N
};
NominalStress nominal_stress(const Case& asked);

// What was done between two meshes.
enum class Refined
{
    everywhere,  // every element smaller by the same factor
    at_notches,  // only around some notches, which says little of the whole
};

struct Comparison
{
    double worst = 0;                 // largest relative error of a site
    std::vector<std::string> missed;  // sites beyond the target
};

// Curve names that carry a site; empty when the site has no notch of its own.
std::vector<std::string> notch_curves(const std::string& site);

// From the mesh before to this one, with elements smaller by 1.5 where it was refined.
struct MeshStep
{
    MeshSize size;  // of this one
    Refined refined = Refined::everywhere;
    std::vector<std::string> sites;  // refined ones, with Refined::at_notches
    double target = 0;               // largest relative error allowed
};

// Sets the error bars of `now` from its change against the mesh before. A bar does not shrink where the mesh was not
// refined.
Comparison compare(Level& now, const Level& before, const NominalStress& nominal, const MeshStep& step);

}  // namespace splicewright
