// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <vector>

#include "cases/case.h"
#include "post/torque_flow.h"
#include "solver/solid_fields.h"

namespace splicewright
{

// The same as torque_flow, of the solid model: bars carry what their regions carry, the sleeve with its fillet and plug
// welds the rest. The load is that of the fields.
struct SolidTorqueFlow
{
    std::vector<TorquePoint> points;
    // Largest difference between the torque of a whole section and that of the load, as a share of it: what the
    // integration misses.
    double imbalance = 0;
};

// Integral of x tau_yz - y tau_xz over the section across the shaft; place and stress linear in the flat parts of each
// element, for which the integration is exact. Empty without a sleeve or without torque.
SolidTorqueFlow solid_torque_flow(const Case& asked, const SolidFields& fields);

}  // namespace splicewright
