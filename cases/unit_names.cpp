// SPDX-License-Identifier: GPL-2.0-or-later
#include <algorithm>
#include <array>
#include <iterator>

#include "cases/plain_text.h"
#include "cases/units.h"

namespace splicewright
{
namespace
{

enum class LetterCase
{
    exact,     // "m" and "M" differ
    any_case,  // "MM" and "mm" are the same
};

struct UnitSpelling
{
    const char* text;
    Dimension dimension;
    double factor;
    LetterCase sensitivity;
};

constexpr auto exact = LetterCase::exact;
constexpr auto any_case = LetterCase::any_case;

// Exact by definition. Source: [NIST811] appendix B.8.
constexpr double millimetre_per_inch = 25.4;
constexpr double newton_per_pound_force = 4.4482216152605;
constexpr double tonne_per_pound = 0.45359237e-3;
constexpr double megapascal_per_psi = newton_per_pound_force / (millimetre_per_inch * millimetre_per_inch);
constexpr double sqrt_millimetre_per_sqrt_metre = 31.622776601683793;  // square roots of 1000 and of 25.4
constexpr double sqrt_millimetre_per_sqrt_inch = 5.0398412673416615;
constexpr double radian_per_second_per_rpm = std::numbers::pi / 30.0;

// In the form that plain_unit() gives: products with *, powers without ^.
constexpr UnitSpelling spellings[] = {
    {"mm", Dimension::length, 1.0, any_case},
    {"cm", Dimension::length, 10.0, any_case},
    {"m", Dimension::length, 1000.0, exact},
    {"um", Dimension::length, 1e-3, exact},
    {"millimetre", Dimension::length, 1.0, any_case},
    {"millimetres", Dimension::length, 1.0, any_case},
    {"millimeter", Dimension::length, 1.0, any_case},
    {"millimeters", Dimension::length, 1.0, any_case},
    {"in", Dimension::length, millimetre_per_inch, any_case},
    {"inch", Dimension::length, millimetre_per_inch, any_case},
    {"inches", Dimension::length, millimetre_per_inch, any_case},
    {"\"", Dimension::length, millimetre_per_inch, exact},
    {"''", Dimension::length, millimetre_per_inch, exact},
    {"thou", Dimension::length, millimetre_per_inch / 1000.0, any_case},
    {"ft", Dimension::length, 12.0 * millimetre_per_inch, any_case},
    {"foot", Dimension::length, 12.0 * millimetre_per_inch, any_case},
    {"feet", Dimension::length, 12.0 * millimetre_per_inch, any_case},

    {"N", Dimension::force, 1.0, exact},
    {"kN", Dimension::force, 1000.0, exact},
    {"KN", Dimension::force, 1000.0, exact},
    {"lbf", Dimension::force, newton_per_pound_force, any_case},

    {"Nmm", Dimension::moment, 1.0, exact},
    {"Ncm", Dimension::moment, 10.0, exact},
    {"Nm", Dimension::moment, 1000.0, exact},
    {"kNmm", Dimension::moment, 1e3, exact},
    {"kNm", Dimension::moment, 1e6, exact},
    {"KNm", Dimension::moment, 1e6, exact},
    {"ftlb", Dimension::moment, newton_per_pound_force * 12.0 * millimetre_per_inch, any_case},
    {"ftlbs", Dimension::moment, newton_per_pound_force * 12.0 * millimetre_per_inch, any_case},
    {"ftlbf", Dimension::moment, newton_per_pound_force * 12.0 * millimetre_per_inch, any_case},
    {"lbft", Dimension::moment, newton_per_pound_force * 12.0 * millimetre_per_inch, any_case},
    {"lbfft", Dimension::moment, newton_per_pound_force * 12.0 * millimetre_per_inch, any_case},
    {"inlb", Dimension::moment, newton_per_pound_force* millimetre_per_inch, any_case},
    {"inlbs", Dimension::moment, newton_per_pound_force* millimetre_per_inch, any_case},
    {"inlbf", Dimension::moment, newton_per_pound_force* millimetre_per_inch, any_case},
    {"lbin", Dimension::moment, newton_per_pound_force* millimetre_per_inch, any_case},
    {"lbfin", Dimension::moment, newton_per_pound_force* millimetre_per_inch, any_case},

    {"MPa", Dimension::stress, 1.0, exact},
    {"Mpa", Dimension::stress, 1.0, exact},
    {"MPA", Dimension::stress, 1.0, exact},
    {"N/mm2", Dimension::stress, 1.0, exact},
    {"GPa", Dimension::stress, 1000.0, exact},
    {"Gpa", Dimension::stress, 1000.0, exact},
    {"GPA", Dimension::stress, 1000.0, exact},
    {"kN/mm2", Dimension::stress, 1000.0, exact},
    {"psi", Dimension::stress, megapascal_per_psi, any_case},
    {"lbf/in2", Dimension::stress, megapascal_per_psi, any_case},
    {"lb/in2", Dimension::stress, megapascal_per_psi, any_case},
    {"ksi", Dimension::stress, 1000.0 * megapascal_per_psi, any_case},

    {"deg", Dimension::angle, radian_per_degree, any_case},
    {"degree", Dimension::angle, radian_per_degree, any_case},
    {"degrees", Dimension::angle, radian_per_degree, any_case},
    {"rad", Dimension::angle, 1.0, any_case},
    {"radian", Dimension::angle, 1.0, any_case},
    {"radians", Dimension::angle, 1.0, any_case},

    {"rpm", Dimension::speed, radian_per_second_per_rpm, any_case},
    {"r/min", Dimension::speed, radian_per_second_per_rpm, any_case},
    {"rev/min", Dimension::speed, radian_per_second_per_rpm, any_case},
    {"1/min", Dimension::speed, radian_per_second_per_rpm, any_case},
    {"min*1", Dimension::speed, radian_per_second_per_rpm, any_case},
    {"rad/s", Dimension::speed, 1.0, any_case},
    {"rad/sec", Dimension::speed, 1.0, any_case},

    {"kg", Dimension::mass, 1e-3, any_case},
    {"g", Dimension::mass, 1e-6, exact},
    {"tonne", Dimension::mass, 1.0, any_case},
    {"lb", Dimension::mass, tonne_per_pound, any_case},
    {"lbs", Dimension::mass, tonne_per_pound, any_case},
    {"lbm", Dimension::mass, tonne_per_pound, any_case},

    {"kg/m3", Dimension::density, 1e-12, exact},
    {"kg/dm3", Dimension::density, 1e-9, exact},
    {"g/cm3", Dimension::density, 1e-9, exact},
    {"lb/in3", Dimension::density, tonne_per_pound / (millimetre_per_inch * millimetre_per_inch * millimetre_per_inch),
     any_case},

    {"kj/mm", Dimension::heat_input, 1e6, any_case},
    {"j/mm", Dimension::heat_input, 1e3, any_case},
    {"kj/cm", Dimension::heat_input, 1e5, any_case},
    {"kj/in", Dimension::heat_input, 1e6 / millimetre_per_inch, any_case},

    {"ml/100g", Dimension::hydrogen, 1.0, any_case},
    {"ml/100*g", Dimension::hydrogen, 1.0, any_case},

    {"%", Dimension::share, 0.01, exact},
    {"percent", Dimension::share, 0.01, any_case},

    // "MPa*m^0.5", "MPa m^1/2", "MPa*sqrt(m)", "MPa√m", "N/mm^1.5", "ksi*in^0.5" as plain_unit leaves them
    {"MPa*m0*5", Dimension::toughness, sqrt_millimetre_per_sqrt_metre, exact},
    {"MPa*m1/2", Dimension::toughness, sqrt_millimetre_per_sqrt_metre, exact},
    {"MPa*sqrt(m)", Dimension::toughness, sqrt_millimetre_per_sqrt_metre, exact},
    {"MPa*√m", Dimension::toughness, sqrt_millimetre_per_sqrt_metre, exact},
    {"MPa√m", Dimension::toughness, sqrt_millimetre_per_sqrt_metre, exact},
    {"N/mm1*5", Dimension::toughness, 1.0, exact},
    {"N/mm3/2", Dimension::toughness, 1.0, exact},
    {"ksi*in0*5", Dimension::toughness, 1000.0 * megapascal_per_psi* sqrt_millimetre_per_sqrt_inch, exact},
};

constexpr UnitSpelling pounds_of_force[] = {
    {"lb", Dimension::force, newton_per_pound_force, any_case},
    {"lbs", Dimension::force, newton_per_pound_force, any_case},
    {"pound", Dimension::force, newton_per_pound_force, any_case},
    {"pounds", Dimension::force, newton_per_pound_force, any_case},
};

bool is_spelled(const UnitSpelling& spelling, std::string_view text)
{
    if (spelling.sensitivity == exact) return text == spelling.text;
    return lower_case(text) == spelling.text;
}

// "N * m", "N.m", "N-m", "N m" to "N*m"; "N/mm^2" to "N/mm2"; "in." to "in".
std::string plain_unit(std::string_view text)
{
    std::string plain;
    bool gap = false;
    for (const char letter : trimmed(text))
    {
        if (letter == '^') continue;
        if (letter == ' ' || letter == '\t' || letter == '*' || letter == '.' || letter == '-')
        {
            gap = true;
            continue;
        }
        if (gap && letter != '/' && !plain.empty() && plain.back() != '/') plain += '*';
        gap = false;
        plain += letter;
    }
    return plain;
}

std::optional<double> factor_of(std::string_view text, Dimension dimension)
{
    for (const UnitSpelling& spelling : spellings)
        if (spelling.dimension == dimension && is_spelled(spelling, text)) return spelling.factor;
    return std::nullopt;
}

// A force in a product: "lb" counts as pound-force there.
std::optional<double> force_factor_of(std::string_view text)
{
    for (const UnitSpelling& spelling : pounds_of_force)
        if (is_spelled(spelling, text)) return spelling.factor;
    return factor_of(text, Dimension::force);
}

std::optional<double> moment_factor_of(std::string_view text)
{
    const std::size_t star = text.find('*');
    if (star == std::string_view::npos) return factor_of(text, Dimension::moment);
    const std::string_view first = text.substr(0, star), second = text.substr(star + 1);
    for (const auto& [force, arm] : {std::pair{first, second}, std::pair{second, first}})
    {
        const auto newton = force_factor_of(force);
        const auto millimetre = factor_of(arm, Dimension::length);
        if (newton && millimetre) return *newton * *millimetre;
    }
    return std::nullopt;
}

constexpr std::array all_dimensions{Dimension::length,   Dimension::force,   Dimension::moment,
                                    Dimension::stress,   Dimension::angle,   Dimension::speed,
                                    Dimension::mass,     Dimension::density, Dimension::heat_input,
                                    Dimension::hydrogen, Dimension::share,   Dimension::toughness};

}  // namespace

std::optional<Unit> unit_named(std::string_view text, Dimension wanted)
{
    const std::string plain = plain_unit(text);
    const auto factor_in = [&](Dimension dimension)
    { return dimension == Dimension::moment ? moment_factor_of(plain) : factor_of(plain, dimension); };
    if (const auto factor = factor_in(wanted)) return Unit{wanted, *factor};
    for (const Dimension dimension : all_dimensions)
        if (const auto factor = factor_in(dimension)) return Unit{dimension, *factor};
    return std::nullopt;
}

const char* name_of(Dimension dimension)
{
    switch (dimension)
    {
        case Dimension::length: return "a length";
        case Dimension::force: return "a force";
        case Dimension::moment: return "a moment";
        case Dimension::stress: return "a stress";
        case Dimension::angle: return "an angle";
        case Dimension::speed: return "a speed of rotation";
        case Dimension::mass: return "a mass";
        case Dimension::density: return "a density";
        case Dimension::heat_input: return "a heat input";
        case Dimension::hydrogen: return "a hydrogen content";
        case Dimension::share: return "a share";
        case Dimension::toughness: return "a fracture toughness";
    }
    return "";
}

const char* likely_unit_of(Dimension dimension)
{
    switch (dimension)
    {
        case Dimension::length: return "mm";
        case Dimension::force: return "N";
        case Dimension::moment: return "N*m";
        case Dimension::stress: return "MPa";
        case Dimension::angle: return "deg";
        case Dimension::speed: return "rpm";
        case Dimension::mass: return "kg";
        case Dimension::density: return "kg/m^3";
        case Dimension::heat_input: return "kJ/mm";
        case Dimension::hydrogen: return "ml/100g";
        case Dimension::share: return "%";
        case Dimension::toughness: return "MPa*m^0.5";
    }
    return "";
}

const char* accepted_units_of(Dimension dimension)
{
    switch (dimension)
    {
        case Dimension::length: return "mm, cm, m, in, ft, um, thou";
        case Dimension::force: return "N, kN, lbf";
        case Dimension::moment: return "N*mm, N*m, kN*m, lbf*ft, lbf*in";
        case Dimension::stress: return "MPa, N/mm2, GPa, psi, ksi";
        case Dimension::angle: return "deg, rad";
        case Dimension::speed: return "rpm, rad/s";
        case Dimension::mass: return "kg, g, tonne, lb";
        case Dimension::density: return "kg/m^3, g/cm^3, lb/in^3";
        case Dimension::heat_input: return "kJ/mm, J/mm, kJ/cm, kJ/in";
        case Dimension::hydrogen: return "ml/100g";
        case Dimension::share: return "%";
        case Dimension::toughness: return "MPa*m^0.5, N/mm^1.5, ksi*in^0.5";
    }
    return "";
}

}  // namespace splicewright
