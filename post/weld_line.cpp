// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/weld_line.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>
#include <numbers>

#include "cases/problem.h"

namespace splicewright
{
namespace
{

using std::numbers::pi;

struct Grade
{
    std::string_view name;
    double beta_w = 0;
};

// Source: [Eurocode3Joints2005] table 4.1, read in secondary pages; one of them gives 0.95 for S420.
constexpr std::array grades{Grade{"S235", 0.80}, Grade{"S275", 0.85}, Grade{"S355", 0.90}, Grade{"S420", 1.00},
                            Grade{"S460", 1.00}};

bool begins_with(std::string_view steel, std::string_view grade)
{
    if (!steel.starts_with(grade)) return false;
    return steel.size() == grade.size() || std::isdigit(static_cast<unsigned char>(steel[grade.size()])) == 0;
}

std::string scope_note(double beta_w)
{
    return fmt::format(
        "the rule is written for structural steel up to S460 (from memory: verify); medium-carbon and alloy shafts lie "
        "outside it. beta_w = {:.2f}, gamma_M2 = {:.2f}, fu of the weaker part",
        beta_w, weld_partial_factor);
}

// Demand and capacity of the first condition of eq. 4.1, or of the second where it governs.
std::vector<WorkedStep> directional_steps(const ThroatPlaneStress& stress, double equivalent, bool pull_governs,
                                          Megapascal tensile, double beta_w, double capacity)
{
    const double normal = stress.normal.value(), fu = tensile.value();
    if (pull_governs)
        return {worked_step("largest stress across the throat's plane", "sigma <= f = 0.9 f_u/gamma_M2",
                            put_in("0.9*{}/{}", {fu, weld_partial_factor}), capacity, "MPa")};
    return {worked_step(
                "equivalent stress of the throat", "sigma_eq = sqrt(sigma^2 + 3 (tau_c^2 + tau_l^2))",
                put_in("sqrt({}^2+3*({}^2+{}^2))", {normal, stress.shear_across.value(), stress.shear_along.value()}),
                equivalent, "MPa"),
            worked_step("what the method allows, f_u of the weaker part", "f = f_u/(beta_w gamma_M2)",
                        put_in("{}/({}*{})", {fu, beta_w, weld_partial_factor}), capacity, "MPa")};
}

void expect_sound(const FilletWeld& weld)
{
    EXPECTS(weld.leg_on_bar.value() > 0 && weld.leg_on_sleeve.value() > 0 && weld.bar_diameter.value() > 0);
}

}  // namespace

Millimetre throat(const FilletWeld& weld)
{
    expect_sound(weld);
    const double leg_b = weld.leg_on_bar.value(), leg_s = weld.leg_on_sleeve.value();
    return Millimetre{leg_b * leg_s / std::hypot(leg_b, leg_s)};
}

Millimetre throat_mean_radius(const FilletWeld& weld)
{
    const double radial_part =
        weld.leg_on_bar.value() / std::hypot(weld.leg_on_bar.value(), weld.leg_on_sleeve.value());
    return weld.bar_diameter / 2 + (radial_part / 2) * throat(weld);
}

Sourced<RingThroatStress> ring_throat_stress(Millimetre radius, Millimetre throat, const RingLoad& load)
{
    const double R = radius.value(), a = throat.value();
    EXPECTS(R > 0 && a > 0);
    RingThroatStress stress;
    stress.torsion = Megapascal{load.torque.value() / (2 * pi * R * R * a)};
    stress.bending = Megapascal{load.bending.value() / (pi * R * R * a)};
    stress.axial = Megapascal{load.axial.value() / (2 * pi * R * a)};
    return {stress, "weld as a line, J = 2 pi R^3 a, I = pi R^3 a: Shigley 9th ed. tables 9-1 and 9-2 [Shigley2011]",
            Provenance::derived};
}

Sourced<LineForce> ring_line_force(Millimetre radius, const RingLoad& load)
{
    const double R = radius.value();
    EXPECTS(R > 0);
    LineForce force;
    force.tangential = load.torque.value() / (2 * pi * R * R);
    // Bending pulls one side of the ring and pushes the other: the side where it adds to the axial load counts.
    const double bending = std::abs(load.bending.value()) / (pi * R * R);
    force.outward = load.axial.value() / (2 * pi * R) + (load.axial.value() < 0 ? -bending : bending);
    return {force, "weld as a line: Shigley 9th ed. tables 9-1 and 9-2 [Shigley2011]", Provenance::derived};
}

Sourced<ThroatPlaneStress> throat_plane_stress(const FilletWeld& weld, const LineForce& force)
{
    const double a = throat(weld).value();
    const double side = std::hypot(weld.leg_on_bar.value(), weld.leg_on_sleeve.value());
    const double along_bar = weld.leg_on_bar.value() / side, along_sleeve = weld.leg_on_sleeve.value() / side;
    ThroatPlaneStress stress;
    stress.normal = Megapascal{(along_bar * force.outward - along_sleeve * force.radial) / a};
    stress.shear_across = Megapascal{(along_sleeve * force.outward + along_bar * force.radial) / a};
    stress.shear_along = Megapascal{force.tangential / a};
    return {stress, "line force resolved on the throat plane: EN 1993-1-8:2005, 4.5.3.2(4) [Eurocode3Joints2005]",
            Provenance::derived};
}

Sourced<double> correlation_factor(std::string_view steel)
{
    for (const Grade& grade : grades)
        if (begins_with(steel, grade.name))
            return {grade.beta_w, "EN 1993-1-8:2005, table 4.1 [Eurocode3Joints2005]", Provenance::secondary};
    return {
        1.0,
        "EN 1993-1-8:2005, table 4.1 [Eurocode3Joints2005] does not list this steel: 1.0, its least favourable entry",
        Provenance::judgement};
}

Sourced<WeldCheck> directional_check(const ThroatPlaneStress& stress, Megapascal tensile, double beta_w)
{
    EXPECTS(tensile.value() > 0 && beta_w > 0);
    const double normal = stress.normal.value();
    const double shear = std::hypot(stress.shear_across.value(), stress.shear_along.value());
    const double equivalent = std::sqrt(normal * normal + 3 * shear * shear);
    const double capacity = tensile.value() / (beta_w * weld_partial_factor);
    const double normal_capacity = 0.9 * tensile.value() / weld_partial_factor;

    // Compression across the throat cannot tear it: the second condition speaks of tension.
    const double pull = std::max(normal, 0.0);
    const bool pull_governs = pull / normal_capacity > equivalent / capacity;
    WeldCheck check;
    check.demand = Megapascal{pull_governs ? pull : equivalent};
    check.capacity = Megapascal{pull_governs ? normal_capacity : capacity};
    check.utilisation = check.demand / check.capacity;
    check.note = scope_note(beta_w);
    check.worked = directional_steps(stress, equivalent, pull_governs, tensile, beta_w, check.capacity.value());
    return {check, "directional method: EN 1993-1-8:2005, 4.5.3.2, eq. 4.1 [Eurocode3Joints2005]",
            Provenance::secondary};
}

Sourced<WeldCheck> simplified_check(const FilletWeld& weld, const LineForce& force, Megapascal tensile, double beta_w)
{
    EXPECTS(tensile.value() > 0 && beta_w > 0);
    WeldCheck check;
    check.demand = Megapascal{std::hypot(force.outward, force.radial, force.tangential) / throat(weld).value()};
    check.capacity = tensile / (std::numbers::sqrt3 * beta_w * weld_partial_factor);
    check.utilisation = check.demand / check.capacity;
    check.note = scope_note(beta_w);
    const double a = throat(weld).value();
    check.worked = {worked_step("resultant of the force over the throat", "F = sqrt(f_o^2 + f_r^2 + f_t^2)/a",
                                put_in("sqrt({}^2+{}^2+{}^2)/{}", {force.outward, force.radial, force.tangential, a}),
                                check.demand.value(), "MPa"),
                    worked_step("what the method allows, f_u of the weaker part", "f = f_u/(sqrt(3) beta_w gamma_M2)",
                                put_in("{}/(sqrt(3)*{}*{})", {tensile.value(), beta_w, weld_partial_factor}),
                                check.capacity.value(), "MPa")};
    return {check, "simplified method: EN 1993-1-8:2005, 4.5.3.3, eq. 4.2 to 4.4 [Eurocode3Joints2005]",
            Provenance::secondary};
}

}  // namespace splicewright
