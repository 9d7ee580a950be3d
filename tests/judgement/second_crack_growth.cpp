// SPDX-License-Identifier: GPL-2.0-or-later
// Growth of a crack by [ParisErdogan1963] from the intensities of the finite elements. Numbers: [BS7910] as quoted by
// secondary sources; the penny-shaped crack: [TadaParisIrwin2000], from memory.
#include <algorithm>
#include <cmath>
#include <functional>
#include <numbers>

#include "tests/judgement/second_opinion.h"

namespace splicewright
{
namespace
{

using std::numbers::pi;

constexpr double paris = 5.21e-13, threshold = 63;  // mm per cycle and MPa sqrt(mm)

struct Crack
{
    double first = 0, most = 0;           // mm
    double by_torque = 0, by_couple = 0;  // of the first length, MPa sqrt(mm) per N*mm
    std::function<double(double)> grown_torque, grown_couple, collapse;
    double toughness = 0;  // MPa sqrt(mm)
};

double energy_sum(const ModeIntensities& modes, double nu)
{
    return std::sqrt(std::pow(modes.I.value, 2) + std::pow(modes.II.value, 2) +
                     std::pow(modes.III.value, 2) / (1 - nu));
}

double resists(const Material& metal, double size)
{
    if (metal.toughness && metal.toughness_provenance == Provenance::stated) return *metal.toughness;
    const double root_metre = std::sqrt(1000.0);
    const double reference = metal.toughness ? *metal.toughness / root_metre : 12 * std::sqrt(27.0);
    return (20 + (reference - 20) * std::pow(25 / std::max(25.0, size), 0.25)) * root_metre;
}

// Net stress at the edge times sqrt(pi c) and a polynomial of c/b; the last coefficient is that of the load.
double penny(double c, double b, double moment_over_fourths, double last)
{
    const double x = c / b;
    const double series =
        1 + x / 2 + 3 * x * x / 8 + 5 * std::pow(x, 3) / 16 - 93 * std::pow(x, 4) / 128 + last * std::pow(x, 5);
    return c / (moment_over_fourths * (std::pow(b, 4) - std::pow(c, 4))) * std::sqrt(pi * c * (1 - x)) * series;
}

Crack land_crack(const SolvedCase& solved)
{
    const Case& asked = solved.asked;
    const double b = (first_diameter(asked, 0) + first_diameter(asked, 1)) / 4;
    Crack crack;
    crack.first = b - asked.joint->penetration->value();
    crack.most = crack.first + 0.999 * (b - crack.first);
    crack.grown_torque = [=, first = crack.first](double c)
    { return penny(c, b, pi / 2, 0.038) / penny(first, b, pi / 2, 0.038); };
    crack.grown_couple = [=, first = crack.first](double c)
    { return penny(c, b, pi / 4, 0.483) / penny(first, b, pi / 4, 0.483); };
    const double torque = (1 - solved.answer.share.torsion.value) * asked.load.peak_torque.value();
    const double couple = (1 - solved.answer.share.bending.value) * asked.load.peak_bending.value();
    double yield = asked.joint->filler.yield.value();
    for (const auto& bar : asked.bar)
        yield = std::min(yield, bar->material.heated_yield_factor * bar->material.yield.value());
    crack.collapse = [=](double c)
    {
        const double cubes = b * b * b - c * c * c;
        return std::hypot(torque / (2 * pi / 3 * cubes * yield / std::sqrt(3.0)), couple / (4.0 / 3 * cubes * yield));
    };
    crack.toughness = resists(asked.joint->filler, std::max(first_diameter(asked, 0), first_diameter(asked, 1)));
    return crack;
}

Crack root_crack(const SolvedCase& solved, int side)
{
    const Case& asked = solved.asked;
    const SleeveWeld& legs = asked.sleeve->weld;
    const WeldForce& weld = *solved.answer.weld.at(static_cast<std::size_t>(side));
    const double a = throat_of(legs);
    Crack crack;
    crack.most = 0.999 * a;
    crack.grown_torque = crack.grown_couple = [=](double c) { return 1 / std::sqrt(1 - c / a); };
    const OnThroat turn = on_throat(legs, 0, 0, weld.torsion_tangential);
    const OnThroat bend = on_throat(legs, weld.bending_outward, weld.bending_radial, weld.bending_tangential);
    const double torque = asked.load.peak_torque.value(), couple = asked.load.peak_bending.value();
    const double shear = std::abs(turn.along) * torque + std::abs(bend.along) * couple;
    const double normal = std::hypot(bend.normal, bend.across) * couple;
    const Material& bar = asked.bar.at(static_cast<std::size_t>(side))->material;
    const double yield = std::min({legs.filler.yield.value(), bar.heated_yield_factor * bar.yield.value(),
                                   asked.sleeve->material.heated_yield_factor * asked.sleeve->material.yield.value()});
    const double whole = std::sqrt(normal * normal + 3 * shear * shear) / yield;
    crack.collapse = [=](double c) { return whole * a / (a - c); };
    crack.toughness = resists(legs.filler, a);
    return crack;
}

// Lives asked for until the end, by Simpson's rule; everything times a factor.
double lives(const Crack& crack, const Load& load, double factor)
{
    const auto ends = [&](double c)
    {
        const double intensity = std::hypot(crack.by_torque * crack.grown_torque(c) * load.peak_torque.value(),
                                            crack.by_couple * crack.grown_couple(c) * load.peak_bending.value());
        return factor * std::max(crack.collapse(c), intensity / crack.toughness) > 1;
    };
    if (ends(crack.first)) return 0;
    double low = crack.first, high = crack.most;
    for (int step = 0; step < 60; ++step) (ends((low + high) / 2) ? high : low) = (low + high) / 2;
    const auto pace = [&](double c)
    {
        double growth = 0;
        for (const Event& event : events_of(load))
        {
            const double range = factor * std::hypot(crack.by_torque * crack.grown_torque(c) * event.range(),
                                                     crack.by_couple * crack.grown_couple(c) * 2 * event.couple);
            if (range > threshold) growth += event.count * paris * std::pow(range, 3);
        }
        return growth;
    };
    constexpr int n = 2000;
    double sum = 0;
    for (int i = 0; i <= n; ++i)
    {
        const double growth = pace(crack.first + (low - crack.first) * i / n);
        if (growth == 0 && i > 0) return INFINITY;
        if (growth == 0) continue;
        sum += (i == 0 || i == n ? 1 : i % 2 == 1 ? 4 : 2) / growth;
    }
    return sum * (low - crack.first) / n / 3;
}

}  // namespace

std::optional<Opinion> second_crack_growth(const SolvedCase& solved, const RowId& id)
{
    const bool land = id.site == "land-edge";
    Crack crack = land ? land_crack(solved) : root_crack(solved, side_number(id.site));
    const double nu =
        land ? solved.asked.bar[0]->material.poisson_ratio : solved.asked.sleeve->weld.filler.poisson_ratio;
    for (const TipAnswer& tip : solved.tips->tips)
    {
        if (tip.id != id.site) continue;
        for (const TipIntensities& way : tip.brackets)
        {
            crack.by_torque = std::max(crack.by_torque, energy_sum(way.torsion, nu));
            crack.by_couple = std::max(crack.by_couple, energy_sum(way.bending, nu));
        }
    }
    double low = 1e-6, high = 1e6;
    while (high / low > 1 + 1e-8)
    {
        const double middle = std::sqrt(low * high);
        (lives(crack, solved.asked.load, middle) >= 1 ? low : high) = middle;
    }
    constexpr double steps = 3e-3;  // both rules, and the first piece of theirs just above the first length
    return Opinion{1 / low, steps};
}

}  // namespace splicewright
