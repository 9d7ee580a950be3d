// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <numbers>
#include <optional>
#include <string>
#include <string_view>

#include "cases/problem.h"

namespace splicewright
{

// Texts such as "28.4 mm", "1 1/8 in" or "900 lbf*ft" to house units and back: the only place that converts.

enum class Dimension
{
    length,      // mm
    force,       // N
    moment,      // N*mm
    stress,      // MPa
    angle,       // rad
    speed,       // rad/s
    mass,        // tonne
    density,     // tonne/mm^3
    heat_input,  // energy per length of weld, N
    hydrogen,    // in weld metal, ml per 100 g
    share,       // plain: 1 is 100 %
    toughness,   // MPa sqrt(mm)
};
const char* name_of(Dimension dimension);            // "a length", "an angle", ...
const char* likely_unit_of(Dimension dimension);     // "mm", "N*m", "deg", ...: shown in fixes and messages
const char* accepted_units_of(Dimension dimension);  // "mm, cm, m, in, ft, um, thou"

constexpr double radian_per_degree = std::numbers::pi / 180.0;

// Multiplies a number in the unit to give house units.
// 1 in = 25.4 mm, 1 lbf = 4.4482216152605 N and 1 lb = 0.45359237 kg are exact.
// Source: [NIST811] appendix B.8 and footnotes.
struct Unit
{
    Dimension dimension = Dimension::length;
    double factor = 1.0;
};

// The unit that a text means where a value of the wanted dimension is expected, or in any other dimension when it
// means nothing there ("lb" beside a moment is a force, alone it is a mass). Empty when the text is no unit.
std::optional<Unit> unit_named(std::string_view text, Dimension wanted);

struct Measurement
{
    double value = 0.0;                // house units
    std::optional<double> plus_minus;  // house units, from "6 mm +- 1 mm"
};

// Reads one value with its unit. On failure the one problem holds `rule`, and in `fix` the corrected text
// without quotes ("28.4 mm"); the caller adds file, place and key.
// The result is finite. Fractions are read as with inches: "7/8 in", "1 1/8 in", "1-1/8 in".
Result<Measurement> measurement(std::string_view text, Dimension dimension);

// A value in the unit that people expect, six digits: "6.3 mm", "1150 N*m", "7 deg".
std::string in_words(double house_value, Dimension dimension);

}  // namespace splicewright
