// SPDX-License-Identifier: GPL-2.0-or-later
// Strength at the peak load. Sources: [Mises1913]; [TimoshenkoGoodier1970] art. 101-103; [Eurocode3Joints2005] 4.5.3.2
// and 4.5.3.3, read in secondary sources; the plastic load of a section is derived.
#include <Eigen/Eigenvalues>
#include <algorithm>
#include <cmath>
#include <functional>
#include <numbers>

#include "tests/judgement/second_opinion.h"

namespace splicewright
{
namespace
{

using std::numbers::pi;

struct Peak
{
    double torque = 0, couple = 0, pull = 0, press = 0;
};

Peak peak_of(const Case& asked)
{
    Peak peak{asked.load.peak_torque.value(), asked.load.peak_bending.value(), asked.load.axial.value(), 0};
    if (asked.sleeve)
        for (const SlitState slit : asked.sleeve->slit) peak.press = slit == SlitState::press ? 1 : peak.press;
    return peak;
}

double softened(const Material& metal) { return metal.heated_yield_factor * metal.yield.value(); }

double weakest_at_butt(const Case& asked)
{
    return std::min(
        {asked.joint->filler.yield.value(), softened(asked.bar[0]->material), softened(asked.bar[1]->material)});
}

double weakest_at_throat(const Case& asked, int side)
{
    return std::min({asked.sleeve->weld.filler.yield.value(),
                     softened(asked.bar.at(static_cast<std::size_t>(side))->material),
                     softened(asked.sleeve->material)});
}

// Largest von Mises stress over places and angles of what the finite elements give by unit load.
double largest_von_mises(const SiteAnswer& site, const Peak& peak)
{
    constexpr int n_angles = 720;
    double largest = 0;
    for (const SiteStress& read : site.brackets)
        for (Eigen::Index i = 0; i < read.z.size(); ++i)
            for (int k = 0; k < n_angles; ++k)
            {
                const double c = std::cos(2 * pi * k / n_angles), s = std::sin(2 * pi * k / n_angles);
                // Torsion and bending at right angles: what goes with the cosine in the plane of bending, the rest with
                // the sine. A press fit that is not there has no numbers.
                const auto sum = [&](Eigen::VectorXd SurfaceStress::*part, double turn)
                {
                    double stress = peak.torque * (read.torsion.*part)(i) +
                                    peak.couple * turn * (read.bending.*part)(i) + peak.pull * (read.axial.*part)(i);
                    if (peak.press > 0) stress += (read.press.*part)(i);
                    return stress;
                };
                const double x = sum(&SurfaceStress::along, c), y = sum(&SurfaceStress::hoop, c),
                             z = sum(&SurfaceStress::across, c), xy = sum(&SurfaceStress::shear, s),
                             xz = sum(&SurfaceStress::across_along, c), yz = sum(&SurfaceStress::across_hoop, s);
                const double mean = (x + y + z) / 3;
                const double deviator = (x - mean) * (x - mean) + (y - mean) * (y - mean) + (z - mean) * (z - mean) +
                                        2 * (xy * xy + xz * xz + yz * yz);
                largest = std::max(largest, std::sqrt(1.5 * deviator));
            }
    return largest;
}

double nominal_von_mises(double outer, double inner, const Peak& peak)
{
    const double shear = peak.torque * shear_per_torque(outer, inner);
    const double area = pi / 4 * (outer * outer - inner * inner);
    const double normal = std::abs(peak.couple) * stress_per_couple(outer, inner) + std::abs(peak.pull) / area;
    return std::sqrt(normal * normal + 3 * shear * shear);
}

// Integrals of the yield over the whole section, each load alone: shear times radius, stress times height, stress.
double plastic(double outer, double inner, double yield, const Peak& peak)
{
    const double cubes = std::pow(outer, 3) - std::pow(inner, 3);
    const double torque = 2 * pi / 3 * cubes / 8 * yield / std::sqrt(3.0), couple = 4.0 / 3 * cubes / 8 * yield;
    const double pull = pi / 4 * (outer * outer - inner * inner) * yield;
    return std::hypot(peak.torque / torque, std::abs(peak.couple) / couple + std::abs(peak.pull) / pull);
}

double thinnest(const Bar& bar)
{
    double least = INFINITY;
    for (const Section& section : bar.sections) least = std::min(least, section.diameter.value());
    return least;
}

double at_groove(const Bar& bar, const std::string& site)
{
    const Groove& groove = bar.grooves.at(static_cast<std::size_t>(std::stoi(site.substr(site.rfind('.') + 1))) - 1);
    double end = 0;
    for (const Section& section : bar.sections)
    {
        end += section.length.value();
        if (groove.at.value() < end) return section.diameter.value() - 2 * groove.depth.value();
    }
    return 0;
}

// Largest of a demand over the turn, at whole degrees.
double worst_of_turn(const SolvedCase& solved, int side, const std::function<double(const OnThroat&)>& demand)
{
    const WeldForce& weld = *solved.answer.weld.at(static_cast<std::size_t>(side));
    const Peak peak = peak_of(solved.asked);
    double worst = 0;
    for (int degree = 0; degree < 360; ++degree)
    {
        const double c = peak.couple * std::cos(degree * pi / 180), s = peak.couple * std::sin(degree * pi / 180);
        worst = std::max(worst, demand(on_throat(solved.asked.sleeve->weld,
                                                 weld.bending_outward * c + weld.axial_outward * peak.pull,
                                                 weld.bending_radial * c + weld.axial_radial * peak.pull,
                                                 weld.torsion_tangential * peak.torque + weld.bending_tangential * s)));
    }
    return worst;
}

double correlation(const std::string& steel)
{
    for (const auto& [grade, beta] : {std::pair{"S235", 0.8}, {"S275", 0.85}, {"S355", 0.9}})
        if (steel.starts_with(grade)) return beta;
    return 1;
}

std::optional<Opinion> throat(const SolvedCase& solved, const RowId& id)
{
    const int side = side_number(id.site);
    const Case& asked = solved.asked;
    const auto mises = [](const OnThroat& stress)
    {
        return std::sqrt(stress.normal * stress.normal +
                         3 * (stress.across * stress.across + stress.along * stress.along));
    };
    if (id.name == "yield") return Opinion{worst_of_turn(solved, side, mises) / weakest_at_throat(asked, side)};
    if (id.name == "alone")
    {
        const SleeveWeld& weld = asked.sleeve->weld;
        const double a = throat_of(weld), b = weld.leg_on_bar.value(), s = weld.leg_on_sleeve.value();
        const double R = first_diameter(asked, side) / 2 + a / 2 * b / std::hypot(b, s);
        const Peak peak = peak_of(asked);
        const double shear = peak.torque / (2 * pi * R * R * a);
        const double normal = std::abs(peak.couple) / (pi * R * R * a) + std::abs(peak.pull) / (2 * pi * R * a);
        return Opinion{std::sqrt(normal * normal + 3 * shear * shear) / weakest_at_throat(asked, side)};
    }
    const Material* weakest = &asked.sleeve->weld.filler;
    for (const Material* other : {&asked.sleeve->material, &asked.bar.at(static_cast<std::size_t>(side))->material})
        if (other->tensile < weakest->tensile) weakest = other;
    const double fu = weakest->tensile.value(), allowed = fu / (correlation(weakest->name) * 1.25);
    if (id.name == "simplified")
        return Opinion{worst_of_turn(solved, side,
                                     [](const OnThroat& stress)
                                     { return std::hypot(stress.normal, stress.across, stress.along); }) *
                       std::sqrt(3.0) / allowed};
    if (!id.name.empty()) return std::nullopt;
    return Opinion{worst_of_turn(solved, side,
                                 [&](const OnThroat& stress)
                                 { return std::max(mises(stress) / allowed, stress.normal / (0.9 * fu / 1.25)); })};
}

// f_u / (sqrt(3) beta_w gamma_M2) of the weakest of filler, sleeve and bar.
double simplified_strength(const Case& asked, int side)
{
    const Material* weakest = &asked.sleeve->weld.filler;
    for (const Material* other : {&asked.sleeve->material, &asked.bar.at(static_cast<std::size_t>(side))->material})
        if (other->tensile < weakest->tensile) weakest = other;
    return weakest->tensile.value() / (std::sqrt(3.0) * correlation(weakest->name) * 1.25);
}

double largest_force(const Case& asked, const WeldMetalForce& metal)
{
    const Peak peak = peak_of(asked);
    double largest = 0;
    for (int step = 0; step < 3600; ++step)
    {
        const double angle = step * pi / 1800;
        const Eigen::Vector3d turned = std::cos(angle) * metal.towards_x + std::sin(angle) * metal.towards_y;
        largest = std::max(largest, (peak.torque * metal.torsion + peak.pull * metal.axial + peak.press * metal.press +
                                     peak.couple * turned)
                                        .norm());
    }
    return largest;
}

std::optional<Opinion> of_bar(const SolvedCase& solved, const RowId& id, const SiteAnswer* site)
{
    const int side = side_number(id.site);
    const Bar& bar = *solved.asked.bar.at(static_cast<std::size_t>(side));
    const Peak peak = peak_of(solved.asked);
    const double bore = bar.bore.value(), yield = bar.material.yield.value();
    if (id.site.starts_with("bar-toe"))
    {
        const double d = first_diameter(solved.asked, side);
        if (id.name == "plastic") return Opinion{plastic(d, bore, softened(bar.material), peak)};
        return Opinion{nominal_von_mises(d, bore, peak) / softened(bar.material)};
    }
    const double d = id.site.starts_with("groove.") ? at_groove(bar, id.site) : thinnest(bar);
    if (id.name == "plastic") return Opinion{plastic(d, bore, yield, peak)};
    constexpr double same = 0.01;  // mm
    if (id.site.starts_with("groove.") || 2 * site->r > d + same)
        return Opinion{nominal_von_mises(d, bore, peak) / yield};
    constexpr double between_angles = 5e-4;  // theirs are 3 degrees apart
    return Opinion{largest_von_mises(*site, peak) / yield, between_angles};
}

}  // namespace

// From the whole tensor that a force spread over a plane makes: its part square to the plane and its parts in it.
double mean_von_mises(const Case& asked, const WeldMetalForce& metal)
{
    const Peak peak = peak_of(asked);
    const double right = metal.place.z() > 0 ? 1 : -1, b = asked.sleeve->weld.leg_on_bar.value(),
                 s = asked.sleeve->weld.leg_on_sleeve.value();
    const bool plug = metal.site.starts_with("plug");
    // In axes along, around, outward. The throat runs from the root square to the face, which leads from the bar's toe
    // to the sleeve's; the plane's normal lies along the face.
    const Eigen::Vector3d normal = plug ? Eigen::Vector3d(0, 0, 1) : Eigen::Vector3d(right * b, 0, -s).normalized();
    double largest = 0;
    for (int step = 0; step < 3600; ++step)
    {
        const double angle = step * pi / 1800;
        const Eigen::Vector3d force =
            peak.torque * metal.torsion + peak.pull * metal.axial + peak.press * metal.press +
            peak.couple * (std::cos(angle) * metal.towards_x + std::sin(angle) * metal.towards_y);
        const double square = force.dot(normal) / metal.area;
        const double inside = (force - force.dot(normal) * normal).norm() / metal.area;
        largest = std::max(largest, std::sqrt(square * square + 3 * inside * inside));
    }
    return largest;
}

std::optional<Opinion> second_metal_strength(const SolvedCase& solved, const RowId& id)
{
    if (id.name == "yield")
    {
        Opinion worst{0, 1e-3};  // rows look at every third degree of the turn: 1 - cos 1.5 deg
        for (const WeldMetalForce& metal : solved.metal)
            if (metal.site == id.site)
                worst.utilisation =
                    std::max(worst.utilisation, mean_von_mises(solved.asked, metal) /
                                                    weakest_at_throat(solved.asked, metal.place.z() > 0 ? 1 : 0));
        return worst;
    }
    if (!id.name.empty()) return std::nullopt;
    Opinion worst{0, 1e-3};  // rows look at every third degree of the turn: 1 - cos 1.5 deg
    for (const WeldMetalForce& metal : solved.metal)
        if (metal.site == id.site)
            worst.utilisation = std::max(worst.utilisation, largest_force(solved.asked, metal) / metal.area /
                                                                simplified_strength(solved.asked, metal.place.z() > 0));
    return worst;
}

double thick_cylinder_pressure(const Case& asked, int side)
{
    const Bar& bar = *asked.bar.at(static_cast<std::size_t>(side));
    const double b = first_diameter(asked, side) / 2, a = bar.bore.value() / 2;
    const double c = asked.sleeve->outer_diameter.value() / 2;
    const double radial = -asked.sleeve->clearance.at(static_cast<std::size_t>(side)).value() / 2;
    const double sleeve = ((c * c + b * b) / (c * c - b * b) + asked.sleeve->material.poisson_ratio) /
                          asked.sleeve->material.elastic_modulus.value();
    const double inside =
        ((b * b + a * a) / (b * b - a * a) - bar.material.poisson_ratio) / bar.material.elastic_modulus.value();
    return radial / (b * (sleeve + inside));
}

// From the principal stresses of the whole tensor, compressed side of bending.
double at_pressed_bore(const SolvedCase& solved)
{
    const Case& asked = solved.asked;
    const Peak peak = peak_of(asked);
    const SleeveShare& share = solved.answer.share;
    std::vector<int> sides;
    for (const int side : {0, 1})
        if (asked.sleeve->slit.at(static_cast<std::size_t>(side)) == SlitState::press) sides.push_back(side);
    double sum = 0, worst = 0;
    for (const int side : sides) sum += thick_cylinder_pressure(asked, side);
    for (const int side : sides)
    {
        const double d = first_diameter(asked, side), D = asked.sleeve->outer_diameter.value();
        const double p = solved.answer.fit_pressure.value * thick_cylinder_pressure(asked, side) /
                         (sum / static_cast<double>(sides.size()));
        const double shear = shear_per_torque(D, d) * d / D * peak.torque * share.torsion.value;
        const double along = stress_per_couple(D, d) * d / D * std::abs(peak.couple * share.bending.value) +
                             std::abs(peak.pull * share.axial.value) / (pi / 4 * (D * D - d * d));
        Eigen::Matrix3d stress;
        stress << -along, shear, 0, shear, 2 * p * d * d / (D * D - d * d) + p, 0, 0, 0, -p;
        const Eigen::Vector3d main = Eigen::SelfAdjointEigenSolver<Eigen::Matrix3d>(stress).eigenvalues();
        worst = std::max(
            worst, std::sqrt(((main(0) - main(1)) * (main(0) - main(1)) + (main(1) - main(2)) * (main(1) - main(2)) +
                              (main(2) - main(0)) * (main(2) - main(0))) /
                             2));
    }
    return worst;
}

std::optional<Opinion> second_strength(const SolvedCase& solved, const RowId& id)
{
    const Case& asked = solved.asked;
    const auto found = std::find_if(solved.answer.sites.begin(), solved.answer.sites.end(),
                                    [&](const SiteAnswer& each) { return each.id == id.site; });
    const SiteAnswer* site = found == solved.answer.sites.end() ? nullptr : &*found;
    if (id.site.starts_with("throat")) return throat(solved, id);
    if (id.site.starts_with("bar") || id.site.starts_with("groove")) return of_bar(solved, id, site);
    const bool is_butt = id.site == "butt-surface";
    if (!is_butt && id.site != "sleeve-mid") return std::nullopt;
    const double limit = is_butt ? weakest_at_butt(asked) : asked.sleeve->material.yield.value();
    if (id.name == "press-bore") return Opinion{at_pressed_bore(solved) / limit};
    if (id.name.empty()) return Opinion{largest_von_mises(*site, peak_of(asked)) / limit, 5e-4};
    const Ring ring = is_butt ? butt_ring(asked)
                              : Ring{asked.sleeve->outer_diameter.value(),
                                     std::max(first_diameter(asked, 0), first_diameter(asked, 1))};
    Peak part = peak_of(asked);
    if (id.name == "plastic" && asked.sleeve)
    {
        const SleeveShare& share = solved.answer.share;
        const auto take = [&](double& load, const Measured& of) { load *= is_butt ? 1 - of.value : of.value; };
        take(part.torque, share.torsion), take(part.couple, share.bending), take(part.pull, share.axial);
    }
    return Opinion{plastic(ring.outer, ring.inner, limit, part)};
}

}  // namespace splicewright
