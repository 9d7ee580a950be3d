// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/work_sequence.h"

#include <fmt/format.h>

namespace splicewright
{
namespace
{

constexpr double room_c = 20;

std::string heated(const HeatPlan& heat)
{
    if (heat.preheat_c <= room_c) return "dry and not colder than 20 °C";
    return fmt::format("at {:.0f} °C all through, between passes not above {:.0f} °C", heat.preheat_c,
                       heat.interpass_c);
}

bool presses(const Sleeve& sleeve) { return sleeve.slit[0] == SlitState::press || sleeve.slit[1] == SlitState::press; }

std::string sleeve_on(const Sleeve& sleeve)
{
    if (presses(sleeve))
        return "Warm the sleeve until it slides, push it to its marks in one move and let it cool; no welding "
               "flame.";
    return "Slide the sleeve to its marks; both welds start from clean, bright metal.";
}

}  // namespace

std::vector<std::string> work_sequence(const Case& asked, const ShopSheet& sheet)
{
    const CutPlan& cut = sheet.cut;
    std::vector<std::string> steps{
        "Identify the steel of every part and write its hardness down.",
        fmt::format("Saw the left bar to {:.1f} mm and the right bar to {:.1f} mm, and square the ends.", cut.cut[0],
                    cut.cut[1])};
    if (cut.half_lap > 0)
        steps.push_back(
            fmt::format("Mill both ends to half their section over {:g} mm, so that they interlock.", cut.half_lap));
    steps.push_back("Bevel the ends as the drawing of the bar ends shows; take off all coating, oil and scale.");
    if (asked.sleeve)
    {
        steps.push_back(presses(*asked.sleeve)
                            ? "Bore the sleeve to its limits; try with a gauge that it can come on from a shaft's end."
                            : "Bore the sleeve to its limits; push it over one bar now, well clear of the joint.");
        steps.push_back("Mark on both bars where the sleeve's ends will come.");
    }
    steps.push_back(fmt::format("Line the bars up in a fixture and tack them with a gap of {:g} mm, {}.", cut.root_gap,
                                heated(sheet.heat)));
    steps.push_back(fmt::format("Weld the butt in at least {} passes, turning the shaft; hold the heat to the last.",
                                sheet.welds.front().passes_needed));
    steps.push_back("Cool slowly, wrapped; wait the hours of the list below, then grind flush and look for cracks.");
    if (!asked.sleeve) return steps;
    steps.push_back(sleeve_on(*asked.sleeve));
    steps.push_back(fmt::format("Weld both ends of the sleeve all round, {}.", heated(sheet.heat)));
    steps.push_back("Cool slowly, wrapped; wait again, then look for cracks, and measure run-out and hardness.");
    return steps;
}

}  // namespace splicewright
