// SPDX-License-Identifier: GPL-2.0-or-later
#include "post/running_true.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>

#include "cases/bar_shape.h"
#include "cases/problem.h"
#include "post/critical_speed.h"
#include "post/unbalance.h"

namespace splicewright
{
namespace
{

constexpr double shortest_piece = 1e-6;  // mm
constexpr int elements_wanted = 200;
constexpr double radian_per_second_per_rpm = std::numbers::pi / 30;

// A length of the shaft over which nothing changes; x from the left end, mm.
struct Piece
{
    double begin = 0, end = 0;
    Side side = Side::left;
    RoundSection bar;
    std::optional<RoundSection> sleeve;
    [[nodiscard]] double length() const { return end - begin; }
};

double bar_length(const Case& asked, Side side)
{
    return asked.bar[index(side)] ? length_of(*asked.bar[index(side)]) : 0;
}

double section_diameter(const Bar& bar, double from_joint)
{
    double end = 0;
    for (const Section& section : bar.sections)
    {
        end += section.length.value();
        if (from_joint < end) return section.diameter.value();
    }
    return bar.sections.back().diameter.value();
}

// Outer diameter of the sleeve at a distance from the joint to that side; 0 beyond its end. A taper counts with its
// diameter in the middle of the piece.
double sleeve_diameter(const Case& asked, Side side, double from_joint)
{
    if (!asked.sleeve) return 0;
    const Sleeve& sleeve = *asked.sleeve;
    const double left_over = sleeve_reach(sleeve, side) - from_joint, taper = sleeve.taper_length.value();
    if (left_over <= 0) return 0;
    if (left_over >= taper) return sleeve.outer_diameter.value();
    return sleeve.end_diameter.value() + (sleeve.outer_diameter - sleeve.end_diameter).value() * left_over / taper;
}

// Distances from the joint to one side at which something changes.
std::set<double> changes(const Case& asked, Side side)
{
    std::set<double> places{0};
    double at = 0;
    for (const Section& section : asked.bar[index(side)]->sections) places.insert(at += section.length.value());
    const double length = at;
    const auto add = [&](double place)
    {
        if (place > 0 && place < length) places.insert(place);
    };
    if (!asked.sleeve) return places;
    const double reach = sleeve_reach(*asked.sleeve, side), taper = asked.sleeve->taper_length.value();
    add(reach);
    for (int quarter = 1; taper > 0 && quarter <= 4; ++quarter) add(reach - taper * quarter / 4);
    return places;
}

std::vector<Piece> pieces_of(const Case& asked)
{
    std::vector<Piece> pieces;
    const double joint = bar_length(asked, Side::left);
    for (const Side side : both_sides)
    {
        if (!asked.bar[index(side)]) continue;
        const Bar& bar = *asked.bar[index(side)];
        const std::set<double> places = changes(asked, side);
        for (auto place = places.begin(); std::next(place) != places.end(); ++place)
        {
            const double begin = *place, end = *std::next(place), middle = (begin + end) / 2;
            if (end - begin < shortest_piece) continue;
            Piece piece{joint + begin, joint + end, side, {Millimetre(section_diameter(bar, middle)), bar.bore}, {}};
            if (side == Side::left) piece.begin = joint - end, piece.end = joint - begin;
            if (const double outer = sleeve_diameter(asked, side, middle); outer > 0)
                piece.sleeve = RoundSection{Millimetre(outer),
                                            bar.sections.front().diameter + asked.sleeve->clearance[index(side)]};
            pieces.push_back(piece);
        }
    }
    std::sort(pieces.begin(), pieces.end(), [](const Piece& a, const Piece& b) { return a.begin < b.begin; });
    return pieces;
}

double bar_mass_per_length(const Case& asked, const Piece& piece)
{
    return section_area(piece.bar) * asked.bar[index(piece.side)]->material.density;
}

double sleeve_mass_per_length(const Case& asked, const Piece& piece)
{
    return piece.sleeve ? section_area(*piece.sleeve) * asked.sleeve->material.density : 0;
}

// One round section with the same bending stiffness and mass per length as bar and sleeve together.
RotorLength rotor_length(const Case& asked, const Piece& piece)
{
    const Material& bar = asked.bar[index(piece.side)]->material;
    RotorLength part{piece.bar, Millimetre(piece.length()), bar.elastic_modulus, bar.density};
    if (!piece.sleeve) return part;
    const double stiffness = bar.elastic_modulus.value() * second_moment_of_area(piece.bar) +
                             asked.sleeve->material.elastic_modulus.value() * second_moment_of_area(*piece.sleeve);
    const double mass = bar_mass_per_length(asked, piece) + sleeve_mass_per_length(asked, piece);
    part.section.outer_diameter = piece.sleeve->outer_diameter;
    part.elastic_modulus = Megapascal(stiffness / second_moment_of_area(part.section));
    part.density = mass / section_area(part.section);
    return part;
}

// Distance of a bar's axis from the axis of rotation per mm of offset or per rad of tilt, at x; mm.
struct Line
{
    double offset = 0, tilt = 0;
};

Line out_of_axis(Side side, double x, double left, double right)
{
    const double length = left + right;
    if (side == Side::left) return {-x / length, -right * x / length};
    return {(length - x) / length, -left * (length - x) / length};
}

// Exact for what is linear over the piece: two Gauss points.
template <class Integrand>
double integral(const Piece& piece, const Integrand& integrand)
{
    const double middle = (piece.begin + piece.end) / 2, half = piece.length() / 2 / std::sqrt(3.0);
    return piece.length() / 2 * (integrand(middle - half) + integrand(middle + half));
}

// Per mm of offset and per rad of tilt, in one plane.
PlaneUnbalance plane_unbalance(const Case& asked, const std::vector<Piece>& pieces, Side plane)
{
    const double left = bar_length(asked, Side::left), right = bar_length(asked, Side::right);
    const auto lever = [&](double x) { return plane == Side::left ? 1 - x / (left + right) : x / (left + right); };
    PlaneUnbalance sum;
    for (const Piece& piece : pieces)
    {
        const double sleeve = sleeve_mass_per_length(asked, piece);
        const double mass = bar_mass_per_length(asked, piece) + sleeve;
        sum.mass += integral(piece, [&](double x) { return mass * lever(x); });
        sum.offset +=
            integral(piece, [&](double x) { return mass * lever(x) * out_of_axis(piece.side, x, left, right).offset; });
        sum.tilt +=
            integral(piece, [&](double x) { return mass * lever(x) * out_of_axis(piece.side, x, left, right).tilt; });
        const double loose = asked.sleeve ? std::max(0.0, asked.sleeve->clearance[index(piece.side)].value()) / 2 : 0;
        sum.sleeve += integral(piece, [&](double x) { return sleeve * lever(x) * loose; });
    }
    sum.offset = std::abs(sum.offset);
    sum.tilt = std::abs(sum.tilt);
    return sum;
}

Balance balance_of(const Case& asked, const std::vector<Piece>& pieces)
{
    Balance balance;
    const RadianPerSecond speed = asked.load.speed;
    double per_offset = 0, per_tilt = 0;  // eccentricity of the worse plane
    for (const Side side : both_sides)
    {
        PlaneUnbalance plane = plane_unbalance(asked, pieces, side);
        per_offset = std::max(per_offset, plane.offset / plane.mass);
        per_tilt = std::max(per_tilt, plane.tilt / plane.mass);
        plane.offset *= asked.joint->offset.value();
        plane.tilt *= asked.joint->tilt.value();
        balance.eccentricity = std::max(balance.eccentricity, plane.sum() / plane.mass);
        balance.plane[index(side)] = plane;
    }
    if (speed.value() <= 0) return balance;
    balance.grade = balance_grade(Millimetre(balance.eccentricity), speed);
    const double permissible = permissible_eccentricity(grade_asked, speed).value.value();
    constexpr double nothing = 1e-12;  // the parts of a shaft may balance each other out
    if (per_offset > nothing) balance.offset_allowed = permissible / per_offset;
    if (per_tilt > nothing) balance.tilt_allowed = permissible / per_tilt;
    return balance;
}

}  // namespace

RunningTrue running_true(const Case& asked)
{
    const std::vector<Piece> pieces = pieces_of(asked);
    EXPECTS(!pieces.empty());
    RunningTrue running;
    std::vector<RotorLength> rotor;
    for (const Piece& piece : pieces)
    {
        rotor.push_back(rotor_length(asked, piece));
        running.mass += piece.length() * (bar_mass_per_length(asked, piece) + sleeve_mass_per_length(asked, piece));
        running.length += piece.length();
    }
    const int elements = std::clamp(elements_wanted / static_cast<int>(pieces.size()), 1, 16);
    const auto critical = first_critical_speed(rotor, {}, elements);
    running.critical_speed = critical.value.value();
    if (asked.load.speed.value() > 0) running.margin = running.critical_speed / asked.load.speed.value();
    if (asked.joint) running.balance = balance_of(asked, pieces);
    running.source = fmt::format("{}; unbalance: ISO 21940-11:2016 [ISO21940-11], from memory", critical.source);
    running.provenance = running.balance ? Provenance::from_memory : critical.provenance;
    return running;
}

std::vector<std::string> running_cautions(const Case& asked, const RunningTrue& running)
{
    std::vector<std::string> cautions;
    const double rpm = asked.load.speed.value() / radian_per_second_per_rpm;
    if (running.margin && *running.margin < least_margin)
        cautions.push_back(fmt::format(
            "The first bending critical speed, {:.0f} rpm, is only {:.2f} times the running speed of {:.0f} rpm: below "
            "{:g} times the shaft may whirl (judgement; makers of drive shafts ask for 1.43 to 1.54).",
            running.critical_speed / radian_per_second_per_rpm, *running.margin, rpm, least_margin));
    if (running.balance && running.balance->grade && *running.balance->grade > grade_asked)
        cautions.push_back(fmt::format(
            "As built the shaft is out of balance by G {:.0f} at {:.0f} rpm, above G {:g} for drive shafts{} "
            "(ISO 21940-11, from memory: verify): straighten it, or have it balanced.",
            *running.balance->grade, rpm, grade_asked,
            *running.balance->grade > grade_of_cars ? " and above G 40 for those of cars" : ""));
    return cautions;
}

}  // namespace splicewright
