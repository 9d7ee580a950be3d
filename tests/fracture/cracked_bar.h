// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "solver/stress_intensity.h"

namespace splicewright::sample
{

constexpr ElasticConstants crack_steel{210000, 0.3};

// Plain bar of radius b with a crack at z = 0, half length given: its two halves are fused only outside radius a (an
// internal, penny-shaped crack), or only inside it (an external ring crack). Tip "land-edge".
enum class RingCrack
{
    internal,
    external,
};
CrackedSection cracked_bar(RingCrack crack, double a, double b, double half_length);

// Bar of radius R inside a tube of outer radius D, both of `crack_steel`, one body for z > 0 and separate for z < 0
// (slit at r = R), where only the bar is loaded. Tip "root.right" looks to z > 0.
CrackedSection slit_bar(double R, double D, double half_length);

}  // namespace splicewright::sample
