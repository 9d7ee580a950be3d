// SPDX-License-Identifier: GPL-2.0-or-later
#include <fmt/format.h>

#include <array>
#include <numbers>

#include "mesh/gmsh_mesher.h"
#include "post/check_groups.h"
#include "post/check_shapes.h"
#include "post/stress_concentration.h"

namespace splicewright
{
namespace
{

constexpr double pi = std::numbers::pi;
constexpr double fe_error_pct = 0.5;  // asked of the elements, added to each band
constexpr std::array loadings{Loading::torsion, Loading::bending, Loading::tension};

struct Factors
{
    double torsion = 0, bending = 0, tension = 0, hoop_in_tension = 0;
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

// Over the nominal stress of a section of diameter `nominal_mm`.
Factors computed_factors(const RingGroove& groove, double nominal_mm)
{
    const double D = groove.outer_diameter.value(), d = nominal_mm;
    const MeridianAnswer answer =
        meridian_answer(shaft_case({{Millimetre{5 * D}, Millimetre{D}, Millimetre{0}}},
                                   {{Millimetre{2.5 * D}, groove.depth, groove.radius}}, Millimetre{0}),
                        {}, {fe_error_pct});
    const SiteAnswer& site = site_of(answer, "groove.left.1");
    return {site.torsion.shear.value * pi * d * d * d / 16, site.bending.principal.value * pi * d * d * d / 32,
            site.axial.principal.value * pi * d * d / 4, 0};
}

AnsweredCheck<Factors> answered(const PublishedCheck& check, Loading loading)
{
    return {check, [loading](const Factors& factors) { return factor_of(factors, loading); }};
}

// Grooves on a net diameter of 30 mm; half round when depth = radius, else with parallel walls.
CheckGroup charted_groove(double depth_mm, double radius_mm)
{
    const double d = 30, step = 1 + 2 * depth_mm / d, radius_share = radius_mm / d;
    const RingGroove groove{Millimetre{d + 2 * depth_mm}, Millimetre{depth_mm}, Millimetre{radius_mm}, Millimetre{0}};
    const std::string name = fmt::format("groove.D{:.2f}.r{:.3f}", step, radius_share);
    std::vector<AnsweredCheck<Factors>> rows;
    for (const Loading loading : loadings)
        for (const ConcentrationFactor& factor : groove_factors(groove, loading))
        {
            if (!factor.factor) continue;
            const bool pilkey = factor.source.find("Pilkey") != std::string::npos;
            rows.push_back(answered({fmt::format("{}.{}.{}", name, name_of(loading), pilkey ? "pilkey" : "roark"),
                                     fmt::format("{} factor of a ring groove D/d {:g}, r/d {:g} by finite elements",
                                                 name_of(loading), step, radius_share),
                                     *factor.factor, "-",
                                     chart_band(factor.band.low_pct - fe_error_pct, factor.band.high_pct + fe_error_pct,
                                                *factor.factor, factor.band.reason),
                                     factor.source, SourceKind::published_chart, factor.provenance},
                                    loading));
        }
    return check_group<Factors>(
        name, [groove, d] { return computed_factors(groove, d); }, rows);
}

// Half-round groove of radius 0.5 mm in a bar of 200 mm: the surface of the bar is a plane to it.
CheckGroup shallow_groove()
{
    const RingGroove groove{Millimetre{200}, Millimetre{0.5}, Millimetre{0.5}, Millimetre{0}};
    const std::string reason = "limit of an endless depth below the groove; the ratio here is 200, 1 % covers it";
    const auto allowed = [&](double expected) { return idealisation(-1, 1, expected, reason); };
    return check_group<Factors>(
        "groove.shallow", [groove] { return computed_factors(groove, 200); },
        {answered({"groove.shallow.torsion", "half-round scratch across a shear, gross stress: twice", 2, "-",
                   allowed(2), "anti-plane shear of a half-round notch: potential flow around a cylinder",
                   SourceKind::exact_theory, Provenance::theory},
                  Loading::torsion),
         answered({"groove.shallow.tension", "half-round scratch across a pull, gross stress", 3.065, "-",
                   allowed(3.065), "Pilkey 1997, half-round notch in the edge of a half plane [Pilkey1997]",
                   SourceKind::published_table, Provenance::from_memory},
                  Loading::tension)});
}

// Hyperbolic groove, net radius 10 mm, cut off at 20 net radii.
Factors hyperbolic_factors(double net_over_groove)
{
    const double a = 10;
    MeshSize size;
    size.elements_per_quarter_turn = 32;
    const std::vector<ElasticConstants> steel{check_steel};
    const Mesh mesh = generate_mesh(outline_of(HyperbolicGroove{a, a / net_over_groove, 20 * a}), size);
    const auto neck = [&](LoadKind kind)
    { return surface_reading(mesh, steel, "groove", unit_solution(mesh, steel, kind, {})); };
    const SurfaceReading torsion = neck(LoadKind::torsion), bending = neck(LoadKind::bending),
                         pull = neck(LoadKind::axial);
    const std::size_t at = place_nearest(pull.z, 0);
    return {std::abs(torsion.shear[at]) * pi * a * a * a / 2, bending.along[at] * pi * a * a * a / 4,
            pull.along[at] * pi * a * a, pull.hoop[at] * pi * a * a};
}

constexpr const char* neuber = "Neuber 1946, deep hyperbolic groove [Neuber1946]";

struct DeepGroove
{
    double net_over_groove, torsion, bending, tension, hoop;
};

// Neuber's formulas for nu 0.3, evaluated outside the program.
constexpr std::array<DeepGroove, 3> deep_grooves{{{2, 1.25402, 1.48163, 1.70974, 0.404671},
                                                  {8, 1.71429, 2.39646, 3.01695, 0.949153},
                                                  {100, 4.34009, 7.65170, 10.1764, 3.25369}}};

double expected_of(const DeepGroove& groove, Loading loading)
{
    return factor_of({groove.torsion, groove.bending, groove.tension, 0}, loading);
}

CheckGroup deep_groove_by_elements(const DeepGroove& groove)
{
    const std::string name = fmt::format("neuber.fe.a{:g}", groove.net_over_groove);
    std::vector<AnsweredCheck<Factors>> rows;
    const auto check = [&](const std::string& part, double expected)
    {
        return PublishedCheck{
            fmt::format("{}.{}", name, part),
            fmt::format("{} factor of a hyperbolic groove, net radius over groove radius {:g}, by finite elements",
                        part, groove.net_over_groove),
            expected,
            "-",
            discretisation(0.003, expected, "hyperbola drawn in 161 arcs, bar 20 net radii thick: 0.3 % for both"),
            neuber,
            SourceKind::exact_theory,
            Provenance::from_memory};
    };
    for (const Loading loading : loadings)
        rows.push_back(answered(check(name_of(loading), expected_of(groove, loading)), loading));
    rows.push_back(
        {check("hoop-in-tension", groove.hoop), [](const Factors& factors) { return factors.hoop_in_tension; }});
    return check_group<Factors>(
        name, [groove] { return hyperbolic_factors(groove.net_over_groove); }, rows);
}

CheckGroup deep_groove_in_closed_form()
{
    std::vector<ClosedFormCheck> rows;
    for (const DeepGroove& groove : deep_grooves)
        for (const Loading loading : loadings)
        {
            const double expected = expected_of(groove, loading);
            rows.push_back(
                {{fmt::format("neuber.closed.a{:g}.{}", groove.net_over_groove, name_of(loading)),
                  fmt::format("{} factor of the same groove, a/rho {:g}, by the formula of the program",
                              name_of(loading), groove.net_over_groove),
                  expected, "-", digits_printed(6, expected), neuber, SourceKind::exact_theory,
                  Provenance::from_memory},
                 *deep_groove_factor(Millimetre{10}, Millimetre{10 / groove.net_over_groove}, 0.3, loading).factor});
        }
    return closed_form_group("neuber.closed", rows);
}

}  // namespace

std::vector<CheckGroup> groove_checks()
{
    return {charted_groove(3, 3),
            charted_groove(1.5, 1.5),
            charted_groove(7.5, 3),
            charted_groove(3, 1.5),
            shallow_groove(),
            deep_groove_by_elements(deep_grooves[0]),
            deep_groove_by_elements(deep_grooves[1]),
            deep_groove_in_closed_form()};
}

}  // namespace splicewright
