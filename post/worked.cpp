// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/worked.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "cases/problem.h"

namespace splicewright
{
namespace
{

// A step whose formula has a short form for solid sections.
WorkedStep section_step(const std::string& what, const std::string& solid, const std::string& hollow,
                        const RoundSection& section, int factor, double load, double result, const std::string& unit)
{
    const double outer = section.outer_diameter.value(), bore = section.bore.value();
    if (bore == 0)
        return worked_step(what, solid, fmt::format("{}*{}/(pi*{}^3)", factor, put(load), put(outer)), result, unit);
    return worked_step(what, hollow,
                       fmt::format("{}*{}*{}/(pi*({}^4-{}^4))", factor, put(load), put(outer), put(outer), put(bore)),
                       result, unit);
}

double without_sign_of_zero(double value) { return value == 0 ? 0 : value; }

}  // namespace

std::string put(double value, Digits digits)
{
    std::string text = fmt::format("{:.{}g}", value, static_cast<int>(digits));
    if (const auto plus = text.find("e+"); plus != std::string::npos)
        text.erase(plus + 1, text[plus + 2] == '0' ? 2 : 1);
    return value < 0 ? fmt::format("({})", text) : text;
}

std::string put_in(const std::string& expression, std::initializer_list<double> values, Digits digits)
{
    std::string text;
    const double* next = values.begin();
    for (std::size_t at = 0; at < expression.size(); ++at)
    {
        if (!expression.substr(at).starts_with("{}"))
        {
            text += expression[at];
            continue;
        }
        EXPECTS(next != values.end());
        text += put(*next++, digits);
        ++at;
    }
    EXPECTS(next == values.end());
    return text;
}

WorkedStep worked_step(const std::string& what, const std::string& formula, const std::string& numbers, double result,
                       const std::string& unit)
{
    return {what, formula, numbers, without_sign_of_zero(result), unit};
}

WorkedStep read_step(const std::string& what, double result, const std::string& unit)
{
    return {what, "", "", without_sign_of_zero(result), unit};
}

WorkedStep searched_step(const std::string& what, const std::string& meets, double result, const std::string& unit)
{
    return {what, meets, "", result, unit};
}

std::string by_finite_elements(double error_pct)
{
    return error_pct > 100 ? "from the finite elements, within its error bar of 0"
                           : fmt::format("from the finite elements, error bar {:.2g} %", error_pct);
}

WorkedStep utilisation_step(double use, double error_pct, double result)
{
    return error_pct == 0 ? worked_step("utilisation", "U = u", put(use), result, "")
                          : worked_step("utilisation, at the upper end of the error bar e", "U = u (1 + e/100)",
                                        put_in("{}*(1+{}/100)", {use, error_pct}), result, "");
}

WorkedStep utilisation_step(double demand, double capacity, double error_pct, double result)
{
    return error_pct == 0
               ? worked_step("utilisation", "U = demand/capacity", put_in("{}/{}", {demand, capacity}), result, "")
               : worked_step("utilisation, at the upper end of the error bar e", "U = demand/capacity (1 + e/100)",
                             put_in("{}/{}*(1+{}/100)", {demand, capacity, error_pct}), result, "");
}

void append(std::vector<WorkedStep>& steps, const std::vector<WorkedStep>& more)
{
    steps.insert(steps.end(), more.begin(), more.end());
}

std::vector<WorkedStep> without_repeats(const std::vector<WorkedStep>& steps)
{
    std::vector<WorkedStep> kept;
    for (const WorkedStep& step : steps)
        if (std::none_of(kept.begin(), kept.end(),
                         [&](const WorkedStep& each) {
                             return each.what == step.what && each.numbers == step.numbers &&
                                    each.result == step.result;
                         }))
            kept.push_back(step);
    return kept;
}

WorkedStep shear_step(const RoundSection& section, double torque, double result, const std::string& unit)
{
    const bool by_unit = unit != "MPa";
    return section_step(by_unit ? "shear at the surface for a torque of 1 N·mm" : "shear at the surface by the torque",
                        by_unit ? "k_tau = 16/(pi d^3)" : "tau = 16 T/(pi d^3)",
                        by_unit ? "k_tau = 16 D/(pi (D^4 - d^4))" : "tau = 16 T D/(pi (D^4 - d^4))", section, 16,
                        torque, result, unit);
}

WorkedStep bending_step(const RoundSection& section, double bending, double result, const std::string& unit)
{
    const bool by_unit = unit != "MPa";
    return section_step(
        by_unit ? "stress at the outer fibre for a couple of 1 N·mm" : "stress at the outer fibre by bending",
        by_unit ? "k_sigma = 32/(pi d^3)" : "sigma_b = 32 M/(pi d^3)",
        by_unit ? "k_sigma = 32 D/(pi (D^4 - d^4))" : "sigma_b = 32 M D/(pi (D^4 - d^4))", section, 32, bending, result,
        unit);
}

WorkedStep axial_step(const RoundSection& section, double axial, double result)
{
    const double outer = section.outer_diameter.value(), bore = section.bore.value();
    return bore == 0 ? worked_step("stress by the axial force", "sigma_n = 4 N/(pi d^2)",
                                   put_in("4*{}/(pi*{}^2)", {axial, outer}), result, "MPa")
                     : worked_step("stress by the axial force", "sigma_n = 4 N/(pi (D^2 - d^2))",
                                   put_in("4*{}/(pi*({}^2-{}^2))", {axial, outer, bore}), result, "MPa");
}

std::vector<WorkedStep> plastic_steps(const RoundSection& section, Megapascal yield, const SectionLoad& load,
                                      double use)
{
    const double outer = section.outer_diameter.value(), bore = section.bore.value(), flow = yield.value();
    const double torque = fully_plastic_torque(section, yield).value.value();
    const double bending = fully_plastic_bending(section, yield).value.value();
    const double pull = flow * section_area(section);
    const double axial = std::abs(load.axial.value());
    return {worked_step("torque at which the whole section flows", "T_p = pi/12 f/sqrt(3) (D^3 - d^3)",
                        put_in("pi/12*{}/sqrt(3)*({}^3-{}^3)", {flow, outer, bore}), torque, "N·mm"),
            worked_step("couple at which the whole section flows", "M_p = f (D^3 - d^3)/6",
                        put_in("{}*({}^3-{}^3)/6", {flow, outer, bore}), bending, "N·mm"),
            worked_step("force at which the whole section flows", "N_p = f pi/4 (D^2 - d^2)",
                        put_in("{}*pi/4*({}^2-{}^2)", {flow, outer, bore}), pull, "N"),
            worked_step("load over that of the flowing section", "u = sqrt((M/M_p + |N|/N_p)^2 + (T/T_p)^2)",
                        put_in("sqrt(({}/{}+{}/{})^2+({}/{})^2)",
                               {std::abs(load.bending.value()), bending, axial, pull, load.torque.value(), torque}),
                        use, "")};
}

}  // namespace splicewright
