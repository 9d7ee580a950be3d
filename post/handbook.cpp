// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/handbook.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "cases/bar_shape.h"
#include "post/press_bore_check.h"
#include "post/section_strength.h"
#include "post/site_loads.h"
#include "post/stress_concentration.h"
#include "post/weld_line.h"

namespace splicewright
{
namespace
{

constexpr double per_kilonewton_metre = 1e6;  // N*mm
constexpr double per_kilonewton = 1e3;        // N
constexpr double round_off_pct = 0.2;         // exact theory against a surface read at mesh places

// Beyond its band and error bar an exact value may be off by what a notch or an end near the place of reading does, and
// no more: up to 0.4 % in torsion, 3 % in bending and 14 % in tension were seen on 150 random shafts. Judgement.
constexpr double torsion_contradicts_pct = 2, bending_contradicts_pct = 10, axial_contradicts_pct = 25;

struct Band
{
    double low_pct, high_pct;
    std::string reason;
};

HandbookRow row(std::string what, Measured fe, double handbook, std::string unit, const Band& band, std::string source,
                Provenance provenance)
{
    HandbookRow result;
    result.what = std::move(what);
    result.fe = fe.value;
    result.handbook = handbook;
    result.unit = std::move(unit);
    result.fe_error_pct = fe.value != 0 ? 100 * fe.error / std::abs(fe.value) : 0;
    result.difference_pct = 100 * (fe.value / handbook - 1);
    result.band_low_pct = band.low_pct;
    result.band_high_pct = band.high_pct;
    result.band_reason = band.reason;
    result.agrees = result.difference_pct >= band.low_pct - result.fe_error_pct &&
                    result.difference_pct <= band.high_pct + result.fe_error_pct;
    result.source = std::move(source);
    result.provenance = provenance;
    return result;
}

// How far the difference lies outside the band widened by the error of the finite elements, percent.
double outside_pct(const HandbookRow& row)
{
    return std::max(row.difference_pct - row.band_high_pct, row.band_low_pct - row.difference_pct) - row.fe_error_pct;
}

// A row of exact theory. A value that is no number contradicts as well.
HandbookRow exact(HandbookRow row, double contradicts_pct)
{
    row.contradicts = !(outside_pct(row) <= contradicts_pct);
    return row;
}

Measured scaled(const Measured& unit, double factor) { return {unit.value * factor, unit.error * factor}; }

void add_plain_bar(std::vector<HandbookRow>& rows, const Case& asked, const SiteAnswer& site)
{
    PlainSite plain = plain_site(asked, site.id);
    if (!reads_thinnest_section(asked, site))
        for (const Section& section : asked.bar[index(side_of(site.id))]->sections)
            if (std::abs(section.diameter.value() - 2 * site.r) <
                std::abs(plain.section.outer_diameter.value() - 2 * site.r))
                plain.section.outer_diameter = section.diameter;
    const Band band{-round_off_pct, round_off_pct, "exact theory away from notches and ends"};
    const auto shear = surface_shear(plain.section, NewtonMillimetre{per_kilonewton_metre});
    const auto bending = surface_bending_stress(plain.section, NewtonMillimetre{per_kilonewton_metre});
    const auto pull = axial_stress(plain.section, Newton{per_kilonewton});
    const auto add = [&](const char* what, const Measured& fe, const Sourced<Megapascal>& theory, double contradicts)
    {
        rows.push_back(exact(row(fmt::format("{}: {}", site.id, what), fe, theory.value.value(), "MPa", band,
                                 theory.source, theory.provenance),
                             contradicts));
    };
    add("surface shear per kN·m of torque", scaled(site.torsion.shear, per_kilonewton_metre), shear,
        torsion_contradicts_pct);
    add("bending stress per kN·m", scaled(site.bending.principal, per_kilonewton_metre), bending,
        bending_contradicts_pct);
    add("axial stress per kN", scaled(site.axial.principal, per_kilonewton), pull, axial_contradicts_pct);
}

struct LoadedPeak
{
    Loading loading;
    Measured peak;   // MPa per unit load
    double nominal;  // MPa per unit load
};

std::array<LoadedPeak, 3> loaded_peaks(const SiteAnswer& site, const RoundSection& net)
{
    return {{{Loading::torsion, site.torsion.shear, surface_shear(net, NewtonMillimetre{1}).value.value()},
             {Loading::bending, site.bending.principal, surface_bending_stress(net, NewtonMillimetre{1}).value.value()},
             {Loading::tension, site.axial.principal, axial_stress(net, Newton{1}).value.value()}}};
}

void add_factors(std::vector<HandbookRow>& rows, const std::string& site, const LoadedPeak& loaded,
                 const std::vector<ConcentrationFactor>& factors)
{
    for (const ConcentrationFactor& factor : factors)
        if (factor.factor)
            rows.push_back(row(fmt::format("{}: concentration factor in {}", site, name_of(loaded.loading)),
                               scaled(loaded.peak, 1 / loaded.nominal), *factor.factor, "-",
                               {factor.band.low_pct, factor.band.high_pct, factor.band.reason}, factor.source,
                               factor.provenance));
}

void add_shoulder(std::vector<HandbookRow>& rows, const Case& asked, const SiteAnswer& site)
{
    const PlainSite plain = plain_site(asked, site.id);
    const Bar& bar = *asked.bar[index(side_of(site.id))];
    const auto n = static_cast<std::size_t>(std::atoi(site.id.substr(site.id.rfind('.') + 1).c_str()));
    const ShoulderFillet fillet{std::max(bar.sections[n - 1].diameter, bar.sections[n].diameter),
                                plain.section.outer_diameter, plain.notch_radius, bar.bore};
    for (const LoadedPeak& loaded : loaded_peaks(site, plain.section))
        add_factors(rows, site.id, loaded, shoulder_factors(fillet, loaded.loading));
}

void add_groove(std::vector<HandbookRow>& rows, const Case& asked, const SiteAnswer& site)
{
    const PlainSite plain = plain_site(asked, site.id);
    const Bar& bar = *asked.bar[index(side_of(site.id))];
    const auto n = static_cast<std::size_t>(std::atoi(site.id.substr(site.id.rfind('.') + 1).c_str()));
    const Groove& cut = bar.grooves[n - 1];
    const RingGroove groove{plain.section.outer_diameter + 2.0 * cut.depth, cut.depth, cut.radius, bar.bore};
    for (const LoadedPeak& loaded : loaded_peaks(site, plain.section))
        add_factors(rows, site.id, loaded, groove_factors(groove, loaded.loading));
}

// Round bar at the joint plane, mean of the two.
RoundSection joint_section(const Case& asked)
{
    return {(asked.bar[0]->sections.front().diameter + asked.bar[1]->sections.front().diameter) / 2,
            asked.bar[0]->bore};
}

RoundSection sleeve_section(const Case& asked)
{
    return {asked.sleeve->outer_diameter, joint_section(asked).outer_diameter};
}

ParallelMember member(const RoundSection& section, const Material& material)
{
    return {section, material.elastic_modulus, material.poisson_ratio};
}

// How far end welds can lower the sleeve's share: between rigid welds and welds as soft as half a diameter of bar each.
Band share_band(const Case& asked, double share)
{
    const double length = asked.sleeve->length.value(), soft = joint_section(asked).outer_diameter.value();
    const double with_soft_welds = 1 / (1 / share + soft / length);
    return {
        100 * (with_soft_welds / share - 1), 2,
        "equal twist is the limit of a long sleeve; the welds at its ends give way, by up to half a diameter of bar "
        "each (judgement)"};
}

void add_share(std::vector<HandbookRow>& rows, const Case& asked, const MeridianAnswer& answer)
{
    if (!answer.scenario.butt_fused || !answer.weld[0] || !answer.weld[1]) return;
    const auto share = sleeve_share(member(sleeve_section(asked), asked.sleeve->material),
                                    member(joint_section(asked), asked.bar[0]->material));
    rows.push_back(row("sleeve's share of the torque at the joint", answer.share.torsion, share.value.torsion, "-",
                       share_band(asked, share.value.torsion), share.source, share.provenance));
    rows.push_back(row("sleeve's share of the bending at the joint", answer.share.bending, share.value.bending, "-",
                       share_band(asked, share.value.bending), share.source, share.provenance));
}

void add_weld_lines(std::vector<HandbookRow>& rows, const Case& asked, const MeridianAnswer& answer)
{
    for (const Side side : both_sides)
    {
        // Through a bonded slit the sleeve takes torque past its weld.
        if (!answer.weld[index(side)] || asked.sleeve->slit[index(side)] == SlitState::bonded) continue;
        const WeldForce& weld = *answer.weld[index(side)];
        const FilletWeld fillet{asked.sleeve->weld.leg_on_bar, asked.sleeve->weld.leg_on_sleeve,
                                asked.bar[index(side)]->sections.front().diameter};
        const double torque = answer.share.torsion.value * per_kilonewton_metre;
        if (torque < 1) continue;
        const auto line =
            ring_throat_stress(throat_mean_radius(fillet), throat(fillet), {NewtonMillimetre{torque}, {}, {}});
        const double fe = std::abs(weld.torsion_tangential) * per_kilonewton_metre / throat(fillet).value();
        rows.push_back(
            exact(row(fmt::format("throat.{}: shear per kN·m of torque on the shaft", name_of(side)),
                      {fe, fe * weld.error_pct / 100}, line.value.torsion.value(), "MPa",
                      {-1, 1, "statics: the weld passes on what the sleeve carries"}, line.source, line.provenance),
                  torsion_contradicts_pct));
    }
}

void add_press_fit(std::vector<HandbookRow>& rows, const Case& asked, const MeridianAnswer& answer)
{
    if (answer.fit_pressure.value == 0) return;
    double sum = 0;
    int count = 0;
    Sourced<PressFitStress> lame;
    for (const Side side : both_sides)
    {
        if (asked.sleeve->slit[index(side)] != SlitState::press) continue;
        lame = press_fit_of(asked, side);
        sum += lame.value.pressure.value();
        ++count;
    }
    rows.push_back(row("press fit: pressure, mean over the middle half of each side", answer.fit_pressure, sum / count,
                       "MPa",
                       {-10, 25,
                        "the formula is for a long sleeve; the welds and the free zone at the butt disturb a short "
                        "one (judgement)"},
                       lame.source, lame.provenance));
}

// Twist of the shaft in lengths of constant section; under the sleeve the sections add up.
double twist_by_sections(const Case& asked, bool with_sleeve)
{
    double twist = 0;
    for (const Side side : both_sides)
    {
        if (!asked.bar[index(side)]) continue;
        const Bar& bar = *asked.bar[index(side)];
        const double G = shear_modulus(bar.material.elastic_modulus, bar.material.poisson_ratio).value();
        double reach = 0, sleeve_stiffness = 0, start = 0;
        if (with_sleeve && asked.sleeve)
        {
            reach = sleeve_reach(*asked.sleeve, side);
            const Material& tube = asked.sleeve->material;
            sleeve_stiffness = shear_modulus(tube.elastic_modulus, tube.poisson_ratio).value() *
                               polar_moment_of_area({asked.sleeve->outer_diameter, bar.sections.front().diameter});
        }
        for (const Section& section : bar.sections)
        {
            const double end = start + section.length.value();
            const double stiffness = G * polar_moment_of_area({section.diameter, bar.bore});
            const double under = std::clamp(reach - start, 0.0, section.length.value());
            twist += under / (stiffness + sleeve_stiffness) + (end - start - under) / stiffness;
            start = end;
        }
    }
    return twist;
}

void add_twist(std::vector<HandbookRow>& rows, const Case& asked, const MeridianAnswer& answer)
{
    const double degrees = 180 / std::numbers::pi * per_kilonewton_metre;
    const double with = twist_by_sections(asked, true), without = twist_by_sections(asked, false);
    const Band band{-1, 100 * (without / with - 1) + 2,
                    "between a sleeve that shares fully and one that does not; steps add up to 1 or 2 % (judgement)"};
    rows.push_back(row("twist from end to end per kN·m", scaled(answer.twist, degrees), with * degrees, "deg", band,
                       "sum of T L/(G J) [Shigley2011] eq. 3-35", Provenance::theory));
}

}  // namespace

std::string contradiction(const std::vector<HandbookRow>& rows)
{
    const HandbookRow* worst = nullptr;
    for (const HandbookRow& row : rows)
        if (row.contradicts && (worst == nullptr || !(outside_pct(row) <= outside_pct(*worst)))) worst = &row;
    if (worst == nullptr) return {};
    return fmt::format("{}: finite elements {:.4g}, exact theory {:.4g} {} ({:+.1f} %)", worst->what, worst->fe,
                       worst->handbook, worst->unit, worst->difference_pct);
}

double twist_with_diameter_of(const Case& asked, Side side)
{
    Case original = asked;
    for (const Side other : both_sides)
    {
        Bar& bar = *original.bar[index(other)];
        bar.sections.front().diameter = asked.bar[index(side)]->sections.front().diameter;
        bar.material = asked.bar[index(side)]->material;
    }
    return twist_by_sections(original, false);
}

std::vector<HandbookRow> handbook_rows(const Case& asked, const MeridianAnswer& answer)
{
    std::vector<HandbookRow> rows;
    for (const SiteAnswer& site : answer.sites)
    {
        if (site.id.starts_with("bar.")) add_plain_bar(rows, asked, site);
        if (site.id.starts_with("shoulder.")) add_shoulder(rows, asked, site);
        if (site.id.starts_with("groove.")) add_groove(rows, asked, site);
    }
    if (asked.sleeve)
    {
        add_share(rows, asked, answer);
        add_weld_lines(rows, asked, answer);
        add_press_fit(rows, asked, answer);
    }
    add_twist(rows, asked, answer);
    return rows;
}

std::vector<HandbookRow> rows_of_plain_metal(const std::vector<HandbookRow>& rows)
{
    std::vector<HandbookRow> kept;
    std::copy_if(rows.begin(), rows.end(), std::back_inserter(kept),
                 [](const HandbookRow& row) { return is_plain_metal(row.what); });
    return kept;
}

}  // namespace splicewright
