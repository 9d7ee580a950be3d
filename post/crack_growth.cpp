// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/crack_growth.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

#include "cases/materials.h"
#include "cases/problem.h"

namespace splicewright
{
namespace
{

using std::numbers::pi;

constexpr int growth_steps = 240, curve_points = 40;
constexpr double scale_precision = 1e-6;

// Length at which the static use, which grows with the crack, reaches 1.
double last_length(const CrackPlan& plan, double scale)
{
    double low = plan.first, high = plan.most;
    for (int i = 0; i < 60; ++i)
    {
        const double middle = (low + high) / 2;
        (scale * plan.static_use(middle) > 1 ? high : low) = middle;
    }
    return low;
}

double growth_per_life(const CrackPlan& plan, const ParisLaw& law, double scale, double length)
{
    double growth = 0;
    for (const CrackCycles& cycles : plan.cycles)
    {
        const double range = scale * cycles.range(length);
        if (range > law.threshold) growth += cycles.count * law.constant * std::pow(range, law.slope);
    }
    return growth;
}

// Legend: x = a/b, factors of the net-section stress at the crack's edge times sqrt(pi a).
double penny_series(double x, double c5, double last)
{
    const double sum = 1 + x * (1 / 2. + x * (3 / 8. + x * (5 / 16. + x * (c5 + x * last))));
    return 4 / (3 * pi) * std::sqrt(1 - x) * sum;
}

}  // namespace

Sourced<ParisLaw> welded_steel_in_air()
{
    return {{5.21e-13, 3, 63},
            "growth 5.21e-13 dK^3 mm per cycle, threshold 63 MPa sqrt(mm), steel in air, welded: BS 7910 [BS7910] as "
            "quoted by "
            "secondary sources",
            Provenance::secondary};
}

Sourced<double> toughness_of(const Material& metal, double size_mm)
{
    if (metal.toughness && metal.toughness_provenance == Provenance::stated)
        return {*metal.toughness, fmt::format("toughness of {} stated in the case", metal.name), Provenance::stated};
    constexpr double judged_charpy_energy = 27, reference_mm = 25, floor_mpa_sqrt_m = 20;
    const double at_reference = metal.toughness.value_or(toughness_of_charpy(judged_charpy_energy));
    const double floor = floor_mpa_sqrt_m * sqrt_mm_per_sqrt_m;
    const double size_share = std::pow(reference_mm / std::max(reference_mm, size_mm), 0.25);
    return {floor + (at_reference - floor) * size_share,
            metal.toughness
                ? fmt::format("toughness of {} from {}: BS 7910 annex J [BS7910]", metal.name, metal.toughness_reason)
                : "toughness of 27 J (Charpy) assumed: BS 7910 annex J [BS7910]",
            metal.toughness ? Provenance::from_memory : Provenance::judgement};
}

CrackLife crack_life(const CrackPlan& plan, const ParisLaw& law, double scale)
{
    EXPECTS(plan.first >= 0 && plan.most > plan.first && scale > 0);
    CrackLife result;
    result.last = plan.first;
    result.curve.push_back({plan.first, 0});
    if (scale * plan.static_use(plan.first) > 1) return result;
    result.last = last_length(plan, scale);
    // Cubic spacing: most of the life is spent near the start.
    double before = plan.first;
    for (int i = 1; i <= growth_steps; ++i)
    {
        const double t = static_cast<double>(i) / growth_steps;
        const double after = plan.first + (result.last - plan.first) * t * t * (3 - t) / 2;
        const double growth = growth_per_life(plan, law, scale, (before + after) / 2);
        result.pieces.push_back({(before + after) / 2, after - before, growth});
        if (growth == 0)
        {
            result.life = std::numeric_limits<double>::infinity();
            result.last = before;
            return result;
        }
        result.life += (after - before) / growth;
        if (i % (growth_steps / curve_points) == 0) result.curve.push_back({after, result.life});
        before = after;
    }
    return result;
}

double crack_scale(const CrackPlan& plan, const ParisLaw& law)
{
    double low = 1e-6, high = 1e6;
    while (high / low > 1 + scale_precision)
    {
        const double middle = std::sqrt(low * high);
        (crack_life(plan, law, middle).life >= 1 ? low : high) = middle;
    }
    return low;
}

double penny_torsion(double a, double b)
{
    const double inertia = pi / 2 * (std::pow(b, 4) - std::pow(a, 4));
    return a / inertia * std::sqrt(pi * a) * penny_series(a / b, -93 / 128., 0.038);
}

double penny_bending(double a, double b)
{
    const double inertia = pi / 4 * (std::pow(b, 4) - std::pow(a, 4));
    return a / inertia * std::sqrt(pi * a) * penny_series(a / b, -93 / 128., 0.483);
}

}  // namespace splicewright
