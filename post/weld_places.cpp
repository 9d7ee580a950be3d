// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/weld_places.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>

#include "cases/problem.h"
#include "post/site_loads.h"
#include "post/worked_weld.h"

namespace splicewright
{
namespace
{

constexpr NewtonMillimetre unit_couple{1};
constexpr double left_out_share = 0.15;  // Source: [Hobbacher2016] 4.2, from memory
const char* const per_couple = "MPa per N·mm";

// The stress of the section by a unit couple, times the part of the couple that passes there.
void add_part_of_section(WeldUnitStress& stress, const RoundSection& section, double torque, double bending)
{
    const double shear = surface_shear(section, unit_couple).value.value();
    const double normal = surface_bending_stress(section, unit_couple).value.value();
    stress.shear_by_torque = torque * shear;
    stress.normal_by_bending = bending * normal;
    stress.torque_worked.push_back(shear_step(section, 1, shear, per_couple));
    stress.torque_worked.push_back(worked_step("that part of it", "k_tau = part k_tau",
                                               put_in("{}*{}", {torque, shear}), stress.shear_by_torque, per_couple));
    stress.bending_worked.push_back(bending_step(section, 1, normal, per_couple));
    stress.bending_worked.push_back(worked_step("that part of it", "k_sigma = part k_sigma",
                                                put_in("{}*{}", {bending, normal}), stress.normal_by_bending,
                                                per_couple));
}

// The couple that the force on a ring makes up, over the couple on the shaft: 2 pi R^2 f_t, and pi R^2 f_o.
std::vector<WorkedStep> ring_couple_steps(const WeldForce& weld, const char* name, double force, int factor,
                                          double part)
{
    const bool torque = factor == 2;
    return {
        read_step(fmt::format("force on the weld {} by 1 N·mm of {}, {}", torque ? "along the ring" : "along the axis",
                              name, by_finite_elements(weld.error_pct)),
                  force, "N/mm per N·mm"),
        worked_step(fmt::format("part of the {} that the weld passes to the sleeve", name),
                    torque ? "part = 2 pi R^2 |f_t|" : "part = pi R^2 |f_o|",
                    put_in(torque ? "2*pi*{}^2*{}" : "pi*{}^2*{}", {weld.radius, std::abs(force)}), part, "")};
}

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

namespace
{

bool is_solid_bar(const Case& asked, const std::string& site)
{
    if (site == "butt-surface") return butt_section(asked).bore.value() == 0;
    return site.starts_with("bar") && bar_section(asked, side_of(site)).bore.value() == 0;
}

}  // namespace

double size_at(const Case& asked, const std::string& site)
{
    const bool is_butt = site == "butt-surface";
    const RoundSection section = is_butt ? butt_section(asked) : bar_section(asked, side_of(site));
    if (is_solid_bar(asked, site)) return section.outer_diameter.value();
    return is_butt ? (section.outer_diameter - section.bore).value() / 2 : wall_at(asked, site);
}

std::string size_words(const Case& asked, const std::string& site)
{
    return fmt::format("size {:.5g} mm{}", size_at(asked, site),
                       is_solid_bar(asked, site) ? ", the whole diameter of a solid bar, which is the safe side: the "
                                                   "rule is written for plates"
                                                 : "");
}

FilletWeld fillet_weld(const Case& asked, Side side)
{
    return {asked.sleeve->weld.leg_on_bar, asked.sleeve->weld.leg_on_sleeve,
            asked.bar[index(side)]->sections.front().diameter};
}

WeldUnitStress site_unit_stress(const SiteAnswer& site)
{
    const auto error_pct = [](const Measured& value) { return value.value > 0 ? 100 * value.error / value.value : 0; };
    const Measured &shear = site.torsion.shear, &normal = site.bending.principal;
    WeldUnitStress stress;
    stress.shear_by_torque = shear.value;
    stress.normal_by_bending = normal.value;
    stress.shear_error_pct = error_pct(shear);
    stress.normal_error_pct = error_pct(normal);
    stress.torque_worked = {unit_step("k_tau, largest shear on the surface by 1 N·mm of torque",
                                      fmt::format("at z = {:.4g} mm, r = {:.4g} mm", site.z, site.r), shear.value,
                                      stress.shear_error_pct)};
    stress.bending_worked = {unit_step("k_sigma, largest principal stress by 1 N·mm of bending", site.id, normal.value,
                                       stress.normal_error_pct)};
    return stress;
}

bool torque_pulls(const SiteAnswer& site)
{
    return site.torsion.principal.value > (1 + left_out_share) * site.torsion.shear.value;
}

WeldUnitStress site_principal_stress(const SiteAnswer& site)
{
    const Measured& principal = site.torsion.principal;
    WeldUnitStress stress = site_unit_stress(site);
    stress.shear_by_torque = principal.value;
    stress.shear_error_pct = principal.value > 0 ? 100 * principal.error / principal.value : 0;
    stress.torque_worked = {unit_step("k_tau, largest principal stress by 1 N·mm of torque", site.id, principal.value,
                                      stress.shear_error_pct)};
    return stress;
}

WeldUnitStress bar_unit_stress(const Case& asked, Side side)
{
    const RoundSection section = bar_section(asked, side);
    WeldUnitStress stress;
    stress.shear_by_torque = surface_shear(section, unit_couple).value.value();
    stress.normal_by_bending = surface_bending_stress(section, unit_couple).value.value();
    stress.torque_worked = {shear_step(section, 1, stress.shear_by_torque, per_couple)};
    stress.bending_worked = {bending_step(section, 1, stress.normal_by_bending, per_couple)};
    return stress;
}

WeldUnitStress sleeve_end_unit_stress(const Case& asked, const WeldForce& weld, Side side)
{
    const RoundSection section = sleeve_end_section(asked, side);
    const double torque = 2 * std::numbers::pi * weld.radius * weld.radius * std::abs(weld.torsion_tangential);
    const double couple = std::numbers::pi * weld.radius * weld.radius * std::abs(weld.bending_outward);
    WeldUnitStress stress;
    stress.torque_worked = ring_couple_steps(weld, "torque", weld.torsion_tangential, 2, torque);
    stress.bending_worked = ring_couple_steps(weld, "bending", weld.bending_outward, 1, couple);
    add_part_of_section(stress, section, torque, couple);
    stress.shear_error_pct = stress.normal_error_pct = weld.error_pct;
    return stress;
}

namespace
{

void add_throat_steps(WeldUnitStress& stress, const FilletWeld& fillet, const WeldForce& weld,
                      const ThroatPlaneStress& torsion, const ThroatPlaneStress& bending)
{
    const auto read = [&](const char* what, double force)
    {
        return read_step(fmt::format("force on the weld {}, {}", what, by_finite_elements(weld.error_pct)), force,
                         "N/mm per N·mm");
    };
    stress.torque_worked = {read("along the ring, f_t, by 1 N·mm of torque", weld.torsion_tangential)};
    append(stress.torque_worked, throat_steps(fillet, {0, 0, weld.torsion_tangential}, torsion, per_couple));
    stress.torque_worked.push_back(
        worked_step("its size", "k_tau = |tau_l|", put(stress.shear_by_torque), stress.shear_by_torque, per_couple));
    stress.bending_worked = {
        read("along the axis, f_o, by 1 N·mm of bending, largest around the turn", weld.bending_outward),
        read("along the radius, f_r, at the same place", weld.bending_radial),
        read("along the ring, f_t, a quarter turn away", weld.bending_tangential)};
    append(stress.bending_worked,
           throat_steps(fillet, {weld.bending_outward, weld.bending_radial, weld.bending_tangential}, bending,
                        per_couple));
    stress.bending_worked.push_back(
        worked_step("normal stress and shear across the weld together", "k_sigma = sqrt(sigma^2 + tau_c^2)",
                    put_in("sqrt({}^2+{}^2)", {bending.normal.value(), bending.shear_across.value()}),
                    stress.normal_by_bending, per_couple));
    stress.bending_worked.push_back(worked_step("shear along the weld by bending", "k_tauM = |tau_l|",
                                                put(stress.shear_by_bending), stress.shear_by_bending, per_couple));
}

}  // namespace

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
    add_throat_steps(stress, fillet, weld, torsion, bending);
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
    const auto error_pct = [](const Measured& share, double rest)
    { return 100 * share.error / std::max(std::abs(rest), 1e-3); };
    stress.shear_error_pct = asked.sleeve ? error_pct(answer.share.torsion, torque) : 0;
    stress.normal_error_pct = asked.sleeve ? error_pct(answer.share.bending, bending) : 0;
    const auto part_step = [](const char* name, double part, double error)
    {
        return read_step(fmt::format("part of the {} that the butt carries{}{}", name, error > 0 ? ", " : "",
                                     error > 0 ? by_finite_elements(error) : ""),
                         std::abs(part), "");
    };
    stress.torque_worked = {part_step("torque", torque, stress.shear_error_pct)};
    stress.bending_worked = {part_step("bending", bending, stress.normal_error_pct)};
    add_part_of_section(stress, section, std::abs(torque), std::abs(bending));
    return stress;
}

}  // namespace splicewright
