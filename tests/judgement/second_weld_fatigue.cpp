// SPDX-License-Identifier: GPL-2.0-or-later
// Fatigue of welds. Sources: [Hobbacher2016] 3.2, 3.5 and 4.2 to 4.3, [Fricke2012], [Eurocode3Fatigue2005] 7.1, 8(3)
// and tables 8.1 to 8.5, [MaddoxRazmjoo2001]; the numbers are from memory as in docs/methods.md.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "tests/judgement/second_opinion.h"

namespace splicewright
{
namespace
{

using std::numbers::pi;

constexpr double gamma_mf = 1.35;  // [Eurocode3Fatigue2005] table 3.1

struct Cycle
{
    double range = 0, count = 0;
};

// log N against log S: two straight lines through the class at 2 million cycles.
struct Line
{
    double at_two_million = 0, slope = 3, knee = 1e7, beyond = 5;
    [[nodiscard]] double life(double range) const
    {
        const double before = 2e6 * std::pow(at_two_million / gamma_mf / range, slope);
        if (before <= knee) return before;
        return knee * std::pow(before / knee, beyond / slope);
    }
};

// Inverse of the factor on all ranges at which the damages add up to the sum.
double use(const std::vector<Cycle>& cycles, const Line& line, double sum)
{
    if (cycles.empty()) return 0;
    double low = -30, high = 30;  // of the natural logarithm of the factor
    while (high - low > 1e-12)
    {
        const double middle = (low + high) / 2;
        double damage = 0;
        for (const Cycle& cycle : cycles) damage += cycle.count / line.life(std::exp(middle) * cycle.range);
        (damage > sum ? high : low) = middle;
    }
    return std::exp(-low);
}

double joined_by_squares(double normal, double shear)
{
    if (normal == 0) return shear;
    if (shear < 0.15 * normal) return normal;
    return std::sqrt((normal * normal + shear * shear) / 0.5);
}

double joined_by_cubes_and_fifths(double normal, double shear)
{
    double low = 0, high = normal + shear;
    while (high - low > 1e-13 * (normal + shear))
    {
        const double u = (low + high) / 2;
        (std::pow(normal / u, 3) + std::pow(shear / u, 5) > 1 ? low : high) = u;
    }
    return high;
}

// 0.5, or 0.2 where the means of the torque lie farther apart than a tenth of the largest range.
double allowed_sum(const Load& load)
{
    double least = INFINITY, most = -INFINITY, largest = 0;
    for (const TorqueBlock& block : load.blocks)
    {
        least = std::min(least, (block.low.value() + block.high.value()) / 2);
        most = std::max(most, (block.low.value() + block.high.value()) / 2);
        largest = std::max(largest, block.high.value() - block.low.value());
    }
    return most - least > largest / 10 ? 0.2 : 0.5;
}

// Stress by a unit torque and by a unit couple, MPa per N*mm.
struct Unit
{
    double shear = 0, normal = 0, shear_of_couple = 0;
};

std::vector<Cycle> shear_cycles(const Load& load, const Unit& unit)
{
    std::vector<Cycle> cycles;
    for (const Event& event : events_of(load))
    {
        if (event.range() * unit.shear != 0) cycles.push_back({std::abs(event.range() * unit.shear), event.count});
        if (event.couple * unit.shear_of_couple != 0)
            cycles.push_back({2 * std::abs(event.couple * unit.shear_of_couple), event.count});
    }
    return cycles;
}

std::vector<Cycle> normal_cycles(const Load& load, const Unit& unit)
{
    std::vector<Cycle> cycles;
    for (const Event& event : events_of(load))
        if (event.couple * unit.normal != 0) cycles.push_back({2 * std::abs(event.couple * unit.normal), event.count});
    return cycles;
}

double by_iiw(const Load& load, const Unit& unit, const Line& normal, double shear_class)
{
    const double sum = allowed_sum(load);
    return joined_by_squares(use(normal_cycles(load, unit), normal, sum),
                             use(shear_cycles(load, unit), {shear_class, 5, 1e8, 9}, sum));
}

double by_iiw(const Load& load, const Unit& unit, double normal_class, double shear_class)
{
    return by_iiw(load, unit, Line{normal_class, 3, 1e7, 5}, shear_class);
}

double by_eurocode(const Load& load, const Unit& unit, double normal_class, double shear_class)
{
    return joined_by_cubes_and_fifths(use(normal_cycles(load, unit), {normal_class, 3, 5e6, 5}, 1),
                                      use(shear_cycles(load, unit), {shear_class, 5, 1e8, 5}, 1));
}

// One range for each event, against one line.
template <class Join>
double by_joined_range(const Load& load, const Unit& unit, const Line& line, const Join& join)
{
    std::vector<Cycle> cycles;
    for (const Event& event : events_of(load))
        cycles.push_back({join(2 * event.couple * unit.normal, event.range() * unit.shear), event.count});
    return use(cycles, line, allowed_sum(load));
}

double size_factor(double size, double exponent) { return size > 25 ? std::pow(25 / size, exponent) : 1; }

double bore_of(const Case& asked, int side) { return asked.bar.at(static_cast<std::size_t>(side))->bore.value(); }

// Whole diameter of a solid bar, wall of a hollow one.
double bar_size(const Case& asked, int side)
{
    const double d = first_diameter(asked, side), bore = bore_of(asked, side);
    return bore > 0 ? (d - bore) / 2 : d;
}

double sleeve_wall(const Case& asked, int side)
{
    return (asked.sleeve->end_diameter.value() - first_diameter(asked, side)) / 2;
}

const SiteAnswer& site_in(const MeridianAnswer& answer, const std::string& id)
{
    return *std::find_if(answer.sites.begin(), answer.sites.end(), [&](const SiteAnswer& s) { return s.id == id; });
}

Unit peaks_of(const SiteAnswer& site) { return {site.torsion.shear.value, site.bending.principal.value, 0}; }

// What the weld passes to the sleeve, spread over the sleeve's section.
Unit sleeve_end_unit(const Case& asked, const WeldForce& weld, int side)
{
    const double outer = asked.sleeve->end_diameter.value(), inner = first_diameter(asked, side);
    const double turn = 2 * pi * weld.radius * weld.radius * weld.torsion_tangential;
    const double couple = pi * weld.radius * weld.radius * weld.bending_outward;  // integral of cosine squared
    return {turn * shear_per_torque(outer, inner), couple * stress_per_couple(outer, inner), 0};
}

Unit throat_unit(const Case& asked, const WeldForce& weld)
{
    const OnThroat turn = on_throat(asked.sleeve->weld, 0, 0, weld.torsion_tangential);
    const OnThroat bend =
        on_throat(asked.sleeve->weld, weld.bending_outward, weld.bending_radial, weld.bending_tangential);
    return {turn.along, std::hypot(bend.normal, bend.across), bend.along};
}

Unit butt_unit(const SolvedCase& solved)
{
    const Ring ring = butt_ring(solved.asked);
    const SleeveShare& share = solved.answer.share;
    const bool alone = !solved.asked.sleeve;
    return {(alone ? 1 : 1 - share.torsion.value) * shear_per_torque(ring.outer, ring.inner),
            (alone ? 1 : 1 - share.bending.value) * stress_per_couple(ring.outer, ring.inner), 0};
}

Opinion bar_toe(const Case& asked, int side, const std::string& name)
{
    const double d = first_diameter(asked, side), bore = bore_of(asked, side);
    const Unit unit{shear_per_torque(d, bore), stress_per_couple(d, bore), 0};
    const double cover = sleeve_wall(asked, side), plate = (d - bore) / 2, size = bar_size(asked, side);
    if (name == "nominal-iiw")
    {
        const double listed = cover <= 0.8 * plate ? 56 : cover <= 1.5 * plate ? 50 : 45;
        return {by_iiw(asked.load, unit, listed * size_factor(size, 0.3), 80)};
    }
    if (name == "nominal-ec3")
    {
        const std::vector<double> limits{20, 30, 50}, thin{56, 50, 45, 40}, thick{50, 45, 40, 40};
        const auto at = static_cast<std::size_t>(
            std::count_if(limits.begin(), limits.end(), [&](double limit) { return size > limit; }));
        return {by_eurocode(asked.load, unit, cover < plate ? thin.at(at) : thick.at(at), 80)};
    }
    const bool both =
        !asked.load.blocks.empty() && (asked.load.peak_bending.value() > 0 || asked.load.running_bending.value() > 0);
    return {by_joined_range(asked.load, unit, both ? Line{80, 5, 1e8, 9} : Line{80, 3, 1e7, 5},
                            [](double normal, double shear)
                            { return normal / 2 + std::sqrt(normal * normal / 4 + shear * shear); })};
}

// Torque that pulls: its principal stress against the class of normal stress, together with that of bending.
double by_first_principal(const Load& load, const SiteAnswer& site, const Line& line)
{
    const Unit principal{site.torsion.principal.value, site.bending.principal.value, 0};
    return by_joined_range(load, principal, line,
                           [](double normal, double shear)
                           { return (normal + std::sqrt(normal * normal + 4 * shear * shear)) / 2; });
}

std::optional<Opinion> notch(const SolvedCase& solved, const RowId& id)
{
    const Load& load = solved.asked.load;
    if (id.name == "notch-small") return Opinion{by_iiw(load, peaks_of(site_in(*solved.small, id.site)), 630, 250)};
    const SiteAnswer& site = site_in(solved.notched, id.site);
    Unit unit = peaks_of(site);
    if (id.name.empty()) return Opinion{by_iiw(load, unit, 225, 160)};
    if (id.name == "notch-principal") return Opinion{by_first_principal(load, site, {225, 3, 1e7, 5})};
    if (id.name == "notch-shear")
    {
        unit.normal = 0;
        return Opinion{by_iiw(load, unit, 225, 160)};
    }
    if (id.name != "notch-von-mises") return std::nullopt;
    // Both as von Mises stresses by their unit loads, a quarter of a cycle apart at the worst.
    const Unit mises{site.torsion.von_mises.value, site.bending.von_mises.value, 0};
    return Opinion{by_joined_range(load, mises, {200, 3, 1e7, 5},
                                   [](double normal, double shear) { return std::hypot(normal, shear); })};
}

std::optional<Opinion> hot_spot(const SolvedCase& solved, const RowId& id)
{
    for (const HotSpot& spot : solved.answer.hot_spots)
    {
        if (spot.site != id.site) continue;
        const ExtrapolatedStress& read = id.name == "hot-spot-linear" ? spot.linear : spot.quadratic;
        const double size = id.site.starts_with("bar") ? bar_size(solved.asked, side_number(id.site))
                                                       : sleeve_wall(solved.asked, side_number(id.site));
        return Opinion{by_iiw(solved.asked.load, {read.torsion_shear.value, read.bending_normal.value, 0},
                              90 * size_factor(size, 0.3), 80)};
    }
    return std::nullopt;
}

std::optional<Opinion> sleeve_weld(const SolvedCase& solved, const RowId& id)
{
    const int side = side_number(id.site);
    const Case& asked = solved.asked;
    const WeldForce& weld = *solved.answer.weld.at(static_cast<std::size_t>(side));
    if (id.name == "nominal-iiw")
        return Opinion{by_iiw(asked.load, sleeve_end_unit(asked, weld, side),
                              63 * size_factor(sleeve_wall(asked, side), 0.3), 80)};
    if (id.name == "throat-iiw") return Opinion{by_iiw(asked.load, throat_unit(asked, weld), 36, 80)};
    if (id.name == "throat-ec3") return Opinion{by_eurocode(asked.load, throat_unit(asked, weld), 36, 80)};
    if (id.name == "socket-ec3") return Opinion{by_eurocode(asked.load, sleeve_end_unit(asked, weld, side), 40, 80)};
    return std::nullopt;
}

std::optional<Opinion> butt(const SolvedCase& solved, const RowId& id)
{
    const Case& asked = solved.asked;
    const Ring ring = butt_ring(asked);
    const double size = ring.inner > 0 ? (ring.outer - ring.inner) / 2 : ring.outer;
    if (id.name == "throat-iiw") return Opinion{by_iiw(asked.load, butt_unit(solved), 36, 80)};
    if (id.name == "throat-ec3") return Opinion{by_eurocode(asked.load, butt_unit(solved), 36, 80)};
    if (id.name == "nominal-ec3")
        return Opinion{by_eurocode(asked.load, butt_unit(solved), 112 * size_factor(size, 0.2), 100)};
    if (!id.name.empty()) return std::nullopt;
    return Opinion{by_iiw(asked.load, peaks_of(site_in(solved.answer, id.site)), 80 * size_factor(size, 0.1),
                          asked.joint->penetration ? 80 : 100)};
}

// Force of a unit couple: largest over a turn of a part of it, on a finer turn than a degree.
template <class Part>
double largest_in_a_turn(const WeldMetalForce& metal, const Part& part)
{
    double largest = 0;
    for (int step = 0; step < 3600; ++step)
    {
        const double angle = step * pi / 1800;
        largest = std::max(
            largest, part(Eigen::Vector3d(metal.towards_x * std::cos(angle) + metal.towards_y * std::sin(angle))));
    }
    return largest;
}

// The line of pull falls with the third root of the cycles to its knee at 1e7, that of shear with the fifth to 1e8.
double shear_over_pull(const Load& load)
{
    double count = 0;
    for (const TorqueBlock& block : load.blocks) count = std::max(count, block.count);
    return 80.0 / 36.0 * std::pow(std::clamp(count, 2e6, 1e7) / 2e6, 1.0 / 3 - 1.0 / 5);
}

Unit metal_unit(const Load& load, const WeldMetalForce& metal)
{
    // On the cylinder of the bar, which a plug stands on, outward is across; around a fillet the axis is across, too.
    const bool plug = metal.site.starts_with("plug");
    const auto across = [plug](const Eigen::Vector3d& f)
    { return plug ? std::abs(f.z()) : std::sqrt(f.x() * f.x() + f.z() * f.z()); };
    const auto along = [plug](const Eigen::Vector3d& f)
    { return plug ? std::sqrt(f.x() * f.x() + f.y() * f.y()) : std::abs(f.y()); };
    const double pull = across(metal.torsion) / metal.area, shear = along(metal.torsion) / metal.area;
    return {std::sqrt(shear * shear + std::pow(shear_over_pull(load) * pull, 2)),
            largest_in_a_turn(metal, across) / metal.area, largest_in_a_turn(metal, along) / metal.area};
}

}  // namespace

std::optional<Opinion> second_metal_fatigue(const SolvedCase& solved, const RowId& id)
{
    if (id.name != "throat-iiw") return std::nullopt;
    Opinion worst{0, 1e-3};  // rows look at every third degree of the turn: 1 - cos 1.5 deg
    for (const WeldMetalForce& metal : solved.metal)
        if (metal.site == id.site)
            worst.utilisation =
                std::max(worst.utilisation, by_iiw(solved.asked.load, metal_unit(solved.asked.load, metal), 36, 80));
    return worst;
}

std::optional<Opinion> second_weld_fatigue(const SolvedCase& solved, const RowId& id)
{
    const Load& load = solved.asked.load;
    if (id.name == "parent-iiw")
        return Opinion{by_iiw(load, peaks_of(site_in(solved.answer, id.site)), Line{160, 5, 1e7, 9}, 100)};
    if (id.name == "parent-principal")
        return Opinion{by_first_principal(load, site_in(solved.answer, id.site), {160, 5, 1e7, 9})};
    if (id.name == "parent-ec3") return Opinion{by_eurocode(load, peaks_of(site_in(solved.answer, id.site)), 160, 100)};
    if (id.name.starts_with("hot-spot")) return hot_spot(solved, id);
    const bool is_notch = id.name.starts_with("notch") || (id.name.empty() && id.site != "butt-surface");
    if (is_notch) return notch(solved, id);
    if (id.site == "butt-surface" || id.site == "land-edge") return butt(solved, id);
    if (id.site.starts_with("bar-toe")) return bar_toe(solved.asked, side_number(id.site), id.name);
    if (id.site.starts_with("sleeve-toe") || id.site.starts_with("root")) return sleeve_weld(solved, id);
    return std::nullopt;
}

}  // namespace splicewright
