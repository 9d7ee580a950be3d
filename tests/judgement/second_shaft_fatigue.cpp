// SPDX-License-Identifier: GPL-2.0-or-later
// Plain metal. Source: [Shigley2011] table 6-2, 6-5, eq. 6-8, 6-13 to 6-20, 6-32 to 6-35, 7-5 to 7-7.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "tests/judgement/second_opinion.h"

namespace splicewright
{
namespace
{

struct Net
{
    double diameter = 0, notch_radius = 0;
};

Net net_section(const Bar& bar, const std::string& site)
{
    const auto number = [&] { return static_cast<std::size_t>(std::stoi(site.substr(site.rfind('.') + 1))); };
    if (site.starts_with("shoulder."))
    {
        const Section &before = bar.sections.at(number() - 1), &here = bar.sections.at(number());
        return {std::min(before.diameter.value(), here.diameter.value()), here.fillet.value()};
    }
    if (site.starts_with("groove."))
    {
        const Groove& groove = bar.grooves.at(number() - 1);
        double end = 0;
        for (const Section& section : bar.sections)
        {
            end += section.length.value();
            if (groove.at.value() < end)
                return {section.diameter.value() - 2 * groove.depth.value(), groove.radius.value()};
        }
    }
    double least = INFINITY;
    for (const Section& section : bar.sections) least = std::min(least, section.diameter.value());
    return {least, 0};
}

double surface_factor(BarSurface surface, double tensile)
{
    switch (surface)
    {
        case BarSurface::ground: return std::min(1.0, 1.58 * std::pow(tensile, -0.085));
        case BarSurface::machined: return std::min(1.0, 4.51 * std::pow(tensile, -0.265));
        case BarSurface::hot_rolled: return std::min(1.0, 57.7 * std::pow(tensile, -0.718));
        case BarSurface::forged: return std::min(1.0, 272 * std::pow(tensile, -0.995));
    }
    return 0;
}

// Neuber's sqrt(a) from the fits in kpsi and inches, mm^0.5.
double neuber(double tensile, double c0, double c1, double c2)
{
    const double S = tensile / 6.894757;
    return (c0 - c1 * S + c2 * S * S - 2.67e-8 * S * S * S) * std::sqrt(25.4);
}

double fatigue_factor(double concentration, double radius, double root_a)
{
    return 1 + (std::max(1.0, concentration) - 1) / (1 + root_a / std::sqrt(radius));
}

struct Reversed
{
    double amplitude = 0, mean = 0, count = 0;
};

// Largest factor on all stresses with a damage of at most 1.
double scale_of(const std::vector<Reversed>& blocks, double tensile, double endurance, double share)
{
    const double thousand = share * tensile;
    const auto fails = [&](double factor)
    {
        double damage = 0, largest = 0;
        for (const Reversed& block : blocks)
        {
            if (factor * block.mean >= tensile) return true;
            const double stress = factor * block.amplitude / (1 - factor * block.mean / tensile);
            largest = std::max(largest, stress);
            const double slope = stress > thousand ? 3 / std::log10(1 / share) : 3 / std::log10(thousand / endurance);
            damage += block.count / (1e3 * std::pow(thousand / stress, slope));
        }
        return largest > endurance && damage > 1;
    };
    double low = 1e-6, high = 1e6;
    while (high / low > 1 + 1e-12)
    {
        const double middle = std::sqrt(low * high);
        (fails(middle) ? high : low) = middle;
    }
    return low;
}

}  // namespace

std::optional<Opinion> second_shaft_fatigue(const SolvedCase& solved, const RowId& id)
{
    const Case& asked = solved.asked;
    const Bar& bar = *asked.bar.at(static_cast<std::size_t>(side_number(id.site)));
    const Net net = net_section(bar, id.site);
    const double bore = bar.bore.value(), S_ut = bar.material.tensile.value();
    double k_tau = shear_per_torque(net.diameter, bore), k_sigma = stress_per_couple(net.diameter, bore);
    double pull = asked.load.axial.value() / (std::numbers::pi / 4 * (net.diameter * net.diameter - bore * bore));
    double tolerance = 1e-6;
    if (net.notch_radius > 0)
    {
        const auto site = std::find_if(solved.answer.sites.begin(), solved.answer.sites.end(),
                                       [&](const SiteAnswer& each) { return each.id == id.site; });
        const double bending = fatigue_factor(site->bending.principal.value / k_sigma, net.notch_radius,
                                              neuber(S_ut, 0.246, 3.08e-3, 1.51e-5));
        const double torsion =
            fatigue_factor(site->torsion.shear.value / k_tau, net.notch_radius, neuber(S_ut, 0.190, 2.51e-3, 1.35e-5));
        k_tau *= torsion, k_sigma *= bending, pull *= bending;
        tolerance = 2e-3;  // three digits of the fits
    }
    const double size =
        net.diameter <= 51 ? 1.24 * std::pow(net.diameter, -0.107) : 1.51 * std::pow(net.diameter, -0.157);
    const double endurance = surface_factor(bar.surface, S_ut) * size * 0.814 * std::min(S_ut / 2, 700.0);
    const double share = S_ut <= 500 ? 0.9 : S_ut <= 1400 ? 1.06 - 4.1e-4 * S_ut + 1.5e-7 * S_ut * S_ut : 0.77;
    std::vector<Reversed> blocks;
    for (const Event& event : events_of(asked.load))
    {
        // While just running the torque is steady.
        const bool runs = event.range() == 0;
        const double mean = runs ? asked.load.running_torque.value() : (event.high + event.low) / 2;
        blocks.push_back({std::sqrt(std::pow(k_sigma * event.couple, 2) + 3 * std::pow(k_tau * event.range() / 2, 2)),
                          std::sqrt(pull * pull + 3 * std::pow(k_tau * mean, 2)), event.count});
    }
    return Opinion{1 / scale_of(blocks, S_ut, endurance, share), tolerance};
}

}  // namespace splicewright
