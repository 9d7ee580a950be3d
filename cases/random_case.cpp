// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/random_case.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

#include "cases/chance.h"
#include "cases/check_making.h"
#include "cases/materials.h"
#include "cases/problem.h"
#include "cases/random_shape.h"
#include "cases/read_case.h"
#include "cases/units.h"

namespace splicewright
{
namespace
{

constexpr int most_tries = 400;

enum class Units
{
    metric,
    inch,
    mixed,
};

// Writes one case file in one habit of units.
class Writer
{
public:
    Writer(Chance& chance, Units units) : chance_(&chance), units_(units) {}

    void line(const std::string& text) { text_ += text + "\n"; }

    void length(const char* key, double value_mm)
    {
        static const std::vector<std::string> metric{"mm", "mm", "mm", "cm"}, inch{"in", "in", "inch"};
        quantity(key, value_mm, Dimension::length, is_inch() ? chance_->pick(inch) : chance_->pick(metric));
    }

    void quantity(const char* key, double house_value, Dimension dimension, const std::string& unit)
    {
        line(fmt::format("{} = \"{}\"", key, in_unit(house_value, dimension, unit)));
    }

    std::string moment(double newton_millimetre)
    {
        static const std::vector<std::string> metric{"N*m", "N*m", "kN*m", "N*mm"}, inch{"lbf*ft", "ft-lb", "lbf*in"};
        return in_unit(newton_millimetre, Dimension::moment, is_inch() ? chance_->pick(inch) : chance_->pick(metric));
    }

    std::string force(double newton)
    {
        static const std::vector<std::string> metric{"N", "kN"}, inch{"lbf"};
        return in_unit(newton, Dimension::force, is_inch() ? chance_->pick(inch) : chance_->pick(metric));
    }

    [[nodiscard]] const std::string& text() const { return text_; }

private:
    bool is_inch() { return units_ == Units::inch || (units_ == Units::mixed && chance_->happens(0.5)); }

    // Twelve digits keep a value at its limit there.
    static std::string in_unit(double house_value, Dimension dimension, const std::string& unit)
    {
        const std::optional<Unit> known = unit_named(unit, dimension);
        EXPECTS(known.has_value());
        return fmt::format("{:.12g} {}", house_value / known->factor, unit);
    }

