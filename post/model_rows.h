// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "solver/meridian.h"

namespace splicewright
{

// One stress of a site by both models, per 1 kN·m, or per 1 kN of axial load.
struct ModelRow
{
    std::string site;
    std::string load;          // "torsion", "bending", "axial"
    Measured meridian, solid;  // MPa
    bool agrees = false;       // within the sum of their bars
};

std::size_t n_agreeing(const std::vector<ModelRow>& rows);

// The solid model's stress over the meridian model's, %; 0 where the latter is 0.
double apart_pct(const ModelRow& row);

// "28 of 30 agree within the sum of both error bars; !: does not"
std::string agreement_words(const std::vector<ModelRow>& rows, bool must_agree);

// Von Mises stresses of the sites that both have.
std::vector<ModelRow> model_rows(const MeridianAnswer& meridian, const MeridianAnswer& solid);

// A table of both side by side; rows that should agree and do not are marked. Empty without rows.
std::string model_text(const std::vector<ModelRow>& rows, bool must_agree);

// Sites where the solid model's stress is higher than the meridian model's by more than both bars.
std::vector<std::string> sites_worse_in_solid(const std::vector<ModelRow>& rows);

}  // namespace splicewright
