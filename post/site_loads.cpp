// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/site_loads.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>

#include "cases/problem.h"
#include "cases/shape_limits.h"
#include "cases/units.h"

namespace splicewright
{

CombinedLoad peak_load(const Case& asked)
{
    const bool press =
        asked.sleeve && (asked.sleeve->slit[0] == SlitState::press || asked.sleeve->slit[1] == SlitState::press);
    return {asked.load.peak_torque.value(), asked.load.peak_bending.value(), asked.load.axial.value(),
            press ? 1.0 : 0.0};
}

std::string peak_load_text(const Case& asked)
{
    std::string text;
    int n_parts = 0;
    const auto add = [&](const std::string& part) {
        text += fmt::format("{}{}", std::array{"", " with ", " and "}[static_cast<std::size_t>(n_parts++)], part);
    };
    if (asked.load.peak_torque.value() != 0)
        add(fmt::format("peak torque {:.4g} N·m", asked.load.peak_torque.value() / newton_millimetre_per_newton_metre));
    if (asked.load.peak_bending.value() != 0)
        add(fmt::format("{:.3g} N·m of bending", asked.load.peak_bending.value() / newton_millimetre_per_newton_metre));
    if (asked.load.axial.value() != 0) add(fmt::format("{:.4g} N along the axis", asked.load.axial.value()));
    return text;
}

double bending_with(const Load& load, double torque)
{
    if (load.peak_torque.value() == 0) return load.peak_bending.value();
    return load.peak_bending.value() * std::abs(torque) / load.peak_torque.value();
}

SiteDemand site_demand(const SiteAnswer& site, const CombinedLoad& load)
{
    SiteDemand demand;
    for (const SiteStress& bracket : site.brackets)
    {
        const SitePeak peak = site_peak(bracket, load);
        if (peak.von_mises < demand.von_mises) continue;
        demand.von_mises = peak.von_mises;
        demand.z = peak.z;
        demand.r = peak.r;
        demand.theta = peak.theta;
        demand.around = peak.around;
        demand.stress = peak.stress;
    }
    demand.error_pct = combined_error_pct(site, load);
    return demand;
}

double combined_error_pct(const SiteAnswer& site, const CombinedLoad& load)
{
    const std::array<std::pair<double, const UnitPeak*>, 3> parts{
        {{load.torque, &site.torsion}, {load.bending, &site.bending}, {load.axial, &site.axial}}};
    double error = 0, sum = 0;
    for (const auto& [amount, peak] : parts)
    {
        error += std::abs(amount) * peak->von_mises.error;
        sum += std::abs(amount) * peak->von_mises.value;
    }
    if (!(sum > 0)) return 0;
    // Shear and normal stress join as the root of their squares: t dt + n dn over t^2 + n^2.
    const double t = std::abs(load.torque) * site.torsion.von_mises.value, n = sum - t;
    const double dt = std::abs(load.torque) * site.torsion.von_mises.error, dn = error - dt;
    return 100 * std::max(error / sum, (t * dt + n * dn) / (t * t + n * n));
}

Side side_of(const std::string& site) { return site.find(".right") != std::string::npos ? Side::right : Side::left; }

bool is_weld_notch(const std::string& site)
{
    return site.starts_with("bar-toe") || site.starts_with("sleeve-toe") || site.starts_with("root") ||
           site == "land-edge";
}

bool is_plain_metal(const std::string& site)
{
    return site.starts_with("bar.") || site.starts_with("shoulder.") || site.starts_with("groove.");
}

PlainSite plain_site(const Case& asked, const std::string& site)
{
    EXPECTS(is_plain_metal(site));
    const Bar& bar = *asked.bar[index(side_of(site))];
    PlainSite result{{Millimetre{0}, bar.bore}, Millimetre{0}, &bar.material};
    const auto number = [&] { return static_cast<std::size_t>(std::atoi(site.substr(site.rfind('.') + 1).c_str())); };
    if (site.starts_with("shoulder."))
    {
        const std::size_t n = number();
        result.section.outer_diameter = std::min(bar.sections[n - 1].diameter, bar.sections[n].diameter);
        result.notch_radius = bar.sections[n].fillet;
    }
    else if (site.starts_with("groove."))
    {
        const Groove& groove = bar.grooves[number() - 1];
        double start = 0;
        for (const Section& section : bar.sections)
        {
            if (groove.at.value() > start && groove.at.value() < start + section.length.value())
                result.section.outer_diameter = section.diameter - 2.0 * groove.depth;
            start += section.length.value();
        }
        result.notch_radius = groove.radius;
    }
    else
    {
        result.section.outer_diameter =
            std::min_element(bar.sections.begin(), bar.sections.end(),
                             [](const Section& a, const Section& b) { return a.diameter < b.diameter; })
                ->diameter;
    }
    return result;
}

bool reads_thinnest_section(const Case& asked, const SiteAnswer& site)
{
    return 2 * site.r < plain_site(asked, site.id).section.outer_diameter.value() + same_length.value();
}

}  // namespace splicewright
