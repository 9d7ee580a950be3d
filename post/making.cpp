// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/making.h"

#include "post/asked_words.h"
#include "post/work_sequence.h"

namespace splicewright
{

std::optional<ShopSheet> shop_sheet(const Case& asked)
{
    if (!asked.joint || !asked.making) return std::nullopt;
    ShopSheet sheet;
    sheet.quality = asked.making->quality;
    sheet.partial_welds = partial_weld_words(asked);
    sheet.cut = cut_plan(asked);
    if (asked.sleeve)
        for (const Side side : both_sides) sheet.bores.push_back(bore_band(asked, side));
    sheet.welds.push_back(butt_deposit(asked));
    if (asked.sleeve)
        for (const Side side : both_sides) sheet.welds.push_back(fillet_deposit(asked, side));
    sheet.steels = steel_advice(asked);
    sheet.heat = heat_plan(asked, sheet.steels);
    sheet.sequence = work_sequence(asked, sheet);
    sheet.inspection = inspection_list(asked, sheet.heat);
    return sheet;
}

}  // namespace splicewright
