// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/random_shape.h"

#include <algorithm>
#include <cmath>

#include "cases/bar_shape.h"
#include "cases/shape_limits.h"

namespace splicewright
{
namespace
{

double hundredths(double length_mm) { return std::round(length_mm * 100) / 100; }

// At either limit as often as inside; inside, every decade is as likely.
double near_limits(Chance& chance, double least, double greatest)
{
    if (least >= greatest || chance.happens(0.2)) return least;
    if (chance.happens(0.1)) return greatest;
    const double low = std::max(least, 1e-3);
    const double inside = low < greatest ? hundredths(chance.across_decades(low, greatest)) : greatest;
    return std::clamp(inside, least, greatest);
}

// Usual values, at times the whole range.
double mostly(Chance& chance, double usual_least, double usual_greatest, double least, double greatest)
{
    if (chance.happens(0.15)) return near_limits(chance, least, greatest);
    const double low = std::clamp(usual_least, least, greatest), high = std::clamp(usual_greatest, least, greatest);
    return low < high ? std::clamp(hundredths(chance.between(low, high)), low, high) : low;
}

// Length left free beyond what a rule asks for.
double slack(Chance& chance, double diameter)
{
    if (chance.happens(0.3)) return 0;
    if (chance.happens(0.03)) return hundredths(chance.between(10, 80) * diameter);
    return hundredths(chance.across_decades(0.01, 4) * diameter);
}

double next_diameter(Chance& chance, double before)
{
    if (chance.happens(0.1)) return before;
    const double step = chance.happens(0.2) ? 0.1 : hundredths(chance.across_decades(0.1, before));
    const double here = chance.happens(0.5) ? before + step : before - step;
    return std::clamp(here, 6.0, 250.0);
}

double fillet_between(Chance& chance, double before, double here)
{
    if (before == here) return 0;
    const double smaller = std::min(before, here), least = std::max(0.1, smaller / 400);
    return mostly(chance, 0.02 * smaller, 0.15 * smaller, least, 50);
}

void add_sections(Chance& chance, Bar& bar, double first_diameter)
{
    bar.sections.push_back({Millimetre(), Millimetre(first_diameter), Millimetre()});
    const std::size_t n_more = chance.happens(0.5) ? 0 : 1 + chance.below(chance.happens(0.2) ? 6 : 2);
    for (std::size_t i = 0; i < n_more; ++i)
    {
        const double before = bar.sections.back().diameter.value(), here = next_diameter(chance, before);
        bar.sections.push_back({Millimetre(), Millimetre(here), Millimetre(fillet_between(chance, before, here))});
    }
}

double smallest_diameter(const Bar& bar)
{
    double smallest = bar.sections.front().diameter.value();
    for (const Section& section : bar.sections) smallest = std::min(smallest, section.diameter.value());
    return smallest;
}

Millimetre common_bore(Chance& chance, double smallest)
{
    const double greatest = std::min(0.8 * smallest, smallest - 6);
    return Millimetre(greatest < 1 || chance.happens(0.7) ? 0 : near_limits(chance, 1, greatest));
}

Groove groove_of(Chance& chance, const Bar& bar, double diameter)
{
    double deepest = 0.3 * diameter;
    if (bar.bore.value() > 0) deepest = std::min(deepest, (diameter - bar.bore.value()) / 2 - 3);
    const double least_radius = std::max(0.2, diameter / 400);
    return {Millimetre(), Millimetre(mostly(chance, 0.01 * diameter, 0.1 * diameter, 0.1, std::max(0.1, deepest))),
            Millimetre(mostly(chance, least_radius, 0.1 * diameter, least_radius, 50))};
}

// Where the next feature of a bar may begin and what stands there.
struct Cursor
{
    double at = 0;
    double clear = 0;  // to a groove's edge
};

void add_groove(Chance& chance, Bar& bar, double diameter, Cursor& cursor)
{
    Groove groove = groove_of(chance, bar, diameter);
    const double half = groove_half_width(groove);
    const double room = chance.happens(0.4) ? 0 : hundredths(chance.across_decades(0.1, diameter));
    groove.at = Millimetre(cursor.at + cursor.clear + half + room);
    bar.grooves.push_back(groove);
    cursor = {groove.at.value() + half, 1};
}

// Lays the sections end to end from the joint outward, each as long as what stands on it asks for.
// `inner`: where the weld beside the joint ends, and how far anything else must keep off.
void lay_out(Chance& chance, Bar& bar, const Cursor& inner, bool is_grooved)
{
    double begin = 0;
    Cursor cursor = inner;
    for (std::size_t number = 0; number < bar.sections.size(); ++number)
    {
        Section& section = bar.sections[number];
        const double diameter = section.diameter.value();
        section.length = Millimetre(1e6);  // fillets do not depend on it
        const SectionSpan span = section_span(bar, number);
        const double outer_fillet = span.end - span.plain_end;
        if (number > 0) cursor = {span.plain_begin, 0.5};
        double least = std::max(begin + 0.5, cursor.at + (span.plain_begin > begin || outer_fillet > 0 ? 1.0 : 0.0));
        const std::size_t n_grooves = is_grooved && chance.happens(0.6) ? 1 + chance.below(2) : 0;
        for (std::size_t i = 0; i < n_grooves; ++i) add_groove(chance, bar, diameter, cursor);
        if (n_grooves > 0) least = std::max(least, cursor.at + 0.5);
        if (number + 1 == bar.sections.size()) least = std::max(least, cursor.at + diameter);
        section.length = Millimetre(least - begin + outer_fillet + slack(chance, diameter));
        begin += section.length.value();
    }
}

double first_diameter(const Case& shape, Side side)
{
    return shape.bar[index(side)]->sections.front().diameter.value();
}

double larger_first(const Case& shape)
{
    return std::max(first_diameter(shape, Side::left), first_diameter(shape, Side::right));
}

double smaller_first(const Case& shape)
{
    return std::min(first_diameter(shape, Side::left), first_diameter(shape, Side::right));
}

double second_diameter(Chance& chance, double first)
{
    const double greatest = 0.25 * first;
    const std::vector<double> steps{0,
                                    0,
                                    0,
                                    0.005,
                                    0.02,
                                    0.021,
                                    0.03,
                                    0.1,
                                    greatest,
                                    near_limits(chance, 0.005, greatest),
                                    near_limits(chance, 0.2, 2)};
    return std::clamp(first + (first > 200 ? 0.0 : std::min(chance.pick(steps), greatest)), 6.0, 250.0);
}

Joint random_joint(Chance& chance, const Case& shape)
{
    Joint joint;
    const double larger = larger_first(shape), smaller = smaller_first(shape), difference = larger - smaller;
    const double deepest = (larger + smaller) / 4 - shape.bar[0]->bore.value() / 2 - 2;
    if (chance.happens(0.5) && deepest >= 2.5) joint.penetration = Millimetre(near_limits(chance, 2.5, deepest));
    if (chance.happens(0.35)) joint.half_lap = Millimetre(mostly(chance, 4, smaller, 2, 2 * smaller));
    const double longest = 0.8 * smaller;
    if (difference > equal_diameters.value())
        joint.blend = Millimetre(chance.happens(0.4) ? std::max(2 * difference, 3.0)
                                                     : near_limits(chance, std::max(difference, 0.5), longest));
    return joint;
}

void draw_fit(Chance& chance, const Case& shape, Sleeve& sleeve)
{
    const std::size_t kind = chance.below(4);
    for (const Side side : both_sides)
    {
        const double press = 0.002 * first_diameter(shape, side);
        const std::size_t own = kind == 3 ? chance.below(3) : kind;
        const double clearance = own == 0   ? mostly(chance, 0.01, 0.15, 0.001, 1)
                                 : own == 1 ? 0.0
                                            : -mostly(chance, 0.1 * press, press, 0.001, press);
        sleeve.clearance[index(side)] = Millimetre(clearance);
        sleeve.slit[index(side)] = own == 0 ? SlitState::open : own == 1 ? SlitState::snug : SlitState::press;
    }
    if (chance.happens(0.2)) sleeve.slit = {SlitState::bonded, SlitState::bonded};
    const bool is_loose = sleeve.slit[0] != SlitState::press && sleeve.slit[1] != SlitState::press;
    if (is_loose && sleeve.slit[0] != SlitState::bonded && chance.happens(0.2))
        sleeve.slit.fill(chance.happens(0.5) ? SlitState::open : SlitState::snug);
}

void draw_walls(Chance& chance, const Case& shape, Sleeve& sleeve)
{
    const double left_bore = first_diameter(shape, Side::left) + sleeve.clearance[0].value(),
                 right_bore = first_diameter(shape, Side::right) + sleeve.clearance[1].value();
    const double bore = std::max(left_bore, right_bore), larger = larger_first(shape);
    const double room_for_leg = (larger - bore) / 2 + 3;  // over the larger bore
    const double least = std::max(2.5, room_for_leg), greatest = (4 * smaller_first(shape) - bore) / 2;
    const double wall = mostly(chance, 4, 0.1 * larger + 6, least, greatest);
    sleeve.outer_diameter = sleeve.end_diameter = Millimetre(bore + 2 * wall);
    if (!chance.happens(0.3) || wall < least + 0.1) return;
    const double end_wall = near_limits(chance, least, wall - 0.1);
    sleeve.end_diameter = Millimetre(bore + 2 * end_wall);
    sleeve.taper_length = Millimetre(near_limits(chance, std::max(1.0, 2 * (wall - end_wall)), 5 * wall));
}

void draw_weld(Chance& chance, const Case& shape, Sleeve& sleeve)
{
    const double height = (sleeve.end_diameter.value() - larger_first(shape)) / 2;
    double on_sleeve = mostly(chance, 3, 0.9 * height, 3, std::min(30.0, height));
    if (height <= 30 && chance.happens(0.15)) on_sleeve = height;
    if (height <= 30 && chance.happens(0.05)) on_sleeve = height - 0.005;
    SleeveWeld& weld = sleeve.weld;
    weld.leg_on_sleeve = Millimetre(on_sleeve);
    const double least = std::max(3.0, on_sleeve / 3), greatest = std::min(30.0, 3 * on_sleeve);
    weld.leg_on_bar = Millimetre(chance.happens(0.5) ? on_sleeve : near_limits(chance, least, greatest));
    const double smaller = std::min(on_sleeve, weld.leg_on_bar.value());
    weld.toe_radius_stated = chance.happens(0.6);
    weld.toe_radius =
        weld.toe_radius_stated
            ? Millimetre(near_limits(chance, 0.2, std::min(chance.happens(0.1) ? 12.0 : 2.0, 0.4 * smaller)))
            : reference_notch_radius;
    weld.passes = static_cast<int>(1 + chance.below(chance.happens(0.1) ? 20 : 4));
}

Sleeve random_sleeve(Chance& chance, const Case& shape)
{
    Sleeve sleeve;
    draw_fit(chance, shape, sleeve);
    draw_walls(chance, shape, sleeve);
    draw_weld(chance, shape, sleeve);
    double least = std::max(butt_half_length(*shape.joint) + 5, shape.joint->half_lap.value() / 2 + 3);
    if (sleeve.taper_length.value() > 0) least = std::max(least, sleeve.taper_length.value() + 3);
    const double larger = larger_first(shape);
    const double reach = mostly(chance, larger, 2 * larger, least, least + 12 * larger);
    const double other = chance.happens(0.7) ? reach : mostly(chance, larger, 2 * larger, least, least + 12 * larger);
    sleeve.length = Millimetre(reach + other);
    sleeve.offset = Millimetre((other - reach) / 2);
    return sleeve;
}

double random_diameter(Chance& chance)
{
    return chance.happens(0.85) ? hundredths(chance.between(14, 45)) : near_limits(chance, 6, 400);
}

}  // namespace

Case random_shape(Chance& chance)
{
    Case shape;
    const double first = random_diameter(chance);
    const bool is_plain_shaft = chance.happens(0.2), is_grooved = chance.happens(0.3);
    if (is_plain_shaft)
    {
        Bar& bar = shape.bar[chance.below(2)].emplace();
        add_sections(chance, bar, first);
        bar.bore = common_bore(chance, smallest_diameter(bar));
        lay_out(chance, bar, {first, 0}, is_grooved);
        return shape;
    }
    const double second = second_diameter(chance, first);
    const bool is_left_first = chance.happens(0.5);
    add_sections(chance, shape.bar[0].emplace(), is_left_first ? first : second);
    add_sections(chance, shape.bar[1].emplace(), is_left_first ? second : first);
    const double smallest = std::min(smallest_diameter(*shape.bar[0]), smallest_diameter(*shape.bar[1]));
    shape.bar[0]->bore = shape.bar[1]->bore = common_bore(chance, smallest);
    shape.joint = random_joint(chance, shape);
    if (chance.happens(0.75)) shape.sleeve = random_sleeve(chance, shape);
    for (const Side side : both_sides)
    {
        const double inner = shape.sleeve ? sleeve_reach(*shape.sleeve, side) + shape.sleeve->weld.leg_on_bar.value() +
                                                toe_tangent_on_bar(shape.sleeve->weld)
                                          : joint_half_length(*shape.joint);
        lay_out(chance, *shape.bar[index(side)], {inner, 1}, is_grooved);
    }
    return shape;
}

}  // namespace splicewright
