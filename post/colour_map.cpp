// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/colour_map.h"

#include <fmt/format.h>

#include <Eigen/Core>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "cases/problem.h"

namespace splicewright
{
namespace
{

// Lightness, chroma and hue in degrees of OKLab's polar form: own choice, darkening all the way.
struct Anchor
{
    double lightness, chroma, hue_deg;
};
constexpr std::array<Anchor, 6> anchors{{{0.95, 0.035, 105},
                                         {0.86, 0.115, 88},
                                         {0.72, 0.155, 60},
                                         {0.56, 0.175, 30},
                                         {0.40, 0.140, 5},
                                         {0.25, 0.085, 320}}};

Eigen::Vector3d lab_of(const Anchor& anchor)
{
    const double hue = anchor.hue_deg * std::numbers::pi / 180;
    return {anchor.lightness, anchor.chroma * std::cos(hue), anchor.chroma * std::sin(hue)};
}

// Source: [CatmullRom1974], the uniform cubic through b and c with neighbours a and d.
Eigen::Vector3d spline(const std::array<Eigen::Vector3d, 4>& p, double t)
{
    return 0.5 * (2 * p[1] + (p[2] - p[0]) * t + (2 * p[0] - 5 * p[1] + 4 * p[2] - p[3]) * t * t +
                  (3 * p[1] - p[0] - 3 * p[2] + p[3]) * t * t * t);
}

std::vector<Eigen::Vector3d> fine_curve()
{
    std::vector<Eigen::Vector3d> corner;
    for (const Anchor& anchor : anchors) corner.push_back(lab_of(anchor));
    corner.insert(corner.begin(), 2 * corner[0] - corner[1]);
    corner.emplace_back(2 * corner.back() - corner[corner.size() - 2]);
    constexpr int pieces = 400;
    std::vector<Eigen::Vector3d> curve;
    for (std::size_t i = 0; i + 3 < corner.size(); ++i)
        for (int k = 0; k < pieces; ++k)
            curve.push_back(spline({corner[i], corner[i + 1], corner[i + 2], corner[i + 3]}, double(k) / pieces));
    curve.push_back(corner[corner.size() - 2]);
    return curve;
}

double srgb_channel(double linear)
{
    const double v = std::clamp(linear, 0.0, 1.0);
    return v <= 0.0031308 ? 12.92 * v : 1.055 * std::pow(v, 1 / 2.4) - 0.055;
}

}  // namespace

Colour srgb(const OkLab& colour)
{
    const double L = colour.lightness, a = colour.green_red, b = colour.blue_yellow;
    const double l = std::pow(L + 0.3963377774 * a + 0.2158037573 * b, 3);
    const double m = std::pow(L - 0.1055613458 * a - 0.0638541728 * b, 3);
    const double s = std::pow(L - 0.0894841775 * a - 1.2914855480 * b, 3);
    return {srgb_channel(+4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s),
            srgb_channel(-1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s),
            srgb_channel(-0.0041960863 * l - 0.7034186147 * m + 1.7076147010 * s)};
}

std::array<OkLab, n_stress_colours> stress_ramp()
{
    const std::vector<Eigen::Vector3d> curve = fine_curve();
    std::vector<double> walked{0};
    for (std::size_t i = 1; i < curve.size(); ++i) walked.push_back(walked.back() + (curve[i] - curve[i - 1]).norm());
    std::array<OkLab, n_stress_colours> ramp;
    std::size_t piece = 0;
    for (std::size_t i = 0; i < ramp.size(); ++i)
    {
        const double along = walked.back() * double(i) / (n_stress_colours - 1);
        while (piece + 2 < walked.size() && walked[piece + 1] < along) ++piece;
        const double share = (along - walked[piece]) / (walked[piece + 1] - walked[piece]);
        const Eigen::Vector3d lab = curve[piece] + share * (curve[piece + 1] - curve[piece]);
        ramp[i] = {lab(0), lab(1), lab(2)};
    }
    return ramp;
}

std::vector<Colour> stress_table(double range_top, double table_top)
{
    EXPECTS(range_top > 0 && table_top >= range_top);
    std::vector<Colour> table;
    for (const OkLab& colour : stress_ramp()) table.push_back(srgb(colour));
    const auto n = static_cast<std::size_t>(std::ceil(n_stress_colours * table_top / range_top - 1e-9));
    table.resize(std::max(n, table.size()), above_range_colour);
    return table;
}

std::string hexadecimal(const Colour& colour)
{
    const auto byte = [](double channel) { return static_cast<int>(std::lround(255 * std::clamp(channel, 0.0, 1.0))); };
    return fmt::format("#{:02x}{:02x}{:02x}", byte(colour.red), byte(colour.green), byte(colour.blue));
}

}  // namespace splicewright
