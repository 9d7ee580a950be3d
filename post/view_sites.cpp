// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/view_sites.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "post/asked_words.h"
#include "post/site_loads.h"

namespace splicewright
{
namespace
{

// The bars of the unit loads weighed by what each adds, as for the von Mises stress of the checks.
double error_share(const SiteAnswer& site, const CombinedLoad& load, Measured UnitPeak::*part)
{
    double error = 0, sum = 0;
    for (const auto& [amount, peak] : {std::pair{load.torque, &site.torsion}, std::pair{load.bending, &site.bending},
                                       std::pair{load.axial, &site.axial}})
    {
        error += std::abs(amount) * (peak->*part).error;
        sum += std::abs(amount) * (peak->*part).value;
    }
    return sum > 0 ? error / sum : 0;
}

}  // namespace

std::vector<ViewLoad> view_loads(const Case& asked)
{
    const CombinedLoad all = peak_load(asked);
    std::vector<ViewLoad> list;
    if (all.torque != 0)
        list.push_back({"Torque alone", in_newton_metre(asked.load.peak_torque) + " N·m", {all.torque, 0, 0, 0}});
    if (all.bending != 0)
        list.push_back({"Bending alone", in_newton_metre(asked.load.peak_bending) + " N·m", {0, all.bending, 0, 0}});
    if (all.axial != 0)
        list.push_back({"Load along the axis alone", fmt::format("{:.4g} N", all.axial), {0, 0, all.axial, 0}});
    if (all.press != 0) list.push_back({"Press fit alone", "as asked", {0, 0, 0, all.press}});
    if (list.size() == 1) return list;
    std::string together = peak_load_text(asked);
    if (all.press != 0) together += " and the press fit";
    list.insert(list.begin(), {"All together", together, all});
    return list;
}

ViewSite view_site(const SiteAnswer& site, const CombinedLoad& load)
{
    ViewSite told{site.id, 0, 0, 0, {}, {}, {}, load.torque != 0 || load.bending != 0 || load.axial != 0};
    for (const SiteStress& bracket : site.brackets)
    {
        const SitePeak peak = site_peak(bracket, load);
        told.principal.value = std::max(told.principal.value, peak.principal);
        told.shear.value = std::max(told.shear.value, peak.shear);
        if (peak.von_mises <= told.von_mises.value) continue;
        told.von_mises.value = peak.von_mises;
        told.z = peak.z;
        told.r = peak.r;
        told.theta = bracket.around.size() > 0 ? peak.around : peak.theta;
    }
    told.von_mises.error = told.von_mises.value * error_share(site, load, &UnitPeak::von_mises);
    told.principal.error = told.principal.value * error_share(site, load, &UnitPeak::principal);
    told.shear.error = told.shear.value * error_share(site, load, &UnitPeak::shear);
    return told;
}

const CheckRow* row_of_site(const Report& report, const std::string& site)
{
    const CheckRow* found = nullptr;
    for (const CheckRow& row : report.sound.checks)
        if (row.site == site && row.valid() && (found == nullptr || row.utilisation > found->utilisation)) found = &row;
    return found;
}

std::map<std::string, int> site_numbers(const Report& report)
{
    struct Placed
    {
        std::string id;
        double z = 0, r = 0;
    };
    const auto placed = [&](const Judgement& judgement)
    {
        std::vector<Placed> list;
        for (const SiteAnswer& site : judgement.answer.sites)
        {
            const SiteDemand demand = site_demand(site, peak_load(report.asked));
            list.push_back({site.id, demand.z, demand.r});
        }
        if (judgement.solid)
            for (const auto& [site, place] : judgement.solid->weld_metal)
                list.push_back({site, place.z(), std::hypot(place.x(), place.y())});
        std::ranges::stable_sort(list, {}, [](const Placed& one) { return std::pair(one.z, one.r); });
        return list;
    };
    std::map<std::string, int> number;
    const auto add = [&](const Judgement& judgement)
    {
        for (const Placed& one : placed(judgement)) number.try_emplace(one.id, static_cast<int>(number.size()) + 1);
    };
    add(report.sound);
    for (const Judgement& judgement : report.what_if) add(judgement);
    return number;
}

bool goes_round(const std::string& site)
{
    return std::ranges::none_of(std::array{"lap-corner", "plug-edge", "weld-end", "throat"},
                                [&](const char* local) { return site.starts_with(local); });
}

std::string row_mark(const std::string& check_id) { return "check-" + check_id; }

}  // namespace splicewright
