// SPDX-License-Identifier: GPL-2.0-or-later
#include "cases/known_keys.h"

#include <algorithm>

#include "cases/nearest.h"
#include "cases/places.h"

namespace splicewright
{
namespace
{

struct TableKeys
{
    const char* table;
    std::vector<const char*> keys;
};

std::vector<std::string> listed_keys()
{
    const TableKeys tables[] = {
        {"", {"title", "left", "right", "joint", "sleeve", "making", "load", "judgement", "material", "compare"}},
        {"left", {"material", "bore", "surface", "section", "groove"}},
        {"left.section", {"length", "diameter", "fillet"}},
        {"left.groove", {"at", "depth", "radius"}},
        {"right", {"material", "bore", "surface", "section", "groove"}},
        {"right.section", {"length", "diameter", "fillet"}},
        {"right.groove", {"at", "depth", "radius"}},
        {"joint",
         {"penetration", "half_lap", "blend", "filler", "offset", "tilt", "offset_angle", "lap_corner_radius"}},
        {"sleeve",
         {"material", "length", "offset", "outer_diameter", "wall", "clearance", "clearance_left", "clearance_right",
          "bore", "bore_left", "bore_right", "press", "slit", "end_wall", "taper_length", "weld", "plug"}},
        {"sleeve.weld",
         {"leg", "leg_on_bar", "leg_on_sleeve", "toe_radius", "coverage", "start_left", "start_right", "filler",
          "passes"}},
        {"sleeve.plug", {"count", "diameter", "at", "depth", "start"}},
        {"making",
         {"overall_length", "adjust", "root_gap", "root_face", "groove_angle", "weld_shrink", "plunge_available",
          "plunge_used", "heat_input", "hydrogen", "quality", "bore_grade"}},
        {"load",
         {"peak_torque", "running_torque", "joint_angle", "bending", "axial", "speed", "revolutions", "tyre_radius",
          "block", "vehicle", "torque_history", "history_repeats"}},
        {"load.vehicle",
         {"engine_torque", "gear_ratio", "final_drive", "converter_ratio", "efficiency", "driven_wheels", "shaft_share",
          "shock_factor", "axle_mass", "load_transfer", "grip", "tyre_radius"}},
        {"judgement", {"survival", "partial_factor", "r_ratio_enhancement", "misalignment_factor"}},
        {"load.block", {"name", "torque", "count"}},
        {"material",
         {"name", "yield", "tensile", "elastic_modulus", "poisson_ratio", "density", "heated_yield_factor", "chemistry",
          "hardness", "heat_state", "toughness", "source"}},
        {"material.chemistry", {"C", "Si", "Mn", "Cr", "Mo", "Ni", "V", "Cu"}},
    };
    std::vector<std::string> keys;
    for (const TableKeys& table : tables)
        for (const char* key : table.keys)
            keys.push_back(*table.table == '\0' ? std::string(key) : std::string(table.table) + "." + key);
    return keys;
}

std::vector<std::string> siblings_of(const std::string& field)
{
    std::vector<std::string> siblings;
    const std::string table = parent_of(field);
    for (const std::string& key : known_keys())
        if (parent_of(key) == table) siblings.push_back(last_key_of(key));
    return siblings;
}

}  // namespace

const std::vector<std::string>& known_keys()
{
    static const std::vector<std::string> keys = listed_keys();
    return keys;
}

bool is_known_key(const std::string& field)
{
    const auto& keys = known_keys();
    return std::find(keys.begin(), keys.end(), without_indices(field)) != keys.end();
}

std::string intended_key(const std::string& field)
{
    const std::string plain = without_indices(field);
    const std::string table = parent_of(plain), key = last_key_of(plain);
    const auto beside = nearest(key, siblings_of(plain), 1);
    if (!beside.empty()) return table.empty() ? beside.front() : table + "." + beside.front();
    for (const std::string& known : known_keys())
        if (last_key_of(known) == key && known != plain) return known;
    return {};
}

}  // namespace splicewright
