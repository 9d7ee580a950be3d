// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/cautions.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>

#include "cases/check_making.h"
#include "cases/materials.h"
#include "cases/units.h"

namespace splicewright
{
namespace
{

constexpr double least_throat = 3.0;              // mm. Source: [Eurocode3Joints2005] clause 4.5.2, from memory
constexpr double notch_method_wall = 5.0;         // mm. Source: [Fricke2012], from memory
constexpr double checked_length_tolerance = 1.0;  // mm, judgement
constexpr double wide_clearance = 0.1;            // mm, judgement
// Steels of the library that no preheat makes weldable. Judgement.
constexpr const char* not_to_be_welded[] = {"300M"};

std::string short_mm(double length_mm) { return fmt::format("{:.3g} mm", length_mm); }

double throat_of(const SleeveWeld& weld)
{
    const double on_bar = weld.leg_on_bar.value(), on_sleeve = weld.leg_on_sleeve.value();
    return on_bar * on_sleeve / std::hypot(on_bar, on_sleeve);
}

void add_sleeve_cautions(std::vector<std::string>& cautions, const Case& asked)
{
    const Sleeve& sleeve = *asked.sleeve;
    const double throat = throat_of(sleeve.weld);
    if (throat < least_throat)
        cautions.push_back(fmt::format(
            "The throat of the sleeve welds is {}, below the 3 mm that EN 1993-1-8 asks of a load-carrying fillet weld "
            "(from memory: verify).",
            short_mm(throat)));
    double thinnest = throat;
    for (const Side side : both_sides)
    {
        const double bar = asked.bar[index(side)]->sections.front().diameter.value();
        const double clearance = sleeve.clearance[index(side)].value();
        thinnest =
            std::min(thinnest, (std::min(sleeve.outer_diameter, sleeve.end_diameter).value() - bar - clearance) / 2);
        if (clearance > wide_clearance)
            cautions.push_back(fmt::format(
                "The sleeve is loose on the {} bar: a diametral clearance of {}. It is welded off-centre by up to half "
                "of that, and the root of the weld is harder to fuse.",
                name_of(side), short_mm(clearance)));
    }
    if (thinnest < notch_method_wall)
        cautions.push_back(fmt::format(
            "A wall or throat of {} is thinner than the 5 mm that the notch method with its 1 mm reference radius is "
            "meant for; whether its result is on the safe side there is not known.",
            short_mm(thinnest)));
}

void add_weld_steel_caution(std::vector<std::string>& cautions, const Material& material, const std::string& part)
{
    for (const char* steel : not_to_be_welded)
        if (material.name == steel)
            cautions.push_back(
                fmt::format("{} is {}, which should not be welded: it hardens and cracks beside the "
                            "weld, and preheat cannot prevent that.",
                            part, material.name));
}

// Parts whose strength the library holds no guarantee for, by what it is worth.
void add_strength_cautions(std::vector<std::string>& cautions, const Case& asked)
{
    for (const StrengthKind kind : {StrengthKind::typical, StrengthKind::estimated_minimum})
    {
        std::vector<std::string> parts;
        const auto look = [&](const Material& material, const std::string& part)
        {
            if (material.strength_kind == kind) parts.push_back(fmt::format("the {} ({})", part, material.name));
        };
        for (const Side side : both_sides)
            if (const auto& bar = asked.bar[index(side)]) look(bar->material, fmt::format("{} bar", name_of(side)));
        if (asked.sleeve) look(asked.sleeve->material, "sleeve");
        if (parts.empty()) continue;
        cautions.push_back(
            fmt::format("The strength of {} is {}: ask for the certificate and give what it says as [[material]].",
                        fmt::join(parts, " and "),
                        kind == StrengthKind::typical ? "typical and no minimum, a bar may well have less"
                                                      : "a handbook's estimate of the minimum and no guarantee"));
    }
}

// Of what the shop is to make against what is checked.
void add_making_cautions(std::vector<std::string>& cautions, const Case& asked)
{
    if (asked.joint->offset.value() > 0 || asked.joint->tilt.value() > 0)
        cautions.push_back(
            fmt::format("The bars are out of line as built ({} of offset, {} of tilt). That counts for the balance "
                        "only: the bending it brings is in the stresses of the solid model and of no other.",
                        short_mm(asked.joint->offset.value()), in_words(asked.joint->tilt.value(), Dimension::angle)));
    if (!asked.making || !asked.making->overall_length) return;
    const double wanted = asked.making->overall_length->value(), drawn = drawn_length(asked);
    if (std::abs(wanted - drawn) > checked_length_tolerance)
        cautions.push_back(fmt::format(
            "The shaft to be made is {} long and the one that is checked {}: change the section lengths as the shop "
            "sheet says to check the one that is made.",
            in_words(wanted, Dimension::length), in_words(drawn, Dimension::length)));
}

bool is_default(const Case& asked, const std::string& field)
{
    return std::any_of(asked.defaults.begin(), asked.defaults.end(),
                       [&](const DefaultUsed& used) { return used.field == field; });
}

// A peak that the car can put in once in a while is no torque to run at for a whole life.
std::optional<std::string> running_at_peak_warning(const Case& asked)
{
    const Load& load = asked.load;
    if (!load.vehicle || load.running_bending.value() == 0.0 || !is_default(asked, "load.running_torque"))
        return std::nullopt;
    return fmt::format(
        "RUNNING AT THE PEAK: no running_torque is given, so every one of {:g} revolutions is taken at {}, the most "
        "that the vehicle can put into this shaft. Say in [load] what it runs at: running_torque = \"... N*m\".",
        load.revolutions, in_words(load.running_torque.value(), Dimension::moment));
}

// Source: [AxleTorquePractice], that measured shaft torque can pass both sides.
void add_vehicle_cautions(std::vector<std::string>& cautions, const Load& load)
{
    cautions.emplace_back(
        "A shock can exceed both the engine side and the grip of the tyre: a dropped clutch, wheel hop, a wheel that "
        "lands spinning, a sudden downshift. Only a measurement shows by how much.");
    const NewtonMillimetre derived = load.vehicle->peak_torque();
    if (load.peak_torque < derived)
        cautions.push_back(
            fmt::format("The peak torque is stated as {}, and the vehicle can put {} into this shaft ({} governs).",
                        in_words(load.peak_torque.value(), Dimension::moment),
                        in_words(derived.value(), Dimension::moment), name_of(load.vehicle->governs)));
}

}  // namespace

std::optional<std::string> unknown_steel_warning(const Case& asked)
{
    std::vector<std::string> parts;
    for (const Side side : both_sides)
        if (const auto& bar = asked.bar[index(side)]; bar && bar->material.name == unknown_steel)
            parts.push_back(fmt::format("the {} bar", name_of(side)));
    if (asked.sleeve && asked.sleeve->material.name == unknown_steel) parts.emplace_back("the sleeve");
    if (parts.empty()) return std::nullopt;
    const Material taken = library_material(unknown_steel)->material;
    return fmt::format(
        "UNKNOWN STEEL in {}: taken as soft mild steel, yield {:.0f} MPa, tensile strength {:.0f} MPa (judgement), and "
        "as hard to weld. Measure its hardness or find its grade before you weld it.",
        fmt::join(parts, " and "), taken.yield.value(), taken.tensile.value());
}

std::vector<std::string> cautions_of(const Case& asked)
{
    std::vector<std::string> cautions;
    if (const auto warning = unknown_steel_warning(asked)) cautions.push_back(*warning);
    if (const auto warning = running_at_peak_warning(asked)) cautions.push_back(*warning);
    if (asked.joint && asked.joint->half_lap.value() > 0.0 && !asked.joint->penetration)
        cautions.push_back(
            "Full penetration is stated with a half lap: full fusion of a bar through a half lap can "
            "rarely be proven. The lap is taken as fused; consider a stated depth of penetration.");
    if (asked.joint)
        for (const Side side : both_sides)
            add_weld_steel_caution(cautions, asked.bar[index(side)]->material,
                                   fmt::format("The {} bar", name_of(side)));
    if (asked.sleeve) add_weld_steel_caution(cautions, asked.sleeve->material, "The sleeve");
    add_strength_cautions(cautions, asked);
    if (asked.sleeve) add_sleeve_cautions(cautions, asked);
    if (asked.joint) add_making_cautions(cautions, asked);
    if (asked.joint && asked.bar[0]->bore.value() > 0.0)
    {
        const double bore = asked.bar[0]->bore.value();
        for (const Side side : both_sides)
        {
            const double wall = (asked.bar[index(side)]->sections.front().diameter.value() - bore) / 2;
            if (wall < notch_method_wall)
                cautions.push_back(
                    fmt::format("The wall of the {} bar is {}, thinner than the 5 mm that the notch "
                                "method with its 1 mm reference radius is meant for.",
                                name_of(side), short_mm(wall)));
        }
    }
    if (asked.load.vehicle) add_vehicle_cautions(cautions, asked.load);
    if (asked.load.blocks.empty() && asked.load.running_bending.value() == 0.0)
        cautions.push_back(
            "No load that repeats is given (no torque blocks and no bending): nothing is said about "
            "fatigue, which is how a spliced shaft usually fails.");
    else if (asked.load.blocks.empty())
        cautions.push_back(
            "No torque cycles are given ([[load.block]] or torque_history): fatigue counts the bending of each turn "
            "only; starts and gear changes are NOT counted.");
    return cautions;
}

}  // namespace splicewright
