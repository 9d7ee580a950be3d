// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <string>

#include "cases/case.h"
#include "post/weld_line.h"
#include "solver/meridian.h"

namespace splicewright
{

// What a strength row is held against, and whose it is.
struct Limit
{
    Megapascal stress;
    std::string whose;
    Provenance provenance = Provenance::from_memory;
    Megapascal yield{};  // of the metal, where the limit is a factor times it
    double factor = 1;   // below 1: softened
};
WorkedStep limit_step(const Limit& limit);

// What a strength is worth where it is no guaranteed minimum, else empty; that a typical one is used is a judgement.
std::string strength_words(const Material& material);
Provenance strength_provenance(const Material& material);

Limit yield_of(const Material& material);
Limit heated_yield_of(const Material& material);  // softened beside a weld, judgement
Limit butt_limit(const Case& asked);              // weakest of the filler and both heated bars

Limit throat_limit(const Case& asked, Side side);  // weakest of the filler, the heated bar and the heated sleeve

// What EN 1993-1-8 asks of a sleeve weld: the part with the least tensile strength and the correlation factor.
struct EurocodeThroat
{
    std::string weakest;
    Megapascal tensile;
    double beta_w = 1;
    Provenance provenance = Provenance::from_memory;
};
EurocodeThroat eurocode_throat(const Case& asked, Side side);

// A value of the throat where it is worst around the turn, and how it came about.
template <class Value>
struct WorstThroat
{
    Value value{};
    std::vector<WorkedStep> worked;
};

// Worst over 360 angles around the turn under a load: directional method, simplified method, von Mises stress in MPa.
WorstThroat<WeldCheck> worst_directional(const Case& asked, const WeldForce& weld, Side side, const CombinedLoad& load);
WorstThroat<WeldCheck> worst_simplified(const Case& asked, const WeldForce& weld, Side side, const CombinedLoad& load);
WorstThroat<double> worst_throat_stress(const Case& asked, const WeldForce& weld, Side side, const CombinedLoad& load);

}  // namespace splicewright
