// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/worked_weld.h"

#include <fmt/format.h>

#include <cmath>
#include <numbers>

namespace splicewright
{
namespace
{

// One load's part of a force: what 1 N·mm or 1 N gives, the load, and how the part varies around the turn.
struct Part
{
    std::string unit_symbol, load_symbol, by;
    double by_unit = 0, load = 0, around = 1;
    std::string around_symbol;
};

// Sum of the parts whose load acts.
std::vector<WorkedStep> sum_steps(const std::string& direction, const std::string& symbol,
                                  const std::vector<Part>& parts, double error_pct, double result)
{
    std::vector<WorkedStep> steps;
    std::string formula, numbers;
    for (const Part& part : parts)
    {
        if (part.load == 0 || part.by_unit == 0 || part.around == 0) continue;
        steps.push_back(
            read_step(fmt::format("force on the weld {} by {}, {}", direction, part.by, by_finite_elements(error_pct)),
                      part.by_unit, part.load_symbol == "N" ? "N/mm per N" : "N/mm per N·mm"));
        const char* plus = formula.empty() ? "" : " + ";
        formula += fmt::format("{}{} {}{}", plus, part.unit_symbol, part.load_symbol, part.around_symbol);
        numbers += fmt::format("{}{}*{}", plus, put(part.by_unit), put(part.load));
        if (!part.around_symbol.empty()) numbers += fmt::format("*{}", put(part.around));
    }
    if (!steps.empty())
        steps.push_back(worked_step(fmt::format("force on the weld {}", direction),
                                    fmt::format("{} = {}", symbol, formula), numbers, result, "N/mm"));
    return steps;
}

}  // namespace

double level(double of_angle) { return std::abs(of_angle) < 1e-12 ? 0 : of_angle; }

std::vector<WorkedStep> line_force_steps(const WeldForce& weld, const CombinedLoad& load, double theta_rad,
                                         const LineForce& force)
{
    const double c = level(std::cos(theta_rad)), s = level(std::sin(theta_rad));
    std::vector<WorkedStep> steps;
    if (load.bending != 0)
        steps.push_back(read_step("place around the turn where it is worst, from the plane of bending",
                                  theta_rad * 180 / std::numbers::pi, "deg"));
    const auto add = [&](const std::vector<WorkedStep>& more) { append(steps, more); };
    add(sum_steps("along the ring", "f_t",
                  {{"t_T", "T", "1 N·mm of torque", weld.torsion_tangential, load.torque, 1, ""},
                   {"t_M", "M", "1 N·mm of bending", weld.bending_tangential, load.bending, s, " sin(theta)"}},
                  weld.error_pct, force.tangential));
    add(sum_steps("along the axis, outward", "f_o",
                  {{"o_M", "M", "1 N·mm of bending", weld.bending_outward, load.bending, c, " cos(theta)"},
                   {"o_N", "N", "1 N of axial force", weld.axial_outward, load.axial, 1, ""}},
                  weld.error_pct, force.outward));
    add(sum_steps("along the radius", "f_r",
                  {{"r_M", "M", "1 N·mm of bending", weld.bending_radial, load.bending, c, " cos(theta)"},
                   {"r_N", "N", "1 N of axial force", weld.axial_radial, load.axial, 1, ""}},
                  weld.error_pct, force.radial));
    return steps;
}

WorkedStep unit_step(const std::string& what, const std::string& where, double value, double error_pct)
{
    return read_step(fmt::format("{}, {}{}{}", what, by_finite_elements(error_pct), where.empty() ? "" : ", ", where),
                     value, "MPa per N·mm");
}

WorkedStep throat_size_step(const FilletWeld& weld)
{
    const double leg_b = weld.leg_on_bar.value(), leg_s = weld.leg_on_sleeve.value();
    return worked_step("throat of the weld, from its legs on bar and sleeve", "a = l_b l_s/sqrt(l_b^2 + l_s^2)",
                       put_in("{}*{}/sqrt({}^2+{}^2)", {leg_b, leg_s, leg_b, leg_s}), throat(weld).value(), "mm");
}

std::vector<WorkedStep> throat_steps(const FilletWeld& weld, const LineForce& force, const ThroatPlaneStress& stress,
                                     const std::string& unit)
{
    const double leg_b = weld.leg_on_bar.value(), leg_s = weld.leg_on_sleeve.value(), a = throat(weld).value();
    std::vector<WorkedStep> steps{throat_size_step(weld)};
    if (force.outward != 0 || force.radial != 0)
    {
        steps.push_back(worked_step(
            "stress across the throat's plane (tension positive)",
            "sigma = (l_b f_o - l_s f_r)/(sqrt(l_b^2 + l_s^2) a)",
            put_in("({}*{}-{}*{})/(sqrt({}^2+{}^2)*{})", {leg_b, force.outward, leg_s, force.radial, leg_b, leg_s, a}),
            stress.normal.value(), unit));
        steps.push_back(worked_step(
            "shear across the weld", "tau_c = (l_s f_o + l_b f_r)/(sqrt(l_b^2 + l_s^2) a)",
            put_in("({}*{}+{}*{})/(sqrt({}^2+{}^2)*{})", {leg_s, force.outward, leg_b, force.radial, leg_b, leg_s, a}),
            stress.shear_across.value(), unit));
    }
    if (force.tangential != 0)
        steps.push_back(worked_step("shear along the weld", "tau_l = f_t/a", put_in("{}/{}", {force.tangential, a}),
                                    stress.shear_along.value(), unit));
    return steps;
}

}  // namespace splicewright
