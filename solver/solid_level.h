// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "mesh/solid_mesher.h"
#include "solver/meridian.h"
#include "solver/solid_contact.h"
#include "solver/solid_forces.h"
#include "solver/solid_sites.h"

namespace splicewright
{

// What the contact of the lap's faces came to under the peak load.
struct LapContact
{
    double penetration = 0;    // mm, largest left
    double tension = 0;        // largest pull left over the peak pressure
    double peak_pressure = 0;  // MPa
    double torque = 0;         // N*mm about the axis that the faces hand over, of the right bar
    int closed = 0, places = 0, steps = 0;
    // Pressure that bending in its worst direction takes away where the faces are closed, over what the other loads
    // press: above 1 the closed faces part for a moment in each turn, and the answer holds them together there.
    double relieved_by_bending = 0;
    std::vector<ContactSurface> surfaces;
    std::vector<ContactState> states;
};

// Force through weld metal that has no notch radius, by unit load: N per unit of the load over the stated area.
struct WeldMetalForce
{
    std::string site;   // "plug-edge.N", "weld-end.N"
    double area = 0;    // mm^2: of the hole at the bar; throat times the length over which the force is taken
    double length = 0;  // mm along the weld that the force is taken over; of a plug 0
    Eigen::Vector3d place{0, 0, 0};
    // Along the axis, around, outward; press: of the fit as it is. Around: the moment about the axis over the radius of
    // `place`, which of a sleeve weld is that of the middle of its throat.
    Eigen::Vector3d torsion{0, 0, 0}, towards_x{0, 0, 0}, towards_y{0, 0, 0}, axial{0, 0, 0}, press{0, 0, 0};
    // Size of the error of each, bending in its worse direction.
    double torsion_error = 0, bending_error = 0, axial_error = 0, press_error = 0;
};

// One way in which slit and lap hang together.
struct SolidBracket
{
    SolidUnitDisplacements unit;
    std::optional<LapContact> contact;
    std::vector<WeldMetalForce> weld_metal;
};

// Everything that one solid mesh says about one scenario; the numbers in it carry no error yet.
struct SolidLevel
{
    SolidMeshAnswer mesh;
    std::vector<ElasticConstants> steel;
    std::vector<SolidBracket> brackets;
    std::vector<SiteAnswer> sites;
    std::array<std::optional<WeldForce>, 2> weld;
    SleeveShare share;
    Measured twist, end_rotation, extension, fit_pressure;
    double closing_by_bending = 0, closing_by_axial = 0, closing_by_torque = 0;
    double residual = 0, reaction_imbalance = 0, section_imbalance = 0;
    int iterations = 0;  // most of a load
    double set_up_seconds = 0, solve_seconds = 0, recover_seconds = 0;
    std::int64_t bytes = 0;
};

enum class LapContactUse
{
    solved,
    left_out,  // faces of a lap are free
};

// Solves one mesh. The body is free; its ends carry the unit loads by tractions with exact resultants.
// coarser: the answer on the mesh whose elements this one parts in eight, where the iteration begins; or null.
// Throws CannotCompute when a solution is poor or does not fit into the memory.
SolidLevel solved_solid_level(const Case& asked, const Scenario& scenario, SolidMeshAnswer mesh,
                              const SolidSettings& settings, LapContactUse use = LapContactUse::solved,
                              const SolidLevel* coarser = nullptr);

}  // namespace splicewright
