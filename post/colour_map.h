// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <array>
#include <string>
#include <vector>

namespace splicewright
{

// sRGB, each channel 0 to 1.
struct Colour
{
    double red = 0, green = 0, blue = 0;
    friend bool operator==(const Colour&, const Colour&) = default;
};
std::string hexadecimal(const Colour& colour);  // "#e8a33d"

// Lightness 0 to 1 and the two opponent axes.
// Source: [Ottosson2020].
struct OkLab
{
    double lightness = 0, green_red = 0, blue_yellow = 0;
};

Colour srgb(const OkLab& colour);

// The stress ramp, from ivory (0) through ochre and red to a dark plum (the top), in OKLab.
// Each step between neighbours is equally long in OKLab and each one is darker than the one before.
constexpr int n_stress_colours = 256;
std::array<OkLab, n_stress_colours> stress_ramp();

// For values above the range; a hue that the ramp does not have.
constexpr Colour above_range_colour{0.00, 0.72, 0.93};

// Table over 0 to `table_top`: the ramp up to `range_top`, the colour for values above it beyond.
std::vector<Colour> stress_table(double range_top, double table_top);

}  // namespace splicewright
