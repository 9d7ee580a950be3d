// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>
#include <vector>

#include "post/check_row.h"
#include "post/crack_growth.h"
#include "solver/meridian.h"
#include "solver/stress_intensity.h"

namespace splicewright
{

// The growth of one crack over the life asked for.
struct CrackGrowth
{
    std::string site;
    CrackLife life;
};

struct CrackChecks
{
    std::vector<CheckRow> rows;
    std::vector<CrackGrowth> growth;
};

bool is_crack_growth(const CheckRow& row);

// Crack growth from the land and from the slit's roots. Intensities of the initial size by finite elements; growth by
// the closed form of a penny-shaped crack (land), and by the shrinking ligament of the throat (root), whose intensity
// goes with one over the root of what is left. Modes are joined by their energy,
// K^2 = KI^2 + KII^2 + KIII^2/(1 - nu), full ranges, steel as welded; the part's share of the load stays as it was.
// Source: [ParisErdogan1963], [BS7910], [IrwinKies1954] for the energy.
CrackChecks crack_checks(const Case& asked, const MeridianAnswer& answer, const StressIntensities& intensities);

}  // namespace splicewright
