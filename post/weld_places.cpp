// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/weld_places.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "cases/problem.h"
#include "post/site_loads.h"

namespace splicewright
{
namespace
{

constexpr NewtonMillimetre unit_couple{1};

}  // namespace

RoundSection bar_section(const Case& asked, Side side)
{
    const Bar& bar = *asked.bar[index(side)];
    return {bar.sections.front().diameter, bar.bore};
}

RoundSection sleeve_end_section(const Case& asked, Side side)
{
    return {asked.sleeve->end_diameter, asked.bar[index(side)]->sections.front().diameter};
}

RoundSection sleeve_joint_section(const Case& asked)
{
    return {asked.sleeve->outer_diameter,
            std::max(asked.bar[0]->sections.front().diameter, asked.bar[1]->sections.front().diameter)};
}

RoundSection butt_section(const Case& asked)
{
    const Millimetre diameter =
        std::min(asked.bar[0]->sections.front().diameter, asked.bar[1]->sections.front().diameter);
    Millimetre hole = std::max(asked.bar[0]->bore, asked.bar[1]->bore);
    if (asked.joint->penetration) hole = std::max(hole, diameter - 2 * *asked.joint->penetration);
    return {diameter, hole};
}

double wall_at(const Case& asked, const std::string& site)
{
    if (site == "land-edge")
    {
        const RoundSection ring = butt_section(asked);
        return (ring.outer_diameter - ring.bore).value() / 2;
    }
    const Side side = side_of(site);
    const RoundSection section = site.starts_with("bar") ? bar_section(asked, side) : sleeve_end_section(asked, side);
    return (section.outer_diameter - section.bore).value() / 2;
}

double size_at(const Case& asked, const std::string& site)
{
    const bool is_butt = site == "butt-surface";
    const RoundSection section = is_butt ? butt_section(asked) : bar_section(asked, side_of(site));
    const bool is_solid_bar = (is_butt || site.starts_with("bar")) && section.bore.value() == 0;
    if (is_solid_bar) return section.outer_diameter.value();
    return is_butt ? (section.outer_diameter - section.bore).value() / 2 : wall_at(asked, site);
}

FilletWeld fillet_weld(const Case& asked, Side side)
{
    return {asked.sleeve->weld.leg_on_bar, asked.sleeve->weld.leg_on_sleeve,
            asked.bar[index(side)]->sections.front().diameter};
}

WeldUnitStress bar_unit_stress(const Case& asked, Side side)
{
    const RoundSection section = bar_section(asked, side);
    WeldUnitStress stress;
    stress.shear_by_torque = surface_shear(section, unit_couple).value.value();
    stress.normal_by_bending = surface_bending_stress(section, unit_couple).value.value();
    return stress;
}

WeldUnitStress sleeve_end_unit_stress(const Case& asked, const WeldForce& weld, Side side)
{
    const RoundSection section = sleeve_end_section(asked, side);
    const double torque = 2 * std::numbers::pi * weld.radius * weld.radius * std::abs(weld.torsion_tangential);
    const double couple = std::numbers::pi * weld.radius * weld.radius * std::abs(weld.bending_outward);
    WeldUnitStress stress;
    stress.shear_by_torque = torque * surface_shear(section, unit_couple).value.value();
    stress.normal_by_bending = couple * surface_bending_stress(section, unit_couple).value.value();
    stress.shear_error_pct = stress.normal_error_pct = weld.error_pct;
    return stress;
}

WeldUnitStress throat_unit_stress(const Case& asked, const WeldForce& weld, Side side)
{
    const FilletWeld fillet = fillet_weld(asked, side);
    const ThroatPlaneStress torsion = throat_plane_stress(fillet, {0, 0, weld.torsion_tangential}).value;
    const ThroatPlaneStress bending =
        throat_plane_stress(fillet, {weld.bending_outward, weld.bending_radial, weld.bending_tangential}).value;
    WeldUnitStress stress;
    stress.shear_by_torque = std::abs(torsion.shear_along.value());
    stress.normal_by_bending = std::hypot(bending.normal.value(), bending.shear_across.value());
    stress.shear_by_bending = std::abs(bending.shear_along.value());
    stress.shear_error_pct = stress.normal_error_pct = weld.error_pct;
    return stress;
}

double butt_torque_share(const Case& asked, const MeridianAnswer& answer)
{
    return asked.sleeve ? 1 - answer.share.torsion.value : 1;
}

double butt_bending_share(const Case& asked, const MeridianAnswer& answer)
{
    return asked.sleeve ? 1 - answer.share.bending.value : 1;
}

WeldUnitStress butt_unit_stress(const Case& asked, const MeridianAnswer& answer)
{
    EXPECTS(answer.scenario.butt_fused);
    const RoundSection section = butt_section(asked);
    const double torque = butt_torque_share(asked, answer), bending = butt_bending_share(asked, answer);
    WeldUnitStress stress;
    stress.shear_by_torque = std::abs(torque) * surface_shear(section, unit_couple).value.value();
    stress.normal_by_bending = std::abs(bending) * surface_bending_stress(section, unit_couple).value.value();
    const auto error_pct = [](const Measured& share, double rest)
    { return 100 * share.error / std::max(std::abs(rest), 1e-3); };
    stress.shear_error_pct = asked.sleeve ? error_pct(answer.share.torsion, torque) : 0;
    stress.normal_error_pct = asked.sleeve ? error_pct(answer.share.bending, bending) : 0;
    return stress;
}

}  // namespace splicewright
