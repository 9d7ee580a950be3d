// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <array>
#include <cmath>
#include <numbers>
#include <optional>

#include "post/check_groups.h"
#include "post/check_shapes.h"
#include "post/stress_concentration.h"

namespace splicewright
{
namespace
{

constexpr double d = 30;              // small diameter, mm
constexpr double fe_error_pct = 0.5;  // asked of the elements, added to each band
constexpr std::array loadings{Loading::torsion, Loading::bending, Loading::tension};

struct Shoulder
{
    double step = 0, radius = 0;            // D/d, r/d
    std::optional<double> roark_bending{};  // the book's other fit, evaluated
};

// Source: [Roark2002] table 17.1, shoulder fillet in bending, evaluated at these ratios.
constexpr std::array<Shoulder, 7> shoulders{{{2, 0.1, 1.7888},
                                             {1.5, 0.1, 1.7331},
                                             {1.2, 0.05, 1.9477},
                                             {1.5, 0.05, 2.1538},
                                             {2, 0.2, 1.4664},
                                             {1.1, 0.03, 2.0280},
                                             {1.09, 0.03, 1.9929}}};

// K = A (r/d)^b. Source: [Norton2000] figures E-1 to E-3, read in a secondary copy.
struct PowerLaw
{
    Loading loading;
    double step, A, b;
};
constexpr std::array<PowerLaw, 11> norton{{{Loading::torsion, 2, 0.86331, -0.23865},
                                           {Loading::torsion, 1.2, 0.83425, -0.21649},
                                           {Loading::torsion, 1.09, 0.90337, -0.12692},
                                           {Loading::bending, 2, 0.90879, -0.28598},
                                           {Loading::bending, 1.5, 0.93836, -0.25759},
                                           {Loading::bending, 1.2, 0.97098, -0.21796},
                                           {Loading::bending, 1.1, 0.9512, -0.23757},
                                           {Loading::tension, 2, 1.0147, -0.30035},
                                           {Loading::tension, 1.5, 0.99957, -0.28221},
                                           {Loading::tension, 1.2, 0.96272, -0.25527},
                                           {Loading::tension, 1.1, 0.9845, -0.20818}}};

struct Band
{
    double low_pct, high_pct;
};

// A power of r/d alone stands for a whole family of curves that were drawn from photoelastic tests of flat bars and
// from Neuber's shallow and deep limits; converged elements lie where these bands say.
Band norton_band(Loading loading)
{
    switch (loading)
    {
        case Loading::torsion: return {-9, 13};
        case Loading::bending: return {-2, 14};
        case Loading::tension: return {5, 18};
    }
    return {};
}

struct Factors
{
    double torsion = 0, bending = 0, tension = 0;
};

double factor_of(const Factors& factors, Loading loading)
{
    switch (loading)
    {
        case Loading::torsion: return factors.torsion;
        case Loading::bending: return factors.bending;
        case Loading::tension: return factors.tension;
    }
    return 0;
}

Factors computed_factors(const Shoulder& shoulder)
{
    const double D = d * shoulder.step, pi = std::numbers::pi;
    const MeridianAnswer answer =
        meridian_answer(shaft_case({{Millimetre{2 * D}, Millimetre{D}, Millimetre{0}},
                                    {Millimetre{3 * d}, Millimetre{d}, Millimetre{shoulder.radius * d}}},
                                   {}, Millimetre{0}),
                        {}, {fe_error_pct});
    const SiteAnswer& site = site_of(answer, "shoulder.left.1");
    return {site.torsion.shear.value * pi * d * d * d / 16, site.bending.principal.value * pi * d * d * d / 32,
            site.axial.principal.value * pi * d * d / 4};
}

std::string short_name(const std::string& source)
{
    for (const char* name : {"Pilkey", "Roark", "Tipton", "Norton", "Shigley"})
        if (source.find(name) != std::string::npos)
            return fmt::format("{}{}", static_cast<char>(name[0] + 32), name + 1);
    return "other";
}

struct ChartRow
{
    Loading loading;
    double expected;
    Band band;
    std::string reason, source;
    Provenance provenance;
};

AnsweredCheck<Factors> answered(const Shoulder& shoulder, const ChartRow& chart)
{
    const Loading loading = chart.loading;
    PublishedCheck check;
    check.name = fmt::format("shoulder.D{:.2f}.r{:.3f}.{}.{}", shoulder.step, shoulder.radius, name_of(loading),
                             short_name(chart.source));
    check.claim = fmt::format("{} factor of a shoulder D/d {:g}, r/d {:g} by finite elements, {}", name_of(loading),
                              shoulder.step, shoulder.radius,
                              loading == Loading::torsion ? "largest shear" : "largest principal stress");
    check.expected = chart.expected;
    check.unit = "-";
    check.allowed =
        chart_band(chart.band.low_pct - fe_error_pct, chart.band.high_pct + fe_error_pct, chart.expected, chart.reason);
    check.source = chart.source;
    check.kind = SourceKind::published_chart;
    check.provenance = chart.provenance;
    return {check, [loading](const Factors& factors) { return factor_of(factors, loading); }};
}

std::vector<AnsweredCheck<Factors>> rows_of(const Shoulder& shoulder)
{
    std::vector<AnsweredCheck<Factors>> rows;
    const ShoulderFillet fillet{Millimetre{d * shoulder.step}, Millimetre{d}, Millimetre{d * shoulder.radius},
                                Millimetre{0}};
    for (const Loading loading : loadings)
    {
        for (const ConcentrationFactor& factor : shoulder_factors(fillet, loading))
            if (factor.factor)
                rows.push_back(answered(shoulder, {loading,
                                                   *factor.factor,
                                                   {factor.band.low_pct, factor.band.high_pct},
                                                   factor.band.reason,
                                                   factor.source,
                                                   factor.provenance}));
        if (loading == Loading::bending && shoulder.roark_bending)
            rows.push_back(
                answered(shoulder, {loading,
                                    *shoulder.roark_bending,
                                    {-1, 10},
                                    "the older charts lie below converged elements, more so for sharp fillets",
                                    "Roark 7th ed. 2002, table 17.1 [Roark2002]",
                                    Provenance::secondary}));
        for (const PowerLaw& law : norton)
            if (law.loading == loading && law.step == shoulder.step)
                rows.push_back(answered(
                    shoulder,
                    {loading, law.A * std::pow(shoulder.radius, law.b), norton_band(loading),
                     "one power of r/d for each D/d, fitted to older charts",
                     "Norton, Machine Design, 2nd ed. 2000, fig. E-1 to E-3 [Norton2000]", Provenance::secondary}));
    }
    return rows;
}

// What a worked example reads off a chart.
struct Reading
{
    Loading loading;
    double factor;
    const char* source;
};

CheckGroup reading_group(const Shoulder& shoulder, const std::vector<Reading>& readings)
{
    std::vector<AnsweredCheck<Factors>> rows;
    for (const Reading& reading : readings)
        rows.push_back(
            answered(shoulder,
                     {reading.loading, reading.factor, reading.loading == Loading::torsion ? Band{-4, 2} : Band{-1, 12},
                      "read off a printed curve to two decimals; the curve itself is low in bending "
                      "and high in torsion",
                      reading.source, Provenance::from_memory}));
    return check_group<Factors>(
        fmt::format("shoulder.D{:.2f}.r{:.3f}.read", shoulder.step, shoulder.radius),
        [shoulder] { return computed_factors(shoulder); }, rows);
}

}  // namespace

std::vector<CheckGroup> shoulder_checks()
{
    std::vector<CheckGroup> groups;
    for (const Shoulder& shoulder : shoulders)
        groups.push_back(check_group<Factors>(
            fmt::format("shoulder.D{:.2f}.r{:.3f}", shoulder.step, shoulder.radius),
            [shoulder] { return computed_factors(shoulder); }, rows_of(shoulder)));
    groups.push_back(reading_group(
        {1.5, 0.1},
        {{Loading::torsion, 1.42, "Shigley, 9th ed. 2011, fig. A-15-8, as read in example 7-1 [Shigley2011]"},
         {Loading::bending, 1.68, "Shigley, 9th ed. 2011, fig. A-15-9, as read in example 7-1 [Shigley2011]"}}));
    groups.push_back(reading_group(
        {38.0 / 32, 3.0 / 32},
        {{Loading::bending, 1.65, "Shigley, 9th ed. 2011, fig. A-15-9, as read in example 6-9 [Shigley2011]"}}));
    return groups;
}

}  // namespace splicewright
