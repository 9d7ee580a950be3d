// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "post/making_bore.h"
#include "post/making_cut.h"
#include "post/making_steel.h"
#include "post/making_weld.h"

namespace splicewright
{

// One thing to look at, in the order of the work.
struct InspectionStep
{
    std::string what, method, when, accept;
    std::string source;
    Provenance provenance = Provenance::from_memory;
};

// How the splice is made and looked at: what the shop needs beside the drawing. Lengths in mm.
struct ShopSheet
{
    QualityLevel quality = QualityLevel::B;
    std::vector<std::string> partial_welds;  // sentences on welds that the amounts below do not know
    CutPlan cut;
    std::vector<BoreBand> bores;      // left, right; empty without a sleeve
    std::vector<WeldDeposit> welds;   // butt, then the sleeve welds
    std::vector<SteelAdvice> steels;  // left bar, right bar, sleeve
    HeatPlan heat;
    std::vector<std::string> sequence;  // the order of the work, one sentence each
    std::vector<InspectionStep> inspection;
};

// Of a case with a joint; nothing for a plain shaft, which is not welded.
std::optional<ShopSheet> shop_sheet(const Case& asked);

// Acceptance by the quality level asked for; `heat` tells how long to wait before looking for cracks.
// Source: [ISO5817] table 1, partly read in a secondary source; each step says which.
std::vector<InspectionStep> inspection_list(const Case& asked, const HeatPlan& heat);

}  // namespace splicewright
