// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/stress_concentration.h"

#include <fmt/format.h>

#include <array>
#include <cmath>
#include <span>

#include "cases/problem.h"

// Legend of the fits below: h step height or groove depth, r radius, D large and d small (net) diameter;
// K = C1 + C2 x + C3 x^2 + C4 x^3, x = 2 h/D; each C = c0 + c1 sqrt(h/r) + c2 h/r.
// The coefficients were read in public copies of their formulas, not in the books; those of Roark's shoulder in
// torsion are from memory. Minus signs were lost in one copy and put back; checks: other copies, and C1 + C2 + C3 + C4
// near 1 for all h/r (K = 1 at x = 1).

namespace splicewright
{
namespace
{

constexpr double slack = 1e-9;  // relative, for limits that are met exactly

struct Branch
{
    double low = 0, high = 0;  // of h/r
    std::array<std::array<double, 3>, 4> C{};
};

// Source: [Pilkey1997] charts 3.12, 3.10, 3.4.
constexpr std::array pilkey_shoulder_torsion{Branch{
    0.25, 4, {{{0.905, 0.783, -0.075}, {-0.437, -1.969, 0.553}, {1.557, 1.073, -0.578}, {-1.061, 0.171, 0.086}}}}};
constexpr std::array pilkey_shoulder_bending{
    Branch{0.1, 2, {{{0.947, 1.206, -0.131}, {0.022, -3.405, 0.915}, {0.869, 1.777, -0.555}, {-0.81, 0.422, -0.26}}}},
    Branch{2, 20, {{{1.232, 0.832, -0.008}, {-3.813, 0.968, -0.26}, {7.423, -4.868, 0.869}, {-3.839, 3.07, -0.6}}}}};
constexpr std::array pilkey_shoulder_tension{
    Branch{0.1, 2, {{{0.926, 1.157, -0.099}, {0.012, -3.036, 0.961}, {-0.302, 3.977, -1.744}, {0.365, -2.098, 0.878}}}},
    Branch{2, 20, {{{1.2, 0.86, -0.022}, {-1.805, -0.346, -0.038}, {2.198, -0.486, 0.165}, {-0.593, -0.028, -0.106}}}}};

// Source: [Pilkey1997] charts 2.47, 2.41, 2.19.
constexpr std::array pilkey_groove_torsion{
    Branch{
        0.25, 2, {{{0.966, 1.056, -0.022}, {-0.192, -4.037, 0.674}, {0.808, 5.321, -1.231}, {-0.567, -2.364, 0.566}}}},
    Branch{
        2, 50, {{{1.089, 0.924, 0.018}, {-1.504, -2.141, -0.047}, {2.486, 2.289, 0.091}, {-1.056, -1.104, -0.059}}}}};
constexpr std::array pilkey_groove_bending{
    Branch{
        0.25, 2, {{{0.594, 2.958, -0.52}, {0.422, -10.545, 2.692}, {0.501, 14.375, -4.486}, {-0.613, -6.573, 2.177}}}},
    Branch{2, 50, {{{0.965, 1.926, 0}, {-2.773, -4.414, -0.017}, {4.785, 4.681, 0.096}, {-1.995, -2.241, -0.074}}}}};
constexpr std::array pilkey_groove_tension{
    Branch{0.1, 2, {{{0.89, 2.208, -0.094}, {-0.923, -6.678, 1.638}, {2.893, 6.448, -2.516}, {-1.912, -1.944, 0.963}}}},
    Branch{2, 50, {{{1.037, 1.967, 0.002}, {-2.679, -2.98, -0.053}, {3.09, 2.124, 0.165}, {-0.424, -1.153, -0.106}}}}};

// Source: [Roark2002] table 17.1, shoulder fillet and U groove in torsion.
constexpr std::array roark_shoulder_torsion{
    Branch{0.25, 4, {{{0.953, 0.68, -0.053}, {-0.493, -1.82, 0.517}, {1.621, 0.908, -0.529}, {-1.081, 0.232, 0.065}}}}};
constexpr std::array roark_groove_torsion{
    Branch{
        0.25, 2, {{{1.245, 0.264, 0.491}, {-3.03, 3.269, -3.633}, {7.199, -11.286, 8.318}, {-4.414, 7.753, -5.176}}}},
    Branch{2, 50, {{{1.651, 0.614, 0.04}, {-4.794, -0.314, -0.217}, {8.457, -0.962, 0.389}, {-4.314, 0.662, -0.212}}}}};

// Trust bands: (finite elements/fit - 1) of a converged axisymmetric solution of our own (nu 0.3, within 0.02 % of the
// deep hyperbolic groove), at the geometries named, opened outward; tests/handbook/stress_concentration_test.cpp holds
// the comparison.
struct Trust
{
    double low = 0, high = 0;                      // percent, where the comparison was made
    double low_elsewhere = 0, high_elsewhere = 0;  // percent, where only two fits can be compared
    const char* observed = "";
};
constexpr Trust pilkey_shoulder_torsion_trust{-4, 1, -5, 2, "1.8 to 2.4 % too high"};
constexpr Trust pilkey_shoulder_bending_trust{-2, 10, -15, 30, "0.4 to 7.3 % too low"};
constexpr Trust pilkey_shoulder_tension_trust{4, 24, -20, 35, "7 to 16 % too low"};
constexpr Trust roark_shoulder_torsion_trust{-1, 2, -2, 3, "0.3 to 0.7 % too low"};
constexpr Trust tipton_bending_trust{-2, 2, -5, 5, "within 1.1 %"};
constexpr Trust tipton_tension_trust{0, 5, -5, 8, "2.0 to 3.2 % too low"};
constexpr Trust pilkey_groove_torsion_trust{-5, 5, -10, 10, "between 2.9 % too high and 2.2 % too low"};
constexpr Trust pilkey_groove_bending_trust{-6, 9, -10, 12, "between 3.7 % too high and 6.4 % too low"};
constexpr Trust pilkey_groove_tension_trust{2, 12, -5, 20, "4.7 to 8.2 % too low"};
constexpr Trust roark_groove_torsion_trust{-6, 5, -12, 10, "between 3.4 % too high and 2.5 % too low"};

enum class Sampled
{
    yes,
    no,
};

TrustBand trust_band(const Trust& trust, Sampled sampled, const char* where)
{
    if (sampled == Sampled::yes)
        return {trust.low, trust.high,
                fmt::format("seen {} against converged finite elements at {}", trust.observed, where)};
    return {
        trust.low_elsewhere, trust.high_elsewhere,
        fmt::format("away from where it was compared with finite elements ({}): judged from the spread between fits",
                    where)};
}

struct Shape
{
    double x = 0;      // 2 h/D
    double ratio = 0;  // h/r
    double bore = 0;   // mm
};

struct Fit
{
    std::span<const Branch> branches;
    const char* source = "";
    Provenance provenance = Provenance::secondary;
};

double polynomial(const Branch& branch, const Shape& shape)
{
    double sum = 0, power = 1;
    for (const auto& c : branch.C)
    {
        sum += power * (c[0] + c[1] * std::sqrt(shape.ratio) + c[2] * shape.ratio);
        power *= shape.x;
    }
    return sum;
}

const char* nominal_stress(Loading loading)
{
    switch (loading)
    {
        case Loading::torsion: return "16 T/(pi d^3) on the small (net) diameter";
        case Loading::bending: return "32 M/(pi d^3) on the small (net) diameter";
        case Loading::tension: return "4 N/(pi d^2) on the small (net) diameter";
    }
    return "";
}

ConcentrationFactor blank(Loading loading, const char* source, Provenance provenance)
{
    ConcentrationFactor answer;
    answer.peak = loading == Loading::torsion ? PeakStress::shear : PeakStress::first_principal;
    answer.nominal = nominal_stress(loading);
    answer.source = source;
    answer.provenance = provenance;
    return answer;
}

ConcentrationFactor polynomial_factor(const Fit& fit, const Shape& shape, Loading loading, const TrustBand& band)
{
    ConcentrationFactor answer = blank(loading, fit.source, fit.provenance);
    answer.band = band;
    const double low = fit.branches.front().low, high = fit.branches.back().high;
    // Ratios of millimetres that were typed as decimals must still meet the ends of the range.
    if (shape.bore > 0) answer.absent_because = "the chart is for solid bars";
    else if (shape.ratio < low * (1 - slack) || shape.ratio > high * (1 + slack))
        answer.absent_because =
            fmt::format("depth over radius is {:.3g}, the fit covers {:g} to {:g}", shape.ratio, low, high);
    else
        for (const Branch& branch : fit.branches)
            if (!answer.factor && shape.ratio <= branch.high * (1 + slack)) answer.factor = polynomial(branch, shape);
    return answer;
}

// Tulsa finite-element study, 1996; coefficients and range recalled, not read in the paper. Ratios D/d and r/d.
double tipton_fit(double step, double radius, Loading loading)
{
    const double two = step * step, four = two * two;
    if (loading == Loading::bending)
        return 0.632 + 0.377 * std::pow(step, -4.4) +
               std::pow(radius, -0.5) *
                   std::sqrt((-0.14 - 0.363 * two + 0.503 * four) / (1 - 2.39 * two + 3.368 * four));
    return 0.493 + 0.48 * std::pow(step, -2.43) +
           std::pow(radius, -0.48) * std::sqrt((3.43 - 3.41 * two + 0.0232 * four) / (1 - 8.85 * two - 0.078 * four));
}

ConcentrationFactor tipton_factor(const ShoulderFillet& fillet, Loading loading, const TrustBand& band)
{
    ConcentrationFactor answer = blank(loading, "Tipton, Sorem & Rolovic 1996 [Tipton1996]", Provenance::from_memory);
    answer.band = band;
    const double step = fillet.large_diameter / fillet.small_diameter;
    const double radius = fillet.radius / fillet.small_diameter;
    if (fillet.bore.value() > 0) answer.absent_because = "the fit is for solid bars";
    else if (step < 1.01 || step > 6)
        answer.absent_because = fmt::format("D/d is {:.3g}, the fit covers 1.01 to 6", step);
    else if (radius < 0.002 || radius > 0.3)
        answer.absent_because = fmt::format("r/d is {:.3g}, the fit covers 0.002 to 0.3", radius);
    else answer.factor = tipton_fit(step, radius, loading);
    return answer;
}

}  // namespace

const char* name_of(Loading loading)
{
    switch (loading)
    {
        case Loading::torsion: return "torsion";
        case Loading::bending: return "bending";
        case Loading::tension: return "tension";
    }
    return "";
}

std::vector<ConcentrationFactor> shoulder_factors(const ShoulderFillet& fillet, Loading loading)
{
    EXPECTS(fillet.bore.value() >= 0 && fillet.small_diameter > fillet.bore);
    EXPECTS(fillet.large_diameter > fillet.small_diameter && fillet.radius.value() > 0);
    const Millimetre height = (fillet.large_diameter - fillet.small_diameter) / 2;
    const Shape shape{2 * (height / fillet.large_diameter), height / fillet.radius, fillet.bore.value()};
    const double step = fillet.large_diameter / fillet.small_diameter;
    const double radius = fillet.radius / fillet.small_diameter;
    const Sampled sampled = step >= 1.05 && step <= 2 && radius >= 0.02 && radius <= 0.3 ? Sampled::yes : Sampled::no;
    const auto band = [&](const Trust& trust)
    { return trust_band(trust, sampled, "seven shoulders, D/d 1.09 to 2, r/d 0.03 to 0.2"); };

    if (loading == Loading::torsion)
        return {polynomial_factor({pilkey_shoulder_torsion, "Pilkey 1997, chart 3.12 [Pilkey1997]"}, shape, loading,
                                  band(pilkey_shoulder_torsion_trust)),
                polynomial_factor(
                    {roark_shoulder_torsion, "Roark 7th ed. 2002, table 17.1 [Roark2002]", Provenance::from_memory},
                    shape, loading, band(roark_shoulder_torsion_trust))};
    if (loading == Loading::bending)
        return {polynomial_factor({pilkey_shoulder_bending, "Pilkey 1997, chart 3.10 [Pilkey1997]"}, shape, loading,
                                  band(pilkey_shoulder_bending_trust)),
                tipton_factor(fillet, loading, band(tipton_bending_trust))};
    return {polynomial_factor({pilkey_shoulder_tension, "Pilkey 1997, chart 3.4 [Pilkey1997]"}, shape, loading,
                              band(pilkey_shoulder_tension_trust)),
            tipton_factor(fillet, loading, band(tipton_tension_trust))};
}

std::vector<ConcentrationFactor> groove_factors(const RingGroove& groove, Loading loading)
{
    EXPECTS(groove.depth.value() > 0 && groove.radius.value() > 0 && groove.bore.value() >= 0);
    EXPECTS(groove.outer_diameter - 2 * groove.depth > groove.bore);
    const Shape shape{2 * (groove.depth / groove.outer_diameter), groove.depth / groove.radius, groove.bore.value()};
    const Sampled sampled = shape.ratio >= 1 - slack && shape.ratio <= 2.5 * (1 + slack) ? Sampled::yes : Sampled::no;
    const auto band = [&](const Trust& trust)
    { return trust_band(trust, sampled, "four grooves, depth over radius 1 to 2.5"); };

    if (loading == Loading::torsion)
        return {polynomial_factor({pilkey_groove_torsion, "Pilkey 1997, chart 2.47 [Pilkey1997]"}, shape, loading,
                                  band(pilkey_groove_torsion_trust)),
                polynomial_factor({roark_groove_torsion, "Roark 7th ed. 2002, table 17.1 [Roark2002]"}, shape, loading,
                                  band(roark_groove_torsion_trust))};
    if (loading == Loading::bending)
        return {polynomial_factor({pilkey_groove_bending, "Pilkey 1997, chart 2.41 [Pilkey1997]"}, shape, loading,
                                  band(pilkey_groove_bending_trust))};
    return {polynomial_factor({pilkey_groove_tension, "Pilkey 1997, chart 2.19 [Pilkey1997]"}, shape, loading,
                              band(pilkey_groove_tension_trust))};
}

// Legend: a net radius over groove radius, s = sqrt(a + 1), v Poisson's ratio.
ConcentrationFactor deep_groove_factor(Millimetre net_radius, Millimetre groove_radius, double poisson_ratio,
                                       Loading loading)
{
    EXPECTS(net_radius.value() > 0 && groove_radius.value() > 0 && poisson_ratio >= 0 && poisson_ratio < 0.5);
    const double a = net_radius / groove_radius, s = std::sqrt(a + 1), v = poisson_ratio;
    ConcentrationFactor answer = blank(loading, "Neuber 1946, deep hyperbolic groove [Neuber1946]",
                                       loading == Loading::torsion ? Provenance::derived : Provenance::from_memory);
    answer.band = {-0.1, 0.1, "exact for the hyperboloid; finite elements agree within 0.02 %"};
    switch (loading)
    {
        case Loading::torsion: answer.factor = 0.75 * (1 + s) * (1 + s) / (1 + 2 * s); break;
        case Loading::bending:
        {
            const double N = 3 * (a + 1) + (1 + 4 * v) * s + (1 + v) / (1 + s);
            answer.factor = 0.75 * (s + 1) * (3 * a - (1 - 2 * v) * s + 4 + v) / N;
            break;
        }
        case Loading::tension: answer.factor = (a * s + (0.5 + v) * a + (1 + v) * (s + 1)) / (a + 2 * v * s + 2); break;
    }
    return answer;
}

}  // namespace splicewright