    Chance* chance_;
    Units units_;
    std::string text_;
};

constexpr const char* stated_material = "soak metal";

// Draws that leave those of the case as they are: cases with a known seed stay what they were.
Chance apart(const Chance& chance)
{
    Chance copy = chance;
    return Chance(static_cast<std::uint64_t>(copy.fraction() * 0x1p53) ^ 0x9E3779B97F4A7C15U);
}

// How often a part is of the stated metal.
struct Metals
{
    double parts = 0.15, fillers = 0;
};
constexpr Metals all_stated{1, 1};

std::string part_material(Chance& chance, const Metals& metals)
{
    if (chance.happens(metals.parts)) return stated_material;
    std::vector<std::string> names;
    for (const LibraryMaterial& entry : material_library())
        if (entry.material.form != "filler") names.push_back(entry.material.name);
    return chance.pick(names);
}

std::string filler_material(Chance& chance, const Metals& metals)
{
    if (chance.happens(metals.fillers)) return stated_material;
    std::vector<std::string> names;
    for (const LibraryMaterial& entry : material_library())
        if (entry.material.form == "filler") names.push_back(entry.material.name);
    return chance.pick(names);
}

// A steel of which only the hardness is known.
void write_hardness(Writer& to, Chance& chance)
{
    static const std::vector<std::string> limits{"20 HRC", "58 HRC", "143 HB", "615 HB", "150 HV", "653 HV"};
    const std::vector<std::string> inside{fmt::format("{:.1f} HRC", chance.between(20, 58)),
                                          fmt::format("{:.0f} HBW", chance.between(143, 615)),
                                          fmt::format("{:.0f} HV10", chance.between(150, 653))};
    to.line(fmt::format("hardness = \"{}\"", chance.pick(chance.happens(0.2) ? limits : inside)));
}

// Alone: steel, titanium, aluminium and the limits; beside other metals their like.
void write_stated_material(Writer& to, Chance& chance, const Metals& metals)
{
    static const std::vector<double> any_modulus{210e3, 110e3, 70e3, 50e3, 400e3},
        any_ratio{0.3, 0.34, 0.0, 0.49, 0.45};
    static const std::vector<double> steel_modulus{202e3, 205e3, 210e3}, steel_ratio{0.28, 0.3, 0.32};
    const bool alone = metals.parts == 1;
    const double yield = std::round(chance.across_decades(51, 2000));
    const double tensile = std::min(4000.0, chance.happens(0.2) ? yield : std::round(yield * chance.between(1, 2)));
    to.line(fmt::format("[[material]]\nname = \"{}\"", stated_material));
    const char* const unit = chance.happens(0.3) ? "ksi" : "MPa";
    Chance other = apart(chance);
    if (!alone && other.happens(0.3)) write_hardness(to, other);
    else
    {
        to.quantity("yield", yield, Dimension::stress, "MPa");
        to.quantity("tensile", tensile, Dimension::stress, unit);
    }
    to.quantity("elastic_modulus", chance.pick(alone ? any_modulus : steel_modulus), Dimension::stress, "GPa");
    to.line(fmt::format("poisson_ratio = {:.2f}", chance.pick(alone ? any_ratio : steel_ratio)));
    if (chance.happens(0.5)) to.line("density = \"4430 kg/m^3\"");
    if (chance.happens(0.5)) to.line(fmt::format("heated_yield_factor = {:.2f}", chance.between(0.2, 1)));
}

void write_bar(Writer& to, Chance& chance, const Metals& metals, const Bar& bar, const std::string& name)
{
    to.line(fmt::format("[{}]\nmaterial = \"{}\"", name, part_material(chance, metals)));
    if (bar.bore.value() > 0) to.length("bore", bar.bore.value());
    for (const Section& section : bar.sections)
    {
        to.line(fmt::format("[[{}.section]]", name));
        to.length("length", section.length.value());
        to.length("diameter", section.diameter.value());
        if (section.fillet.value() > 0) to.length("fillet", section.fillet.value());
    }
    for (const Groove& groove : bar.grooves)
    {
        to.line(fmt::format("[[{}.groove]]", name));
        to.length("at", groove.at.value());
        to.length("depth", groove.depth.value());
        to.length("radius", groove.radius.value());
    }
}

// Wishes and measurements of the shop; drawn from a chance of their own, so that a seed keeps its shape and loads.
void write_as_built(Writer& to, Chance& chance, double smaller_diameter)
{
    const double greatest = std::min(2.0, 0.1 * smaller_diameter);
    if (chance.happens(0.4)) to.length("offset", chance.happens(0.3) ? greatest : chance.between(0, greatest));
    if (chance.happens(0.4))
        to.line(fmt::format("tilt = \"{:.3g} deg\"", chance.happens(0.3) ? 1 : chance.between(0, 1)));
}

void write_lengths_to_make(Writer& to, Chance& chance, double drawn)
{
    static const std::vector<std::string> bars{"both", "left", "right"};
    if (chance.happens(0.5))
    {
        to.length("overall_length", drawn * (chance.happens(0.3) ? 1.5 : chance.between(1, 1.5)));
        if (chance.happens(0.5)) to.line(fmt::format("adjust = \"{}\"", chance.pick(bars)));
    }
    if (!chance.happens(0.5)) return;
    const double plunge = chance.happens(0.3) ? 200 : chance.between(0, 60);
    to.length("plunge_available", plunge);
    if (chance.happens(0.5)) to.length("plunge_used", chance.happens(0.3) ? plunge : chance.between(0, plunge));
}

void write_making(Writer& to, Chance& chance, double drawn)
{
    static const std::vector<std::string> grades{"IT6", "IT7", "IT8"}, levels{"B", "C"};
    to.line("[making]");
    write_lengths_to_make(to, chance, drawn);
    if (chance.happens(0.5)) to.length("root_gap", chance.happens(0.3) ? 6 : chance.between(0, 6));
    if (chance.happens(0.5)) to.length("root_face", chance.happens(0.3) ? 1.5 : chance.between(0, 1.5));
    if (chance.happens(0.5)) to.line(fmt::format("groove_angle = \"{:.3g} deg\"", chance.between(30, 120)));
    if (chance.happens(0.5)) to.length("weld_shrink", chance.happens(0.3) ? 10 : chance.between(0, 10));
    if (chance.happens(0.5)) to.line(fmt::format("heat_input = \"{:.3g} kJ/mm\"", chance.across_decades(0.21, 9.9)));
    if (chance.happens(0.5)) to.line(fmt::format("hydrogen = \"{:.3g} ml/100g\"", chance.across_decades(0.51, 49)));
    if (chance.happens(0.5)) to.line(fmt::format("quality = \"{}\"", chance.pick(levels)));
    if (chance.happens(0.5)) to.line(fmt::format("bore_grade = \"{}\"", chance.pick(grades)));
}

void write_joint(Writer& to, Chance& chance, const Metals& metals, const Joint& joint)
{
    to.line("[joint]");
    if (joint.penetration) to.length("penetration", joint.penetration->value());
    else to.line("penetration = \"full\"");
    if (joint.half_lap.value() > 0) to.length("half_lap", joint.half_lap.value());
    if (joint.blend.value() > 0) to.length("blend", joint.blend.value());
    if (metals.fillers == 1 || chance.happens(0.5))
        to.line(fmt::format("filler = \"{}\"", filler_material(chance, metals)));
}

void write_fit(Writer& to, Chance& chance, const Case& shape)
{
    const Sleeve& sleeve = *shape.sleeve;
    const bool as_bore = chance.happens(0.3);
    const double tightest = std::min(sleeve.clearance[0].value(), sleeve.clearance[1].value());
    for (const Side side : both_sides)
    {
        const double clearance = sleeve.clearance[index(side)].value(),
                     diameter = shape.bar[index(side)]->sections.front().diameter.value();
        const std::string key = fmt::format("{}_{}", as_bore ? "bore" : "clearance", name_of(side));
        to.length(key.c_str(), as_bore ? diameter + clearance : clearance);
    }
    if (as_bore && tightest < 0) to.length("press", -tightest + 1e-6);
    const bool one_word = sleeve.slit[0] == sleeve.slit[1];
    if (one_word && (sleeve.slit[0] == SlitState::bonded || sleeve.slit[0] == SlitState::snug || chance.happens(0.5)))
        to.line(fmt::format("slit = \"{}\"", name_of(sleeve.slit[0])));
}

void write_sleeve(Writer& to, Chance& chance, const Metals& metals, const Case& shape)
{
    const Sleeve& sleeve = *shape.sleeve;
    to.line(fmt::format("[sleeve]\nmaterial = \"{}\"", part_material(chance, metals)));
    to.length("length", sleeve.length.value());
    if (sleeve.offset.value() != 0) to.length("offset", sleeve.offset.value());
    double bore = 0;
    for (const Side side : both_sides)
        bore = std::max(
            bore, shape.bar[index(side)]->sections.front().diameter.value() + sleeve.clearance[index(side)].value());
    if (chance.happens(0.5)) to.length("outer_diameter", sleeve.outer_diameter.value());
    else to.length("wall", (sleeve.outer_diameter.value() - bore) / 2);
    write_fit(to, chance, shape);
    if (sleeve.taper_length.value() > 0)
    {
        to.length("end_wall", (sleeve.end_diameter.value() - bore) / 2);
        to.length("taper_length", sleeve.taper_length.value());
    }
    to.line("[sleeve.weld]");
    to.length("leg_on_bar", sleeve.weld.leg_on_bar.value());
    to.length("leg_on_sleeve", sleeve.weld.leg_on_sleeve.value());
    if (sleeve.weld.toe_radius_stated) to.length("toe_radius", sleeve.weld.toe_radius.value());
    if (metals.fillers == 1 || chance.happens(0.5))
        to.line(fmt::format("filler = \"{}\"", filler_material(chance, metals)));
    to.line(fmt::format("passes = {}", sleeve.weld.passes));
}

void write_blocks(Writer& to, Chance& chance, double peak)
{
    static const std::vector<double> counts{1, 1e12};
    const std::size_t n_blocks = peak > 0 ? chance.below(4) : 0;
    for (std::size_t i = 0; i < n_blocks; ++i)
    {
        const double high = chance.happens(0.4) ? peak : chance.between(0.1, 1) * peak;
        const double low = chance.happens(0.4) ? 0 : chance.between(-1, 0.99) * high;
        // One draw after the other: the order of arguments is the compiler's choice.
        const std::string from = to.moment(low), up_to = to.moment(high);
        to.line(fmt::format("[[load.block]]\nname = \"block {}\"", i + 1));
        to.line(fmt::format("torque = [\"{}\", \"{}\"]", from, up_to));
        to.line(fmt::format("count = {:.0f}",
                            chance.happens(0.1) ? chance.pick(counts) : std::round(chance.across_decades(1, 1e8))));
    }
}

// The vehicle whose smaller side is the peak torque.
void write_vehicle(Writer& to, Chance& chance, double peak)
{
    const bool grip_governs = chance.happens(0.5);
    const double engine_side = grip_governs ? peak * chance.between(1.01, 4) : peak,
                 grip_side = grip_governs ? peak : peak * chance.between(1.01, 4);
    const double gear = chance.between(1, 5), final_drive = chance.between(2, 6), share = chance.between(0.3, 1),
                 shock = chance.between(1, 3), grip = chance.between(0.5, 1.6), transfer = chance.between(1, 2),
                 radius = std::round(chance.between(200, 500));
    const double engine = engine_side / (gear * final_drive * 0.9 * share * shock);
    const double mass = grip_side * 2 / (grip * transfer * 9806.65 * radius);
    to.line("[load.vehicle]");
    to.line(fmt::format("engine_torque = \"{:.12g} N*mm\"\naxle_mass = \"{:.12g} kg\"", engine, 1e3 * mass));
    to.line(
        fmt::format("gear_ratio = {:.17g}\nfinal_drive = {:.17g}\nshaft_share = {:.17g}", gear, final_drive, share));
    to.line(fmt::format("shock_factor = {:.17g}\nload_transfer = {:.17g}\ngrip = {:.17g}", shock, transfer, grip));
    to.length("tyre_radius", radius);
}

bool is_of_a_vehicle(double peak) { return peak > 100e3 && peak < 50e6; }

// Loads that strain the thinnest section by up to its strength, at times by nothing or by far too much.
void write_load(Writer& to, Chance& chance, double diameter)
{
    const double modulus = std::numbers::pi * std::pow(diameter, 3) / 16;  // mm^3, of torsion
    double peak = std::round(chance.across_decades(5, 500) * modulus);
    if (chance.happens(0.1)) peak = 0;
    if (chance.happens(0.05)) peak = chance.happens(0.5) ? 1e9 : 1;
    peak = std::min(peak, 1e9);
    to.line("[load]");
    Chance other = apart(chance);
    const bool has_vehicle = is_of_a_vehicle(peak) && other.happens(0.2);
    const std::string stated = peak > 0 ? to.moment(peak) : "";
    if (peak > 0 && !has_vehicle) to.line(fmt::format("peak_torque = \"{}\"", stated));
    if (peak > 0 && chance.happens(0.5))
        to.line(fmt::format("running_torque = \"{}\"",
                            to.moment(chance.happens(0.1) ? 0 : chance.between(0.01, 0.9) * peak)));
    const double axial = std::min(1e7, std::round(chance.across_decades(0.1, 200) * diameter * diameter));
    if (peak > 0 && chance.happens(0.4))
        to.line(fmt::format("joint_angle = \"{:.3g} deg\"", chance.happens(0.1) ? 50 : chance.between(0, 20)));
    else if (peak == 0 || chance.happens(0.5))
        to.line(fmt::format("bending = \"{}\"", to.moment(std::min(1e9, chance.across_decades(1, 500) * modulus / 2))));
    if (chance.happens(0.3)) to.line(fmt::format("axial = \"{}\"", to.force(chance.happens(0.5) ? axial : -axial)));
    if (chance.happens(0.5))
        to.line(fmt::format("speed = \"{:.0f} rpm\"", chance.happens(0.1) ? 50000 : chance.between(0, 3000)));
    if (chance.happens(0.4))
        to.line(fmt::format("revolutions = {:.4g}", chance.happens(0.1) ? 1.0 : chance.across_decades(1, 1e13)));
    write_blocks(to, chance, peak);
    if (has_vehicle) write_vehicle(to, other, peak);
}

double thinnest(const Case& shape)
{
    double smallest = 400;
    for (const auto& bar : shape.bar)
        if (bar)
            for (const Section& section : bar->sections) smallest = std::min(smallest, section.diameter.value());
    return smallest;
}

void write_judgement(Writer& to, Chance& chance)
{
    static const std::vector<std::string> factors{"1.5", "\"damage tolerant, low consequence\""};
    to.line("[judgement]");
    if (chance.happens(0.5)) to.line(fmt::format("survival = \"{:.4g} %\"", chance.between(90, 99.99)));
    if (chance.happens(0.5)) to.line(fmt::format("partial_factor = {}", chance.pick(factors)));
    if (chance.happens(0.5)) to.line("r_ratio_enhancement = \"stress relieved\"");
    if (chance.happens(0.5)) to.line(fmt::format("misalignment_factor = {:.3g}", chance.between(1, 3)));
}

double smaller_at_joint(const Case& shape)
{
    return std::min(shape.bar[0]->sections.front().diameter, shape.bar[1]->sections.front().diameter).value();
}

std::string proposal(Chance& chance, Chance& shop, std::uint64_t seed)
{
    static const std::vector<Units> habits{Units::metric, Units::metric, Units::inch, Units::mixed};
    const Case shape = random_shape(chance);
    const Metals metals = chance.happens(0.1) ? all_stated : Metals{};
    Writer to(chance, chance.pick(habits));
    to.line("# SPDX-License-Identifier: GPL-2.0-or-later");
    to.line(fmt::format("title = \"random case {}\"", seed));
    for (const Side side : both_sides)
        if (shape.bar[index(side)]) write_bar(to, chance, metals, *shape.bar[index(side)], name_of(side));
    if (shape.joint) write_joint(to, chance, metals, *shape.joint);
    if (shape.joint) write_as_built(to, shop, smaller_at_joint(shape));
    if (shape.sleeve) write_sleeve(to, chance, metals, shape);
    if (shape.joint && shop.happens(0.5)) write_making(to, shop, drawn_length(shape));
    write_load(to, chance, thinnest(shape));
    if (shop.happens(0.3)) write_judgement(to, shop);
    if (to.text().find(stated_material) != std::string::npos) write_stated_material(to, chance, metals);
    return to.text();
}

}  // namespace

std::string random_case_text(std::uint64_t seed)
{
    Chance chance(seed), shop(~seed);
    std::string text;
    bool is_valid = false;
    for (int i = 0; i < most_tries && !is_valid; ++i)
    {
        text = proposal(chance, shop, seed);
        is_valid = read_case(text, "random case").has_value();
    }
    EXPECTS(is_valid);
    return text;
}

}  // namespace splicewright
