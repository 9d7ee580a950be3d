// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <Eigen/Core>
#include <string>
#include <vector>

#include "post/report.h"
#include "solver/stress_field.h"

namespace splicewright
{

// Fields of one load at its asked amount, as the view shows them, in the order of view_payload.h.
struct ViewField
{
    std::string load;                      // "torsion", "bending", "axial", "press"
    std::vector<std::string> names;        // "rr" ... "rz" of the stress, then "r", "t", "z" of the displacement
    std::vector<Eigen::VectorXd> channel;  // [n_region_nodes] each, MPa or mm
    Eigen::VectorXd spread;                // [n_region_nodes] MPa, see stress_spread
};

// Displacements are measured from the joint plane: its mean movement and turn are taken off; of a shaft without a joint
// at z = 0 or the end nearest to it.
std::vector<ViewField> view_fields(const Case& asked, const SolvedFields& fields);

}  // namespace splicewright
