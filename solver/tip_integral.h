// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "mesh/mesh.h"
#include "solver/crack_fields.h"
#include "solver/unit_solution.h"

namespace splicewright
{

// A crack tip of one mesh.
struct CrackTip
{
    CrackFrame frame;
    ElasticConstants steel;          // around the tip
    std::vector<std::string> faces;  // curves on which the two faces of the crack lie
};

// The virtual growth is 1 within `inner` of the tip and falls linearly to 0 at `outer`, mm.
struct TipDomain
{
    double inner = 0, outer = 0;
};

// Amplitudes over theta: I and II vary as cos and III as sin in bending, all are constant otherwise.
struct TipIntegral
{
    double I = 0, II = 0, III = 0;  // MPa*sqrt(mm) per N*mm or N
    double energy_release = 0;      // N/mm per unit load squared: (I^2 + II^2) (1 - nu^2) / E + III^2 / (2 G)
};

// Stress intensities by the interaction integral with the fields of crack_field, and the energy release rate by the
// derivative of the stiffness; two separate integrals of one solution.
// Valid for a homogeneous neighbourhood, straight faces within the domain, and faces that are free; where a held slit
// presses them together II and III stay valid and I is not given by the integral.
TipIntegral tip_integral(const Mesh& mesh, const std::vector<ElasticConstants>& steel, const UnitSolution& solution,
                         const CrackTip& tip, const TipDomain& domain);

}  // namespace splicewright
