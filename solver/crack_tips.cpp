// SPDX-License-Identifier: GPL-2.0-or-later
#include "solver/crack_tips.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "mesh/crack_outline.h"

namespace splicewright
{
namespace
{

constexpr double steels_alike = 0.05;  // largest difference of E or Poisson's ratio at a tip, judgement: Dundurs'
                                       // second parameter is then below 0.01 and the exponent's imaginary part 0.003

// Steel at a tip: the mean of the regions that meet there.
struct TipSteel
{
    ElasticConstants mean;
    double difference = 0;  // relative, of E or nu, largest over smallest
    std::string regions;    // "bar.left, fillet.left"
};

TipSteel steel_at(const CrackedSection& section, const OutlineTip& tip)
{
    double E_low = INFINITY, E_high = 0, nu_low = INFINITY, nu_high = 0;
    TipSteel result;
    int count = 0;
    for (std::size_t i = 0; i < section.outline.regions.size(); ++i)
    {
        const OutlineRegion& region = section.outline.regions[i];
        const bool touches = std::any_of(region.curves.begin(), region.curves.end(),
                                         [&](int c)
                                         {
                                             const auto& curve = section.outline.curves[static_cast<std::size_t>(c)];
                                             return curve.start == tip.point || curve.end == tip.point;
                                         });
        if (!touches) continue;
        const ElasticConstants& steel = section.steel[i];
        E_low = std::min(E_low, steel.E), E_high = std::max(E_high, steel.E);
        nu_low = std::min(nu_low, steel.nu), nu_high = std::max(nu_high, steel.nu);
        result.mean.E += steel.E, result.mean.nu += steel.nu;
        result.regions += (count++ > 0 ? ", " : "") + region.name;
    }
    result.mean.E /= count, result.mean.nu /= count;
    result.difference = std::max(E_high / E_low, nu_high / nu_low) - 1;
    return result;
}

// Stress per unit load at the outside of the loaded ends, of the thicker one, MPa.
struct Nominal
{
    double torsion = 0, bending = 0, axial = 0;
};

Nominal nominal_of(const Outline& outline)
{
    double inner = INFINITY, outer = 0;
    for (const OutlineCurve& curve : outline.curves)
    {
        if (!curve.name.starts_with("end.")) continue;
        for (const int point : {curve.start, curve.end})
        {
            inner = std::min(inner, outline.points[static_cast<std::size_t>(point)].r);
            outer = std::max(outer, outline.points[static_cast<std::size_t>(point)].r);
        }
    }
    const double area = std::numbers::pi * (outer * outer - inner * inner);
    const double polar = area * (outer * outer + inner * inner) / 2;
    return {outer / polar, 2 * outer / polar, 1 / area};
}

ReadTip read_tip(const CrackedSection& section, const OutlineTip& tip, const TipSteel& steel)
{
    const OutlinePoint place = section.outline.points[static_cast<std::size_t>(tip.point)];
    const Eigen::Vector2d forward(tip.forward.z, tip.forward.r);
    Eigen::Vector2d up(forward(1), -forward(0));
    if (up.sum() < 0) up = -up;
    ReadTip read;
    read.tip = {{{place.z, place.r}, forward, up}, steel.mean, {}};
    for (const OutlineCurve& curve : section.outline.curves)
    {
        const bool meets = curve.start == tip.point || curve.end == tip.point;
        if (!curve.unfused || !meets) continue;
        read.tip.faces.push_back(curve.name);
        read.lies_in_slit = curve.name.starts_with("slit");
    }
    read.reach = tip_reach(section.outline, tip);
    read.difference = steel.difference;
    const Nominal nominal = nominal_of(section.outline);
    const double root = std::sqrt(std::numbers::pi * read.reach);
    read.nominal[0] = nominal.torsion * root, read.nominal[1] = nominal.bending * root,
    read.nominal[2] = nominal.axial * root;
    read.answer.id = tip.name;
    read.answer.z = place.z;
    read.answer.r = place.r;
    if (steel.difference > 0)
        read.answer.note =
            fmt::format("the steels of {} differ by {:.2g} %: their mean is used, valid to the first order",
                        steel.regions, 100 * steel.difference);
    return read;
}

}  // namespace

FaceTie tie_at(const ReadTip& tip, const Ties& ties)
{
    if (!tip.lies_in_slit) return FaceTie::free;
    return ties.slit[tip.answer.id.ends_with("left") ? 0 : 1];
}

SortedTips sorted_tips(const CrackedSection& section)
{
    SortedTips sorted;
    for (const OutlineTip& tip : section.outline.tips)
    {
        const TipSteel steel = steel_at(section, tip);
        ReadTip read = read_tip(section, tip, steel);
        if (steel.difference > steels_alike)
            sorted.absent.push_back(
                fmt::format("{}: the steels of {} differ by {:.2g} %, above {:g} %: between them a crack "
                            "has no separate intensities of opening and sliding",
                            tip.name, steel.regions, 100 * steel.difference, 100 * steels_alike));
        else if (tie_at(read, section.brackets.front()) == FaceTie::merged)
            sorted.absent.push_back(tip.name + ": the slit is bonded, it has no crack");
        else sorted.tips.push_back(std::move(read));
    }
    return sorted;
}

}  // namespace splicewright
