// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <initializer_list>
#include <string>
#include <vector>

#include "post/section_strength.h"

namespace splicewright
{

// One line of a check worked through as in a notebook.
struct WorkedStep
{
    std::string what;     // in words: "shear stress at the surface"
    std::string formula;  // with symbols: "tau = 16 T/(pi d^3)"; empty where a number is read
    std::string
        numbers;  // the right side with numbers put in, "16*450000/(pi*24^3)": + - * / ^ ( ) sqrt min max log10 pi
    double result = 0;
    std::string unit;  // empty: dimensionless
};

// Digits of a number in a worked formula; many where a difference or a high power eats them.
enum class Digits
{
    seven = 7,
    eleven = 11,
};

// As a number stands in a worked formula: a negative one in brackets.
std::string put(double value, Digits digits = Digits::seven);

// "{}*{}" with put() of each value in turn; expects as many values as places.
std::string put_in(const std::string& expression, std::initializer_list<double> values, Digits digits = Digits::seven);

WorkedStep worked_step(const std::string& what, const std::string& formula, const std::string& numbers, double result,
                       const std::string& unit);

// A number that the finite elements, the case or a table gave.
WorkedStep read_step(const std::string& what, double result, const std::string& unit);

// A number that was searched: `meets` is what it fulfils. A step that puts it in follows.
WorkedStep searched_step(const std::string& what, const std::string& meets, double result, const std::string& unit);

// " from the finite elements, error bar 0.3 %"
std::string by_finite_elements(double error_pct);

// Last line of a row: U = use (1 + e/100).
WorkedStep utilisation_step(double use, double error_pct, double result);
// U = demand/capacity (1 + e/100), stresses in MPa.
WorkedStep utilisation_step(double demand, double capacity, double error_pct, double result);

// Lines that say what an earlier one said are left out.
std::vector<WorkedStep> without_repeats(const std::vector<WorkedStep>& steps);

void append(std::vector<WorkedStep>& steps, const std::vector<WorkedStep>& more);

// Stress at the surface of a round section, MPa, for loads in N*mm and N; `unit` "MPa" or "MPa per N·mm".
WorkedStep shear_step(const RoundSection& section, double torque, double result, const std::string& unit);
WorkedStep bending_step(const RoundSection& section, double bending, double result, const std::string& unit);
WorkedStep axial_step(const RoundSection& section, double axial, double result);

// From the loads on a section to `use`, its plastic_utilisation.
std::vector<WorkedStep> plastic_steps(const RoundSection& section, Megapascal yield, const SectionLoad& load,
                                      double use);

}  // namespace splicewright
