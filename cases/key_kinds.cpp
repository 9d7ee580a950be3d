// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/key_kinds.h"

#include <map>

#include "cases/places.h"

namespace splicewright
{
namespace
{

constexpr KeyKind length{KeyForm::quantity, Dimension::length};
constexpr KeyKind moment{KeyForm::quantity, Dimension::moment};
constexpr KeyKind stress{KeyForm::quantity, Dimension::stress};
constexpr KeyKind angle{KeyForm::quantity, Dimension::angle};
constexpr KeyKind number{KeyForm::number, {}};
constexpr KeyKind whole{KeyForm::whole_number, {}};
constexpr KeyKind text{KeyForm::text, {}};
constexpr KeyKind group{KeyForm::group, {}};

using Kinds = std::map<std::string, KeyKind>;

// The same for both bars.
void add_bar(const std::string& bar, Kinds& kinds)
{
    kinds[bar] = kinds[bar + ".section"] = kinds[bar + ".groove"] = group;
    kinds[bar + ".material"] = kinds[bar + ".surface"] = text;
    for (const char* key : {".bore", ".section.length", ".section.diameter", ".section.fillet", ".groove.at",
                            ".groove.depth", ".groove.radius"})
        kinds[bar + key] = length;
}

Kinds all_kinds()
{
    Kinds kinds;
    const auto add = [&](const std::string& table, KeyKind kind, std::initializer_list<const char*> keys)
    {
        for (const char* key : keys) kinds[table.empty() ? key : table + "." + key] = kind;
    };
    add("", group, {"joint", "sleeve", "making", "load", "judgement", "material", "compare"});
    add("", text, {"title"});
    add_bar("left", kinds);
    add_bar("right", kinds);
    add("joint", length, {"half_lap", "blend", "offset", "lap_corner_radius"});
    add("joint", {KeyForm::quantity_or_word, Dimension::length}, {"penetration"});
    add("joint", angle, {"tilt", "offset_angle"});
    add("joint", text, {"filler"});
    add("sleeve", length,
        {"length", "offset", "outer_diameter", "wall", "clearance", "clearance_left", "clearance_right", "bore",
         "bore_left", "bore_right", "press", "end_wall", "taper_length"});
    add("sleeve", text, {"material", "slit"});
    add("sleeve", group, {"weld", "plug"});
    add("sleeve.weld", length, {"leg", "leg_on_bar", "leg_on_sleeve", "toe_radius"});
    add("sleeve.weld", angle, {"coverage", "start_left", "start_right"});
    add("sleeve.plug", length, {"diameter", "at", "depth"});
    add("sleeve.plug", angle, {"start"});
    add("sleeve.plug", whole, {"count"});
    add("sleeve.weld", text, {"filler"});
    add("sleeve.weld", whole, {"passes"});
    add("making", length,
        {"overall_length", "root_gap", "root_face", "weld_shrink", "plunge_available", "plunge_used"});
    add("making", angle, {"groove_angle"});
    add("making", {KeyForm::quantity, Dimension::heat_input}, {"heat_input"});
    add("making", {KeyForm::quantity, Dimension::hydrogen}, {"hydrogen"});
    add("making", text, {"adjust", "quality", "bore_grade"});
    add("load", moment, {"peak_torque", "running_torque", "bending"});
    add("load", angle, {"joint_angle"});
    add("load", {KeyForm::quantity, Dimension::force}, {"axial"});
    add("load", {KeyForm::quantity, Dimension::speed}, {"speed"});
    add("load", length, {"tyre_radius"});
    add("load", number, {"revolutions", "history_repeats"});
    add("load", text, {"torque_history"});
    add("load", group, {"block", "vehicle"});
    add("load.block", text, {"name"});
    add("load.block", group, {"torque"});
    add("load.block", number, {"count"});
    add("load.vehicle", moment, {"engine_torque"});
    add("load.vehicle", number,
        {"gear_ratio", "final_drive", "converter_ratio", "efficiency", "shaft_share", "shock_factor", "load_transfer",
         "grip"});
    add("load.vehicle", whole, {"driven_wheels"});
    add("load.vehicle", {KeyForm::quantity, Dimension::mass}, {"axle_mass"});
    add("load.vehicle", length, {"tyre_radius"});
    add("judgement", {KeyForm::quantity, Dimension::share}, {"survival"});
    add("judgement", number, {"partial_factor", "misalignment_factor"});
    add("judgement", text, {"r_ratio_enhancement"});
    add("material", {KeyForm::quantity, Dimension::toughness}, {"toughness"});
    add("material", stress, {"yield", "tensile", "elastic_modulus"});
    add("material", number, {"poisson_ratio", "heated_yield_factor"});
    add("material", {KeyForm::quantity, Dimension::density}, {"density"});
    add("material", text, {"name", "hardness", "heat_state", "source"});
    add("material", group, {"chemistry"});
    add("material.chemistry", number, {"C", "Si", "Mn", "Cr", "Mo", "Ni", "V", "Cu"});
    return kinds;
}

}  // namespace

std::optional<KeyKind> kind_of_key(const std::string& field)
{
    static const Kinds kinds = all_kinds();
    const auto found = kinds.find(without_indices(field));
    return found == kinds.end() ? std::nullopt : std::optional(found->second);
}

bool is_only_judged(const std::string& field)
{
    const std::string key = without_indices(field);
    if (key.starts_with("material.")) return key != "material.elastic_modulus" && key != "material.poisson_ratio";
    return key.starts_with("load.") || key.starts_with("judgement.") || key.starts_with("making.") ||
           key.ends_with(".material") || key.ends_with(".filler");
}

}  // namespace splicewright
